/// Heave response of a ship-shaped vessel in closed form.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/compensator/parameters.hpp"

namespace ropewalk::compensator {

namespace argument {
inline constexpr Interval hull_range = above_up_to(0.0 * meter, 500.0 * meter, params::guard);
inline constexpr Parameter<Length> hull_length{"hull_length", hull_range};
inline constexpr Parameter<Length> hull_beam{"hull_beam", hull_range};
inline constexpr Parameter<Length> hull_draft{"hull_draft", hull_range};
/// Of the waves against the bow: 0 following, 90° beam, 180° head seas.
inline constexpr Parameter<Angle> heading{"heading",
                                          between(0.0 * degree, 360.0 * degree, params::geometry)};
}  // namespace argument

/// Heave amplitude of a box-shaped hull at rest over wave amplitude, Jensen, Mansour and Olsen.
///
///   |η_3/a| = η κ f sin(s)/s,   s = k_e L/2,   k_e = k |cos β|,   k = 4 π² / (g T²)
///   κ = exp(−k_e D)
///   A = 2 sin(k B/2) exp(−k D)
///   f = √((1 − k D)² + (A²/(k B))²)
///   η = 1 / √((1 − 2 k D)² + (A²/(k B))²)
///
/// L  hull_length  length;  B  hull_beam  length;  D  hull_draft  length, block coefficient 1
/// T  wave_period  time
/// β  heading      angle, 180° in head seas
///
/// Range: conventional mono-hulls, no forward speed here, deep water. An estimate for design: the
/// tested response of the vessel comes first. In beam seas κ = 1, and short waves move the box by
/// half their amplitude, which is too much.
/// Source (from memory): J. J. Jensen, A. E. Mansour and A. S. Olsen, Estimation of ship motions
/// using closed-form expressions, Ocean Engineering 31 (2004), 61–85.
struct BoxHullHeave {
  static constexpr std::string_view name = "compensator.box_hull_heave";
  static constexpr std::tuple parameters{argument::hull_length, argument::hull_beam,
                                         argument::hull_draft, argument::heading,
                                         argument::wave_period};

  /// A²/(k B): what the waves the hull sends out take from its motion, k in rad/m.
  static double damping(double wave_number, Length hull_beam, Length hull_draft) noexcept {
    const double beam = wave_number * to_si(hull_beam);
    const double sent = 2.0 * std::sin(0.5 * beam) * std::exp(-wave_number * to_si(hull_draft));
    return sent * sent / beam;
  }

  static Number formula(Length hull_length, Length hull_beam, Length hull_draft, Angle heading,
                        Time wave_period) noexcept {
    const double omega = 2.0 * pi / to_si(wave_period);
    const double k = omega * omega / to_si(standard_gravity);
    const double along = k * std::abs(std::cos(in_radians(heading)));
    const double draft = k * to_si(hull_draft);
    const double radiated = damping(k, hull_beam, hull_draft);
    const double half = 0.5 * along * to_si(hull_length);
    const double averaged = half < 1e-8 ? 1.0 : std::sin(half) / half;
    const double smith = std::exp(-along * to_si(hull_draft));
    return from_si<Number>(std::abs(averaged) * smith * std::hypot(1.0 - draft, radiated) /
                           std::hypot(1.0 - 2.0 * draft, radiated));
  }
};
inline constexpr Model<BoxHullHeave> box_hull_heave{};

}  // namespace ropewalk::compensator
