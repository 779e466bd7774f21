/// Arguments of the subject: what can be at all.
#pragma once

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::brake::argument {

inline constexpr Interval torque_range =
    between(0.0 * newton_meter, 1e9 * newton_meter, params::guard);
inline constexpr Interval positive_torque_range =
    above_up_to(0.0 * newton_meter, 1e9 * newton_meter, params::guard);
inline constexpr Interval part_range = above_up_to(0.0 * meter, 20.0 * meter, params::guard);

// Torques at the drum shaft
inline constexpr Parameter<Torque> brake_torque{"brake_torque", torque_range};
/// Of the load: fast-line tension times the radius of the rope on the drum.
inline constexpr Parameter<Torque> load_torque{"load_torque", torque_range};
inline constexpr Parameter<AngularVelocity> drum_rotation{
    "drum_rotation", between(0.0 * rpm, 10'000.0 * rpm, params::guard)};
/// Of the middle of the rope on the drum.
inline constexpr Parameter<Length> drum_radius{"drum_radius", part_range};

// Lining. No default for its friction: it depends on material, heat and wet.
inline constexpr Parameter<Number> lining_friction{"lining_friction", params::positive_ratio_range};

// Motion of the block: its speed the way it moves, up or down
inline constexpr Parameter<Speed> travel_speed{
    "travel_speed", between(0.0 * meter_per_second, 100.0 * meter_per_second, params::guard)};
/// Load and rotating parts as one mass at the hook.
inline constexpr Parameter<Mass> equivalent_mass{
    "equivalent_mass", above_up_to(0.0 * kilogram, 1e10 * kilogram, params::guard)};
inline constexpr Parameter<Force> positive_hook_load{"hook_load", params::positive_force_range};

}  // namespace ropewalk::brake::argument
