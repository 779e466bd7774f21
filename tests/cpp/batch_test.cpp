#include "ropewalk/base/batch.hpp"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <random>
#include <vector>

#include "ropewalk/sheave/pressure.hpp"

namespace ropewalk {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double inf = std::numeric_limits<double>::infinity();

/// Length shared by a whole number of lines; invented, to have every kind of range at once.
struct Share {
  static constexpr std::string_view name = "test.share";
  static constexpr std::tuple parameters{
      Parameter<Length>{"height", between(-1e308 * meter, 1e308 * meter, "invented")}.valid_in(
          above_up_to(1.0 * meter, 50.0 * meter, "invented")),
      Parameter<Number>{"lines", whole_between(0, 12, "invented")}};
  static constexpr Length formula(Length height, Number lines) noexcept { return height / lines; }
};

struct Answer {
  std::vector<double> out;
  std::vector<RowStatus> status;
  BatchReport report;
};

template <class F, std::size_t N>
Answer run(const std::array<Column, N>& columns, std::size_t rows, int threads = 1,
           const StopAsked& stop = {}) {
  Answer answer{std::vector<double>(rows, 1.0), std::vector<RowStatus>(rows, RowStatus::ok), {}};
  answer.report = batch<F>(columns, rows, answer.out.data(), answer.status.data(), threads, stop);
  return answer;
}

Answer share(const std::vector<double>& heights, const std::vector<double>& lines,
             int threads = 1) {
  return run<Share>(std::array{Column{heights.data()}, Column{lines.data(), lines.size() == 1}},
                    heights.size(), threads);
}

void expect_same_bits(const std::vector<double>& a, const std::vector<double>& b) {
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i) {
    ASSERT_EQ(std::bit_cast<std::uint64_t>(a[i]), std::bit_cast<std::uint64_t>(b[i])) << i;
  }
}

TEST(Batch, AgreesWithTheScalarCall) {
  std::mt19937_64 random(1928);
  std::uniform_real_distribution<double> force(0.0, 2e6);
  std::uniform_real_distribution<double> rope(0.01, 0.08);
  std::uniform_real_distribution<double> sheave(0.1, 2.0);
  const std::size_t rows = 3 * detail::piece_rows + detail::block_rows + 7;
  std::vector<double> f(rows);
  std::vector<double> d(rows);
  std::vector<double> wheel(rows);
  for (std::size_t i = 0; i < rows; ++i) {
    f[i] = force(random);
    d[i] = rope(random);
    wheel[i] = sheave(random);
  }
  const std::array columns{Column{f.data()}, Column{d.data()}, Column{wheel.data()}};
  const auto one = run<sheave::BearingPressure>(columns, rows);
  EXPECT_EQ(one.report.marked_rows, 0U);
  for (std::size_t i = 0; i < rows; i += 97) {
    const Stress expected = sheave::bearing_pressure(f[i] * newton, d[i] * meter, wheel[i] * meter);
    ASSERT_EQ(one.out[i], to_si(expected)) << i;
  }
  for (const int threads : {2, 7}) {
    const auto many = run<sheave::BearingPressure>(columns, rows, threads);
    expect_same_bits(many.out, one.out);
    EXPECT_EQ(many.status, one.status);
  }
}

TEST(Batch, GivesEachRowItsStatus) {
  const auto answer = share({10.0, nan, 1.0, 50.0, 50.5, 10.0, 10.0, inf, 10.0, -3.0},
                            {2.0, 2.0, 2.0, 2.0, 2.0, 2.5, 13.0, 2.0, nan, 2.0});
  const auto ok = RowStatus::ok;
  const auto inadmissible = RowStatus::inadmissible;
  const auto outside = RowStatus::outside_validity;
  EXPECT_EQ(answer.status, (std::vector{ok, inadmissible, outside, ok, outside, inadmissible,
                                        inadmissible, inadmissible, inadmissible, outside}));
  const std::vector<double> expected{5.0, nan, 0.5, 25.0, 25.25, nan, nan, nan, nan, -1.5};
  for (std::size_t i = 0; i < expected.size(); ++i) {
    if (std::isnan(expected[i])) {
      EXPECT_TRUE(std::isnan(answer.out[i])) << i;
    } else {
      EXPECT_EQ(answer.out[i], expected[i]) << i;
    }
  }
  EXPECT_EQ(answer.report.all, inadmissible | outside);
  EXPECT_EQ(answer.report.marked_rows, 8U);
  EXPECT_EQ(answer.report.first_marked_row, 1U);
}

TEST(Batch, MarksResultsThatAreNoNumbers) {
  // Zero lines are admissible here, and the formula divides by them.
  const auto answer = share({10.0, 10.0}, {0.0, 4.0});
  EXPECT_EQ(answer.status, (std::vector{RowStatus::not_finite, RowStatus::ok}));
  EXPECT_TRUE(std::isnan(answer.out[0]));
  EXPECT_EQ(answer.out[1], 2.5);
}

