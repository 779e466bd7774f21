#include "line.hpp"

namespace ropewalk::bindings {

namespace {

using line::LineEvent;
using line::LineMap;
using line::MapRows;
using line::Severity;

std::shared_ptr<BoundLine> make_line(const line::Tackle& tackle, const BoundModel& model,
                                     std::shared_ptr<BoundCampaign> campaign, double rope_diameter,
                                     double wire_strength, double breaking_force,
                                     double bend_length, double life_factor) {
  const line::RopeProperties rope{.diameter = rope_diameter * meter,
                                  .wire_strength = wire_strength * pascal,
                                  .breaking_force = breaking_force * newton,
                                  .bend_length = bend_length * meter,
                                  .life_factor = from_si<Number>(life_factor)};
  line::Line one(tackle, model.model, rope, campaign->columns());
  return std::make_shared<BoundLine>(
      BoundLine{std::move(campaign), model.model, rope, std::move(one)});
}

py::dict event_record(const LineEvent& event) {
  py::dict record;
  record["cut"] = event.cut;
  record["block"] = event.block;
  record["row"] = event.row;
  record["work"] = event.work;
  record["length"] = event.length;
  record["anchor"] = static_cast<double>(event.after.anchor);
  record["drum_end"] = static_cast<double>(event.after.drum_end);
  record["worst_before"] = event.worst_before;
  record["section_worst"] = event.section_worst;
  record["section_mean"] = event.section_mean;
  return record;
}

py::dict step_record(const line::LineStep& step) {
  py::dict record;
  record["block"] = step.block;
  record["work"] = step.work;
  record["anchor"] = static_cast<double>(step.position.anchor);
  record["drum_end"] = static_cast<double>(step.position.drum_end);
  record["worst"] = step.worst;
  record["worst_at"] = step.worst_at;
  return record;
}

/// A finished run, from which further maps can be drawn.
struct BoundHistory {
  std::shared_ptr<BoundLine> owner;
  line::LineHistory history;
  double bin;
  Numbers damage;

