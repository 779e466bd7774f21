/// Many runs at once: programs tried on one line, or one campaign on many rigs.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "ropewalk/line/run.hpp"
#include "ropewalk/line/survival.hpp"

namespace ropewalk::line {

/// One run: which line, under which program.
struct Case {
  std::size_t line = 0;
  Program program{};
};

/// What a run comes to.
struct CaseResult {
  RowStatus status = RowStatus::ok;  ///< inadmissible: the run could not be, `reason` says why
  std::string reason;
  RunEnd end = RunEnd::campaign_done;
  double work = 0.0;      ///< done until the end, J
  double rope_cut = 0.0;  ///< m
  double anchor = 0.0;    ///< where the reel begins, m
  double worst = 0.0;     ///< largest damage of any place, cut off or not
  double waste = 0.0;     ///< life left in what was cut: ∫ (1 − damage) along it, m
  double survival = 0.0;  ///< probability that no place has passed its discard life
  double least_wraps_rope = 0.0;
  std::size_t slips = 0;
  std::size_t cuts = 0;
};

struct CaseOptions {
  Length bin = 0.1 * meter;
  Scatter scatter{};
  Line::Options run{};
};

/// Runs every case; the same answers for any number of threads. Throws InadmissibleError for a case
/// of a line that is not there. `stopped` in the report: the caller
/// asked for it, and the results are not whole.
[[nodiscard]] BatchReport run_cases(std::span<const Line* const> lines, std::span<const Case> cases,
                                    const CaseOptions& options, std::span<CaseResult> results,
                                    int threads = 1, const StopAsked& stop = {});

}  // namespace ropewalk::line
