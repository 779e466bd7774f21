/// Survival of a line: the chain of sections by hand, its limits, and sampling against it.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <vector>

#include "ropewalk/base/error.hpp"
#include "ropewalk/line/survival.hpp"

namespace ropewalk::line {
namespace {

/// Φ(−ln(D)/s) = ½ erfc(ln(D)/(s √2)).
long double lives(double damage, double s) {
  return 0.5L * std::erfc(std::log(static_cast<long double>(damage)) /
                          (static_cast<long double>(s) * std::sqrt(2.0L)));
}

TEST(SurvivalTest, OnePlaceAtItsMedianLivesInHalfTheLines) {
  const std::vector<double> damage{1.0};
  for (const double s : {0.01, 0.3, 3.0}) {
    EXPECT_NEAR(survival(damage, 1.0, {.ln_deviation = s, .section = 1.0}), 0.5, 1e-15);
  }
}

TEST(SurvivalTest, OneDeviationFromTheMedian) {
  // Φ(1) = 0.841344746 (any table of the normal distribution).
  const std::vector<double> damage{std::exp(-0.4)};
  EXPECT_NEAR(survival(damage, 1.0, {.ln_deviation = 0.4, .section = 1.0}), 0.841344746, 1e-9);
  const std::vector<double> more{std::exp(0.4)};
  EXPECT_NEAR(survival(more, 1.0, {.ln_deviation = 0.4, .section = 1.0}), 0.158655254, 1e-9);
}

TEST(SurvivalTest, SectionsMultiply) {
  // Sections of 2 m over bins of 1 m: worst 0.5, 0.8, 0.9.
  const std::vector<double> damage{0.5, 0.2, 0.7, 0.8, 0.9};
  const long double expected = lives(0.5, 0.3) * lives(0.8, 0.3) * lives(0.9, 0.3);
  EXPECT_NEAR(survival(damage, 1.0, {.ln_deviation = 0.3, .section = 2.0}),
              static_cast<double>(expected), 1e-15);
}

TEST(SurvivalTest, ABinOnABorderBelongsToBothSections) {
  // Sections of 1.5 m: 0 … 1.5 has bins 0 and 1, 1.5 … 3 has bins 1 and 2.
  const std::vector<double> damage{0.1, 0.9, 0.2};
  const long double expected = lives(0.9, 0.3) * lives(0.9, 0.3);
  EXPECT_NEAR(survival(damage, 1.0, {.ln_deviation = 0.3, .section = 1.5}),
              static_cast<double>(expected), 1e-15);
}

TEST(SurvivalTest, ARopeShorterThanASectionIsOneSection) {
  const std::vector<double> damage{0.1, 0.6, 0.2};
  for (const double section : {3.0, 10.0, 1e9}) {
    EXPECT_NEAR(survival(damage, 1.0, {.ln_deviation = 0.3, .section = section}),
                static_cast<double>(lives(0.6, 0.3)), 1e-15);
  }
}

TEST(SurvivalTest, BordersOnBinEdgesAreNotMovedByRounding) {
  // 0.3 m of bins of 0.1 m are three bins, although 0.1 + 0.1 + 0.1 is not 0.3.
  const std::vector<double> damage{0.9, 0.1, 0.1, 0.8, 0.1, 0.1, 0.1, 0.1, 0.7};
  const long double expected = lives(0.9, 0.2) * lives(0.8, 0.2) * lives(0.7, 0.2);
  EXPECT_NEAR(survival(damage, 0.1, {.ln_deviation = 0.2, .section = 0.3}),
              static_cast<double>(expected), 1e-15);
}

TEST(SurvivalTest, WithoutScatterAllLiveUntilTheMedian) {
  const std::vector<double> at{0.2, 1.0};
  const std::vector<double> past{0.2, std::nextafter(1.0, 2.0)};
  EXPECT_EQ(survival(at, 1.0, {.ln_deviation = 0.0, .section = 1.0}), 1.0);
  EXPECT_EQ(survival(past, 1.0, {.ln_deviation = 0.0, .section = 1.0}), 0.0);
  EXPECT_EQ(sampled_survival(at, 1.0, {.ln_deviation = 0.0, .section = 1.0}, 100, 1), 1.0);
  EXPECT_EQ(sampled_survival(past, 1.0, {.ln_deviation = 0.0, .section = 1.0}, 100, 1), 0.0);
}

TEST(SurvivalTest, ALimitScalesTheDamage) {
  const std::vector<double> damage{0.3, 0.4};
  const std::vector<double> over_limit{0.6, 0.8};
  EXPECT_NEAR(survival(damage, 1.0, {.ln_deviation = 0.3, .section = 1.0, .limit = 0.5}),
              survival(over_limit, 1.0, {.ln_deviation = 0.3, .section = 1.0}), 1e-15);
}

TEST(SurvivalTest, UnusedRopeLives) {
  const std::vector<double> damage(50, 0.0);
  EXPECT_EQ(survival(damage, 0.1, {.ln_deviation = 0.5, .section = 1.0}), 1.0);
  EXPECT_EQ(survival({}, 0.1, {.ln_deviation = 0.5, .section = 1.0}), 1.0);
  EXPECT_EQ(sampled_survival(damage, 0.1, {.ln_deviation = 0.5, .section = 1.0}, 100, 1), 1.0);
}

std::vector<double> worn() {
  std::vector<double> damage;
  for (int i = 0; i < 200; ++i) damage.push_back(0.35 + 0.2 * std::sin(0.1 * i));
  return damage;
}

TEST(SurvivalTest, SamplingAgreesWithTheClosedForm) {
  constexpr std::size_t samples = 100'000;
  for (const double section : {0.5, 2.0, 20.0}) {
    for (const double s : {0.3, 0.6}) {
      const Scatter scatter{.ln_deviation = s, .section = section};
      const double p = survival(worn(), 0.1, scatter);
      const double deviation = std::sqrt(p * (1.0 - p) / static_cast<double>(samples));
      ASSERT_GT(deviation, 0.0);
      for (const std::uint64_t seed : {1U, 77U}) {
        EXPECT_NEAR(sampled_survival(worn(), 0.1, scatter, samples, seed), p, 4.0 * deviation)
            << section << " " << s;
      }
    }
  }
}

TEST(SurvivalTest, SamplingIsTheSameForAnyNumberOfThreads) {
  const Scatter scatter{.ln_deviation = 0.5, .section = 1.0};
  const double one = sampled_survival(worn(), 0.1, scatter, 70'000, 5, 1);
  EXPECT_EQ(sampled_survival(worn(), 0.1, scatter, 70'000, 5, 3), one);
  EXPECT_NE(sampled_survival(worn(), 0.1, scatter, 70'000, 6, 3), one);
}

TEST(SurvivalTest, WhatCannotBeIsRefused) {
  const std::vector<double> damage{0.5};
  const auto field = [&](const Scatter& scatter) -> std::string {
    try {
      (void)survival(damage, 1.0, scatter);
    } catch (const InadmissibleError& error) {
      return error.field();
    }
    return "";
  };
  EXPECT_EQ(field({.ln_deviation = -0.1}), "scatter");
  EXPECT_EQ(field({.ln_deviation = std::nan("")}), "scatter");
  EXPECT_EQ(field({.ln_deviation = 0.1, .section = 0.0}), "correlation_length");
  EXPECT_EQ(field({.ln_deviation = 0.1, .section = std::nan("")}), "correlation_length");
  EXPECT_EQ(field({.ln_deviation = 0.1, .section = 1.0, .limit = 0.0}), "limit");
  EXPECT_EQ(field({.ln_deviation = 0.1, .section = 1e-15}), "correlation_length");
  EXPECT_THROW((void)sampled_survival(damage, 1.0, {.ln_deviation = 0.1}, 0, 1), InadmissibleError);
}

}  // namespace
}  // namespace ropewalk::line
