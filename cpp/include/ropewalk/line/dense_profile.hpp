/// The travel of the blocks for very many strokes: ends in buckets of height, unsorted.
///
/// At the edges of the buckets the level of severity is an exact sum, and its integral is kept to
/// twice the digits of a double. Between two edges the ends themselves are gone through, looking up
/// from an edge below or down from an edge above, so that only strokes that end inside a stretch
/// of height can leave their rounding in it. Everything is linear in the number of strokes.
#pragma once

#include <algorithm>
#include <cstdint>
#include <span>
#include <vector>

#include "ropewalk/line/stroke_columns.hpp"

namespace ropewalk::line {

class DenseProfile {
  // Declared first: a walk holds pointers to them.
  /// Level and integral at the lower edge of a bucket.
  struct Edge {
    double up = 0.0;
    double down = 0.0;
    double up_integral = 0.0;
    double down_integral = 0.0;
    double up_rest = 0.0;  ///< what the integral loses in rounding
    double down_rest = 0.0;
  };
  struct End {
    double height;
    double up;  ///< severity that begins here, less what ends
    double down;
  };

 public:
  void build(const StrokeColumns& strokes, std::span<const RowRange> ranges, double lowest,
             double highest);

  /// Walks up through the heights for one tangent point, which damages `up` and `down` times the
  /// severity of its group.
  class Walk {
   public:
    Walk(const DenseProfile& profile, std::size_t group, double up, double down, double height);
    /// Integral of the damage over height from where the walk stands to `height`; goes there.
    [[nodiscard]] double to(double height) noexcept;

   private:
    struct Sides {
      double below = 0.0;  ///< from the edge below to a height
      double above = 0.0;  ///< from it to the edge above
    };
    [[nodiscard]] Sides sides(std::size_t bucket, double height) const noexcept;
    [[nodiscard]] double level(std::size_t bucket) const noexcept;

    const DenseProfile& profile_;
    const End* ends_;
    const Edge* edges_;
    double up_;
    double down_;
    double height_;
    std::size_t bucket_;
    double above_;
  };

 private:
  [[nodiscard]] std::size_t bucket_of(double height) const noexcept {
    return static_cast<std::size_t>(
        std::clamp((height - lowest_) * buckets_per_height_, 0.0, last_bucket_));
  }
  [[nodiscard]] double edge_of(std::size_t bucket) const noexcept {
    return lowest_ + static_cast<double>(bucket) * bucket_height_;
  }
  void sum(std::size_t group, const ExactScale& scale);

  double lowest_ = 0.0;
  double bucket_height_ = 0.0;
  double buckets_per_height_ = 0.0;
  double last_bucket_ = 0.0;
  std::vector<std::uint32_t> first_;  ///< end of every bucket
  std::vector<std::vector<End>> ends_;
  std::vector<std::vector<Edge>> edges_;
  std::vector<std::uint32_t> next_;  // kept for its memory
};

}  // namespace ropewalk::line
