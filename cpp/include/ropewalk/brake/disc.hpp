/// Disc brake: calipers that clamp a disc between two pads each.
#pragma once

#include <algorithm>

#include "ropewalk/base/model.hpp"
#include "ropewalk/brake/parameters.hpp"

namespace ropewalk::brake {

namespace argument {
/// Of one pad on its side of the disc.
inline constexpr Parameter<Force> pad_force{"pad_force", params::force_range};
/// Where the friction of a pad acts.
inline constexpr Parameter<Length> pad_radius{"pad_radius", part_range};
inline constexpr Parameter<Length> pad_outer_radius{"pad_outer_radius", part_range};
inline constexpr Parameter<Length> pad_inner_radius{
    "pad_inner_radius", between(0.0 * meter, 20.0 * meter, params::guard)};
inline constexpr Parameter<Number> calipers{"calipers", whole_between(0, 200, params::guard)};
/// Of the spring pack at the stroke it was set to.
inline constexpr Parameter<Force> spring_force{"spring_force", params::force_range};
inline constexpr Parameter<ForcePerLength> spring_rate{
    "spring_rate",
    between(from_si<ForcePerLength>(0.0), from_si<ForcePerLength>(1e12), params::guard)};
inline constexpr Parameter<Length> pad_wear{"pad_wear",
                                            between(0.0 * meter, 1.0 * meter, params::guard)};
inline constexpr Parameter<Stress> release_pressure{
    "release_pressure", between(0.0 * pascal, 1e9 * pascal, params::guard)};
inline constexpr Parameter<Area> release_area{
    "release_area", between(0.0 * square_millimeter, 1e8 * square_millimeter, params::guard)};
inline constexpr std::string_view pad_rule =
    "pad_outer_radius must be more than pad_inner_radius (geometry)";
}  // namespace argument

/// Radius at which the friction of a pad acts when it has worn in.
///
///   r_e = (r_o + r_i) / 2
///
/// r_o  pad_outer_radius  length
/// r_i  pad_inner_radius  length
///
/// Wear is as pressure times sliding speed and has become uniform, so that p r is. Source:
/// J. E. Shigley, Mechanical Engineering Design, caliper disk brakes, uniform wear (from memory).
struct PadRadiusUniformWear {
  static constexpr std::string_view name = "brake.pad_radius_uniform_wear";
  static constexpr std::tuple parameters{argument::pad_outer_radius, argument::pad_inner_radius};
  static constexpr std::string_view joint_rule = argument::pad_rule;

  static constexpr bool joint(Length outer, Length inner) noexcept { return outer > inner; }
  static constexpr Length formula(Length outer, Length inner) noexcept {
    return (outer + inner) / 2.0;
  }
};
inline constexpr Model<PadRadiusUniformWear> pad_radius_uniform_wear{};

/// Radius at which the friction of a new pad acts, pressed evenly.
///
///   r_e = (2/3) (r_o³ − r_i³) / (r_o² − r_i²)
///
/// Symbols as for PadRadiusUniformWear; never less than that radius. Written without the
/// difference of cubes, which loses its digits for a narrow pad. Source: J. E. Shigley, Mechanical
/// Engineering Design, caliper disk brakes, uniform pressure (from memory).
struct PadRadiusUniformPressure {
  static constexpr std::string_view name = "brake.pad_radius_uniform_pressure";
  static constexpr std::tuple parameters = PadRadiusUniformWear::parameters;
  static constexpr std::string_view joint_rule = argument::pad_rule;

  static constexpr bool joint(Length outer, Length inner) noexcept { return outer > inner; }
  static constexpr Length formula(Length outer, Length inner) noexcept {
    return 2.0 / 3.0 * (outer * outer + outer * inner + inner * inner) / (outer + inner);
  }
};
inline constexpr Model<PadRadiusUniformPressure> pad_radius_uniform_pressure{};

/// Torque of a number of calipers with two pads each, the same in both directions.
///
///   T = 2 μ F r z
///
/// μ  lining_friction  number
/// F  pad_force        force, of one pad
/// r  pad_radius       length, see the two pad radii
/// z  calipers         number, 0 if none act
///
/// Source: J. E. Shigley, Mechanical Engineering Design, caliper disk brakes (from memory).
struct CaliperTorque {
  static constexpr std::string_view name = "brake.caliper_torque";
  static constexpr std::tuple parameters{argument::pad_force, argument::lining_friction,
                                         argument::pad_radius, argument::calipers};

  static constexpr Torque formula(Force pad_force, Number lining_friction, Length pad_radius,
                                  Number calipers) noexcept {
    return torque_on_arm(2.0 * lining_friction * pad_force * calipers, pad_radius);
  }
};
inline constexpr Model<CaliperTorque> caliper_torque{};

/// Force of a pad that springs press on and oil pressure holds off.
///
///   F = max(0, F_s − k w − p A)
///
/// F_s  spring_force      force, at the stroke the caliper was set to
/// k    spring_rate       force per length
/// w    pad_wear          length, lining lost since it was set
/// p    release_pressure  stress, of the oil; 0 when it is lost
/// A    release_area      area, of the piston
///
/// A caliper held off presses with nothing; it cannot pull. Source: equilibrium of the piston.
struct SpringPadForce {
  static constexpr std::string_view name = "brake.spring_pad_force";
  static constexpr std::tuple parameters{argument::spring_force, argument::spring_rate,
                                         argument::pad_wear, argument::release_pressure,
                                         argument::release_area};

  static constexpr Force formula(Force spring_force, ForcePerLength spring_rate, Length pad_wear,
                                 Stress release_pressure, Area release_area) noexcept {
    const Force left = spring_force - spring_rate * pad_wear - release_pressure * release_area;
    return std::max(left, 0.0 * newton);
  }
};
inline constexpr Model<SpringPadForce> spring_pad_force{};

}  // namespace ropewalk::brake
