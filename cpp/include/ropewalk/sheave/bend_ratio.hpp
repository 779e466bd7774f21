/// Size of a sheave measured in rope diameters.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"

namespace ropewalk::sheave {

/// Bend ratio of a rope on its sheave, by definition.
///
///   D/d
///
/// D  sheave_diameter  length, tread diameter (bottom of the groove)
/// d  rope_diameter    length, nominal
///
/// European texts often measure D on the center line of the rope, one rope diameter more; a model
/// that means that says so.
struct BendRatio {
  static constexpr std::string_view name = "sheave.bend_ratio";
  static constexpr std::tuple parameters{params::sheave_diameter, params::rope_diameter};
  static constexpr std::string_view joint_rule =
      "sheave_diameter must be at least rope_diameter (geometry)";

  static constexpr bool joint(Length sheave_diameter, Length rope_diameter) noexcept {
    return sheave_diameter >= rope_diameter;
  }
  static constexpr Number formula(Length sheave_diameter, Length rope_diameter) noexcept {
    return sheave_diameter / rope_diameter;
  }
};
inline constexpr Model<BendRatio> bend_ratio{};

}  // namespace ropewalk::sheave
