/// How far the strung line stretches, and how fast a load swings up and down on it.
///
/// The block is a rigid mass on a spring without mass: the rope of a drilling line weighs a few
/// percent of the load. A long string is no rigid mass; see dynamics/string.hpp.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/dynamics/parameters.hpp"

namespace ropewalk::dynamics {

/// Stiffness of the strung line at the block, sheaves free to turn.
///
///   k = N² E A / (N h + L_f + L_d)
///
/// N    lines             number of lines
/// E A  rope_modulus, metallic_area
/// h    line_height       length of one line between the blocks
/// L_f  fast_line_length  crown to drum
/// L_d  dead_line_length  crown to anchor; 0 if the dead end is on the block
///
/// All of the rope has one tension T; the block sees N T, and N x of rope must come out of the
/// stretch T (N h + L_f + L_d)/(E A). Drum, crown and anchor do not give way. A lower bound: where
/// friction holds the sheaves the line is stiffer, up to LockedStiffness. Source: derived.
struct LineStiffness {
  static constexpr std::string_view name = "dynamics.line_stiffness";
  static constexpr std::tuple parameters{
      argument::rope_modulus, argument::metallic_area,    params::lines,
      argument::line_height,  argument::fast_line_length, argument::dead_line_length};

  static constexpr Stiffness formula(Stress rope_modulus, Area metallic_area, Number lines,
                                     Length line_height, Length fast_line_length,
                                     Length dead_line_length) noexcept {
    const Length rope = lines * line_height + fast_line_length + dead_line_length;
    return lines * lines * (rope_modulus * metallic_area / rope);
  }
};
inline constexpr Model<LineStiffness> line_stiffness{};

/// Stiffness of the lines between the blocks alone, sheaves locked.
///
///   k = N E A / h
///
/// What swings too small to overcome the friction of the sheaves feel: the upper bound. Symbols as
/// for LineStiffness. Source: springs side by side.
struct LockedStiffness {
  static constexpr std::string_view name = "dynamics.locked_stiffness";
  static constexpr std::tuple parameters{argument::rope_modulus, argument::metallic_area,
                                         params::lines, argument::line_height};

  static constexpr Stiffness formula(Stress rope_modulus, Area metallic_area, Number lines,
                                     Length line_height) noexcept {
    return lines * (rope_modulus * metallic_area / line_height);
  }
};
inline constexpr Model<LockedStiffness> locked_stiffness{};

/// Stiffness of a rope or string pulled at its end.
///
///   k = E A / L
///
/// Source: Hooke's law.
struct StringStiffness {
  static constexpr std::string_view name = "dynamics.string_stiffness";
  static constexpr std::tuple parameters{argument::string_modulus, argument::string_area,
                                         argument::string_length};

  static constexpr Stiffness formula(Stress string_modulus, Area string_area,
                                     Length string_length) noexcept {
    return string_modulus * string_area / string_length;
  }
};
inline constexpr Model<StringStiffness> string_stiffness{};

/// Stiffness of two springs one after the other: line and mast, line and string.
///
///   1/k = 1/k₁ + 1/k₂
///
/// Source: the same force stretches both.
struct SeriesStiffness {
  static constexpr std::string_view name = "dynamics.series_stiffness";
  static constexpr std::tuple parameters{argument::stiffness, argument::other_stiffness};

  static constexpr Stiffness formula(Stiffness one, Stiffness other) noexcept {
    return one * (other / (one + other));
  }
};
inline constexpr Model<SeriesStiffness> series_stiffness{};

/// Stretch under the load at rest.
///
///   δ = W / k
struct StaticStretch {
  static constexpr std::string_view name = "dynamics.static_stretch";
  static constexpr std::tuple parameters{params::hook_load, argument::stiffness};

  static constexpr Length formula(Force hook_load, Stiffness stiffness) noexcept {
    return hook_load / stiffness;
  }
};
inline constexpr Model<StaticStretch> static_stretch{};

/// Natural frequency of a load that hangs on the line.
///
///   f = √(k g / W) / (2π) = √(g/δ) / (2π)
///
/// W  hook_load  force, all of it taken as one rigid mass W/g
/// k  stiffness  of the line
/// δ  = W/k, the stretch at rest
///
/// Source: e.g. Harris' Shock and Vibration Handbook, 5th ed. (2002), ch. 2.
struct NaturalFrequency {
  static constexpr std::string_view name = "dynamics.natural_frequency";
  static constexpr std::tuple parameters{argument::hook_load, argument::stiffness};

  static Frequency formula(Force hook_load, Stiffness stiffness) noexcept {
    const double square = to_si(stiffness) * to_si(standard_gravity) / to_si(hook_load);
    return from_si<Frequency>(std::sqrt(square) / (2.0 * pi));
  }
};
inline constexpr Model<NaturalFrequency> natural_frequency{};

}  // namespace ropewalk::dynamics
