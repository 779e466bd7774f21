/// Ratings of a mast or derrick: at another number of lines, and by the rule of the old standard.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"
#include "ropewalk/reeving/even_lines.hpp"

namespace ropewalk::mast {

namespace argument {
inline constexpr Parameter<Force> hook_load_rating{"hook_load_rating",
                                                   params::positive_force_range};
inline constexpr Parameter<Number> rated_lines = params::lines.named("rated_lines");
inline constexpr Parameter<Force> crown_block_weight{"crown_block_weight", params::force_range};
inline constexpr Parameter<Force> tools_weight{"tools_weight", params::force_range};
inline constexpr Parameter<Force> extra_leg_load{"extra_leg_load", params::force_range};
inline constexpr Parameter<Number> legs_sharing{
    "legs_sharing", whole_between(1, 2, "Lyons (1996), p. 506: at a leg or between two")};
}  // namespace argument

/// Static hook load rating at another number of lines, the load on the crown being the same.
///
///   W_2 = W_1 [(n_1 + 2)/n_1] / [(n_2 + 2)/n_2]
///
/// W_1  hook_load_rating  force, on the nameplate, for the lines stated there
/// n_1  rated_lines       number, stated on the nameplate
/// n_2  lines             number, strung
///
/// A rating is a static hook load for a stated number of lines and a stated dead-line position
/// (API Spec 4F, nameplate). Fewer lines pull harder on fast and dead line. With more lines than
/// stated the formula gives more than the nameplate: whether the structure may bear that on the
/// beams that the hook load alone goes through, only its maker can say.
/// Source: equilibrium of the crown block at rest.
struct RatingAtLines {
  static constexpr std::string_view name = "mast.rating_at_lines";
  static constexpr std::tuple parameters{argument::hook_load_rating, argument::rated_lines,
                                         params::lines};
  static constexpr std::string_view joint_rule =
      "rated_lines and lines must be even: an odd number has no dead line on the mast";

  static constexpr bool joint(Force, Number rated_lines, Number lines) noexcept {
    return reeving::is_even(rated_lines) & reeving::is_even(lines);
  }
  static constexpr Force formula(Force hook_load_rating, Number rated_lines,
                                 Number lines) noexcept {
    return hook_load_rating * (((rated_lines + 2.0) * lines) / (rated_lines * (lines + 2.0)));
  }
};
inline constexpr Model<RatingAtLines> rating_at_lines{};

/// Extra load of one leg by the dead line, old API Standard 4A.
///
///   F_L = W / (s n)
///
/// s  legs_sharing  number, 1: dead line at a leg, 2: between two legs
///
/// No leg is taken to bear both dead and fast line. Other symbols: mast/derrick_load.hpp.
/// Source: W. C. Lyons (ed.), Standard Handbook of Petroleum and Natural Gas Engineering, vol. 1
/// (Gulf, 1996), p. 506.
struct ExtraLegLoad {
  static constexpr std::string_view name = "mast.extra_leg_load";
  static constexpr std::tuple parameters{params::hook_load, params::lines, argument::legs_sharing};
  static constexpr std::string_view joint_rule = reeving::even_rule;

  static constexpr bool joint(Force, Number lines, Number) noexcept {
    return reeving::is_even(lines);
  }
  static constexpr Force formula(Force hook_load, Number lines, Number legs_sharing) noexcept {
    return hook_load / (legs_sharing * lines);
  }
};
inline constexpr Model<ExtraLegLoad> extra_leg_load{};

/// Capacity a derrick rated by the old API Standard 4A should have, with 1.5 for impact and
/// vibration.
///
///   C = 1.5 (W + W_c + W_t + 4 F_L)
///
/// W_c  crown_block_weight  force
/// W_t  tools_weight        force, of tools suspended in the derrick
/// F_L  extra_leg_load      force, see ExtraLegLoad
///
/// For structures rated by that standard: four times the capacity of one leg, without setback, wind
/// and number of lines. Superseded by API Spec 4F, whose ratings are static hook loads.
/// Source: Lyons (1996), p. 506, eq. 4-1.
struct Std4aCapacity {
  static constexpr std::string_view name = "mast.std_4a_capacity";
  static constexpr std::tuple parameters{params::hook_load, argument::crown_block_weight,
                                         argument::tools_weight, argument::extra_leg_load};

  static constexpr Force formula(Force hook_load, Force crown_block_weight, Force tools_weight,
                                 Force extra) noexcept {
    return 1.5 * (hook_load + crown_block_weight + tools_weight + 4.0 * extra);
  }
};
inline constexpr Model<Std4aCapacity> std_4a_capacity{};

}  // namespace ropewalk::mast
