/// One stroke of the block with its load, up or down, from rest to rest.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "ropewalk/drawworks/hoist.hpp"

namespace ropewalk::drawworks {

/// How the driller, or the control system, lets the block move.
struct Limits {
  Speed speed;                ///< not exceeded
  Acceleration acceleration;  ///< not exceeded after the start
  Acceleration deceleration;  ///< held before the stop, positive, below g
  bool overload = false;      ///< true: the motors may give their overload
};

/// Throws InadmissibleError, naming the field, for limits that cannot be.
void check_limits(std::string_view where, const Limits& limits);

/// Where the block goes: `travel` up from, or down to, a height above its lowest position.
struct Travel {
  Length base_height;
  Length travel;
};

/// Part of a stroke in which one thing governs: constant acceleration, or constant power.
struct Piece {
  enum class Governed : std::uint8_t { by_acceleration, by_power };
  Governed governed;
  int layer;
  Time start;
  Time duration;
  Length begin;   ///< travel done when it begins
  Length length;  ///< travel in it
  Speed first;    ///< speed as it begins
  Speed last;     ///< speed as it ends
  /// Power of the motors (hoisting) or at the drum (lowering) as it begins and ends; negative where
  /// brakes take it.
  Power first_power;
  Power last_power;
  Speed terminal{};  ///< by power: speed at which it would only just hold the load, P/W
  Time tau{};        ///< by power: m P/W²
};

/// A stroke. Energies are counted where motors and brakes work; they balance:
///
///   driven − braked = lifted + lost
struct Stroke {
  bool possible = false;
  std::string reason{};  ///< why it is not possible, with numbers
  int gear = 0;          ///< hoisting, from 1; 0 lowering
  Time time{};
  Speed peak_speed{};
  Power peak_power{};      ///< largest that the motors give
  Power peak_braking{};    ///< largest that brakes take
  Time time_overloaded{};  ///< in which motors give more than their rated torque or power
  Energy driven{};         ///< given by the motors
  Energy braked{};         ///< taken by brakes, or by motors that feed back
  Energy lifted{};         ///< load times travel, negative lowering
  Energy lost{};           ///< friction of gear, drum and reeving
  std::vector<Piece> pieces{};
};

/// A load hoisted in one gear, as fast as limits and motors let it.
///
/// From rest the block speeds up with the least of what the limit, the torque of the motors and the
/// fast line allow; above v_1 = P/(W + m a) the motors give their full power P at the hook:
///
///   m v dv/dt = P − W v
///
/// so that, with w = v W/P and τ = m P/W², the time is τ [ln((1−w_0)/(1−w_1)) − (w_1 − w_0)] and
/// the travel τ (P/W) [ln((1−w_0)/(1−w_1)) − (w_1 − w_0) − (w_1² − w_0²)/2]. It stops with the
/// deceleration asked for. m is the load and all that turns; it and the torque change from layer to
/// layer, where the hook keeps its speed and what the drum gives up then is counted as braked.
///
/// Motors are overloaded while they give more than their rated power, or at any speed more than
/// their rated torque; F(v) their force and P_r their rated power, both as seen at the hook,
///
///   F > P_r/v_base  or  F v > P_r
///
/// in the stroke added up and held against Motors::overload_time. It is the time of one stroke: how
/// soon the motors may do it again, their maker says.
///
/// A load that the gear cannot hoist on every layer of the stroke, or only with an overload that
/// lasts too long, is told in `reason`. Throws InadmissibleError for what cannot be, and if the
/// drum does not hold the rope. Source: kinematics; constant power as in R. J. Stephenson, Constant
/// power equations of motion, Am. J. Phys. 50 (1982), with a constant load besides.
[[nodiscard]] Stroke hoist(const Hoist& on, Force hook_load, const Travel& travel,
                           const Limits& limits, int gear);

/// The same in the gear that takes least time; the first of the gears that take the same.
[[nodiscard]] Stroke hoist(const Hoist& on, Force hook_load, const Travel& travel,
                           const Limits& limits);

/// A load lowered on the brake, motors disengaged: limits govern, the drum turns alone. It speeds
/// up no faster than it can turn the drum with the brake off,
///
///   a = η W/(η m + m_d)
///
/// η  efficiency of reeving and drum going down     m    load and sheaves
/// m_d  drum, as a mass at the hook                 W    hook load
///
/// A load that would pull the fast line beyond its limit while it slows down is told in `reason`;
/// picking it up is a stroke of its own. Throws InadmissibleError as hoist. Source: statics and
/// kinematics.
[[nodiscard]] Stroke lower(const Hoist& on, Force hook_load, const Travel& travel,
                           const Limits& limits);

/// Points of a stroke for a curve, the same number in every piece.
struct Point {
  Time time;
  Length travel;
  Speed speed;
  Power power;  ///< of the motors, or at the drum lowering; negative: braking
  int layer;
};
[[nodiscard]] std::vector<Point> curve(const Stroke& stroke, int points_per_piece);

}  // namespace ropewalk::drawworks
