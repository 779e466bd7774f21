/// Tensions line by line: equilibrium, power, limits, and what is refused.
#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <vector>

#include "ropewalk/reeving/kinematics.hpp"
#include "ropewalk/reeving/line_tension.hpp"
#include "ropewalk/reeving/tensions.hpp"

namespace ropewalk::reeving {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }
constexpr std::array motions{Motion::at_rest, Motion::hoisting, Motion::lowering};
constexpr Acceleration g = standard_gravity;

Force total(const std::vector<Force>& forces) {
  return std::accumulate(forces.begin(), forces.end(), 0.0 * newton);
}

Arrangement uniform(int lines, double friction, int lead_sheaves = 0) {
  return Arrangement(
      {.lines = lines, .sheave_friction = {number(friction)}, .lead_sheaves = lead_sheaves});
}

/// A different friction at every sheave; lead sheaves, and where there is one a dead-line sheave
/// that turns.
Stringing uneven(int lines) {
  Stringing stringing{.lines = lines,
                      .sheave_friction = {},
                      .lead_sheaves = 2,
                      .lead_sheave_friction = {number(1.07), number(1.02)},
                      .dead_line_sheave_turns = has_dead_line(lines)};
  for (int sheave = 1; sheave <= lines; ++sheave) {
    stringing.sheave_friction.push_back(number(1.0 + 0.013 * ((7 * sheave) % 5)));
  }
  if (has_dead_line(lines)) stringing.dead_line_sheave_friction = number(1.05);
  return stringing;
}

/// Calls `look(arrangement, motion, acceleration)` for a wide choice of each.
template <class Look>
void everywhere(const Look& look) {
  for (const int lines : {2, 3, 4, 9, 10, 12, 63, 64}) {
    for (const Motion motion : motions) {
      for (const double a_over_g : {-1.0, -0.3, 0.0, 0.5}) {
        look(uniform(lines, 1.0), motion, a_over_g * g);
        look(uniform(lines, 1.04, 1), motion, a_over_g * g);
        look(Arrangement(uneven(lines)), motion, a_over_g * g);
      }
    }
  }
}

constexpr Force load = from_si<Force>(1'779'288.6);

TEST(TensionsTest, LinesCarryTheLoadInEveryState) {
  everywhere([](const Arrangement& strung, Motion motion, Acceleration a) {
    const Tensions t = tensions(strung, load, motion, a);
    ASSERT_EQ(t.lines.size(), static_cast<std::size_t>(strung.lines()));
    EXPECT_NEAR(total(t.lines) / load, 1.0 + a / g, 1e-14);
  });
}

TEST(TensionsTest, PowerAtTheHookIsPowerAtTheDrumTimesEfficiency) {
  everywhere([](const Arrangement& strung, Motion motion, Acceleration a) {
    if (motion == Motion::at_rest) return;
    const Tensions t = tensions(strung, load, motion, a);
    const Speed block = (motion == Motion::hoisting ? 0.4 : -0.4) * meter_per_second;
    const Power at_hook = load * (1.0 + a / g) * block;
    const Power at_drum = t.fast_line * line_speeds(strung.lines(), block).back();
    const Power put_in = motion == Motion::hoisting ? at_drum : at_hook;
    const Power got_out = motion == Motion::hoisting ? at_hook : at_drum;
    EXPECT_NEAR(to_si(got_out - t.efficiency * put_in), 0.0, 1e-9 * std::abs(to_si(load * block)));
    EXPECT_LE(t.efficiency, number(1.0 + 1e-15));
  });
}

TEST(TensionsTest, CrownAndTravelingBlockAreInEquilibrium) {
  // Sum of the two rope pulls on every sheave of either block, taken one by one.
  everywhere([](const Arrangement& strung, Motion motion, Acceleration a) {
    const Tensions t = tensions(strung, load, motion, a);
    Force on_the_crown = 0.0 * newton;
    Force on_the_block = 0.0 * newton;
    for (int sheave = 1; sheave <= strung.lines(); ++sheave) {
      const auto i = static_cast<std::size_t>(sheave - 1);
      const Force next = sheave == strung.lines() ? t.fast_line_at_crown : t.lines[i + 1];
      (on_crown(strung.lines(), sheave) ? on_the_crown : on_the_block) += t.lines[i] + next;
    }
    if (has_dead_line(strung.lines())) {
      on_the_crown += t.dead_line + t.lines.front();  // the dead-line sheave
    } else {
      on_the_block += t.dead_line;  // the dead end itself
    }
    EXPECT_NEAR(on_the_crown / load, t.crown_load / load, 1e-13);
    EXPECT_NEAR(on_the_block / load, 1.0 + a / g, 1e-13);
  });
}

