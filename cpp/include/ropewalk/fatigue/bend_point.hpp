/// One bend of a rope over a sheave: the arguments that life models take.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <string_view>

#include "ropewalk/base/batch.hpp"
#include "ropewalk/fatigue/parameters.hpp"
#include "ropewalk/units/text.hpp"

namespace ropewalk::fatigue {

/// Stands for an argument the caller does not give; a model that needs it refuses the point.
template <class Q>
[[nodiscard]] constexpr Q not_given() noexcept {
  return from_si<Q>(std::numeric_limits<double>::quiet_NaN());
}

/// A rope that runs over one sheave under one tension. One bending cycle is straight – bent –
/// straight on that sheave.
struct BendPoint {
  Force rope_tension = not_given<Force>();
  Length rope_diameter = not_given<Length>();
  Length sheave_diameter = not_given<Length>();
  Stress wire_strength = not_given<Stress>();
  Force breaking_force = not_given<Force>();
  /// Length of the rope piece that passes the sheave under the highest tension.
  Length bend_length = not_given<Length>();
  /// Product of endurance factors (endurance.hpp) by which the life is multiplied.
  Number life_factor = from_si<Number>(1.0);
};

enum class BendArgument : std::uint8_t {
  rope_tension,
  rope_diameter,
  sheave_diameter,
  wire_strength,
  breaking_force,
  bend_length,
  life_factor,
};
inline constexpr std::size_t bend_arguments = 7;

/// What an argument of a bend is called, and what it can be at all.
struct BendArgumentInfo {
  std::string_view name;
  std::string_view unit;
  Interval admissible;

  template <class Q>
  constexpr explicit BendArgumentInfo(const Parameter<Q>& parameter) noexcept
      : name(parameter.name), unit(unit_text<Q>()), admissible(parameter.admissible) {}
};

/// In the order of BendArgument.
inline constexpr std::array<BendArgumentInfo, bend_arguments> bend_argument_infos{
    BendArgumentInfo(params::positive_rope_tension),
    BendArgumentInfo(params::rope_diameter),
    BendArgumentInfo(params::sheave_diameter),
    BendArgumentInfo(params::wire_strength),
    BendArgumentInfo(params::breaking_force),
    BendArgumentInfo(params::bend_length),
    BendArgumentInfo(params::life_factor)};

[[nodiscard]] constexpr const BendArgumentInfo& info(BendArgument argument) noexcept {
  return bend_argument_infos[static_cast<std::size_t>(argument)];
}

/// Many bends: one column per BendArgument, in that order. A column without data is not given.
using BendColumns = std::array<Column, bend_arguments>;

}  // namespace ropewalk::fatigue
