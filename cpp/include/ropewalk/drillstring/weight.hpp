/// Mass of steel tubes and their weight in mud.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"

namespace ropewalk::drillstring {

/// Arguments that only this subject takes.
namespace argument {

inline constexpr Interval density_range =
    above_up_to(0.0 * kilogram_per_cubic_meter, 25'000.0 * kilogram_per_cubic_meter, params::guard);
inline constexpr Interval diameter_range = above_up_to(0.0 * meter, 3.0 * meter, params::guard);
inline constexpr Interval mass_per_length_range =
    above_up_to(0.0 * kilogram_per_meter, 10'000.0 * kilogram_per_meter, params::guard);

inline constexpr Parameter<Density> steel_density{"steel_density", density_range};
inline constexpr Parameter<Density> density{"density", density_range};
inline constexpr Parameter<Length> outer_diameter{"outer_diameter", diameter_range};
/// Zero for a solid bar.
inline constexpr Parameter<Length> inner_diameter{"inner_diameter",
                                                  between(0.0 * meter, 3.0 * meter, params::guard)};
inline constexpr Parameter<MassPerLength> mass_per_length{"mass_per_length", mass_per_length_range};
inline constexpr Parameter<Number> buoyancy_factor{"buoyancy_factor", params::ratio_range};
inline constexpr Parameter<Length> length{"length", params::length_range};

}  // namespace argument

/// Buoyancy factor of a string that is wet inside and outside.
///
///   BF = 1 − ρ_m / ρ_s
///
/// BF   result            ratio
/// ρ_m  mud_density       density
/// ρ_s  steel_density     density; 65.5 lb/gal or 7850 kg/m³ is usual
///
/// Archimedes; holds while the string is full of the mud that surrounds it.
/// Source: N. J. Lapeyrouse, Formulas and Calculations for Drilling, Production and Workover,
/// 2nd ed. (2002), buoyancy factor, (65.5 − ppg)/65.5.
struct BuoyancyFactor {
  static constexpr std::string_view name = "drillstring.buoyancy_factor";
  static constexpr std::tuple parameters{params::mud_density, argument::steel_density};
  static constexpr std::string_view joint_rule =
      "mud_density must be less than steel_density (in a heavier mud the string would float)";

  static constexpr bool joint(Density mud_density, Density steel_density) noexcept {
    return mud_density < steel_density;
  }
  static constexpr Number formula(Density mud_density, Density steel_density) noexcept {
    return 1.0 - mud_density / steel_density;
  }
};
inline constexpr Model<BuoyancyFactor> buoyancy_factor{};

/// Mass per length of a plain tube.
///
///   w = ρ π (D² − d²) / 4
///
/// w  result              mass per length
/// D  outer_diameter      length
/// d  inner_diameter      length, 0 for a bar
/// ρ  density             density
///
/// Geometry; no range. With steel of 489.5 lb/ft³ (7841 kg/m³) it is the drill-collar rule of the
/// trade, w [lb/ft] = 2.67 (D² − d²) [in].
struct TubeMassPerLength {
  static constexpr std::string_view name = "drillstring.tube_mass_per_length";
  static constexpr std::tuple parameters{argument::outer_diameter, argument::inner_diameter,
                                         argument::density};
  static constexpr std::string_view joint_rule =
      "inner_diameter must be less than outer_diameter (geometry)";

  static constexpr bool joint(Length outer_diameter, Length inner_diameter, Density) noexcept {
    return inner_diameter < outer_diameter;
  }
  static constexpr MassPerLength formula(Length outer_diameter, Length inner_diameter,
                                         Density density) noexcept {
    return density * (pi / 4.0) *
           (outer_diameter * outer_diameter - inner_diameter * inner_diameter);
  }
};
inline constexpr Model<TubeMassPerLength> tube_mass_per_length{};

/// Weight per length of a pipe in mud: the W_m that work of the line is computed with.
///
///   W_m = w g BF
///
/// W_m  result            force per length
/// w    mass_per_length   mass per length in air, with tool joints or couplings
/// g    standard gravity, 9.80665 m/s²: a pound of pipe weighs a pound-force
/// BF   buoyancy_factor   ratio
///
/// Source: Lapeyrouse (2002), p. 44, ton-miles, W_p = pipe weight × buoyancy factor.
struct BuoyedWeightPerLength {
  static constexpr std::string_view name = "drillstring.buoyed_weight_per_length";
  static constexpr std::tuple parameters{argument::mass_per_length, argument::buoyancy_factor};

  static constexpr ForcePerLength formula(MassPerLength mass_per_length, Number buoyancy) noexcept {
    return mass_per_length * standard_gravity * buoyancy;
  }
};
inline constexpr Model<BuoyedWeightPerLength> buoyed_weight_per_length{};

}  // namespace ropewalk::drillstring
