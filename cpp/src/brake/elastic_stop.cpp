#include <algorithm>
#include <cmath>

#include "stop_check.hpp"

namespace ropewalk::brake {

namespace {

/// Travel and speed of drum and block.
struct State {
  double drum = 0.0;
  double block = 0.0;
  double drum_speed = 0.0;
  double block_speed = 0.0;
};

State stepped(const State& s, const State& rate, double h) noexcept {
  return {s.drum + h * rate.drum, s.block + h * rate.block, s.drum_speed + h * rate.drum_speed,
          s.block_speed + h * rate.block_speed};
}

/// The equations of motion, and how the brake grips.
struct Motion {
  double sign;  // +1 lowering, −1 hoisting
  double weight;
  double load_mass;
  double drum_mass;
  double felt;  // share of the hook's load that the drum feels
  double stiffness;
  double damping;
  double delay_force;
  double brake_force;
  double delay;
  double build_up;

  [[nodiscard]] double brake_at(double t) const noexcept {
    if (t < delay) return 0.0;
    return build_up > 0.0 ? brake_force * std::min(1.0, (t - delay) / build_up) : brake_force;
  }
  [[nodiscard]] double hook_force(const State& s) const noexcept {
    const double stretch = sign * (s.block - s.drum);
    const double rate = sign * (s.block_speed - s.drum_speed);
    return std::max(0.0, weight + stiffness * stretch + damping * rate);
  }
  /// Share of the hook's load that the drum feels. Friction of the sheaves is not counted on to
  /// hold a hoisted block that stands or falls back.
  [[nodiscard]] double felt_with(double grip) const noexcept {
    return sign < 0.0 && grip <= 0.0 ? 1.0 : felt;
  }
  /// Which way a drum that stands starts to slide, or 0.
  [[nodiscard]] double gives_way(double t, bool in_delay, const State& s) const noexcept {
    const double hook = hook_force(s);
    const double holds = in_delay ? delay_force : brake_at(t);
    // The drive lifts a hoisted block; what holds a lowered one back does not lift it.
    if (sign < 0.0 && in_delay && felt * hook < delay_force) return 1.0;
    if (felt_with(0.0) * hook <= holds) return 0.0;
    return sign;
  }
  /// What moves the drum other than its brake.
  [[nodiscard]] double pull(const State& s, bool in_delay, double grip) const noexcept {
    return sign * (felt_with(grip) * hook_force(s) - (in_delay ? delay_force : 0.0));
  }
  /// Rates of change with the drum held (grip 0) or sliding one way (grip ±1).
  [[nodiscard]] State rate(double t, bool in_delay, const State& s, double grip) const noexcept {
    const double block = sign * (weight - hook_force(s)) / load_mass;
    const double drum =
        grip == 0.0 ? 0.0
                    : (pull(s, in_delay, grip) - grip * (in_delay ? 0.0 : brake_at(t))) / drum_mass;
    return {grip == 0.0 ? 0.0 : s.drum_speed, s.block_speed, drum, block};
  }
  [[nodiscard]] State step(double t, bool in_delay, const State& s, double grip,
                           double h) const noexcept {
    const State k1 = rate(t, in_delay, s, grip);
    const State k2 = rate(t + h / 2.0, in_delay, stepped(s, k1, h / 2.0), grip);
    const State k3 = rate(t + h / 2.0, in_delay, stepped(s, k2, h / 2.0), grip);
    const State k4 = rate(t + h, in_delay, stepped(s, k3, h), grip);
    return stepped(stepped(stepped(stepped(s, k1, h / 6.0), k2, h / 3.0), k3, h / 3.0), k4,
                   h / 6.0);
  }
};

Motion motion_of(const Stop& stop, const ElasticLine& line) {
  const double load_mass = to_si(stop.hook_load / standard_gravity);
  const double stiffness = to_si(line.stiffness);
  return {.sign = stop.direction == StopDirection::lowering ? 1.0 : -1.0,
          .weight = to_si(stop.hook_load),
          .load_mass = load_mass,
          .drum_mass = to_si(stop.rotating_mass),
          .felt = to_si(Number(stop.drum_load / stop.hook_load)),
          .stiffness = stiffness,
          .damping = 2.0 * to_si(line.damping_ratio) * std::sqrt(stiffness * load_mass),
          .delay_force = to_si(stop.delay_force),
          .brake_force = to_si(stop.brake_force),
          .delay = to_si(stop.delay),
          .build_up = to_si(stop.build_up)};
}

void record(ElasticStop& course, const Motion& motion, double t, const State& s) {
  course.times.push_back(t);
  course.drum_travel.push_back(s.drum);
  course.block_travel.push_back(s.block);
  course.drum_speed.push_back(s.drum_speed);
  course.block_speed.push_back(s.block_speed);
  course.hook_force.push_back(motion.hook_force(s));
}

/// What the recorded course of a hoisted block does after its highest point.
FallBack fall_back_of(const ElasticStop& course) {
  const auto top = std::max_element(course.block_travel.begin(), course.block_travel.end());
  const auto low = std::min_element(top, course.block_travel.end());
  const auto place = [&](auto at) { return at - course.block_travel.begin(); };
  const auto slowest =
      std::min_element(course.block_speed.begin() + place(top), course.block_speed.end());
  const bool slips = *std::max_element(course.drum_travel.begin(), course.drum_travel.end()) >
                     course.drum_travel.back();
  const bool holds = course.stops;
  const auto time = course.times.begin();
  return {.falls = slips || course.least <= 0.0 * newton,
          .holds = holds,
          .distance = from_si<Length>(holds ? *top - *low : never),
          .time = from_si<Time>(holds ? time[place(low)] - time[place(top)] : never),
          .highest_speed = from_si<Speed>(holds ? std::max(0.0, -*slowest) : never)};
}

}  // namespace

ElasticStop elastic_stop(const Stop& stop, const ElasticLine& line, Time time_limit) {
  constexpr std::string_view where = "brake.Stop.on_line";
  check_stop(stop);
  require(where, argument::line_stiffness, line.stiffness);
  require(where, Parameter<Number>{"damping_ratio", params::ratio_range}, line.damping_ratio);
  require(where,
          Parameter<Time>{"time_limit", above_up_to(0.0 * second, 1'000.0 * second, params::guard)},
          time_limit);
  require(
      where,
      Parameter<Mass>{"rotating_mass", above_up_to(0.0 * kilogram, 1e10 * kilogram, params::guard)},
      stop.rotating_mass);
  const Motion motion = motion_of(stop, line);
  const double swing = 2.0 * pi * std::sqrt(motion.load_mass / motion.stiffness);
  const double fastest =
      std::sqrt(motion.stiffness * (1.0 / motion.load_mass + motion.felt / motion.drum_mass));
  const double longest_step = 2.0 * pi / fastest / 300.0;
  const double last = to_si(time_limit);
  const double ends[] = {motion.delay, motion.delay + motion.build_up, last};

  ElasticStop course{};
  State s{.drum_speed = to_si(stop.speed), .block_speed = to_si(stop.speed)};
  double t = 0.0;
  double grip = 1.0;        // sliding the way it went
  double stood_at = never;  // when the drum last came to stand
  double slack_at = 0.0;    // when the line last hung slack
  record(course, motion, t, s);
  for (const double end : ends) {
    const bool in_delay = end == motion.delay && t < motion.delay;
    while (t < std::min(end, last)) {
      // A drum that is held slips where the line pulls harder than the brake holds.
      if (grip == 0.0) grip = motion.gives_way(t, in_delay, s);
      double h = std::min(longest_step, std::min(end, last) - t);
      State next = motion.step(t, in_delay, s, grip, h);
      if (grip != 0.0 && grip * next.drum_speed < 0.0) {
        // It stands within this step: halve to the moment.
        double low = 0.0;
        double high = h;
        for (int halving = 0; halving < 60; ++halving) {
          const double middle = 0.5 * (low + high);
          const bool past = grip * motion.step(t, in_delay, s, grip, middle).drum_speed < 0.0;
          (past ? high : low) = middle;
        }
        h = high;
        next = motion.step(t, in_delay, s, grip, h);
        next.drum_speed = 0.0;
        grip = 0.0;
        stood_at = t + h;
        course.drum_distance = from_si<Length>(next.drum);
      }
      t = t + h >= std::min(end, last) ? std::min(end, last) : t + h;
      s = next;
      record(course, motion, t, s);
      // A block that is thrown up falls back into the line, which then peaks.
      if (motion.hook_force(s) == 0.0) slack_at = t;
      if (grip == 0.0 && t >= motion.delay + motion.build_up &&
          t > std::max(stood_at, slack_at) + 1.25 * swing) {
        break;
      }
    }
  }
  const auto [least, peak] =
      std::minmax_element(course.hook_force.begin(), course.hook_force.end());
  // What stands before the brake begins has not been stopped.
  course.stops = grip == 0.0 && t >= motion.delay;
  course.time = from_si<Time>(course.stops ? std::max(stood_at, motion.delay) : never);
  if (!course.stops) course.drum_distance = from_si<Length>(never);
  course.block_distance =
      from_si<Length>(*std::max_element(course.block_travel.begin(), course.block_travel.end()));
  if (!course.stops && motion.sign > 0.0) course.block_distance = from_si<Length>(never);
  course.peak = from_si<Force>(*peak);
  course.least = from_si<Force>(*least);
  if (motion.sign < 0.0) course.fall_back = fall_back_of(course);
  return course;
}

}  // namespace ropewalk::brake
