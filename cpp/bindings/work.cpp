#include "common.hpp"

#include "ropewalk/work/drilling.hpp"
#include "ropewalk/work/strokes.hpp"
#include "ropewalk/work/trip.hpp"

namespace ropewalk::bindings {

namespace {

using work::Hung;
using work::Stroke;

/// Reads the arguments of one function.
class Reader {
 public:
  explicit Reader(std::string_view where) : where_(where) {}

  template <class Q>
  [[nodiscard]] Q operator()(std::string_view field, const SiArgument& given) const {
    return from_si<Q>(si_number(where_, field, unit_text<Q>(), given.value));
  }
  [[nodiscard]] Length length(std::string_view field, const SiArgument& given) const {
    return (*this).operator()<Length>(field, given);
  }
  [[nodiscard]] Force force(std::string_view field, const SiArgument& given) const {
    return (*this).operator()<Force>(field, given);
  }
  [[nodiscard]] Hung hung(const SiArgument& pipe_weight, const SiArgument& bha_excess_weight,
                          const SiArgument& bha_length, const SiArgument& block_weight) const {
    return {(*this).operator()<ForcePerLength>("pipe_weight", pipe_weight),
            force("bha_excess_weight", bha_excess_weight), length("bha_length", bha_length),
            force("block_weight", block_weight)};
  }

 private:
  std::string_view where_;
};

/// depth [m], load_up [N], load_down [N], travel [m]: one array each, one entry per stroke.
py::tuple stroke_arrays(const std::vector<Stroke>& strokes) {
  const auto column = [&](const auto& value) {
    py::array_t<double> array(static_cast<py::ssize_t>(strokes.size()));
    double* out = array.mutable_data();
    for (std::size_t i = 0; i < strokes.size(); ++i) out[i] = to_si(value(strokes[i]));
    return array;
  };
  return py::make_tuple(column([](const Stroke& s) { return s.depth; }),
                        column([](const Stroke& s) { return s.load_up; }),
                        column([](const Stroke& s) { return s.load_down; }),
                        column([](const Stroke& s) { return s.travel; }));
}

py::tuple trip(const SiArgument& depth_from, const SiArgument& depth_to,
               const SiArgument& stand_length, const SiArgument& pipe_weight,
               const SiArgument& bha_excess_weight, const SiArgument& block_weight,
               const SiArgument& bha_length) {
  const Reader read("work.trip_strokes");
  return stroke_arrays(
      work::trip_strokes(read.hung(pipe_weight, bha_excess_weight, bha_length, block_weight),
                         read.length("depth_from", depth_from), read.length("depth_to", depth_to),
                         read.length("stand_length", stand_length)));
}

py::tuple casing(const SiArgument& depth, const SiArgument& joint_length,
                 const SiArgument& casing_weight, const SiArgument& block_weight) {
  const Reader read("work.casing_strokes");
  return stroke_arrays(
      work::casing_strokes(read.length("depth", depth), read.length("joint_length", joint_length),
                           read.operator()<ForcePerLength>("casing_weight", casing_weight),
                           read.force("block_weight", block_weight)));
}

py::tuple kelly(const SiArgument& depth_from, const SiArgument& depth_to,
                const SiArgument& joint_length, const SiArgument& pipe_weight,
                const SiArgument& bha_excess_weight, const SiArgument& block_weight,
                const SiArgument& kelly_weight, const SiArgument& weight_on_bit, bool ream,
                const SiArgument& bha_length) {
  const Reader read("work.kelly_strokes");
  return stroke_arrays(
      work::kelly_strokes(read.hung(pipe_weight, bha_excess_weight, bha_length, block_weight),
                          read.length("depth_from", depth_from), read.length("depth_to", depth_to),
                          {.joint_length = read.length("joint_length", joint_length),
                           .kelly_weight = read.force("kelly_weight", kelly_weight),
                           .weight_on_bit = read.force("weight_on_bit", weight_on_bit),
                           .ream = ream}));
}

py::tuple top_drive(const SiArgument& depth_from, const SiArgument& depth_to,
                    const SiArgument& stand_length, const SiArgument& pipe_weight,
                    const SiArgument& bha_excess_weight, const SiArgument& block_weight,
                    const SiArgument& weight_on_bit, int reams, const SiArgument& bha_length) {
  const Reader read("work.top_drive_strokes");
  return stroke_arrays(work::top_drive_strokes(
      read.hung(pipe_weight, bha_excess_weight, bha_length, block_weight),
      read.length("depth_from", depth_from), read.length("depth_to", depth_to),
      {.stand_length = read.length("stand_length", stand_length),
       .weight_on_bit = read.force("weight_on_bit", weight_on_bit),
       .reams = reams}));
}

}  // namespace

void bind_work(py::module_& core) {
  py::module_ m = submodule(core, "work", "Work of the drilling line, counted at the hook.");
  bind_row<work::Lift>(m, "Work of one stroke of the block.");
  bind_row<work::RoundTrip>(m, "Work of one round trip, API RP 9B.");
  bind_row<work::ShortTrip>(m, "Work of a short trip, API RP 9B.");
  bind_row<work::Drilling>(m, "Work of drilling, API RP 9B.");
  bind_row<work::Coring>(m, "Work of coring, API RP 9B.");
  bind_row<work::Casing>(m, "Work of setting casing, API RP 9B.");

  m.def("trip_strokes", &trip, py::arg("depth_from"), py::arg("depth_to"), py::arg("stand_length"),
        py::arg("pipe_weight"), py::arg("bha_excess_weight"), py::arg("block_weight"),
        py::kw_only(), py::arg("bha_length") = 0.0,
        "Strokes of a trip by stands: depth, load up, load down, travel.");
  m.def("casing_strokes", &casing, py::arg("depth"), py::arg("joint_length"),
        py::arg("casing_weight"), py::arg("block_weight"),
        "Strokes of running casing by joints: depth, load up, load down, travel.");
  m.def("kelly_strokes", &kelly, py::arg("depth_from"), py::arg("depth_to"),
        py::arg("joint_length"), py::arg("pipe_weight"), py::arg("bha_excess_weight"),
        py::arg("block_weight"), py::kw_only(), py::arg("kelly_weight"),
        py::arg("weight_on_bit") = 0.0, py::arg("ream") = true, py::arg("bha_length") = 0.0,
        "Strokes of drilling with a kelly: depth, load up, load down, travel.");
  m.def("top_drive_strokes", &top_drive, py::arg("depth_from"), py::arg("depth_to"),
        py::arg("stand_length"), py::arg("pipe_weight"), py::arg("bha_excess_weight"),
        py::arg("block_weight"), py::kw_only(), py::arg("weight_on_bit") = 0.0,
        py::arg("reams") = 0, py::arg("bha_length") = 0.0,
        "Strokes of drilling with a top drive: depth, load up, load down, travel.");
}

}  // namespace ropewalk::bindings
