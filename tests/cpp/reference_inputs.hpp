/// The inputs of a reference case as quantities, and formulas of one row called by them.
#pragma once

#include <string_view>
#include <tuple>
#include <utility>

#include "reference_runs.hpp"
#include "ropewalk/base/model.hpp"

namespace ropewalk::test {

/// A quantity among the inputs; throws if there is none of that name, or it is no number.
template <class Q>
Q quantity(const Inputs& inputs, std::string_view name) {
  return from_si<Q>(inputs.at(std::string(name)).number.value());
}

/// The same, nothing where the case leaves it out.
template <class Q>
Q quantity_or_none(const Inputs& inputs, std::string_view name) {
  return inputs.contains(name) ? quantity<Q>(inputs, name) : from_si<Q>(0.0);
}

inline const std::string& text(const Inputs& inputs, std::string_view name) {
  return inputs.at(std::string(name)).text;
}

inline int whole(const Inputs& inputs, std::string_view name) {
  return static_cast<int>(to_si(quantity<Number>(inputs, name)));
}

/// A formula of one row, its arguments found by their names.
template <class F>
Outputs run_row(const ReferenceCase& one) {
  const auto call = [&]<class... P>(const P&... parameter) {
    return Model<F>{}(quantity<typename P::quantity>(one.inputs, parameter.name)...);
  };
  return {{"result", to_si(std::apply(call, F::parameters))}};
}

template <class F>
std::pair<const std::string, Run> row() {
  return {std::string(F::name), run_row<F>};
}

}  // namespace ropewalk::test
