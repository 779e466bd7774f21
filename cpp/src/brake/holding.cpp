#include "ropewalk/brake/holding.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::brake {

std::vector<RequiredFactor> required_factors() {
  const Table& printed = table("brake_holding_factors");
  std::vector<RequiredFactor> rows;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    rows.push_back({.key = printed.text(row, "key"),
                    .standard = printed.text(row, "standard"),
                    .edition = printed.text(row, "edition"),
                    .value = from_si<Number>(printed.number(row, "holding_factor_min")),
                    .base = printed.text(row, "base"),
                    .condition = printed.text(row, "condition"),
                    .provenance = {printed.text(row, "source"), printed.text(row, "standing")}});
  }
  return rows;
}

RequiredFactor required_factor(std::string_view key) {
  std::vector<std::string> keys;
  for (const RequiredFactor& row : required_factors()) {
    if (same_name(row.key, key)) return row;
    add_name(keys, row.key);
  }
  throw LookupError(
      "brake.required_factor", "key",
      "there is no required factor '" + std::string(key) + "'; there are: " + joined(keys));
}

}  // namespace ropewalk::brake
