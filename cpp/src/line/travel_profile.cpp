#include "ropewalk/line/travel_profile.hpp"

#include <algorithm>
#include <array>

namespace ropewalk::line {

namespace {

// What an end does to the level of severity on the way up through it.
constexpr std::uint32_t starts = 1;
constexpr std::uint32_t hoisting = 2;
constexpr unsigned kind_bits = 2;

/// Buckets per end: few enough to stay in the cache, enough to leave little to sort in each.
constexpr std::size_t most_buckets = std::size_t{1} << 16U;
/// Above this a bucket is sorted by the library, below by insertion.
constexpr std::size_t small_bucket = 12;

/// Adds `step` to a sum kept in two numbers; what the larger loses the smaller takes up.
void add(double& sum, double& rest, double step) noexcept {
  const double total = sum + step;
  const double taken = total - sum;
  rest += (sum - (total - taken)) + (step - taken);
  sum = total;
}

template <class End>
void sort_bucket(End* begin, End* end) {
  const auto before = [](const End& a, const End& b) { return a.height < b.height; };
  if (static_cast<std::size_t>(end - begin) > small_bucket) {
    std::sort(begin, end, before);
    return;
  }
  for (End* i = begin + 1; i < end; ++i) {
    const End one = *i;
    End* j = i;
    for (; j > begin && before(one, *(j - 1)); --j) *j = *(j - 1);
    *j = one;
  }
}

}  // namespace

void TravelProfile::build(const StrokeColumns& strokes, std::span<const RowRange> ranges) {
  sort_ends(strokes, ranges);
  merge_ends();
  sum_pieces(strokes, ranges);
}

/// A bucket sort: linear, and heights of a hoist are spread widely enough.
void TravelProfile::sort_ends(const StrokeColumns& strokes, std::span<const RowRange> ranges) {
  const double* from = strokes.height_from.data();
  const double* to = strokes.height_to.data();
  double low = 0.0;
  double high = 0.0;
  std::size_t rows = 0;
  for (const RowRange& range : ranges) {
    for (std::size_t row = range.first; row < range.last; ++row) {
      const auto [least, most] = std::minmax(from[row], to[row]);
      if (rows++ == 0) {
        low = least;
        high = most;
      }
      low = std::min(low, least);
      high = std::max(high, most);
    }
  }
  const std::size_t buckets = std::min(std::bit_ceil(rows + 1), most_buckets);
  lowest_ = low;
  last_bucket_ = static_cast<double>(buckets - 1);
  buckets_per_height_ = high > low ? static_cast<double>(buckets) / (high - low) : 0.0;

  first_in_bucket_.assign(buckets + 1, 0);
  const auto each_end = [&](const auto& act) {
    for (std::uint32_t r = 0; r < ranges.size(); ++r) {
      const std::uint32_t range = r << kind_bits;
      for (std::size_t row = ranges[r].first; row < ranges[r].last; ++row) {
        const double a = from[row];
        const double b = to[row];
        const std::uint32_t kind = range | (a < b ? hoisting : 0);
        act(std::min(a, b), row, kind | starts);
        act(std::max(a, b), row, kind);
      }
    }
  };
  std::uint32_t* count = first_in_bucket_.data() + 1;
  each_end([&](double height, std::size_t, std::uint32_t) { ++count[bucket_of(height)]; });
  std::size_t widest = 0;
  for (std::size_t b = 0; b < buckets; ++b) {
    widest = std::max<std::size_t>(widest, count[b]);
    count[b] += first_in_bucket_[b];
  }
  ends_.resize(first_in_bucket_[buckets]);
  place_.assign(first_in_bucket_.begin(), first_in_bucket_.end() - 1);
  each_end([&](double height, std::size_t row, std::uint32_t kind) {
    ends_[place_[bucket_of(height)]++] = {height, static_cast<std::uint32_t>(row), kind};
  });
  if (widest < 2) return;
  for (std::size_t b = 0; b < buckets; ++b) {
    sort_bucket(ends_.data() + first_in_bucket_[b], ends_.data() + first_in_bucket_[b + 1]);
  }
}

/// Ends at one height become one; buckets point to the merged heights.
void TravelProfile::merge_ends() {
  heights_.clear();
  heights_.reserve(ends_.size());
  place_.resize(ends_.size());
  std::size_t bucket = 0;
  for (std::size_t e = 0; e < ends_.size(); ++e) {
    while (bucket + 1 < first_in_bucket_.size() && first_in_bucket_[bucket] <= e) {
      // The last height below the bucket, from where a search in it goes up.
      first_in_bucket_[bucket++] =
          heights_.empty() ? 0 : static_cast<std::uint32_t>(heights_.size() - 1);
    }
    if (heights_.empty() || heights_.back() != ends_[e].height) {
      heights_.push_back(ends_[e].height);
    }
    place_[e] = static_cast<std::uint32_t>(heights_.size() - 1);
  }
  const auto last = static_cast<std::uint32_t>(heights_.empty() ? 0 : heights_.size() - 1);
  heights_.push_back(no_more);
  for (; bucket < first_in_bucket_.size(); ++bucket) first_in_bucket_[bucket] = last;
}

void TravelProfile::sum_pieces(const StrokeColumns& strokes, std::span<const RowRange> ranges) {
  pieces_.resize(strokes.severities.size());
  for (std::size_t g = 0; g < pieces_.size(); ++g) {
    const std::span<const double> severity = strokes.severities[g];
    double total = 0.0;
    std::size_t rows = 0;
    for (const RowRange& range : ranges) {
      double sum = 0.0;
      for (std::size_t row = range.first; row < range.last; ++row) sum += severity[row];
      total += sum * range.times;
      rows += range.last - range.first;
    }
    // Twice: the sum above may have been rounded down.
    const ExactScale scale(2.0 * total, rows + 1);
    std::vector<Piece>& pieces = pieces_[g];
    pieces.resize(heights().size());
    // Up and down, chosen by number: the kind of an end is as good as random.
    std::array<ExactSum, 2> levels;
    Piece piece;
    double up_rest = 0.0;
    double down_rest = 0.0;
    std::size_t e = 0;
    for (std::size_t i = 0; i < heights().size(); ++i) {
      if (i > 0) {
        const double length = heights_[i] - heights_[i - 1];
        add(piece.up_integral, up_rest, piece.up * length);
        add(piece.down_integral, down_rest, piece.down * length);
      }
      for (; e < ends_.size() && place_[e] == i; ++e) {
        const std::uint32_t kind = ends_[e].range_and_kind;
        const ExactSum one = scale.of(severity[ends_[e].row] * ranges[kind >> kind_bits].times);
        levels[(kind & hoisting) / hoisting].add(one, (kind & starts) != 0 ? 1 : -1);
      }
      piece.up = scale.value(levels[1]);
      piece.down = scale.value(levels[0]);
      piece.up_rest = up_rest;
      piece.down_rest = down_rest;
      pieces[i] = piece;
    }
  }
}

}  // namespace ropewalk::line
