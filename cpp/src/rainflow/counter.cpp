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

void Counter::refuse(double value) const {
  throw InadmissibleError("rainflow.count", "tension",
                          "sample " + std::to_string(samples_) + ": tension = " +
                              quantity_text(from_si<Force>(value)) + " is not finite");
}

std::vector<Cycle> Counter::finish() {
  if (moving_) add(last_);
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
  if (moving_) tensions.push_back(from_si<Force>(last_.value));
  return tensions;
}

std::vector<Cycle> count(std::span<const Force> history) {
  Counter counter;
  for (const Force& tension : history) counter.push(tension);
  return counter.finish();
}

std::vector<Cycle> count_repeating(std::span<const Force> history) {
  if (history.empty()) return {};
  // What is not finite is refused by its place in the history, before the history is turned round.
  const auto finite = [](const Force& tension) { return std::isfinite(to_si(tension)); };
  if (!std::all_of(history.begin(), history.end(), finite)) return count(history);
  const auto peak = std::max_element(history.begin(), history.end());
  const auto first = static_cast<std::size_t>(peak - history.begin());
  Counter counter;
  counter.repeating_ = true;
  for (std::size_t i = 0; i <= history.size(); ++i) {
    counter.push(history[(first + i) % history.size()]);
  }
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
