/// Life models over many bends: same bits as one by one, marks, threads, stopping.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>
#include <vector>

#include "fatigue_examples.hpp"

namespace ropewalk::fatigue {
namespace {

/// Bends all over and beyond the ranges, some of them impossible.
struct Bends {
  std::array<std::vector<double>, bend_arguments> columns;
  std::size_t rows;

  explicit Bends(std::size_t n) : rows(n) {
    std::mt19937 engine(7);
    std::uniform_real_distribution<double> u(0.0, 1.0);
    for (auto& column : columns) column.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
      const double d = 0.006 + 0.045 * u(engine);
      const double values[] = {(20.0 + 600.0 * u(engine)) * 1e6 * d * d,
                               d,
                               d * (8.0 + 70.0 * u(engine)),
                               (1.2 + 1.2 * u(engine)) * 1e9,
                               2e5 + 1e6 * u(engine),
                               d * (5.0 + 500.0 * u(engine)),
                               0.1 + u(engine)};
      for (std::size_t a = 0; a < bend_arguments; ++a) columns[a][i] = values[a];
      if (i % 97 == 3) columns[i % 3][i] = -1.0;
      if (i % 101 == 5) columns[0][i] = std::nan("");
    }
  }
  [[nodiscard]] BendColumns all() const {
    BendColumns out;
    for (std::size_t a = 0; a < bend_arguments; ++a) out[a] = {columns[a].data(), false};
    return out;
  }
  [[nodiscard]] BendPoint at(std::size_t i) const {
    const auto x = [&](std::size_t a) { return columns[a][i]; };
    return {from_si<Force>(x(0)),  from_si<Length>(x(1)), from_si<Length>(x(2)),
            from_si<Stress>(x(3)), from_si<Force>(x(4)),  from_si<Length>(x(5)),
            from_si<Number>(x(6))};
  }
};

TEST(LifeBatchTest, HasTheBitsOfTheCallForOnePoint) {
  const Bends bends(1000);
  for (const LifeModel& model : all_models()) {
    std::vector<double> lives(bends.rows);
    std::vector<RowStatus> status(bends.rows);
    const BatchReport report = cycles(model, bends.all(), bends.rows, lives.data(), status.data());
    std::size_t marked = 0;
    for (std::size_t i = 0; i < bends.rows; ++i) {
      if (status[i] != RowStatus::ok) ++marked;
      if (has(status[i], RowStatus::inadmissible)) {
        EXPECT_TRUE(std::isnan(lives[i]));
        EXPECT_THROW((void)cycles(model, bends.at(i), Policy::ignore), InadmissibleError);
        continue;
      }
      const LifeValue one = cycles(model, bends.at(i), Policy::ignore);
      EXPECT_EQ(lives[i], one.cycles) << name(model) << " row " << i;
      EXPECT_EQ(status[i], one.status) << name(model) << " row " << i;
      EXPECT_EQ(status[i] == RowStatus::ok, applicability(model, bends.at(i)).holds());
    }
    EXPECT_EQ(report.marked_rows, marked) << name(model);
    EXPECT_GT(marked, 0U);
    EXPECT_EQ(status[report.first_marked_row] != RowStatus::ok, true);
  }
}

TEST(LifeBatchTest, ConstantsAndThreadsChangeNothing) {
  const Bends bends(3 * ropewalk::detail::piece_rows + 77);
  for (const LifeModel& model : all_models()) {
    BendColumns columns = bends.all();
    for (const std::size_t a : {1U, 3U, 5U, 6U}) columns[a] = {&bends.columns[a][0], true};
    std::vector<double> one(bends.rows), three(bends.rows), full(bends.rows);
    std::vector<RowStatus> s1(bends.rows), s3(bends.rows), s_full(bends.rows);
    (void)cycles(model, columns, bends.rows, one.data(), s1.data(), 1);
    (void)cycles(model, columns, bends.rows, three.data(), s3.data(), 3);
    std::array<std::vector<double>, bend_arguments> filled;
    BendColumns all = bends.all();
    for (const std::size_t a : {1U, 3U, 5U, 6U}) {
      filled[a].assign(bends.rows, bends.columns[a][0]);
      all[a] = {filled[a].data(), false};
    }
    (void)cycles(model, all, bends.rows, full.data(), s_full.data(), 2);
    for (std::size_t i = 0; i < bends.rows; ++i) {
      const bool nan = std::isnan(one[i]);
      ASSERT_TRUE(nan ? std::isnan(three[i]) : one[i] == three[i]) << name(model) << " row " << i;
      ASSERT_TRUE(nan ? std::isnan(full[i]) : one[i] == full[i]) << name(model) << " row " << i;
      ASSERT_EQ(s1[i], s3[i]);
      ASSERT_EQ(s1[i], s_full[i]);
    }
  }
}

TEST(LifeBatchTest, OverflowIsMarkedAndHasNoValue) {
  const FeyrerForm model({300.0, 0.5, 6.5, -0.3, -1.8, 1.2}, Basis::discard);
  EXPECT_THROW((void)cycles(model, point(), Policy::ignore), InadmissibleError);
  const double tension[] = {1e5, 1e5, 1e5};
  const double d = 0.028, sheave = 0.7, strength = 1.77e9, length = 3.0;
  const BendColumns columns{Column{tension, false}, {&d, true},       {&sheave, true},
                            {&strength, true},      {nullptr, false}, {&length, true},
                            {nullptr, false}};
  double lives[3];
  RowStatus status[3];
  const BatchReport report = cycles(model, columns, 3, lives, status);
  EXPECT_EQ(report.marked_rows, 3U);
  EXPECT_TRUE(std::isnan(lives[2]));
  EXPECT_TRUE(has(status[2], RowStatus::not_finite));
}

TEST(LifeBatchTest, RefusesAColumnThatIsMissing) {
  const double tension = 1e5;
  BendColumns columns{};
  columns[0] = {&tension, true};
  double life_out = 0.0;
  RowStatus status{};
  EXPECT_THROW((void)cycles(En81(reference()), columns, 1, &life_out, &status), InadmissibleError);
}

TEST(LifeBatchTest, StopsWhenAsked) {
  const Bends bends(4 * ropewalk::detail::piece_rows);
  std::vector<double> lives(bends.rows);
  std::vector<RowStatus> status(bends.rows);
  const BatchReport report = cycles(En13001(1.0), bends.all(), bends.rows, lives.data(),
                                    status.data(), 1, [] { return true; });
  EXPECT_TRUE(report.stopped);
}

}  // namespace
}  // namespace ropewalk::fatigue
