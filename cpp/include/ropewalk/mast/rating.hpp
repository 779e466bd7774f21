/// Ratings of a mast or derrick: at another number of lines, and by the rule of the old standard.
#pragma once

#include <algorithm>

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
inline constexpr Parameter<Number> leg_share{
    "leg_share", between(from_si<Number>(0.5), from_si<Number>(2.0), "four legs, two lines")};
inline constexpr Parameter<Number> legs_sharing{
    "legs_sharing", whole_between(1, 2, "Lyons (1996), p. 506: at a leg or between two")};
}  // namespace argument

/// Static hook load rating at another number of lines: neither the rating, nor the load of the
/// crown, nor that of the leg that bears most is exceeded.
///
///   W_2 = W_1 min(1, (1 + 4 s/n_1)/(1 + 4 s/n_2))
///
/// W_1  hook_load_rating  force, on the nameplate, for the lines stated there
/// n_1  rated_lines       number, stated on the nameplate, even
/// n_2  lines             number, strung, even
/// s    leg_share         number, what the leg that bears most has of the dead line and of the fast
///                        line, both shares added: 1/2 with both alike on all legs, 1 with one of
///                        them on a leg of its own, 2 with both on the same leg
///
/// At rest a leg bears W/4 + s W/n, the crown block's weight besides, which cancels: equal loads of
/// that leg give the second term. Fewer lines pull harder on dead and fast line. The crown bears
/// W (1 + 2/n), as four legs of s = 1/2, the least there is: equal crown loads never ask for less
/// hook load than equal leg loads. More lines than stated do not raise the rating; only its maker
/// can. The pull of one line, W_2/n_2, still rises with fewer lines: anchor, fast-line sheave and
/// the beams under them are not judged here.
/// A rating is a static hook load for a stated number of lines and a stated dead-line position (API
/// Spec 4F, nameplate). Source: equilibrium of the crown block at rest; leg loads of mast/legs.hpp,
/// for s = 1 the table of Bourgoyne et al. (1986), ch. 1.
struct RatingAtLines {
  static constexpr std::string_view name = "mast.rating_at_lines";
  static constexpr std::tuple parameters{argument::hook_load_rating, argument::rated_lines,
                                         params::lines, argument::leg_share};
  static constexpr std::string_view joint_rule =
      "rated_lines and lines must be even: an odd number has no dead line on the mast";

  static constexpr bool joint(Force, Number rated_lines, Number lines, Number) noexcept {
    return reeving::is_even(rated_lines) & reeving::is_even(lines);
  }
  static constexpr Force formula(Force hook_load_rating, Number rated_lines, Number lines,
                                 Number leg_share) noexcept {
    const double as_rated = 1.0 + 4.0 * to_si(Number(leg_share / rated_lines));
    const double as_strung = 1.0 + 4.0 * to_si(Number(leg_share / lines));
    return hook_load_rating * std::min(1.0, as_rated / as_strung);
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
