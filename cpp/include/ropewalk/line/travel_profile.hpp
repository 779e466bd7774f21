/// What the blocks did, height by height: how much severity passed each block height.
///
/// All sheaves of a hoist see the same travel of the blocks, only over m times the rope. So the
/// strokes are first laid over each other along the block height, where equal ends merge, and the
/// result is then unrolled over the rope once per sheave (rope_map.hpp). The work per stroke does
/// not depend on the number of sheaves.
#pragma once

#include <algorithm>
#include <cstdint>
#include <limits>
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

/// A function of block height that is constant between the ends of strokes, for hoisting and for
/// lowering, with its integral from the lowest end.
class TravelProfile {
 public:
  struct Piece {
    double up = 0.0;  ///< severity that passed here while hoisting
    double down = 0.0;
    double up_integral = 0.0;  ///< from the lowest end to the start of this piece
    double down_integral = 0.0;
    // What the integrals lose in rounding: their difference must be right where little passed.
    double up_rest = 0.0;
    double down_rest = 0.0;
  };

  /// Lays the strokes of the ranges over each other. The memory is used again by the next call.
  void build(const StrokeColumns& strokes, std::span<const RowRange> ranges);

  /// Ends of strokes in rising order; piece i reaches from height i to height i + 1.
  [[nodiscard]] std::span<const double> heights() const noexcept {
    return {heights_.data(), heights_.size() - 1};
  }
  [[nodiscard]] std::size_t groups() const noexcept { return pieces_.size(); }
  /// As many as heights; the last has nothing above it.
  [[nodiscard]] std::span<const Piece> pieces(std::size_t group) const noexcept {
    return pieces_[group];
  }
  /// Last end at or below a height that is at least the lowest end.
  [[nodiscard]] std::size_t piece_at(double height) const noexcept {
    const double* h = heights_.data();
    std::size_t i = first_in_bucket_[bucket_of(height)];
    // Hardly ever more than three in a bucket, and seldom as many as the processor guesses.
    i += h[i + 1] <= height ? 1 : 0;
    i += h[i + 1] <= height ? 1 : 0;
    i += h[i + 1] <= height ? 1 : 0;
    while (h[i + 1] <= height) ++i;
    while (i > 0 && h[i] > height) --i;
    return i;
  }

 private:
  static constexpr double no_more = std::numeric_limits<double>::infinity();
  struct End {
    double height;
    std::uint32_t row;
    std::uint32_t range_and_kind;
  };

  [[nodiscard]] std::size_t bucket_of(double height) const noexcept {
    const double place = (height - lowest_) * buckets_per_height_;
    return static_cast<std::size_t>(std::clamp(place, 0.0, last_bucket_));
  }
  void sort_ends(const StrokeColumns& strokes, std::span<const RowRange> ranges);
  void merge_ends();
  void sum_pieces(const StrokeColumns& strokes, std::span<const RowRange> ranges);

  std::vector<double> heights_{no_more};  ///< and one that no height reaches
  std::vector<std::vector<Piece>> pieces_;
  std::vector<std::uint32_t> first_in_bucket_;
  double lowest_ = 0.0;
  double buckets_per_height_ = 0.0;
  double last_bucket_ = 0.0;
  // Kept for their memory.
  std::vector<End> ends_;
  std::vector<std::uint32_t> place_;  ///< of every end among the heights
};

}  // namespace ropewalk::line
