#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "ropewalk/base/table.hpp"
#include "ropewalk/rope/catalog.hpp"
#include "ropewalk/rope/factors.hpp"

namespace ropewalk::rope {
namespace {

double in_kilonewtons(const RopeData& rope) { return rope.breaking_force->value / kilonewton; }

/// Number rounded to so many significant figures.
double rounded(double value, int figures) {
  const double step = std::pow(10.0, std::floor(std::log10(value)) + 1.0 - figures);
  return std::round(value / step) * step;
}

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

// Factors: identities

TEST(RopeFactors, EverythingGrowsWithTheSquareOfTheDiameter) {
  const Stress grade = 1770.0 * megapascal;
  EXPECT_DOUBLE_EQ(breaking_force_from_factor(2.0 * inch, grade, 0.356) /
                       breaking_force_from_factor(1.0 * inch, grade, 0.356),
                   4.0);
  const Density w = 4000.0 * kilogram_per_cubic_meter;
  EXPECT_DOUBLE_EQ(mass_from_factor(2.0 * inch, w) / mass_from_factor(1.0 * inch, w), 4.0);
  EXPECT_DOUBLE_EQ(area_from_factor(2.0 * inch, 0.46) / area_from_factor(1.0 * inch, 0.46), 4.0);
}

TEST(RopeFactors, TheWholeCircleIsTheMost) {
  const Length d = 32.0 * millimeter;
  EXPECT_DOUBLE_EQ(to_si(area_from_factor(d, pi / 4.0)), to_si(pi / 4.0 * d * d));
  EXPECT_THROW((void)area_from_factor(d, 0.786), InadmissibleError);
  EXPECT_THROW((void)breaking_force_from_factor(d, 1770.0 * megapascal, 0.786), InadmissibleError);
  EXPECT_THROW((void)breaking_force_from_factor(d, 1770.0 * megapascal, 0.0), InadmissibleError);
}

TEST(RopeFactors, AreThoseOfMillimetersAndKilogramsPerHundredMeters) {
  // By hand from EN 12385-4, 6x36 IWRC: 0.356 x 32^2 x 1.770, 0.409 x 32^2, 0.460 x 32^2.
  const Factors of_class = factors("6x36 IWRC");
  const Length d = 32.0 * millimeter;
  EXPECT_NEAR(
      breaking_force_from_factor(d, 1770.0 * megapascal, of_class.strength_factor) / kilonewton,
      645.24, 0.005);
  EXPECT_NEAR(mass_from_factor(d, *of_class.mass_factor) / (kilogram / (100.0 * meter)), 418.8,
              0.05);
  EXPECT_NEAR(area_from_factor(d, *of_class.area_factor) / square_millimeter, 471.04, 0.005);
  EXPECT_NEAR(*of_class.area_factor / (pi / 4.0), 0.5857, 0.00005);  // fill factor
}

TEST(RopeFactors, SpinningOnlyLosesStrength) {
  // K = C times the spinning loss factor, which is below one.
  const Table& printed = table("rope_factors");
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    const double c = printed.number(row, "area_factor");
    if (std::isnan(c)) continue;
    const double loss = printed.number(row, "strength_factor") / c;
    EXPECT_LT(loss, 1.0) << printed.line(row);
    EXPECT_GT(loss, 0.6) << printed.line(row);
  }
}

TEST(RopeFactors, UnknownClassesAreRefusedWithAnOffer) {
  EXPECT_NE(refusal([] { (void)factors("7x19"); }).find("6x36 IWRC"), std::string::npos);
  EXPECT_FALSE(factors("35(w)x7").mass_factor.has_value());
}

TEST(RopeFactors, GiveTheRowsOfApi9a) {
  // Two publications against each other: API Spec 9A, 26th ed. (2011), Table C.1 (class 6x7, fiber
  // core, three figures) and the factors of EN 12385-4 for that class.
  const Factors of_class = factors("6x7 FC");
  int rows = 0;
  for (const RopeData& printed : catalog()) {
    if (!printed.grade.ends_with("MPa")) continue;
    const RopeData made = from_factors("6x7 FC", printed.wire_strength->value, printed.diameter);
    EXPECT_DOUBLE_EQ(rounded(in_kilonewtons(made), 3), std::round(in_kilonewtons(printed)))
        << printed.size << " " << printed.grade;
    EXPECT_DOUBLE_EQ(rounded(to_si(made.mass_per_length->value), 3),
                     to_si(printed.mass_per_length->value))
        << printed.size;
    EXPECT_DOUBLE_EQ(made.metallic_area->value / (printed.diameter * printed.diameter),
                     to_si(of_class.area_factor.value()));
    ++rows;
  }
  EXPECT_EQ(rows, 18);
}

// Looking up

TEST(RopeFind, TakesTheNamesOfTheTrade) {
  const RopeData rope = find("6x36 IWRC", "EIPS", 1.375 * inch);
  for (const std::string_view construction : {"6x37 IWRC", "6\u00d736 iwrc", " 6X36  IWRC"}) {
    for (const std::string_view grade : {"EIP", "xips", "XIP"}) {
      EXPECT_EQ(find(construction, grade, 34.925 * millimeter).breaking_force->value,
                rope.breaking_force->value);
    }
  }
}

TEST(RopeFind, NeverTakesTheNearestSize) {
  const std::string refused = refusal([] { (void)find("6x19 IWRC", "EIPS", 35.0 * millimeter); });
  EXPECT_NE(refused.find("1.375 in (34.925 mm) and 1.5 in (38.1 mm)"), std::string::npos)
      << refused;
}

TEST(RopeFind, OffersWhatThereIs) {
  EXPECT_NE(refusal([] { (void)find("6x20", "EIPS", inch); }).find("6x26WS IWRC"),
            std::string::npos);
  EXPECT_NE(refusal([] { (void)find("6x7 FC", "EEIPS", inch); }).find("IPS, EIPS, 1770 MPa"),
            std::string::npos);
  EXPECT_THROW((void)find("6x7 FC", "EIPS", -1.0 * inch), InadmissibleError);
}

TEST(RopeSearch, WhatIsNotAskedForIsNotLookedAt) {
  EXPECT_EQ(search("test", {}).size(), catalog().size());
  const auto one_size = search("test", {.construction = {}, .grade = "EEIPS", .diameter = inch});
  EXPECT_TRUE(std::all_of(one_size.begin(), one_size.end(), [](const RopeData& rope) {
    return rope.grade == "EEIPS" && rope.size == "1 in" && rope.core == "IWRC";
  }));
  EXPECT_EQ(one_size.size(), 6U);
  EXPECT_THROW((void)search("test", {.construction = {}, .grade = {}, .diameter = 3.0 * inch}),
               LookupError);
}

// Ropes that are not in the catalog

TEST(RopeFromFactors, KnowsWhatItsClassKnows) {
  const RopeData known = from_factors("6x36 iwrc", 1960.0 * megapascal, 32.0 * millimeter);
  EXPECT_EQ(known.construction, "6x36 IWRC");
  EXPECT_EQ(known.grade, "1960 MPa");
  EXPECT_TRUE(known.modulus && known.outer_wire_diameter);
  EXPECT_EQ(known.breaking_force->provenance.standing, "derived");

  const RopeData bare = from_factors("35(W)x7", 1960.0 * megapascal, 32.0 * millimeter);
  EXPECT_FALSE(bare.modulus || bare.outer_wire_diameter || bare.mass_per_length);
  EXPECT_EQ(bare.breaking_force->provenance.standing, "from memory");
}

TEST(RopeFromCertificate, IsTakenAsItStands) {
  Certificate certificate{.construction = "6x31WS IWRC",
                          .grade = "EIPS",
                          .diameter = 1.5 * inch,
                          .breaking_force = 240.0 * kip,
                          .mass_per_length = 4.3 * pound_per_foot,
                          .metallic_area = {},
                          .outer_wire_diameter = {},
                          .modulus = {},
                          .wire_strength = {}};
  const RopeData rope = from_certificate(certificate);
  EXPECT_EQ(rope.breaking_force->value, 240.0 * kip);
  EXPECT_EQ(rope.breaking_force->provenance.standing, "given");
  EXPECT_FALSE(rope.metallic_area || rope.modulus || rope.wire_strength);

  certificate.metallic_area = 1.01 * pi / 4.0 * (1.5 * inch) * (1.5 * inch);
  EXPECT_THROW((void)from_certificate(certificate), InadmissibleError);
  certificate.metallic_area = 1.1 * square_inch;
  certificate.breaking_force = 0.0 * kip;
  EXPECT_THROW((void)from_certificate(certificate), InadmissibleError);
}

TEST(RopeWeight, PoundsOfRopeWeighPoundsForce) {
  EXPECT_NEAR(weight_per_length(3.5 * pound_per_foot) / pound_force_per_foot, 3.5, 1e-12);
}

}  // namespace
}  // namespace ropewalk::rope