TEST(TensionsTest, TenLinesLiftTenTimesOneLineWithoutFriction) {
  for (int lines = 2; lines <= 64; ++lines) {
    for (const Motion motion : motions) {
      const Tensions t = tensions(uniform(lines, 1.0, 2), load, motion);
      for (const Force& line : t.lines) EXPECT_EQ(line, load / static_cast<double>(lines));
      EXPECT_EQ(t.fast_line, load / static_cast<double>(lines));
      EXPECT_EQ(t.dead_line, load / static_cast<double>(lines));
      EXPECT_EQ(t.efficiency, number(1.0));
    }
  }
}

TEST(TensionsTest, FrictionlessLimitIsApproachedSmoothly) {
  for (const Motion motion : motions) {
    const Tensions near = tensions(uniform(10, 1.0 + 1e-12), load, motion);
    for (const Force& line : near.lines) EXPECT_NEAR(line * 10.0 / load, 1.0, 1e-11);
  }
}

TEST(TensionsTest, CrownLoadAtRest) {
  // W (N + 2)/N with a dead line, as in Bourgoyne et al., Applied Drilling Engineering (SPE, 1986),
  // ch. 1; W (N + 1)/N with the dead end on the block, by the same equilibrium.
  for (int lines = 2; lines <= 64; ++lines) {
    const double ropes = lines + (lines % 2 == 0 ? 2.0 : 1.0);
    const Tensions t = tensions(uniform(lines, 1.09), load, Motion::at_rest);
    EXPECT_NEAR(t.crown_load / load, ropes / lines, 1e-14);
  }
}

TEST(TensionsTest, OneFrictionGivesTheClosedForms) {
  for (int lines = 2; lines <= 64; ++lines) {
    const Number n = number(lines);
    const Number k = number(1.04);
    const Tensions up = tensions(uniform(lines, 1.04, 2), load, Motion::hoisting);
    EXPECT_NEAR(up.fast_line / fast_line_tension(load, n, k, number(2.0)), 1.0, 1e-13);
    EXPECT_NEAR(up.dead_line / dead_line_tension(load, n, k), 1.0, 1e-13);
    EXPECT_NEAR(up.crown_load / crown_load(load, n, k), 1.0, 1e-13);
    EXPECT_NEAR(up.efficiency, efficiency(n, k, number(2.0)), 1e-13);
    EXPECT_NEAR(up.fast_line_factor, fast_line_factor(n, k, number(2.0)), 1e-13);
    EXPECT_NEAR(up.dead_line / up.fast_line_at_crown, std::pow(1.04, -lines), 1e-13);
    const Tensions down = tensions(uniform(lines, 1.04, 2), load, Motion::lowering);
    EXPECT_NEAR(down.fast_line / lowering_fast_line_tension(load, n, k, number(2.0)), 1.0, 1e-13);
    EXPECT_NEAR(down.dead_line / lowering_dead_line_tension(load, n, k), 1.0, 1e-13);
    EXPECT_NEAR(down.efficiency, lowering_efficiency(n, k, number(2.0)), 1e-13);
  }
}

TEST(TensionsTest, LoweringIsHoistingSeenFromTheOtherEnd) {
  for (const int lines : {2, 5, 10, 33}) {
    const Tensions up = tensions(uniform(lines, 1.07), load, Motion::hoisting);
    const Tensions down = tensions(uniform(lines, 1.07), load, Motion::lowering);
    for (std::size_t i = 0; i < up.lines.size(); ++i) {
      EXPECT_NEAR(up.lines[i] / down.lines[up.lines.size() - 1 - i], 1.0, 1e-13);
    }
  }
}

TEST(TensionsTest, EqualFrictionsOneByOneAreOneFriction) {
  for (const Motion motion : motions) {
    const Tensions one = tensions(uniform(10, 1.04, 2), load, motion);
    const Tensions list =
        tensions(Arrangement({.lines = 10,
                              .sheave_friction = std::vector<Number>(10, number(1.04)),
                              .lead_sheaves = 2,
                              .lead_sheave_friction = std::vector<Number>(2, number(1.04))}),
                 load, motion);
    EXPECT_EQ(one.lines, list.lines);
    EXPECT_EQ(one.fast_line, list.fast_line);
  }
}

