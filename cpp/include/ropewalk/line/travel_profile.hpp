/// What the blocks did, height by height: how much severity passed each block height.
///
/// All sheaves of a hoist see the same travel of the blocks, only over m times the rope. So the
/// strokes are first laid over each other along the block height, where equal ends merge, and the
/// result is then unrolled over the rope once per sheave (rope_map.hpp). The work per stroke does
/// not depend on the number of sheaves.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "ropewalk/line/dense_profile.hpp"
#include "ropewalk/line/stroke_columns.hpp"

namespace ropewalk::line {

/// A function of block height that is constant between the ends of strokes, for hoisting and for
/// lowering. Few strokes, or many with few different ends: one piece per end. More than
/// `most_rows`: ends stay unsorted in buckets of height (dense_profile.hpp).
class TravelProfile {
 public:
  struct Piece {
    double up = 0.0;  ///< severity that passed here while hoisting
    double down = 0.0;
  };

  static constexpr std::size_t most_rows = 8192;

  /// Lays the strokes of the ranges over each other. The memory is used again by the next call.
  void build(const StrokeColumns& strokes, std::span<const RowRange> ranges);

  /// True if nothing was swept.
  [[nodiscard]] bool empty() const noexcept { return !(highest() > lowest()); }
  [[nodiscard]] double lowest() const noexcept { return lowest_; }
  [[nodiscard]] double highest() const noexcept { return highest_; }

  [[nodiscard]] bool is_dense() const noexcept { return is_dense_; }
  [[nodiscard]] const DenseProfile& dense() const noexcept { return dense_; }
  /// Ends of strokes in rising order; piece i reaches from height i to height i + 1.
  [[nodiscard]] std::span<const double> heights() const noexcept { return heights_; }
  /// As many as heights; the last has nothing above it.
  [[nodiscard]] std::span<const Piece> pieces(std::size_t group) const noexcept {
    return pieces_[group];
  }

 private:
  struct End {
    double height;
    std::uint32_t row;
    std::uint32_t range_and_kind;
  };

  void sort_ends(const StrokeColumns& strokes, std::span<const RowRange> ranges);
  void sum_pieces(const StrokeColumns& strokes, std::span<const RowRange> ranges);

  bool is_dense_ = false;
  double lowest_ = 0.0;
  double highest_ = 0.0;
  DenseProfile dense_;
  std::vector<double> heights_;
  std::vector<std::vector<Piece>> pieces_;
  std::vector<End> ends_;  // kept for its memory
};

}  // namespace ropewalk::line
