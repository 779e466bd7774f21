/// Bending life in the exponents of the lift-rope standard, scaled by a known life.
#pragma once

#include <cmath>

#include "ropewalk/fatigue/life_basis.hpp"

namespace ropewalk::fatigue {

/// Relative bending life in the exponents of EN 81-50, scaled by a life the user knows.
///
///   N = N_ref · 10^(φ(S/d², D/d) − φ(S_ref/d_ref², D_ref/d_ref))
///   φ(x, y) = (b1 + b4 lg y) lg x + b2 lg y
///
/// S  rope_tension     force, N
/// d  rope_diameter    length, mm, nominal
/// D  sheave_diameter  length, mm
/// b1, b2, b4          data table "en81_50_exponents"
///
/// The standard's equation for the safety factor of suspension ropes, solved for the number of
/// bends, has this form: b1 and b4 come from lg(77.09 (D/d)^−2.894), b2 from (D/d)^8.567. Its
/// constant counts equivalent sheaves and is no life, so only ratios of lives can be taken from
/// it. The standard knows tension as a share of the breaking force, F_min/S; with S/d² instead,
/// F_min/d² = 10^2.6834 = 482.4 N/mm² stands for the rope.
/// Range: D/d ≥ 40, the least the lift standard allows, for lift ropes on traction sheaves.
/// Source: EN 81-50:2014, 5.12 (exponents from memory); recast by hand.
struct En81 : LifeModelFrame {
  static constexpr std::string_view name = "fatigue.En81";
  static constexpr std::array groups{BendGroup::specific_tension, BendGroup::bend_ratio};

  explicit En81(const ReferenceLife& reference, std::optional<double> scatter = {});

  double b1, b2, b4;
  ReferenceLife reference;
  double ln_offset;  ///< ln N_ref minus the form at the reference

  template <class X>
  [[nodiscard]] X ln_cycles(const X& ln_tension, const X& ln_ratio) const {
    return ln_offset + form<X>(ln_tension, ln_ratio);
  }
  /// d lg N / d lg S = b1 + b4 lg(D/d).
  [[nodiscard]] std::optional<double> tension_exponent(const BendPoint& p) const {
    return b1 + b4 * std::log10(GroupFormula<BendGroup::bend_ratio>::value(p));
  }

 private:
  template <class X>
  [[nodiscard]] X form(const X& ln_tension, const X& ln_ratio) const {
    return (b1 + (b4 / detail::ln10) * ln_ratio) * ln_tension + b2 * ln_ratio;
  }
};

}  // namespace ropewalk::fatigue
