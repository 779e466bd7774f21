/// Sums of positive numbers without rounding, in fixed point.
///
/// The level of damage along the travel is a sum of strokes that begin and strokes that end. In
/// floating point the end of a heavy stroke would leave its rounding behind and drown light ones.
/// Whole numbers leave nothing: what has been added can be taken away again, the order does not
/// matter, and neither does the number of threads.
#pragma once

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>

namespace ropewalk::line {

/// A fixed-point number in two words; the carry between them waits until the number is read.
struct ExactSum {
  std::int64_t high = 0;
  std::int64_t low = 0;

  /// Adds it, or takes it away with sign −1.
  constexpr void add(const ExactSum& other, int sign) noexcept {
    high += sign * other.high;
    low += sign * other.low;
  }
};

/// The steps of fixed-point numbers for sums up to `total` of at most `terms` terms.
///
/// One step of the high word is total / 2^62, one of the low word that divided by 2^(62 − lg
/// terms). A million terms are held to 2^-104 of their total.
class ExactScale {
 public:
  ExactScale(double total, std::size_t terms) noexcept {
    if (!(total > 0.0)) return;
    const int exponent = std::ilogb(total) + 1;
    const int low_bits = std::min(52, 62 - static_cast<int>(std::bit_width(terms)));
    // The steps themselves must be numbers a double holds in full.
    const int high_step = std::max(exponent - 62, -1000 + low_bits);
    to_high_ = std::ldexp(1.0, -high_step);
    high_step_ = std::ldexp(1.0, high_step);
    to_low_ = std::ldexp(1.0, low_bits);
    low_step_ = std::ldexp(1.0, high_step - low_bits);
  }

  /// Rounded down to a whole step.
  [[nodiscard]] ExactSum of(double value) const noexcept {
    const double steps = value * to_high_;
    const auto high = static_cast<std::int64_t>(steps);
    const double rest = steps - static_cast<double>(high);
    return {high, static_cast<std::int64_t>(rest * to_low_)};
  }
  /// Both words of a sum of positive terms are positive: nothing cancels here.
  [[nodiscard]] double value(const ExactSum& sum) const noexcept {
    return static_cast<double>(sum.high) * high_step_ + static_cast<double>(sum.low) * low_step_;
  }

 private:
  double to_high_ = 0.0;
  double high_step_ = 0.0;
  double to_low_ = 0.0;
  double low_step_ = 0.0;
};

}  // namespace ropewalk::line
