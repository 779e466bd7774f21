#include "common.hpp"
#include "records.hpp"

namespace ropewalk::bindings {
void bind_rope(py::module_& core);
void bind_sheave(py::module_& core);
void bind_reeving(py::module_& core);
void bind_drum(py::module_& core);
void bind_brake(py::module_& core);
void bind_overtravel(py::module_& core);
void bind_drawworks(py::module_& core);
void bind_compensator(py::module_& core);
void bind_mast(py::module_& core);
void bind_suspension(py::module_& core);
void bind_fatigue(py::module_& core);
void bind_design_factor(py::module_& core);
void bind_drillstring(py::module_& core);
void bind_work(py::module_& core);
void bind_line(py::module_& core);
void bind_line_operations(py::module_& core);
void bind_deadline(py::module_& core);
void bind_dynamics(py::module_& core);
void bind_rainflow(py::module_& core);
void bind_fit(py::module_& core);
}  // namespace ropewalk::bindings

PYBIND11_MODULE(_core, core) {
  using namespace ropewalk::bindings;
  core.doc() = "The compiled core of ropewalk: plain SI numbers and float64 arrays, no units.";
  core.attr("__version__") = ROPEWALK_VERSION;
  register_errors();
  bind_rope(core);
  bind_sheave(core);
  bind_reeving(core);
  bind_drum(core);
  bind_brake(core);
  bind_overtravel(core);
  bind_drawworks(core);
  bind_compensator(core);
  bind_mast(core);
  bind_suspension(core);
  bind_fatigue(core);
  bind_design_factor(core);
  bind_drillstring(core);
  bind_work(core);
  bind_line(core);
  bind_line_operations(core);
  bind_deadline(core);
  bind_dynamics(core);
  bind_rainflow(core);
  bind_fit(core);
  core.def("table", &table_records, py::arg("name"), "Rows of an embedded table as records.");
  core.def("signatures", &signatures,
           "Every row function with the dimensions (length, mass, time, angle, temperature) of "
           "its arguments and result, as the compiler knows them.");
}
