/// The numbers that life models are written in: ratios of the arguments of a bend.
///
/// Bending tests are evaluated against such ratios, and the ranges in which they were made are
/// stated in them. A group is computed from quantities, so the compiler checks its dimension; what
/// follows, logarithms and fitted constants, are plain numbers by the nature of the formulas.
#pragma once

#include <array>

#include "ropewalk/fatigue/bend_point.hpp"
#include "ropewalk/fatigue/feyrer_factors.hpp"

namespace ropewalk::fatigue {

enum class BendGroup : std::uint8_t {
  pressure_ratio,     ///< B = 2 F / (d D R0)
  bend_ratio,         ///< D/d
  specific_tension,   ///< S/d² in N/mm²
  strength_share,     ///< F/F_u
  bend_length_ratio,  ///< l/d
  rope_tension,       ///< S in N
  rope_diameter,      ///< d in mm
  wire_strength,      ///< R0 in N/mm²
  size_effect,        ///< f_d(d) of Feyrer
  length_effect,      ///< f_L(l/d) of Feyrer
};

template <BendGroup>
struct GroupFormula;

template <>
struct GroupFormula<BendGroup::pressure_ratio> {
  static constexpr std::string_view name = "pressure_ratio";
  static constexpr std::string_view unit = "";
  static constexpr std::array uses{BendArgument::rope_tension, BendArgument::rope_diameter,
                                   BendArgument::sheave_diameter, BendArgument::wire_strength};
  static constexpr double value(const BendPoint& p) noexcept {
    // The bearing pressure over the strength, in one division: this is the inner loop.
    return 2.0 * p.rope_tension / (p.rope_diameter * p.sheave_diameter * p.wire_strength);
  }
};

template <>
struct GroupFormula<BendGroup::bend_ratio> {
  static constexpr std::string_view name = "bend_ratio";
  static constexpr std::string_view unit = "";
  static constexpr std::array uses{BendArgument::rope_diameter, BendArgument::sheave_diameter};
  static constexpr double value(const BendPoint& p) noexcept {
    return p.sheave_diameter / p.rope_diameter;
  }
};

template <>
struct GroupFormula<BendGroup::specific_tension> {
  static constexpr std::string_view name = "specific_tension";
  static constexpr std::string_view unit = "N/mm2";
  static constexpr std::array uses{BendArgument::rope_tension, BendArgument::rope_diameter};
  static constexpr double value(const BendPoint& p) noexcept {
    return p.rope_tension / (p.rope_diameter * p.rope_diameter * megapascal);
  }
};

template <>
struct GroupFormula<BendGroup::strength_share> {
  static constexpr std::string_view name = "strength_share";
  static constexpr std::string_view unit = "";
  static constexpr std::array uses{BendArgument::rope_tension, BendArgument::breaking_force};
  static constexpr double value(const BendPoint& p) noexcept {
    return p.rope_tension / p.breaking_force;
  }
};

template <>
struct GroupFormula<BendGroup::bend_length_ratio> {
  static constexpr std::string_view name = "bend_length_ratio";
  static constexpr std::string_view unit = "";
  static constexpr std::array uses{BendArgument::rope_diameter, BendArgument::bend_length};
  static constexpr double value(const BendPoint& p) noexcept {
    return p.bend_length / p.rope_diameter;
  }
};

template <>
struct GroupFormula<BendGroup::rope_tension> {
  static constexpr std::string_view name = "rope_tension";
  static constexpr std::string_view unit = "N";
  static constexpr std::array uses{BendArgument::rope_tension};
  static constexpr double value(const BendPoint& p) noexcept { return p.rope_tension / newton; }
};

template <>
struct GroupFormula<BendGroup::rope_diameter> {
  static constexpr std::string_view name = "rope_diameter";
  static constexpr std::string_view unit = "mm";
  static constexpr std::array uses{BendArgument::rope_diameter};
  static constexpr double value(const BendPoint& p) noexcept {
    return p.rope_diameter / millimeter;
  }
};

template <>
struct GroupFormula<BendGroup::wire_strength> {
  static constexpr std::string_view name = "wire_strength";
  static constexpr std::string_view unit = "N/mm2";
  static constexpr std::array uses{BendArgument::wire_strength};
  static constexpr double value(const BendPoint& p) noexcept {
    return p.wire_strength / megapascal;
  }
};

template <>
struct GroupFormula<BendGroup::size_effect> {
  static constexpr std::string_view name = "size_effect";
  static constexpr std::string_view unit = "";
  static constexpr std::array uses{BendArgument::rope_diameter};
  static double value(const BendPoint& p) noexcept { return SizeFactor::formula(p.rope_diameter); }
};

template <>
struct GroupFormula<BendGroup::length_effect> {
  static constexpr std::string_view name = "length_effect";
  static constexpr std::string_view unit = "";
  static constexpr std::array uses{BendArgument::rope_diameter, BendArgument::bend_length};
  static double value(const BendPoint& p) noexcept {
    return LengthFactor::formula(p.bend_length / p.rope_diameter);
  }
};

/// Calls `act.operator()<group>()` for a group known only at run time.
template <class Act>
decltype(auto) with_group(BendGroup group, Act&& act) {
  switch (group) {
    using enum BendGroup;
    case pressure_ratio:
      return act.template operator()<pressure_ratio>();
    case bend_ratio:
      return act.template operator()<bend_ratio>();
    case specific_tension:
      return act.template operator()<specific_tension>();
    case strength_share:
      return act.template operator()<strength_share>();
    case bend_length_ratio:
      return act.template operator()<bend_length_ratio>();
    case rope_tension:
      return act.template operator()<rope_tension>();
    case rope_diameter:
      return act.template operator()<rope_diameter>();
    case wire_strength:
      return act.template operator()<wire_strength>();
    case size_effect:
      return act.template operator()<size_effect>();
    case length_effect:
      break;
  }
  return act.template operator()<BendGroup::length_effect>();
}

[[nodiscard]] inline double value_of(BendGroup group, const BendPoint& point) noexcept {
  return with_group(group, [&]<BendGroup g>() { return GroupFormula<g>::value(point); });
}
[[nodiscard]] inline std::string_view name_of(BendGroup group) noexcept {
  return with_group(group, []<BendGroup g>() { return GroupFormula<g>::name; });
}
[[nodiscard]] inline std::string_view unit_of(BendGroup group) noexcept {
  return with_group(group, []<BendGroup g>() { return GroupFormula<g>::unit; });
}

}  // namespace ropewalk::fatigue
