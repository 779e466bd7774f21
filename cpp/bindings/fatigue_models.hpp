/// The part of the subject fatigue that is bound apart: the life models.
#pragma once

#include "common.hpp"

#include "ropewalk/fatigue/model.hpp"

namespace ropewalk::bindings {

/// The variant under a type of its own: a variant by itself is taken apart at the border.
struct BoundModel {
  fatigue::LifeModel model;
};

/// Adds class LifeModel to the module of the subject.
void bind_life_models(py::module_& m);

}  // namespace ropewalk::bindings
