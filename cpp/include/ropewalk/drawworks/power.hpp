/// Power, speed and torque from the motors to the hook, steady.
#pragma once

#include <algorithm>
#include <string_view>

#include "ropewalk/base/model.hpp"
#include "ropewalk/drawworks/parameters.hpp"
#include "ropewalk/reeving/line_tension.hpp"

namespace ropewalk::drawworks {

/// Power at the hook.
///
///   P_h = W v
///
/// W  hook_load    force, everything that hangs on the lines
/// v  block_speed  speed, of the traveling block
///
/// Source: Bourgoyne, Millheim, Chenevert & Young, Applied Drilling Engineering (SPE, 1986), ch. 1.
struct HookPower {
  static constexpr std::string_view name = "drawworks.hook_power";
  static constexpr std::tuple parameters{params::hook_load, argument::block_speed};

  static constexpr Power formula(Force hook_load, Speed block_speed) noexcept {
    return hook_load * block_speed;
  }
};
inline constexpr Model<HookPower> hook_power{};

/// Power that must go in to hoist a load steadily.
///
///   P = W v / η
///
/// η  total_efficiency  power at the hook over power that goes in: all stages multiplied, from
///                      where the input is counted
/// Other symbols and source as for HookPower.
struct HoistingPower {
  static constexpr std::string_view name = "drawworks.hoisting_power";
  static constexpr std::tuple parameters{params::hook_load, argument::block_speed,
                                         argument::total_efficiency};

  static constexpr Power formula(Force hook_load, Speed block_speed,
                                 Number total_efficiency) noexcept {
    return hook_load * block_speed / total_efficiency;
  }
};
inline constexpr Model<HoistingPower> hoisting_power{};

/// Speed at which a power hoists a load steadily.
///
///   v = η P / W
///
/// printed as v = 33,000 E P / W with ft/min, hp and lbf. The product W v is the same for every
/// load: on paper of load against speed the curve is a hyperbola.
///
/// P  input_power  power that goes in
/// Other symbols and source as for HoistingPower, turned round.
struct HoistingSpeed {
  static constexpr std::string_view name = "drawworks.hoisting_speed";
  static constexpr std::tuple parameters{argument::hook_load, argument::input_power,
                                         argument::total_efficiency};

  static constexpr Speed formula(Force hook_load, Power input_power,
                                 Number total_efficiency) noexcept {
    return total_efficiency * input_power / hook_load;
  }
};
inline constexpr Model<HoistingSpeed> hoisting_speed{};

/// Rotation of the drum.
///
///   ω = 2 N v / D
///
/// N  lines         number of lines strung
/// v  block_speed   speed, of the traveling block
/// D  lap_diameter  length, of the circle on which the center of the rope lies in its layer
///
/// Source: geometry; the drum takes N times the travel of the block.
struct DrumSpeed {
  static constexpr std::string_view name = "drawworks.drum_speed";
  static constexpr std::tuple parameters{argument::block_speed, params::lines,
                                         argument::lap_diameter};

  static constexpr AngularVelocity formula(Speed block_speed, Number lines,
                                           Length lap_diameter) noexcept {
    return rotation_of_rim(lines * block_speed, 0.5 * lap_diameter);
  }
};
inline constexpr Model<DrumSpeed> drum_speed{};

/// Torque of the fast line on the drum.
///
///   M = F D / 2
///
/// F  fast_line_tension  force, at the drum
/// D  lap_diameter       length, as for DrumSpeed
///
/// Source: statics.
struct DrumTorque {
  static constexpr std::string_view name = "drawworks.drum_torque";
  static constexpr std::tuple parameters{reeving::argument::fast_line_tension,
                                         argument::lap_diameter};

  static constexpr Torque formula(Force fast_line_tension, Length lap_diameter) noexcept {
    return torque_on_arm(fast_line_tension, 0.5 * lap_diameter);
  }
};
inline constexpr Model<DrumTorque> drum_torque{};

/// Torque of a motor that gives constant torque up to its base speed and constant power above.
///
///   M = P / ω_b    for ω ≤ ω_b
///   M = P / ω      for ω > ω_b
///
/// P    motor_power  rated power
/// ω_b  base_speed   rotation at which the rated power is reached
/// ω    motor_speed  rotation
///
/// The ideal of a direct-current motor with field weakening and of an induction motor on a
/// frequency converter, below its top speed. Source: common practice of electric drives, no source.
struct MotorTorque {
  static constexpr std::string_view name = "drawworks.motor_torque";
  static constexpr std::tuple parameters{argument::motor_power, argument::base_speed,
                                         argument::motor_speed};

  static constexpr Torque formula(Power motor_power, AngularVelocity base_speed,
                                  AngularVelocity motor_speed) noexcept {
    return motor_power / std::max(base_speed, motor_speed);
  }
};
inline constexpr Model<MotorTorque> motor_torque{};

/// Drawworks power usual for a depth of well.
///
///   P = 1 hp · D / 10 ft
///
/// D  depth  length, of the well
///
/// A rule of thumb that knows neither casing nor mud nor drag: for a first look only.
/// Range: wells of 3,000 to 40,000 ft (common practice, no source).
/// Source: UNSW petroleum engineering course notes, ch. 3.
struct PowerForDepth {
  static constexpr std::string_view name = "drawworks.power_for_depth";
  static constexpr std::tuple parameters{params::depth.valid_in(
      between(914.4 * meter, 12'192.0 * meter, "3000 to 40 000 ft, common practice, no source"))};

  static constexpr Power formula(Length depth) noexcept {
    return horsepower * (depth / (10.0 * foot));
  }
};
inline constexpr Model<PowerForDepth> power_for_depth{};

}  // namespace ropewalk::drawworks
