/// Peak of the load on the line over the load at rest: start, stop, pick-up, drop.
///
/// One rigid mass on one spring without damping, which is on the safe side for a first peak. The
/// upper end of the line is driven; what it does to the drive is left out. A force that would be
/// less than nothing means that the line goes slack, which these formulas do not follow.
///
/// Nothing here says what a hoist may be loaded with: rated loads of blocks, line and mast are
/// those of the makers' manuals and local rules.
#pragma once

#include <algorithm>
#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/dynamics/parameters.hpp"

namespace ropewalk::dynamics {

namespace detail {

[[nodiscard]] constexpr double in_g(Acceleration acceleration) noexcept {
  return to_si(Number(acceleration / standard_gravity));
}

/// π f t: half the phase through which the load swings in a time.
[[nodiscard]] constexpr double half_phase(Frequency frequency, Time time) noexcept {
  return pi * to_si(frequency) * to_si(time);
}

}  // namespace detail

/// Peak of the load when the upper end of the line is accelerated upward from one moment to the
/// next, and stays so for half a swing or longer.
///
///   F/W = 1 + 2 a/g
///
/// a  upward_acceleration  of hoisting started or lowering stopped, counted at the block
///
/// Twice what a slow change of the acceleration adds. Source: step response of one mass on a
/// spring, e.g. Harris' Shock and Vibration Handbook, 5th ed. (2002), ch. 8.
struct StepFactor {
  static constexpr std::string_view name = "dynamics.step_factor";
  static constexpr std::tuple parameters{argument::upward_acceleration};

  static constexpr Number formula(Acceleration upward_acceleration) noexcept {
    return from_si<Number>(1.0 + 2.0 * detail::in_g(upward_acceleration));
  }
};
inline constexpr Model<StepFactor> step_factor{};

/// Peak of the load when the acceleration of the upper end rises evenly to its full value and
/// stays.
///
///   F/W = 1 + (a/g) (1 + |sin(π f t_r)| / (π f t_r))
///
/// a    upward_acceleration  its full value, counted at the block
/// t_r  ramp_time            time in which it is reached; 0 is the step
/// f    natural_frequency    of the load on the line
///
/// A ramp of one whole swing, or any whole number of them, leaves no swing at all. Source: response
/// to a constant force with finite rise time, J. M. Biggs, Introduction to Structural Dynamics
/// (1964), ch. 2; Harris' Shock and Vibration Handbook, 5th ed. (2002), ch. 8.
struct RampFactor {
  static constexpr std::string_view name = "dynamics.ramp_factor";
  static constexpr std::tuple parameters{argument::upward_acceleration, argument::ramp_time,
                                         argument::natural_frequency};

  static Number formula(Acceleration upward_acceleration, Time ramp_time,
                        Frequency natural_frequency) noexcept {
    const double phase = detail::half_phase(natural_frequency, ramp_time);
    const double swing = phase > 0.0 ? std::abs(std::sin(phase)) / phase : 1.0;
    return from_si<Number>(1.0 + detail::in_g(upward_acceleration) * (1.0 + swing));
  }
};
inline constexpr Model<RampFactor> ramp_factor{};

/// Peak of the load when lowering is stopped, or hoisting started, at a constant acceleration that
/// ends with the change of speed.
///
///   t = Δv/a        F/W = 1 + 2 (a/g) sin(π f t)   while f t < 1/2
///                   F/W = 1 + 2 a/g                from there on
///
/// Δv  speed_change         of the block: from lowering to rest, from rest to hoisting
/// a   upward_acceleration  of the block while the speed changes
/// f   natural_frequency    of the load on the line
///
/// For a hard stop, a → ∞, it is PickupFactor at v = Δv. Source: rectangular pulse, Biggs (1964),
/// ch. 2; Harris (2002), ch. 8, as for RampFactor.
struct StopFactor {
  static constexpr std::string_view name = "dynamics.stop_factor";
  static constexpr std::tuple parameters{
      argument::speed_change,
      Parameter<Acceleration>{"upward_acceleration",
                              above_up_to(0.0 * meter_per_second_squared,
                                          100.0 * meter_per_second_squared, params::guard)},
      argument::natural_frequency};

