#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "ropewalk/base/error.hpp"
#include "ropewalk/drawworks/stand.hpp"
#include "ropewalk/drawworks/stroke.hpp"

#include "drawworks_examples.hpp"

namespace ropewalk::drawworks {
namespace {

using namespace examples;

double imbalance(const Stroke& stroke) {
  const Energy left = stroke.driven - stroke.braked - stroke.lifted - stroke.lost;
  return std::abs(to_si(left) / to_si(stroke.driven + stroke.braked));
}

TEST(DrawworksStroke, ALightLoadMovesAsTheLimitsSay) {
  // Far below what the motors can: the closed form of the trapezoid, whatever the layers.
  const Hoist on(string_up());
  const Limits slow = limits(0.3, 0.1);
  const Time expected =
      stand_time(a_stand.travel, slow.speed, slow.acceleration, slow.deceleration);
  const Stroke up = hoist(on, 200.0 * kilonewton, a_stand, slow, 1);
  const Stroke down = lower(on, 200.0 * kilonewton, a_stand, slow);
  EXPECT_NEAR(to_si(up.time), to_si(expected), 1e-9);
  EXPECT_NEAR(to_si(down.time), to_si(expected), 1e-9);
}

TEST(DrawworksStroke, EnergyBalances) {
  const Hoist on(string_up());
  for (const double load : {100e3, 400e3, 900e3, 1500e3, 2100e3}) {
    for (const double speed : {0.1, 0.5, 1.0, 3.0}) {
      const Stroke up = hoist(on, load * newton, a_stand, limits(speed));
      const Stroke down = lower(on, load * newton, a_stand, limits(speed));
      EXPECT_TRUE(up.possible) << load;
      EXPECT_LT(imbalance(up), 1e-11) << load << " at " << speed;
      EXPECT_LT(imbalance(down), 1e-11) << load << " at " << speed;
      EXPECT_NEAR(to_si(up.lifted), load * 28.5, 1e-6 * load);
      EXPECT_NEAR(to_si(up.lifted + down.lifted), 0.0, 1e-6 * load);
    }
  }
}

TEST(DrawworksStroke, PiecesFollowEachOther) {
  const Stroke stroke = hoist(Hoist(string_up()), 1500.0 * kilonewton, a_stand, limits());
  Time time{};
  Length travel{};
  Speed speed{};
  for (const Piece& piece : stroke.pieces) {
    EXPECT_NEAR(to_si(piece.start - time), 0.0, 1e-12);
    EXPECT_NEAR(to_si(piece.begin - travel), 0.0, 1e-12);
    EXPECT_EQ(piece.first, speed);
    time += piece.duration;
    travel += piece.length;
    speed = piece.last;
  }
  EXPECT_NEAR(to_si(travel), 28.5, 1e-11);
  EXPECT_EQ(to_si(speed), 0.0);
  EXPECT_EQ(time, stroke.time);
}

TEST(DrawworksStroke, FullPowerIsNeverExceeded) {
  const Hoist on(string_up());
  const Stroke rated = hoist(on, 1000.0 * kilonewton, a_stand, limits(3.0));
  Limits strong = limits(3.0);
  strong.overload = true;
  const Stroke over = hoist(on, 1000.0 * kilonewton, a_stand, strong);
  EXPECT_NEAR(rated.peak_power / horsepower, 1500.0, 1e-6);
  EXPECT_NEAR(over.peak_power / horsepower, 1.3 * 1500.0, 1e-6);
  EXPECT_LT(over.time, rated.time);
}

TEST(DrawworksStroke, TheBestGearIsTheFastestOfThem) {
  const Hoist on(string_up());
  for (const double load : {100e3, 700e3, 1100e3, 1600e3}) {
    const Stroke best = hoist(on, load * newton, a_stand, limits(2.0));
    for (int gear = 1; gear <= on.gears(); ++gear) {
      const Stroke one = hoist(on, load * newton, a_stand, limits(2.0), gear);
      if (one.possible) {
        EXPECT_LE(best.time, one.time);
      }
    }
  }
}

TEST(DrawworksStroke, ATooHeavyLoadIsAFindingWithNumbers) {
  const Stroke stroke = hoist(Hoist(string_up()), 2600.0 * kilonewton, a_stand, limits());
  EXPECT_FALSE(stroke.possible);
  EXPECT_NE(stroke.reason.find("2600000 N"), std::string::npos) << stroke.reason;
  EXPECT_NE(stroke.reason.find("layer 2"), std::string::npos) << stroke.reason;
  EXPECT_TRUE(stroke.pieces.empty());
}

TEST(DrawworksStroke, SlackLinesAreAFinding) {
  StringUp heavy = string_up();
  heavy.sheave_mass = 500.0 * tonne;
  const Limits hard{
      .speed = meter_per_second, .acceleration = per_s2(1.0), .deceleration = per_s2(1.0)};
  EXPECT_FALSE(hoist(Hoist(heavy), 100.0 * kilonewton, a_stand, hard).possible);
}

TEST(DrawworksStroke, LoweringKeepsTheFastLineWithinItsLimit) {
  StringUp limited = string_up();
  limited.line_limit = 100.0 * kilonewton;
  limited.sheave_mass = 30.0 * tonne;
  const Hoist on(limited);
  // Going down, the fast line carries W/(K + K² + … + K^N).
  double lines = 0.0;
  for (int k = 1; k <= 10; ++k) lines += std::pow(1.04, k);
  // (W + (W/g + m) a)/lines = limit, solved for W.
  const double g = to_si(standard_gravity);
  const double most = (100e3 * lines - 30e3 * 0.4) / (1.0 + 0.4 / g);
  EXPECT_TRUE(lower(on, 0.9999 * most * newton, a_stand, limits()).possible);
  const Stroke beyond = lower(on, 1.0001 * most * newton, a_stand, limits());
  EXPECT_FALSE(beyond.possible);
  EXPECT_NE(beyond.reason.find("its limit is 1e+05 N"), std::string::npos) << beyond.reason;
  EXPECT_TRUE(beyond.pieces.empty());
}

TEST(DrawworksStroke, AnEmptyBlockFallsNoFasterThanItTurnsTheDrum) {
  StringUp wide = string_up();
  wide.drum = drum::Drum({.barrel_diameter = 28.0 * inch,
                          .rope_diameter = 1.375 * inch,
                          .laps_per_layer = number(400.0),
                          .layers = 1,
                          .layer_height = drum::nested_layer_height()});
  wide.sheave_mass = 3.0 * tonne;
  const Stroke down = lower(Hoist(wide), 200.0 * kilonewton, a_stand, limits(1.0, 2.0));
  // Balance of torques at the drum: the fast line, less its share of friction, turns 1500 kg m².
  double lines = 0.0;
  for (int k = 1; k <= 10; ++k) lines += std::pow(1.04, k);
  const double radius = 0.5 * 29.375 * 0.0254;
  const double arm = 0.97 * radius / lines;  // torque at the drum over force at the hook
  const double a =
      arm * 200e3 / (arm * (200e3 / to_si(standard_gravity) + 3e3) + 1500.0 * 10.0 / radius);
  EXPECT_LT(a, 0.2);
  EXPECT_NEAR(to_si(down.time),
              to_si(stand_time(a_stand.travel, meter_per_second, per_s2(a), per_s2(2.0))), 1e-9);
  EXPECT_EQ(to_si(down.driven), 0.0);
  EXPECT_EQ(to_si(down.peak_power), 0.0);
}

TEST(DrawworksStroke, ACurveEndsWhereTheStrokeDoes) {
  const Stroke stroke = hoist(Hoist(string_up()), 1500.0 * kilonewton, a_stand, limits());
  const auto points = curve(stroke, 20);
  EXPECT_EQ(points.size(), 20 * stroke.pieces.size());
  EXPECT_NEAR(to_si(points.back().time), to_si(stroke.time), 1e-9);
  EXPECT_NEAR(to_si(points.back().travel), 28.5, 1e-9);
  for (std::size_t i = 1; i < points.size(); ++i) {
    EXPECT_GE(points[i].time, points[i - 1].time);
    EXPECT_GE(to_si(points[i].travel - points[i - 1].travel), -1e-12);
  }
}

TEST(DrawworksStroke, RefusesWhatCannotBe) {
  const Hoist on(string_up());
  EXPECT_THROW((void)hoist(on, 0.0 * newton, a_stand, limits()), InadmissibleError);
  EXPECT_THROW((void)hoist(on, newton, {0.0 * meter, 80.0 * meter}, limits()), InadmissibleError);
  Limits wrong = limits();
  wrong.deceleration = per_s2(12.0);
  EXPECT_THROW((void)hoist(on, newton, a_stand, wrong), InadmissibleError);
  wrong = limits();
  wrong.speed = from_si<Speed>(std::nan(""));
  EXPECT_THROW((void)lower(on, newton, a_stand, wrong), InadmissibleError);
}

// --- Overload

/// Two motors of 750 hp with neither inertia nor losses, a drum so wide that a stand is one layer.
StringUp without_losses() {
  StringUp strung = string_up(1.0);
  strung.machine.motors.inertia = {};
  strung.machine.drum_inertia = {};
  strung.machine.drum_efficiency = number(1.0);
  for (Gear& gear : strung.machine.gears) gear.efficiency = number(1.0);
  strung.drum = drum::Drum({.barrel_diameter = 28.0 * inch,
                            .rope_diameter = 1.375 * inch,
                            .laps_per_layer = number(400.0),
                            .layers = 1,
                            .layer_height = drum::nested_layer_height()});
  return strung;
}

Limits overloaded(double speed, double acceleration) {
  Limits given = limits(speed, acceleration);
  given.overload = true;
  return given;
}

constexpr double rated_power = 1500.0 * 745.69987158227022;  // W

TEST(DrawworksOverload, CountsTheTimeAboveRatedPower) {
  // By hand: F = W(1 + a/g) speeds the load up, and takes rated power at P/F.
  const Hoist on(without_losses());
  const double force = 1e6 * (1.0 + 1.0 / to_si(standard_gravity));
  const Stroke short_of = hoist(on, 1e6 * newton, a_stand, overloaded(1.1, 1.0), 2);
  EXPECT_NEAR(to_si(short_of.time_overloaded), 1.1 - rated_power / force, 1e-6);
  // At 1.2 m/s the load itself takes more than rated power: W v = 1200 kW.
  const Stroke cruising = hoist(on, 1e6 * newton, a_stand, overloaded(1.2, 1.0), 2);
  const double cruise = (28.5 - 1.2 * 1.2) / 1.2;
  EXPECT_NEAR(to_si(cruising.time_overloaded), 1.2 - rated_power / force + cruise, 1e-6);
}

TEST(DrawworksOverload, CountsTheTimeAboveRatedTorque) {
  // Gear 2 pulls 1790 kN at its rating; 1 MN that speeds up with 9 m/s² takes 1918 kN, and at
  // 0.5 m/s 959 kW: torque above the rating, power below it.
  const Hoist on(without_losses());
  const Stroke jerk = hoist(on, 1e6 * newton, a_stand, overloaded(0.5, 9.0), 2);
  EXPECT_NEAR(to_si(jerk.time_overloaded), 0.5 / 9.0, 1e-9);
}

TEST(DrawworksOverload, MotorsAtTheirRatingAreNotOverloaded) {
  for (const double load : {100e3, 900e3, 1500e3, 2100e3}) {
    const Stroke rated = hoist(Hoist(string_up()), load * newton, a_stand, limits(3.0, 2.0));
    ASSERT_TRUE(rated.possible);
    EXPECT_EQ(to_si(rated.time_overloaded), 0.0) << load;
    const Stroke down = lower(Hoist(string_up()), load * newton, a_stand, limits(3.0, 2.0));
    EXPECT_EQ(to_si(down.time_overloaded), 0.0) << load;
  }
}

TEST(DrawworksOverload, LongerThanItMayIsAFinding) {
  StringUp strung = without_losses();
  const auto cruise = [&](double most) {
    strung.machine.motors.overload_time = most * second;
    return hoist(Hoist(strung), 1e6 * newton, a_stand, overloaded(1.2, 1.0), 2);
  };
  EXPECT_TRUE(cruise(23.0).possible);
  const Stroke beyond = cruise(22.0);
  EXPECT_FALSE(beyond.possible);
  EXPECT_EQ(beyond.gear, 2);
  EXPECT_TRUE(beyond.pieces.empty());
  EXPECT_NE(beyond.reason.find("overload_time allows 22 s"), std::string::npos) << beyond.reason;
}

TEST(DrawworksOverload, RefusesATimeThatCannotBe) {
  StringUp strung = string_up();
  strung.machine.motors.overload_time = 0.0 * second;
  try {
    const Hoist on(strung);
    FAIL();
  } catch (const InadmissibleError& error) {
    EXPECT_EQ(error.field(), "overload_time");
  }
}

}  // namespace
}  // namespace ropewalk::drawworks
