/// Strokes for the tests of the line, and sums over them written stroke by stroke.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include "ropewalk/line/rope_map.hpp"

namespace ropewalk::line {

using Wide = long double;

struct Strokes {
  std::vector<double> from;
  std::vector<double> to;
  std::vector<double> severity;

  void add(double start, double end, double damage) {
    from.push_back(start);
    to.push_back(end);
    severity.push_back(damage);
  }
  [[nodiscard]] std::size_t rows() const { return from.size(); }
  [[nodiscard]] StrokeColumns columns() const {
    return {.height_from = from, .height_to = to, .severities = {severity}};
  }
  [[nodiscard]] TravelProfile profile(double times = 1.0) const {
    TravelProfile profile;
    const RowRange all{0, rows(), times};
    profile.build(columns(), {&all, 1});
    return profile;
  }
};

inline double between(std::mt19937_64& random, double low, double high) {
  return low + (high - low) * static_cast<double>(random() >> 11U) * 0x1p-53;
}

/// Random strokes over 30 m of travel whose severities span `decades`. The heaviest lie low, so
/// that sums along the travel carry them past the light ones above.
inline Strokes random_strokes(std::size_t rows, double decades, std::uint64_t seed) {
  std::mt19937_64 random(seed);
  Strokes strokes;
  for (std::size_t i = 0; i < rows; ++i) {
    const double size = between(random, 0.0, 1.0);
    const double middle = 30.0 * size;
    const double reach = between(random, 0.1, 3.0);
    const double low = std::max(0.0, middle - reach);
    const double high = std::min(30.0, middle + reach);
    const bool up = (random() & 1U) != 0;
    strokes.add(up ? low : high, up ? high : low, std::pow(10.0, -decades * size));
  }
  return strokes;
}

/// Mean over each bin, and the level of the strokes that reach into it: the scale of its rounding.
struct Brute {
  std::vector<Wide> mean;
  std::vector<Wide> scale;
};
inline Brute brute(const Strokes& strokes, const Sweep& sweep, double bin, std::size_t bins) {
  Brute out{std::vector<Wide>(bins), std::vector<Wide>(bins)};
  const Wide width = bin;
  // An end this close to a border may round to its other side.
  const Wide near = 1e-9L;
  for (std::size_t i = 0; i < strokes.rows(); ++i) {
    const Wide start = strokes.from[i];
    const Wide end = strokes.to[i];
    if (start == end) continue;
    const Wide factor = start < end ? sweep.up : sweep.down;
    const Wide damage = factor * static_cast<Wide>(strokes.severity[i]);
    const auto place = [&](Wide height) {
      return static_cast<Wide>(sweep.at_lowest) + static_cast<Wide>(sweep.multiple) * height;
    };
    const Wide low = std::max<Wide>(place(std::min(start, end)), sweep.from);
    const Wide high = std::min<Wide>(place(std::max(start, end)), sweep.to);
    if (high <= low) continue;
    const auto first = static_cast<std::size_t>(std::max(0.0L, std::floor(low / width - near)));
    for (std::size_t b = first; b < bins; ++b) {
      const Wide left = static_cast<Wide>(b) * width;
      const Wide right = left + width;
      if (high < left - near * width) break;
      const Wide over = std::min(high, right) - std::max(low, left);
      if (over > 0.0L) out.mean[b] += damage * over / width;
      out.scale[b] += damage;
    }
  }
  return out;
}

inline std::vector<double> unrolled(const TravelProfile& profile, const Sweep& sweep, double bin,
                                    std::size_t bins) {
  std::vector<double> values(bins + 1);
  RopeBins(bin).unroll(profile, 0, sweep, values);
  return values;
}

inline void expect_like_brute(const Strokes& strokes, const Sweep& sweep, double bin,
                              std::size_t bins) {
  const std::vector<double> values = unrolled(strokes.profile(), sweep, bin, bins);
  const Brute expected = brute(strokes, sweep, bin, bins);
  for (std::size_t b = 0; b < bins; ++b) {
    ASSERT_GE(values[b], 0.0) << b;
    if (expected.scale[b] == 0.0L) {
      ASSERT_EQ(values[b], 0.0) << b;
      continue;
    }
    const Wide error = std::abs(static_cast<Wide>(values[b]) - expected.mean[b]);
    ASSERT_LE(static_cast<double>(error / expected.scale[b]), 1e-12)
        << "bin " << b << " of " << strokes.rows() << " strokes, " << values[b];
  }
  EXPECT_EQ(values[bins], 0.0);
}

inline constexpr Sweep everywhere{.at_lowest = 0.0, .multiple = 1.0, .from = -1e9, .to = 1e9};

}  // namespace ropewalk::line
