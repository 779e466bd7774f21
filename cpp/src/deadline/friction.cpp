#include "ropewalk/deadline/friction.hpp"

#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <string>

#include "ropewalk/base/require.hpp"

namespace ropewalk::deadline {

namespace {

constexpr std::string_view where = "deadline.fit_friction";

/// The moves of one load: number and means of z (−1 hoisting, +1 lowering) and y = ln W_ind.
struct Load {
  double moves = 0.0;
  double z = 0.0;
  double y = 0.0;
};

double direction(const Move& move) noexcept { return move.down ? 1.0 : -1.0; }

double logarithm(const Move& move) noexcept { return std::log(to_si(move.reading)); }

std::vector<Load> means(std::span<const Move> moves) {
  std::size_t loads = 0;
  for (const Move& move : moves) loads = std::max(loads, move.load + 1);
  std::vector<Load> sums(loads);
  for (const Move& move : moves) {
    Load& load = sums[move.load];
    load.moves += 1.0;
    load.z += direction(move);
    load.y += logarithm(move);
  }
  for (Load& load : sums) {
    if (load.moves == 0.0) {
      throw InadmissibleError(where, "loads", "loads must be numbered 0, 1, 2 … without a gap");
    }
    load.z /= load.moves;
    load.y /= load.moves;
  }
  return sums;
}

void check(std::span<const Move> moves, int lines, double confidence) {
  require(where, params::lines, from_si<Number>(lines));
  if (!reeving::is_even(from_si<Number>(lines))) {
    throw InadmissibleError(where, "lines", std::string(reeving::even_rule));
  }
  require(where, argument::confidence, from_si<Number>(confidence));
  for (std::size_t i = 0; i < moves.size(); ++i) {
    const Interval& range = argument::reading_hoisting.admissible;
    const double reading = to_si(moves[i].reading);
    if (range.contains(reading)) continue;
    throw InadmissibleError(
        where, "readings",
        "row " + std::to_string(i) + " of " + std::to_string(moves.size()) + ": " +
            ropewalk::detail::describe_outside("readings", reading, "N", range));
  }
}

/// ln D and its derivative by ln K, D = K^(−(N−1)/2) (1 + K + … + K^(N−1)).
struct LogSum {
  double value;
  double slope;
};

LogSum log_sum(double ln_k, int lines) noexcept {
  double sum = 0.0;
  double moment = 0.0;
  for (int i = 0; i < lines; ++i) {
    const double exponent = i - 0.5 * (lines - 1);
    const double term = std::exp(exponent * ln_k);
    sum += term;
    moment += exponent * term;
  }
  return {std::log(sum), moment / sum};
}

}  // namespace

FrictionFit fit_friction(std::span<const Move> moves, int lines, bool dead_line_sheave_turns,
                         double confidence) {
  check(moves, lines, confidence);
  const std::vector<Load> loads = means(moves);

  double zz = 0.0;
  double zy = 0.0;
  for (const Move& move : moves) {
    const Load& load = loads[move.load];
    const double z = direction(move) - load.z;
    zz += z * z;
    zy += z * (logarithm(move) - load.y);
  }
  if (!(zz > 0.0)) {
    throw InadmissibleError(where, "readings", "no load was moved both up and down");
  }
  const auto degrees = static_cast<int>(moves.size()) - static_cast<int>(loads.size()) - 1;
  if (degrees < 1) {
    throw InadmissibleError(where, "readings",
                            std::to_string(moves.size()) + " moves of " +
                                std::to_string(loads.size()) +
                                " loads leave nothing to judge the scatter by; give one more, or "
                                "take friction_from_readings");
  }
  const double b = zy / zz;
  double squares = 0.0;
  for (const Move& move : moves) {
    const Load& load = loads[move.load];
    const double residual = logarithm(move) - load.y - b * (direction(move) - load.z);
    squares += residual * residual;
  }
  const double variance = squares / degrees;
  const double variance_b = variance / zz;

  const double per_b = 2.0 / (lines - 1.0 + (dead_line_sheave_turns ? 2.0 : 0.0));
  const double ln_k = per_b * b;
  const Interval& possible = params::sheave_friction.admissible;
  if (ln_k > std::log(possible.high)) {
    throw InadmissibleError(
        where, "readings",
        "readings while hoisting and lowering are so far apart that " +
            ropewalk::detail::describe_outside("sheave_friction", std::exp(ln_k), "", possible) +
            ": loads mixed up, another number of lines, or drag in the hole");
  }
  const double error = per_b * std::sqrt(variance_b);
  const boost::math::students_t student(degrees);
  const double reach = error * boost::math::quantile(student, 0.5 + 0.5 * confidence);

  const LogSum ln_d = log_sum(ln_k, lines);
  std::vector<Force> hook_loads;
  std::vector<Force> hook_load_errors;
  for (const Load& load : loads) {
    // ln W = ȳ − b z̄ + ln D(b) − ln N, with ȳ and b independent.
    const double hook_load = std::exp(load.y - b * load.z + ln_d.value) / lines;
    const double by_b = per_b * ln_d.slope - load.z;
    const double relative = std::sqrt(variance / load.moves + by_b * by_b * variance_b);
    hook_loads.push_back(from_si<Force>(hook_load));
    hook_load_errors.push_back(from_si<Force>(hook_load * relative));
  }
  return {.friction = from_si<Number>(std::exp(ln_k)),
          .standard_error = from_si<Number>(std::exp(ln_k) * error),
          .low = from_si<Number>(std::exp(ln_k - reach)),
          .high = from_si<Number>(std::exp(ln_k + reach)),
          .scatter = from_si<Number>(std::sqrt(variance)),
          .degrees_of_freedom = degrees,
          .hook_loads = std::move(hook_loads),
          .hook_load_errors = std::move(hook_load_errors)};
}

}  // namespace ropewalk::deadline
