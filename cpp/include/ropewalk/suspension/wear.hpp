/// Links and elevators off their nameplate: at an angle, and worn. Bounds, not permissions.
///
/// What a worn part may carry is said by its maker's table of thickness against capacity; without
/// one it is out of service. The bounds here tell how fast capacity goes with wear.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/suspension/rating.hpp"

namespace ropewalk::suspension {

namespace argument {
/// From the vertical.
inline constexpr Parameter<Angle> link_angle{
    "link_angle", between(from_si<Angle>(0.0), from_si<Angle>(80.0 * pi / 180.0), params::guard)};
/// Least thickness measured over thickness as new.
inline constexpr Parameter<Number> thickness_ratio{"thickness_ratio", params::positive_ratio_range};
inline constexpr Interval bore_range = above_up_to(0.0 * meter, 2.0 * meter, params::guard);
inline constexpr Parameter<Length> shoulder_diameter{"shoulder_diameter", bore_range};
inline constexpr Parameter<Length> new_bore{"new_bore", bore_range};
inline constexpr Parameter<Length> worn_bore{"worn_bore", bore_range};
}  // namespace argument

/// Load along one of two links that stand at the same angle.
///
///   F = W / (2 cos β)
///
/// W  link_set_load  force, both links together
/// β  link_angle     angle, of a link from the vertical
///
/// Links are rated by the set, for links that hang straight. Source: equilibrium.
struct LinkLoad {
  static constexpr std::string_view name = "suspension.link_load";
  static constexpr std::tuple parameters{Parameter<Force>{"link_set_load", params::force_range},
                                         argument::link_angle};

  static Force formula(Force link_set_load, Angle link_angle) noexcept {
    return link_set_load / (2.0 * std::cos(to_si(link_angle)));
  }
};
inline constexpr Model<LinkLoad> link_load{};

/// The most a worn eye can still carry: capacity falls with the area of the section.
///
///   R_worn = R (t/t_0)²
///
/// R      load_rating      force, of the set, as new
/// t/t_0  thickness_ratio  number, of the more worn eye of the more worn link
///
/// A round section under pull alone, worn alike all round. Source: area of the section.
struct WornCapacityByArea {
  static constexpr std::string_view name = "suspension.worn_capacity_by_area";
  static constexpr std::tuple parameters{argument::load_rating, argument::thickness_ratio};

  static constexpr Force formula(Force load_rating, Number thickness_ratio) noexcept {
    return load_rating * thickness_ratio * thickness_ratio;
  }
};
inline constexpr Model<WornCapacityByArea> worn_capacity_by_area{};

/// The same where bending governs, as in the crown of an eye: capacity falls with the section
/// modulus.
///
///   R_worn = R (t/t_0)³
///
/// Symbols as for WornCapacityByArea. Source: section modulus of a round section.
struct WornCapacityByBending {
  static constexpr std::string_view name = "suspension.worn_capacity_by_bending";
  static constexpr std::tuple parameters{argument::load_rating, argument::thickness_ratio};

  static constexpr Force formula(Force load_rating, Number thickness_ratio) noexcept {
    return load_rating * thickness_ratio * thickness_ratio * thickness_ratio;
  }
};
inline constexpr Model<WornCapacityByBending> worn_capacity_by_bending{};

/// Capacity of a square-shoulder elevator whose bore is worn, at the bearing pressure of the new
/// one.
///
///   R_worn = R (D² − B²) / (D² − B_0²)
///
/// D         shoulder_diameter  length, outside of the collar or shoulder it carries
/// B_0, B    new_bore, worn_bore  lengths
///
/// The ring of contact shrinks as the bore opens; collars worn or chamfered take away more, and the
/// pipe seats off center. Source: area of the ring of contact.
struct WornBoreCapacity {
  static constexpr std::string_view name = "suspension.worn_bore_capacity";
  static constexpr std::tuple parameters{argument::load_rating, argument::shoulder_diameter,
                                         argument::new_bore, argument::worn_bore};
  static constexpr std::string_view joint_rule =
      "new_bore must not exceed worn_bore, and worn_bore be less than shoulder_diameter (geometry)";

  static constexpr bool joint(Force, Length shoulder_diameter, Length new_bore,
                              Length worn_bore) noexcept {
    return new_bore <= worn_bore && worn_bore < shoulder_diameter;
  }
  static constexpr Force formula(Force load_rating, Length shoulder_diameter, Length new_bore,
                                 Length worn_bore) noexcept {
    const auto ring = [&](Length bore) {
      return (shoulder_diameter - bore) * (shoulder_diameter + bore);
    };
    return load_rating * (ring(worn_bore) / ring(new_bore));
  }
};
inline constexpr Model<WornBoreCapacity> worn_bore_capacity{};

}  // namespace ropewalk::suspension
