#include "common.hpp"

#include "ropewalk/deadline/anchor.hpp"
#include "ropewalk/deadline/friction.hpp"
#include "ropewalk/deadline/indicator.hpp"
#include "ropewalk/deadline/sensor.hpp"

namespace ropewalk::bindings {

namespace {

using deadline::Indicator;

using Readings = py::array_t<double, py::array::c_style | py::array::forcecast>;

/// Moves of a log: readings [N], whether each went down, and the number of its load.
py::dict friction_fit(const Readings& readings, const std::vector<bool>& down,
                      const std::vector<std::size_t>& loads, int lines, bool dead_line_sheave_turns,
                      double confidence) {
  const auto count = static_cast<std::size_t>(readings.size());
  if (down.size() != count || loads.size() != count) {
    throw InadmissibleError("deadline.fit_friction", "readings",
                            "there must be one motion and one load for each of the " +
                                std::to_string(count) + " readings");
  }
  std::vector<deadline::Move> moves;
  moves.reserve(count);
  for (std::size_t i = 0; i < count; ++i) {
    moves.push_back({from_si<Force>(readings.data()[i]), down[i], loads[i]});
  }
  const deadline::FrictionFit fit =
      deadline::fit_friction(moves, lines, dead_line_sheave_turns, confidence);
  const auto numbers = [](const std::vector<Force>& forces) {
    std::vector<double> values;
    for (const Force& force : forces) values.push_back(to_si(force));
    return values;
  };
  py::dict record;
  record["friction"] = to_si(fit.friction);
  record["standard_error"] = to_si(fit.standard_error);
  record["low"] = to_si(fit.low);
  record["high"] = to_si(fit.high);
  record["scatter"] = to_si(fit.scatter);
  record["degrees_of_freedom"] = fit.degrees_of_freedom;
  record["hook_loads"] = numbers(fit.hook_loads);
  record["hook_load_errors"] = numbers(fit.hook_load_errors);
  return record;
}

void bind_indicator(py::module_& m) {
  py::class_<Indicator>(m, "Indicator", "A weight indicator on a reeving.")
      .def(py::init<reeving::Arrangement, int>(), py::arg("arrangement"), py::arg("lines_set"))
      .def(
          "ratio",
          [](const Indicator& indicator, const std::string& motion) {
            return to_si(indicator.ratio(reeving::motion_named(motion)));
          },
          py::arg("motion"), "Reading over true hook load.")
      .def(
          "error_of",
          [](const Indicator& indicator, const Indicator& believed, const std::string& motion) {
            return to_si(indicator.error_of(believed, reeving::motion_named(motion)));
          },
          py::arg("believed"), py::arg("motion"),
          "Error of the hook load another indicator makes of the reading, over the hook load.");
}

}  // namespace

void bind_deadline(py::module_& core) {
  py::module_ m = submodule(core, "deadline", "The weight indicator at the dead line, the anchor.");
  bind_indicator(m);
  bind_row<deadline::HoistingRatio>(m, "Indicated over true hook load, hoisting.");
  bind_row<deadline::LoweringRatio>(m, "Indicated over true hook load, lowering.");
  bind_row<deadline::HookLoadHoisting>(m, "True hook load behind a reading, hoisting.");
  bind_row<deadline::HookLoadLowering>(m, "True hook load behind a reading, lowering.");
  bind_row<deadline::FrictionFromReadings>(m, "Sheave friction from two readings.");
  bind_row<deadline::HookLoadFromReadings>(m, "True hook load from two readings.");
  bind_row<deadline::FrictionUncertainty>(m, "Uncertainty of the friction from two readings.");
  bind_row<deadline::AnchorCapacity>(m, "Pull at which the line slips through the anchor.");
  bind_row<deadline::ClampsNeeded>(m, "Clamps that hold a pull on the dead line.");
  bind_row<deadline::DeflectionForce>(m, "Force that deflects a line between two supports.");
  bind_row<deadline::TensionFromDeflection>(m, "Tension from the force that deflects a line.");
  bind_row<deadline::CellForce>(m, "Force on the load cell of an anchor.");
  bind_row<deadline::TensionFromCell>(m, "Tension from the force on the cell of an anchor.");
  bind_row<deadline::TensionFromPressure>(m, "Tension from the pressure in a hydraulic cell.");
  bind_row<deadline::PinForce>(m, "Force on the pin of a sheave.");
  bind_row<deadline::TensionFromPin>(m, "Tension from the force on the pin of a sheave.");
  m.def("fit_friction", &friction_fit, py::arg("readings"), py::arg("down"), py::arg("loads"),
        py::arg("lines"), py::arg("dead_line_sheave_turns"), py::arg("confidence"),
        "Sheave friction and true loads [N] by least squares on a log of slow moves.");
}

}  // namespace ropewalk::bindings
