/// The rope diameter that lives longest on a given sheave under a given tension.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/fatigue/feyrer.hpp"

namespace ropewalk::params {

inline constexpr Interval coefficient_range =
    between(from_si<Number>(-100.0), from_si<Number>(100.0), guard);
inline constexpr Parameter<Number> b1{"b1", coefficient_range};
inline constexpr Parameter<Number> b2{"b2", coefficient_range};
inline constexpr Parameter<Number> b3{"b3", coefficient_range};
/// A maximum exists only if tension and D/d work against each other, b4 < 0.
inline constexpr Parameter<Number> b4{
    "b4", between(from_si<Number>(-100.0), from_si<Number>(-1e-6),
                  "a longest-living diameter exists for b4 below 0 only")};

}  // namespace ropewalk::params

namespace ropewalk::fatigue {

/// Rope diameter of the longest bending life on one sheave under one tension (Feyrer's form).
///
///   lg d_opt = (2 b1 + b2 − b3) / (4 b4) + ½ lg D + ¼ (lg S − 0.4 lg(R0/1770))
///
/// S        rope_tension     force, N
/// D        sheave_diameter  length, mm
/// R0       wire_strength    stress, N/mm²
/// b1 … b4  constants of the first-edition form (FeyrerForm)
///
/// From ∂ lg N / ∂ lg d = 0 at fixed S, D and l/d: a thicker rope is stressed less by tension and
/// more by bending. Whatever the constants, d_opt grows as D^½ S^¼.
/// Source: the equation of FeyrerForm, derived by hand.
struct OptimalRopeDiameter {
  static constexpr std::string_view name = "fatigue.optimal_rope_diameter";
  static constexpr std::tuple parameters{params::positive_rope_tension,
                                         params::sheave_diameter,
                                         params::wire_strength,
                                         params::b1,
                                         params::b2,
                                         params::b3,
                                         params::b4};
  static Length formula(Force rope_tension, Length sheave_diameter, Stress wire_strength, Number b1,
                        Number b2, Number b3, Number b4) noexcept {
    const double constants = (2.0 * b1 + b2 - b3) / (4.0 * b4);
    const double strength = wire_strength / (feyrer_reference_strength * megapascal);
    const double lg_diameter =
        constants + 0.5 * std::log10(sheave_diameter / millimeter) +
        0.25 * (std::log10(rope_tension / newton) - 0.4 * std::log10(strength));
    return std::pow(10.0, lg_diameter) * millimeter;
  }
};
inline constexpr Model<OptimalRopeDiameter> optimal_rope_diameter{};

}  // namespace ropewalk::fatigue
