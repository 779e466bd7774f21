/// What the files that bind the subject line share: a campaign with its arrays, and a line.
#pragma once

#include "common.hpp"
#include "fatigue_models.hpp"

#include <memory>

#include "ropewalk/line/run.hpp"

namespace ropewalk::bindings {

/// Numbers in SI, as the face hands them over; nothing is converted.
using Numbers = py::array_t<double, py::array::c_style>;
using Flags = py::array_t<std::uint8_t, py::array::c_style>;

inline std::span<const double> span_of(const Numbers& array) {
  return {array.data(), static_cast<std::size_t>(array.size())};
}
inline std::span<const std::uint8_t> span_of(const Flags& array) {
  return {array.data(), static_cast<std::size_t>(array.size())};
}
inline Numbers array_of(std::span<const double> values) {
  return Numbers(static_cast<py::ssize_t>(values.size()), values.data());
}

/// The columns of a campaign and the arrays they lie in.
struct BoundCampaign {
  Numbers hook_load;
  Numbers count;
  Numbers height_from;
  Numbers height_to;
  Flags pick_up;
  Flags may_stop;
  std::vector<line::Block> blocks;
  std::vector<line::PlannedEvent> events;

  [[nodiscard]] line::CampaignColumns columns() const {
    return {.loads = {span_of(hook_load), span_of(count)},
            .height_from = span_of(height_from),
            .height_to = span_of(height_to),
            .pick_up = span_of(pick_up),
            .may_stop = span_of(may_stop),
            .blocks = blocks,
            .events = events};
  }
};

/// A line that keeps its campaign, and its life model for questions about it.
struct BoundLine {
  std::shared_ptr<BoundCampaign> campaign;
  fatigue::LifeModel model;
  line::RopeProperties rope;
  line::Line line;
};

/// A program of slipping and cutting; the clock is "none", "clock" or "damage".
[[nodiscard]] line::Program program_of(const std::string& trigger, const Numbers& clock,
                                       double interval, double slip, int slips_per_cut, double cut);
[[nodiscard]] const char* end_text(line::RunEnd end);

void bind_line_runs(py::module_& m);
void bind_line_cases(py::module_& m);

}  // namespace ropewalk::bindings
