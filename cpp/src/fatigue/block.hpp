/// Lives over many bends: one block of rows after another, each step over the whole block.
///
/// All models but one are a formula in logarithms of a few ratios (bend_group.hpp). So a block
/// costs one vectorized logarithm per ratio that varies and one exponential; what is constant over
/// the batch is computed once. The call for one point runs the same code on the shortest block, so
/// it gives the same bits.
///
/// Private to the library: the only place of this subject that sees Eigen.
#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>
#include <optional>
#include <vector>

#include "ropewalk/fatigue/life_basis.hpp"

namespace ropewalk::fatigue::detail {

template <int n>
using Lane = Eigen::Array<double, n, 1>;
using Pointers = std::array<const double*, bend_arguments>;

constexpr std::size_t at(BendArgument argument) { return static_cast<std::size_t>(argument); }
inline constexpr std::size_t factor_place = at(BendArgument::life_factor);
/// Logarithms of lives that a double holds.
inline constexpr Interval ln_life_range{.low = -700.0, .high = 700.0};
inline constexpr Interval life_range{.low = std::numeric_limits<double>::min()};

template <BendArgument argument>
void set(BendPoint& point, double value) noexcept {
  using enum BendArgument;
  if constexpr (argument == rope_tension) point.rope_tension = from_si<Force>(value);
  if constexpr (argument == rope_diameter) point.rope_diameter = from_si<Length>(value);
  if constexpr (argument == sheave_diameter) point.sheave_diameter = from_si<Length>(value);
  if constexpr (argument == wire_strength) point.wire_strength = from_si<Stress>(value);
  if constexpr (argument == breaking_force) point.breaking_force = from_si<Force>(value);
  if constexpr (argument == bend_length) point.bend_length = from_si<Length>(value);
}

/// The arguments that a group uses, of one row. The others may have no data to read.
template <BendGroup g>
BendPoint point_at(const Pointers& x, std::size_t i) noexcept {
  constexpr auto uses = GroupFormula<g>::uses;
  BendPoint point;
  [&]<std::size_t... I>(std::index_sequence<I...>) {
    (set<uses[I]>(point, x[at(uses[I])][i]), ...);
  }(std::make_index_sequence<uses.size()>{});
  return point;
}

/// A closed range; an open end becomes the next number inside.
struct Bounds {
  double low;
  double high;

  explicit Bounds(const Interval& range)
      : low(range.low_open ? std::nextafter(range.low, range.high) : range.low), high(range.high) {}
  [[nodiscard]] bool contain(double x) const noexcept { return (x >= low) & (x <= high); }
};

/// What the numbers of a block are held against: one argument, group or result, and the bit that
/// a row outside gets.
struct Condition {
  Bounds bounds;
  RowStatus bit;
  const double* const* argument;   ///< one of the block's pointers, or
  const double* values;            ///< numbers the block computes
  std::optional<BendGroup> other;  ///< a group that only its range asks for
};

template <class M>
concept InLogarithms = requires { &M::template ln_cycles<double>; };

template <class M>
constexpr bool uses(BendArgument argument) {
  bool found = argument == BendArgument::life_factor;
  [&]<std::size_t... I>(std::index_sequence<I...>) {
    (
        (void)[&](const auto& list) {
          for (const BendArgument a : list) found = found || a == argument;
        }(GroupFormula<M::groups[I]>::uses),
        ...);
  }(std::make_index_sequence<M::groups.size()>{});
  return found;
}

template <class M, int n>
class Block {
 public:
  Block(const M& model, const BendColumns& columns) : model_(model), columns_(columns) {
    for (std::size_t a = 0; a < bend_arguments; ++a) {
      constant_[a] = columns[a].data == nullptr || columns[a].constant;
      if (!constant_[a]) continue;
      if (columns[a].data != nullptr) {
        filled_[a].setConstant(*columns[a].data);
      } else {
        filled_[a].setConstant(a == factor_place ? 1.0 : std::numeric_limits<double>::quiet_NaN());
      }
      x_[a] = filled_[a].data();
    }
    each_term([&]<std::size_t t>() {
      if (constant_group<M::groups[t]>()) compute_term<t>();
    });
    for (std::size_t a = 0; a < bend_arguments; ++a) {
      if (!used_[a]) continue;
      const Bounds bounds(bend_argument_infos[a].admissible);
      if (constant_[a] && bounds.contain(filled_[a][0])) continue;
      conditions_.push_back({bounds, RowStatus::inadmissible, &x_[a], nullptr, {}});
    }
    for (const ValidityRange& range : model.validity) add_validity(range);
    if constexpr (InLogarithms<M>) {
      conditions_.push_back(
          {Bounds(ln_life_range), RowStatus::not_finite, nullptr, ln_life_.data(), {}});
    } else {
      conditions_.push_back({Bounds(life_range), RowStatus::not_finite, nullptr, life_.data(), {}});
    }
  }
  Block(const Block&) = delete;
  Block& operator=(const Block&) = delete;

  BatchReport run(std::size_t begin, std::size_t end, double* out, RowStatus* status) {
    BatchReport report;
    for (std::size_t row = begin; row < end; row += n) {
      const std::size_t rows = std::min<std::size_t>(n, end - row);
      load(row, rows);
      each_term([&]<std::size_t t>() {
        if (!constant_group<M::groups[t]>()) compute_term<t>();
      });
      compute_life();
      std::fill_n(status + row, rows, RowStatus::ok);
      if (!mark(rows, status + row)) report_marks(rows, row, status + row, report);
      std::copy_n(life_.data(), rows, out + row);
    }
    return report;
  }

 private:
  static constexpr std::size_t terms = M::groups.size();

