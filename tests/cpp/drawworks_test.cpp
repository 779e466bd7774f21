#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "ropewalk/base/error.hpp"
#include "ropewalk/drawworks/hoist.hpp"
#include "ropewalk/drawworks/inertia.hpp"
#include "ropewalk/drawworks/power.hpp"
#include "ropewalk/drawworks/sizes.hpp"
#include "ropewalk/drawworks/stand.hpp"
#include "ropewalk/drawworks/stroke.hpp"
#include "ropewalk/drum/length.hpp"
#include "ropewalk/reeving/line_tension.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::drawworks {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }
constexpr Acceleration per_s2(double x) { return x * meter_per_second_squared; }

/// Two motors of 750 hp, two gears, 10 lines, a drum of four layers.
StringUp string_up(double friction = 1.04) {
  return {.machine = {.motors = {.count = 2,
                                 .power = 750.0 * horsepower,
                                 .base_speed = 800.0 * rpm,
                                 .top_speed = 1600.0 * rpm,
                                 .inertia = 15.0 * kilogram_square_meter,
                                 .overload = number(1.3)},
                      .gears = {{.ratio = number(10.0), .efficiency = number(0.95)},
                                {.ratio = number(5.0), .efficiency = number(0.96)}},
                      .drum_efficiency = number(0.97),
                      .drum_inertia = 1500.0 * kilogram_square_meter},
          .drum = drum::Drum({.barrel_diameter = 28.0 * inch,
                              .rope_diameter = 1.375 * inch,
                              .laps_per_layer = number(40.0),
                              .layers = 4,
                              .layer_height = drum::nested_layer_height()}),
          .reeving = reeving::Arrangement({.lines = 10, .sheave_friction = {number(friction)}}),
          .wraps_at_lowest = number(8.0)};
}

Limits limits(double speed = 1.0, double acceleration = 0.4) {
  return {.speed = speed * meter_per_second,
          .acceleration = per_s2(acceleration),
          .deceleration = per_s2(acceleration)};
}

constexpr Travel a_stand{0.0 * meter, 28.5 * meter};

double imbalance(const Stroke& stroke) {
  const Energy left = stroke.driven - stroke.braked - stroke.lifted - stroke.lost;
  return std::abs(to_si(left) / to_si(stroke.driven + stroke.braked));
}

// --- Rows: identities and limits

TEST(DrawworksRows, PowerAndSpeedUndoEachOther) {
  const Speed speed = hoisting_speed(1000.0 * kilonewton, 1500.0 * horsepower, number(0.7));
  EXPECT_NEAR(hoisting_power(1000.0 * kilonewton, speed, number(0.7)) / horsepower, 1500.0, 1e-9);
  EXPECT_NEAR(hook_power(1000.0 * kilonewton, speed) / horsepower, 0.7 * 1500.0, 1e-9);
}

TEST(DrawworksRows, TorqueTimesRotationIsThePowerOfTheLine) {
  const Speed block = 0.5 * meter_per_second;
  const Force line = 200.0 * kilonewton;
  const Power at_drum = drum_torque(line, 1.0 * meter) * drum_speed(block, number(10.0), meter);
  EXPECT_NEAR(to_si(at_drum), to_si(line) * 10.0 * 0.5, 1e-6);
}

TEST(DrawworksRows, TheMotorIsContinuousAtItsBaseSpeed) {
  const Power rated = 750.0 * horsepower;
  const auto torque = [&](double turns) { return motor_torque(rated, 800.0 * rpm, turns * rpm); };
  EXPECT_EQ(torque(0.0), torque(800.0));
  EXPECT_NEAR(to_si(torque(800.0) * (800.0 * rpm)), to_si(rated), 1e-6);
  EXPECT_NEAR(to_si(torque(1600.0) * (1600.0 * rpm)), to_si(rated), 1e-6);
}

TEST(DrawworksRows, TheStandTimeIsContinuousWhereATriangleBecomesATrapezoid) {
  const double v = 1.3;
  const double a = 0.35;
  const double d = 0.6;
  const double border = 0.5 * v * v * (1.0 / a + 1.0 / d);
  const auto time = [&](double share) {
    return to_si(stand_time(border * share * meter, v * meter_per_second, per_s2(a), per_s2(d)));
  };
  EXPECT_NEAR(time(1.0), v * (1.0 / a + 1.0 / d), 1e-12 * time(1.0));
  EXPECT_NEAR(time(1.0 - 1e-12), time(1.0 + 1e-12), 1e-11 * time(1.0));
  EXPECT_NEAR(to_si(stand_peak_speed(border * meter, v * meter_per_second, per_s2(a), per_s2(d))),
              v, 1e-12);
}

