#include "common.hpp"

#include "ropewalk/dynamics/factors.hpp"
#include "ropewalk/dynamics/stiffness.hpp"
#include "ropewalk/dynamics/string.hpp"

namespace ropewalk::bindings {

void bind_dynamics(py::module_& core) {
  py::module_ m = submodule(core, "dynamics", "Stiffness of the line, frequencies, peak loads.");
  bind_row<dynamics::LineStiffness>(m, "Stiffness of the strung line, sheaves free.");
  bind_row<dynamics::LockedStiffness>(m, "Stiffness of the lines, sheaves locked.");
  bind_row<dynamics::StringStiffness>(m, "Stiffness of a rope or string pulled at its end.");
  bind_row<dynamics::SeriesStiffness>(m, "Stiffness of two springs one after the other.");
  bind_row<dynamics::StaticStretch>(m, "Stretch under the load at rest.");
  bind_row<dynamics::NaturalFrequency>(m, "Natural frequency of a load on the line.");
  bind_row<dynamics::StringFrequency>(m, "Natural frequency of block and string on the line.");
  bind_row<dynamics::StepFactor>(m, "Peak over rest, acceleration put on at once.");
  bind_row<dynamics::RampFactor>(m, "Peak over rest, acceleration that rises evenly.");
  bind_row<dynamics::StopFactor>(m, "Peak over rest, speed changed evenly.");
  bind_row<dynamics::TroughFactor>(m, "Least over rest, hoisting stopped evenly.");
  bind_row<dynamics::SlackSpeed>(m, "Speed that may be stopped at once without slack.");
  bind_row<dynamics::PickupFactor>(m, "Peak over rest, slack taken up at a speed.");
  bind_row<dynamics::DropFactor>(m, "Peak over rest, load dropped into the line.");
  bind_row<dynamics::WaveForce>(m, "Force of a sudden change of speed in a string.");
  bind_row<dynamics::WaveReturnTime>(m, "Time until a wave is back from the end of a string.");
}

}  // namespace ropewalk::bindings
