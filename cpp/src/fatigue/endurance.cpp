#include "ropewalk/fatigue/endurance.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/base/table.hpp"
#include "ropewalk/fatigue/life_basis.hpp"

namespace ropewalk::fatigue {

namespace {

EnduranceFactor from_row(const Table& rows, std::size_t row, std::string name, double value) {
  return {.name = std::move(name),
          .value = value,
          .source = citation(rows.text(row, "source")),
          .standing = std::string(rows.text(row, "standing"))};
}

[[noreturn]] void throw_no_row(std::string_view where, std::string_view field,
                               std::string_view given, const std::vector<std::string>& known) {
  throw LookupError(
      where, field,
      "no " + std::string(field) + " '" + std::string(given) + "'; there are " + joined(known));
}

/// Value at an angle of one kind of groove, on log-log paper between the printed angles.
double at_groove_angle(std::string_view where, std::string_view table_name, std::string_view column,
                       std::string_view groove, Angle angle) {
  const Table& rows = table(table_name);
  std::vector<double> angles;
  std::vector<double> values;
  std::vector<std::string> grooves;
  std::string source;
  for (std::size_t row = 0; row < rows.rows(); ++row) {
    add_name(grooves, rows.text(row, "groove"));
    if (!same_name(rows.text(row, "groove"), groove)) continue;
    angles.push_back(rows.number(row, "angle [deg]"));
    values.push_back(rows.number(row, column));
    if (source.empty()) source = citation(rows.text(row, "source"));
  }
  if (angles.empty()) throw_no_row(where, "groove", groove, grooves);
  // An angle that is printed may have come through radians and back.
  double degrees = angle / degree;
  for (const double printed : {angles.front(), angles.back()}) {
    if (std::abs(degrees - printed) <= 1e-9 * printed) degrees = printed;
  }
  const Curve curve(table_name, angles, values, Paper::log_log);
  detail::require(where, "groove_angle", degrees, curve.range(source), "deg");
  return *curve.at(degrees);
}

}  // namespace

void EnduranceFactors::add(EnduranceFactor factor) {
  constexpr std::string_view where = "fatigue.EnduranceFactors";
  for (const EnduranceFactor& other : factors_) {
    if (other.name == factor.name) {
      throw InadmissibleError(where, factor.name,
                              "there is already a factor named '" + factor.name + "'");
    }
  }
  detail::require(where, factor.name, factor.value, params::life_factor.admissible);
  factors_.push_back(std::move(factor));
}

Number EnduranceFactors::product() const noexcept {
  double product = 1.0;
  for (const EnduranceFactor& factor : factors_) product *= factor.value;
  return product;
}

EnduranceFactor lubrication_factor(std::string_view lubrication) {
  const Table& rows = table("endurance_lubrication");
  std::vector<std::string> known;
  for (std::size_t row = 0; row < rows.rows(); ++row) {
    const std::string_view name = rows.text(row, "lubrication");
    if (same_name(name, lubrication)) {
      return from_row(rows, row, "lubrication", rows.number(row, "factor"));
    }
    add_name(known, name);
  }
  throw_no_row("fatigue.lubrication_factor", "lubrication", lubrication, known);
}

EnduranceFactor round_groove_factor(Number groove_radius_ratio) {
  const Table& rows = table("endurance_round_groove");
  const Curve curve(rows.name(), rows.numbers("groove_radius_ratio"), rows.numbers("factor"),
                    Paper::linear);
  const std::string source = citation(rows.text(0, "source"));
  detail::require("fatigue.round_groove_factor", "groove_radius_ratio", groove_radius_ratio,
                  curve.range(source));
  return from_row(rows, 0, "groove", *curve.at(groove_radius_ratio));
}

EnduranceFactor shaped_groove_factor(std::string_view groove, Angle groove_angle) {
  constexpr std::string_view name = "endurance_shaped_groove";
  const double value =
      at_groove_angle("fatigue.shaped_groove_factor", name, "factor", groove, groove_angle);
  return from_row(table(name), 0, "groove", value);
}

EnduranceFactor core_factor(std::string_view core, int strands) {
  const Table& rows = table("endurance_core");
  std::vector<std::string> known;
  for (std::size_t row = 0; row < rows.rows(); ++row) {
    const std::string_view name = rows.text(row, "core");
    if (same_name(name, core) && rows.number(row, "strands") == strands) {
      return from_row(rows, row, "core", rows.number(row, "factor"));
    }
    add_name(known,
             std::string(name) + " with " + std::string(rows.text(row, "strands")) + " strands");
  }
  throw_no_row("fatigue.core_factor", "core",
               std::string(core) + " with " + std::to_string(strands) + " strands", known);
}

EnduranceFactor construction_factor(std::string_view construction) {
  const Table& rows = table("endurance_construction");
  // "6x19S IWRC" is a 6x19S here.
  std::string_view make_up = construction;
  for (const std::string_view core : {" IWRC", " FC"}) {
    if (make_up.ends_with(core)) make_up.remove_suffix(core.size());
  }
  std::vector<std::string> known;
  for (std::size_t row = 0; row < rows.rows(); ++row) {
    const std::string_view name = rows.text(row, "construction");
    if (same_name(name, make_up) || among_names(make_up, rows.text(row, "also_called"))) {
      return from_row(rows, row, "construction", rows.number(row, "factor"));
    }
    add_name(known, name);
  }
  throw_no_row("fatigue.construction_factor", "construction", construction, known);
}

double en81_groove_equivalent(std::string_view groove, Angle groove_angle) {
  if (same_name(groove, "round")) return 1.0;
  return at_groove_angle("fatigue.en81_groove_equivalent", "en81_50_grooves", "equivalent_sheaves",
                         groove, groove_angle);
}

}  // namespace ropewalk::fatigue
