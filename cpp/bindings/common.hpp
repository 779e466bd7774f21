/// The only header that brings in pybind11: every binding file includes it first, so that all
/// translation units see the same casters (anything else breaks the one-definition rule).
#pragma once

#include <pybind11/numpy.h>
#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include <string_view>
#include <vector>

#include "ropewalk/base/batch.hpp"
#include "ropewalk/base/error.hpp"
#include "ropewalk/units/text.hpp"

namespace py = pybind11;

namespace ropewalk::bindings {

/// A number or an array in the coherent SI unit of its parameter, not yet looked at: the function
/// that takes it knows the name to put into an error, a type caster would not.
struct SiArgument {
  py::object value;
};

/// One that may be left out: None.
struct OptionalSiArgument : SiArgument {};

/// What a row function gives: a float, an array, or either of them with its status.
struct SiResult {
  py::object value;
};

/// What Python handed over is not a plain SI number or array: it carries a unit, is text, a
/// boolean … Becomes ropewalk.errors.UnitError.
class BorderError : public Error {
 public:
  using Error::Error;
};

/// `outside_validity` as the caller writes it.
[[nodiscard]] Policy parse_policy(std::string_view where, std::string_view text);

/// One SI number; refuses whatever carries a unit, text, booleans and arrays, by name.
[[nodiscard]] double si_number(std::string_view where, std::string_view field,
                               std::string_view unit, py::handle value);

/// Named arguments brought to one shape: float64, no copy where they already are.
class Columns {
 public:
  struct Named {
    std::string_view name;
    std::string_view unit;
    py::handle value;
  };

  Columns(std::string_view where, const std::vector<Named>& arguments);

  [[nodiscard]] bool scalar() const noexcept { return scalar_; }
  [[nodiscard]] std::size_t rows() const noexcept { return rows_; }
  [[nodiscard]] const std::vector<Column>& columns() const noexcept { return columns_; }
  [[nodiscard]] std::vector<double> row(std::size_t i) const;
  /// A new array of the common shape.
  [[nodiscard]] py::array_t<double> make_values() const { return py::array_t<double>(shape_); }
  [[nodiscard]] py::array_t<std::uint8_t> make_status() const {
    return py::array_t<std::uint8_t>(shape_);
  }

