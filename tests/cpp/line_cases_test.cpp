/// Many runs at once: the same as one by one, for any number of threads.
#include <gtest/gtest.h>

#include <array>

#include "line_hoists.hpp"
#include "ropewalk/line/cases.hpp"

namespace ropewalk::line {
namespace {

struct LineCasesTest : testing::Test {
  LineCasesTest() {
    for (int i = 0; i < 40; ++i) rows.add(100e3 + 5e3 * i, (i * 7) % 30, (i * 11 + 3) % 30);
    clock.assign(rows.size(), 1.0);
    for (const int strung : {2, 4}) {
      made.emplace_back(Tackle(round_hoist(strung, 1.04)), square_law(), rope_properties(),
                        rows.campaign());
    }
    for (const Line& line : made) lines.push_back(&line);
    for (std::size_t i = 0; i < 24; ++i) {
      cases.push_back({.line = i % 2,
                       .program = {.trigger = Program::Trigger::clock,
                                   .clock = clock,
                                   .interval = 3.0 + static_cast<double>(i),
                                   .slip = 6.0 * meter,
                                   .slips_per_cut = 1 + static_cast<int>(i % 3),
                                   .cut = 6.0 * (1.0 + static_cast<double>(i % 3)) * meter}});
    }
    // Wide, so that survival is neither 0 nor 1.
    options.scatter = {.ln_deviation = 3.0, .section = 5.0};
  }

  std::vector<CaseResult> run(int threads) {
    std::vector<CaseResult> results(cases.size());
    report = run_cases(lines, cases, options, results, threads);
    return results;
  }

  Rows rows;
  std::vector<double> clock;
  std::vector<Line> made;
  std::vector<const Line*> lines;
  std::vector<Case> cases;
  CaseOptions options;
  BatchReport report;
};

void expect_same(const CaseResult& a, const CaseResult& b) {
  EXPECT_EQ(a.status, b.status);
  EXPECT_EQ(a.reason, b.reason);
  EXPECT_EQ(a.end, b.end);
  EXPECT_EQ(a.work, b.work);
  EXPECT_EQ(a.rope_cut, b.rope_cut);
  EXPECT_EQ(a.anchor, b.anchor);
  EXPECT_EQ(a.worst, b.worst);
  EXPECT_EQ(a.waste, b.waste);
  EXPECT_EQ(a.survival, b.survival);
  EXPECT_EQ(a.least_wraps_rope, b.least_wraps_rope);
  EXPECT_EQ(a.slips, b.slips);
  EXPECT_EQ(a.cuts, b.cuts);
}

TEST_F(LineCasesTest, ACaseOfALineThatIsNotThereIsRefused) {
  cases[5].line = 2;
  const Refusal refusal = refusal_of([&] { run(1); });
  EXPECT_EQ(refusal.field, "line");
  EXPECT_TRUE(refusal.says("case 5")) << refusal.text;
}

TEST_F(LineCasesTest, EqualSingleRuns) {
  const auto results = run(1);
  EXPECT_EQ(report.all, RowStatus::ok);
  for (std::size_t i = 0; i < cases.size(); ++i) {
    const Line& line = *lines[cases[i].line];
    LineMap map(line.tackle(), line.damage(), options.bin, MapRows::total);
    const LineHistory history = line.run(cases[i].program, {}, map);
    const CaseResult& result = results[i];
    EXPECT_EQ(result.status, RowStatus::ok);
    EXPECT_EQ(result.work, history.work);
    EXPECT_EQ(result.worst, history.worst);
    EXPECT_EQ(result.anchor, static_cast<double>(history.position.anchor));
    EXPECT_EQ(result.slips + result.cuts, history.events.size());
    EXPECT_NEAR(result.rope_cut, static_cast<double>(history.position.drum_end), 1e-10);
    double waste = 0.0;
    for (const LineEvent& event : history.events) {
      if (event.cut) waste += event.length * (1.0 - event.section_mean);
    }
    EXPECT_NEAR(result.waste, waste, 1e-12 * waste);
    EXPECT_EQ(result.survival, survival(map.means(0), map.bin_length(), options.scatter));
    EXPECT_GT(result.survival, 0.0);
    EXPECT_LT(result.survival, 1.0);
  }
}

TEST_F(LineCasesTest, SameBitsForAnyNumberOfThreads) {
  const auto one = run(1);
  for (const int threads : {2, 5}) {
    const auto many = run(threads);
    for (std::size_t i = 0; i < one.size(); ++i) expect_same(one[i], many[i]);
  }
}

TEST_F(LineCasesTest, ABadCaseIsMarkedAndTheOthersAreFine) {
  const auto good = run(1);
  cases[3].program.interval = -1.0;
  cases[8].program.cut = 60.0 * meter;  // more than its slip and the wraps, sooner or later
  cases[8].program.slips_per_cut = 1;
  for (const int threads : {1, 3}) {
    const auto results = run(threads);
    EXPECT_EQ(report.marked_rows, 2U);
    EXPECT_EQ(report.first_marked_row, 3U);
    EXPECT_FALSE(report.stopped);
    for (std::size_t i = 0; i < results.size(); ++i) {
      if (i == 3 || i == 8) {
        EXPECT_EQ(results[i].status, RowStatus::inadmissible);
        EXPECT_NE(results[i].reason.find(i == 3 ? "interval" : "cutting 60 m"), std::string::npos)
            << results[i].reason;
      } else {
        expect_same(results[i], good[i]);
      }
    }
  }
}

TEST_F(LineCasesTest, StopsWhenAsked) {
  std::vector<CaseResult> results(cases.size());
  report = run_cases(lines, cases, options, results, 1, [] { return true; });
  EXPECT_TRUE(report.stopped);
}

}  // namespace
}  // namespace ropewalk::line
