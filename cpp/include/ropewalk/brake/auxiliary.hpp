/// Auxiliary brakes: what holds the speed of a falling load without friction linings.
#pragma once

#include <algorithm>
#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/brake/parameters.hpp"

namespace ropewalk::brake {

namespace argument {
inline constexpr Parameter<Torque> peak_torque{"peak_torque", positive_torque_range};
inline constexpr Parameter<AngularVelocity> critical_speed{
    "critical_speed", above_up_to(0.0 * rpm, 10'000.0 * rpm, params::guard)};
inline constexpr Parameter<Torque> eddy_load{"load_torque", positive_torque_range};
inline constexpr Parameter<Torque> motor_torque_limit{"motor_torque_limit", torque_range};
inline constexpr Parameter<Power> motor_power_limit{
    "motor_power_limit", above_up_to(0.0 * watt, 1e9 * watt, params::guard)};
}  // namespace argument

/// Torque of an eddy-current brake at a speed, in the form of peak torque and critical speed.
///
///   T = 2 T_m / (ω/ω_c + ω_c/ω)
///
/// T_m  peak_torque     torque, at the critical speed, under the excitation that is on
/// ω_c  critical_speed  angular velocity of the drum shaft
/// ω    drum_rotation   angular velocity
///
/// It rises with speed below ω_c, falls above, has none at rest: it cannot hold a load.
/// T(ω_c x) = T(ω_c / x). Range: constant excitation, rotor not so hot that ω_c moves.
/// Source: J. H. Wouterse, Critical torque and speed of eddy current brake with widely separated
/// soft iron poles, IEE Proceedings B 138 (1991) 153; the form of M. Kloss (1908).
struct EddyTorque {
  static constexpr std::string_view name = "brake.eddy_torque";
  static constexpr std::tuple parameters{argument::peak_torque, argument::critical_speed,
                                         argument::drum_rotation};

  static constexpr Torque formula(Torque peak_torque, AngularVelocity critical_speed,
                                  AngularVelocity drum_rotation) noexcept {
    const double x = to_si(Number(drum_rotation / critical_speed));
    return peak_torque * (2.0 * x / (1.0 + x * x));
  }
};
inline constexpr Model<EddyTorque> eddy_torque{};

/// Speed at which a load settles on an eddy-current brake alone.
///
///   ω = ω_c (q − √(q² − 1)),   q = T_m / T_L
///
/// T_L  load_torque  torque, at most T_m: a heavier load runs away, see balance.hpp
/// Other symbols, range and source as for EddyTorque, solved for ω. Any faster and the brake is
/// stronger than the load, any slower and it is weaker.
struct EddyStableSpeed {
  static constexpr std::string_view name = "brake.eddy_stable_speed";
  static constexpr std::tuple parameters{argument::peak_torque, argument::critical_speed,
                                         argument::eddy_load};
  static constexpr std::string_view joint_rule =
      "peak_torque must be at least load_torque (else the load runs away)";

  static constexpr bool joint(Torque peak, AngularVelocity, Torque load) noexcept {
    return peak >= load;
  }
  static AngularVelocity formula(Torque peak_torque, AngularVelocity critical_speed,
                                 Torque load_torque) noexcept {
    const double q = to_si(Number(peak_torque / load_torque));
    // The same as q − √(q² − 1), which loses its digits for a light load.
    return critical_speed / (q + std::sqrt(q * q - 1.0));
  }
};
inline constexpr Model<EddyStableSpeed> eddy_stable_speed{};

/// Speed above which an eddy-current brake no longer catches a load.
///
///   ω = ω_c (q + √(q² − 1)),   q = T_m / T_L
///
/// Symbols, range and source as for EddyStableSpeed. Past it the torque falls below the load's and
/// the load runs away.
struct EddyUnstableSpeed {
  static constexpr std::string_view name = "brake.eddy_unstable_speed";
  static constexpr std::tuple parameters = EddyStableSpeed::parameters;
  static constexpr std::string_view joint_rule = EddyStableSpeed::joint_rule;

  static constexpr bool joint(Torque peak, AngularVelocity, Torque load) noexcept {
    return peak >= load;
  }
  static AngularVelocity formula(Torque peak_torque, AngularVelocity critical_speed,
                                 Torque load_torque) noexcept {
    const double q = to_si(Number(peak_torque / load_torque));
    return critical_speed * (q + std::sqrt(q * q - 1.0));
  }
};
inline constexpr Model<EddyUnstableSpeed> eddy_unstable_speed{};

/// Largest braking torque of a motor at a speed, all brought to the drum shaft.
///
///   T = min(T_max, P_max / ω)
///
/// T_max  motor_torque_limit  torque, of motor and drive
/// P_max  motor_power_limit   power the supply takes back or the resistors burn
/// ω      drum_rotation       angular velocity
///
/// At rest it holds only while drive and control do. Source: definition of the two limits.
struct MotorBrakeTorque {
  static constexpr std::string_view name = "brake.motor_brake_torque";
  static constexpr std::tuple parameters{argument::motor_torque_limit, argument::motor_power_limit,
                                         argument::drum_rotation};

  static constexpr Torque formula(Torque motor_torque_limit, Power motor_power_limit,
                                  AngularVelocity drum_rotation) noexcept {
    // Asked this way round, rest divides nothing.
    if (motor_torque_limit * drum_rotation <= motor_power_limit) return motor_torque_limit;
    return motor_power_limit / drum_rotation;
  }
};
inline constexpr Model<MotorBrakeTorque> motor_brake_torque{};

/// Heat, or power handed back, of a brake that turns under a torque.
///
///   P = T ω
///
/// T  brake_torque   torque
/// ω  drum_rotation  angular velocity
///
/// Source: definition of power.
struct BrakingPower {
  static constexpr std::string_view name = "brake.braking_power";
  static constexpr std::tuple parameters{argument::brake_torque, argument::drum_rotation};

  static constexpr Power formula(Torque brake_torque, AngularVelocity drum_rotation) noexcept {
    return brake_torque * drum_rotation;
  }
};
inline constexpr Model<BrakingPower> braking_power{};

}  // namespace ropewalk::brake
