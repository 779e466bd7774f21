/// Arguments of the subject: what can be at all.
#pragma once

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::compensator::argument {

// The gas spring
inline constexpr Parameter<Force> mean_load{"mean_load", params::positive_force_range};
/// Gas volume taken up per travel of the load: all pistons, rod travel over load travel allowed
/// for.
inline constexpr Parameter<Area> effective_area{
    "effective_area", above_up_to(from_si<Area>(0.0), from_si<Area>(10.0), params::guard)};
/// Gas in cylinders, bottles and pipes at mid-stroke.
inline constexpr Parameter<Volume> gas_volume{
    "gas_volume", above_up_to(0.0 * cubic_meter, 1'000.0 * cubic_meter, params::guard)};
inline constexpr Parameter<Number> polytropic_exponent{
    "polytropic_exponent", between(from_si<Number>(1.0), from_si<Number>(2.0), params::guard)};
/// Of the load against the vessel, from mid-stroke; positive where the gas is compressed.
inline constexpr Parameter<Length> spring_travel{
    "spring_travel", between(-20.0 * meter, 20.0 * meter, params::guard)};
inline constexpr Parameter<Length> half_stroke{
    "half_stroke", above_up_to(0.0 * meter, 20.0 * meter, params::guard)};
inline constexpr Parameter<Force> seal_friction{"seal_friction", params::force_range};

// What hangs on it
inline constexpr Interval stiffness_range =
    above_up_to(from_si<Stiffness>(0.0), from_si<Stiffness>(1e10), params::guard);
inline constexpr Parameter<Stiffness> gas_stiffness{"gas_stiffness", stiffness_range};
inline constexpr Parameter<Stiffness> string_stiffness{"string_stiffness", stiffness_range};
inline constexpr Parameter<Mass> hanging_mass{
    "hanging_mass", above_up_to(0.0 * kilogram, 1e7 * kilogram, params::guard)};

// Motions
inline constexpr Interval period_range = above_up_to(0.0 * second, 1'000.0 * second, params::guard);
inline constexpr Parameter<Time> wave_period{"wave_period", period_range};
inline constexpr Parameter<Time> heave_period{"heave_period", period_range};
inline constexpr Parameter<Length> heave_amplitude{
    "heave_amplitude", between(0.0 * meter, 50.0 * meter, params::guard)};
/// From crest to trough.
inline constexpr Parameter<Length> heave_height{"heave_height",
                                                between(0.0 * meter, 100.0 * meter, params::guard)};
/// Of what turns with the drum, moved to the hook.
inline constexpr Parameter<Mass> turning_mass{
    "turning_mass", between(0.0 * kilogram, 1e9 * kilogram, params::guard)};
inline constexpr Parameter<Time> duration{"duration",
                                          above_up_to(0.0 * second, 1e9 * second, params::guard)};

// Sea and vessel
inline constexpr Parameter<Length> significant_height{
    "significant_height", above_up_to(0.0 * meter, 40.0 * meter, params::guard)};
inline constexpr Parameter<Time> peak_period{"peak_period",
                                             between(0.5 * second, 60.0 * second, params::guard)};
inline constexpr Parameter<AngularVelocity> wave_frequency{
    "wave_frequency", above_up_to(0.0 * radian / second, 1'000.0 * radian / second, params::guard)};
/// Height of the spectrum's peak over that of a Pierson–Moskowitz sea, γ.
inline constexpr Parameter<Number> peak_factor{
    "peak_factor", between(from_si<Number>(1.0), from_si<Number>(20.0), params::guard),
    between(from_si<Number>(1.0), from_si<Number>(7.0),
            "DNV-RP-C205, range of the peak factor in measured seas")};

// Statistics
/// Standard deviation of heave, √m₀.
inline constexpr Parameter<Length> heave_deviation{
    "heave_deviation", above_up_to(0.0 * meter, 20.0 * meter, params::guard)};
inline constexpr Parameter<Number> heave_cycles{
    "heave_cycles", between(from_si<Number>(1.0), from_si<Number>(1e9), params::guard)};

}  // namespace ropewalk::compensator::argument
