#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "ropewalk/base/error.hpp"
#include "ropewalk/drum/drum.hpp"
#include "ropewalk/drum/fleet.hpp"
#include "ropewalk/drum/layer.hpp"
#include "ropewalk/drum/length.hpp"
#include "ropewalk/drum/pressure.hpp"
#include "ropewalk/drum/wraps.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::drum {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }

/// A 32-in barrel with 1-3/8-in rope.
Shape shape() {
  return {.barrel_diameter = 32.0 * inch,
          .rope_diameter = 1.375 * inch,
          .laps_per_layer = number(39.0),
          .layers = 4,
          .layer_height = nested_layer_height(),
          .crossovers_per_lap = 2};
}

// --- Layers

TEST(DrumLayers, OneLayerIsACylinder) {
  Shape one = shape();
  one.layers = 1;
  const Drum drum(one);
  EXPECT_EQ(drum.bend_diameter(1) / inch, 32.0);
  EXPECT_NEAR(drum.capacity() / inch, 39.0 * pi * 33.375, 1e-9);
}

TEST(DrumLayers, RopeCentersOfTouchingRopesAreADiameterApart) {
  // Two laps below at ±d/2, one above in the valley: distance d from both.
  const double rise = to_si(nested_layer_height());
  EXPECT_NEAR(std::hypot(rise, 0.5), 1.0, 1e-15);
}

TEST(DrumLayers, RadiiByHand) {
  // r = D/2 + d/2 + (k − 1) c d with D = 0.8128 m and d = 0.034925 m, computed by hand to 1e-5 m.
  const Drum nested(shape());
  Shape on_top = shape();
  on_top.layer_height = stacked_layer_height();
  const Drum stacked(on_top);
  const double nested_radii[] = {0.42386, 0.45411, 0.48435, 0.51460};
  const double stacked_radii[] = {0.42386, 0.45879, 0.49371, 0.52864};
  for (int k = 1; k <= 4; ++k) {
    EXPECT_NEAR(to_si(nested.lap_length(k)) / (2.0 * pi), nested_radii[k - 1], 1e-5);
    EXPECT_NEAR(to_si(stacked.lap_length(k)) / (2.0 * pi), stacked_radii[k - 1], 1e-5);
  }
}

TEST(DrumLayers, LayersAddUpToTheCapacity) {
  const Drum drum(shape());
  EXPECT_EQ(to_si(drum.length_before(1)), 0.0);
  for (int k = 1; k < drum.layers(); ++k) {
    EXPECT_NEAR(to_si(drum.length_before(k + 1) - drum.length_before(k)),
                to_si(drum.layer_length(k)), 1e-10);
  }
  EXPECT_NEAR(to_si(drum.length_before(4) + drum.layer_length(4)), to_si(drum.capacity()), 1e-10);
  EXPECT_EQ(drum.length_of(drum.wraps()), drum.capacity());
}

// --- Place

TEST(DrumPlace, ComesBackFromItsWraps) {
  const Drum drum(shape());
  for (double wraps = 0.0; wraps <= drum.wraps(); wraps += 0.37) {
    const auto place = drum.place(drum.length_of(wraps));
    EXPECT_NEAR(place.wraps, wraps, 1e-10);
    EXPECT_NEAR(place.wraps, 39.0 * (place.layer - 1) + place.lap, 1e-12);
  }
}

TEST(DrumPlace, ALayerBeginsWhereTheOneBelowIsFull) {
  const Drum drum(shape());
  for (int k = 1; k <= drum.layers(); ++k) {
    const auto place = drum.place(drum.length_before(k));
    EXPECT_EQ(place.layer, k);
    EXPECT_EQ(place.lap, 0.0);
  }
  const auto full = drum.place(drum.capacity());
  EXPECT_EQ(full.layer, 4);
  EXPECT_NEAR(full.lap, 39.0, 1e-12);
}

TEST(DrumPlace, BeyondTheDrumIsRefused) {
  const Drum drum(shape());
  EXPECT_THROW((void)drum.place(drum.capacity() * 1.000001), InadmissibleError);
  EXPECT_THROW((void)drum.place(-1e-6 * meter), InadmissibleError);
  EXPECT_THROW((void)drum.place(from_si<Length>(std::nan(""))), InadmissibleError);
  EXPECT_THROW((void)drum.length_of(156.1), InadmissibleError);
  EXPECT_THROW((void)drum.lap_length(0), InadmissibleError);
  EXPECT_THROW((void)drum.length_before(5), InadmissibleError);
}

