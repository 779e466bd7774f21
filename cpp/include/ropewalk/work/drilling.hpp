/// Work of the drilling line while making hole, by the published closed forms.
#pragma once

#include "ropewalk/work/trip.hpp"

namespace ropewalk::work {

namespace argument {

/// How often the round-trip work of the new hole is done.
inline constexpr Parameter<Number> passes{
    "passes", between(from_si<Number>(0.0), from_si<Number>(20.0), params::guard)};

}  // namespace argument

/// Work of drilling, API RP 9B: a multiple of the difference of two round trips.
///
///   T_d = n (T_2 − T_1)
///
/// T_1  one round trip at the depth where drilling starts, depth_from
/// T_2  one round trip at the depth where drilling stops, depth_to
/// n    passes   3 with a kelly, every kelly down reamed once; 2 with a kelly, not reamed
/// stand_length, pipe_weight, bha_excess_weight, block_weight as round_trip
///
/// Why 3: drilling a kelly down and pulling it is one round trip of the new hole, reaming and
/// pulling again is a second, and the connection (setting back the kelly, picking up a joint,
/// lowering the string, picking up the kelly) is counted as a third; strokes.hpp has the cycle.
/// With a top drive and stands neither number is made for the work: count the strokes.
/// Source: Lapeyrouse (2002), drilling or connection ton-miles; Lyons (1996), vol. 1, after
/// API RP 9B.
struct Drilling {
  static constexpr std::string_view name = "work.drilling";
  static constexpr std::tuple parameters{
      argument::depth_from,        argument::depth_to,   params::stand_length, params::pipe_weight,
      argument::bha_excess_weight, params::block_weight, argument::passes};
  static constexpr std::string_view joint_rule = argument::deeper;

  static constexpr bool joint(Length depth_from, Length depth_to, Length, ForcePerLength, Force,
                              Force, Number) noexcept {
    return depth_to >= depth_from;
  }
  static constexpr Energy formula(Length depth_from, Length depth_to, Length stand_length,
                                  ForcePerLength pipe_weight, Force bha_excess_weight,
                                  Force block_weight, Number passes) noexcept {
    return passes * ShortTrip::formula(depth_from, depth_to, stand_length, pipe_weight,
                                       bha_excess_weight, block_weight);
  }
};
inline constexpr Model<Drilling> drilling{};

/// Work of coring, API RP 9B: T_c = 2 (T_4 − T_3).
///
/// T_3  one round trip at the depth where coring starts, depth_from
/// T_4  one round trip at the depth where coring stops, depth_to
/// stand_length, pipe_weight, bha_excess_weight, block_weight as round_trip
///
/// Two and not three because cored hole is not reamed.
/// Source: Lapeyrouse (2002), coring ton-miles; Lyons (1996), vol. 1, after API RP 9B.
struct Coring {
  static constexpr std::string_view name = "work.coring";
  static constexpr std::tuple parameters = ShortTrip::parameters;
  static constexpr std::string_view joint_rule = argument::deeper;

  static constexpr bool joint(Length depth_from, Length depth_to, Length, ForcePerLength, Force,
                              Force) noexcept {
    return depth_to >= depth_from;
  }
  static constexpr Energy formula(Length depth_from, Length depth_to, Length stand_length,
                                  ForcePerLength pipe_weight, Force bha_excess_weight,
                                  Force block_weight) noexcept {
    return 2.0 * ShortTrip::formula(depth_from, depth_to, stand_length, pipe_weight,
                                    bha_excess_weight, block_weight);
  }
};
inline constexpr Model<Coring> coring{};

}  // namespace ropewalk::work
