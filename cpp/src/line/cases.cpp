#include "ropewalk/line/cases.hpp"

namespace ropewalk::line {

namespace {

CaseResult run_case(const Line& line, const Program& program, const CaseOptions& options) {
  LineMap map(line.tackle(), line.damage(), options.bin, MapRows::total);
  const LineHistory history = line.run(program, options.run, map);
  const std::vector<double> damage = map.means(0);
  CaseResult result;
  result.end = history.end;
  result.work = history.work;
  result.anchor = static_cast<double>(history.position.anchor);
  result.worst = history.worst;
  result.survival = survival(damage, map.bin_length(), options.scatter);
  result.least_wraps_rope = history.least_wraps_rope;
  for (const LineEvent& event : history.events) {
    if (!event.cut) {
      ++result.slips;
      continue;
    }
    ++result.cuts;
    result.rope_cut += event.length;
    result.waste += (1.0 - event.section_mean) * event.length;
  }
  return result;
}

}  // namespace

BatchReport run_cases(std::span<const Line* const> lines, std::span<const Case> cases,
                      const CaseOptions& options, std::span<CaseResult> results, int threads,
                      const StopAsked& stop) {
  for (std::size_t i = 0; i < cases.size(); ++i) {
    if (cases[i].line < lines.size()) continue;
    throw InadmissibleError("line.run_cases", "line",
                            "case " + std::to_string(i) +
                                ": line = " + std::to_string(cases[i].line) + ", and there are " +
                                std::to_string(lines.size()) + " lines, counted from 0");
  }
  const auto piece = [&](std::size_t begin, std::size_t end) {
    BatchReport report;
    for (std::size_t i = begin; i < end; ++i) {
      try {
        results[i] = run_case(*lines[cases[i].line], cases[i].program, options);
      } catch (const InadmissibleError& error) {
        results[i].status = RowStatus::inadmissible;
        results[i].reason = error.what();
        report.mark(i, RowStatus::inadmissible);
      }
    }
    return report;
  };
  return ropewalk::detail::run_pieces(cases.size(), threads, stop, piece, 1);
}

}  // namespace ropewalk::line
