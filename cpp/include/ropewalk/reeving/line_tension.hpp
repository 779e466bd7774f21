/// Tension in the fast line and the dead line, and the load on the crown, with one K for all
/// sheaves: the formulas for sweeps. Symbols and source at the head of reeving/efficiency.hpp.
#pragma once

#include "ropewalk/reeving/efficiency.hpp"

namespace ropewalk::reeving {

namespace argument {

/// At the drum.
inline constexpr Parameter<Force> fast_line_tension{"fast_line_tension", params::force_range};

}  // namespace argument

/// Fast-line tension at the drum while hoisting steadily, API RP 9B.
///
///   T_fast = W · FLF = W K^S (K − 1) / (K^N − 1),   S = N + lead_sheaves
///
/// Source: API RP 9B, 14th ed. (2015) with Addendum 1 (2020), 2.3.3.4.
struct FastLineTension {
  static constexpr std::string_view name = "reeving.fast_line_tension";
  static constexpr std::tuple parameters{params::hook_load, params::lines, params::sheave_friction,
                                         params::lead_sheaves};

  static constexpr Force formula(Force hook_load, Number lines, Number sheave_friction,
                                 Number lead_sheaves) noexcept {
    const auto [sum, power] = detail::hoisting_sum(lines, sheave_friction, lead_sheaves);
    return hook_load * power / sum;
  }
};
inline constexpr Model<FastLineTension> fast_line_tension{};

/// Hook load that a fast-line tension at the drum hoists steadily: fast_line_tension the other way
/// round, for the load that a drawworks pull or a design factor leaves.
///
///   W = T_fast / FLF = T_fast (K^N − 1) / (K^S (K − 1)),   S = N + lead_sheaves
///
/// Source: API RP 9B, 14th ed. (2015) with Addendum 1 (2020), 2.3.3.4.
struct HoistedHookLoad {
  static constexpr std::string_view name = "reeving.hoisted_hook_load";
  static constexpr std::tuple parameters{argument::fast_line_tension, params::lines,
                                         params::sheave_friction, params::lead_sheaves};

  static constexpr Force formula(Force fast_line, Number lines, Number sheave_friction,
                                 Number lead_sheaves) noexcept {
    const auto [sum, power] = detail::hoisting_sum(lines, sheave_friction, lead_sheaves);
    return fast_line * sum / power;
  }
};
inline constexpr Model<HoistedHookLoad> hoisted_hook_load{};

/// Fast-line tension at the drum for a given reeving efficiency.
///
///   T_fast = W / (N E)
///
/// For an efficiency that was measured on the rig, or that a textbook or a contract prescribes.
/// Source: Bourgoyne, Millheim, Chenevert & Young, Applied Drilling Engineering (SPE, 1986), ch. 1;
/// the definition of E.
struct FastLineTensionAtEfficiency {
  static constexpr std::string_view name = "reeving.fast_line_tension_at_efficiency";
  static constexpr std::tuple parameters{params::hook_load, params::lines,
                                         params::reeving_efficiency};

  static constexpr Force formula(Force hook_load, Number lines,
                                 Number reeving_efficiency) noexcept {
    return hook_load / (lines * reeving_efficiency);
  }
};
inline constexpr Model<FastLineTensionAtEfficiency> fast_line_tension_at_efficiency{};

/// Tension at the dead end of the rope while hoisting steadily.
///
///   T_dead = T_fast / K^S = W (K − 1) / (K^N − 1)
///
/// The dead-line sheave does not turn, so this is also the tension of line 1. Lead sheaves have no
/// part in it. Source: derived; the multiples of W/N are printed in Shell International
/// Exploration and Production, Well Engineers Notebook, ed. 2 (2001), p. B-1.
struct DeadLineTension {
  static constexpr std::string_view name = "reeving.dead_line_tension";
  static constexpr std::tuple parameters{params::hook_load, params::lines, params::sheave_friction};

