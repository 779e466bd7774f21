#include "common.hpp"
#include "records.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/drawworks/inertia.hpp"
#include "ropewalk/drawworks/power.hpp"
#include "ropewalk/drawworks/sizes.hpp"
#include "ropewalk/drawworks/stand.hpp"

namespace ropewalk::bindings {

void bind_drawworks_hoist(py::module_& m);

namespace {

template <class Q>
py::object number_or_none(const std::optional<Q>& quantity) {
  return quantity ? py::object(py::float_(to_si(*quantity))) : py::object(py::none());
}

py::dict size_record(const drawworks::RigSize& size) {
  py::dict record;
  record["standard"] = std::string(size.standard);
  record["name"] = std::string(size.name);
  record["depth"] = to_si(size.depth);
  record["hook_load"] = number_or_none(size.hook_load);
  record["power_from"] = to_si(size.power_from);
  record["power_to"] = to_si(size.power_to);
  record["rope_diameter"] = number_or_none(size.rope_diameter);
  record["source"] = citation(size.provenance.source);
  record["standing"] = std::string(size.provenance.standing);
  return record;
}

void bind_drawworks_tables(py::module_& m) {
  m.def(
      "rig_sizes",
      [] {
        std::vector<py::dict> records;
        for (const auto& size : drawworks::rig_sizes()) records.push_back(size_record(size));
        return records;
      },
      "Every size there is, as size_for_depth() gives it.");
  m.def(
      "size_for_depth",
      [](const SiArgument& depth, const std::string& standard) {
        return size_record(drawworks::size_for_depth(
            from_si<Length>(si_number("drawworks.size_for_depth", "depth", "m", depth.value)),
            standard));
      },
      py::arg("depth"), py::arg("standard"),
      "The smallest size of a standard whose depth [m] reaches a well, with source.");
  m.def(
      "table",
      [](const std::string& name) {
        const std::vector<std::string> names{"drawworks_efficiencies", "drawworks_sizes"};
        if (std::find(names.begin(), names.end(), name) == names.end()) {
          throw LookupError("drawworks.table", "name",
                            "there is no table '" + name + "' here; there are: " + joined(names));
        }
        return table_records(name);
      },
      py::arg("name"),
      "Rows of one of this subject's tables with source and standing of each value.");
}

}  // namespace

void bind_drawworks(py::module_& core) {
  py::module_ m =
      submodule(core, "drawworks", "Drawworks: power, speed and load, inertia, time and energy.");
  bind_row<drawworks::HookPower>(m, "Power at the hook.");
  bind_row<drawworks::HoistingPower>(m, "Power to hoist a load steadily.");
  bind_row<drawworks::HoistingSpeed>(m, "Speed at which a power hoists a load.");
  bind_row<drawworks::DrumSpeed>(m, "Rotation of the drum.");
  bind_row<drawworks::DrumTorque>(m, "Torque of the fast line on the drum.");
  bind_row<drawworks::MotorTorque>(m, "Torque of a motor at a speed.");
  bind_row<drawworks::PowerForDepth>(m, "Power usual for a depth of well.");
  bind_row<drawworks::ReflectedInertia>(m, "Moment of inertia seen through a gear.");
  bind_row<drawworks::HookEquivalentMass>(m, "Turning parts as a mass at the hook.");
  bind_row<drawworks::SheaveEquivalentMass>(m, "Turning sheaves as a mass at the hook.");
  bind_row<drawworks::StandPeakSpeed>(m, "Highest speed of a stroke.");
  bind_row<drawworks::StandTime>(m, "Time of a stroke from rest to rest.");
  bind_drawworks_tables(m);
  bind_drawworks_hoist(m);
}

}  // namespace ropewalk::bindings
