/// Over-travel: how far from crown and floor the block must be stopped.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"

namespace ropewalk::overtravel {

namespace argument {
/// Speed of the block, the way it moves.
inline constexpr Parameter<Speed> travel_speed{
    "travel_speed", between(0.0 * meter_per_second, 100.0 * meter_per_second, params::guard)};
/// From the set point to the first grip of the brake: sensing, logic, valves, clutch, build-up.
inline constexpr Parameter<Time> reaction_time{
    "reaction_time", between(0.0 * second, 100.0 * second, params::guard)};
/// Of the block in that time: a drive that still pulls, a load that nothing holds.
inline constexpr Parameter<Acceleration> drive_acceleration{
    "drive_acceleration",
    between(0.0 * meter_per_second_squared, 100.0 * meter_per_second_squared, params::guard)};
inline constexpr Parameter<Acceleration> deceleration{
    "deceleration",
    above_up_to(0.0 * meter_per_second_squared, 1'000.0 * meter_per_second_squared, params::guard)};
inline constexpr Parameter<Length> stopping_room{
    "stopping_room", between(0.0 * meter, 200.0 * meter, params::guard)};
inline constexpr Parameter<Length> line_slipped{
    "line_slipped", between(0.0 * meter, 20'000.0 * meter, params::guard)};
inline constexpr Parameter<Length> line_cut{"line_cut",
                                            between(0.0 * meter, 20'000.0 * meter, params::guard)};
}  // namespace argument

/// Way of the block from the set point of a device to standstill.
///
///   s = v t + a_d t² / 2 + (v + a_d t)² / (2 a)
///
/// v    travel_speed        speed at the set point
/// t    reaction_time       time until the brake grips
/// a_d  drive_acceleration  acceleration, of the block in that time
/// a    deceleration        acceleration, the brake on
///
/// Range: line that does not stretch; a brake that comes on all at once. Source: Newton's laws of
/// uniform motion.
struct StoppingDistance {
  static constexpr std::string_view name = "overtravel.stopping_distance";
  static constexpr std::tuple parameters{argument::travel_speed, argument::reaction_time,
                                         argument::drive_acceleration, argument::deceleration};

  static constexpr Length formula(Speed travel_speed, Time reaction_time,
                                  Acceleration drive_acceleration,
                                  Acceleration deceleration) noexcept {
    const Speed at_grip = travel_speed + drive_acceleration * reaction_time;
    return 0.5 * (travel_speed + at_grip) * reaction_time +
           at_grip * at_grip / (2.0 * deceleration);
  }
};
inline constexpr Model<StoppingDistance> stopping_distance{};

/// Largest speed from which a block stops within a room.
///
///   v = −(a + a_d) t + √(a² t² + a a_d t² + 2 a s)
///
/// s  stopping_room  length
/// Other symbols, range and source as for StoppingDistance, solved for v; 0 where the drive alone
/// takes the block through the room.
struct AllowedSpeed {
  static constexpr std::string_view name = "overtravel.allowed_speed";
  static constexpr std::tuple parameters{argument::stopping_room, argument::reaction_time,
                                         argument::drive_acceleration, argument::deceleration};

  static Speed formula(Length stopping_room, Time reaction_time, Acceleration drive_acceleration,
                       Acceleration deceleration) noexcept {
    const double a = to_si(deceleration);
    const double d = to_si(drive_acceleration);
    const double t = to_si(reaction_time);
    const double s = to_si(stopping_room);
    const double b = (a + d) * t;
    const double root = std::sqrt(a * (a + d) * t * t + 2.0 * a * s);
    // (root² − b²)/(root + b) keeps its digits for a small room.
    const double over = 2.0 * a * s - d * (a + d) * t * t;
    return from_si<Speed>(over > 0.0 ? over / (root + b) : 0.0);
  }
};
inline constexpr Model<AllowedSpeed> allowed_speed{};

/// How much higher the block stands at a given wrap of the drum once line was slipped and cut.
///
///   Δh = (l_cut − l_slip) / N
///
/// l_slip  line_slipped  length, let through from the reel since the device was set
/// l_cut   line_cut      length, cut off at the drum since
/// N       lines         number
///
/// Positive: a device that trips at a wrap counted on the drum trips too late below the crown,
/// and too early above the floor. The layer does not matter. Source: the rope on the drum at a
/// height of the block has changed by l_slip − l_cut; the block rises 1/N of what is wound up.
struct TripHeightShift {
  static constexpr std::string_view name = "overtravel.trip_height_shift";
  static constexpr std::tuple parameters{argument::line_slipped, argument::line_cut, params::lines};

  static constexpr Length formula(Length line_slipped, Length line_cut, Number lines) noexcept {
    return (line_cut - line_slipped) / lines;
  }
};
inline constexpr Model<TripHeightShift> trip_height_shift{};

}  // namespace ropewalk::overtravel
