/// Lengths of rope counted in laps: cut, held by a reel, wound up by the block.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/drum/drum.hpp"
#include "ropewalk/drum/parameters.hpp"

namespace ropewalk::drum {

/// Length of line cut off at the drum, counted in laps, as API RP 9B tabulates it.
///
///   L = n π D
///
/// L  cut length       length
/// n  laps             number, a half or a quarter over a whole number so that the crossovers move
/// D  barrel_diameter  length, of the drum
///
/// The lap is counted on the barrel, as in the table: 11 1/2 laps of a 28-in drum are 84.3 ft. The
/// rope itself is bent on a larger circle; what comes off a drum is told by Drum::length_of.
/// Source (from memory): API RP 9B, cutoff lengths in terms of drum laps.
struct CutLength {
  static constexpr std::string_view name = "drum.cut_length";
  static constexpr std::tuple parameters{argument::laps, argument::barrel_diameter};

  static constexpr Length formula(Number laps, Length barrel_diameter) noexcept {
    return laps * pi * barrel_diameter;
  }
};
inline constexpr Model<CutLength> cut_length{};

/// How far a cut moves the crossovers from where they were on the rope.
///
///   s = |q n − round(q n)| / q
///
/// s  shift               laps, to the nearest old crossover
/// n  laps                number, cut off
/// q  crossovers_per_lap  1 or 2
///
/// Crossovers lie 1/q lap apart: the shift is 0 for every whole multiple of it, at most 1/(2q): a
/// half lap for one crossover a lap, a quarter for two. It is the shift within a layer; lap lengths
/// differ from layer to layer. Source: geometry.
struct CrossoverShift {
  static constexpr std::string_view name = "drum.crossover_shift";
  static constexpr std::tuple parameters{
      argument::laps,
      Parameter<Number>{"crossovers_per_lap", whole_between(1, 2, params::definition)}};

  static Number formula(Number laps, Number crossovers_per_lap) noexcept {
    const double old = to_si(laps) * to_si(crossovers_per_lap);
    return from_si<Number>(std::abs(old - std::round(old))) / crossovers_per_lap;
  }
};
inline constexpr Model<CrossoverShift> crossover_shift{};

/// Rope on the drum with the block above its lowest position.
///
///   L = L_0 + N h
///
/// L_0  rope_at_lowest  length, on the drum with the block lowest
/// N    lines           number
/// h    block_height    length, of the block above its lowest position
///
/// Every line between the blocks gets shorter by h. Source: geometry.
struct RopeOnDrum {
  static constexpr std::string_view name = "drum.rope_on_drum";
  static constexpr std::tuple parameters{Parameter<Length>{"rope_at_lowest", params::depth_range},
                                         params::lines, argument::block_height};

  static constexpr Length formula(Length rope_at_lowest, Number lines,
                                  Length block_height) noexcept {
    return rope_at_lowest + lines * block_height;
  }
};
inline constexpr Model<RopeOnDrum> rope_on_drum{};

/// Place on the drum of the point where the line leaves it, with the block at a height above its
/// lowest position. wraps_at_lowest are the laps that lie on the drum with the block lowest.
/// Throws InadmissibleError if an argument cannot be, or the drum does not hold so much.
[[nodiscard]] Drum::Place place_at_height(const Drum& drum, Number wraps_at_lowest, Number lines,
                                          Length block_height);

/// Height above its lowest position at which the block has filled the drum. Throws as
/// place_at_height.
[[nodiscard]] Length height_when_full(const Drum& drum, Number wraps_at_lowest, Number lines);

/// Rope held by a reel or drum in stacked layers of touching laps.
///
///   L = π (A + B) A C / d²
///
/// A  flange_depth     length, depth of rope from the barrel to the outside of the last layer
/// B  barrel_diameter  length
/// C  traverse         length, inside width from flange to flange
/// d  rope_diameter    length, actual, oversize included
///
/// Each lap takes the square d²; A C / d² laps of mean diameter A + B. Layers that nest hold more,
/// loose winding less. With inches and feet π/12 = 0.2618.
/// Source: Oceanographic winch and wire handbook, ch. 12, length of cable on a reel; with A, B, C
/// as in the Wire Rope Users Manual.
struct ReelCapacity {
  static constexpr std::string_view name = "drum.reel_capacity";
  static constexpr std::tuple parameters{argument::flange_depth, argument::barrel_diameter,
                                         argument::traverse, params::rope_diameter};
  static constexpr std::string_view joint_rule =
      "flange_depth and traverse must be at least rope_diameter (geometry)";

  static constexpr bool joint(Length flange_depth, Length, Length traverse,
                              Length rope_diameter) noexcept {
    return flange_depth >= rope_diameter && traverse >= rope_diameter;
  }
  static constexpr Length formula(Length flange_depth, Length barrel_diameter, Length traverse,
                                  Length rope_diameter) noexcept {
    return pi * (flange_depth + barrel_diameter) * flange_depth * traverse /
           (rope_diameter * rope_diameter);
  }
};
inline constexpr Model<ReelCapacity> reel_capacity{};

/// Rope held by a reel as the handbooks of wire rope have it.
///
///   L = (A + B) A C K
///
/// K  factor of the rope size, cpp/data/reel_factors.csv, ft/in³; other symbols as for
///    ReelCapacity, d being the nominal diameter
///
/// K is π/(12 d_a²) for a rope d_a 4 % to 6.5 % over its nominal size, uniform winding, the same
/// number of laps in each layer. No size between two printed ones is made up: throws LookupError
/// with the nearest sizes, InadmissibleError for a length that cannot be.
/// Source: a rope supplier's page of reel capacities, undated, up to 1 1/4 in; above, Wire Rope
/// Users Manual (from memory), where the page has dropped digits.
[[nodiscard]] Sourced<Length> reel_capacity_handbook(Length flange_depth, Length barrel_diameter,
                                                     Length traverse, Length rope_diameter);

}  // namespace ropewalk::drum