  static constexpr Force formula(Force hook_load, Number lines, Number sheave_friction) noexcept {
    return hook_load / power_sum(to_si(sheave_friction), detail::count(lines), 0).sum;
  }
};
inline constexpr Model<DeadLineTension> dead_line_tension{};

/// Fast-line tension at the drum while lowering steadily.
///
///   T_fast = W (K − 1) / (K^(1 + lead_sheaves) (K^N − 1))
///
/// Source: derived; hoisting with 1/K in the place of K.
struct LoweringFastLineTension {
  static constexpr std::string_view name = "reeving.lowering_fast_line_tension";
  static constexpr std::tuple parameters{params::hook_load, params::lines, params::sheave_friction,
                                         params::lead_sheaves};

  static constexpr Force formula(Force hook_load, Number lines, Number sheave_friction,
                                 Number lead_sheaves) noexcept {
    const auto [sum, power] = detail::lowering_sum(lines, sheave_friction, lead_sheaves);
    return hook_load / (power * sum);
  }
};
inline constexpr Model<LoweringFastLineTension> lowering_fast_line_tension{};

/// Tension at the dead end of the rope while lowering steadily: the largest of all lines.
///
///   T_dead = W K^(N−1) (K − 1) / (K^N − 1)
///
/// Source: derived; hoisting with 1/K in the place of K.
struct LoweringDeadLineTension {
  static constexpr std::string_view name = "reeving.lowering_dead_line_tension";
  static constexpr std::tuple parameters{params::hook_load, params::lines, params::sheave_friction};

  static constexpr Force formula(Force hook_load, Number lines, Number sheave_friction) noexcept {
    const auto [sum, power] =
        power_sum(to_si(sheave_friction), detail::count(lines), detail::count(lines) - 1);
    return hook_load * power / sum;
  }
};
inline constexpr Model<LoweringDeadLineTension> lowering_dead_line_tension{};

/// Load on the crown block while hoisting steadily: all lines, the fast line as it leaves the
/// crown, and for an even number of lines the dead line.
///
///   F = W + T_fast + T_dead = W (1 + (K^N + 1)(K − 1)/(K^N − 1))    N even
///   F = W + T_fast          = W (1 + K^N (K − 1)/(K^N − 1))         N odd, dead end on the block
///
/// At K = 1 it is the load at rest, W (N + 2)/N or W (N + 1)/N. All lines are taken as vertical;
/// lead sheaves stand below the crown and have no part in it.
/// Source: derived, equilibrium of the crown block; at rest and for even N in Bourgoyne et al.,
/// Applied Drilling Engineering (SPE, 1986), ch. 1.
struct CrownLoad {
  static constexpr std::string_view name = "reeving.crown_load";
  static constexpr std::tuple parameters{params::hook_load, params::lines, params::sheave_friction};

  static constexpr Force formula(Force hook_load, Number lines, Number sheave_friction) noexcept {
    const int n = detail::count(lines);
    const auto [sum, power] = power_sum(to_si(sheave_friction), n, n);
    const double dead_line = 1 - n % 2;
    return hook_load * ((sum + power + dead_line) / sum);
  }
};
inline constexpr Model<CrownLoad> crown_load{};

/// Load on the crown block while lowering steadily.
///
///   F = W (1 + (K^N + 1)(K − 1)/(K (K^N − 1)))    N even
///   F = W (1 + (K − 1)/(K (K^N − 1)))             N odd, dead end on the block
///
/// Less than at rest for an even number of lines: the fast line loses more than the dead line
/// gains. Source: derived; CrownLoad with 1/K in the place of K.
struct LoweringCrownLoad {
  static constexpr std::string_view name = "reeving.lowering_crown_load";
  static constexpr std::tuple parameters{params::hook_load, params::lines, params::sheave_friction};

  static constexpr Force formula(Force hook_load, Number lines, Number sheave_friction) noexcept {
    const int n = detail::count(lines);
    const double friction = to_si(sheave_friction);
    const auto [sum, power] = power_sum(friction, n, n);
    const double dead_line = static_cast<double>(1 - n % 2) * power;
    return hook_load * (1.0 + (1.0 + dead_line) / (friction * sum));
  }
};
inline constexpr Model<LoweringCrownLoad> lowering_crown_load{};

}  // namespace ropewalk::reeving
