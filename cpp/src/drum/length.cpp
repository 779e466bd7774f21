#include "ropewalk/drum/length.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/require.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::drum {

namespace {

/// Rope on the drum with the block lowest, arguments checked.
Length at_lowest(std::string_view where, const Drum& drum, Number wraps_at_lowest, Number lines) {
  require(where, argument::wraps_at_lowest, wraps_at_lowest);
  require(where, params::lines, lines);
  return drum.length_of(to_si(wraps_at_lowest));
}

}  // namespace

Drum::Place place_at_height(const Drum& drum, Number wraps_at_lowest, Number lines,
                            Length block_height) {
  constexpr std::string_view where = "drum.place_at_height";
  const Length lowest = at_lowest(where, drum, wraps_at_lowest, lines);
  require(where, argument::block_height, block_height);
  const Length wound = RopeOnDrum::formula(lowest, lines, block_height);
  if (wound > drum.capacity() * (1.0 + 1e-9)) {
    throw InadmissibleError(where, "block_height",
                            "block_height = " + quantity_text(block_height) + " puts " +
                                quantity_text(wound) + " of rope on a drum that holds " +
                                quantity_text(drum.capacity()));
  }
  return drum.place(wound);
}

Length height_when_full(const Drum& drum, Number wraps_at_lowest, Number lines) {
  const Length lowest = at_lowest("drum.height_when_full", drum, wraps_at_lowest, lines);
  return (drum.capacity() - lowest) / lines;
}

Sourced<Length> reel_capacity_handbook(Length flange_depth, Length barrel_diameter, Length traverse,
                                       Length rope_diameter) {
  constexpr std::string_view where = "drum.reel_capacity_handbook";
  require(where, argument::flange_depth, flange_depth);
  require(where, argument::barrel_diameter, barrel_diameter);
  require(where, argument::traverse, traverse);
  require(where, params::rope_diameter, rope_diameter);
  const Table& printed = table("reel_factors");
  std::vector<Length> sizes;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    const Length size = printed.number(row, "rope_diameter [in]") * inch;
    if (same_size(rope_diameter, size)) {
      const double cubic_inches = to_si(Number((flange_depth + barrel_diameter) / inch)) *
                                  to_si(Number(flange_depth / inch)) *
                                  to_si(Number(traverse / inch));
      return {cubic_inches * printed.number(row, "factor [ft/in^3]") * foot,
              {printed.text(row, "source"), printed.text(row, "standing")}};
    }
    sizes.push_back(size);
  }
  throw LookupError(where, "rope_diameter",
                    "the table has no rope_diameter " + size_text(rope_diameter) + "; " +
                        nearest_sizes(rope_diameter, sizes));
}

}  // namespace ropewalk::drum
