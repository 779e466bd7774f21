#include <gtest/gtest.h>

#include <cmath>

#include "ropewalk/base/error.hpp"
#include "ropewalk/compensator/active.hpp"
#include "ropewalk/compensator/box_hull.hpp"
#include "ropewalk/compensator/gas_spring.hpp"
#include "ropewalk/compensator/hanging.hpp"
#include "ropewalk/compensator/heave.hpp"
#include "ropewalk/compensator/rayleigh.hpp"
#include "ropewalk/compensator/spectrum.hpp"
#include "ropewalk/dynamics/stiffness.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::compensator {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }
constexpr Area area(double x) { return from_si<Area>(x); }

/// 2 MN on 200 bar, seals without friction.
GasSpring spring() {
  return {.mean_load = 2000.0 * kilonewton,
          .effective_area = area(0.1),
          .gas_volume = 6.0 * cubic_meter,
          .polytropic_exponent = number(1.2),
          .seal_friction = 0.0 * newton};
}

SeaState sea(double gamma) {
  return {.significant_height = 4.0 * meter,
          .peak_period = 11.0 * second,
          .peak_factor = number(gamma)};
}

// --- Gas spring

TEST(CompensatorGas, IsothermalTravelsAreHarmonic) {
  // With n = 1 the load is F0 V0/(V0 - A x): 1/F falls on a straight line over x.
  const auto inverse = [](double x) {
    return 1.0 / to_si(gas_load(kilonewton, area(0.1), 6.0 * cubic_meter, number(1.0), x * meter));
  };
  EXPECT_NEAR(inverse(3.0) + inverse(-3.0), 2.0 * inverse(0.0), 1e-18);
}

TEST(CompensatorGas, StiffnessIsTheSlope) {
  const GasSpring s = spring();
  const auto load = [&](double x) {
    return to_si(
        gas_load(s.mean_load, s.effective_area, s.gas_volume, s.polytropic_exponent, x * meter));
  };
  const double k =
      to_si(gas_stiffness(s.mean_load, s.effective_area, s.gas_volume, s.polytropic_exponent));
  EXPECT_NEAR((load(1e-4) - load(-1e-4)) / 2e-4, k, 1e-6 * k);
}

TEST(CompensatorGas, AHugeBottleHoldsTheLoadConstant) {
  EXPECT_NEAR(gas_load(kip, area(0.1), 1000.0 * cubic_meter, number(1.4), 3.0 * meter) / kip, 1.0,
              5e-4);
}

TEST(CompensatorGas, NoGasIsLeft) {
  EXPECT_THROW((void)gas_load(kip, area(1.0), 3.0 * cubic_meter, number(1.2), 3.0 * meter),
               InadmissibleError);
}

// --- The string on it

