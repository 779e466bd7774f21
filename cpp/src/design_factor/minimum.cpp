#include "ropewalk/design_factor/minimum.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::design_factor {

std::vector<Minimum> minimums() {
  const Table& printed = table("design_factor_minimums");
  std::vector<Minimum> rows;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    rows.push_back({.operation = printed.text(row, "operation"),
                    .standard = printed.text(row, "standard"),
                    .edition = printed.text(row, "edition"),
                    .value = from_si<Number>(printed.number(row, "minimum_design_factor")),
                    .basis = printed.text(row, "basis"),
                    .provenance = {printed.text(row, "source"), printed.text(row, "standing")}});
  }
  return rows;
}

Minimum minimum(std::string_view operation, std::string_view standard) {
  constexpr std::string_view where = "design_factor.minimum";
  std::vector<std::string> standards;
  std::vector<std::string> operations;
  for (const Minimum& row : minimums()) {
    add_name(standards, row.standard);
    if (!same_name(row.standard, standard)) continue;
    if (same_name(row.operation, operation)) return row;
    add_name(operations, row.operation);
  }
  if (operations.empty()) {
    throw LookupError(where, "standard",
                      "there are no minimum design factors of the standard '" +
                          std::string(standard) + "'; there are those of: " + joined(standards));
  }
  throw LookupError(where, "operation",
                    "'" + std::string(standard) + "' has no minimum design factor for '" +
                        std::string(operation) + "'; it has: " + joined(operations));
}

}  // namespace ropewalk::design_factor
