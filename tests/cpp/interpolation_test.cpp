#include "ropewalk/base/interpolation.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <vector>

#include "ropewalk/base/error.hpp"

namespace ropewalk {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double inf = std::numeric_limits<double>::infinity();

TEST(Interpolation, GivesTabulatedPointsExactly) {
  const std::vector<double> xs{0.1, 0.3, 0.7, 11.0};
  const std::vector<double> ys{3.0, 0.7, 0.1, 2e5};
  for (std::size_t i = 0; i < xs.size(); ++i) {
    EXPECT_EQ(interpolate_linear(xs, ys, xs[i]), ys[i]);
    EXPECT_EQ(interpolate_log_log(xs, ys, xs[i]), ys[i]);
  }
}

TEST(Interpolation, LinearReproducesAStraightLine) {
  const std::vector<double> xs{-2.0, 0.0, 1.0, 8.0};
  std::vector<double> ys;
  for (const double x : xs) ys.push_back(4.0 - 0.5 * x);
  for (double x = -2.0; x <= 8.0; x += 0.125) {
    EXPECT_NEAR(interpolate_linear(xs, ys, x).value(), 4.0 - 0.5 * x, 1e-15);
  }
}

TEST(Interpolation, LogLogReproducesAPowerLaw) {
  const std::vector<double> xs{1.0, 3.0, 10.0, 250.0};
  std::vector<double> ys;
  for (const double x : xs) ys.push_back(7.0 * std::pow(x, -2.5));
  for (double x = 1.0; x <= 250.0; x *= 1.07) {
    const double y = 7.0 * std::pow(x, -2.5);
    EXPECT_NEAR(interpolate_log_log(xs, ys, x).value(), y, 1e-13 * y);
  }
}

TEST(Interpolation, SaysNothingBeyondTheTable) {
  const std::vector<double> xs{1.0, 2.0};
  const std::vector<double> ys{1.0, 2.0};
  for (const double x : {std::nextafter(1.0, 0.0), std::nextafter(2.0, 3.0), nan, inf, -inf, 0.0}) {
    EXPECT_FALSE(interpolate_linear(xs, ys, x).has_value()) << x;
    EXPECT_FALSE(interpolate_log_log(xs, ys, x).has_value()) << x;
  }
  EXPECT_FALSE(interpolate_linear({}, {}, 1.0).has_value());
}

TEST(Curve, HoldsItsRangeAndChoosesItsPaper) {
  const Curve linear("line", {1.0, 4.0}, {1.0, 16.0}, Paper::linear);
  const Curve power("power", {1.0, 4.0}, {1.0, 16.0}, Paper::log_log);
  EXPECT_DOUBLE_EQ(linear.at(2.0).value(), 6.0);
  EXPECT_DOUBLE_EQ(power.at(2.0).value(), 4.0);
  EXPECT_FALSE(power.at(4.5).has_value());
  EXPECT_EQ(power.range("table 1").low, 1.0);
  EXPECT_EQ(power.range("table 1").high, 4.0);
  EXPECT_EQ(power.range("table 1").source, "table 1");
}

TEST(Curve, RefusesPointsItCannotJoin) {
  const auto build = [](std::vector<double> xs, std::vector<double> ys, Paper paper) {
    const Curve curve("bad", std::move(xs), std::move(ys), paper);
  };
  EXPECT_THROW(build({1.0}, {1.0}, Paper::linear), LookupError);
  EXPECT_THROW(build({1.0, 2.0}, {1.0}, Paper::linear), LookupError);
  EXPECT_THROW(build({1.0, 1.0}, {1.0, 2.0}, Paper::linear), LookupError);
  EXPECT_THROW(build({2.0, 1.0}, {1.0, 2.0}, Paper::linear), LookupError);
  EXPECT_THROW(build({1.0, nan}, {1.0, 2.0}, Paper::linear), LookupError);
  EXPECT_THROW(build({1.0, 2.0}, {1.0, inf}, Paper::linear), LookupError);
  EXPECT_THROW(build({0.0, 2.0}, {1.0, 2.0}, Paper::log_log), LookupError);
  EXPECT_THROW(build({1.0, 2.0}, {1.0, -2.0}, Paper::log_log), LookupError);
  EXPECT_NO_THROW(build({0.0, 2.0}, {1.0, -2.0}, Paper::linear));
}

}  // namespace
}  // namespace ropewalk
