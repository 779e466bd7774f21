/// Relative bending life against D/d, scaled by a known life.
#pragma once

#include <cmath>
#include <limits>

#include "ropewalk/fatigue/life_basis.hpp"

namespace ropewalk::fatigue {

/// Relative bending life from a handbook table over D/d, scaled by a life the user knows.
///
///   N = N_ref · L(D/d) / L(D_ref/d_ref) · (S / S_ref)^(−m)
///
/// L  relative life, data table "relative_bending_life", seven points, straight between them on
///    log-log paper
/// S  rope_tension        force
/// m  tension_exponent    number by the user; the table says nothing of tension
///
/// Range: 12 ≤ D/d ≤ 30; without an exponent the tension must be the reference tension. Outside
/// D/d the first or last straight line is drawn on when the policy allows it.
/// Source: a block maker's handbook page on sheave diameter and rope life, see the table.
struct HandbookRelativeLife : LifeModelFrame {
  static constexpr std::string_view name = "fatigue.HandbookRelativeLife";
  static constexpr std::array groups{BendGroup::bend_ratio, BendGroup::rope_tension};

  explicit HandbookRelativeLife(const ReferenceLife& reference,
                                std::optional<double> user_tension_exponent = {},
                                std::optional<double> scatter = {});

  ReferenceLife reference;
  std::optional<double> user_tension_exponent;
  double ln_offset;  ///< ln N_ref minus the form at the reference

  template <class X>
  [[nodiscard]] X ln_cycles(const X& ln_ratio, const X& ln_tension) const {
    X ln_life = ln_offset + form<X>(ln_ratio);
    if (user_tension_exponent) ln_life = ln_life - *user_tension_exponent * ln_tension;
    return ln_life;
  }
  /// −m; none if the user gave none.
  [[nodiscard]] std::optional<double> tension_exponent(const BendPoint&) const {
    if (!user_tension_exponent) return std::nullopt;
    return -*user_tension_exponent;
  }

 private:
  static constexpr std::size_t points = 7;

  /// A broken line as its first straight plus, from each inner point on, the change of slope: the
  /// same curve as interpolation between the points, without a search for the interval.
  template <class X>
  [[nodiscard]] X form(const X& ln_ratio) const {
    using std::abs;
    X ln_life = first_ln_life_ + first_slope_ * (ln_ratio - ln_knots_[0]);
    for (std::size_t i = 1; i + 1 < points; ++i) {
      // max(0, t) = (t + |t|) / 2
      const X beyond = ln_ratio - ln_knots_[i];
      ln_life = ln_life + half_slope_changes_[i] * (beyond + abs(beyond));
    }
    return ln_life;
  }

  std::array<double, points> ln_knots_{};
  std::array<double, points> half_slope_changes_{};
  double first_ln_life_ = 0.0;
  double first_slope_ = 0.0;
};

}  // namespace ropewalk::fatigue
