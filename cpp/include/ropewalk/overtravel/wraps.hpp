/// Set points counted in wraps of the drum, and what slip and cut makes of them.
#pragma once

#include "ropewalk/base/parameters.hpp"
#include "ropewalk/drum/drum.hpp"

namespace ropewalk::overtravel {

/// A drum as it is strung up: lines, and laps on it with the block at its lowest.
struct StrungDrum {
  const drum::Drum& drum;
  Number lines;
  Number wraps_at_lowest;
};

/// Laps on the drum with the block at a height above its lowest working position; floor devices may
/// be set below it, at a negative height. Throws InadmissibleError if the drum has no such rope.
[[nodiscard]] double wraps_at_height(const StrungDrum& strung, Length block_height);

/// Height of the block with so many laps on the drum; negative below its lowest position. The
/// inverse of wraps_at_height. Throws InadmissibleError.
[[nodiscard]] Length height_at_wraps(const StrungDrum& strung, double wraps);

/// Height that a counter of turns shows when the block is at a height, after the laps at the lowest
/// position have changed from those it was set up with. It was zeroed again with the block at its
/// lowest, but converts turns to height by the laps it knows: the layers now change at other
/// heights. Throws InadmissibleError if the drum does not hold so much rope.
[[nodiscard]] Length counted_height(const StrungDrum& now, Number wraps_known, Length block_height);

}  // namespace ropewalk::overtravel
