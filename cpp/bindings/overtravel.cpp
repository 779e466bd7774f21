#include "common.hpp"

#include "ropewalk/overtravel/stopping.hpp"
#include "ropewalk/overtravel/wraps.hpp"

namespace ropewalk::bindings {

namespace {

/// One number per row; the columns are lines, wraps at the lowest, and what `compute` asks for.
template <class Compute>
SiResult strung_rows(std::string_view where, const std::vector<Columns::Named>& arguments,
                     const drum::Drum& drum, const Compute& compute) {
  const Columns columns(where, arguments);
  const auto one = [&](std::size_t i) {
    const std::vector<double> row = columns.row(i);
    return compute(overtravel::StrungDrum{drum, from_si<Number>(row[0]), from_si<Number>(row[1])},
                   row);
  };
  if (columns.scalar()) return {py::float_(one(0))};
  py::array_t<double> out = columns.make_values();
  double* data = out.mutable_data();
  for (std::size_t i = 0; i < columns.rows(); ++i) data[i] = one(i);
  return {std::move(out)};
}

SiResult wraps_at_height(const drum::Drum& drum, const SiArgument& lines,
                         const SiArgument& wraps_at_lowest, const SiArgument& block_height) {
  return strung_rows("overtravel.wraps_at_height",
                     {{"lines", "", lines.value},
                      {"wraps_at_lowest", "", wraps_at_lowest.value},
                      {"block_height", "m", block_height.value}},
                     drum,
                     [](const overtravel::StrungDrum& strung, const std::vector<double>& row) {
                       return overtravel::wraps_at_height(strung, from_si<Length>(row[2]));
                     });
}

SiResult height_at_wraps(const drum::Drum& drum, const SiArgument& lines,
                         const SiArgument& wraps_at_lowest, const SiArgument& wraps) {
  return strung_rows("overtravel.height_at_wraps",
                     {{"lines", "", lines.value},
                      {"wraps_at_lowest", "", wraps_at_lowest.value},
                      {"wraps", "", wraps.value}},
                     drum,
                     [](const overtravel::StrungDrum& strung, const std::vector<double>& row) {
                       return to_si(overtravel::height_at_wraps(strung, row[2]));
                     });
}

SiResult counted_height(const drum::Drum& drum, const SiArgument& lines,
                        const SiArgument& wraps_at_lowest, const SiArgument& wraps_known,
                        const SiArgument& block_height) {
  return strung_rows("overtravel.counted_height",
                     {{"lines", "", lines.value},
                      {"wraps_at_lowest", "", wraps_at_lowest.value},
                      {"wraps_known", "", wraps_known.value},
                      {"block_height", "m", block_height.value}},
                     drum,
                     [](const overtravel::StrungDrum& strung, const std::vector<double>& row) {
                       return to_si(overtravel::counted_height(strung, from_si<Number>(row[2]),
                                                               from_si<Length>(row[3])));
                     });
}

}  // namespace

void bind_overtravel(py::module_& core) {
  py::module_ m = submodule(core, "overtravel", "Stopping short of crown and floor.");
  bind_row<overtravel::StoppingDistance>(m, "Way of the block from the set point to standstill.");
  bind_row<overtravel::AllowedSpeed>(m, "Largest speed from which a block stops within a room.");
  bind_row<overtravel::TripHeightShift>(m, "Rise of a set point in wraps by slip and cut.");
  m.def("wraps_at_height", &wraps_at_height, py::arg("drum"), py::arg("lines"),
        py::arg("wraps_at_lowest"), py::arg("block_height"),
        "Laps on the drum with the block at a height [m].");
  m.def("height_at_wraps", &height_at_wraps, py::arg("drum"), py::arg("lines"),
        py::arg("wraps_at_lowest"), py::arg("wraps"),
        "Height [m] of the block with so many laps on the drum.");
  m.def("counted_height", &counted_height, py::arg("drum"), py::arg("lines"),
        py::arg("wraps_at_lowest"), py::arg("wraps_known"), py::arg("block_height"),
        "Height [m] a counter of turns shows that knows other laps at the lowest position.");
}

}  // namespace ropewalk::bindings
