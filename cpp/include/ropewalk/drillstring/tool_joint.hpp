/// Mass of drill pipe with its tool joints.
#pragma once

#include "ropewalk/drillstring/weight.hpp"

namespace ropewalk::drillstring {

namespace argument {

inline constexpr Parameter<Length> tool_joint_length{
    "tool_joint_length", above_up_to(0.0 * meter, 3.0 * meter, params::guard)};
inline constexpr Parameter<Length> tool_joint_outer_diameter{"tool_joint_outer_diameter",
                                                             diameter_range};
inline constexpr Parameter<Length> tool_joint_inner_diameter{"tool_joint_inner_diameter",
                                                             diameter_range};
inline constexpr Parameter<Length> elevator_diameter{"elevator_diameter", diameter_range};
inline constexpr Parameter<Mass> upset_mass{
    "upset_mass", between(0.0 * kilogram, 1000.0 * kilogram, params::guard)};

}  // namespace argument

/// The rule between the three diameters of a tool joint.
struct ToolJointRule {
  static constexpr std::string_view joint_rule =
      "tool_joint_inner_diameter < elevator_diameter <= tool_joint_outer_diameter must hold "
      "(geometry)";
  static constexpr bool holds(Length outer, Length inner, Length elevator) noexcept {
    return inner < elevator && elevator <= outer;
  }
};

/// Mass of a tool joint, box and pin, API RP 7G.
///
///   W_TJ = 0.222 L (D² − d²) + 0.167 (D³ − D_TE³) − 0.501 d² (D − D_TE)      [lb, in]
///
/// W_TJ  result                      mass
/// L     tool_joint_length           length, pin and box together, between the tapers
/// D     tool_joint_outer_diameter   length
/// d     tool_joint_inner_diameter   length, bore of the pin
/// D_TE  elevator_diameter           length, diameter of the box at the elevator upset
///
/// The printed numbers are densities in lb/in³ and are kept to their three digits: with steel of
/// ρ = 0.2836 lb/in³, an elevator taper of 18° and a pin taper of 35°, and c = cot 18° + cot 35°,
/// they are π ρ/4 = 0.2227, π ρ c/24 = 0.1673 and π ρ c/8 = 0.5018.
///
/// Source (from memory): API RP 7G, 16th ed. (1998), appendix A, drill pipe weight.
struct ToolJointMass {
  static constexpr std::string_view name = "drillstring.tool_joint_mass";
  static constexpr std::tuple parameters{
      argument::tool_joint_length, argument::tool_joint_outer_diameter,
      argument::tool_joint_inner_diameter, argument::elevator_diameter};
  static constexpr std::string_view joint_rule = ToolJointRule::joint_rule;

  static constexpr Density pound_per_cubic_inch = pound / (inch * inch * inch);
  static constexpr Density body = 0.222 * pound_per_cubic_inch;
  static constexpr Density tapers = 0.167 * pound_per_cubic_inch;
  static constexpr Density bore_in_tapers = 0.501 * pound_per_cubic_inch;

  static constexpr bool joint(Length, Length tool_joint_outer_diameter,
                              Length tool_joint_inner_diameter, Length elevator_diameter) noexcept {
    return ToolJointRule::holds(tool_joint_outer_diameter, tool_joint_inner_diameter,
                                elevator_diameter);
  }
  static constexpr Mass formula(Length tool_joint_length, Length tool_joint_outer_diameter,
                                Length tool_joint_inner_diameter,
                                Length elevator_diameter) noexcept {
    const Length L = tool_joint_length;
    const Length D = tool_joint_outer_diameter;
    const Length d = tool_joint_inner_diameter;
    const Length D_TE = elevator_diameter;
    return body * L * (D * D - d * d) + tapers * (D * D * D - D_TE * D_TE * D_TE) -
           bore_in_tapers * d * d * (D - D_TE);
  }
};
inline constexpr Model<ToolJointMass> tool_joint_mass{};

/// Approximate mass per length of drill pipe with tool joints, API RP 7G.
///
///   w_adj = w + e/29.4          L_adj = [L + 2.253 (D − D_TE)] / 12
///   w_j   = (29.4 w_adj + W_TJ) / (29.4 + L_adj)                              [lb, ft, in]
///
/// w_j   result                      mass per length, averaged over pipe and joint
/// w     plain_mass_per_length       mass per length of the plain-end tube
/// e     upset_mass                  mass added by the upsets of one pipe
/// W_TJ  as tool_joint_mass; L, D, d, D_TE likewise
///
/// 29.4 ft is the length of a range 2 pipe without its tool joint, and 2.253 = (cot 18° + cot
/// 35°)/2 turns the two tapers into length of joint.
///
/// Source (from memory): API RP 7G, 16th ed. (1998), appendix A, drill pipe weight.
struct JointedMassPerLength {
  static constexpr std::string_view name = "drillstring.jointed_mass_per_length";
  static constexpr std::tuple parameters{argument::mass_per_length.named("plain_mass_per_length"),
                                         argument::upset_mass,
                                         argument::tool_joint_length,
                                         argument::tool_joint_outer_diameter,
                                         argument::tool_joint_inner_diameter,
                                         argument::elevator_diameter};
  static constexpr std::string_view joint_rule = ToolJointRule::joint_rule;

  static constexpr Length pipe_without_joint = 29.4 * foot;
  static constexpr double length_of_tapers = 2.253;

  static constexpr bool joint(MassPerLength, Mass, Length, Length tool_joint_outer_diameter,
                              Length tool_joint_inner_diameter, Length elevator_diameter) noexcept {
    return ToolJointRule::holds(tool_joint_outer_diameter, tool_joint_inner_diameter,
                                elevator_diameter);
  }
  static constexpr MassPerLength formula(MassPerLength plain_mass_per_length, Mass upset_mass,
                                         Length tool_joint_length, Length tool_joint_outer_diameter,
                                         Length tool_joint_inner_diameter,
                                         Length elevator_diameter) noexcept {
    const Mass tool_joint = ToolJointMass::formula(tool_joint_length, tool_joint_outer_diameter,
                                                   tool_joint_inner_diameter, elevator_diameter);
    const Length adjusted_length =
        tool_joint_length + length_of_tapers * (tool_joint_outer_diameter - elevator_diameter);
    return (plain_mass_per_length * pipe_without_joint + upset_mass + tool_joint) /
           (pipe_without_joint + adjusted_length);
  }
};
inline constexpr Model<JointedMassPerLength> jointed_mass_per_length{};

}  // namespace ropewalk::drillstring
