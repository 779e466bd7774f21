#include "ropewalk/line/travel_profile.hpp"

#include <algorithm>
#include <array>
#include <limits>

namespace ropewalk::line {

namespace {

// What an end does to the level of severity on the way up through it.
constexpr std::uint32_t starts = 1;
constexpr std::uint32_t hoisting = 2;
constexpr unsigned kind_bits = 2;

/// So many ends in one bucket are sorted faster by halving than one by one.
constexpr std::uint32_t many = 16;

/// Calls act(low, high, row, kind) for every row that sweeps rope. Up and down alternate at random,
/// so nothing here branches on them.
template <class Act>
void each_stroke(const StrokeColumns& strokes, std::span<const RowRange> ranges, const Act& act) {
  const double* from = strokes.height_from.data();
  const double* to = strokes.height_to.data();
  for (std::uint32_t r = 0; r < ranges.size(); ++r) {
    for (std::size_t row = ranges[r].first; row < ranges[r].last; ++row) {
      const double a = from[row];
      const double b = to[row];
      if (a == b) continue;
      const auto up = static_cast<std::uint32_t>(a < b);
      act(std::min(a, b), std::max(a, b), static_cast<std::uint32_t>(row),
          (r << kind_bits) | (up * hoisting));
    }
  }
}

/// Puts every end in its place among those before it: fast where few are out of place, and not far.
template <class End>
void insert_each(std::span<End> ends) {
  for (std::size_t i = 1; i < ends.size(); ++i) {
    if (!(ends[i].height < ends[i - 1].height)) continue;
    const End one = ends[i];
    std::size_t gap = i;
    for (; gap > 0 && one.height < ends[gap - 1].height; --gap) ends[gap] = ends[gap - 1];
    ends[gap] = one;
  }
}

/// Adds `step` to a sum kept in two numbers; what the larger loses the smaller takes up.
inline void add(double& sum, double& rest, double step) noexcept {
  const double total = sum + step;
  const double taken = total - sum;
  rest += (sum - (total - taken)) + (step - taken);
  sum = total;
}

void sum_areas(std::span<const double> heights, std::span<TravelProfile::Step> steps) {
  TravelProfile::Piece area{0.0, 0.0};
  TravelProfile::Piece rest{0.0, 0.0};
  for (std::size_t i = 0; i < steps.size(); ++i) {
    steps[i].area = area;
    steps[i].rest = rest;
    if (i + 1 == steps.size()) break;
    const double rise = heights[i + 1] - heights[i];
    add(area.up, rest.up, steps[i].piece.up * rise);
    add(area.down, rest.down, steps[i].piece.down * rise);
  }
}

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
  sort_ends(strokes, ranges);
  merge_heights();
  pieces_.resize(strokes.severities.size());
  steps_.resize(strokes.severities.size());
  for (std::size_t g = 0; g < strokes.severities.size(); ++g) {
    if (can_look_up()) {
      steps_[g].reset(heights_.size());
      Step* steps = steps_[g].data();
      sum_levels(strokes.severities[g], ranges,
                 [steps](std::size_t i, const Piece& piece) { steps[i].piece = piece; });
      sum_areas(heights(), steps_[g].span());
    } else {
      pieces_[g].reset(heights_.size());
      Piece* pieces = pieces_[g].data();
      sum_levels(strokes.severities[g], ranges,
                 [pieces](std::size_t i, const Piece& piece) { pieces[i] = piece; });
    }
  }
}

void TravelProfile::sort_ends(const StrokeColumns& strokes, std::span<const RowRange> ranges) {
  std::size_t swept = 0;
  double lowest = std::numeric_limits<double>::infinity();
  double highest = -lowest;
  each_stroke(strokes, ranges, [&](double low, double high, std::uint32_t, std::uint32_t) {
    lowest = std::min(lowest, low);
    highest = std::max(highest, high);
    ++swept;
  });
  lowest_ = swept > 0 ? lowest : 0.0;
  highest_ = swept > 0 ? highest : 0.0;
  buckets_ = HeightBuckets(lowest_, highest_, 2 * swept);
  const HeightBuckets buckets = buckets_;
  // Counted two places further on, filled one further on: in the end every bucket has its begin.
  first_.assign(buckets.count() + 2, 0);
  std::uint32_t* first = first_.data();
  each_stroke(strokes, ranges, [&](double low, double high, std::uint32_t, std::uint32_t) {
    ++first[buckets.of(low) + 2];
    ++first[buckets.of(high) + 2];
  });
  for (std::size_t b = 2; b < first_.size(); ++b) first[b] += first[b - 1];
  ends_.reset(2 * swept);
  End* ends = ends_.data();
  each_stroke(strokes, ranges, [&](double low, double high, std::uint32_t row, std::uint32_t kind) {
    ends[first[buckets.of(low) + 1]++] = {low, row, kind | starts};
    ends[first[buckets.of(high) + 1]++] = {high, row, kind};
  });
  for (std::size_t b = 0; b < buckets.count(); ++b) {
    if (first[b + 1] - first[b] < many) continue;
    std::sort(ends + first[b], ends + first[b + 1],
              [](const End& x, const End& y) { return x.height < y.height; });
  }
  insert_each(ends_.span());
}

void TravelProfile::merge_heights() {
  heights_.reset(ends_.size());
  double* heights = heights_.data();
  std::size_t count = 0;
  double before = -std::numeric_limits<double>::infinity();
  for (const End& end : ends_.span()) {
    // Written over by the next as long as that is no higher.
    count += end.height != before ? 1 : 0;
    heights[count - 1] = before = end.height;
  }
  heights_.shrink(count);
  if (count == ends_.size()) return;
  first_.assign(buckets_.count() + 2, 0);
  for (const double height : heights_.span()) ++first_[buckets_.of(height) + 1];
  for (std::size_t b = 1; b < first_.size(); ++b) first_[b] += first_[b - 1];
}

/// Calls take(i, piece) for every height i in turn, more than once where ends share a height: the
/// last call counts.
template <class Take>
void TravelProfile::sum_levels(std::span<const double> severity, std::span<const RowRange> ranges,
                               const Take& take) const {
  const ExactScale scale = scale_for(severity, ranges);
  std::array<ExactSum, 2> levels;  // lowering, hoisting
  const double* heights = heights_.data();
  std::size_t i = 0;
  for (const End& end : ends_.span()) {
    const std::uint32_t kind = end.range_and_kind;
    const ExactSum one = scale.of(severity[end.row] * ranges[kind >> kind_bits].times);
    levels[(kind & hoisting) / hoisting].add(one, 2 * static_cast<int>(kind & starts) - 1);
    i += heights[i] != end.height ? 1 : 0;
    take(i, Piece{.up = scale.value(levels[1]), .down = scale.value(levels[0])});
  }
}

}  // namespace ropewalk::line
