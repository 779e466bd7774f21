/// Time of one stroke of the block from rest to rest under limits of speed and acceleration.
#pragma once

#include <algorithm>
#include <cmath>
#include <string_view>

#include "ropewalk/base/model.hpp"
#include "ropewalk/drawworks/parameters.hpp"

namespace ropewalk::drawworks {

/// Highest speed of a stroke from rest to rest.
///
///   v_p = min(v, √(2 L / (1/a + 1/d)))
///
/// L  travel              length of the stroke
/// v  speed_limit         speed that is not exceeded
/// a  start_acceleration
/// d  stop_deceleration  positive
///
/// Short strokes never reach the limit: speed against time is a triangle. Source: kinematics.
struct StandPeakSpeed {
  static constexpr std::string_view name = "drawworks.stand_peak_speed";
  static constexpr std::tuple parameters{argument::travel, argument::speed_limit,
                                         argument::start_acceleration, argument::stop_deceleration};

  static Speed formula(Length travel, Speed speed_limit, Acceleration start_acceleration,
                       Acceleration stop_deceleration) noexcept {
    const auto per_speed = 1.0 / start_acceleration + 1.0 / stop_deceleration;
    const Speed reached = from_si<Speed>(std::sqrt(to_si(2.0 * travel / per_speed)));
    return std::min(speed_limit, reached);
  }
};
inline constexpr Model<StandPeakSpeed> stand_peak_speed{};

/// Time of a stroke from rest to rest.
///
///   t = L / v_p + (v_p / 2)(1/a + 1/d)
///
/// with v_p and the other symbols of StandPeakSpeed. Where v_p is the limit, speed against time is
/// a trapezoid; where it is less, a triangle, and the formula becomes t = v_p (1/a + 1/d). At the
/// border L = (v²/2)(1/a + 1/d) both give the same time. Source: kinematics.
struct StandTime {
  static constexpr std::string_view name = "drawworks.stand_time";
  static constexpr std::tuple parameters = StandPeakSpeed::parameters;

  static Time formula(Length travel, Speed speed_limit, Acceleration start_acceleration,
                      Acceleration stop_deceleration) noexcept {
    const Speed peak =
        StandPeakSpeed::formula(travel, speed_limit, start_acceleration, stop_deceleration);
    return travel / peak + 0.5 * peak * (1.0 / start_acceleration + 1.0 / stop_deceleration);
  }
};
inline constexpr Model<StandTime> stand_time{};

}  // namespace ropewalk::drawworks