  template <class Act>
  static void each_term(Act&& act) {
    [&]<std::size_t... I>(std::index_sequence<I...>) {
      (act.template operator()<I>(), ...);
    }(std::make_index_sequence<terms>{});
  }

  template <BendGroup g>
  [[nodiscard]] bool constant_group() const {
    bool all = true;
    for (const BendArgument argument : GroupFormula<g>::uses) all = all && constant_[at(argument)];
    return all;
  }

  template <BendGroup g>
  void fill(Lane<n>& values) const {
    double* out = values.data();
    const Pointers x = x_;
    for (std::size_t i = 0; i < n; ++i) out[i] = GroupFormula<g>::value(point_at<g>(x, i));
  }

  template <std::size_t t>
  void compute_term() {
    fill<M::groups[t]>(values_[t]);
    if constexpr (InLogarithms<M>) logs_[t] = values_[t].log();
  }

  void add_validity(const ValidityRange& range) {
    Condition condition{Bounds(range.checked()), RowStatus::outside_validity, nullptr,
                        other_.data(), range.group};
    for (std::size_t t = 0; t < terms; ++t) {
      if (M::groups[t] != range.group) continue;
      condition.values = values_[t].data();
      condition.other.reset();
    }
    const bool known = with_group(range.group, [&]<BendGroup g>() {
      if (!constant_group<g>()) return false;
      fill<g>(other_);
      return condition.bounds.contain(other_[0]);
    });
    if (!known) conditions_.push_back(condition);
  }

  /// Points at the rows of the block. A short last block is padded with its last row.
  void load(std::size_t row, std::size_t rows) {
    for (std::size_t a = 0; a < bend_arguments; ++a) {
      if (constant_[a]) continue;
      x_[a] = columns_[a].data + row;
      if (rows == n) continue;
      std::copy_n(x_[a], rows, filled_[a].data());
      std::fill(filled_[a].data() + rows, filled_[a].data() + n, x_[a][rows - 1]);
      x_[a] = filled_[a].data();
    }
  }

  void compute_life() {
    [&]<std::size_t... I>(std::index_sequence<I...>) {
      if constexpr (InLogarithms<M>) {
        ln_life_ = model_.ln_cycles(logs_[I]...);
        life_ = ln_life_.exp();
      } else {
        life_ = model_.cycles(values_[I]...);
      }
    }(std::make_index_sequence<terms>{});
    if (columns_[factor_place].data != nullptr) {
      life_ *= Eigen::Map<const Lane<n>>(x_[factor_place]);
    }
  }

  const double* numbers_of(const Condition& condition) {
    if (condition.argument != nullptr) return *condition.argument;
    if (condition.other) with_group(*condition.other, [&]<BendGroup g>() { fill<g>(other_); });
    return condition.values;
  }

  /// Sets the bits of all rows; true if there are none. Marks are doubles, and joined as bits, so
  /// that these loops become vector code (as in base/batch.hpp).
  bool mark(std::size_t rows, RowStatus* status) {
    double* marks = marks_.data();
    std::fill_n(marks, n, 0.0);
    for (const Condition& condition : conditions_) {
      const double* x = numbers_of(condition);
      const double low = condition.bounds.low;
      const double high = condition.bounds.high;
      for (int i = 0; i < n; ++i) marks[i] = (x[i] >= low) & (x[i] <= high) ? marks[i] : 1.0;
    }
    std::uint64_t any = 0;
    for (int i = 0; i < n; ++i) any |= std::bit_cast<std::uint64_t>(marks[i]);
    if (any == 0) return true;
    for (const Condition& condition : conditions_) {
      const double* x = numbers_of(condition);
      const RowStatus bit = condition.bit;
      for (std::size_t i = 0; i < rows; ++i) {
        status[i] |= condition.bounds.contain(x[i]) ? RowStatus::ok : bit;
      }
    }
    return false;
  }

  /// Enters the marked rows in the report and takes away the lives that are none. What a model
  /// makes of an inadmissible argument does not count.
  void report_marks(std::size_t rows, std::size_t first_row, RowStatus* status,
                    BatchReport& report) {
    constexpr RowStatus no_life = RowStatus::inadmissible | RowStatus::not_finite;
    BatchReport block;
    for (std::size_t i = 0; i < rows; ++i) {
      block.all |= status[i];
      block.marked_rows += status[i] != RowStatus::ok ? 1 : 0;
    }
    const auto is_marked = [](RowStatus s) { return s != RowStatus::ok; };
    block.first_marked_row =
        first_row +
        static_cast<std::size_t>(std::find_if(status, status + rows, is_marked) - status);
    if (has(block.all, no_life)) {
      block.all = RowStatus::ok;
      for (std::size_t i = 0; i < rows; ++i) {
        if (has(status[i], RowStatus::inadmissible)) status[i] = RowStatus::inadmissible;
        if (has(status[i], no_life)) {
          life_[static_cast<int>(i)] = std::numeric_limits<double>::quiet_NaN();
        }
        block.all |= status[i];
      }
    }
    report.merge(block);
  }

  static constexpr std::array<bool, bend_arguments> used_ = [] {
    std::array<bool, bend_arguments> used{};
    for (std::size_t a = 0; a < bend_arguments; ++a)
      used[a] = uses<M>(static_cast<BendArgument>(a));
    return used;
  }();

  const M& model_;
  const BendColumns& columns_;
  std::array<bool, bend_arguments> constant_{};
  Pointers x_{};
  std::vector<Condition> conditions_;
  std::array<Lane<n>, bend_arguments> filled_;
  std::array<Lane<n>, terms> values_;
  std::array<Lane<n>, terms> logs_;
  Lane<n> other_;
  Lane<n> marks_;
  Lane<n> ln_life_;
  Lane<n> life_;
};

}  // namespace ropewalk::fatigue::detail
