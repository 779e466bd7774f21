/// Lowering balance: at which speed the auxiliary brakes and a load are in balance.
#pragma once

#include <optional>
#include <vector>

#include "ropewalk/brake/auxiliary.hpp"

namespace ropewalk::brake {

/// What brakes a load that is lowered, all at the drum shaft. What is not there has torque 0.
struct LoweringBrakes {
  Torque eddy_peak;               ///< of the eddy-current brake
  AngularVelocity eddy_critical;  ///< speed of that peak, above 0
  Torque motor_torque;            ///< limits of regenerative braking
  Power motor_power;              ///< above 0
  Torque friction;                ///< held on linings at any speed, also at rest
};

/// How a load and its brakes go together.
enum class LoweringState {
  held,           ///< friction is enough: the load does not move
  held_by_motor,  ///< at rest only as long as the motors pull: no brake holds it
  stable,         ///< from rest it settles at a speed
  runaway,        ///< the brakes are stronger than the load at no speed
};

/// Torque of all brakes together at a speed.
[[nodiscard]] Torque lowering_torque(const LoweringBrakes& brakes,
                                     AngularVelocity rotation) noexcept;

/// A speed at which load and brakes are in balance. It is stable if the brakes are stronger than
/// the load above it and weaker below.
struct BalanceSpeed {
  AngularVelocity rotation;
  bool stable;
};

/// The speeds at which load and brakes are in balance.
struct LoweringBalance {
  LoweringState state;
  std::vector<BalanceSpeed> speeds;       ///< all of them, rising; stable and unstable by turns
  std::optional<AngularVelocity> stable;  ///< where the load settles from rest
  std::optional<AngularVelocity>
      unstable;         ///< the first: faster it gains speed, to the next stable
  Torque largest_load;  ///< that the brakes hold at some speed without running away
};

/// Balance of a load torque on its brakes. Exact: below the speed at which the motor meets its
/// power limit the balance is a quadratic in the speed, above it a cubic, and every root is found.
/// Throws InadmissibleError for what cannot be.
/// Source: equilibrium of the drum; torques as for EddyTorque and MotorBrakeTorque.
[[nodiscard]] LoweringBalance lowering_balance(const LoweringBrakes& brakes, Torque load_torque);

}  // namespace ropewalk::brake
