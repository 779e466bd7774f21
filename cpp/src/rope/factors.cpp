#include "ropewalk/rope/factors.hpp"

#include <cmath>

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::rope {

namespace {

/// kg per 100 m and square millimeter, the unit in which the mass factor is printed.
constexpr Density printed_mass_factor = kilogram / (100.0 * meter * square_millimeter);

Factors read(const Table& printed, std::size_t row) {
  Factors found{.rope_class = printed.text(row, "rope_class"),
                .core = printed.text(row, "core"),
                .strength_factor = from_si<Number>(printed.number(row, "strength_factor")),
                .area_factor = {},
                .mass_factor = {},
                .provenance = {printed.text(row, "source"), printed.text(row, "standing")}};
  const double area = printed.number(row, "area_factor");
  if (!std::isnan(area)) found.area_factor = from_si<Number>(area);
  const double mass = printed.number(row, "mass_factor [kg/100m/mm2]");
  if (!std::isnan(mass)) found.mass_factor = mass * printed_mass_factor;
  return found;
}

}  // namespace

Factors factors(std::string_view rope_class) {
  const Table& printed = table("rope_factors");
  std::vector<std::string> known;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    std::string name(printed.text(row, "rope_class"));
    const std::string_view core = printed.text(row, "core");
    if (!core.empty()) name.append(" ").append(core);
    if (same_name(name, rope_class)) return read(printed, row);
    known.push_back(std::move(name));
  }
  throw LookupError("rope.Rope.metric", "rope_class",
                    "there are no factors for the rope_class '" + std::string(rope_class) +
                        "'; there are for: " + joined(known));
}

}  // namespace ropewalk::rope
