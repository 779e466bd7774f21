#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "ropewalk/drillstring/drag.hpp"
#include "ropewalk/drillstring/string.hpp"
#include "ropewalk/drillstring/tool_joint.hpp"
#include "ropewalk/drillstring/tubular.hpp"

namespace ropewalk::drillstring {
namespace {

constexpr Density ppg = pound_per_gallon;
constexpr Number number(double x) { return from_si<Number>(x); }

template <class Q>
double in(Q quantity, Q unit) {
  return quantity / unit;
}

// --- Weight

TEST(Buoyancy, NoMudNoBuoyancy) { EXPECT_EQ(to_si(buoyancy_factor(0.0 * ppg, 65.5 * ppg)), 1.0); }

TEST(Buoyancy, PublishedFactors) {
  // Lapeyrouse, Formulas and Calculations, 2nd ed. (2002), p. 44 ff.: steel at 65.5 lb/gal.
  EXPECT_NEAR(to_si(buoyancy_factor(9.6 * ppg, 65.5 * ppg)), 0.8534, 0.00005);
  EXPECT_NEAR(to_si(buoyancy_factor(10.0 * ppg, 65.5 * ppg)), 0.8473, 0.00005);
}

TEST(Buoyancy, MudHeavierThanTheStringIsRefused) {
  EXPECT_THROW((void)buoyancy_factor(66.0 * ppg, 65.5 * ppg), InadmissibleError);
}

TEST(Tube, TubesInsideEachOtherAddUp) {
  const Density steel = 7850.0 * kilogram_per_cubic_meter;
  const auto outer = tube_mass_per_length(8.0 * inch, 5.0 * inch, steel);
  const auto inner = tube_mass_per_length(5.0 * inch, 2.0 * inch, steel);
  const auto both = tube_mass_per_length(8.0 * inch, 2.0 * inch, steel);
  EXPECT_NEAR(to_si(outer + inner) / to_si(both), 1.0, 1e-15);
}

TEST(Tube, PoundsOfPipeWeighPoundsForce) {
  const auto weight = buoyed_weight_per_length(19.5 * pound_per_foot, number(1.0));
  EXPECT_NEAR(in(weight, pound_force_per_foot), 19.5, 1e-12);
}

TEST(Tubulars, DrillCollarsFollowTheRuleOfTheTrade) {
  // w = 2.67 (OD² − ID²) lb/ft, common practice; 2.67 stands for steel of 489.5 lb/ft³.
  const Density steel = 489.5 * pound / (foot * foot * foot);
  int collars = 0;
  for (const Tubular& row : tubulars()) {
    if (row.kind != "drill collar") continue;
    ++collars;
    ASSERT_TRUE(row.inner_diameter.has_value()) << row.designation;
    const auto rule = tube_mass_per_length(row.outer_diameter, *row.inner_diameter, steel);
    EXPECT_NEAR(in(row.mass_per_length, pound_per_foot), in(rule, pound_per_foot), 1.1)
        << row.designation;
  }
  EXPECT_GE(collars, 20);
}

TEST(Tubulars, DrillPipeWithJointsWeighsMoreThanItsName) {
  for (const Tubular& row : tubulars()) {
    if (row.kind != "drill pipe") continue;
    ASSERT_TRUE(row.nominal_weight.has_value()) << row.designation;
    const double ratio = row.mass_per_length / *row.nominal_weight;
    EXPECT_GT(ratio, 1.0) << row.designation;
    EXPECT_LT(ratio, 1.25) << row.designation;
  }
}

TEST(Tubulars, AreFoundByDesignation) {
  EXPECT_EQ(tubular("dc  8 X 2 13/16 IN").designation, "DC 8 x 2 13/16 in");
  // Lyons, Guo and Seidel, Air and Gas Drilling Manual, 2nd ed. (2001), p. 3-24.
  EXPECT_NEAR(in(tubular("DP 2 3/8 in 6.65 E75 NC26").mass_per_length, pound_per_foot), 6.99,
              1e-12);
}

TEST(Tubulars, AnUnknownOneIsRefusedWithAnOffer) {
  try {
    (void)tubular("HWDP 7 in");
    FAIL();
  } catch (const LookupError& error) {
    EXPECT_NE(std::string(error.what()).find("'HWDP 5 in'"), std::string::npos) << error.what();
    EXPECT_EQ(std::string(error.what()).find("casing"), std::string::npos) << error.what();
  }
}

// --- Tool joints

TEST(ToolJoint, WithoutTaperItIsATube) {
  const auto mass = tool_joint_mass(17.0 * inch, 6.0 * inch, 3.0 * inch, 6.0 * inch);
  EXPECT_NEAR(in(mass, pound), 0.222 * 17.0 * (36.0 - 9.0), 1e-9);
}

TEST(ToolJoint, PrintedNumbersAreSteelWithTapersOf18And35Degrees) {
  // The solid itself: cylinder, two frustums, less the bore through all of it.
  const double L = 17.0, D = 6.375, d = 3.75, D_TE = 5.125, steel = 0.2836;
  double volume = pi / 4.0 * L * D * D;
  double length = L;
  for (const double taper : {18.0, 35.0}) {
    const double h = (D - D_TE) / 2.0 / std::tan(taper * pi / 180.0);
    volume += pi / 12.0 * h * (D * D + D * D_TE + D_TE * D_TE);
    length += h;
  }
  volume -= pi / 4.0 * d * d * length;
  const auto mass = tool_joint_mass(L * inch, D * inch, d * inch, D_TE * inch);
  EXPECT_NEAR(in(mass, pound), steel * volume, 0.004 * steel * volume);  // printed to 3 digits
}

TEST(ToolJoint, FiveInchDrillPipe) {
  // API RP 7G, 5 in 19.50 lb/ft E75 NC50: formula from memory, its tables print 20.85 to 20.89.
  const auto w = jointed_mass_per_length(17.93 * pound_per_foot, 8.60 * pound, 17.0 * inch,
                                         6.375 * inch, 3.75 * inch, 5.125 * inch);
  EXPECT_NEAR(in(w, pound_per_foot), 20.87, 0.02);
}

TEST(ToolJoint, ShortJointLeavesThePlainPipe) {
  const auto w = jointed_mass_per_length(18.0 * pound_per_foot, 0.0 * pound, 1e-9 * inch,
                                         5.0 * inch, 4.0 * inch, 5.0 * inch);
  EXPECT_NEAR(in(w, pound_per_foot), 18.0, 1e-6);
}

TEST(ToolJoint, DiametersOutOfOrderAreRefused) {
  EXPECT_THROW((void)tool_joint_mass(17.0 * inch, 6.0 * inch, 5.5 * inch, 5.125 * inch),
               InadmissibleError);
  EXPECT_THROW((void)tool_joint_mass(17.0 * inch, 5.0 * inch, 3.5 * inch, 5.125 * inch),
               InadmissibleError);
}

// --- Drag

constexpr ForcePerLength w18 = 18.0 * pound_force_per_foot;

TEST(Slant, VerticalHoleHasNoDrag) {
  for (const double direction : {-1.0, 0.0, 1.0}) {
    const auto pull = slant_pull(w18, 5000.0 * foot, 0.0 * degree, number(0.4), number(direction));
    EXPECT_NEAR(in(pull, pound_force), 90'000.0, 1e-9);
  }
}

TEST(Slant, UpAndDownLieEvenlyAboutRotating) {
  const auto pull = [](double direction) {
    return in(slant_pull(w18, 5000.0 * foot, 60.0 * degree, number(0.3), number(direction)),
              pound_force);
  };
  EXPECT_NEAR(pull(1.0) + pull(-1.0), 2.0 * pull(0.0), 1e-9);
  // By hand: 18 · 5000 · (0.5 ± 0.3 · 0.8660254).
  EXPECT_NEAR(pull(1.0), 68'382.7, 0.05);
  EXPECT_NEAR(pull(-1.0), 21'617.3, 0.05);
}

TEST(Drag, StraightElementIsASlant) {
  const auto step = drag_tension_change(50'000.0 * pound_force, w18, 90.0 * foot, 40.0 * degree,
                                        0.0 * degree, 0.0 * degree, number(0.3), number(1.0));
  const auto slant = slant_pull(w18, 90.0 * foot, 40.0 * degree, number(0.3), number(1.0));
  EXPECT_NEAR(step / slant, 1.0, 1e-14);
}

/// Tension above a weightless string bent or turned by `angle`, walked in small elements.
double capstan(double friction, double direction, bool in_azimuth) {
  constexpr int elements = 20'000;
  const Angle angle = 90.0 * degree;
  const Angle each = angle / static_cast<double>(elements);
  const Angle none = 0.0 * degree;
  Force tension = 1000.0 * newton;
  for (int i = 0; i < elements; ++i) {
    tension += drag_tension_change(tension, 0.0 * pound_force_per_foot, 1.0 * meter, 90.0 * degree,
                                   in_azimuth ? none : each, in_azimuth ? each : none,
                                   number(friction), number(direction));
  }
  return to_si(tension) / 1000.0;
}

TEST(Drag, WeightlessBendIsACapstan) {
  // Euler and Eytelwein: F₂ = F₁ e^(± μ θ).
  for (const bool in_azimuth : {false, true}) {
    EXPECT_NEAR(capstan(0.3, 1.0, in_azimuth), std::exp(0.3 * pi / 2.0), 1e-4);
    EXPECT_NEAR(capstan(0.3, -1.0, in_azimuth), std::exp(-0.3 * pi / 2.0), 1e-4);
    EXPECT_EQ(capstan(0.3, 0.0, in_azimuth), 1.0);
  }
}

TEST(Drag, TensionLiftsThePipeWhereTheHoleBuilds) {
  const auto normal = [](double change) {
    return drag_normal_force(20'000.0 * pound_force, w18, 90.0 * foot, 40.0 * degree,
                             change * degree, 0.0 * degree);
  };
  EXPECT_LT(normal(-1.0), normal(0.0));
  EXPECT_GT(normal(1.0), normal(0.0));
}

// --- The string: Rabia, Well Engineering and Construction; figures from memory.

DrillString rabia() {
  return {{{500.0 * foot, 150.0 * pound_per_foot}, {9500.0 * foot, 19.5 * pound_per_foot}},
          10.0 * ppg,
          65.5 * ppg};
}

TEST(DrillStringTest, RabiasHookLoad) {
  const DrillString string = rabia();
  EXPECT_NEAR(in(string.weight_in_air(), pound_force), 260'250.0, 0.5);
  EXPECT_NEAR(to_si(string.buoyancy_factor()), 0.847, 0.0005);
  // The book rounds the buoyancy factor to 0.847 first: 0.04 % on the weight in mud.
  EXPECT_NEAR(in(string.weight_in_mud(10'000.0 * foot), pound_force), 220'432.0, 0.0005 * 220'432);
  const auto load = string.hook_load(Operation::rotating, 10'000.0 * foot, 0.0 * newton,
                                     0.0 * newton, 23'500.0 * pound_force);
  EXPECT_NEAR(in(load, pound_force), 243'932.0, 0.0005 * 243'932);
}

TEST(DrillStringTest, ExcessOfTheBhaIsWhatPipeAloneWouldLack) {
  const DrillString string = rabia();
  const Force pipe_alone = string.pipe_weight() * string.length();
  EXPECT_NEAR((pipe_alone + string.bha_excess_weight()) / string.weight_in_mud(string.length()),
              1.0, 1e-14);
  EXPECT_NEAR(in(string.bha_length(), foot), 500.0, 1e-9);
}

TEST(DrillStringTest, LapeyrousesExcess) {
  // Lapeyrouse (2002), p. 44: 300 ft of 83 lb/ft collars, 13.3 lb/ft pipe, 9.6 lb/gal.
  const DrillString string(
      {{300.0 * foot, 83.0 * pound_per_foot}, {3700.0 * foot, 13.3 * pound_per_foot}}, 9.6 * ppg,
      65.5 * ppg);
  EXPECT_NEAR(in(string.bha_excess_weight(), pound_force), 17'845.0, 0.5);
  EXPECT_NEAR(in(string.pipe_weight(), pound_force_per_foot), 11.35, 0.005);
}

TEST(DrillStringTest, TheBhaIsInTheHoleFirst) {
  const DrillString string = rabia();
  const auto weight = [&](double feet) {
    return in(string.weight_in_mud(feet * foot), pound_force) / to_si(string.buoyancy_factor());
  };
  EXPECT_EQ(weight(0.0), 0.0);
  EXPECT_NEAR(weight(200.0), 30'000.0, 1e-6);
  EXPECT_NEAR(weight(500.0), 75'000.0, 1e-6);
  EXPECT_NEAR(weight(600.0), 76'950.0, 1e-6);
}

TEST(DrillStringTest, DragAddsUpwardsAndCarriesDownwards) {
  const DrillString string = rabia();
  const Force drag = 20'000.0 * pound_force;
  const auto load = [&](Operation what) {
    return string.hook_load(what, string.length(), drag, drag, 23'500.0 * pound_force);
  };
  EXPECT_NEAR(in(load(Operation::hoisting) - load(Operation::rotating), pound_force), 20'000, 1e-6);
  EXPECT_NEAR(in(load(Operation::rotating) - load(Operation::lowering), pound_force), 20'000, 1e-6);
}

TEST(DrillStringTest, WhatCannotBeIsRefused) {
  const DrillString string = rabia();
  EXPECT_THROW((void)string.weight_in_mud(10'001.0 * foot), InadmissibleError);
  EXPECT_THROW((void)string.hook_load(Operation::lowering, 100.0 * foot, 0.0 * newton,
                                      20'000.0 * pound_force, 0.0 * newton),
               InadmissibleError);
  EXPECT_THROW(DrillString({}, 10.0 * ppg, 65.5 * ppg), InadmissibleError);
  EXPECT_THROW(DrillString({{0.0 * foot, 20.0 * pound_per_foot}}, 10.0 * ppg, 65.5 * ppg),
               InadmissibleError);
  EXPECT_THROW(DrillString({{10.0 * foot, 20.0 * pound_per_foot}}, 70.0 * ppg, 65.5 * ppg),
               InadmissibleError);
}

}  // namespace
}  // namespace ropewalk::drillstring
