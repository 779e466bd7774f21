/// The string on the gas spring: in series with it on bottom, a mass on it off bottom.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/compensator/parameters.hpp"

namespace ropewalk::compensator {

/// Natural period of a mass that hangs free on the gas spring.
///
///   T_n = 2 π √(m / k)
///
/// m  hanging_mass   mass of string, hook, and the water that goes along
/// k  gas_stiffness  force per length
///
/// The string moves as one mass. Source: a mass on a spring.
struct NaturalPeriod {
  static constexpr std::string_view name = "compensator.natural_period";
  static constexpr std::tuple parameters{argument::hanging_mass, argument::gas_stiffness};

  static Time formula(Mass hanging_mass, Stiffness gas) noexcept {
    return from_si<Time>(2.0 * pi * std::sqrt(to_si(hanging_mass) / to_si(gas)));
  }
};
inline constexpr Model<NaturalPeriod> natural_period{};

/// Motion of a mass that hangs free on the spring over the heave of the vessel.
///
///   |X/H| = √((1 + (2 ζ r)²) / ((1 − r²)² + (2 ζ r)²)),   r = T_n / T
///
/// T    wave_period     time, of the heave
/// T_n  natural_period  time
/// ζ    damping_ratio   number, of viscous damping between vessel and load to critical; 0 undamped
///
/// Below 1 only for waves shorter than T_n/√2; near T_n the load moves more than the vessel.
/// Source: J. P. Den Hartog, Mechanical Vibrations, motion of the support; undamped as in public
/// descriptions of passive heave compensation.
struct HangingRatio {
  static constexpr std::string_view name = "compensator.hanging_ratio";
  static constexpr std::tuple parameters{
      argument::wave_period, Parameter<Time>{"natural_period", argument::period_range},
      Parameter<Number>{"damping_ratio",
                        between(from_si<Number>(0.0), from_si<Number>(10.0), params::guard)}};
  static constexpr std::string_view joint_rule =
      "without damping wave_period must differ from natural_period, by a billionth of it or more "
      "(the motion has no bound)";

  static constexpr bool joint(Time wave_period, Time natural, Number damping_ratio) noexcept {
    const double apart = std::abs(to_si(Number(natural / wave_period)) - 1.0);
    return to_si(damping_ratio) > 0.0 || apart > 1e-9;
  }
  static Number formula(Time wave_period, Time natural, Number damping_ratio) noexcept {
    const double r = to_si(Number(natural / wave_period));
    const double damping = 2.0 * to_si(damping_ratio) * r;
    return from_si<Number>(std::hypot(1.0, damping) / std::hypot(1.0 - r * r, damping));
  }
};
inline constexpr Model<HangingRatio> hanging_ratio{};

/// Stroke amplitude under a mass that hangs free, with seal friction.
///
///   Z = √((m ω² Y)² − (4 R/π)²) / |k − m ω²|,   0 where the root has nothing left
///
/// Y  heave_amplitude  length, of the vessel;  ω = 2 π / wave_period
/// k  gas_stiffness    force per length
/// m  hanging_mass     mass
/// R  seal_friction    force, each way, independent of speed
///
/// Friction as a viscous damping that takes as much out of a cycle, 4 R Z. Where Z is 0 the seals
/// hold and the load moves with the vessel. Good while the stroke is nearly a sine, R well below
/// m ω² Y; exactly the seals hold for m ω² Y ≤ R.
/// Dry friction does not bound the resonance: at k = m ω² (to a billionth of k) the swing grows
/// with every wave unless the seals hold.
/// Source: J. P. Den Hartog, Mechanical Vibrations (1931 paper in Trans. ASME 53), equivalent
/// viscous damping of dry friction.
struct HangingStroke {
  static constexpr std::string_view name = "compensator.hanging_stroke";
  static constexpr std::tuple parameters{argument::heave_amplitude, argument::gas_stiffness,
                                         argument::hanging_mass, argument::wave_period,
                                         argument::seal_friction};
  static constexpr std::string_view joint_rule =
      "wave_period must differ from the natural period of hanging_mass on gas_stiffness unless "
      "seal_friction holds it: in resonance the stroke has no bound (Den Hartog)";

  static bool joint(Length heave_amplitude, Stiffness gas, Mass hanging_mass, Time wave_period,
                    Force seal_friction) noexcept {
    const double omega = 2.0 * pi / to_si(wave_period);
    const double inertia = to_si(hanging_mass) * omega * omega;
    const bool held = inertia * to_si(heave_amplitude) <= 4.0 / pi * to_si(seal_friction);
    return held || std::abs(to_si(gas) - inertia) > 1e-9 * to_si(gas);
  }
  static Length formula(Length heave_amplitude, Stiffness gas, Mass hanging_mass, Time wave_period,
                        Force seal_friction) noexcept {
    const double omega = 2.0 * pi / to_si(wave_period);
    const double inertia = to_si(hanging_mass) * omega * omega;
    const double driven = inertia * to_si(heave_amplitude);
    const double held = 4.0 / pi * to_si(seal_friction);
    if (driven <= held) return from_si<Length>(0.0);
    const double left = std::sqrt((driven - held) * (driven + held));
    return from_si<Length>(left / std::abs(to_si(gas) - inertia));
  }
};
inline constexpr Model<HangingStroke> hanging_stroke{};

/// A gas spring as it stands, for what is more than a row.
struct GasSpring {
  Force mean_load;             ///< carried at mid-stroke
  Area effective_area;         ///< see EffectiveArea
  Volume gas_volume;           ///< at mid-stroke
  Number polytropic_exponent;  ///< see GasLoad
  Force seal_friction;         ///< each way
};

/// Change of the pull on the string whose bit is on bottom when the vessel has heaved from its
/// mean.
///
///   F(x) ± R − F_0 = k_s (h − x)
///
/// solved for the travel x of the compensator: string and gas spring in series, the spring as
/// GasLoad has it, R against the motion away from the mean. Where the string alone pulls less than
/// R the seals hold and it is stretched by all of h. The weight on bit changes by as much the other
/// way, until the bit lifts off.
/// Throws InadmissibleError for an argument that cannot be, or where the travel takes up all gas.
[[nodiscard]] Force bit_weight_change(const GasSpring& spring, Stiffness string, Length heave);

}  // namespace ropewalk::compensator
