/// Travel profiles on the rope, against sums written stroke by stroke.
#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <utility>
#include <vector>

#include "line_strokes.hpp"

namespace ropewalk::line {
namespace {

TEST(RopeBinsTest, AStrokeByHand) {
  // x = 3.5 + 4 h, h = 1 … 2: 7.5 … 11.5 m in bins of 1 m; 0.5 up, 3 down.
  Strokes strokes;
  strokes.add(1.0, 2.0, 2.0);
  strokes.add(2.0, 1.0, 1.0);
  const Sweep sweep{
      .at_lowest = 3.5, .multiple = 4.0, .up = 0.5, .down = 3.0, .from = 0.0, .to = 100.0};
  const auto values = unrolled(strokes.profile(), sweep, 1.0, 15);
  const double expected[] = {0, 0, 0, 0, 0, 0, 0, 2, 4, 4, 4, 2, 0, 0, 0};
  for (std::size_t b = 0; b < 15; ++b) EXPECT_EQ(values[b], expected[b]) << b;
}

TEST(RopeBinsTest, AddsToWhatIsThere) {
  Strokes strokes;
  strokes.add(0.0, 2.0, 1.0);
  std::vector<double> values(4, 10.0);
  RopeBins(1.0).unroll(strokes.profile(), 0, everywhere, values);
  EXPECT_EQ(values, (std::vector<double>{11.0, 11.0, 10.0, 10.0}));
}

TEST(RopeBinsTest, EndsOnBordersTouchNoOtherBin) {
  Strokes strokes;
  strokes.add(0.0, 3.0, 1.0);
  std::vector<double> values(3);  // none after the end at 3 m
  RopeBins(1.0).unroll(strokes.profile(), 0, everywhere, values);
  EXPECT_EQ(values, (std::vector<double>{1.0, 1.0, 1.0}));
  RopeBins(1.0).cover(1.0, 3.0, 2.0, values);
  EXPECT_EQ(values, (std::vector<double>{1.0, 3.0, 3.0}));
}

TEST(RopeBinsTest, ClipsAtBothEnds) {
  Strokes strokes;
  strokes.add(0.0, 10.0, 4.0);
  Sweep sweep = everywhere;
  sweep.from = 2.5;
  sweep.to = 4.25;
  const double expected[] = {0.0, 0.0, 2.0, 4.0, 1.0, 0.0, 0.0, 0.0, 0.0, 0.0};
  auto values = unrolled(strokes.profile(), sweep, 1.0, 10);
  for (std::size_t b = 0; b < 10; ++b) EXPECT_EQ(values[b], expected[b]) << b;
  for (const auto& [from, to] : {std::pair{20.0, 30.0}, {-9.0, -1.0}, {5.0, 5.0}, {6.0, 5.0}}) {
    sweep.from = from;
    sweep.to = to;
    for (const double value : unrolled(strokes.profile(), sweep, 1.0, 10)) EXPECT_EQ(value, 0.0);
  }
}

TEST(RopeBinsTest, PartsOfARangeAddUpToTheWhole) {
  // Layers of a drum: the same tangent point in touching windows.
  const Strokes strokes = random_strokes(20'000, 4.0, 21);
  Sweep sweep{.at_lowest = 7.3, .multiple = 10.0, .from = 0.0, .to = 400.0};
  const auto whole = unrolled(strokes.profile(), sweep, 0.1, 4'000);
  std::vector<double> parts(4'001);
  const double borders[] = {0.0, 61.83, 150.0, 222.222, 400.0};
  for (std::size_t k = 0; k < 4; ++k) {
    sweep.from = borders[k];
    sweep.to = borders[k + 1];
    RopeBins(0.1).unroll(strokes.profile(), 0, sweep, parts);
  }
  for (std::size_t b = 0; b < whole.size(); ++b) {
    EXPECT_NEAR(parts[b], whole[b], 1e-11 * whole[b]) << b;
  }
}

TEST(RopeBinsTest, CoverByHand) {
  std::vector<double> values(6);
  const RopeBins bins(0.5);
  bins.cover(0.25, 1.25, 8.0, values);   // half of bin 0, bin 1, half of bin 2
  bins.cover(2.125, 2.25, 8.0, values);  // a quarter of bin 4
  bins.cover(1.0, 1.0, 8.0, values);
  bins.cover(1.0, 0.5, 8.0, values);
  EXPECT_EQ(values, (std::vector<double>{4.0, 8.0, 4.0, 0.0, 2.0, 0.0}));
}

TEST(RopeBinsTest, TheIntegralAlongTheRopeIsMultipleTimesTravelTimesSeverity) {
  for (const std::size_t rows : {3U, 300U, 30'000U}) {
    for (const double multiple : {1.0, 5.0, 12.0}) {
      const Strokes strokes = random_strokes(rows, 3.0, rows);
      const Sweep sweep{
          .at_lowest = 17.77, .multiple = multiple, .up = 1.3, .down = 0.6, .from = 0.0, .to = 1e4};
      Wide expected = 0.0L;
      for (std::size_t i = 0; i < rows; ++i) {
        const Wide travel = static_cast<Wide>(strokes.to[i]) - static_cast<Wide>(strokes.from[i]);
        expected += static_cast<Wide>(multiple) * std::abs(travel) *
                    static_cast<Wide>(strokes.severity[i]) * (travel > 0.0L ? 1.3L : 0.6L);
      }
      Wide sum = 0.0L;
      for (const double value : unrolled(strokes.profile(), sweep, 0.1, 4'000)) {
        sum += static_cast<Wide>(value) * static_cast<Wide>(0.1);
      }
      EXPECT_NEAR(static_cast<double>(sum / expected), 1.0, 1e-13);
    }
  }
}

// --- Against the sum stroke by stroke. The scale of a bin is the sum of the strokes that reach
// into it: the finest thing any of its parts is known to.

TEST(RopeBinsTest, FewStrokesMatchTheSumStrokeByStroke) {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const Strokes strokes = random_strokes(1 + 7 * seed, 9.0, seed);
    for (const double multiple : {1.0, 4.0, 12.0}) {
      const Sweep sweep{.at_lowest = 100.0 + 1.37 * static_cast<double>(seed),
                        .multiple = multiple,
                        .up = 0.9,
                        .down = 1.7,
                        .from = 0.0,
                        .to = 1e4};
      expect_like_brute(strokes, sweep, 0.1, 5'000);
    }
  }
}

TEST(RopeBinsTest, ManyStrokesMatchTheSumStrokeByStroke) {
  for (const auto& [rows, decades] :
       {std::pair<std::size_t, double>{6'000, 0.0}, {6'000, 9.0}, {12'000, 3.0}, {12'000, 9.0}}) {
    const Strokes strokes = random_strokes(rows, decades, 99);
    for (const double multiple : {1.0, 4.0, 12.0}) {
      const Sweep sweep{
          .at_lowest = 311.7, .multiple = multiple, .up = 0.9, .down = 1.7, .from = 0.0, .to = 1e4};
      expect_like_brute(strokes, sweep, 0.1, 7'000);
      expect_like_brute(strokes, sweep, 0.73, 1'000);
    }
  }
}

TEST(RopeBinsTest, LightStrokesAboveHeavyOnesKeepTheirDigits) {
  // 20 000 strokes of about 1 below 10 m, 20 000 of about 1e-9 above 11 m, none between.
  std::mt19937_64 random(7);
  Strokes strokes;
  for (int i = 0; i < 20'000; ++i) {
    strokes.add(between(random, 0.0, 5.0), between(random, 5.0, 10.0), between(random, 0.5, 1.0));
    strokes.add(between(random, 20.0, 30.0), between(random, 11.0, 20.0),
                1e-9 * between(random, 0.5, 1.0));
  }
  const Sweep sweep{.at_lowest = 50.0, .multiple = 12.0, .from = 0.0, .to = 1e4};
  expect_like_brute(strokes, sweep, 0.1, 4'200);
  const auto values = unrolled(strokes.profile(), sweep, 0.1, 4'200);
  const Brute expected = brute(strokes, sweep, 0.1, 4'200);
  for (std::size_t b = 1'830; b < 4'100; ++b) {
    if (expected.mean[b] < 1e-7L) continue;
    EXPECT_NEAR(static_cast<double>(static_cast<Wide>(values[b]) / expected.mean[b]), 1.0, 1e-12);
  }
  for (std::size_t b = 1'701; b < 1'819; ++b) EXPECT_EQ(values[b], 0.0) << b;
}

TEST(RopeBinsTest, ClippedSweepsMatchTheSumStrokeByStroke) {
  const Strokes strokes = random_strokes(4'000, 9.0, 123);
  const Sweep sweep{.at_lowest = 20.0, .multiple = 6.0, .from = 44.44, .to = 133.33};
  expect_like_brute(strokes, sweep, 0.1, 2'500);
}

TEST(RopeBinsTest, BothWaysOfUnrollingAgree) {
  // So many strokes are looked up in long bins, and walked through in bins shorter than they are.
  const Strokes strokes = random_strokes(6'000, 6.0, 77);
  const TravelProfile profile = strokes.profile();
  ASSERT_TRUE(profile.can_look_up());
  const Sweep sweep{.at_lowest = 12.0, .multiple = 8.0, .from = 0.0, .to = 1e4};
  constexpr std::size_t parts = 256;
  const auto fine = unrolled(profile, sweep, 2.0 / parts, 188 * parts);
  const auto coarse = unrolled(profile, sweep, 2.0, 188);
  for (std::size_t b = 0; b < 187; ++b) {
    Wide mean = 0.0L;
    for (std::size_t k = 0; k < parts; ++k) mean += static_cast<Wide>(fine[parts * b + k]) / parts;
    EXPECT_NEAR(coarse[b], static_cast<double>(mean), 1e-11 * static_cast<double>(mean)) << b;
  }
}

TEST(RopeBinsTest, ManyEndsCloseTogetherBesideOneFarAway) {
  // All but two in one bucket of height, and nearly all in one bin.
  std::mt19937_64 random(3);
  Strokes strokes;
  for (int i = 0; i < 8'000; ++i) {
    strokes.add(between(random, 4.0, 4.00001), between(random, 4.0, 4.00001), 1.0);
  }
  strokes.add(0.0, 30.0, 0.01);
  for (const double bin : {0.1, 0.73}) {
    const Sweep sweep{.at_lowest = 50.0, .multiple = 12.0, .from = 0.0, .to = 1e4};
    expect_like_brute(strokes, sweep, bin, static_cast<std::size_t>(420.0 / bin));
  }
}

}  // namespace
}  // namespace ropewalk::line
