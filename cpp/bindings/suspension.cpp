#include "common.hpp"
#include "records.hpp"

#include <algorithm>

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/suspension/bounce.hpp"
#include "ropewalk/suspension/elevator.hpp"
#include "ropewalk/suspension/rating.hpp"
#include "ropewalk/suspension/train.hpp"
#include "ropewalk/suspension/wear.hpp"

namespace ropewalk::bindings {

namespace {

using suspension::Bounce;

template <class Q>
Q suspension_argument(std::string_view where, std::string_view field, const SiArgument& given) {
  return from_si<Q>(si_number(where, field, unit_text<Q>(), given.value));
}

// --- The load path

using NamedPart = std::tuple<std::string, double, double, double>;

std::vector<suspension::Part> make_parts(const std::vector<NamedPart>& given) {
  std::vector<suspension::Part> parts;
  for (const auto& [name, rating, multiple, weight_above] : given) {
    parts.push_back({.name = name,
                     .rating = from_si<Force>(rating),
                     .multiple = from_si<Number>(multiple),
                     .weight_above = from_si<Force>(weight_above)});
  }
  return parts;
}

py::dict margins(const std::vector<NamedPart>& given, const SiArgument& hook_load) {
  const auto found = suspension::margins(
      make_parts(given),
      suspension_argument<Force>("suspension.Suspension.margins", "hook_load", hook_load));
  const auto column = [&](const auto& one) {
    py::array_t<double> values(static_cast<py::ssize_t>(found.size()));
    std::transform(found.begin(), found.end(), values.mutable_data(), one);
    return values;
  };
  py::dict result;
  result["load"] = column([](const auto& one) { return to_si(one.load); });
  result["margin"] = column([](const auto& one) { return to_si(one.margin); });
  result["utilization"] = column([](const auto& one) { return to_si(one.utilization); });
  result["hook_load_at_rating"] =
      column([](const auto& one) { return to_si(one.hook_load_at_rating); });
  return result;
}

// --- Elevators

py::dict type_record(const suspension::ElevatorType& type) {
  py::dict record;
  record["kind"] = std::string(type.kind);
  record["tubular"] = std::string(type.tubular);
  record["holds_by"] = std::string(type.holds_by);
  record["carries_string"] = type.carries_string;
  record["source"] = citation(type.provenance.source);
  record["standing"] = std::string(type.provenance.standing);
  return record;
}

std::vector<py::dict> type_records(const std::vector<suspension::ElevatorType>& types) {
  std::vector<py::dict> records;
  for (const auto& type : types) records.push_back(type_record(type));
  return records;
}

py::dict bore_record(const suspension::ElevatorBore& bore) {
  py::dict record;
  record["drill_pipe"] = std::string(bore.drill_pipe);
  record["neck"] = to_si(bore.neck);
  record["bore"] = to_si(bore.bore);
  record["source"] = citation(bore.provenance.source);
  record["standing"] = std::string(bore.provenance.standing);
  return record;
}

void bind_suspension_tables(py::module_& m) {
  m.def(
      "elevator_types", [] { return type_records(suspension::elevator_types()); },
      "Every type of elevator, in general words.");
  m.def(
      "elevators_for",
      [](const std::string& tubular) { return type_records(suspension::elevators_for(tubular)); },
      py::arg("tubular"), "The types of elevator for a tubular, the usual one first.");
  m.def(
      "elevator_bore",
      [](const std::string& drill_pipe) {
        return bore_record(suspension::elevator_bore(drill_pipe));
      },
      py::arg("drill_pipe"), "Neck of the tool joint and bore [m] of the elevator for it.");
  m.def(
      "rating_class",
      [](const SiArgument& load_rating) {
        return std::string(suspension::rating_class(
            suspension_argument<Force>("suspension.rating_class", "load_rating", load_rating)));
      },
      py::arg("load_rating"), "Class of ratings [N] by which contact surfaces are made.");
  m.def(
      "table",
      [](const std::string& name) {
        const std::vector<std::string> names{"elevator_bores", "elevator_types", "rating_classes"};
        if (std::find(names.begin(), names.end(), name) == names.end()) {
          throw LookupError("suspension.table", "name",
                            "there is no table '" + name + "' here; there are: " + joined(names));
        }
        return table_records(name);
      },
      py::arg("name"),
      "Rows of one of this subject's tables with source and standing of each value.");
}

// --- The bounce of the hook

Bounce make_bounce(const SiArgument& sprung_weight, const SiArgument& spring_rate,
                   const SiArgument& damping_up, const SiArgument& damping_down,
                   const SiArgument& friction, const SiArgument& start,
                   const SiArgument& start_speed) {
  constexpr std::string_view where = "suspension.HookBounce";
  return Bounce(
      {.sprung_weight = suspension_argument<Force>(where, "sprung_weight", sprung_weight),
       .spring_rate = suspension_argument<ForcePerLength>(where, "spring_rate", spring_rate),
       .damping_up = suspension_argument<Damping>(where, "damping_up", damping_up),
       .damping_down = suspension_argument<Damping>(where, "damping_down", damping_down),
       .friction = suspension_argument<Force>(where, "friction", friction)},
      suspension_argument<Length>(where, "start", start),
      suspension_argument<Speed>(where, "start_speed", start_speed));
}

/// Height and speed at one time or many.
py::tuple bounce_at(const Bounce& bounce, const SiArgument& time) {
  const Columns columns("suspension.HookBounce.at", {{"time", "s", time.value}});
  py::array_t<double> heights = columns.make_values();
  py::array_t<double> speeds = columns.make_values();
  double* height = heights.mutable_data();
  double* speed = speeds.mutable_data();
  for (std::size_t i = 0; i < columns.rows(); ++i) {
    const Bounce::State state = bounce.at(from_si<Time>(columns.row(i)[0]));
    height[i] = to_si(state.height);
    speed[i] = to_si(state.speed);
  }
  if (columns.scalar()) return py::make_tuple(py::float_(*height), py::float_(*speed));
  return py::make_tuple(heights, speeds);
}

std::vector<std::pair<double, double>> bounce_turns(const Bounce& bounce) {
  std::vector<std::pair<double, double>> found;
  for (const Bounce::Turn& turn : bounce.turns()) {
    found.emplace_back(to_si(turn.time), to_si(turn.height));
  }
  return found;
}

void bind_bounce(py::module_& m) {
  py::class_<Bounce>(m, "Bounce", "Motion of a sprung weight about its rest, up positive, SI.")
      .def(py::init(&make_bounce), py::arg("sprung_weight"), py::arg("spring_rate"),
           py::arg("damping_up"), py::arg("damping_down"), py::arg("friction"), py::arg("start"),
           py::arg("start_speed"))
      .def("at", &bounce_at, py::arg("time"), "Height [m] and speed [m/s] at a time [s].")
      .def_property_readonly("turns", &bounce_turns)
      .def_property_readonly("goes_slack", &Bounce::goes_slack)
      .def_property_readonly("highest", [](const Bounce& b) { return to_si(b.highest()); })
      .def_property_readonly("lowest", [](const Bounce& b) { return to_si(b.lowest()); })
      .def_property_readonly("rest",
                             [](const Bounce& b) -> std::optional<double> {
                               const auto rest = b.rest();
                               return rest ? std::optional(to_si(*rest)) : std::nullopt;
                             })
      .def(
          "settled",
          [](const Bounce& b, const SiArgument& within) {
            return to_si(b.settled(
                suspension_argument<Length>("suspension.HookBounce.settled", "within", within)));
          },
          py::arg("within"), "Time [s] from which on it stays so near [m] to rest.");
}

}  // namespace

void bind_suspension(py::module_& core) {
  py::module_ m =
      submodule(core, "suspension", "Blocks, hook, links, elevators: ratings, margins.");
  bind_row<suspension::DesignSafetyFactor>(m, "Design safety factor by load rating.");
  bind_row<suspension::AllowableStress>(m, "Stress in tension that the rating may cause.");
  bind_row<suspension::AllowableShear>(m, "Shear stress that the rating may cause.");
  bind_row<suspension::VerificationLoad>(m, "Load of the design verification test.");
  bind_row<suspension::ProofLoad>(m, "Load of the proof test.");
  bind_row<suspension::BearingRating>(m, "Rating of a block by its sheave bearings.");
  bind_row<suspension::LinkLoad>(m, "Load along one of two links at an angle.");
  bind_row<suspension::WornCapacityByArea>(m, "The most a worn link can still carry.");
  bind_row<suspension::WornCapacityByBending>(m, "The same where bending governs.");
  bind_row<suspension::WornBoreCapacity>(m, "Capacity of an elevator with a worn bore.");
  bind_row<suspension::DampingRatio>(m, "Damping over critical damping.");
  bind_row<suspension::BounceFrequency>(m, "Frequency of the undamped bounce.");
  bind_row<suspension::Overshoot>(m, "Swing beyond rest over distance from rest.");
  m.def("margins", &margins, py::arg("parts"), py::arg("hook_load"),
        "Load [N], margin [N], utilization, and hook load [N] at the rating, of every part (name, "
        "rating [N], multiple of the hook load, weight above [N]).");
  m.def(
      "weakest",
      [](const std::vector<NamedPart>& parts) { return suspension::weakest(make_parts(parts)); },
      py::arg("parts"), "Index of the part that comes to its rating first.");
  bind_suspension_tables(m);
  bind_bounce(m);
}

}  // namespace ropewalk::bindings
