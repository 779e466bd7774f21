/// The dead-line anchor: wraps on its drum, and clamps that hold what the wraps leave.
///
/// The tension behind the wraps is that of Euler and Eytelwein (drum/wraps.hpp, ClampForce).
/// An anchor holds by its maker's manual; friction and what a clamp holds are not published for any
/// and must be given.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/deadline/parameters.hpp"
#include "ropewalk/drum/wraps.hpp"

namespace ropewalk::deadline {

/// Pull at which the line slips through the anchor.
///
///   T = n_c H e^(2 π μ n)
///
/// n_c  clamps           number of equal clamps, in one row behind the wraps
/// H    clamp_holding    force, that one clamp holds
/// μ    anchor_friction  number, between rope and anchor drum
/// n    anchor_wraps     number of laps on the anchor drum
///
/// Clamps share the load evenly, which they do only if tightened alike. Source: L. Euler (1769),
/// J. A. Eytelwein (1808), belt friction; the clamps by statics.
struct AnchorCapacity {
  static constexpr std::string_view name = "deadline.anchor_capacity";
  static constexpr std::tuple parameters{argument::clamps, argument::clamp_holding,
                                         argument::anchor_friction, argument::anchor_wraps};

  static Force formula(Number clamps, Force clamp_holding, Number anchor_friction,
                       Number anchor_wraps) noexcept {
    return clamps * clamp_holding * drum::HoldingRatio::formula(anchor_friction, anchor_wraps);
  }
};
inline constexpr Model<AnchorCapacity> anchor_capacity{};

/// Clamps that hold a pull on the dead line.
///
///   n_c = ⌈T e^(−2 π μ n) / H⌉
///
/// T  rope_tension  force, in the dead line
/// Other symbols and source as for AnchorCapacity. The least number, without any reserve: the
/// maker's manual says how many are to be fitted.
struct ClampsNeeded {
  static constexpr std::string_view name = "deadline.clamps_needed";
  static constexpr std::tuple parameters{params::rope_tension, argument::clamp_holding,
                                         argument::anchor_friction, argument::anchor_wraps};

  static Number formula(Force rope_tension, Force clamp_holding, Number anchor_friction,
                        Number anchor_wraps) noexcept {
    // A pull that the clamps just hold, computed the other way round, must not ask for one more.
    constexpr double rounding = 1e-12;
    const Force left = drum::ClampForce::formula(rope_tension, anchor_friction, anchor_wraps);
    const double clamps = to_si(Number(left / clamp_holding));
    return from_si<Number>(std::ceil(clamps * (1.0 - rounding)));
  }
};
inline constexpr Model<ClampsNeeded> clamps_needed{};

}  // namespace ropewalk::deadline