TEST(Batch, FindsOneBadRowWhereverItStands) {
  const std::size_t rows = 2 * detail::block_rows + 5;
  for (const double bad : {nan, inf, -inf, 0.5, std::nextafter(50.0, 51.0)}) {
    for (std::size_t place = 0; place < rows; place += 3) {
      std::vector<double> heights(rows, 20.0);
      heights[place] = bad;
      const auto answer = share(heights, {4.0});
      ASSERT_EQ(answer.report.marked_rows, 1U) << bad << " at " << place;
      ASSERT_EQ(answer.report.first_marked_row, place);
      ASSERT_EQ(answer.status[place], answer.report.all);
      ASSERT_EQ(answer.out[rows - 1 - place], place == rows - 1 - place ? answer.out[place] : 5.0);
    }
  }
}

TEST(Batch, TellsTheJointRuleRowByRow) {
  const std::vector<double> wheels{1.0, 0.03, 0.01};
  const double force = 1000.0;
  const double rope = 0.03;
  const auto answer = run<sheave::BearingPressure>(
      std::array{Column{&force, true}, Column{&rope, true}, Column{wheels.data()}}, 3);
  EXPECT_EQ(answer.status, (std::vector{RowStatus::ok, RowStatus::ok, RowStatus::inadmissible}));
  EXPECT_TRUE(std::isnan(answer.out[2]));
}

TEST(Batch, TakesWholeNumbersOnly) {
  std::vector<double> lines;
  for (int i = 0; i <= 12; ++i) lines.push_back(i);
  for (const double broken : {0.5, 11.999999999999998, 1e-300, -0.5, 12.5, 1e17}) {
    lines.push_back(broken);
  }
  const auto answer = share(std::vector<double>(lines.size(), 12.0), lines);
  EXPECT_EQ(answer.status[0], RowStatus::not_finite);
  for (std::size_t i = 1; i < lines.size(); ++i) {
    EXPECT_EQ(answer.status[i], i <= 12 ? RowStatus::ok : RowStatus::inadmissible) << lines[i];
  }
}

TEST(Batch, GivesTheSameBitsAndMarksOnAnyNumberOfThreads) {
  const std::size_t rows = 4 * detail::piece_rows + 11;
  std::mt19937_64 random(7);
  std::uniform_real_distribution<double> height(-1.0, 400.0);
  std::vector<double> heights(rows);
  for (auto& h : heights) h = height(random);
  heights[2 * detail::piece_rows + 1] = nan;
  const auto one = share(heights, {7.0}, 1);
  EXPECT_GT(one.report.marked_rows, rows / 2);
  for (const int threads : {-1, 0, 2, 7}) {
    const auto many = share(heights, {7.0}, threads);
    expect_same_bits(many.out, one.out);
    EXPECT_EQ(many.status, one.status);
    EXPECT_EQ(many.report.all, one.report.all);
    EXPECT_EQ(many.report.marked_rows, one.report.marked_rows);
    EXPECT_EQ(many.report.first_marked_row, one.report.first_marked_row);
  }
}

TEST(Batch, ConstantColumnsEqualFilledOnes) {
  const std::vector<double> heights(detail::block_rows + 3, 33.0);
  const std::vector<double> lines(heights.size(), 7.0);
  const auto filled = share(heights, lines);
  const auto constant = share(heights, {7.0});
  expect_same_bits(constant.out, filled.out);
  const double bad = nan;
  const auto all_bad =
      run<Share>(std::array{Column{&bad, true}, Column{lines.data()}}, lines.size());
  EXPECT_EQ(all_bad.report.marked_rows, lines.size());
  EXPECT_EQ(all_bad.report.first_marked_row, 0U);
}

TEST(Batch, StopsWhenAsked) {
  const std::size_t rows = 50 * detail::piece_rows;
  const double height = 10.0;
  const double lines = 5.0;
  const std::array columns{Column{&height, true}, Column{&lines, true}};
  int asked = 0;
  const auto stopped = run<Share>(columns, rows, 1, [&] { return ++asked == 4; });
  EXPECT_TRUE(stopped.report.stopped);
  EXPECT_EQ(stopped.out[3 * detail::piece_rows - 1], 2.0);
  EXPECT_EQ(stopped.out[3 * detail::piece_rows], 1.0);  // as it was before
  EXPECT_TRUE(run<Share>(columns, rows, 7, [] { return true; }).report.stopped);
  EXPECT_FALSE(run<Share>(columns, rows, 2, [] { return false; }).report.stopped);
}

TEST(Batch, TakesNoRows) {
  const double number = 1.0;
  const auto none = run<Share>(std::array{Column{&number, true}, Column{&number, true}}, 0, 3);
  EXPECT_FALSE(none.report.stopped);
  EXPECT_EQ(none.report.marked_rows, 0U);
}

TEST(Batch, OverlapOfIntervalsKeepsTheTighterBounds) {
  constexpr Interval closed{.low = 1.0, .high = 5.0};
  constexpr Interval open{.low = 1.0, .high = 7.0, .low_open = true};
  for (const auto both : {detail::overlap(closed, open), detail::overlap(open, closed)}) {
    EXPECT_FALSE(both.contains(1.0));
    EXPECT_TRUE(both.contains(5.0));
    EXPECT_FALSE(both.contains(5.5));
  }
  EXPECT_TRUE(detail::overlap(closed, any_finite()).contains(1.0));
}

}  // namespace
}  // namespace ropewalk
