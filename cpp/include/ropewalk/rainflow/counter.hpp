/// Rainflow counting of a tension history, ASTM E1049-85.
///
/// Only peaks and valleys of the history count, its first and last sample among them. X is the
/// range just read, Y the one before it:
///
///   X < Y                       read on
///   X ≥ Y, Y has the start S    Y is half a cycle; the first point of Y goes, S is the next one
///   X ≥ Y, else                 Y is a cycle; both its points go
///   the history ends            each range left over is half a cycle
///
/// Source: ASTM E1049-85 (2017), 5.4.4, rainflow counting; for a history that repeats 5.4.5, the
/// simplified method: it is begun at its largest peak, and every Y with X ≥ Y is a cycle.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <span>
#include <utility>
#include <vector>

#include "ropewalk/base/error.hpp"
#include "ropewalk/units/text.hpp"

namespace ropewalk::rainflow {

/// One cycle or half a cycle of a history.
struct Cycle {
  Force range;        ///< largest less least tension, positive
  Force mean;         ///< half way between them
  double count;       ///< 1, or 0.5 for half a cycle
  std::size_t start;  ///< sample at which it begins, counted from 0
  std::size_t end;    ///< sample of its other end
};

/// Whether a tension, N, may be counted: finite, and so far from the largest number that the range
/// between any two is finite too.
[[nodiscard]] inline bool is_sample(double tension) noexcept { return std::abs(tension) <= 8e307; }

/// Throws InadmissibleError: a sample that is_sample refuses.
[[noreturn]] void refuse_sample(std::size_t sample, Force tension);

/// What a counter keeps in mind between two samples, as plain numbers.
struct CounterState {
  std::vector<Force> waiting;       ///< peaks and valleys that wait for their cycle
  std::vector<std::size_t> places;  ///< their samples
  Force last;                       ///< the latest change of the tension, and its sample
  std::size_t last_place = 0;
  std::size_t samples = 0;  ///< pushed since the beginning
  int motion = 0;  ///< 0: no sample yet; 1: one value so far; 2: it rose last; 3: it fell last
};

/// Counts while the history comes in, in one pass: each cycle is there as soon as it is closed.
/// What it keeps in mind are the points that have not found their cycle yet, rarely more than a few
/// dozen. Copies count on independently.
class Counter {
 public:
  /// The next sample. Throws InadmissibleError if is_sample refuses it; the counter is as it was
  /// before.
  void push(Force tension) {
    push(1, [tension](std::size_t) { return tension; });
  }

  /// The next `samples` samples, `at(i)` being the tension of sample i = 0, 1, … of them. Throws
  /// InadmissibleError at one that is_sample refuses; those before it are taken.
  template <class At>
  void push(std::size_t samples, const At& at) {
    // What changes with every sample stays in registers here.
    Point last = last_;
    Motion motion = motion_;
    const std::size_t first = samples_;
    for (std::size_t i = 0; i < samples; ++i) {
      const double value = to_si(at(i));
      if (!is_sample(value)) {
        keep(last, motion, first + i);
        refuse_sample(first + i, from_si<Force>(value));
      }
      // A flat place is the point at which it begins.
      if (motion != Motion::none && value == last.value) continue;
      const Motion now = motion == Motion::none ? Motion::start
                         : value > last.value   ? Motion::up
                                                : Motion::down;
      if (motion == Motion::none) {
        points_.push_back({value, first + i});
      } else if (motion != Motion::start && now != motion) {
        add(last);
      }
      motion = now;
      last = {value, first + i};
    }
    keep(last, motion, first + samples);
  }

  /// Cycles closed since the last call, in the order in which they closed.
  [[nodiscard]] std::vector<Cycle> take() { return std::exchange(closed_, {}); }

  /// The same cycles one by one to `use`, without giving their memory away: for long histories that
  /// are pushed in pieces.
  template <class Use>
  void drain(const Use& use) {
    for (const Cycle& one : closed_) use(one);
    closed_.clear();
  }

  /// Ends the history: the cycles of take() and the ranges left over as half cycles. The counter
  /// then begins anew.
  [[nodiscard]] std::vector<Cycle> finish();

  /// What it keeps in mind, to go on somewhere else; cycles that were not taken are not part of it.
  [[nodiscard]] CounterState state() const;
  /// A counter that goes on from there. Throws InadmissibleError for a state that no history leads
  /// to.
  [[nodiscard]] static Counter from(const CounterState& state);

  /// Samples pushed since the beginning.
  [[nodiscard]] std::size_t samples() const noexcept { return samples_; }
  /// Tensions that wait for their cycle, the latest sample included.
  [[nodiscard]] std::vector<Force> residue() const;

 private:
  friend std::vector<Cycle> count_repeating(std::span<const Force> history);

  struct Point {
    double value;
    std::size_t sample;
  };

  /// What the tension did last: there is none yet, it has one value so far, it rose, it fell.
  enum class Motion : std::uint8_t { none, start, up, down };

  void keep(Point last, Motion motion, std::size_t samples) noexcept {
    last_ = last;
    motion_ = motion;
    samples_ = samples;
  }

  /// Whether a history can have led to this state.
  [[nodiscard]] bool could_be() const noexcept;

  [[nodiscard]] bool moves() const noexcept {
    return motion_ == Motion::up || motion_ == Motion::down;
  }

  void add(Point point) {
    points_.push_back(point);
    while (points_.size() >= 3) {
      Point* const top = points_.data() + points_.size();
      const double x = std::abs(top[-1].value - top[-2].value);
      const double y = std::abs(top[-2].value - top[-3].value);
      if (x < y) return;
      const bool has_start = points_.size() == 3 && !repeating_;
      close(top[-3], top[-2], has_start ? 0.5 : 1.0);
      if (has_start) {
        points_.erase(points_.begin());
      } else {
        top[-3] = top[-1];
        points_.pop_back();
        points_.pop_back();
      }
    }
  }

  void close(const Point& start, const Point& end, double count) {
    // Half of each: the sum of two large numbers could overflow.
    closed_.push_back({.range = from_si<Force>(std::abs(end.value - start.value)),
                       .mean = from_si<Force>(0.5 * start.value + 0.5 * end.value),
                       .count = count,
                       .start = start.sample,
                       .end = end.sample});
  }

  std::vector<Point> points_;
  std::vector<Cycle> closed_;
  Point last_{};
  std::size_t samples_ = 0;
  Motion motion_ = Motion::none;
  bool repeating_ = false;  // the start has no part: every range that closes is a cycle
};

/// Cycles and half cycles of a whole history. Throws InadmissibleError naming a sample that is not
/// finite.
[[nodiscard]] std::vector<Cycle> count(std::span<const Force> history);

/// Cycles of a history that repeats itself over and over: all are whole. Samples are those of the
/// history as it is given.
[[nodiscard]] std::vector<Cycle> count_repeating(std::span<const Force> history);

/// Range whose constant cycles, as many as were counted, do the same damage by the sum of Palmgren
/// and Miner with lives N ∝ range^(−m).
///
///   r_eq = (Σ n_i r_i^m / Σ n_i)^(1/m)
///
/// Throws InadmissibleError if there are no cycles or the exponent is not positive. Means have no
/// part in it. Source: A. Palmgren (1924), M. A. Miner (1945).
[[nodiscard]] Force equivalent_range(std::span<const Cycle> cycles, Number exponent);

}  // namespace ropewalk::rainflow
