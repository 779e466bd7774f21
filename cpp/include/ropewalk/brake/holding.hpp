/// Holding factor: how much stronger than its load a brake is, and how much is asked for.
#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/brake/parameters.hpp"

namespace ropewalk::brake {

/// Static torque of a brake over the torque of its load.
///
///   k = T_b / T_L
///
/// T_b  brake_torque  torque, of the brakes that are asked
/// T_L  load_torque   torque, of the load at rest; below 1 the brake does not hold it
///
/// Source: definition, as in the rules of cpp/data/brake_holding_factors.csv.
struct HoldingFactor {
  static constexpr std::string_view name = "brake.holding_factor";
  static constexpr std::tuple parameters{
      argument::brake_torque, Parameter<Torque>{"load_torque", argument::positive_torque_range}};

  static constexpr Number formula(Torque brake_torque, Torque load_torque) noexcept {
    return brake_torque / load_torque;
  }
};
inline constexpr Model<HoldingFactor> holding_factor{};

/// Torques that rules divide a brake's torque by, all at the place of the brake: that of the load
/// at rest, that of hoisting it, friction of the sheaves included, and the rated one of the motors.
inline constexpr std::array<std::string_view, 3> factor_bases{"load torque", "hoisting torque",
                                                              "motor torque"};

/// One row of cpp/data/brake_holding_factors.csv: a factor that is asked for.
struct RequiredFactor {
  std::string_view key;  ///< "OSHA 1910.179 control braking"
  std::string_view standard;
  std::string_view edition;
  Number value;
  std::string_view base;       ///< what the brake's torque is divided by, see below
  std::string_view condition;  ///< which brake, against what
  Provenance provenance;
};

/// Every factor there is.
[[nodiscard]] std::vector<RequiredFactor> required_factors();

/// The factor of a key. None of them is a rule for drawworks where the rig stands; those, and the
/// maker's manual, come first. Throws LookupError offering the keys.
[[nodiscard]] RequiredFactor required_factor(std::string_view key);

}  // namespace ropewalk::brake
