/// Refits of a regression of log life on tables that chance might have given as well.
///
/// By resampling: as many rows as there are, drawn with return. Parametric: the covariates stay,
/// lives are drawn from the fitted model, and a life beyond the limit of its row is a run-out
/// there. Every draw comes from its own counter, so that the refits are the same for any number of
/// threads. Source: B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap (1993);
/// A. C. Davison and D. V. Hinkley, Bootstrap Methods and their Application (1997) (from memory).
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "ropewalk/base/batch.hpp"
#include "ropewalk/fit/regression.hpp"

namespace ropewalk::fit {

struct Refits {
  std::vector<double> parameters;  ///< refits × parameters; NaN where `end` is not `converged`
  std::vector<End> end;
  bool stopped = false;
};

/// Throws InadmissibleError if the maximum did not converge.
[[nodiscard]] Refits refit_resampled(const Table& table, const Maximum& maximum, std::size_t refits,
                                     std::uint64_t seed, int threads = 1,
                                     const StopAsked& stop = {});

/// `limits` is the log life at which each row would have been taken off, infinite if it would have
/// run until it failed. Throws InadmissibleError also if a row is known by an interval, or from
/// below: how it would be looked at next time is not known.
[[nodiscard]] Refits refit_parametric(const Table& table, const Maximum& maximum,
                                      std::span<const double> limits, std::size_t refits,
                                      std::uint64_t seed, int threads = 1,
                                      const StopAsked& stop = {});

}  // namespace ropewalk::fit
