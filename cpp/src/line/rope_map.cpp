#include "ropewalk/line/rope_map.hpp"

#include <algorithm>
#include <array>
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

/// Damage of one tangent point between two block heights, times the height between.
class Stretches {
 public:
  struct Place {
    double height;
    std::size_t piece;
  };

  Stretches(const TravelProfile& profile, std::size_t group, const Sweep& sweep)
      : find_(profile),
        heights_(profile.heights().data()),
        steps_(profile.steps(group).data()),
        up_(sweep.up),
        down_(sweep.down) {}

  [[nodiscard]] Place at(double height) const noexcept { return {height, find_(height)}; }

  /// Only pieces that a stretch touches can leave their rounding in it.
  [[nodiscard]] double between(const Place& a, const Place& b) const noexcept {
    if (a.piece == b.piece) return level(a.piece) * (b.height - a.height);
    const TravelProfile::Step& from = steps_[a.piece + 1];
    const TravelProfile::Step& to = steps_[b.piece];
    const double whole =
        up_ * ((to.area.up - from.area.up) + (to.rest.up - from.rest.up)) +
        down_ * ((to.area.down - from.area.down) + (to.rest.down - from.rest.down));
    // Never less than nothing: the last digit of pieces that are hardly there.
    return level(a.piece) * (heights_[a.piece + 1] - a.height) + std::max(whole, 0.0) +
           level(b.piece) * (b.height - heights_[b.piece]);
  }

 private:
  [[nodiscard]] double level(std::size_t piece) const noexcept {
    return up_ * steps_[piece].piece.up + down_ * steps_[piece].piece.down;
  }

  TravelProfile::Finder find_;
  const double* heights_;
  const TravelProfile::Step* steps_;
  double up_;
  double down_;
};

/// Adds every piece in turn.
template <class PieceAt>
void cover_pieces(const TravelProfile& profile, const Ruler& ruler, const Sweep& sweep,
                  std::span<double> values, const PieceAt& piece_at) {
  const std::span<const double> heights = profile.heights();
  const double lowest = profile.lowest();
  double* bins = values.data() + ruler.first_bin;
  double from = std::max(ruler.start, ruler.clip_from);
  for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
    const double end = ruler.start + ruler.bins_per_height * (heights[i + 1] - lowest);
    const double to = std::min(end, ruler.clip_to);
    const TravelProfile::Piece piece = piece_at(i);
    const double severity = sweep.up * piece.up + sweep.down * piece.down;
    if (to > from) {
      if (severity > 0.0) cover_bins(from, to, severity, bins);
      from = to;
    }
  }
}

/// Looking up a bin takes about as long as walking through two pieces.
constexpr double bins_per_height_walked = 0.5;
/// Their places fit in the nearest cache.
constexpr std::size_t bins_at_once = 64;

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
  const double bins = sweep.multiple * (profile.highest() - profile.lowest()) / length_;
  if (profile.can_look_up() &&
      bins < bins_per_height_walked * static_cast<double>(profile.heights().size())) {
    by_bins(profile, group, sweep, values);
  } else {
    by_pieces(profile, group, sweep, values);
  }
}

void RopeBins::by_pieces(const TravelProfile& profile, std::size_t group, const Sweep& sweep,
                         std::span<double> values) const {
  const Ruler ruler(sweep, profile.lowest(), length_);
  if (profile.can_look_up()) {
    const TravelProfile::Step* steps = profile.steps(group).data();
    cover_pieces(profile, ruler, sweep, values, [steps](std::size_t i) { return steps[i].piece; });
  } else {
    const TravelProfile::Piece* pieces = profile.pieces(group).data();
    cover_pieces(profile, ruler, sweep, values, [pieces](std::size_t i) { return pieces[i]; });
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
  const Stretches stretches(profile, group, sweep);
  const auto place = [&](double bin) {
    return stretches.at(profile.lowest() + (bin - ruler.start) * height_per_bin);
  };
  // Places first, a hand of bins at a time: what they need from memory is then asked for at once.
  std::array<Stretches::Place, bins_at_once + 1> places;
  places[0] = place(from);
  auto bin = static_cast<std::ptrdiff_t>(from);
  while (from < end) {
    std::size_t count = 0;
    while (from < end && count < bins_at_once) {
      from = std::min(static_cast<double>(bin + static_cast<std::ptrdiff_t>(++count)), end);
      places[count] = place(from);
    }
    for (std::size_t i = 0; i < count; ++i) {
      bins[bin++] += stretches.between(places[i], places[i + 1]) * ruler.bins_per_height;
    }
    places[0] = places[count];
  }
}

}  // namespace ropewalk::line
