#include "ropewalk/base/interpolation.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "ropewalk/base/error.hpp"
#include "ropewalk/units/text.hpp"

namespace ropewalk {

namespace {

/// Right end of the interval that holds x; nothing outside the points.
std::optional<std::size_t> right_neighbor(std::span<const double> xs, double x) noexcept {
  if (xs.size() < 2 || !(x >= xs.front() && x <= xs.back())) return std::nullopt;
  const auto right = std::upper_bound(xs.begin(), xs.end() - 1, x);
  return static_cast<std::size_t>(std::max(right, xs.begin() + 1) - xs.begin());
}

/// Value of the line through (x0, y0) and (x1, y1); exact at both ends.
double on_line(double x0, double y0, double x1, double y1, double x) noexcept {
  return std::lerp(y0, y1, (x - x0) / (x1 - x0));
}

}  // namespace

std::optional<double> interpolate_linear(std::span<const double> xs, std::span<const double> ys,
                                         double x) noexcept {
  const auto right = right_neighbor(xs, x);
  if (!right) return std::nullopt;
  const std::size_t i = *right;
  return on_line(xs[i - 1], ys[i - 1], xs[i], ys[i], x);
}

std::optional<double> interpolate_log_log(std::span<const double> xs, std::span<const double> ys,
                                          double x) noexcept {
  const auto right = right_neighbor(xs, x);
  if (!right) return std::nullopt;
  const std::size_t i = *right;
  // Tabulated points come back as tabulated, not through exp(log(y)).
  if (x == xs[i - 1]) return ys[i - 1];
  if (x == xs[i]) return ys[i];
  return std::exp(on_line(std::log(xs[i - 1]), std::log(ys[i - 1]), std::log(xs[i]),
                          std::log(ys[i]), std::log(x)));
}

Curve::Curve(std::string_view name, std::vector<double> xs, std::vector<double> ys, Paper paper)
    : xs_(std::move(xs)), ys_(std::move(ys)), paper_(paper) {
  const auto refuse = [&](std::string what) {
    throw LookupError(name, "x", "the curve " + std::move(what));
  };
  if (xs_.size() != ys_.size() || xs_.size() < 2) refuse("needs two points or more, x with y");
  const double low = paper == Paper::log_log ? std::numeric_limits<double>::denorm_min()
                                             : std::numeric_limits<double>::lowest();
  for (std::size_t i = 0; i < xs_.size(); ++i) {
    if (!std::isfinite(xs_[i]) || !std::isfinite(ys_[i]) || xs_[i] < low || ys_[i] < low) {
      refuse("has a point its paper cannot show at x = " + number_text(xs_[i]));
    }
    if (i > 0 && !(xs_[i] > xs_[i - 1])) {
      refuse("does not go on to the right at x = " + number_text(xs_[i]));
    }
  }
}

std::optional<double> Curve::at(double x) const noexcept {
  return paper_ == Paper::log_log ? interpolate_log_log(xs_, ys_, x)
                                  : interpolate_linear(xs_, ys_, x);
}

}  // namespace ropewalk
