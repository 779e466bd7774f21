#include "ropewalk/overtravel/wraps.hpp"

#include "ropewalk/base/require.hpp"
#include "ropewalk/drum/length.hpp"

namespace ropewalk::overtravel {

double wraps_at_height(const StrungDrum& strung, Length block_height) {
  return drum::place_at_height(strung.drum, strung.wraps_at_lowest, strung.lines, block_height)
      .wraps;
}

Length height_at_wraps(const StrungDrum& strung, double wraps) {
  require("overtravel.height_at_wraps", params::lines, strung.lines);
  return (strung.drum.length_of(wraps) - strung.drum.length_of(to_si(strung.wraps_at_lowest))) /
         strung.lines;
}

Length counted_height(const StrungDrum& now, Number wraps_known, Length block_height) {
  const double turns = wraps_at_height(now, block_height) - to_si(now.wraps_at_lowest);
  return height_at_wraps({now.drum, now.lines, wraps_known}, to_si(wraps_known) + turns);
}

}  // namespace ropewalk::overtravel
