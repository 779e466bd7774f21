/// What the weight indicator at the dead line shows, and the hook load behind it.
///
/// Symbols used throughout the subject
///   N  lines                      lines strung, even: an odd number has no dead line
///   K  sheave_friction            tension ratio of the tight to the slack side of one sheave
///   t  turning_dead_line_sheaves  1 if the dead-line sheave turns with the line, 0 if it is fixed
///   S  = 1 + K + … + K^(N−1)
///   W  hook_load                  everything hung on the lines
///
/// The indicator multiplies the tension of the dead line by N. That is the hook load at rest as the
/// trade takes it; while the blocks move slowly, friction leaves the dead line less (hoisting) or
/// gives it more (lowering):
///
///   hoisting  W_ind / W = N / (K^t S)          lowering  W_ind / W = N K^(N−1+t) / S
///
/// Source: Luke and Juvkam-Wold, SPE 23859, SPE Drilling & Completion (Dec. 1993), the models of a
/// dead-line sheave at rest and of one that turns; derived again, from reeving/line_tension.hpp.
/// Range: slow, steady motion and one K for all sheaves. Indicator takes each sheave by itself.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/deadline/parameters.hpp"
#include "ropewalk/reeving/even_lines.hpp"
#include "ropewalk/reeving/power_sum.hpp"
#include "ropewalk/reeving/tensions.hpp"

namespace ropewalk::deadline {

namespace detail {

[[nodiscard]] constexpr int count(Number whole) noexcept { return static_cast<int>(to_si(whole)); }

}  // namespace detail

/// Indicated over true hook load while hoisting slowly.
///
///   W_ind / W = N / (K^t S)
///
/// Symbols, range and source at the head of this file.
struct HoistingRatio {
  static constexpr std::string_view name = "deadline.hoisting_ratio";
  static constexpr std::tuple parameters{params::lines, params::sheave_friction,
                                         argument::turning_dead_line_sheaves};
  static constexpr std::string_view joint_rule = reeving::even_rule;

  static constexpr bool joint(Number lines, Number, Number) noexcept {
    return reeving::is_even(lines);
  }
  static constexpr Number formula(Number lines, Number sheave_friction, Number turning) noexcept {
    const auto [sum, power] =
        reeving::power_sum(to_si(sheave_friction), detail::count(lines), detail::count(turning));
    return lines / (power * sum);
  }
};
inline constexpr Model<HoistingRatio> hoisting_ratio{};

/// Indicated over true hook load while lowering slowly.
///
///   W_ind / W = N K^(N−1+t) / S
///
/// Symbols, range and source at the head of this file.
struct LoweringRatio {
  static constexpr std::string_view name = "deadline.lowering_ratio";
  static constexpr std::tuple parameters = HoistingRatio::parameters;
  static constexpr std::string_view joint_rule = reeving::even_rule;

  static constexpr bool joint(Number lines, Number, Number) noexcept {
    return reeving::is_even(lines);
  }
  static constexpr Number formula(Number lines, Number sheave_friction, Number turning) noexcept {
    const auto [sum, power] = reeving::power_sum(to_si(sheave_friction), detail::count(lines),
                                                 detail::count(lines) - 1 + detail::count(turning));
    return lines * power / sum;
  }
};
inline constexpr Model<LoweringRatio> lowering_ratio{};

/// True hook load behind a reading while hoisting slowly.
///
///   W = W_ind K^t S / N
///
/// Symbols, range and source at the head of this file.
struct HookLoadHoisting {
  static constexpr std::string_view name = "deadline.hook_load_hoisting";
  static constexpr std::tuple parameters{argument::indicated_load, params::lines,
                                         params::sheave_friction,
                                         argument::turning_dead_line_sheaves};
  static constexpr std::string_view joint_rule = reeving::even_rule;

  static constexpr bool joint(Force, Number lines, Number, Number) noexcept {
    return reeving::is_even(lines);
  }
  static constexpr Force formula(Force indicated_load, Number lines, Number sheave_friction,
                                 Number turning) noexcept {
    return indicated_load / HoistingRatio::formula(lines, sheave_friction, turning);
  }
};
inline constexpr Model<HookLoadHoisting> hook_load_hoisting{};

/// True hook load behind a reading while lowering slowly.
///
///   W = W_ind S / (N K^(N−1+t))
///
/// Symbols, range and source at the head of this file.
struct HookLoadLowering {
  static constexpr std::string_view name = "deadline.hook_load_lowering";
  static constexpr std::tuple parameters = HookLoadHoisting::parameters;
  static constexpr std::string_view joint_rule = reeving::even_rule;

  static constexpr bool joint(Force, Number lines, Number, Number) noexcept {
    return reeving::is_even(lines);
  }
  static constexpr Force formula(Force indicated_load, Number lines, Number sheave_friction,
                                 Number turning) noexcept {
    return indicated_load / LoweringRatio::formula(lines, sheave_friction, turning);
  }
};
inline constexpr Model<HookLoadLowering> hook_load_lowering{};

/// A weight indicator on a reeving with any friction at each sheave.
class Indicator {
 public:
  /// `lines_set` is the number of lines the indicator multiplies by; it may be the wrong one.
  /// Throws InadmissibleError for an arrangement without a dead line, or a number out of range.
  Indicator(reeving::Arrangement arrangement, int lines_set);

  [[nodiscard]] const reeving::Arrangement& arrangement() const noexcept { return arrangement_; }
  [[nodiscard]] int lines_set() const noexcept { return lines_set_; }

  /// Reading over true hook load: lines_set T_dead / Σ T. At rest friction leaves the tensions open
  /// between those of hoisting and lowering; the middle is taken, all lines alike.
  [[nodiscard]] Number ratio(reeving::Motion motion) const;

  /// Error of the hook load that `believed` makes of this indicator's reading, over the true hook
  /// load: of a wrong friction, a wrong number of lines, a sheave taken for fixed that turns.
  [[nodiscard]] Number error_of(const Indicator& believed, reeving::Motion motion) const;

 private:
  reeving::Arrangement arrangement_;
  int lines_set_;
};

}  // namespace ropewalk::deadline
