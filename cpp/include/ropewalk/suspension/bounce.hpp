/// The bounce of a hook when a stand breaks free from the box, or is picked up or set down hard.
#pragma once

#include <optional>
#include <vector>

#include "ropewalk/suspension/oscillator.hpp"

namespace ropewalk::suspension {

/// A weight on the hook spring. A snubber may damp more on the way up than on the way down.
struct SprungHook {
  Force sprung_weight;         ///< of all that moves: hook, links, elevator, stand
  ForcePerLength spring_rate;  ///< of the hook spring
  Damping damping_up;          ///< of the snubber while the hook rises
  Damping damping_down;        ///< the same while it goes down
  Force friction;              ///< of seals and guides, the same both ways
};

namespace argument {
inline constexpr Parameter<Damping> damping_up{"damping_up", damping_range};
inline constexpr Parameter<Damping> damping_down{"damping_down", damping_range};
inline constexpr Parameter<Force> friction{"friction", params::force_range};
inline constexpr Parameter<Length> start{
    "start", between(from_si<Length>(-100.0), from_si<Length>(100.0), params::guard)};
inline constexpr Parameter<Speed> start_speed = impulse_speed.named("start_speed");
inline constexpr Parameter<Time> time{
    "time", between(from_si<Time>(0.0), from_si<Time>(1e6), params::guard)};
inline constexpr Parameter<Length> within{"within",
                                          above_up_to(0.0 * meter, 100.0 * meter, params::guard)};
}  // namespace argument

/// Motion of a sprung weight about the height at which it hangs at rest, up positive.
///
///   m x¨ = −k x − c(sign x˙) x˙ − F sign x˙,     m = W/g
///
/// W  sprung_weight   k  spring_rate   c  damping_up or damping_down   F  friction
///
/// A spring that has gone slack, x > W/k, does not push the weight down: from there on it flies,
///
///   x¨ = −g,
///
/// free of spring, snubber and friction, and lands at x = W/k as fast as it left: what is not held
/// back in flight flies highest.
///
/// Between two turning points the equation is linear, so the motion is pieced together from the
/// closed forms of the damped oscillator, under-, critically and overdamped, and the parabola of
/// the flight: exact, without a step size. At a turning point with k |x| ≤ F friction holds the
/// weight for good. The blocks stand still; the spring is taken as linear, without stops at its
/// ends. Source: the equation of motion; closed forms e.g. in S. S. Rao, Mechanical Vibrations,
/// ch. 2.
class Bounce {
 public:
  struct State {
    Length height;
    Speed speed;
  };
  /// A point at which the motion begins or turns.
  struct Turn {
    Time time;
    Length height;
  };

  /// Motion from `start` (negative: pulled below rest, as by the box that still holds the pin) with
  /// `start_speed`. Throws InadmissibleError naming the field that cannot be.
  Bounce(const SprungHook& hook, Length start, Speed start_speed);

  /// Height and speed at a time. Throws InadmissibleError for a time beyond the turns followed.
  [[nodiscard]] State at(Time time) const;
  /// Force in the spring at a height, W − k x; 0 where it is slack.
  [[nodiscard]] Force spring_force(Length height) const noexcept;

  /// The start and every turning point after it, until friction holds, the swing has died down to a
  /// billionth, or there have been ten thousand.
  [[nodiscard]] const std::vector<Turn>& turns() const noexcept { return turns_; }
  /// True if the spring goes slack and the weight flies for a while.
  [[nodiscard]] bool goes_slack() const noexcept { return goes_slack_; }
  [[nodiscard]] Length highest() const noexcept { return highest_; }
  [[nodiscard]] Length lowest() const noexcept { return lowest_; }
  /// Height at which it comes to rest: 0 without friction. None if it never does.
  [[nodiscard]] std::optional<Length> rest() const noexcept { return rest_; }
  /// Time from which on it stays `within` of rest. Throws InadmissibleError if it never does, or if
  /// `within` is less than the swing was followed to.
  [[nodiscard]] Time settled(Length within) const;

 private:
  /// A piece of the motion in which the height only rises or only falls, about `center`.
  struct Swing {
    double begin;         ///< s
    double center;        ///< m, where spring and friction balance; 0 in flight
    double offset;        ///< m, from center at the beginning
    double speed;         ///< m/s, at the beginning
    double damping_half;  ///< c/2m, 1/s
    bool flies;           ///< spring slack
  };
  [[nodiscard]] Swing swing(double begin, double height, double speed) const;
  [[nodiscard]] State along(const Swing& swing, double elapsed) const;
  [[nodiscard]] std::optional<double> duration(const Swing& swing) const;
  [[nodiscard]] const Swing* swing_at(double time) const;
  void follow(double height, double speed);
  [[nodiscard]] double fly(double begin, double height, double speed);
  [[nodiscard]] double until_slack(const Swing& swing, double turn) const;
  void turn(double time, double height);

  SprungHook hook_;
  double mass_;
  double natural_;  ///< ω_n, 1/s
  double slack_;    ///< m, height at which the spring carries nothing
  bool goes_slack_ = false;
  std::vector<Swing> swings_;
  std::vector<Turn> turns_;
  Length highest_{};
  Length lowest_{};
  std::optional<Length> rest_;
  double followed_to_ = 0.0;   ///< m, what is smaller counts as rest
  std::optional<double> end_;  ///< s, when friction holds it, or when it was followed no further
};

}  // namespace ropewalk::suspension
