/// The one loop: a row formula over many rows.
///
/// Rows are taken in blocks. A block first looks whether every argument is admissible and valid,
/// a test the compiler vectorizes, and then runs the bare formula over the block. Only a block
/// with a bad row is walked row by row to give each its status. Every row depends on its own
/// arguments alone, so the answer is the same for any number of threads.
#pragma once

#include <algorithm>
#include <array>
#include <atomic>
#include <cmath>
#include <cstddef>
#include <functional>
#include <limits>
#include <thread>
#include <vector>

#include "ropewalk/base/model.hpp"

namespace ropewalk {

/// One argument of a batch in SI: an array of `rows` numbers, or one number for all rows.
struct Column {
  const double* data = nullptr;
  bool constant = false;

  [[nodiscard]] double at(std::size_t row) const noexcept { return constant ? *data : data[row]; }
};

/// Asked on the calling thread between pieces of work; true ends the batch early.
using StopAsked = std::function<bool()>;

/// How a batch ended and which rows are marked.
struct BatchReport {
  bool stopped = false;
  RowStatus all = RowStatus::ok;          ///< every bit that some row carries
  std::size_t first_marked_row = 0;       ///< meaningful if `all` is not ok
  std::size_t marked_rows = 0;

  void mark(std::size_t row, RowStatus status) noexcept {
    if (marked_rows == 0 || row < first_marked_row) first_marked_row = row;
    all |= status;
    ++marked_rows;
  }
  void merge(const BatchReport& other) noexcept {
    if (other.marked_rows != 0 && (marked_rows == 0 || other.first_marked_row < first_marked_row)) {
      first_marked_row = other.first_marked_row;
    }
    stopped = stopped || other.stopped;
    all |= other.all;
    marked_rows += other.marked_rows;
  }
};

namespace detail {

inline constexpr std::size_t block_rows = 512;
inline constexpr std::size_t piece_rows = 64 * block_rows;

/// Runs `piece(begin, end)` over all rows on up to `threads` threads; the calling thread works too
/// and is the only one that asks `stop`.
[[nodiscard]] BatchReport run_pieces(
    std::size_t rows, int threads, const StopAsked& stop,
    const std::function<BatchReport(std::size_t, std::size_t)>& piece);

/// True if every number of the block lies inside the bounds (whole numbers are looked at apart).
inline bool block_inside(const double* x, std::size_t n, const Interval& range) noexcept {
  unsigned outside = 0;
  if (range.low_open) {
    for (std::size_t i = 0; i < n; ++i) outside |= !(x[i] > range.low) | !(x[i] <= range.high);
  } else {
    for (std::size_t i = 0; i < n; ++i) outside |= !(x[i] >= range.low) | !(x[i] <= range.high);
  }
  if (outside != 0) return false;
  if (range.whole) {
    for (std::size_t i = 0; i < n; ++i) outside |= std::nearbyint(x[i]) != x[i];
  }
  return outside == 0;
}

template <class F>
RowStatus row_status(const std::array<double, arity<F>>& row) noexcept {
  RowStatus status = RowStatus::ok;
  [&]<std::size_t... I>(std::index_sequence<I...>) {
    const auto look = [&](const auto& parameter, double x) {
      if (!parameter.admissible.contains(x)) {
        status |= RowStatus::inadmissible;
      } else if (!parameter.valid.contains(x)) {
        status |= RowStatus::outside_validity;
      }
    };
    (look(std::get<I>(F::parameters), row[I]), ...);
    if constexpr (HasJointRule<F>) {
      if (!has(status, RowStatus::inadmissible) && !F::joint(from_si<argument_t<F, I>>(row[I])...)) {
        status |= RowStatus::inadmissible;
      }
    }
  }(std::make_index_sequence<arity<F>>{});
  return status;
}

template <class F, std::size_t... I>
BatchReport run_block(const std::array<const double*, arity<F>>& x, std::size_t begin,
                      std::size_t n, double* out, RowStatus* status,
                      std::index_sequence<I...>) noexcept {
  BatchReport report;
  bool clean = (block_inside(x[I], n, std::get<I>(F::parameters).admissible) && ...);
  clean = clean && ((std::get<I>(F::parameters).valid.unbounded() ||
                     block_inside(x[I], n, std::get<I>(F::parameters).valid)) &&
                    ...);
  if constexpr (HasJointRule<F>) {
    if (clean) {
      unsigned broken = 0;
      for (std::size_t i = 0; i < n; ++i) broken |= !F::joint(from_si<argument_t<F, I>>(x[I][i])...);
      clean = broken == 0;
    }
  }
  if (clean) {
    unsigned finite = 1;
    for (std::size_t i = 0; i < n; ++i) {
      const double value = to_si(F::formula(from_si<argument_t<F, I>>(x[I][i])...));
      out[i] = value;
      finite &= std::abs(value) <= std::numeric_limits<double>::max();
    }
    std::fill_n(status, n, RowStatus::ok);
    if (finite != 0) return report;
  }
  for (std::size_t i = 0; i < n; ++i) {
    RowStatus s = row_status<F>({x[I][i]...});
    out[i] = std::numeric_limits<double>::quiet_NaN();
    if (!has(s, RowStatus::inadmissible)) {
      const double value = to_si(F::formula(from_si<argument_t<F, I>>(x[I][i])...));
      if (std::isfinite(value)) {
        out[i] = value;
      } else {
        s |= RowStatus::not_finite;
      }
    }
    status[i] = s;
    if (s != RowStatus::ok) report.mark(begin + i, s);
  }
  return report;
}

}  // namespace detail

/// Evaluates row formula F on `rows` rows. `out` and `status` have `rows` places each.
template <class F>
[[nodiscard]] BatchReport batch(const std::array<Column, detail::arity<F>>& columns,
                                std::size_t rows, double* out, RowStatus* status, int threads = 1,
                                const StopAsked& stop = {}) {
  constexpr std::size_t n_args = detail::arity<F>;
  const auto piece = [&](std::size_t begin, std::size_t end) {
    // A constant argument becomes one filled block, so that every inner loop has unit stride.
    std::array<std::array<double, detail::block_rows>, n_args> constants;
    for (std::size_t a = 0; a < n_args; ++a) {
      if (columns[a].constant) constants[a].fill(*columns[a].data);
    }
    BatchReport report;
    for (std::size_t row = begin; row < end; row += detail::block_rows) {
      const std::size_t n = std::min(detail::block_rows, end - row);
      std::array<const double*, n_args> x;
      for (std::size_t a = 0; a < n_args; ++a) {
        x[a] = columns[a].constant ? constants[a].data() : columns[a].data + row;
      }
      report.merge(detail::run_block<F>(x, row, n, out + row, status + row,
                                        std::make_index_sequence<n_args>{}));
    }
    return report;
  };
  return detail::run_pieces(rows, threads, stop, piece);
}

}  // namespace ropewalk
