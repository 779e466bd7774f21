/// Proof of competence of running ropes by EN 13001-3-2, and the bendings it allows.
///
/// All numbers here are from memory of EN 13001-3-2:2014; check them against the standard before
/// a proof is signed.
#pragma once

#include <algorithm>
#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/fatigue/life_basis.hpp"

namespace ropewalk::fatigue {

/// Number of bendings to which the force history parameter refers, w_D.
inline constexpr double en13001_reference_bendings = 5e5;
/// Resistance factor of the fatigue proof, γ_rf.
inline constexpr double en13001_fatigue_resistance_factor = 7.0;

/// Rope resistance factor of the static proof, γ_rb (EN 13001-3-2).
///
///   γ_rb = max(2.07, 1.35 + 5.0 / ((D/d)^0.8 − 4));   proof: F_Sd,s ≤ F_u / γ_rb
///
/// D/d  bend_ratio  number
///
/// Range: D/d ≥ 11.2, the smallest ratio of the standard. Source: EN 13001-3-2:2014, from memory.
struct En13001StaticFactor {
  static constexpr std::string_view name = "fatigue.en13001_static_factor";
  static constexpr std::tuple parameters{
      Parameter<Number>{"bend_ratio", between(from_si<Number>(5.7), from_si<Number>(10'000.0),
                                              "above the pole of the formula at 4^1.25 = 5.66")}
          .valid_in(between(from_si<Number>(11.2), from_si<Number>(10'000.0), params::en13001))};
  static Number formula(Number bend_ratio) noexcept {
    return std::max(2.07, 1.35 + 5.0 / (std::pow(bend_ratio, 0.8) - 4.0));
  }
};
inline constexpr Model<En13001StaticFactor> en13001_static_factor{};

/// Force history parameter s_r of a rope (EN 13001-3-2).
///
///   s_r = k_r ν_r,   ν_r = w / w_D,   w_D = 5·10⁵
///
/// k_r  force_spectrum_factor  number, Σ (w_i/w) (F_i/F)³ (collective.hpp)
/// w    bending_cycles         number of bendings in the design life
///
/// Source: EN 13001-3-2:2014, from memory.
struct En13001ForceHistory {
  static constexpr std::string_view name = "fatigue.en13001_force_history";
  static constexpr std::tuple parameters{
      Parameter<Number>{"force_spectrum_factor", params::positive_ratio_range},
      params::bending_cycles};
  static constexpr Number formula(Number force_spectrum_factor, Number bending_cycles) noexcept {
    return force_spectrum_factor * bending_cycles / en13001_reference_bendings;
  }
};
inline constexpr Model<En13001ForceHistory> en13001_force_history{};

/// Limit design rope force of the fatigue proof, F_Rd,f (EN 13001-3-2).
///
///   F_Rd,f = F_u f_f / (γ_rf s_r^(1/3)),   γ_rf = 7
///
/// F_u  breaking_force      force, minimum breaking force
/// f_f  further_influences  number, product of the standard's factors f_f1, f_f2, …
/// s_r  force_history       number
///
/// A life that falls with the cube of the force is built in.
/// Range: s_r ≤ 4, the top class. Source: EN 13001-3-2:2014, from memory.
struct En13001FatigueResistance {
  static constexpr std::string_view name = "fatigue.en13001_fatigue_resistance";
  static constexpr std::tuple parameters{params::breaking_force, params::further_influences,
                                         params::force_history};
  static Force formula(Force breaking_force, Number further_influences,
                       Number force_history) noexcept {
    return breaking_force * further_influences /
           (en13001_fatigue_resistance_factor * std::cbrt(force_history));
  }
};
inline constexpr Model<En13001FatigueResistance> en13001_fatigue_resistance{};

/// Utilization of the fatigue proof, F_Sd,f / F_Rd,f (EN 13001-3-2): fulfilled up to 1.
///
/// F_Sd,f  rope_tension  force, design rope force of the fatigue proof
/// the rest as in En13001FatigueResistance
///
/// Source: EN 13001-3-2:2014, from memory.
struct En13001Utilization {
  static constexpr std::string_view name = "fatigue.en13001_utilization";
  static constexpr std::tuple parameters{params::rope_tension, params::breaking_force,
                                         params::further_influences, params::force_history};
  static Number formula(Force rope_tension, Force breaking_force, Number further_influences,
                        Number force_history) noexcept {
    return rope_tension /
           En13001FatigueResistance::formula(breaking_force, further_influences, force_history);
  }
};
inline constexpr Model<En13001Utilization> en13001_utilization{};

/// Bendings the fatigue proof of EN 13001-3-2 allows under a constant force.
///
///   w = w_D (F_u f_f / (γ_rf F))³,   w_D = 5·10⁵, γ_rf = 7
///
/// The proof solved for s_r, with k_r = 1. It is the limit of a proof of competence with its
/// safety in it, not an estimate of a mean life.
/// Range: s_r ≤ 4. Source: EN 13001-3-2:2014, from memory; solved by hand.
struct En13001 : LifeModelFrame {
  static constexpr std::string_view name = "fatigue.En13001";
  static constexpr std::array groups{BendGroup::strength_share};

  explicit En13001(double further_influences);

  double further_influences;

  /// The proof has no logarithm in it, so the life is taken from the group itself.
  template <class X>
  [[nodiscard]] X cycles(const X& strength_share) const {
    const X ratio = (further_influences / en13001_fatigue_resistance_factor) / strength_share;
    return en13001_reference_bendings * (ratio * ratio * ratio);
  }
  [[nodiscard]] std::optional<double> tension_exponent(const BendPoint&) const { return -3.0; }
};

}  // namespace ropewalk::fatigue
