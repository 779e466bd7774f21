#include "ropewalk/sheave/strength_efficiency.hpp"

#include <algorithm>

#include "ropewalk/base/table.hpp"

namespace ropewalk::sheave {

namespace {

struct TabulatedEfficiency {
  std::vector<double> bend_ratios;
  std::vector<double> shares;
};

const TabulatedEfficiency& tabulated() {
  static const TabulatedEfficiency points = [] {
    const Table& printed = table("strength_efficiency");
    TabulatedEfficiency read{printed.numbers("bend_ratio"),
                             printed.numbers("strength_efficiency [%]")};
    for (double& share : read.shares) share /= 100.0;
    return read;
  }();
  return points;
}

}  // namespace

Number StrengthEfficiency::formula(Number bend_ratio) noexcept {
  const TabulatedEfficiency& points = tabulated();
  const double inside =
      std::clamp(to_si(bend_ratio), points.bend_ratios.front(), points.bend_ratios.back());
  return from_si<Number>(
      interpolate_linear(points.bend_ratios, points.shares, inside).value_or(0.0));
}

}  // namespace ropewalk::sheave
