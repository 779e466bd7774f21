/// What links the hook with motors and brakes while the rope runs in one layer; plain SI numbers.
#pragma once

#include <limits>
#include <vector>

#include "ropewalk/drawworks/hoist.hpp"
#include "ropewalk/drawworks/stroke.hpp"

namespace ropewalk::drawworks {

/// Part of a stroke in one layer; `end` in travel done, m.
struct LayerSpan {
  int layer;
  double end;
};

[[nodiscard]] std::vector<LayerSpan> layers_upward(const Hoist& on, const Travel& travel);
[[nodiscard]] std::vector<LayerSpan> layers_downward(const Hoist& on, const Travel& travel);

/// Energies of a piece, J.
struct PieceEnergy {
  double drive;   ///< of the motors, or of the drum lowering; negative: braked
  double lifted;  ///< load times travel
  double lost;    ///< friction
};

struct LayerLinks {
  int layer;
  double end;              ///< travel done when the layer is, m
  double acceleration;     ///< below the knee, m/s²
  double knee;             ///< speed from which full power governs, m/s
  double cap;              ///< speed not exceeded, m/s
  double terminal;         ///< speed at which full power only just holds the load, m/s
  double tau;              ///< m P/W², s
  double motor_power;      ///< full, W
  double rated_power;      ///< of the motors, W; infinite lowering
  double rated_force;      ///< rated torque of the motors as a force at the hook, no losses, N
  double load;             ///< hook load, N; negative lowering
  double hook_mass;        ///< load and sheaves, kg
  double rope_efficiency;  ///< hoisting: hook power over drum power; lowering: the other way
  double gear_efficiency;  ///< 1 lowering
  double drum_mass;        ///< of what turns at the drum, at the hook, without losses, kg
  double motor_mass;       ///< of the rotors; 0 lowering
  double turning_kinetic;  ///< both: kinetic energy over half the speed squared

  /// Share of a piece of constant acceleration, in time, in which the motors are overloaded by a
  /// force of theirs while the speed changes from one to another.
  [[nodiscard]] double overloaded_share(double force, double first, double last) const noexcept;

  /// Over a length while speed squared changes by `gain`; `full_power` is the energy of the motors
  /// at full power, negative where they do not give it.
  [[nodiscard]] PieceEnergy energy(double length, double gain, double full_power) const noexcept;
};

[[nodiscard]] LayerLinks hoisting_links(const Hoist& on, int gear, const LayerSpan& span,
                                        Force hook_load, const Limits& limits, const Drive& drive);
[[nodiscard]] LayerLinks lowering_links(const Hoist& on, const LayerSpan& span, Force hook_load,
                                        const Limits& limits);

}  // namespace ropewalk::drawworks
