/// The drum that takes the heave up itself: speed, power and work of the line.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/compensator/parameters.hpp"

namespace ropewalk::compensator {

/// Largest speed of the block against the vessel, taking up a sine of heave.
///
///   v = π H / T
///
/// H  heave_height  length, crest to trough
/// T  heave_period  time
///
/// Source: a sine.
struct HeaveSpeed {
  static constexpr std::string_view name = "compensator.heave_speed";
  static constexpr std::tuple parameters{argument::heave_height, argument::heave_period};

  static constexpr Speed formula(Length heave_height, Time heave_period) noexcept {
    return pi * heave_height / heave_period;
  }
};
inline constexpr Model<HeaveSpeed> heave_speed{};

/// Largest acceleration of the block against the vessel, taking up a sine of heave.
///
///   a = 2 π² H / T²
///
/// Symbols and source as for HeaveSpeed.
struct HeaveAcceleration {
  static constexpr std::string_view name = "compensator.heave_acceleration";
  static constexpr std::tuple parameters{argument::heave_height, argument::heave_period};

  static constexpr Acceleration formula(Length heave_height, Time heave_period) noexcept {
    return 2.0 * pi * pi * heave_height / (heave_period * heave_period);
  }
};
inline constexpr Model<HeaveAcceleration> heave_acceleration{};

/// Largest speed of the line at a drum that takes up the heave.
///
///   v_f = N π H / T
///
/// N  lines  number strung
///
/// Other symbols and source as for HeaveSpeed; the fast line runs N times as fast as the block.
struct ActiveLineSpeed {
  static constexpr std::string_view name = "compensator.active_line_speed";
  static constexpr std::tuple parameters{params::lines, argument::heave_height,
                                         argument::heave_period};

  static constexpr Speed formula(Number lines, Length heave_height, Time heave_period) noexcept {
    return lines * HeaveSpeed::formula(heave_height, heave_period);
  }
};
inline constexpr Model<ActiveLineSpeed> active_line_speed{};

/// Largest power at the drum that takes up the heave, load and friction alone.
///
///   P = W π H / (T E)
///
/// W  hook_load           force
/// E  reeving_efficiency  number, of the lines while hoisting
///
/// Other symbols and source as for HeaveSpeed. As much, times E², comes back while lowering: the
/// drive must take it. What the drum and the motors need to turn over comes on top, see
/// ActivePowerWithInertia.
struct ActivePower {
  static constexpr std::string_view name = "compensator.active_power";
  static constexpr std::tuple parameters{
      params::hook_load, argument::heave_height, argument::heave_period,
      Parameter<Number>{"reeving_efficiency", params::positive_ratio_range}};

  static constexpr Power formula(Force hook_load, Length heave_height, Time heave_period,
                                 Number reeving_efficiency) noexcept {
    return hook_load * HeaveSpeed::formula(heave_height, heave_period) / reeving_efficiency;
  }
};
inline constexpr Model<ActivePower> active_power{};

/// Largest power at the drum that takes up the heave, with what turns.
///
///   P = max over θ of  A sin θ + (B/2) sin 2θ,   A = W v/E,   B = m v² ω
///
/// m  turning_mass  mass, of drum, gears, motors and sheaves, moved to the hook;
/// v  as HeaveSpeed has it, ω = 2 π/T
///
/// Load times speed, and what turns is speeded up as it runs: the one is largest at full speed, the
/// other midway to it. The largest sum is at cos θ = 2 B/(A + √(A² + 8 B²)). Block and string stay
/// where they are and need none. Other symbols as for ActivePower. Source: a sine.
struct ActivePowerWithInertia {
  static constexpr std::string_view name = "compensator.active_power_with_inertia";
  static constexpr std::tuple parameters{
      params::hook_load, argument::heave_height, argument::heave_period,
      Parameter<Number>{"reeving_efficiency", params::positive_ratio_range},
      argument::turning_mass};

  static Power formula(Force hook_load, Length heave_height, Time heave_period,
                       Number reeving_efficiency, Mass turning_mass) noexcept {
    const double speed = to_si(HeaveSpeed::formula(heave_height, heave_period));
    const double omega = 2.0 * pi / to_si(heave_period);
    const double load = to_si(hook_load) * speed / to_si(reeving_efficiency);
    const double turning = to_si(turning_mass) * speed * speed * omega;
    if (turning == 0.0) return from_si<Power>(load);
    const double cosine = 2.0 * turning / (load + std::hypot(load, std::sqrt(8.0) * turning));
    const double sine = std::sqrt((1.0 - cosine) * (1.0 + cosine));
    return from_si<Power>(sine * (load + turning * cosine));
  }
};
inline constexpr Model<ActivePowerWithInertia> active_power_with_inertia{};

/// Work of the line in some cycles of heave, up and down counted alike, as for ton-miles.
///
///   U = 2 W H N_c
///
/// W    hook_load     force
/// H    heave_height  length, crest to trough; √(2 π) σ in the mean of a narrow-banded heave
/// N_c  heave_cycles  number
///
/// Source: load times travel, as API RP 9B counts the service of a line.
struct ActiveWork {
  static constexpr std::string_view name = "compensator.active_work";
  static constexpr std::tuple parameters{params::hook_load, argument::heave_height,
                                         argument::heave_cycles};

  static constexpr Energy formula(Force hook_load, Length heave_height,
                                  Number heave_cycles) noexcept {
    return 2.0 * heave_cycles * hook_load * heave_height;
  }
};
inline constexpr Model<ActiveWork> active_work{};

}  // namespace ropewalk::compensator
