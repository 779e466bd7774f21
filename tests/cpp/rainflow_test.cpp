#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <random>
#include <string>
#include <vector>

#include "ropewalk/base/error.hpp"
#include "ropewalk/rainflow/counter.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::rainflow {
namespace {

std::vector<Force> history(const std::vector<double>& newtons) {
  std::vector<Force> tensions;
  for (const double one : newtons) tensions.push_back(one * newton);
  return tensions;
}

/// ASTM E1049-85, Figure 6.
const std::vector<double> figure_6{-2.0, 1.0, -3.0, 5.0, -1.0, 3.0, -4.0, 4.0, -2.0};

std::map<double, double> by_range(const std::vector<Cycle>& cycles) {
  std::map<double, double> counts;
  for (const Cycle& one : cycles) counts[to_si(one.range)] += one.count;
  return counts;
}

std::vector<double> random_history(std::size_t samples, unsigned seed) {
  std::mt19937 bits(seed);
  std::vector<double> values;
  // Few levels, so that there are equal neighbors and equal ranges.
  for (std::size_t i = 0; i < samples; ++i) values.push_back(static_cast<double>(bits() % 12));
  return values;
}

TEST(Rainflow, FigureSixOfTheStandard) {
  const std::vector<Cycle> cycles = count(history(figure_6));
  // Range, mean, count, in the order of the standard's steps.
  const double expected[][3] = {{3, -0.5, 0.5}, {4, -1, 0.5}, {4, 1, 1},  {8, 1, 0.5},
                                {9, 0.5, 0.5},  {8, 0, 0.5},  {6, 1, 0.5}};
  ASSERT_EQ(cycles.size(), 7U);
  for (std::size_t i = 0; i < 7; ++i) {
    EXPECT_EQ(to_si(cycles[i].range), expected[i][0]);
    EXPECT_EQ(to_si(cycles[i].mean), expected[i][1]);
    EXPECT_EQ(cycles[i].count, expected[i][2]);
  }
  // The one full cycle lies between points E and F.
  EXPECT_EQ(cycles[2].start, 4U);
  EXPECT_EQ(cycles[2].end, 5U);
}

TEST(Rainflow, TheSameHistoryRepeated) {
  // ASTM E1049-85, 5.4.5 (from memory): ranges 3, 4, 7 and 9 once each.
  const std::map<double, double> expected{{3, 1}, {4, 1}, {7, 1}, {9, 1}};
  EXPECT_EQ(by_range(count_repeating(history(figure_6))), expected);
}

TEST(Rainflow, WhereARepeatingHistoryBeginsDoesNotMatter) {
  for (unsigned seed = 0; seed < 50; ++seed) {
    std::vector<double> values = random_history(40, seed);
    const auto expected = by_range(count_repeating(history(values)));
    std::rotate(values.begin(), values.begin() + 13, values.end());
    EXPECT_EQ(by_range(count_repeating(history(values))), expected) << seed;
  }
}

TEST(Rainflow, HalfCyclesAndCyclesCoverAllRanges) {
  // Σ count × range × 2 is the way up and down: every reversal pair belongs to one cycle.
  for (unsigned seed = 0; seed < 100; ++seed) {
    const std::vector<double> values = random_history(200, seed);
    double way = 0.0;
    for (std::size_t i = 1; i < values.size(); ++i) way += std::abs(values[i] - values[i - 1]);
    double counted = 0.0;
    for (const Cycle& one : count(history(values))) counted += 2.0 * one.count * to_si(one.range);
    EXPECT_EQ(counted, way) << seed;
  }
}

TEST(Rainflow, ARepeatingHistoryReallyRepeatedHasItsCycles) {
  // Between the first and the second copy of many nothing is left over.
  for (unsigned seed = 0; seed < 50; ++seed) {
    const std::vector<double> values = random_history(60, seed);
    const auto copies = [&](int times) {
      std::vector<double> all;
      for (int i = 0; i < times; ++i) all.insert(all.end(), values.begin(), values.end());
      return by_range(count(history(all)));
    };
    auto more = copies(5);
    for (const auto& [range, cycles] : copies(4)) more[range] -= cycles;
    std::erase_if(more, [](const auto& one) { return one.second == 0.0; });
    EXPECT_EQ(more, by_range(count_repeating(history(values)))) << seed;
  }
}

TEST(Rainflow, PiecesGiveWhatTheWholeGives) {
  for (unsigned seed = 0; seed < 20; ++seed) {
    const std::vector<Force> whole = history(random_history(300, seed));
    const std::vector<Cycle> expected = count(whole);
    Counter counter;
    std::vector<Cycle> found;
    for (std::size_t i = 0; i < whole.size(); ++i) {
      counter.push(whole[i]);
      if (i % 7 != 0) continue;
      const std::vector<Cycle> closed = counter.take();
      found.insert(found.end(), closed.begin(), closed.end());
    }
    const std::vector<Cycle> rest = counter.finish();
    found.insert(found.end(), rest.begin(), rest.end());
    ASSERT_EQ(found.size(), expected.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
      EXPECT_EQ(found[i].range, expected[i].range);
      EXPECT_EQ(found[i].start, expected[i].start);
      EXPECT_EQ(found[i].end, expected[i].end);
    }
    EXPECT_EQ(counter.samples(), 0U);  // begins anew
  }
}

TEST(Rainflow, EndsNameTheirSamples) {
  const std::vector<double> values = random_history(500, 7);
  for (const bool repeating : {false, true}) {
    for (const Cycle& one : repeating ? count_repeating(history(values)) : count(history(values))) {
      EXPECT_EQ(to_si(one.range), std::abs(values[one.start] - values[one.end]));
      EXPECT_EQ(to_si(one.mean), 0.5 * (values[one.start] + values[one.end]));
    }
  }
}

TEST(Rainflow, WhatDoesNotChangeHasNoCycles) {
  for (const std::vector<double>& values :
       {std::vector<double>{}, {3.0}, {3.0, 3.0}, {0.0, 0.0, 0.0}}) {
    EXPECT_TRUE(count(history(values)).empty());
    EXPECT_TRUE(count_repeating(history(values)).empty());
  }
  const auto ramp = count(history({1.0, 2.0, 2.0, 5.0}));
  ASSERT_EQ(ramp.size(), 1U);
  EXPECT_EQ(to_si(ramp[0].range), 4.0);
  EXPECT_EQ(ramp[0].count, 0.5);
}

TEST(Rainflow, ACounterGoesOnFromItsState) {
  const std::vector<double> history{-2, 1, -3, 5, -1, 3, 3, -4, 4, -2};
  for (std::size_t cut = 0; cut <= history.size(); ++cut) {
    Counter first;
    for (std::size_t i = 0; i < cut; ++i) first.push(history[i] * newton);
    (void)first.take();
    Counter second = Counter::from(first.state());
    EXPECT_EQ(second.samples(), cut);
    for (Counter* const one : {&first, &second}) {
      for (std::size_t i = cut; i < history.size(); ++i) one->push(history[i] * newton);
    }
    const std::vector<Cycle> expected = first.finish();
    const std::vector<Cycle> found = second.finish();
    ASSERT_EQ(found.size(), expected.size()) << cut;
    for (std::size_t i = 0; i < found.size(); ++i) {
      EXPECT_EQ(found[i].range, expected[i].range);
      EXPECT_EQ(found[i].count, expected[i].count);
      EXPECT_EQ(found[i].start, expected[i].start);
      EXPECT_EQ(found[i].end, expected[i].end);
    }
  }
  CounterState wrong;
  wrong.samples = 3;
  EXPECT_THROW((void)Counter::from(wrong), InadmissibleError);
}

TEST(Rainflow, WhatIsNotFiniteIsNamedAndLeavesTheCounterAsItWas) {
  Counter counter;
  counter.push(1.0 * newton);
  try {
    counter.push(from_si<Force>(std::nan("")));
    FAIL();
  } catch (const InadmissibleError& error) {
    EXPECT_NE(std::string(error.what()).find("sample 1"), std::string::npos);
  }
  counter.push(4.0 * newton);
  EXPECT_EQ(counter.samples(), 2U);
  EXPECT_EQ(counter.residue().size(), 2U);
  EXPECT_EQ(counter.finish().size(), 1U);
  EXPECT_THROW((void)count_repeating(history({1.0, INFINITY, 2.0})), InadmissibleError);
}

TEST(EquivalentRange, OfFigureSixByHand) {
  // m = 3: (½ 27 + 1½ 64 + ½ 216 + 512 + ½ 729)/4 = 1094/4; m = 5: 67838/4.
  const std::vector<Cycle> cycles = count(history(figure_6));
  EXPECT_NEAR(to_si(equivalent_range(cycles, from_si<Number>(3.0))), std::cbrt(1094.0 / 4.0),
              1e-12);
  EXPECT_NEAR(to_si(equivalent_range(cycles, from_si<Number>(5.0))), std::pow(67838.0 / 4.0, 0.2),
              1e-12);
  // m = 1: the mean, (1.5 + 6 + 3 + 8 + 4.5)/4; for a large m it nears the largest.
  EXPECT_NEAR(to_si(equivalent_range(cycles, from_si<Number>(1.0))), 23.0 / 4.0, 1e-12);
  EXPECT_NEAR(to_si(equivalent_range(cycles, from_si<Number>(100.0))), 9.0, 0.3);
  EXPECT_THROW((void)equivalent_range({}, from_si<Number>(3.0)), InadmissibleError);
  EXPECT_THROW((void)equivalent_range(cycles, from_si<Number>(0.0)), InadmissibleError);
}

}  // namespace
}  // namespace ropewalk::rainflow