  /// Rows × bins of a map of the same run.
  [[nodiscard]] Numbers rows_of(const LineMap& map) const {
    Numbers result({static_cast<py::ssize_t>(map.rows()), static_cast<py::ssize_t>(map.bins())});
    double* out = result.mutable_data();
    for (std::size_t row = 0; row < map.rows(); ++row) {
      const std::vector<double> means = map.means(row);
      out = std::copy(means.begin(), means.end(), out);
    }
    return result;
  }
  [[nodiscard]] Numbers by_cause() const {
    const line::Line& one = owner->line;
    LineMap map(one.tackle(), one.damage(), bin * meter, MapRows::cause);
    {
      const py::gil_scoped_release unlocked;
      replay(history, one.strokes(), map);
    }
    return rows_of(map);
  }
  [[nodiscard]] Numbers of_blocks(const Flags& mask) const {
    const line::Line& one = owner->line;
    if (static_cast<std::size_t>(mask.size()) != one.campaign().blocks.size()) {
      throw InadmissibleError("line.of_blocks", "mask", "one flag for each block is needed");
    }
    LineMap map(one.tackle(), one.damage(), bin * meter, MapRows::total);
    const auto marks = span_of(mask);
    {
      const py::gil_scoped_release unlocked;
      replay(history, one.strokes(), map, marks);
    }
    return array_of(map.means(0));
  }
  [[nodiscard]] Numbers cycles() const {
    const line::Line& one = owner->line;
    const Severity rule = Severity::bending_cycles(one.tackle());
    const auto severities = severities_of(rule, one.campaign().loads);
    line::CampaignStrokes strokes = strokes_of(one.campaign(), severities);
    strokes.pick_up = {};  // no bend
    LineMap map(one.tackle(), rule, bin * meter, MapRows::total);
    {
      const py::gil_scoped_release unlocked;
      replay(history, strokes, map);
    }
    return array_of(map.means(0));
  }
  /// Damage on the rope before every slip and cut, and at the end.
  [[nodiscard]] Numbers by_epoch() const {
    const line::Line& one = owner->line;
    LineMap map(one.tackle(), one.damage(), bin * meter, MapRows::total);
    Numbers result(
        {static_cast<py::ssize_t>(history.epochs.size()), static_cast<py::ssize_t>(map.bins())});
    double* out = result.mutable_data();
    for (const line::Epoch& epoch : history.epochs) {
      map.add(one.strokes(), epoch.ranges, epoch.position);
      const std::vector<double> means = map.means(0);
      out = std::copy(means.begin(), means.end(), out);
    }
    return result;
  }
};

BoundHistory run(const std::shared_ptr<BoundLine>& owner, const std::string& trigger,
                 const Numbers& clock, double interval, double slip, int slips_per_cut, double cut,
                 double bin_length, bool steps, std::size_t repeats,
                 std::optional<double> damage_limit) {
  const line::Program program = program_of(trigger, clock, interval, slip, slips_per_cut, cut);
  const line::Line::Options options{
      .steps = steps, .repeats = repeats, .damage_limit = damage_limit};
  LineMap map(owner->line.tackle(), owner->line.damage(), bin_length * meter, MapRows::total);
  line::LineHistory history;
  {
    const py::gil_scoped_release unlocked;
    history = owner->line.run(program, options, map);
  }
  return {owner, std::move(history), bin_length, array_of(map.means(0))};
}

double outside_validity(const BoundLine& owner) {
  const line::CampaignColumns& c = owner.line.campaign();
  return share_outside_validity(owner.model, owner.rope, owner.line.tackle(), c.loads,
                                c.height_from, c.height_to);
}

void bind_history(py::module_& m) {
  const auto records = [](const auto& list, auto record) {
    py::list result;
    for (const auto& one : list) result.append(record(one));
    return result;
  };
  py::class_<BoundHistory>(m, "History", "A finished run on one line.")
      .def_readonly("damage", &BoundHistory::damage, "Mean damage over every bin.")
      .def_property_readonly(
          "events",
          [records](const BoundHistory& h) { return records(h.history.events, &event_record); },
          "Slips and cuts in their order.")
      .def_property_readonly(
          "steps",
          [records](const BoundHistory& h) { return records(h.history.steps, &step_record); },
          "The line after every block.")
      .def_property_readonly(
          "epoch_positions",
          [](const BoundHistory& h) {
            std::vector<std::array<double, 2>> positions;
            for (const auto& epoch : h.history.epochs) {
              positions.push_back({static_cast<double>(epoch.position.anchor),
                                   static_cast<double>(epoch.position.drum_end)});
            }
            return positions;
          },
          "Anchor and drum end of every epoch, m.")
      .def_property_readonly(
          "end", [](const BoundHistory& h) { return end_text(h.history.end); },
          "How the run ended.")
      .def_property_readonly("work", [](const BoundHistory& h) { return h.history.work; })
      .def_property_readonly(
          "anchor",
          [](const BoundHistory& h) { return static_cast<double>(h.history.position.anchor); })
      .def_property_readonly(
          "drum_end",
          [](const BoundHistory& h) { return static_cast<double>(h.history.position.drum_end); })
      .def_property_readonly("worst", [](const BoundHistory& h) { return h.history.worst; })
      .def_property_readonly("least_wraps_rope",
                             [](const BoundHistory& h) { return h.history.least_wraps_rope; })
      .def("by_cause", &BoundHistory::by_cause, "Damage by cause, rows × bins.")
      .def("of_blocks", &BoundHistory::of_blocks, py::arg("mask"),
           "Damage by the marked blocks alone.")
      .def("by_epoch", &BoundHistory::by_epoch,
           "Damage before every slip or cut and at the end, epochs × bins.")
      .def("cycles", &BoundHistory::cycles, "Bending cycles over every bin.");
}

}  // namespace

void bind_line_runs(py::module_& m) {
  bind_history(m);
  py::class_<BoundLine, std::shared_ptr<BoundLine>>(m, "Line",
                                                    "A line ready to run, in plain SI numbers.")
      .def(py::init(&make_line), py::kw_only(), py::arg("tackle"), py::arg("model"),
           py::arg("campaign"), py::arg("rope_diameter"), py::arg("wire_strength"),
           py::arg("breaking_force"), py::arg("bend_length"), py::arg("life_factor") = 1.0)
      .def_property_readonly(
          "causes", [](const BoundLine& one) { return cause_names(one.line.tackle()); },
          "Names of the rows of a map by cause.")
      .def_property_readonly("share_outside_validity", &outside_validity,
                             "Share of the damage from bends outside the range of the model.")
      .def("run", &run, py::kw_only(), py::arg("trigger"), py::arg("clock"), py::arg("interval"),
           py::arg("slip"), py::arg("slips_per_cut"), py::arg("cut"), py::arg("bin_length"),
           py::arg("steps") = false, py::arg("repeats") = 1, py::arg("damage_limit") = py::none(),
           "Runs the campaign under a program.");
}

}  // namespace ropewalk::bindings
