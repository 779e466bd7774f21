#include "ropewalk/compensator/heave.hpp"

#include <algorithm>
#include <array>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>
#include <utility>

#include "ropewalk/base/interpolation.hpp"
#include "ropewalk/base/require.hpp"
#include "ropewalk/compensator/box_hull.hpp"
#include "ropewalk/compensator/spectrum.hpp"

namespace ropewalk::compensator {

namespace {

constexpr Parameter<Number> ratio_parameter{
    "ratios", between(from_si<Number>(0.0), from_si<Number>(10.0), params::guard)};

/// Parts of the wave periods, over peak period: narrow about the peak, where γ bends the spectrum;
/// at 2.5 it has fallen to e^(−48).
constexpr std::array parts{0.0,  0.15, 0.3,  0.5,  0.65, 0.75, 0.82, 0.88, 0.94, 1.0,
                           1.06, 1.12, 1.18, 1.27, 1.4,  1.6,  1.8,  2.1,  2.5};

[[nodiscard]] std::vector<double> panels(double peak_period, const HeaveOperator& response) {
  std::vector<double> edges;
  for (const double part : parts) edges.push_back(part * peak_period);
  for (const double joint : response.joints()) {
    if (joint > 0.0 && joint < parts.back() * peak_period) edges.push_back(joint);
  }
  std::ranges::sort(edges);
  return edges;
}

/// Periods about the resonance of a box hull, 2 k D = 1, closing in on it by fours: a hull that
/// radiates little has a peak there far narrower than the parts of the wave periods.
[[nodiscard]] std::vector<double> resonance(Length beam, Length draft) {
  const double wave_number = 0.5 / to_si(draft);
  const double period = 2.0 * pi / std::sqrt(wave_number * to_si(standard_gravity));
  const double damping = BoxHullHeave::damping(wave_number, beam, draft);
  std::vector<double> joints{period};
  // 1 - 2 k D grows by 2/T there, so the peak is damping T/2 wide to either side.
  double width = std::max(0.5 * damping, 1e-12);
  while (width < 0.5) {
    joints.push_back(period * (1.0 - width));
    joints.push_back(period * (1.0 + width));
    width *= 4.0;
  }
  return joints;
}

}  // namespace

HeaveOperator HeaveOperator::constant(Number ratio) {
  require("compensator.HeaveOperator.constant", ratio_parameter.named("ratio"), ratio);
  return {[ratio](Time) { return ratio; }, {}, false};
}

HeaveOperator HeaveOperator::table(const std::vector<Time>& periods,
                                   const std::vector<Number>& ratios) {
  constexpr std::string_view where = "compensator.HeaveOperator.table";
  if (periods.size() != ratios.size() || periods.size() < 2) {
    throw InadmissibleError(where, "ratios",
                            "a table needs two points or more, and a ratio for each period; got " +
                                std::to_string(periods.size()) + " periods and " +
                                std::to_string(ratios.size()) + " ratios");
  }
  std::vector<double> xs;
  std::vector<double> ys;
  for (std::size_t i = 0; i < periods.size(); ++i) {
    require(where, argument::wave_period.named("periods"), periods[i]);
    require(where, ratio_parameter, ratios[i]);
    if (i > 0 && periods[i] <= periods[i - 1]) {
      throw InadmissibleError(where, "periods",
                              "periods must rise: " + quantity_text(periods[i]) + " follows " +
                                  quantity_text(periods[i - 1]));
    }
    xs.push_back(to_si(periods[i]));
    ys.push_back(to_si(ratios[i]));
  }
  auto ratio = [xs, ys](Time period) {
    const double x = std::clamp(to_si(period), xs.front(), xs.back());
    return from_si<Number>(*interpolate_linear(xs, ys, x));
  };
  return {std::move(ratio), xs, true};
}

HeaveOperator HeaveOperator::box_hull(Length length, Length beam, Length draft, Angle heading) {
  constexpr std::string_view where = "compensator.HeaveOperator.box_hull";
  require(where, argument::hull_length, length);
  require(where, argument::hull_beam, beam);
  require(where, argument::hull_draft, draft);
  require(where, argument::heading, heading);
  return {[=](Time period) { return BoxHullHeave::formula(length, beam, draft, heading, period); },
          resonance(beam, draft), false};
}

bool HeaveOperator::covers(Time period) const noexcept {
  const double x = to_si(period);
  return !ends_ || (x >= joints_.front() && x <= joints_.back());
}

Length Moments::deviation() const { return from_si<Length>(std::sqrt(to_si(m0))); }

Length Moments::significant() const { return 4.0 * deviation(); }

Time Moments::zero_crossing() const {
  if (m2.value() <= 0.0) return from_si<Time>(0.0);
  return from_si<Time>(2.0 * pi * std::sqrt(to_si(m0) / m2.value()));
}

Time Moments::mean_period() const {
  if (m1.value() <= 0.0) return from_si<Time>(0.0);
  return from_si<Time>(2.0 * pi * to_si(m0) / m1.value());
}

Moments heave_moments(const SeaState& sea, const HeaveOperator& response) {
  constexpr std::string_view where = "compensator.heave_moments";
  require(where, argument::significant_height, sea.significant_height);
  require(where, argument::peak_period, sea.peak_period);
  require(where, argument::peak_factor, sea.peak_factor);
  // Over wave period T the tail ω^(n−5) becomes T^(3−n): smooth down to T = 0 for n ≤ 2.
  std::array<double, 3> moments{};
  double outside = 0.0;
  const std::vector<double> edges = panels(to_si(sea.peak_period), response);
  for (std::size_t i = 1; i < edges.size(); ++i) {
    const bool covered = response.covers(from_si<Time>(0.5 * (edges[i - 1] + edges[i])));
    for (int order = 0; order < 3; ++order) {
      const auto density = [&](double period) {
        const double omega = 2.0 * pi / period;
        const double ratio = to_si(response.at(from_si<Time>(period)));
        const double spectrum =
            to_si(Jonswap::formula(sea.significant_height, sea.peak_period, sea.peak_factor,
                                   from_si<AngularVelocity>(omega)));
        return std::pow(omega, order) * ratio * ratio * spectrum * omega / period;
      };
      const double part =
          boost::math::quadrature::gauss<double, 20>::integrate(density, edges[i - 1], edges[i]);
      moments[static_cast<std::size_t>(order)] += part;
      if (order == 0 && !covered) outside += part;
    }
  }
  return {.m0 = from_si<Area>(moments[0]),
          .m1 = AreaTimesRate::from_value(moments[1]),
          .m2 = AreaTimesRateSquared::from_value(moments[2]),
          .outside = moments[0] > 0.0 ? outside / moments[0] : 0.0};
}

}  // namespace ropewalk::compensator
