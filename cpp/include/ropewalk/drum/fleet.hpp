/// Fleet angle: how far from square the line runs onto the drum.
#pragma once

#include <cmath>
#include <string_view>
#include <vector>

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/drum/drum.hpp"
#include "ropewalk/drum/parameters.hpp"

namespace ropewalk::drum {

/// Fleet angle of a line between lead sheave and drum.
///
///   φ = atan(a / b)
///
/// φ  fleet angle    angle, of the sign of a
/// a  lead_offset    length, along the drum, from the plane of the lead sheave to the lap
/// b  lead_distance  length, from the lead sheave to the drum, square to its axis
///
/// Source: geometry; Wire Rope Technical Board, Wire Rope Users Manual, definition of the fleet
/// angle.
struct FleetAngle {
  static constexpr std::string_view name = "drum.fleet_angle";
  static constexpr std::tuple parameters{argument::lead_offset, argument::lead_distance};

  static Angle formula(Length lead_offset, Length lead_distance) noexcept {
    return from_si<Angle>(std::atan(to_si(Number(lead_offset / lead_distance))));
  }
};
inline constexpr Model<FleetAngle> fleet_angle{};

/// Distance from drum to lead sheave at which a lap is seen under a fleet angle.
///
///   b = a / tan φ
///
/// Symbols and source as for FleetAngle, turned round; a not negative.
struct FleetDistance {
  static constexpr std::string_view name = "drum.fleet_distance";
  static constexpr std::tuple parameters{
      Parameter<Length>{"lead_offset", between(0.0 * meter, 20.0 * meter, params::guard)},
      Parameter<Angle>{"fleet_angle", above_up_to(0.0 * degree, 45.0 * degree, params::guard)}};

  static Length formula(Length lead_offset, Angle angle) noexcept {
    return lead_offset / std::tan(in_radians(angle));
  }
};
inline constexpr Model<FleetDistance> fleet_distance{};

/// Where the lead sheave stands.
struct Lead {
  Length traverse;         ///< inside width of the drum from flange to flange
  Length sheave_position;  ///< of its plane, from the flange of the drum end along the drum
  Length distance;         ///< from the drum, square to its axis
};

/// Distance along the drum, from the flange of the drum end, of a point of the rope. The first
/// layer fills the traverse from flange to flange, the next the other way, and so on; that the rope
/// center keeps half a rope off the flanges is neglected, which makes the largest angle larger.
/// Throws InadmissibleError as Drum::place, or for a traverse that cannot be.
[[nodiscard]] Length axial_position(const Drum& drum, Length from_drum_end, Length traverse);

/// Fleet angle of the line that leaves the drum at a point of the rope; positive away from the
/// flange of the drum end. Throws InadmissibleError as axial_position, or for a lead that cannot
/// be.
[[nodiscard]] Angle fleet_angle_at(const Drum& drum, Length from_drum_end, const Lead& lead);

/// One row of cpp/data/fleet_angles.csv: between which angles a rope winds well.
struct FleetAngleLimits {
  std::string_view standard;
  std::string_view groove;  ///< "smooth", "grooved", "parallel"
  Angle minimum;  ///< at the flange: less, and the rope piles up there; 0 if none is given
  Angle maximum;
  Provenance provenance;
};

/// Every pair of limits there is, by standard.
[[nodiscard]] std::vector<FleetAngleLimits> fleet_angle_limits();

/// The limits a standard gives for a kind of drum, both by name. Throws LookupError offering what
/// there is.
[[nodiscard]] FleetAngleLimits fleet_angle_limits(
    std::string_view groove, std::string_view standard = "Wire Rope Users Manual");

}  // namespace ropewalk::drum
