#include "ropewalk/drawworks/hoist.hpp"

#include <algorithm>
#include <limits>
#include <string>

#include "ropewalk/base/require.hpp"
#include "ropewalk/drawworks/inertia.hpp"
#include "ropewalk/drawworks/parameters.hpp"
#include "ropewalk/drum/length.hpp"
#include "ropewalk/drum/parameters.hpp"
#include "ropewalk/reeving/line_tension.hpp"
#include "ropewalk/reeving/tensions.hpp"

namespace ropewalk::drawworks {

namespace {

constexpr std::string_view where = "drawworks.Hoist";
constexpr std::string_view motors_where = "drawworks.Motors";
constexpr std::string_view gear_where = "drawworks.Gear";
constexpr std::string_view drawworks_where = "drawworks.Drawworks";

constexpr Parameter<Time> overload_time{
    "overload_time", above_up_to(0.0 * second, from_si<Time>(1e6), params::guard)};

constexpr Parameter<Mass> sheave_mass{
    "sheave_mass", between(from_si<Mass>(0.0), from_si<Mass>(1e7), params::guard)};
constexpr Parameter<Acceleration> steady_or_up{
    "acceleration", between(from_si<Acceleration>(0.0), 100.0 * meter_per_second_squared,
                            "motors that drive; below, brakes help")};
constexpr Parameter<Force> line_limit{"line_limit", params::positive_force_range};

void check(const Motors& motors) {
  require(motors_where, argument::motor_count, from_si<Number>(motors.count));
  require(motors_where, argument::motor_power.named("power"), motors.power);
  require(motors_where, argument::base_speed, motors.base_speed);
  require(motors_where, argument::top_speed, motors.top_speed);
  require(motors_where, argument::inertia, motors.inertia);
  require(motors_where, argument::overload, motors.overload);
  if (motors.overload_time) require(motors_where, overload_time, *motors.overload_time);
  if (motors.top_speed < motors.base_speed) {
    throw InadmissibleError(motors_where, "top_speed",
                            "top_speed = " + quantity_text(motors.top_speed) +
                                " is less than base_speed = " + quantity_text(motors.base_speed) +
                                " (definition)");
  }
}

void check(const StringUp& strung) {
  const Machine& machine = strung.machine;
  check(machine.motors);
  if (machine.gears.empty()) {
    throw InadmissibleError(drawworks_where, "gears", "gears must be at least one, got none");
  }
  for (const Gear& gear : machine.gears) {
    require(gear_where, argument::gear_ratio.named("ratio"), gear.ratio);
    require(gear_where, argument::efficiency, gear.efficiency);
    require(gear_where, argument::inertia, gear.inertia);
  }
  require(drawworks_where, argument::drum_efficiency, machine.drum_efficiency);
  require(drawworks_where, argument::inertia.named("drum_inertia"), machine.drum_inertia);
  require(where, drum::argument::wraps_at_lowest, strung.wraps_at_lowest);
  if (strung.line_limit) require(where, line_limit, *strung.line_limit);
  require(where, sheave_mass, strung.sheave_mass);
}

void check_number(std::string_view field, int number, int last) {
  if (number < 1 || number > last) {
    throw InadmissibleError(where, field,
                            std::string(field) + " = " + std::to_string(number) +
                                " is outside [1, " + std::to_string(last) + "]");
  }
}

}  // namespace

Force Drive::steady_pull(Speed speed) const noexcept {
  if (speed > top_speed) return from_si<Force>(0.0);
  const Force motors = speed > base_speed ? Force(power / speed) : pull;
  return std::min(motors, line_limit);
}

Speed Drive::steady_speed(Force hook_load) const noexcept {
  if (hook_load > std::min(pull, line_limit)) return from_si<Speed>(0.0);
  return hook_load * top_speed > power ? Speed(power / hook_load) : top_speed;
}

Acceleration Drive::acceleration(Force hook_load, Speed speed) const noexcept {
  const Mass moved = hook_load / standard_gravity + turning_mass;
  const Force motors = speed > top_speed    ? from_si<Force>(0.0)
                       : speed > base_speed ? Force(power / speed)
                                            : pull;
  const Acceleration by_motors = (motors - hook_load) / moved;
  // The line carries what accelerates load and sheaves, not what accelerates drum and motors.
  const Mass on_lines = hook_load / standard_gravity + sheave_mass;
  const Acceleration by_line = (line_limit - hook_load) / on_lines;
  return std::min(by_motors, by_line);
}

Hoist::Hoist(const StringUp& string_up)
    : string_up_(string_up),
      hoisting_factor_(
          reeving::tensions(string_up.reeving, newton, reeving::Motion::hoisting).fast_line_factor),
      lowering_factor_(reeving::tensions(string_up.reeving, newton, reeving::Motion::lowering)
                           .fast_line_factor) {
  check(string_up);
}

Length Hoist::layer_radius(int layer) const {
  check_number("layer", layer, layers());
  return string_up_.drum.lap_length(layer) / (2.0 * pi);
}

int Hoist::layer_at(Length block_height) const {
  const Number lines = from_si<Number>(string_up_.reeving.lines());
  return drum::place_at_height(string_up_.drum, string_up_.wraps_at_lowest, lines, block_height)
      .layer;
}

Drive Hoist::drive(int gear, int layer, bool overload) const {
  check_number("gear", gear, gears());
  const Length radius = layer_radius(layer);
  const Machine& machine = string_up_.machine;
  const Motors& motors = machine.motors;
  const Gear& chosen = machine.gears[static_cast<std::size_t>(gear - 1)];
  const Number lines = from_si<Number>(string_up_.reeving.lines());
  const Number reeving_efficiency = 1.0 / (lines * hoisting_factor_);

  const auto block_speed = [&](AngularVelocity motor) {
    return rim_speed(motor / chosen.ratio, radius) / lines;
  };
  Drive drive;
  drive.efficiency = chosen.efficiency * machine.drum_efficiency * reeving_efficiency;
  drive.power = drive.efficiency * static_cast<double>(motors.count) * motors.power *
                (overload ? motors.overload : Number(1.0));
  drive.base_speed = block_speed(motors.base_speed);
  drive.top_speed = block_speed(motors.top_speed);
  drive.pull = drive.power / drive.base_speed;
  drive.line_limit = string_up_.line_limit
                         ? Force(*string_up_.line_limit / hoisting_factor_)
                         : from_si<Force>(std::numeric_limits<double>::infinity());
  const MomentOfInertia rotors =
      static_cast<double>(motors.count) * ReflectedInertia::formula(motors.inertia, chosen.ratio);
  const MomentOfInertia at_drum =
      machine.drum_inertia + chosen.inertia + chosen.efficiency * rotors;
  drive.turning_mass = reeving_efficiency * machine.drum_efficiency *
                           HookEquivalentMass::formula(at_drum, lines, 2.0 * radius) +
                       string_up_.sheave_mass;
  drive.sheave_mass = string_up_.sheave_mass;
  return drive;
}

Torque Hoist::motor_torque(int gear, int layer, Force hook_load, Acceleration acceleration) const {
  constexpr std::string_view here = "drawworks.Hoist.motor_torque";
  require(here, params::hook_load, hook_load);
  require(here, steady_or_up, acceleration);
  const Drive driven = drive(gear, layer);
  const Motors& motors = string_up_.machine.motors;
  const Mass moved = hook_load / standard_gravity + driven.turning_mass;
  const Force at_hook = hook_load + moved * acceleration;
  // Torque goes with the hook load as the rated torque goes with the pull in this gear.
  return Number(at_hook / driven.pull) * (motors.power / motors.base_speed);
}

}  // namespace ropewalk::drawworks
