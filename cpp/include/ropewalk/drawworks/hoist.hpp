/// The drawworks with its drum and the line strung up: what each gear gives at the hook.
#pragma once

#include <optional>
#include <vector>

#include "ropewalk/drum/drum.hpp"
#include "ropewalk/reeving/arrangement.hpp"
#include "ropewalk/units/quantities.hpp"

namespace ropewalk::drawworks {

/// Motors on one input shaft, all alike: constant torque up to the base speed, constant power from
/// there to the top speed (see MotorTorque).
struct Motors {
  int count = 1;
  Power power;                 ///< rated, of one motor at its shaft
  AngularVelocity base_speed;  ///< at which it reaches its rated power
  AngularVelocity top_speed;
  MomentOfInertia inertia{};            ///< of one rotor with what turns with it
  Number overload{1.0};                 ///< torque and power for a while, over the rated ones
  std::optional<Time> overload_time{};  ///< how long that while is in one stroke; no limit if none
};

/// One speed of the transmission between motors and drum.
struct Gear {
  Number ratio;               ///< motor speed over drum speed
  Number efficiency;          ///< power at the drum shaft over power of the motors
  MomentOfInertia inertia{};  ///< of what turns in this gear besides motors and drum, at the drum
};

/// The drawworks without the rope.
struct Machine {
  Motors motors;
  std::vector<Gear> gears;
  Number drum_efficiency;          ///< fast-line power over power of the drum shaft
  MomentOfInertia drum_inertia{};  ///< of drum, shaft, rims and all that turns with it
};

/// A drawworks as it is strung up.
struct StringUp {
  Machine machine;
  drum::Drum drum;
  reeving::Arrangement reeving;
  Number wraps_at_lowest;             ///< laps on the drum with the block lowest
  std::optional<Force> line_limit{};  ///< largest tension allowed in the fast line
  Mass sheave_mass{};                 ///< of the turning sheaves, at the hook
};

/// One gear on one layer of the drum, seen from the hook while hoisting.
struct Drive {
  Force pull;         ///< hook load the motors hoist up to the base speed
  Power power;        ///< at the hook, from base to top speed
  Speed base_speed;   ///< of the block with the motors at their base speed
  Speed top_speed;    ///< of the block with the motors at their top speed
  Force line_limit;   ///< hook load at the largest tension of the fast line; may be infinite
  Number efficiency;  ///< hook power over motor power
  /// Of all that turns, as a mass at the hook that the motors must accelerate besides the load:
  ///   m = E η_d (N/R)² (J_d + η_g i² n J_m) + sheave_mass
  Mass turning_mass;
  Mass sheave_mass;  ///< the part of it that the lines must accelerate

  /// Hook load that can be hoisted steadily at a speed; none above the top speed.
  [[nodiscard]] Force steady_pull(Speed speed) const noexcept;
  /// Highest speed at which a load can be hoisted steadily; zero if it cannot be.
  [[nodiscard]] Speed steady_speed(Force hook_load) const noexcept;
  /// Largest acceleration of the block with a load at a speed. Negative where the load cannot be
  /// hoisted steadily: it would slow down.
  [[nodiscard]] Acceleration acceleration(Force hook_load, Speed speed) const noexcept;
};

/// A drawworks that can be, with its drum and reeving.
///
/// The power of the motors passes gear, drum and reeving, each with its efficiency:
///
///   F_h = η n M(ω) i N / R,    ω = i N v / R,    η = η_g η_d E
///
/// F_h  hook load             n  motors              M(ω)  torque of a motor
/// i    gear ratio            N  lines               R     radius of the layer, rope center
/// E    efficiency of the reeving while hoisting     η_g, η_d  of gear and drum
///
/// Efficiencies are constant; weight and stretch of the rope are left out. Source: statics; the
/// chain of efficiencies as in a rig-sizing manual, ch. 12.
class Hoist {
 public:
  /// Throws InadmissibleError naming the field that cannot be.
  explicit Hoist(const StringUp& string_up);

  [[nodiscard]] const StringUp& string_up() const noexcept { return string_up_; }
  [[nodiscard]] int gears() const noexcept {
    return static_cast<int>(string_up_.machine.gears.size());
  }
  [[nodiscard]] int layers() const noexcept { return string_up_.drum.layers(); }

  /// Radius at which the fast line pulls in a layer.
  [[nodiscard]] Length layer_radius(int layer) const;
  /// Layer the fast line runs onto with the block at a height above its lowest position. Throws
  /// InadmissibleError if the drum does not hold the rope.
  [[nodiscard]] int layer_at(Length block_height) const;
  /// Fast-line tension over hook load while hoisting.
  [[nodiscard]] Number fast_line_factor() const noexcept { return hoisting_factor_; }
  /// The same while lowering.
  [[nodiscard]] Number lowering_factor() const noexcept { return lowering_factor_; }

  /// Gear (from 1) on a layer, with the motors at their rating or at their overload. Throws
  /// InadmissibleError if there is no such gear or layer.
  [[nodiscard]] Drive drive(int gear, int layer, bool overload = false) const;

  /// Torque that each motor must give for a load that moves up steadily or ever faster. Throws
  /// InadmissibleError as drive, and for an acceleration below zero.
  [[nodiscard]] Torque motor_torque(int gear, int layer, Force hook_load,
                                    Acceleration acceleration) const;

 private:
  StringUp string_up_;
  Number hoisting_factor_;
  Number lowering_factor_;
};

}  // namespace ropewalk::drawworks
