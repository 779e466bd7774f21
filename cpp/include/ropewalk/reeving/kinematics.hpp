/// How fast and how far the rope runs over each sheave, and how the sheaves turn.
///
/// When the traveling block moves by x, every line gets longer or shorter by x. Line 1 hangs from
/// an end that does not move, so turning sheave m, with m lines between it and that end, passes
/// m x of rope, and the drum takes or gives N x. This is geometry and holds for any N, odd too: the
/// dead end of an odd number moves with the block itself.
#pragma once

#include <span>
#include <vector>

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::reeving {

namespace argument {

/// Speed of the traveling block, up positive.
inline constexpr Parameter<Speed> block_speed{
    "block_speed", between(-100.0 * meter_per_second, 100.0 * meter_per_second, params::guard)};
/// Travel of the traveling block, up positive.
inline constexpr Parameter<Length> block_travel{
    "block_travel", between(-20'000.0 * meter, 20'000.0 * meter, params::guard)};

}  // namespace argument

/// Speed of the rope over turning sheave 1 … N, in that order: m v. The last one is the speed of
/// the fast line, also at the drum and over all lead sheaves; the dead-line sheave stands still.
/// Toward the drum is positive. Throws InadmissibleError.
[[nodiscard]] std::vector<Speed> line_speeds(int lines, Speed block_speed);

/// Rope that passes turning sheave 1 … N, in that order: m x. The last one is what the drum takes.
/// Toward the drum is positive. Throws InadmissibleError.
[[nodiscard]] std::vector<Length> line_travel(int lines, Length block_travel);

/// Rotation of turning sheave 1 … N, in that order: ω = 2 m v / D.
///
/// `sheave_diameters` has one diameter for all sheaves, or one for each: that of the circle on
/// which the rope runs, tread diameter plus rope diameter for the middle of the rope.
/// Throws InadmissibleError.
[[nodiscard]] std::vector<AngularVelocity> sheave_rotations(
    int lines, Speed block_speed, std::span<const Length> sheave_diameters);

}  // namespace ropewalk::reeving
