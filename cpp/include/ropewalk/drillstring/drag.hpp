/// Drag of a string that slides in a crooked hole: the soft-string model.
///
/// Direction of motion is a number, +1 pulled up, −1 lowered, 0 rotated off bottom (friction then
/// works around the pipe and not along it).
#pragma once

#include "ropewalk/drillstring/weight.hpp"

namespace ropewalk::drillstring {

namespace argument {

/// Axial tension; negative where the string is pushed.
inline constexpr Parameter<Force> tension{"tension",
                                          between(-1e9 * newton, 1e9 * newton, params::guard)};
/// From the vertical; more than 90° is a hole that rises again.
inline constexpr Parameter<Angle> inclination{
    "inclination", between(0.0 * radian, 180.0 * degree, params::geometry)};
inline constexpr Parameter<Angle> inclination_change{
    "inclination_change", between(-180.0 * degree, 180.0 * degree, params::geometry)};
inline constexpr Parameter<Angle> azimuth_change{
    "azimuth_change", between(-360.0 * degree, 360.0 * degree, params::geometry)};
inline constexpr Parameter<Number> friction_coefficient{
    "friction_coefficient", between(from_si<Number>(0.0), from_si<Number>(2.0), params::guard)};
inline constexpr Parameter<Number> direction{"direction", whole_between(-1, 1, params::definition)};

}  // namespace argument

/// Axial load from a straight inclined section, soft string.
///
///   ΔF = w L (cos α + s μ sin α)
///
/// ΔF  result                 force, tension at the top less tension at the bottom
/// w   pipe_weight            force per length, in mud
/// L   length                 length along the hole
/// α   inclination            angle from the vertical
/// μ   friction_coefficient   ratio; 0.25–0.40 in water-base mud
/// s   direction              +1 up, 0 rotating, −1 down
///
/// Equilibrium on a straight incline. At a negative result the section has to be pushed.
/// Source: C. A. Johancsik, D. B. Friesen, R. Dawson, Torque and drag in directional wells:
/// prediction and measurement, J. Pet. Technol. (June 1984), SPE 11380, without change of angle.
struct SlantPull {
  static constexpr std::string_view name = "drillstring.slant_pull";
  static constexpr std::tuple parameters{params::pipe_weight, argument::length,
                                         argument::inclination, argument::friction_coefficient,
                                         argument::direction};

  static Force formula(ForcePerLength pipe_weight, Length length, Angle inclination,
                       Number friction_coefficient, Number direction) noexcept {
    const double a = in_radians(inclination);
    return pipe_weight * length * (std::cos(a) + direction * friction_coefficient * std::sin(a));
  }
};
inline constexpr Model<SlantPull> slant_pull{};

/// Force between a short element of string and the wall, Johancsik et al. (1984).
///
///   N = { [F Δφ sin θ]² + [F Δθ + W sin θ]² }^½,   W = w Δs
///
/// N   result               force
/// F   tension              force at the lower end of the element
/// w   pipe_weight          force per length, in mud
/// Δs  length               length of the element
/// θ   inclination          angle, mean over the element
/// Δθ  inclination_change   angle, inclination at the upper end less that at the lower end
/// Δφ  azimuth_change       angle, likewise
///
/// The string has no stiffness and touches the wall everywhere; the angles of one element are
/// small. Where the hole builds angle with depth Δθ is negative: tension then lifts the pipe off
/// the low side.
/// Source: Johancsik, Friesen, Dawson (1984), SPE 11380, eq. 1.
struct DragNormalForce {
  static constexpr std::string_view name = "drillstring.drag_normal_force";
  static constexpr std::tuple parameters{
      argument::tension,     params::pipe_weight,          argument::length,
      argument::inclination, argument::inclination_change, argument::azimuth_change};

  static Force formula(Force tension, ForcePerLength pipe_weight, Length length, Angle inclination,
                       Angle inclination_change, Angle azimuth_change) noexcept {
    const double sine = std::sin(in_radians(inclination));
    const Force turn_side = tension * in_radians(azimuth_change) * sine;
    const Force low_side = tension * in_radians(inclination_change) + pipe_weight * length * sine;
    return from_si<Force>(std::hypot(to_si(turn_side), to_si(low_side)));
  }
};
inline constexpr Model<DragNormalForce> drag_normal_force{};

/// Change of tension over a short element of string, Johancsik et al. (1984).
///
///   ΔF = W cos θ + s μ N
///
/// ΔF  result                 force, upper end less lower end
/// μ   friction_coefficient   ratio; 0.25–0.40 in water-base mud
/// s   direction              +1 up, 0 rotating, −1 down
/// N, W, θ and the other arguments as drag_normal_force
///
/// Walk the string from the bit up and add ΔF to F element by element.
/// Source: Johancsik, Friesen, Dawson (1984), SPE 11380, eq. 2.
struct DragTensionChange {
  static constexpr std::string_view name = "drillstring.drag_tension_change";
  static constexpr std::tuple parameters{argument::tension,
                                         params::pipe_weight,
                                         argument::length,
                                         argument::inclination,
                                         argument::inclination_change,
                                         argument::azimuth_change,
                                         argument::friction_coefficient,
                                         argument::direction};

  static Force formula(Force tension, ForcePerLength pipe_weight, Length length, Angle inclination,
                       Angle inclination_change, Angle azimuth_change, Number friction_coefficient,
                       Number direction) noexcept {
    const Force normal = DragNormalForce::formula(tension, pipe_weight, length, inclination,
                                                  inclination_change, azimuth_change);
    return pipe_weight * length * std::cos(in_radians(inclination)) +
           direction * friction_coefficient * normal;
  }
};
inline constexpr Model<DragTensionChange> drag_tension_change{};

}  // namespace ropewalk::drillstring
