#include "ropewalk/rainflow/counter.hpp"

#include <algorithm>
#include <string>

#include "ropewalk/base/parameters.hpp"
#include "ropewalk/base/require.hpp"

namespace ropewalk::rainflow {

namespace {

constexpr Parameter<Number> exponent_parameter{
    "exponent", above_up_to(from_si<Number>(0.0), from_si<Number>(100.0), params::guard)};

}  // namespace

void refuse_sample(std::size_t sample, Force tension) {
  throw InadmissibleError("rainflow.count", "tension",
                          "sample " + std::to_string(sample) +
                              ": tension = " + quantity_text(tension) +
                              " is outside [-8e307, 8e307] N (a range must be a number)");
}

std::vector<Cycle> Counter::finish() {
  if (moves()) add(last_);
  if (!repeating_) {
    for (std::size_t i = 1; i < points_.size(); ++i) close(points_[i - 1], points_[i], 0.5);
  }
  std::vector<Cycle> cycles = take();
  *this = Counter();
  return cycles;
}

std::vector<Force> Counter::residue() const {
  std::vector<Force> tensions;
  for (const Point& point : points_) tensions.push_back(from_si<Force>(point.value));
  if (moves()) tensions.push_back(from_si<Force>(last_.value));
  return tensions;
}

std::vector<Cycle> count(std::span<const Force> history) {
  Counter counter;
  counter.push(history.size(), [&](std::size_t i) { return history[i]; });
  return counter.finish();
}

std::vector<Cycle> count_repeating(std::span<const Force> history) {
  if (history.empty()) return {};
  // What is no sample is refused by its place in the history, before the history is turned round.
  for (std::size_t i = 0; i < history.size(); ++i) {
    if (!is_sample(to_si(history[i]))) refuse_sample(i, history[i]);
  }
  const auto peak = std::max_element(history.begin(), history.end());
  const auto first = static_cast<std::size_t>(peak - history.begin());
  Counter counter;
  counter.repeating_ = true;
  // Once around, and the peak again.
  counter.push(history.size() + 1,
               [&](std::size_t i) { return history[(first + i) % history.size()]; });
  std::vector<Cycle> cycles = counter.finish();
  for (Cycle& cycle : cycles) {
    cycle.start = (cycle.start + first) % history.size();
    cycle.end = (cycle.end + first) % history.size();
  }
  return cycles;
}

Force equivalent_range(std::span<const Cycle> cycles, Number exponent) {
  constexpr std::string_view where = "rainflow.equivalent_range";
  require(where, exponent_parameter, exponent);
  double largest = 0.0;
  double counted = 0.0;
  for (const Cycle& cycle : cycles) {
    largest = std::max(largest, to_si(cycle.range));
    counted += cycle.count;
  }
  if (!(counted > 0.0 && largest > 0.0)) {
    throw InadmissibleError(where, "cycles", "there are no cycles");
  }
  // Over the largest, so that no power overflows.
  double sum = 0.0;
  for (const Cycle& cycle : cycles) {
    sum += cycle.count * std::pow(to_si(cycle.range) / largest, to_si(exponent));
  }
  return from_si<Force>(largest * std::pow(sum / counted, 1.0 / to_si(exponent)));
}

}  // namespace ropewalk::rainflow
