#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <limits>
#include <numeric>

#include "ropewalk/base/batch.hpp"
#include "ropewalk/reeving/kinematics.hpp"
#include "ropewalk/reeving/line_tension.hpp"
#include "ropewalk/reeving/sheave_friction.hpp"

namespace ropewalk::reeving {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }
constexpr double epsilon = std::numeric_limits<double>::epsilon();
constexpr std::array frictions{1.0,  1.0 + 1e-15, 1.0 + 1e-12, 1.0 + 1e-6, 1.01,
                               1.04, 1.09,        1.5,         2.0};

/// K^0 + … + K^(N−1), term by term and in more digits.
long double sum_of_powers(long double k, int terms) {
  long double sum = 0.0L;
  long double power = 1.0L;
  for (int i = 0; i < terms; ++i, power *= k) sum += power;
  return sum;
}

long double efficiency_by_terms(int lines, double k, int lead) {
  return sum_of_powers(k, lines) /
         (lines * std::pow(static_cast<long double>(k), static_cast<long double>(lines + lead)));
}

double efficiency_of(int lines, double k, int lead) {
  return efficiency(number(lines), number(k), number(lead));
}

/// Calls `look(lines, friction, lead_sheaves)` over the whole admissible domain.
template <class Look>
void everywhere(const Look& look) {
  for (int lines = 2; lines <= 64; ++lines) {
    for (const double k : frictions) {
      for (const int lead : {0, 1, 2, 16}) look(lines, k, lead);
    }
  }
}

// --- The closed form

TEST(EfficiencyTest, AgreesWithTheSumTermByTerm) {
  everywhere([](int lines, double k, int lead) {
    const long double expected = efficiency_by_terms(lines, k, lead);
    // Every factor of K^(N + lead) may add half a rounding error.
    const double allowed = (lines + lead) * epsilon;
    const double error = static_cast<double>(efficiency_of(lines, k, lead) / expected - 1.0L);
    EXPECT_LE(std::abs(error), allowed) << lines << " " << k << " " << lead;
  });
}

TEST(EfficiencyTest, IsExactlyOneWithoutFriction) {
  for (int lines = 2; lines <= 64; ++lines) {
    for (int lead = 0; lead <= 16; ++lead) {
      EXPECT_EQ(efficiency_of(lines, 1.0, lead), 1.0);
      EXPECT_EQ(lowering_efficiency(number(lines), number(1.0), number(lead)), number(1.0));
      EXPECT_EQ(fast_line_factor(number(lines), number(1.0), number(lead)), number(1.0 / lines));
    }
  }
}

TEST(EfficiencyTest, LeavesOneAlongItsTangent) {
  // EF = 1 − (K − 1) ((N + 1)/2 + lead) + O((K − 1)²), from the sum by hand.
  for (const double step : {1e-12, 1e-9}) {
    const double k = 1.0 + step;
    everywhere([&](int lines, double, int lead) {
      const double slope = (lines + 1) / 2.0 + lead;
      EXPECT_NEAR(1.0 - efficiency_of(lines, k, lead), (k - 1.0) * slope,
                  slope * slope * step * step + (lines + lead) * epsilon);
    });
  }
}

TEST(EfficiencyTest, FallsWithLinesFrictionAndLeadSheaves) {
  everywhere([](int lines, double k, int lead) {
    if (k < 1.0 + 1e-6 || k == 2.0 || lines == 64 || lead == 16) return;
    const double here = efficiency_of(lines, k, lead);
    EXPECT_LT(efficiency_of(lines + 1, k, lead), here);
    EXPECT_LT(efficiency_of(lines, k * 1.001, lead), here);
    EXPECT_NEAR(efficiency_of(lines, k, lead + 1), here / k, 4 * epsilon);
  });
}

TEST(EfficiencyTest, OneMoreLineLiftsItsOwnTensionMore) {
  // The fast line given, line N + 1 counted from the drum carries T / K^(N + 1 + lead).
  everywhere([](int lines, double k, int lead) {
    if (lines == 64) return;
    const auto lifted = [&](int n) {
      return hoisted_hook_load(1.0 * newton, number(n), number(k), number(lead)) / newton;
    };
    const double step = std::pow(k, -(lines + 1.0 + lead));
    EXPECT_NEAR(lifted(lines + 1) - lifted(lines), step, 64 * epsilon * lifted(lines));
  });
}

