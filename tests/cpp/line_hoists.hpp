/// Hoists whose offsets are round numbers, for tests of the line that are computed by hand.
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

#include "ropewalk/line/run.hpp"
#include "ropewalk/line/tackle.hpp"

namespace ropewalk::line {

constexpr Number number(double x) { return from_si<Number>(x); }

constexpr double rope_diameter = 0.03;
/// Half a turn of rope, π/2 (D + d), of 2 m.
constexpr double sheave_tread = 4.0 / pi - rope_diameter;
/// A lap of the first layer, π (D + d), of 5 m; every layer above is 2 π d longer.
constexpr double barrel = 5.0 / pi - rope_diameter;
constexpr double next_lap = 2.0 * pi * rope_diameter;

/// Everything round. The block travels 30 m; line between the blocks is 35 … 5 m.
///
///               2 lines    4 lines        from the anchor along the rope
///   dead-line    20 … 22    20 … 22
///   sheave 1     22 … 24    22 … 24       + L
///   sheave 2     24 … 26    24 … 26       + 2 L
///   sheave 3                26 … 28       + 3 L
///   sheave 4                28 … 30       + 4 L
///   drum             56         60        + N L
///   reach           126        200        block at its lowest
///   anchor          146        220        with 20 m, 4 laps, on the drum
inline StringUp round_hoist(int lines, double friction = 1.0) {
  const auto sheaves = static_cast<std::size_t>(lines);
  return {.arrangement = reeving::Arrangement(
              {.lines = lines, .sheave_friction = {number(friction)}, .lead_sheaves = 0}),
          .sheave_diameters = std::vector<Length>(sheaves, sheave_tread * meter),
          .dead_line_sheave_diameter = sheave_tread * meter,
          .lead_sheave_diameters = {},
          .rope_diameter = rope_diameter * meter,
          .dead_line = 20.0 * meter,
          .fast_line = 30.0 * meter,
          .shortest = 5.0 * meter,
          .longest = 35.0 * meter,
          .drum = drum::Drum({.barrel_diameter = barrel * meter,
                              .rope_diameter = rope_diameter * meter,
                              .laps_per_layer = number(20.0),
                              .layers = 3,
                              .layer_height = drum::stacked_layer_height()}),
          .wraps_at_lowest = number(4.0),
          .supply = 400.0 * meter};
}

constexpr double wire_strength = 1.77e9;

/// N = (p/R0)^−2: damage of half a cycle is ½ (2 F / (d D R0))².
inline fatigue::LifeModel square_law() {
  return fatigue::PowerLaw(1.0, 2.0, fatigue::Basis::discard);
}
constexpr double half_cycle(double tension, double diameter) {
  const double pressure = 2.0 * tension / (rope_diameter * diameter * wire_strength);
  return 0.5 * pressure * pressure;
}

inline RopeProperties rope_properties() {
  return {.diameter = rope_diameter * meter,
          .wire_strength = from_si<Stress>(wire_strength),
          .breaking_force = 600.0 * kilonewton,
          .bend_length = 3.0 * meter};
}

/// The columns of a campaign and what refers to them.
struct Rows {
  std::vector<double> hook_load;
  std::vector<double> count;
  std::vector<double> from;
  std::vector<double> to;
  std::vector<std::uint8_t> pick_up;
  std::vector<std::uint8_t> may_stop;

  Rows& add(double load, double start, double end, double times = 1.0, bool picked_up = false) {
    hook_load.push_back(load);
    from.push_back(start);
    to.push_back(end);
    count.push_back(times);
    pick_up.push_back(picked_up ? 1 : 0);
    may_stop.push_back(1);
    return *this;
  }
  [[nodiscard]] std::size_t size() const { return from.size(); }
  [[nodiscard]] LoadColumns loads() const { return {.hook_load = hook_load, .count = count}; }
  /// One block of all rows, gone through once.
  [[nodiscard]] CampaignColumns campaign() const {
    return {.loads = loads(),
            .height_from = from,
            .height_to = to,
            .pick_up = pick_up,
            .may_stop = may_stop,
            .blocks = {{.first = 0, .last = size(), .times = 1}},
            .events = {}};
  }
  [[nodiscard]] double work(std::size_t rows) const {
    double sum = 0.0;
    for (std::size_t i = 0; i < rows; ++i)
      sum += count[i] * hook_load[i] * std::abs(to[i] - from[i]);
    return sum;
  }
};

/// Adds `value` to bins of 1 m between two whole meters.
inline void lay(std::vector<double>& bins, int from, int to, double value) {
  for (int b = from; b < to; ++b) bins[static_cast<std::size_t>(b)] += value;
}

inline void expect_bins(const std::vector<double>& values, const std::vector<double>& expected,
                        double tolerance) {
  ASSERT_EQ(values.size(), expected.size());
  for (std::size_t b = 0; b < values.size(); ++b) {
    EXPECT_NEAR(values[b], expected[b], tolerance) << "bin " << b;
  }
}

/// The error that `act` throws, as field and text; fails if it throws none.
struct Refusal {
  std::string field;
  std::string text;

  [[nodiscard]] bool says(std::string_view part) const {
    return text.find(part) != std::string::npos;
  }
};
template <class Act>
Refusal refusal_of(const Act& act) {
  try {
    act();
  } catch (const InadmissibleError& error) {
    return {error.field(), error.what()};
  }
  ADD_FAILURE() << "nothing was refused";
  return {};
}

}  // namespace ropewalk::line
