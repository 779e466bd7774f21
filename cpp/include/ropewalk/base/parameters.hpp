/// The arguments that more than one subject takes: one name, one admissible range, everywhere.
///
/// Admissible bounds are wide on purpose. They catch slips of the pen (inches for feet, pounds for
/// kips, a lost decimal point), not unusual hoists; what is wise is said by the models and checks.
#pragma once

#include "ropewalk/base/range.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::params {

inline constexpr std::string_view guard = "ropewalk's guard against slips of the pen";
inline constexpr std::string_view geometry = "geometry";
inline constexpr std::string_view definition = "definition";

inline constexpr Interval force_range = between(0.0 * newton, 1e9 * newton, guard);
inline constexpr Interval positive_force_range = above_up_to(0.0 * newton, 1e9 * newton, guard);
inline constexpr Interval depth_range = between(0.0 * meter, 20'000.0 * meter, guard);
inline constexpr Interval length_range = above_up_to(0.0 * meter, 20'000.0 * meter, guard);
inline constexpr Interval stress_range = above_up_to(0.0 * pascal, 1e11 * pascal, guard);
inline constexpr Interval ratio_range =
    between(from_si<Number>(0.0), from_si<Number>(1.0), definition);
inline constexpr Interval positive_ratio_range =
    above_up_to(from_si<Number>(0.0), from_si<Number>(1.0), definition);

// Rope and sheave
inline constexpr Parameter<Length> rope_diameter{"rope_diameter",
                                                 above_up_to(0.0 * meter, 1.0 * meter, guard)};
inline constexpr Parameter<Length> sheave_diameter{"sheave_diameter",
                                                   above_up_to(0.0 * meter, 100.0 * meter, guard)};
inline constexpr Parameter<Force> rope_tension{"rope_tension", force_range};
inline constexpr Parameter<Force> breaking_force{"breaking_force", positive_force_range};
inline constexpr Parameter<Stress> wire_strength{"wire_strength", stress_range};
/// Sheave diameter over rope diameter, D/d.
inline constexpr Parameter<Number> bend_ratio{
    "bend_ratio", between(from_si<Number>(1.0), from_si<Number>(10'000.0), guard)};

// Reeving
inline constexpr Parameter<Force> hook_load{"hook_load", force_range};
inline constexpr Parameter<Number> lines{"lines", whole_between(2, 64, guard)};
/// Tension ratio of the tight to the slack side of one turning sheave, K.
inline constexpr Parameter<Number> sheave_friction{
    "sheave_friction", between(from_si<Number>(1.0), from_si<Number>(2.0), guard)};
inline constexpr Parameter<Number> lead_sheaves{"lead_sheaves", whole_between(0, 16, guard)};
/// An efficiency that was measured or is prescribed, in the place of sheave friction.
inline constexpr Parameter<Number> reeving_efficiency{"reeving_efficiency", positive_ratio_range};

// Strings
inline constexpr Parameter<Length> depth{"depth", depth_range};
inline constexpr Parameter<Length> stand_length{"stand_length",
                                                above_up_to(0.0 * meter, 100.0 * meter, guard)};
inline constexpr Parameter<Force> block_weight{"block_weight", force_range};
inline constexpr Parameter<ForcePerLength> pipe_weight{
    "pipe_weight",
    between(from_si<ForcePerLength>(0.0), from_si<ForcePerLength>(100'000.0), guard)};
inline constexpr Parameter<Density> mud_density{
    "mud_density",
    between(0.0 * kilogram_per_cubic_meter, 4'000.0 * kilogram_per_cubic_meter, guard)};

}  // namespace ropewalk::params
