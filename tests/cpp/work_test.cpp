#include <gtest/gtest.h>

#include <vector>

#include "ropewalk/work/drilling.hpp"
#include "ropewalk/work/strokes.hpp"
#include "ropewalk/work/trip.hpp"

namespace ropewalk::work {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }
double ton_miles(Energy work) { return work / ton_mile; }

/// A string, a block and a stand, in feet and pounds.
struct Example {
  double stand;
  double pipe;
  double excess;
  double block;

  [[nodiscard]] Energy trip(double depth) const {
    return round_trip(depth * foot, stand * foot, pipe * pound_force_per_foot, excess * pound_force,
                      block * pound_force);
  }
  [[nodiscard]] Energy between(double from, double to) const {
    return short_trip(from * foot, to * foot, stand * foot, pipe * pound_force_per_foot,
                      excess * pound_force, block * pound_force);
  }
  [[nodiscard]] Hung hung() const {
    return {pipe * pound_force_per_foot, excess * pound_force, 0.0 * meter, block * pound_force};
  }
};

// Rabia, Well Engineering and Construction: 10 lb/gal mud, steel 65.5 lb/gal.
constexpr double rabia_buoyancy = 1.0 - 10.0 / 65.5;
constexpr Example rabia{93.0, 19.5 * rabia_buoyancy, (150.0 - 19.5) * 500.0 * rabia_buoyancy,
                        23'500.0};
// Lapeyrouse, Formulas and Calculations, 2nd ed. (2002), p. 44.
constexpr Example lapeyrouse{60.0, 11.35, 17'845.0, 15'000.0};

// --- Closed forms

TEST(RoundTripTest, IsTheFormApiRp9bPrints) {
  for (const Example& e : {rabia, lapeyrouse}) {
    for (const double depth : {500.0, 4'000.0, 12'345.0}) {
      const double printed = depth * (e.stand + depth) * e.pipe / 10'560'000.0 +
                             depth * (e.block + e.excess / 2.0) / 2'640'000.0;
      EXPECT_NEAR(ton_miles(e.trip(depth)) / printed, 1.0, 1e-14);
    }
  }
}

TEST(RoundTripTest, PublishedExamples) {
  EXPECT_NEAR(ton_miles(lapeyrouse.trip(4'000.0)), 53.7, 0.05);
  EXPECT_NEAR(ton_miles(rabia.trip(10'000.0)), 351.6, 0.05);  // from memory
}

TEST(RoundTripTest, ABareBlockStillWorks) {
  const Example empty{93.0, 0.0, 0.0, 30'000.0};
  // Up and down for every stand, out of the hole and in again: 4 D M.
  EXPECT_NEAR(to_si(empty.trip(9'300.0)), to_si(4.0 * 9'300.0 * foot * 30'000.0 * pound_force),
              1e-3);
  EXPECT_EQ(to_si(rabia.trip(0.0)), 0.0);
}

TEST(ShortTripTest, TripsAddUp) {
  const Energy parts = rabia.between(2'000.0, 5'000.0) + rabia.between(5'000.0, 9'000.0);
  EXPECT_NEAR(parts / rabia.between(2'000.0, 9'000.0), 1.0, 1e-14);
  EXPECT_NEAR(rabia.between(0.0, 9'000.0) / rabia.trip(9'000.0), 1.0, 1e-14);
  EXPECT_NEAR((rabia.trip(9'000.0) - rabia.trip(5'000.0)) / rabia.between(5'000.0, 9'000.0), 1.0,
              1e-12);
}

TEST(ShortTripTest, UpsideDownIsRefused) {
  EXPECT_THROW((void)rabia.between(5'000.0, 4'000.0), InadmissibleError);
}

TEST(DrillingTest, IsAMultipleOfTheShortTrip) {
  const auto drilled = [](double passes) {
    return drilling(8'000.0 * foot, 9'000.0 * foot, rabia.stand * foot,
                    rabia.pipe * pound_force_per_foot, rabia.excess * pound_force,
                    rabia.block * pound_force, number(passes));
  };
  EXPECT_NEAR(drilled(3.0) / rabia.between(8'000.0, 9'000.0), 3.0, 1e-14);
  const auto cored =
      coring(8'000.0 * foot, 9'000.0 * foot, rabia.stand * foot, rabia.pipe * pound_force_per_foot,
             rabia.excess * pound_force, rabia.block * pound_force);
  EXPECT_NEAR(cored / drilled(2.0), 1.0, 1e-14);
}

TEST(CasingTest, IsHalfARoundTripWithoutBha) {
  const Example string{40.0, 24.6, 0.0, 23'500.0};
  const Energy run = casing(9'000.0 * foot, string.stand * foot, string.pipe * pound_force_per_foot,
                            string.block * pound_force);
  EXPECT_NEAR(run / string.trip(9'000.0), 0.5, 1e-14);
}

TEST(CasingTest, PublishedExample) {
  // Rabia, from memory: 7 in, 29 lb/ft to 10,000 ft, 40-ft joints, buoyancy factor 0.847.
  const Energy run = casing(10'000.0 * foot, 40.0 * foot, 29.0 * 0.847 * pound_force_per_foot,
                            23'500.0 * pound_force);
  EXPECT_NEAR(ton_miles(run), 161.3, 0.05);
}

TEST(LiftTest, OneTonMile) {
  // 14.3 MJ in the Shell Well Engineers Notebook, ed. 2 (2001).
  const Energy work = lift(2'000.0 * pound_force, 5'280.0 * foot);
  EXPECT_NEAR(ton_miles(work), 1.0, 1e-15);
  EXPECT_NEAR(work / megajoule, 14.3, 0.05);
}

// --- Stroke by stroke

Energy strokes_of_round_trip(const Example& e, double depth) {
  const auto out = trip_strokes(e.hung(), depth * foot, 0.0 * foot, e.stand * foot);
  const auto back = trip_strokes(e.hung(), 0.0 * foot, depth * foot, e.stand * foot);
  return total_work(out) + total_work(back);
}

TEST(TripStrokes, WholeStandsGiveTheClosedForm) {
  for (const Example& e : {rabia, lapeyrouse}) {
    for (const int stands : {1, 2, 7, 100, 500}) {
      const double depth = stands * e.stand;
      EXPECT_NEAR(strokes_of_round_trip(e, depth) / e.trip(depth), 1.0, 1e-12);
    }
  }
}

TEST(TripStrokes, HundredStandsSummedByHand) {
  // Stand k of n carries k stands of pipe; twice, once out and once in, and 4 strokes of the block.
  const int n = 100;
  double sum = 0.0;
  for (int k = 1; k <= n; ++k) {
    sum += 2.0 * (k * rabia.stand * rabia.pipe + rabia.excess + 2.0 * rabia.block) * rabia.stand;
  }
  EXPECT_NEAR(ton_miles(strokes_of_round_trip(rabia, n * rabia.stand)), sum / 10'560'000.0, 1e-9);
}

TEST(TripStrokes, PartOfAStandGivesWhatItLacks) {
  // Out and in, the formula exceeds the strokes by W_m r (L − r), r the part: derived by hand from
  // Σ x_k s_k with x_k the length hung and s_k the travel.
  for (const double part : {1.0, 30.0, 92.0}) {
    const double depth = 20.0 * rabia.stand + part;
    const Energy lack =
        part * foot * (rabia.stand - part) * foot * rabia.pipe * pound_force_per_foot;
    EXPECT_NEAR(to_si(rabia.trip(depth) - strokes_of_round_trip(rabia, depth)) / to_si(lack), 1.0,
                1e-6);
  }
}

TEST(TripStrokes, BetweenTwoDepthsWholeStandsGiveTheShortTrip) {
  const double from = 1'234.5, to = from + 40.0 * rabia.stand;
  const auto out = trip_strokes(rabia.hung(), to * foot, from * foot, rabia.stand * foot);
  ASSERT_EQ(out.size(), 40u);
  EXPECT_NEAR(2.0 * total_work(out) / rabia.between(from, to), 1.0, 1e-12);
}

TEST(TripStrokes, OutLiftsTheStringAndInLowersIt) {
  const auto out = trip_strokes(rabia.hung(), 200.0 * foot, 0.0 * foot, rabia.stand * foot);
  const auto in = trip_strokes(rabia.hung(), 0.0 * foot, 200.0 * foot, rabia.stand * foot);
  ASSERT_EQ(out.size(), 3u);
  ASSERT_EQ(in.size(), 3u);
  EXPECT_EQ(out.front().depth, 200.0 * foot);
  EXPECT_NEAR(out.back().travel / foot, 14.0, 1e-9);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_EQ(out[i].load_down, rabia.block * pound_force);
    EXPECT_GT(out[i].load_up, out[i].load_down);
    EXPECT_EQ(in[2 - i].load_down, out[i].load_up);
    EXPECT_EQ(in[2 - i].load_up, out[i].load_down);
  }
}

TEST(TripStrokes, AShortStringCarriesPartOfTheBha) {
  Hung hung = rabia.hung();
  hung.bha_length = 500.0 * foot;
  const double bha_weight = rabia.excess + 500.0 * rabia.pipe;
  EXPECT_NEAR(hung.string_weight(0.0 * foot) / pound_force, 0.0, 1e-9);
  EXPECT_NEAR(hung.string_weight(250.0 * foot) / pound_force, bha_weight / 2.0, 1e-6);
  EXPECT_NEAR(hung.string_weight(500.0 * foot) / pound_force, bha_weight, 1e-6);
  EXPECT_EQ(hung.string_weight(800.0 * foot), rabia.hung().string_weight(800.0 * foot));
}

TEST(CasingStrokes, WholeJointsGiveTheClosedForm) {
  const auto strokes = casing_strokes(10'000.0 * foot, 40.0 * foot, 24.57 * pound_force_per_foot,
                                      23'500.0 * pound_force);
  const Energy closed =
      casing(10'000.0 * foot, 40.0 * foot, 24.57 * pound_force_per_foot, 23'500.0 * pound_force);
  EXPECT_EQ(strokes.size(), 250u);
  EXPECT_NEAR(total_work(strokes) / closed, 1.0, 1e-12);
}

TEST(KellyStrokes, DrillingAndReamingAreTwoRoundTripsOfTheString) {
  // API RP 9B: drilling and pulling the kelly is one round trip of the new hole, reaming and
  // pulling it another. Without a block, and with a kelly that weighs what the pipe does, to the
  // digit.
  Example string = rabia;
  string.stand = 31.0;
  string.block = 0.0;
  const Force joint = string.pipe * string.stand * pound_force;
  const auto strokes = kelly_strokes(
      string.hung(), 3'100.0 * foot, 6'200.0 * foot,
      {.joint_length = string.stand * foot, .kelly_weight = joint, .weight_on_bit = 0.0 * newton});
  ASSERT_EQ(strokes.size(), 400u);
  Energy drill_and_ream = 0.0 * joule;
  for (std::size_t i = 0; i < strokes.size(); i += 4) {
    drill_and_ream += strokes[i].work() + strokes[i + 1].work();
  }
  EXPECT_NEAR(drill_and_ream / string.between(3'100.0, 6'200.0), 2.0, 1e-12);
}

TEST(KellyStrokes, TheFactorThreeIsOnTheSafeSide) {
  // It counts a connection as a round trip. By hand, with a kelly as heavy as the pipe, a joint of
  // length l ending at depth x takes l (W_m x + C + 4 M − 3 W_m l) less.
  Example string = rabia;
  string.stand = 31.0;
  double less = 0.0;
  for (double x = 5'031.0; x <= 5'310.0; x += 31.0) {
    less += 31.0 * (rabia.pipe * (x - 3.0 * 31.0) + rabia.excess + 4.0 * rabia.block);
  }
  const auto strokes = kelly_strokes(string.hung(), 5'000.0 * foot, 5'310.0 * foot,
                                     {.joint_length = 31.0 * foot,
                                      .kelly_weight = 31.0 * rabia.pipe * pound_force,
                                      .weight_on_bit = 0.0 * newton});
  const Energy formula = 3.0 * string.between(5'000.0, 5'310.0);
  EXPECT_NEAR((total_work(strokes) + less * foot_pound_force) / formula, 1.0, 1e-12);
  EXPECT_GT(less, 0.0);
}

TEST(KellyStrokes, WeightOnBitIsTakenOffWhileDrillingOnly) {
  KellyDrilling with{.joint_length = 31.0 * foot,
                     .kelly_weight = 3'000.0 * pound_force,
                     .weight_on_bit = 0.0 * newton};
  const auto none = kelly_strokes(rabia.hung(), 5'000.0 * foot, 5'310.0 * foot, with);
  with.weight_on_bit = 10'000.0 * pound_force;
  const auto some = kelly_strokes(rabia.hung(), 5'000.0 * foot, 5'310.0 * foot, with);
  EXPECT_NEAR((total_work(none) - total_work(some)) / foot_pound_force, 310.0 * 10'000.0, 1e-3);
}

TEST(KellyStrokes, PartOfAJointIsDrilledWithoutConnection) {
  const auto strokes = kelly_strokes(rabia.hung(), 5'000.0 * foot, 5'040.0 * foot,
                                     {.joint_length = 31.0 * foot,
                                      .kelly_weight = 3'000.0 * pound_force,
                                      .weight_on_bit = 0.0 * newton,
                                      .ream = false});
  ASSERT_EQ(strokes.size(), 4u);
  EXPECT_NEAR(strokes.back().travel / foot, 9.0, 1e-9);
  EXPECT_NEAR(strokes.back().depth / foot, 5'040.0, 1e-9);
}

TEST(TopDriveStrokes, DrillingDownIsHalfTheRoundTripsOfTheNewHole) {
  // Up empty and down with the string: half of what a trip out and in does for the same stand.
  const double to = 5'000.0 + 10.0 * rabia.stand;
  const auto strokes =
      top_drive_strokes(rabia.hung(), 5'000.0 * foot, to * foot,
                        {.stand_length = rabia.stand * foot, .weight_on_bit = 0.0 * newton});
  EXPECT_NEAR(total_work(strokes) / rabia.between(5'000.0, to), 0.5, 1e-12);
}

TEST(TopDriveStrokes, EachReamMovesTheStringUpAndDown) {
  const double to = 5'000.0 + rabia.stand;
  const auto work = [&](int reams) {
    return total_work(top_drive_strokes(
        rabia.hung(), 5'000.0 * foot, to * foot,
        {.stand_length = rabia.stand * foot, .weight_on_bit = 0.0 * newton, .reams = reams}));
  };
  const Force load = (to * rabia.pipe + rabia.excess + rabia.block) * pound_force;
  EXPECT_NEAR((work(2) - work(0)) / (4.0 * load * rabia.stand * foot), 1.0, 1e-12);
}

TEST(StrokesTest, WhatCannotBeIsRefused) {
  Hung hung = rabia.hung();
  hung.bha_excess_weight = -1e6 * newton;
  EXPECT_THROW((void)trip_strokes(hung, 100.0 * foot, 0.0 * foot, 93.0 * foot), InadmissibleError);
  EXPECT_THROW((void)trip_strokes(rabia.hung(), 100.0 * foot, 0.0 * foot, 0.0 * foot),
               InadmissibleError);
  EXPECT_THROW((void)trip_strokes(rabia.hung(), 10'000.0 * foot, 0.0 * foot, 1e-6 * foot),
               InadmissibleError);
  EXPECT_THROW((void)kelly_strokes(rabia.hung(), 200.0 * foot, 100.0 * foot,
                                   {.joint_length = 31.0 * foot,
                                    .kelly_weight = 0.0 * newton,
                                    .weight_on_bit = 0.0 * newton}),
               InadmissibleError);
  EXPECT_THROW(
      (void)top_drive_strokes(rabia.hung(), 100.0 * foot, 200.0 * foot,
                              {.stand_length = 93.0 * foot, .weight_on_bit = 1e6 * pound_force}),
      InadmissibleError);
}

}  // namespace
}  // namespace ropewalk::work
