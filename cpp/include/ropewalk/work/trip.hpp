/// Work of the drilling line on trips, by the published closed forms.
///
/// Work is counted at the hook: load times travel, up and down both positive, not rope tension
/// times rope travel. Weights are forces; the pipe weight is buoyed. Depths are measured along the
/// hole. API RP 9B prints the forms in ton-miles (1 ton-mile = 2000 lbf × 5280 ft = 10,560,000
/// ft·lbf); here they stand in coherent units.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"

namespace ropewalk::work {

/// Arguments that only this subject takes.
namespace argument {

/// C, API RP 9B: weight of the BHA in mud less that of the same length of drill pipe.
inline constexpr Parameter<Force> bha_excess_weight{
    "bha_excess_weight", between(-1e9 * newton, 1e9 * newton, params::guard)};
inline constexpr Parameter<Length> depth_from{"depth_from", params::depth_range};
inline constexpr Parameter<Length> depth_to{"depth_to", params::depth_range};
inline constexpr Parameter<Length> joint_length = params::stand_length.named("joint_length");
inline constexpr Parameter<ForcePerLength> casing_weight =
    params::pipe_weight.named("casing_weight");
inline constexpr Parameter<Force> load{"load", params::force_range};
inline constexpr Parameter<Length> travel{"travel", params::depth_range};

inline constexpr std::string_view deeper = "depth_to must be at least depth_from";

}  // namespace argument

/// Work of one stroke of the block: T = F s, counted positive up and down.
///
/// T  result     energy
/// F  load       force, everything hung on the lines
/// s  travel     length
///
/// Definition. For jarring, pick-up tests, reaming and other work for which there is no closed
/// form: add up the strokes.
struct Lift {
  static constexpr std::string_view name = "work.lift";
  static constexpr std::tuple parameters{argument::load, argument::travel};

  static constexpr Energy formula(Force load, Length travel) noexcept { return load * travel; }
};
inline constexpr Model<Lift> lift{};

/// Work of one round trip, API RP 9B.
///
///   T = W_m D (L + D) + 4 D (M + C/2)
///   printed:  T = D (L + D) W_m / 10,560,000 + D (M + C/2) / 2,640,000      [ton-mile, ft, lb]
///
/// T    result              energy
/// D    depth               length
/// L    stand_length        length
/// W_m  pipe_weight         force per length, drill pipe in mud
/// C    bha_excess_weight   force, BHA in mud less the same length of drill pipe
/// M    block_weight        force, traveling block to elevators
///
/// The sum over whole stands of (string in mud + M) pulled up and M run down empty, out of the
/// hole, and the reverse back in. Drag is left out and the BHA is counted as hung until the last
/// stand. Source: N. J. Lapeyrouse, Formulas and Calculations for Drilling, Production and
/// Workover, 2nd ed. (2002), p. 44; W. C. Lyons (ed.), Standard Handbook of Petroleum and Natural
/// Gas Engineering (1996), vol. 1, eq. 4-26; both after API RP 9B.
struct RoundTrip {
  static constexpr std::string_view name = "work.round_trip";
  static constexpr std::tuple parameters{params::depth, params::stand_length, params::pipe_weight,
                                         argument::bha_excess_weight, params::block_weight};

  static constexpr Energy formula(Length depth, Length stand_length, ForcePerLength pipe_weight,
                                  Force bha_excess_weight, Force block_weight) noexcept {
    return pipe_weight * depth * (stand_length + depth) +
           4.0 * depth * (block_weight + bha_excess_weight / 2.0);
  }
};
inline constexpr Model<RoundTrip> round_trip{};

/// Work of a short trip, API RP 9B: T_ST = T_6 − T_5.
///
/// T_6  one round trip at the depth of the bit, depth_to
/// T_5  one round trip at the depth to which the bit is pulled, depth_from
/// stand_length, pipe_weight, bha_excess_weight, block_weight as round_trip
///
/// Source: Lapeyrouse (2002), short-trip ton-miles; Lyons (1996), vol. 1, after API RP 9B.
struct ShortTrip {
  static constexpr std::string_view name = "work.short_trip";
  static constexpr std::tuple parameters{argument::depth_from,        argument::depth_to,
                                         params::stand_length,        params::pipe_weight,
                                         argument::bha_excess_weight, params::block_weight};
  static constexpr std::string_view joint_rule = argument::deeper;

  static constexpr bool joint(Length depth_from, Length depth_to, Length, ForcePerLength, Force,
                              Force) noexcept {
    return depth_to >= depth_from;
  }
  /// The difference of the two round trips with depth_to − depth_from taken out, so that depths
  /// close together do not cancel.
  static constexpr Energy formula(Length depth_from, Length depth_to, Length stand_length,
                                  ForcePerLength pipe_weight, Force bha_excess_weight,
                                  Force block_weight) noexcept {
    return (depth_to - depth_from) * (pipe_weight * (depth_from + depth_to + stand_length) +
                                      4.0 * (block_weight + bha_excess_weight / 2.0));
  }
};
inline constexpr Model<ShortTrip> short_trip{};

/// Work of setting casing, API RP 9B: half a round trip with no BHA.
///
///   T = ½ [W_cm D (L_c + D) + 4 D M]
///   printed:  T = ½ [D (L_c + D) W_cm / 10,560,000 + D M / 2,640,000]       [ton-mile, ft, lb]
///
/// T     result           energy
/// D     depth            length, of the shoe
/// L_c   joint_length     length of a casing joint
/// W_cm  casing_weight    force per length, casing in mud
/// M     block_weight     force, traveling block to elevators
///
/// The formula page that follows Lapeyrouse prints D·M/10,560,000 and so loses the factor 4 on the
/// block; the derivation by joints gives the form above.
/// Source: Lyons (1996), vol. 1, ch. 4, after API RP 9B.
struct Casing {
  static constexpr std::string_view name = "work.casing";
  static constexpr std::tuple parameters{params::depth, argument::joint_length,
                                         argument::casing_weight, params::block_weight};

  static constexpr Energy formula(Length depth, Length joint_length, ForcePerLength casing_weight,
                                  Force block_weight) noexcept {
    return 0.5 * (casing_weight * depth * (joint_length + depth) + 4.0 * depth * block_weight);
  }
};
inline constexpr Model<Casing> casing{};

}  // namespace ropewalk::work
