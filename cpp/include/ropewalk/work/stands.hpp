/// A way through the hole cut into stands or joints.
#pragma once

#include <string_view>

#include "ropewalk/units/quantities.hpp"

namespace ropewalk::work {

/// Whole stands, and what is left.
struct Stands {
  std::size_t whole = 0;
  Length rest;
};

/// Cuts `way` into stands. A way that is so many stands up to rounding has no rest.
/// Throws InadmissibleError in the name of `where` and `field`, the length of the stand, if there
/// would be more than a hundred thousand.
[[nodiscard]] Stands cut_into_stands(std::string_view where, std::string_view field, Length way,
                                     Length stand);

}  // namespace ropewalk::work
