/// Radial bearing pressure of a rope in a sheave groove.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"

namespace ropewalk::sheave {

/// Radial bearing pressure of a rope on its sheave, on the projected area d·D.
///
///   p = 2 F / (d D)
///
/// p  bearing pressure        stress
/// F  rope_tension            force
/// d  rope_diameter           length, nominal
/// D  sheave_diameter         length, tread diameter
///
/// Exact equilibrium of a rope bent over a semicircle, spread over the projected area; no range.
/// Source: Shigley & Mitchell, Mechanical Engineering Design, 4th ed. (1983), ch. 18, wire rope;
/// the same form in Drucker & Tachau, Trans. ASME 67 (1945).
struct BearingPressure {
  static constexpr std::string_view name = "sheave.bearing_pressure";
  static constexpr std::tuple parameters{params::rope_tension, params::rope_diameter,
                                         params::sheave_diameter};
  static constexpr std::string_view joint_rule =
      "sheave_diameter must be at least rope_diameter (geometry)";

  static constexpr bool joint(Force, Length rope_diameter, Length sheave_diameter) noexcept {
    return sheave_diameter >= rope_diameter;
  }
  static constexpr Stress formula(Force rope_tension, Length rope_diameter,
                                  Length sheave_diameter) noexcept {
    return 2.0 * rope_tension / (rope_diameter * sheave_diameter);
  }
};
inline constexpr Model<BearingPressure> bearing_pressure{};

}  // namespace ropewalk::sheave
