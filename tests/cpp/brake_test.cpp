#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "ropewalk/base/error.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/brake/auxiliary.hpp"
#include "ropewalk/brake/balance.hpp"
#include "ropewalk/brake/band.hpp"
#include "ropewalk/brake/disc.hpp"
#include "ropewalk/brake/heat.hpp"
#include "ropewalk/brake/holding.hpp"
#include "ropewalk/brake/stop.hpp"

namespace ropewalk::brake {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }
constexpr Torque kilonewton_meters(double x) { return from_si<Torque>(1e3 * x); }

// --- Bands and discs

TEST(BrakeBand, TurnedRoundItHasLessByTheTensionRatio) {
  for (const double wrap : {90.0, 180.0, 270.0, 330.0}) {
    const Torque helped = band_torque(kilonewton, number(0.35), wrap * degree, meter, number(2.0));
    const Torque against =
        band_torque_reversed(kilonewton, number(0.35), wrap * degree, meter, number(2.0));
    EXPECT_NEAR(helped / against, band_tension_ratio(number(0.35), wrap * degree), 1e-12);
  }
}

TEST(BrakeBand, MeanPressureLiesBetweenThoseOfTheEnds) {
  const Force slack = 25.0 * kilonewton;
  const Force tight = slack * band_tension_ratio(number(0.35), 280.0 * degree);
  const Torque torque = band_torque(slack, number(0.35), 280.0 * degree, meter, number(1.0));
  const Stress mean =
      band_mean_pressure(torque, number(0.35), 280.0 * degree, 0.2 * meter, meter, number(1.0));
  EXPECT_GT(mean, band_pressure(slack, 0.2 * meter, meter));
  EXPECT_LT(mean, band_pressure(tight, 0.2 * meter, meter));
  // The logarithmic mean of the two, since pressure is an exponential of the angle.
  const double ratio = tight / slack;
  EXPECT_NEAR(mean / band_pressure(slack, 0.2 * meter, meter), (ratio - 1.0) / std::log(ratio),
              1e-12);
}

TEST(BrakeDisc, ANarrowPadHasOneRadius) {
  EXPECT_NEAR(pad_radius_uniform_pressure(1.000001 * meter, meter) / meter, 1.0000005, 1e-12);
  // 2/3 (0.8³ − 0.6³)/(0.8² − 0.6²) = 2/3 · 0.296/0.28
  EXPECT_NEAR(pad_radius_uniform_pressure(0.8 * meter, 0.6 * meter) / meter, 0.592 / 0.84, 1e-15);
  EXPECT_THROW((void)pad_radius_uniform_wear(meter, meter), InadmissibleError);
}

TEST(BrakeDisc, PressureHoldsSpringsOff) {
  const auto rate = from_si<ForcePerLength>(1e6);
  const Area area = 8000.0 * square_millimeter;
  EXPECT_EQ(spring_pad_force(80.0 * kilonewton, rate, 0.0 * meter, 10.0 * megapascal, area),
            0.0 * newton);
  EXPECT_NEAR(
      spring_pad_force(80.0 * kilonewton, rate, 5.0 * millimeter, 0.0 * pascal, area) / kilonewton,
      75.0, 1e-12);
}

// --- Auxiliary brakes and the balance

TEST(BrakeEddy, IsSymmetricInTheLogarithmOfSpeed) {
  for (const double x : {0.01, 0.3, 1.0, 2.0, 40.0}) {
    const Torque above = eddy_torque(kilonewton_meters(100.0), 50.0 * rpm, 50.0 * x * rpm);
    const Torque below = eddy_torque(kilonewton_meters(100.0), 50.0 * rpm, 50.0 / x * rpm);
    EXPECT_NEAR(above / below, 1.0, 1e-12);
  }
  EXPECT_EQ(to_si(eddy_torque(kilonewton_meters(100.0), 50.0 * rpm, 0.0 * rpm)), 0.0);
}

