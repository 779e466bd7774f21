#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "ropewalk/base/error.hpp"
#include "ropewalk/dynamics/factors.hpp"
#include "ropewalk/dynamics/stiffness.hpp"
#include "ropewalk/dynamics/string.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::dynamics {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }
constexpr Stiffness newtons_per_meter(double k) { return from_si<Stiffness>(k); }
constexpr Frequency hertz(double f) { return from_si<Frequency>(f); }
constexpr Acceleration g = standard_gravity;

constexpr Stress modulus = from_si<Stress>(100e9);
constexpr Area area = 678.7 * square_millimeter;
constexpr Length none = 0.0 * meter;

// --- Stiffness

TEST(LineStiffnessTest, OneRopeOfTwoPartsIsFourTimesARopeOfTheirLength) {
  // N = 2: half of the load in each part, half of the stretch at the block.
  const Stiffness rope = string_stiffness(modulus, area, 60.0 * meter);
  EXPECT_NEAR(
      line_stiffness(modulus, area, number(2.0), 20.0 * meter, 15.0 * meter, 5.0 * meter) / rope,
      4.0, 1e-14);
}

TEST(LineStiffnessTest, WithoutEndsItIsThatOfLockedSheaves) {
  for (const double lines : {4.0, 9.0, 12.0}) {
    const Stiffness locked = locked_stiffness(modulus, area, number(lines), 30.0 * meter);
    EXPECT_NEAR(line_stiffness(modulus, area, number(lines), 30.0 * meter, none, none) / locked,
                1.0, 1e-14);
    EXPECT_LT(line_stiffness(modulus, area, number(lines), 30.0 * meter, 45.0 * meter, none),
              locked);
  }
}

TEST(LineStiffnessTest, EnergyOfTheRopeIsThatOfTheBlock) {
  // ½ k x² of the block is ½ T²/(E A) over all of the rope, T = k x/N.
  const Stiffness k =
      line_stiffness(modulus, area, number(12.0), 30.0 * meter, 45.0 * meter, 40.0 * meter);
  const double x = 0.1;
  const double tension = to_si(k) * x / 12.0;
  const double rope = 12.0 * 30.0 + 45.0 + 40.0;
  EXPECT_NEAR(
      0.5 * tension * tension / (to_si(modulus) * to_si(area)) * rope / (0.5 * to_si(k) * x * x),
      1.0, 1e-14);
}

TEST(SeriesStiffnessTest, StretchesAdd) {
  const Stiffness one = newtons_per_meter(20e6), other = newtons_per_meter(3e6);
  const Force force = 1e6 * newton;
  const Length both = static_stretch(force, one) + static_stretch(force, other);
  EXPECT_NEAR(static_stretch(force, series_stiffness(one, other)) / both, 1.0, 1e-14);
}

TEST(NaturalFrequencyTest, IsThatOfAPendulumAsLongAsTheStretch) {
  const Force load = 2e6 * newton;
  const Stiffness k = newtons_per_meter(20e6);
  const double period = 2.0 * pi * std::sqrt(static_stretch(load, k) / meter / 9.80665);
  EXPECT_NEAR(to_si(natural_frequency(load, k)) * period, 1.0, 1e-14);
}

// --- Factors

TEST(PeakFactors, NothingMovesNothingPeaks) {
  EXPECT_EQ(to_si(step_factor(0.0 * g)), 1.0);
  EXPECT_EQ(to_si(ramp_factor(0.0 * g, 1.0 * second, hertz(1.5))), 1.0);
  EXPECT_EQ(to_si(stop_factor(0.0 * meter_per_second, 1.0 * g, hertz(1.5))), 1.0);
  EXPECT_EQ(to_si(pickup_factor(0.0 * meter_per_second, newtons_per_meter(2e7), 1e6 * newton)),
            1.0);
  EXPECT_EQ(to_si(drop_factor(none, 0.1 * meter)), 2.0);
}

TEST(PeakFactors, ARampIsAStepOrASlowChange) {
  const Frequency f = hertz(1.483);
  EXPECT_EQ(to_si(ramp_factor(0.3 * g, 0.0 * second, f)), to_si(step_factor(0.3 * g)));
  EXPECT_NEAR(to_si(ramp_factor(0.3 * g, 3000.0 * second, f)), 1.3, 1e-4);
  for (int swings = 1; swings <= 4; ++swings) {
    EXPECT_NEAR(to_si(ramp_factor(0.3 * g, static_cast<double>(swings) / to_si(f) * second, f)),
                1.3, 1e-14);
  }
}

TEST(PeakFactors, AStopIsAStepOrAHardStop) {
  const Force load = 250.0 * tonne_force;
  const Stiffness k = newtons_per_meter(21.72e6);
  const Frequency f = natural_frequency(load, k);
  const Speed v = 0.5 * meter_per_second;
  EXPECT_EQ(to_si(stop_factor(10.0 * v, 0.1 * g, f)), to_si(step_factor(0.1 * g)));
  EXPECT_NEAR(to_si(stop_factor(1e-3 * v, 10.0 * g, f)) - 1.0,
              to_si(pickup_factor(1e-3 * v, k, load)) - 1.0, 1e-9);
  // Continuous where the stop takes half a swing.
  const Acceleration half = v / (0.5 / to_si(f) * second);
  EXPECT_NEAR(to_si(stop_factor(v, half * (1.0 + 1e-9), f)), to_si(stop_factor(v, half, f)), 1e-8);
}

