#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string>
#include <vector>

#include "fit_examples.hpp"
#include "ropewalk/base/error.hpp"
#include "ropewalk/fit/bootstrap.hpp"

namespace ropewalk::fit {
namespace {

constexpr Distribution all_distributions[] = {Distribution::weibull, Distribution::lognormal,
                                              Distribution::loglogistic,
                                              Distribution::birnbaum_saunders};
constexpr Known all_known[] = {Known::exactly, Known::above, Known::below, Known::between};

/// Central difference of fourth order.
template <class F>
double slope(const F& f, double x, double h) {
  return (8.0 * (f(x + h) - f(x - h)) - (f(x + 2.0 * h) - f(x - 2.0 * h))) / (12.0 * h);
}

TEST(FitDistribution, DerivativesAreThoseOfTheValue) {
  for (const Distribution distribution : all_distributions) {
    for (const Known known : all_known) {
      for (const double y : {-3.0, -0.4, 0.9, 2.5}) {
        for (const double s : {-0.7, 0.2}) {
          const double mu = 0.3;
          const auto at = [&](double m, double t) {
            return row_likelihood(distribution, known, y, y + 0.6, m, t);
          };
          const RowLikelihood one = at(mu, s);
          const double h = 1e-3;
          const auto near = [](double found, double expected) {
            EXPECT_NEAR(found, expected, 1e-8 * (1.0 + std::abs(expected)));
          };
          near(one.by_mu, slope([&](double m) { return at(m, s).value; }, mu, h));
          near(one.by_s, slope([&](double t) { return at(mu, t).value; }, s, h));
          near(one.by_mu_mu, slope([&](double m) { return at(m, s).by_mu; }, mu, h));
          near(one.by_mu_s, slope([&](double t) { return at(mu, t).by_mu; }, s, h));
          near(one.by_mu_s, slope([&](double m) { return at(m, s).by_s; }, mu, h));
          near(one.by_s_s, slope([&](double t) { return at(mu, t).by_s; }, s, h));
        }
      }
    }
  }
}

TEST(FitDistribution, AboveBelowAndBetweenAddUpToOne) {
  for (const Distribution distribution : all_distributions) {
    for (const double y : {-2.0, 0.0, 1.5}) {
      const auto p = [&](Known known) {
        return std::exp(row_likelihood(distribution, known, y, y + 0.4, 0.2, -0.1).value);
      };
      const double later = std::exp(log_survival(distribution, y + 0.4, 0.2, -0.1));
      EXPECT_NEAR(p(Known::above) + p(Known::below), 1.0, 1e-14);
      EXPECT_NEAR(p(Known::below) + p(Known::between) + later, 1.0, 1e-14);
    }
  }
}

TEST(FitDistribution, ANarrowIntervalIsADensity) {
  const double width = 1e-6;
  for (const Distribution distribution : all_distributions) {
    for (const double y : {-2.0, 0.0, 1.5}) {
      const double between =
          row_likelihood(distribution, Known::between, y, y + width, 0.2, -0.1).value;
      const double density =
          row_likelihood(distribution, Known::exactly, y + 0.5 * width, 0.0, 0.2, -0.1).value;
      EXPECT_NEAR(between - std::log(width), density, 1e-8);
    }
  }
}

TEST(FitDistribution, TailsStayRightWhereProbabilitiesVanish) {
  // ln(1 − Φ(40)): Abramowitz and Stegun 26.2.13, −x²/2 − ln(x √(2π)) + ln(1 − 1/x² + 3/x⁴).
  const double x = 40.0;
  const double tail = -0.5 * x * x - std::log(x * std::sqrt(2.0 * std::numbers::pi)) +
                      std::log1p(-1.0 / (x * x) + 3.0 / std::pow(x, 4.0));
  EXPECT_NEAR(log_survival(Distribution::lognormal, x, 0.0, 0.0), tail, 1e-8);
  for (const Known known : all_known) {
    for (const Distribution distribution : all_distributions) {
      // Weibull dies too fast for more.
      for (const double y : {-30.0, -9.0, distribution == Distribution::weibull ? 6.0 : 30.0}) {
        if (distribution == Distribution::birnbaum_saunders && std::abs(y) > 10.0) continue;
        const RowLikelihood one = row_likelihood(distribution, known, y, y + 0.5, 0.0, 0.0);
        EXPECT_TRUE(std::isfinite(one.value) && std::isfinite(one.by_mu) &&
                    std::isfinite(one.by_s_s))
            << static_cast<int>(distribution) << ' ' << static_cast<int>(known) << ' ' << y;
      }
    }
  }
}

TEST(FitDistribution, QuantilesAreWhereThatShareHasFailed) {
  for (const Distribution distribution : all_distributions) {
    for (const double share : {1e-6, 0.1, 0.5, 0.99}) {
      const LogQuantile q = log_quantile(distribution, share, 1.2, -0.4);
      EXPECT_NEAR(-std::expm1(log_survival(distribution, q.y, 1.2, -0.4)), share, 1e-12);
      const double by_s =
          slope([&](double s) { return log_quantile(distribution, share, 1.2, s).y; }, -0.4, 1e-3);
      EXPECT_NEAR(q.by_s, by_s, 1e-9);
    }
  }
  EXPECT_THROW((void)log_quantile(Distribution::weibull, 1.0, 0.0, 0.0), InadmissibleError);
  EXPECT_THROW((void)distribution_named("gumbel"), LookupError);
}

TEST(FitRegression, GradientAndHessianOfATable) {
  Table table = superalloy_table(100.0, true);
  table.known[3] = Known::below;
  table.known[7] = Known::between;
  table.y_to[7] = table.y[7] + 0.2;
  const std::vector<double> theta{3.5, -7.0, 8.0, -0.8, -1.0};
  const Likelihood at = log_likelihood(table, theta);
  for (std::size_t k = 0; k < theta.size(); ++k) {
    const auto moved = [&](double value) {
      std::vector<double> there = theta;
      there[k] = value;
      return log_likelihood(table, there);
    };
    EXPECT_NEAR(at.gradient[k], slope([&](double v) { return moved(v).value; }, theta[k], 1e-3),
                1e-6);
    for (std::size_t j = 0; j < theta.size(); ++j) {
      EXPECT_NEAR(at.hessian[k * theta.size() + j],
                  slope([&](double v) { return moved(v).gradient[j]; }, theta[k], 1e-3), 1e-5);
    }
  }
}

TEST(FitRegression, SuperalloyAsPublished) {
  // Meeker and Escobar, Statistical Methods for Reliability Data (1998), ex. 17.5 (from memory).
  const Maximum constant = maximize(superalloy_table(1.0));
  ASSERT_EQ(constant.end, End::converged);
  EXPECT_NEAR(constant.parameters[0], 217.61, 0.005);
  EXPECT_NEAR(constant.parameters[1], -85.52, 0.005);
  EXPECT_NEAR(constant.parameters[2], 8.483, 0.0005);
  EXPECT_NEAR(std::exp(constant.parameters[3]), 0.375, 0.0005);
  const Maximum linear = maximize(superalloy_table(1.0, true));
  ASSERT_EQ(linear.end, End::converged);
  const double published[] = {243.168, -96.524, 9.665, 4.467, -1.176};
  for (std::size_t k = 0; k < 5; ++k) EXPECT_NEAR(linear.parameters[k], published[k], 0.0005);
}

TEST(FitRegression, TheReferenceOfACovariateDoesNotMatter) {
  for (const Distribution distribution : all_distributions) {
    const Maximum far = maximize(superalloy_table(1.0, false, distribution));
    const Maximum near = maximize(superalloy_table(100.0, false, distribution));
    ASSERT_EQ(far.end, End::converged);
    EXPECT_NEAR(far.log_likelihood, near.log_likelihood, 1e-9);
    EXPECT_NEAR(far.parameters[2], near.parameters[2], 1e-6);
    EXPECT_NEAR(far.parameters[3], near.parameters[3], 1e-8);
    EXPECT_NEAR(far.covariance[10], near.covariance[10], 1e-5 * near.covariance[10]);
  }
}

TEST(FitRegression, LognormalWithoutRunOutsIsLeastSquares) {
  const std::vector<double> y{0.3, 1.1, 0.8, 2.0, 1.7};
  const Maximum found = maximize(sample(Distribution::lognormal, y));
  double mean = 0.0;
  for (const double one : y) mean += one / 5.0;
  double variance = 0.0;
  for (const double one : y) variance += (one - mean) * (one - mean) / 5.0;
  ASSERT_EQ(found.end, End::converged);
  EXPECT_NEAR(found.parameters[0], mean, 1e-12);
  EXPECT_NEAR(found.parameters[1], 0.5 * std::log(variance), 1e-10);
  // Observed information at the maximum: n/σ² and 2n, no cross term.
  EXPECT_NEAR(found.covariance[0], variance / 5.0, 1e-10);
  EXPECT_NEAR(found.covariance[3], 0.1, 1e-10);
  EXPECT_NEAR(found.covariance[1], 0.0, 1e-10);
}

TEST(FitRegression, EndsThatAreNoMaximumAreTold) {
  // One life only, over and over: the scatter runs to zero.
  EXPECT_EQ(maximize(sample(Distribution::weibull, {1.0, 1.0, 1.0})).end, End::scale_at_bound);
  // A group of which nothing has failed: its life runs away.
  Table table = sample(Distribution::weibull, {0.2, 0.9, 0.5, 1.0, 1.1, 1.2});
  table.location = {1, 0, 1, 0, 1, 0, 1, 1, 1, 1, 1, 1};
  table.location_columns = 2;
  for (std::size_t i = 3; i < 6; ++i) table.known[i] = Known::above;
  const Maximum found = maximize(table);
  EXPECT_EQ(found.end, End::flat);
  EXPECT_TRUE(found.covariance.empty());
  EXPECT_THROW((void)profile_interval(table, found, 0, 0.95), InadmissibleError);
  EXPECT_THROW((void)refit_resampled(table, found, 10, 1), InadmissibleError);
}

TEST(FitRegression, RefusesWhatCannotBe) {
  const auto refused = [](const Table& table, const std::string& field) {
    try {
      (void)maximize(table);
      ADD_FAILURE() << "not refused: " << field;
    } catch (const InadmissibleError& error) {
      EXPECT_EQ(error.field(), field);
    }
  };
  const Table good = superalloy_table(100.0);
  Table bad = good;
  bad.y[4] = std::numeric_limits<double>::quiet_NaN();
  refused(bad, "life");
  bad = good;
  std::fill(bad.known.begin(), bad.known.end(), Known::above);
  refused(bad, "censored");
  bad = good;
  bad.known[0] = Known::between;
  refused(bad, "life_to");
  bad = good;
  for (std::size_t i = 0; i < bad.rows(); ++i) bad.location[3 * i + 2] = 2.0 * bad.location[3 * i];
  refused(bad, "location");
  bad = good;
  bad.scale[0] = std::numeric_limits<double>::infinity();
  refused(bad, "scale");
  refused(Table{}, "life");
}

TEST(FitProfile, TheLikelihoodHasFallenByTheQuantileAtBothEnds) {
  const Table table = sample(Distribution::lognormal, {0.3, 1.1, 0.8, 2.0, 1.7});
  const Maximum found = maximize(table);
  // For the mean of a normal sample: n ln(1 + (m − ȳ)²/σ²) = χ², in closed form.
  const double chi = 3.841458820694124;  // 95 % of χ² with 1 degree, printed in every table
  const double reach = std::exp(found.parameters[1]) * std::sqrt(std::expm1(chi / 5.0));
  const ProfileInterval mean = profile_interval(table, found, 0, 0.95);
  EXPECT_NEAR(mean.low, found.parameters[0] - reach, 1e-7);
  EXPECT_NEAR(mean.high, found.parameters[0] + reach, 1e-7);
}

TEST(FitBootstrap, TheSameForAnyNumberOfThreads) {
  const Table table = superalloy_table(100.0);
  const Maximum found = maximize(table);
  const std::vector<double> limits(table.rows(), std::log(250.0));
  const Refits drawn = refit_resampled(table, found, 300, 7, 1);
  const Refits made = refit_parametric(table, found, limits, 300, 7, 1);
  for (const int threads : {2, 5}) {
    EXPECT_EQ(refit_resampled(table, found, 300, 7, threads).parameters, drawn.parameters);
    EXPECT_EQ(refit_parametric(table, found, limits, 300, 7, threads).parameters, made.parameters);
  }
  EXPECT_NE(refit_resampled(table, found, 300, 8, 1).parameters, drawn.parameters);
  EXPECT_EQ(std::count(made.end.begin(), made.end.end(), End::converged), 300);
  EXPECT_TRUE(refit_resampled(table, found, 300, 7, 1, [] { return true; }).stopped);
}

TEST(FitBootstrap, ParametricRefitsScatterAsTheInformationSays) {
  // 200 lives: large enough that both agree within a few per cent.
  std::vector<double> y;
  for (int i = 0; i < 200; ++i) {
    y.push_back(log_quantile(Distribution::weibull, (i + 0.5) / 200.0, 2.0, -0.5).y);
  }
  const Table table = sample(Distribution::weibull, y);
  const Maximum found = maximize(table);
  const std::vector<double> limits(200, std::numeric_limits<double>::infinity());
  const Refits refits = refit_parametric(table, found, limits, 4000, 3, 1);
  for (std::size_t k = 0; k < 2; ++k) {
    double sum = 0.0;
    double squares = 0.0;
    for (std::size_t r = 0; r < 4000; ++r) {
      const double away = refits.parameters[2 * r + k] - found.parameters[k];
      sum += away / 4000.0;
      squares += away * away / 4000.0;
    }
    const double deviation = std::sqrt(squares - sum * sum);
    EXPECT_NEAR(deviation / std::sqrt(found.covariance[3 * k]), 1.0, 0.06);
  }
}

TEST(FitBootstrap, IntervalsAreResampledOnly) {
  Table table = superalloy_table(100.0);
  table.known[5] = Known::below;
  const Maximum found = maximize(table);
  ASSERT_EQ(found.end, End::converged);
  const std::vector<double> limits(table.rows(), 9.0);
  EXPECT_THROW((void)refit_parametric(table, found, limits, 10, 1), InadmissibleError);
  EXPECT_EQ(refit_resampled(table, found, 10, 1).end.size(), 10U);
}

}  // namespace
}  // namespace ropewalk::fit
