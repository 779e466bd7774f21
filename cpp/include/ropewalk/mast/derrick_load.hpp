/// The load on a derrick or mast, and how evenly its four legs share it: the textbook formulas.
///
/// Symbols used throughout the subject
///   W    hook_load           everything hung on the lines, traveling block and hook included
///   n    lines               lines strung between the crown and the traveling block, even: an odd
///                            number has no dead line on the structure
///   E    reeving_efficiency  while hoisting
///   F_d  derrick load        what the crown bears on the structure, by the lines alone
///
/// These take the dead line as W/n, as the textbook does; reeving/line_tension.hpp has the crown
/// load with the friction of every sheave, hoisting, at rest and lowering. The legs of any layout
/// are in mast/legs.hpp.
/// Source: A. T. Bourgoyne, K. K. Millheim, M. E. Chenevert & F. S. Young, Applied Drilling
/// Engineering (SPE, 1986), ch. 1, eqs. 1.8 to 1.11 (equation numbers from memory).
#pragma once

#include <algorithm>

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"
#include "ropewalk/reeving/even_lines.hpp"

namespace ropewalk::mast {

/// Derrick load while hoisting steadily, Bourgoyne et al.
///
///   F_d = W + W/(E n) + W/n = W (1 + E + E n) / (E n)
///
/// hook load, fast line and dead line. At E = 1 it is the load at rest, W (n + 2)/n.
/// Source: see the head of this file.
struct DerrickLoad {
  static constexpr std::string_view name = "mast.derrick_load";
  static constexpr std::tuple parameters{params::hook_load, params::lines,
                                         params::reeving_efficiency};
  static constexpr std::string_view joint_rule = reeving::even_rule;

  static constexpr bool joint(Force, Number lines, Number) noexcept {
    return reeving::is_even(lines);
  }
  static constexpr Force formula(Force hook_load, Number lines,
                                 Number reeving_efficiency) noexcept {
    return hook_load *
           ((1.0 + reeving_efficiency + reeving_efficiency * lines) / (reeving_efficiency * lines));
  }
};
inline constexpr Model<DerrickLoad> derrick_load{};

/// Derrick load at rest: all lines alike.
///
///   F_d = W (n + 2) / n
///
/// Source as for DerrickLoad.
struct StaticDerrickLoad {
  static constexpr std::string_view name = "mast.static_derrick_load";
  static constexpr std::tuple parameters{params::hook_load, params::lines};
  static constexpr std::string_view joint_rule = reeving::even_rule;

  static constexpr bool joint(Force, Number lines) noexcept { return reeving::is_even(lines); }
  static constexpr Force formula(Force hook_load, Number lines) noexcept {
    return hook_load * ((lines + 2.0) / lines);
  }
};
inline constexpr Model<StaticDerrickLoad> static_derrick_load{};

/// Maximum equivalent derrick load: four times the load of the leg that bears most, Bourgoyne et
/// al.
///
///   F_de = W max(1 + 4/n, 1 + 2/(E n))
///
/// The layout of the textbook: dead line tied at one leg, drawworks between two other legs. The leg
/// of the dead line bears W/4 + W/n, a leg of the drawworks W/4 + W/(2 E n); the first governs
/// while E > 1/2. Source: see the head of this file.
struct EquivalentLoad {
  static constexpr std::string_view name = "mast.equivalent_load";
  static constexpr std::tuple parameters{params::hook_load, params::lines,
                                         params::reeving_efficiency};
  static constexpr std::string_view joint_rule = reeving::even_rule;

  static constexpr bool joint(Force, Number lines, Number) noexcept {
    return reeving::is_even(lines);
  }
  static constexpr Force formula(Force hook_load, Number lines,
                                 Number reeving_efficiency) noexcept {
    const double dead_line_leg = 4.0 / to_si(lines);
    const double drawworks_leg = 2.0 / to_si(Number(reeving_efficiency * lines));
    return hook_load * (1.0 + std::max(dead_line_leg, drawworks_leg));
  }
};
inline constexpr Model<EquivalentLoad> equivalent_load{};

/// Derrick efficiency factor: derrick load over maximum equivalent derrick load, Bourgoyne et al.
///
///   E_d = F_d / F_de,   = (E (n + 1) + 1) / (E (n + 4))   while E > 1/2
///
/// 1 if all legs bear alike. Layout, symbols and source as for EquivalentLoad.
struct EfficiencyFactor {
  static constexpr std::string_view name = "mast.efficiency_factor";
  static constexpr std::tuple parameters{params::lines, params::reeving_efficiency};
  static constexpr std::string_view joint_rule = reeving::even_rule;

  static constexpr bool joint(Number lines, Number) noexcept { return reeving::is_even(lines); }
  static constexpr Number formula(Number lines, Number reeving_efficiency) noexcept {
    const Force unit = from_si<Force>(1.0);
    return DerrickLoad::formula(unit, lines, reeving_efficiency) /
           EquivalentLoad::formula(unit, lines, reeving_efficiency);
  }
};
inline constexpr Model<EfficiencyFactor> efficiency_factor{};

}  // namespace ropewalk::mast
