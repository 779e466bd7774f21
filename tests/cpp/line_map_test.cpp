/// The damage map against strokes written out by hand, and what it must keep.
#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <random>

#include "line_hoists.hpp"

namespace ropewalk::line {
namespace {

constexpr double tolerance = 1e-12;

/// A map of a campaign run at one position.
struct Mapped {
  Tackle tackle;
  Severity severity;
  LineMap map;

  Mapped(const StringUp& s, const Rows& rows, MapRows kind, double bin = 1.0, bool damage = false,
         double slipped = 0.0)
      : tackle(s),
        severity(damage ? Severity(square_law(), rope_properties(), tackle)
                        : Severity::bending_cycles(tackle)),
        map(tackle, severity, bin * meter, kind) {
    const CampaignColumns campaign = rows.campaign();
    const auto severities = severities_of(severity, rows.loads());
    const RowRange all{0, rows.size(), 1.0};
    map.add(strokes_of(campaign, severities), {&all, 1},
            {.anchor = tackle.first_anchor() + slipped, .drum_end = 0.0});
  }
  Mapped(const Mapped&) = delete;
  Mapped& operator=(const Mapped&) = delete;

  [[nodiscard]] double cycles_times_length(std::size_t row) const {
    const auto means = map.means(row);
    return std::accumulate(means.begin(), means.end(), 0.0) * map.bin_length();
  }
};

/// Up 0 → 10, then three times down 15 → 5.
Rows two_strokes() { return Rows().add(200e3, 0.0, 10.0).add(100e3, 15.0, 5.0, 3.0); }

TEST(LineMapTest, TwoLinesTwoStrokesByHand) {
  const Mapped m(round_hoist(2), two_strokes(), MapRows::cause);
  // Anchor at 146, L = 35 − h. Near tangent of sheave 1: 146 − 22 − L = 89 + h; far: 2 m less.
  std::vector<double> first(400);
  lay(first, 89, 99, 0.5);
  lay(first, 87, 97, 0.5);
  lay(first, 94, 104, 1.5);
  lay(first, 92, 102, 1.5);
  // Sheave 2: 146 − 24 − 2 L = 52 + 2 h; drum: 146 − 56 − 2 L = 20 + 2 h.
  std::vector<double> second(400);
  lay(second, 52, 72, 0.5);
  lay(second, 50, 70, 0.5);
  lay(second, 62, 82, 1.5);
  lay(second, 60, 80, 1.5);
  std::vector<double> drum(400);
  lay(drum, 20, 40, 0.5);
  lay(drum, 30, 50, 1.5);
  ASSERT_EQ(m.map.rows(), 9U);  // two sheaves, three layers, four others
  ASSERT_EQ(m.map.bins(), 400U);
  expect_bins(m.map.means(0), first, tolerance);
  expect_bins(m.map.means(1), second, tolerance);
  expect_bins(m.map.means(2), drum, tolerance);
  for (std::size_t row = 3; row < 9; ++row)
    expect_bins(m.map.means(row), std::vector<double>(400), 0);
}

TEST(LineMapTest, FourLinesByHandAfterASlip) {
  // Slipped by 7: anchor at 227. Near tangents 227 − (20 + 2 m) − m (35 − h), drum 227 − 60 − 140.
  const Mapped m(round_hoist(4), Rows().add(200e3, 10.0, 20.0), MapRows::total, 1.0, false, 7.0);
  std::vector<double> expected(400);
  for (int sheave = 1; sheave <= 4; ++sheave) {
    const int at_lowest = 227 - (20 + 2 * sheave) - 35 * sheave;
    lay(expected, at_lowest + 10 * sheave, at_lowest + 20 * sheave, 0.5);
    lay(expected, at_lowest + 10 * sheave - 2, at_lowest + 20 * sheave - 2, 0.5);
  }
  lay(expected, 27 + 40, 27 + 80, 0.5);
  expect_bins(m.map.means(0), expected, tolerance);
}

TEST(LineMapTest, DamageOfTwoLinesByHand) {
  const Mapped m(round_hoist(2, 1.1), Rows().add(200e3, 0.0, 10.0).add(150e3, 10.0, 0.0, 2.0),
                 MapRows::cause, 1.0, true);
  // Tight sides: see TackleTest.TensionsOfTwoLinesByHand.
  const double first = half_cycle(200e3 * 1.1 / 2.1, sheave_tread) +
                       2.0 * half_cycle(150e3 * 1.1 / 2.1, sheave_tread);
  const double second =
      half_cycle(200e3 * 1.21 / 2.1, sheave_tread) + 2.0 * half_cycle(150e3 / 2.1, sheave_tread);
  const double layer =
      half_cycle(200e3 * 1.21 / 2.1, barrel) + 2.0 * half_cycle(150e3 / 1.1 / 2.1, barrel);
  std::vector<double> expected(400);
  lay(expected, 89, 99, first);
  lay(expected, 87, 97, first);
  expect_bins(m.map.means(0), expected, 1e-12 * first);
  expected.assign(400, 0.0);
  lay(expected, 52, 72, second);
  lay(expected, 50, 70, second);
  expect_bins(m.map.means(1), expected, 1e-12 * second);
  expected.assign(400, 0.0);
  lay(expected, 20, 40, layer);
  expect_bins(m.map.means(2), expected, 1e-12 * layer);
}

Rows random_rows(std::size_t rows, std::uint64_t seed) {
  std::mt19937_64 random(seed);
  const auto draw = [&](double low, double high) {
    return low + (high - low) * static_cast<double>(random() >> 11U) * 0x1p-53;
  };
  Rows out;
  for (std::size_t i = 0; i < rows; ++i) {
    out.add(draw(5e4, 9e5), draw(0.0, 30.0), draw(0.0, 30.0), 1.0 + static_cast<double>(i % 4));
  }
  return out;
}

TEST(LineMapTest, CyclesTimesLengthIsMultipleTimesTravel) {
  const Rows rows = random_rows(40, 3);
  double travel = 0.0;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    travel += rows.count[i] * std::abs(rows.to[i] - rows.from[i]);
  }
  for (const int lines : {2, 4}) {
    const Mapped m(round_hoist(lines), rows, MapRows::cause, 0.1);
    for (int sheave = 1; sheave <= lines; ++sheave) {
      const double sum = m.cycles_times_length(static_cast<std::size_t>(sheave - 1));
      EXPECT_NEAR(sum, sheave * travel, 1e-12 * sheave * travel);
    }
    double drum = 0.0;
    for (int layer = 1; layer <= 3; ++layer) {
      drum += m.cycles_times_length(static_cast<std::size_t>(lines + layer - 1));
    }
    EXPECT_NEAR(drum, lines * travel / 2.0, 1e-12 * lines * travel);
  }
}

TEST(LineMapTest, CausesAddUpToTheTotal) {
  StringUp s = round_hoist(4, 1.05);
  s.wear = {.crossover = number(2.0),
            .layer_change = number(5.0),
            .crossover_length = 0.4 * meter,
            .pick_up = number(0.5),
            .dead_line_sheave = number(1.5),
            .anchor = number(0.7)};
  Rows rows = random_rows(30, 8);
  for (std::size_t i = 0; i < rows.size(); i += 3) rows.pick_up[i] = 1;
  const Mapped total(s, rows, MapRows::total, 0.3, true);
  const Mapped cause(s, rows, MapRows::cause, 0.3, true);
  std::vector<double> sum(total.map.bins());
  for (std::size_t row = 0; row < cause.map.rows(); ++row) {
    const auto means = cause.map.means(row);
    for (std::size_t b = 0; b < sum.size(); ++b) sum[b] += means[b];
    EXPECT_EQ(std::accumulate(means.begin(), means.end(), 0.0) > 0.0,
              cause_names(cause.tackle)[row] != "drum layer 3")
        << row;
  }
  const auto whole = total.map.means(0);
  for (std::size_t b = 0; b < sum.size(); ++b) EXPECT_NEAR(whole[b], sum[b], 1e-13 * sum[b]);
}

TEST(LineMapTest, DrumLayersMeetWhereOneIsFull) {
  // The whole travel: 20 … 140 m from the drum end; layer 1 holds 100 m.
  const Mapped m(round_hoist(4), Rows().add(200e3, 0.0, 30.0), MapRows::cause);
  std::vector<double> expected(400);
  lay(expected, 20, 100, 0.5);
  expect_bins(m.map.means(4), expected, tolerance);
  expected.assign(400, 0.0);
  lay(expected, 100, 140, 0.5);
  expect_bins(m.map.means(5), expected, tolerance);
}

// --- Wear by weight

TEST(LineMapTest, PickUpWearsWhatLiesOnTheSheaves) {
  StringUp s = round_hoist(2);
  s.wear = {.pick_up = number(0.25), .dead_line_sheave = number(3.0), .anchor = number(2.0)};
  // Picked up at 10 m, four times; the row that is not picked up wears nothing.
  const Mapped m(s, Rows().add(200e3, 10.0, 20.0, 4.0, true).add(200e3, 5.0, 6.0, 1.0, false),
                 MapRows::cause);
  std::vector<double> pick_up(400);
  lay(pick_up, 97, 99, 4.0 * 0.25);  // sheave 1: near tangent at 89 + 10
  lay(pick_up, 70, 72, 4.0 * 0.25);  // sheave 2: 52 + 20
  expect_bins(m.map.means(6), pick_up, tolerance);
  std::vector<double> dead_line_sheave(400);
  lay(dead_line_sheave, 124, 126, 4.0 * 3.0);
  expect_bins(m.map.means(7), dead_line_sheave, tolerance);
  std::vector<double> anchor(400);
  lay(anchor, 145, 146, 4.0 * 2.0);
  expect_bins(m.map.means(8), anchor, tolerance);
}

TEST(LineMapTest, PickUpCountsACycleAtTheTensionOfHoisting) {
  StringUp s = round_hoist(2, 1.1);
  s.wear.pick_up = number(0.25);
  const Mapped m(s, Rows().add(200e3, 10.0, 20.0, 1.0, true), MapRows::cause, 1.0, true);
  const auto means = m.map.means(6);
  const double first = 0.25 * 2.0 * half_cycle(200e3 * 1.1 / 2.1, sheave_tread);
  const double second = 0.25 * 2.0 * half_cycle(200e3 * 1.21 / 2.1, sheave_tread);
  EXPECT_NEAR(means[97], first, 1e-12 * first);
  EXPECT_NEAR(means[98], first, 1e-12 * first);
  EXPECT_NEAR(means[71], second, 1e-12 * second);
}

TEST(LineMapTest, CrossoversByHand) {
  StringUp s = round_hoist(4);
  s.wear = {.crossover = number(2.0), .layer_change = number(5.0), .crossover_length = 0.4 * meter};
  const Mapped m(s, Rows().add(200e3, 0.0, 30.0), MapRows::cause, 0.05);
  // Full layer at 100 m, then one crossover a lap of 5 + 2 π d; up to 140 m on the drum: seven.
  // Half a cycle in 0.4 m of rope each, times 5 for the first, 2 for the others.
  const auto means = m.map.means(7);
  const double at_layer = 0.5 * 5.0 * 0.4;
  const double at_lap = 0.5 * 2.0 * 0.4;
  EXPECT_NEAR(m.cycles_times_length(7), at_layer + 7.0 * at_lap, 1e-11);
  for (int k = 0; k < 8; ++k) {
    const double center = 100.0 + k * (5.0 + next_lap);
    const auto low = static_cast<std::size_t>((center - 0.3) / 0.05);
    double sum = 0.0;
    for (std::size_t b = low; b < low + 13; ++b) sum += means[b] * 0.05;
    EXPECT_NEAR(sum, k == 0 ? at_layer : at_lap, 1e-11) << k;
    EXPECT_NEAR(means[static_cast<std::size_t>(center / 0.05)], k == 0 ? 2.5 : 1.0, 1e-11) << k;
  }
}

// --- Bins

TEST(LineMapTest, TheLastBinStandsForLessRope) {
  StringUp s = round_hoist(2);
  s.supply = 146.0 * meter;
  s.wear.anchor = number(1.0);
  // Bins of 4 m: 36 and a half. Wear on 145 … 146 is half of the last one, which is 2 m long.
  const Mapped m(s, Rows().add(200e3, 0.0, 10.0, 1.0, true), MapRows::cause, 4.0);
  ASSERT_EQ(m.map.bins(), 37U);
  EXPECT_NEAR(m.map.means(8).back(), 0.5, tolerance);
}

TEST(LineMapTest, WorstPlace) {
  const Mapped m(round_hoist(2), two_strokes(), MapRows::total);
  // Highest where all of sheave 1 overlaps: 94 … 97 has 0.5 + 0.5 + 1.5 + 1.5.
  const LineMap::Worst worst = m.map.worst(0.0, 146.0);
  EXPECT_NEAR(worst.value, 4.0, tolerance);
  const double place = static_cast<double>(worst.bin) + 0.5;
  EXPECT_TRUE((place > 94.0 && place < 97.0) || (place > 62.0 && place < 70.0)) << place;
  EXPECT_NEAR(m.map.worst(20.0, 50.0).value, 2.0, tolerance);
  EXPECT_EQ(m.map.worst(0.0, 19.0).value, 0.0);
}

TEST(LineMapTest, AMapCanBeCleared) {
  Mapped m(round_hoist(2), two_strokes(), MapRows::total);
  m.map.clear();
  expect_bins(m.map.means(0), std::vector<double>(400), 0.0);
}

TEST(LineMapTest, BinsThatCannotBeAreRefused) {
  const Tackle tackle(round_hoist(2));
  const Severity severity = Severity::bending_cycles(tackle);
  for (const double bin : {0.0, -1.0, 1e-7, 401.0, 1e13, HUGE_VAL, std::nan("")}) {
    const Refusal refusal =
        refusal_of([&] { const LineMap map(tackle, severity, bin * meter, MapRows::total); });
    EXPECT_EQ(refusal.field, "bin_length") << bin;
  }
}

TEST(LineMapTest, ThereMustBeRope) {
  const Tackle tackle(round_hoist(2));
  const Severity severity = Severity::bending_cycles(tackle);
  LineMap map(tackle, severity, 1.0 * meter, MapRows::total);
  const Rows rows = two_strokes();
  const auto severities = severities_of(severity, rows.loads());
  const CampaignColumns campaign = rows.campaign();
  const RowRange all{0, rows.size(), 1.0};
  const auto at = [&](const RopePosition& position) {
    return refusal_of([&] { map.add(strokes_of(campaign, severities), {&all, 1}, position); });
  };
  EXPECT_EQ(at({.anchor = 400.5, .drum_end = 200.0}).field, "anchor");
  EXPECT_EQ(at({.anchor = 146.0, .drum_end = 20.5}).field, "drum_end");
  // The drum holds 20 (15 + 3 · 2 π d) = 311.3 m; 60 m come with the travel.
  EXPECT_EQ(at({.anchor = 126.0 + 252.0, .drum_end = 0.0}).field, "drum");
  expect_bins(map.means(0), std::vector<double>(400), 0.0);
}

}  // namespace
}  // namespace ropewalk::line
