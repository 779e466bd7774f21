#include "common.hpp"
#include "fatigue_models.hpp"
#include "records.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/fatigue/collective.hpp"
#include "ropewalk/fatigue/discard_wire_breaks.hpp"
#include "ropewalk/fatigue/en13001.hpp"
#include "ropewalk/fatigue/en81_50.hpp"
#include "ropewalk/fatigue/endurance.hpp"
#include "ropewalk/fatigue/feyrer_factors.hpp"
#include "ropewalk/fatigue/optimal_diameter.hpp"
#include "ropewalk/fatigue/shigley.hpp"

namespace ropewalk::bindings {

namespace {

std::vector<py::dict> table_of_subject(const std::string& name) {
  const std::vector<std::string> names{
      "discard_wire_breaks",   "drucker_tachau_points",  "en81_50_exponents",
      "en81_50_grooves",       "endurance_core",         "endurance_construction",
      "endurance_lubrication", "endurance_round_groove", "endurance_shaped_groove",
      "fatigue_models",        "fatigue_validity",       "relative_bending_life"};
  if (std::find(names.begin(), names.end(), name) == names.end()) {
    throw LookupError("fatigue.table", "name",
                      "there is no table '" + name + "' here; there are: " + joined(names));
  }
  return table_records(name);
}

py::dict factor_record(const fatigue::EnduranceFactor& factor) {
  py::dict record;
  record["name"] = factor.name;
  record["value"] = factor.value;
  record["source"] = factor.source;
  record["standing"] = factor.standing;
  return record;
}

py::dict discard_record(const std::string& construction) {
  const fatigue::DiscardConstants& row = fatigue::discard_constants(construction);
  py::dict record;
  record["construction"] = row.construction;
  record["g0"] = row.g0;
  record["g1"] = row.g1;
  record["g2"] = row.g2;
  record["g3"] = row.g3;
  record["source"] = row.source;
  record["standing"] = row.standing;
  return record;
}

Angle angle_of(std::string_view where, const SiArgument& argument) {
  return from_si<Angle>(si_number(where, "groove_angle", "rad", argument.value));
}

/// A one-dimensional list of numbers, as the collective functions take them.
std::vector<double> numbers_of(std::string_view where, std::string_view field,
                               const SiArgument& argument) {
  const Columns columns(where, {{field, "", argument.value}});
  std::vector<double> numbers;
  numbers.reserve(columns.rows());
  for (std::size_t i = 0; i < columns.rows(); ++i) numbers.push_back(columns.columns()[0].at(i));
  return numbers;
}

void bind_rows(py::module_& m) {
  bind_row<fatigue::SizeFactor>(m, "Rope diameter factor f_d on bending life (Feyrer).");
  bind_row<fatigue::LengthFactor>(m, "Bending length factor f_L on bending life (Feyrer).");
  bind_row<fatigue::FleetAngleFactor>(m, "Side deflection factor f_N2 on bending life.");
  bind_row<fatigue::ReverseBendingCycles>(m,
                                          "Life in reverse bending from that in simple bending.");
  bind_row<fatigue::DiscardWireBreaks>(m, "Wire breaks on 30 diameters at discard (Feyrer).");
  bind_row<fatigue::DiscardLimitingForce>(m, "Tension that leaves room for wire breaks to warn.");
  bind_row<fatigue::En81SafetyFactor>(m, "Least safety factor of suspension ropes (EN 81-50).");
  bind_row<fatigue::En81SheaveWeight>(m, "Weight K_p of deflection sheaves (EN 81-50).");
  bind_row<fatigue::En81EquivalentSheaves>(m, "Number of equivalent sheaves (EN 81-50).");
  bind_row<fatigue::En13001StaticFactor>(m, "Rope resistance factor (EN 13001-3-2).");
  bind_row<fatigue::En13001ForceHistory>(m, "Force history parameter s_r (EN 13001-3-2).");
  bind_row<fatigue::En13001FatigueResistance>(m, "Limit design rope force (EN 13001-3-2).");
  bind_row<fatigue::En13001Utilization>(m, "Utilization of the fatigue proof (EN 13001-3-2).");
  bind_row<fatigue::OptimalRopeDiameter>(m, "Rope diameter of the longest bending life.");
  bind_row<fatigue::HoistRopeTension>(m, "Tension of one rope of a hoist (Shigley).");
  bind_row<fatigue::WireBendingStress>(m, "Bending stress of the wires on a sheave.");
  bind_row<fatigue::BendingLoad>(m, "Tension that stresses the wires as bending does (Shigley).");
  bind_row<fatigue::FatigueTension>(m, "Tension borne at a bearing-pressure ratio (Shigley).");
  bind_row<fatigue::StaticSafetyFactor>(m, "Static safety factor of a hoist rope (Shigley).");
  bind_row<fatigue::FatigueSafetyFactor>(m, "Fatigue safety factor of a hoist rope (Shigley).");
}

void bind_factors(py::module_& m) {
  m.def(
      "lubrication_factor",
      [](const std::string& lubrication) {
        return factor_record(fatigue::lubrication_factor(lubrication));
      },
      py::arg("lubrication"), "Endurance factor of lubrication.");
  m.def(
      "round_groove_factor",
      [](const SiArgument& ratio) {
        return factor_record(fatigue::round_groove_factor(from_si<Number>(
            si_number("fatigue.round_groove_factor", "groove_radius_ratio", "", ratio.value))));
      },
      py::arg("groove_radius_ratio"), "Endurance factor of a round groove, by r/d.");
  m.def(
      "shaped_groove_factor",
      [](const std::string& groove, const SiArgument& angle) {
        return factor_record(
            fatigue::shaped_groove_factor(groove, angle_of("fatigue.shaped_groove_factor", angle)));
      },
      py::arg("groove"), py::arg("groove_angle"),
      "Endurance factor of an undercut or V groove, by its angle [rad].");
  m.def(
      "core_factor",
      [](const std::string& core, int strands) {
        return factor_record(fatigue::core_factor(core, strands));
      },
      py::arg("core"), py::arg("strands"), "Factor of core and number of strands.");
  m.def(
      "construction_factor",
      [](const std::string& construction) {
        return factor_record(fatigue::construction_factor(construction));
      },
      py::arg("construction"), "Bending life of a construction over that of 6x25FW.");
  m.def(
      "factors_product",
      [](const std::vector<std::pair<std::string, double>>& factors) {
        fatigue::EnduranceFactors together;
        for (const auto& [name, value] : factors) together.add({name, value, "", ""});
        return together.product().value();
      },
      py::arg("factors"), "Product of endurance factors, each name once and each value above 0.");
  m.def(
      "en81_groove_equivalent",
      [](const std::string& groove, const SiArgument& angle) {
        return fatigue::en81_groove_equivalent(groove,
                                               angle_of("fatigue.en81_groove_equivalent", angle));
      },
      py::arg("groove"), py::arg("groove_angle") = 0.0,
      "Equivalent sheaves of a traction sheave, by its groove and angle [rad].");
}

void bind_collectives(py::module_& m) {
  m.def(
      "equivalent_force_ratio",
      [](const SiArgument& shares, const SiArgument& force_ratios, const SiArgument& exponent) {
        constexpr std::string_view where = "fatigue.equivalent_force_ratio";
        return fatigue::equivalent_force_ratio(numbers_of(where, "shares", shares),
                                               numbers_of(where, "force_ratios", force_ratios),
                                               si_number(where, "exponent", "", exponent.value));
      },
      py::arg("shares"), py::arg("force_ratios"), py::arg("exponent"),
      "Equivalent force of a load collective, relative to the reference force.");
  const auto pair =
      [&](const char* name, std::string_view where, const char* first, const char* second,
          double (*function)(std::span<const double>, std::span<const double>), const char* doc) {
        m.def(
            name,
            [=](const SiArgument& a, const SiArgument& b) {
              return function(numbers_of(where, first, a), numbers_of(where, second, b));
            },
            py::arg(first), py::arg(second), doc);
      };
  pair("force_spectrum_factor", "fatigue.force_spectrum_factor", "shares", "force_ratios",
       &fatigue::force_spectrum_factor, "Rope force spectrum factor k_r (EN 13001-3-2).");
  pair("miner_sum", "fatigue.miner_sum", "counts", "lives", &fatigue::miner_sum,
       "Damage sum of Palmgren and Miner.");
  pair("collective_life", "fatigue.collective_life", "shares", "lives", &fatigue::collective_life,
       "Life under a load collective by the damage sum.");
}

}  // namespace

void bind_fatigue(py::module_& core) {
  py::module_ m =
      submodule(core, "fatigue", "Bending-over-sheave life: models, factors, load collectives.");
  bind_rows(m);
  bind_factors(m);
  bind_collectives(m);
  bind_life_models(m);
  m.def("discard_constants", &discard_record, py::arg("construction"),
        "Constants of the discard wire-break number of a rope construction.");
  m.def("table", &table_of_subject, py::arg("name"), "Rows of a data table of this subject.");
}

}  // namespace ropewalk::bindings
