#include "common.hpp"
#include "records.hpp"

#include "ropewalk/rope/catalog.hpp"
#include "ropewalk/rope/factors.hpp"

namespace ropewalk::bindings {

namespace {

/// Adds one property: its SI number or None, and its source if it is known.
template <class Q>
void add_property(py::dict& record, py::dict& sources, const char* name,
                  const rope::Known<Q>& known) {
  record[name] = py::none();
  if (!known) return;
  record[name] = to_si(known->value);
  sources[name] =
      py::make_tuple(citation(known->provenance.source), std::string(known->provenance.standing));
}

py::dict rope_record(const rope::RopeData& data) {
  py::dict record;
  py::dict sources;
  record["construction"] = data.construction;
  record["rope_class"] = std::string(data.rope_class);
  record["core"] = std::string(data.core);
  record["grade"] = data.grade;
  record["size"] = data.size;
  record["diameter"] = to_si(data.diameter);
  add_property(record, sources, "breaking_force", data.breaking_force);
  add_property(record, sources, "mass_per_length", data.mass_per_length);
  record["weight_per_length"] = py::none();
  if (data.mass_per_length) {
    record["weight_per_length"] = to_si(rope::weight_per_length(data.mass_per_length->value));
    sources["weight_per_length"] = sources["mass_per_length"];
  }
  add_property(record, sources, "metallic_area", data.metallic_area);
  add_property(record, sources, "outer_wire_diameter", data.outer_wire_diameter);
  add_property(record, sources, "modulus", data.modulus);
  add_property(record, sources, "modulus_low_load", data.modulus_low_load);
  add_property(record, sources, "wire_strength", data.wire_strength);
  record["sources"] = sources;
  return record;
}

template <class Q>
Q quantity(std::string_view where, std::string_view field, const SiArgument& argument) {
  return from_si<Q>(si_number(where, field, unit_text<Q>(), argument.value));
}

template <class Q>
std::optional<Q> optional_quantity(std::string_view where, std::string_view field,
                                   const OptionalSiArgument& argument) {
  if (argument.value.is_none()) return {};
  return quantity<Q>(where, field, argument);
}

py::dict certificate_record(const std::string& construction, const std::string& grade,
                            const SiArgument& diameter, const SiArgument& breaking_force,
                            const SiArgument& mass_per_length,
                            const OptionalSiArgument& metallic_area,
                            const OptionalSiArgument& outer_wire_diameter,
                            const OptionalSiArgument& modulus,
                            const OptionalSiArgument& wire_strength) {
  constexpr std::string_view where = "rope.Rope.custom";
  return rope_record(rope::from_certificate(
      {.construction = construction,
       .grade = grade,
       .diameter = quantity<Length>(where, "diameter", diameter),
       .breaking_force = quantity<Force>(where, "breaking_force", breaking_force),
       .mass_per_length = quantity<MassPerLength>(where, "mass_per_length", mass_per_length),
       .metallic_area = optional_quantity<Area>(where, "metallic_area", metallic_area),
       .outer_wire_diameter =
           optional_quantity<Length>(where, "outer_wire_diameter", outer_wire_diameter),
       .modulus = optional_quantity<Stress>(where, "modulus", modulus),
       .wire_strength = optional_quantity<Stress>(where, "wire_strength", wire_strength)}));
}

std::vector<py::dict> catalog_records(const std::optional<std::string>& construction,
                                      const std::optional<std::string>& grade,
                                      const OptionalSiArgument& diameter) {
  constexpr std::string_view where = "rope.catalog";
  std::vector<py::dict> records;
  for (const rope::RopeData& data :
       rope::search(where, {.construction = construction,
                            .grade = grade,
                            .diameter = optional_quantity<Length>(where, "diameter", diameter)})) {
    records.push_back(rope_record(data));
  }
  return records;
}

void bind_lookups(py::module_& m) {
  m.def(
      "find",
      [](const std::string& construction, const std::string& grade, const SiArgument& diameter) {
        return rope_record(
            rope::find(construction, grade, quantity<Length>("rope.Rope", "diameter", diameter)));
      },
      py::arg("construction"), py::arg("grade"), py::arg("diameter"),
      "One rope of the catalog by its diameter [m]: its properties in SI and their sources.");
  m.def(
      "from_factors",
      [](const std::string& rope_class, const SiArgument& wire_strength,
         const SiArgument& diameter) {
        constexpr std::string_view where = "rope.Rope.metric";
        return rope_record(rope::from_factors(rope_class,
                                              quantity<Stress>(where, "wire_grade", wire_strength),
                                              quantity<Length>(where, "diameter", diameter)));
      },
      py::arg("rope_class"), py::arg("wire_strength"), py::arg("diameter"),
      "A rope of EN 12385-4 by class, wire strength [Pa] and diameter [m], as find() gives it.");
  m.def("from_certificate", &certificate_record, py::arg("construction"), py::arg("grade"),
        py::arg("diameter"), py::arg("breaking_force"), py::arg("mass_per_length"),
        py::arg("metallic_area") = py::none(), py::arg("outer_wire_diameter") = py::none(),
        py::arg("modulus") = py::none(), py::arg("wire_strength") = py::none(),
        "A rope as its certificate states it, in SI, as find() gives it.");
  m.def("catalog", &catalog_records, py::arg("construction") = py::none(),
        py::arg("grade") = py::none(), py::arg("diameter") = py::none(),
        "The ropes of the catalog, or those of one construction, grade, diameter [m], as find() "
        "gives them.");
}

}  // namespace

void bind_rope(py::module_& core) {
  py::module_ m = submodule(core, "rope", "Wire rope: strength, mass, metallic area, catalog.");
  bind_row<rope::BreakingForceFromFactor>(m, "Breaking force K d2 R.");
  bind_row<rope::MassFromFactor>(m, "Mass per length W d2.");
  bind_row<rope::AreaFromFactor>(m, "Metallic area C d2.");
  bind_lookups(m);
  m.def(
      "factors", [] { return table_records("rope_factors"); },
      "The factors of every class with their sources.");
  m.def(
      "grades", [] { return table_records("rope_grades"); },
      "The grades of rope and what is published on their wire.");
  m.def(
      "constructions", [] { return table_records("rope_constructions"); },
      "The constructions: make-up, metallic area, outer wire, modulus, with their sources.");
}

}  // namespace ropewalk::bindings