TEST(LoweringTest, IsHoistingWithTheInverseFriction) {
  everywhere([](int lines, double k, int lead) {
    const long double q = 1.0L / k;
    const long double fast_over_load =
        std::pow(q, static_cast<long double>(lines + lead)) / sum_of_powers(q, lines);
    const double factor =
        lowering_efficiency(number(lines), number(k), number(lead)) / static_cast<double>(lines);
    EXPECT_NEAR(factor / static_cast<double>(fast_over_load), 1.0, 3.0 * (lines + lead) * epsilon);
  });
}

TEST(TwoDrumTest, EachHalfIsAReevingOfItsOwn) {
  for (int lines = 4; lines <= 64; lines += 2) {
    const Number both = two_drum_efficiency(number(lines), number(1.04), number(1.0));
    EXPECT_EQ(both, efficiency(number(lines / 2.0), number(1.04), number(1.0)));
    // API RP 9B, case D: 2 (K^(N/2) − 1) / (K^(S/2) N (K − 1)) with S/2 = N/2 + 1.
    const double half = std::pow(1.04, lines / 2.0);
    EXPECT_NEAR(both, 2.0 * (half - 1.0) / (half * 1.04 * lines * 0.04), 1e-13);
  }
  EXPECT_THROW((void)two_drum_efficiency(number(7.0), number(1.04), number(0.0)),
               InadmissibleError);
}

TEST(LineTensionTest, FormulasAgreeWithEachOther) {
  const Force load = 1.0 * kip;
  everywhere([&](int lines, double k, int lead) {
    const Number n = number(lines);
    const Number friction = number(k);
    const Force fast = fast_line_tension(load, n, friction, number(lead));
    const Force dead = dead_line_tension(load, n, friction);
    EXPECT_NEAR(fast / (dead * std::pow(k, lines + lead)), 1.0, 4.0 * (lines + lead) * epsilon);
    EXPECT_NEAR(hoisted_hook_load(fast, n, friction, number(lead)) / load, 1.0, 4 * epsilon);
    const Number ef = efficiency(n, friction, number(lead));
    EXPECT_NEAR(fast_line_tension_at_efficiency(load, n, ef) / fast, 1.0, 4 * epsilon);
    const Force fast_at_crown = fast_line_tension(load, n, friction, number(0.0));
    const Force crown = load + fast_at_crown + (lines % 2 == 0 ? 1.0 : 0.0) * dead;
    EXPECT_NEAR(crown_load(load, n, friction) / crown, 1.0, 4 * epsilon);
  });
}

// --- Printed values that are not among the reference cases

TEST(LineTensionTest, MultiplesOfTheWellEngineersNotebook) {
  // Shell International Exploration and Production, Well Engineers Notebook, ed. 2 (2001), p. B-1:
  // dynamic fast-line and dead-line factors for k = 1.04, in multiples of W/N.
  struct Row {
    int lines;
    double fast;
    double dead;
  };
  for (const Row& row : {Row{2, 1.060, 0.980}, Row{4, 1.102, 0.942}, Row{6, 1.145, 0.905},
                         Row{8, 1.188, 0.868}, Row{10, 1.233, 0.833}, Row{12, 1.279, 0.799}}) {
    const Force load = static_cast<double>(row.lines) * newton;
    const Number lines = number(row.lines);
    EXPECT_NEAR(fast_line_tension(load, lines, number(1.04), number(0.0)) / newton, row.fast,
                0.0005);
    EXPECT_NEAR(dead_line_tension(load, lines, number(1.04)) / newton, row.dead, 0.0005);
  }
}

