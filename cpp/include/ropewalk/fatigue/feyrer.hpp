/// Bending life by Feyrer's regression, in the forms of both editions of his book.
///
/// The naming trap: b3 is not the same constant in the two editions. In the first it goes with
/// lg d, and the product of tension and D/d has b4; in the second, size has the factor f_d and the
/// product is called b3. Constants go with the form they were fitted in.
///
/// No constants are bundled: the tables of the book hold them per rope construction and per end of
/// life, and the user enters those of the edition at hand.
#pragma once

#include <cmath>

#include "ropewalk/fatigue/life_basis.hpp"

namespace ropewalk::fatigue {

/// Wire strength to which the constants refer, N/mm².
inline constexpr double feyrer_reference_strength = 1770.0;

/// The eight numbers of the first-edition form, by their names in the book.
struct FeyrerConstants {
  double b0, b1, b2, b3, b4, b5;
};

/// Bending life by Feyrer's equation, form of the first edition (2007).
///
///   lg N = b0 + (b1 + b4 lg(D/d)) (lg(S/d²) − 0.4 lg(R0/1770)) + b2 lg(D/d) + b3 lg d
///          + 1 / (b5 + lg(l/d))
///
/// S   rope_tension     force, N
/// d   rope_diameter    length, mm, nominal
/// D   sheave_diameter  length, mm
/// R0  wire_strength    stress, N/mm², nominal strength of the wires
/// l   bend_length      length of the rope piece bent under the highest tension
/// b0 … b5              constants of the rope construction and of the end of life (`basis`)
///
/// b3 belongs to the size here, b4 to the product of tension and D/d.
/// Range (test base of the book, from memory): 10 ≤ D/d ≤ 63, 8 ≤ d ≤ 44 mm,
/// 40 ≤ S/d² ≤ 500 N/mm², l/d ≥ 10, 1370 ≤ R0 ≤ 2160 N/mm²; lubricated, steel groove r = 0.53 d,
/// no side deflection, no twist.
/// Source: K. Feyrer, Wire Ropes: Tension, Endurance, Reliability, 1st ed. (2007), form from
/// memory.
struct FeyrerForm : LifeModelFrame {
  static constexpr std::string_view name = "fatigue.FeyrerForm";
  static constexpr std::array groups{BendGroup::specific_tension, BendGroup::bend_ratio,
                                     BendGroup::rope_diameter, BendGroup::wire_strength,
                                     BendGroup::bend_length_ratio};

  FeyrerForm(const FeyrerConstants& constants, Basis basis, std::optional<double> scatter = {});

  FeyrerConstants b;

  template <class X>
  [[nodiscard]] X ln_cycles(const X& ln_tension, const X& ln_ratio, const X& ln_diameter,
                            const X& ln_strength, const X& ln_length) const {
    // Natural logarithms throughout: lg x = ln x / ln 10, multiplied out.
    using detail::ln10;
    const double ln_reference = std::log(feyrer_reference_strength);
    return ln10 * b.b0 +
           (b.b1 + (b.b4 / ln10) * ln_ratio) * (ln_tension - 0.4 * (ln_strength - ln_reference)) +
           b.b2 * ln_ratio + b.b3 * ln_diameter + ln10 / (b.b5 + ln_length / ln10);
  }
  /// d lg N / d lg S = b1 + b4 lg(D/d).
  [[nodiscard]] std::optional<double> tension_exponent(const BendPoint& p) const {
    return b.b1 + b.b4 * std::log10(GroupFormula<BendGroup::bend_ratio>::value(p));
  }
};

/// The constants of the second-edition form, by their names in the book.
struct FeyrerSecondConstants {
  double b0, b1, b2, b3;
};

/// Bending life by Feyrer's equation, form of the second edition (2015).
///
///   lg N = b0 + (b1 + b3 lg(D/d)) (lg(S/d²) − 0.4 lg(R0/1770)) + b2 lg(D/d)
///          + lg f_d + lg f_L + lg f_C
///
/// f_d, f_L   size_factor and length_factor (feyrer_factors.hpp)
/// f_C        core_factor, by core and number of strands (Table 3.14a)
/// the rest as in FeyrerForm, except that b3 belongs to the product of tension and D/d here.
///
/// Range: as FeyrerForm.
/// Source: K. Feyrer, Wire Ropes, 2nd ed. (2015), eqs. 3.55 and 3.85; the form put together from
/// Table 3.14a (factors) and eq. 3.93b (which coefficients the tension has).
struct FeyrerSecondEdition : LifeModelFrame {
  static constexpr std::string_view name = "fatigue.FeyrerSecondEdition";
  static constexpr std::array groups{BendGroup::specific_tension, BendGroup::bend_ratio,
                                     BendGroup::wire_strength, BendGroup::size_effect,
                                     BendGroup::length_effect};

  FeyrerSecondEdition(const FeyrerSecondConstants& constants, double core_factor, Basis basis,
                      std::optional<double> scatter = {});

  FeyrerSecondConstants b;
  double core_factor;

  template <class X>
  [[nodiscard]] X ln_cycles(const X& ln_tension, const X& ln_ratio, const X& ln_strength,
                            const X& ln_size_factor, const X& ln_length_factor) const {
    using detail::ln10;
    const double ln_reference = std::log(feyrer_reference_strength);
    return ln10 * b.b0 + std::log(core_factor) +
           (b.b1 + (b.b3 / ln10) * ln_ratio) * (ln_tension - 0.4 * (ln_strength - ln_reference)) +
           b.b2 * ln_ratio + ln_size_factor + ln_length_factor;
  }
  /// d lg N / d lg S = b1 + b3 lg(D/d).
  [[nodiscard]] std::optional<double> tension_exponent(const BendPoint& p) const {
    return b.b1 + b.b3 * std::log10(GroupFormula<BendGroup::bend_ratio>::value(p));
  }
};

}  // namespace ropewalk::fatigue
