/// One stroke of the traveling block, as the damage map takes it.
#pragma once

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::line {

/// The block going from one height to another under one load.
///
/// Heights are measured from the lowest position of the block; the length of line between the
/// blocks is the longest one less the height.
struct HookStroke {
  Force hook_load;  ///< everything hung on the lines, dynamic part included
  Length height_from;
  Length height_to;
  double count = 1.0;     ///< how many such strokes, one after the other
  bool pick_up = false;   ///< the load is taken up from rest at height_from
  bool may_stop = false;  ///< after it the load hangs elsewhere, and the line may be slipped
};

}  // namespace ropewalk::line
