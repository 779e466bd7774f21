/// The one loop: a row formula over many rows.
///
/// Rows are taken in blocks. A block first looks whether every argument is admissible and valid
/// and then runs the bare formula: two loops without a branch, which the compiler turns into vector
/// code. Only a block with a bad row is walked row by row to give each its status. Every row
/// depends on its own arguments alone, so the answer is the same for any number of threads.
#pragma once

#include <algorithm>
#include <array>
#include <atomic>
#include <bit>
#include <cmath>
#include <cstddef>
#include <cstdint>
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
  RowStatus all = RowStatus::ok;     ///< every bit that some row carries
  std::size_t first_marked_row = 0;  ///< meaningful if `all` is not ok
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

/// Rows between test and formula: few enough that the arguments are still in the nearest cache.
inline constexpr std::size_t block_rows = 128;
/// Rows that a thread takes at a time.
inline constexpr std::size_t piece_rows = 256 * block_rows;

/// Runs `piece(begin, end)` over all rows on up to `threads` threads; the calling thread works too
/// and is the only one that asks `stop`. Rows that are much work each are taken in smaller pieces.
[[nodiscard]] BatchReport run_pieces(
    std::size_t rows, int threads, const StopAsked& stop,
    const std::function<BatchReport(std::size_t, std::size_t)>& piece,
    std::size_t rows_per_piece = piece_rows);

/// What lies in both intervals.
constexpr Interval overlap(const Interval& a, const Interval& b) noexcept {
  const bool from_a = a.low > b.low || (a.low == b.low && a.low_open);
  return {.low = from_a ? a.low : b.low,
          .high = std::min(a.high, b.high),
          .low_open = from_a ? a.low_open : b.low_open,
          .whole = a.whole || b.whole};
}

/// True for whole numbers below 2^51, which counts are: a sum this large has no digits left for
/// the fraction of x.
constexpr bool is_whole(double x) noexcept {
  constexpr double no_fraction = 0x1.8p52;
  return (x + no_fraction) - no_fraction == x;
}

/// True if argument I of a row formula is admissible and valid; false for NaN, as every comparison
/// with one. `&`, not `&&`: no branches.
template <class F, std::size_t I>
constexpr bool is_clean(double x) noexcept {
  constexpr auto parameter = std::get<I>(F::parameters);
  constexpr Interval range = overlap(parameter.admissible, parameter.valid);
  const bool above = range.low_open ? x > range.low : x >= range.low;
  const bool inside = above & (x <= range.high);
  if constexpr (range.whole) return inside & is_whole(x);
  return inside;
}

/// True if all of the row's arguments are clean, its joint rule holds and its group is covered.
/// Both are asked in any case, so a `joint` and a `group` must bear any numbers.
template <class F, std::size_t... I, class... X>
constexpr bool is_clean_row(std::index_sequence<I...>, X... x) noexcept {
  bool clean = (is_clean<F, I>(x) & ...);
  if constexpr (HasJointRule<F>) clean = clean & F::joint(from_si<argument_t<F, I>>(x)...);
  if constexpr (HasGroup<F>) {
    clean = clean & F::group_range.contains(F::group(from_si<argument_t<F, I>>(x)...));
  }
  return clean;
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
      if (!has(status, RowStatus::inadmissible) &&
          !F::joint(from_si<argument_t<F, I>>(row[I])...)) {
        status |= RowStatus::inadmissible;
      }
    }
    if constexpr (HasGroup<F>) {
      if (!has(status, RowStatus::inadmissible) &&
          !F::group_range.contains(F::group(from_si<argument_t<F, I>>(row[I])...))) {
        status |= RowStatus::outside_validity;
      }
    }
  }(std::make_index_sequence<arity<F>>{});
  return status;
}

template <class F, std::size_t... I>
BatchReport run_block(const std::array<const double*, arity<F>>& x, std::size_t begin,
                      std::size_t n, double* out, RowStatus* status,
                      std::index_sequence<I...> arguments) noexcept {
  BatchReport report;
  // Marks are doubles, and joined as bits, because a comparison of doubles yields a mask of their
  // width and only sums of whole numbers may be reordered: so both loops become vector code. They
  // stand in `out` for want of a better place.
  std::uint64_t marks = 0;
  for (std::size_t i = 0; i < n; ++i) out[i] = is_clean_row<F>(arguments, x[I][i]...) ? 0.0 : 1.0;
  for (std::size_t i = 0; i < n; ++i) marks |= std::bit_cast<std::uint64_t>(out[i]);
  if (marks == 0) {
    for (std::size_t i = 0; i < n; ++i) {
      const double value = to_si(F::formula(from_si<argument_t<F, I>>(x[I][i])...));
      out[i] = value;
      marks |= std::bit_cast<std::uint64_t>(value - value);  // 0 if finite, NaN otherwise
    }
    std::fill_n(status, n, RowStatus::ok);
    if (marks == 0) return report;
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

/// Evaluates row formula F on `rows` rows. `out` and `status` have `rows` places each and share
/// none with the columns.
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