LoweringBrakes brakes(double eddy, double motor, double power_kw, double friction) {
  return {.eddy_peak = kilonewton_meters(eddy),
          .eddy_critical = 50.0 * rpm,
          .motor_torque = kilonewton_meters(motor),
          .motor_power = power_kw * kilowatt,
          .friction = kilonewton_meters(friction)};
}

TEST(BrakeBalance, OfTheEddyBrakeAloneIsTheClosedForm) {
  const auto found = lowering_balance(brakes(100.0, 0.0, 1.0, 0.0), kilonewton_meters(60.0));
  ASSERT_EQ(found.state, LoweringState::stable);
  EXPECT_NEAR(*found.stable / rpm, 50.0 / 3.0, 1e-10);
  EXPECT_NEAR(*found.unstable / rpm, 150.0, 1e-9);
  EXPECT_NEAR(to_si(found.largest_load), 100e3, 1e-9);
}

TEST(BrakeBalance, NamesEverySpeedAndWhatHoldsAtRest) {
  // 110 kN m of motor at rest, fading; then the eddy brake's peak: out, back in, out again.
  LoweringBrakes set = brakes(100.0, 110.0, 220.0, 0.0);
  set.eddy_critical = 400.0 * rpm;
  const auto found = lowering_balance(set, kilonewton_meters(100.0));
  EXPECT_EQ(found.state, LoweringState::held_by_motor);
  ASSERT_EQ(found.speeds.size(), 3U);
  for (std::size_t i = 0; i < 3; ++i) {
    const BalanceSpeed& one = found.speeds[i];
    const bool rises = lowering_torque(set, 1.001 * one.rotation) > kilonewton_meters(100.0);
    EXPECT_EQ(one.stable, rises) << i;
    EXPECT_NEAR(to_si(lowering_torque(set, one.rotation)), 100e3, 1e-4);
  }
  set.friction = kilonewton_meters(101.0);
  EXPECT_EQ(lowering_balance(set, kilonewton_meters(100.0)).state, LoweringState::held);
}

TEST(BrakeBalance, ALoadAboveThePeakRunsAway) {
  const auto found = lowering_balance(brakes(100.0, 0.0, 1.0, 0.0), kilonewton_meters(100.001));
  EXPECT_EQ(found.state, LoweringState::runaway);
  EXPECT_FALSE(found.stable);
  EXPECT_FALSE(found.unstable);
}

TEST(BrakeBalance, HoldsAtEachSpeedItNames) {
  for (const double eddy : {0.0, 40.0, 120.0}) {
    for (const double motor : {0.0, 30.0, 70.0}) {
      for (const double friction : {0.0, 20.5}) {
        const LoweringBrakes set = brakes(eddy, motor, 250.0, friction);
        const auto found = lowering_balance(set, kilonewton_meters(60.0));
        for (const auto& speed : {found.stable, found.unstable}) {
          if (speed) {
            EXPECT_NEAR(to_si(lowering_torque(set, *speed)), 60e3, 1e-4);
          }
        }
        if (found.stable) {
          EXPECT_LT(lowering_torque(set, 0.99 * *found.stable), kilonewton_meters(60.0));
          EXPECT_GT(lowering_torque(set, 1.01 * *found.stable), kilonewton_meters(60.0));
        }
        if (found.unstable) {
          EXPECT_LT(lowering_torque(set, 1.01 * *found.unstable), kilonewton_meters(60.0));
        }
        EXPECT_EQ(found.state == LoweringState::runaway,
                  found.largest_load < kilonewton_meters(60.0));
      }
    }
  }
}

