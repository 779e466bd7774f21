/// Statistics of a narrow-banded random heave: how large it gets, how often, in a duration.
///
/// Amplitudes of a Gaussian motion of narrow band are Rayleigh distributed about its standard
/// deviation σ = √m₀; for a broader band these laws overstate the large amplitudes a little.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/compensator/parameters.hpp"

namespace ropewalk::compensator {

/// Cycles of heave in a duration.
///
///   N = t / T_z
///
/// t    duration      time
/// T_z  heave_period  time, zero-crossing period of heave, 2 π √(m₀/m₂)
///
/// Source: definition.
struct HeaveCycles {
  static constexpr std::string_view name = "compensator.heave_cycles";
  static constexpr std::tuple parameters{argument::duration, argument::heave_period};

  static Number formula(Time duration, Time heave_period) noexcept {
    return duration / heave_period;
  }
};
inline constexpr Model<HeaveCycles> heave_cycles{};

/// Probability that one cycle of heave goes beyond a half stroke, Rayleigh.
///
///   p = exp(−x² / (2 σ²))
///
/// x  half_stroke      length, left in the shorter direction
/// σ  heave_deviation  length, standard deviation of heave
///
/// One side is counted, as is usual; that either side is exceeded is at most twice as likely.
/// Source: M. S. Longuet-Higgins, J. Mar. Res. 11 (1952).
struct CycleExceedance {
  static constexpr std::string_view name = "compensator.cycle_exceedance";
  static constexpr std::tuple parameters{argument::heave_deviation, argument::half_stroke};

  static Number formula(Length heave_deviation, Length half_stroke) noexcept {
    const double ratio = to_si(Number(half_stroke / heave_deviation));
    return from_si<Number>(std::exp(-0.5 * ratio * ratio));
  }
};
inline constexpr Model<CycleExceedance> cycle_exceedance{};

/// Probability that a half stroke is exceeded at least once in some cycles.
///
///   P = 1 − (1 − p)^N
///
/// p  as CycleExceedance has it
/// N  heave_cycles  number
///
/// Cycles are taken as independent. Other symbols and source as for CycleExceedance.
struct StrokeExceedance {
  static constexpr std::string_view name = "compensator.stroke_exceedance";
  static constexpr std::tuple parameters{argument::heave_deviation, argument::half_stroke,
                                         argument::heave_cycles};

  static Number formula(Length heave_deviation, Length half_stroke, Number cycles) noexcept {
    const double one = to_si(CycleExceedance::formula(heave_deviation, half_stroke));
    return from_si<Number>(-std::expm1(to_si(cycles) * std::log1p(-one)));
  }
};
inline constexpr Model<StrokeExceedance> stroke_exceedance{};

/// Largest standard deviation of heave for which a half stroke is exceeded with a probability.
///
///   σ = x / √(−2 ln(1 − (1 − P)^(1/N)))
///
/// P  exceedance  number, probability of at least one exceedance in N cycles
///
/// Other symbols and source as for StrokeExceedance, solved for the deviation.
struct AllowedHeaveDeviation {
  static constexpr std::string_view name = "compensator.allowed_heave_deviation";
  static constexpr std::tuple parameters{
      argument::half_stroke,
      Parameter<Number>{"exceedance",
                        between(from_si<Number>(1e-12), from_si<Number>(0.999), params::guard)},
      argument::heave_cycles};

  static Length formula(Length half_stroke, Number exceedance, Number cycles) noexcept {
    const double one = -std::expm1(std::log1p(-to_si(exceedance)) / to_si(cycles));
    return half_stroke / std::sqrt(-2.0 * std::log(one));
  }
};
inline constexpr Model<AllowedHeaveDeviation> allowed_heave_deviation{};

/// From how many cycles on the laws of large N are good.
inline constexpr Interval many_cycles =
    between(from_si<Number>(10.0), from_si<Number>(1e9), "Longuet-Higgins (1952), law of large N");

/// Amplitude that the largest of some cycles most probably has.
///
///   x = σ √(2 ln N)
///
/// Symbols and source as for StrokeExceedance. It is exceeded with a probability of about 63 %.
/// The law of large N: below the exact mode, by 19 % at N = 2, 4 % at 10, 1.6 % at 50; valid here
/// from N = 10. Exactly, the value that one cycle in N exceeds.
struct MostProbableMaximum {
  static constexpr std::string_view name = "compensator.most_probable_maximum";
  static constexpr std::tuple parameters{argument::heave_deviation,
                                         argument::heave_cycles.valid_in(many_cycles)};

  static Length formula(Length heave_deviation, Number cycles) noexcept {
    return heave_deviation * std::sqrt(2.0 * std::log(to_si(cycles)));
  }
};
inline constexpr Model<MostProbableMaximum> most_probable_maximum{};

/// Mean of the largest amplitude of some cycles, for many of them.
///
///   x = σ (√(2 ln N) + γ_E / √(2 ln N)),   γ_E = 0.57722, Euler's constant
///
/// Symbols and source as for StrokeExceedance. The law of large N: above the exact mean, by
/// 2 % at N = 10, 1 % at 50; valid here from N = 10.
struct ExpectedMaximum {
  static constexpr std::string_view name = "compensator.expected_maximum";
  static constexpr std::tuple parameters{
      argument::heave_deviation,
      Parameter<Number>{"heave_cycles",
                        between(from_si<Number>(2.0), from_si<Number>(1e9), params::guard)}
          .valid_in(many_cycles)};

  static Length formula(Length heave_deviation, Number cycles) noexcept {
    constexpr double euler = 0.577215664901532860606512090082402431;
    const double mode = std::sqrt(2.0 * std::log(to_si(cycles)));
    return heave_deviation * (mode + euler / mode);
  }
};
inline constexpr Model<ExpectedMaximum> expected_maximum{};

/// Mean amplitude of the highest share of all cycles.
///
///   x = σ √2 (√(−ln q) + √π/(2 q) erfc(√(−ln q)))
///
/// q  highest_share    number, 1/3 for the significant amplitude (2.00 σ), 1 for the mean of all
///
/// Other symbols and source as for CycleExceedance.
struct MeanOfHighest {
  static constexpr std::string_view name = "compensator.mean_of_highest";
  static constexpr std::tuple parameters{
      argument::heave_deviation,
      Parameter<Number>{"highest_share", above_up_to(from_si<Number>(0.0), from_si<Number>(1.0),
                                                     params::definition)}};

  static Length formula(Length heave_deviation, Number highest_share) noexcept {
    const double share = to_si(highest_share);
    const double edge = std::sqrt(-std::log(share));
    return std::sqrt(2.0) * heave_deviation *
           (edge + 0.5 * std::sqrt(pi) / share * std::erfc(edge));
  }
};
inline constexpr Model<MeanOfHighest> mean_of_highest{};

}  // namespace ropewalk::compensator
