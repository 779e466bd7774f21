#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include "line_examples.hpp"
#include "ropewalk/work/drilling.hpp"

namespace ropewalk::line {
namespace {

using work::KellyDrilling;
using work::TopDriveDrilling;

work::Hung hung(const Hoisting& h) {
  return {h.string.pipe_weight(), h.string.bha_excess_weight(), 0.0 * meter, h.block_weight};
}

// --- Against the closed forms, which are API RP 9B after Lapeyrouse (2002) and Lyons (1996)

TEST(LineOperations, TripOutAndInAreTheRoundTrip) {
  const Hoisting h = plain();
  for (const int stands : {1, 2, 17, 120}) {
    const Length depth = static_cast<double>(stands) * stand;
    const Energy formula =
        work::round_trip(depth, stand, h.string.pipe_weight(), h.string.bha_excess_weight(), block);
    const Energy out = work_of(trip(h, depth, 0.0 * meter, stand));
    const Energy in = work_of(trip(h, 0.0 * meter, depth, stand));
    EXPECT_NEAR((out + in) / formula, 1.0, 1e-12);
    EXPECT_NEAR(out / in, 1.0, 1e-12);
    EXPECT_NEAR(work_of(round_trip(h, depth, stand)) / formula, 1.0, 1e-12);
  }
}

TEST(LineOperations, ShortTripIsTheDifferenceOfTwoRoundTrips) {
  // Below the collars the string of two weights is one of the closed form.
  Hoisting h = full();
  h.drag_up = h.drag_down = 0.0;
  const Length from = 1'234.5 * meter, to = from + 40.0 * stand;
  const Energy formula = work::short_trip(from, to, stand, h.string.pipe_weight(),
                                          h.string.bha_excess_weight(), block);
  EXPECT_NEAR(work_of(short_trip(h, from, to, stand)) / formula, 1.0, 1e-12);
}

TEST(LineOperations, CasingIsHalfARoundTrip) {
  const Hoisting h = plain();
  const Length depth = 150.0 * joint;
  EXPECT_NEAR(
      work_of(casing(h, depth, joint)) / work::casing(depth, joint, h.string.pipe_weight(), block),
      1.0, 1e-12);
}

TEST(LineOperations, PublishedRoundTripAndCasing) {
  // Lapeyrouse, Formulas and Calculations, 2nd ed. (2002), p. 44: 4,000 ft, 53.7 ton-miles. The
  // collars of 300 ft hang to the last stand in the form; here they come out of the hole with it.
  const Hoisting trip_rig{.string = DrillString({{300.0 * foot, 83.0 * pound / foot},
                                                 {3'700.0 * foot, 13.3 * pound / foot}},
                                                9.6 * pound_per_gallon, 65.5 * pound_per_gallon),
                          .drag_up = 0.0,
                          .drag_down = 0.0,
                          .block_weight = 15'000.0 * pound_force,
                          .travel = 60.0 * foot,
                          .base_height = 0.0 * meter,
                          .block_speed = 0.0 * meter_per_second,
                          .block_acceleration = 0.0 * meter_per_second_squared};
  const Energy strokes = work_of(round_trip(trip_rig, 4'000.0 * foot, 60.0 * foot));
  // By hand, per way: stand k from the last has 60 k ft of the string; collars lack
  // (300 − 60 k) · 69.7 lb/ft · BF for k = 1 … 4, and 4,000 ft are 66 stands and 40 ft, where the
  // form exceeds the strokes by W_m r (L − r).
  const double buoyancy = 1.0 - 9.6 / 65.5;
  double lack = 13.3 * buoyancy * 40.0 * 20.0;
  for (double x = 40.0; x < 300.0; x += 60.0) {
    lack += 2.0 * (x == 40.0 ? 40.0 : 60.0) * (300.0 - x) * (83.0 - 13.3) * buoyancy;
  }
  EXPECT_NEAR(strokes / ton_mile + lack / 10'560'000.0, 53.7, 0.05);

  // Rabia, Well Engineering and Construction, from memory: 7 in, 29 lb/ft to 10,000 ft in 40-ft
  // joints, buoyancy factor 0.847, block 23,500 lb: 161.3 ton-miles.
  Hoisting casing_rig = trip_rig;
  casing_rig.string = DrillString({{10'000.0 * foot, 29.0 * pound / foot}},
                                  0.153 * 65.5 * pound_per_gallon, 65.5 * pound_per_gallon);
  casing_rig.block_weight = 23'500.0 * pound_force;
  EXPECT_NEAR(work_of(casing(casing_rig, 10'000.0 * foot, 40.0 * foot)) / ton_mile, 161.3, 0.05);
}

TEST(LineOperations, KellyDrillingIsTheCycleOfTheWorkRoom) {
  // In air, where a joint weighs on the hook what it adds to the string.
  const Hoisting h = plain(air);
  for (const bool ream : {true, false}) {
    const KellyDrilling drilling{.joint_length = joint,
                                 .kelly_weight = 20e3 * newton,
                                 .weight_on_bit = 40e3 * newton,
                                 .ream = ream};
    const Length from = 1'000.0 * meter, to = from + 30.0 * joint;
    const auto known = work::kelly_strokes(hung(h), from, to, drilling);
    const Energy found = work_of(kelly_drilling(h, from, to, drilling));
    EXPECT_NEAR(found / work::total_work(known), 1.0, 1e-12);
    // A last part of a joint needs the kelly picked up and set back besides.
    const Length part = 4.0 * meter;
    const Energy kelly = 2.0 * (block + drilling.kelly_weight) * part;
    EXPECT_NEAR(
        work_of(kelly_drilling(h, from, to + part, drilling)) /
            (work::total_work(work::kelly_strokes(hung(h), from, to + part, drilling)) + kelly),
        1.0, 1e-12);
  }
}

TEST(LineOperations, DrillingAndReamingWithAKellyAreTwoRoundTripsOfTheNewHole) {
  // The rationale of the factor 3 of API RP 9B: without a block, and with a kelly that weighs what
  // the pipe does, drill + pull and ream + pull are a round trip each; the connection is the third,
  // counted high. In the strokes the block goes up with the kelly first: rows 1 to 4 of each 8.
  Hoisting h = plain(air);
  h.block_weight = 0.0 * newton;
  const Length from = 1'000.0 * meter, to = from + 50.0 * joint;
  const KellyDrilling drilling{.joint_length = joint,
                               .kelly_weight = h.string.pipe_weight() * joint,
                               .weight_on_bit = 0.0 * newton};
  const auto strokes = kelly_drilling(h, from, to, drilling);
  ASSERT_EQ(strokes.size(), 50u * 8u);
  std::vector<HookStroke> two;
  for (std::size_t i = 0; i < strokes.size(); ++i) {
    if (i % 8 >= 1 && i % 8 <= 4) two.push_back(strokes[i]);
  }
  const Energy once =
      work::short_trip(from, to, joint, h.string.pipe_weight(), 0.0 * newton, 0.0 * newton);
  EXPECT_NEAR(work_of(two) / once, 2.0, 1e-12);
  EXPECT_LT(work_of(strokes) / once, 3.0);

  // Coring: one round trip for core + pull, less than the second for the connection.
  const auto core = coring(h, from, to, drilling);
  ASSERT_EQ(core.size(), 50u * 6u);
  std::vector<HookStroke> one;
  for (std::size_t i = 0; i < core.size(); ++i) {
    if (i % 6 == 1 || i % 6 == 2) one.push_back(core[i]);
  }
  EXPECT_NEAR(work_of(one) / once, 1.0, 1e-12);
  EXPECT_LT(work_of(core) / once, 2.0);
}

TEST(LineOperations, TopDriveDrillingIsTheCycleOfTheWorkRoom) {
  const Hoisting h = plain();
  const Length from = 1'000.0 * meter, to = 1'130.0 * meter;
  for (const int reams : {0, 1, 3}) {
    const TopDriveDrilling drilling{
        .stand_length = stand, .weight_on_bit = 80e3 * newton, .reams = reams};
    const Energy known = work::total_work(work::top_drive_strokes(hung(h), from, to, drilling));
    EXPECT_NEAR(work_of(top_drive_drilling(h, from, to, drilling)) / known, 1.0, 1e-12);
    EXPECT_NEAR(work_of(reaming(h, from, to, drilling)) / known, 1.0, 1e-12);
    // Cored hole is not reamed.
    TopDriveDrilling once = drilling;
    once.reams = 0;
    EXPECT_EQ(work_of(coring(h, from, to, drilling)),
              work_of(top_drive_drilling(h, from, to, once)));
  }
}

TEST(LineOperations, SinglesAreCasingWithEachJointHoistedInAir) {
  const Hoisting h = plain();
  const Length depth = 100.0 * joint;
  const Force one = pipe * standard_gravity * joint;
  EXPECT_NEAR((work_of(singles(h, 0.0 * meter, depth, joint)) - work_of(casing(h, depth, joint))) /
                  (one * depth),
              1.0, 1e-9);
}

// --- Written out by hand

TEST(LineOperations, TwoStandsOut) {
  Hoisting h = plain(air);
  h.drag_up = 0.1;
  h.base_height = 1.0 * meter;
  const Length depth = 40.0 * meter;
  const auto strokes = trip(h, depth, 0.0 * meter, stand);
  ASSERT_EQ(strokes.size(), 4u);
  const double newton_per_meter = 31.0 * 9.80665;
  const double loads[] = {1.1 * 40.0 * newton_per_meter + 200e3, 200e3,
                          1.1 * 11.5 * newton_per_meter + 200e3, 200e3};
  const double from[] = {1.0, 29.5, 1.0, 12.5};
  const double to[] = {29.5, 1.0, 12.5, 1.0};
  for (std::size_t i = 0; i < 4; ++i) {
    EXPECT_NEAR(to_si(strokes[i].hook_load), loads[i], 1e-9);
    EXPECT_EQ(to_si(strokes[i].height_from), from[i]);
    EXPECT_EQ(to_si(strokes[i].height_to), to[i]);
    EXPECT_EQ(strokes[i].count, 1.0);
    EXPECT_EQ(strokes[i].pick_up, i % 2 == 0);
    EXPECT_EQ(strokes[i].may_stop, i % 2 == 1);
  }
}

TEST(LineOperations, OneStandInIsPickedUpAtTheTop) {
  Hoisting h = plain(air);
  h.drag_down = 0.2;
  const auto strokes = trip(h, 0.0 * meter, stand, stand);
  ASSERT_EQ(strokes.size(), 2u);
  EXPECT_EQ(strokes[0].hook_load, block);
  EXPECT_FALSE(strokes[0].pick_up);
  EXPECT_NEAR(to_si(strokes[1].hook_load), 0.8 * 28.5 * 31.0 * 9.80665 + 200e3, 1e-9);
  EXPECT_TRUE(strokes[1].pick_up);
  EXPECT_EQ(strokes[1].height_from, stand);
  EXPECT_TRUE(strokes[1].may_stop);
}

TEST(LineOperations, JarringAndCirculatingByHand) {
  Hoisting h = full();
  const Length depth = 1'000.0 * meter;
  const Force weight = h.string.weight_in_mud(depth);
  const auto jars = jarring(h, depth, 300e3 * newton, 2.0 * meter, 5);
  ASSERT_EQ(jars.size(), 4u);
  EXPECT_NEAR(to_si(jars[0].hook_load), to_si(1.1 * weight + block) + 300e3, 1e-6);
  EXPECT_NEAR(to_si(jars[1].hook_load), to_si(0.92 * weight + block), 1e-6);
  EXPECT_EQ(jars[2].count, 4.0);
  EXPECT_NEAR(work_of(jars) / (5.0 * 2.0 * meter * (2.02 * weight + 2.0 * block + 300e3 * newton)),
              1.0, 1e-12);
  // One pick-up and one stop, however often the string goes up and down.
  const auto turns = circulating(h, depth, 15.0 * meter, 40);
  EXPECT_NEAR(work_of(turns) / (40.0 * 15.0 * meter * (2.02 * weight + 2.0 * block)), 1.0, 1e-12);
  EXPECT_EQ(std::count_if(turns.begin(), turns.end(), [](const auto& s) { return s.pick_up; }), 1);
  EXPECT_EQ(circulating(plain(), depth, 15.0 * meter, 1).size(), 2u);
}

}  // namespace
}  // namespace ropewalk::line
