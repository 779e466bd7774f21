/// The part of the subject fatigue that is bound apart: the life models.
#pragma once

#include "common.hpp"

namespace ropewalk::bindings {

/// Adds class LifeModel to the module of the subject.
void bind_life_models(py::module_& m);

}  // namespace ropewalk::bindings
