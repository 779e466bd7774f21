#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "ropewalk/base/error.hpp"
#include "ropewalk/suspension/elevator.hpp"
#include "ropewalk/suspension/rating.hpp"
#include "ropewalk/suspension/train.hpp"
#include "ropewalk/suspension/wear.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::suspension {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }

// --- Ratings

TEST(SuspensionRating, TheSafetyFactorFallsWithoutStepsFromThreeToTwoAndAQuarter) {
  EXPECT_EQ(to_si(design_safety_factor(10.0 * short_ton_force)), 3.0);
  EXPECT_EQ(to_si(design_safety_factor(1500.0 * short_ton_force)), 2.25);
  double last = 3.0;
  for (int half_tons = 200; half_tons < 1200; ++half_tons) {
    const double factor = to_si(design_safety_factor(0.5 * half_tons * short_ton_force));
    EXPECT_LE(factor, last);
    EXPECT_GE(factor, last - 0.5 * 0.75 / 350.0 - 1e-12);
    last = factor;
  }
}

TEST(SuspensionRating, AllowableStressTimesTheFactorIsYield) {
  for (const double tons : {100.0, 250.0, 650.0}) {
    const Force rating = tons * short_ton_force;
    const Stress yield = 100.0 * ksi;
    EXPECT_NEAR(allowable_stress(yield, rating) * design_safety_factor(rating) / yield, 1.0, 1e-15);
    // Von Mises has 1/√3 where the standards have 0.58.
    EXPECT_NEAR(allowable_shear(yield, rating) / allowable_stress(yield, rating),
                1.0 / std::sqrt(3.0), 0.003);
    EXPECT_GE(verification_load(rating), proof_load(rating));
    EXPECT_GE(verification_load(rating), 2.0 * rating);
  }
}

TEST(SuspensionRating, TheBearingRatingIsTheSameInOneUnit) {
  // W_b = N W_r / 0.357 with both in one unit: 714 lbf per short ton is 0.357.
  EXPECT_NEAR(bearing_rating(number(6.0), 100.0 * kilonewton) / (6.0 / 0.357 * 100.0 * kilonewton),
              1.0, 1e-14);
}

TEST(SuspensionRating, ClassesHoldTheirUpperBound) {
  EXPECT_EQ(rating_class(25.0 * short_ton_force), "25-40");
  EXPECT_EQ(rating_class(40.0 * short_ton_force), "25-40");
  EXPECT_EQ(rating_class(40.5 * short_ton_force), "41-65");
  EXPECT_EQ(rating_class(350.0 * short_ton_force), "251-350");
  EXPECT_EQ(rating_class(1000.0 * short_ton_force), "751-1000");
  EXPECT_THROW((void)rating_class(24.0 * short_ton_force), LookupError);
  EXPECT_THROW((void)rating_class(1001.0 * short_ton_force), LookupError);
}

// --- Wear

TEST(SuspensionWear, AnUnwornPartHasItsRatingAndBendingTakesMore) {
  const Force rating = 350.0 * short_ton_force;
  EXPECT_EQ(worn_capacity_by_area(rating, number(1.0)), rating);
  EXPECT_EQ(worn_capacity_by_bending(rating, number(1.0)), rating);
  EXPECT_LT(worn_capacity_by_bending(rating, number(0.9)),
            worn_capacity_by_area(rating, number(0.9)));
  EXPECT_EQ(worn_bore_capacity(rating, 9.0 * inch, 7.0 * inch, 7.0 * inch), rating);
  EXPECT_THROW((void)worn_bore_capacity(rating, 9.0 * inch, 7.0 * inch, 6.9 * inch),
               InadmissibleError);
  EXPECT_THROW((void)worn_bore_capacity(rating, 7.0 * inch, 6.0 * inch, 7.0 * inch),
               InadmissibleError);
}