 private:
  std::vector<py::object> keep_;  // owners of the array memory
  std::vector<double> numbers_;   // storage of the plain numbers
  std::vector<Column> columns_;
  std::vector<py::ssize_t> shape_;
  std::size_t rows_ = 1;
  bool scalar_ = true;
};

/// Everything the border needs to know of a row function, without its type.
struct RowFunction {
  struct Argument {
    std::string_view name;
    std::string_view unit;
    Dimensions dimensions;
  };
  std::string_view name;
  std::vector<Argument> arguments;
  std::string_view result_unit;
  Dimensions result_dimensions;
  /// Checked value of one row; throws as `policy` says.
  double (*scalar)(const double* row, Policy policy, RowStatus& status);
  BatchReport (*batch)(const Column* columns, std::size_t rows, double* out, RowStatus* status,
                       int threads, const StopAsked& stop);
};

/// Runs a row function on what Python handed over. Scalars give a float, arrays an array of the
/// common shape. A NaN can only come back together with the status that explains it.
[[nodiscard]] SiResult call_row(const RowFunction& function, const std::vector<py::handle>& values,
                                std::string_view outside_validity, bool return_status, int threads);

/// The same end for batches that are not row functions: raises, warns or stays silent as the
/// policy says, and returns the values with or without status. `explain(row, policy)` evaluates
/// one row again so that it throws the full message.
[[nodiscard]] SiResult finish_batch(std::string_view where, const BatchReport& report,
                                    py::array_t<double> values, py::array_t<std::uint8_t> status,
                                    Policy policy, bool return_status,
                                    const std::function<void(std::size_t, Policy)>& explain);

/// Warns with ropewalk.errors.ValidityWarning.
void warn_outside_validity(const std::string& message);

/// Lets Ctrl-C through while the interpreter lock is released; true: stop.
[[nodiscard]] bool interrupt_asked();

/// Refuses a number of threads that cannot be meant.
void check_threads(std::string_view where, int threads);

/// Adds a row function to the list `_core.signatures()` reports.
void record_signature(const RowFunction& function);
[[nodiscard]] py::dict signatures();

/// C++ errors to the classes of ropewalk.errors.
void register_errors();

/// A submodule that also stands in sys.modules, so that its functions pickle by name.
[[nodiscard]] py::module_ submodule(py::module_& parent, const char* name, const char* doc);

/// "(SI: rope_tension [N], …) -> Pa" for the docstring of a bound function.
[[nodiscard]] std::string row_doc(const RowFunction& function, std::string_view doc);

namespace detail {

template <std::size_t, class T>
using same = T;

template <class F, std::size_t... I>
const RowFunction& row_function(std::index_sequence<I...>) {
  using ropewalk::detail::argument_t;
  using Result = result_t<F>;
  static const RowFunction function{
      F::name,
      {{std::get<I>(F::parameters).name, unit_text<argument_t<F, I>>(),
        QuantityName<argument_t<F, I>>::dimensions}...},
      unit_text<Result>(),
      QuantityName<Result>::dimensions,
      [](const double* row, Policy policy, RowStatus& status) {
        const auto [value, s] = Model<F>{}.evaluate(policy, from_si<argument_t<F, I>>(row[I])...);
        status = s;
        return to_si(value);
      },
      [](const Column* columns, std::size_t rows, double* out, RowStatus* status, int threads,
         const StopAsked& stop) {
        return batch<F>({columns[I]...}, rows, out, status, threads, stop);
      }};
  return function;
}

template <class F, std::size_t... I>
void bind_row(py::module_& m, std::string_view doc, std::index_sequence<I...> order) {
  const RowFunction& function = row_function<F>(order);
  record_signature(function);
  const char* short_name = F::name.data() + F::name.find('.') + 1;
  m.def(
      short_name,
      [&function](const same<I, SiArgument>&... arguments, const std::string& outside_validity,
                  bool return_status, int threads) {
        return call_row(function, {arguments.value...}, outside_validity, return_status, threads);
      },
      py::arg(std::get<I>(F::parameters).name.data())..., py::kw_only(),
      py::arg("outside_validity") = "raise", py::arg("return_status") = false,
      py::arg("threads") = 1, row_doc(function, doc).c_str());
}

}  // namespace detail

/// Binds row formula F as `m.<function>` and records its signature.
template <class F>
void bind_row(py::module_& m, std::string_view doc) {
  detail::bind_row<F>(m, doc, std::make_index_sequence<ropewalk::detail::arity<F>>{});
}

}  // namespace ropewalk::bindings

namespace pybind11::detail {

template <>
struct type_caster<ropewalk::bindings::SiArgument> {
  PYBIND11_TYPE_CASTER(ropewalk::bindings::SiArgument,
                       const_name("float | numpy.typing.ArrayLike"));
  bool load(handle source, bool) {
    value.value = reinterpret_borrow<object>(source);
    return true;
  }
};

template <>
struct type_caster<ropewalk::bindings::OptionalSiArgument> {
  PYBIND11_TYPE_CASTER(ropewalk::bindings::OptionalSiArgument,
                       const_name("float | numpy.typing.ArrayLike | None"));
  bool load(handle source, bool) {
    value.value = reinterpret_borrow<object>(source);
    return true;
  }
};

template <>
struct type_caster<ropewalk::bindings::SiResult> {
  PYBIND11_TYPE_CASTER(ropewalk::bindings::SiResult, const_name("typing.Any"));
  static handle cast(ropewalk::bindings::SiResult&& result, return_value_policy, handle) {
    return result.value.release();
  }
};

}  // namespace pybind11::detail
