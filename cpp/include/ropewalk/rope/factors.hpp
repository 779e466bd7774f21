/// Breaking force, mass and metallic area of a rope from the factors of its class.
///
/// EN 12385-4 and ISO 2408 describe a class of rope by three factors, each times the square of the
/// nominal diameter. They print them for millimeters, newtons per square millimeter and kilograms
/// per 100 m; as quantities they need no units.
#pragma once

#include <optional>
#include <string_view>

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"
#include "ropewalk/base/source.hpp"

namespace ropewalk::params {

/// No rope holds more metal than its circle.
inline constexpr Interval share_of_square =
    above_up_to(from_si<Number>(0.0), from_si<Number>(pi / 4.0), geometry);
/// Minimum breaking force factor K: breaking force over d² R.
inline constexpr Parameter<Number> strength_factor{"strength_factor", share_of_square};
/// Metallic area factor C: metallic area over d².
inline constexpr Parameter<Number> area_factor{"area_factor", share_of_square};
/// Mass factor W: mass per length over d². Printed in kg per 100 m and mm², which is 10⁴ kg/m³; a
/// steel bar of the diameter of the rope has π/4 · 7850 kg/m³ = 6165 kg/m³.
inline constexpr Parameter<Density> mass_factor{
    "mass_factor",
    above_up_to(0.0 * kilogram_per_cubic_meter, 8'000.0 * kilogram_per_cubic_meter, guard)};

}  // namespace ropewalk::params

namespace ropewalk::rope {

/// Minimum breaking force of a rope from the factor of its class and the grade of its wires.
///
///   F = K d² R
///
/// F  breaking force    force
/// d  rope_diameter     length, nominal
/// R  wire_strength     stress, rope grade (nominal tensile strength of the wires)
/// K  strength_factor   number, minimum breaking force factor of the class and core
///
/// K holds fill factor and spinning loss. Definition of K; no range.
/// Source: EN 12385-4; ISO 2408.
struct BreakingForceFromFactor {
  static constexpr std::string_view name = "rope.breaking_force_from_factor";
  static constexpr std::tuple parameters{params::rope_diameter, params::wire_strength,
                                         params::strength_factor};

  static constexpr Force formula(Length rope_diameter, Stress wire_strength,
                                 Number strength_factor) noexcept {
    return strength_factor * (rope_diameter * rope_diameter) * wire_strength;
  }
};
inline constexpr Model<BreakingForceFromFactor> breaking_force_from_factor{};

/// Mass per length of a rope from the factor of its class.
///
///   M = W d²
///
/// M  mass per length   mass per length, lubricated rope
/// d  rope_diameter     length, nominal
/// W  mass_factor       density; 0.409 kg per 100 m and mm² is 4090 kg/m³
///
/// Definition of W; no range. Source: EN 12385-4; ISO 2408.
struct MassFromFactor {
  static constexpr std::string_view name = "rope.mass_from_factor";
  static constexpr std::tuple parameters{params::rope_diameter, params::mass_factor};

  static constexpr MassPerLength formula(Length rope_diameter, Density mass_factor) noexcept {
    return mass_factor * (rope_diameter * rope_diameter);
  }
};
inline constexpr Model<MassFromFactor> mass_from_factor{};

/// Metallic cross section of a rope from the factor of its class.
///
///   A = C d²
///
/// A  metallic area    area
/// d  rope_diameter    length, nominal
/// C  area_factor      number; fill factor times π/4
///
/// Definition of C; no range. Source: EN 12385-4; ISO 2408.
struct AreaFromFactor {
  static constexpr std::string_view name = "rope.area_from_factor";
  static constexpr std::tuple parameters{params::rope_diameter, params::area_factor};

  static constexpr Area formula(Length rope_diameter, Number area_factor) noexcept {
    return area_factor * (rope_diameter * rope_diameter);
  }
};
inline constexpr Model<AreaFromFactor> area_from_factor{};

/// Factors of one class and core; a factor that was not to hand is missing.
struct Factors {
  std::string_view rope_class;
  std::string_view core;
  Number strength_factor;
  std::optional<Number> area_factor;
  std::optional<Density> mass_factor;
  Provenance provenance;
};

/// Factors of a class by name and core, e.g. "6x36 IWRC"; rotation-resistant classes by name alone,
/// "35(W)x7". Throws LookupError with the classes there are.
[[nodiscard]] Factors factors(std::string_view rope_class);

}  // namespace ropewalk::rope
