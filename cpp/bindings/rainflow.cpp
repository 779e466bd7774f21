#include "common.hpp"

#include "ropewalk/rainflow/counter.hpp"

namespace ropewalk::bindings {

namespace {

using rainflow::Counter;
using rainflow::Cycle;

/// A history of tensions in N, one after the other.
struct TensionHistory {
  Columns columns;

  explicit TensionHistory(const SiArgument& tension)
      : columns("rainflow.count", {{"tension", "N", tension.value}}) {}

  [[nodiscard]] std::vector<Force> tensions() const {
    std::vector<Force> values;
    values.reserve(columns.rows());
    for (std::size_t i = 0; i < columns.rows(); ++i) {
      values.push_back(from_si<Force>(columns.columns()[0].at(i)));
    }
    return values;
  }
};

/// Columns of the cycles: range, mean, count, start, end.
py::tuple cycle_columns(const std::vector<Cycle>& cycles) {
  const auto rows = static_cast<py::ssize_t>(cycles.size());
  py::array_t<double> range(rows);
  py::array_t<double> mean(rows);
  py::array_t<double> count(rows);
  py::array_t<std::int64_t> start(rows);
  py::array_t<std::int64_t> end(rows);
  for (std::size_t i = 0; i < cycles.size(); ++i) {
    range.mutable_data()[i] = to_si(cycles[i].range);
    mean.mutable_data()[i] = to_si(cycles[i].mean);
    count.mutable_data()[i] = cycles[i].count;
    start.mutable_data()[i] = static_cast<std::int64_t>(cycles[i].start);
    end.mutable_data()[i] = static_cast<std::int64_t>(cycles[i].end);
  }
  return py::make_tuple(range, mean, count, start, end);
}

void push_history(Counter& counter, const TensionHistory& history) {
  const Column& tension = history.columns.columns()[0];
  const std::size_t rows = history.columns.rows();
  const py::gil_scoped_release unlocked;
  for (std::size_t i = 0; i < rows; ++i) counter.push(from_si<Force>(tension.at(i)));
}

py::tuple count_cycles(const SiArgument& tension, bool repeating) {
  const TensionHistory history(tension);
  if (repeating) return cycle_columns(rainflow::count_repeating(history.tensions()));
  Counter counter;
  push_history(counter, history);
  return cycle_columns(counter.finish());
}

double cycle_equivalent(const py::array_t<double>& range, const py::array_t<double>& count,
                        double exponent) {
  std::vector<Cycle> cycles(static_cast<std::size_t>(range.size()));
  const auto ranges = range.unchecked<1>();
  const auto counts = count.unchecked<1>();
  if (ranges.shape(0) != counts.shape(0)) {
    throw InadmissibleError("rainflow.equivalent_range", "count",
                            "there must be one count for each range");
  }
  for (py::ssize_t i = 0; i < ranges.shape(0); ++i) {
    auto& cycle = cycles[static_cast<std::size_t>(i)];
    cycle.range = from_si<Force>(ranges(i));
    cycle.count = counts(i);
  }
  return to_si(rainflow::equivalent_range(cycles, from_si<Number>(exponent)));
}

}  // namespace

void bind_rainflow(py::module_& core) {
  py::module_ m = submodule(core, "rainflow", "Rainflow counting of a tension history.");
  m.def("count", &count_cycles, py::arg("tension"), py::arg("repeating") = false,
        "Range, mean, count, start and end of every cycle of a history [N].");
  m.def("equivalent_range", &cycle_equivalent, py::arg("range"), py::arg("count"),
        py::arg("exponent"), "Range [N] whose constant cycles do the same damage.");
  py::class_<Counter>(m, "Counter", "Counts while the history comes in.")
      .def(py::init<>())
      .def(
          "push",
          [](Counter& counter, const SiArgument& tension) {
            push_history(counter, TensionHistory(tension));
            return cycle_columns(counter.take());
          },
          py::arg("tension"), "Take the next tensions [N]; return the cycles they close.")
      .def(
          "finish", [](Counter& counter) { return cycle_columns(counter.finish()); },
          "End the history; return the ranges left over as half cycles.")
      .def_property_readonly(
          "residue",
          [](const Counter& counter) {
            const std::vector<Force> waiting = counter.residue();
            py::array_t<double> values(static_cast<py::ssize_t>(waiting.size()));
            for (std::size_t i = 0; i < waiting.size(); ++i) {
              values.mutable_data()[i] = to_si(waiting[i]);
            }
            return values;
          },
          "Tensions [N] that wait for their cycle.")
      .def_property_readonly("samples", &Counter::samples, "Samples taken so far.");
}

}  // namespace ropewalk::bindings
