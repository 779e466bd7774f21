/// Dead wraps: what they hold, and how many are asked for.
#pragma once

#include <cmath>
#include <string_view>
#include <vector>

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/drum/parameters.hpp"

namespace ropewalk::drum {

namespace argument {
/// Friction between rope and drum. No default: it depends on lubrication and is little known.
inline constexpr Parameter<Number> drum_friction{"drum_friction", params::positive_ratio_range};
inline constexpr Parameter<Number> dead_wraps{
    "dead_wraps", between(from_si<Number>(0.0), from_si<Number>(100.0), params::guard)};
}  // namespace argument

/// Tension held by dead wraps over the tension left at the end of the rope, Euler and Eytelwein.
///
///   T / T_c = e^(2 π μ n)
///
/// μ  drum_friction  number, between rope and drum
/// n  dead_wraps     number of laps on the barrel that are never unwound
///
/// The rope is about to slip and bends without stiffness. Range: laps on the barrel itself.
/// Source: L. Euler (1769), J. A. Eytelwein (1808), belt friction.
struct HoldingRatio {
  static constexpr std::string_view name = "drum.holding_ratio";
  static constexpr std::tuple parameters{argument::drum_friction, argument::dead_wraps};

  static Number formula(Number drum_friction, Number dead_wraps) noexcept {
    return from_si<Number>(std::exp(2.0 * pi * to_si(drum_friction) * to_si(dead_wraps)));
  }
};
inline constexpr Model<HoldingRatio> holding_ratio{};

/// Tension left at the end of the rope, which its fastening must hold.
///
///   T_c = T e^(−2 π μ n)
///
/// T  rope_tension  force, where the line leaves the drum
/// Other symbols, range and source as for HoldingRatio.
struct ClampForce {
  static constexpr std::string_view name = "drum.clamp_force";
  static constexpr std::tuple parameters{params::rope_tension, argument::drum_friction,
                                         argument::dead_wraps};

  static Force formula(Force rope_tension, Number drum_friction, Number dead_wraps) noexcept {
    return rope_tension / HoldingRatio::formula(drum_friction, dead_wraps);
  }
};
inline constexpr Model<ClampForce> clamp_force{};

/// Dead wraps that bring the tension down to what the fastening holds.
///
///   n = ln(T / T_c) / (2 π μ)
///
/// T_c  clamp_force  force, that the fastening holds
/// Other symbols, range and source as for HoldingRatio.
struct HoldingWraps {
  static constexpr std::string_view name = "drum.holding_wraps";
  static constexpr std::tuple parameters{
      params::rope_tension, Parameter<Force>{"clamp_force", params::positive_force_range},
      argument::drum_friction};
  static constexpr std::string_view joint_rule =
      "rope_tension must be at least clamp_force (else the fastening holds it without wraps)";

  static constexpr bool joint(Force rope_tension, Force held, Number) noexcept {
    return rope_tension >= held;
  }
  static Number formula(Force rope_tension, Force held, Number drum_friction) noexcept {
    return from_si<Number>(std::log(to_si(Number(rope_tension / held))) /
                           (2.0 * pi * to_si(drum_friction)));
  }
};
inline constexpr Model<HoldingWraps> holding_wraps{};

/// One row of cpp/data/dead_wraps.csv: wraps that must be left on the drum.
struct DeadWrapsMinimum {
  std::string_view standard;
  std::string_view edition;
  Number value;
  std::string_view condition;  ///< where the block is when they are counted
  Provenance provenance;
};

/// Every minimum there is, by standard.
[[nodiscard]] std::vector<DeadWrapsMinimum> dead_wraps_minimums();

/// The minimum a standard asks for. Local rules, the rope maker and the maker of the hoist may ask
/// for more; they come first. Throws LookupError offering the standards.
[[nodiscard]] DeadWrapsMinimum dead_wraps_minimum(std::string_view standard);

}  // namespace ropewalk::drum
