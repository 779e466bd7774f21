/// The same work stroke by stroke: what the block does, stand by stand and joint by joint.
///
/// For whole stands the strokes of a trip add up to the closed forms of trip.hpp exactly. A last
/// part of a stand is a stroke of its own, pulled last and run first.
#pragma once

#include <span>
#include <vector>

#include "ropewalk/work/trip.hpp"

namespace ropewalk::work {

/// The block going up by `travel` under `load_up`, and down by as much under `load_down`.
struct Stroke {
  Length depth;   ///< of the bit, at the lower end of the stroke
  Force load_up;  ///< everything hung on the lines
  Force load_down;
  Length travel;

  [[nodiscard]] constexpr Energy work() const noexcept { return (load_up + load_down) * travel; }
};

/// Sum of (load_up + load_down) · travel.
[[nodiscard]] Energy total_work(std::span<const Stroke> strokes) noexcept;

/// The string that is worked and the block assembly above it.
struct Hung {
  ForcePerLength pipe_weight;  ///< W_m, drill pipe in mud
  Force bha_excess_weight;     ///< C, BHA in mud less the same length of drill pipe
  /// Where it is not zero, a string shorter than the BHA carries the excess of what it has of it;
  /// zero counts all of C until the last stand, as API RP 9B does.
  Length bha_length;
  Force block_weight;  ///< M, traveling block to elevators

  /// Weight in mud of a string of this length: W_m x + C.
  [[nodiscard]] Force string_weight(Length length) const noexcept;
};

/// A trip by stands, out if `depth_from` is the deeper, in if `depth_to` is: the string moves with
/// string and block on the lines, the block returns empty. A round trip is one of each.
/// Throws InadmissibleError as all functions here: an argument that cannot be, a string lighter
/// than nothing, more than a hundred thousand stands.
[[nodiscard]] std::vector<Stroke> trip_strokes(const Hung& hung, Length depth_from, Length depth_to,
                                               Length stand_length);

/// Running casing by joints: a trip in, without BHA.
[[nodiscard]] std::vector<Stroke> casing_strokes(Length depth, Length joint_length,
                                                 ForcePerLength casing_weight, Force block_weight);

/// What belongs to drilling with a kelly, besides the string.
struct KellyDrilling {
  Length joint_length;  ///< of a joint of drill pipe, and of the travel of the kelly
  Force kelly_weight;   ///< kelly and swivel, hung while the kelly is on
  Force weight_on_bit;  ///< carried by the bottom while drilling
  bool ream = true;     ///< ream every kelly down once, as the factor 3 of API RP 9B does
};

/// Drilling with a kelly, joint by joint, each in four strokes of one joint:
///   drill down, pull kelly · ream down, pull kelly (if reamed)
///   · set back kelly, pick up joint · lower string, pick up kelly.
/// A last part of a joint is drilled, and reamed, without the connection.
/// Source for the cycle (from memory): API RP 9B, work done in drilling, operations 1 to 8.
[[nodiscard]] std::vector<Stroke> kelly_strokes(const Hung& hung, Length depth_from,
                                                Length depth_to, const KellyDrilling& drilling);

/// What belongs to drilling with a top drive, besides the string.
struct TopDriveDrilling {
  Length stand_length;
  Force weight_on_bit;
  int reams = 0;  ///< how often each stand is reamed up and down before the connection
};

/// Drilling with a top drive, stand by stand: the block goes up empty, drills the stand down, and
/// reams it up and down as often as told.
/// Mechanics of the operation; no published factor stands behind it.
[[nodiscard]] std::vector<Stroke> top_drive_strokes(const Hung& hung, Length depth_from,
                                                    Length depth_to,
                                                    const TopDriveDrilling& drilling);

}  // namespace ropewalk::work
