#include "ropewalk/overtravel/wraps.hpp"

#include "ropewalk/base/require.hpp"

namespace ropewalk::overtravel {

double wraps_at_height(const StrungDrum& strung, Length block_height) {
  constexpr std::string_view where = "overtravel.wraps_at_height";
  require(where, params::lines, strung.lines);
  require(where,
          Parameter<Length>{"block_height", between(-200.0 * meter, 200.0 * meter, params::guard)},
          block_height);
  const Length at_lowest = strung.drum.length_of(to_si(strung.wraps_at_lowest));
  const Length wound = at_lowest + strung.lines * block_height;
  if (wound < 0.0 * meter || wound > strung.drum.capacity()) {
    throw InadmissibleError(where, "block_height",
                            "block_height = " + quantity_text(block_height) + " asks for " +
                                quantity_text(wound) + " of rope on a drum that holds 0 to " +
                                quantity_text(strung.drum.capacity()));
  }
  return strung.drum.place(wound).wraps;
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
