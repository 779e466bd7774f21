/// Turning parts, seen from another shaft or from the hook.
#pragma once

#include <string_view>

#include "ropewalk/base/model.hpp"
#include "ropewalk/drawworks/parameters.hpp"

namespace ropewalk::drawworks {

/// Moment of inertia of a part, seen from a shaft that turns slower by a ratio.
///
///   J_r = J i²
///
/// J  inertia     moment of inertia of the part about its own shaft
/// i  gear_ratio  its speed over that of the other shaft; below 1 where the part turns slower
///
/// Both have the same kinetic energy. Losses in the gear are not counted. Source: kinematics;
/// Shigley, Mechanical Engineering Design, problem 16-27 (reflected inertia of a geared load).
struct ReflectedInertia {
  static constexpr std::string_view name = "drawworks.reflected_inertia";
  static constexpr std::tuple parameters{argument::inertia, argument::gear_ratio};

  static constexpr MomentOfInertia formula(MomentOfInertia inertia, Number gear_ratio) noexcept {
    return inertia * gear_ratio * gear_ratio;
  }
};
inline constexpr Model<ReflectedInertia> reflected_inertia{};

/// Mass at the hook that is as hard to accelerate as what turns with the drum.
///
///   m = J (2 N / D)²
///
/// J  inertia       moment of inertia, all of it referred to the drum shaft
/// N  lines         number of lines strung
/// D  lap_diameter  length, of the circle on which the center of the rope lies in its layer
///
/// Losses are not counted. Source: kinematics, ½ J ω² = ½ m v² with ω = 2 N v / D.
struct HookEquivalentMass {
  static constexpr std::string_view name = "drawworks.hook_equivalent_mass";
  static constexpr std::tuple parameters{argument::inertia, params::lines, argument::lap_diameter};

  static constexpr Mass formula(MomentOfInertia inertia, Number lines,
                                Length lap_diameter) noexcept {
    return lines * lines * mass_on_rim(inertia, 0.5 * lap_diameter);
  }
};
inline constexpr Model<HookEquivalentMass> hook_equivalent_mass{};

/// Mass at the hook that is as hard to accelerate as the turning sheaves of the blocks.
///
///   m = Σ_(k=1…N) J (2 k / D)² = J (2 / D)² N (N + 1)(2 N + 1) / 6
///
/// J  inertia          moment of inertia of one sheave, all alike
/// N  lines            number of lines strung: sheave k turns with k times the speed of the block
/// D  sheave_diameter  length, of the circle on which the center of the rope lies
///
/// Lead sheaves are not counted. Source: kinematics.
struct SheaveEquivalentMass {
  static constexpr std::string_view name = "drawworks.sheave_equivalent_mass";
  static constexpr std::tuple parameters{argument::inertia, params::lines, params::sheave_diameter};

  static constexpr Mass formula(MomentOfInertia inertia, Number lines,
                                Length sheave_diameter) noexcept {
    const Number squares = lines * (lines + 1.0) * (2.0 * lines + 1.0) / 6.0;
    return squares * mass_on_rim(inertia, 0.5 * sheave_diameter);
  }
};
inline constexpr Model<SheaveEquivalentMass> sheave_equivalent_mass{};

}  // namespace ropewalk::drawworks