// --- Crossovers

TEST(DrumCrossovers, TwoALapAboveTheFirstLayer) {
  const Drum drum(shape());
  EXPECT_TRUE(drum.crossovers(0.0 * meter, drum.length_before(2)).empty());
  const auto second = drum.crossovers(drum.length_before(2), drum.length_before(3));
  ASSERT_EQ(second.size(), 78U);
  EXPECT_TRUE(second.front().layer_change);
  for (std::size_t i = 1; i < second.size(); ++i) {
    EXPECT_FALSE(second[i].layer_change);
    EXPECT_EQ(second[i].layer, 2);
    EXPECT_NEAR(to_si(second[i].from_drum_end - second[i - 1].from_drum_end),
                to_si(drum.lap_length(2)) / 2.0, 1e-9);
  }
}

TEST(DrumCrossovers, RangesThatFollowEachOtherShareNone) {
  const Drum drum(shape());
  const auto all = drum.crossovers(0.0 * meter, drum.capacity());
  std::size_t pieces = 0;
  for (int i = 0; i < 10; ++i) {
    pieces += drum.crossovers(0.1 * i * drum.capacity(),
                              i == 9 ? drum.capacity() : 0.1 * (i + 1) * drum.capacity())
                  .size();
  }
  EXPECT_EQ(all.size(), pieces);
  EXPECT_EQ(all.size(), 3U * 78U);
  const Length one = all[5].from_drum_end;
  EXPECT_EQ(drum.crossovers(one, one + 1e-3 * meter).size(), 1U);
  EXPECT_TRUE(drum.crossovers(one - 1e-3 * meter, one).empty());
}

TEST(DrumCrossovers, HalfLapsPutTheFlangesBetweenThem) {
  // 20.5 laps, one crossover a lap: the layers change at 20.5, 41, 61.5 laps; the second of these
  // is a crossover as well, counted once.
  Shape half = shape();
  half.laps_per_layer = number(20.5);
  half.crossovers_per_lap = 1;
  const Drum drum(half);
  int changes = 0;
  const auto all = drum.crossovers(0.0 * meter, drum.capacity());
  for (const auto& one : all) {
    changes += one.layer_change ? 1 : 0;
    EXPECT_EQ(one.layer, drum.place(one.from_drum_end + 1e-9 * meter).layer);
  }
  EXPECT_EQ(changes, 3);
  // Whole laps 21 … 81, and the changes at 20.5 and 61.5.
  EXPECT_EQ(all.size(), 61U + 2U);
}

TEST(DrumCrossovers, WithoutCrossoversOnlyTheFlangesAreLeft) {
  Shape none = shape();
  none.crossovers_per_lap = 0;
  const Drum drum(none);
  EXPECT_EQ(drum.crossovers(0.0 * meter, drum.capacity()).size(), 3U);
}

TEST(DrumCrossovers, ARangeTurnedRoundIsRefused) {
  const Drum drum(shape());
  EXPECT_THROW((void)drum.crossovers(2.0 * meter, 1.0 * meter), InadmissibleError);
}

// --- Laps and layers by formula

TEST(LayerHeight, TouchingLapsNest) {
  EXPECT_NEAR(to_si(pitched_layer_height(1.0 * inch, 1.0 * inch)), to_si(nested_layer_height()),
              1e-15);
  EXPECT_NEAR(to_si(pitched_layer_height(1.2 * inch, 1.0 * inch)), 0.8, 1e-15);  // 3-4-5 triangle
  EXPECT_EQ(to_si(mixed_layer_height(number(1.0))), to_si(nested_layer_height()));
  EXPECT_EQ(to_si(mixed_layer_height(number(0.0))), 1.0);
}

TEST(LayerHeight, LapsThatOverlapOrGapeAreRefused) {
  EXPECT_THROW((void)pitched_layer_height(0.99 * inch, 1.0 * inch), InadmissibleError);
  EXPECT_THROW((void)pitched_layer_height(2.0 * inch, 1.0 * inch), InadmissibleError);
}

TEST(LapsInTraverse, AFullTraverseLosesNone) {
  for (double laps = 1.0; laps < 200.0; laps += 1.0) {
    const Length pitch = 1.4375 * inch;
    EXPECT_EQ(to_si(laps_in_traverse(laps * pitch, pitch)), laps);
    EXPECT_EQ(to_si(laps_in_traverse((laps + 0.99) * pitch, pitch)), laps);
  }
}

