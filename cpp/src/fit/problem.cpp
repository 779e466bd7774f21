#include "problem.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>
#include <utility>

#include "ropewalk/base/error.hpp"

namespace ropewalk::fit {

namespace {

/// Below this share of its length outside those before it a column has no direction of its own.
constexpr double least_own_share = 1e-9;
/// Newton's decrement at which ℓ has no digit left to gain.
constexpr double small_gain = 1e-11;
constexpr int most_iterations = 200;
/// Least curvature over the largest, or over the rows, in the basis, below which ℓ is flat.
constexpr double flat_curvature = 1e-8;
/// ln of how far σ may lie from the spread of all log lives.
constexpr double farthest_scale = 14.0;

/// What −∂²ℓ must be shifted by to have a Cholesky factor, and that factor.
Eigen::LLT<Matrix> shifted_factor(const Matrix& information, bool& shifted) {
  Eigen::LLT<Matrix> factor(information);
  shifted = factor.info() != Eigen::Success;
  const double size = std::max(information.diagonal().cwiseAbs().maxCoeff(), 1e-8);
  for (double shift = 1e-4; factor.info() != Eigen::Success; shift *= 10.0) {
    factor.compute(information +
                   shift * size * Matrix::Identity(information.rows(), information.cols()));
  }
  return factor;
}

}  // namespace

RowMatrix matrix_of(const std::vector<double>& values, std::size_t rows, std::size_t columns) {
  return Eigen::Map<const RowMatrix>(values.data(), static_cast<Eigen::Index>(rows),
                                     static_cast<Eigen::Index>(columns));
}

Basis::Basis(const RowMatrix& matrix, const char* field)
    : columns(matrix), to_basis(Matrix::Zero(matrix.cols(), matrix.cols())) {
  // Gram and Schmidt, each column twice: then orthogonal to the last digit.
  const double root = std::sqrt(static_cast<double>(matrix.rows()));
  for (Eigen::Index k = 0; k < matrix.cols(); ++k) {
    Vector rest = matrix.col(k);
    const double length = rest.norm();
    for (int pass = 0; pass < 2; ++pass) {
      for (Eigen::Index j = 0; j < k; ++j) {
        const double share = columns.col(j).dot(rest) / static_cast<double>(matrix.rows());
        rest -= share * columns.col(j);
        to_basis(j, k) += share;
      }
    }
    const double own = rest.norm();
    if (!(own > least_own_share * length)) {
      throw InadmissibleError("fit.fit_life", field,
                              "column " + std::to_string(k) + " of " + field +
                                  " is zero or a sum of multiples of the columns before it");
    }
    columns.col(k) = rest * (root / own);
    to_basis(k, k) = own / root;
  }
}

Vector Basis::back(const Vector& coefficients) const {
  return to_basis.triangularView<Eigen::Upper>().solve(coefficients);
}

Vector Basis::project(const Vector& values) const {
  return columns.transpose() * values / static_cast<double>(columns.rows());
}

Problem::Problem(Distribution distribution, Lives rows, Basis location, Basis scale, Vector offset,
                 Vector scale_offset)
    : lives(std::move(rows)),
      distribution_(distribution),
      location_(std::move(location)),
      scale_(std::move(scale)),
      offset_(std::move(offset)),
      scale_offset_(std::move(scale_offset)) {
  const auto [low, high] = std::minmax_element(lives.y.begin(), lives.y.end());
  log_spread_ = *high > *low ? std::log(*high - *low) : 0.0;
}

Problem::Problem(const Table& table)
    : Problem(table.distribution,
              {table.y, table.y_to, table.known, std::vector<double>(table.rows(), 1.0)},
              Basis(matrix_of(table.location, table.rows(), table.location_columns), "location"),
              Basis(matrix_of(table.scale, table.rows(), table.scale_columns), "scale"),
              Vector::Zero(static_cast<Eigen::Index>(table.rows())),
              Vector::Zero(static_cast<Eigen::Index>(table.rows()))) {}

Vector Problem::locations(const Vector& theta) const {
  return location_.columns * theta.head(location_.columns.cols()) + offset_;
}

Vector Problem::log_scales(const Vector& theta) const {
  return scale_.columns * theta.tail(scale_.columns.cols()) + scale_offset_;
}

double Problem::value(const Vector& theta) const {
  const Vector mu = locations(theta);
  const Vector s = log_scales(theta);
  double sum = 0.0;
  for (std::size_t i = 0; i < lives.y.size(); ++i) {
    if (lives.weight[i] == 0.0) continue;
    const auto row = static_cast<Eigen::Index>(i);
    sum += lives.weight[i] *
           row_likelihood(distribution_, lives.known[i], lives.y[i], lives.y_to[i], mu[row], s[row])
               .value;
  }
  return sum;
}

double Problem::derive(const Vector& theta, Vector& gradient, Matrix& hessian) const {
  const Vector mu = locations(theta);
  const Vector s = log_scales(theta);
  const Eigen::Index p = location_.columns.cols();
  const Eigen::Index all = theta.size();
  gradient.setZero(all);
  hessian.setZero(all, all);
  double sum = 0.0;
  for (std::size_t i = 0; i < lives.y.size(); ++i) {
    const double w = lives.weight[i];
    if (w == 0.0) continue;
    const auto row = static_cast<Eigen::Index>(i);
    const RowLikelihood one =
        row_likelihood(distribution_, lives.known[i], lives.y[i], lives.y_to[i], mu[row], s[row]);
    sum += w * one.value;
    const auto part = [&](Eigen::Index k) {
      return k < p ? location_.columns(row, k) : scale_.columns(row, k - p);
    };
    for (Eigen::Index k = 0; k < all; ++k) {
      const double x = w * part(k);
      gradient[k] += x * (k < p ? one.by_mu : one.by_s);
      for (Eigen::Index j = 0; j <= k; ++j) {
        const double curvature = k < p ? one.by_mu_mu : (j < p ? one.by_mu_s : one.by_s_s);
        hessian(k, j) += x * part(j) * curvature;
      }
    }
  }
  hessian.triangularView<Eigen::StrictlyUpper>() = hessian.transpose();
  return sum;
}

Vector Problem::nearest(const Vector& mu, const Vector& s) const {
  Vector theta(location_.columns.cols() + scale_.columns.cols());
  theta << location_.project(mu - offset_), scale_.project(s - scale_offset_);
  return theta;
}

Vector Problem::guess() const {
  const auto rows = static_cast<Eigen::Index>(lives.y.size());
  Vector y(rows);
  for (Eigen::Index i = 0; i < rows; ++i) {
    const auto k = static_cast<std::size_t>(i);
    y[i] = lives.known[k] == Known::between ? 0.5 * (lives.y[k] + lives.y_to[k]) : lives.y[k];
  }
  Vector theta = nearest(y, Vector::Zero(rows));
  const double deviation = (y - locations(theta)).norm() / std::sqrt(static_cast<double>(rows));
  // A line through all points says nothing of σ yet: begin with a share of the spread.
  const double s = std::log(std::max(deviation, 0.05 * std::exp(log_spread_)));
  return nearest(y, Vector::Constant(rows, s));
}

Vector Problem::back(const Vector& theta) const {
  Vector given(theta.size());
  given << location_.back(theta.head(location_.columns.cols())),
      scale_.back(theta.tail(scale_.columns.cols()));
  return given;
}

Matrix Problem::covariance_back(const Matrix& covariance) const {
  Matrix to = Matrix::Zero(covariance.rows(), covariance.cols());
  const Eigen::Index p = location_.columns.cols();
  const Eigen::Index q = scale_.columns.cols();
  if (p > 0) {
    to.topLeftCorner(p, p) =
        location_.to_basis.triangularView<Eigen::Upper>().solve(Matrix::Identity(p, p));
  }
  if (q > 0) {
    to.bottomRightCorner(q, q) =
        scale_.to_basis.triangularView<Eigen::Upper>().solve(Matrix::Identity(q, q));
  }
  return to * covariance * to.transpose();
}

bool Problem::scale_runs_away(const Vector& theta) const {
  const Vector s = log_scales(theta);
  return (s.array() - log_spread_).abs().maxCoeff() > farthest_scale;
}

Problem::Found Problem::maximize(Vector theta) const {
  Found found;
  Vector gradient;
  Matrix hessian;
  double value = derive(theta, gradient, hessian);
  for (found.iterations = 0; found.iterations < most_iterations; ++found.iterations) {
    if (theta.size() == 0) {
      found.end = End::converged;
      break;
    }
    bool shifted = false;
    if (!hessian.allFinite() || !gradient.allFinite()) break;
    const Eigen::LLT<Matrix> factor = shifted_factor(-hessian, shifted);
    const Vector step = factor.solve(gradient);
    const double gain = gradient.dot(step);
    double length = 1.0;
    Vector next = theta + step;
    double next_value = this->value(next);
    // ℓ may lose its last digits to rounding where there is nothing more to gain.
    const double rounding = 1e-14 * (1.0 + std::abs(value));
    for (int halved = 0; halved < 60 && !(next_value >= value + 1e-4 * length * gain - rounding);
         ++halved) {
      length *= 0.5;
      next = theta + length * step;
      next_value = this->value(next);
    }
    if (!(next_value >= value - rounding)) break;
    theta = next;
    value = derive(theta, gradient, hessian);
    if (scale_runs_away(theta)) {
      found.end = End::scale_at_bound;
      break;
    }
    if (!shifted && gain < small_gain) {
      found.end = End::converged;
      break;
    }
  }
  if (found.end == End::converged && theta.size() > 0) {
    const Eigen::SelfAdjointEigenSolver<Matrix> curvature(-hessian, Eigen::EigenvaluesOnly);
    const Vector& values = curvature.eigenvalues();
    // Each row bends ℓ by about 1 in this basis; where nothing has failed it bends nowhere.
    const double rows = std::accumulate(lives.weight.begin(), lives.weight.end(), 0.0);
    const double most = std::max(values.cwiseAbs().maxCoeff(), rows);
    if (!(values.minCoeff() > flat_curvature * most)) found.end = End::flat;
  }
  found.theta = std::move(theta);
  found.value = value;
  found.information = -hessian;
  return found;
}

}  // namespace ropewalk::fit
