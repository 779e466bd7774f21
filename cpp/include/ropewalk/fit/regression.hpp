/// Maximum likelihood of a regression of log life with censored rows.
///
///   ℓ(θ) = Σ w_i ln L_i,   μ_i = x_i·β,   ln σ_i = v_i·γ,   θ = (β, γ)
///
/// with ln L_i of fit/distribution.hpp: the density of y = ln(N/N_ref) of a row that failed there,
/// the probability of its interval else. Neither x nor v gets a constant column by itself.
///
/// Newton's method in an orthonormal basis of the columns, so that powers of one covariate do no
/// harm; where −∂²ℓ is not positive definite it is shifted until it is, and a step is halved until
/// ℓ grows enough (Armijo). The covariance of θ is the inverse of the observed information.
///
/// Why plain numbers: see fit/distribution.hpp. Sources: Nelson, Accelerated Testing (1990), ch. 5;
/// Meeker and Escobar (1998), ch. 17 (from memory); J. Nocedal and S. J. Wright, Numerical
/// Optimization (2006), ch. 3 (from memory).
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "ropewalk/fit/distribution.hpp"

namespace ropewalk::fit {

/// Lives and covariates, all numbers without unit. Matrices are stored row by row.
struct Table {
  Distribution distribution = Distribution::weibull;
  std::vector<double> y;     ///< ln of life over its reference
  std::vector<double> y_to;  ///< where the interval of a row ends; only looked at if `between`
  std::vector<Known> known;
  std::vector<double> location;  ///< rows × location_columns
  std::size_t location_columns = 0;
  std::vector<double> scale;  ///< rows × scale_columns
  std::size_t scale_columns = 0;

  [[nodiscard]] std::size_t rows() const noexcept { return y.size(); }
  [[nodiscard]] std::size_t parameters() const noexcept { return location_columns + scale_columns; }
};

/// Throws InadmissibleError, naming column and row, unless sizes fit, all numbers are finite,
/// intervals rise, some row has failed, and no column is a sum of multiples of those before it.
void check(const Table& table);

/// ℓ on the scale of log life, its gradient and its Hessian (row by row).
struct Likelihood {
  double value = 0.0;
  std::vector<double> gradient;
  std::vector<double> hessian;
};
[[nodiscard]] Likelihood log_likelihood(const Table& table, std::span<const double> parameters);

/// How the search for the maximum ended.
enum class End : std::uint8_t {
  converged,
  iterations,      ///< no maximum after the most iterations there are
  flat,            ///< ℓ does not fall in some direction: parameters run away, or are too many
  scale_at_bound,  ///< σ runs to 0 or without limit
};

struct Maximum {
  std::vector<double> parameters;
  std::vector<double> covariance;  ///< row by row; empty unless converged
  double log_likelihood = 0.0;
  End end = End::iterations;
  int iterations = 0;
};

/// Throws what check() throws.
[[nodiscard]] Maximum maximize(const Table& table);

/// Likelihood-ratio interval of one parameter; an end is infinite where ℓ does not fall far enough.
struct ProfileInterval {
  double low = 0.0;
  double high = 0.0;
};

/// All values v for which 2(ℓ(θ̂) − max ℓ with θ_k = v) stays below the quantile of χ² with one
/// degree of freedom. Throws InadmissibleError if the maximum did not converge, `parameter` is none
/// or `confidence` is not within (0, 1).
[[nodiscard]] ProfileInterval profile_interval(const Table& table, const Maximum& maximum,
                                               std::size_t parameter, double confidence);

}  // namespace ropewalk::fit
