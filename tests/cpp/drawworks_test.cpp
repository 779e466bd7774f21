#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "ropewalk/base/error.hpp"
#include "ropewalk/drawworks/hoist.hpp"
#include "ropewalk/drawworks/inertia.hpp"
#include "ropewalk/drawworks/power.hpp"
#include "ropewalk/drawworks/sizes.hpp"
#include "ropewalk/drawworks/stand.hpp"
#include "ropewalk/drum/length.hpp"
#include "ropewalk/reeving/line_tension.hpp"
#include "ropewalk/units/customary.hpp"

#include "drawworks_examples.hpp"

namespace ropewalk::drawworks {
namespace {

using namespace examples;

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
  refused(wrong, "efficiency");
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
