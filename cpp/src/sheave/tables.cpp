#include "ropewalk/base/names.hpp"
#include "ropewalk/base/require.hpp"
#include "ropewalk/base/table.hpp"
#include "ropewalk/sheave/groove.hpp"
#include "ropewalk/sheave/pressure.hpp"
#include "ropewalk/sheave/tread_diameter.hpp"

namespace ropewalk::sheave {

namespace {

Provenance provenance(const Table& printed, std::size_t row) {
  return {printed.text(row, "source"), printed.text(row, "standing")};
}

std::string quoted(std::string_view field, std::string_view name) {
  return std::string(field) + " '" + std::string(name) + "'";
}

/// Rows of a table as they are narrowed down, name by name.
class Narrowing {
 public:
  Narrowing(std::string_view where, const Table& printed) : where_(where), printed_(printed) {
    for (std::size_t row = 0; row < printed.rows(); ++row) rows_.push_back(row);
  }

  /// Keeps the rows whose `column` is `name`, or which are also called so; throws LookupError with
  /// the names there are if none is.
  void keep(std::string_view column, std::string_view name, std::string_view aliases = {}) {
    std::vector<std::size_t> kept;
    std::vector<std::string> known;
    for (const std::size_t row : rows_) {
      const std::string_view printed_name = printed_.text(row, column);
      add_name(known, printed_name);
      if (same_name(printed_name, name) ||
          (!aliases.empty() && among_names(name, printed_.text(row, aliases)))) {
        kept.push_back(row);
      }
    }
    if (kept.empty()) {
      throw LookupError(
          where_, column,
          "the table has no " + quoted(column, name) + " here; it has: " + joined(known));
    }
    rows_ = std::move(kept);
  }

  [[nodiscard]] const std::vector<std::size_t>& rows() const noexcept { return rows_; }

 private:
  std::string_view where_;
  const Table& printed_;
  std::vector<std::size_t> rows_;
};

/// "6x25FW IWRC" → "6x25FW".
std::string_view without_core(std::string_view construction) {
  for (const std::string_view core : {" IWRC", " WSC", " FC"}) {
    if (construction.size() > core.size() &&
        same_name(construction.substr(construction.size() - core.size()), core)) {
      return construction.substr(0, construction.size() - core.size());
    }
  }
  return construction;
}

}  // namespace

Sourced<Length> groove_radius_table(Length rope_diameter, std::string_view state) {
  constexpr std::string_view where = "sheave.groove_radius_table";
  require(where, params::rope_diameter, rope_diameter);
  const Table& printed = table("groove_radii");
  Narrowing narrowing(where, printed);
  narrowing.keep("state", state);
  std::vector<Length> sizes;
  for (const std::size_t row : narrowing.rows()) {
    const Length size = printed.number(row, "rope_diameter [in]") * inch;
    if (same_size(rope_diameter, size)) {
      return {printed.number(row, "groove_radius [in]") * inch, provenance(printed, row)};
    }
    sizes.push_back(size);
  }
  throw LookupError(where, "rope_diameter",
                    "the table has no rope_diameter " + size_text(rope_diameter) + "; " +
                        nearest_sizes(rope_diameter, sizes));
}

Sourced<Stress> bearing_pressure_limit(std::string_view groove_material,
                                       std::string_view rope_class, std::string_view lay) {
  const Table& printed = table("bearing_pressure_limits");
  Narrowing narrowing("sheave.bearing_pressure_limit", printed);
  narrowing.keep("groove_material", groove_material, "groove_material_also");
  narrowing.keep("lay", lay);
  narrowing.keep("rope_class", rope_class, "rope_class_also");
  const std::size_t row = narrowing.rows().front();
  return {printed.number(row, "bearing_pressure_limit [psi]") * psi, provenance(printed, row)};
}

Sourced<Length> tread_diameter(std::string_view construction, std::string_view condition,
                               Length rope_diameter) {
  constexpr std::string_view where = "sheave.tread_diameter";
  require(where, params::rope_diameter, rope_diameter);
  const Table& printed = table("tread_diameters");
  Narrowing narrowing(where, printed);
  narrowing.keep("condition", condition);
  narrowing.keep("construction", without_core(construction), "also_called");
  const std::size_t row = narrowing.rows().front();
  return {printed.number(row, "factor") * rope_diameter, provenance(printed, row)};
}

}  // namespace ropewalk::sheave
