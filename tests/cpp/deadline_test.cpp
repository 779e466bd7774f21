#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

#include "ropewalk/base/error.hpp"
#include "ropewalk/deadline/anchor.hpp"
#include "ropewalk/deadline/friction.hpp"
#include "ropewalk/deadline/indicator.hpp"
#include "ropewalk/deadline/sensor.hpp"
#include "ropewalk/reeving/line_tension.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::deadline {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }
constexpr Number fixed = number(0.0);
constexpr Number turns = number(1.0);
constexpr Force load = 400.0 * kip;

reeving::Arrangement strung(int lines, double friction, bool dead_line_sheave_turns = false) {
  return reeving::Arrangement({.lines = lines,
                               .sheave_friction = {number(friction)},
                               .dead_line_sheave_turns = dead_line_sheave_turns});
}

// --- The indicator

TEST(DeadlineRatio, WithoutFrictionItShowsTheLoad) {
  for (const double lines : {2.0, 8.0, 14.0}) {
    for (const Number& turning : {fixed, turns}) {
      EXPECT_EQ(to_si(hoisting_ratio(number(lines), number(1.0), turning)), 1.0);
      EXPECT_EQ(to_si(lowering_ratio(number(lines), number(1.0), turning)), 1.0);
    }
  }
}

TEST(DeadlineRatio, IsThatOfTheDeadLineOfTheReeving) {
  const Number lines = number(10.0), friction = number(1.04);
  EXPECT_NEAR(to_si(hoisting_ratio(lines, friction, fixed)),
              10.0 * (reeving::dead_line_tension(load, lines, friction) / load), 1e-14);
  EXPECT_NEAR(to_si(lowering_ratio(lines, friction, fixed)),
              10.0 * (reeving::lowering_dead_line_tension(load, lines, friction) / load), 1e-14);
  for (const bool turning : {false, true}) {
    const Indicator indicator(strung(10, 1.04, turning), 10);
    const Number t = turning ? turns : fixed;
    EXPECT_NEAR(to_si(indicator.ratio(reeving::Motion::hoisting)),
                to_si(hoisting_ratio(lines, friction, t)), 1e-14);
    EXPECT_NEAR(to_si(indicator.ratio(reeving::Motion::lowering)),
                to_si(lowering_ratio(lines, friction, t)), 1e-14);
    EXPECT_EQ(to_si(indicator.ratio(reeving::Motion::at_rest)), 1.0);
  }
}

TEST(DeadlineRatio, HookLoadTurnsItRound) {
  for (const Number& turning : {fixed, turns}) {
    const Number lines = number(12.0), friction = number(1.031);
    EXPECT_NEAR(hook_load_hoisting(hoisting_ratio(lines, friction, turning) * load, lines, friction,
                                   turning) /
                    load,
                1.0, 1e-14);
    EXPECT_NEAR(hook_load_lowering(lowering_ratio(lines, friction, turning) * load, lines, friction,
                                   turning) /
                    load,
                1.0, 1e-14);
  }
}

TEST(DeadlineRatio, AnOddNumberHasNoDeadLine) {
  EXPECT_THROW((void)hoisting_ratio(number(9.0), number(1.04), fixed), InadmissibleError);
  EXPECT_THROW((void)Indicator(strung(9, 1.04), 10), InadmissibleError);
  EXPECT_THROW((void)Indicator(strung(10, 1.04), 1), InadmissibleError);
}

TEST(DeadlineIndicator, WrongLinesAreWrongInProportion) {
  const Indicator actual(strung(10, 1.04), 8);
  const Indicator believed(strung(10, 1.04), 10);
  for (const auto motion :
       {reeving::Motion::at_rest, reeving::Motion::hoisting, reeving::Motion::lowering}) {
    EXPECT_NEAR(to_si(actual.error_of(believed, motion)), -0.2, 1e-14);
    EXPECT_NEAR(to_si(actual.error_of(actual, motion)), 0.0, 1e-15);
  }
}