TEST(SuspensionWear, LinksAtAnAnglePullHarder) {
  EXPECT_NEAR(link_load(100.0 * kip, from_si<Angle>(0.0)) / kip, 50.0, 1e-12);
  EXPECT_NEAR(link_load(100.0 * kip, from_si<Angle>(pi / 3.0)) / kip, 100.0, 1e-12);
}

// --- The load path

std::vector<Part> train() {
  const Force none = 0.0 * kip;
  return {{"crown block", 500.0 * short_ton_force, number(1.2), none},
          {"traveling block", 350.0 * short_ton_force, number(1.0), none},
          {"hook", 350.0 * short_ton_force, number(1.0), 14.0 * kip},
          {"elevator", 250.0 * short_ton_force, number(1.0), 21.0 * kip}};
}

TEST(SuspensionTrain, LoadsAreThoseOfWhatHangsBelow) {
  const auto found = margins(train(), 400.0 * kip);
  EXPECT_NEAR(found[0].load / kip, 480.0, 1e-9);
  EXPECT_NEAR(found[1].load / kip, 400.0, 1e-9);
  EXPECT_NEAR(found[3].load / kip, 379.0, 1e-9);
  EXPECT_NEAR(found[3].margin / kip, 121.0, 1e-9);
  EXPECT_NEAR(to_si(found[3].utilization), 0.758, 1e-12);
  EXPECT_NEAR(found[3].hook_load_at_rating / kip, 521.0, 1e-9);
}

TEST(SuspensionTrain, TheWeakestPartIsTheFirstAtItsRating) {
  const auto parts = train();
  const std::size_t index = weakest(parts);
  EXPECT_EQ(parts[index].name, "elevator");
  const Force at_rating = margins(parts, 400.0 * kip)[index].hook_load_at_rating;
  const auto there = margins(parts, at_rating);
  for (std::size_t i = 0; i < parts.size(); ++i) {
    EXPECT_GE(there[i].margin / kip, -1e-9);
  }
  EXPECT_NEAR(there[index].margin / kip, 0.0, 1e-9);
}

TEST(SuspensionTrain, AnOverloadIsAResult) {
  EXPECT_LT(margins(train(), 600.0 * kip)[3].margin, 0.0 * kip);
}

TEST(SuspensionTrain, WhatCannotBeIsRefused) {
  EXPECT_THROW((void)weakest({}), InadmissibleError);
  try {
    (void)margins(train(), 20.0 * kip);
    FAIL();
  } catch (const InadmissibleError& error) {
    EXPECT_EQ(error.field(), "hook_load");
    EXPECT_NE(std::string(error.what()).find("elevator"), std::string::npos);
  }
  auto parts = train();
  parts[2].rating = 0.0 * kip;
  try {
    (void)margins(parts, 400.0 * kip);
    FAIL();
  } catch (const InadmissibleError& error) {
    EXPECT_EQ(error.field(), "rating");
    EXPECT_NE(std::string(error.what()).find("hook"), std::string::npos);
  }
}

// --- Elevators

TEST(Elevators, TheUsualOneComesFirst) {
  EXPECT_EQ(elevators_for("Drill pipe with 18 degree tool joint").front().kind,
            "tapered 18 degree center latch");
  EXPECT_EQ(elevators_for("collared casing").size(), 3U);
  EXPECT_FALSE(elevators_for("single joint of casing").front().carries_string);
  try {
    (void)elevators_for("rope");
    FAIL();
  } catch (const LookupError& error) {
    EXPECT_NE(std::string(error.what()).find("flush-joint casing"), std::string::npos);
  }
}

TEST(Elevators, BoresAreWiderThanNecks) {
  for (const ElevatorBore& one : elevator_bores()) EXPECT_GT(one.bore, one.neck);
  EXPECT_NEAR(elevator_bore("5 ieu").bore / inch, 5.25, 1e-12);
  EXPECT_THROW((void)elevator_bore("6-5/8 IEU"), LookupError);
}

}  // namespace
}  // namespace ropewalk::suspension