TEST(DrawworksRows, InertiaKeepsTheKineticEnergy) {
  const MomentOfInertia rotor = 15.0 * kilogram_square_meter;
  const Speed block = 0.7 * meter_per_second;
  const AngularVelocity drum = drum_speed(block, number(12.0), 0.8 * meter);
  const AngularVelocity motor = 9.0 * drum;
  const MomentOfInertia at_drum = reflected_inertia(rotor, number(9.0));
  const Mass at_hook = hook_equivalent_mass(at_drum, number(12.0), 0.8 * meter);
  EXPECT_NEAR(to_si(at_hook) * 0.49, to_si(rotor) * std::pow(to_si(motor), 2), 1e-9);
}

TEST(DrawworksRows, SheavesOneByOne) {
  const MomentOfInertia one = 80.0 * kilogram_square_meter;
  double energies = 0.0;
  for (int k = 1; k <= 10; ++k) energies += 80.0 * std::pow(2.0 * k / 1.4, 2);
  EXPECT_NEAR(to_si(sheave_equivalent_mass(one, number(10.0), 1.4 * meter)), energies, 1e-8);
}

// --- The hoist

TEST(DrawworksHoist, WithoutLossesAllPowerReachesTheHook) {
  StringUp ideal = string_up(1.0);
  ideal.machine.drum_efficiency = number(1.0);
  for (Gear& gear : ideal.machine.gears) gear.efficiency = number(1.0);
  const Drive drive = Hoist(ideal).drive(1, 2);
  EXPECT_NEAR(drive.power / horsepower, 1500.0, 1e-9);
  EXPECT_NEAR(to_si(drive.efficiency), 1.0, 1e-12);
  const MomentOfInertia all =
      1500.0 * kilogram_square_meter + 2.0 * 100.0 * 15.0 * kilogram_square_meter;
  const Length lap = Hoist(ideal).layer_radius(2) * 2.0;
  EXPECT_NEAR(to_si(drive.turning_mass), to_si(hook_equivalent_mass(all, number(10.0), lap)), 1e-5);
}

TEST(DrawworksHoist, TheChainOfEfficienciesIsAProduct) {
  const Hoist on(string_up());
  const double reeving = to_si(reeving::efficiency(number(10.0), number(1.04), number(0.0)));
  EXPECT_NEAR(to_si(on.drive(1, 1).efficiency), 0.95 * 0.97 * reeving, 1e-12);
  EXPECT_NEAR(to_si(on.drive(2, 1).efficiency), 0.96 * 0.97 * reeving, 1e-12);
}

TEST(DrawworksHoist, PullAndSpeedMakeOneEnvelope) {
  const Hoist on(string_up());
  for (int gear = 1; gear <= 2; ++gear) {
    for (int layer = 1; layer <= 4; ++layer) {
      const Drive drive = on.drive(gear, layer);
      EXPECT_EQ(drive.steady_pull(0.0 * meter_per_second), drive.pull);
      EXPECT_EQ(to_si(drive.steady_pull(1.0001 * drive.top_speed)), 0.0);
      EXPECT_EQ(to_si(drive.steady_speed(1.0001 * drive.pull)), 0.0);
      EXPECT_NEAR(drive.steady_speed(drive.pull) / drive.base_speed, 1.0, 1e-12);
      const Speed between = 0.4 * drive.base_speed + 0.6 * drive.top_speed;
      EXPECT_NEAR(drive.steady_speed(drive.steady_pull(between)) / between, 1.0, 1e-12);
      // What can just be hoisted does not accelerate.
      EXPECT_NEAR(to_si(drive.acceleration(drive.steady_pull(between), between)), 0.0, 1e-12);
    }
  }
}

TEST(DrawworksHoist, AHigherLayerIsFasterAndWeaker) {
  const Hoist on(string_up());
  for (int layer = 1; layer < 4; ++layer) {
    EXPECT_GT(on.drive(1, layer).pull, on.drive(1, layer + 1).pull);
    EXPECT_LT(on.drive(1, layer).top_speed, on.drive(1, layer + 1).top_speed);
    EXPECT_GT(on.drive(1, layer).turning_mass, on.drive(1, layer + 1).turning_mass);
    EXPECT_NEAR(on.drive(1, layer).power / on.drive(1, layer + 1).power, 1.0, 1e-12);
  }
}

