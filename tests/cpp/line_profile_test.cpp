/// Travel profiles: strokes laid over each other along the height of the block.
#include <gtest/gtest.h>

#include <vector>

#include "line_strokes.hpp"

namespace ropewalk::line {
namespace {

// --- By hand

TEST(TravelProfileTest, TwoStrokesByHand) {
  // Up 2 → 10 with 3, down 12 → 5 with 4: up 3 over 2 … 10, down 4 over 5 … 12.
  Strokes strokes;
  strokes.add(2.0, 10.0, 3.0);
  strokes.add(12.0, 5.0, 4.0);
  const TravelProfile profile = strokes.profile();
  const double heights[] = {2.0, 5.0, 10.0, 12.0};
  const double up[] = {3.0, 3.0, 0.0, 0.0};
  const double down[] = {0.0, 4.0, 4.0, 0.0};
  ASSERT_EQ(profile.heights().size(), 4U);
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_EQ(profile.heights()[i], heights[i]);
    EXPECT_EQ(profile.pieces(0)[i].up, up[i]);
    EXPECT_EQ(profile.pieces(0)[i].down, down[i]);
  }
}

TEST(TravelProfileTest, HeightsRiseAndNoneComesTwice) {
  const Strokes strokes = random_strokes(3'000, 3.0, 5);
  const TravelProfile profile = strokes.profile();
  const auto heights = profile.heights();
  ASSERT_FALSE(heights.empty());
  for (std::size_t i = 1; i < heights.size(); ++i) ASSERT_LT(heights[i - 1], heights[i]);
}

TEST(TravelProfileTest, AFinderFindsThePieceOfAnyHeight) {
  const Strokes strokes = random_strokes(6'000, 3.0, 9);
  const TravelProfile profile = strokes.profile();
  ASSERT_TRUE(profile.can_look_up());
  const TravelProfile::Finder find(profile);
  const auto heights = profile.heights();
  EXPECT_EQ(find(heights.front() - 1.0), 0U);
  EXPECT_EQ(find(heights.back() + 1.0), heights.size() - 1);
  for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
    ASSERT_EQ(find(heights[i]), i);
    ASSERT_EQ(find(std::nextafter(heights[i + 1], 0.0)), i);
    ASSERT_EQ(find(0.5 * (heights[i] + heights[i + 1])), i);
  }
}

TEST(TravelProfileTest, EndsCloseTogetherBesideOneFarAway) {
  // A thousand ends within a micrometer, which no even grid of the whole travel tells apart.
  Strokes strokes;
  for (int i = 0; i < 500; ++i) strokes.add(1e-9 * i, 1e-6 - 1e-9 * i + 1e-10, 1.0);
  strokes.add(0.0, 30.0, 0.01);
  expect_like_brute(strokes, everywhere, 0.1, 400);
}

TEST(TravelProfileTest, NoStrokesAndStandingStrokesSweepNothing) {
  const Strokes none;
  EXPECT_TRUE(none.profile().heights().empty());
  Strokes standing;
  standing.add(4.0, 4.0, 1.0);
  const std::vector<double> values = unrolled(standing.profile(), everywhere, 1.0, 10);
  for (const double value : values) EXPECT_EQ(value, 0.0);
}

TEST(TravelProfileTest, AStandingStrokeAmongOthersAddsNothing) {
  Strokes with;
  with.add(1.0, 7.0, 1.0);
  with.add(3.0, 3.0, 1e9);
  with.add(7.0, 7.0, 0.3);
  Strokes without;
  without.add(1.0, 7.0, 1.0);
  EXPECT_EQ(unrolled(with.profile(), everywhere, 0.5, 20),
            unrolled(without.profile(), everywhere, 0.5, 20));
}

TEST(TravelProfileTest, IsBuiltAnewInTheMemoryOfTheLast) {
  const Strokes large = random_strokes(1'000, 9.0, 3);
  const Strokes small = random_strokes(7, 2.0, 4);
  TravelProfile profile = large.profile();
  const RowRange all{0, small.rows(), 1.0};
  profile.build(small.columns(), {&all, 1});
  EXPECT_EQ(unrolled(profile, everywhere, 0.1, 300),
            unrolled(small.profile(), everywhere, 0.1, 300));
}

// --- Ranges, times and merging

TEST(TravelProfileTest, EqualEndsMergedAreOneByOne) {
  // 40 strokes that use 5 heights; powers of two, so that every sum is exact.
  Strokes one_by_one;
  Strokes merged;
  for (int i = 0; i < 4; ++i) {
    const double low = 3.0 * i;
    const double high = 3.0 * (i + 1);
    for (int k = 0; k < 10; ++k) one_by_one.add(low, high, 0.25);
    merged.add(low, high, 2.5);
  }
  EXPECT_EQ(one_by_one.profile().heights().size(), 5U);
  EXPECT_EQ(unrolled(one_by_one.profile(), everywhere, 0.7, 20),
            unrolled(merged.profile(), everywhere, 0.7, 20));
}

TEST(TravelProfileTest, TimesIsAsOftenAsItSays) {
  const Strokes once = random_strokes(50, 2.0, 11);
  Strokes thrice;
  for (int k = 0; k < 3; ++k) {
    for (std::size_t i = 0; i < once.rows(); ++i) {
      thrice.add(once.from[i], once.to[i], once.severity[i]);
    }
  }
  const auto by_times = unrolled(once.profile(3.0), everywhere, 0.1, 300);
  const auto in_rows = unrolled(thrice.profile(), everywhere, 0.1, 300);
  for (std::size_t b = 0; b < by_times.size(); ++b) {
    EXPECT_NEAR(by_times[b], in_rows[b], 1e-14 * in_rows[b]);
  }
}

TEST(TravelProfileTest, RangesAddUpAndLeaveOutTheRest) {
  Strokes strokes;
  strokes.add(0.0, 4.0, 1.0);
  strokes.add(0.0, 4.0, 100.0);  // in no range
  strokes.add(2.0, 6.0, 8.0);
  const RowRange ranges[] = {{0, 1, 2.0}, {2, 3, 0.5}, {0, 0, 7.0}};
  TravelProfile profile;
  profile.build(strokes.columns(), ranges);
  // 2 over 0 … 4 and 4 over 2 … 6.
  const double expected[] = {2.0, 2.0, 6.0, 6.0, 4.0, 4.0, 0.0, 0.0};
  const auto values = unrolled(profile, everywhere, 1.0, 8);
  for (std::size_t b = 0; b < 8; ++b) EXPECT_EQ(values[b], expected[b]);
}

TEST(TravelProfileTest, GroupsAreKeptApart) {
  const std::vector<double> from{0.0, 5.0};
  const std::vector<double> to{5.0, 0.0};
  const std::vector<double> first{1.0, 2.0};
  const std::vector<double> second{16.0, 32.0};
  TravelProfile profile;
  const RowRange all{0, 2, 1.0};
  profile.build({.height_from = from, .height_to = to, .severities = {first, second}}, {&all, 1});
  std::vector<double> values(6);
  RopeBins(1.0).unroll(profile, 1, everywhere, values);
  EXPECT_EQ(values[0], 48.0);
  EXPECT_EQ(values[4], 48.0);
}

}  // namespace
}  // namespace ropewalk::line
