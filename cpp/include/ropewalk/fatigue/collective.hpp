/// Many tensions in one life: load collectives, equivalent forces and the damage sum.
#pragma once

#include <span>

namespace ropewalk::fatigue {

/// Equivalent force of a load collective, relative to the reference force (Feyrer).
///
///   k = (Σ u_i k_i^(−p))^(−1/p),   Σ u_i = 1
///
/// u_i  shares        of all cycles; numbers of cycles do as well, they are divided by their sum
/// k_i  force_ratios  S_i/S_0, not negative
/// p    exponent      d lg N / d lg S, below 0; b1 + b4 lg(D/d) in the first-edition form
///
/// A rope under the constant force k S_0 lives as long as under the collective.
/// Source: Feyrer, Wire Ropes, 2nd ed. (2015), eqs. 3.92 and 3.93.
[[nodiscard]] double equivalent_force_ratio(std::span<const double> shares,
                                            std::span<const double> force_ratios, double exponent);

/// Rope force spectrum factor k_r (EN 13001-3-2).
///
///   k_r = Σ (w_i / w) (F_i / F)³
///
/// w_i  shares        numbers of bendings, or their shares
/// F_i/F  force_ratios  relative to the design rope force, 0 … 1
///
/// Source: EN 13001-3-2:2014, from memory.
[[nodiscard]] double force_spectrum_factor(std::span<const double> shares,
                                           std::span<const double> force_ratios);

/// Damage sum (Palmgren 1924, Miner 1945).
///
///   D = Σ n_i / N_i
///
/// n_i  counts  cycles run at level i, not negative
/// N_i  lives   cycles the rope bears at level i, above 0
///
/// Discard or failure, whichever N_i counts to, is expected at D = 1.
[[nodiscard]] double miner_sum(std::span<const double> counts, std::span<const double> lives);

/// Life under a collective by the damage sum (Feyrer, Wire Ropes, 2nd ed., eq. 3.92).
///
///   N = 1 / Σ (u_i / N_i)
[[nodiscard]] double collective_life(std::span<const double> shares, std::span<const double> lives);

}  // namespace ropewalk::fatigue
