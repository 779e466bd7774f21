#include "ropewalk/fit/bootstrap.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include "problem.hpp"
#include "ropewalk/base/error.hpp"

namespace ropewalk::fit {

namespace {

constexpr const char* where = "fit.bootstrap";
/// Refits that a thread takes at a time: few, since each is much work.
constexpr std::size_t refits_per_piece = 64;

/// A well-mixed number for every counter: SplitMix64 by Steele, Lea and Flood (2014).
std::uint64_t mixed(std::uint64_t x) noexcept {
  x += 0x9E3779B97F4A7C15U;
  x = (x ^ (x >> 30U)) * 0xBF58476D1CE4E5B9U;
  x = (x ^ (x >> 27U)) * 0x94D049BB133111EBU;
  return x ^ (x >> 31U);
}

/// Open interval (0, 1).
double uniform(std::uint64_t bits) noexcept {
  return (static_cast<double>(bits >> 11U) + 0.5) * 0x1p-53;
}

/// Puts the lives of one refit in place; `draw(k)` is uniform.
using Redraw = std::function<void(Lives& lives, const std::function<double(std::size_t)>& draw)>;

Refits refit(const Problem& fitted, const Vector& theta, const Redraw& redraw, std::size_t refits,
             std::uint64_t seed, int threads, const StopAsked& stop) {
  const auto count = static_cast<std::size_t>(theta.size());
  Refits result;
  result.parameters.assign(refits * count, std::numeric_limits<double>::quiet_NaN());
  result.end.assign(refits, End::iterations);
  const auto piece = [&](std::size_t begin, std::size_t end) {
    Problem problem = fitted;
    for (std::size_t r = begin; r < end; ++r) {
      const std::uint64_t stream = mixed(seed ^ mixed(r));
      redraw(problem.lives, [&](std::size_t k) { return uniform(mixed(stream ^ mixed(k))); });
      const Problem::Found found = problem.maximize(theta);
      result.end[r] = found.end;
      if (found.end != End::converged) continue;
      const Vector parameters = problem.back(found.theta);
      std::copy(parameters.begin(), parameters.end(),
                result.parameters.begin() + static_cast<std::ptrdiff_t>(r * count));
    }
    return BatchReport{};
  };
  result.stopped =
      ropewalk::detail::run_pieces(refits, threads, stop, piece, refits_per_piece).stopped;
  return result;
}

Vector in_basis(const Table& table, const Maximum& maximum, const Problem& problem) {
  if (maximum.end != End::converged) {
    throw InadmissibleError(where, "fit", "the fit has not converged: nothing to refit from");
  }
  if (maximum.parameters.size() != table.parameters()) {
    throw InadmissibleError(where, "fit", "the maximum is of another table");
  }
  const Eigen::Map<const Vector> theta(maximum.parameters.data(),
                                       static_cast<Eigen::Index>(maximum.parameters.size()));
  const RowMatrix location = matrix_of(table.location, table.rows(), table.location_columns);
  const RowMatrix scale = matrix_of(table.scale, table.rows(), table.scale_columns);
  return problem.nearest(location * theta.head(location.cols()), scale * theta.tail(scale.cols()));
}

}  // namespace

Refits refit_resampled(const Table& table, const Maximum& maximum, std::size_t refits,
                       std::uint64_t seed, int threads, const StopAsked& stop) {
  check(table);
  const Problem problem(table);
  const Vector theta = in_basis(table, maximum, problem);
  const auto redraw = [](Lives& lives, const std::function<double(std::size_t)>& draw) {
    const std::size_t rows = lives.weight.size();
    std::fill(lives.weight.begin(), lives.weight.end(), 0.0);
    for (std::size_t k = 0; k < rows; ++k) {
      const auto row = static_cast<std::size_t>(draw(k) * static_cast<double>(rows));
      lives.weight[std::min(row, rows - 1)] += 1.0;
    }
  };
  return refit(problem, theta, redraw, refits, seed, threads, stop);
}

Refits refit_parametric(const Table& table, const Maximum& maximum, std::span<const double> limits,
                        std::size_t refits, std::uint64_t seed, int threads,
                        const StopAsked& stop) {
  check(table);
  const Problem problem(table);
  const Vector theta = in_basis(table, maximum, problem);
  if (limits.size() != table.rows()) {
    throw InadmissibleError(where, "limits", "there must be one limit for each row");
  }
  for (std::size_t i = 0; i < table.rows(); ++i) {
    if (table.known[i] != Known::exactly && table.known[i] != Known::above) {
      throw InadmissibleError(where, "method",
                              "row " + std::to_string(i) +
                                  " is known by an interval: how such a row would be looked at "
                                  "next time is not known; refit by resampling");
    }
    if (std::isnan(limits[i])) {
      throw InadmissibleError(where, "limits", "row " + std::to_string(i) + ": limit is nan");
    }
  }
  const Vector mu = problem.locations(theta);
  const Vector s = problem.log_scales(theta);
  const auto redraw = [&](Lives& lives, const std::function<double(std::size_t)>& draw) {
    for (std::size_t i = 0; i < lives.y.size(); ++i) {
      const auto row = static_cast<Eigen::Index>(i);
      const double y = log_quantile(table.distribution, draw(i), mu[row], s[row]).y;
      lives.known[i] = y > limits[i] ? Known::above : Known::exactly;
      lives.y[i] = std::min(y, limits[i]);
    }
  };
  return refit(problem, theta, redraw, refits, seed, threads, stop);
}

}  // namespace ropewalk::fit
