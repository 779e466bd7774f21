/// Distributions of log life, and how often a row of a table of lives is as it was found.
///
/// No unit crosses this subject. A life enters as y = ln(N / N_ref), a covariate as a ratio to its
/// own reference or as a logarithm of one: logarithms of quantities mean nothing, and what a column
/// measures differs from table to table, so that its unit cannot be part of a type. Whoever calls
/// divides by the references, where units are checked; `ropewalk.fit` does.
///
/// A row is described by ξ(y; μ, s), with the location μ and s = ln σ:
///
///   Weibull, lognormal, log-logistic   ξ = (y − μ) e^(−s)
///   Birnbaum–Saunders                  ξ = 2 e^(−s) sinh((y − μ)/2),  μ = ln of the median, α =
///   e^s
///
/// and the distribution function G of ξ:
///
///   smallest extreme value   G = 1 − exp(−e^ξ)        Weibull, shape 1/σ, scale e^μ
///   normal                   G = Φ(ξ)                 lognormal; Birnbaum–Saunders
///   logistic                 G = 1 / (1 + e^(−ξ))     log-logistic
///
/// Sources: W. Nelson, Accelerated Testing (1990), ch. 2; W. Q. Meeker and L. A. Escobar,
/// Statistical Methods for Reliability Data (1998), ch. 4 (from memory); Z. W. Birnbaum and
/// S. C. Saunders, J. Appl. Prob. 6 (1969); as a regression J. R. Rieck and J. R. Nedelman,
/// Technometrics 33 (1991) (from memory).
#pragma once

#include <cstdint>
#include <string_view>

namespace ropewalk::fit {

enum class Distribution : std::uint8_t { weibull, lognormal, loglogistic, birnbaum_saunders };

/// The distribution of that name: "weibull", "lognormal", "loglogistic", "birnbaum-saunders".
/// Throws LookupError, which offers them.
[[nodiscard]] Distribution distribution_named(std::string_view name);

/// What is known of the life of a row.
enum class Known : std::uint8_t {
  exactly,  ///< it failed at y
  above,    ///< it had not failed at y: a run-out
  below,    ///< it had failed at y, unseen
  between,  ///< it failed unseen after y and not after y_to
};

/// Log-likelihood of one row on the scale of log life, with derivatives by μ and s.
struct RowLikelihood {
  double value = 0.0;
  double by_mu = 0.0, by_s = 0.0;
  double by_mu_mu = 0.0, by_mu_s = 0.0, by_s_s = 0.0;
};

/// All derivatives are exact. Where a probability is below what a double can hold its logarithm is
/// still right.
[[nodiscard]] RowLikelihood row_likelihood(Distribution distribution, Known known, double y,
                                           double y_to, double mu, double s) noexcept;

/// ln of the probability to live longer than y; its negative is the residual of Cox and Snell.
[[nodiscard]] double log_survival(Distribution distribution, double y, double mu,
                                  double s) noexcept;

/// A quantile of log life, and its derivative by s; that by μ is 1.
struct LogQuantile {
  double y = 0.0;
  double by_s = 0.0;
};

/// `probability` to have failed, within (0, 1).
[[nodiscard]] LogQuantile log_quantile(Distribution distribution, double probability, double mu,
                                       double s);

}  // namespace ropewalk::fit
