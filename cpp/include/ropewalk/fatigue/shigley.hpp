/// A hoist rope by Shigley: tension, bending load, fatigue strength, safety factors.
///
/// The method of chapter 17 (18 in older editions), "Wire rope", as row formulas. Every argument
/// is a quantity, so the trade units of the book (kpsi, lbf/ft) and SI can be mixed.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/fatigue/parameters.hpp"

namespace ropewalk::params {

inline constexpr Parameter<Force> fatigue_tension{"fatigue_tension", positive_force_range};

}  // namespace ropewalk::params

namespace ropewalk::fatigue {

/// Tension of one rope of a hoist (Shigley).
///
///   F_t = (W/m + w l) (1 + a/g)
///
/// W  load              force, at the end of the ropes
/// m  ropes             count, ropes that share it
/// w  rope_weight       force per length, of one rope
/// l  rope_length       length hanging
/// a  acceleration      acceleration, upward positive
/// g  9.80665 m/s²
///
/// Exact for a rigid load on massless-elastic ropes. Source: Shigley's Mechanical Engineering
/// Design, ch. 17, wire rope, from memory.
struct HoistRopeTension {
  static constexpr std::string_view name = "fatigue.hoist_rope_tension";
  static constexpr std::tuple parameters{
      Parameter<Force>{"load", params::force_range},
      Parameter<Number>{"ropes", whole_between(1, 64, params::guard)},
      Parameter<ForcePerLength>{
          "rope_weight",
          between(from_si<ForcePerLength>(0.0), from_si<ForcePerLength>(10'000.0), params::guard)},
      params::depth.named("rope_length"),
      Parameter<Acceleration>{
          "acceleration",
          between(-standard_gravity, 100.0 * meter_per_second_squared,
                  "a load that falls freely hangs on no rope; upper end: ropewalk's guard")}};
  static constexpr Force formula(Force load, Number ropes, ForcePerLength rope_weight,
                                 Length rope_length, Acceleration acceleration) noexcept {
    return (load / ropes + rope_weight * rope_length) * (1.0 + acceleration / standard_gravity);
  }
};

/// Bending stress of the outer wires on a sheave (Shigley; Reuleaux).
///
///   σ = E_r d_w / D
///
/// E_r  rope_modulus     stress, modulus of elasticity of the rope
/// d_w  wire_diameter    length
/// D    sheave_diameter  length
///
/// Shigley takes the modulus of the rope, not of the wire; others take that of steel and find two
/// and a half times as much. Source: Shigley's Mechanical Engineering Design, ch. 17, from memory.
struct WireBendingStress {
  static constexpr std::string_view name = "fatigue.wire_bending_stress";
  static constexpr std::tuple parameters{params::rope_modulus, params::wire_diameter,
                                         params::sheave_diameter};
  static constexpr Stress formula(Stress rope_modulus, Length wire_diameter,
                                  Length sheave_diameter) noexcept {
    return rope_modulus * (wire_diameter / sheave_diameter);
  }
};

/// Tension that would stress the wires as much as bending does, F_b (Shigley).
///
///   F_b = E_r d_w A_m / D
///
/// A_m  metallic_area  area, metal of the rope's cross section
/// the rest as in WireBendingStress
///
/// Source: Shigley's Mechanical Engineering Design, ch. 17, from memory.
struct BendingLoad {
  static constexpr std::string_view name = "fatigue.bending_load";
  static constexpr std::tuple parameters{
      params::rope_modulus, params::wire_diameter,
      Parameter<Area>{"metallic_area",
                      above_up_to(0.0 * square_millimeter, 1e6 * square_millimeter, params::guard)},
      params::sheave_diameter};
  static constexpr Force formula(Stress rope_modulus, Length wire_diameter, Area metallic_area,
                                 Length sheave_diameter) noexcept {
    return WireBendingStress::formula(rope_modulus, wire_diameter, sheave_diameter) * metallic_area;
  }
};

/// Tension a rope bears for the life its bearing-pressure ratio stands for, F_f (Shigley, after
/// Drucker & Tachau 1945).
///
///   F_f = (p/S_u) S_u d D / 2
///
/// p/S_u  pressure_ratio   number, read for the wanted life (data table "drucker_tachau_points")
/// S_u    wire_strength    stress, ultimate strength of the wire
/// d      rope_diameter    length
/// D      sheave_diameter  length
///
/// Source: Shigley's Mechanical Engineering Design, ch. 17, from memory.
struct FatigueTension {
  static constexpr std::string_view name = "fatigue.fatigue_tension";
  static constexpr std::tuple parameters{
      Parameter<Number>{"pressure_ratio",
                        above_up_to(from_si<Number>(0.0), from_si<Number>(1.0), params::guard)},
      params::wire_strength, params::rope_diameter, params::sheave_diameter};
  static constexpr Force formula(Number pressure_ratio, Stress wire_strength, Length rope_diameter,
                                 Length sheave_diameter) noexcept {
    return pressure_ratio * wire_strength * (rope_diameter * sheave_diameter) / 2.0;
  }
};

/// Static safety factor with the bending load taken off the strength, n_s (Shigley).
///
///   n_s = (F_u − F_b) / F_t
///
/// F_u  breaking_force  force
/// F_b  bending_load    force
/// F_t  rope_tension    force
///
/// Below 0 the bending alone overloads the rope. Source: Shigley's Mechanical Engineering Design,
/// ch. 17, from memory.
struct StaticSafetyFactor {
  static constexpr std::string_view name = "fatigue.static_safety_factor";
  static constexpr std::tuple parameters{params::breaking_force, params::bending_load,
                                         params::positive_rope_tension};
  static constexpr Number formula(Force breaking_force, Force bending_load,
                                  Force rope_tension) noexcept {
    return (breaking_force - bending_load) / rope_tension;
  }
};

/// Safety factor against fatigue within the wanted life, n_f (Shigley).
///
///   n_f = (F_f − F_b) / F_t
///
/// F_f  fatigue_tension  force
/// F_b  bending_load     force
/// F_t  rope_tension     force
///
/// Source: Shigley's Mechanical Engineering Design, ch. 17, from memory.
struct FatigueSafetyFactor {
  static constexpr std::string_view name = "fatigue.fatigue_safety_factor";
  static constexpr std::tuple parameters{params::fatigue_tension, params::bending_load,
                                         params::positive_rope_tension};
  static constexpr Number formula(Force fatigue_tension, Force bending_load,
                                  Force rope_tension) noexcept {
    return (fatigue_tension - bending_load) / rope_tension;
  }
};

// At the end, since some of these names are arguments of the formulas above.
inline constexpr Model<HoistRopeTension> hoist_rope_tension{};
inline constexpr Model<WireBendingStress> wire_bending_stress{};
inline constexpr Model<BendingLoad> bending_load{};
inline constexpr Model<FatigueTension> fatigue_tension{};
inline constexpr Model<StaticSafetyFactor> static_safety_factor{};
inline constexpr Model<FatigueSafetyFactor> fatigue_safety_factor{};

}  // namespace ropewalk::fatigue
