/// Tension in every line of a reeving: at rest, hoisting, lowering, accelerating.
///
/// The lines together carry W (1 + a/g). Each turning sheave m raises the tension from line m to
/// line m + 1 by its friction K_m while hoisting and lowers it by the same ratio while lowering:
///
///   hoisting   T_(m+1) = K_m T_m        lowering   T_(m+1) = T_m / K_m        Σ T_m = W (1 + a/g)
///
/// with m = 1 … N, where "line N + 1" is the fast line as it leaves the crown. Lead sheaves change
/// it once more on its way to the drum. At rest friction leaves every tension open between the two
/// states of motion; "static" is the middle that the trade takes, all lines alike. For one K the
/// sums are the closed forms of reeving/efficiency.hpp.
///
/// Left out: weight, stretch and inertia of the rope and the turning parts, and the angle of the
/// lines.
#pragma once

#include <vector>

#include "ropewalk/reeving/arrangement.hpp"

namespace ropewalk::reeving {

enum class Motion : std::uint8_t { at_rest, hoisting, lowering };

/// Motion by the name users write: "static", "hoisting", "lowering". Throws InadmissibleError.
[[nodiscard]] Motion motion_named(std::string_view name);

namespace argument {

/// Acceleration of the traveling block, up positive. Below −g the lines would go slack.
inline constexpr Parameter<Acceleration> block_acceleration{
    "block_acceleration", between(-standard_gravity, 100.0 * meter_per_second_squared,
                                  "slack lines below -g; above, ropewalk's guard")};

}  // namespace argument

/// Tension in every part of the rope.
struct Tensions {
  /// Line 1 … N, counted from the dead end.
  std::vector<Force> lines;
  Force fast_line;           ///< at the drum, after the lead sheaves
  Force fast_line_at_crown;  ///< as it leaves the crown
  /// At the dead end: in the dead line, which is the pull on the anchor. With an odd number of
  /// lines it is line 1 itself that is tied to the traveling block, and no anchor is pulled.
  Force dead_line;
  /// All lines, the fast line as it leaves the crown, and for an even number the dead line.
  Force crown_load;
  /// Hoisting: Σ T / (N T_fast), the share of the drum's power that reaches the hook. Lowering:
  /// N T_fast / Σ T, the share of the load's power that reaches the drum. Static: 1.
  Number efficiency;
  Number fast_line_factor;  ///< T_fast / Σ T
};

/// Throws InadmissibleError for a load or an acceleration that cannot be.
///
/// `block_acceleration` is that of the load in space: on a floater with the blocks at rest it is
/// that of the vessel. The steady friction ratios hold for moderate accelerations.
[[nodiscard]] Tensions tensions(const Arrangement& arrangement, Force hook_load, Motion motion,
                                Acceleration block_acceleration = from_si<Acceleration>(0.0));

/// What of the tensions does not depend on the load: each over the tension of line 1. For many
/// loads on one arrangement.
struct RelativeTensions {
  std::vector<double> lines;
  double sum = 0.0;  ///< of the lines
  double fast_line = 0.0;
  double fast_line_at_crown = 0.0;
  double dead_line = 0.0;
  double crown_load = 0.0;
  double efficiency = 0.0;

  /// A tension under the pull of all lines. The quotient is taken last, so that equal lines get
  /// exactly an equal share.
  [[nodiscard]] Force under(Force pull, double relative) const noexcept {
    return pull * relative / sum;
  }
};

[[nodiscard]] RelativeTensions relative_tensions(const Arrangement& arrangement, Motion motion);

/// Pull of all lines together, W (1 + a/g). Throws InadmissibleError.
[[nodiscard]] Force pull_of_lines(Force hook_load, Acceleration block_acceleration);

}  // namespace ropewalk::reeving
