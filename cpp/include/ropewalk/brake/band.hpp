/// Band brake: a lined band round the rim of the drum, pulled at one end, anchored at the other.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/brake/parameters.hpp"

namespace ropewalk::brake {

namespace argument {
inline constexpr Parameter<Angle> wrap_angle{"wrap_angle",
                                             above_up_to(0.0 * degree, 4.0 * turn, params::guard)};
/// In one band, where the lever pulls it.
inline constexpr Parameter<Force> lever_tension{"lever_tension", params::force_range};
inline constexpr Parameter<Force> band_tension{"band_tension", params::force_range};
inline constexpr Parameter<Length> rim_diameter{"rim_diameter", part_range};
inline constexpr Parameter<Length> band_width{"band_width", part_range};
inline constexpr Parameter<Number> bands{"bands", whole_between(1, 16, params::guard)};
}  // namespace argument

/// Tension of the tight over the slack end of a slipping band, Euler and Eytelwein.
///
///   T1 / T2 = e^(μ θ)
///
/// μ  lining_friction  number, between lining and rim
/// θ  wrap_angle       angle the lining covers
///
/// The band bends without stiffness and slips all along. Source: L. Euler (1769), J. A. Eytelwein
/// (1808), belt friction; for brakes: Machinery's Handbook, 27th ed., simple band brakes.
struct BandTensionRatio {
  static constexpr std::string_view name = "brake.band_tension_ratio";
  static constexpr std::tuple parameters{argument::lining_friction, argument::wrap_angle};

  static Number formula(Number lining_friction, Angle wrap_angle) noexcept {
    return from_si<Number>(std::exp(to_si(lining_friction) * in_radians(wrap_angle)));
  }
};
inline constexpr Model<BandTensionRatio> band_tension_ratio{};

/// Torque of band brakes while the rim turns from the lever end toward the anchor: the rim drags
/// the band tight and helps the driller. Rigged so, a brake helps against the falling load.
///
///   T = n F (e^(μ θ) − 1) D / 2
///
/// n  bands          number of bands on the drum
/// F  lever_tension  force, in each band where the lever pulls it: the slack end
/// D  rim_diameter   length
///
/// Other symbols, range and source as for BandTensionRatio.
struct BandTorque {
  static constexpr std::string_view name = "brake.band_torque";
  static constexpr std::tuple parameters{argument::lever_tension, argument::lining_friction,
                                         argument::wrap_angle, argument::rim_diameter,
                                         argument::bands};

  static Torque formula(Force lever_tension, Number lining_friction, Angle wrap_angle,
                        Length rim_diameter, Number bands) noexcept {
    const double gain = std::expm1(to_si(lining_friction) * in_radians(wrap_angle));
    return torque_on_arm(bands * lever_tension * gain, rim_diameter / 2.0);
  }
};
inline constexpr Model<BandTorque> band_torque{};

/// Torque of band brakes while the rim turns the other way: the lever holds the tight end, and the
/// torque is less by e^(μ θ).
///
///   T = n F (1 − e^(−μ θ)) D / 2
///
/// Symbols, range and source as for BandTorque.
struct BandTorqueReversed {
  static constexpr std::string_view name = "brake.band_torque_reversed";
  static constexpr std::tuple parameters = BandTorque::parameters;

  static Torque formula(Force lever_tension, Number lining_friction, Angle wrap_angle,
                        Length rim_diameter, Number bands) noexcept {
    const double gain = -std::expm1(-to_si(lining_friction) * in_radians(wrap_angle));
    return torque_on_arm(bands * lever_tension * gain, rim_diameter / 2.0);
  }
};
inline constexpr Model<BandTorqueReversed> band_torque_reversed{};

/// Tension the lever must put into each band for a torque, the rim helping.
///
///   F = 2 T / (n D (e^(μ θ) − 1))
///
/// Symbols, range and source as for BandTorque, turned round. The tension at the anchor, T1, is
/// e^(μ θ) as much.
struct BandLeverTension {
  static constexpr std::string_view name = "brake.band_lever_tension";
  static constexpr std::tuple parameters{argument::brake_torque, argument::lining_friction,
                                         argument::wrap_angle, argument::rim_diameter,
                                         argument::bands};

  static Force formula(Torque brake_torque, Number lining_friction, Angle wrap_angle,
                       Length rim_diameter, Number bands) noexcept {
    const double gain = std::expm1(to_si(lining_friction) * in_radians(wrap_angle));
    return force_on_arm(brake_torque, rim_diameter / 2.0) / (bands * gain);
  }
};
inline constexpr Model<BandLeverTension> band_lever_tension{};

/// Pressure of a band on its rim where the band has a tension: largest at the tight end.
///
///   p = 2 F / (b D)
///
/// F  band_tension  force
/// b  band_width    length, of the lining
/// D  rim_diameter  length
///
/// Source: equilibrium of a piece of band; J. E. Shigley, Mechanical Engineering Design, band-type
/// clutches and brakes (from memory).
struct BandPressure {
  static constexpr std::string_view name = "brake.band_pressure";
  static constexpr std::tuple parameters{argument::band_tension, argument::band_width,
                                         argument::rim_diameter};

  static constexpr Stress formula(Force band_tension, Length band_width,
                                  Length rim_diameter) noexcept {
    return 2.0 * band_tension / (band_width * rim_diameter);
  }
};
inline constexpr Model<BandPressure> band_pressure{};

/// Mean pressure on the linings of band brakes that give a torque.
///
///   p = 4 T / (n μ b D² θ)
///
/// Symbols as for BandTorque and BandPressure. Source: the torque is μ p times the lined area at
/// the radius of the rim.
struct BandMeanPressure {
  static constexpr std::string_view name = "brake.band_mean_pressure";
  static constexpr std::tuple parameters{argument::brake_torque, argument::lining_friction,
                                         argument::wrap_angle,   argument::band_width,
                                         argument::rim_diameter, argument::bands};

  static Stress formula(Torque brake_torque, Number lining_friction, Angle wrap_angle,
                        Length band_width, Length rim_diameter, Number bands) noexcept {
    const Length radius = rim_diameter / 2.0;
    const Area lined = band_width * arc_length(wrap_angle, radius);
    return force_on_arm(brake_torque, radius) / (bands * lining_friction * lined);
  }
};
inline constexpr Model<BandMeanPressure> band_mean_pressure{};

}  // namespace ropewalk::brake
