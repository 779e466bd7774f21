#include "ropewalk/line/operations.hpp"

#include <algorithm>

#include "operation_writer.hpp"
#include "ropewalk/work/stands.hpp"

namespace ropewalk::line {

namespace {

using work::cut_into_stands;
using work::Stands;

/// Refuses a way that leads up.
void require_deeper(std::string_view where, Length depth_from, Length depth_to) {
  require(where, work::argument::depth_from, depth_from);
  require(where, work::argument::depth_to, depth_to);
  if (depth_to < depth_from) detail::throw_joint(where, work::argument::deeper);
}

void pull_out(OperationWriter& write, Length deep, Length shallow, Length stand) {
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
void run_in(OperationWriter& write, std::string_view field, Length shallow, Length deep,
            Length stand, const Up& up) {
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

void run_in(OperationWriter& write, std::string_view field, Length shallow, Length deep,
            Length stand) {
  run_in(write, field, shallow, deep, stand, [&](Length, Length) { return write.empty(); });
}

std::vector<HookStroke> out_and_in(std::string_view where, const Hoisting& hoisting, Length shallow,
                                   Length deep, Length stand) {
  require_deeper(where, shallow, deep);
  require(where, params::stand_length, stand);
  OperationWriter write(where, hoisting);
  pull_out(write, deep, shallow, stand);
  run_in(write, "stand_length", shallow, deep, stand);
  return write.take();
}

std::vector<HookStroke> drill_with_kelly(std::string_view where, const Hoisting& hoisting,
                                         Length depth_from, Length depth_to,
                                         const work::KellyDrilling& drilling) {
  const Length joint = drilling.joint_length;
  require_deeper(where, depth_from, depth_to);
  require(where, operation_argument::joint_length, joint);
  require(where, operation_argument::kelly_weight, drilling.kelly_weight);
  require(where, operation_argument::weight_on_bit, drilling.weight_on_bit);
  OperationWriter write(where, hoisting);
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
  require(where, operation_argument::weight_on_bit, drilling.weight_on_bit);
  require(where, operation_argument::reams, from_si<Number>(drilling.reams));
  OperationWriter write(where, hoisting);
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
  require(where, operation_argument::block_speed, speed);
  require(where, operation_argument::block_acceleration, acceleration);
  if (to_si(speed) == 0.0 || to_si(acceleration) == 0.0) return {stroke};
  const bool up = stroke.height_to > stroke.height_from;
  const double way = up ? 1.0 : -1.0;
  const Length travel = way * (stroke.height_to - stroke.height_from);
  if (travel == no_length) return {stroke};
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
  OperationWriter write(where, hoisting);
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
  require(where, operation_argument::joint_length, joint_length);
  OperationWriter write(where, hoisting);
  run_in(write, "joint_length", no_length, depth, joint_length);
  return write.take();
}

std::vector<HookStroke> singles(const Hoisting& hoisting, Length depth_from, Length depth_to,
                                Length joint_length) {
  constexpr std::string_view where = "line.singles";
  require_deeper(where, depth_from, depth_to);
  require(where, operation_argument::joint_length, joint_length);
  OperationWriter write(where, hoisting);
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
  require(where, operation_argument::height, height);
  require(where, operation_argument::strokes, from_si<Number>(strokes));
  OperationWriter write(where, hoisting);
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
  require(where, operation_argument::overpull, overpull);
  require(where, operation_argument::height, height);
  require(where, operation_argument::overpulls, from_si<Number>(overpulls));
  OperationWriter write(where, hoisting);
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
