#include "ropewalk/line/rope_map.hpp"

#include <algorithm>
#include <cmath>

namespace ropewalk::line {

namespace {

/// Positions in bins, counted from the bin that the lowest end of a profile lies in: small numbers,
/// so that a position deep in the rope has as many digits as one near its end.
struct Ruler {
  std::ptrdiff_t first_bin;
  double start;  ///< of the profile, inside its bin
  double bins_per_height;
  double clip_from;
  double clip_to;

  Ruler(const Sweep& sweep, double lowest_height, double bin_length) {
    // Once per sweep in the widest arithmetic there is.
    const Position bin = bin_length;
    const Position at = (sweep.at_lowest + static_cast<Position>(sweep.multiple) *
                                               static_cast<Position>(lowest_height)) /
                        bin;
    const Position whole = std::floor(at);
    first_bin = static_cast<std::ptrdiff_t>(whole);
    start = static_cast<double>(at - whole);
    bins_per_height = sweep.multiple / bin_length;
    clip_from = static_cast<double>(sweep.from / bin - whole);
    clip_to = static_cast<double>(sweep.to / bin - whole);
  }
};

/// Adds `severity` between two positions in bins.
inline void cover_bins(double from, double to, double severity, double* bins) noexcept {
  const auto first = static_cast<std::ptrdiff_t>(from);
  const auto last = static_cast<std::ptrdiff_t>(to);
  if (first == last) {
    bins[first] += severity * (to - from);
    return;
  }
  bins[first] += severity * (static_cast<double>(first + 1) - from);
  for (std::ptrdiff_t j = first + 1; j < last; ++j) bins[j] += severity;
  const double part = to - static_cast<double>(last);
  // The bin after an end on its border may not exist.
  if (part > 0.0) bins[last] += severity * part;
}

}  // namespace

void RopeBins::cover(Position from, Position to, double severity, std::span<double> values) const {
  if (!(to > from)) return;
  const Position whole = std::floor(from / static_cast<Position>(length_));
  cover_bins(static_cast<double>(from / static_cast<Position>(length_) - whole),
             static_cast<double>(to / static_cast<Position>(length_) - whole), severity,
             values.data() + static_cast<std::ptrdiff_t>(whole));
}

void RopeBins::unroll(const TravelProfile& profile, std::size_t group, const Sweep& sweep,
                      std::span<double> values) const {
  if (profile.heights().size() < 2 || !(sweep.to > sweep.from)) return;
  const double swept =
      sweep.multiple * (profile.heights().back() - profile.heights().front()) / length_;
  // A step costs about the same in both; take the way with fewer.
  if (static_cast<double>(profile.heights().size()) < 2.0 * swept + 64.0) {
    by_pieces(profile, group, sweep, values);
  } else {
    by_bins(profile, group, sweep, values);
  }
}

void RopeBins::by_pieces(const TravelProfile& profile, std::size_t group, const Sweep& sweep,
                         std::span<double> values) const {
  const std::span<const double> heights = profile.heights();
  const std::span<const TravelProfile::Piece> pieces = profile.pieces(group);
  const Ruler ruler(sweep, heights.front(), length_);
  double* bins = values.data() + ruler.first_bin;
  double from = std::max(ruler.start, ruler.clip_from);
  for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
    const double end = ruler.start + ruler.bins_per_height * (heights[i + 1] - heights[0]);
    const double to = std::min(end, ruler.clip_to);
    const double severity = sweep.up * pieces[i].up + sweep.down * pieces[i].down;
    if (to > from) {
      if (severity > 0.0) cover_bins(from, to, severity, bins);
      from = to;
    }
  }
}

void RopeBins::by_bins(const TravelProfile& profile, std::size_t group, const Sweep& sweep,
                       std::span<double> values) const {
  const std::span<const double> heights = profile.heights();
  const std::span<const TravelProfile::Piece> pieces = profile.pieces(group);
  const Ruler ruler(sweep, heights.front(), length_);
  const double height_per_bin = 1.0 / ruler.bins_per_height;
  const double end = std::min(
      ruler.start + ruler.bins_per_height * (heights.back() - heights.front()), ruler.clip_to);
  double from = std::max(ruler.start, ruler.clip_from);
  double* bins = values.data() + ruler.first_bin;

  double height = heights.front() + (from - ruler.start) * height_per_bin;
  std::size_t piece = profile.piece_at(height);
  while (from < end) {
    const auto bin = static_cast<std::ptrdiff_t>(from);
    const double to = std::min(static_cast<double>(bin + 1), end);
    const double next_height = heights.front() + (to - ruler.start) * height_per_bin;
    const std::size_t next = profile.piece_at(next_height);
    const TravelProfile::Piece& a = pieces[piece];
    const TravelProfile::Piece& b = pieces[next];
    if (next == piece) {
      bins[bin] += (sweep.up * a.up + sweep.down * a.down) * (to - from);
    } else {
      const double past_a = height - heights[piece];
      const double past_b = next_height - heights[next];
      const double up = (b.up_integral - a.up_integral) + (b.up_rest - a.up_rest) +
                        (b.up * past_b - a.up * past_a);
      const double down = (b.down_integral - a.down_integral) + (b.down_rest - a.down_rest) +
                          (b.down * past_b - a.down * past_a);
      // Never less than nothing: the last digit of a bin that is hardly touched.
      bins[bin] += std::max(0.0, (sweep.up * up + sweep.down * down) * ruler.bins_per_height);
    }
    from = to;
    height = next_height;
    piece = next;
  }
}

}  // namespace ropewalk::line
