/// What the rope does to the drum: pressure on the barrel, hoop stress in its wall.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/drum/parameters.hpp"

namespace ropewalk::drum {

namespace argument {
inline constexpr Parameter<Number> layer_factor{
    "layer_factor", between(from_si<Number>(1.0), from_si<Number>(100.0), params::geometry)};
}  // namespace argument

/// Pressure of the rope on the barrel, spread over the pitch.
///
///   p = 2 C T / (D t_p)
///
/// p    barrel pressure  stress
/// C    layer_factor     number, see layer_factor
/// T    rope_tension     force, under which it is wound
/// D    barrel_diameter  length
/// t_p  pitch            length, from lap to lap
///
/// Exact equilibrium of one layer (C = 1). Source: geometry and statics.
struct BarrelPressure {
  static constexpr std::string_view name = "drum.barrel_pressure";
  static constexpr std::tuple parameters{params::rope_tension, argument::barrel_diameter,
                                         argument::pitch, argument::layer_factor};

  static constexpr Stress formula(Force rope_tension, Length barrel_diameter, Length pitch,
                                  Number layer_factor) noexcept {
    return 2.0 * layer_factor * rope_tension / (barrel_diameter * pitch);
  }
};
inline constexpr Model<BarrelPressure> barrel_pressure{};

/// Hoop stress in the wall of the barrel, compressive, as class rules for lifting appliances have
/// it.
///
///   σ_h = C T / (t_p t)
///
/// t  wall_thickness  length, mean, grooves taken off
/// Other symbols as for BarrelPressure; it is the stress p D / 2t of a thin shell under that
/// pressure. Bending at flanges and stiffeners comes on top.
/// Source (from memory): DNV Standard for Certification 2.22, Lifting Appliances, drums.
struct BarrelHoopStress {
  static constexpr std::string_view name = "drum.barrel_hoop_stress";
  static constexpr std::tuple parameters{params::rope_tension, argument::pitch,
                                         argument::wall_thickness, argument::layer_factor};

  static constexpr Stress formula(Force rope_tension, Length pitch, Length wall_thickness,
                                  Number layer_factor) noexcept {
    return layer_factor * rope_tension / (pitch * wall_thickness);
  }
};
inline constexpr Model<BarrelHoopStress> barrel_hoop_stress{};

/// How much more than one layer some layers wound under the same tension press on the barrel: 1 for
/// one, 1.75 for two (cpp/data/drum_layer_factors.csv). Lower layers lose tension as the upper ones
/// press on them, so that it stays below the number of layers.
///
/// For more layers it is considered case by case: throws LookupError. It then lies between 1 (all
/// lower layers slack) and the number of layers (none lost any tension).
/// Source (from memory): DNV Standard for Certification 2.22, Lifting Appliances, drums; that more
/// than two layers are a case of their own: M. Popa, Forces experienced by winch drums and reels,
/// 18th North Sea Offshore Crane and Lifting Conference (2013).
[[nodiscard]] Sourced<Number> layer_factor(int layers);

}  // namespace ropewalk::drum
