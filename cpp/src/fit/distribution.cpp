#include "ropewalk/fit/distribution.hpp"

#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <numbers>
#include <string>

#include "ropewalk/base/error.hpp"

namespace ropewalk::fit {

namespace {

/// A logarithm and its first two derivatives by ξ.
struct Curve {
  double value;
  double first;
  double second;
};

enum class Base : std::uint8_t { extreme, normal, logistic };

Base base_of(Distribution distribution) noexcept {
  if (distribution == Distribution::weibull) return Base::extreme;
  return distribution == Distribution::loglogistic ? Base::logistic : Base::normal;
}

double log_normal_density(double x) noexcept {
  return -0.5 * x * x - 0.5 * std::log(2.0 * std::numbers::pi);
}

/// ln(1 − Φ(x)): the complementary error function, and beyond its reach the continued fraction of
/// Laplace, which also gives hazard less x without cancellation.
Curve log_normal_tail(double x) noexcept {
  if (x < 5.0) {
    const double tail = 0.5 * std::erfc(x / std::numbers::sqrt2);
    const double hazard = std::exp(log_normal_density(x)) / tail;
    return {std::log(tail), -hazard, -hazard * (hazard - x)};
  }
  double excess = 0.0;
  for (int k = 60; k >= 1; --k) excess = k / (x + excess);
  const double hazard = x + excess;
  return {log_normal_density(x) - std::log(hazard), -hazard, -hazard * excess};
}

double logistic(double x) noexcept {
  return x >= 0.0 ? 1.0 / (1.0 + std::exp(-x)) : std::exp(x) / (1.0 + std::exp(x));
}

/// ln(1 + e^x) that does not overflow.
double softplus(double x) noexcept {
  return x > 0.0 ? x + std::log1p(std::exp(-x)) : std::log1p(std::exp(x));
}

Curve log_density(Base base, double x) noexcept {
  switch (base) {
    case Base::extreme: {
      const double w = std::exp(x);
      return {x - w, 1.0 - w, -w};
    }
    case Base::normal:
      return {log_normal_density(x), -x, -1.0};
    case Base::logistic:
      break;
  }
  const double g = logistic(x);
  return {x - 2.0 * softplus(x), 1.0 - 2.0 * g, -2.0 * g * logistic(-x)};
}

Curve log_above(Base base, double x) noexcept {
  switch (base) {
    case Base::extreme: {
      const double w = std::exp(x);
      return {-w, -w, -w};
    }
    case Base::normal:
      return log_normal_tail(x);
    case Base::logistic:
      break;
  }
  const double g = logistic(x);
  return {-softplus(x), -g, -g * logistic(-x)};
}

Curve log_below(Base base, double x) noexcept {
  switch (base) {
    case Base::extreme: {
      // Beyond these w = e^x leaves the range of a double.
      if (x < -700.0) return {x, 1.0, 0.0};
      if (x > 700.0) return {0.0, 0.0, 0.0};
      const double w = std::exp(x);
      const double ratio = w / std::expm1(w);
      return {std::log(-std::expm1(-w)), ratio, ratio * (1.0 - w - ratio)};
    }
    case Base::normal: {
      const Curve mirrored = log_normal_tail(-x);
      return {mirrored.value, -mirrored.first, mirrored.second};
    }
    case Base::logistic:
      break;
  }
  const double g = logistic(-x);
  return {-softplus(-x), g, -g * logistic(x)};
}

/// ξ and ln(dξ/dy), each with its derivatives by μ and s.
struct Standard {
  double x;
  double mu, s;
  double mu_mu, mu_s, s_s;
  double log_slope;  // its derivative by s is −1, exactly, and the mixed one 0
  double log_slope_mu, log_slope_mu_mu;
};

Standard standardize(Distribution distribution, double y, double mu, double s) noexcept {
  const double scale = std::exp(-s);
  if (distribution != Distribution::birnbaum_saunders) {
    const double x = (y - mu) * scale;
    return {x, -scale, -x, 0.0, scale, x, -s, 0.0, 0.0};
  }
  const double half = 0.5 * (y - mu);
  const double x = 2.0 * scale * std::sinh(half);
  const double slope = scale * std::cosh(half);
  const double t = std::tanh(half);
  // ln cosh without overflow.
  const double log_cosh =
      std::abs(half) + std::log1p(std::exp(-2.0 * std::abs(half))) - std::numbers::ln2;
  return {x, -slope, -x, 0.25 * x, slope, x, log_cosh - s, -0.5 * t, 0.25 * (1.0 - t * t)};
}

/// ln(G(b) − G(a)), taken on the side where both are small.
double log_difference(Base base, double a, double b) noexcept {
  const double upper_a = log_above(base, a).value;
  if (upper_a < -std::numbers::ln2) {
    const double upper_b = log_above(base, b).value;
    return upper_a + std::log(-std::expm1(upper_b - upper_a));
  }
  const double lower_a = log_below(base, a).value;
  const double lower_b = log_below(base, b).value;
  return lower_b + std::log(-std::expm1(lower_a - lower_b));
}

RowLikelihood chained(const Curve& curve, const Standard& x) noexcept {
  return {.value = curve.value,
          .by_mu = curve.first * x.mu,
          .by_s = curve.first * x.s,
          .by_mu_mu = curve.second * x.mu * x.mu + curve.first * x.mu_mu,
          .by_mu_s = curve.second * x.mu * x.s + curve.first * x.mu_s,
          .by_s_s = curve.second * x.s * x.s + curve.first * x.s_s};
}

RowLikelihood between(Distribution distribution, double y, double y_to, double mu,
                      double s) noexcept {
  const Base base = base_of(distribution);
  const Standard a = standardize(distribution, y, mu, s);
  const Standard b = standardize(distribution, y_to, mu, s);
  const double log_p = log_difference(base, a.x, b.x);
  const Curve density_a = log_density(base, a.x);
  const Curve density_b = log_density(base, b.x);
  const double p_a = -std::exp(density_a.value - log_p);
  const double p_b = std::exp(density_b.value - log_p);
  // Second derivatives of ln p by ξ_a and ξ_b.
  const double aa = p_a * density_a.first - p_a * p_a;
  const double bb = p_b * density_b.first - p_b * p_b;
  const double ab = -p_a * p_b;
  const auto second = [&](double a1, double a2, double b1, double b2, double a12, double b12) {
    return aa * a1 * a2 + bb * b1 * b2 + ab * (a1 * b2 + a2 * b1) + p_a * a12 + p_b * b12;
  };
  return {.value = log_p,
          .by_mu = p_a * a.mu + p_b * b.mu,
          .by_s = p_a * a.s + p_b * b.s,
          .by_mu_mu = second(a.mu, a.mu, b.mu, b.mu, a.mu_mu, b.mu_mu),
          .by_mu_s = second(a.mu, a.s, b.mu, b.s, a.mu_s, b.mu_s),
          .by_s_s = second(a.s, a.s, b.s, b.s, a.s_s, b.s_s)};
}

}  // namespace

Distribution distribution_named(std::string_view name) {
  if (name == "weibull") return Distribution::weibull;
  if (name == "lognormal") return Distribution::lognormal;
  if (name == "loglogistic") return Distribution::loglogistic;
  if (name == "birnbaum-saunders") return Distribution::birnbaum_saunders;
  throw LookupError("fit.fit_life", "distribution",
                    "distribution '" + std::string(name) +
                        "' is unknown; there are weibull, lognormal, loglogistic and "
                        "birnbaum-saunders");
}

RowLikelihood row_likelihood(Distribution distribution, Known known, double y, double y_to,
                             double mu, double s) noexcept {
  if (known == Known::between) return between(distribution, y, y_to, mu, s);
  const Base base = base_of(distribution);
  const Standard x = standardize(distribution, y, mu, s);
  if (known == Known::above) return chained(log_above(base, x.x), x);
  if (known == Known::below) return chained(log_below(base, x.x), x);
  RowLikelihood row = chained(log_density(base, x.x), x);
  row.value += x.log_slope;
  row.by_mu += x.log_slope_mu;
  row.by_s -= 1.0;
  row.by_mu_mu += x.log_slope_mu_mu;
  return row;
}

double log_survival(Distribution distribution, double y, double mu, double s) noexcept {
  return log_above(base_of(distribution), standardize(distribution, y, mu, s).x).value;
}

LogQuantile log_quantile(Distribution distribution, double probability, double mu, double s) {
  if (!(probability > 0.0 && probability < 1.0)) {
    throw InadmissibleError(
        "fit.quantile", "probability",
        "probability = " + std::to_string(probability) + " is outside (0, 1) (definition)");
  }
  double x = 0.0;
  switch (base_of(distribution)) {
    case Base::extreme:
      x = std::log(-std::log1p(-probability));
      break;
    case Base::normal:
      x = -std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * probability);
      break;
    case Base::logistic:
      x = std::log(probability) - std::log1p(-probability);
      break;
  }
  const double scale = std::exp(s);
  if (distribution != Distribution::birnbaum_saunders) return {mu + scale * x, scale * x};
  const double half = 0.5 * scale * x;
  return {mu + 2.0 * std::asinh(half), 2.0 * half / std::hypot(1.0, half)};
}

}  // namespace ropewalk::fit
