/// Writes the strokes of one operation; a private part of operations.cpp.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "ropewalk/base/require.hpp"
#include "ropewalk/line/operations.hpp"

namespace ropewalk::line {

inline constexpr Length no_length = 0.0 * meter;
inline constexpr Force no_force = 0.0 * newton;
inline constexpr std::string_view rope_pulls = "a rope cannot push";

namespace operation_argument {

inline constexpr Parameter<Number> drag_up{"drag_up", params::ratio_range};
inline constexpr Parameter<Number> drag_down = drag_up.named("drag_down");
inline constexpr Parameter<Length> travel{"travel",
                                          above_up_to(no_length, 200.0 * meter, params::guard)};
inline constexpr Parameter<Length> base_height{"base_height",
                                               between(no_length, 200.0 * meter, params::guard)};
inline constexpr Parameter<Length> height{"height",
                                          above_up_to(no_length, 200.0 * meter, params::guard)};
inline constexpr Parameter<Speed> block_speed{
    "block_speed", between(0.0 * meter_per_second, from_si<Speed>(50.0), params::guard)};
inline constexpr Parameter<Acceleration> block_acceleration{
    "block_acceleration", between(0.0 * meter_per_second_squared, standard_gravity, rope_pulls)};
inline constexpr Parameter<Length> joint_length = params::stand_length.named("joint_length");
inline constexpr Parameter<Force> kelly_weight{"kelly_weight", params::force_range};
inline constexpr Parameter<Force> weight_on_bit{"weight_on_bit", params::force_range};
inline constexpr Parameter<Number> reams{"reams", whole_between(0, 20, params::guard)};
inline constexpr Parameter<Force> overpull{"overpull", params::force_range};
inline constexpr Parameter<Number> strokes{"strokes", whole_between(1, 1'000'000, params::guard)};
inline constexpr Parameter<Number> overpulls = strokes.named("overpulls");

}  // namespace operation_argument

/// Writes the strokes of one operation, each checked as it is added.
class OperationWriter {
 public:
  OperationWriter(std::string_view where, const Hoisting& hoisting)
      : where_(where), hoisting_(hoisting) {
    require(where, operation_argument::drag_up, hoisting.drag_up);
    require(where, operation_argument::drag_down, hoisting.drag_down);
    require(where, params::block_weight, hoisting.block_weight);
    require(where, operation_argument::travel, hoisting.travel);
    require(where, operation_argument::base_height, hoisting.base_height);
    require(where, operation_argument::block_speed, hoisting.block_speed);
    require(where, operation_argument::block_acceleration, hoisting.block_acceleration);
    dynamic_ = to_si(hoisting.block_speed) > 0.0;
    if (dynamic_ != (to_si(hoisting.block_acceleration) > 0.0)) {
      throw InadmissibleError(
          where, "block_acceleration",
          "block_speed and block_acceleration are given together or not at all");
    }
  }

  // Everything on the lines with the bit at `depth`.
  [[nodiscard]] Force rotated(Length depth) const { return weight(depth) + hoisting_.block_weight; }
  [[nodiscard]] Force hoisted(Length depth) const {
    return weight(depth) * (1.0 + hoisting_.drag_up) + hoisting_.block_weight;
  }
  [[nodiscard]] Force lowered(Length depth) const {
    return weight(depth) * (1.0 - hoisting_.drag_down) + hoisting_.block_weight;
  }
  [[nodiscard]] Force empty() const { return hoisting_.block_weight; }
  /// The pipe between two depths, in air.
  [[nodiscard]] Force joint(Length from, Length to) const {
    return (weight(to) - weight(from)) / hoisting_.string.buoyancy_factor();
  }

  /// At the speed of the block, from the base height up by `way`, or down to it.
  void up(Force load, Length way, double count = 1.0) { move(load, base(), base() + way, count); }
  void down(Force load, Length way, double count = 1.0) { move(load, base() + way, base(), count); }
  /// Slowly, with the bit at work or the string stuck: no dynamic loads.
  void up_slowly(Force load, Length way, double count = 1.0) {
    add({load, base(), base() + way, count});
  }
  void down_slowly(Force load, Length way, double count = 1.0) {
    add({load, base() + way, base(), count});
  }

  /// The load of the next stroke is taken from the slips.
  void pull_slips() { pick_up_ = true; }
  /// The string now hangs in the slips, and the block is free.
  void set_slips() {
    if (!strokes_.empty()) strokes_.back().may_stop = true;
  }

  [[nodiscard]] std::vector<HookStroke> take() { return std::move(strokes_); }
  [[nodiscard]] std::string_view where() const noexcept { return where_; }
  void reserve(std::size_t strokes) { strokes_.reserve(strokes * (dynamic_ ? 3U : 1U)); }

 private:
  [[nodiscard]] Length base() const noexcept { return hoisting_.base_height; }
  [[nodiscard]] Force weight(Length depth) const { return hoisting_.string.weight_in_mud(depth); }

  void move(Force load, Length from, Length to, double count) {
    const HookStroke stroke{load, from, to, count};
    if (!dynamic_) {
      add(stroke);
      return;
    }
    for (const HookStroke& part :
         dynamic_parts(stroke, hoisting_.block_speed, hoisting_.block_acceleration)) {
      add(part);
    }
  }

  void add(HookStroke stroke) {
    if (stroke.height_from == stroke.height_to) return;
    for (const auto& [field, height] :
         {std::pair{"height_from", stroke.height_from}, std::pair{"height_to", stroke.height_to}}) {
      if (height >= no_length && height <= hoisting_.travel) continue;
      refuse(field, height, "[0, " + quantity_text(hoisting_.travel) + "], the travel of the mast");
    }
    if (stroke.hook_load < no_force) {
      refuse("hook_load", stroke.hook_load, "[0, 1e+09 N]: " + std::string(rope_pulls));
    }
    stroke.pick_up = std::exchange(pick_up_, false);
    strokes_.push_back(stroke);
  }

  template <class Q>
  [[noreturn]] void refuse(std::string_view field, Q value, const std::string& range) const {
    throw InadmissibleError(where_, field,
                            "row " + std::to_string(strokes_.size()) + ": " + std::string(field) +
                                " = " + quantity_text(value) + " is outside " + range);
  }

  std::string_view where_;
  const Hoisting& hoisting_;
  bool dynamic_ = false;
  bool pick_up_ = false;
  std::vector<HookStroke> strokes_;
};

}  // namespace ropewalk::line