TEST(BrakeBalance, NoSpeedHasMoreThanTheLargestLoad) {
  for (const double eddy : {0.0, 10.0, 100.0}) {
    for (const double power : {5.0, 50.0, 500.0}) {
      const LoweringBrakes set = brakes(eddy, 60.0, power, 5.0);
      const Torque largest = lowering_balance(set, kilonewton_meters(1.0)).largest_load;
      double seen = 0.0;
      for (double x = 0.0; x < 500.0; x += 0.05) {
        seen = std::max(seen, to_si(lowering_torque(set, x * rpm)));
      }
      EXPECT_LE(seen, to_si(largest) * (1.0 + 1e-12));
      EXPECT_NEAR(seen, to_si(largest), 1e-3 * seen);
    }
  }
}

// --- Holding, heat

TEST(BrakeHolding, EveryFactorHasItsSourceAndIsFoundByItsKey) {
  for (const RequiredFactor& row : required_factors()) {
    EXPECT_GE(to_si(row.value), 1.0);
    EXPECT_NE(std::find(factor_bases.begin(), factor_bases.end(), row.base), factor_bases.end());
    EXPECT_FALSE(citation(row.provenance.source).empty());
    EXPECT_EQ(required_factor(row.key).condition, row.condition);
  }
  EXPECT_THROW((void)required_factor("no such rule"), LookupError);
}

TEST(BrakeHeat, ASurfaceOfAThinBodyIsOutsideTheHalfSpace) {
  const auto rise = [](Policy policy, Length depth) {
    return surface_rise.evaluate(policy, from_si<HeatFlux>(5e6), 3.0 * second,
                                 from_si<Conductivity>(50.0), 7850.0 * kilogram_per_cubic_meter,
                                 from_si<SpecificHeat>(480.0), depth);
  };
  EXPECT_EQ(rise(Policy::raise, 40.0 * millimeter).second, RowStatus::ok);
  EXPECT_EQ(rise(Policy::ignore, 5.0 * millimeter).second, RowStatus::outside_validity);
  EXPECT_THROW((void)rise(Policy::raise, 5.0 * millimeter), ValidityError);
}

TEST(BrakeHeat, WithoutLossHeatAddsUp) {
  const HeatedBody body{.mass = 3000.0 * kilogram,
                        .specific_heat = from_si<SpecificHeat>(500.0),
                        .heat_loss = from_si<HeatLoss>(0.0)};
  const std::vector<HeatedStroke> strokes(
      10, {.heat = 15.0 * megajoule, .lowering = 30.0 * second, .rest = 60.0 * second});
  const auto rises = temperature_over_trip(body, from_si<Temperature>(5.0), strokes);
  EXPECT_NEAR(to_si(rises.back().rested), 105.0, 1e-10);
}

TEST(BrakeHeat, SettlesWhereEachCycleGivesOffWhatItGets) {
  const HeatedBody body{.mass = 1000.0 * kilogram,
                        .specific_heat = from_si<SpecificHeat>(500.0),
                        .heat_loss = from_si<HeatLoss>(2000.0)};
  const std::vector<HeatedStroke> strokes(
      200, {.heat = 20.0 * megajoule, .lowering = 30.0 * second, .rest = 90.0 * second});
  const auto rises = temperature_over_trip(body, from_si<Temperature>(0.0), strokes);
  EXPECT_NEAR(to_si(rises[199].rested), to_si(rises[198].rested), 1e-9);
  EXPECT_THROW(
      (void)temperature_over_trip(
          body, from_si<Temperature>(0.0),
          std::vector<HeatedStroke>{{.heat = joule, .lowering = 0.0 * second, .rest = second}}),
      InadmissibleError);
}

// --- Stops

/// 2000 kN at 1.5 m/s, brake of twice the load, 6000 kg m² on 12 lines and 0.5 m.
Stop example(StopDirection direction) {
  return {.direction = direction,
          .speed = 1.5 * meter_per_second,
          .hook_load = 2000.0 * kilonewton,
          .drum_load = 2000.0 * kilonewton,
          .delay_force = 2000.0 * kilonewton,
          .brake_force = 4000.0 * kilonewton,
          .delay = 0.5 * second,
          .build_up = 0.0 * second,
          .rotating_mass = 3'456'000.0 * kilogram};
}

