#include "ropewalk/drawworks/sizes.hpp"

#include <cmath>

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/require.hpp"
#include "ropewalk/base/table.hpp"
#include "ropewalk/drawworks/parameters.hpp"

namespace ropewalk::drawworks {

namespace {

constexpr std::string_view where = "drawworks.size_for_depth";

template <class Q>
std::optional<Q> known(double number, Q unit) {
  return std::isnan(number) ? std::nullopt : std::optional<Q>(number * unit);
}

}  // namespace

std::vector<RigSize> rig_sizes() {
  const Table& printed = table("drawworks_sizes");
  std::vector<RigSize> sizes;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    const Power unit = printed.text(row, "power_unit") == "hp" ? horsepower : kilowatt;
    sizes.push_back({.standard = printed.text(row, "standard"),
                     .name = printed.text(row, "class"),
                     .depth = printed.number(row, "depth_to [m]") * meter,
                     .hook_load = known(printed.number(row, "hook_load [kN]"), kilonewton),
                     .power_from = printed.number(row, "power_from") * unit,
                     .power_to = printed.number(row, "power_to") * unit,
                     .rope_diameter = known(printed.number(row, "rope_diameter [mm]"), millimeter),
                     .provenance = {printed.text(row, "source"), printed.text(row, "standing")}});
  }
  return sizes;
}

RigSize size_for_depth(Length depth, std::string_view standard) {
  require(where, params::depth, depth);
  std::vector<std::string> standards;
  std::optional<Length> deepest;
  for (const RigSize& size : rig_sizes()) {
    add_name(standards, size.standard);
    if (!same_name(size.standard, standard)) continue;
    if (size.depth >= depth) return size;
    deepest = size.depth;
  }
  if (!deepest) {
    throw LookupError(where, "standard",
                      "there are no sizes of '" + std::string(standard) +
                          "'; there are those of: " + joined(standards));
  }
  throw LookupError(where, "depth",
                    "depth = " + quantity_text(depth) + " is more than " + quantity_text(*deepest) +
                        ", the deepest class of '" + std::string(standard) + "'");
}

}  // namespace ropewalk::drawworks
