/// Arguments of the subject: what can be at all.
#pragma once

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::drum::argument {

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

}  // namespace ropewalk::drum::argument