TEST(BrakeStop, ByHand) {
  // 0.5 s at 1.5 m/s, then v²/2a with a = 2000 kN over 2000/9.80665 t + 3456 t.
  const double a = 2e6 / (2e6 / 9.80665 + 3.456e6);
  const RigidStop found = rigid_stop(example(StopDirection::lowering));
  EXPECT_TRUE(found.stops);
  EXPECT_NEAR(to_si(found.distance), 0.75 + 1.125 / a, 1e-12);
  EXPECT_NEAR(to_si(found.time), 0.5 + 1.5 / a, 1e-12);
  const RigidStop up = rigid_stop(example(StopDirection::hoisting));
  EXPECT_NEAR(to_si(up.distance), 0.75 + 1.125 / (3.0 * a), 1e-12);
}

TEST(BrakeStop, WorkOfTheForcesIsTheEnergyOfTheMasses) {
  Stop stop = example(StopDirection::lowering);
  stop.delay_force = 500.0 * kilonewton;
  const RigidStop found = rigid_stop(stop);
  // In the delay 1500 kN drive it; then the brake takes that, the rest of the way at 2000 kN net.
  const double mass = 2e6 / 9.80665 + 3.456e6;
  const double in_delay = 1.5 * 0.5 + 0.5 * 1.5e6 / mass * 0.25;
  const double work = 1.5e6 * in_delay - 2e6 * (to_si(found.distance) - in_delay);
  EXPECT_NEAR(-work, 0.5 * mass * 1.5 * 1.5, 1.0);
  EXPECT_NEAR(to_si(found.highest_speed), 1.5 + 1.5e6 / mass * 0.5, 1e-12);
}

TEST(BrakeStop, ABrakeWeakerThanTheLoadIsAResult) {
  Stop stop = example(StopDirection::lowering);
  stop.brake_force = 1900.0 * kilonewton;
  const RigidStop found = rigid_stop(stop);
  EXPECT_FALSE(found.stops);
  EXPECT_TRUE(std::isinf(to_si(found.distance)));
  EXPECT_LT(to_si(found.deceleration), 0.0);
  // Hoisting it comes to stand, and falls back.
  stop.direction = StopDirection::hoisting;
  const RigidStop up = rigid_stop(stop);
  EXPECT_TRUE(up.stops);
  ASSERT_TRUE(up.fall_back);
  EXPECT_TRUE(up.fall_back->falls);
  EXPECT_FALSE(up.fall_back->holds);
  EXPECT_TRUE(std::isinf(to_si(up.fall_back->distance)));
}

TEST(BrakeStop, ABuildUpCostsHalfOfItselfInATimeLongAfter) {
  Stop stop = example(StopDirection::lowering);
  stop.delay = 0.0 * second;
  const double sharp = to_si(rigid_stop(stop).time);
  stop.build_up = 0.01 * second;
  // Impulse: the brake misses half of its force for 0.01 s, and the load works on.
  EXPECT_NEAR(to_si(rigid_stop(stop).time), sharp + 0.005 * 2.0, 1e-9);
}

TEST(BrakeStop, AStiffLineStopsAsARigidOne) {
  const Stop stop = example(StopDirection::lowering);
  const ElasticStop found =
      elastic_stop(stop, {.stiffness = from_si<ForcePerLength>(1e12), .damping_ratio = number(0.5)},
                   4.0 * second);
  EXPECT_TRUE(found.stops);
  EXPECT_NEAR(to_si(found.drum_distance), to_si(rigid_stop(stop).distance), 1e-3);
}

