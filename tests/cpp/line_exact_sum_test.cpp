/// Sums in fixed point: what goes in comes out again, to the last step.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <vector>

#include "ropewalk/line/exact_sum.hpp"

namespace ropewalk::line {
namespace {

/// Terms between 1 and 1e-9, from a generator whose numbers are the same everywhere.
std::vector<double> wide_terms(std::size_t count) {
  std::mt19937_64 random(20260);
  std::vector<double> terms;
  for (std::size_t i = 0; i < count; ++i) {
    const double u = static_cast<double>(random() >> 11U) * 0x1p-53;
    terms.push_back(std::pow(10.0, -9.0 * u));
  }
  return terms;
}

double sum_of(const std::vector<double>& terms) {
  double sum = 0.0;
  for (const double term : terms) sum += term;
  return sum;
}

TEST(ExactSumTest, NothingIsZero) {
  const ExactScale scale(1.0, 10);
  EXPECT_EQ(scale.value({}), 0.0);
  EXPECT_EQ(scale.value(scale.of(0.0)), 0.0);
}

TEST(ExactSumTest, ATotalOfZeroGivesZero) {
  const ExactScale scale(0.0, 10);
  EXPECT_EQ(scale.value(scale.of(0.0)), 0.0);
}

TEST(ExactSumTest, AddingAndTakingAwayLeavesExactlyZero) {
  std::vector<double> terms = wide_terms(5'000);
  const ExactScale scale(2.0 * sum_of(terms), terms.size() + 1);
  ExactSum sum;
  for (const double term : terms) sum.add(scale.of(term), 1);
  EXPECT_GT(scale.value(sum), 0.0);
  std::sort(terms.begin(), terms.end());
  for (const double term : terms) sum.add(scale.of(term), -1);
  EXPECT_EQ(sum.high, 0);
  EXPECT_EQ(sum.low, 0);
  EXPECT_EQ(scale.value(sum), 0.0);
}

TEST(ExactSumTest, OrderDoesNotMatter) {
  std::vector<double> terms = wide_terms(2'000);
  const ExactScale scale(2.0 * sum_of(terms), terms.size() + 1);
  const auto value = [&] {
    ExactSum sum;
    for (const double term : terms) sum.add(scale.of(term), 1);
    return scale.value(sum);
  };
  const double as_drawn = value();
  std::sort(terms.begin(), terms.end());
  EXPECT_EQ(value(), as_drawn);
  std::reverse(terms.begin(), terms.end());
  EXPECT_EQ(value(), as_drawn);
}

TEST(ExactSumTest, LightTermsSurviveHeavyOnes) {
  // A third of 1e-9 next to 1e6 heavy terms of 1/7: gone in double, held to 1e-12 here.
  constexpr std::size_t heavy = 1'000'000;
  constexpr double light = 1e-9 / 3.0;
  constexpr double one = 1.0 / 7.0;
  const ExactScale scale(2.0 * one * heavy, heavy + 2);
  ExactSum sum;
  for (std::size_t i = 0; i < heavy; ++i) sum.add(scale.of(one), 1);
  sum.add(scale.of(light), 1);
  const long double all = static_cast<long double>(one) * heavy + static_cast<long double>(light);
  EXPECT_NEAR(scale.value(sum), static_cast<double>(all), 1e-15 * static_cast<double>(all));
  for (std::size_t i = 0; i < heavy; ++i) sum.add(scale.of(one), -1);
  EXPECT_NEAR(scale.value(sum), light, 1e-12 * light);
}

TEST(ExactSumTest, EveryTermIsHeldToItsOwnTwelveDigits) {
  const std::vector<double> terms = wide_terms(1'000);
  const ExactScale scale(2.0 * sum_of(terms), terms.size() + 1);
  for (const double term : terms) {
    EXPECT_NEAR(scale.value(scale.of(term)), term, 1e-12 * term);
  }
}

TEST(ExactSumTest, FollowsALongDoubleSum) {
  const std::vector<double> terms = wide_terms(10'000);
  const ExactScale scale(2.0 * sum_of(terms), terms.size() + 1);
  ExactSum sum;
  long double check = 0.0L;
  for (const double term : terms) {
    sum.add(scale.of(term), 1);
    check += static_cast<long double>(term);
  }
  EXPECT_NEAR(scale.value(sum), static_cast<double>(check), 4e-16 * static_cast<double>(check));
}

TEST(ExactSumTest, ExtremesOfMagnitude) {
  // Below 1e-250 the low steps come near the least number a double holds, and digits go.
  for (const double size : {1e-250, 1e-200, 1e-30, 1.0, 1e30, 1e200, 1e300}) {
    const ExactScale scale(2.0 * size, 3);
    ExactSum sum;
    sum.add(scale.of(0.75 * size), 1);
    sum.add(scale.of(0.25 * size), 1);
    EXPECT_NEAR(scale.value(sum), size, 1e-15 * size);
    sum.add(scale.of(0.75 * size), -1);
    EXPECT_NEAR(scale.value(sum), 0.25 * size, 1e-15 * size);
    sum.add(scale.of(0.25 * size), -1);
    EXPECT_EQ(scale.value(sum), 0.0);
  }
}

TEST(ExactSumTest, TheWholeTotalInOneTermFits) {
  // Powers of two and the numbers just below them are where a word would overflow.
  for (const double total : {1.0, 2.0, std::nextafter(2.0, 0.0), std::nextafter(1.0, 2.0)}) {
    const ExactScale scale(total, 1);
    EXPECT_EQ(scale.value(scale.of(total)), total);
  }
}

TEST(ExactSumTest, AsManyTermsAsAnyCampaignHas) {
  // 2^40 equal terms, added as a product: the low word must hold all their remainders.
  constexpr auto terms = std::int64_t{1} << 40;
  const double term = 1.0 / 3.0;
  const ExactScale scale(2.0 * term * static_cast<double>(terms), static_cast<std::size_t>(terms));
  const ExactSum one = scale.of(term);
  ASSERT_LT(std::abs(static_cast<double>(one.low) * static_cast<double>(terms)),
            static_cast<double>(std::numeric_limits<std::int64_t>::max()));
  const ExactSum all{one.high * terms, one.low * terms};
  const double expected = term * static_cast<double>(terms);
  EXPECT_NEAR(scale.value(all), expected, 1e-12 * expected);
}

}  // namespace
}  // namespace ropewalk::line
