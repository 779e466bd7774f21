/// The one place that crosses the radian.
///
/// In the core an angle is a dimension of its own. That keeps torque apart from energy and angular
/// velocity apart from frequency, and it means that each of the relations below must say that
/// it turns an arc into an angle or back. They stand here and nowhere else.
#pragma once

#include "ropewalk/units/quantities.hpp"

namespace ropewalk {

inline constexpr Angle radian = from_si<Angle>(1.0);
inline constexpr double pi = 3.141592653589793238462643383279502884;
inline constexpr Angle turn = 2.0 * pi * radian;
inline constexpr Angle degree = (pi / 180.0) * radian;

/// Rim speed v = ω r.
[[nodiscard]] constexpr Speed rim_speed(AngularVelocity rotation, Length radius) noexcept {
  return rotation * radius / radian;
}

/// Rotation ω = v / r of a rim that runs at v.
[[nodiscard]] constexpr AngularVelocity rotation_of_rim(Speed rim, Length radius) noexcept {
  return rim * radian / radius;
}

/// Torque T = F r of a force on an arm.
[[nodiscard]] constexpr Torque torque_on_arm(Force force, Length arm) noexcept {
  return force * arm / radian;
}

/// Force F = T / r at the end of an arm.
[[nodiscard]] constexpr Force force_on_arm(Torque torque, Length arm) noexcept {
  return torque * radian / arm;
}

/// Mass m = J / r² that, moved with the rim, is as hard to accelerate as the turning part.
[[nodiscard]] constexpr Mass mass_on_rim(MomentOfInertia inertia, Length radius) noexcept {
  return inertia * radian * radian / (radius * radius);
}

/// Arc s = θ r.
[[nodiscard]] constexpr Length arc_length(Angle angle, Length radius) noexcept {
  return angle * radius / radian;
}

/// Number of turns per time of a rotation: f = ω / (2π rad).
[[nodiscard]] constexpr Frequency turns_per_time(AngularVelocity rotation) noexcept {
  return rotation / turn;
}

/// An angle as the plain number of radians, for sines and for formulas fitted in plain numbers.
[[nodiscard]] constexpr double in_radians(Angle angle) noexcept { return to_si(angle); }

}  // namespace ropewalk
