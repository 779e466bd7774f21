/// Arguments of the subject: what can be at all.
#pragma once

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::dynamics {

/// Force per stretch. No unit tells it from a weight per length; the name does.
using Stiffness = ForcePerLength;

namespace argument {

inline constexpr Interval stiffness_range =
    above_up_to(from_si<Stiffness>(0.0), from_si<Stiffness>(1e12), params::guard);
inline constexpr Interval modulus_range =
    above_up_to(from_si<Stress>(0.0), from_si<Stress>(1e12), params::guard);
inline constexpr Interval area_range =
    above_up_to(from_si<Area>(0.0), from_si<Area>(1.0), params::guard);

// The line
/// Modulus of the rope on its metallic area.
inline constexpr Parameter<Stress> rope_modulus{"rope_modulus", modulus_range};
inline constexpr Parameter<Area> metallic_area{"metallic_area", area_range};
/// Length of one line between the blocks.
inline constexpr Parameter<Length> line_height{
    "line_height", above_up_to(0.0 * meter, 1'000.0 * meter, params::guard)};
inline constexpr Interval end_range = between(0.0 * meter, 1'000.0 * meter, params::guard);
/// From the crown to the drum.
inline constexpr Parameter<Length> fast_line_length{"fast_line_length", end_range};
/// From the crown to the anchor.
inline constexpr Parameter<Length> dead_line_length{"dead_line_length", end_range};
inline constexpr Parameter<Stiffness> stiffness{"stiffness", stiffness_range};
inline constexpr Parameter<Stiffness> other_stiffness{"other_stiffness", stiffness_range};
/// As params::hook_load, but a load there must be.
inline constexpr Parameter<Force> hook_load{"hook_load", params::positive_force_range};
inline constexpr Parameter<Length> static_stretch{
    "static_stretch", above_up_to(0.0 * meter, 1'000.0 * meter, params::guard)};

// The string, one pipe of constant section
inline constexpr Parameter<Stress> string_modulus{"string_modulus", modulus_range};
inline constexpr Parameter<Area> string_area{"string_area", area_range};
inline constexpr Parameter<Length> string_length{"string_length", params::length_range};
/// Density of the steel of the string, tool joints and fluid that moves with it spread over it.
inline constexpr Parameter<Density> string_density{
    "string_density", above_up_to(0.0 * kilogram_per_cubic_meter,
                                  100'000.0 * kilogram_per_cubic_meter, params::guard)};
inline constexpr Parameter<Number> mode{"mode", whole_between(1, 100, params::guard)};

// Motion
inline constexpr Interval speed_range =
    between(0.0 * meter_per_second, 100.0 * meter_per_second, params::guard);
/// How fast the slack is taken up.
inline constexpr Parameter<Speed> pickup_speed{"pickup_speed", speed_range};
/// By how much the speed of the upper end changes: from lowering to rest, from rest to hoisting, or
/// from hoisting to rest.
inline constexpr Parameter<Speed> speed_change{"speed_change", speed_range};
/// Acceleration of the upper end of the line, upward: hoisting is started or lowering stopped.
/// Counted at the block, as 1/N of that of the fast line.
inline constexpr Parameter<Acceleration> upward_acceleration{
    "upward_acceleration",
    between(0.0 * meter_per_second_squared, 100.0 * meter_per_second_squared, params::guard)};
/// Acceleration of the upper end, downward, of hoisting that is stopped or lowering that is
/// started.
inline constexpr Parameter<Acceleration> downward_acceleration{
    "downward_acceleration",
    above_up_to(0.0 * meter_per_second_squared, 100.0 * meter_per_second_squared, params::guard)};
inline constexpr Parameter<Time> ramp_time{"ramp_time",
                                           between(0.0 * second, 3'600.0 * second, params::guard)};
inline constexpr Parameter<Frequency> natural_frequency{
    "natural_frequency",
    above_up_to(from_si<Frequency>(0.0), from_si<Frequency>(10'000.0), params::guard)};
inline constexpr Parameter<Length> drop_height{"drop_height",
                                               between(0.0 * meter, 100.0 * meter, params::guard)};

}  // namespace argument
}  // namespace ropewalk::dynamics
