/// A published formula of one row as a type, and everything that can be done with one.
///
/// A *row formula* is a struct with
///   - `name`        "subject.function", as users call it and as errors quote it,
///   - `parameters`  a tuple of Parameter<Q>, in call order,
///   - `formula`     the equation on quantities: static, noexcept, no checks, reads like the paper.
/// It may also have
///   - `joint_rule` and `joint(args…)`  a condition between arguments, e.g. "sheave_diameter must
///     be at least rope_diameter".
///   - `group_name`, `group_range` and `group(args…)`  what the source covers of a number formed
///   from
///     the arguments, a Fourier number for instance; outside it the caller's policy decides.
/// From these come the checked scalar call (Model below), the batch over arrays (batch.hpp),
/// the Python binding and the list of signatures: none of them is written by hand.
#pragma once

#include <cmath>
#include <string>
#include <tuple>
#include <utility>

#include "ropewalk/base/error.hpp"
#include "ropewalk/base/range.hpp"
#include "ropewalk/units/text.hpp"

namespace ropewalk {

namespace detail {

template <class F>
inline constexpr std::size_t arity =
    std::tuple_size_v<std::remove_cvref_t<decltype(F::parameters)>>;

template <class F, std::size_t I>
using argument_t =
    typename std::tuple_element_t<I, std::remove_cvref_t<decltype(F::parameters)>>::quantity;

template <class F, std::size_t... I>
auto result_of(std::index_sequence<I...>)
    -> decltype(F::formula(std::declval<argument_t<F, I>>()...));

template <class F>
concept HasJointRule = requires { F::joint_rule; };
template <class F>
concept HasGroup = requires { F::group_name; };

/// "sheave.x(): rope_diameter = -0.035 m is outside (0, 1] m (ropewalk's guard …)".
[[nodiscard]] std::string describe_outside(std::string_view field, double value,
                                           std::string_view unit, const Interval& range);

[[noreturn]] void throw_inadmissible(std::string_view where, std::string_view field, double value,
                                     std::string_view unit, const Interval& range);
[[noreturn]] void throw_outside_validity(std::string_view where, std::string_view field,
                                         double value, std::string_view unit,
                                         const Interval& range);
[[noreturn]] void throw_joint(std::string_view where, std::string_view rule);
[[noreturn]] void throw_not_finite(std::string_view where);

}  // namespace detail

template <class F>
using result_t = decltype(detail::result_of<F>(std::make_index_sequence<detail::arity<F>>{}));

/// Throws InadmissibleError if an argument cannot be; returns the status of the row otherwise.
/// With Policy::raise an argument outside the published range throws ValidityError.
template <class F, class... Q>
RowStatus admit(Policy policy, const Q&... args) {
  RowStatus status = RowStatus::ok;
  const auto look = [&]<class P>(const P& parameter, const typename P::quantity& argument) {
    const double x = to_si(argument);
    if (!parameter.admissible.contains(x)) {
      detail::throw_inadmissible(F::name, parameter.name, x, unit_text<typename P::quantity>(),
                                 parameter.admissible);
    }
    if (!parameter.valid.contains(x)) {
      if (policy == Policy::raise) {
        detail::throw_outside_validity(F::name, parameter.name, x,
                                       unit_text<typename P::quantity>(), parameter.valid);
      }
      status |= RowStatus::outside_validity;
    }
  };
  std::apply([&](const auto&... parameter) { (look(parameter, args), ...); }, F::parameters);
  if constexpr (detail::HasJointRule<F>) {
    if (!F::joint(args...)) detail::throw_joint(F::name, F::joint_rule);
  }
  if constexpr (detail::HasGroup<F>) {
    const double x = F::group(args...);
    if (!F::group_range.contains(x)) {
      if (policy == Policy::raise) {
        detail::throw_outside_validity(F::name, F::group_name, x, "", F::group_range);
      }
      status |= RowStatus::outside_validity;
    }
  }
  return status;
}

/// The checked scalar call of a row formula: `sheave::bearing_pressure(F, d, D)`.
template <class F>
struct Model {
  using Formula = F;

  template <class... Q>
  [[nodiscard]] result_t<F> operator()(const Q&... args) const {
    return evaluate(Policy::raise, args...).first;
  }

  /// Value and row status under the caller's policy (warn and ignore are the same in C++: the
  /// status says what a warning would).
  template <class... Q>
  [[nodiscard]] std::pair<result_t<F>, RowStatus> evaluate(Policy policy, const Q&... args) const {
    const RowStatus status = admit<F>(policy, args...);
    const result_t<F> value = F::formula(args...);
    if (!std::isfinite(to_si(value))) detail::throw_not_finite(F::name);
    return {value, status};
  }
};

}  // namespace ropewalk
