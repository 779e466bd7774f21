#include "common.hpp"

#include <optional>

namespace ropewalk::bindings {

namespace {

constexpr int contiguous = py::array::c_style | py::array::forcecast;
using Array = py::array_t<double, contiguous>;

std::string type_name(py::handle value) {
  return py::str(py::type::handle_of(value).attr("__name__")).cast<std::string>();
}

[[noreturn]] void refuse(std::string_view where, std::string_view field, std::string_view unit,
                         const std::string& got) {
  std::string text(field);
  text += unit.empty() ? " must be a plain number or a float array"
                       : " must be a plain number or a float array in " + std::string(unit);
  throw BorderError(where, field, text + ", got " + got);
}

/// Quantities of any unit library, and labelled arrays that carry a unit: casting them to float64
/// would drop the unit without a word.
bool carries_unit(py::handle value) {
  for (const char* attribute : {"units", "unit", "dimensionality"}) {
    if (py::hasattr(value, attribute)) return true;
  }
  return false;
}

[[noreturn]] void refuse_unit(std::string_view where, std::string_view field, std::string_view unit,
                              py::handle value) {
  refuse(where, field, unit,
         "an object with a unit (" + type_name(value) +
             "); the function of the same name outside ropewalk.si takes quantities");
}

bool is_plain_scalar(py::handle value) {
  return (PyFloat_Check(value.ptr()) || PyLong_Check(value.ptr())) && !PyBool_Check(value.ptr());
}

double plain_scalar(std::string_view where, std::string_view field, std::string_view unit,
                    py::handle value) {
  const double number = PyFloat_AsDouble(value.ptr());
  if (number == -1.0 && PyErr_Occurred() != nullptr) {
    PyErr_Clear();
    refuse(where, field, unit, "a whole number too large for a float");
  }
  return number;
}

void refuse_units_inside(std::string_view where, std::string_view field, std::string_view unit,
                         py::handle sequence) {
  for (const py::handle item : sequence) {
    if (carries_unit(item) && !py::isinstance<py::array>(item))
      refuse_unit(where, field, unit, item);
    if (PyBool_Check(item.ptr())) refuse(where, field, unit, "a boolean");
    if (PyList_Check(item.ptr()) || PyTuple_Check(item.ptr())) {
      refuse_units_inside(where, field, unit, item);
    }
  }
}

Array float_array(std::string_view where, std::string_view field, std::string_view unit,
                  py::handle value) {
  if (carries_unit(value)) refuse_unit(where, field, unit, value);
  if (PyList_Check(value.ptr()) || PyTuple_Check(value.ptr())) {
    refuse_units_inside(where, field, unit, value);
  } else if (!py::isinstance<py::array>(value) && !py::hasattr(value, "__array__")) {
    refuse(where, field, unit, type_name(value));
  }
  py::array array = py::array::ensure(value);
  if (!array) {
    PyErr_Clear();
    refuse(where, field, unit, "a " + type_name(value) + " that is no regular array");
  }
  const char kind = array.dtype().kind();
  // An empty list has no type of its own; NumPy calls it float.
  if (kind != 'f' && kind != 'i' && kind != 'u') {
    refuse(where, field, unit, "an array of dtype " + py::str(array.dtype()).cast<std::string>());
  }
  return Array::ensure(array);
}

std::vector<py::ssize_t> shape_of(const py::array& array) {
  return {array.shape(), array.shape() + array.ndim()};
}

/// Stretches the arrays to their common shape by NumPy's own rules.
void broadcast(std::string_view where, const std::vector<Columns::Named>& arguments,
               std::vector<std::optional<Array>>& arrays) {
  py::list given;
  std::string shapes;
  for (std::size_t a = 0; a < arrays.size(); ++a) {
    if (!arrays[a]) continue;
    given.append(*arrays[a]);
    shapes += (shapes.empty() ? "" : ", ") + std::string(arguments[a].name) + " has " +
              py::str(arrays[a]->attr("shape")).cast<std::string>();
  }
  py::sequence stretched;
  try {
    stretched = py::module_::import("numpy").attr("broadcast_arrays")(*py::tuple(given));
  } catch (py::error_already_set&) {
    throw InadmissibleError(where, "", "array shapes do not go together: " + shapes);
  }
  std::size_t k = 0;
  for (auto& array : arrays) {
    if (array) array = Array::ensure(py::object(stretched[k++]));
  }
}

}  // namespace

double si_number(std::string_view where, std::string_view field, std::string_view unit,
                 py::handle value) {
  if (is_plain_scalar(value)) return plain_scalar(where, field, unit, value);
  const Array array = float_array(where, field, unit, value);
  if (array.ndim() != 0) refuse(where, field, unit, "an array where one number belongs");
  return *array.data();
}

Columns::Columns(std::string_view where, const std::vector<Named>& arguments) {
  std::vector<std::optional<Array>> arrays(arguments.size());
  numbers_.resize(arguments.size());
  bool one_shape = true;
  for (std::size_t a = 0; a < arguments.size(); ++a) {
    const auto& [name, unit, value] = arguments[a];
    if (is_plain_scalar(value)) {
      numbers_[a] = plain_scalar(where, name, unit, value);
      continue;
    }
    const Array array = float_array(where, name, unit, value);
    if (array.ndim() == 0) {
      numbers_[a] = *array.data();
      continue;
    }
    one_shape = one_shape && (scalar_ || shape_ == shape_of(array));
    shape_ = shape_of(array);
    scalar_ = false;
    arrays[a] = array;
  }
  if (!one_shape) broadcast(where, arguments, arrays);
  columns_.resize(arguments.size());
  for (std::size_t a = 0; a < arguments.size(); ++a) {
    if (!arrays[a]) {
      columns_[a] = {&numbers_[a], true};
      continue;
    }
    columns_[a] = {arrays[a]->data(), false};
    rows_ = static_cast<std::size_t>(arrays[a]->size());
    shape_ = shape_of(*arrays[a]);
    keep_.push_back(*arrays[a]);
  }
}

std::vector<double> Columns::row(std::size_t i) const {
  std::vector<double> values;
  values.reserve(columns_.size());
  for (const Column& column : columns_) values.push_back(column.at(i));
  return values;
}

}  // namespace ropewalk::bindings
