/// Positions along the rope.
#pragma once

namespace ropewalk::line {

/// A position along the rope, m. A kilometer of rope in tenths of a millimeter takes more digits
/// than a double has left after a few sums; where `long double` is no wider, the last digit is
/// lost.
using Position = long double;

}  // namespace ropewalk::line
