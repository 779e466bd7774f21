/// Strokes as columns of SI numbers, the form in which they are summed.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "ropewalk/line/exact_sum.hpp"

namespace ropewalk::line {

/// The strokes of a campaign as columns, SI numbers. `from` < `to` is hoisting, `from` > `to`
/// lowering; a row of equal ends sweeps no rope and is passed over.
struct StrokeColumns {
  std::span<const double> height_from;
  std::span<const double> height_to;
  /// One column per group: what a row does to the rope, all its `count` strokes together.
  std::vector<std::span<const double>> severities;
};

/// Rows first … last − 1 of a campaign, gone through `times` times.
struct RowRange {
  std::size_t first = 0;
  std::size_t last = 0;
  double times = 1.0;
};

/// Steps for exact sums of one column of severities over the ranges.
[[nodiscard]] ExactScale scale_for(std::span<const double> severity,
                                   std::span<const RowRange> ranges);

}  // namespace ropewalk::line
