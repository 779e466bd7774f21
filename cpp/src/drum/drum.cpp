#include "ropewalk/drum/drum.hpp"

#include <algorithm>
#include <string>

#include "ropewalk/base/require.hpp"
#include "ropewalk/drum/parameters.hpp"

namespace ropewalk::drum {

namespace {

constexpr std::string_view where = "drum.Drum";

/// A length summed elsewhere may differ from the capacity by rounding.
constexpr double rounding = 1e-9;

[[nodiscard]] constexpr Number number(int count) noexcept {
  return from_si<Number>(static_cast<double>(count));
}

void check(const Shape& shape) {
  require(where, argument::barrel_diameter, shape.barrel_diameter);
  require(where, params::rope_diameter, shape.rope_diameter);
  require(where, argument::laps_per_layer, shape.laps_per_layer);
  require(where, argument::layers, number(shape.layers));
  require(where, argument::layer_height, shape.layer_height);
  require(where, argument::crossovers_per_lap, number(shape.crossovers_per_lap));
  const double halves = 2.0 * to_si(shape.laps_per_layer);
  if (halves != std::floor(halves)) {
    throw InadmissibleError(where, "laps_per_layer",
                            "laps_per_layer = " + quantity_text(shape.laps_per_layer) +
                                " is neither a whole nor a half number");
  }
  if (shape.barrel_diameter < shape.rope_diameter) {
    throw InadmissibleError(
        where, "barrel_diameter",
        "barrel_diameter = " + quantity_text(shape.barrel_diameter) +
            " is less than rope_diameter = " + quantity_text(shape.rope_diameter) + " (geometry)");
  }
}

}  // namespace

Drum::Drum(const Shape& shape) : shape_(shape) {
  check(shape);
  before_.push_back(from_si<Length>(0.0));
  for (int layer = 1; layer <= shape.layers; ++layer) {
    before_.push_back(before_.back() + shape.laps_per_layer * lap(layer));
  }
}

double Drum::wraps() const noexcept {
  return to_si(shape_.laps_per_layer) * static_cast<double>(shape_.layers);
}

void Drum::require_layer(int layer) const {
  if (layer < 1 || layer > shape_.layers) {
    throw InadmissibleError(where, "layer",
                            "layer = " + std::to_string(layer) + " is outside [1, " +
                                std::to_string(shape_.layers) + "], the layers of the drum");
  }
}

Length Drum::bend_diameter(int layer) const {
  require_layer(layer);
  return shape_.barrel_diameter +
         2.0 * static_cast<double>(layer - 1) * shape_.layer_height * shape_.rope_diameter;
}

Length Drum::lap(int layer) const noexcept {
  return pi * (shape_.barrel_diameter + shape_.rope_diameter +
               2.0 * static_cast<double>(layer - 1) * shape_.layer_height * shape_.rope_diameter);
}

Length Drum::lap_length(int layer) const {
  require_layer(layer);
  return lap(layer);
}

Length Drum::layer_length(int layer) const { return shape_.laps_per_layer * lap_length(layer); }

Length Drum::length_before(int layer) const {
  require_layer(layer);
  return before_[static_cast<std::size_t>(layer - 1)];
}

Drum::Place Drum::place(Length from_drum_end) const {
  return place("from_drum_end", from_drum_end);
}

Drum::Place Drum::place(std::string_view field, Length from_drum_end) const {
  if (!(from_drum_end >= 0.0 * meter && from_drum_end <= capacity() * (1.0 + rounding))) {
    throw InadmissibleError(where, field,
                            std::string(field) + " = " + quantity_text(from_drum_end) +
                                " is outside [0, " + quantity_text(capacity()) +
                                "], the rope the drum holds");
  }
  const auto above = std::upper_bound(before_.begin() + 1, before_.end() - 1, from_drum_end);
  const int layer = static_cast<int>(above - before_.begin());
  const double full = to_si(shape_.laps_per_layer);
  const double laps = std::min(to_si(Number((from_drum_end - *(above - 1)) / lap(layer))), full);
  return {.layer = layer, .lap = laps, .wraps = static_cast<double>(layer - 1) * full + laps};
}

Length Drum::length_at(double wraps) const noexcept {
  const double full = to_si(shape_.laps_per_layer);
  const int layer = std::min(static_cast<int>(wraps / full) + 1, shape_.layers);
  const double laps = std::min(wraps - static_cast<double>(layer - 1) * full, full);
  return before_[static_cast<std::size_t>(layer - 1)] + laps * lap(layer);
}

Length Drum::length_of(double wraps) const {
  if (!(wraps >= 0.0 && wraps <= this->wraps() * (1.0 + rounding))) {
    throw InadmissibleError(where, "wraps",
                            "wraps = " + number_text(wraps) + " is outside [0, " +
                                number_text(this->wraps()) + "], the laps the drum holds");
  }
  return length_at(wraps);
}

std::vector<Drum::Crossover> Drum::crossovers(Length start, Length end) const {
  const auto first = static_cast<int>(std::floor(2.0 * place("start", start).wraps));
  const auto last = static_cast<int>(std::ceil(2.0 * place("end", end).wraps));
  if (start > end) {
    throw InadmissibleError(
        where, "end",
        "end = " + quantity_text(end) + " is less than start = " + quantity_text(start));
  }
  const double full = to_si(shape_.laps_per_layer);
  const double per_lap = static_cast<double>(shape_.crossovers_per_lap);
  std::vector<Crossover> found;
  // Layers end and crossovers lie at whole or half laps, which are exact as floating point.
  const int second_layer = static_cast<int>(2.0 * full);
  for (int half = std::max(first, second_layer); half <= last; ++half) {
    const double laps = 0.5 * half;
    if (laps >= wraps()) break;
    const bool layer_change = std::fmod(laps, full) == 0.0;
    const bool in_layer = per_lap > 0.0 && std::fmod(laps * per_lap, 1.0) == 0.0;
    if (!layer_change && !in_layer) continue;
    const Length at = length_at(laps);
    if (at < start || at >= end) continue;
    found.push_back({.from_drum_end = at,
                     .layer = static_cast<int>(laps / full) + 1,
                     .layer_change = layer_change});
  }
  return found;
}

}  // namespace ropewalk::drum
