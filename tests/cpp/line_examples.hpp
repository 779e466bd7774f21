/// Two hoists with their strings, for the tests of the line.
#pragma once

#include <vector>

#include "ropewalk/line/operations.hpp"

namespace ropewalk::line {

using drillstring::DrillString;

inline constexpr Length stand = 28.5 * meter;
inline constexpr Length joint = 9.5 * meter;
inline constexpr Force block = 200'000.0 * newton;
inline const Density steel = 7'850.0 * kilogram_per_cubic_meter;
inline const Density mud = 1'200.0 * kilogram_per_cubic_meter;
inline const Density air = 0.0 * kilogram_per_cubic_meter;
inline const MassPerLength pipe = 31.0 * kilogram / meter;

/// One kind of pipe, no drag, no dynamic loads: what the closed forms know.
inline Hoisting plain(Density density = mud) {
  return {.string = DrillString({{4'000.0 * meter, pipe}}, density, steel),
          .drag_up = 0.0,
          .drag_down = 0.0,
          .block_weight = block,
          .travel = 30.0 * meter,
          .base_height = 0.0 * meter,
          .block_speed = 0.0 * meter_per_second,
          .block_acceleration = 0.0 * meter_per_second_squared};
}

/// Collars below the pipe, drag, dynamic loads, the slips above the lowest position.
inline Hoisting full() {
  Hoisting hoisting = plain();
  hoisting.string =
      DrillString({{200.0 * meter, 220.0 * kilogram / meter}, {3'800.0 * meter, pipe}}, mud, steel);
  hoisting.drag_up = 0.1;
  hoisting.drag_down = 0.08;
  hoisting.base_height = 1.0 * meter;
  hoisting.block_speed = 0.8 * meter_per_second;
  hoisting.block_acceleration = 0.4 * meter_per_second_squared;
  return hoisting;
}

inline Energy work_of(const std::vector<HookStroke>& strokes) {
  Energy sum = 0.0 * joule;
  for (const HookStroke& s : strokes) {
    const Length way =
        s.height_to > s.height_from ? s.height_to - s.height_from : s.height_from - s.height_to;
    sum += s.hook_load * way * s.count;
  }
  return sum;
}

}  // namespace ropewalk::line