TEST(DeadlineIndicator, WrongFrictionIsTheQuotientOfTheRatios) {
  const Indicator actual(strung(10, 1.02), 10);
  const Indicator believed(strung(10, 1.04), 10);
  // By hand: Σ 1.04^i / Σ 1.02^i = 12.00611 / 10.94972, i = 0 … 9.
  EXPECT_NEAR(to_si(actual.error_of(believed, reeving::Motion::hoisting)),
              12.00610712 / 10.94972100 - 1.0, 1e-8);
  EXPECT_EQ(to_si(actual.error_of(believed, reeving::Motion::at_rest)), 0.0);
}

// --- Friction from two readings

TEST(FrictionFromReadingsTest, ComesBackFromTheRatios) {
  for (const Number& turning : {fixed, turns}) {
    for (const double k : {1.0, 1.01, 1.04, 1.09}) {
      const Number lines = number(8.0);
      const Force up = hoisting_ratio(lines, number(k), turning) * load;
      const Force down = lowering_ratio(lines, number(k), turning) * load;
      EXPECT_NEAR(to_si(friction_from_readings(up, down, lines, turning)), k, 1e-13);
      EXPECT_NEAR(hook_load_from_readings(up, down, lines, turning) / load, 1.0, 1e-13);
    }
  }
}

TEST(FrictionFromReadingsTest, ReadingsChangedRoundAreRefused) {
  // 4 lines, three sheaves between the readings: K = 2 makes 8 of 1.
  EXPECT_NO_THROW((void)friction_from_readings(100.0 * kip, 799.0 * kip, number(4.0), fixed));
  EXPECT_THROW((void)friction_from_readings(100.0 * kip, 801.0 * kip, number(4.0), fixed),
               InadmissibleError);
  EXPECT_THROW((void)friction_from_readings(474.0 * kip, 333.0 * kip, number(10.0), fixed),
               InadmissibleError);
}

TEST(FrictionUncertaintyTest, IsTheSlopeOfTheFriction) {
  // Central differences of FrictionFromReadings, the two readings independent.
  const Number lines = number(10.0);
  const double u = 0.01, h = 1e-6;
  const Force up = 333.0 * kip, down = 474.0 * kip;
  const auto k = [&](double by_up, double by_down) {
    return to_si(friction_from_readings(up * by_up, down * by_down, lines, turns));
  };
  const double slope_up = (k(1.0 + h, 1.0) - k(1.0 - h, 1.0)) / (2.0 * h);
  const double slope_down = (k(1.0, 1.0 + h) - k(1.0, 1.0 - h)) / (2.0 * h);
  EXPECT_NEAR(to_si(friction_uncertainty(number(k(1.0, 1.0)), lines, turns, number(u))),
              u * std::hypot(slope_up, slope_down), 1e-10);
}

// --- Friction on a log

std::vector<Move> exact_log(double friction, bool turning, const std::vector<Force>& loads) {
  std::vector<Move> moves;
  const Number t = turning ? turns : fixed;
  for (std::size_t i = 0; i < loads.size(); ++i) {
    const Number up = hoisting_ratio(number(10.0), number(friction), t);
    const Number down = lowering_ratio(number(10.0), number(friction), t);
    moves.push_back({up * loads[i], false, i});
    moves.push_back({down * loads[i], true, i});
    moves.push_back({up * loads[i], false, i});
  }
  return moves;
}

TEST(FrictionFitTest, FindsAnExactLog) {
  for (const bool turning : {false, true}) {
    const std::vector<Force> loads{120.0 * kip, 250.0 * kip, 400.0 * kip};
    const FrictionFit fit = fit_friction(exact_log(1.037, turning, loads), 10, turning, 0.95);
    EXPECT_NEAR(to_si(fit.friction), 1.037, 1e-12);
    EXPECT_NEAR(to_si(fit.standard_error), 0.0, 1e-12);
    EXPECT_EQ(fit.degrees_of_freedom, 9 - 3 - 1);
    ASSERT_EQ(fit.hook_loads.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i) EXPECT_NEAR(fit.hook_loads[i] / loads[i], 1.0, 1e-12);
  }
}

