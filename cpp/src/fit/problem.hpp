/// A regression ready to be maximized. Private to the library: what this subject does with Eigen.
#pragma once

#include <Eigen/Dense>
#include <vector>

#include "ropewalk/fit/regression.hpp"

namespace ropewalk::fit {

using Vector = Eigen::VectorXd;
using Matrix = Eigen::MatrixXd;
using RowMatrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// Columns as an orthonormal basis times √rows, and the way back: columns·b = basis·(to_basis·b).
struct Basis {
  RowMatrix columns;
  Matrix to_basis;  ///< upper triangular

  /// Throws InadmissibleError if a column depends on those before it; `field` names the matrix.
  Basis(const RowMatrix& matrix, const char* field);

  [[nodiscard]] Vector back(const Vector& coefficients) const;
  /// Coefficients of what of `values` lies in the basis.
  [[nodiscard]] Vector project(const Vector& values) const;
};

/// Rows with what is known of them.
struct Lives {
  std::vector<double> y;
  std::vector<double> y_to;
  std::vector<Known> known;
  std::vector<double> weight;  ///< rows of weight 0 are left out
};

/// ℓ over parameters in the basis; offsets hold what is not to be fitted.
class Problem {
 public:
  Problem(Distribution distribution, Lives lives, Basis location, Basis scale, Vector offset,
          Vector scale_offset);
  explicit Problem(const Table& table);

  [[nodiscard]] double value(const Vector& theta) const;
  /// ℓ with gradient and Hessian.
  double derive(const Vector& theta, Vector& gradient, Matrix& hessian) const;

  /// A first guess by least squares, a run-out taken as a failure.
  [[nodiscard]] Vector guess() const;
  /// Parameters that come nearest to these locations and ln σ of the rows.
  [[nodiscard]] Vector nearest(const Vector& mu, const Vector& s) const;
  [[nodiscard]] Vector locations(const Vector& theta) const;
  [[nodiscard]] Vector log_scales(const Vector& theta) const;

  /// Parameters of the columns as they were given.
  [[nodiscard]] Vector back(const Vector& theta) const;
  [[nodiscard]] Matrix covariance_back(const Matrix& covariance) const;

  struct Found {
    Vector theta;
    double value = 0.0;
    End end = End::iterations;
    int iterations = 0;
    Matrix information;
  };
  [[nodiscard]] Found maximize(Vector theta) const;

  /// To be changed by whoever refits; as many rows as there were.
  Lives lives;

 private:
  [[nodiscard]] bool scale_runs_away(const Vector& theta) const;

  Distribution distribution_;
  Basis location_;
  Basis scale_;
  Vector offset_;
  Vector scale_offset_;
  double log_spread_ = 0.0;
};

[[nodiscard]] RowMatrix matrix_of(const std::vector<double>& values, std::size_t rows,
                                  std::size_t columns);

}  // namespace ropewalk::fit
