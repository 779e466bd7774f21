/// Least safety factor of lift suspension ropes against bending fatigue.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/fatigue/parameters.hpp"

namespace ropewalk::params {

inline constexpr std::string_view en81 =
    "EN 81-20:2014, 5.5.2.1, least ratio for suspension ropes, from memory";
/// Number of equivalent sheaves a point of the rope runs over in one trip, N_equiv.
inline constexpr Parameter<Number> equivalent_sheaves{
    "equivalent_sheaves", between(from_si<Number>(1.0), from_si<Number>(1000.0), definition)};

}  // namespace ropewalk::params

namespace ropewalk::fatigue {

/// Least safety factor S_f of suspension ropes against bending fatigue (EN 81-50).
///
///   S_f = 10^[ 2.6834 − lg(695.85·10⁶ N_equiv / (D_t/d_r)^8.567) / lg(77.09 (D_t/d_r)^−2.894) ]
///
/// D_t/d_r  bend_ratio          number, traction sheave over rope diameter
/// N_equiv  equivalent_sheaves  number
///
/// A life equation solved for the tension, F_u/S. Range: D_t/d_r ≥ 40, the least the lift standard
/// allows. Source: EN 81-50:2014, 5.12, from memory.
struct En81SafetyFactor {
  static constexpr std::string_view name = "fatigue.en81_safety_factor";
  static constexpr std::tuple parameters{
      Parameter<Number>{"bend_ratio",
                        between(from_si<Number>(5.0), from_si<Number>(10'000.0),
                                "above the pole of the formula at 77.09^(1/2.894) = 4.49")}
          .valid_in(between(from_si<Number>(40.0), from_si<Number>(10'000.0), params::en81)),
      params::equivalent_sheaves};
  static Number formula(Number bend_ratio, Number equivalent_sheaves) noexcept {
    const double bends = std::log10(695.85e6 * equivalent_sheaves / std::pow(bend_ratio, 8.567));
    const double slope = std::log10(77.09 * std::pow(bend_ratio, -2.894));
    return std::pow(10.0, 2.6834 - bends / slope);
  }
};
inline constexpr Model<En81SafetyFactor> en81_safety_factor{};

/// Weight K_p of deflection sheaves against the traction sheave (EN 81-50).
///
///   K_p = (D_t / D_p)⁴
///
/// D_t  traction_sheave_diameter    length
/// D_p  deflection_sheave_diameter  length, mean over all but the traction sheave
///
/// Source: EN 81-50:2014, 5.12, from memory.
struct En81SheaveWeight {
  static constexpr std::string_view name = "fatigue.en81_sheave_weight";
  static constexpr std::tuple parameters{
      params::sheave_diameter.named("traction_sheave_diameter"),
      params::sheave_diameter.named("deflection_sheave_diameter")};
  static constexpr Number formula(Length traction_sheave_diameter,
                                  Length deflection_sheave_diameter) noexcept {
    const double ratio = traction_sheave_diameter / deflection_sheave_diameter;
    return ratio * ratio * (ratio * ratio);
  }
};
inline constexpr Model<En81SheaveWeight> en81_sheave_weight{};

/// Number of equivalent sheaves N_equiv (EN 81-50).
///
///   N_equiv = N_equiv(t) + K_p (N_ps + 4 N_pr)
///
/// N_equiv(t)  groove_equivalent    number, data table "en81_50_grooves"
/// N_ps        same_sense_sheaves   count, deflection sheaves that bend as the traction sheave
/// N_pr        reverse_sheaves      count, deflection sheaves that bend the other way
/// K_p         sheave_weight        number
///
/// Source: EN 81-50:2014, 5.12, from memory.
struct En81EquivalentSheaves {
  static constexpr std::string_view name = "fatigue.en81_equivalent_sheaves";
  static constexpr std::tuple parameters{
      Parameter<Number>{"groove_equivalent",
                        between(from_si<Number>(1.0), from_si<Number>(100.0), params::guard)},
      Parameter<Number>{"same_sense_sheaves", whole_between(0, 64, params::guard)},
      Parameter<Number>{"reverse_sheaves", whole_between(0, 64, params::guard)},
      Parameter<Number>{"sheave_weight",
                        above_up_to(from_si<Number>(0.0), from_si<Number>(1e4), params::guard)}};
  static constexpr Number formula(Number groove_equivalent, Number same_sense_sheaves,
                                  Number reverse_sheaves, Number sheave_weight) noexcept {
    return groove_equivalent + sheave_weight * (same_sense_sheaves + 4.0 * reverse_sheaves);
  }
};
inline constexpr Model<En81EquivalentSheaves> en81_equivalent_sheaves{};

}  // namespace ropewalk::fatigue