TEST(FrictionFitTest, OneLoadByHand) {
  // ln of the readings: up −0.1, −0.3, down 0.2, 0.4 about a common middle: means −0.2 and 0.3, so
  // b = 0.25, residuals ±0.1, variance 0.04/2, standard error of b √(0.02/4).
  const auto move = [](double ln, bool down) {
    return Move{std::exp(10.0 + ln) * newton, down, 0};
  };
  const std::vector<Move> moves{move(-0.1, false), move(-0.3, false), move(0.2, true),
                                move(0.4, true)};
  const FrictionFit fit = fit_friction(moves, 2, false, 0.95);
  // N − 1 = 1: ln K = 2 b.
  EXPECT_NEAR(std::log(to_si(fit.friction)), 0.5, 1e-12);
  EXPECT_NEAR(to_si(fit.scatter), std::sqrt(0.02), 1e-12);
  EXPECT_NEAR(to_si(fit.standard_error) / to_si(fit.friction), 2.0 * std::sqrt(0.005), 1e-12);
  // Student's t for 2 degrees of freedom, 95 %, from tables: 4.303.
  const double reach = std::log(to_si(fit.high) / to_si(fit.friction));
  EXPECT_NEAR(reach / (2.0 * std::sqrt(0.005)), 4.303, 5e-4);
}

TEST(FrictionFitTest, WhatCannotBeJudgedIsRefused) {
  const Move up{300.0 * kip, false, 0}, down{400.0 * kip, true, 0};
  const auto refused = [](const std::vector<Move>& moves, int lines = 10, double level = 0.95) {
    EXPECT_THROW((void)fit_friction(moves, lines, false, level), InadmissibleError);
  };
  refused({});
  refused({up, down});
  refused({up, up, up});
  refused({up, up, {400.0 * kip, true, 1}, {400.0 * kip, true, 1}});
  refused({up, down, {400.0 * kip, true, 2}});  // no load 1
  refused({up, down, up}, 9);
  refused({up, down, up}, 10, 1.0);
  refused({up, down, {-1.0 * kip, true, 0}});
  refused({up, down, {from_si<Force>(std::nan("")), true, 0}});
}

// --- Anchor

TEST(AnchorTest, WrapsMultiplyWhatTheClampsHold) {
  const Force held = 10.0 * kip;
  EXPECT_EQ(anchor_capacity(number(2.0), held, number(0.1), number(0.0)), 2.0 * held);
  const Force capacity = anchor_capacity(number(3.0), held, number(0.12), number(4.0));
  EXPECT_EQ(to_si(clamps_needed(capacity, held, number(0.12), number(4.0))), 3.0);
  EXPECT_EQ(to_si(clamps_needed(capacity * 1.001, held, number(0.12), number(4.0))), 4.0);
  EXPECT_EQ(to_si(clamps_needed(0.0 * kip, held, number(0.12), number(4.0))), 0.0);
}

// --- Sensors

TEST(DeadlineSensor, EachTurnsItsForceRound) {
  const Force tension = 30.0 * kip;
  const Length h = 25.0 * millimeter, a = 250.0 * millimeter, r = 14.0 * inch, arm = 42.0 * inch;
  EXPECT_NEAR(tension_from_deflection(deflection_force(tension, h, a), h, a) / tension, 1.0, 1e-14);
  EXPECT_NEAR(tension_from_cell(cell_force(tension, r, arm), r, arm) / tension, 1.0, 1e-14);
  const Area area = 20.0 * square_inch;
  EXPECT_NEAR(tension_from_pressure(cell_force(tension, r, arm) / area, area, r, arm) / tension,
              1.0, 1e-14);
  EXPECT_NEAR(tension_from_pin(pin_force(tension, 70.0 * degree), 70.0 * degree) / tension, 1.0,
              1e-14);
}

TEST(DeadlineSensor, ADeflectedLineIsASheaveWithoutRadius) {
  // Both ends slant by β, tan β = h/a: the line turns by 2 β.
  const Force tension = 30.0 * kip;
  const Length h = 60.0 * millimeter, a = 250.0 * millimeter;
  const Angle turned = 2.0 * std::atan(60.0 / 250.0) * radian;
  EXPECT_NEAR(deflection_force(tension, h, a) / pin_force(tension, turned), 1.0, 1e-14);
}

TEST(DeadlineSensor, ParallelPartsPullTwice) {
  EXPECT_NEAR(pin_force(30.0 * kip, 180.0 * degree) / kip, 60.0, 1e-12);
  EXPECT_NEAR(pin_force(30.0 * kip, 60.0 * degree) / kip, 30.0, 1e-12);
}

}  // namespace
}  // namespace ropewalk::deadline
