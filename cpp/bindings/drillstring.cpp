#include "common.hpp"
#include "records.hpp"

#include "ropewalk/drillstring/drag.hpp"
#include "ropewalk/drillstring/string.hpp"
#include "ropewalk/drillstring/tool_joint.hpp"
#include "ropewalk/drillstring/tubular.hpp"

namespace ropewalk::bindings {

namespace {

using drillstring::DrillString;
using drillstring::Operation;
using drillstring::Section;

constexpr std::string_view string_name = "drillstring.DrillString";

template <class Q>
Q argument(std::string_view where, std::string_view field, const SiArgument& given) {
  return from_si<Q>(si_number(where, field, unit_text<Q>(), given.value));
}

Section section(std::string_view where, const SiArgument& length,
                const SiArgument& mass_per_length) {
  return {argument<Length>(where, "length", length),
          argument<MassPerLength>(where, "mass_per_length", mass_per_length)};
}

DrillString make_string(const std::vector<SiArgument>& lengths,
                        const std::vector<SiArgument>& masses_per_length,
                        const SiArgument& mud_density, const SiArgument& steel_density) {
  if (lengths.size() != masses_per_length.size()) {
    throw InadmissibleError(string_name, "masses_per_length",
                            "lengths and masses_per_length must be equally many");
  }
  std::vector<Section> sections;
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    sections.push_back(section(string_name, lengths[i], masses_per_length[i]));
  }
  return {std::move(sections), argument<Density>(string_name, "mud_density", mud_density),
          argument<Density>(string_name, "steel_density", steel_density)};
}

Operation parse_operation(std::string_view where, const std::string& text) {
  if (text == "hoisting") return Operation::hoisting;
  if (text == "lowering") return Operation::lowering;
  if (text == "rotating") return Operation::rotating;
  throw InadmissibleError(
      where, "operation",
      "operation must be 'hoisting', 'lowering' or 'rotating', got '" + text + "'");
}

/// One force per row of the arguments brought to one shape.
template <class Compute>
SiResult forces(std::string_view where, const std::vector<Columns::Named>& arguments,
                const Compute& compute) {
  const Columns columns(where, arguments);
  if (columns.scalar()) return {py::float_(to_si(compute(columns.row(0))))};
  py::array_t<double> out = columns.make_values();
  double* data = out.mutable_data();
  for (std::size_t i = 0; i < columns.rows(); ++i) data[i] = to_si(compute(columns.row(i)));
  return {std::move(out)};
}

SiResult weight_in_mud(const DrillString& string, const SiArgument& depth) {
  return forces("drillstring.DrillString.weight_in_mud", {{"depth", "m", depth.value}},
                [&](const std::vector<double>& row) {
                  return string.weight_in_mud(from_si<Length>(row[0]));
                });
}

SiResult hook_load(const DrillString& string, const std::string& operation, const SiArgument& depth,
                   const SiArgument& drag_up, const SiArgument& drag_down,
                   const SiArgument& block_weight) {
  constexpr std::string_view where = "drillstring.DrillString.hook_load";
  const Operation what = parse_operation(where, operation);
  return forces(where,
                {{"depth", "m", depth.value},
                 {"drag_up", "N", drag_up.value},
                 {"drag_down", "N", drag_down.value},
                 {"block_weight", "N", block_weight.value}},
                [&](const std::vector<double>& row) {
                  return string.hook_load(what, from_si<Length>(row[0]), from_si<Force>(row[1]),
                                          from_si<Force>(row[2]), from_si<Force>(row[3]));
                });
}

void bind_string(py::module_& m) {
  m.def(
      "check_section",
      [](const SiArgument& length, const SiArgument& mass_per_length) {
        drillstring::check(section("drillstring.Section", length, mass_per_length));
      },
      py::arg("length"), py::arg("mass_per_length"), "Raises unless there can be such a section.");

  py::class_<DrillString>(m, "DrillString",
                          "Sections from the bit upwards, SI; the last is the drill pipe.")
      .def(py::init(&make_string), py::arg("lengths"), py::arg("masses_per_length"),
           py::arg("mud_density"), py::arg("steel_density"))
      .def_property_readonly("length", [](const DrillString& s) { return to_si(s.length()); })
      .def_property_readonly("mass", [](const DrillString& s) { return to_si(s.mass()); })
      .def_property_readonly("buoyancy_factor",
                             [](const DrillString& s) { return to_si(s.buoyancy_factor()); })
      .def_property_readonly("weight_in_air",
                             [](const DrillString& s) { return to_si(s.weight_in_air()); })
      .def_property_readonly("pipe_weight",
                             [](const DrillString& s) { return to_si(s.pipe_weight()); })
      .def_property_readonly("bha_length",
                             [](const DrillString& s) { return to_si(s.bha_length()); })
      .def_property_readonly("bha_excess_weight",
                             [](const DrillString& s) { return to_si(s.bha_excess_weight()); })
      .def("weight_in_mud", &weight_in_mud, py::arg("depth"),
           "Weight [N] in mud of the lowest `depth` [m] of the string.")
      .def("hook_load", &hook_load, py::arg("operation"), py::arg("depth"), py::kw_only(),
           py::arg("drag_up"), py::arg("drag_down"), py::arg("block_weight"),
           "Everything hung on the lines [N].");
}

}  // namespace

void bind_drillstring(py::module_& core) {
  using namespace drillstring;
  py::module_ m = submodule(core, "drillstring", "Drill strings: mass, weight in mud, drag.");
  bind_row<BuoyancyFactor>(m, "Buoyancy factor of a string in mud.");
  bind_row<TubeMassPerLength>(m, "Mass per length of a plain tube.");
  bind_row<BuoyedWeightPerLength>(m, "Weight per length of a pipe in mud.");
  bind_row<ToolJointMass>(m, "Mass of a tool joint, API RP 7G.");
  bind_row<JointedMassPerLength>(m, "Mass per length of drill pipe with tool joints, API RP 7G.");
  bind_row<SlantPull>(m, "Axial load from a straight inclined section, soft string.");
  bind_row<DragNormalForce>(m, "Force between an element of string and the wall, Johancsik.");
  bind_row<DragTensionChange>(m, "Change of tension over an element of string, Johancsik.");
  bind_string(m);
  m.def(
      "tubulars", [] { return table_records("tubulars"); },
      "Rows of the table of tubulars with source and standing of each.");
  m.def(
      "tubular_mass_per_length",
      [](const std::string& designation) { return to_si(tubular(designation).mass_per_length); },
      py::arg("designation"), "Mass per length [kg/m] of a pipe by its designation.");
}

}  // namespace ropewalk::bindings