TEST(LineTensionTest, DrawworksExampleOfBourgoyne) {
  // Bourgoyne, Millheim, Chenevert & Young, Applied Drilling Engineering (SPE, 1986), Example 1.2:
  // 300,000 lbf on 8 lines with E = 0.841 and 500 hp give 44,590 lbf and a block at 46.3 ft/min.
  const Force fast = fast_line_tension_at_efficiency(300.0 * kip, number(8.0), number(0.841));
  EXPECT_NEAR(fast / pound_force, 44'590.0, 0.5);
  const Speed block = 500.0 * horsepower / fast / 8.0;
  EXPECT_NEAR(block / foot_per_minute, 46.3, 0.05);
  EXPECT_NEAR(300.0 * kip * block / horsepower, 420.5, 0.05);
  EXPECT_NEAR(line_speeds(8, block).back() * fast / horsepower, 500.0, 1e-9);
}

TEST(SheaveFrictionTest, LooksUpTheBearing) {
  EXPECT_EQ(sheave_friction("roller").value, number(1.04));
  EXPECT_EQ(sheave_friction("Plain").value, number(1.09));
  try {
    (void)sheave_friction("magnetic");
    FAIL();
  } catch (const LookupError& error) {
    EXPECT_STREQ(error.what(),
                 "reeving.sheave_friction(): there is no sheave friction for 'magnetic' bearings; "
                 "there is: roller, plain");
  }
}

// --- Batches

TEST(EfficiencyTest, BatchGivesTheBitsOfTheScalarCallAndMarksBadRows) {
  std::vector<double> lines;
  std::vector<double> friction;
  std::vector<double> lead;
  everywhere([&](int n, double k, int l) {
    lines.push_back(n);
    friction.push_back(k);
    lead.push_back(l);
  });
  lines[7] = 2.5;
  friction[700] = 0.99;
  std::vector<double> values(lines.size());
  std::vector<RowStatus> status(lines.size());
  const BatchReport report =
      batch<Efficiency>({Column{lines.data()}, Column{friction.data()}, Column{lead.data()}},
                        lines.size(), values.data(), status.data(), 2);
  EXPECT_EQ(report.marked_rows, 2U);
  EXPECT_EQ(report.first_marked_row, 7U);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (i == 7 || i == 700) {
      EXPECT_TRUE(std::isnan(values[i]));
      EXPECT_EQ(status[i], RowStatus::inadmissible);
    } else {
      EXPECT_EQ(values[i], efficiency(number(lines[i]), number(friction[i]), number(lead[i])));
    }
  }
}

// --- Kinematics

TEST(KinematicsTest, SheavePassesItsNumberTimesTheTravelOfTheBlock) {
  for (const int lines : {2, 7, 10, 64}) {
    const auto speeds = line_speeds(lines, -0.5 * meter_per_second);
    const auto travel = line_travel(lines, 93.0 * foot);
    ASSERT_EQ(speeds.size(), static_cast<std::size_t>(lines));
    for (std::size_t i = 0; i < speeds.size(); ++i) {
      const auto sheave = static_cast<double>(i + 1);
      EXPECT_EQ(to_si(speeds[i]), -0.5 * sheave);
      EXPECT_DOUBLE_EQ(travel[i] / foot, 93.0 * sheave);
    }
  }
}

TEST(KinematicsTest, RimRunsAsFastAsTheRope) {
  const std::vector<Length> diameters{60.0 * inch, 62.0 * inch, 48.0 * inch};
  const auto speeds = line_speeds(3, 1.5 * meter_per_second);
  const auto rotations = sheave_rotations(3, 1.5 * meter_per_second, diameters);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_DOUBLE_EQ(to_si(rim_speed(rotations[i], diameters[i] / 2.0)), to_si(speeds[i]));
  }
  const std::vector<Length> one{60.0 * inch};
  EXPECT_EQ(to_si(sheave_rotations(3, 1.5 * meter_per_second, one)[0]), to_si(rotations[0]));
  const std::vector<Length> two{60.0 * inch, 60.0 * inch};
  EXPECT_THROW((void)sheave_rotations(3, 1.5 * meter_per_second, two), InadmissibleError);
  const std::vector<Length> none{0.0 * meter};
  EXPECT_THROW((void)sheave_rotations(3, 1.5 * meter_per_second, none), InadmissibleError);
  EXPECT_THROW((void)line_speeds(1, 1.0 * meter_per_second), InadmissibleError);
  EXPECT_THROW((void)line_travel(10, from_si<Length>(NAN)), InadmissibleError);
}

}  // namespace
}  // namespace ropewalk::reeving
