/// Arguments of the subject: what can be at all.
#pragma once

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::drum::argument {

// The drum
inline constexpr Parameter<Length> barrel_diameter{
    "barrel_diameter", above_up_to(0.0 * meter, 20.0 * meter, params::guard)};
inline constexpr Parameter<Number> laps_per_layer{
    "laps_per_layer", between(from_si<Number>(1.0), from_si<Number>(1'000.0), params::guard)};
inline constexpr Parameter<Number> layers{"layers", whole_between(1, 100, params::guard)};
/// Rise from layer to layer over rope diameter.
inline constexpr Parameter<Number> layer_height{
    "layer_height", above_up_to(from_si<Number>(0.0), from_si<Number>(1.0), params::geometry)};
inline constexpr Parameter<Number> crossovers_per_lap{"crossovers_per_lap",
                                                      whole_between(0, 2, params::definition)};
/// Inside width from flange to flange.
inline constexpr Parameter<Length> traverse{"traverse",
                                            above_up_to(0.0 * meter, 20.0 * meter, params::guard)};
inline constexpr Parameter<Length> flange_depth{
    "flange_depth", above_up_to(0.0 * meter, 20.0 * meter, params::guard)};
/// From lap to lap along the drum.
inline constexpr Parameter<Length> pitch{"pitch",
                                         above_up_to(0.0 * meter, 2.0 * meter, params::guard)};
inline constexpr Parameter<Length> wall_thickness{
    "wall_thickness", above_up_to(0.0 * meter, 2.0 * meter, params::guard)};

// The rope on it
inline constexpr Interval laps_range =
    between(from_si<Number>(0.0), from_si<Number>(1'000.0), params::guard);
inline constexpr Parameter<Number> laps{"laps", laps_range};
inline constexpr Parameter<Number> wraps_at_lowest{"wraps_at_lowest", laps_range};
inline constexpr Parameter<Length> block_height{"block_height",
                                                between(0.0 * meter, 200.0 * meter, params::guard)};

// The lead sheave
inline constexpr Parameter<Length> lead_offset{"lead_offset",
                                               between(-20.0 * meter, 20.0 * meter, params::guard)};
inline constexpr Parameter<Length> lead_distance{
    "lead_distance", above_up_to(0.0 * meter, 500.0 * meter, params::guard)};

}  // namespace ropewalk::drum::argument
