/// The life models as they are built: constants checked, tables read, ranges attached.
#include <algorithm>

#include "ropewalk/base/source.hpp"
#include "ropewalk/base/table.hpp"
#include "ropewalk/fatigue/model.hpp"

namespace ropewalk::fatigue {

namespace {

using detail::require;

constexpr Interval positive_range(std::string_view source, double high) {
  return {.low = 0.0, .high = high, .low_open = true, .source = source};
}
constexpr Interval tension_exponent_range = positive_range(params::guard, 20.0);

LifeModelFrame frame(std::string_view model, Basis basis, std::optional<double> scatter) {
  return {basis, detail::require_scatter(model, scatter), published_validity(model)};
}

double en81_exponent(std::string_view symbol) {
  const Table& exponents = table("en81_50_exponents");
  std::size_t row = 0;
  while (exponents.text(row, "symbol") != symbol) ++row;  // past the last row: LookupError
  return exponents.number(row, "value");
}

double bend_ratio(const ReferenceLife& reference) {
  return reference.sheave_diameter / reference.rope_diameter;
}

}  // namespace

DruckerTachau::DruckerTachau(std::optional<double> user_scatter)
    : LifeModelFrame(frame(name, Basis::breakage, user_scatter)) {
  const Table& points = table("drucker_tachau_points");
  const std::vector<double> ratios = points.numbers("pressure_ratio");
  const std::vector<double> lives = points.numbers("cycles");
  exponent = std::log(lives[1] / lives[0]) / std::log(ratios[1] / ratios[0]);
  ln_coefficient = std::log(lives[0]) - exponent * std::log(ratios[0]);
  const auto [low, high] = std::minmax(ratios[0], ratios[1]);
  validity.push_back(
      {.group = BendGroup::pressure_ratio,
       .low = low,
       .high = high,
       .source = citation(points.text(0, "source")) + "; " + citation(points.text(1, "source")),
       .standing = "from memory"});
}

PowerLaw::PowerLaw(double scale_, double exponent_, Basis basis_, std::optional<double> scatter_,
                   std::optional<PressureRange> fitted_over)
    : LifeModelFrame(frame(name, basis_, scatter_)),
      scale(require(name, "scale", scale_, positive_range(params::guard, 1e30))),
      exponent(require(name, "exponent", exponent_, tension_exponent_range)) {
  if (fitted_over) {
    require(name, "fitted_over", fitted_over->low, positive_range(params::guard, 1.0));
    require(name, "fitted_over", fitted_over->high,
            {.low = fitted_over->low, .high = 1.0, .source = "from the lower end given"});
    validity.push_back({.group = BendGroup::pressure_ratio,
                        .low = fitted_over->low,
                        .high = fitted_over->high,
                        .source = "range of the fit, as the user gave it",
                        .standing = "given"});
  }
}

FeyrerForm::FeyrerForm(const FeyrerConstants& constants, Basis basis_,
                       std::optional<double> scatter_)
    : LifeModelFrame(frame(name, basis_, scatter_)), b(constants) {
  require(name, "b0", b.b0, detail::fitted_range);
  require(name, "b1", b.b1, detail::fitted_range);
  require(name, "b2", b.b2, detail::fitted_range);
  require(name, "b3", b.b3, detail::fitted_range);
  require(name, "b4", b.b4, detail::fitted_range);
  require(name, "b5", b.b5, detail::fitted_range);
}

FeyrerSecondEdition::FeyrerSecondEdition(const FeyrerSecondConstants& constants,
                                         double core_factor_, Basis basis_,
                                         std::optional<double> scatter_)
    : LifeModelFrame(frame(name, basis_, scatter_)),
      b(constants),
      core_factor(require(name, "core_factor", core_factor_, positive_range(params::guard, 10.0))) {
  require(name, "b0", b.b0, detail::fitted_range);
  require(name, "b1", b.b1, detail::fitted_range);
  require(name, "b2", b.b2, detail::fitted_range);
  require(name, "b3", b.b3, detail::fitted_range);
}

En81::En81(const ReferenceLife& reference_, std::optional<double> scatter_)
    : LifeModelFrame(frame(name, Basis::as_reference, scatter_)),
      b1(en81_exponent("b1")),
      b2(en81_exponent("b2")),
      b4(en81_exponent("b4")),
      reference(detail::require_reference(name, reference_)) {
  const BendPoint at{.rope_tension = reference.rope_tension,
                     .rope_diameter = reference.rope_diameter};
  ln_offset = std::log(reference.cycles) - form(std::log(value_of(BendGroup::specific_tension, at)),
                                                std::log(bend_ratio(reference)));
}

HandbookRelativeLife::HandbookRelativeLife(const ReferenceLife& reference_,
                                           std::optional<double> user_tension_exponent_,
                                           std::optional<double> scatter_)
    : LifeModelFrame(frame(name, Basis::as_reference, scatter_)),
      reference(detail::require_reference(name, reference_)),
      user_tension_exponent(user_tension_exponent_) {
  if (user_tension_exponent) {
    require(name, "tension_exponent", *user_tension_exponent, tension_exponent_range);
  }
  const Table& curve = table("relative_bending_life");
  const std::vector<double> ratios = curve.numbers("bend_ratio");
  const std::vector<double> lives = curve.numbers("relative_life");
  const std::string source = citation(curve.text(0, "source"));
  for (std::size_t i = 0; i < points; ++i) ln_knots_[i] = std::log(ratios.at(i));
  const auto slope = [&](std::size_t i) {
    return std::log(lives[i + 1] / lives[i]) / (ln_knots_[i + 1] - ln_knots_[i]);
  };
  first_ln_life_ = std::log(lives[0]);
  first_slope_ = slope(0);
  for (std::size_t i = 1; i + 1 < points; ++i) {
    half_slope_changes_[i] = 0.5 * (slope(i) - slope(i - 1));
  }
  ln_offset = std::log(reference.cycles) - form(std::log(bend_ratio(reference)));
  validity.push_back({.group = BendGroup::bend_ratio,
                      .low = ratios.front(),
                      .high = ratios.back(),
                      .source = source,
                      .standing = std::string(curve.text(0, "standing"))});
  const double tension = to_si(reference.rope_tension);
  if (user_tension_exponent) {
    ln_offset += *user_tension_exponent * std::log(tension);
  } else {
    validity.push_back({.group = BendGroup::rope_tension,
                        .low = tension,
                        .high = tension,
                        .source = source + "; the table is for one tension, the reference "
                                           "tension: give a tension exponent for others",
                        .standing = std::string(curve.text(0, "standing"))});
  }
}

En13001::En13001(double further_influences_)
    : LifeModelFrame(frame(name, Basis::design, {})),
      further_influences(require(name, "further_influences", further_influences_,
                                 params::further_influences.admissible)) {
  // s_r = (f_f / (γ_rf F/F_u))³ ≤ 4, written as a bound on F/F_u.
  const double top_class = params::force_history.valid.high;
  validity.push_back(
      {.group = BendGroup::strength_share,
       .low = further_influences / en13001_fatigue_resistance_factor / std::cbrt(top_class),
       .high = 1.0,
       .source = citation("en-13001-3-2") + "; force history parameter s_r up to 4",
       .standing = "from memory"});
}

}  // namespace ropewalk::fatigue
