#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "ropewalk/base/table.hpp"
#include "ropewalk/sheave/bend_ratio.hpp"
#include "ropewalk/sheave/groove.hpp"
#include "ropewalk/sheave/pressure.hpp"
#include "ropewalk/sheave/strength_efficiency.hpp"
#include "ropewalk/sheave/tread_diameter.hpp"

namespace ropewalk::sheave {
namespace {

static_assert(BendRatio::formula(1.0 * meter, 1.0 * meter) == 1.0);

/// Sizes of drilling lines: 7/8 in to 2 in (common practice, no source).
std::vector<Length> drilling_line_sizes() {
  std::vector<Length> sizes;
  for (int eighths = 7; eighths <= 16; ++eighths) sizes.push_back(eighths / 8.0 * inch);
  return sizes;
}

double efficiency(double bend_ratio) { return to_si(strength_efficiency(Number(bend_ratio))); }

/// Message of the LookupError that `call` throws; a test failure if it throws none.
template <class Call>
std::string refusal(Call&& call) {
  try {
    call();
  } catch (const LookupError& error) {
    return error.what();
  }
  ADD_FAILURE() << "no LookupError";
  return {};
}

// Bend ratio and bearing pressure

TEST(BendRatioTest, UnitsCancel) {
  EXPECT_DOUBLE_EQ(bend_ratio(50.0 * inch, 1.25 * inch), 40.0);
  EXPECT_DOUBLE_EQ(bend_ratio(1270.0 * millimeter, 1.25 * inch), 40.0);
  EXPECT_THROW((void)bend_ratio(1.0 * inch, 1.25 * inch), InadmissibleError);
}

TEST(BearingPressureTest, ScalesAsForceOverArea) {
  const Force f = 30.0 * kip;
  const Stress p = bearing_pressure(f, 1.25 * inch, 50.0 * inch);
  EXPECT_DOUBLE_EQ(bearing_pressure(2.0 * f, 1.25 * inch, 50.0 * inch) / p, 2.0);
  EXPECT_DOUBLE_EQ(bearing_pressure(4.0 * f, 2.5 * inch, 100.0 * inch) / p, 1.0);
  EXPECT_DOUBLE_EQ(bearing_pressure(f, 1.25 * inch, 100.0 * inch) / p, 0.5);
  EXPECT_EQ(to_si(bearing_pressure(0.0 * f, 1.25 * inch, 50.0 * inch)), 0.0);
}

TEST(BearingPressureTest, BalancesTheRopeOverASemicircle) {
  // Two tensions pull down; the pressure on the projected area d D holds them.
  const Stress p = bearing_pressure(30.0 * kip, 1.25 * inch, 50.0 * inch);
  EXPECT_NEAR(p * (1.25 * inch) * (50.0 * inch) / (60.0 * kip), 1.0, 1e-15);
}

TEST(BearingPressureTest, ExampleAgainstThePrintedLimits) {
  // 2 x 30,000 / (1.25 x 50) = 960 psi: too much for a 6x19 rope in regular lay on cast steel, not
  // for one in lang lay (Shigley, Table 17-26, row cast steel: 900 and 1000 psi).
  const Stress p = bearing_pressure(30'000.0 * pound_force, 1.25 * inch, 50.0 * inch);
  EXPECT_NEAR(p / psi, 960.0, 1e-9);
  EXPECT_GT(p, bearing_pressure_limit("cast steel", "6x19", "regular").value);
  EXPECT_LT(p, bearing_pressure_limit("cast steel", "6x19", "lang").value);
  EXPECT_NEAR(bearing_pressure_ratio(30'000.0 * pound_force, 1.25 * inch, 50.0 * inch, 240.0 * ksi),
              0.0040, 1e-15);
}

TEST(BearingPressureTest, RatioIsPressureOverStrength) {
  const Stress strength = 1770.0 * megapascal;
  const Stress p = bearing_pressure(200.0 * kilonewton, 32.0 * millimeter, 1.0 * meter);
  const Number b =
      bearing_pressure_ratio(200.0 * kilonewton, 32.0 * millimeter, 1.0 * meter, strength);
  EXPECT_DOUBLE_EQ(b * strength / p, 1.0);
  EXPECT_THROW((void)bearing_pressure_ratio(200.0 * kilonewton, 1.1 * meter, 1.0 * meter, strength),
               InadmissibleError);
}

TEST(BearingPressureLimit, HarderGroovesAndFinerRopesBearMore) {
  const std::vector<std::string> materials{"wood", "cast iron", "cast steel", "chilled cast iron",
                                           "manganese steel"};
  const std::vector<std::string> classes{"6x7", "6x19", "6x37"};
  for (std::size_t m = 0; m < materials.size(); ++m) {
    for (std::size_t c = 0; c < classes.size(); ++c) {
      const auto limit = [&](std::size_t material, std::size_t rope_class, std::string_view lay) {
        return bearing_pressure_limit(materials[material], classes[rope_class], lay).value;
      };
      EXPECT_GT(limit(m, c, "lang"), limit(m, c, "regular"));
      if (m > 0) {
        EXPECT_GT(limit(m, c, "regular"), limit(m - 1, c, "regular"));
      }
      if (c > 0) {
        EXPECT_GT(limit(m, c, "regular"), limit(m, c - 1, "regular"));
      }
    }
  }
}

TEST(BearingPressureLimit, KnowsOtherNamesAndOffersItsOwn) {
  EXPECT_EQ(bearing_pressure_limit("Cast Steel", "6x36", "Lang").value,
            bearing_pressure_limit("cast steel", "6x37", "lang").value);
  EXPECT_NE(refusal([] {
              (void)bearing_pressure_limit("bronze", "6x19", "lang");
            }).find("wood (end grain), cast iron"),
            std::string::npos);
  // Nothing is printed for 8x19 in lang lay.
  EXPECT_NE(refusal([] {
              (void)bearing_pressure_limit("cast steel", "8x19", "lang");
            }).find("6x7, 6x19, 6x37"),
            std::string::npos);
}

// Strength efficiency

TEST(StrengthEfficiencyTest, BiggerSheavesLoseLess) {
  double before = 0.0;
  for (int tenths = 10; tenths <= 400; ++tenths) {
    const double share = efficiency(tenths / 10.0);
    EXPECT_GT(share, before);
    EXPECT_LT(share, 1.0);
    before = share;
  }
}

TEST(StrengthEfficiencyTest, LinesLieBelowTheBentCurve) {
  // Every line between printed points has at most the slope of the one before.
  const Table& printed = table("strength_efficiency");
  double slope_before = HUGE_VAL;
  for (std::size_t row = 1; row < printed.rows(); ++row) {
    const double slope =
        (printed.number(row, "strength_efficiency [%]") -
         printed.number(row - 1, "strength_efficiency [%]")) /
        (printed.number(row, "bend_ratio") - printed.number(row - 1, "bend_ratio"));
    EXPECT_LE(slope, slope_before + 1e-12);
    slope_before = slope;
  }
  EXPECT_NEAR(efficiency(25.0), 0.92, 1e-12);  // halfway between 91 % at 20 and 93 % at 30
}

TEST(StrengthEfficiencyTest, IsOnTheSafeSideOfTheApiExample) {
  // API RP 9B, 14th ed. (2015), Addendum 1 (2020), 2.3.3.5: bridle at D/d 27, efficiency 0.96.
  EXPECT_LT(efficiency(27.0), 0.96);
}

TEST(StrengthEfficiencyTest, HoldsFromOneToForty) {
  EXPECT_THROW((void)efficiency(40.01), ValidityError);
  EXPECT_THROW((void)efficiency(0.99), InadmissibleError);
  const auto [share, status] = strength_efficiency.evaluate(Policy::ignore, Number(60.0));
  EXPECT_EQ(to_si(share), efficiency(40.0));
  EXPECT_EQ(status, RowStatus::outside_validity);
}

// Groove

TEST(GrooveTest, GaugesAreOrderedAndTakeAnOversizeRope) {
  for (const Length& d : drilling_line_sizes()) {
    EXPECT_LT(groove_radius_worn_min(d), groove_radius_new_min(d));
    EXPECT_LT(groove_radius_new_min(d), groove_radius_new_max(d));
    // API Spec 9A: a rope of 8 mm and more is up to 5 % over its nominal diameter.
    EXPECT_GT(groove_radius_new_min(d), 1.05 * d / 2.0);
    EXPECT_LT(groove_depth_min(d), groove_depth_max(d));
    EXPECT_GT(groove_depth_min(d), groove_radius_new_max(d));
  }
}

TEST(GrooveTest, GaugesScaleWithTheRope) {
  EXPECT_DOUBLE_EQ(groove_radius_new_min(2.0 * inch) / inch, 1.06);
  EXPECT_DOUBLE_EQ(groove_radius_new_max(2.0 * inch) / inch, 1.10);
  EXPECT_DOUBLE_EQ(groove_radius_worn_min(2.0 * inch) / inch, 1.025);
  // API RP 9B, 13th ed. (2011), p. 19: 1.33 and 1.75 times 1-1/8 in.
  EXPECT_NEAR(groove_depth_min(1.125 * inch) / inch, 1.496, 5e-4);
  EXPECT_NEAR(groove_depth_max(1.125 * inch) / inch, 1.969, 5e-4);
}

TEST(GrooveTable, PrintedNewRadiiPassThePresentGauge) {
  const Table& printed = table("groove_radii");
  int sizes = 0;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    if (printed.text(row, "state") != "new") continue;
    const Length d = printed.number(row, "rope_diameter [in]") * inch;
    const Length radius = groove_radius_table(d, "new").value;
    EXPECT_GE(radius, groove_radius_new_min(d)) << printed.line(row);
    EXPECT_LE(radius, groove_radius_new_max(d)) << printed.line(row);
    EXPECT_GT(radius, groove_radius_table(d, "worn").value) << printed.line(row);
    ++sizes;
  }
  EXPECT_EQ(sizes, 14);
}

TEST(GrooveTable, PrintedWornRadiiMeetTheGaugeAtSomeSizes) {
  // They agree to the thousandth of an inch printed at these sizes, not in between.
  for (const double inches : {0.5, 0.625, 1.0, 1.125, 1.625, 1.75, 2.0}) {
    EXPECT_NEAR(groove_radius_table(inches * inch, "worn").value / inch,
                groove_radius_worn_min(inches * inch) / inch, 0.00055)
        << inches;
  }
  EXPECT_LT(groove_radius_table(1.375 * inch, "worn").value, groove_radius_worn_min(1.375 * inch));
}

TEST(GrooveTable, NothingIsMadeUpBetweenSizes) {
  EXPECT_NE(refusal([] {
              (void)groove_radius_table(1.3 * inch, "new");
            }).find("1.25 in (31.75 mm) and 1.375 in (34.925 mm)"),
            std::string::npos);
  EXPECT_NE(refusal([] { (void)groove_radius_table(inch, "old"); }).find("worn, new"),
            std::string::npos);
  EXPECT_THROW((void)groove_radius_table(-1.0 * inch, "new"), InadmissibleError);
  EXPECT_EQ(groove_radius_table(25.4 * millimeter, "new").provenance.standing, "from memory");
  EXPECT_EQ(groove_radius_table(25.4 * millimeter, "worn").provenance.standing, "published");
}

// Tread diameter

TEST(TreadDiameter, ConditionAIsTheLargerSheave) {
  const Table& printed = table("tread_diameters");
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    const std::string_view construction = printed.text(row, "construction");
    EXPECT_GT(tread_diameter(construction, "A", inch).value,
              tread_diameter(construction, "B", inch).value);
    EXPECT_DOUBLE_EQ(tread_diameter(construction, "A", 2.0 * inch).value /
                         tread_diameter(construction, "A", inch).value,
                     2.0);
  }
}

TEST(TreadDiameter, DrillingLineOnRigSheaves) {
  // 51 and 30 times 1-3/8 in, Lyons Table 4-35, 6x19 Seale.
  EXPECT_NEAR(tread_diameter("6x19S", "A", 1.375 * inch).value / inch, 70.125, 1e-9);
  EXPECT_NEAR(tread_diameter("6x19 Seale IWRC", "b", 1.375 * inch).value / inch, 41.25, 1e-9);
  // Traveling-block sheaves have 24 to 72 in, crown sheaves 42 to 72 in (common practice, no
  // source): the sheave condition B advises is one that is made, for every size of drilling line.
  for (const Length& d : drilling_line_sizes()) {
    const Length tread = tread_diameter("6x19S", "B", d).value;
    EXPECT_GE(tread, 24.0 * inch);
    EXPECT_LE(tread, 72.0 * inch);
  }
  const Length crown = tread_diameter("6x19S", "A", 1.375 * inch).value;
  EXPECT_TRUE(crown >= 42.0 * inch && crown <= 72.0 * inch);
}

TEST(TreadDiameter, OffersWhatThereIs) {
  EXPECT_NE(refusal([] { (void)tread_diameter("6x26WS", "A", inch); }).find("6x25FW"),
            std::string::npos);
  EXPECT_NE(refusal([] { (void)tread_diameter("6x19S", "C", inch); }).find("A, B"),
            std::string::npos);
}

}  // namespace
}  // namespace ropewalk::sheave
