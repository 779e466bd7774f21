/// Row formulas, tables and collectives of the subject fatigue: identities, limits, bad input.
/// Published numbers stand in reference-cases/fatigue; those a case file cannot say stand here.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <string>
#include <vector>

#include "ropewalk/base/table.hpp"
#include "ropewalk/fatigue/collective.hpp"
#include "ropewalk/fatigue/discard_wire_breaks.hpp"
#include "ropewalk/fatigue/en13001.hpp"
#include "ropewalk/fatigue/en81_50.hpp"
#include "ropewalk/fatigue/endurance.hpp"
#include "ropewalk/fatigue/feyrer_factors.hpp"
#include "ropewalk/fatigue/optimal_diameter.hpp"
#include "ropewalk/fatigue/shigley.hpp"

namespace ropewalk::fatigue {
namespace {

constexpr Number ratio(double value) { return from_si<Number>(value); }

/// A number rounded to significant digits, as a table prints it.
double rounded(double value, int digits) {
  const double unit = std::pow(10.0, std::floor(std::log10(value)) + 1 - digits);
  return std::round(value / unit) * unit;
}

// Size, length, side deflection, reverse bending

TEST(FatigueFactorTest, AreOneAtTheirReference) {
  // 0.52 - 1 + 0.48 = 0 and 1.49 - 2.49 + 1 = 0: this fixes the minus signs of Table 3.14a.
  EXPECT_NEAR(size_factor(16.0 * millimeter), 1.0, 1e-15);
  EXPECT_NEAR(length_factor(ratio(60.0)), 1.0, 1e-15);
  EXPECT_EQ(to_si(fleet_angle_factor(ratio(25.0), 0.0 * degree)), 1.0);
}

TEST(FatigueFactorTest, ThicknessLengthAndAngleCostLife) {
  for (double d = 8.0; d < 44.0; d += 1.0) {
    EXPECT_GT(size_factor(d * millimeter), size_factor((d + 1.0) * millimeter));
  }
  for (double l = 10.0; l < 2000.0; l *= 1.3) {
    EXPECT_GT(length_factor(ratio(l)), length_factor(ratio(1.3 * l)));
  }
  for (double angle = 0.0; angle < 3.5; angle += 0.5) {
    EXPECT_GT(fleet_angle_factor(ratio(30.0), angle * degree),
              fleet_angle_factor(ratio(30.0), (angle + 0.5) * degree));
  }
}

TEST(FatigueFactorTest, RefusePolesAndMarkTheRange) {
  EXPECT_THROW((void)size_factor(1.3 * millimeter), InadmissibleError);
  EXPECT_THROW((void)length_factor(ratio(2.5)), InadmissibleError);
  EXPECT_THROW((void)size_factor(50.8 * millimeter), ValidityError);
  EXPECT_EQ(size_factor.evaluate(Policy::ignore, 50.8 * millimeter).second,
            RowStatus::outside_validity);
  EXPECT_THROW((void)length_factor(ratio(9.0)), ValidityError);
  // At 8 degrees and D/d = 60 the fit has gone below zero.
  EXPECT_THROW((void)fleet_angle_factor(ratio(60.0), 8.0 * degree), InadmissibleError);
}

TEST(ReverseBendingTest, NeverGivesMoreThanSimpleBending) {
  for (double n = 1.0; n < 1e8; n *= 2.0) {
    const double reverse = reverse_bending_cycles(ratio(n), ratio(25.0));
    EXPECT_LE(reverse, n);
    EXPECT_GE(reverse_bending_cycles(ratio(2.0 * n), ratio(25.0)), reverse);
  }
  EXPECT_EQ(to_si(reverse_bending_cycles(ratio(5e3), ratio(25.0))), 5e3);
}

// Endurance tables

TEST(EnduranceTest, GroovesAreReciprocalsOfTheLiftStandard) {
  // Two publications print the same table, one as a factor on life, one as a number of sheaves.
  const Table& factors = table("endurance_shaped_groove");
  const Table& sheaves = table("en81_50_grooves");
  ASSERT_EQ(factors.rows(), sheaves.rows());
  for (std::size_t row = 0; row < factors.rows(); ++row) {
    ASSERT_EQ(factors.text(row, "groove"), sheaves.text(row, "groove"));
    ASSERT_EQ(factors.number(row, "angle [deg]"), sheaves.number(row, "angle [deg]"));
    const double reciprocal = 1.0 / sheaves.number(row, "equivalent_sheaves");
    EXPECT_DOUBLE_EQ(factors.number(row, "factor"), rounded(reciprocal, 2)) << "row " << row;
  }
}

TEST(EnduranceTest, InterpolatesBetweenPrintedPointsOnly) {
  EXPECT_DOUBLE_EQ(round_groove_factor(ratio(0.65)).value, (0.66 + 0.54) / 2.0);
  EXPECT_THROW((void)round_groove_factor(ratio(0.5)), InadmissibleError);
  EXPECT_THROW((void)shaped_groove_factor("V", 30.0 * degree), InadmissibleError);
  const double between = shaped_groove_factor("undercut", 92.0 * degree).value;
  EXPECT_LT(between, 0.20);
  EXPECT_GT(between, 0.15);
  EXPECT_DOUBLE_EQ(en81_groove_equivalent("round", not_given<Angle>()), 1.0);
}

TEST(EnduranceTest, UnknownNamesAreOfferedTheKnownOnes) {
  try {
    (void)core_factor("IWRC", 7);
    FAIL();
  } catch (const LookupError& error) {
    EXPECT_NE(std::string(error.what()).find("IWRC with 6 strands"), std::string::npos);
  }
  EXPECT_THROW((void)lubrication_factor("some"), LookupError);
  EXPECT_THROW((void)shaped_groove_factor("U", 90.0 * degree), LookupError);
  EXPECT_THROW((void)construction_factor("6x19 IWRC"), LookupError);
}

TEST(EnduranceTest, ConstructionFactorLooksPastTheCore) {
  EXPECT_EQ(construction_factor("6x19S IWRC").value, construction_factor("6x19S").value);
  EXPECT_EQ(construction_factor("6x25F FC").value, 1.0);
  EXPECT_EQ(construction_factor("19x7").value, construction_factor("18x7").value);
}

TEST(EnduranceTest, FactorsMultiplyAndKeepTheirNames) {
  EnduranceFactors factors;
  EXPECT_EQ(to_si(factors.product()), 1.0);
  factors.add(lubrication_factor("none"));
  factors.add(round_groove_factor(ratio(0.55)));
  EXPECT_DOUBLE_EQ(factors.product(), 0.2 * 0.79);
  EXPECT_THROW(factors.add(lubrication_factor("none")), InadmissibleError);
  EXPECT_THROW(factors.add({"wear", 0.0, "", ""}), InadmissibleError);
  EXPECT_EQ(factors.factors().size(), 2U);
}

// Wire breaks

TEST(DiscardTest, LimitingForceInvertsTheWireBreaks) {
  for (const DiscardConstants& rope : discard_constructions()) {
    const auto breaks = [&](Force tension) {
      return discard_wire_breaks(tension, 20.0 * millimeter, 500.0 * millimeter, ratio(rope.g0),
                                 ratio(rope.g1), ratio(rope.g2), ratio(rope.g3));
    };
    for (const double wanted : {2.0, 5.0, 8.0}) {
      const Force limit =
          discard_limiting_force(ratio(wanted), 20.0 * millimeter, 500.0 * millimeter,
                                 ratio(rope.g0), ratio(rope.g1), ratio(rope.g2), ratio(rope.g3));
      EXPECT_NEAR(breaks(limit), wanted, 1e-12) << rope.construction;
    }
    EXPECT_THROW((void)breaks(1000.0 * kilonewton), InadmissibleError);
  }
  EXPECT_THROW((void)discard_constants("7x7"), LookupError);
}

TEST(DiscardTest, MoreWireBreaksThanARopeShowsAreRefused) {
  const DiscardConstants& rope = discard_constants("FC-8x19");
  EXPECT_THROW(
      (void)discard_limiting_force(ratio(20.0), 20.0 * millimeter, 500.0 * millimeter,
                                   ratio(rope.g0), ratio(rope.g1), ratio(rope.g2), ratio(rope.g3)),
      InadmissibleError);
}

// Standards

TEST(En13001Test, ProofIsACubicLaw) {
  // Half the force: eight times the bendings at the same utilization.
  const Force strength = 700.0 * kilonewton;
  const auto used = [&](Force force, double bendings) {
    const Number history = en13001_force_history(ratio(1.0), ratio(bendings));
    return to_si(en13001_utilization(force, strength, ratio(1.0), history));
  };
  EXPECT_NEAR(used(100.0 * kilonewton, 5e5), 1.0, 1e-15);
  EXPECT_NEAR(used(126.0 * kilonewton, 2e5), used(63.0 * kilonewton, 1.6e6), 1e-14);
  EXPECT_THROW((void)used(50.0 * kilonewton, 4e6), ValidityError);
}

TEST(En13001Test, StaticFactorFallsToItsFloor) {
  // The formula alone reaches 2.07 near D/d = 19.9.
  EXPECT_GT(en13001_static_factor(ratio(19.5)), 2.07);
  EXPECT_EQ(to_si(en13001_static_factor(ratio(40.0))), 2.07);
  EXPECT_THROW((void)en13001_static_factor(ratio(10.0)), ValidityError);
  EXPECT_THROW((void)en13001_static_factor(ratio(5.65)), InadmissibleError);
}

TEST(En81Test, SafetyFactorFollowsTheCrossedPowers) {
  // lg S_f is linear in lg N_equiv with slope -1/lg(77.09 (D/d)^-2.894).
  const auto lg = [](double n) {
    return std::log10(to_si(en81_safety_factor(ratio(40.0), ratio(n))));
  };
  EXPECT_NEAR(lg(100.0) - lg(10.0), lg(10.0) - lg(1.0), 1e-14);
  EXPECT_GT(lg(2.0), lg(1.0));
  EXPECT_LT(to_si(en81_safety_factor(ratio(50.0), ratio(5.0))),
            to_si(en81_safety_factor(ratio(40.0), ratio(5.0))));
  EXPECT_THROW((void)en81_safety_factor(ratio(30.0), ratio(5.0)), ValidityError);
}

// Optimal diameter

TEST(OptimalDiameterTest, GrowsWithRootOfSheaveAndFourthRootOfTension) {
  for (const double b4 : {-1.6, -2.9}) {
    const auto best = [&](Force tension, Length sheave) {
      return optimal_rope_diameter(tension, sheave, 1770.0 * megapascal, ratio(0.3), ratio(6.2),
                                   ratio(-0.32), ratio(b4));
    };
    const Length d = best(5.0 * kilonewton, 0.6 * meter);
    EXPECT_NEAR(best(80.0 * kilonewton, 2.4 * meter) / d, 4.0, 4e-12);
  }
  EXPECT_THROW((void)optimal_rope_diameter(5.0 * kilonewton, 0.6 * meter, 1770.0 * megapascal,
                                           ratio(0.3), ratio(6.2), ratio(-0.32), ratio(0.5)),
               InadmissibleError);
}

// Hoist rope

TEST(HoistRopeTest, BendingLoadIsStressTimesMetal) {
  const Stress stress = wire_bending_stress(12e6 * psi, 0.067 * inch, 72.0 * inch);
  const Force load = bending_load(12e6 * psi, 0.067 * inch, 0.4 * square_inch, 72.0 * inch);
  EXPECT_NEAR(load / (stress * (0.4 * square_inch)), 1.0, 1e-15);
}

TEST(HoistRopeTest, FreeFallLeavesNoTension) {
  const auto tension = [](Acceleration a) {
    return hoist_rope_tension(2.0 * kip, ratio(1.0), 1.6 * pound_force_per_foot, 500.0 * foot, a);
  };
  EXPECT_EQ(to_si(tension(-standard_gravity)), 0.0);
  EXPECT_NEAR(tension(standard_gravity) / tension(0.0 * meter_per_second_squared), 2.0, 1e-15);
  EXPECT_THROW((void)tension(-1.01 * standard_gravity), InadmissibleError);
}

TEST(HoistRopeTest, SafetyHasItsBestDiameterInside) {
  // Shigley's mine hoist (from memory): with one rope the safety factor peaks near 3/4 in.
  const auto safety = [](double inches) {
    const Length d = inches * inch;
    const Force fatigue = fatigue_tension(ratio(0.0014), 240.0 * ksi, d, 72.0 * inch);
    const Force bending = bending_load(12e6 * psi, 0.067 * d, 0.4 * d * d, 72.0 * inch);
    const ForcePerLength weight = 1.6 * inches * inches * pound_force_per_foot;
    const Force tension = hoist_rope_tension(2.0 * kip, ratio(1.0), weight, 531.5 * foot,
                                             2.0 * foot / second / second);
    return to_si(fatigue_safety_factor(fatigue, bending, tension));
  };
  double best = 0.0;
  for (double d = 0.25; d <= 1.0; d += 0.005) {
    if (safety(d) > safety(best == 0.0 ? 0.25 : best)) best = d;
  }
  EXPECT_NEAR(best, 0.75, 0.05);
  EXPECT_LT(safety(0.625), safety(0.75));
  EXPECT_LT(safety(0.875), safety(0.75));
}

// Collectives

TEST(CollectiveTest, OneForceIsItsOwnEquivalent) {
  const std::vector<double> shares{0.2, 0.3, 0.5};
  for (const double p : {-1.5, -2.2, -3.0}) {
    EXPECT_NEAR(equivalent_force_ratio(shares, std::vector<double>{0.7, 0.7, 0.7}, p), 0.7, 1e-15);
  }
  EXPECT_DOUBLE_EQ(force_spectrum_factor(shares, std::vector<double>{1.0, 1.0, 1.0}), 1.0);
  EXPECT_NEAR(collective_life(shares, std::vector<double>{8e4, 8e4, 8e4}), 8e4, 1e-9);
}

TEST(CollectiveTest, EquivalentForceGivesTheLifeOfTheDamageSum) {
  // Lives by a power law: the life at the equivalent force is the life under the collective.
  const std::vector<double> shares{5000.0, 3000.0, 2000.0};
  const std::vector<double> forces{1.0, 0.7, 0.4};
  const double p = -2.2;
  std::vector<double> lives;
  for (const double force : forces) lives.push_back(1e5 * std::pow(force, p));
  const double equivalent = equivalent_force_ratio(shares, forces, p);
  EXPECT_NEAR(collective_life(shares, lives) / (1e5 * std::pow(equivalent, p)), 1.0, 1e-14);
}

TEST(CollectiveTest, CubeOfTheEquivalentForceIsTheSpectrumFactor) {
  const std::vector<double> shares{0.2, 0.3, 0.5};
  const std::vector<double> forces{1.0, 0.8, 0.5};
  EXPECT_NEAR(std::pow(equivalent_force_ratio(shares, forces, -3.0), 3.0),
              force_spectrum_factor(shares, forces), 1e-15);
}

TEST(CollectiveTest, NamesWhatIsWrong) {
  const std::vector<double> two{0.5, 0.5};
  const std::vector<double> three{1.0, 1.0, 1.0};
  const std::vector<double> bad{1.0, -0.1};
  EXPECT_THROW((void)miner_sum(two, three), InadmissibleError);
  EXPECT_THROW((void)equivalent_force_ratio(two, two, 1.0), InadmissibleError);
  EXPECT_THROW((void)force_spectrum_factor(two, std::vector<double>{1.2, 1.0}), InadmissibleError);
  EXPECT_THROW((void)collective_life(std::vector<double>{0.0, 0.0}, two), InadmissibleError);
  EXPECT_THROW((void)miner_sum({}, {}), InadmissibleError);
  try {
    (void)miner_sum(two, bad);
    FAIL();
  } catch (const InadmissibleError& error) {
    EXPECT_EQ(error.field(), "lives[1]");
  }
}

}  // namespace
}  // namespace ropewalk::fatigue
