#include "common.hpp"

#include <algorithm>
#include <memory>

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

/// Columns of the cycles as Python gets them, without another copy.
class CycleColumns {
 public:
  explicit CycleColumns(std::size_t samples) {
    // Noise closes a cycle every third sample; what is reserved and not used costs nothing.
    for (auto* column : {&range_, &mean_, &count_}) column->reserve(samples / 2);
    for (auto* column : {&start_, &end_}) column->reserve(samples / 2);
  }

  void add(const Cycle& cycle) {
    range_.push_back(to_si(cycle.range));
    mean_.push_back(to_si(cycle.mean));
    count_.push_back(cycle.count);
    start_.push_back(static_cast<std::int64_t>(cycle.start));
    end_.push_back(static_cast<std::int64_t>(cycle.end));
  }

  /// Range, mean, count, start, end.
  [[nodiscard]] py::tuple arrays() && {
    return py::make_tuple(array(std::move(range_)), array(std::move(mean_)),
                          array(std::move(count_)), array(std::move(start_)),
                          array(std::move(end_)));
  }

 private:
  template <class Value>
  static py::array_t<Value> array(std::vector<Value>&& values) {
    auto owned = std::make_unique<std::vector<Value>>(std::move(values));
    const auto size = static_cast<py::ssize_t>(owned->size());
    const Value* const data = owned->data();
    const py::capsule owner(owned.release(), [](void* pointer) noexcept {
      const std::unique_ptr<std::vector<Value>> back(static_cast<std::vector<Value>*>(pointer));
    });
    return py::array_t<Value>(size, data, owner);
  }

  std::vector<double> range_, mean_, count_;
  std::vector<std::int64_t> start_, end_;
};

py::tuple cycle_columns(const std::vector<Cycle>& cycles) {
  CycleColumns columns(2 * cycles.size());
  for (const Cycle& one : cycles) columns.add(one);
  return std::move(columns).arrays();
}

/// Counts piece by piece, so that the cycles of a piece are still in the cache when they are put
/// into their columns.
py::tuple push_history(Counter& counter, const TensionHistory& history, bool finish) {
  constexpr std::size_t piece = 8'192;
  const Column& tension = history.columns.columns()[0];
  const std::size_t rows = history.columns.rows();
  // First of all: cycles of pieces before the bad one would be lost with the exception.
  for (std::size_t i = 0; i < rows; ++i) {
    const double value = tension.at(i);
    if (!rainflow::is_sample(value))
      rainflow::refuse_sample(counter.samples() + i, from_si<Force>(value));
  }
  CycleColumns columns(rows);
  const auto add = [&](const Cycle& one) { columns.add(one); };
  {
    const py::gil_scoped_release unlocked;
    for (std::size_t begin = 0; begin < rows; begin += piece) {
      counter.push(std::min(piece, rows - begin),
                   [&](std::size_t i) { return from_si<Force>(tension.at(begin + i)); });
      counter.drain(add);
    }
    if (finish) {
      for (const Cycle& one : counter.finish()) columns.add(one);
    }
  }
  return std::move(columns).arrays();
}

py::tuple count_cycles(const SiArgument& tension, bool repeating) {
  const TensionHistory history(tension);
  if (repeating) return cycle_columns(rainflow::count_repeating(history.tensions()));
  Counter counter;
  return push_history(counter, history, true);
}

/// Waiting tensions and their samples, the latest tension and its sample, samples, motion; SI.
using CounterNumbers = std::tuple<std::vector<double>, std::vector<std::size_t>, double,
                                  std::size_t, std::size_t, int>;

CounterNumbers counter_numbers(const rainflow::CounterState& state) {
  std::vector<double> waiting;
  for (const Force& tension : state.waiting) waiting.push_back(to_si(tension));
  return {waiting, state.places, to_si(state.last), state.last_place, state.samples, state.motion};
}

rainflow::CounterState counter_state(const CounterNumbers& numbers) {
  rainflow::CounterState state;
  for (const double tension : std::get<0>(numbers)) {
    state.waiting.push_back(from_si<Force>(tension));
  }
  state.places = std::get<1>(numbers);
  state.last = from_si<Force>(std::get<2>(numbers));
  state.last_place = std::get<3>(numbers);
  state.samples = std::get<4>(numbers);
  state.motion = std::get<5>(numbers);
  return state;
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
            return push_history(counter, TensionHistory(tension), false);
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
      .def_property_readonly("samples", &Counter::samples, "Samples taken so far.")
      .def(py::pickle(
          [](const Counter& counter) { return counter_numbers(counter.state()); },
          [](const CounterNumbers& numbers) { return Counter::from(counter_state(numbers)); }));
}

}  // namespace ropewalk::bindings
