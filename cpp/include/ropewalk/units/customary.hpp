/// Customary and SI units as quantities: write `400.0 * kip`, read `force / kip`.
///
/// Every unit is defined once, from the exact definition named beside it, and asserted below.
/// The bare word "ton" is not defined on purpose: it has three meanings.
#pragma once

#include "ropewalk/units/angle.hpp"
#include "ropewalk/units/quantities.hpp"

namespace ropewalk {

// SI and decimal multiples (SI Brochure, 9th ed., 2019).
inline constexpr Length meter = from_si<Length>(1.0);
inline constexpr Length millimeter = from_si<Length>(1e-3);
inline constexpr Area square_millimeter = from_si<Area>(1e-6);
inline constexpr Volume cubic_meter = from_si<Volume>(1.0);
inline constexpr Mass kilogram = from_si<Mass>(1.0);
inline constexpr Mass tonne = from_si<Mass>(1000.0);
inline constexpr Time second = from_si<Time>(1.0);
inline constexpr Time minute = from_si<Time>(60.0);
inline constexpr Time hour = from_si<Time>(3600.0);
inline constexpr Speed meter_per_second = from_si<Speed>(1.0);
inline constexpr Acceleration meter_per_second_squared = from_si<Acceleration>(1.0);
inline constexpr Force newton = from_si<Force>(1.0);
inline constexpr Force kilonewton = from_si<Force>(1000.0);
inline constexpr Stress pascal = from_si<Stress>(1.0);
inline constexpr Stress megapascal = from_si<Stress>(1e6);
inline constexpr Energy joule = from_si<Energy>(1.0);
inline constexpr Energy megajoule = from_si<Energy>(1e6);
inline constexpr Power watt = from_si<Power>(1.0);
inline constexpr Power kilowatt = from_si<Power>(1000.0);
inline constexpr Torque newton_meter = from_si<Torque>(1.0);
inline constexpr MomentOfInertia kilogram_square_meter = from_si<MomentOfInertia>(1.0);
inline constexpr Density kilogram_per_cubic_meter = from_si<Density>(1.0);

/// Standard gravity, exact by definition (3rd CGPM, 1901).
inline constexpr Acceleration standard_gravity = from_si<Acceleration>(9.80665);

// Length, volume and mass: exact since the international yard and pound agreement of 1959
// (NIST SP 811, 2008, app. B). The survey foot is a different length and is not defined here.
inline constexpr Length inch = 0.0254 * meter;
inline constexpr Length foot = 12.0 * inch;
inline constexpr Length mile = 5280.0 * foot;
inline constexpr Area square_inch = inch * inch;
inline constexpr auto us_gallon = 231.0 * inch * inch * inch;
inline constexpr Mass pound = 0.45359237 * kilogram;

// Force: mass times standard gravity (NIST SP 811, app. B).
inline constexpr Force kilogram_force = from_si<Force>(9.80665);
inline constexpr Force tonne_force = 1000.0 * kilogram_force;
inline constexpr Force pound_force = from_si<Force>(4.4482216152605);
inline constexpr Force kip = 1000.0 * pound_force;
inline constexpr Force short_ton_force = 2000.0 * pound_force;
inline constexpr Force long_ton_force = 2240.0 * pound_force;

// Derived customary units.
inline constexpr Stress psi = pound_force / square_inch;
inline constexpr Stress ksi = 1000.0 * psi;
inline constexpr Energy foot_pound_force = foot * pound_force;
/// Work of a drilling line: short ton-force times statute mile.
inline constexpr Energy ton_mile = short_ton_force * mile;
inline constexpr Speed foot_per_minute = foot / minute;
/// Mechanical horsepower: 550 ft·lbf/s, exact by definition.
inline constexpr Power horsepower = 550.0 * foot_pound_force / second;
inline constexpr Torque foot_pound_torque = torque_on_arm(pound_force, foot);
inline constexpr AngularVelocity rpm = turn / minute;
inline constexpr MassPerLength pound_per_foot = pound / foot;
inline constexpr ForcePerLength pound_force_per_foot = pound_force / foot;
inline constexpr MassPerLength kilogram_per_meter = kilogram / meter;
/// Mud weight: avoirdupois pound per US gallon.
inline constexpr Density pound_per_gallon = pound / us_gallon;

namespace detail {
/// Equal to within two units in the last place: products of exact factors round differently.
constexpr bool same(double a, double b) noexcept {
  const double difference = a > b ? a - b : b - a;
  const double size = a > 0.0 ? a : -a;
  return difference <= 4.5e-16 * size;
}
}  // namespace detail

static_assert(detail::same(to_si(foot), 0.3048));
static_assert(detail::same(to_si(mile), 1609.344));
static_assert(detail::same(to_si(pound_force), 0.45359237 * 9.80665));
static_assert(detail::same(to_si(kip), 4448.2216152605));
static_assert(detail::same(to_si(short_ton_force), 8896.443230521));
static_assert(detail::same(to_si(long_ton_force), 9964.01641818352));
static_assert(detail::same(to_si(tonne_force), 9806.65));
static_assert(detail::same(to_si(psi), 4.4482216152605 / (0.0254 * 0.0254)));
static_assert(detail::same(to_si(ton_mile), 10560000.0 * 1.3558179483314004));
static_assert(detail::same(to_si(horsepower), 745.69987158227022));
static_assert(detail::same(to_si(rpm), 2.0 * pi / 60.0));
static_assert(detail::same(to_si(pound_per_foot), 0.45359237 / 0.3048));
static_assert(detail::same(to_si(pound_per_gallon), 0.45359237 / 3.785411784e-3));
static_assert(detail::same(to_si(pound_force_per_foot), 4.4482216152605 / 0.3048));

}  // namespace ropewalk
