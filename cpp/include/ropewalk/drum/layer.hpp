/// How laps lie beside and above each other.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/drum/drum.hpp"
#include "ropewalk/drum/parameters.hpp"

namespace ropewalk::drum {

/// Rise from layer to layer over rope diameter where the laps below do not touch.
///
///   c = √(1 − (p / 2d)²)
///
/// c  layer height   number
/// p  pitch          length, from lap to lap along the drum
/// d  rope_diameter  length
///
/// The rope centers make an isosceles triangle of base p and sides d; p = d gives √3/2.
/// Range: d ≤ p < 2d; wider, the upper lap would fall through onto the barrel. Source: geometry.
struct PitchedLayerHeight {
  static constexpr std::string_view name = "drum.pitched_layer_height";
  static constexpr std::tuple parameters{argument::pitch, params::rope_diameter};
  static constexpr std::string_view joint_rule =
      "pitch must be at least rope_diameter and less than twice rope_diameter (geometry)";

  static constexpr bool joint(Length pitch, Length rope_diameter) noexcept {
    return pitch >= rope_diameter && pitch < 2.0 * rope_diameter;
  }
  static Number formula(Length pitch, Length rope_diameter) noexcept {
    const double half = 0.5 * to_si(Number(pitch / rope_diameter));
    return from_si<Number>(std::sqrt((1.0 - half) * (1.0 + half)));
  }
};
inline constexpr Model<PitchedLayerHeight> pitched_layer_height{};

/// Mean rise from layer to layer over rope diameter where a share of each lap lies in the valley
/// and the rest crosses over the rope below.
///
///   c = s √3/2 + (1 − s)
///
/// s  nested_share  share of the lap that lies in the valley, 0 … 1
///
/// Drums with parallel grooves and two crossovers a lap: about 0.8 nested (common practice, no
/// source), c = 0.893. Source: geometry, the mean of nested_layer_height and stacked_layer_height.
struct MixedLayerHeight {
  static constexpr std::string_view name = "drum.mixed_layer_height";
  static constexpr std::tuple parameters{Parameter<Number>{"nested_share", params::ratio_range}};

  static Number formula(Number nested_share) noexcept {
    return nested_share * nested_layer_height() + (1.0 - nested_share) * stacked_layer_height();
  }
};
inline constexpr Model<MixedLayerHeight> mixed_layer_height{};

/// Whole laps side by side between the flanges.
///
///   n = floor(W / p)
///
/// W  traverse  length, inside width from flange to flange
/// p  pitch     length, from lap to lap
///
/// On a helical groove every other layer has one lap less; half a lap less in each is the same
/// length of rope to within the difference of two laps. Source: geometry.
struct LapsInTraverse {
  static constexpr std::string_view name = "drum.laps_in_traverse";
  static constexpr std::tuple parameters{argument::traverse, argument::pitch};
  static constexpr std::string_view joint_rule = "traverse must be at least pitch (geometry)";

  static constexpr bool joint(Length traverse, Length pitch) noexcept { return traverse >= pitch; }
  static Number formula(Length traverse, Length pitch) noexcept {
    // A traverse of just so many pitches must not lose one to the last bit of the quotient.
    constexpr double rounding = 1e-9;
    return from_si<Number>(std::floor(to_si(Number(traverse / pitch)) * (1.0 + rounding)));
  }
};
inline constexpr Model<LapsInTraverse> laps_in_traverse{};

}  // namespace ropewalk::drum