TEST(ReelCapacity, IsThatOfADrumOfStackedLayers) {
  // Four layers of 39 laps fill the square of 4 d by 39 d.
  Shape on_top = shape();
  on_top.layer_height = stacked_layer_height();
  const Length d = on_top.rope_diameter;
  EXPECT_NEAR(reel_capacity(4.0 * d, on_top.barrel_diameter, 39.0 * d, d) / Drum(on_top).capacity(),
              1.0, 1e-14);
}

TEST(ReelCapacity, HandbookFactorsAreRopesSomewhatOverSize) {
  // K = π / (12 d_a²): the handbooks say a rope at its largest tolerance, and a rope of 1/2 in or
  // more may be 5 % over nominal by API Spec 9A.
  for (const double size : {0.5, 0.625, 0.75, 0.875, 1.0, 1.125, 1.25, 1.375, 1.5, 1.75, 2.0}) {
    const Length d = size * inch;
    const double ratio = reel_capacity(4.0 * inch, 32.0 * inch, 56.0 * inch, d) /
                         reel_capacity_handbook(4.0 * inch, 32.0 * inch, 56.0 * inch, d).value;
    EXPECT_GT(std::sqrt(ratio), 1.04) << size;
    EXPECT_LT(std::sqrt(ratio), 1.065) << size;
  }
}

TEST(ReelCapacity, SizesBetweenAreNotMadeUp) {
  EXPECT_THROW((void)reel_capacity_handbook(4.0 * inch, 32.0 * inch, 56.0 * inch, 1.3 * inch),
               LookupError);
}

TEST(CrossoverShift, IsFarthestHalfwayBetween) {
  EXPECT_EQ(to_si(crossover_shift(number(11.5), number(1.0))), 0.5);
  EXPECT_EQ(to_si(crossover_shift(number(11.5), number(2.0))), 0.0);
  EXPECT_EQ(to_si(crossover_shift(number(11.25), number(2.0))), 0.25);
  EXPECT_EQ(to_si(crossover_shift(number(11.0), number(1.0))), 0.0);
}

// --- Block and drum

TEST(BlockHeight, WindsUpLinesTimesItsWay) {
  const Drum drum(shape());
  const auto lowest = place_at_height(drum, number(9.0), number(10.0), 0.0 * meter);
  EXPECT_NEAR(lowest.wraps, 9.0, 1e-12);
  const auto raised = place_at_height(drum, number(9.0), number(10.0), 30.0 * meter);
  EXPECT_NEAR(to_si(drum.length_of(raised.wraps) - drum.length_of(9.0)), 300.0, 1e-9);
  const Length full = height_when_full(drum, number(9.0), number(10.0));
  EXPECT_NEAR(place_at_height(drum, number(9.0), number(10.0), full).wraps, drum.wraps(), 1e-9);
  EXPECT_THROW((void)place_at_height(drum, number(9.0), number(10.0), full + 1.0 * millimeter),
               InadmissibleError);
  EXPECT_THROW((void)place_at_height(drum, number(200.0), number(10.0), 0.0 * meter),
               InadmissibleError);
}

// --- Fleet angle

TEST(FleetAngleAt, GoesFromFlangeToFlangeAndBack) {
  const Drum drum(shape());
  const Lead lead{
      .traverse = 56.0 * inch, .sheave_position = 28.0 * inch, .distance = 100.0 * foot};
  const auto degrees = [&](double wraps) {
    return to_si(Number(fleet_angle_at(drum, drum.length_of(wraps), lead) / degree));
  };
  const double at_flange = std::atan(28.0 / 1200.0) * 180.0 / pi;
  EXPECT_NEAR(degrees(0.0), -at_flange, 1e-9);
  EXPECT_NEAR(degrees(19.5), 0.0, 1e-9);
  EXPECT_NEAR(degrees(39.0), at_flange, 1e-9);
  EXPECT_NEAR(degrees(58.5), 0.0, 1e-9);
  EXPECT_NEAR(degrees(78.0), -at_flange, 1e-9);
}

TEST(FleetDistanceTest, IsTheFleetAngleTurnedRound) {
  const Length distance = fleet_distance(0.711 * meter, 1.25 * degree);
  EXPECT_NEAR(fleet_angle(0.711 * meter, distance) / degree, 1.25, 1e-12);
}

