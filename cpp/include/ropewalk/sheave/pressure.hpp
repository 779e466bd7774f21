/// Radial bearing pressure of a rope in a sheave groove.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"
#include "ropewalk/base/source.hpp"

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

/// Drucker and Tachau's bearing pressure ratio: bearing pressure over the strength of the wire, the
/// number against which bending life is plotted.
///
///   B = p / S_u = 2 F / (d D S_u)
///
/// B    bearing pressure ratio  number
/// F    rope_tension            force
/// d    rope_diameter           length, nominal
/// D    sheave_diameter         length, tread diameter
/// S_u  wire_strength           stress, ultimate tensile strength of the wires
///
/// Source: Drucker & Tachau, Trans. ASME 67 (1945); Shigley & Mitchell, Mechanical Engineering
/// Design, 4th ed. (1983), ch. 18.
struct BearingPressureRatio {
  static constexpr std::string_view name = "sheave.bearing_pressure_ratio";
  static constexpr std::tuple parameters{params::rope_tension, params::rope_diameter,
                                         params::sheave_diameter, params::wire_strength};
  static constexpr std::string_view joint_rule = BearingPressure::joint_rule;

  static constexpr bool joint(Force, Length rope_diameter, Length sheave_diameter,
                              Stress) noexcept {
    return sheave_diameter >= rope_diameter;
  }
  static constexpr Number formula(Force rope_tension, Length rope_diameter, Length sheave_diameter,
                                  Stress wire_strength) noexcept {
    return BearingPressure::formula(rope_tension, rope_diameter, sheave_diameter) / wire_strength;
  }
};
inline constexpr Model<BearingPressureRatio> bearing_pressure_ratio{};

/// Bearing pressure a groove material bears without undue wear, by class of rope and lay.
///
/// groove_material  "wood (end grain)" or "wood", "cast iron", "cast steel", "chilled cast iron" or
///                  "manganese steel"
/// rope_class       "6x7", "6x19", "6x37" (now called "6x36") or "8x19"; nothing is printed for
///                  8x19 in lang lay
/// lay              "regular" or "lang"
///
/// Throws LookupError with the names the table has.
/// Source: American Iron and Steel Institute, Wire Rope Users Manual (1979), as Shigley, Mechanical
/// Engineering Design, 8th ed., Table 17-26, prints it.
[[nodiscard]] Sourced<Stress> bearing_pressure_limit(std::string_view groove_material,
                                                     std::string_view rope_class,
                                                     std::string_view lay);

}  // namespace ropewalk::sheave
