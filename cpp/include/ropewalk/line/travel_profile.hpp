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

#include "ropewalk/base/buffer.hpp"
#include "ropewalk/line/height_buckets.hpp"
#include "ropewalk/line/stroke_columns.hpp"

namespace ropewalk::line {

/// A function of block height that is constant between the ends of strokes, for hoisting and for
/// lowering. Levels are exact sums (exact_sum.hpp), so the end of a heavy stroke leaves nothing
/// behind.
class TravelProfile {
 public:
  struct Piece {
    double up;  ///< severity that passed here while hoisting
    double down;
  };
  /// A piece, and severity times height summed up from the lowest height to where it begins, to
  /// twice the digits of a double: a difference of two is as good as the sum of what lies between.
  struct Step {
    Piece piece;
    Piece area;
    Piece rest;  ///< what the sum loses in rounding
  };

  /// A profile of more heights can be looked up; going through them all would take longer.
  static constexpr std::size_t most_walked = 8192;

  /// Lays the strokes of the ranges over each other. The memory is used again by the next call.
  void build(const StrokeColumns& strokes, std::span<const RowRange> ranges);

  /// True if nothing was swept.
  [[nodiscard]] bool empty() const noexcept { return heights_.size() == 0; }
  [[nodiscard]] double lowest() const noexcept { return lowest_; }
  [[nodiscard]] double highest() const noexcept { return highest_; }

  /// Ends of strokes in rising order; piece i reaches from height i to height i + 1.
  [[nodiscard]] std::span<const double> heights() const noexcept { return heights_.span(); }
  /// Whether there are steps and a `Finder`.
  [[nodiscard]] bool can_look_up() const noexcept { return heights_.size() > most_walked; }
  /// As many as heights, the last with nothing above it; only if nothing can be looked up.
  [[nodiscard]] std::span<const Piece> pieces(std::size_t group) const noexcept {
    return pieces_[group].span();
  }
  [[nodiscard]] std::span<const Step> steps(std::size_t group) const noexcept {
    return steps_[group].span();
  }

  /// Finds the piece a height lies in; refers to the profile.
  class Finder {
   public:
    explicit Finder(const TravelProfile& profile) noexcept
        : buckets_(profile.buckets_),
          first_(profile.first_.data()),
          heights_(profile.heights_.data()),
          last_four_(profile.heights_.size() - 4) {}
    /// The first piece for what is lower than all.
    [[nodiscard]] std::size_t operator()(double height) const noexcept {
      const std::size_t bucket = buckets_.of(height);
      const std::size_t begin = first_[bucket];
      const std::size_t end = first_[bucket + 1];
      std::size_t above = begin;
      if (end - begin <= 4 && begin <= last_four_) {
        // Nearly always: counted, since a branch could not be guessed.
        for (std::size_t i = 0; i < 4; ++i) above += heights_[begin + i] <= height ? 1 : 0;
      } else {
        above = static_cast<std::size_t>(
            std::upper_bound(heights_ + begin, heights_ + end, height) - heights_);
      }
      return above - (above > 0 ? 1 : 0);
    }

   private:
    HeightBuckets buckets_;
    const std::uint32_t* first_;
    const double* heights_;
    std::size_t last_four_;
  };

 private:
  struct End {
    double height;
    std::uint32_t row;
    std::uint32_t range_and_kind;
  };

  void sort_ends(const StrokeColumns& strokes, std::span<const RowRange> ranges);
  void merge_heights();
  template <class Take>
  void sum_levels(std::span<const double> severity, std::span<const RowRange> ranges,
                  const Take& take) const;

  double lowest_ = 0.0;
  double highest_ = 0.0;
  Buffer<double> heights_;
  std::vector<Buffer<Piece>> pieces_;  // without areas, where nothing is looked up
  std::vector<Buffer<Step>> steps_;
  HeightBuckets buckets_;
  std::vector<std::uint32_t> first_;  ///< end of a stroke, then height, that a bucket begins with
  Buffer<End> ends_;                  // kept for its memory
};

}  // namespace ropewalk::line
