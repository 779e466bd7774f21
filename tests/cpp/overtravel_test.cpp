#include <gtest/gtest.h>

#include "ropewalk/base/error.hpp"
#include "ropewalk/drum/layer.hpp"
#include "ropewalk/overtravel/stopping.hpp"
#include "ropewalk/overtravel/wraps.hpp"

namespace ropewalk::overtravel {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }

drum::Drum rig_7() {
  return drum::Drum({.barrel_diameter = 28.0 * inch,
                     .rope_diameter = 1.375 * inch,
                     .laps_per_layer = number(40.0),
                     .layers = 4,
                     .layer_height = drum::nested_layer_height(),
                     .crossovers_per_lap = 2});
}

TEST(OvertravelStopping, SpeedAndDistanceUndoEachOther) {
  for (const double v : {0.1, 1.0, 3.0}) {
    for (const double t : {0.0, 0.4, 1.5}) {
      for (const double drive : {0.0, 0.5}) {
        const auto a = from_si<Acceleration>(0.8);
        const auto d = from_si<Acceleration>(drive);
        const Length s = stopping_distance(v * meter_per_second, t * second, d, a);
        EXPECT_NEAR(to_si(allowed_speed(s, t * second, d, a)), v, 1e-12);
      }
    }
  }
}

TEST(OvertravelStopping, NoSpeedIsAllowedWhereTheDriveAloneGoesThrough) {
  const auto drive = from_si<Acceleration>(1.0);
  EXPECT_EQ(to_si(allowed_speed(0.4 * meter, 1.0 * second, drive, drive)), 0.0);
}

TEST(OvertravelWraps, HeightAndWrapsUndoEachOther) {
  const drum::Drum drum = rig_7();
  const StrungDrum strung{drum, number(10.0), number(8.0)};
  for (double height = -1.0; height < 35.0; height += 1.7) {
    const double wraps = wraps_at_height(strung, height * meter);
    EXPECT_NEAR(to_si(height_at_wraps(strung, wraps)), height, 1e-10);
  }
  EXPECT_NEAR(wraps_at_height(strung, 0.0 * meter), 8.0, 1e-12);
  EXPECT_THROW((void)wraps_at_height(strung, 60.0 * meter), InadmissibleError);
  EXPECT_THROW((void)wraps_at_height(strung, -3.0 * meter), InadmissibleError);
}

TEST(OvertravelWraps, SlipAndCutShiftsEveryWrapAlike) {
  const drum::Drum drum = rig_7();
  const StrungDrum before{drum, number(10.0), number(8.0)};
  const Length cut = 20.0 * foot;
  const double left = drum.place(drum.length_of(8.0) - cut).wraps;
  const StrungDrum after{drum, number(10.0), number(left)};
  for (const double height : {5.0, 12.0, 31.0}) {
    const double wraps = wraps_at_height(before, height * meter);
    EXPECT_NEAR(to_si(height_at_wraps(after, wraps)) - height,
                to_si(trip_height_shift(0.0 * meter, cut, number(10.0))), 1e-10);
  }
}

TEST(OvertravelWraps, ACounterThatKnowsItsWrapsShowsTheHeight) {
  const drum::Drum drum = rig_7();
  const StrungDrum strung{drum, number(10.0), number(6.0)};
  EXPECT_NEAR(to_si(counted_height(strung, number(6.0), 30.0 * meter)), 30.0, 1e-10);
  // Set up for more wraps, it thinks larger layers come sooner.
  EXPECT_GT(to_si(counted_height(strung, number(9.0), 30.0 * meter)), 30.0);
}

}  // namespace
}  // namespace ropewalk::overtravel
