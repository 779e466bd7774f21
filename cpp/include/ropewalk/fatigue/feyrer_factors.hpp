/// Factors on bending life for rope diameter, bending length, side deflection and reverse bending.
#pragma once

#include <algorithm>
#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/fatigue/parameters.hpp"

namespace ropewalk::fatigue {

/// Rope diameter factor f_d on bending life (Feyrer).
///
///   f_d = 0.52 / (−0.48 + (d / 16 mm)^0.3)
///
/// d  rope_diameter  length, nominal
///
/// Equal to 1 at d = 16 mm. The formula has a pole at d = 1.39 mm.
/// Range: 8 mm ≤ d ≤ 44 mm (test base, from memory).
/// Source: Feyrer, Wire Ropes: Tension, Endurance, Reliability, 2nd ed. (2015), Table 3.14a. The
/// minus sign is confirmed by f_d(16 mm) = 1.
struct SizeFactor {
  static constexpr std::string_view name = "fatigue.size_factor";
  static constexpr std::tuple parameters{
      Parameter<Length>{"rope_diameter", between(1.4 * millimeter, 1000.0 * millimeter,
                                                 "above the pole of the formula at 1.39 mm")}
          .valid_in(between(8.0 * millimeter, 44.0 * millimeter, params::feyrer_tests))};
  static Number formula(Length rope_diameter) noexcept {
    const double size = rope_diameter / (16.0 * millimeter);
    return 0.52 / (-0.48 + std::pow(size, 0.3));
  }
};
inline constexpr Model<SizeFactor> size_factor{};

/// Bending length factor f_L on bending life (Feyrer): a longer piece holds a weaker place.
///
///   f_L = 1.49 / (2.49 − ((l/d − 2.5) / 57.5)^(−0.14))
///
/// l/d  bend_length_ratio  number, length of rope bent under the highest tension over its diameter
///
/// Equal to 1 at l/d = 60. The formula has a pole at l/d = 2.585.
/// Range: l/d ≥ 10 (test base, from memory).
/// Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.14a. The minus signs are confirmed by
/// f_L(60) = 1.
struct LengthFactor {
  static constexpr std::string_view name = "fatigue.length_factor";
  static constexpr std::tuple parameters{
      Parameter<Number>{params::bend_length_ratio.name,
                        between(from_si<Number>(2.6), from_si<Number>(1e7),
                                "above the pole of the formula at 2.585")}
          .valid_in(between(from_si<Number>(10.0), from_si<Number>(1e7), params::feyrer_tests))};
  static Number formula(Number bend_length_ratio) noexcept {
    const double length = (bend_length_ratio - 2.5) / 57.5;
    return 1.49 / (2.49 - std::pow(length, -0.14));
  }
};
inline constexpr Model<LengthFactor> length_factor{};

/// Side deflection factor f_N2 on bending life (Schönherr 2005, Neumann 1987).
///
///   f_N2 = 1 − (0.00863 + 0.00243 D/d) θ − 0.00103 θ²
///
/// D/d  bend_ratio   number
/// θ    fleet_angle  angle between rope and sheave plane; the fit takes it in degrees
///
/// Equal to 1 without deflection; falls with the angle and, faster, with D/d. The source prints no
/// range with it; a deflection at which nothing is left of the life is refused.
/// Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.15, line f_N2.
struct FleetAngleFactor {
  static constexpr std::string_view name = "fatigue.fleet_angle_factor";
  static constexpr std::tuple parameters{
      params::bend_ratio,
      Parameter<Angle>{"fleet_angle", between(0.0 * degree, 10.0 * degree, params::guard)}};
  static constexpr std::string_view joint_rule =
      "fleet_angle is so large for this bend_ratio that the fit leaves no life (the factor must "
      "be above 0)";

  static constexpr bool joint(Number bend_ratio, Angle fleet_angle) noexcept {
    return formula(bend_ratio, fleet_angle) > 0.0;
  }
  static constexpr Number formula(Number bend_ratio, Angle fleet_angle) noexcept {
    const double theta = fleet_angle / degree;
    return 1.0 - (0.00863 + 0.00243 * bend_ratio) * theta - 0.00103 * theta * theta;
  }
};
inline constexpr Model<FleetAngleFactor> fleet_angle_factor{};

/// Cycles of reverse bending that do the harm of a number of cycles of simple bending (Feyrer).
///
///   N_rev = min(N_sim, a0 N_sim^a1 (D/d)^a2),   a0 = 9.026, a1 = 0.618, a2 = 0.424
///
/// N_sim  simple_bending_cycles  number, life in simple bending
/// D/d    bend_ratio             number
///
/// Below about 10⁴ cycles the fitted power alone would give more than N_sim, which reverse
/// bending cannot: the result is capped there.
/// Source: Feyrer, Wire Ropes, eq. 3.61; the three constants from memory.
struct ReverseBendingCycles {
  static constexpr std::string_view name = "fatigue.reverse_bending_cycles";
  static constexpr std::tuple parameters{
      params::bending_cycles.named("simple_bending_cycles"),
      params::bend_ratio.valid_in(
          between(from_si<Number>(10.0), from_si<Number>(63.0), params::feyrer_tests))};
  static Number formula(Number simple_bending_cycles, Number bend_ratio) noexcept {
    const double power =
        9.026 * std::pow(simple_bending_cycles, 0.618) * std::pow(bend_ratio, 0.424);
    return std::min(simple_bending_cycles.value(), power);
  }
};
inline constexpr Model<ReverseBendingCycles> reverse_bending_cycles{};

}  // namespace ropewalk::fatigue
