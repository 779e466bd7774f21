/// The gas spring of a heave compensator: load against stroke, stiffness, gas needed.
///
/// The load is what the compensator carries; travel is that of the load against the vessel,
/// positive where the gas is compressed: the vessel goes up and the load stays. Everything is
/// referred to the load, so that pistons, their number and chains enter through the effective area
/// alone.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/compensator/parameters.hpp"

namespace ropewalk::compensator {

/// Gas volume a travel of the load takes up, per length of that travel.
///
///   A = z A_p / r
///
/// A    effective area  area
/// z    cylinders       number of cylinders that carry the load together
/// A_p  piston_area     area of one piston, less its rod on a side that is under gas
/// r    travel_ratio    travel of the load over that of the rods: 2 where a chain runs over a
///                      sheave on the rods, 1 where the load hangs on them
///
/// Work on both sides is the same: what doubles the travel halves the force. Source: statics.
struct EffectiveArea {
  static constexpr std::string_view name = "compensator.effective_area";
  static constexpr std::tuple parameters{
      Parameter<Area>{"piston_area",
                      above_up_to(from_si<Area>(0.0), from_si<Area>(10.0), params::guard)},
      Parameter<Number>{"cylinders", whole_between(1, 16, params::guard)},
      Parameter<Number>{"travel_ratio",
                        between(from_si<Number>(0.1), from_si<Number>(10.0), params::guard)}};

  static constexpr Area formula(Area piston_area, Number cylinders, Number travel_ratio) noexcept {
    return cylinders * piston_area / travel_ratio;
  }
};
inline constexpr Model<EffectiveArea> effective_area{};

/// Load on a gas spring away from mid-stroke, polytropic change of state.
///
///   F = F_0 (V_0 / (V_0 − A x))^n
///
/// F_0  mean_load            force, carried at mid-stroke
/// A    effective_area       area
/// V_0  gas_volume           volume, at mid-stroke
/// n    polytropic_exponent  1 slow and isothermal; 1.4 fast, nitrogen as an ideal gas
/// x    spring_travel        length, positive where the gas is compressed
///
/// F = p A against a pressure outside that is small beside p; p V^n is constant. At the pressures
/// of drilling rigs nitrogen is no ideal gas and n may lie above 1.4. Seal friction is not in it.
/// Source: thermodynamics; the form of the spring as in public descriptions of passive heave
/// compensation.
struct GasLoad {
  static constexpr std::string_view name = "compensator.gas_load";
  static constexpr std::tuple parameters{argument::mean_load, argument::effective_area,
                                         argument::gas_volume, argument::polytropic_exponent,
                                         argument::spring_travel};
  static constexpr std::string_view joint_rule =
      "effective_area times spring_travel must be less than gas_volume (no gas is left)";

  static constexpr bool joint(Force, Area area, Volume gas_volume, Number,
                              Length spring_travel) noexcept {
    return area * spring_travel < gas_volume;
  }
  static Force formula(Force mean_load, Area area, Volume gas_volume, Number polytropic_exponent,
                       Length spring_travel) noexcept {
    const Number left = 1.0 - Number(area * spring_travel / gas_volume);
    return mean_load * std::pow(to_si(left), -to_si(polytropic_exponent));
  }
};
inline constexpr Model<GasLoad> gas_load{};

/// Stiffness of a gas spring at mid-stroke, the slope of GasLoad there.
///
///   k = n F_0 A / V_0
///
/// Symbols, range and source as for GasLoad; with the pressure p = F_0 / A it is n p A² / V_0.
struct GasStiffness {
  static constexpr std::string_view name = "compensator.gas_stiffness";
  static constexpr std::tuple parameters{argument::mean_load, argument::effective_area,
                                         argument::gas_volume, argument::polytropic_exponent};

  static constexpr Stiffness formula(Force mean_load, Area area, Volume gas_volume,
                                     Number polytropic_exponent) noexcept {
    return polytropic_exponent * mean_load * area / gas_volume;
  }
};
inline constexpr Model<GasStiffness> gas_stiffness{};

/// Gas volume that keeps the rise of the load over a travel within a share of it.
///
///   V_0 = A x / (1 − (1 + ν)^(−1/n))
///
/// ν  load_rise    number, allowed rise over the load at mid-stroke; the fall is smaller
/// x  half_stroke  length, largest travel from mid-stroke
///
/// Other symbols, range and source as for GasLoad, solved for the volume.
struct NeededGasVolume {
  static constexpr std::string_view name = "compensator.needed_gas_volume";
  static constexpr std::tuple parameters{
      argument::effective_area, argument::half_stroke, argument::polytropic_exponent,
      Parameter<Number>{"load_rise",
                        between(from_si<Number>(1e-6), from_si<Number>(10.0), params::guard)}};

  static Volume formula(Area area, Length half_stroke, Number polytropic_exponent,
                        Number load_rise) noexcept {
    const double compressed =
        -std::expm1(-std::log1p(to_si(load_rise)) / to_si(polytropic_exponent));
    return area * half_stroke / compressed;
  }
};
inline constexpr Model<NeededGasVolume> needed_gas_volume{};

/// Rope rolled on a sheave that a swinging arm carries along with a crown-mounted compensator.
///
///   l = D asin(s / 2a)
///
/// l  rope rolled      length, from one end of the travel to the other
/// D  sheave_diameter  length, tread diameter
/// s  crown_travel     length, of the end of the arm, half of it to either side of the level
/// a  arm_length       length, from pivot to pivot
///
/// The arm keeps the path of fast and dead line as long as it is; the line rolls on the sheave as
/// far as the arm turns. Source: geometry, arm level at mid-stroke.
struct SwingArmRoll {
  static constexpr std::string_view name = "compensator.swing_arm_roll";
  static constexpr std::tuple parameters{
      params::sheave_diameter,
      Parameter<Length>{"arm_length", above_up_to(0.0 * meter, 50.0 * meter, params::guard)},
      Parameter<Length>{"crown_travel", between(0.0 * meter, 40.0 * meter, params::guard)}};
  static constexpr std::string_view joint_rule =
      "crown_travel must be at most twice arm_length (the arm is upright at both ends)";

  static constexpr bool joint(Length, Length arm_length, Length crown_travel) noexcept {
    return crown_travel <= 2.0 * arm_length;
  }
  static Length formula(Length sheave_diameter, Length arm_length, Length crown_travel) noexcept {
    return sheave_diameter * std::asin(to_si(Number(crown_travel / (2.0 * arm_length))));
  }
};
inline constexpr Model<SwingArmRoll> swing_arm_roll{};

}  // namespace ropewalk::compensator
