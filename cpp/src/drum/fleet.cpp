#include "ropewalk/drum/fleet.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/require.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::drum {

Length axial_position(const Drum& drum, Length from_drum_end, Length traverse) {
  require("drum.axial_position", argument::traverse, traverse);
  const Drum::Place place = drum.place(from_drum_end);
  const Length along = place.lap / to_si(drum.laps_per_layer()) * traverse;
  return place.layer % 2 == 1 ? along : traverse - along;
}

Angle fleet_angle_at(const Drum& drum, Length from_drum_end, const Lead& lead) {
  constexpr std::string_view where = "drum.fleet_angle_at";
  require(where, argument::traverse, lead.traverse);
  require(where, argument::lead_offset.named("sheave_position"), lead.sheave_position);
  require(where, argument::lead_distance.named("distance"), lead.distance);
  return FleetAngle::formula(
      axial_position(drum, from_drum_end, lead.traverse) - lead.sheave_position, lead.distance);
}

std::vector<FleetAngleLimits> fleet_angle_limits() {
  const Table& printed = table("fleet_angles");
  std::vector<FleetAngleLimits> rows;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    const double least = printed.number(row, "fleet_angle_min [deg]");
    rows.push_back({.standard = printed.text(row, "standard"),
                    .groove = printed.text(row, "groove"),
                    .minimum = (std::isnan(least) ? 0.0 : least) * degree,
                    .maximum = printed.number(row, "fleet_angle_max [deg]") * degree,
                    .provenance = {printed.text(row, "source"), printed.text(row, "standing")}});
  }
  return rows;
}

FleetAngleLimits fleet_angle_limits(std::string_view groove, std::string_view standard) {
  constexpr std::string_view where = "drum.fleet_angle_limits";
  std::vector<std::string> standards;
  std::vector<std::string> grooves;
  for (const FleetAngleLimits& row : fleet_angle_limits()) {
    add_name(standards, row.standard);
    if (!same_name(row.standard, standard)) continue;
    if (same_name(row.groove, groove)) return row;
    add_name(grooves, row.groove);
  }
  if (grooves.empty()) {
    throw LookupError(where, "standard",
                      "there are no fleet angles of '" + std::string(standard) +
                          "'; there are those of: " + joined(standards));
  }
  throw LookupError(where, "groove",
                    "'" + std::string(standard) + "' has no fleet angles for a drum of groove '" +
                        std::string(groove) + "'; it has: " + joined(grooves));
}

}  // namespace ropewalk::drum
