/// Which reference cases the scalar C++ interface runs, and how.
#pragma once

#include <functional>
#include <map>
#include <string>

#include "reference_cases.hpp"

namespace ropewalk::test {

/// What a case gives, by attribute, in coherent SI.
using Outputs = std::map<std::string, double, std::less<>>;
using Run = std::function<Outputs(const ReferenceCase&)>;

/// How to run a case, by the function it names. Formulas of one row are called by their own list
/// of parameters; look-ups and reevings by hand.
[[nodiscard]] const std::map<std::string, Run, std::less<>>& reference_runs();

/// Those of the heave compensator.
[[nodiscard]] std::map<std::string, Run, std::less<>> compensator_runs();
/// Those of brakes and over-travel.
[[nodiscard]] std::map<std::string, Run, std::less<>> brake_runs();
/// Those of the hoist's structure and of what hangs in it, which are among reference_runs().
[[nodiscard]] std::map<std::string, Run, std::less<>> hoist_runs();
/// Those of the weight indicator at the dead line and of rope dynamics.
[[nodiscard]] std::map<std::string, Run, std::less<>> indicator_runs();

/// Whether a case can be run: its function is known, and its inputs are numbers and texts. Cases
/// that pass lists, or objects of the Python face, run in the Python suite only.
[[nodiscard]] bool can_run(const ReferenceCase& one);

}  // namespace ropewalk::test
