/// Wire breaks at which a rope is due for discard, and the tension they leave room for.
#pragma once

#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "ropewalk/base/model.hpp"
#include "ropewalk/fatigue/parameters.hpp"

namespace ropewalk::params {

// Constants of the discard number, Feyrer, Table 3.18: plain numbers for S/d² in N/mm².
inline constexpr Parameter<Number> g0{
    "g0", between(from_si<Number>(0.0), from_si<Number>(1000.0), guard)};
inline constexpr Parameter<Number> g1{
    "g1", above_up_to(from_si<Number>(0.0), from_si<Number>(1.0), guard)};
inline constexpr Parameter<Number> g2{"g2",
                                      between(from_si<Number>(-1e5), from_si<Number>(1e5), guard)};
inline constexpr Parameter<Number> g3{"g3",
                                      between(from_si<Number>(0.0), from_si<Number>(100.0), guard)};

}  // namespace ropewalk::params

namespace ropewalk::fatigue {

/// Wire breaks on a length of 30 rope diameters at which the rope is due for discard (Feyrer).
///
///   B_A30 = g0 − g1 (S/d²)² − g2 (d/D)² − g3 (S/d²)² (d/D)²
///
/// S  rope_tension     force, N
/// d  rope_diameter    length, mm, nominal
/// D  sheave_diameter  length, mm
/// g0 … g3             constants of the rope construction, data table "discard_wire_breaks"
///
/// On a length of 6 d half of it. Beyond the tension at which the formula reaches 0 no number of
/// wire breaks gives a warning, and the point is refused.
/// Source: Feyrer, Wire Ropes, 2nd ed. (2015), eq. 3.83 and Table 3.18; minus signs as eq. 3.94
/// requires them.
struct DiscardWireBreaks {
  static constexpr std::string_view name = "fatigue.discard_wire_breaks";
  static constexpr std::tuple parameters{params::rope_tension,
                                         params::rope_diameter,
                                         params::sheave_diameter,
                                         params::g0,
                                         params::g1,
                                         params::g2,
                                         params::g3};
  static constexpr std::string_view joint_rule =
      "rope_tension is beyond the discard limiting force: no wire breaks are left that would warn "
      "(Feyrer, Wire Ropes, 2nd ed., eqs. 3.83 and 3.94)";

  static constexpr bool joint(Force rope_tension, Length rope_diameter, Length sheave_diameter,
                              Number g0, Number g1, Number g2, Number g3) noexcept {
    return formula(rope_tension, rope_diameter, sheave_diameter, g0, g1, g2, g3) >= 0.0;
  }
  static constexpr Number formula(Force rope_tension, Length rope_diameter, Length sheave_diameter,
                                  Number g0, Number g1, Number g2, Number g3) noexcept {
    const double tension = rope_tension / (rope_diameter * rope_diameter) / megapascal;
    const double bend = rope_diameter / sheave_diameter;
    const double t2 = tension * tension;
    const double b2 = bend * bend;
    return g0 - g1 * t2 - g2 * b2 - g3 * t2 * b2;
  }
};
inline constexpr Model<DiscardWireBreaks> discard_wire_breaks{};

/// Tension up to which a wanted number of wire breaks warns before the rope fails, S_G (Feyrer).
///
///   S_G = d² √[ (g0 − B_A30min − g2 (d/D)²) / (g1 + g3 (d/D)²) ]
///
/// B_A30min  least_wire_breaks  number on a length of 30 rope diameters
/// the rest as in DiscardWireBreaks
///
/// Source: Feyrer, Wire Ropes, 2nd ed. (2015), eq. 3.94 and Table 3.18.
struct DiscardLimitingForce {
  static constexpr std::string_view name = "fatigue.discard_limiting_force";
  static constexpr std::tuple parameters{
      Parameter<Number>{"least_wire_breaks",
                        between(from_si<Number>(0.0), from_si<Number>(1000.0), params::guard)},
      params::rope_diameter,
      params::sheave_diameter,
      params::g0,
      params::g1,
      params::g2,
      params::g3};
  static constexpr std::string_view joint_rule =
      "least_wire_breaks is more than this rope on this sheave shows at any tension (Feyrer, Wire "
      "Ropes, 2nd ed., eq. 3.94)";

  static constexpr bool joint(Number least_wire_breaks, Length rope_diameter,
                              Length sheave_diameter, Number g0, Number, Number g2,
                              Number) noexcept {
    const double bend = rope_diameter / sheave_diameter;
    return g0 - least_wire_breaks - g2 * bend * bend >= 0.0;
  }
  static Force formula(Number least_wire_breaks, Length rope_diameter, Length sheave_diameter,
                       Number g0, Number g1, Number g2, Number g3) noexcept {
    const double bend = rope_diameter / sheave_diameter;
    const double b2 = bend * bend;
    const double tension = std::sqrt((g0 - least_wire_breaks - g2 * b2) / (g1 + g3 * b2));
    return tension * megapascal * (rope_diameter * rope_diameter);
  }
};
inline constexpr Model<DiscardLimitingForce> discard_limiting_force{};

/// One row of data table "discard_wire_breaks".
struct DiscardConstants {
  std::string construction;  ///< "WRC-8x36 WS"
  double g0, g1, g2, g3;
  std::string source;
  std::string standing;
};

/// Constants of a rope construction. Throws LookupError that offers the constructions there are.
[[nodiscard]] const DiscardConstants& discard_constants(std::string_view construction);
[[nodiscard]] const std::vector<DiscardConstants>& discard_constructions();

}  // namespace ropewalk::fatigue
