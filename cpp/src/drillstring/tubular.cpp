#include "ropewalk/drillstring/tubular.hpp"

#include <algorithm>
#include <cmath>

#include "ropewalk/base/error.hpp"
#include "ropewalk/base/names.hpp"
#include "ropewalk/base/table.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::drillstring {

namespace {

/// NaN of an empty cell becomes "not given".
template <class Q>
std::optional<Q> given(double number, Q unit) {
  if (std::isnan(number)) return std::nullopt;
  return number * unit;
}

std::vector<Tubular> read_table() {
  const Table& rows = table("tubulars");
  std::vector<Tubular> all;
  all.reserve(rows.rows());
  const auto text = [&rows](std::size_t i, std::string_view column) {
    return std::string(rows.text(i, column));
  };
  for (std::size_t i = 0; i < rows.rows(); ++i) {
    all.push_back({
        .designation = text(i, "designation"),
        .kind = text(i, "kind"),
        .outer_diameter = rows.number(i, "outer_diameter [in]") * inch,
        .inner_diameter = given(rows.number(i, "inner_diameter [in]"), inch),
        .nominal_weight = given(rows.number(i, "nominal_weight [lb/ft]"), pound_per_foot),
        .grade = text(i, "grade"),
        .connection = text(i, "connection"),
        .mass_per_length = rows.number(i, "mass_per_length [lb/ft]") * pound_per_foot,
        .source = text(i, "source"),
        .standing = text(i, "standing"),
    });
  }
  return all;
}

/// How many leading characters two texts share.
std::size_t common_start(std::string_view a, std::string_view b) {
  const auto n = static_cast<std::ptrdiff_t>(std::min(a.size(), b.size()));
  return static_cast<std::size_t>(std::mismatch(a.begin(), a.begin() + n, b.begin()).first -
                                  a.begin());
}

std::string no_such_row(std::string_view designation) {
  std::size_t best = 0;
  for (const Tubular& row : tubulars()) {
    best = std::max(best, common_start(designation, row.designation));
  }
  std::string offer;
  for (const Tubular& row : tubulars()) {
    if (common_start(designation, row.designation) != best) continue;
    offer += (offer.empty() ? "'" : ", '") + row.designation + "'";
  }
  return "designation = '" + std::string(designation) +
         "' is not in the table of tubulars; it has " + offer;
}

}  // namespace

const std::vector<Tubular>& tubulars() {
  static const std::vector<Tubular> all = read_table();
  return all;
}

const Tubular& tubular(std::string_view designation) {
  for (const Tubular& row : tubulars()) {
    if (same_name(row.designation, designation)) return row;
  }
  throw LookupError("drillstring.tubular", "designation", no_such_row(designation));
}

}  // namespace ropewalk::drillstring
