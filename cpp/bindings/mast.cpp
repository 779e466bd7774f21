#include "common.hpp"

#include "ropewalk/base/require.hpp"
#include "ropewalk/mast/derrick_load.hpp"
#include "ropewalk/mast/legs.hpp"
#include "ropewalk/mast/rating.hpp"

namespace ropewalk::bindings {

namespace {

using mast::LegShares;

Length mast_length(std::string_view field, const SiArgument& given) {
  return from_si<Length>(si_number("mast.Mast", field, "m", given.value));
}

LegShares make_leg_shares(const SiArgument& base_width, const SiArgument& base_depth,
                          const SiArgument& dead_line_across, const SiArgument& dead_line_along,
                          const SiArgument& fast_line_across, const SiArgument& fast_line_along) {
  return LegShares({.base_width = mast_length("base_width", base_width),
                    .base_depth = mast_length("base_depth", base_depth),
                    .dead_line = {.across = mast_length("dead_line", dead_line_across),
                                  .along = mast_length("dead_line", dead_line_along)},
                    .fast_line = {.across = mast_length("fast_line", fast_line_across),
                                  .along = mast_length("fast_line", fast_line_along)}});
}

/// Loads of the legs on a new last axis, one row per row of the loads.
py::array_t<double> leg_loads(const LegShares& shares, const SiArgument& lines_pull,
                              const SiArgument& crown_block_weight, const SiArgument& dead_line,
                              const SiArgument& fast_line) {
  constexpr std::string_view where = "mast.Mast.leg_loads";
  const std::vector<Columns::Named> given{{"lines_pull", "N", lines_pull.value},
                                          {"crown_block_weight", "N", crown_block_weight.value},
                                          {"dead_line", "N", dead_line.value},
                                          {"fast_line", "N", fast_line.value}};
  const Columns columns(where, given);
  const py::array_t<double> rows = columns.make_values();
  std::vector<py::ssize_t> shape(rows.shape(), rows.shape() + rows.ndim());
  shape.push_back(static_cast<py::ssize_t>(mast::legs));
  py::array_t<double> result(shape);
  double* out = result.mutable_data();
  for (std::size_t i = 0; i < columns.rows(); ++i) {
    std::vector<Force> row;
    for (std::size_t j = 0; j < given.size(); ++j) {
      row.push_back(from_si<Force>(columns.columns()[j].at(i)));
      require(where, params::hook_load.named(given[j].name), row.back());
    }
    for (const Force& leg : shares.loads(row[0] + row[1], row[2], row[3])) *out++ = to_si(leg);
  }
  return result;
}

}  // namespace

void bind_mast(py::module_& core) {
  py::module_ m = submodule(core, "mast", "Load on a mast or derrick, its legs and its rating.");
  bind_row<mast::DerrickLoad>(m, "Load on the derrick while hoisting.");
  bind_row<mast::StaticDerrickLoad>(m, "Load on the derrick at rest.");
  bind_row<mast::EquivalentLoad>(m, "Four times the load of the leg that bears most.");
  bind_row<mast::EfficiencyFactor>(m, "Derrick load over maximum equivalent derrick load.");
  bind_row<mast::RatingAtLines>(m, "Static hook load rating at another number of lines.");
  bind_row<mast::ExtraLegLoad>(m, "Extra load of one leg by the dead line.");
  bind_row<mast::Std4aCapacity>(m, "Capacity by the old API Standard 4A.");
  py::class_<LegShares>(m, "LegShares", "How dead and fast line share out over the four legs, SI.")
      .def(py::init(&make_leg_shares), py::arg("base_width"), py::arg("base_depth"),
           py::arg("dead_line_across"), py::arg("dead_line_along"), py::arg("fast_line_across"),
           py::arg("fast_line_along"))
      .def_property_readonly("dead_line", &LegShares::dead_line)
      .def_property_readonly("fast_line", &LegShares::fast_line)
      .def_property_readonly("largest_share", &LegShares::largest_share)
      .def("loads", &leg_loads, py::arg("lines_pull"), py::arg("crown_block_weight"),
           py::arg("dead_line"), py::arg("fast_line"),
           "Load [N] of legs A, B, C, D on the last axis.");
}

}  // namespace ropewalk::bindings
