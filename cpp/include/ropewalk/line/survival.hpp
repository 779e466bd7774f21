/// Probability that no place of a line has passed its discard life.
///
/// Lives scatter: the damage at which a place must be discarded is lognormal with median 1 and
/// standard deviation s of its natural logarithm. Within a *section* of stated length places live
/// or die together; sections are independent. With D_k the largest damage in section k,
///
///   P = Π_k Φ(−ln(D_k / D_lim) / s)
///
/// D_lim limit: share of its life that a place may use; 1 is discard
/// s     standard deviation of ln N; ln 10 times that of lg N
/// Φ     standard normal distribution
///
/// Source: lognormal lives and their scatter, Feyrer, Wire Ropes (Springer, 2nd ed. 2015), ch. 3;
/// the product is that of a chain of independent links (Weibull, A Statistical Theory of the
/// Strength of Materials, 1939). The length over which lives go together is the user's: none is
/// published.
#pragma once

#include <cstdint>
#include <span>

#include "ropewalk/base/batch.hpp"

namespace ropewalk::line {

struct Scatter {
  double ln_deviation = 0.0;  ///< s; 0: every place lives exactly its median life
  double section = 1.0;       ///< length of a section, m, laid from position 0
  double limit = 1.0;         ///< D_lim
};

/// Closed form, from the mean damage of bins of one length. Throws InadmissibleError.
[[nodiscard]] double survival(std::span<const double> damage, double bin_length,
                              const Scatter& scatter);

/// The same as a share of sampled lines; every sample has its own random numbers, so that the
/// answer does not depend on the number of threads. Throws InadmissibleError.
[[nodiscard]] double sampled_survival(std::span<const double> damage, double bin_length,
                                      const Scatter& scatter, std::size_t samples,
                                      std::uint64_t seed, int threads = 1,
                                      const StopAsked& stop = {});

}  // namespace ropewalk::line