TEST(TensionsTest, DeadLineSheaveThatTurnsStandsBetweenLineOneAndTheDeadLine) {
  Stringing stringing{
      .lines = 8, .sheave_friction = {number(1.04)}, .dead_line_sheave_turns = true};
  const Tensions up = tensions(Arrangement(stringing), load, Motion::hoisting);
  EXPECT_DOUBLE_EQ(up.dead_line / up.lines[0], 1.0 / 1.04);
  stringing.dead_line_sheave_friction = number(1.1);
  const Tensions down = tensions(Arrangement(stringing), load, Motion::lowering);
  EXPECT_DOUBLE_EQ(down.dead_line / down.lines[0], 1.1);
}

TEST(ArrangementTest, SheavesOfBothBlocks) {
  for (int lines = 2; lines <= 64; ++lines) {
    int crown = has_dead_line(lines) ? 1 : 0;
    int traveling = 0;
    for (int sheave = 1; sheave <= lines; ++sheave) ++(on_crown(lines, sheave) ? crown : traveling);
    EXPECT_EQ(crown, crown_sheaves(lines));
    EXPECT_EQ(traveling, traveling_sheaves(lines));
    EXPECT_TRUE(on_crown(lines, lines));  // the fast line leaves the crown
    EXPECT_EQ(crown, traveling + 1);      // one more on the crown: common practice, no source
  }
}

std::string refusal(const Stringing& stringing) {
  try {
    (void)Arrangement(stringing);
  } catch (const InadmissibleError& error) {
    return error.field() + ": " + error.what();
  }
  return "taken";
}

TEST(ArrangementTest, RefusesWhatCannotBeByName) {
  const std::vector<Number> one{number(1.04)};
  EXPECT_EQ(refusal({.lines = 1, .sheave_friction = one}),
            "lines: reeving.Reeving(): lines = 1 is outside [2, 64], whole numbers only "
            "(ropewalk's guard against slips of the pen)");
  EXPECT_EQ(refusal({.lines = 3, .sheave_friction = {number(1.04), number(0.96), number(1.04)}}),
            "sheave_friction: reeving.Reeving(): sheave_friction of sheave 2 = 0.96 is outside "
            "[1, 2] (ropewalk's guard against slips of the pen)");
  EXPECT_EQ(refusal({.lines = 3, .sheave_friction = {number(1.04), number(1.04)}}),
            "sheave_friction: reeving.Reeving(): sheave_friction has 2 values for 3 sheaves; give "
            "one for all, or one for each");
  EXPECT_TRUE(refusal({.lines = 4, .sheave_friction = {}}).starts_with("sheave_friction: "));
  EXPECT_TRUE(refusal({.lines = 4, .sheave_friction = {number(NAN)}}).starts_with("sheave_fri"));
  EXPECT_TRUE(refusal({.lines = 4, .sheave_friction = one, .lead_sheaves = -1})
                  .starts_with("lead_sheaves: "));
  EXPECT_TRUE(refusal({.lines = 4, .sheave_friction = one, .lead_sheave_friction = one})
                  .starts_with("lead_sheave_friction: "));
  EXPECT_TRUE(refusal({.lines = 2, .sheave_friction = {one[0], one[0]}, .lead_sheaves = 1})
                  .starts_with("lead_sheave_friction: "));
  EXPECT_TRUE(refusal({.lines = 5, .sheave_friction = one, .dead_line_sheave_turns = true})
                  .starts_with("dead_line_sheave_turns: "));
  EXPECT_TRUE(refusal({.lines = 4, .sheave_friction = one, .dead_line_sheave_friction = one[0]})
                  .starts_with("dead_line_sheave_friction: "));
}

TEST(TensionsTest, RefusesLoadsMotionsAndAccelerationsThatCannotBe) {
  const Arrangement strung = uniform(10, 1.04);
  EXPECT_THROW((void)tensions(strung, -1.0 * newton, Motion::hoisting), InadmissibleError);
  EXPECT_THROW((void)tensions(strung, load, Motion::hoisting, -1.01 * g), InadmissibleError);
  EXPECT_THROW((void)motion_named("Hoist"), InadmissibleError);
  EXPECT_EQ(motion_named("static"), Motion::at_rest);
}

}  // namespace
}  // namespace ropewalk::reeving
