/// A constant power against a constant load, without units: speed w over terminal speed, time over
/// τ, travel over τ times the terminal speed.
#pragma once

#include <cmath>

namespace ropewalk::drawworks {

struct PowerRun {
  double time;
  double travel;
};

/// From speed w_0 to w_1, both in [0, 1):
///
///   time = ∫ w/(1−w) dw,    travel = ∫ w²/(1−w) dw
[[nodiscard]] inline PowerRun power_run(double from, double to) noexcept {
  constexpr double slow = 0.1;
  if (to < slow) {
    // The closed form would lose its digits: Σ w^k/k from k = 2 and from k = 3.
    PowerRun run{.time = 0.0, .travel = 0.0};
    double low = from * from;
    double high = to * to;
    for (int k = 2; k < 20; ++k) {
      const double term = (high - low) / k;
      run.time += term;
      if (k > 2) run.travel += term;
      low *= from;
      high *= to;
    }
    return run;
  }
  const double gain = to - from;
  const double time = -std::log1p(-gain / (1.0 - from)) - gain;
  return {.time = time, .travel = time - 0.5 * gain * (to + from)};
}

}  // namespace ropewalk::drawworks
