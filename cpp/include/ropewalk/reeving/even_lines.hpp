/// An even number of lines: only then does the rope end over the crown, as a dead line on an
/// anchor.
#pragma once

#include <string_view>

#include "ropewalk/units/quantities.hpp"

namespace ropewalk::reeving {

inline constexpr std::string_view even_rule =
    "lines must be even: an odd number has its dead end on the traveling block and no dead line";

/// For any number, so not by way of int: a sum this large keeps no digits of a fraction.
[[nodiscard]] constexpr bool is_even(Number lines) noexcept {
  constexpr double no_fraction = 0x1.8p52;
  const double half = to_si(lines) / 2.0;
  return (half + no_fraction) - no_fraction == half;
}

}  // namespace ropewalk::reeving
