#include "common.hpp"

#include "ropewalk/line/operations.hpp"

namespace ropewalk::bindings {

namespace {

using line::Hoisting;
using line::HookStroke;

template <class Q>
Q line_argument(std::string_view where, std::string_view field, const SiArgument& given) {
  return from_si<Q>(si_number(where, field, unit_text<Q>(), given.value));
}

/// hook_load [N], height_from [m], height_to [m], count, pick_up, may_stop: an array each.
py::tuple hook_stroke_arrays(const std::vector<HookStroke>& strokes) {
  const auto column = [&]<class T>(T, const auto& value) {
    py::array_t<T> array(static_cast<py::ssize_t>(strokes.size()));
    T* out = array.mutable_data();
    for (std::size_t i = 0; i < strokes.size(); ++i) out[i] = value(strokes[i]);
    return array;
  };
  return py::make_tuple(column(double{}, [](const HookStroke& s) { return to_si(s.hook_load); }),
                        column(double{}, [](const HookStroke& s) { return to_si(s.height_from); }),
                        column(double{}, [](const HookStroke& s) { return to_si(s.height_to); }),
                        column(double{}, [](const HookStroke& s) { return s.count; }),
                        column(bool{}, [](const HookStroke& s) { return s.pick_up; }),
                        column(bool{}, [](const HookStroke& s) { return s.may_stop; }));
}

Hoisting make_hoisting(const drillstring::DrillString& string, const SiArgument& block_weight,
                       const SiArgument& travel, const SiArgument& drag_up,
                       const SiArgument& drag_down, const SiArgument& base_height,
                       const SiArgument& block_speed, const SiArgument& block_acceleration) {
  constexpr std::string_view where = "line.Hoisting";
  return {.string = string,
          .drag_up = line_argument<Number>(where, "drag_up", drag_up),
          .drag_down = line_argument<Number>(where, "drag_down", drag_down),
          .block_weight = line_argument<Force>(where, "block_weight", block_weight),
          .travel = line_argument<Length>(where, "travel", travel),
          .base_height = line_argument<Length>(where, "base_height", base_height),
          .block_speed = line_argument<Speed>(where, "block_speed", block_speed),
          .block_acceleration =
              line_argument<Acceleration>(where, "block_acceleration", block_acceleration)};
}

void bind_trips(py::module_& m) {
  const auto between = [&m](const char* name, auto compute, const char* length, const char* doc) {
    m.def(
        name,
        [compute, where = std::string("line.") + name, length = std::string(length)](
            const Hoisting& hoisting, const SiArgument& depth_from, const SiArgument& depth_to,
            const SiArgument& stand) {
          return hook_stroke_arrays(compute(hoisting,
                                            line_argument<Length>(where, "depth_from", depth_from),
                                            line_argument<Length>(where, "depth_to", depth_to),
                                            line_argument<Length>(where, length, stand)));
        },
        py::arg("hoisting"), py::arg("depth_from"), py::arg("depth_to"), py::arg(length), doc);
  };
  const auto down_to = [&m](const char* name, auto compute, const char* length, const char* doc) {
    m.def(
        name,
        [compute, where = std::string("line.") + name, length = std::string(length)](
            const Hoisting& hoisting, const SiArgument& depth, const SiArgument& stand) {
          return hook_stroke_arrays(compute(hoisting, line_argument<Length>(where, "depth", depth),
                                            line_argument<Length>(where, length, stand)));
        },
        py::arg("hoisting"), py::arg("depth"), py::arg(length), doc);
  };
  between("trip", &line::trip, "stand_length", "Strokes of a trip by stands, out or in.");
  between("short_trip", &line::short_trip, "stand_length",
          "Strokes of a trip out from depth_to up to depth_from and in again.");
  between("singles", &line::singles, "joint_length",
          "Strokes of picking up singles and running them.");
  down_to("round_trip", &line::round_trip, "stand_length", "Strokes of a trip out and in again.");
  down_to("casing", &line::casing, "joint_length", "Strokes of running casing by joints.");
}

void bind_making_hole(py::module_& m) {
  const auto kelly = [&m](const char* name, bool coring, const char* doc) {
    m.def(
        name,
        [coring, where = std::string("line.") + name](
            const Hoisting& hoisting, const SiArgument& depth_from, const SiArgument& depth_to,
            const SiArgument& joint_length, const SiArgument& kelly_weight,
            const SiArgument& weight_on_bit, bool ream) {
          const work::KellyDrilling drilling{
              .joint_length = line_argument<Length>(where, "joint_length", joint_length),
              .kelly_weight = line_argument<Force>(where, "kelly_weight", kelly_weight),
              .weight_on_bit = line_argument<Force>(where, "weight_on_bit", weight_on_bit),
              .ream = ream};
          const auto from = line_argument<Length>(where, "depth_from", depth_from);
          const auto to = line_argument<Length>(where, "depth_to", depth_to);
          return hook_stroke_arrays(coring ? line::coring(hoisting, from, to, drilling)
                                           : line::kelly_drilling(hoisting, from, to, drilling));
        },
        py::arg("hoisting"), py::arg("depth_from"), py::arg("depth_to"), py::arg("joint_length"),
        py::kw_only(), py::arg("kelly_weight"), py::arg("weight_on_bit") = 0.0,
        py::arg("ream") = true, doc);
  };
  using TopDrive =
      std::vector<HookStroke> (*)(const Hoisting&, Length, Length, const work::TopDriveDrilling&);
  const auto top_drive = [&m](const char* name, TopDrive compute, const char* doc) {
    m.def(
        name,
        [compute, where = std::string("line.") + name](
            const Hoisting& hoisting, const SiArgument& depth_from, const SiArgument& depth_to,
            const SiArgument& stand_length, const SiArgument& weight_on_bit, int reams) {
          return hook_stroke_arrays(
              compute(hoisting, line_argument<Length>(where, "depth_from", depth_from),
                      line_argument<Length>(where, "depth_to", depth_to),
                      {.stand_length = line_argument<Length>(where, "stand_length", stand_length),
                       .weight_on_bit = line_argument<Force>(where, "weight_on_bit", weight_on_bit),
                       .reams = reams}));
        },
        py::arg("hoisting"), py::arg("depth_from"), py::arg("depth_to"), py::arg("stand_length"),
        py::kw_only(), py::arg("weight_on_bit") = 0.0, py::arg("reams") = 0, doc);
  };
  kelly("kelly_drilling", false, "Strokes of drilling with a kelly.");
  kelly("kelly_coring", true, "Strokes of coring with a kelly; nothing is reamed.");
  top_drive("top_drive_drilling", &line::top_drive_drilling,
            "Strokes of drilling with a top drive.");
  top_drive("reaming", &line::reaming, "Strokes of reaming hole that is there, with a top drive.");
  top_drive(
      "top_drive_coring",
      [](const Hoisting& hoisting, Length from, Length to, const work::TopDriveDrilling& drilling) {
        return line::coring(hoisting, from, to, drilling);
      },
      "Strokes of coring with a top drive; nothing is reamed.");
}

void bind_working_in_place(py::module_& m) {
  m.def(
      "circulating",
      [](const Hoisting& hoisting, const SiArgument& depth, const SiArgument& height, int strokes) {
        constexpr std::string_view where = "line.circulating";
        return hook_stroke_arrays(
            line::circulating(hoisting, line_argument<Length>(where, "depth", depth),
                              line_argument<Length>(where, "height", height), strokes));
      },
      py::arg("hoisting"), py::arg("depth"), py::arg("height"), py::arg("strokes"),
      "Strokes of circulating with the string moved up and down.");
  m.def(
      "jarring",
      [](const Hoisting& hoisting, const SiArgument& depth, const SiArgument& overpull,
         const SiArgument& height, int overpulls) {
        constexpr std::string_view where = "line.jarring";
        return hook_stroke_arrays(
            line::jarring(hoisting, line_argument<Length>(where, "depth", depth),
                          line_argument<Force>(where, "overpull", overpull),
                          line_argument<Length>(where, "height", height), overpulls));
      },
      py::arg("hoisting"), py::arg("depth"), py::arg("overpull"), py::arg("height"),
      py::arg("overpulls"), "Strokes of jarring, as a count of overpulls.");
}

}  // namespace

void bind_line_operations(py::module_& core) {
  py::module_ m = submodule(core, "line", "The damage map of a line, slipping and cutting.");
  py::class_<Hoisting>(m, "Hoisting", "A string on the hook and the hoist above it, SI.")
      .def(py::init(&make_hoisting), py::arg("string"), py::kw_only(), py::arg("block_weight"),
           py::arg("travel"), py::arg("drag_up") = 0.0, py::arg("drag_down") = 0.0,
           py::arg("base_height") = 0.0, py::arg("block_speed") = 0.0,
           py::arg("block_acceleration") = 0.0);
  bind_trips(m);
  bind_making_hole(m);
  bind_working_in_place(m);
}

}  // namespace ropewalk::bindings
