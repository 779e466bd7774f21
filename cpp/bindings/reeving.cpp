#include "common.hpp"
#include "records.hpp"

#include "ropewalk/base/require.hpp"
#include "ropewalk/reeving/kinematics.hpp"
#include "ropewalk/reeving/line_tension.hpp"
#include "ropewalk/reeving/sheave_friction.hpp"
#include "ropewalk/reeving/tensions.hpp"

namespace ropewalk::bindings {

namespace {

using reeving::Arrangement;

using Frictions = std::vector<double>;

/// A whole number inside the range of its parameter.
int count(std::string_view where, const Parameter<Number>& parameter, double value) {
  require(where, parameter, from_si<Number>(value));
  return static_cast<int>(value);
}

Arrangement arrangement(double lines, const Frictions& sheave_friction, double lead_sheaves,
                        const Frictions& lead_sheave_friction, bool dead_line_sheave_turns,
                        std::optional<double> dead_line_sheave_friction) {
  constexpr std::string_view where = "reeving.Reeving";
  const auto numbers = [](const Frictions& values) {
    std::vector<Number> frictions;
    for (const double value : values) frictions.push_back(from_si<Number>(value));
    return frictions;
  };
  reeving::Stringing stringing{.lines = count(where, params::lines, lines),
                               .sheave_friction = numbers(sheave_friction),
                               .lead_sheaves = count(where, params::lead_sheaves, lead_sheaves),
                               .lead_sheave_friction = numbers(lead_sheave_friction),
                               .dead_line_sheave_turns = dead_line_sheave_turns};
  if (dead_line_sheave_friction) {
    stringing.dead_line_sheave_friction = from_si<Number>(*dead_line_sheave_friction);
  }
  return Arrangement(stringing);
}

/// A new array of the shape of `rows` with one more axis of length `last` at the end.
py::array_t<double> with_last_axis(const py::array_t<double>& rows, std::size_t last) {
  std::vector<py::ssize_t> shape(rows.shape(), rows.shape() + rows.ndim());
  shape.push_back(static_cast<py::ssize_t>(last));
  return py::array_t<double>(shape);
}

/// One value per row: a float if the arguments were plain numbers.
py::object per_row(const Columns& columns, py::array_t<double> values) {
  if (columns.scalar()) return py::float_(*values.data());
  return values;
}

/// Calls `one(row)` for every row; an error says which row it was.
template <class One>
void for_rows(std::string_view where, const Columns& columns, const One& one) {
  std::size_t row = 0;
  try {
    for (; row < columns.rows(); ++row) one(row);
  } catch (const InadmissibleError& error) {
    if (columns.scalar()) throw;
    throw InadmissibleError(where, error.field(),
                            "row " + std::to_string(row) + " of " + std::to_string(columns.rows()) +
                                ": " + error.detail());
  }
}

py::dict tensions(const Arrangement& strung, const std::string& motion, const SiArgument& hook_load,
                  const SiArgument& block_acceleration) {
  constexpr std::string_view where = "reeving.Reeving.tensions";
  const auto relative = reeving::relative_tensions(strung, reeving::motion_named(motion));
  const Columns columns(where, {{"hook_load", "N", hook_load.value},
                                {"block_acceleration", "m/s2", block_acceleration.value}});
  const auto& loads = columns.columns()[0];
  const auto& accelerations = columns.columns()[1];
  py::array_t<double> fast_line = columns.make_values();
  py::array_t<double> fast_line_at_crown = columns.make_values();
  py::array_t<double> dead_line = columns.make_values();
  py::array_t<double> crown_load = columns.make_values();
  py::array_t<double> all_lines = with_last_axis(fast_line, relative.lines.size());
  double* fast = fast_line.mutable_data();
  double* at_crown = fast_line_at_crown.mutable_data();
  double* dead = dead_line.mutable_data();
  double* crown = crown_load.mutable_data();
  double* line = all_lines.mutable_data();
  {
    // The arrays are held above; the loop touches raw memory only.
    const py::gil_scoped_release unlocked;
    for_rows(where, columns, [&](std::size_t row) {
      const Force pull = reeving::pull_of_lines(from_si<Force>(loads.at(row)),
                                                from_si<Acceleration>(accelerations.at(row)));
      fast[row] = to_si(relative.under(pull, relative.fast_line));
      at_crown[row] = to_si(relative.under(pull, relative.fast_line_at_crown));
      dead[row] = to_si(relative.under(pull, relative.dead_line));
      crown[row] = to_si(relative.under(pull, relative.crown_load));
      for (const double one : relative.lines) *line++ = to_si(relative.under(pull, one));
    });
  }
  py::dict result;
  result["lines"] = all_lines;
  result["fast_line"] = per_row(columns, fast_line);
  result["fast_line_at_crown"] = per_row(columns, fast_line_at_crown);
  result["dead_line"] = per_row(columns, dead_line);
  result["crown_load"] = per_row(columns, crown_load);
  result["efficiency"] = relative.efficiency;
  result["fast_line_factor"] = relative.fast_line / relative.sum;
  return result;
}

/// One number of the block becomes one number for every turning sheave, on a new last axis.
template <class Q>
py::array_t<double> at_sheaves(std::string_view where, const char* argument, int lines,
                               const SiArgument& of_block, std::vector<Q> (*multiples)(int, Q)) {
  const Columns columns(where, {{argument, unit_text<Q>(), of_block.value}});
  const Column& column = columns.columns()[0];
  py::array_t<double> result =
      with_last_axis(columns.make_values(), static_cast<std::size_t>(lines));
  double* out = result.mutable_data();
  for_rows(where, columns, [&](std::size_t row) {
    for (const Q& one : multiples(lines, from_si<Q>(column.at(row)))) *out++ = to_si(one);
  });
  return result;
}

py::array_t<double> sheave_rotations(const Arrangement& strung, const SiArgument& block_speed,
                                     const SiArgument& sheave_diameter) {
  constexpr std::string_view where = "reeving.Reeving.sheave_rotations";
  const double speed = si_number(where, "block_speed", "m/s", block_speed.value);
  const Columns columns(where, {{"sheave_diameter", "m", sheave_diameter.value}});
  std::vector<Length> diameters;
  for (std::size_t row = 0; row < columns.rows(); ++row) {
    diameters.push_back(from_si<Length>(columns.columns()[0].at(row)));
  }
  const auto rotations =
      reeving::sheave_rotations(strung.lines(), from_si<Speed>(speed), diameters);
  py::array_t<double> result(static_cast<py::ssize_t>(rotations.size()));
  std::transform(rotations.begin(), rotations.end(), result.mutable_data(),
                 [](const AngularVelocity& one) { return to_si(one); });
  return result;
}

std::vector<bool> on_crown(const Arrangement& strung) {
  std::vector<bool> result;
  for (int sheave = 1; sheave <= strung.lines(); ++sheave) {
    result.push_back(reeving::on_crown(strung.lines(), sheave));
  }
  return result;
}

Frictions frictions(std::span<const Number> numbers) {
  Frictions values;
  for (const Number& number : numbers) values.push_back(to_si(number));
  return values;
}

void bind_class(py::module_& m) {
  py::class_<Arrangement>(m, "Arrangement",
                          "A reeving with the friction of every sheave, in plain SI numbers.")
      .def(py::init(&arrangement), py::arg("lines"), py::arg("sheave_friction"),
           py::arg("lead_sheaves") = 0.0, py::arg("lead_sheave_friction") = Frictions{},
           py::arg("dead_line_sheave_turns") = false,
           py::arg("dead_line_sheave_friction") = py::none(),
           "Frictions are lists of one value for all sheaves, or one for each.")
      .def_property_readonly(
          "sheave_friction", [](const Arrangement& a) { return frictions(a.sheave_friction()); },
          "Friction of turning sheave 1 to N.")
      .def_property_readonly(
          "lead_sheave_friction",
          [](const Arrangement& a) { return frictions(a.lead_sheave_friction()); },
          "Friction of the lead sheaves, from the crown to the drum.")
      .def_property_readonly("on_crown", &on_crown,
                             "For every turning sheave whether it is on the crown.")
      .def_property_readonly(
          "crown_sheaves", [](const Arrangement& a) { return reeving::crown_sheaves(a.lines()); },
          "Sheaves of the crown block, dead-line sheave included.")
      .def_property_readonly(
          "traveling_sheaves",
          [](const Arrangement& a) { return reeving::traveling_sheaves(a.lines()); },
          "Sheaves of the traveling block.")
      .def("tensions", &tensions, py::arg("motion"), py::arg("hook_load"),
           py::arg("block_acceleration") = 0.0,
           "Tensions [N] under a hook load [N]; `lines` has one more axis than the load.")
      .def(
          "line_speeds",
          [](const Arrangement& a, const SiArgument& block_speed) {
            return at_sheaves<Speed>("reeving.Reeving.line_speeds", "block_speed", a.lines(),
                                     block_speed, &reeving::line_speeds);
          },
          py::arg("block_speed"), "Speed [m/s] of the rope over every turning sheave.")
      .def(
          "line_travel",
          [](const Arrangement& a, const SiArgument& block_travel) {
            return at_sheaves<Length>("reeving.Reeving.line_travel", "block_travel", a.lines(),
                                      block_travel, &reeving::line_travel);
          },
          py::arg("block_travel"), "Rope [m] that passes every turning sheave.")
      .def("sheave_rotations", &sheave_rotations, py::arg("block_speed"),
           py::arg("sheave_diameter"), "Rotation [rad/s] of every turning sheave.");
}

void bind_rows(py::module_& m) {
  bind_row<reeving::Efficiency>(m, "Reeving efficiency while hoisting.");
  bind_row<reeving::FastLineFactor>(m, "Fast-line tension over hook load while hoisting.");
  bind_row<reeving::LoweringEfficiency>(m, "Reeving efficiency while lowering.");
  bind_row<reeving::TwoDrumEfficiency>(m, "Reeving efficiency with both rope ends on drums.");
  bind_row<reeving::FastLineTension>(m, "Fast-line tension at the drum while hoisting.");
  bind_row<reeving::HoistedHookLoad>(m, "Hook load that a fast-line tension hoists.");
  bind_row<reeving::FastLineTensionAtEfficiency>(m, "Fast-line tension for a known efficiency.");
  bind_row<reeving::DeadLineTension>(m, "Tension at the dead end while hoisting.");
  bind_row<reeving::LoweringFastLineTension>(m, "Fast-line tension at the drum while lowering.");
  bind_row<reeving::LoweringDeadLineTension>(m, "Tension at the dead end while lowering.");
  bind_row<reeving::CrownLoad>(m, "Load on the crown block while hoisting.");
  bind_row<reeving::LoweringCrownLoad>(m, "Load on the crown block while lowering.");
}

}  // namespace

void bind_reeving(py::module_& core) {
  py::module_ m = submodule(core, "reeving", "Reeving: efficiency, line tensions, rope speeds.");
  bind_class(m);
  bind_rows(m);
  m.def(
      "sheave_friction",
      [](const std::string& bearing) { return to_si(reeving::sheave_friction(bearing).value); },
      py::arg("bearing"), "Tabulated friction of a turning sheave by its bearing.");
  m.def(
      "sheave_frictions", [] { return table_records("sheave_frictions"); },
      "The tabulated sheave frictions with source and standing.");
}

}  // namespace ropewalk::bindings
