/// Wave spectra of a sea state: Pierson–Moskowitz, JONSWAP, and the periods that go with them.
#pragma once

#include <algorithm>
#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/compensator/parameters.hpp"

namespace ropewalk::compensator {

/// Spectrum of a fully developed sea, Pierson and Moskowitz, by height and peak period.
///
///   S = 5/16 H_s² ω_p⁴ ω⁻⁵ exp(−5/4 (ω_p/ω)⁴),   ω_p = 2 π / T_p
///
/// H_s  significant_height  length
/// T_p  peak_period         time
/// ω    wave_frequency      angular velocity
///
/// One-sided; its integral is H_s²/16. Range: wind sea, deep water.
/// Source: W. J. Pierson and L. Moskowitz, J. Geophys. Res. 69 (1964), in the form of
/// DNV-RP-C205, 3.5.5.
struct PiersonMoskowitz {
  static constexpr std::string_view name = "compensator.pierson_moskowitz";
  static constexpr std::tuple parameters{argument::significant_height, argument::peak_period,
                                         argument::wave_frequency};

  static SpectralDensity formula(Length significant_height, Time peak_period,
                                 AngularVelocity wave_frequency) noexcept {
    const double peak = 2.0 * pi / to_si(peak_period);
    const double ratio = peak / to_si(wave_frequency);
    const double fourth = ratio * ratio * ratio * ratio;
    const double height = to_si(significant_height);
    return from_si<SpectralDensity>(5.0 / 16.0 * height * height * fourth * ratio / peak *
                                    std::exp(-1.25 * fourth));
  }
};
inline constexpr Model<PiersonMoskowitz> pierson_moskowitz{};

/// What keeps the height of a JONSWAP sea when its peak is raised.
///
///   A_γ = 1 − 0.287 ln γ
///
/// γ  peak_factor  number, 1 ≤ γ ≤ 7
///
/// A fit: the integral of the spectrum is H_s²/16 to about 0.3 %. Source: DNV-RP-C205, 3.5.5.
struct JonswapNormalizer {
  static constexpr std::string_view name = "compensator.jonswap_normalizer";
  static constexpr std::tuple parameters{argument::peak_factor};

  static Number formula(Number factor) noexcept {
    return from_si<Number>(1.0 - 0.287 * std::log(to_si(factor)));
  }
};
inline constexpr Model<JonswapNormalizer> jonswap_normalizer{};

/// Spectrum of a sea that is still growing, JONSWAP.
///
///   S = A_γ S_PM γ^exp(−½ ((ω − ω_p) / (σ ω_p))²),   σ = 0.07 for ω ≤ ω_p, else 0.09
///
/// γ  peak_factor  number; 1 gives Pierson–Moskowitz, 3.3 is the mean of the measured seas
///
/// Other symbols as for PiersonMoskowitz, A_γ as JonswapNormalizer has it. Range: 1 ≤ γ ≤ 7;
/// a good model for 3.6 < T_p/√H_s < 5 (s, m), to be used with caution outside.
/// Source: K. Hasselmann et al., Dtsch. Hydrogr. Z. A8 (12) (1973); DNV-RP-C205, 3.5.5.
struct Jonswap {
  static constexpr std::string_view name = "compensator.jonswap";
  static constexpr std::tuple parameters{argument::significant_height, argument::peak_period,
                                         argument::peak_factor, argument::wave_frequency};