TEST(PeakFactors, FallingIntoTheLineIsPickingUpWithTheSuddenLoadOnTop) {
  // (F/W − 1)² = 1 + 2 h/δ = 1 + v² k/(g W), v² = 2 g h: the pick-up term squared, and the
  // sudden 1.
  const Force load = 1e6 * newton;
  const Stiffness k = newtons_per_meter(2e7);
  const Length h = 0.2 * meter;
  const Speed v = std::sqrt(2.0 * 9.80665 * 0.2) * meter_per_second;
  const double drop = to_si(drop_factor(h, static_stretch(load, k))) - 1.0;
  const double pickup = to_si(pickup_factor(v, k, load)) - 1.0;
  EXPECT_NEAR(drop * drop, 1.0 + pickup * pickup, 1e-12);
}

// --- Strings

constexpr Stress steel = from_si<Stress>(206.8e9);
constexpr Density density = 7850.0 * kilogram_per_cubic_meter;
constexpr Area pipe = 5.275 * square_inch;

TEST(StringFrequencyTest, AShortStringIsOneMassWithTheBlock) {
  const Length length = 0.1 * meter;
  const Force block = 20.0 * tonne_force;
  const Force all = block + density * pipe * length * standard_gravity;
  const Stiffness k = newtons_per_meter(2e7);
  EXPECT_NEAR(string_frequency(k, block, pipe, length, steel, density, number(1.0)) /
                  natural_frequency(all, k),
              1.0, 1e-6);
}

TEST(StringFrequencyTest, OnARigidHoistItIsThatOfARodHeldAtOneEnd) {
  const Length length = 3'000.0 * meter;
  const double wave = std::sqrt(206.8e9 / 7850.0);
  for (int n = 1; n <= 5; ++n) {
    EXPECT_NEAR(to_si(string_frequency(newtons_per_meter(1e12), 0.0 * newton, pipe, length, steel,
                                       density, number(n))),
                (2.0 * n - 1.0) * wave / (4.0 * 3'000.0), 1e-5);
  }
}

TEST(StringFrequencyTest, WithoutHoistAndBlockItIsThatOfAFreeRod) {
  const double wave = std::sqrt(206.8e9 / 7850.0);
  for (int n = 2; n <= 5; ++n) {
    EXPECT_NEAR(to_si(string_frequency(newtons_per_meter(1e-3), 0.0 * newton, pipe, 3'000.0 * meter,
                                       steel, density, number(n))),
                (n - 1.0) * wave / (2.0 * 3'000.0), 1e-6);
  }
}

TEST(StringFrequencyTest, SolvesItsEquation) {
  const Length length = 3'000.0 * meter;
  const Force block = 20.0 * tonne_force;
  double before = 0.0;
  for (int n = 1; n <= 20; ++n) {
    const double f = to_si(
        string_frequency(newtons_per_meter(2e7), block, pipe, length, steel, density, number(n)));
    EXPECT_GT(f, before);
    before = f;
    const double omega = 2.0 * pi * f;
    const double wave = std::sqrt(206.8e9 / 7850.0);
    const double left = 2e7 - 20'000.0 * omega * omega;
    const double right = 206.8e9 * to_si(pipe) / wave * omega * std::tan(omega * 3'000.0 / wave);
    EXPECT_NEAR(left / right, 1.0, 1e-8) << "mode " << n;
  }
}

TEST(WaveForceTest, LastsUntilTheStringIsUpToSpeed) {
  // The momentum of the whole string is the force over half the time to and fro: it then runs at
  // Δv.
  const Speed v = 1.0 * meter_per_second;
  const Length length = 3'000.0 * meter;
  const double impulse = to_si(wave_force(v, pipe, steel, density)) *
                         to_si(wave_return_time(length, steel, density)) / 2.0;
  EXPECT_NEAR(impulse / (to_si(density * pipe * length) * 1.0), 1.0, 1e-14);
}

TEST(PeakFactors, AStopOfHoistingIsThePeakTheOtherWayUp) {
  const Frequency f = hertz(1.5);
  for (const double v : {0.05, 0.3, 1.0}) {
    for (const double a : {0.05, 0.4, 3.0}) {
      const double trough = to_si(trough_factor(v * meter_per_second, a * g, f));
      const double peak = to_si(stop_factor(v * meter_per_second, a * g, f));
      EXPECT_NEAR(trough, std::max(0.0, 2.0 - peak), 1e-14);
    }
  }
  // By energy the load comes to rest as the line is straight: v²/2 = g δ/2, δ = g/(2π f)².
  const double rate = 2.0 * pi * 1.5;
  EXPECT_NEAR(to_si(slack_speed(f)), to_si(standard_gravity) / rate, 1e-12);
  EXPECT_GT(to_si(trough_factor(0.99 * slack_speed(f), 10.0 * g, f)), 0.0);
  EXPECT_EQ(to_si(trough_factor(1.01 * slack_speed(f), 10.0 * g, f)), 0.0);
  EXPECT_GT(to_si(trough_factor(10.0 * meter_per_second, 0.499 * g, f)), 0.0);
}

TEST(DynamicsArguments, WhatCannotBeIsRefused) {
  EXPECT_THROW((void)natural_frequency(0.0 * newton, newtons_per_meter(1e6)), InadmissibleError);
  EXPECT_THROW((void)step_factor(-1.0 * g), InadmissibleError);
  EXPECT_THROW((void)drop_factor(-1.0 * meter, 1.0 * meter), InadmissibleError);
  EXPECT_THROW((void)string_stiffness(modulus, area, none), InadmissibleError);
  EXPECT_THROW((void)stop_factor(1.0 * meter_per_second, 0.0 * g, hertz(1.0)), InadmissibleError);
}

}  // namespace
}  // namespace ropewalk::dynamics
