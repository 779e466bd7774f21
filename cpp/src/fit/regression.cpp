#include "ropewalk/fit/regression.hpp"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <limits>
#include <string>

#include "problem.hpp"
#include "ropewalk/base/error.hpp"

namespace ropewalk::fit {

namespace {

constexpr const char* where = "fit.fit_life";

void check_matrix(const std::vector<double>& values, std::size_t rows, std::size_t columns,
                  const char* field) {
  if (values.size() != rows * columns) {
    throw InadmissibleError(where, field,
                            std::string(field) + " must have " + std::to_string(rows) +
                                " rows and " + std::to_string(columns) + " columns");
  }
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (std::isfinite(values[i])) continue;
    throw InadmissibleError(where, field,
                            "row " + std::to_string(i / columns) + ", column " +
                                std::to_string(i % columns) + " of " + field + " is not finite");
  }
}

std::vector<double> vector_of(const Vector& values) { return {values.begin(), values.end()}; }

std::vector<double> rows_of(const Matrix& matrix) {
  const RowMatrix by_rows = matrix;
  return {by_rows.data(), by_rows.data() + by_rows.size()};
}

RowMatrix without(const RowMatrix& matrix, Eigen::Index column) {
  RowMatrix rest(matrix.rows(), matrix.cols() - 1);
  rest << matrix.leftCols(column), matrix.rightCols(matrix.cols() - 1 - column);
  return rest;
}

/// The regression with one parameter held.
class Held {
 public:
  Held(const Table& table, const Maximum& maximum, std::size_t parameter)
      : table_(&table),
        parameter_(static_cast<Eigen::Index>(parameter)),
        location_(matrix_of(table.location, table.rows(), table.location_columns)),
        scale_(matrix_of(table.scale, table.rows(), table.scale_columns)) {
    const Eigen::Map<const Vector> theta(maximum.parameters.data(),
                                         static_cast<Eigen::Index>(maximum.parameters.size()));
    mu_ = location_ * theta.head(location_.cols());
    s_ = scale_ * theta.tail(scale_.cols());
  }

  /// max ℓ with the parameter at `value`.
  [[nodiscard]] double operator()(double value) const {
    const bool in_location = parameter_ < location_.cols();
    const Vector none = Vector::Zero(location_.rows());
    const Problem problem(
        table_->distribution,
        {table_->y, table_->y_to, table_->known, std::vector<double>(table_->rows(), 1.0)},
        Basis(in_location ? without(location_, parameter_) : location_, "location"),
        Basis(in_location ? scale_ : without(scale_, parameter_ - location_.cols()), "scale"),
        in_location ? Vector(value * location_.col(parameter_)) : none,
        in_location ? none : Vector(value * scale_.col(parameter_ - location_.cols())));
    return problem.maximize(problem.nearest(mu_, s_)).value;
  }

 private:
  const Table* table_;
  Eigen::Index parameter_;
  RowMatrix location_;
  RowMatrix scale_;
  Vector mu_;
  Vector s_;
};

}  // namespace

void check(const Table& table) {
  const std::size_t rows = table.rows();
  if (rows == 0) throw InadmissibleError(where, "life", "there is no row");
  if (table.known.size() != rows || table.y_to.size() != rows) {
    throw InadmissibleError(where, "censored", "there must be one entry for each life");
  }
  if (table.location_columns == 0 || table.scale_columns == 0) {
    throw InadmissibleError(where, "location", "location and scale need a column each");
  }
  bool failed = false;
  for (std::size_t i = 0; i < rows; ++i) {
    if (!std::isfinite(table.y[i])) {
      throw InadmissibleError(where, "life", "row " + std::to_string(i) + ": life is not finite");
    }
    if (table.known[i] == Known::between &&
        !(std::isfinite(table.y_to[i]) && table.y_to[i] > table.y[i])) {
      throw InadmissibleError(
          where, "life_to",
          "row " + std::to_string(i) + ": the interval of a life must end after it begins");
    }
    failed = failed || table.known[i] != Known::above;
  }
  if (!failed) throw InadmissibleError(where, "censored", "no row has failed: nothing to fit");
  check_matrix(table.location, rows, table.location_columns, "location");
  check_matrix(table.scale, rows, table.scale_columns, "scale");
  (void)Basis(matrix_of(table.location, rows, table.location_columns), "location");
  (void)Basis(matrix_of(table.scale, rows, table.scale_columns), "scale");
}

