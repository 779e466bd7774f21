/// The arguments that more than one formula of this subject takes, beside base/parameters.hpp.
#pragma once

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::params {

/// Range of Feyrer's bending tests as the book describes it; used for everything fitted to them.
inline constexpr std::string_view feyrer_tests =
    "base of the bending tests in Feyrer, Wire Ropes, from memory";
inline constexpr std::string_view en13001 = "EN 13001-3-2:2014, from memory";

/// A rope without tension does not tire in any of the models: its life is no finite number.
inline constexpr Parameter<Force> positive_rope_tension{"rope_tension", positive_force_range};
/// Length of the rope piece that passes the sheave under the highest tension.
inline constexpr Parameter<Length> bend_length{"bend_length", length_range};
/// Bending length over rope diameter, l/d.
inline constexpr Parameter<Number> bend_length_ratio{
    "bend_length_ratio", above_up_to(from_si<Number>(0.0), from_si<Number>(1e7), guard)};
/// Product of endurance factors by which a life is multiplied.
inline constexpr Parameter<Number> life_factor{
    "life_factor", above_up_to(from_si<Number>(0.0), from_si<Number>(1000.0), guard)};
inline constexpr Parameter<Number> bending_cycles{
    "bending_cycles", above_up_to(from_si<Number>(0.0), from_si<Number>(1e15), guard)};

// Proof of competence
/// Product of the factors of the fatigue proof, f_f: no default, the standard's tables give it.
inline constexpr Parameter<Number> further_influences{
    "further_influences", above_up_to(from_si<Number>(0.0), from_si<Number>(10.0), guard)};
/// Force history parameter s_r = k_r ν_r. The top class of the standard, S_R9, ends at 4.
inline constexpr Parameter<Number> force_history =
    Parameter<Number>{"force_history",
                      above_up_to(from_si<Number>(0.0), from_si<Number>(1e6), guard)}
        .valid_in(above_up_to(from_si<Number>(0.0), from_si<Number>(4.0), en13001));

// Hoist rope
/// Equivalent axial load of bending, F_b.
inline constexpr Parameter<Force> bending_load{"bending_load", force_range};
/// Modulus of elasticity of the rope on its metallic area, E_r.
inline constexpr Parameter<Stress> rope_modulus{"rope_modulus",
                                                above_up_to(0.0 * pascal, 1e12 * pascal, guard)};
inline constexpr Parameter<Length> wire_diameter{"wire_diameter",
                                                 above_up_to(0.0 * meter, 0.1 * meter, guard)};

}  // namespace ropewalk::params
