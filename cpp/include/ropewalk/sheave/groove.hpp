/// Groove of a sheave: radius new and worn, depth.
///
/// A groove gauge is ground to a radius somewhat over half the nominal rope diameter, since a new
/// rope is up to 5 % over its nominal size. A groove that is tighter than the worn limit pinches
/// the rope; one that is wider than the new maximum lets it flatten.
#pragma once

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"
#include "ropewalk/base/source.hpp"

namespace ropewalk::sheave {

namespace detail {
/// r = (1 + a) d/2.
constexpr Length gauge_radius(double oversize, Length rope_diameter) noexcept {
  return (1.0 + oversize) * rope_diameter / 2.0;
}
}  // namespace detail

/// Smallest radius of the groove of a new or remachined sheave.
///
///   r = 1.06 d/2
///
/// r  groove radius  length
/// d  rope_diameter  length, nominal
///
/// Source: API Spec 8A and 8C and API RP 9B, groove gauges: 6 % over nominal.
struct GrooveRadiusNewMin {
  static constexpr std::string_view name = "sheave.groove_radius_new_min";
  static constexpr std::tuple parameters{params::rope_diameter};
  static constexpr Length formula(Length rope_diameter) noexcept {
    return detail::gauge_radius(0.06, rope_diameter);
  }
};
inline constexpr Model<GrooveRadiusNewMin> groove_radius_new_min{};

/// Largest radius of the groove of a new or remachined sheave.
///
///   r = 1.10 d/2
///
/// Symbols and source as for GrooveRadiusNewMin: 10 % over nominal.
struct GrooveRadiusNewMax {
  static constexpr std::string_view name = "sheave.groove_radius_new_max";
  static constexpr std::tuple parameters{params::rope_diameter};
  static constexpr Length formula(Length rope_diameter) noexcept {
    return detail::gauge_radius(0.10, rope_diameter);
  }
};
inline constexpr Model<GrooveRadiusNewMax> groove_radius_new_max{};

/// Radius below which a worn groove is to be remachined or the sheave replaced.
///
///   r = 1.025 d/2
///
/// Symbols and source as for GrooveRadiusNewMin: 2.5 % over nominal.
struct GrooveRadiusWornMin {
  static constexpr std::string_view name = "sheave.groove_radius_worn_min";
  static constexpr std::tuple parameters{params::rope_diameter};
  static constexpr Length formula(Length rope_diameter) noexcept {
    return detail::gauge_radius(0.025, rope_diameter);
  }
};
inline constexpr Model<GrooveRadiusWornMin> groove_radius_worn_min{};

/// Smallest depth of the groove of a sheave for drilling and casing lines.
///
///   h = 1.33 d
///
/// h  groove depth   length
/// d  rope_diameter  length, nominal
///
/// For a groove with a bottom arc of 150 degrees. (Sand line sheaves are deeper: 1.75 d to 3 d.)
/// Source: API RP 9B, 13th ed. (2011), p. 19; Lyons (ed.), Standard Handbook of Petroleum and
/// Natural Gas Engineering, vol. 1 (1996), p. 601.
struct GrooveDepthMin {
  static constexpr std::string_view name = "sheave.groove_depth_min";
  static constexpr std::tuple parameters{params::rope_diameter};
  static constexpr Length formula(Length rope_diameter) noexcept { return 1.33 * rope_diameter; }
};
inline constexpr Model<GrooveDepthMin> groove_depth_min{};

/// Largest depth of the groove of a sheave for drilling and casing lines.
///
///   h = 1.75 d
///
/// Symbols, arc and source as for GrooveDepthMin.
struct GrooveDepthMax {
  static constexpr std::string_view name = "sheave.groove_depth_max";
  static constexpr std::tuple parameters{params::rope_diameter};
  static constexpr Length formula(Length rope_diameter) noexcept { return 1.75 * rope_diameter; }
};
inline constexpr Model<GrooveDepthMax> groove_depth_max{};

/// Minimum groove radius as older editions of the API tables print it for a rope size.
///
/// state  "new" (or remachined) or "worn"
///
/// The printed radii do not follow one factor of d/2 (see cpp/data/groove_radii.csv); they are kept
/// for work on sheaves that were machined to them. No size between two printed ones is made up:
/// throws LookupError with the nearest sizes.
/// Source: Lyons (ed.), Standard Handbook of Petroleum and Natural Gas Engineering, vol. 1 (1996),
/// Tables 4-31 (worn) and 4-32 (new).
[[nodiscard]] Sourced<Length> groove_radius_table(Length rope_diameter, std::string_view state);

}  // namespace ropewalk::sheave