Likelihood log_likelihood(const Table& table, std::span<const double> parameters) {
  check(table);
  if (parameters.size() != table.parameters()) {
    throw InadmissibleError(where, "parameters",
                            "there must be " + std::to_string(table.parameters()) +
                                " parameters, got " + std::to_string(parameters.size()));
  }
  Likelihood sum;
  const std::size_t p = table.location_columns;
  const std::size_t all = table.parameters();
  sum.gradient.assign(all, 0.0);
  sum.hessian.assign(all * all, 0.0);
  for (std::size_t i = 0; i < table.rows(); ++i) {
    const auto part = [&](std::size_t k) {
      return k < p ? table.location[i * p + k] : table.scale[i * table.scale_columns + k - p];
    };
    double mu = 0.0;
    double s = 0.0;
    for (std::size_t k = 0; k < all; ++k) (k < p ? mu : s) += part(k) * parameters[k];
    const RowLikelihood one =
        row_likelihood(table.distribution, table.known[i], table.y[i], table.y_to[i], mu, s);
    sum.value += one.value;
    for (std::size_t k = 0; k < all; ++k) {
      sum.gradient[k] += part(k) * (k < p ? one.by_mu : one.by_s);
      for (std::size_t j = 0; j < all; ++j) {
        const double curvature = k < p && j < p     ? one.by_mu_mu
                                 : k >= p && j >= p ? one.by_s_s
                                                    : one.by_mu_s;
        sum.hessian[k * all + j] += part(k) * part(j) * curvature;
      }
    }
  }
  return sum;
}

Maximum maximize(const Table& table) {
  check(table);
  const Problem problem(table);
  const Problem::Found found = problem.maximize(problem.guess());
  Maximum maximum{.parameters = vector_of(problem.back(found.theta)),
                  .covariance = {},
                  .log_likelihood = found.value,
                  .end = found.end,
                  .iterations = found.iterations};
  if (found.end == End::converged) {
    const Matrix inverse = found.information.llt().solve(
        Matrix::Identity(found.information.rows(), found.information.cols()));
    maximum.covariance = rows_of(problem.covariance_back(inverse));
  }
  return maximum;
}

ProfileInterval profile_interval(const Table& table, const Maximum& maximum, std::size_t parameter,
                                 double confidence) {
  check(table);
  if (maximum.end != End::converged) {
    throw InadmissibleError(where, "maximum", "the fit has not converged: no interval");
  }
  const std::size_t count = table.parameters();
  if (maximum.parameters.size() != count || maximum.covariance.size() != count * count) {
    throw InadmissibleError(where, "maximum", "the maximum is of another table");
  }
  if (parameter >= count) {
    throw InadmissibleError(where, "parameter", "there is no such parameter");
  }
  if (!(confidence > 0.0 && confidence < 1.0)) {
    throw InadmissibleError(where, "confidence", "confidence must be within (0, 1)");
  }
  const double fall = 0.5 * boost::math::quantile(boost::math::chi_squared(1.0), confidence);
  const double best = maximum.parameters[parameter];
  const double error = std::sqrt(maximum.covariance[parameter * count + parameter]);
  const Held held(table, maximum, parameter);
  const auto above = [&](double value) { return held(value) - (maximum.log_likelihood - fall); };
  const auto end = [&](double direction) {
    double inner = best;
    double outer = best + direction * error * std::sqrt(2.0 * fall);
    double at_inner = fall;
    double at_outer = above(outer);
    for (int doubled = 0; doubled < 12 && !(at_outer <= 0.0); ++doubled) {
      inner = outer;
      at_inner = at_outer;
      outer = best + 2.0 * (outer - best);
      at_outer = above(outer);
    }
    if (!(at_outer <= 0.0)) return direction * std::numeric_limits<double>::infinity();
    std::uintmax_t steps = 100;
    const bool rising = inner < outer;
    const auto bracket = boost::math::tools::toms748_solve(
        above, rising ? inner : outer, rising ? outer : inner, rising ? at_inner : at_outer,
        rising ? at_outer : at_inner, boost::math::tools::eps_tolerance<double>(36), steps);
    return 0.5 * (bracket.first + bracket.second);
  };
  return {.low = end(-1.0), .high = end(1.0)};
}

}  // namespace ropewalk::fit
