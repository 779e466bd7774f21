#include "ropewalk/brake/heat.hpp"

#include "ropewalk/base/require.hpp"

namespace ropewalk::brake {

namespace {

constexpr std::string_view where = "brake.temperature_over_trip";

constexpr Parameter<HeatLoss> heat_loss{
    "heat_loss", between(from_si<HeatLoss>(0.0), from_si<HeatLoss>(1e7), params::guard)};
constexpr Parameter<Temperature> first_rise_parameter{
    "first_rise",
    between(from_si<Temperature>(-500.0), from_si<Temperature>(5'000.0), params::guard)};
constexpr Parameter<Time> lowering_time{"lowering_time",
                                        above_up_to(0.0 * second, 1e6 * second, params::guard)};
constexpr Parameter<Time> rest_time{"rest_time",
                                    between(0.0 * second, 1e7 * second, params::guard)};

}  // namespace

std::vector<StrokeRise> temperature_over_trip(const HeatedBody& body, Temperature first_rise,
                                              std::span<const HeatedStroke> strokes) {
  require(where, argument::heated_mass, body.mass);
  require(where, argument::specific_heat, body.specific_heat);
  require(where, heat_loss, body.heat_loss);
  require(where, first_rise_parameter, first_rise);
  const auto capacity = body.mass * body.specific_heat;
  const double per_second = to_si(body.heat_loss) / capacity.value();  // 1 over the time constant
  std::vector<StrokeRise> rises;
  rises.reserve(strokes.size());
  Temperature rise = first_rise;
  for (const HeatedStroke& stroke : strokes) {
    require(where, argument::heat, stroke.heat);
    require(where, lowering_time, stroke.lowering);
    require(where, rest_time, stroke.rest);
    const double x = per_second * to_si(stroke.lowering);
    // (1 − e^(−x)) / x: the share of the heat that is still there when the stand is down.
    const double kept = x > 0.0 ? -std::expm1(-x) / x : 1.0;
    const Temperature lowered = rise * std::exp(-x) + kept * stroke.heat / capacity;
    rise = lowered * std::exp(-per_second * to_si(stroke.rest));
    rises.push_back({.lowered = lowered, .rested = rise});
  }
  return rises;
}

}  // namespace ropewalk::brake
