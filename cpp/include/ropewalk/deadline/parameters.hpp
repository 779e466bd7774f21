/// Arguments of the subject: what can be at all.
#pragma once

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::deadline::argument {

// The weight indicator
/// Dead-line tension times the number of lines, as the indicator shows it.
inline constexpr Parameter<Force> indicated_load{"indicated_load", params::force_range};
/// 1 where the dead-line sheave gives way with the line, so that its friction stands between line 1
/// and the sensor; 0 where it is fixed.
inline constexpr Parameter<Number> turning_dead_line_sheaves{
    "turning_dead_line_sheaves", whole_between(0, 1, params::definition)};
/// What the indicator shows while the same load is hoisted slowly.
inline constexpr Parameter<Force> reading_hoisting{"reading_hoisting",
                                                   params::positive_force_range};
/// What the indicator shows while the same load is lowered slowly.
inline constexpr Parameter<Force> reading_lowering{"reading_lowering",
                                                   params::positive_force_range};
/// Standard uncertainty of one reading over the reading.
inline constexpr Parameter<Number> reading_uncertainty{"reading_uncertainty", params::ratio_range};
/// Probability with which an interval covers the value, before it is taken.
inline constexpr Parameter<Number> confidence{
    "confidence", above_up_to(from_si<Number>(0.0), from_si<Number>(0.9999), params::guard)};

// The anchor
inline constexpr Parameter<Number> anchor_friction{"anchor_friction", params::positive_ratio_range};
inline constexpr Parameter<Number> anchor_wraps{
    "anchor_wraps", between(from_si<Number>(0.0), from_si<Number>(100.0), params::guard)};
inline constexpr Parameter<Number> clamps{"clamps", whole_between(1, 100, params::guard)};
/// Pull that one clamp holds without help.
inline constexpr Parameter<Force> clamp_holding{"clamp_holding", params::positive_force_range};

// The sensor
inline constexpr Interval sensor_length = above_up_to(0.0 * meter, 10.0 * meter, params::guard);
inline constexpr Parameter<Force> sensor_force{"sensor_force", params::force_range};
inline constexpr Parameter<Length> deflection{"deflection", sensor_length};
inline constexpr Parameter<Length> half_span{"half_span", sensor_length};
inline constexpr Parameter<Length> anchor_radius{"anchor_radius", sensor_length};
inline constexpr Parameter<Length> cell_arm{"cell_arm", sensor_length};
inline constexpr Parameter<Area> cell_area{
    "cell_area", above_up_to(0.0 * square_millimeter, from_si<Area>(10.0), params::guard)};
inline constexpr Parameter<Stress> cell_pressure{
    "cell_pressure", between(0.0 * pascal, 1e9 * pascal, params::guard)};
/// How far the line turns on a sheave; 180° where both parts are parallel.
inline constexpr Parameter<Angle> wrap_angle{
    "wrap_angle", above_up_to(0.0 * radian, pi* radian, params::geometry)};

}  // namespace ropewalk::deadline::argument
