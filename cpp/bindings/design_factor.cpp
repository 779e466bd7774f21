#include "common.hpp"

#include "ropewalk/design_factor/design_factor.hpp"
#include "ropewalk/design_factor/minimum.hpp"

namespace ropewalk::bindings {

namespace {

py::dict minimum_record(const design_factor::Minimum& minimum) {
  py::dict record;
  record["operation"] = std::string(minimum.operation);
  record["standard"] = std::string(minimum.standard);
  record["edition"] = std::string(minimum.edition);
  record["value"] = to_si(minimum.value);
  record["basis"] = std::string(minimum.basis);
  record["source"] = citation(minimum.provenance.source);
  record["standing"] = std::string(minimum.provenance.standing);
  return record;
}

}  // namespace

void bind_design_factor(py::module_& core) {
  py::module_ m = submodule(core, "design_factor", "Design factors of ropes and their minimums.");
  bind_row<design_factor::DesignFactor>(m, "Breaking force over rope tension.");
  bind_row<design_factor::Derated>(m, "Design factor of a rope bent over a sheave.");
  bind_row<design_factor::AllowedRopeTension>(m, "Largest tension for a minimum design factor.");
  m.def(
      "minimum",
      [](const std::string& operation, const std::string& standard) {
        return minimum_record(design_factor::minimum(operation, standard));
      },
      py::arg("operation"), py::arg("standard") = "API RP 9B",
      "The minimum design factor a standard asks for in an operation, with its source.");
  m.def(
      "minimums",
      [] {
        std::vector<py::dict> records;
        for (const auto& row : design_factor::minimums()) records.push_back(minimum_record(row));
        return records;
      },
      "Every minimum design factor, as minimum() gives it.");
}

}  // namespace ropewalk::bindings