TEST(DrawworksHoist, TheLineLimitsThePull) {
  StringUp limited = string_up();
  limited.line_limit = 200.0 * kilonewton;
  const Drive drive = Hoist(limited).drive(1, 1);
  const Force most = drive.steady_pull(0.0 * meter_per_second);
  EXPECT_NEAR(to_si(reeving::fast_line_tension(most, number(10.0), number(1.04), number(0.0))),
              200e3, 1e-6);
  EXPECT_NEAR(to_si(drive.acceleration(most, 0.0 * meter_per_second)), 0.0, 1e-12);
}

TEST(DrawworksHoist, TheLineAcceleratesLoadAndSheaves) {
  StringUp limited = string_up();
  limited.line_limit = 200.0 * kilonewton;
  limited.sheave_mass = 30.0 * tonne;
  const Drive drive = Hoist(limited).drive(1, 1);
  const Force load = 0.98 * drive.line_limit;
  const Acceleration most = drive.acceleration(load, 0.0 * meter_per_second);
  // Newton's law, then the tension of the fast line by the reeving.
  const Force pulled = load + (load / standard_gravity + 30.0 * tonne) * most;
  EXPECT_NEAR(to_si(reeving::fast_line_tension(pulled, number(10.0), number(1.04), number(0.0))),
              200e3, 1e-6);
}

TEST(DrawworksHoist, KnowsTheLayerOfTheDrum) {
  const Hoist on(string_up());
  for (double height = 0.0; height < 36.0; height += 1.3) {
    EXPECT_EQ(
        on.layer_at(height * meter),
        drum::place_at_height(string_up().drum, number(8.0), number(10.0), height * meter).layer);
  }
  EXPECT_THROW((void)on.layer_at(60.0 * meter), InadmissibleError);
}

TEST(DrawworksHoist, TheMotorTorqueIsThatOfThePull) {
  const Hoist on(string_up());
  const Drive drive = on.drive(1, 3);
  const Torque rated = motor_torque(750.0 * horsepower, 800.0 * rpm, 800.0 * rpm);
  EXPECT_NEAR(on.motor_torque(1, 3, drive.pull, per_s2(0.0)) / rated, 1.0, 1e-12);
  // The acceleration the motors can give takes all of their torque.
  const Force load = 1000.0 * kilonewton;
  const Acceleration most = drive.acceleration(load, 0.0 * meter_per_second);
  EXPECT_NEAR(on.motor_torque(1, 3, load, most) / rated, 1.0, 1e-12);
}

TEST(DrawworksHoist, RefusesWhatCannotBe) {
  const auto refused = [](const StringUp& strung, std::string_view field) {
    try {
      const Hoist on(strung);
      ADD_FAILURE() << field;
    } catch (const InadmissibleError& error) {
      EXPECT_EQ(error.field(), field);
    }
  };
  StringUp wrong = string_up();
  wrong.machine.gears.clear();
  refused(wrong, "gears");
  wrong = string_up();
  wrong.machine.gears[1].efficiency = number(1.2);
  refused(wrong, "gear_efficiency");
  wrong = string_up();
  wrong.machine.motors.top_speed = 700.0 * rpm;
  refused(wrong, "top_speed");
  wrong = string_up();
  wrong.machine.drum_inertia = -1.0 * kilogram_square_meter;
  refused(wrong, "drum_inertia");
  wrong = string_up();
  wrong.line_limit = 0.0 * newton;
  refused(wrong, "line_limit");
  EXPECT_THROW((void)Hoist(string_up()).drive(3, 1), InadmissibleError);
  EXPECT_THROW((void)Hoist(string_up()).drive(1, 5), InadmissibleError);
  EXPECT_THROW((void)Hoist(string_up()).motor_torque(1, 1, newton, per_s2(-0.1)),
               InadmissibleError);
}

// --- Strokes

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

// --- Sizes

TEST(DrawworksSizes, GrowWithDepth) {
  EXPECT_NEAR(size_for_depth(3400.0 * meter, "gb/t 23505").power_from / kilowatt, 735.0, 1e-9);
  EXPECT_NEAR(size_for_depth(3400.0 * meter, "common practice").power_from / horsepower, 1500.0,
              1e-9);
  EXPECT_THROW((void)size_for_depth(3400.0 * meter, "nobody"), LookupError);
  EXPECT_THROW((void)size_for_depth(15'000.0 * meter, "GB/T 23505"), LookupError);
}

}  // namespace
}  // namespace ropewalk::drawworks
