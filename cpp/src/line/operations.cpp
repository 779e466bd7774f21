#include "ropewalk/line/operations.hpp"

#include <algorithm>
#include <string>
#include <string_view>

#include "ropewalk/base/require.hpp"
#include "ropewalk/work/stands.hpp"

namespace ropewalk::line {

namespace {

using work::cut_into_stands;
using work::Stands;

constexpr Length no_length = 0.0 * meter;
constexpr Force no_force = 0.0 * newton;
constexpr std::string_view rope_pulls = "a rope cannot push";

namespace argument {

constexpr Parameter<Number> drag_up{"drag_up", params::ratio_range};
constexpr Parameter<Number> drag_down = drag_up.named("drag_down");
constexpr Parameter<Length> travel{"travel", above_up_to(no_length, 200.0 * meter, params::guard)};
constexpr Parameter<Length> base_height{"base_height",
                                        between(no_length, 200.0 * meter, params::guard)};
constexpr Parameter<Length> height{"height", above_up_to(no_length, 200.0 * meter, params::guard)};
constexpr Parameter<Speed> block_speed{
    "block_speed", between(0.0 * meter_per_second, from_si<Speed>(50.0), params::guard)};
constexpr Parameter<Acceleration> block_acceleration{
    "block_acceleration", between(0.0 * meter_per_second_squared, standard_gravity, rope_pulls)};
constexpr Parameter<Length> joint_length = params::stand_length.named("joint_length");
constexpr Parameter<Force> kelly_weight{"kelly_weight", params::force_range};
constexpr Parameter<Force> weight_on_bit{"weight_on_bit", params::force_range};
constexpr Parameter<Number> reams{"reams", whole_between(0, 20, params::guard)};
constexpr Parameter<Force> overpull{"overpull", params::force_range};
constexpr Parameter<Number> strokes{"strokes", whole_between(1, 1'000'000, params::guard)};
constexpr Parameter<Number> overpulls = strokes.named("overpulls");

}  // namespace argument

/// Writes the strokes of one operation, each checked as it is added.
class Writer {
 public:
  Writer(std::string_view where, const Hoisting& hoisting) : where_(where), hoisting_(hoisting) {
    require(where, argument::drag_up, hoisting.drag_up);
    require(where, argument::drag_down, hoisting.drag_down);
    require(where, params::block_weight, hoisting.block_weight);
    require(where, argument::travel, hoisting.travel);
    require(where, argument::base_height, hoisting.base_height);
    require(where, argument::block_speed, hoisting.block_speed);
    require(where, argument::block_acceleration, hoisting.block_acceleration);
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

/// Refuses a way that leads up.
void require_deeper(std::string_view where, Length depth_from, Length depth_to) {
  require(where, work::argument::depth_from, depth_from);
  require(where, work::argument::depth_to, depth_to);
  if (depth_to < depth_from) detail::throw_joint(where, work::argument::deeper);
}

void pull_out(Writer& write, Length deep, Length shallow, Length stand) {
  const Stands stands = cut_into_stands(write.where(), "stand_length", deep - shallow, stand);
  write.reserve(2 * (stands.whole + 1));
  const auto pull = [&](Length bit, Length way) {
    write.pull_slips();
    write.up(write.hoisted(bit), way);
    write.down(write.empty(), way);
    write.set_slips();
  };
  for (std::size_t k = 0; k < stands.whole; ++k) pull(deep - static_cast<double>(k) * stand, stand);
  if (stands.rest > no_length) pull(shallow + stands.rest, stands.rest);
}

/// `up` is what the block carries while it goes up for the stand between two depths.
template <class Up>
void run_in(Writer& write, std::string_view field, Length shallow, Length deep, Length stand,
            const Up& up) {
  const Stands stands = cut_into_stands(write.where(), field, deep - shallow, stand);
  write.reserve(2 * (stands.whole + 1));
  const auto run = [&](Length before, Length after, Length way) {
    write.up(up(before, after), way);
    write.pull_slips();
    write.down(write.lowered(after), way);
    write.set_slips();
  };
  if (stands.rest > no_length) run(shallow, shallow + stands.rest, stands.rest);
  for (std::size_t k = stands.whole; k > 0; --k) {
    const Length after = deep - static_cast<double>(k - 1) * stand;
    run(after - stand, after, stand);
  }
}

void run_in(Writer& write, std::string_view field, Length shallow, Length deep, Length stand) {
  run_in(write, field, shallow, deep, stand, [&](Length, Length) { return write.empty(); });
}

std::vector<HookStroke> out_and_in(std::string_view where, const Hoisting& hoisting, Length shallow,
                                   Length deep, Length stand) {
  require_deeper(where, shallow, deep);
  require(where, params::stand_length, stand);
  Writer write(where, hoisting);
  pull_out(write, deep, shallow, stand);
  run_in(write, "stand_length", shallow, deep, stand);
  return write.take();
}

std::vector<HookStroke> drill_with_kelly(std::string_view where, const Hoisting& hoisting,
                                         Length depth_from, Length depth_to,
                                         const work::KellyDrilling& drilling) {
  const Length joint = drilling.joint_length;
  require_deeper(where, depth_from, depth_to);
  require(where, argument::joint_length, joint);
  require(where, argument::kelly_weight, drilling.kelly_weight);
  require(where, argument::weight_on_bit, drilling.weight_on_bit);
  Writer write(where, hoisting);
  const Stands joints = cut_into_stands(where, "joint_length", depth_to - depth_from, joint);
  const Force kelly = drilling.kelly_weight;
  write.reserve(8 * (joints.whole + 1));

  // The kelly stands in for the pipe it drills down: what hangs below it reaches to the bit before.
  const auto drill = [&](Length before, Length way) {
    write.up(write.empty() + kelly, way);
    write.pull_slips();
    write.down_slowly(write.rotated(before) + kelly - drilling.weight_on_bit, way);
    write.up(write.hoisted(before) + kelly, way);
    if (drilling.ream) {
      write.down_slowly(write.rotated(before) + kelly, way);
      write.up(write.hoisted(before) + kelly, way);
    }
    write.down(write.empty() + kelly, way);
  };
  for (std::size_t k = 0; k < joints.whole; ++k) {
    const Length before = depth_from + static_cast<double>(k) * joint;
    const Length after = before + joint;
    drill(before, joint);
    write.up(write.empty() + write.joint(before, after), joint);
    write.pull_slips();
    write.down(write.lowered(after), joint);
    write.set_slips();
  }
  if (joints.rest > no_length) {
    drill(depth_to - joints.rest, joints.rest);
    write.set_slips();
  }
  return write.take();
}

std::vector<HookStroke> drill_with_top_drive(std::string_view where, const Hoisting& hoisting,
                                             Length depth_from, Length depth_to,
                                             const work::TopDriveDrilling& drilling) {
  const Length stand = drilling.stand_length;
  require_deeper(where, depth_from, depth_to);
  require(where, params::stand_length, stand);
  require(where, argument::weight_on_bit, drilling.weight_on_bit);
  require(where, argument::reams, from_si<Number>(drilling.reams));
  Writer write(where, hoisting);
  const Stands stands = cut_into_stands(where, "stand_length", depth_to - depth_from, stand);
  write.reserve(2 * (stands.whole + 1) * static_cast<std::size_t>(1 + drilling.reams));
  const auto drill = [&](Length bit, Length way) {
    const Force load = write.rotated(bit);
    write.up(write.empty(), way);
    write.pull_slips();
    write.down_slowly(load - drilling.weight_on_bit, way);
    for (int ream = 0; ream < drilling.reams; ++ream) {
      write.up_slowly(load, way);
      write.down_slowly(load, way);
    }
    write.set_slips();
  };
  for (std::size_t k = 0; k < stands.whole; ++k) {
    drill(depth_from + static_cast<double>(k + 1) * stand, stand);
  }
  if (stands.rest > no_length) drill(depth_to, stands.rest);
  return write.take();
}

}  // namespace

std::vector<HookStroke> dynamic_parts(const HookStroke& stroke, Speed speed,
                                      Acceleration acceleration) {
  constexpr std::string_view where = "line.dynamic_parts";
  require(where, argument::block_speed, speed);
  require(where, argument::block_acceleration, acceleration);
  if (to_si(speed) == 0.0 || to_si(acceleration) == 0.0) return {stroke};
  const bool up = stroke.height_to > stroke.height_from;
  const double way = up ? 1.0 : -1.0;
  const Length travel = way * (stroke.height_to - stroke.height_from);
  const Length part = std::min(speed * speed / (2.0 * acceleration), 0.5 * travel);
  const double change = way * (acceleration / standard_gravity);

  HookStroke start = stroke;
  start.hook_load = stroke.hook_load * (1.0 + change);
  start.height_to = stroke.height_from + way * part;
  start.may_stop = false;
  HookStroke end = stroke;
  end.hook_load = stroke.hook_load * (1.0 - change);
  end.height_from = stroke.height_to - way * part;
  end.pick_up = false;
  HookStroke run = stroke;
  run.height_from = start.height_to;
  run.height_to = end.height_from;
  run.pick_up = run.may_stop = false;
  // Halves of a stroke that never runs evenly meet at one height, whatever the rounding.
  if (2.0 * part >= travel) {
    end.height_from = start.height_to;
    return {start, end};
  }
  return {start, run, end};
}

std::vector<HookStroke> trip(const Hoisting& hoisting, Length depth_from, Length depth_to,
                             Length stand_length) {
  constexpr std::string_view where = "line.trip";
  require(where, work::argument::depth_from, depth_from);
  require(where, work::argument::depth_to, depth_to);
  require(where, params::stand_length, stand_length);
  Writer write(where, hoisting);
  if (depth_from > depth_to) {
    pull_out(write, depth_from, depth_to, stand_length);
  } else {
    run_in(write, "stand_length", depth_from, depth_to, stand_length);
  }
  return write.take();
}

std::vector<HookStroke> round_trip(const Hoisting& hoisting, Length depth, Length stand_length) {
  return out_and_in("line.round_trip", hoisting, no_length, depth, stand_length);
}

std::vector<HookStroke> short_trip(const Hoisting& hoisting, Length depth_from, Length depth_to,
                                   Length stand_length) {
  return out_and_in("line.short_trip", hoisting, depth_from, depth_to, stand_length);
}

std::vector<HookStroke> casing(const Hoisting& hoisting, Length depth, Length joint_length) {
  constexpr std::string_view where = "line.casing";
  require(where, params::depth, depth);
  require(where, argument::joint_length, joint_length);
  Writer write(where, hoisting);
  run_in(write, "joint_length", no_length, depth, joint_length);
  return write.take();
}

std::vector<HookStroke> singles(const Hoisting& hoisting, Length depth_from, Length depth_to,
                                Length joint_length) {
  constexpr std::string_view where = "line.singles";
  require_deeper(where, depth_from, depth_to);
  require(where, argument::joint_length, joint_length);
  Writer write(where, hoisting);
  run_in(write, "joint_length", depth_from, depth_to, joint_length,
         [&](Length before, Length after) { return write.empty() + write.joint(before, after); });
  return write.take();
}

std::vector<HookStroke> kelly_drilling(const Hoisting& hoisting, Length depth_from, Length depth_to,
                                       const work::KellyDrilling& drilling) {
  return drill_with_kelly("line.kelly_drilling", hoisting, depth_from, depth_to, drilling);
}

std::vector<HookStroke> top_drive_drilling(const Hoisting& hoisting, Length depth_from,
                                           Length depth_to,
                                           const work::TopDriveDrilling& drilling) {
  return drill_with_top_drive("line.top_drive_drilling", hoisting, depth_from, depth_to, drilling);
}

std::vector<HookStroke> coring(const Hoisting& hoisting, Length depth_from, Length depth_to,
                               work::KellyDrilling drilling) {
  drilling.ream = false;
  return drill_with_kelly("line.coring", hoisting, depth_from, depth_to, drilling);
}

std::vector<HookStroke> coring(const Hoisting& hoisting, Length depth_from, Length depth_to,
                               work::TopDriveDrilling drilling) {
  drilling.reams = 0;
  return drill_with_top_drive("line.coring", hoisting, depth_from, depth_to, drilling);
}

std::vector<HookStroke> reaming(const Hoisting& hoisting, Length depth_from, Length depth_to,
                                const work::TopDriveDrilling& drilling) {
  return drill_with_top_drive("line.reaming", hoisting, depth_from, depth_to, drilling);
}

std::vector<HookStroke> circulating(const Hoisting& hoisting, Length depth, Length height,
                                    int strokes) {
  constexpr std::string_view where = "line.circulating";
  require(where, params::depth, depth);
  require(where, argument::height, height);
  require(where, argument::strokes, from_si<Number>(strokes));
  Writer write(where, hoisting);
  write.pull_slips();
  // Only the first stroke takes the string from the slips; the others are equal.
  for (const double count : {1.0, strokes - 1.0}) {
    if (count == 0.0) continue;
    write.up(write.hoisted(depth), height, count);
    write.down(write.lowered(depth), height, count);
  }
  write.set_slips();
  return write.take();
}

std::vector<HookStroke> jarring(const Hoisting& hoisting, Length depth, Force overpull,
                                Length height, int overpulls) {
  constexpr std::string_view where = "line.jarring";
  require(where, params::depth, depth);
  require(where, argument::overpull, overpull);
  require(where, argument::height, height);
  require(where, argument::overpulls, from_si<Number>(overpulls));
  Writer write(where, hoisting);
  write.pull_slips();
  for (const double count : {1.0, overpulls - 1.0}) {
    if (count == 0.0) continue;
    write.up_slowly(write.hoisted(depth) + overpull, height, count);
    write.down_slowly(write.lowered(depth), height, count);
  }
  write.set_slips();
  return write.take();
}

}  // namespace ropewalk::line
