/// Ranges of admissible or valid values, each with the source that sets it.
#pragma once

#include <limits>
#include <string_view>

#include "ropewalk/units/quantities.hpp"

namespace ropewalk {

/// An interval of SI numbers with the source of its bounds. The default admits every finite number.
struct Interval {
  double low = std::numeric_limits<double>::lowest();
  double high = std::numeric_limits<double>::max();
  bool low_open = false;  ///< true: `low` itself is outside
  bool whole = false;     ///< true: only whole numbers
  std::string_view source{};

  /// False for NaN, infinities, and whatever lies outside.
  [[nodiscard]] constexpr bool contains(double x) const noexcept {
    const bool above = low_open ? x > low : x >= low;
    const bool inside = above && x <= high;
    return whole ? inside && is_whole(x) : inside;
  }

  [[nodiscard]] constexpr bool unbounded() const noexcept {
    return low == std::numeric_limits<double>::lowest() &&
           high == std::numeric_limits<double>::max() && !whole;
  }

 private:
  // Called only for numbers already inside the bounds, which for counts are small.
  [[nodiscard]] static constexpr bool is_whole(double x) noexcept {
    return x == static_cast<double>(static_cast<long long>(x));
  }
};

/// Everything finite.
[[nodiscard]] constexpr Interval any_finite() noexcept { return {}; }

/// low ≤ x ≤ high.
template <class Q>
[[nodiscard]] constexpr Interval between(Q low, Q high, std::string_view source) noexcept {
  return {.low = to_si(low), .high = to_si(high), .source = source};
}

/// low < x ≤ high.
template <class Q>
[[nodiscard]] constexpr Interval above_up_to(Q low, Q high, std::string_view source) noexcept {
  return {.low = to_si(low), .high = to_si(high), .low_open = true, .source = source};
}

/// Whole numbers low … high.
[[nodiscard]] constexpr Interval whole_between(int low, int high,
                                               std::string_view source) noexcept {
  return {.low = static_cast<double>(low),
          .high = static_cast<double>(high),
          .whole = true,
          .source = source};
}

/// One argument of a model: its name, what it can be at all, and where the model is published.
template <class Q>
struct Parameter {
  using quantity = Q;
  std::string_view name;
  Interval admissible = any_finite();
  Interval valid = any_finite();

  /// The same argument with the range for which one model is published.
  [[nodiscard]] constexpr Parameter valid_in(Interval range) const noexcept {
    Parameter copy = *this;
    copy.valid = range;
    return copy;
  }
  /// The same argument under the name one model gives it.
  [[nodiscard]] constexpr Parameter named(std::string_view other) const noexcept {
    Parameter copy = *this;
    copy.name = other;
    return copy;
  }
};

}  // namespace ropewalk
