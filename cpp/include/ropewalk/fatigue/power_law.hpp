/// Bending life from a fitted power of the bearing-pressure ratio.
#pragma once

#include <cmath>

#include "ropewalk/fatigue/life_basis.hpp"

namespace ropewalk::fatigue {

/// Two-constant life law of the bearing pressure, constants by the user (the form of Drucker &
/// Tachau 1945).
///
///   N = A (p / R0)^(−m),   p = 2 F / (d D)
///
/// F   rope_tension     force
/// d   rope_diameter    length, nominal
/// D   sheave_diameter  length, tread diameter
/// R0  wire_strength    stress, nominal strength of the wire
/// A   scale            number of cycles the line has at p = R0
/// m   exponent         number, positive
///
/// Range: the p/R0 over which the user fitted the constants, if given; else none is checked.
struct PowerLaw : LifeModelFrame {
  static constexpr std::string_view name = "fatigue.PowerLaw";
  static constexpr std::array groups{BendGroup::pressure_ratio};

  struct PressureRange {
    double low;
    double high;
  };

  PowerLaw(double scale, double exponent, Basis basis, std::optional<double> scatter = {},
           std::optional<PressureRange> fitted_over = {});

  double scale;
  double exponent;

  template <class X>
  [[nodiscard]] X ln_cycles(const X& ln_pressure_ratio) const {
    return std::log(scale) - exponent * ln_pressure_ratio;
  }
  [[nodiscard]] std::optional<double> tension_exponent(const BendPoint&) const { return -exponent; }
};

}  // namespace ropewalk::fatigue
