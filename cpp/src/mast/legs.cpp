#include "ropewalk/mast/legs.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "ropewalk/base/require.hpp"

namespace ropewalk::mast {

namespace {

constexpr std::string_view where = "mast.Mast";

/// Signs of the legs across and along.
constexpr std::array<std::array<double, 2>, legs> corners{
    {{-1.0, -1.0}, {1.0, -1.0}, {1.0, 1.0}, {-1.0, 1.0}}};

/// A place measured in another unit than the base may miss its edge by rounding.
constexpr double rounding = 1e-9;

/// Twice the distance from the middle over the size of the base: −1 … 1.
double relative(std::string_view field, std::string_view direction, Length at, Length size) {
  const double place = to_si(Number(2.0 * at / size));
  if (!(std::abs(place) <= 1.0 + rounding)) {
    throw InadmissibleError(where, field,
                            std::string(field) + " lies " + quantity_text(at) + " " +
                                std::string(direction) + ", outside of the base: [-" +
                                quantity_text(0.5 * size) + ", " + quantity_text(0.5 * size) +
                                "] (geometry)");
  }
  return place;
}

std::array<double, legs> shares(std::string_view field, const Layout& layout,
                                const PlanPoint& place) {
  const double x = relative(field, "across", place.across, layout.base_width);
  const double y = relative(field, "along", place.along, layout.base_depth);
  std::array<double, legs> result{};
  for (std::size_t leg = 0; leg < legs; ++leg) {
    result[leg] = 0.25 * (1.0 + corners[leg][0] * x) * (1.0 + corners[leg][1] * y);
  }
  return result;
}

}  // namespace

LegShares::LegShares(const Layout& layout) {
  require(where, argument::base_width, layout.base_width);
  require(where, argument::base_depth, layout.base_depth);
  dead_line_ = shares("dead_line", layout, layout.dead_line);
  fast_line_ = shares("fast_line", layout, layout.fast_line);
}

double LegShares::largest_share() const noexcept {
  // The two shares of all legs add up to 2, so that one has 1/2 or more, but for rounding.
  double largest = 0.5;
  for (std::size_t leg = 0; leg < legs; ++leg) {
    largest = std::max(largest, dead_line_[leg] + fast_line_[leg]);
  }
  return std::min(largest, 2.0);
}

std::array<Force, legs> LegShares::loads(Force central, Force dead_line,
                                         Force fast_line) const noexcept {
  std::array<Force, legs> result{};
  for (std::size_t leg = 0; leg < legs; ++leg) {
    result[leg] = 0.25 * central + dead_line_[leg] * dead_line + fast_line_[leg] * fast_line;
  }
  return result;
}

}  // namespace ropewalk::mast