TEST(BrakeStop, AStiffLineStopsAsARigidOneWithFrictionInTheSheaves) {
  // Two masses: nothing in the elastic stop says with what mass the load counts at the drum.
  for (const StopDirection way : {StopDirection::lowering, StopDirection::hoisting}) {
    Stop stop = example(way);
    stop.drum_load = (way == StopDirection::lowering ? 0.8 : 1.25) * stop.hook_load;
    stop.delay_force = stop.drum_load;
    stop.rotating_mass = 500'000.0 * kilogram;
    const ElasticStop found = elastic_stop(
        stop, {.stiffness = from_si<ForcePerLength>(1e10), .damping_ratio = number(0.5)},
        4.0 * second);
    EXPECT_NEAR(to_si(found.drum_distance), to_si(rigid_stop(stop).distance), 1e-3);
  }
}

TEST(BrakeStop, NoHoistedBlockSlowsHarderThanGravity) {
  Stop stop = example(StopDirection::hoisting);
  stop.rotating_mass = 100'000.0 * kilogram;
  stop.delay = 0.0 * second;
  const RigidStop found = rigid_stop(stop);
  EXPECT_TRUE(found.slack);
  EXPECT_NEAR(to_si(found.distance), 1.5 * 1.5 / (2.0 * 9.80665), 1e-12);
  // Nothing turns: the drum stops dead, and the block drops as far as it rose.
  stop.rotating_mass = 0.0 * kilogram;
  const RigidStop bare = rigid_stop(stop);
  ASSERT_TRUE(bare.fall_back);
  EXPECT_NEAR(to_si(bare.fall_back->highest_speed), 1.5, 1e-12);
  EXPECT_EQ(to_si(hoisting_deceleration(kilonewton_meters(100.0), kilonewton_meters(100.0),
                                        number(10.0), 0.5 * meter, 1000.0 * kilogram)),
            to_si(standard_gravity));
}

TEST(BrakeStop, WhatBringsALoadToRestInTheDelayHasNotStoppedIt) {
  Stop stop = example(StopDirection::lowering);
  stop.delay_force = 2.0e7 * newton;
  stop.brake_force = 1900.0 * kilonewton;  // less than the load
  const RigidStop found = rigid_stop(stop);
  EXPECT_TRUE(found.stands_early);
  EXPECT_FALSE(found.stops);
  stop.brake_force = 4000.0 * kilonewton;
  EXPECT_NEAR(to_si(rigid_stop(stop).time), 0.5, 1e-12);  // it stood; then the brake holds
}

TEST(BrakeStop, AHeavyDrumGivesTheClosedFormOfThePeak) {
  Stop stop = example(StopDirection::lowering);
  stop.delay = 0.0 * second;
  stop.rotating_mass = 998e6 * kilogram;  // does not feel the load
  stop.brake_force = 1e9 * newton;
  const auto stiffness = from_si<ForcePerLength>(20e6);
  for (const double v : {0.05, 0.3, 2.0}) {
    stop.speed = v * meter_per_second;
    const ElasticStop found =
        elastic_stop(stop, {.stiffness = stiffness, .damping_ratio = number(0.0)}, 20.0 * second);
    const double a = to_si(rigid_stop(stop).deceleration);
    const Number factor = stop_tension_factor(v * meter_per_second, from_si<Acceleration>(a),
                                              stiffness, stop.hook_load);
    EXPECT_NEAR(to_si(found.peak) / 2e6, to_si(factor), 2e-3) << v;
  }
}

TEST(BrakeStop, TheClosedFormEndsInTheSuddenStop) {
  const auto stiffness = from_si<ForcePerLength>(21.72e6);
  const Number sudden = sudden_stop_factor(0.5 * meter_per_second, stiffness, 250.0 * tonne_force);
  const Number steep = stop_tension_factor(0.5 * meter_per_second, from_si<Acceleration>(999.0),
                                           stiffness, 250.0 * tonne_force);
  EXPECT_NEAR(to_si(sudden), to_si(steep), 1e-4);
}

}  // namespace
}  // namespace ropewalk::brake
