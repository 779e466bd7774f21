/// Stopping the block: how far it goes, how long that takes, and what the line feels.
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>
#include <vector>

#include "ropewalk/base/model.hpp"
#include "ropewalk/brake/parameters.hpp"

namespace ropewalk::brake {

namespace argument {
inline constexpr Parameter<Acceleration> deceleration{
    "deceleration",
    above_up_to(0.0 * meter_per_second_squared, 1'000.0 * meter_per_second_squared, params::guard)};
/// Of the whole strung line, felt at the hook.
inline constexpr Parameter<ForcePerLength> line_stiffness{
    "line_stiffness",
    above_up_to(from_si<ForcePerLength>(0.0), from_si<ForcePerLength>(1e12), params::guard)};
}  // namespace argument

/// A torque at the drum as a force at the hook, moving the block without friction.
///
///   F = T N / R
///
/// T  torque at the drum, N  lines, R  drum_radius. Source: geometry; the drum turns N/R times as
/// fast as the block moves.
[[nodiscard]] constexpr Force at_hook(Torque torque, Number lines, Length drum_radius) noexcept {
  return lines * force_on_arm(torque, drum_radius);
}

/// Deceleration of a block that is lowered, the brake fully on.
///
///   a = (T_b − T_L) N / (R M)
///
/// T_b  brake_torque     torque
/// T_L  load_torque      torque of the load at the drum; friction of the sheaves helps the brake
/// N    lines            number
/// R    drum_radius      length, of the middle of the rope on the drum
/// M    equivalent_mass  mass of the load and of all that turns, at the hook: a moment of inertia J
///                       at the drum shaft counts as J (N/R)², the load as the drum feels it,
///                       T_L N / (R g)
///
/// The line carries W − (W/g) a while the load slows, and the drum feels that through the friction
/// of the sheaves: T_L N / R of the weight W, and as much of its inertia.
/// Negative: the brake is weaker than the load, which gains speed. Source: Newton's second law.
struct LoweringDeceleration {
  static constexpr std::string_view name = "brake.lowering_deceleration";
  static constexpr std::tuple parameters{argument::brake_torque, argument::load_torque,
                                         params::lines, argument::drum_radius,
                                         argument::equivalent_mass};

  static constexpr Acceleration formula(Torque brake_torque, Torque load_torque, Number lines,
                                        Length drum_radius, Mass equivalent_mass) noexcept {
    return at_hook(brake_torque - load_torque, lines, drum_radius) / equivalent_mass;
  }
};
inline constexpr Model<LoweringDeceleration> lowering_deceleration{};

/// Deceleration of a block that is hoisted, the drive off and the brake fully on.
///
///   a = min(g, (T_b + T_L) N / (R M))
///
/// g  standard gravity. Other symbols and source as for LoweringDeceleration: the load brakes too.
/// No line pushes a block down. Where the result is g the brake slows the drum harder: the line
/// goes slack, and the block coasts up as if thrown.
struct HoistingDeceleration {
  static constexpr std::string_view name = "brake.hoisting_deceleration";
  static constexpr std::tuple parameters = LoweringDeceleration::parameters;

  static constexpr Acceleration formula(Torque brake_torque, Torque load_torque, Number lines,
                                        Length drum_radius, Mass equivalent_mass) noexcept {
    return std::min(
        Acceleration(at_hook(brake_torque + load_torque, lines, drum_radius) / equivalent_mass),
        Acceleration(standard_gravity));
  }
};
inline constexpr Model<HoistingDeceleration> hoisting_deceleration{};

/// Largest tension over the tension at rest, when the drum stops dead while a load is lowered.
///
///   F / W = 1 + v √(k m) / W,   m = W / g
///
/// v  travel_speed    speed of the block
/// k  line_stiffness  force per length at the hook
/// W  hook_load       force
///
/// Range: no damping, rope without weight. Source: energy of a mass on a spring; S. Timoshenko,
/// Vibration Problems in Engineering, the suddenly stopped load of a hoist (from memory).
struct SuddenStopFactor {
  static constexpr std::string_view name = "brake.sudden_stop_factor";
  static constexpr std::tuple parameters{argument::travel_speed, argument::line_stiffness,
                                         argument::positive_hook_load};

  static Number formula(Speed travel_speed, ForcePerLength line_stiffness,
                        Force hook_load) noexcept {
    const double mass = to_si(hook_load) / to_si(standard_gravity);
    return from_si<Number>(1.0 + to_si(travel_speed) * std::sqrt(to_si(line_stiffness) * mass) /
                                     to_si(hook_load));
  }
};
inline constexpr Model<SuddenStopFactor> sudden_stop_factor{};

/// Largest tension over the tension at rest, when the drum is braked evenly to a stop while a load
/// is lowered.
///
///   F / W = 1 + (2 a / g) sin(min(ω t_s / 2, π/2)),   ω = √(k/m),   t_s = v / a
///
/// a  deceleration  of the drum, at the hook
/// Other symbols and range as for SuddenStopFactor, which is the limit of a stop much shorter than
/// the period 2π/ω; one longer than half the period gives 1 + 2a/g.
/// Source: response of a mass on a spring to an acceleration that is switched on, then off.
struct StopTensionFactor {
  static constexpr std::string_view name = "brake.stop_tension_factor";
  static constexpr std::tuple parameters{argument::travel_speed, argument::deceleration,
                                         argument::line_stiffness, argument::positive_hook_load};

  static Number formula(Speed travel_speed, Acceleration deceleration,
                        ForcePerLength line_stiffness, Force hook_load) noexcept {
    const double mass = to_si(hook_load) / to_si(standard_gravity);
    const double stop = to_si(travel_speed) / to_si(deceleration);
    const double half_turn = std::sqrt(to_si(line_stiffness) / mass) * stop / 2.0;
    return from_si<Number>(1.0 + 2.0 * to_si(deceleration) / to_si(standard_gravity) *
                                     std::sin(std::min(half_turn, pi / 2.0)));
  }
};
inline constexpr Model<StopTensionFactor> stop_tension_factor{};

enum class StopDirection { hoisting, lowering };

/// "hoisting" or "lowering". Throws LookupError.
[[nodiscard]] StopDirection stop_direction_named(std::string_view name);

/// A stop: from the moment it is asked for until block and drum stand. Forces at the hook.
///
/// Until the brake begins, `delay_force` acts at the drum. Lowering it is that of an auxiliary
/// brake or motor that keeps the speed, and it only resists: it may bring the block to rest, which
/// is no stop, since it is gone when the brake begins. Hoisting it is the drive's, which pulls.
struct Stop {
  StopDirection direction;
  Speed speed;         ///< of the block when the stop is asked for
  Force hook_load;     ///< W, hangs on the line
  Force drum_load;     ///< what of it the drum feels as it moves this way: T_L N / R
  Force delay_force;   ///< holds (lowering) or pulls (hoisting) until the brake begins
  Force brake_force;   ///< of the brake fully on: T_b N / R
  Time delay;          ///< until the brake begins: sensing, valves, clutch
  Time build_up;       ///< in which its force then rises evenly
  Mass rotating_mass;  ///< all that turns, as a mass at the hook
};

/// What a hoisted block does after its highest point. Friction of the sheaves is not counted on to
/// hold it, at rest or on the way down.
struct FallBack {
  bool falls;           ///< the drum gives way, or the block drops into its slack line
  bool holds;           ///< the brake ends it
  Length distance;      ///< down from the highest point; infinite if nothing ends it
  Time time;            ///< likewise
  Speed highest_speed;  ///< likewise
};

/// What becomes of a stop on a line that does not stretch.
struct RigidStop {
  bool stops;         ///< false: the brake is weaker than the load, which keeps its way
  bool stands_early;  ///< lowering: `delay_force` brought the block to rest, which is no stop
  bool slack;         ///< hoisting: the line goes slack, the brake slows the drum harder than g
  Time time;        ///< to standstill, hoisting to the highest point; infinite if it does not stop
  Length distance;  ///< likewise
  Speed highest_speed;        ///< infinite likewise
  Acceleration deceleration;  ///< brake fully on; negative if the load gains speed; at most g up
  std::optional<FallBack> fall_back;  ///< of hoisting
};

/// Closed form of a stop on a line that does not stretch: constant speed change in the delay, then
/// a force that rises evenly, then stays. Load and turning parts are one mass, the load's share
/// `drum_load`/g as the drum feels it. Hoisting, the block slows by g at most. A block that drops
/// into a slack line takes the drum along, impulse for impulse; `elastic_stop` has the blow.
/// Source: Newton's second law, integrated. Throws InadmissibleError for what cannot be.
[[nodiscard]] RigidStop rigid_stop(const Stop& stop);

/// The line as a spring at the hook, between the load and the mass of what turns.
struct ElasticLine {
  ForcePerLength stiffness;
  Number damping_ratio;  ///< share of the critical damping of the load on the line; may be 0
};

/// Course of a stop on an elastic line, in the direction the block went.
struct ElasticStop {
  bool stops;                         ///< false: still moving after `time_limit`
  Time time;                          ///< when the drum stands for good; infinite if not
  Length drum_distance;               ///< travel of the drum until then, as travel of the block
  Length block_distance;              ///< farthest travel of the block
  Force peak;                         ///< largest load on the line at the hook
  Force least;                        ///< smallest; 0: the line went slack
  std::optional<FallBack> fall_back;  ///< of hoisting; down to the lowest point after the highest
  std::vector<double> times;          ///< s
  std::vector<double> drum_travel;    ///< m
  std::vector<double> block_travel;   ///< m
  std::vector<double> drum_speed;     ///< m/s
  std::vector<double> block_speed;    ///< m/s
  std::vector<double> hook_force;     ///< N
};

/// A stop on an elastic line by integration: load and turning parts as two masses, the line a
/// spring that cannot push, the brake dry friction that holds the drum once it stands and slips
/// when the line pulls harder. Classical Runge–Kutta with 300 steps to the shortest period, ends
/// of delay and build-up and standstill met exactly. Runs on until the load has swung once, at most
/// `time_limit`. Throws InadmissibleError for what cannot be.
[[nodiscard]] ElasticStop elastic_stop(const Stop& stop, const ElasticLine& line, Time time_limit);

}  // namespace ropewalk::brake