  static SpectralDensity formula(Length significant_height, Time peak_period, Number factor,
                                 AngularVelocity wave_frequency) noexcept {
    const double relative = to_si(wave_frequency) * to_si(peak_period) / (2.0 * pi);
    const double width = relative <= 1.0 ? 0.07 : 0.09;
    const double off = (relative - 1.0) / width;
    const double raised = std::pow(to_si(factor), std::exp(-0.5 * off * off));
    return JonswapNormalizer::formula(factor) * raised *
           PiersonMoskowitz::formula(significant_height, peak_period, wave_frequency);
  }
};
inline constexpr Model<Jonswap> jonswap{};

/// Peak factor of a sea by its steepness.
///
///   γ = exp(5.75 − 1.15 T_p/√H_s), but 5 for T_p/√H_s ≤ 3.6, and 1 from 5 on   (s, m)
///
/// Symbols as for Jonswap. Where no value is known for the place. The exponential is 5.003 at 3.6:
/// a step that nobody sees. Source: DNV-RP-C205, 3.5.5.
struct PeakFactor {
  static constexpr std::string_view name = "compensator.peak_factor";
  static constexpr std::tuple parameters{argument::significant_height, argument::peak_period};

  static Number formula(Length significant_height, Time peak_period) noexcept {
    const double ratio = to_si(peak_period) / std::sqrt(to_si(significant_height));
    if (ratio <= 3.6) return from_si<Number>(5.0);
    if (ratio >= 5.0) return from_si<Number>(1.0);
    return from_si<Number>(std::exp(5.75 - 1.15 * ratio));
  }
};
inline constexpr Model<PeakFactor> peak_factor{};

/// Zero-crossing over peak period of a JONSWAP sea.
///
///   T_z/T_p = 0.6673 + 0.05037 γ − 0.006230 γ² + 0.0003341 γ³
///
/// γ  peak_factor  number, 1 ≤ γ ≤ 7
///
/// A fit to the integrals: 0.7118 at γ = 1, where (1.25 π)^(−1/4) = 0.7104 is exact.
/// Source: DNV-RP-C205, 3.5.5.
struct ZeroCrossingRatio {
  static constexpr std::string_view name = "compensator.zero_crossing_ratio";
  static constexpr std::tuple parameters{argument::peak_factor};

  static Number formula(Number factor) noexcept {
    const double g = to_si(factor);
    return from_si<Number>(0.6673 + g * (0.05037 + g * (-0.006230 + g * 0.0003341)));
  }
};
inline constexpr Model<ZeroCrossingRatio> zero_crossing_ratio{};

/// Mean over peak period of a JONSWAP sea.
///
///   T_1/T_p = 0.7303 + 0.04936 γ − 0.006556 γ² + 0.0003610 γ³
///
/// Symbols, range and source as for ZeroCrossingRatio; T_1 = 2 π m₀/m₁. At γ = 1
/// 1/(1.25^(1/4) Γ(3/4)) = 0.7718 is exact, the fit 0.7735.
struct MeanPeriodRatio {
  static constexpr std::string_view name = "compensator.mean_period_ratio";
  static constexpr std::tuple parameters{argument::peak_factor};

  static Number formula(Number factor) noexcept {
    const double g = to_si(factor);
    return from_si<Number>(0.7303 + g * (0.04936 + g * (-0.006556 + g * 0.0003610)));
  }
};
inline constexpr Model<MeanPeriodRatio> mean_period_ratio{};

/// Significant height of the steepest sea of a peak period that is found.
///
///   H_s = S_p g T_p² / (2 π),   S_p = 1/15 for T_p ≤ 8 s, 1/25 from 15 s on, straight between
///
/// Other symbols as for PiersonMoskowitz. Higher seas of that period break.
/// Source (from memory): DNV-RP-C205, limiting values of average steepness, 3.5.4.
struct SteepestHeight {
  static constexpr std::string_view name = "compensator.steepest_height";
  static constexpr std::tuple parameters{argument::peak_period};

  static Length formula(Time peak_period) noexcept {
    const double period = to_si(peak_period);
    const double along = std::clamp((period - 8.0) / 7.0, 0.0, 1.0);
    const double steepness = 1.0 / 15.0 + along * (1.0 / 25.0 - 1.0 / 15.0);
    return steepness / (2.0 * pi) * standard_gravity * peak_period * peak_period;
  }
};
inline constexpr Model<SteepestHeight> steepest_height{};

}  // namespace ropewalk::compensator
