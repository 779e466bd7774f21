/// A drawworks for the tests: two motors, two gears, a drum of four layers.
#pragma once

#include "ropewalk/drawworks/hoist.hpp"
#include "ropewalk/drawworks/stroke.hpp"
#include "ropewalk/drum/length.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::drawworks::examples {

constexpr Number number(double x) { return from_si<Number>(x); }
constexpr Acceleration per_s2(double x) { return x * meter_per_second_squared; }

/// Two motors of 750 hp, two gears, 10 lines, a drum of four layers.
inline StringUp string_up(double friction = 1.04) {
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

inline Limits limits(double speed = 1.0, double acceleration = 0.4) {
  return {.speed = speed * meter_per_second,
          .acceleration = per_s2(acceleration),
          .deceleration = per_s2(acceleration)};
}

inline constexpr Travel a_stand{0.0 * meter, 28.5 * meter};

}  // namespace ropewalk::drawworks::examples
