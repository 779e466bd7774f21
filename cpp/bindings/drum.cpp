#include "common.hpp"
#include "records.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/drum/drum.hpp"
#include "ropewalk/drum/fleet.hpp"
#include "ropewalk/drum/layer.hpp"
#include "ropewalk/drum/length.hpp"
#include "ropewalk/drum/pressure.hpp"
#include "ropewalk/drum/wraps.hpp"

namespace ropewalk::bindings {

namespace {

using drum::Drum;

template <class Q>
Q drum_argument(std::string_view where, std::string_view field, const SiArgument& given) {
  return from_si<Q>(si_number(where, field, unit_text<Q>(), given.value));
}

Drum make_drum(const SiArgument& barrel_diameter, const SiArgument& rope_diameter,
               const SiArgument& laps_per_layer, int layers, const SiArgument& layer_height,
               int crossovers_per_lap) {
  constexpr std::string_view where = "drum.Drum";
  return Drum({.barrel_diameter = drum_argument<Length>(where, "barrel_diameter", barrel_diameter),
               .rope_diameter = drum_argument<Length>(where, "rope_diameter", rope_diameter),
               .laps_per_layer = drum_argument<Number>(where, "laps_per_layer", laps_per_layer),
               .layers = layers,
               .layer_height = drum_argument<Number>(where, "layer_height", layer_height),
               .crossovers_per_lap = crossovers_per_lap});
}

/// One number per row of the arguments brought to one shape.
template <class Compute>
SiResult drum_rows(std::string_view where, const std::vector<Columns::Named>& arguments,
                   const Compute& compute) {
  const Columns columns(where, arguments);
  if (columns.scalar()) return {py::float_(compute(columns.row(0)))};
  py::array_t<double> out = columns.make_values();
  double* data = out.mutable_data();
  for (std::size_t i = 0; i < columns.rows(); ++i) data[i] = compute(columns.row(i));
  return {std::move(out)};
}

/// Layer, lap and wraps per row.
template <class Find>
py::tuple drum_places(std::string_view where, const std::vector<Columns::Named>& arguments,
                      const Find& find) {
  const auto one = [&](const auto& part) {
    return drum_rows(where, arguments,
                     [&](const std::vector<double>& row) { return part(find(row)); })
        .value;
  };
  return py::make_tuple(one([](const Drum::Place& p) { return static_cast<double>(p.layer); }),
                        one([](const Drum::Place& p) { return p.lap; }),
                        one([](const Drum::Place& p) { return p.wraps; }));
}

py::tuple place(const Drum& on, const SiArgument& from_drum_end) {
  return drum_places(
      "drum.Drum.place", {{"from_drum_end", "m", from_drum_end.value}},
      [&](const std::vector<double>& row) { return on.place(from_si<Length>(row[0])); });
}

py::tuple place_at_height(const Drum& on, const SiArgument& block_height, const SiArgument& lines,
                          const SiArgument& wraps_at_lowest) {
  return drum_places("drum.Drum.place_at_height",
                     {{"block_height", "m", block_height.value},
                      {"lines", "", lines.value},
                      {"wraps_at_lowest", "", wraps_at_lowest.value}},
                     [&](const std::vector<double>& row) {
                       return drum::place_at_height(on, from_si<Number>(row[2]),
                                                    from_si<Number>(row[1]),
                                                    from_si<Length>(row[0]));
                     });
}

SiResult height_when_full(const Drum& on, const SiArgument& lines,
                          const SiArgument& wraps_at_lowest) {
  return drum_rows(
      "drum.Drum.height_when_full",
      {{"lines", "", lines.value}, {"wraps_at_lowest", "", wraps_at_lowest.value}},
      [&](const std::vector<double>& row) {
        return to_si(drum::height_when_full(on, from_si<Number>(row[1]), from_si<Number>(row[0])));
      });
}

SiResult length_of(const Drum& on, const SiArgument& wraps) {
  return drum_rows("drum.Drum.length_of", {{"wraps", "", wraps.value}},
                   [&](const std::vector<double>& row) { return to_si(on.length_of(row[0])); });
}

SiResult fleet_angle(const Drum& on, const SiArgument& from_drum_end, const SiArgument& traverse,
                     const SiArgument& sheave_position, const SiArgument& distance) {
  return drum_rows("drum.Drum.fleet_angle",
                   {{"from_drum_end", "m", from_drum_end.value},
                    {"traverse", "m", traverse.value},
                    {"sheave_position", "m", sheave_position.value},
                    {"distance", "m", distance.value}},
                   [&](const std::vector<double>& row) {
                     return to_si(drum::fleet_angle_at(on, from_si<Length>(row[0]),
                                                       {.traverse = from_si<Length>(row[1]),
                                                        .sheave_position = from_si<Length>(row[2]),
                                                        .distance = from_si<Length>(row[3])}));
                   });
}

std::vector<std::tuple<double, int, bool>> crossovers(const Drum& on, const SiArgument& start,
                                                      const SiArgument& end) {
  constexpr std::string_view where = "drum.Drum.crossovers";
  std::vector<std::tuple<double, int, bool>> found;
  for (const Drum::Crossover& one : on.crossovers(drum_argument<Length>(where, "start", start),
                                                  drum_argument<Length>(where, "end", end))) {
    found.emplace_back(to_si(one.from_drum_end), one.layer, one.layer_change);
  }
  return found;
}

py::dict limits_record(const drum::FleetAngleLimits& limits) {
  py::dict record;
  record["standard"] = std::string(limits.standard);
  record["groove"] = std::string(limits.groove);
  record["minimum"] = to_si(limits.minimum);
  record["maximum"] = to_si(limits.maximum);
  record["source"] = citation(limits.provenance.source);
  record["standing"] = std::string(limits.provenance.standing);
  return record;
}

py::dict wraps_record(const drum::DeadWrapsMinimum& minimum) {
  py::dict record;
  record["standard"] = std::string(minimum.standard);
  record["edition"] = std::string(minimum.edition);
  record["value"] = to_si(minimum.value);
  record["condition"] = std::string(minimum.condition);
  record["source"] = citation(minimum.provenance.source);
  record["standing"] = std::string(minimum.provenance.standing);
  return record;
}

void bind_drum_class(py::module_& m) {
  py::class_<Drum>(m, "Drum", "Rope in layers on a drum, SI; lengths counted from the drum end.")
      .def(py::init(&make_drum), py::arg("barrel_diameter"), py::arg("rope_diameter"),
           py::arg("laps_per_layer"), py::arg("layers"), py::arg("layer_height"),
           py::arg("crossovers_per_lap"))
      .def_property_readonly("wraps", &Drum::wraps)
      .def_property_readonly("capacity", [](const Drum& on) { return to_si(on.capacity()); })
      .def(
          "bend_diameter", [](const Drum& on, int k) { return to_si(on.bend_diameter(k)); },
          py::arg("layer"), "Diameter [m] of the surface the rope of a layer lies on.")
      .def(
          "lap_length", [](const Drum& on, int k) { return to_si(on.lap_length(k)); },
          py::arg("layer"), "Rope [m] in one lap of a layer.")
      .def(
          "layer_length", [](const Drum& on, int k) { return to_si(on.layer_length(k)); },
          py::arg("layer"), "Rope [m] in a full layer.")
      .def(
          "length_before", [](const Drum& on, int k) { return to_si(on.length_before(k)); },
          py::arg("layer"), "Rope [m] in all layers below a layer.")
      .def("length_of", &length_of, py::arg("wraps"), "Rope [m] in so many laps.")
      .def("place", &place, py::arg("from_drum_end"),
           "Layer, laps into it, and laps in all, of a point of the rope [m].")
      .def("place_at_height", &place_at_height, py::arg("block_height"), py::kw_only(),
           py::arg("lines"), py::arg("wraps_at_lowest"),
           "Layer, laps into it, and laps in all, with the block at a height [m].")
      .def("height_when_full", &height_when_full, py::kw_only(), py::arg("lines"),
           py::arg("wraps_at_lowest"), "Height [m] of the block at which the drum is full.")
      .def("fleet_angle", &fleet_angle, py::arg("from_drum_end"), py::kw_only(),
           py::arg("traverse"), py::arg("sheave_position"), py::arg("distance"),
           "Fleet angle [rad] of the line that leaves the drum at a point of the rope [m].")
      .def("crossovers", &crossovers, py::arg("start"), py::arg("end"),
           "Distance [m], layer, and whether the layer changes, of every crossover.");
}

void bind_drum_tables(py::module_& m) {
  m.def(
      "reel_capacity_handbook",
      [](const SiArgument& flange_depth, const SiArgument& barrel_diameter,
         const SiArgument& traverse, const SiArgument& rope_diameter) {
        constexpr std::string_view where = "drum.reel_capacity_handbook";
        return to_si(drum::reel_capacity_handbook(
                         drum_argument<Length>(where, "flange_depth", flange_depth),
                         drum_argument<Length>(where, "barrel_diameter", barrel_diameter),
                         drum_argument<Length>(where, "traverse", traverse),
                         drum_argument<Length>(where, "rope_diameter", rope_diameter))
                         .value);
      },
      py::arg("flange_depth"), py::arg("barrel_diameter"), py::arg("traverse"),
      py::arg("rope_diameter"), "Rope [m] a reel holds by the handbook factor of its size.");
  m.def(
      "layer_factor", [](int layers) { return to_si(drum::layer_factor(layers).value); },
      py::arg("layers"), "How much more than one layer some layers press on the barrel.");
  m.def(
      "fleet_angle_limits",
      [] {
        std::vector<py::dict> records;
        for (const auto& row : drum::fleet_angle_limits()) records.push_back(limits_record(row));
        return records;
      },
      "Every pair of limits of the fleet angle, as fleet_angle_limit() gives it.");
  m.def(
      "fleet_angle_limit",
      [](const std::string& groove, const std::string& standard) {
        return limits_record(drum::fleet_angle_limits(groove, standard));
      },
      py::arg("groove"), py::arg("standard"),
      "The limits [rad] of the fleet angle of a standard for a kind of drum, with source.");
  m.def(
      "dead_wraps_minimums",
      [] {
        std::vector<py::dict> records;
        for (const auto& row : drum::dead_wraps_minimums()) records.push_back(wraps_record(row));
        return records;
      },
      "Every minimum of dead wraps, as dead_wraps_minimum() gives it.");
  m.def(
      "dead_wraps_minimum",
      [](const std::string& standard) { return wraps_record(drum::dead_wraps_minimum(standard)); },
      py::arg("standard"), "The minimum of dead wraps of a standard, with its source.");
  m.def(
      "table",
      [](const std::string& name) {
        const std::vector<std::string> names{"dead_wraps", "drum_layer_factors", "fleet_angles",
                                             "reel_factors"};
        if (std::find(names.begin(), names.end(), name) == names.end()) {
          throw LookupError("drum.table", "name",
                            "there is no table '" + name + "' here; there are: " + joined(names));
        }
        return table_records(name);
      },
      py::arg("name"),
      "Rows of one of this subject's tables with source and standing of each value.");
}

}  // namespace

void bind_drum(py::module_& core) {
  py::module_ m = submodule(core, "drum", "Rope on a drum: layers, lengths, fleet angle, holding.");
  bind_row<drum::PitchedLayerHeight>(m, "Layer height over rope diameter, laps apart.");
  bind_row<drum::MixedLayerHeight>(m, "Layer height over rope diameter, partly nested.");
  bind_row<drum::LapsInTraverse>(m, "Whole laps between the flanges.");
  bind_row<drum::CutLength>(m, "Length of so many laps of the barrel.");
  bind_row<drum::CrossoverShift>(m, "Laps a cut moves the crossovers.");
  bind_row<drum::RopeOnDrum>(m, "Rope on the drum with the block at a height.");
  bind_row<drum::ReelCapacity>(m, "Rope held in stacked layers.");
  bind_row<drum::FleetAngle>(m, "Fleet angle of a lap.");
  bind_row<drum::FleetDistance>(m, "Distance of the lead sheave for a fleet angle.");
  bind_row<drum::HoldingRatio>(m, "Tension held by dead wraps over that of the fastening.");
  bind_row<drum::ClampForce>(m, "Tension left at the fastening.");
  bind_row<drum::HoldingWraps>(m, "Dead wraps that a fastening needs.");
  bind_row<drum::BarrelPressure>(m, "Pressure of the rope on the barrel.");
  bind_row<drum::BarrelHoopStress>(m, "Hoop stress in the barrel.");
  bind_drum_class(m);
  bind_drum_tables(m);
}

}  // namespace ropewalk::bindings
