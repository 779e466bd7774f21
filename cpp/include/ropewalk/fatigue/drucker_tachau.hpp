/// Bending life from the bearing-pressure ratio.
#pragma once

#include "ropewalk/fatigue/life_basis.hpp"

namespace ropewalk::fatigue {

/// Bending life as a power of the bearing-pressure ratio (Drucker & Tachau 1945).
///
///   B = 2 F / (d D S_u)
///   N = N1 (B / B1)^m,   m = ln(N2 / N1) / ln(B2 / B1)
///
/// F    rope_tension     force
/// d    rope_diameter    length, nominal
/// D    sheave_diameter  length, tread diameter
/// S_u  wire_strength    stress, ultimate strength of the wire
/// (B1, N1), (B2, N2)    the published points of data table "drucker_tachau_points", 6x19 ropes
///
/// Range: between the points, 0.0014 ≤ B ≤ 0.0028. The published curve is a figure; between the
/// points it is taken as straight on log-log paper, and the same line is drawn on outside when the
/// policy allows it. Bends to failure.
/// Source: D. C. Drucker and H. Tachau, A new design criterion for wire rope, Trans. ASME 67
/// (1945); the points as read from the figure in Faires and in Shigley, see the table.
struct DruckerTachau : LifeModelFrame {
  static constexpr std::string_view name = "fatigue.DruckerTachau";
  static constexpr std::array groups{BendGroup::pressure_ratio};

  explicit DruckerTachau(std::optional<double> scatter = {});

  double ln_coefficient;  ///< ln N at B = 1
  double exponent;        ///< m, negative

  template <class X>
  [[nodiscard]] X ln_cycles(const X& ln_pressure_ratio) const {
    return ln_coefficient + exponent * ln_pressure_ratio;
  }
  [[nodiscard]] std::optional<double> tension_exponent(const BendPoint&) const { return exponent; }
};

}  // namespace ropewalk::fatigue
