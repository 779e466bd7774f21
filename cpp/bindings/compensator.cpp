#include "common.hpp"
#include "records.hpp"

#include "ropewalk/compensator/active.hpp"
#include "ropewalk/compensator/box_hull.hpp"
#include "ropewalk/compensator/gas_spring.hpp"
#include "ropewalk/compensator/hanging.hpp"
#include "ropewalk/compensator/heave.hpp"
#include "ropewalk/compensator/rayleigh.hpp"
#include "ropewalk/compensator/spectrum.hpp"

namespace ropewalk::bindings {

namespace {

using compensator::HeaveOperator;
using compensator::OperatingLimit;

template <class Q>
Q heave_argument(std::string_view where, std::string_view field, const SiArgument& given) {
  return from_si<Q>(si_number(where, field, unit_text<Q>(), given.value));
}

template <class Q>
std::vector<Q> heave_column(std::string_view where, std::string_view field,
                            const SiArgument& given) {
  const Columns columns(where, {{field, unit_text<Q>(), given.value}});
  std::vector<Q> values;
  for (std::size_t i = 0; i < columns.rows(); ++i) values.push_back(from_si<Q>(columns.row(i)[0]));
  return values;
}

HeaveOperator constant_operator(const SiArgument& ratio) {
  constexpr std::string_view where = "compensator.HeaveOperator.constant";
  return HeaveOperator::constant(heave_argument<Number>(where, "ratio", ratio));
}

HeaveOperator table_operator(const SiArgument& periods, const SiArgument& ratios) {
  constexpr std::string_view where = "compensator.HeaveOperator.table";
  return HeaveOperator::table(heave_column<Time>(where, "periods", periods),
                              heave_column<Number>(where, "ratios", ratios));
}

HeaveOperator box_hull_operator(const SiArgument& length, const SiArgument& beam,
                                const SiArgument& draft, const SiArgument& heading) {
  constexpr std::string_view where = "compensator.HeaveOperator.box_hull";
  return HeaveOperator::box_hull(heave_argument<Length>(where, "hull_length", length),
                                 heave_argument<Length>(where, "hull_beam", beam),
                                 heave_argument<Length>(where, "hull_draft", draft),
                                 heave_argument<Angle>(where, "heading", heading));
}

SiResult operator_at(const HeaveOperator& response, const SiArgument& wave_period) {
  const Columns columns("compensator.HeaveOperator.at", {{"wave_period", "s", wave_period.value}});
  const auto at = [&](std::size_t i) {
    return to_si(response.at(from_si<Time>(columns.row(i)[0])));
  };
  if (columns.scalar()) return {py::float_(at(0))};
  py::array_t<double> out = columns.make_values();
  double* data = out.mutable_data();
  for (std::size_t i = 0; i < columns.rows(); ++i) data[i] = at(i);
  return {std::move(out)};
}

py::tuple heave_moments(const SiArgument& significant_height, const SiArgument& peak_period,
                        const SiArgument& peak_factor, const HeaveOperator& response) {
  constexpr std::string_view where = "compensator.heave_moments";
  const compensator::Moments found = compensator::heave_moments(
      {.significant_height =
           heave_argument<Length>(where, "significant_height", significant_height),
       .peak_period = heave_argument<Time>(where, "peak_period", peak_period),
       .peak_factor = heave_argument<Number>(where, "peak_factor", peak_factor)},
      response);
  return py::make_tuple(to_si(found.m0), found.m1.value(), found.m2.value(), found.outside);
}

std::string_view bound_name(compensator::LimitBound bound) {
  switch (bound) {
    case compensator::LimitBound::stroke:
      return "stroke";
    case compensator::LimitBound::steepest_sea:
      return "steepest sea";
    case compensator::LimitBound::highest_height:
      break;
  }
  return "highest height";
}

/// Height, peak factor, and what stopped the search, for one peak period.
py::tuple operating_limit(const HeaveOperator& response, const SiArgument& peak_period,
                          const OptionalSiArgument& peak_factor, const SiArgument& half_stroke,
                          const SiArgument& duration, const SiArgument& exceedance) {
  constexpr std::string_view where = "compensator.operating_limit";
  std::optional<Number> factor;
  if (!peak_factor.value.is_none()) {
    factor = heave_argument<Number>(where, "peak_factor", peak_factor);
  }
  const OperatingLimit limit = compensator::operating_limit(
      response, heave_argument<Time>(where, "peak_period", peak_period), factor,
      {.half_stroke = heave_argument<Length>(where, "half_stroke", half_stroke),
       .duration = heave_argument<Time>(where, "duration", duration),
       .exceedance = heave_argument<Number>(where, "exceedance", exceedance)});
  return py::make_tuple(to_si(limit.significant_height), to_si(limit.peak_factor),
                        bound_name(limit.bound));
}

double bit_weight_change(const SiArgument& mean_load, const SiArgument& effective_area,
                         const SiArgument& gas_volume, const SiArgument& polytropic_exponent,
                         const SiArgument& seal_friction, const SiArgument& string_stiffness,
                         const SiArgument& heave) {
  constexpr std::string_view where = "compensator.bit_weight_change";
  return to_si(compensator::bit_weight_change(
      {.mean_load = heave_argument<Force>(where, "mean_load", mean_load),
       .effective_area = heave_argument<Area>(where, "effective_area", effective_area),
       .gas_volume = heave_argument<Volume>(where, "gas_volume", gas_volume),
       .polytropic_exponent =
           heave_argument<Number>(where, "polytropic_exponent", polytropic_exponent),
       .seal_friction = heave_argument<Force>(where, "seal_friction", seal_friction)},
      heave_argument<Stiffness>(where, "string_stiffness", string_stiffness),
      heave_argument<Length>(where, "heave", heave)));
}

void bind_compensator_rows(py::module_& m) {
  using namespace compensator;  // NOLINT(google-build-using-namespace): one subject, one list
  bind_row<EffectiveArea>(m, "Gas volume taken up per travel of the load.");
  bind_row<GasLoad>(m, "Load on a gas spring away from mid-stroke.");
  bind_row<GasStiffness>(m, "Stiffness of a gas spring at mid-stroke.");
  bind_row<NeededGasVolume>(m, "Gas volume for an allowed rise of the load.");
  bind_row<SwingArmRoll>(m, "Rope rolled on a sheave on a swinging arm.");
  bind_row<NaturalPeriod>(m, "Natural period of a mass on the gas spring.");
  bind_row<HangingRatio>(m, "Motion of a hanging mass over heave of the vessel.");
  bind_row<HangingStroke>(m, "Stroke amplitude under a hanging mass, with seal friction.");
  bind_row<PiersonMoskowitz>(m, "Spectrum of a fully developed sea.");
  bind_row<JonswapNormalizer>(m, "Normalizing factor of a JONSWAP sea.");
  bind_row<Jonswap>(m, "Spectrum of a growing sea.");
  bind_row<PeakFactor>(m, "Peak factor of a sea by its steepness.");
  bind_row<ZeroCrossingRatio>(m, "Zero-crossing over peak period.");
  bind_row<MeanPeriodRatio>(m, "Mean over peak period.");
  bind_row<SteepestHeight>(m, "Significant height of the steepest sea.");
  bind_row<BoxHullHeave>(m, "Heave over wave amplitude of a box-shaped hull.");
  bind_row<HeaveCycles>(m, "Cycles of heave in a duration.");
  bind_row<CycleExceedance>(m, "Probability that one cycle exceeds a half stroke.");
  bind_row<StrokeExceedance>(m, "Probability that some cycles exceed a half stroke.");
  bind_row<AllowedHeaveDeviation>(m, "Standard deviation of heave a stroke allows.");
  bind_row<MostProbableMaximum>(m, "Most probable largest amplitude.");
  bind_row<ExpectedMaximum>(m, "Mean largest amplitude.");
  bind_row<MeanOfHighest>(m, "Mean amplitude of the highest share.");
  bind_row<HeaveSpeed>(m, "Largest speed of a sine of heave.");
  bind_row<HeaveAcceleration>(m, "Largest acceleration of a sine of heave.");
  bind_row<ActiveLineSpeed>(m, "Largest line speed at an active drum.");
  bind_row<ActivePower>(m, "Largest power at an active drum.");
  bind_row<ActivePowerWithInertia>(m, "Largest power at an active drum, with what turns.");
  bind_row<ActiveWork>(m, "Work of the line at an active drum.");
}

std::vector<py::dict> compensator_table(const std::string& name) {
  if (name != "compensator_practice") {
    throw LookupError("compensator.table", "name",
                      "there is no table '" + name + "' here; there are: compensator_practice");
  }
  return table_records(name);
}

}  // namespace

void bind_compensator(py::module_& core) {
  py::module_ m = submodule(core, "compensator", "Heave compensation: gas spring, sea, stroke.");
  bind_compensator_rows(m);
  py::class_<HeaveOperator>(m, "HeaveOperator", "Heave over wave amplitude by wave period, SI.")
      .def_static("constant", &constant_operator, py::arg("ratio"), "The same for all waves.")
      .def_static("table", &table_operator, py::arg("periods"), py::arg("ratios"),
                  "Straight between points by wave period [s].")
      .def_static("box_hull", &box_hull_operator, py::arg("hull_length"), py::arg("hull_beam"),
                  py::arg("hull_draft"), py::arg("heading"), "Closed form of a box-shaped hull.")
      .def("at", &operator_at, py::arg("wave_period"), "Ratio at a wave period [s].");
  m.def("heave_moments", &heave_moments, py::arg("significant_height"), py::arg("peak_period"),
        py::arg("peak_factor"), py::arg("response"),
        "m0 [m2], m1 [m2/s], m2 [m2/s2] of heave, and the share of m0 outside the operator.");
  m.def("operating_limit", &operating_limit, py::arg("response"), py::arg("peak_period"),
        py::arg("peak_factor"), py::kw_only(), py::arg("half_stroke"), py::arg("duration"),
        py::arg("exceedance"),
        "Largest significant height [m], its peak factor, and what stopped the search.");
  m.def("bit_weight_change", &bit_weight_change, py::arg("mean_load"), py::arg("effective_area"),
        py::arg("gas_volume"), py::arg("polytropic_exponent"), py::arg("seal_friction"),
        py::arg("string_stiffness"), py::arg("heave"),
        "Change of the pull [N] on a string whose bit is on bottom, after a heave [m].");
  m.def("table", &compensator_table, py::arg("name"),
        "Rows of one of this subject's tables with source and standing of each value.");
}

}  // namespace ropewalk::bindings
