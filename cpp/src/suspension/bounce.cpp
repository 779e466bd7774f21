#include "ropewalk/suspension/bounce.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "ropewalk/base/require.hpp"

namespace ropewalk::suspension {

namespace {

constexpr std::string_view where = "suspension.HookBounce";
constexpr std::size_t most_swings = 10'000;
/// A swing of less than this share of the largest is rest.
constexpr double died_down = 1e-9;
/// Closer to critical than this the closed form for critical damping is the more exact one.
constexpr double near_critical = 1e-9;
constexpr double gravity = to_si(standard_gravity);

void check(const SprungHook& hook, Length start, Speed start_speed) {
  require(where, argument::sprung_weight, hook.sprung_weight);
  require(where, argument::spring_rate, hook.spring_rate);
  require(where, argument::damping_up, hook.damping_up);
  require(where, argument::damping_down, hook.damping_down);
  require(where, argument::friction, hook.friction);
  require(where, argument::start, start);
  require(where, argument::start_speed, start_speed);
}

}  // namespace

Bounce::Bounce(const SprungHook& hook, Length start, Speed start_speed)
    : hook_(hook),
      mass_(to_si(hook.sprung_weight) / to_si(standard_gravity)),
      natural_(std::sqrt(to_si(hook.spring_rate) / mass_)),
      slack_(to_si(hook.sprung_weight) / to_si(hook.spring_rate)),
      highest_(start),
      lowest_(start) {
  check(hook, start, start_speed);
  follow(to_si(start), to_si(start_speed) + 0.0);  // −0 is a standstill without a sign
}

Bounce::Swing Bounce::swing(double begin, double height, double speed) const {
  // From a standstill it moves to where the spring pulls it.
  const double direction = speed != 0.0 ? std::copysign(1.0, speed) : -std::copysign(1.0, height);
  const double damping = to_si(direction > 0.0 ? hook_.damping_up : hook_.damping_down);
  const double center = -direction * to_si(hook_.friction) / to_si(hook_.spring_rate);
  return {.begin = begin,
          .center = center,
          .offset = height - center,
          .speed = speed,
          .damping_half = damping / (2.0 * mass_),
          .flies = false};
}

Bounce::State Bounce::along(const Swing& swing, double elapsed) const {
  const double y = swing.offset;
  const double v = swing.speed;
  if (swing.flies) {
    return {.height = from_si<Length>(y + (v - 0.5 * gravity * elapsed) * elapsed),
            .speed = from_si<Speed>(v - gravity * elapsed)};
  }
  const double half = swing.damping_half;
  const double ratio = half / natural_;
  double offset = 0.0;
  double speed = 0.0;
  if (std::abs(ratio - 1.0) < near_critical) {
    const double slope = v + natural_ * y;
    const double decay = std::exp(-natural_ * elapsed);
    offset = (y + slope * elapsed) * decay;
    speed = (v - natural_ * slope * elapsed) * decay;
  } else if (ratio < 1.0) {
    const double damped = natural_ * std::sqrt((1.0 - ratio) * (1.0 + ratio));
    const double decay = std::exp(-half * elapsed);
    const double cosine = std::cos(damped * elapsed);
    const double sine = std::sin(damped * elapsed) / damped;
    offset = decay * (y * cosine + (v + half * y) * sine);
    speed = decay * (v * cosine - (half * v + natural_ * natural_ * y) * sine);
  } else {
    // The slow root as a quotient: the difference would cancel for strong damping.
    const double fast = -half - natural_ * std::sqrt((ratio - 1.0) * (ratio + 1.0));
    const double slow = natural_ * natural_ / fast;
    const double of_slow = (v - fast * y) / (slow - fast);
    const double of_fast = y - of_slow;
    const double slow_part = of_slow * std::exp(slow * elapsed);
    const double fast_part = of_fast * std::exp(fast * elapsed);
    offset = slow_part + fast_part;
    speed = slow * slow_part + fast * fast_part;
  }
  return {.height = from_si<Length>(swing.center + offset), .speed = from_si<Speed>(speed)};
}

/// Time to the next turning point; none if it creeps to the center without one.
std::optional<double> Bounce::duration(const Swing& swing) const {
  const double y = swing.offset;
  const double v = swing.speed;
  const double half = swing.damping_half;
  const double ratio = half / natural_;
  if (ratio < 1.0 - near_critical) {
    const double damped = natural_ * std::sqrt((1.0 - ratio) * (1.0 + ratio));
    const double angle = std::atan2(v * damped, half * v + natural_ * natural_ * y);
    return (angle > 0.0 ? angle : angle + pi) / damped;
  }
  if (v == 0.0) return std::nullopt;
  if (ratio <= 1.0 + near_critical) {
    const double turn = v / (natural_ * (v + natural_ * y));
    return turn > 0.0 ? std::optional(turn) : std::nullopt;
  }
  const double fast = -half - natural_ * std::sqrt((ratio - 1.0) * (ratio + 1.0));
  const double slow = natural_ * natural_ / fast;
  const double of_slow = (v - fast * y) / (slow - fast);
  const double ratio_at_turn = -(y - of_slow) * fast / (of_slow * slow);
  return ratio_at_turn > 1.0 ? std::optional(std::log(ratio_at_turn) / (slow - fast))
                             : std::nullopt;
}

void Bounce::turn(double time, double height) {
  turns_.push_back({.time = from_si<Time>(time), .height = from_si<Length>(height)});
  highest_ = std::max(highest_, turns_.back().height);
  lowest_ = std::min(lowest_, turns_.back().height);
}

/// Adds a flight up to its top and down to where the spring carries again; returns how long it is.
double Bounce::fly(double begin, double height, double speed) {
  goes_slack_ = true;
  const auto add = [&](double from, double y, double v) {
    swings_.push_back({.begin = from,
                       .center = 0.0,
                       .offset = y,
                       .speed = v,
                       .damping_half = 0.0,
                       .flies = true});
  };
  double top = height;
  double rises = 0.0;
  if (speed > 0.0) {
    add(begin, height, speed);
    rises = speed / gravity;
    top = height + 0.5 * speed * rises;
    turn(begin + rises, top);
    speed = 0.0;
  }
  add(begin + rises, top, speed);
  const double landing = std::sqrt(speed * speed + 2.0 * gravity * (top - slack_));
  return rises + (landing + speed) / gravity;
}

/// Time at which a rising swing passes the height at which the spring goes slack.
double Bounce::until_slack(const Swing& swing, double turn) const {
  double before = 0.0;
  double after = turn;
  for (int halving = 0; halving < 100; ++halving) {
    const double middle = 0.5 * (before + after);
    (to_si(along(swing, middle).height) > slack_ ? after : before) = middle;
  }
  return before;
}

void Bounce::follow(double height, double speed) {
  const double hold = to_si(hook_.friction) / to_si(hook_.spring_rate);
  double time = 0.0;
  double largest = std::max(std::abs(height), std::abs(speed) / natural_);
  turn(time, height);
  while (swings_.size() < most_swings) {
    if (height > slack_ || (height == slack_ && speed > 0.0)) {
      const double lasts = fly(time, height, speed);
      speed = to_si(along(swings_.back(), time + lasts - swings_.back().begin).speed);
      largest = std::max(largest, to_si(highest_));
      time += lasts;
      height = slack_;
      continue;
    }
    const bool held = std::abs(height) <= hold;
    if (speed == 0.0 && (held || std::abs(height) <= died_down * largest)) {
      rest_ = from_si<Length>(held ? height : 0.0);
      followed_to_ = held ? 0.0 : died_down * largest;
      end_ = time;
      return;
    }
    const Swing next = swing(time, height, speed);
    swings_.push_back(next);
    const std::optional<double> lasts = duration(next);
    if (!lasts) {
      rest_ = from_si<Length>(next.center);
      highest_ = std::max(highest_, *rest_);
      lowest_ = std::min(lowest_, *rest_);
      return;
    }
    const double end = to_si(along(next, *lasts).height);
    if (end > slack_ && height < end) {
      const double passes = until_slack(next, *lasts);
      const double up = to_si(along(next, passes).speed);
      // Where it turns within a rounding of slack there is nothing to fly with.
      if (up > 0.0) {
        time += passes;
        height = slack_;
        speed = up;
        continue;
      }
    }
    time += *lasts;
    height = std::min(end, slack_);
    speed = 0.0;
    turn(time, height);
    largest = std::max(largest, std::abs(height));
  }
  end_ = time;
}

const Bounce::Swing* Bounce::swing_at(double time) const {
  const auto after = std::upper_bound(swings_.begin(), swings_.end(), time,
                                      [](double t, const Swing& s) { return t < s.begin; });
  return after == swings_.begin() ? nullptr : &*(after - 1);
}

Bounce::State Bounce::at(Time time) const {
  require(where, argument::time, time);
  const double t = to_si(time);
  if (end_ && t >= *end_) {
    if (rest_) return {.height = *rest_, .speed = from_si<Speed>(0.0)};
    if (t > *end_) {
      throw InadmissibleError(where, "time",
                              "time = " + quantity_text(time) + " is beyond the " +
                                  std::to_string(most_swings) + " swings followed, " +
                                  quantity_text(*end_, "s") + "; it does not come to rest");
    }
  }
  const Swing* swing = swing_at(t);
  return along(*swing, t - swing->begin);
}

Force Bounce::spring_force(Length height) const noexcept {
  const Force force = hook_.sprung_weight - hook_.spring_rate * height;
  return std::max(force, from_si<Force>(0.0));
}

Time Bounce::settled(Length within) const {
  require(where, argument::within, within);
  if (!rest_) {
    throw InadmissibleError(where, "within",
                            "within = " + quantity_text(within) +
                                " is never kept: with no or next to no damping and friction the "
                                "hook does not come to rest in the " +
                                std::to_string(most_swings) + " swings followed");
  }
  if (to_si(within) < followed_to_) {
    throw InadmissibleError(where, "within",
                            "within = " + quantity_text(within) + " is less than the " +
                                quantity_text(followed_to_, "m") +
                                " to which the swing was followed");
  }
  const double rest = to_si(*rest_);
  const double band = to_si(within);
  const auto outside = [&](double height) { return std::abs(height - rest) > band; };
  // In a swing the height only rises or only falls, so it enters the band for good in the last one
  // that begins outside of it.
  for (std::size_t i = swings_.size(); i-- > 0;) {
    const Swing& last = swings_[i];
    if (!outside(last.center + last.offset)) continue;
    const auto outside_after = [&](double elapsed) {
      return outside(to_si(along(last, elapsed).height));
    };
    double before = 0.0;
    double inside = 1.0 / natural_;
    if (i + 1 < swings_.size()) {
      inside = swings_[i + 1].begin - last.begin;
    } else if (end_) {
      inside = *end_ - last.begin;
    } else {
      while (outside_after(inside)) inside *= 2.0;  // it creeps there
    }
    for (int halving = 0; halving < 100; ++halving) {
      const double middle = 0.5 * (before + inside);
      (outside_after(middle) ? before : inside) = middle;
    }
    return from_si<Time>(last.begin + inside);
  }
  return from_si<Time>(0.0);
}

}  // namespace ropewalk::suspension
