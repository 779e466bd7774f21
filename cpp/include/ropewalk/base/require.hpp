/// The check of one argument where no row formula does it.
#pragma once

#include "ropewalk/base/model.hpp"

namespace ropewalk {

/// Throws InadmissibleError unless `argument` lies in the admissible range of its parameter.
template <class Q>
void require(std::string_view where, const Parameter<Q>& parameter, const Q& argument) {
  const double x = to_si(argument);
  if (!parameter.admissible.contains(x)) {
    detail::throw_inadmissible(where, parameter.name, x, unit_text<Q>(), parameter.admissible);
  }
}

}  // namespace ropewalk
