#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "ropewalk/base/require.hpp"
#include "ropewalk/compensator/heave.hpp"
#include "ropewalk/compensator/rayleigh.hpp"
#include "ropewalk/compensator/spectrum.hpp"

namespace ropewalk::compensator {

namespace {

/// How far heave goes beyond what the stroke allows: positive if the sea is too high.
class Excess {
 public:
  Excess(const HeaveOperator& response, Time peak_period, const std::optional<Number>& factor,
         const StrokeDemand& demand)
      : response_(response), peak_period_(peak_period), peak_factor_(factor), demand_(demand) {}

  [[nodiscard]] Number peak_factor(Length height) const {
    return peak_factor_ ? *peak_factor_ : PeakFactor::formula(height, peak_period_);
  }

  double operator()(double height) const {
    const Length h = from_si<Length>(height);
    const Moments heave = heave_moments(
        {.significant_height = h, .peak_period = peak_period_, .peak_factor = peak_factor(h)},
        response_);
    if (to_si(heave.m0) <= 0.0) return -1.0;
    // Less than one cycle in the duration counts as one.
    const Number cycles = std::max(from_si<Number>(1.0),
                                   HeaveCycles::formula(demand_.duration, heave.zero_crossing()));
    const Length allowed =
        AllowedHeaveDeviation::formula(demand_.half_stroke, demand_.exceedance, cycles);
    return to_si(Number(heave.deviation() / allowed)) - 1.0;
  }

 private:
  const HeaveOperator& response_;
  Time peak_period_;
  std::optional<Number> peak_factor_;
  StrokeDemand demand_;
};

}  // namespace

OperatingLimit operating_limit(const HeaveOperator& response, Time peak_period,
                               const std::optional<Number>& factor, const StrokeDemand& demand) {
  constexpr std::string_view where = "compensator.operating_limit";
  require(where, argument::peak_period, peak_period);
  if (factor) require(where, argument::peak_factor, *factor);
  require(where, argument::half_stroke, demand.half_stroke);
  require(where, argument::duration, demand.duration);
  require(where, std::get<1>(AllowedHeaveDeviation::parameters), demand.exceedance);

  const Excess excess(response, peak_period, factor, demand);
  const double steepest = to_si(SteepestHeight::formula(peak_period));
  const double admitted = argument::significant_height.admissible.high;
  const double highest = std::min(steepest, admitted);
  const auto limit_at = [&](double height, LimitBound bound) {
    const Length found = from_si<Length>(height);
    return OperatingLimit{
        .significant_height = found, .peak_factor = excess.peak_factor(found), .bound = bound};
  };
  // The peak factor of a rising sea may make heave fall for a stretch: the first crossing counts.
  constexpr int steps = 48;
  double low = 1e-9 * highest;
  if (excess(low) > 0.0)
    return limit_at(low, LimitBound::stroke);  // next to no stroke, next to no sea
  for (int i = 1; i <= steps; ++i) {
    const double high = highest * static_cast<double>(i) / steps;
    if (excess(high) > 0.0) {
      std::uintmax_t tries = 100;
      const auto [a, b] = boost::math::tools::toms748_solve(
          excess, low, high, boost::math::tools::eps_tolerance<double>(40), tries);
      return limit_at(0.5 * (a + b), LimitBound::stroke);
    }
    low = high;
  }
  return limit_at(highest,
                  steepest <= admitted ? LimitBound::steepest_sea : LimitBound::highest_height);
}

}  // namespace ropewalk::compensator