TEST(CompensatorString, WithoutFrictionTheBitFeelsSpringsInSeries) {
  const GasSpring s = spring();
  const Stiffness string = from_si<Stiffness>(234'595.0);
  const Stiffness gas =
      gas_stiffness(s.mean_load, s.effective_area, s.gas_volume, s.polytropic_exponent);
  const double h = 1e-3;
  EXPECT_NEAR(to_si(bit_weight_change(s, string, h * meter)),
              to_si(dynamics::series_stiffness(gas, string)) * h, 1e-3);
}

TEST(CompensatorString, ForcesBalance) {
  GasSpring s = spring();
  s.seal_friction = 40.0 * kilonewton;
  const Stiffness string = from_si<Stiffness>(234'595.0);
  for (const double h : {-3.0, -0.5, 0.5, 3.0}) {
    const Force pull = bit_weight_change(s, string, h * meter);
    const Length travel = h * meter - pull / string;
    const Force gas =
        gas_load(s.mean_load, s.effective_area, s.gas_volume, s.polytropic_exponent, travel) -
        s.mean_load;
    EXPECT_NEAR(to_si(pull - gas), std::copysign(40e3, h), 1e-3);
  }
}

TEST(CompensatorString, SealsHoldSmallHeaves) {
  GasSpring s = spring();
  s.seal_friction = 40.0 * kilonewton;
  const Stiffness string = from_si<Stiffness>(200'000.0);
  EXPECT_EQ(to_si(bit_weight_change(s, string, 0.1 * meter)), 20'000.0);
  EXPECT_EQ(to_si(bit_weight_change(s, string, 0.0 * meter)), 0.0);
  EXPECT_EQ(to_si(bit_weight_change(s, string, -0.2 * meter)), -40'000.0);
}

TEST(CompensatorString, SlowHeaveCarriesTheHangingStringAlong) {
  EXPECT_NEAR(to_si(hanging_ratio(900.0 * second, 9.0 * second, number(0.0))), 1.0, 2e-4);
  EXPECT_THROW((void)hanging_ratio(9.0 * second, 9.0 * second, number(0.0)), InadmissibleError);
}

// --- Sea

TEST(CompensatorSea, PeakFactorOneIsPiersonMoskowitz) {
  for (const double omega : {0.3, 0.5711986642890533, 0.9, 3.0}) {
    const AngularVelocity w = from_si<AngularVelocity>(omega);
    EXPECT_NEAR(to_si(jonswap(4.0 * meter, 11.0 * second, number(1.0), w)),
                to_si(pierson_moskowitz(4.0 * meter, 11.0 * second, w)), 1e-15);
  }
}

TEST(CompensatorSea, MomentsAreTheClosedForms) {
  const Moments m = heave_moments(sea(1.0), HeaveOperator::constant(number(1.0)));
  const double peak = 2.0 * pi / 11.0;
  // m_n = H²/16 ω_p^n 1.25^(n/4) Γ(1 − n/4)
  EXPECT_NEAR(to_si(m.m0), 1.0, 1e-12);
  EXPECT_NEAR(m.m1.value(), peak * std::pow(1.25, 0.25) * std::tgamma(0.75), 1e-12);
  EXPECT_NEAR(m.m2.value(), peak * peak * std::sqrt(1.25 * pi), 1e-12);
  EXPECT_NEAR(to_si(m.significant()), 4.0, 1e-12);
  EXPECT_NEAR(to_si(m.zero_crossing()), 11.0 / std::pow(1.25 * pi, 0.25), 1e-11);
}

TEST(CompensatorSea, FitsOfJonswapAreNearTheIntegrals) {
  for (const double gamma : {1.0, 2.0, 3.3, 5.0, 7.0}) {
    const Moments m = heave_moments(sea(gamma), HeaveOperator::constant(number(1.0)));
    EXPECT_NEAR(to_si(m.significant()), 4.0, 0.04) << gamma;
    EXPECT_NEAR(to_si(m.zero_crossing()) / 11.0, to_si(zero_crossing_ratio(number(gamma))), 2.5e-3);
    EXPECT_NEAR(to_si(m.mean_period()) / 11.0, to_si(mean_period_ratio(number(gamma))), 2.5e-3);
  }
}

TEST(CompensatorSea, HeaveGrowsWithTheResponse) {
  const Moments one = heave_moments(sea(3.3), HeaveOperator::constant(number(1.0)));
  const Moments third = heave_moments(sea(3.3), HeaveOperator::constant(number(0.3)));
  EXPECT_NEAR(to_si(third.significant()), 0.3 * to_si(one.significant()), 1e-12);
  EXPECT_NEAR(to_si(third.zero_crossing()), to_si(one.zero_crossing()), 1e-12);
}

TEST(CompensatorSea, ATableOfOnesIsTheSeaAndSaysWhatLiesOutside) {
  const auto table = HeaveOperator::table({11.0 * second, 40.0 * second}, {number(1), number(1)});
  const Moments m = heave_moments(sea(1.0), table);
  EXPECT_NEAR(to_si(m.m0), 1.0, 1e-12);
  // Periods shorter than the peak hold 1 − exp(−5/4) of a Pierson–Moskowitz sea.
  EXPECT_NEAR(m.outside, 1.0 - std::exp(-1.25), 1e-12);
}

TEST(CompensatorSea, TablesThatCannotBe) {
  EXPECT_THROW((void)HeaveOperator::table({}, {}), InadmissibleError);
  EXPECT_THROW((void)HeaveOperator::table({second, second}, {number(1), number(1)}),
               InadmissibleError);
  EXPECT_THROW((void)HeaveOperator::table({second, 2.0 * second}, {number(1), number(-1)}),
               InadmissibleError);
  EXPECT_THROW((void)HeaveOperator::constant(number(std::nan(""))), InadmissibleError);
}

TEST(CompensatorSea, TheBoxRidesLongWaves) {
  const auto hull = [](double heading, double period) {
    return to_si(box_hull_heave(200.0 * meter, 36.0 * meter, 10.0 * meter, heading * degree,
                                period * second));
  };
  EXPECT_NEAR(hull(180.0, 100.0), 1.0, 2e-2);
  EXPECT_EQ(hull(180.0, 12.0), hull(0.0, 12.0));
  // A wave as long as the hull lifts and lowers it alike: k L/2 = π.
  const double as_long = std::sqrt(2.0 * pi * 200.0 / 9.80665);
  EXPECT_NEAR(hull(180.0, as_long), 0.0, 1e-12);
}

// --- Stroke

TEST(CompensatorStroke, AllowedDeviationAndExceedanceUndoEachOther) {
  for (const double p : {1e-6, 0.01, 0.5}) {
    const Length sigma = allowed_heave_deviation(12.5 * foot, number(p), number(1200.0));
    EXPECT_NEAR(to_si(stroke_exceedance(sigma, 12.5 * foot, number(1200.0))), p, 1e-9 * p);
  }
}

TEST(CompensatorStroke, TheLimitIsWhereTheStrokeIsExceededAsAllowed) {
  const HeaveOperator half = HeaveOperator::constant(number(0.5));
  const StrokeDemand demand{
      .half_stroke = 3.0 * meter, .duration = 3.0 * hour, .exceedance = number(0.01)};
  for (const double period : {8.0, 11.0, 14.0, 18.0}) {
    const OperatingLimit limit = operating_limit(half, period * second, {}, demand);
    ASSERT_EQ(limit.bound, LimitBound::stroke);
    const Moments m = heave_moments({.significant_height = limit.significant_height,
                                     .peak_period = period * second,
                                     .peak_factor = limit.peak_factor},
                                    half);
    const Number cycles = heave_cycles(demand.duration, m.zero_crossing());
    EXPECT_NEAR(to_si(stroke_exceedance(m.deviation(), demand.half_stroke, cycles)), 0.01, 1e-7);
    EXPECT_EQ(limit.peak_factor, peak_factor(limit.significant_height, period * second));
  }
}

TEST(CompensatorStroke, WhereNothingMovesTheSteepestSeaIsTheLimit) {
  const OperatingLimit limit =
      operating_limit(HeaveOperator::constant(number(0.0)), 8.0 * second, number(3.3),
                      {.half_stroke = meter, .duration = hour, .exceedance = number(0.01)});
  EXPECT_EQ(limit.bound, LimitBound::steepest_sea);
  EXPECT_EQ(limit.significant_height, steepest_height(8.0 * second));
}

TEST(CompensatorStroke, TheHighestSeaAdmittedIsNotPassedOffAsTheSteepest) {
  // The steepest sea of 30 s, 56 m, is above the 40 m that are admitted at all.
  const OperatingLimit limit =
      operating_limit(HeaveOperator::constant(number(0.0)), 30.0 * second, number(1.0),
                      {.half_stroke = meter, .duration = hour, .exceedance = number(0.01)});
  EXPECT_GT(steepest_height(30.0 * second), 40.0 * meter);
  EXPECT_EQ(limit.significant_height, 40.0 * meter);
  EXPECT_EQ(limit.bound, LimitBound::highest_height);
}

// --- Active drum

TEST(CompensatorDrum, PowerWithInertiaIsTheLargestOfTheCycle) {
  // Looked for step by step: load and turning parts times speed.
  const double load = 1.8e6, height = 3.0, period = 9.0, efficiency = 0.8;
  for (const double mass : {0.0, 1e5, 1e6, 1e7}) {
    const double omega = 2.0 * pi / period, v = pi * height / period;
    double largest = 0.0;
    for (int i = 0; i < 100'000; ++i) {
      const double angle = 0.5 * pi * i / 100'000.0;
      const double force = load / efficiency + mass * v * omega * std::cos(angle);
      largest = std::max(largest, force * v * std::sin(angle));
    }
    const Power found = active_power_with_inertia(
        from_si<Force>(load), height * meter, period * second, number(efficiency), mass * kilogram);
    EXPECT_NEAR(to_si(found) / largest, 1.0, 1e-8) << mass;
  }
}

TEST(CompensatorDrum, WorkIsPowerOverTheCycle) {
  // Mean of |sin| is 2/π: work of a cycle is the largest power times T times 2/π.
  const Force load = 400.0 * kip;
  const Power largest = active_power(load, 3.0 * meter, 9.0 * second, number(1.0));
  EXPECT_NEAR(active_work(load, 3.0 * meter, number(1.0)) / (largest * 9.0 * second * (2.0 / pi)),
              1.0, 1e-12);
}

TEST(CompensatorDrum, LineRunsAsManyTimesAsFast) {
  EXPECT_NEAR(active_line_speed(number(12), 3.0 * meter, 9.0 * second) /
                  heave_speed(3.0 * meter, 9.0 * second),
              12.0, 1e-12);
}

}  // namespace
}  // namespace ropewalk::compensator
