/// What cannot be in a stop, for stop.cpp and elastic_stop.cpp.
#pragma once

#include <limits>

#include "ropewalk/base/require.hpp"
#include "ropewalk/brake/stop.hpp"

namespace ropewalk::brake {

inline constexpr double never = std::numeric_limits<double>::infinity();

inline void check_stop(const Stop& stop) {
  constexpr std::string_view where = "brake.Stop";
  constexpr Interval delay_range = between(0.0 * second, 100.0 * second, params::guard);
  require(where, argument::travel_speed, stop.speed);
  require(where, argument::positive_hook_load, stop.hook_load);
  require(where, Parameter<Force>{"drum_load", params::positive_force_range}, stop.drum_load);
  require(where, Parameter<Force>{"delay_force", params::force_range}, stop.delay_force);
  require(where, Parameter<Force>{"brake_force", params::force_range}, stop.brake_force);
  require(where, Parameter<Time>{"delay", delay_range}, stop.delay);
  require(where, Parameter<Time>{"build_up", delay_range}, stop.build_up);
  require(where,
          Parameter<Mass>{"rotating_mass", between(0.0 * kilogram, 1e10 * kilogram, params::guard)},
          stop.rotating_mass);
}

}  // namespace ropewalk::brake
