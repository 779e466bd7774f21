#include "ropewalk/brake/stop.hpp"

#include <span>

#include "ropewalk/base/error.hpp"
#include "stop_check.hpp"

namespace ropewalk::brake {

namespace {

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

/// A stretch of time under one law: acceleration at its begin, and how that changes.
struct Part {
  double begin;
  double end;
  double acceleration;
  double jerk;
  bool brake_on = true;  // false: what brings a load to rest here lets go of it again
};

struct Course {
  bool stops = true;
  bool stands_early = false;
  double time = 0.0;  // of standstill, from the moment the stop is asked for
  double way = 0.0;
  double highest = 0.0;
};

/// Walks the parts from a time and a speed on, to standstill.
Course walk(std::span<const Part> parts, double time, double speed) {
  Course course{.time = time, .highest = speed};
  for (const Part& part : parts) {
    if (part.end <= course.time) continue;
    const double since = course.time - part.begin;
    const Phase phase{speed, part.acceleration + part.jerk * since, part.jerk};
    const double length = part.end - course.time;
    double stand = phase.standstill();
    // The brake fully on is as strong as the load: what stands stays.
    if (part.end == never && speed == 0.0 && phase.acceleration == 0.0) stand = 0.0;
    if (stand <= length && stand < never) {
      course.highest = std::max(course.highest, phase.highest(stand));
      course.way += phase.way_at(stand);
      if (part.brake_on) {
        course.time += stand;
        return course;
      }
      course.stands_early = true;
      course.time = part.end;
      speed = 0.0;
      continue;
    }
    if (part.end == never) {
      // As heavy as the brake is strong it keeps its speed; heavier it gains speed without end.
      const double top = phase.acceleration > 0.0 ? never : course.highest;
      return {false, course.stands_early, never, never, top};
    }
    course.highest = std::max(course.highest, phase.highest(length));
    course.way += phase.way_at(length);
    course.time = part.end;
    speed = phase.speed_at(length);
  }
  return course;
}

/// The numbers of a stop, SI.
struct Numbers {
  explicit Numbers(const Stop& stop)
      : weight(to_si(stop.hook_load)),
        felt(to_si(stop.drum_load)),
        hold(to_si(stop.delay_force)),
        brake(to_si(stop.brake_force)),
        delay(to_si(stop.delay)),
        build_up(to_si(stop.build_up)),
        full_on(delay + build_up),
        turning(to_si(stop.rotating_mass)) {}

  double weight;
  double felt;
  double hold;
  double brake;
  double delay;
  double build_up;
  double full_on;
  double turning;

  /// Down under a load as the drum feels it. The drum feels the inertia of the load through the
  /// same friction as its weight.
  [[nodiscard]] Course down(double load, double time, double speed) const {
    const double mass = load / gravity + turning;
    const double rise = build_up > 0.0 ? -brake / build_up / mass : 0.0;
    const Part parts[] = {{0.0, delay, (load - hold) / mass, 0.0, false},
                          {delay, full_on, load / mass, rise},
                          {full_on, never, (load - brake) / mass, 0.0}};
    return walk(parts, time, speed);
  }
  /// When the brake alone slows the drum as gravity slows the block; never if it is too weak.
  [[nodiscard]] double slack_from() const noexcept {
    return brake > turning * gravity ? delay + build_up * turning * gravity / brake : never;
  }
  [[nodiscard]] Course up(double speed) const {
    const double mass = felt / gravity + turning;
    const double rise = build_up > 0.0 ? -brake / build_up / mass : 0.0;
    const double taut = std::min(slack_from(), full_on);
    const Part parts[] = {{0.0, delay, (hold - felt) / mass, 0.0},
                          {delay, taut, -felt / mass, rise},
                          {taut, full_on, -gravity, 0.0},
                          {full_on, never, -std::min(gravity, (felt + brake) / mass), 0.0}};
    return walk(parts, 0.0, speed);
  }
  /// Way of the drum under a line that went slack, from then on.
  [[nodiscard]] double drum_way(double speed) const {
    if (turning == 0.0) return 0.0;
    const double from = slack_from();
    const double rise = build_up > 0.0 ? -brake / build_up / turning : 0.0;
    const Part parts[] = {{from, full_on, -gravity, rise}, {full_on, never, -brake / turning, 0.0}};
    return walk(parts, from, speed).way;
  }
  [[nodiscard]] FallBack back(const Course& top) const {
    double drop = 0.0;
    if (top.time > slack_from()) {
      // From where the line went slack on gravity alone slowed the block: v = g t, s = g t²/2.
      const double flight = top.time - slack_from();
      drop = 0.5 * gravity * flight * flight - drum_way(gravity * flight);
    }
    const double blow = std::sqrt(2.0 * gravity * drop);
    const double mass = weight / gravity;
    const double start = top.time + blow / gravity;
    const Course course = down(weight, start, blow * mass / (mass + turning));
    return {.falls = drop > 0.0 || course.way > 0.0,
            .holds = course.stops,
            .distance = from_si<Length>(drop + course.way),
            .time = from_si<Time>(course.way > 0.0 ? course.time - top.time : blow / gravity),
            .highest_speed = from_si<Speed>(std::max(blow, course.highest))};
  }

  static constexpr double gravity = to_si(standard_gravity);
};

}  // namespace

StopDirection stop_direction_named(std::string_view name) {
  if (name == "hoisting") return StopDirection::hoisting;
  if (name == "lowering") return StopDirection::lowering;
  throw LookupError("brake.Stop", "direction",
                    "direction must be 'hoisting' or 'lowering', got '" + std::string(name) + "'");
}

RigidStop rigid_stop(const Stop& stop) {
  check_stop(stop);
  const Numbers numbers(stop);
  const bool lowering = stop.direction == StopDirection::lowering;
  const double speed = to_si(stop.speed);
  const Course course = lowering ? numbers.down(numbers.felt, 0.0, speed) : numbers.up(speed);
  const double mass = numbers.felt / Numbers::gravity + numbers.turning;
  const double slows = lowering ? (numbers.brake - numbers.felt) / mass
                                : std::min(Numbers::gravity, (numbers.brake + numbers.felt) / mass);
  RigidStop result{.stops = course.stops,
                   .stands_early = course.stands_early,
                   .slack = !lowering && course.time > numbers.slack_from(),
                   .time = from_si<Time>(course.time),
                   .distance = from_si<Length>(course.way),
                   .highest_speed = from_si<Speed>(course.highest),
                   .deceleration = from_si<Acceleration>(slows),
                   .fall_back = std::nullopt};
  if (!lowering) result.fall_back = numbers.back(course);
  return result;
}

}  // namespace ropewalk::brake
