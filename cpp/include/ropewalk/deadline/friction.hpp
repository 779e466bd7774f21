/// Sheave friction found from readings of the weight indicator. Symbols in deadline/indicator.hpp.
///
/// Move the same load slowly up and slowly down: the readings lie apart by friction alone. So the
/// string must hang free, without drag in the hole, pumps off, the block at about the same height,
/// and the speed low and steady.
#pragma once

#include <cmath>
#include <span>
#include <vector>

#include "ropewalk/deadline/indicator.hpp"

namespace ropewalk::deadline {

namespace detail {

/// Sheaves whose friction stands twice between the two readings: N − 1 + 2t.
[[nodiscard]] constexpr Number sheaves_between(Number lines, Number turning) noexcept {
  return lines - 1.0 + 2.0 * turning;
}

}  // namespace detail

/// Friction of one sheave from a reading while hoisting and one while lowering the same load.
///
///   K = (W_down / W_up)^(1 / (N − 1 + 2t))
///
/// Symbols in deadline/indicator.hpp. The hook load and the scale of the indicator cancel. Beyond
/// K = 2 no sheave turns: readings so far apart are refused.
/// Source: derived, quotient of the two ratios there.
struct FrictionFromReadings {
  static constexpr std::string_view name = "deadline.friction_from_readings";
  static constexpr std::tuple parameters{argument::reading_hoisting, argument::reading_lowering,
                                         params::lines, argument::turning_dead_line_sheaves};
  static constexpr std::string_view joint_rule =
      "lines must be even, and reading_lowering from reading_hoisting up, to no more than a "
      "friction "
      "of 2 makes of it (else it is not friction of sheaves that keeps them apart: drag in the "
      "hole, "
      "readings changed round or of two loads, another number of lines)";

  static bool joint(Force up, Force down, Number lines, Number turning) noexcept {
    const double most = params::sheave_friction.admissible.high;
    const double between = to_si(detail::sheaves_between(lines, turning));
    return reeving::is_even(lines) & (down >= up) & (down <= up * std::pow(most, between));
  }
  static Number formula(Force up, Force down, Number lines, Number turning) noexcept {
    const Number between = detail::sheaves_between(lines, turning);
    return from_si<Number>(std::pow(to_si(Number(down / up)), 1.0 / to_si(between)));
  }
};
inline constexpr Model<FrictionFromReadings> friction_from_readings{};

/// True hook load from a reading while hoisting and one while lowering it.
///
///   W = W_up K^t S / N   with K of FrictionFromReadings
///
/// It lies between the geometric and the arithmetic mean of the two readings. Source: derived.
struct HookLoadFromReadings {
  static constexpr std::string_view name = "deadline.hook_load_from_readings";
  static constexpr std::tuple parameters = FrictionFromReadings::parameters;
  static constexpr std::string_view joint_rule = FrictionFromReadings::joint_rule;

  static bool joint(Force up, Force down, Number lines, Number turning) noexcept {
    return FrictionFromReadings::joint(up, down, lines, turning);
  }
  static Force formula(Force up, Force down, Number lines, Number turning) noexcept {
    return HookLoadHoisting::formula(
        up, lines, FrictionFromReadings::formula(up, down, lines, turning), turning);
  }
};
inline constexpr Model<HookLoadFromReadings> hook_load_from_readings{};

/// Standard uncertainty of the friction that two readings give.
///
///   u(K) = K √2 u / (N − 1 + 2t)
///
/// u  reading_uncertainty  number, standard uncertainty of one reading over the reading, the same
///                         for both and independent: an error of scale has no part in it
///
/// Source: law of propagation of uncertainty, JCGM 100:2008 (GUM), 5.1.2 and 5.1.6, applied to
/// FrictionFromReadings. Range: u small against 1.
struct FrictionUncertainty {
  static constexpr std::string_view name = "deadline.friction_uncertainty";
  static constexpr std::tuple parameters{params::sheave_friction, params::lines,
                                         argument::turning_dead_line_sheaves,
                                         argument::reading_uncertainty};
  static constexpr std::string_view joint_rule = reeving::even_rule;

  static constexpr bool joint(Number, Number lines, Number, Number) noexcept {
    return reeving::is_even(lines);
  }
  static constexpr Number formula(Number sheave_friction, Number lines, Number turning,
                                  Number reading_uncertainty) noexcept {
    constexpr double root_2 = 1.4142135623730950488;
    return sheave_friction * root_2 * reading_uncertainty / detail::sheaves_between(lines, turning);
  }
};
inline constexpr Model<FrictionUncertainty> friction_uncertainty{};

/// One slow move of a log.
struct Move {
  Force reading;
  bool down = false;     ///< lowered; else hoisted
  std::size_t load = 0;  ///< which load: moves of one load have the same number, 0, 1, 2 …
};

/// Friction identified on a log of slow moves, and the loads that were moved.
struct FrictionFit {
  Number friction;         ///< K; below 1 only if the log contradicts the model
  Number standard_error;   ///< of K
  Number low, high;        ///< confidence interval of K
  Number scatter;          ///< standard deviation of one reading over the reading
  int degrees_of_freedom;  ///< moves less loads less 1
  std::vector<Force> hook_loads;
  std::vector<Force> hook_load_errors;  ///< standard errors
};

/// Least squares on the logarithms of the readings of slow moves up and down, of one load or many.
///
///   ln W_ind = a_g ± b,   + while lowering,  b = ln K (N − 1 + 2t)/2
///
/// is exact for one K: with S = K^((N−1)/2) D, D = sinh(½ N ln K) / sinh(½ ln K), both ratios of
/// deadline/indicator.hpp are N/D times K^(∓((N−1)/2 + t)). So the model is linear in one intercept
/// a_g = ln(W_g N / D) for each load and one slope b for all, and needs no iteration. Errors of the
/// readings are taken as independent, of one size in proportion. Standard errors of K and W_g by
/// the law of propagation; the interval of ln K by Student's t.
///
/// Throws InadmissibleError for an odd number of lines, a confidence out of range, readings that
/// cannot be, no load that was moved both up and down, no move more than there are unknowns (two
/// moves of one load: friction_from_readings), or a friction above 2, which no sheave has. One
/// below 1 is a result: scatter alone may put it there, and the interval tells. Source: ordinary
/// least squares with group means, e.g. N. R. Draper and H. Smith, Applied Regression Analysis; the
/// linear form derived here.
[[nodiscard]] FrictionFit fit_friction(std::span<const Move> moves, int lines,
                                       bool dead_line_sheave_turns, double confidence);

}  // namespace ropewalk::deadline
