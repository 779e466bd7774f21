/// The load path from crown to elevator: what each part carries, and which comes to its rating
/// first.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::suspension {

/// One part of the load path with the load it sees as the hook load W grows:
///
///   load = multiple · W − weight_above
///
/// For the mast the multiple is 1, for the crown block (W + fast line + dead line)/W, for the
/// drilling line its largest tension/W. What hangs on the lines carries W less the weight of all
/// that hangs above it: a part is counted with its own weight, so that the traveling block carries
/// W.
struct Part {
  std::string name;
  Force rating;
  Number multiple;
  Force weight_above;
};

/// What a part carries under one hook load, and under which it comes to its rating.
struct Margin {
  Force load;
  Force margin;               ///< rating − load; negative: overloaded
  Number utilization;         ///< load/rating
  Force hook_load_at_rating;  ///< (rating + weight_above)/multiple
};

namespace argument {
inline constexpr Parameter<Force> rating{"rating", params::positive_force_range};
inline constexpr Parameter<Number> multiple{
    "multiple", above_up_to(from_si<Number>(0.0), from_si<Number>(3.0), "2 lines, hoisting")};
inline constexpr Parameter<Force> weight_above{"weight_above", params::force_range};
}  // namespace argument

/// The margins of all parts under one hook load. Throws InadmissibleError naming the part for what
/// cannot be: no parts, a rating that is none, a hook load less than what hangs above a part.
[[nodiscard]] std::vector<Margin> margins(std::span<const Part> parts, Force hook_load);

/// Index of the weakest part: the one that comes to its rating first as the hook load grows; of
/// several, the first. Throws as margins().
[[nodiscard]] std::size_t weakest(std::span<const Part> parts);

}  // namespace ropewalk::suspension
