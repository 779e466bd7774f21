/// Geometric sums with a whole number of terms: what every reeving formula is made of.
#pragma once

#include <bit>
#include <cstdint>

namespace ropewalk::reeving {

/// sum = 1 + K + K² + … + K^(terms − 1), power = K^exponent.
struct PowerSum {
  double sum;
  double power;
};

namespace detail {

inline constexpr int binary_digits = 7;

/// All ones if binary digit `j` of `number` is one, else zero.
[[nodiscard]] constexpr std::uint64_t digit_mask(std::uint64_t number, int j) noexcept {
  return std::uint64_t{0} - ((number >> j) & 1U);
}

/// `a` where the mask is all ones, `b` where it is zero; without a branch, and in a form that
/// every x86-64 can do in vector registers.
[[nodiscard]] constexpr double select(std::uint64_t mask, double a, double b) noexcept {
  return std::bit_cast<double>((std::bit_cast<std::uint64_t>(a) & mask) |
                               (std::bit_cast<std::uint64_t>(b) & ~mask));
}

}  // namespace detail

/// Largest `terms` and `exponent` that power_sum takes.
inline constexpr int power_sum_limit = (1 << detail::binary_digits) - 1;

/// Geometric sum and power by the binary digits of `terms` and `exponent`.
///
/// The textbook quotient (K^N − 1)/(K − 1) cancels near K = 1 and is 0/0 for frictionless sheaves.
/// Here nothing is subtracted: a block of 2^j terms is doubled by
///
///   1 + … + K^(2^(j+1) − 1) = (1 + … + K^(2^j − 1)) (1 + K^(2^j)),
///
/// and the blocks that the binary digits of `terms` name are put one after the other. The sum is
/// exactly `terms` at K = 1 and good to about `terms` rounding errors everywhere else. Every row
/// takes the same seven steps whatever its number of lines, so a batch runs in vector registers.
[[nodiscard]] constexpr PowerSum power_sum(double k, int terms, int exponent) noexcept {
  const auto terms_digits = static_cast<std::uint64_t>(terms);
  const auto exponent_digits = static_cast<std::uint64_t>(exponent);
  double sum = 0.0;
  double power = 1.0;
  double block = 1.0;  // 1 + K + … , 2^j terms
  double step = k;     // K^(2^j)
  for (int j = 0; j < detail::binary_digits; ++j) {
    sum = detail::select(detail::digit_mask(terms_digits, j), block + step * sum, sum);
    power = detail::select(detail::digit_mask(exponent_digits, j), power * step, power);
    block += block * step;
    step *= step;
  }
  return {sum, power};
}

static_assert(power_sum(1.0, 10, 12).sum == 10.0 && power_sum(1.0, 10, 12).power == 1.0);
static_assert(power_sum(2.0, 5, 10).sum == 31.0 && power_sum(2.0, 5, 10).power == 1024.0);
static_assert(power_sum(2.0, 50, 100).sum == 0x1p50 - 1.0 &&
              power_sum(2.0, 50, 100).power == 0x1p100);

}  // namespace ropewalk::reeving
