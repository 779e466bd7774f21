#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "line_examples.hpp"

namespace ropewalk::line {
namespace {

using work::KellyDrilling;
using work::TopDriveDrilling;

std::vector<std::vector<HookStroke>> every_kind(const Hoisting& h) {
  const Length from = 1'000.0 * meter, to = 1'130.0 * meter;
  const TopDriveDrilling top{.stand_length = stand, .weight_on_bit = 50e3 * newton, .reams = 2};
  const KellyDrilling kelly{
      .joint_length = joint, .kelly_weight = 20e3 * newton, .weight_on_bit = 50e3 * newton};
  return {trip(h, to, from, stand),
          trip(h, from, to, stand),
          round_trip(h, to, stand),
          short_trip(h, from, to, stand),
          casing(h, to, joint),
          singles(h, from, to, joint),
          kelly_drilling(h, from, to, kelly),
          top_drive_drilling(h, from, to, top),
          coring(h, from, to, kelly),
          coring(h, from, to, top),
          reaming(h, from, to, top),
          circulating(h, to, 15.0 * meter, 7),
          jarring(h, to, 300e3 * newton, 1.5 * meter, 5)};
}

// --- Dynamic loads

TEST(DynamicParts, SpeedingUpRunningSlowingDown) {
  const HookStroke up{1e6 * newton, 1.0 * meter, 29.0 * meter, 3.0, true, true};
  const auto parts = dynamic_parts(up, 2.0 * meter_per_second, from_si<Acceleration>(0.980665));
  // v²/2a = 4 / 1.96133 m, a/g = 0.1.
  const double way = 4.0 / 1.96133;
  ASSERT_EQ(parts.size(), 3u);
  EXPECT_NEAR(to_si(parts[0].hook_load), 1.1e6, 1e-6);
  EXPECT_EQ(to_si(parts[1].hook_load), 1e6);
  EXPECT_NEAR(to_si(parts[2].hook_load), 0.9e6, 1e-6);
  EXPECT_NEAR(to_si(parts[0].height_to), 1.0 + way, 1e-12);
  EXPECT_NEAR(to_si(parts[2].height_from), 29.0 - way, 1e-12);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_EQ(parts[i].pick_up, i == 0);
    EXPECT_EQ(parts[i].may_stop, i == 2);
    EXPECT_EQ(parts[i].count, 3.0);
  }
  EXPECT_NEAR(work_of(parts) / work_of({up}), 1.0, 1e-13);
}

TEST(DynamicParts, GoingDownTheSignsAreTheOtherWay) {
  const HookStroke down{1e6 * newton, 29.0 * meter, 1.0 * meter};
  const auto parts = dynamic_parts(down, 2.0 * meter_per_second, from_si<Acceleration>(0.980665));
  ASSERT_EQ(parts.size(), 3u);
  EXPECT_NEAR(to_si(parts[0].hook_load), 0.9e6, 1e-6);
  EXPECT_NEAR(to_si(parts[2].hook_load), 1.1e6, 1e-6);
  EXPECT_LT(parts[0].height_to, parts[0].height_from);
  EXPECT_NEAR(work_of(parts) / work_of({down}), 1.0, 1e-13);
}

TEST(DynamicParts, AShortStrokeNeverRunsEvenly) {
  const HookStroke up{1e6 * newton, 2.0 * meter, 3.0 * meter};
  const auto parts = dynamic_parts(up, 2.0 * meter_per_second, from_si<Acceleration>(0.5));
  ASSERT_EQ(parts.size(), 2u);
  EXPECT_EQ(to_si(parts[0].height_to), 2.5);
  EXPECT_EQ(parts[0].height_to, parts[1].height_from);
  EXPECT_NEAR(work_of(parts) / work_of({up}), 1.0, 1e-13);
}

TEST(DynamicParts, LeaveTheWorkOfATripAsItIs) {
  Hoisting h = plain();
  const Energy even = work_of(round_trip(h, 1'000.0 * meter, stand));
  h.block_speed = 1.0 * meter_per_second;
  h.block_acceleration = from_si<Acceleration>(0.7);
  EXPECT_NEAR(work_of(round_trip(h, 1'000.0 * meter, stand)) / even, 1.0, 1e-12);
}

TEST(DynamicParts, DrillingAndJarringAreSlow) {
  Hoisting h = full();
  const auto jars = jarring(h, 1'000.0 * meter, 300e3 * newton, 2.0 * meter, 1);
  EXPECT_EQ(jars.size(), 2u);
  const auto drilled =
      top_drive_drilling(h, 1'000.0 * meter, 1'000.0 * meter + stand,
                         {.stand_length = stand, .weight_on_bit = 50e3 * newton, .reams = 0});
  EXPECT_EQ(drilled.size(), 4u);  // three parts up empty, one down
  EXPECT_TRUE(drilled.back().pick_up);
}

// --- What holds for all of them

TEST(LineOperations, EveryStrokeBeginsWhereTheLastEnded) {
  for (const Hoisting& h : {plain(), full()}) {
    for (const auto& strokes : every_kind(h)) {
      ASSERT_FALSE(strokes.empty());
      EXPECT_EQ(strokes.front().height_from, h.base_height);
      EXPECT_EQ(strokes.back().height_to, h.base_height);
      for (std::size_t i = 1; i < strokes.size(); ++i) {
        EXPECT_EQ(strokes[i].height_from, strokes[i - 1].height_to);
      }
    }
  }
}

TEST(LineOperations, TheLineMayBeSlippedOnlyWithTheBlockFree) {
  for (const Hoisting& h : {plain(), full()}) {
    for (const auto& strokes : every_kind(h)) {
      EXPECT_TRUE(strokes.back().may_stop);
      for (std::size_t i = 0; i < strokes.size(); ++i) {
        if (strokes[i].may_stop) {
          EXPECT_EQ(strokes[i].height_to, h.base_height);
        }
        // A load taken from the slips is heavier than the empty block.
        if (strokes[i].pick_up && to_si(h.block_speed) == 0.0) {
          EXPECT_GT(strokes[i].hook_load, h.block_weight);
        }
      }
    }
  }
}

TEST(LineOperations, EveryStandIsPickedUpOnceAndStoppedAfterOnce) {
  const Hoisting h = full();
  const auto strokes = round_trip(h, 100.0 * stand, stand);
  const auto count = [&](auto flag) {
    return std::count_if(strokes.begin(), strokes.end(), [&](const auto& s) { return s.*flag; });
  };
  EXPECT_EQ(count(&HookStroke::pick_up), 200);
  EXPECT_EQ(count(&HookStroke::may_stop), 200);
}

TEST(LineOperations, NothingToDoIsNoStroke) {
  EXPECT_TRUE(trip(plain(), 100.0 * meter, 100.0 * meter, stand).empty());
  EXPECT_TRUE(round_trip(plain(), 0.0 * meter, stand).empty());
}

// --- What cannot be

template <class Call>
std::string message_of(const Call& call) {
  try {
    (void)call();
  } catch (const InadmissibleError& error) {
    return error.what();
  }
  return "no error";
}

TEST(LineOperations, AStandThatDoesNotFitTheMastIsNamedByItsRow) {
  Hoisting h = plain();
  h.base_height = 2.0 * meter;
  EXPECT_EQ(message_of([&] { return trip(h, 100.0 * meter, 0.0 * meter, stand); }),
            "line.trip(): row 0: height_to = 30.5 m is outside [0, 30 m], the travel of the mast");
}

TEST(LineOperations, ABitTooHeavyIsNamedByItsRow) {
  const auto message = message_of([&] {
    return top_drive_drilling(plain(), 100.0 * meter, 200.0 * meter,
                              {.stand_length = stand, .weight_on_bit = 1e6 * newton, .reams = 0});
  });
  EXPECT_NE(message.find("line.top_drive_drilling(): row 1: hook_load = -"), std::string::npos)
      << message;
  EXPECT_NE(message.find("a rope cannot push"), std::string::npos);
}

TEST(LineOperations, WhatCannotBeIsRefused) {
  const Hoisting h = plain();
  EXPECT_THROW((void)trip(h, 5'000.0 * meter, 0.0 * meter, stand), InadmissibleError);
  EXPECT_THROW((void)trip(h, 100.0 * meter, 0.0 * meter, 0.0 * meter), InadmissibleError);
  EXPECT_THROW((void)trip(h, 1'000.0 * meter, 0.0 * meter, 1e-3 * meter), InadmissibleError);
  EXPECT_THROW((void)short_trip(h, 200.0 * meter, 100.0 * meter, stand), InadmissibleError);
  EXPECT_THROW((void)singles(h, 200.0 * meter, 100.0 * meter, joint), InadmissibleError);
  EXPECT_THROW((void)circulating(h, 100.0 * meter, 10.0 * meter, 0), InadmissibleError);
  EXPECT_THROW((void)circulating(h, 100.0 * meter, 31.0 * meter, 1), InadmissibleError);
  EXPECT_THROW((void)jarring(h, 100.0 * meter, -1.0 * newton, 1.0 * meter, 1), InadmissibleError);
  Hoisting half = h;
  half.block_speed = 1.0 * meter_per_second;
  EXPECT_NE(message_of([&] {
              return trip(half, 100.0 * meter, 0.0 * meter, stand);
            }).find("given together"),
            std::string::npos);
  Hoisting falling = full();
  falling.block_acceleration = from_si<Acceleration>(10.0);
  EXPECT_THROW((void)trip(falling, 100.0 * meter, 0.0 * meter, stand), InadmissibleError);
  Hoisting slack = h;
  slack.drag_down = 1.1;
  EXPECT_THROW((void)trip(slack, 100.0 * meter, 0.0 * meter, stand), InadmissibleError);
}

}  // namespace
}  // namespace ropewalk::line
