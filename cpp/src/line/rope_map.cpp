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
  if (profile.empty() || !(sweep.to > sweep.from)) return;
  if (profile.is_dense()) {
    by_bins(profile, group, sweep, values);
  } else {
    by_pieces(profile, group, sweep, values);
  }
}

void RopeBins::by_pieces(const TravelProfile& profile, std::size_t group, const Sweep& sweep,
                         std::span<double> values) const {
  const std::span<const double> heights = profile.heights();
  const std::span<const TravelProfile::Piece> pieces = profile.pieces(group);
  const Ruler ruler(sweep, profile.lowest(), length_);
  double* bins = values.data() + ruler.first_bin;
  double from = std::max(ruler.start, ruler.clip_from);
  for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
    const double end = ruler.start + ruler.bins_per_height * (heights[i + 1] - profile.lowest());
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
  const Ruler ruler(sweep, profile.lowest(), length_);
  const double height_per_bin = 1.0 / ruler.bins_per_height;
  const double end = std::min(
      ruler.start + ruler.bins_per_height * (profile.highest() - profile.lowest()), ruler.clip_to);
  double from = std::max(ruler.start, ruler.clip_from);
  if (!(from < end)) return;
  double* bins = values.data() + ruler.first_bin;
  const auto height = [&](double place) {
    return profile.lowest() + (place - ruler.start) * height_per_bin;
  };
  DenseProfile::Walk walk(profile.dense(), group, sweep.up, sweep.down, height(from));
  while (from < end) {
    const auto bin = static_cast<std::ptrdiff_t>(from);
    const double to = std::min(static_cast<double>(bin + 1), end);
    bins[bin] += walk.to(height(to)) * ruler.bins_per_height;
    from = to;
  }
}

}  // namespace ropewalk::line
