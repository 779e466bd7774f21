/// Interpolation between tabulated points. Never beyond them.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "ropewalk/base/range.hpp"

namespace ropewalk {

/// Straight line between neighboring points; nothing if `x` is outside [xs.front(), xs.back()]
/// or NaN. `xs` is strictly increasing and as long as `ys`; a Curve makes sure of that once.
[[nodiscard]] std::optional<double> interpolate_linear(std::span<const double> xs,
                                                       std::span<const double> ys,
                                                       double x) noexcept;

/// Straight line between neighboring points on log-log paper, i.e. a power law in each interval.
/// Every number of `xs` and `ys` is above zero; otherwise as interpolate_linear().
[[nodiscard]] std::optional<double> interpolate_log_log(std::span<const double> xs,
                                                        std::span<const double> ys,
                                                        double x) noexcept;

/// Paper on which the points of a curve are joined by straight lines.
enum class Paper { linear, log_log };

/// A tabulated curve y(x), checked when it is built.
///
/// Whoever evaluates one says first where it holds: a row formula takes `range()` as the range of
/// its argument, so that a row outside gets its error or status before the curve is asked.
class Curve {
 public:
  /// Throws LookupError naming the curve unless there are at least two points, all finite, with
  /// strictly increasing x (and above zero on log-log paper).
  Curve(std::string_view name, std::vector<double> xs, std::vector<double> ys, Paper paper);

  /// From the first to the last tabulated x.
  [[nodiscard]] Interval range(std::string_view source) const noexcept {
    return {.low = xs_.front(), .high = xs_.back(), .source = source};
  }

  /// y at x; nothing outside the range.
  [[nodiscard]] std::optional<double> at(double x) const noexcept;

 private:
  std::vector<double> xs_;
  std::vector<double> ys_;
  Paper paper_;
};

}  // namespace ropewalk
