#include "ropewalk/work/stands.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "ropewalk/base/error.hpp"
#include "ropewalk/units/text.hpp"

namespace ropewalk::work {

Stands cut_into_stands(std::string_view where, std::string_view field, Length way, Length stand) {
  constexpr double most_stands = 100'000.0;
  const double ratio = way / stand;
  if (ratio > most_stands) {
    throw InadmissibleError(where, field,
                            std::string(field) + " = " + quantity_text(stand) + " cuts " +
                                quantity_text(way) + " into more than 100,000 strokes");
  }
  // A depth given as so many stands is a whole number of them up to rounding.
  const double nearest = std::nearbyint(ratio);
  if (std::abs(ratio - nearest) <= 1e-9 * std::max(1.0, nearest)) {
    return {static_cast<std::size_t>(nearest), from_si<Length>(0.0)};
  }
  const double whole = std::floor(ratio);
  return {static_cast<std::size_t>(whole), way - whole * stand};
}

}  // namespace ropewalk::work