  static Number formula(Speed speed_change, Acceleration upward_acceleration,
                        Frequency natural_frequency) noexcept {
    const Time time = speed_change / upward_acceleration;
    const double phase = std::min(detail::half_phase(natural_frequency, time), 0.5 * pi);
    return from_si<Number>(1.0 + 2.0 * detail::in_g(upward_acceleration) * std::sin(phase));
  }
};
inline constexpr Model<StopFactor> stop_factor{};

/// Least load of the line when hoisting is stopped, or lowering started, at a constant acceleration
/// that ends with the change of speed.
///
///   t = Δv/a        F/W = max(0, 1 − 2 (a/g) sin(π f t))   while f t < 1/2
///                   F/W = max(0, 1 − 2 a/g)                from there on
///
/// Δv  speed_change           of the block: from hoisting to rest, from rest to lowering
/// a   downward_acceleration  of the block while the speed changes
/// f   natural_frequency      of the load on the line
///
/// The swing of StopFactor the other way up, as long as the line pulls. At 0 it goes slack: the
/// load flies and falls back into the line, which is not followed. Up to g/2 no stop makes it
/// slack. Source: rectangular pulse, Biggs (1964), ch. 2; Harris (2002), ch. 8, as for StopFactor.
struct TroughFactor {
  static constexpr std::string_view name = "dynamics.trough_factor";
  static constexpr std::tuple parameters{argument::speed_change, argument::downward_acceleration,
                                         argument::natural_frequency};

  static Number formula(Speed speed_change, Acceleration downward_acceleration,
                        Frequency natural_frequency) noexcept {
    const double peak =
        to_si(StopFactor::formula(speed_change, downward_acceleration, natural_frequency));
    return from_si<Number>(std::max(0.0, 2.0 - peak));
  }
};
inline constexpr Model<TroughFactor> trough_factor{};

/// Largest speed of hoisting that may be stopped at once without the line going slack.
///
///   v = g/(2π f)
///
/// Nothing swings back harder than a hard stop, so that below this speed no stop makes the line
/// slack, however it is braked. Source: TroughFactor for a → ∞.
struct SlackSpeed {
  static constexpr std::string_view name = "dynamics.slack_speed";
  static constexpr std::tuple parameters{argument::natural_frequency};

  static Speed formula(Frequency natural_frequency) noexcept {
    return from_si<Speed>(to_si(standard_gravity) / (2.0 * pi * to_si(natural_frequency)));
  }
};
inline constexpr Model<SlackSpeed> slack_speed{};

/// Peak of the load when slack is taken up at a speed and a load at rest is picked up, or when
/// lowering at that speed is stopped at once.
///
///   F/W = 1 + v √(k m)/W = 1 + (v/g) √(k g/W)
///
/// v  pickup_speed  of the block against the load
/// k  stiffness     of the line
/// W  hook_load     picked up, a rigid mass m = W/g
///
/// From the moment the line carries W the load swings about it with the speed v. At v = 0 it is 1.
/// Source: derived; the dynamic coefficient of offshore pedestal cranes has the same form,
/// ψ = 1 + (V_R/g) √(C g/W) with the relative speed V_R of hook and load: DNV Standard for
/// Certification 2.22, Lifting Appliances; API Spec 2C (both from memory).
struct PickupFactor {
  static constexpr std::string_view name = "dynamics.pickup_factor";
  static constexpr std::tuple parameters{argument::pickup_speed, argument::stiffness,
                                         argument::hook_load};

  static Number formula(Speed pickup_speed, Stiffness stiffness, Force hook_load) noexcept {
    const double rate = std::sqrt(to_si(stiffness) / (to_si(standard_gravity) * to_si(hook_load)));
    return from_si<Number>(1.0 + to_si(pickup_speed) * rate);
  }
};
inline constexpr Model<PickupFactor> pickup_factor{};

/// Peak of the load when it falls freely into the line.
///
///   F/W = 1 + √(1 + 2 h/δ)
///
/// h  drop_height     length of the fall before the line is straight
/// δ  static_stretch  length, W/k
///
/// At h = 0 it is 2: a load put on suddenly counts twice. Source: energy of the fall, e.g. Shigley,
/// Mechanical Engineering Design, shock and impact; S. Timoshenko, Strength of Materials.
struct DropFactor {
  static constexpr std::string_view name = "dynamics.drop_factor";
  static constexpr std::tuple parameters{argument::drop_height, argument::static_stretch};

  static Number formula(Length drop_height, Length static_stretch) noexcept {
    return from_si<Number>(1.0 +
                           std::sqrt(1.0 + 2.0 * to_si(Number(drop_height / static_stretch))));
  }
};
inline constexpr Model<DropFactor> drop_factor{};

}  // namespace ropewalk::dynamics
