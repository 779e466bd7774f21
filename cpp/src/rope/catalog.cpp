#include "ropewalk/rope/catalog.hpp"

#include <cmath>

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/require.hpp"
#include "ropewalk/base/table.hpp"
#include "ropewalk/rope/factors.hpp"

namespace ropewalk::rope {

namespace {

constexpr std::string_view derived = "derived";
constexpr Provenance given{"given", "given"};

constexpr MassPerLength kilogram_per_100_meter = kilogram / (100.0 * meter);

constexpr Parameter<MassPerLength> rope_mass{
    "mass_per_length",
    above_up_to(0.0 * kilogram_per_meter, 10'000.0 * kilogram_per_meter, params::guard)};

/// Value and source of one cell; missing if the cell is empty.
template <class Q>
Known<Q> cell(const Table& printed, std::size_t row, std::string_view column, Q unit,
              const std::string& property) {
  const double number = printed.number(row, column);
  if (std::isnan(number)) return {};
  return Sourced<Q>{
      number * unit,
      {printed.text(row, property + "_source"), printed.text(row, property + "_standing")}};
}

/// What the construction says of a rope: metallic area, outer wire, modulus.
void add_construction(RopeData& rope, const Table& printed, std::size_t row) {
  const Length d = rope.diameter;
  rope.metallic_area = cell<Area>(printed, row, "area_factor", d * d, "area_factor");
  rope.outer_wire_diameter = cell<Length>(printed, row, "outer_wire_ratio", d, "outer_wire_ratio");
  rope.modulus = cell<Stress>(printed, row, "modulus [psi]", psi, "modulus");
  rope.modulus_low_load = cell<Stress>(printed, row, "modulus_low_load [psi]", psi, "modulus");
}

/// R = F / (K d²) with the strength factor of the class.
Known<Stress> equivalent_wire_strength(const RopeData& rope) {
  const std::string class_and_core = std::string(rope.rope_class) + " " + std::string(rope.core);
  const Factors of_class = factors(class_and_core);
  const Area square = rope.diameter * rope.diameter;
  return Sourced<Stress>{rope.breaking_force->value / (of_class.strength_factor * square),
                         {of_class.provenance.source, derived}};
}

/// Column names of the strength tables, which differ in their units and grades.
struct StrengthTable {
  std::string_view name;
  std::string_view diameter_column;
  std::string_view diameter_symbol;
  Length diameter_unit;
  std::string_view force_column;
  Force force_unit;
  std::string_view mass_column;
  MassPerLength mass_unit;
  std::string_view wire_strength_column;  ///< empty if the grade is not one of wire
};

constexpr StrengthTable customary{
    "ropes",     "diameter [in]",           " in",          inch, "breaking_force [lbf]",
    pound_force, "mass_per_length [lb/ft]", pound_per_foot, ""};
constexpr StrengthTable metric{"ropes_metric",
                               "diameter [mm]",
                               " mm",
                               millimeter,
                               "breaking_force [kN]",
                               kilonewton,
                               "mass_per_length [kg/100m]",
                               kilogram_per_100_meter,
                               "wire_strength [MPa]"};

RopeData read(const StrengthTable& columns, std::size_t row, const Table& constructions,
              std::size_t construction) {
  const Table& printed = table(columns.name);
  RopeData rope;
  rope.construction = constructions.text(construction, "construction");
  rope.rope_class = printed.text(row, "rope_class");
  rope.core = printed.text(row, "core");
  rope.grade = printed.text(row, "grade");
  rope.size =
      std::string(printed.text(row, columns.diameter_column)).append(columns.diameter_symbol);
  rope.diameter = printed.number(row, columns.diameter_column) * columns.diameter_unit;
  rope.breaking_force =
      cell<Force>(printed, row, columns.force_column, columns.force_unit, "breaking_force");
  rope.mass_per_length =
      cell<MassPerLength>(printed, row, columns.mass_column, columns.mass_unit, "mass_per_length");
  add_construction(rope, constructions, construction);
  rope.wire_strength =
      columns.wire_strength_column.empty()
          ? equivalent_wire_strength(rope)
          : cell<Stress>(printed, row, columns.wire_strength_column, megapascal, "breaking_force");
  return rope;
}

void add_ropes(std::vector<RopeData>& ropes, const StrengthTable& columns,
               const Table& constructions, std::size_t construction) {
  const Table& printed = table(columns.name);
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    if (printed.text(row, "rope_class") == constructions.text(construction, "rope_class") &&
        printed.text(row, "core") == constructions.text(construction, "core")) {
      ropes.push_back(read(columns, row, constructions, construction));
    }
  }
}

/// The name a table gives to what the caller calls `name`: the name itself or one it is also
/// called.
std::string_view listed_name(const Table& printed, std::string_view column, std::string_view name) {
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    const std::string_view listed = printed.text(row, column);
    if (same_name(listed, name) || among_names(name, printed.text(row, "also_called"))) {
      return listed;
    }
  }
  return name;
}

/// As listed_name(), for a name that may not have been asked for.
std::optional<std::string_view> wanted_name(std::string_view table_name, std::string_view column,
                                            const std::optional<std::string_view>& name) {
  if (!name) return {};
  return listed_name(table(table_name), column, *name);
}

bool matches(const std::optional<std::string_view>& wanted, std::string_view name) {
  return !wanted || same_name(*wanted, name);
}

[[noreturn]] void refuse(std::string_view where, std::string_view field, std::string_view asked,
                         const std::vector<std::string>& known) {
  throw LookupError(where, field,
                    "the catalog has no " + std::string(field) + " '" + std::string(asked) +
                        "' here; it has: " + joined(known));
}

}  // namespace

ForcePerLength weight_per_length(MassPerLength mass_per_length) noexcept {
  return mass_per_length * standard_gravity;
}

const std::vector<RopeData>& catalog() {
  static const std::vector<RopeData> all = [] {
    std::vector<RopeData> ropes;
    const Table& constructions = table("rope_constructions");
    for (std::size_t row = 0; row < constructions.rows(); ++row) {
      add_ropes(ropes, customary, constructions, row);
      add_ropes(ropes, metric, constructions, row);
    }
    return ropes;
  }();
  return all;
}

std::vector<RopeData> search(std::string_view where, const Wanted& wanted) {
  if (wanted.diameter) require(where, params::rope_diameter.named("diameter"), *wanted.diameter);
  const auto construction = wanted_name("rope_constructions", "construction", wanted.construction);
  const auto grade = wanted_name("rope_grades", "grade", wanted.grade);

  std::vector<RopeData> found;
  std::vector<std::string> constructions;
  std::vector<std::string> grades;
  std::vector<Length> sizes;
  for (const RopeData& rope : catalog()) {
    add_name(constructions, rope.construction);
    if (!matches(construction, rope.construction)) continue;
    add_name(grades, rope.grade);
    if (!matches(grade, rope.grade)) continue;
    sizes.push_back(rope.diameter);
    if (!wanted.diameter || same_size(*wanted.diameter, rope.diameter)) found.push_back(rope);
  }
  if (grades.empty()) refuse(where, "construction", *wanted.construction, constructions);
  if (sizes.empty()) refuse(where, "grade", *wanted.grade, grades);
  if (found.empty()) {
    throw LookupError(where, "diameter",
                      "the catalog has no diameter " + size_text(*wanted.diameter) + " here; " +
                          nearest_sizes(*wanted.diameter, sizes));
  }
  return found;
}

RopeData find(std::string_view construction, std::string_view grade, Length rope_diameter) {
  return search("rope.Rope",
                {.construction = construction, .grade = grade, .diameter = rope_diameter})
      .front();
}

RopeData from_factors(std::string_view rope_class, Stress wire_strength, Length rope_diameter) {
  constexpr std::string_view where = "rope.Rope.metric";
  require(where, params::wire_strength.named("wire_grade"), wire_strength);
  require(where, params::rope_diameter.named("diameter"), rope_diameter);
  const Factors of_class = factors(rope_class);
  RopeData rope;
  rope.rope_class = of_class.rope_class;
  rope.core = of_class.core;
  rope.construction = std::string(of_class.rope_class);
  if (!of_class.core.empty()) rope.construction.append(" ").append(of_class.core);
  rope.grade = number_text(wire_strength / megapascal) + " MPa";
  rope.size = number_text(rope_diameter / millimeter) + " mm";
  rope.diameter = rope_diameter;

  const Table& constructions = table("rope_constructions");
  for (std::size_t row = 0; row < constructions.rows(); ++row) {
    if (constructions.text(row, "construction") == rope.construction) {
      add_construction(rope, constructions, row);
    }
  }
  // A value worked out from a factor that is from memory is no better than the factor.
  const Provenance from_class{
      of_class.provenance.source,
      of_class.provenance.standing == "published" ? derived : of_class.provenance.standing};
  rope.breaking_force = Sourced<Force>{
      BreakingForceFromFactor::formula(rope_diameter, wire_strength, of_class.strength_factor),
      from_class};
  if (of_class.mass_factor) {
    rope.mass_per_length = Sourced<MassPerLength>{
        MassFromFactor::formula(rope_diameter, *of_class.mass_factor), from_class};
  }
  if (of_class.area_factor) {
    rope.metallic_area =
        Sourced<Area>{AreaFromFactor::formula(rope_diameter, *of_class.area_factor), from_class};
  }
  rope.wire_strength = Sourced<Stress>{wire_strength, given};
  return rope;
}

RopeData from_certificate(const Certificate& certificate) {
  constexpr std::string_view where = "rope.Rope.custom";
  const Length d = certificate.diameter;
  require(where, params::rope_diameter.named("diameter"), d);
  require(where, params::breaking_force, certificate.breaking_force);
  require(where, rope_mass, certificate.mass_per_length);
  RopeData rope;
  rope.construction = certificate.construction;
  rope.grade = certificate.grade;
  rope.size = number_text(d / millimeter) + " mm";
  rope.diameter = d;
  rope.breaking_force = Sourced<Force>{certificate.breaking_force, given};
  rope.mass_per_length = Sourced<MassPerLength>{certificate.mass_per_length, given};
  const auto take = [&]<class Q>(Known<Q>& property, const std::optional<Q>& stated,
                                 std::string_view name, const Interval& range) {
    if (!stated) return;
    require(where, Parameter<Q>{name, range}, *stated);
    property = Sourced<Q>{*stated, given};
  };
  take(rope.metallic_area, certificate.metallic_area, "metallic_area",
       above_up_to(from_si<Area>(0.0), pi / 4.0 * (d * d), params::geometry));
  take(rope.outer_wire_diameter, certificate.outer_wire_diameter, "outer_wire_diameter",
       above_up_to(0.0 * meter, d, params::geometry));
  take(rope.modulus, certificate.modulus, "modulus",
       above_up_to(0.0 * pascal, 1e6 * megapascal, params::guard));
  take(rope.wire_strength, certificate.wire_strength, "wire_strength", params::stress_range);
  return rope;
}

}  // namespace ropewalk::rope
