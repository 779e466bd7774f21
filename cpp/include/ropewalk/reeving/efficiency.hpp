/// Efficiency of a reeved block and tackle.
///
/// Symbols used throughout the subject
///   N  lines            lines strung between the crown and the traveling block
///   K  sheave_friction  tension ratio of the tight to the slack side of one turning sheave
///   S  turning sheaves from the dead line to the drum, N + lead_sheaves
///   W  hook_load        everything hung on the lines, traveling block and hook included
///
/// Source of the hoisting formulas: API RP 9B, 14th ed. (2015) with Addendum 1 (2020), 2.3.3.4 and
/// Figures 1 and 2: case A is lead_sheaves = 0, case B is 1, case C is 2. The formulas assume
/// steady motion, vertical lines and one K for all sheaves; reeving/tensions.hpp takes each sheave
/// by itself.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"
#include "ropewalk/reeving/power_sum.hpp"

namespace ropewalk::reeving {

namespace detail {

[[nodiscard]] constexpr int count(Number whole) noexcept { return static_cast<int>(to_si(whole)); }

/// K^0 + … + K^(N−1) and K^(N + lead), of the quantities of a row.
[[nodiscard]] constexpr PowerSum hoisting_sum(Number lines, Number sheave_friction,
                                              Number lead_sheaves) noexcept {
  return power_sum(to_si(sheave_friction), count(lines), count(lines) + count(lead_sheaves));
}

/// K^0 + … + K^(N−1) and K^(1 + lead).
[[nodiscard]] constexpr PowerSum lowering_sum(Number lines, Number sheave_friction,
                                              Number lead_sheaves) noexcept {
  return power_sum(to_si(sheave_friction), count(lines), 1 + count(lead_sheaves));
}

}  // namespace detail

/// Reeving efficiency while hoisting steadily, API RP 9B.
///
///   EF = (K^N − 1) / (K^S N (K − 1)),   S = N + lead_sheaves
///
/// the power that reaches the hook over the power that the fast line takes from the drum. It is 1
/// without friction (K = 1) and falls with every sheave.
/// Source: see the head of this file. Computed without the quotient (reeving/power_sum.hpp).
struct Efficiency {
  static constexpr std::string_view name = "reeving.efficiency";
  static constexpr std::tuple parameters{params::lines, params::sheave_friction,
                                         params::lead_sheaves};

  static constexpr Number formula(Number lines, Number sheave_friction,
                                  Number lead_sheaves) noexcept {
    const auto [sum, power] = detail::hoisting_sum(lines, sheave_friction, lead_sheaves);
    return sum / (lines * power);
  }
};
inline constexpr Model<Efficiency> efficiency{};

/// Fast-line factor while hoisting steadily, API RP 9B: fast-line tension at the drum over hook
/// load.
///
///   FLF = 1 / (N EF) = K^S (K − 1) / (K^N − 1)
///
/// Source: see the head of this file.
struct FastLineFactor {
  static constexpr std::string_view name = "reeving.fast_line_factor";
  static constexpr std::tuple parameters{params::lines, params::sheave_friction,
                                         params::lead_sheaves};

  static constexpr Number formula(Number lines, Number sheave_friction,
                                  Number lead_sheaves) noexcept {
    const auto [sum, power] = detail::hoisting_sum(lines, sheave_friction, lead_sheaves);
    return power / sum;
  }
};
inline constexpr Model<FastLineFactor> fast_line_factor{};

/// Reeving efficiency while lowering steadily: the power that reaches the drum over the power that
/// the load gives at the hook.
///
///   E = N T_fast / W = N (K − 1) / (K^(1 + lead_sheaves) (K^N − 1))
///
/// Every sheave now turns the other way and holds part of the load back, so the drum and its brake
/// see less than W/N.
/// Source: derived; hoisting with 1/K in the place of K.
struct LoweringEfficiency {
  static constexpr std::string_view name = "reeving.lowering_efficiency";
  static constexpr std::tuple parameters{params::lines, params::sheave_friction,
                                         params::lead_sheaves};

  static constexpr Number formula(Number lines, Number sheave_friction,
                                  Number lead_sheaves) noexcept {
    const auto [sum, power] = detail::lowering_sum(lines, sheave_friction, lead_sheaves);
    return lines / (power * sum);
  }
};
inline constexpr Model<LoweringEfficiency> lowering_efficiency{};

/// Reeving efficiency of a hoist that takes in both ends of its rope, API RP 9B case D.
///
///   EF = 2 (K^(N/2) − 1) / (K^(S/2) N (K − 1)),   S/2 = N/2 + lead_sheaves
///
/// The rope is drawn evenly over an equalizer sheave that does not turn. Each half is a reeving of
/// its own with N/2 lines under half of the load, and has the efficiency of one. `lead_sheaves` is
/// the number on each side. Each of the two fast lines pulls W/(N EF).
/// Source: API RP 9B, efficiency table, case D (letter from memory); the formula follows from the
/// symmetry and is tested by it.
struct TwoDrumEfficiency {
  static constexpr std::string_view name = "reeving.two_drum_efficiency";
  static constexpr std::tuple parameters{params::lines, params::sheave_friction,
                                         params::lead_sheaves};
  static constexpr std::string_view joint_rule =
      "lines must be even: each of the two rope ends carries half of them (definition)";

  /// Half of the lines is whole. For any number, so not by way of int: a sum this large keeps no
  /// digits of a fraction.
  static constexpr bool joint(Number lines, Number, Number) noexcept {
    constexpr double no_fraction = 0x1.8p52;
    const double half = to_si(lines) / 2.0;
    return (half + no_fraction) - no_fraction == half;
  }
  static constexpr Number formula(Number lines, Number sheave_friction,
                                  Number lead_sheaves) noexcept {
    return Efficiency::formula(lines / 2.0, sheave_friction, lead_sheaves);
  }
};
inline constexpr Model<TwoDrumEfficiency> two_drum_efficiency{};

}  // namespace ropewalk::reeving
