#include "common.hpp"
#include "records.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/sheave/bend_ratio.hpp"
#include "ropewalk/sheave/groove.hpp"
#include "ropewalk/sheave/pressure.hpp"
#include "ropewalk/sheave/strength_efficiency.hpp"
#include "ropewalk/sheave/tread_diameter.hpp"

namespace ropewalk::bindings {

namespace {

Length rope_diameter_of(std::string_view where, const SiArgument& argument) {
  return from_si<Length>(si_number(where, "rope_diameter", "m", argument.value));
}

std::vector<py::dict> table_of_subject(const std::string& name) {
  const std::vector<std::string> names{"bearing_pressure_limits", "groove_radii",
                                       "strength_efficiency", "tread_diameters"};
  if (std::find(names.begin(), names.end(), name) == names.end()) {
    throw LookupError("sheave.table", "name",
                      "there is no table '" + name + "' here; there are: " + joined(names));
  }
  return table_records(name);
}

}  // namespace

void bind_sheave(py::module_& core) {
  py::module_ m = submodule(core, "sheave", "Sheaves: size, groove, bearing pressure, strength.");
  bind_row<sheave::BendRatio>(m, "Sheave diameter over rope diameter.");
  bind_row<sheave::BearingPressure>(m, "Radial bearing pressure on the projected area.");
  bind_row<sheave::BearingPressureRatio>(m, "Bearing pressure over the strength of the wire.");
  bind_row<sheave::StrengthEfficiency>(m, "Share of its strength a rope keeps over a sheave.");
  bind_row<sheave::GrooveRadiusNewMin>(m, "Smallest groove radius of a new sheave.");
  bind_row<sheave::GrooveRadiusNewMax>(m, "Largest groove radius of a new sheave.");
  bind_row<sheave::GrooveRadiusWornMin>(m, "Smallest groove radius of a worn sheave.");
  bind_row<sheave::GrooveDepthMin>(m, "Smallest groove depth for a drilling line.");
  bind_row<sheave::GrooveDepthMax>(m, "Largest groove depth for a drilling line.");

  m.def(
      "groove_radius_table",
      [](const SiArgument& rope_diameter, const std::string& state) {
        const Length size = rope_diameter_of("sheave.groove_radius_table", rope_diameter);
        return to_si(sheave::groove_radius_table(size, state).value);
      },
      py::arg("rope_diameter"), py::arg("state") = "new",
      "Printed minimum groove radius [m] of a rope size [m].");
  m.def(
      "bearing_pressure_limit",
      [](const std::string& groove_material, const std::string& rope_class,
         const std::string& lay) {
        return to_si(sheave::bearing_pressure_limit(groove_material, rope_class, lay).value);
      },
      py::arg("groove_material"), py::arg("rope_class"), py::arg("lay"),
      "Bearing pressure [Pa] a groove material bears.");
  m.def(
      "tread_diameter",
      [](const std::string& construction, const std::string& condition,
         const SiArgument& rope_diameter) {
        const Length size = rope_diameter_of("sheave.tread_diameter", rope_diameter);
        return to_si(sheave::tread_diameter(construction, condition, size).value);
      },
      py::arg("construction"), py::arg("condition"), py::arg("rope_diameter"),
      "Tread diameter [m] advised for a construction.");
  m.def("table", &table_of_subject, py::arg("name"),
        "Rows of one of this subject's tables with source and standing of each value.");
}

}  // namespace ropewalk::bindings
