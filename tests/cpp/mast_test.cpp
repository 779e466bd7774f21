#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <string>

#include "ropewalk/base/error.hpp"
#include "ropewalk/mast/derrick_load.hpp"
#include "ropewalk/mast/legs.hpp"
#include "ropewalk/mast/rating.hpp"
#include "ropewalk/reeving/line_tension.hpp"
#include "ropewalk/reeving/tensions.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::mast {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }

PlanPoint at(double across, double along) { return {across * meter, along * meter}; }

/// A base of 8 m by 6 m with the lines anywhere.
LegShares shares(PlanPoint dead_line, PlanPoint fast_line) {
  return LegShares(Layout{8.0 * meter, 6.0 * meter, dead_line, fast_line});
}

double sum(const std::array<double, legs>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

// --- Legs

TEST(LegShares, EveryPlaceIsInEquilibrium) {
  const std::array<std::array<double, 2>, legs> corners{
      {{-4.0, -3.0}, {4.0, -3.0}, {4.0, 3.0}, {-4.0, 3.0}}};
  for (const double x : {-4.0, -1.5, 0.0, 2.0, 4.0}) {
    for (const double y : {-3.0, -0.5, 0.0, 1.0, 3.0}) {
      const auto share = shares(at(x, y), at(0.0, 0.0)).dead_line();
      double about_y = 0.0, about_x = 0.0;
      for (std::size_t leg = 0; leg < legs; ++leg) {
        EXPECT_GE(share[leg], 0.0);
        about_y += share[leg] * corners[leg][0];
        about_x += share[leg] * corners[leg][1];
      }
      EXPECT_NEAR(sum(share), 1.0, 1e-15);
      EXPECT_NEAR(about_y, x, 1e-14);
      EXPECT_NEAR(about_x, y, 1e-14);
    }
  }
}

TEST(LegShares, TheTextbookTable) {
  // Bourgoyne et al. (1986), ch. 1: dead line at A, drawworks between C and D.
  const LegShares table = shares(at(-4.0, -3.0), at(0.0, 3.0));
  EXPECT_EQ(table.dead_line(), (std::array<double, legs>{1.0, 0.0, 0.0, 0.0}));
  EXPECT_EQ(table.fast_line(), (std::array<double, legs>{0.0, 0.0, 0.5, 0.5}));
}

TEST(LegShares, LegsBearWhatTheCrownBears) {
  using namespace reeving;
  const Arrangement ten(Stringing{.lines = 10, .sheave_friction = {number(1.04)}});
  for (const Motion motion : {Motion::at_rest, Motion::hoisting, Motion::lowering}) {
    const Tensions found = tensions(ten, 400.0 * kip, motion);
    const auto loads = shares(at(1.0, -2.0), at(-0.5, 2.5))
                           .loads(400.0 * kip, found.dead_line, found.fast_line_at_crown);
    const Force total = std::accumulate(loads.begin(), loads.end(), from_si<Force>(0.0));
    EXPECT_NEAR(total / found.crown_load, 1.0, 1e-14);
  }
}

TEST(LegShares, APlaceOutsideTheBaseIsRefusedByField) {
  try {
    (void)shares(at(0.0, 0.0), at(0.0, 3.1));
    FAIL();
  } catch (const InadmissibleError& error) {
    EXPECT_EQ(error.field(), "fast_line");
    EXPECT_NE(std::string(error.what()).find("along"), std::string::npos);
  }
  EXPECT_THROW(LegShares(Layout{0.0 * meter, 6.0 * meter, at(0, 0), at(0, 0)}), InadmissibleError);
}

// --- Derrick load

TEST(DerrickLoad, WithoutFrictionItIsTheLoadAtRest) {
  for (const double n : {6.0, 8.0, 10.0, 12.0, 14.0}) {
    const Force hook_load = 300.0 * kip;
    EXPECT_NEAR(
        derrick_load(hook_load, number(n), number(1.0)) / static_derrick_load(hook_load, number(n)),
        1.0, 1e-15);
    EXPECT_NEAR(static_derrick_load(hook_load, number(n)) /
                    reeving::crown_load(hook_load, number(n), number(1.0)),
                1.0, 1e-15);
  }
}

TEST(DerrickLoad, TheFactorIsTheRatioAndItsClosedForm) {
  for (const double n : {6.0, 8.0, 10.0, 12.0, 14.0}) {
    for (const double e : {0.51, 0.7, 0.85, 1.0}) {
      EXPECT_NEAR(to_si(efficiency_factor(number(n), number(e))),
                  (e * (n + 1.0) + 1.0) / (e * (n + 4.0)), 1e-14);
    }
    // At E = 1/2 the governing leg changes without a step.
    EXPECT_NEAR(to_si(efficiency_factor(number(n), number(0.5))),
                to_si(efficiency_factor(number(n), number(0.5 - 1e-9))), 1e-8);
  }
}

TEST(DerrickLoad, LoweringLoadsTheCrownLessThanRest) {
  const Force hook_load = 300.0 * kip;
  for (const double n : {2.0, 8.0, 12.0}) {
    const Force lowering = reeving::lowering_crown_load(hook_load, number(n), number(1.04));
    EXPECT_LT(lowering, static_derrick_load(hook_load, number(n)));
    EXPECT_LT(static_derrick_load(hook_load, number(n)),
              reeving::crown_load(hook_load, number(n), number(1.04)));
    const Force parts =
        hook_load + reeving::lowering_dead_line_tension(hook_load, number(n), number(1.04)) +
        reeving::lowering_fast_line_tension(hook_load, number(n), number(1.04), number(0.0));
    EXPECT_NEAR(lowering / parts, 1.0, 1e-14);
  }
}

TEST(DerrickLoad, AnOddNumberOfLinesHasNoDeadLineAndIsRefused) {
  const Force hook_load = 300.0 * kip;
  for (const double n : {3.0, 9.0, 63.0}) {
    EXPECT_THROW((void)derrick_load(hook_load, number(n), number(0.8)), InadmissibleError);
    EXPECT_THROW((void)static_derrick_load(hook_load, number(n)), InadmissibleError);
    EXPECT_THROW((void)equivalent_load(hook_load, number(n), number(0.8)), InadmissibleError);
    EXPECT_THROW((void)efficiency_factor(number(n), number(0.8)), InadmissibleError);
    EXPECT_THROW((void)extra_leg_load(hook_load, number(n), number(1.0)), InadmissibleError);
    EXPECT_THROW((void)rating_at_lines(hook_load, number(n), number(10.0), number(1.0)),
                 InadmissibleError);
    EXPECT_THROW((void)rating_at_lines(hook_load, number(10.0), number(n), number(1.0)),
                 InadmissibleError);
  }
}

// --- Rating

TEST(Rating, NeitherCrownNorAnyLegNorTheNameplateIsExceeded) {
  const Force rated = 1000.0 * kip;
  for (const PlanPoint& fast_line : {at(0.0, 3.0), at(-4.0, -3.0), at(2.0, 1.0)}) {
    for (const PlanPoint& dead_line : {at(-4.0, -3.0), at(0.0, -3.0), at(0.0, 0.0)}) {
      const LegShares legs_of = shares(dead_line, fast_line);
      const Number share = number(legs_of.largest_share());
      const auto largest_leg = [&](Force hook_load, double n) {
        const auto loads = legs_of.loads(hook_load, hook_load / n, hook_load / n);
        return *std::max_element(loads.begin(), loads.end());
      };
      for (const double n : {2.0, 6.0, 8.0, 10.0, 12.0, 14.0}) {
        const Force rating = rating_at_lines(rated, number(12.0), number(n), share);
        const double leg = largest_leg(rating, n) / largest_leg(rated, 12.0);
        const double crown =
            static_derrick_load(rating, number(n)) / static_derrick_load(rated, number(12.0));
        EXPECT_LE(leg, 1.0 + 1e-14);
        EXPECT_LE(crown, 1.0 + 1e-14);
        EXPECT_LE(rating, rated);
        // And no more is taken off than one of the three asks for.
        EXPECT_NEAR(std::max({leg, crown, to_si(Number(rating / rated))}), 1.0, 1e-14);
      }
    }
  }
}

TEST(Rating, TheLargestShareOfTheLayouts) {
  EXPECT_EQ(shares(at(0.0, 0.0), at(0.0, 0.0)).largest_share(), 0.5);
  EXPECT_EQ(shares(at(-4.0, -3.0), at(0.0, 3.0)).largest_share(), 1.0);
  EXPECT_EQ(shares(at(-4.0, 0.0), at(0.0, 3.0)).largest_share(), 1.0);  // D has half of each
  EXPECT_EQ(shares(at(4.0, 3.0), at(4.0, 3.0)).largest_share(), 2.0);
  EXPECT_THROW((void)rating_at_lines(1.0 * kip, number(12.0), number(8.0), number(0.4)),
               InadmissibleError);
}

TEST(Rating, TheOldStandardCountsTheDeadLineFourTimes) {
  const Force hook_load = 400.0 * kip;
  const Force extra = extra_leg_load(hook_load, number(10.0), number(1.0));
  // Lyons (1996), eq. 4-1, by hand: 1.5 (400 + 10 + 160) kip.
  EXPECT_NEAR(std_4a_capacity(hook_load, 10.0 * kip, 0.0 * kip, extra) / kip, 855.0, 1e-10);
  EXPECT_THROW((void)extra_leg_load(hook_load, number(10.0), number(3.0)), InadmissibleError);
}

}  // namespace
}  // namespace ropewalk::mast
