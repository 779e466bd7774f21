#include "line.hpp"

#include "ropewalk/line/cases.hpp"

namespace ropewalk::bindings {

namespace {

using line::Case;
using line::CaseResult;

template <class Value>
py::array_t<double> column(const std::vector<CaseResult>& results, const Value& value) {
  py::array_t<double> array(static_cast<py::ssize_t>(results.size()));
  std::transform(results.begin(), results.end(), array.mutable_data(),
                 [&](const CaseResult& one) { return static_cast<double>(value(one)); });
  return array;
}

py::dict results_record(const std::vector<CaseResult>& results) {
  py::dict record;
  record["work"] = column(results, [](const CaseResult& r) { return r.work; });
  record["rope_cut"] = column(results, [](const CaseResult& r) { return r.rope_cut; });
  record["anchor"] = column(results, [](const CaseResult& r) { return r.anchor; });
  record["worst"] = column(results, [](const CaseResult& r) { return r.worst; });
  record["waste"] = column(results, [](const CaseResult& r) { return r.waste; });
  record["survival"] = column(results, [](const CaseResult& r) { return r.survival; });
  record["least_wraps_rope"] =
      column(results, [](const CaseResult& r) { return r.least_wraps_rope; });
  record["slips"] = column(results, [](const CaseResult& r) { return r.slips; });
  record["cuts"] = column(results, [](const CaseResult& r) { return r.cuts; });
  py::list end;
  py::list reason;
  py::array_t<std::uint8_t> status(static_cast<py::ssize_t>(results.size()));
  std::uint8_t* marks = status.mutable_data();
  for (const CaseResult& one : results) {
    *marks++ = static_cast<std::uint8_t>(one.status);
    end.append(end_text(one.end));
    reason.append(one.reason);
  }
  record["end"] = end;
  record["reason"] = reason;
  record["status"] = status;
  return record;
}

py::dict run_cases(const std::vector<std::shared_ptr<BoundLine>>& lines,
                   const std::vector<std::size_t>& line_of_case,
                   const std::vector<std::string>& triggers, const std::vector<Numbers>& clocks,
                   const std::vector<double>& intervals, const std::vector<double>& slips,
                   const std::vector<int>& slips_per_cut, const std::vector<double>& cuts,
                   double bin_length, double ln_deviation, double section, double limit,
                   std::size_t repeats, std::optional<double> damage_limit, int threads) {
  check_threads("line.run_cases", threads);
  std::vector<Case> cases;
  for (std::size_t i = 0; i < line_of_case.size(); ++i) {
    // `at`: columns of unlike length are an error of the caller, not of memory.
    cases.push_back({line_of_case[i], program_of(triggers.at(i), clocks.at(i), intervals.at(i),
                                                 slips.at(i), slips_per_cut.at(i), cuts.at(i))});
  }
  std::vector<const line::Line*> pointers;
  for (const auto& one : lines) pointers.push_back(&one->line);
  for (const Case& one : cases) (void)pointers.at(one.line);
  const line::CaseOptions options{
      .bin = bin_length * meter,
      .scatter = {ln_deviation, section, limit},
      .run = {.steps = false, .repeats = repeats, .damage_limit = damage_limit}};
  std::vector<CaseResult> results(cases.size());
  BatchReport report;
  {
    const py::gil_scoped_release unlocked;
    report = line::run_cases(pointers, cases, options, results, threads, interrupt_asked);
  }
  if (report.stopped) throw py::error_already_set();
  return results_record(results);
}

}  // namespace

void bind_line_cases(py::module_& m) {
  m.def("run_cases", &run_cases, py::kw_only(), py::arg("lines"), py::arg("line_of_case"),
        py::arg("triggers"), py::arg("clocks"), py::arg("intervals"), py::arg("slips"),
        py::arg("slips_per_cut"), py::arg("cuts"), py::arg("bin_length"), py::arg("ln_deviation"),
        py::arg("section"), py::arg("limit") = 1.0, py::arg("repeats") = 1,
        py::arg("damage_limit") = py::none(), py::arg("threads") = 1,
        "Runs many cases; one entry per case in every column.");
}

}  // namespace ropewalk::bindings
