/// Heat of braking: where the energy of the load goes, and how warm that makes the brake.
#pragma once

#include <cmath>
#include <span>
#include <vector>

#include "ropewalk/base/model.hpp"
#include "ropewalk/brake/parameters.hpp"

namespace ropewalk::brake {

namespace argument {
inline constexpr Parameter<Length> lowered_height{
    "lowered_height", between(0.0 * meter, 20'000.0 * meter, params::guard)};
/// Share of a heat that one brake, disc or side takes.
inline constexpr Parameter<Number> heat_share{"heat_share", params::ratio_range};
inline constexpr Parameter<Energy> heat{"heat", between(0.0 * joule, 1e13 * joule, params::guard)};
inline constexpr Parameter<Mass> heated_mass{
    "heated_mass", above_up_to(0.0 * kilogram, 1e7 * kilogram, params::guard)};
inline constexpr Parameter<SpecificHeat> specific_heat{
    "specific_heat",
    above_up_to(from_si<SpecificHeat>(0.0), from_si<SpecificHeat>(1e5), params::guard)};
inline constexpr Parameter<Conductivity> conductivity{
    "conductivity",
    above_up_to(from_si<Conductivity>(0.0), from_si<Conductivity>(1e4), params::guard)};
/// From the heated surface to where no heat flows: half of a disc heated on both sides.
inline constexpr Parameter<Length> conducting_depth{"conducting_depth", part_range};
inline constexpr Parameter<Density> solid_density{
    "solid_density", above_up_to(0.0 * kilogram_per_cubic_meter,
                                 30'000.0 * kilogram_per_cubic_meter, params::guard)};
inline constexpr Parameter<Density> water_density{
    "water_density",
    above_up_to(0.0 * kilogram_per_cubic_meter, 5'000.0 * kilogram_per_cubic_meter, params::guard)};
inline constexpr Parameter<HeatFlux> heat_flux{
    "heat_flux", between(from_si<HeatFlux>(0.0), from_si<HeatFlux>(1e10), params::guard)};
inline constexpr Parameter<Time> braking_time{"braking_time",
                                              between(0.0 * second, 1e5 * second, params::guard)};
inline constexpr Parameter<Stress> lining_pressure{
    "lining_pressure", between(0.0 * pascal, 1e9 * pascal, params::guard)};
inline constexpr Parameter<Speed> sliding_speed{
    "sliding_speed", between(0.0 * meter_per_second, 500.0 * meter_per_second, params::guard)};
inline constexpr Parameter<Power> heat_power{"heat_power",
                                             between(0.0 * watt, 1e9 * watt, params::guard)};
inline constexpr Parameter<Temperature> temperature_rise{
    "temperature_rise",
    above_up_to(from_si<Temperature>(0.0), from_si<Temperature>(5'000.0), params::guard)};
}  // namespace argument

/// Heat of a load lowered at one speed: all its potential energy that a brake takes.
///
///   Q = s W h
///
/// s  heat_share      number, of the brake asked for; sheaves, motors, other brakes take the rest
/// W  hook_load       force
/// h  lowered_height  length
///
/// Source: conservation of energy.
struct LoweringHeat {
  static constexpr std::string_view name = "brake.lowering_heat";
  static constexpr std::tuple parameters{params::hook_load, argument::lowered_height,
                                         argument::heat_share};

  static constexpr Energy formula(Force hook_load, Length lowered_height,
                                  Number heat_share) noexcept {
    return heat_share * hook_load * lowered_height;
  }
};
inline constexpr Model<LoweringHeat> lowering_heat{};

/// Rise of temperature of a body that keeps a heat to itself, spread evenly.
///
///   ΔT = Q / (m c)
///
/// Q  heat           energy
/// m  heated_mass    mass, of the discs or rims
/// c  specific_heat  of their material
///
/// Range: a stop or stand too short to cool, long enough for the heat to spread.
/// Source: definition of the specific heat; for brakes V. M. Faires, Design of Machine Elements,
/// chapter on brakes.
struct HeatRise {
  static constexpr std::string_view name = "brake.heat_rise";
  static constexpr std::tuple parameters{argument::heat, argument::heated_mass,
                                         argument::specific_heat};

  static constexpr Temperature formula(Energy heat, Mass heated_mass,
                                       SpecificHeat specific_heat) noexcept {
    return heat / (heated_mass * specific_heat);
  }
};
inline constexpr Model<HeatRise> heat_rise{};

/// Heat made per rubbed area and time.
///
///   q = μ p v
///
/// μ  lining_friction  number
/// p  lining_pressure  stress
/// v  sliding_speed    speed, of the rim under the lining
///
/// Source: definition of friction and power. Little of it goes into the lining.
struct FrictionHeatFlux {
  static constexpr std::string_view name = "brake.friction_heat_flux";
  static constexpr std::tuple parameters{argument::lining_friction, argument::lining_pressure,
                                         argument::sliding_speed};

  static constexpr HeatFlux formula(Number lining_friction, Stress lining_pressure,
                                    Speed sliding_speed) noexcept {
    return lining_friction * lining_pressure * sliding_speed;
  }
};
inline constexpr Model<FrictionHeatFlux> friction_heat_flux{};

/// Rise of temperature of a surface under a heat flux that stays the same.
///
///   ΔT = 2 q √(t / (π k ρ c))
///
/// q  heat_flux      into the surface
/// t  braking_time   time since the flux began
/// k  conductivity   of the disc or rim
/// ρ  solid_density  density
/// c  specific_heat
///
/// d  conducting_depth  length, from the surface to where no heat flows
///
/// Range: the heat has hardly reached the far side, Fo = k t / (ρ c d²) ≤ 0.31, and the rim comes
/// round so fast that each turn sees the mean flux. A body of depth d gets hotter by the images of
/// the surface, 1 + 2 √π Σ ierfc(n/√Fo), n = 1, 2, …, which passes 1.01 at Fo = 0.3196: the limit
/// is derived, for 1 %. Source: H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2.9,
/// and for the body of finite depth 3.8 (from memory).
struct SurfaceRise {
  static constexpr std::string_view name = "brake.surface_rise";
  static constexpr std::tuple parameters{argument::heat_flux,     argument::braking_time,
                                         argument::conductivity,  argument::solid_density,
                                         argument::specific_heat, argument::conducting_depth};
  static constexpr std::string_view group_name = "fourier_number";
  static constexpr Interval group_range{.low = 0.0, .high = 0.31, .source = "derived: 1 % error"};

  static constexpr double group(HeatFlux, Time braking_time, Conductivity conductivity,
                                Density solid_density, SpecificHeat specific_heat,
                                Length conducting_depth) noexcept {
    return to_si(conductivity) * to_si(braking_time) /
           (to_si(solid_density) * to_si(specific_heat) * to_si(conducting_depth) *
            to_si(conducting_depth));
  }
  static Temperature formula(HeatFlux heat_flux, Time braking_time, Conductivity conductivity,
                             Density solid_density, SpecificHeat specific_heat, Length) noexcept {
    return from_si<Temperature>(
        2.0 * to_si(heat_flux) *
        std::sqrt(to_si(braking_time) /
                  (pi * to_si(conductivity) * to_si(solid_density) * to_si(specific_heat))));
  }
};
inline constexpr Model<SurfaceRise> surface_rise{};

/// Largest rise of temperature of a surface during a stop with constant deceleration: the flux
/// falls evenly from its first value to nothing.
///
///   ΔT = (2/√π) (√2/3) q₀ √(t_s / (k ρ c)) = 0.5319 q₀ √(t_s / (k ρ c)),   at t = t_s / 2
///
/// q₀   heat_flux     where braking begins
/// t_s  braking_time  time of the stop
/// Other symbols as for SurfaceRise. Range: as there with Fo = k t_s / (ρ c d²) ≤ 0.57, where the
/// images pass 1 % of the largest rise at 0.5704: derived likewise. Source: T. P. Newcomb,
/// Transient temperatures in brake drums and linings, Proc. Instn. Mech. Engrs. (1958) (from
/// memory); the superposition of the solution of SurfaceRise.
struct SurfaceRiseOfStop {
  static constexpr std::string_view name = "brake.surface_rise_of_stop";
  static constexpr std::tuple parameters = SurfaceRise::parameters;
  static constexpr std::string_view group_name = SurfaceRise::group_name;
  static constexpr Interval group_range{.low = 0.0, .high = 0.57, .source = "derived: 1 % error"};

  static constexpr double group(HeatFlux heat_flux, Time braking_time, Conductivity conductivity,
                                Density solid_density, SpecificHeat specific_heat,
                                Length conducting_depth) noexcept {
    return SurfaceRise::group(heat_flux, braking_time, conductivity, solid_density, specific_heat,
                              conducting_depth);
  }
  static Temperature formula(HeatFlux heat_flux, Time braking_time, Conductivity conductivity,
                             Density solid_density, SpecificHeat specific_heat,
                             Length conducting_depth) noexcept {
    return std::sqrt(2.0) / 3.0 *
           SurfaceRise::formula(heat_flux, braking_time, conductivity, solid_density, specific_heat,
                                conducting_depth);
  }
};
inline constexpr Model<SurfaceRiseOfStop> surface_rise_of_stop{};

/// Cooling water that carries a heat away.
///
///   V̇ = P / (ρ c ΔT)
///
/// P   heat_power        power
/// ρ   water_density     density
/// c   specific_heat     of the water
/// ΔT  temperature_rise  of the water on its way through
///
/// Range: no boiling. Source: conservation of energy.
struct CoolingWaterFlow {
  static constexpr std::string_view name = "brake.cooling_water_flow";
  static constexpr std::tuple parameters{argument::heat_power, argument::water_density,
                                         argument::specific_heat, argument::temperature_rise};

  static constexpr VolumeFlow formula(Power heat_power, Density water_density,
                                      SpecificHeat specific_heat,
                                      Temperature temperature_rise) noexcept {
    return heat_power / (water_density * specific_heat * temperature_rise);
  }
};
inline constexpr Model<CoolingWaterFlow> cooling_water_flow{};

/// A body that is heated and cools: discs or rims taken as one.
struct HeatedBody {
  Mass mass;
  SpecificHeat specific_heat;
  HeatLoss heat_loss;  ///< heat given off per time and kelvin above the surroundings; may be 0
};

/// One stand: heat while it is lowered, then rest until the next.
struct HeatedStroke {
  Energy heat;
  Time lowering;  ///< above 0
  Time rest;      ///< may be 0
};

/// Rise above the surroundings at the end of the lowering, and at the end of the rest.
struct StrokeRise {
  Temperature lowered;
  Temperature rested;
};

/// Rise of temperature over a trip, stand by stand, with constant power while a stand is lowered.
///
///   m c dT/dt = Q/t − h T   lowering,      m c dT/dt = −h T   at rest
///
/// solved exactly in each part. Source: Newton's law of cooling.
/// Throws InadmissibleError for what cannot be.
[[nodiscard]] std::vector<StrokeRise> temperature_over_trip(const HeatedBody& body,
                                                            Temperature first_rise,
                                                            std::span<const HeatedStroke> strokes);

}  // namespace ropewalk::brake
