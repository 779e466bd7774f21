#include "line.hpp"

#include "ropewalk/line/survival.hpp"

namespace ropewalk::bindings {

namespace {

using line::Contact;
using line::Tackle;

std::vector<Length> lengths(const std::vector<double>& meters) {
  std::vector<Length> lengths;
  for (const double one : meters) lengths.push_back(one * meter);
  return lengths;
}

drum::Drum drum_of(double barrel_diameter, double rope_diameter, double laps_per_layer, int layers,
                   double layer_height, int crossovers_per_lap) {
  return drum::Drum({.barrel_diameter = barrel_diameter * meter,
                     .rope_diameter = rope_diameter * meter,
                     .laps_per_layer = from_si<Number>(laps_per_layer),
                     .layers = layers,
                     .layer_height = from_si<Number>(layer_height),
                     .crossovers_per_lap = crossovers_per_lap});
}

Number number(const py::dict& values, const char* key) {
  return from_si<Number>(values[key].cast<double>());
}

line::ExtraWear wear_of(const py::dict& wear) {
  return {.crossover = number(wear, "crossover"),
          .layer_change = number(wear, "layer_change"),
          .crossover_length = wear["crossover_length"].cast<double>() * meter,
          .pick_up = number(wear, "pick_up"),
          .dead_line_sheave = number(wear, "dead_line_sheave"),
          .anchor = number(wear, "anchor"),
          .reverse_bend = number(wear, "reverse_bend")};
}

Tackle tackle(const reeving::Arrangement& arrangement, const std::vector<double>& sheave_diameters,
              double dead_line_sheave_diameter, const std::vector<double>& lead_sheave_diameters,
              double rope_diameter, double dead_line, double fast_line, double shortest,
              double longest, const py::dict& drum, double wraps_at_lowest, double supply,
              const py::dict& wear, const std::vector<bool>& reverse_sheaves,
              const std::vector<bool>& reverse_lead_sheaves, bool reverse_drum) {
  return Tackle(
      {.arrangement = arrangement,
       .sheave_diameters = lengths(sheave_diameters),
       .dead_line_sheave_diameter = dead_line_sheave_diameter * meter,
       .lead_sheave_diameters = lengths(lead_sheave_diameters),
       .rope_diameter = rope_diameter * meter,
       .dead_line = dead_line * meter,
       .fast_line = fast_line * meter,
       .shortest = shortest * meter,
       .longest = longest * meter,
       .drum = drum_of(drum["barrel_diameter"].cast<double>(), rope_diameter,
                       drum["laps_per_layer"].cast<double>(), drum["layers"].cast<int>(),
                       drum["layer_height"].cast<double>(), drum["crossovers_per_lap"].cast<int>()),
       .wraps_at_lowest = from_si<Number>(wraps_at_lowest),
       .supply = supply * meter,
       .wear = wear_of(wear),
       .reverse_sheaves = reverse_sheaves,
       .reverse_lead_sheaves = reverse_lead_sheaves,
       .reverse_drum = reverse_drum});
}

py::dict contact_record(const Contact& contact) {
  py::dict record;
  record["cause"] = contact.cause;
  record["multiple"] = contact.multiple;
  record["near"] = static_cast<double>(contact.near);
  record["far"] = static_cast<double>(contact.far);
  record["diameter"] = to_si(contact.diameter);
  record["tension_up"] = contact.tension_up;
  record["tension_down"] = contact.tension_down;
  record["bends"] = contact.bends;
  record["layer"] = contact.layer;
  return record;
}

void bind_tackle(py::module_& m) {
  py::class_<Tackle>(m, "Tackle", "A strung hoist as the rope sees it, in plain SI numbers.")
      .def(py::init(&tackle), py::kw_only(), py::arg("arrangement"), py::arg("sheave_diameters"),
           py::arg("dead_line_sheave_diameter"), py::arg("lead_sheave_diameters"),
           py::arg("rope_diameter"), py::arg("dead_line"), py::arg("fast_line"),
           py::arg("shortest"), py::arg("longest"), py::arg("drum"), py::arg("wraps_at_lowest"),
           py::arg("supply"), py::arg("wear"), py::arg("reverse_sheaves"),
           py::arg("reverse_lead_sheaves"), py::arg("reverse_drum"))
      .def_property_readonly(
          "contacts",
          [](const Tackle& t) {
            py::list records;
            for (const Contact& one : t.contacts()) records.append(contact_record(one));
            return records;
          },
          "Every place where the rope is bent as it runs, from the dead line to the drum.")
      .def_property_readonly(
          "dead_line_sheave", [](const Tackle& t) { return contact_record(t.dead_line_sheave()); },
          "The sheave that does not turn.")
      .def_property_readonly(
          "reach", [](const Tackle& t) { return static_cast<double>(t.reach()); },
          "Rope from the anchor to the drum with the block at its lowest, m.")
      .def_property_readonly(
          "first_anchor", [](const Tackle& t) { return static_cast<double>(t.first_anchor()); },
          "Position of the anchor on a new line, m.")
      .def_property_readonly(
          "travel", [](const Tackle& t) { return to_si(t.travel()); }, "Travel of the block, m.");
}

std::shared_ptr<BoundCampaign> campaign(
    Numbers hook_load, Numbers count, Numbers height_from, Numbers height_to, Flags pick_up,
    Flags may_stop, const std::vector<std::array<std::size_t, 3>>& blocks,
    const std::vector<std::tuple<std::size_t, bool, double>>& events) {
  std::vector<line::Block> parts;
  for (const auto& [first, last, times] : blocks) parts.push_back({first, last, times});
  std::vector<line::PlannedEvent> planned;
  for (const auto& [block, cut, length] : events) planned.push_back({block, cut, length * meter});
  return std::make_shared<BoundCampaign>(BoundCampaign{
      std::move(hook_load), std::move(count), std::move(height_from), std::move(height_to),
      std::move(pick_up), std::move(may_stop), std::move(parts), std::move(planned)});
}

void bind_campaign(py::module_& m) {
  py::class_<BoundCampaign, std::shared_ptr<BoundCampaign>>(
      m, "CampaignColumns", "The strokes of a campaign: float64 arrays in SI, flags as uint8.")
      .def(py::init(&campaign), py::kw_only(), py::arg("hook_load"), py::arg("count"),
           py::arg("height_from"), py::arg("height_to"), py::arg("pick_up"), py::arg("may_stop"),
           py::arg("blocks"), py::arg("events"),
           "Blocks are (first row, row after the last, times); events (block, cut?, length).");
}

double survival(const Numbers& damage, double bin_length, double ln_deviation, double section,
                double limit) {
  return line::survival(span_of(damage), bin_length, {ln_deviation, section, limit});
}

double sampled_survival(const Numbers& damage, double bin_length, double ln_deviation,
                        double section, std::size_t samples, std::uint64_t seed, double limit,
                        int threads) {
  check_threads("line.survival", threads);
  const auto values = span_of(damage);
  const py::gil_scoped_release unlocked;
  return line::sampled_survival(values, bin_length, {ln_deviation, section, limit}, samples, seed,
                                threads);
}

}  // namespace

line::Program program_of(const std::string& trigger, const Numbers& clock, double interval,
                         double slip, int slips_per_cut, double cut) {
  using Trigger = line::Program::Trigger;
  line::Program program{.clock = span_of(clock),
                        .interval = interval,
                        .slip = slip * meter,
                        .slips_per_cut = slips_per_cut,
                        .cut = cut * meter};
  if (trigger == "none") {
    program.trigger = Trigger::none;
  } else if (trigger == "clock") {
    program.trigger = Trigger::clock;
  } else if (trigger == "damage") {
    program.trigger = Trigger::damage;
  } else {
    throw InadmissibleError("line.Program", "trigger", "no trigger '" + trigger + "'");
  }
  return program;
}

const char* end_text(line::RunEnd end) {
  switch (end) {
    case line::RunEnd::campaign_done:
      return "campaign done";
    case line::RunEnd::reel_used_up:
      return "reel used up";
    case line::RunEnd::limit_reached:
      return "limit reached";
  }
  return "";
}

void bind_line(py::module_& core) {
  py::module_ m = submodule(core, "line", "The damage map of a line, slipping and cutting.");
  bind_tackle(m);
  bind_campaign(m);
  bind_line_runs(m);
  bind_line_cases(m);
  m.def("survival", &survival, py::arg("damage"), py::arg("bin_length"), py::arg("ln_deviation"),
        py::arg("section"), py::arg("limit") = 1.0,
        "Probability that no place has passed its discard life.");
  m.def("sampled_survival", &sampled_survival, py::arg("damage"), py::arg("bin_length"),
        py::arg("ln_deviation"), py::arg("section"), py::arg("samples"), py::arg("seed"),
        py::arg("limit") = 1.0, py::arg("threads") = 1, "The same as a share of sampled lines.");
}

}  // namespace ropewalk::bindings
