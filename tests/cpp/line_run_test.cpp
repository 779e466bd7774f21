/// Campaigns run on a line: when it is slipped and cut, and what is kept.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numeric>

#include "line_hoists.hpp"

namespace ropewalk::line {
namespace {

using Trigger = Program::Trigger;

/// Up 0 → 10 under 200 kN, so many times.
Rows hoists(std::size_t rows) {
  Rows out;
  for (std::size_t i = 0; i < rows; ++i) out.add(200e3, 0.0, 10.0);
  return out;
}
constexpr double work_of_one = 200e3 * 10.0;
/// Damage that one of them leaves at the worst place: two bends on a sheave of two lines.
constexpr double damage_of_one = 2.0 * half_cycle(100e3, sheave_tread);

Line line_of(const CampaignColumns& campaign, const StringUp& s = round_hoist(2)) {
  return {Tackle(s), square_law(), rope_properties(), campaign};
}

LineHistory run(const Line& line, const Program& program, const Line::Options& options = {}) {
  LineMap map(line.tackle(), line.damage(), 1.0 * meter, MapRows::total);
  return line.run(program, options, map);
}

/// Rows after which the line was slipped; −1 before and after a cut.
std::vector<int> slips_of(const LineHistory& history) {
  std::vector<int> rows;
  for (const LineEvent& event : history.events) {
    rows.push_back(event.cut ? -1 : static_cast<int>(event.row));
  }
  return rows;
}

double sum_of(const LineMap& map) {
  const auto means = map.means(0);
  return std::accumulate(means.begin(), means.end(), 0.0);
}

// --- Without a program

TEST(LineRunTest, WithoutAProgramNothingMoves) {
  const Rows rows = hoists(10);
  const Line line = line_of(rows.campaign());
  const LineHistory history = run(line, {});
  EXPECT_EQ(history.end, RunEnd::campaign_done);
  EXPECT_TRUE(history.events.empty());
  EXPECT_EQ(history.epochs.size(), 1U);
  EXPECT_NEAR(history.work, 10.0 * work_of_one, 1e-6);
  EXPECT_NEAR(static_cast<double>(history.position.anchor), 146.0, 1e-12);
  EXPECT_EQ(history.position.drum_end, 0.0);
  EXPECT_NEAR(history.least_wraps_rope, 20.0, 1e-12);
  EXPECT_NEAR(history.worst, 10.0 * damage_of_one, 1e-12 * history.worst);
}

TEST(LineRunTest, TimesOfABlockAndRepeatsAreRowsOneByOne) {
  const Rows rows = hoists(12);
  const Line one_by_one = line_of(rows.campaign());
  CampaignColumns campaign = rows.campaign();
  campaign.blocks = {{.first = 0, .last = 1, .times = 4}};
  const Line blocks = line_of(campaign);
  LineMap a(one_by_one.tackle(), one_by_one.damage(), 1.0 * meter, MapRows::total);
  LineMap b(blocks.tackle(), blocks.damage(), 1.0 * meter, MapRows::total);
  const LineHistory first = one_by_one.run({}, {}, a);
  const LineHistory second = blocks.run({}, {.repeats = 3}, b);
  EXPECT_NEAR(first.work, second.work, 1e-9 * first.work);
  expect_bins(a.means(0), b.means(0), 1e-13 * first.worst);
}

TEST(LineRunTest, PlannedSlipsAndCutsComeAfterTheirBlocks) {
  const Rows rows = hoists(4);
  CampaignColumns campaign = rows.campaign();
  campaign.blocks = {{0, 1, 1}, {1, 3, 1}, {3, 4, 1}};
  campaign.events = {{.after_block = 0, .cut = false, .length = 10.0 * meter},
                     {.after_block = 1, .cut = true, .length = 7.0 * meter}};
  const Line line = line_of(campaign);
  const LineHistory history = run(line, {});
  ASSERT_EQ(history.events.size(), 2U);
  EXPECT_FALSE(history.events[0].cut);
  EXPECT_NEAR(history.events[0].work, work_of_one, 1e-6);
  EXPECT_NEAR(static_cast<double>(history.events[0].after.anchor), 156.0, 1e-12);
  EXPECT_TRUE(history.events[1].cut);
  EXPECT_EQ(history.events[1].row, 2U);
  EXPECT_NEAR(history.events[1].work, 3.0 * work_of_one, 1e-6);
  EXPECT_NEAR(static_cast<double>(history.position.drum_end), 7.0, 1e-12);
  EXPECT_NEAR(history.work, 4.0 * work_of_one, 1e-6);
}

TEST(LineRunTest, NothingIsLostBySlipAndCut) {
  // Cycles × length on the rope, cut off or not: strokes leave Σ (m + N/2) |ΔL| wherever it lies.
  for (const int lines : {2, 4}) {
    Rows rows;
    double travel = 0.0;
    for (int i = 0; i < 60; ++i) {
      const double from = (i * 7) % 30;
      const double to = (i * 13 + 5) % 30;
      rows.add(200e3, from, to, 1.0 + i % 3);
      travel += (1.0 + i % 3) * std::abs(to - from);
    }
    const Line line = line_of(rows.campaign(), round_hoist(lines));
    const std::vector<double> clock(rows.size(), 1.0);
    const LineHistory history = run(line, {.trigger = Trigger::clock,
                                           .clock = clock,
                                           .interval = 7.0,
                                           .slip = 9.3 * meter,
                                           .slips_per_cut = 2,
                                           .cut = 18.6 * meter});
    ASSERT_EQ(history.events.size(), 12U);
    const Severity cycles = Severity::bending_cycles(line.tackle());
    const auto severities = severities_of(cycles, rows.loads());
    LineMap map(line.tackle(), cycles, 1.0 * meter, MapRows::total);
    replay(history, strokes_of(line.campaign(), severities), map);
    const double expected = travel * (lines * (lines + 1) / 2.0 + lines / 2.0);
    EXPECT_NEAR(sum_of(map), expected, 1e-12 * expected);
  }
}

// --- By clock

TEST(LineRunTest, ByTheClockByHand) {
  const Rows rows = hoists(10);
  const Line line = line_of(rows.campaign());
  const std::vector<double> clock(10, 1.0);
  const LineHistory history = run(line, {.trigger = Trigger::clock,
                                         .clock = clock,
                                         .interval = 3.0,
                                         .slip = 5.0 * meter,
                                         .slips_per_cut = 2,
                                         .cut = 8.0 * meter});
  // Slips after rows 2, 5 and 8, a cut after the second.
  EXPECT_EQ(slips_of(history), (std::vector<int>{2, 5, -1, 8}));
  const LineEvent& cut = history.events[2];
  EXPECT_EQ(cut.row, 5U);
  EXPECT_NEAR(cut.work, 6.0 * work_of_one, 1e-6);
  EXPECT_NEAR(static_cast<double>(cut.after.anchor), 156.0, 1e-12);
  EXPECT_NEAR(static_cast<double>(cut.after.drum_end), 8.0, 1e-12);
  EXPECT_NEAR(static_cast<double>(history.position.anchor), 161.0, 1e-12);
  // 20 m at the start, 5 + 5 more, 8 less.
  EXPECT_NEAR(history.least_wraps_rope, 20.0, 1e-12);
  EXPECT_EQ(history.epochs.size(), 4U);
}

TEST(LineRunTest, SlipsOnlyWhereTheLineMayStop) {
  Rows rows = hoists(10);
  rows.may_stop = {0, 0, 0, 0, 1, 0, 0, 0, 0, 1};
  const Line line = line_of(rows.campaign());
  const std::vector<double> clock(10, 1.0);
  const Program program{.trigger = Trigger::clock,
                        .clock = clock,
                        .interval = 3.0,
                        .slip = 5.0 * meter,
                        .slips_per_cut = 9,
                        .cut = 8.0 * meter};
  EXPECT_EQ(slips_of(run(line, program)), (std::vector<int>{4, 9}));
  rows.may_stop.assign(10, 0);
  const Line never = line_of(rows.campaign());
  EXPECT_TRUE(run(never, program).events.empty());
}

TEST(LineRunTest, AnIntervalIsFullInSpiteOfRounding) {
  // Ten times 0.1 is less than 1 in floating point.
  const Rows rows = hoists(20);
  const Line line = line_of(rows.campaign());
  const std::vector<double> clock(20, 0.1);
  EXPECT_EQ(slips_of(run(line, {.trigger = Trigger::clock,
                                .clock = clock,
                                .interval = 1.0,
                                .slip = 5.0 * meter,
                                .slips_per_cut = 9,
                                .cut = 8.0 * meter})),
            (std::vector<int>{9, 19}));
}

TEST(LineRunTest, TheReelIsUsedUp) {
  // 400 − 146 = 254 m on the reel: two slips of 100 m (and cuts, to keep room on the drum).
  const Rows rows = hoists(10);
  const Line line = line_of(rows.campaign());
  const std::vector<double> clock(10, 1.0);
  const LineHistory history = run(line, {.trigger = Trigger::clock,
                                         .clock = clock,
                                         .interval = 2.0,
                                         .slip = 100.0 * meter,
                                         .slips_per_cut = 1,
                                         .cut = 100.0 * meter});
  EXPECT_EQ(history.end, RunEnd::reel_used_up);
  EXPECT_EQ(slips_of(history), (std::vector<int>{1, -1, 3, -1}));
  EXPECT_NEAR(history.work, 6.0 * work_of_one, 1e-6);  // until the third was due
}

TEST(LineRunTest, TheLastSlipMayTakeAllThatIsLeft) {
  // 254 m in ten slips, each a rounding too long.
  const Rows rows = hoists(10);
  Program program{.trigger = Trigger::clock, .interval = 1.0, .slip = 25.4 * (1 + 4e-16) * meter};
  const std::vector<double> clock(10, 1.0);
  program.clock = clock;
  program.cut = 25.4 * meter;
  const LineHistory history = run(line_of(rows.campaign()), program);
  EXPECT_EQ(history.end, RunEnd::campaign_done);
  EXPECT_EQ(history.events.size(), 20U);
}

TEST(LineRunTest, ASlipLongerThanTheReelIsRefused) {
  const Rows rows = hoists(10);
  const Line line = line_of(rows.campaign());
  const std::vector<double> clock(10, 1.0);
  const Refusal refusal = refusal_of([&] {
    (void)run(line, {.trigger = Trigger::clock,
                     .clock = clock,
                     .interval = 2.0,
                     .slip = 254.5 * meter,
                     .slips_per_cut = 1,
                     .cut = 10.0 * meter});
  });
  EXPECT_EQ(refusal.field, "slip");
  EXPECT_TRUE(refusal.says("254.5 m")) << refusal.text;
}

TEST(LineRunTest, CuttingMoreThanTheSlipsBroughtIsRefused) {
  const Rows rows = hoists(10);
  const Line line = line_of(rows.campaign());
  const std::vector<double> clock(10, 1.0);
  const Refusal refusal = refusal_of([&] {
    (void)run(line, {.trigger = Trigger::clock,
                     .clock = clock,
                     .interval = 2.0,
                     .slip = 10.0 * meter,
                     .slips_per_cut = 1,
                     .cut = 21.0 * meter});
  });
  // 20 m on the drum and 10 − 21 a time: 9, then −2.
  EXPECT_EQ(refusal.field, "cut");
  EXPECT_TRUE(refusal.says("cutting 21 m")) << refusal.text;
  EXPECT_TRUE(refusal.says("2 m would be missing")) << refusal.text;
}

TEST(LineRunTest, TheSectionCutOffHasItsWorstAndItsMean) {
  // 1 m on the drum at the lowest, so that the sections cut off are worn. Lengths of 4.3 m: in bins
  // of 0.1 m their ends lie on borders that division misses (4.3 / 0.1 < 43 in floating point).
  StringUp s = round_hoist(2);
  s.wraps_at_lowest = number(0.2);
  const Rows rows = hoists(3);
  const Line line = line_of(rows.campaign(), s);
  const std::vector<double> clock(3, 1.0);
  LineMap map(line.tackle(), line.damage(), 0.1 * meter, MapRows::total);
  const LineHistory history = line.run({.trigger = Trigger::clock,
                                        .clock = clock,
                                        .interval = 1.0,
                                        .slip = 4.3 * meter,
                                        .slips_per_cut = 1,
                                        .cut = 4.3 * meter},
                                       {}, map);
  ASSERT_EQ(history.events.size(), 6U);
  // The first stroke wears 1 … 21 m, the second 5.3 … 25.3, half a cycle each at the barrel.
  const double once = half_cycle(100e3, barrel);
  const LineEvent& first = history.events[1];
  EXPECT_NEAR(first.section_mean, once * 3.3 / 4.3, 1e-9 * once);
  EXPECT_NEAR(first.section_worst, once, 1e-9 * once);
  const LineEvent& second = history.events[3];
  EXPECT_NEAR(second.section_mean, once * (4.3 + 3.3) / 4.3, 1e-9 * once);
  EXPECT_NEAR(second.section_worst, 2.0 * once, 1e-9 * once);
}

// --- By damage

TEST(LineRunTest, ByDamageByHand) {
  // Full at three and a half strokes: after every fourth. Slips of 45 m leave the worst places.
  const Rows rows = hoists(10);
  const Line line = line_of(rows.campaign());
  const Program program{.trigger = Trigger::damage,
                        .interval = 3.5 * damage_of_one,
                        .slip = 45.0 * meter,
                        .slips_per_cut = 2,
                        .cut = 90.0 * meter};
  EXPECT_EQ(slips_of(run(line, program)), (std::vector<int>{3, 7, -1}));
  Program exact = program;
  exact.interval = 3.0 * damage_of_one;
  EXPECT_EQ(slips_of(run(line, exact)), (std::vector<int>{2, 5, -1, 8}));
}

TEST(LineRunTest, DamageSinceTheLastSlipIsThatOfAnyPlaceOnTheLine) {
  // The same with blocks gone through often and stops that are rare.
  Rows rows = hoists(3);
  rows.may_stop = {0, 1, 0};
  CampaignColumns campaign = rows.campaign();
  campaign.blocks = {{.first = 0, .last = 3, .times = 4}};
  const Line line = line_of(campaign);
  const LineHistory history = run(line, {.trigger = Trigger::damage,
                                         .interval = 4.5 * damage_of_one,
                                         .slip = 45.0 * meter,
                                         .slips_per_cut = 9,
                                         .cut = 90.0 * meter});
  // Five strokes are full: row 1 of the second pass, the fifth stroke. Then 5 more are the tenth,
  // which is row 0 of the fourth pass; the next stop is the eleventh.
  ASSERT_EQ(history.events.size(), 2U);
  EXPECT_NEAR(history.events[0].work, 5.0 * work_of_one, 1e-6);
  EXPECT_NEAR(history.events[1].work, 11.0 * work_of_one, 1e-6);
}

TEST(LineRunTest, ALimitEndsTheRunWhereItIsReached) {
  const Rows rows = hoists(1);
  CampaignColumns campaign = rows.campaign();
  campaign.blocks = {{.first = 0, .last = 1, .times = 10}};
  const Line line = line_of(campaign);
  for (const double strokes : {0.5, 2.5, 9.75}) {
    const LineHistory history = run(line, {}, {.damage_limit = strokes * damage_of_one});
    EXPECT_EQ(history.end, RunEnd::limit_reached);
    EXPECT_NEAR(history.work, strokes * work_of_one, 1e-9 * history.work);
  }
  const LineHistory later = run(line, {}, {.repeats = 5, .damage_limit = 32.25 * damage_of_one});
  EXPECT_NEAR(later.work, 32.25 * work_of_one, 1e-9 * later.work);
  const LineHistory never = run(line, {}, {.damage_limit = 10.5 * damage_of_one});
  EXPECT_EQ(never.end, RunEnd::campaign_done);
  EXPECT_NEAR(never.work, 10.0 * work_of_one, 1e-6);
}

// --- Steps and replay

TEST(LineRunTest, StepsTellTheStateAfterEveryBlock) {
  const Rows rows = hoists(4);
  CampaignColumns campaign = rows.campaign();
  campaign.blocks = {{0, 1, 1}, {1, 4, 1}};
  const Line line = line_of(campaign);
  const LineHistory history = run(line, {}, {.steps = true});
  ASSERT_EQ(history.steps.size(), 2U);
  EXPECT_NEAR(history.steps[0].worst, damage_of_one, 1e-12 * damage_of_one);
  EXPECT_NEAR(history.steps[1].worst, 4.0 * damage_of_one, 1e-11 * damage_of_one);
  EXPECT_NEAR(history.steps[1].work, 4.0 * work_of_one, 1e-6);
  // Both tangent points overlap at 89 … 97 on sheave 1 and at 52 … 70 on sheave 2.
  const double place = history.steps[1].worst_at;
  EXPECT_TRUE((place > 89.0 && place < 97.0) || (place > 52.0 && place < 70.0)) << place;
}

TEST(LineRunTest, ReplayedBlocksAddUpToTheRun) {
  Rows rows = hoists(12);
  for (std::size_t i = 0; i < 12; ++i) rows.to[i] = 5.0 + static_cast<double>(i);
  CampaignColumns campaign = rows.campaign();
  campaign.blocks = {{0, 5, 3}, {5, 6, 1}, {6, 12, 2}};
  const Line line = line_of(campaign);
  const std::vector<double> clock(12, 1.0);
  LineMap map(line.tackle(), line.damage(), 0.7 * meter, MapRows::total);
  const LineHistory history = line.run({.trigger = Trigger::clock,
                                        .clock = clock,
                                        .interval = 4.0,
                                        .slip = 6.1 * meter,
                                        .slips_per_cut = 3,
                                        .cut = 18.3 * meter},
                                       {}, map);
  ASSERT_GT(history.events.size(), 5U);
  LineMap whole(line.tackle(), line.damage(), 0.7 * meter, MapRows::total);
  replay(history, line.strokes(), whole);
  EXPECT_EQ(whole.means(0), map.means(0));
  std::vector<double> sum(map.bins());
  for (std::size_t block = 0; block < 3; ++block) {
    std::vector<std::uint8_t> mask(3, 0);
    mask[block] = 1;
    LineMap part(line.tackle(), line.damage(), 0.7 * meter, MapRows::total);
    replay(history, line.strokes(), part, mask);
    const auto means = part.means(0);
    for (std::size_t b = 0; b < sum.size(); ++b) sum[b] += means[b];
  }
  const auto means = map.means(0);
  for (std::size_t b = 0; b < sum.size(); ++b) EXPECT_NEAR(sum[b], means[b], 1e-13 * means[b]);
}

TEST(LineRunTest, ProgramsThatCannotBeAreRefused) {
  const Rows rows = hoists(3);
  const Line line = line_of(rows.campaign());
  const std::vector<double> clock(3, 1.0);
  const auto field = [&](const auto& change) {
    Program program{.trigger = Trigger::clock,
                    .clock = clock,
                    .interval = 1.0,
                    .slip = 5.0 * meter,
                    .slips_per_cut = 1,
                    .cut = 5.0 * meter};
    change(program);
    return refusal_of([&] { (void)run(line, program); }).field;
  };
  const std::vector<double> back{1.0, -1.0, 1.0};
  const std::vector<double> none{1.0, std::nan(""), 1.0};
  EXPECT_EQ(field([](Program& p) { p.interval = 0.0; }), "interval");
  EXPECT_EQ(field([](Program& p) { p.slip = -1.0 * meter; }), "slip");
  EXPECT_EQ(field([](Program& p) { p.cut = fatigue::not_given<Length>(); }), "cut");
  EXPECT_EQ(field([](Program& p) { p.slips_per_cut = 0; }), "slips_per_cut");
  EXPECT_EQ(field([&](Program& p) { p.clock = p.clock.first(2); }), "clock");
  EXPECT_EQ(field([&](Program& p) { p.clock = back; }), "clock");
  EXPECT_EQ(field([&](Program& p) { p.clock = none; }), "clock");
}

}  // namespace
}  // namespace ropewalk::line
