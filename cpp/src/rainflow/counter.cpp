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

CounterState Counter::state() const {
  CounterState state;
  for (const Point& point : points_) {
    state.waiting.push_back(from_si<Force>(point.value));
    state.places.push_back(point.sample);
  }
  state.last = from_si<Force>(last_.value);
  state.last_place = last_.sample;
  state.samples = samples_;
  state.motion = static_cast<int>(motion_);
  return state;
}

Counter Counter::from(const CounterState& state) {
  Counter counter;
  for (std::size_t i = 0; i < std::min(state.waiting.size(), state.places.size()); ++i) {
    counter.points_.push_back({to_si(state.waiting[i]), state.places[i]});
  }
  counter.last_ = {to_si(state.last), state.last_place};
  counter.samples_ = state.samples;
  counter.motion_ = static_cast<Motion>(state.motion);
  const bool fits = state.motion >= 0 && state.motion <= 3 &&
                    state.waiting.size() == state.places.size() && counter.could_be();
  if (!fits) {
    throw InadmissibleError("rainflow.Counter", "state",
                            "state is none that a history of tensions leads to");
  }
  return counter;
}

bool Counter::could_be() const noexcept {
  if (motion_ == Motion::none) return points_.empty() && samples_ == 0;
  if (points_.empty() || !is_sample(last_.value) || last_.sample >= samples_) return false;
  for (std::size_t i = 0; i < points_.size(); ++i) {
    if (!is_sample(points_[i].value)) return false;
    if (i > 0 && points_[i].sample <= points_[i - 1].sample) return false;
    if (i < 2) continue;
    // Peaks follow valleys, and a range that is not less than the one before has closed it.
    const double x = points_[i].value - points_[i - 1].value;
    const double y = points_[i - 1].value - points_[i - 2].value;
    if ((x > 0.0) == (y > 0.0) || x == 0.0 || std::abs(x) >= std::abs(y)) return false;
  }
  const Point& top = points_.back();
  if (motion_ == Motion::start) return points_.size() == 1 && last_.value == top.value;
  const double run = last_.value - top.value;
  return last_.sample > top.sample && (motion_ == Motion::up ? run > 0.0 : run < 0.0);
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
