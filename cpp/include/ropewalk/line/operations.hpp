/// The operations of a well plan as strokes of the block, in time order.
///
/// Heights: with the elevators at the slips the block is at the base height; it goes up by a stand
/// and comes back. Every operation begins and ends there, the string in the slips and the block
/// free. A last part of a stand is a stroke of its own, pulled last and run first.
///
/// Hook loads: weight in mud of what hangs, as the string is made up; a share of it as drag where
/// the string is hoisted or lowered without rotation, none where it is drilled or reamed; and the
/// block. For whole stands of one pipe weight and without drag the strokes add up to the closed
/// forms of work/ exactly. Mechanics of the operations; where a published cycle stands behind one
/// it is named there.
///
/// A load is picked up (`pick_up`) wherever the slips are pulled: at the base height on the way
/// out, a stand above it on the way in. The line may be slipped (`may_stop`) where the string hangs
/// in the slips and the block is free: at the end of a stand's cycle, never inside it.
///
/// All functions throw InadmissibleError: an argument that cannot be, a string shorter than the
/// depth, more than a hundred thousand stands, a block height outside the travel of the mast, less
/// than nothing on the lines.
#pragma once

#include <vector>

#include "ropewalk/drillstring/string.hpp"
#include "ropewalk/line/stroke.hpp"
#include "ropewalk/work/strokes.hpp"

namespace ropewalk::line {

/// The string on the hook and the hoist above it: what is the same in all strokes of an operation.
struct Hoisting {
  drillstring::DrillString string;
  Number drag_up;    ///< drag on the way up, as a share of the weight in mud
  Number drag_down;  ///< drag on the way down, likewise
  Force block_weight;
  Length travel;       ///< highest height of the block
  Length base_height;  ///< height of the block with the elevators at the slips
  /// Speed and acceleration of the block where it hoists and lowers; both zero: no dynamic loads.
  Speed block_speed;
  Acceleration block_acceleration;
};

/// One stroke at an even speed, split into speeding up, running and slowing down.
///
///   s = v² / (2a),  F₁ = F (1 ± a/g),  F₂ = F,  F₃ = F (1 ∓ a/g)
///
/// s        travel while speeding up, and while slowing down; half of the stroke where that is less
/// v, a     speed, acceleration
/// F        hook load of the stroke; upper signs going up, lower signs going down
/// F₁…F₃    hook load of the parts
///
/// String and block are one suspended mass F/g; buoyancy and drag, which have none, are counted
/// with it. Starting and stopping at the same rate, the parts do the work of the whole. The first
/// part keeps `pick_up`, the last `may_stop`. Newton's second law.
[[nodiscard]] std::vector<HookStroke> dynamic_parts(const HookStroke& stroke, Speed speed,
                                                    Acceleration acceleration);

/// A trip by stands, out if `depth_from` is the deeper, in if `depth_to` is: work::trip_strokes.
[[nodiscard]] std::vector<HookStroke> trip(const Hoisting& hoisting, Length depth_from,
                                           Length depth_to, Length stand_length);

/// Out of the hole from `depth` and in again: work::round_trip.
[[nodiscard]] std::vector<HookStroke> round_trip(const Hoisting& hoisting, Length depth,
                                                 Length stand_length);

/// Out from `depth_to` up to `depth_from` and in again: work::short_trip.
[[nodiscard]] std::vector<HookStroke> short_trip(const Hoisting& hoisting, Length depth_from,
                                                 Length depth_to, Length stand_length);

/// Running casing joint by joint; `hoisting.string` is the casing: work::casing.
[[nodiscard]] std::vector<HookStroke> casing(const Hoisting& hoisting, Length depth,
                                             Length joint_length);

/// Picking up singles and running them: each joint is hoisted, by its weight in air, and lowered
/// with the string.
[[nodiscard]] std::vector<HookStroke> singles(const Hoisting& hoisting, Length depth_from,
                                              Length depth_to, Length joint_length);

/// Drilling with a kelly, the cycle of work::kelly_strokes begun where the block is free:
///   pick up kelly · drill down, pull kelly · ream down, pull kelly (if reamed)
///   · set back kelly, pick up joint (by its weight in air) · lower string.
/// After a last part of a joint the kelly is set back and no joint is added.
[[nodiscard]] std::vector<HookStroke> kelly_drilling(const Hoisting& hoisting, Length depth_from,
                                                     Length depth_to,
                                                     const work::KellyDrilling& drilling);

/// Drilling with a top drive: work::top_drive_strokes.
[[nodiscard]] std::vector<HookStroke> top_drive_drilling(const Hoisting& hoisting,
                                                         Length depth_from, Length depth_to,
                                                         const work::TopDriveDrilling& drilling);

/// Coring: drilling without reaming, because cored hole is not reamed (see work::Coring).
[[nodiscard]] std::vector<HookStroke> coring(const Hoisting& hoisting, Length depth_from,
                                             Length depth_to, work::KellyDrilling drilling);
[[nodiscard]] std::vector<HookStroke> coring(const Hoisting& hoisting, Length depth_from,
                                             Length depth_to, work::TopDriveDrilling drilling);

/// Reaming hole that is there, with a top drive: the strokes of drilling it. The first way down is
/// itself a ream; `drilling.reams` are those after it.
[[nodiscard]] std::vector<HookStroke> reaming(const Hoisting& hoisting, Length depth_from,
                                              Length depth_to,
                                              const work::TopDriveDrilling& drilling);

/// Circulating with the string moved up and down by `height`, `strokes` times; it is picked up once
/// and set back in the slips at the end.
[[nodiscard]] std::vector<HookStroke> circulating(const Hoisting& hoisting, Length depth,
                                                  Length height, int strokes);

/// Jarring, as a count of overpulls: each is pulled up by `height` and slacked off again.
///
///   up W (1 + drag_up) + overpull + M,  down W (1 − drag_down) + M
///
/// The whole overpull is counted over the whole height although it grows along it: the safe side.
/// No published multiplier stands behind it; no dynamic load of the blow reaches the line here.
[[nodiscard]] std::vector<HookStroke> jarring(const Hoisting& hoisting, Length depth,
                                              Force overpull, Length height, int overpulls);

}  // namespace ropewalk::line
