#include "ropewalk/line/travel_profile.hpp"

#include <algorithm>
#include <array>

namespace ropewalk::line {

namespace {

// What an end does to the level of severity on the way up through it.
constexpr std::uint32_t starts = 1;
constexpr std::uint32_t hoisting = 2;
constexpr unsigned kind_bits = 2;

}  // namespace

ExactScale scale_for(std::span<const double> severity, std::span<const RowRange> ranges) {
  double total = 0.0;
  std::size_t rows = 0;
  for (const RowRange& range : ranges) {
    double sum = 0.0;
    for (std::size_t row = range.first; row < range.last; ++row) sum += severity[row];
    total += sum * range.times;
    rows += range.last - range.first;
  }
  // Twice: the sum above may have been rounded down.
  return ExactScale(2.0 * total, 2 * rows + 1);
}

void TravelProfile::build(const StrokeColumns& strokes, std::span<const RowRange> ranges) {
  std::size_t rows = 0;
  lowest_ = 0.0;
  highest_ = 0.0;
  for (const RowRange& range : ranges) {
    for (std::size_t row = range.first; row < range.last; ++row) {
      const auto [low, high] = std::minmax(strokes.height_from[row], strokes.height_to[row]);
      lowest_ = rows == 0 ? low : std::min(lowest_, low);
      highest_ = rows == 0 ? high : std::max(highest_, high);
      ++rows;
    }
  }
  is_dense_ = rows > most_rows && highest_ > lowest_;
  if (is_dense_) {
    dense_.build(strokes, ranges, lowest_, highest_);
  } else {
    sort_ends(strokes, ranges);
    sum_pieces(strokes, ranges);
  }
}

void TravelProfile::sort_ends(const StrokeColumns& strokes, std::span<const RowRange> ranges) {
  ends_.clear();
  for (std::uint32_t r = 0; r < ranges.size(); ++r) {
    for (std::size_t row = ranges[r].first; row < ranges[r].last; ++row) {
      const double from = strokes.height_from[row];
      const double to = strokes.height_to[row];
      if (from == to) continue;
      const std::uint32_t kind = (r << kind_bits) | (from < to ? hoisting : 0);
      ends_.push_back({std::min(from, to), static_cast<std::uint32_t>(row), kind | starts});
      ends_.push_back({std::max(from, to), static_cast<std::uint32_t>(row), kind});
    }
  }
  std::sort(ends_.begin(), ends_.end(),
            [](const End& a, const End& b) { return a.height < b.height; });
  heights_.clear();
  for (const End& end : ends_) {
    if (heights_.empty() || heights_.back() != end.height) heights_.push_back(end.height);
  }
}

void TravelProfile::sum_pieces(const StrokeColumns& strokes, std::span<const RowRange> ranges) {
  pieces_.resize(strokes.severities.size());
  for (std::size_t g = 0; g < pieces_.size(); ++g) {
    const std::span<const double> severity = strokes.severities[g];
    const ExactScale scale = scale_for(severity, ranges);
    pieces_[g].resize(heights_.size());
    std::array<ExactSum, 2> levels;  // lowering, hoisting
    std::size_t e = 0;
    for (std::size_t i = 0; i < heights_.size(); ++i) {
      for (; e < ends_.size() && ends_[e].height == heights_[i]; ++e) {
        const std::uint32_t kind = ends_[e].range_and_kind;
        const ExactSum one = scale.of(severity[ends_[e].row] * ranges[kind >> kind_bits].times);
        levels[(kind & hoisting) / hoisting].add(one, (kind & starts) != 0 ? 1 : -1);
      }
      pieces_[g][i] = {.up = scale.value(levels[1]), .down = scale.value(levels[0])};
    }
  }
}

}  // namespace ropewalk::line
