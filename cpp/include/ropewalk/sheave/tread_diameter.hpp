/// Sheave size advised for a construction of rope.
#pragma once

#include <string_view>

#include "ropewalk/base/source.hpp"
#include "ropewalk/units/quantities.hpp"

namespace ropewalk::sheave {

/// Tread diameter advised for a construction of rope.
///
///   D_T = F d
///
/// D_T  tread diameter             length
/// F    sheave-diameter factor     number, by construction and condition
/// d    rope_diameter              length, nominal
///
/// construction  "6x7", "6x17S", "6x19S", "6x21FW", "6x25FW", "6x31", "6x37", "8x19S", "8x19W",
/// "18x7",
///               "19x7" or "flattened strand", or in words, "6x19 Seale", "6x25 filler"; a core
///               behind it ("6x25FW IWRC") is passed over, since the factors hold for any core
/// condition     "A": bending is what wears the rope; "B": some life is given up for a smaller
///               sheave. Condition "C" has no factor.
///
/// Throws LookupError with the names the table has, InadmissibleError for a rope_diameter that
/// cannot be.
/// Source: Lyons (ed.), Standard Handbook of Petroleum and Natural Gas Engineering, vol. 1 (1996),
/// eq. 4-25 and Table 4-35, p. 600, after API RP 9B.
[[nodiscard]] Sourced<Length> tread_diameter(std::string_view construction,
                                             std::string_view condition, Length rope_diameter);

}  // namespace ropewalk::sheave
