/// Even buckets of block height: what sorts ends of strokes, and finds a height among them, in a
/// time that does not grow with their number.
#pragma once

#include <algorithm>
#include <bit>
#include <cstddef>

namespace ropewalk::line {

class HeightBuckets {
 public:
  HeightBuckets() = default;
  /// More buckets than there are `heights`, so that most hold one or none.
  HeightBuckets(double lowest, double highest, std::size_t heights) noexcept
      : count_(std::bit_ceil(heights + 1)),
        lowest_(lowest),
        last_(static_cast<double>(count_ - 1)) {
    if (highest > lowest) per_height_ = static_cast<double>(count_) / (highest - lowest);
  }
  [[nodiscard]] std::size_t count() const noexcept { return count_; }
  /// Rises with the height: what lies in a lower bucket is lower.
  [[nodiscard]] std::size_t of(double height) const noexcept {
    return static_cast<std::size_t>(std::clamp((height - lowest_) * per_height_, 0.0, last_));
  }

 private:
  std::size_t count_ = 1;
  double lowest_ = 0.0;
  double last_ = 0.0;
  double per_height_ = 0.0;
};

}  // namespace ropewalk::line
