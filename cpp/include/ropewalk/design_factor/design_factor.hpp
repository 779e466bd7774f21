/// Design factor of a rope: its strength over the tension it carries.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"

namespace ropewalk::design_factor {

namespace argument {

/// A slack rope has no design factor, so tension zero is left out here.
inline constexpr Parameter<Force> rope_tension{"rope_tension", params::positive_force_range};
/// Strength of the rope bent over its smallest sheave over that of the straight rope.
inline constexpr Parameter<Number> strength_efficiency{"strength_efficiency",
                                                       params::positive_ratio_range};
inline constexpr Parameter<Number> minimum_design_factor{
    "minimum_design_factor", between(from_si<Number>(1.0), from_si<Number>(100.0), params::guard)};

}  // namespace argument

/// Design factor, API RP 9B.
///
///   DF = B / W
///
/// B  breaking_force   force, nominal (minimum) breaking force of the rope
/// W  rope_tension     force, tension of the most loaded part: the fast line while hoisting
///
/// A definition; no range. Source: API RP 9B, 14th ed. (2015) with Addendum 1 (2020), 2.3.3.4,
/// eq. (1).
struct DesignFactor {
  static constexpr std::string_view name = "design_factor.design_factor";
  static constexpr std::tuple parameters{params::breaking_force, argument::rope_tension};

  static constexpr Number formula(Force breaking_force, Force rope_tension) noexcept {
    return breaking_force / rope_tension;
  }
};
inline constexpr Model<DesignFactor> design_factor{};

/// Design factor of a rope bent over a sheave, fitting or drum, API RP 9B.
///
///   DF = η B / W
///
/// B  breaking_force        force
/// η  strength_efficiency   share of its strength the bent rope keeps, from D/d
/// W  rope_tension          force
///
/// A definition; no range. Source: API RP 9B, 14th ed. (2015) with Addendum 1 (2020), 2.3.3.5.
struct Derated {
  static constexpr std::string_view name = "design_factor.derated";
  static constexpr std::tuple parameters{params::breaking_force, argument::strength_efficiency,
                                         argument::rope_tension};

  static constexpr Number formula(Force breaking_force, Number strength_efficiency,
                                  Force rope_tension) noexcept {
    return strength_efficiency * breaking_force / rope_tension;
  }
};
inline constexpr Model<Derated> derated{};

/// Largest rope tension that keeps a minimum design factor.
///
///   W = B / DF_min
///
/// Source: the definition of the design factor, turned round.
struct AllowedRopeTension {
  static constexpr std::string_view name = "design_factor.allowed_rope_tension";
  static constexpr std::tuple parameters{params::breaking_force, argument::minimum_design_factor};

  static constexpr Force formula(Force breaking_force, Number minimum_design_factor) noexcept {
    return breaking_force / minimum_design_factor;
  }
};
inline constexpr Model<AllowedRopeTension> allowed_rope_tension{};

}  // namespace ropewalk::design_factor
