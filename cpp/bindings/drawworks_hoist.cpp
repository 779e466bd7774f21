#include "common.hpp"

#include <limits>

#include "ropewalk/base/require.hpp"
#include "ropewalk/drawworks/hoist.hpp"
#include "ropewalk/drawworks/parameters.hpp"
#include "ropewalk/drawworks/stroke.hpp"

namespace ropewalk::bindings {

namespace {

using drawworks::Hoist;
using drawworks::Stroke;

constexpr std::string_view hoist_where = "drawworks.Hoist";

template <class Q>
Q hoist_argument(std::string_view function, std::string_view field, const SiArgument& given) {
  return from_si<Q>(si_number(function, field, unit_text<Q>(), given.value));
}

/// Count, power, base and top speed, inertia, overload and its longest time, if any; SI.
using MotorNumbers = std::tuple<int, double, double, double, double, double, std::optional<double>>;
/// Ratio, efficiency, inertia; SI.
using GearNumbers = std::tuple<double, double, double>;

drawworks::Machine make_machine(const MotorNumbers& motors, const std::vector<GearNumbers>& gears,
                                double drum_efficiency, double drum_inertia) {
  drawworks::Machine machine{.motors = {.count = std::get<0>(motors),
                                        .power = from_si<Power>(std::get<1>(motors)),
                                        .base_speed = from_si<AngularVelocity>(std::get<2>(motors)),
                                        .top_speed = from_si<AngularVelocity>(std::get<3>(motors)),
                                        .inertia = from_si<MomentOfInertia>(std::get<4>(motors)),
                                        .overload = from_si<Number>(std::get<5>(motors))},
                             .gears = {},
                             .drum_efficiency = from_si<Number>(drum_efficiency),
                             .drum_inertia = from_si<MomentOfInertia>(drum_inertia)};
  if (const std::optional<double> most = std::get<6>(motors)) {
    machine.motors.overload_time = from_si<Time>(*most);
  }
  for (const auto& [ratio, efficiency, inertia] : gears) {
    machine.gears.push_back(
        {from_si<Number>(ratio), from_si<Number>(efficiency), from_si<MomentOfInertia>(inertia)});
  }
  return machine;
}

py::dict drive_record(const drawworks::Drive& drive) {
  py::dict record;
  record["pull"] = to_si(drive.pull);
  record["power"] = to_si(drive.power);
  record["base_speed"] = to_si(drive.base_speed);
  record["top_speed"] = to_si(drive.top_speed);
  record["line_limit"] = to_si(drive.line_limit);
  record["efficiency"] = to_si(drive.efficiency);
  record["turning_mass"] = to_si(drive.turning_mass);
  return record;
}

/// One number per row of the arguments brought to one shape.
template <class Compute>
SiResult hoist_rows(std::string_view function, const std::vector<Columns::Named>& arguments,
                    const Compute& compute) {
  const Columns columns(function, arguments);
  if (columns.scalar()) return {py::float_(compute(columns.row(0)))};
  py::array_t<double> out = columns.make_values();
  double* data = out.mutable_data();
  for (std::size_t i = 0; i < columns.rows(); ++i) data[i] = compute(columns.row(i));
  return {std::move(out)};
}

drawworks::Limits limits_of(double speed, double acceleration, double deceleration, bool overload) {
  return {.speed = from_si<Speed>(speed),
          .acceleration = from_si<Acceleration>(acceleration),
          .deceleration = from_si<Acceleration>(deceleration),
          .overload = overload};
}

/// Strokes of one kind for every load, a column for each number.
py::dict stroke_columns(const std::vector<Stroke>& strokes) {
  py::dict columns;
  const auto column = [&](const char* name, const auto& number) {
    py::array_t<double> values(static_cast<py::ssize_t>(strokes.size()));
    double* data = values.mutable_data();
    for (const Stroke& stroke : strokes) *data++ = number(stroke);
    columns[name] = values;
  };
  const double never = std::numeric_limits<double>::infinity();
  column("possible", [](const Stroke& s) { return s.possible ? 1.0 : 0.0; });
  column("gear", [](const Stroke& s) { return static_cast<double>(s.gear); });
  column("time", [&](const Stroke& s) { return s.possible ? to_si(s.time) : never; });
  column("peak_speed", [](const Stroke& s) { return to_si(s.peak_speed); });
  column("peak_power", [](const Stroke& s) { return to_si(s.peak_power); });
  column("peak_braking", [](const Stroke& s) { return to_si(s.peak_braking); });
  column("time_overloaded", [](const Stroke& s) { return to_si(s.time_overloaded); });
  column("driven", [](const Stroke& s) { return to_si(s.driven); });
  column("braked", [](const Stroke& s) { return to_si(s.braked); });
  column("lifted", [](const Stroke& s) { return to_si(s.lifted); });
  column("lost", [](const Stroke& s) { return to_si(s.lost); });
  std::vector<std::string> reasons;
  for (const Stroke& stroke : strokes) reasons.push_back(stroke.reason);
  columns["reason"] = reasons;
  return columns;
}

Stroke one_stroke(const Hoist& on, bool up, int gear, double hook_load,
                  const drawworks::Travel& travel, const drawworks::Limits& limits) {
  const Force load = from_si<Force>(hook_load);
  if (!up) return drawworks::lower(on, load, travel, limits);
  return gear != 0 ? drawworks::hoist(on, load, travel, limits, gear)
                   : drawworks::hoist(on, load, travel, limits);
}

py::dict strokes(const Hoist& on, bool up, const std::vector<double>& hook_loads,
                 double base_height, double travel, double speed, double acceleration,
                 double deceleration, bool overload, int gear) {
  const drawworks::Travel where_to{from_si<Length>(base_height), from_si<Length>(travel)};
  const drawworks::Limits limits = limits_of(speed, acceleration, deceleration, overload);
  std::vector<Stroke> found;
  found.reserve(hook_loads.size());
  {
    const py::gil_scoped_release released;
    for (const double load : hook_loads) {
      found.push_back(one_stroke(on, up, gear, load, where_to, limits));
    }
  }
  return stroke_columns(found);
}

py::dict stroke_curve(const Hoist& on, bool up, double hook_load, double base_height, double travel,
                      double speed, double acceleration, double deceleration, bool overload,
                      int gear, int points_per_piece) {
  const Stroke stroke =
      one_stroke(on, up, gear, hook_load, {from_si<Length>(base_height), from_si<Length>(travel)},
                 limits_of(speed, acceleration, deceleration, overload));
  const std::vector<drawworks::Point> points = drawworks::curve(stroke, points_per_piece);
  py::dict columns;
  const auto column = [&](const char* name, const auto& number) {
    py::array_t<double> values(static_cast<py::ssize_t>(points.size()));
    double* data = values.mutable_data();
    for (const drawworks::Point& point : points) *data++ = number(point);
    columns[name] = values;
  };
  column("time", [](const drawworks::Point& p) { return to_si(p.time); });
  column("travel", [](const drawworks::Point& p) { return to_si(p.travel); });
  column("speed", [](const drawworks::Point& p) { return to_si(p.speed); });
  column("power", [](const drawworks::Point& p) { return to_si(p.power); });
  column("layer", [](const drawworks::Point& p) { return static_cast<double>(p.layer); });
  columns["reason"] = stroke.reason;
  return columns;
}

SiResult drive_rows(const Hoist& on, std::string_view function, int gear, int layer, bool overload,
                    const SiArgument& hook_load, const SiArgument& speed) {
  const drawworks::Drive drive = on.drive(gear, layer, overload);
  return hoist_rows(
      function, {{"hook_load", "N", hook_load.value}, {"speed", "m/s", speed.value}},
      [&](const std::vector<double>& row) {
        require(function, drawworks::argument::hook_load, from_si<Force>(row[0]));
        require(function, drawworks::argument::block_speed.named("speed"), from_si<Speed>(row[1]));
        return to_si(drive.acceleration(from_si<Force>(row[0]), from_si<Speed>(row[1])));
      });
}

}  // namespace

void bind_drawworks_hoist(py::module_& m) {
  m.def(
      "check_limits",
      [](double speed, double acceleration, double deceleration, double lowering_speed) {
        constexpr std::string_view here = "drawworks.Limits";
        drawworks::check_limits(here, limits_of(speed, acceleration, deceleration, false));
        require(here, drawworks::argument::speed_limit.named("lowering_speed"),
                from_si<Speed>(lowering_speed));
      },
      py::kw_only(), py::arg("speed"), py::arg("acceleration"), py::arg("deceleration"),
      py::arg("lowering_speed"), "Raise for limits [m/s, m/s2] that cannot be.");
  py::class_<Hoist>(m, "Hoist", "A drawworks with its drum and the line strung up, SI.")
      .def(py::init([](const MotorNumbers& motors, const std::vector<GearNumbers>& gears,
                       double drum_efficiency, double drum_inertia, const drum::Drum& drum,
                       const reeving::Arrangement& reeving, double wraps_at_lowest,
                       std::optional<double> line_limit, double sheave_mass) {
             drawworks::StringUp strung{
                 .machine = make_machine(motors, gears, drum_efficiency, drum_inertia),
                 .drum = drum,
                 .reeving = reeving,
                 .wraps_at_lowest = from_si<Number>(wraps_at_lowest),
                 .sheave_mass = from_si<Mass>(sheave_mass)};
             if (line_limit) strung.line_limit = from_si<Force>(*line_limit);
             return Hoist(strung);
           }),
           py::kw_only(), py::arg("motors"), py::arg("gears"), py::arg("drum_efficiency"),
           py::arg("drum_inertia"), py::arg("drum"), py::arg("reeving"), py::arg("wraps_at_lowest"),
           py::arg("line_limit"), py::arg("sheave_mass"))
      .def_property_readonly("gears", &Hoist::gears)
      .def_property_readonly("layers", &Hoist::layers)
      .def(
          "layer_radius", [](const Hoist& on, int layer) { return to_si(on.layer_radius(layer)); },
          py::arg("layer"), "Radius [m] at which the fast line pulls in a layer.")
      .def(
          "layer_at",
          [](const Hoist& on, const SiArgument& height) {
            return on.layer_at(hoist_argument<Length>(hoist_where, "block_height", height));
          },
          py::arg("block_height"), "Layer with the block at a height [m].")
      .def(
          "drive",
          [](const Hoist& on, int gear, int layer, bool overload) {
            return drive_record(on.drive(gear, layer, overload));
          },
          py::arg("gear"), py::arg("layer"), py::arg("overload"),
          "What a gear gives at the hook on a layer, SI.")
      .def(
          "steady_pull",
          [](const Hoist& on, const SiArgument& speed, int gear, int layer, bool overload) {
            constexpr std::string_view here = "drawworks.Hoist.pull";
            const drawworks::Drive drive = on.drive(gear, layer, overload);
            return hoist_rows(here, {{"speed", "m/s", speed.value}},
                              [&](const std::vector<double>& row) {
                                require(here, drawworks::argument::block_speed.named("speed"),
                                        from_si<Speed>(row[0]));
                                return to_si(drive.steady_pull(from_si<Speed>(row[0])));
                              });
          },
          py::arg("speed"), py::arg("gear"), py::arg("layer"), py::arg("overload"),
          "Hook load [N] hoisted steadily at a speed [m/s].")
      .def(
          "steady_speed",
          [](const Hoist& on, const SiArgument& load, int gear, int layer, bool overload) {
            constexpr std::string_view here = "drawworks.Hoist.speed";
            const drawworks::Drive drive = on.drive(gear, layer, overload);
            return hoist_rows(
                here, {{"hook_load", "N", load.value}}, [&](const std::vector<double>& row) {
                  require(here, drawworks::argument::hook_load, from_si<Force>(row[0]));
                  return to_si(drive.steady_speed(from_si<Force>(row[0])));
                });
          },
          py::arg("hook_load"), py::arg("gear"), py::arg("layer"), py::arg("overload"),
          "Speed [m/s] at which a load [N] is hoisted steadily, 0 if it cannot be.")
      .def(
          "acceleration",
          [](const Hoist& on, const SiArgument& load, const SiArgument& speed, int gear, int layer,
             bool overload) {
            return drive_rows(on, "drawworks.Hoist.acceleration", gear, layer, overload, load,
                              speed);
          },
          py::arg("hook_load"), py::arg("speed"), py::arg("gear"), py::arg("layer"),
          py::arg("overload"), "Acceleration [m/s2] available with a load [N] at a speed [m/s].")
      .def(
          "motor_torque",
          [](const Hoist& on, double hook_load, double acceleration, int gear, int layer) {
            return to_si(on.motor_torque(gear, layer, from_si<Force>(hook_load),
                                         from_si<Acceleration>(acceleration)));
          },
          py::arg("hook_load"), py::arg("acceleration"), py::arg("gear"), py::arg("layer"),
          "Torque [N*m/rad] of each motor for a load [N] and an acceleration [m/s2].")
      .def("strokes", &strokes, py::kw_only(), py::arg("up"), py::arg("hook_loads"),
           py::arg("base_height"), py::arg("travel"), py::arg("speed"), py::arg("acceleration"),
           py::arg("deceleration"), py::arg("overload"), py::arg("gear"),
           "Strokes of the block with each of the loads [N], as columns in SI; gear 0: the best.")
      .def("stroke_curve", &stroke_curve, py::kw_only(), py::arg("up"), py::arg("hook_load"),
           py::arg("base_height"), py::arg("travel"), py::arg("speed"), py::arg("acceleration"),
           py::arg("deceleration"), py::arg("overload"), py::arg("gear"),
           py::arg("points_per_piece"), "Points of one stroke, as columns in SI.");
}

}  // namespace ropewalk::bindings
