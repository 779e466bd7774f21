#include "ropewalk/brake/stop.hpp"

#include <limits>

#include "ropewalk/base/require.hpp"

namespace ropewalk::brake {

namespace {

constexpr std::string_view where = "brake.stop";

constexpr Interval delay_range = between(0.0 * second, 100.0 * second, params::guard);
constexpr Parameter<Time> delay_parameter{"delay", delay_range};
constexpr Parameter<Time> build_up_parameter{"build_up", delay_range};
constexpr Parameter<Mass> rotating_parameter{
    "rotating_mass", between(0.0 * kilogram, 1e10 * kilogram, params::guard)};

constexpr double never = std::numeric_limits<double>::infinity();

void check(const Stop& stop) {
  require(where, argument::travel_speed, stop.speed);
  require(where, argument::positive_hook_load, stop.hook_load);
  require(where, Parameter<Force>{"drum_load", params::positive_force_range}, stop.drum_load);
  require(where, Parameter<Force>{"delay_force", params::force_range}, stop.delay_force);
  require(where, Parameter<Force>{"brake_force", params::force_range}, stop.brake_force);
  require(where, delay_parameter, stop.delay);
  require(where, build_up_parameter, stop.build_up);
  require(where, rotating_parameter, stop.rotating_mass);
}

/// Speed and way under an acceleration a0 + j t, and the first time the speed is zero.
struct Phase {
  double speed;
  double acceleration;
  double jerk;

  [[nodiscard]] double speed_at(double t) const noexcept {
    return speed + (acceleration + 0.5 * jerk * t) * t;
  }
  [[nodiscard]] double way_at(double t) const noexcept {
    return (speed + (0.5 * acceleration + jerk * t / 6.0) * t) * t;
  }
  /// First t > 0 with speed 0, or never. The brake only grows: jerk ≤ 0.
  [[nodiscard]] double standstill() const noexcept {
    // From rest it stands only if it is held; what nothing holds starts to move.
    if (speed == 0.0 && (acceleration < 0.0 || (acceleration == 0.0 && jerk < 0.0))) return 0.0;
    if (speed == 0.0 && jerk == 0.0) return never;
    if (jerk == 0.0) return acceleration < 0.0 ? -speed / acceleration : never;
    const double root = std::sqrt(acceleration * acceleration - 2.0 * jerk * speed);
    // Of the two forms of the quadratic's root the one that adds.
    return acceleration > 0.0 ? (acceleration + root) / -jerk : 2.0 * speed / (root - acceleration);
  }
  /// Largest speed up to t.
  [[nodiscard]] double highest(double t) const noexcept {
    double most = std::max(speed, speed_at(t));
    if (jerk < 0.0 && acceleration > 0.0 && -acceleration / jerk < t) {
      most = std::max(most, speed_at(-acceleration / jerk));
    }
    return most;
  }
};

}  // namespace

StopDirection stop_direction_named(std::string_view name) {
  if (name == "hoisting") return StopDirection::hoisting;
  if (name == "lowering") return StopDirection::lowering;
  throw LookupError(where, "direction",
                    "direction must be 'hoisting' or 'lowering', got '" + std::string(name) + "'");
}

RigidStop rigid_stop(const Stop& stop) {
  check(stop);
  const double mass = to_si(stop.hook_load / standard_gravity + stop.rotating_mass);
  const double sign = stop.direction == StopDirection::lowering ? 1.0 : -1.0;
  const double load = sign * to_si(stop.drum_load) / mass;
  const double brake = to_si(stop.brake_force) / mass;
  const double coast = load - sign * to_si(stop.delay_force) / mass;
  const double delay = to_si(stop.delay);
  const double build_up = to_si(stop.build_up);

  RigidStop result{.stops = true,
                   .runs_back = false,
                   .time = from_si<Time>(0.0),
                   .distance = from_si<Length>(0.0),
                   .highest_speed = stop.speed,
                   .deceleration = from_si<Acceleration>(brake - load)};
  double speed = to_si(stop.speed);
  double highest = speed;
  double time = 0.0;
  double way = 0.0;
  struct Part {
    double length;
    double acceleration;
    double jerk;
    double brake_at_end;  // largest deceleration of the brake in it
  };
  const Part parts[] = {{delay, coast, 0.0, 0.0},
                        {build_up, load, build_up > 0.0 ? -brake / build_up : 0.0, brake},
                        {never, load - brake, 0.0, brake}};
  for (const Part& part : parts) {
    if (part.length == 0.0) continue;
    const Phase phase{speed, part.acceleration, part.jerk};
    const double stand = phase.standstill();
    if (stand <= part.length && stand < never) {
      highest = std::max(highest, phase.highest(stand));
      const double share = part.jerk < 0.0 ? stand / part.length : 1.0;
      result.runs_back = sign < 0.0 && share * part.brake_at_end < -load && stand > 0.0;
      result.time = from_si<Time>(time + stand);
      result.distance = from_si<Length>(way + phase.way_at(stand));
      result.highest_speed = from_si<Speed>(highest);
      return result;
    }
    if (part.length == never) break;
    highest = std::max(highest, phase.highest(part.length));
    way += phase.way_at(part.length);
    time += part.length;
    speed = phase.speed_at(part.length);
  }
  result.stops = false;
  result.time = from_si<Time>(never);
  result.distance = from_si<Length>(never);
  // A load as heavy as the brake is strong keeps its speed; a heavier one gains speed without end.
  result.highest_speed = from_si<Speed>(load > brake ? never : highest);
  return result;
}

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
  /// What moves the drum other than its brake.
  [[nodiscard]] double pull(const State& s, bool in_delay) const noexcept {
    return sign * (felt * hook_force(s) - (in_delay ? delay_force : 0.0));
  }
  /// Rates of change with the drum held (grip 0) or sliding one way (grip ±1).
  [[nodiscard]] State rate(double t, bool in_delay, const State& s, double grip) const noexcept {
    const double block = sign * (weight - hook_force(s)) / load_mass;
    const double drum =
        grip == 0.0 ? 0.0 : (pull(s, in_delay) - grip * (in_delay ? 0.0 : brake_at(t))) / drum_mass;
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

}  // namespace

ElasticStop elastic_stop(const Stop& stop, const ElasticLine& line, Time time_limit) {
  check(stop);
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
      if (grip == 0.0) {
        const double pull = motion.pull(s, in_delay);
        if (std::abs(pull) > (in_delay ? 0.0 : motion.brake_at(t))) grip = pull > 0.0 ? 1.0 : -1.0;
      }
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
  course.stops = grip == 0.0;
  course.time = from_si<Time>(course.stops ? stood_at : never);
  if (!course.stops) course.drum_distance = from_si<Length>(never);
  course.block_distance =
      from_si<Length>(*std::max_element(course.block_travel.begin(), course.block_travel.end()));
  if (!course.stops && motion.sign > 0.0) course.block_distance = from_si<Length>(never);
  course.peak = from_si<Force>(*peak);
  course.least = from_si<Force>(*least);
  return course;
}

}  // namespace ropewalk::brake
