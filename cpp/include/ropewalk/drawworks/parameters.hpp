/// Arguments of the subject: what can be at all.
#pragma once

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::drawworks::argument {

// Motors and gears
inline constexpr Interval power_range = above_up_to(0.0 * watt, 1e9 * watt, params::guard);
inline constexpr Interval rotation_range =
    above_up_to(from_si<AngularVelocity>(0.0), 10'000.0 * rpm, params::guard);
inline constexpr Interval inertia_range =
    between(from_si<MomentOfInertia>(0.0), 1e7 * kilogram_square_meter, params::guard);
inline constexpr Parameter<Power> input_power{"input_power", power_range};
inline constexpr Parameter<Power> motor_power{"motor_power", power_range};
inline constexpr Parameter<AngularVelocity> base_speed{"base_speed", rotation_range};
inline constexpr Parameter<AngularVelocity> top_speed{"top_speed", rotation_range};
inline constexpr Parameter<AngularVelocity> motor_speed{
    "motor_speed", between(from_si<AngularVelocity>(0.0), 10'000.0 * rpm, params::guard)};
inline constexpr Parameter<Number> motor_count{"count", whole_between(1, 100, params::guard)};
/// What the motors may give for a while, over their rating.
inline constexpr Parameter<Number> overload{
    "overload", between(from_si<Number>(1.0), from_si<Number>(10.0), params::guard)};
inline constexpr Parameter<MomentOfInertia> inertia{"inertia", inertia_range};
/// Motor speed over drum speed.
inline constexpr Parameter<Number> gear_ratio{
    "gear_ratio", above_up_to(from_si<Number>(0.0), from_si<Number>(1'000.0), params::guard)};
/// Power that comes out over power that goes in.
inline constexpr Parameter<Number> efficiency{"efficiency", params::positive_ratio_range};
inline constexpr Parameter<Number> drum_efficiency{"drum_efficiency", params::positive_ratio_range};
/// Power at the hook over power of the motors.
inline constexpr Parameter<Number> total_efficiency{"total_efficiency",
                                                    params::positive_ratio_range};

// The hook
/// Nothing can be said of an empty hook: its speed would have no bound.
inline constexpr Parameter<Force> hook_load{"hook_load", params::positive_force_range};
inline constexpr Parameter<Speed> block_speed{
    "block_speed", between(0.0 * meter_per_second, 100.0 * meter_per_second, params::guard)};
inline constexpr Parameter<Length> travel{
    "travel", above_up_to(0.0 * meter, 20'000.0 * meter, params::guard)};
inline constexpr Parameter<Speed> speed_limit{
    "speed_limit", above_up_to(0.0 * meter_per_second, 100.0 * meter_per_second, params::guard)};
inline constexpr Interval acceleration_range =
    above_up_to(from_si<Acceleration>(0.0), 100.0 * meter_per_second_squared, params::guard);
inline constexpr Parameter<Acceleration> start_acceleration{"start_acceleration",
                                                            acceleration_range};
inline constexpr Parameter<Acceleration> stop_deceleration{"stop_deceleration", acceleration_range};

// The drum
/// Of the circle on which the center of the rope lies: twice the radius of its layer.
inline constexpr Parameter<Length> lap_diameter{
    "lap_diameter", above_up_to(0.0 * meter, 20.0 * meter, params::guard)};

}  // namespace ropewalk::drawworks::argument
