/// Models and a bend that the fatigue tests share.
#pragma once

#include <string>
#include <vector>

#include "ropewalk/fatigue/model.hpp"

namespace ropewalk::fatigue {

inline ReferenceLife reference() {
  return {.cycles = 1e5,
          .rope_tension = 100.0 * kilonewton,
          .rope_diameter = 28.0 * millimeter,
          .sheave_diameter = 700.0 * millimeter};
}

/// All models; constants invented where they are the user's.
inline std::vector<LifeModel> all_models() {
  return {DruckerTachau{},
          FeyrerForm({1.0, 0.5, 6.5, -0.3, -1.8, 1.2}, Basis::discard),
          FeyrerSecondEdition({1.0, 0.5, 6.5, -1.8}, 0.81, Basis::breakage),
          En81(reference()),
          HandbookRelativeLife(reference(), 2.3),
          PowerLaw(0.25, 2.3, Basis::discard),
          En13001(1.0)};
}

inline BendPoint point() {
  return {.rope_tension = 100.0 * kilonewton,
          .rope_diameter = 28.0 * millimeter,
          .sheave_diameter = 700.0 * millimeter,
          .wire_strength = 1770.0 * megapascal,
          .breaking_force = 500.0 * kilonewton,
          .bend_length = 3.0 * meter};
}

inline std::string name(const LifeModel& model) { return describe(model).name; }

}  // namespace ropewalk::fatigue
