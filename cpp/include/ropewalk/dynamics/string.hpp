/// A long string on the line is no rigid mass: force runs through it as a wave.
///
/// One pipe of constant section hangs freely, without drag: tool joints, collars and the fluid are
/// spread over it. The line is a spring without mass.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/dynamics/parameters.hpp"

namespace ropewalk::dynamics {

namespace detail {

/// √(E/ρ), the speed of a wave of tension.
[[nodiscard]] inline double wave_speed(Stress modulus, Density density) noexcept {
  return std::sqrt(to_si(modulus) / to_si(density));
}

}  // namespace detail

/// Force that a sudden change of speed of the upper end puts into the string.
///
///   ΔF = Δv A √(E ρ)
///
/// Δv  speed_change                    of the upper end
/// A   string_area                     section of the steel
/// E   string_modulus,  ρ  string_density
///
/// It lasts until the wave is back from the lower end, WaveReturnTime. The trade's rule for pipe
/// set hard into the slips, ΔF [lbf] = 1780 Δv [ft/s] A [in²], is this with E = 30·10⁶ psi. Source:
/// impedance of a thin rod, e.g. S. Timoshenko, Vibration Problems in Engineering; the rule in H.
/// Rabia, Well Engineering & Construction, casing (from memory).
struct WaveForce {
  static constexpr std::string_view name = "dynamics.wave_force";
  static constexpr std::tuple parameters{argument::speed_change, argument::string_area,
                                         argument::string_modulus, argument::string_density};

  static Force formula(Speed speed_change, Area string_area, Stress string_modulus,
                       Density string_density) noexcept {
    const double root = std::sqrt(to_si(string_modulus) * to_si(string_density));
    return from_si<Force>(to_si(speed_change) * to_si(string_area) * root);
  }
};
inline constexpr Model<WaveForce> wave_force{};

/// Time until a wave of tension is back from the lower end.
///
///   t = 2 L √(ρ/E)
///
/// Symbols and source as for WaveForce.
struct WaveReturnTime {
  static constexpr std::string_view name = "dynamics.wave_return_time";
  static constexpr std::tuple parameters{argument::string_length, argument::string_modulus,
                                         argument::string_density};

  static Time formula(Length string_length, Stress string_modulus,
                      Density string_density) noexcept {
    const double speed = detail::wave_speed(string_modulus, string_density);
    return from_si<Time>(2.0 * to_si(string_length) / speed);
  }
};
inline constexpr Model<WaveReturnTime> wave_return_time{};

/// Natural frequency of block and free-hanging string on the line, by mode.
///
///   k − M ω² = (E A/c) ω tan(ω L/c),   f = ω / (2π),   c = √(E/ρ)
///
/// k  stiffness     of the line
/// M  block_weight  over g: block, hook, top drive
/// L  string_length, and E, A, ρ of the string
/// n  mode          1, 2, 3 …
///
/// Mode n lies between (n − 3/2) c/(2L) and (n − 1/2) c/(2L), from 0 for n = 1. A short string is
/// one mass with the block, NaturalFrequency. Between block and string nothing gives way.
/// Source: rod with a mass and a spring at one end, e.g. S. Timoshenko, Vibration Problems in
/// Engineering, longitudinal vibration of bars; put together here.
struct StringFrequency {
  static constexpr std::string_view name = "dynamics.string_frequency";
  static constexpr std::tuple parameters{
      argument::stiffness,     params::block_weight,     argument::string_area,
      argument::string_length, argument::string_modulus, argument::string_density,
      argument::mode};

  static Frequency formula(Stiffness stiffness, Force block_weight, Area string_area,
                           Length string_length, Stress string_modulus, Density string_density,
                           Number mode) noexcept;
};
inline constexpr Model<StringFrequency> string_frequency{};

}  // namespace ropewalk::dynamics
