/// Formulas of a mass on a spring with a viscous damper, for the hook spring and its snubber.
///
///   m x¨ + c x˙ + k x = 0,   ω_n = √(k/m),   ζ = c / (2 √(k m))
///
/// Source: any text on vibration, e.g. S. S. Rao, Mechanical Vibrations, ch. 2.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"
#include "ropewalk/dynamics/stiffness.hpp"

namespace ropewalk::suspension {

namespace argument {
/// All that moves on the spring: hook, links, elevator, and the stand in it.
inline constexpr Parameter<Force> sprung_weight{"sprung_weight", params::positive_force_range};
inline constexpr Parameter<ForcePerLength> spring_rate{
    "spring_rate",
    above_up_to(from_si<ForcePerLength>(0.0), from_si<ForcePerLength>(1e10), params::guard)};
inline constexpr Interval damping_range =
    between(from_si<Damping>(0.0), from_si<Damping>(1e10), params::guard);
inline constexpr Parameter<Damping> damping{"damping", damping_range};
inline constexpr Parameter<Number> damping_ratio{
    "damping_ratio", between(from_si<Number>(0.0), from_si<Number>(1e6), params::guard)};
inline constexpr Parameter<Speed> impulse_speed{
    "impulse_speed", between(from_si<Speed>(-50.0), from_si<Speed>(50.0), params::guard)};
}  // namespace argument

/// Damping ratio of a damper on a sprung weight: 1 is critical.
///
///   ζ = c / (2 √(k W/g))
///
/// c  damping      N·s/m       k  spring_rate  force per length       W  sprung_weight  force
///
/// Source: see the head of this file.
struct DampingRatio {
  static constexpr std::string_view name = "suspension.damping_ratio";
  static constexpr std::tuple parameters{argument::damping, argument::spring_rate,
                                         argument::sprung_weight};

  static Number formula(Damping damping, ForcePerLength spring_rate, Force sprung_weight) noexcept {
    const double mass = to_si(sprung_weight) / to_si(standard_gravity);
    return from_si<Number>(to_si(damping) / (2.0 * std::sqrt(to_si(spring_rate) * mass)));
  }
};
inline constexpr Model<DampingRatio> damping_ratio{};

/// Frequency of the undamped bounce of a sprung weight.
///
///   f = (1/2π) √(k g / W)
///
/// Symbols and source as for DampingRatio.
struct BounceFrequency {
  static constexpr std::string_view name = "suspension.bounce_frequency";
  static constexpr std::tuple parameters{argument::spring_rate, argument::sprung_weight};

  static Frequency formula(ForcePerLength spring_rate, Force sprung_weight) noexcept {
    return dynamics::NaturalFrequency::formula(sprung_weight, spring_rate);
  }
};
inline constexpr Model<BounceFrequency> bounce_frequency{};

/// How far a mass let go off its rest swings beyond it, over how far it was off: the overshoot.
///
///   e^(−π ζ / √(1 − ζ²)),   0 for ζ ≥ 1
///
/// ζ  damping_ratio  number
///
/// Source: see the head of this file; in control theory the overshoot of a step.
struct Overshoot {
  static constexpr std::string_view name = "suspension.overshoot";
  static constexpr std::tuple parameters{argument::damping_ratio};

  static Number formula(Number ratio) noexcept {
    const double zeta = to_si(ratio);
    if (zeta >= 1.0) return from_si<Number>(0.0);
    return from_si<Number>(std::exp(-pi * zeta / std::sqrt((1.0 - zeta) * (1.0 + zeta))));
  }
};
inline constexpr Model<Overshoot> overshoot{};

}  // namespace ropewalk::suspension
