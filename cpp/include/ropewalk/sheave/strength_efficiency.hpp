/// Strength a rope keeps when it is pulled over a sheave.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"

namespace ropewalk::sheave {

/// Share of its breaking force that a rope keeps when it is bent over a sheave and pulled at rest,
/// as a block maker's handbook tabulates it.
///
///   D/d         1   2   4   6   8  10  15  20  30  40
///   efficiency 50  65  75  79  83  86  89  91  93  95  %
///
/// D/d  bend_ratio   number, tread diameter over nominal rope diameter
///
/// Straight lines between the points. The points bend down all the way, so that a line lies below
/// any smooth curve through them: what is between two points is estimated on the safe side.
/// Range: D/d 1 to 40, the points of the table; outside it, if the caller allows that, the last
/// tabulated share is kept, which beyond 40 again is on the safe side.
/// Static strength only: bending life falls far more.
/// API RP 9B, 14th ed. (2015), Addendum 1 (2020), 2.3.3.5, works an example at D/d 27 with an
/// efficiency of 96 %, more than this table gives.
/// Source: a block maker's rigging handbook, page on sheave size and wire rope strength.
struct StrengthEfficiency {
  static constexpr std::string_view name = "sheave.strength_efficiency";
  static constexpr std::tuple parameters{params::bend_ratio.valid_in(
      between(from_si<Number>(1.0), from_si<Number>(40.0), "a block maker's rigging handbook"))};

  static Number formula(Number bend_ratio) noexcept;
};
inline constexpr Model<StrengthEfficiency> strength_efficiency{};

}  // namespace ropewalk::sheave