TEST(FleetAngleLimitsTest, SmoothDrumsBearLessThanGroovedOnes) {
  for (const std::string_view standard : {"Wire Rope Users Manual", "rope maker's page"}) {
    EXPECT_LT(fleet_angle_limits("smooth", standard).maximum,
              fleet_angle_limits("grooved", standard).maximum);
  }
  for (const auto& row : fleet_angle_limits()) EXPECT_LT(row.minimum, row.maximum);
  EXPECT_THROW((void)fleet_angle_limits("square"), LookupError);
  EXPECT_THROW((void)fleet_angle_limits("smooth", "nobody"), LookupError);
}

// --- Holding and pressing

TEST(DeadWraps, WrapsAddAsTheirRatiosMultiply) {
  const Number mu = number(0.12);
  EXPECT_EQ(to_si(holding_ratio(mu, number(0.0))), 1.0);
  EXPECT_NEAR(to_si(holding_ratio(mu, number(2.0)) * holding_ratio(mu, number(3.0))) /
                  to_si(holding_ratio(mu, number(5.0))),
              1.0, 1e-14);
  const Force tension = 200.0 * kilonewton;
  const Force clamp = clamp_force(tension, mu, number(3.5));
  EXPECT_NEAR(to_si(holding_wraps(tension, clamp, mu)), 3.5, 1e-12);
  EXPECT_THROW((void)holding_wraps(clamp, tension, mu), InadmissibleError);
}

TEST(DeadWraps, AnUnknownStandardIsRefusedWithAnOffer) {
  try {
    (void)dead_wraps_minimum("nobody");
    FAIL();
  } catch (const LookupError& error) {
    EXPECT_NE(std::string(error.what()).find("Wyoming servicing"), std::string::npos);
  }
}

TEST(Barrel, HoopStressIsThatOfAThinShellUnderThePressure) {
  const Force tension = 220.0 * kilonewton;
  const Length barrel = 0.8128 * meter, pitch = 36.5 * millimeter, wall = 50.0 * millimeter;
  const Number factor = layer_factor(2).value;
  const Stress pressure = barrel_pressure(tension, barrel, pitch, factor);
  EXPECT_NEAR(pressure * barrel / (2.0 * wall) / barrel_hoop_stress(tension, pitch, wall, factor),
              1.0, 1e-14);
}

TEST(Barrel, LayersPressAtLeastAsOneAndAtMostAsAll) {
  for (const int layers : {1, 2}) {
    EXPECT_GE(to_si(layer_factor(layers).value), 1.0);
    EXPECT_LE(to_si(layer_factor(layers).value), layers);
  }
  EXPECT_THROW((void)layer_factor(3), LookupError);
  EXPECT_THROW((void)layer_factor(0), InadmissibleError);
}

// --- What cannot be

template <class Change>
std::string refused_field(const Change& change) {
  Shape wrong = shape();
  change(wrong);
  try {
    const Drum drum(wrong);
  } catch (const InadmissibleError& error) {
    return error.field();
  }
  return "";
}

TEST(DrumShape, WhatCannotBeIsRefusedByField) {
  EXPECT_EQ(refused_field([](Shape& s) { s.barrel_diameter = 0.0 * meter; }), "barrel_diameter");
  EXPECT_EQ(refused_field([](Shape& s) { s.barrel_diameter = 1.0 * inch; }), "barrel_diameter");
  EXPECT_EQ(refused_field([](Shape& s) { s.rope_diameter = -1.0 * inch; }), "rope_diameter");
  EXPECT_EQ(refused_field([](Shape& s) { s.laps_per_layer = number(10.25); }), "laps_per_layer");
  EXPECT_EQ(refused_field([](Shape& s) { s.laps_per_layer = number(0.5); }), "laps_per_layer");
  EXPECT_EQ(refused_field([](Shape& s) { s.layers = 0; }), "layers");
  EXPECT_EQ(refused_field([](Shape& s) { s.layer_height = number(1.1); }), "layer_height");
  EXPECT_EQ(refused_field([](Shape& s) { s.layer_height = number(0.0); }), "layer_height");
  EXPECT_EQ(refused_field([](Shape& s) { s.crossovers_per_lap = 3; }), "crossovers_per_lap");
}

}  // namespace
}  // namespace ropewalk::drum
