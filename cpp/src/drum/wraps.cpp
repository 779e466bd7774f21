#include "ropewalk/drum/wraps.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::drum {

std::vector<DeadWrapsMinimum> dead_wraps_minimums() {
  const Table& printed = table("dead_wraps");
  std::vector<DeadWrapsMinimum> rows;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    rows.push_back({.standard = printed.text(row, "standard"),
                    .edition = printed.text(row, "edition"),
                    .value = from_si<Number>(printed.number(row, "dead_wraps_min")),
                    .condition = printed.text(row, "condition"),
                    .provenance = {printed.text(row, "source"), printed.text(row, "standing")}});
  }
  return rows;
}

DeadWrapsMinimum dead_wraps_minimum(std::string_view standard) {
  std::vector<std::string> standards;
  for (const DeadWrapsMinimum& row : dead_wraps_minimums()) {
    if (same_name(row.standard, standard)) return row;
    add_name(standards, row.standard);
  }
  throw LookupError("drum.dead_wraps_minimum", "standard",
                    "there is no minimum of dead wraps of '" + std::string(standard) +
                        "'; there are those of: " + joined(standards));
}

}  // namespace ropewalk::drum
