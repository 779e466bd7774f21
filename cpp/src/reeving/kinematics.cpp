#include "ropewalk/reeving/kinematics.hpp"

#include "ropewalk/base/require.hpp"
#include "ropewalk/units/angle.hpp"

namespace ropewalk::reeving {

namespace {

/// What a move of the block makes of every turning sheave: m times as much.
template <class Q>
std::vector<Q> multiples(std::string_view where, int lines, const Parameter<Q>& parameter,
                         Q of_block) {
  require(where, params::lines, from_si<Number>(lines));
  require(where, parameter, of_block);
  std::vector<Q> at_sheave;
  for (int sheave = 1; sheave <= lines; ++sheave) {
    at_sheave.push_back(static_cast<double>(sheave) * of_block);
  }
  return at_sheave;
}

}  // namespace

std::vector<Speed> line_speeds(int lines, Speed block_speed) {
  return multiples("reeving.Reeving.line_speeds", lines, argument::block_speed, block_speed);
}

std::vector<Length> line_travel(int lines, Length block_travel) {
  return multiples("reeving.Reeving.line_travel", lines, argument::block_travel, block_travel);
}

std::vector<AngularVelocity> sheave_rotations(int lines, Speed block_speed,
                                              std::span<const Length> sheave_diameters) {
  constexpr std::string_view where = "reeving.Reeving.sheave_rotations";
  const std::vector<Speed> speeds = multiples(where, lines, argument::block_speed, block_speed);
  if (sheave_diameters.size() != 1 && sheave_diameters.size() != speeds.size()) {
    throw InadmissibleError(where, "sheave_diameter",
                            "sheave_diameter has " + std::to_string(sheave_diameters.size()) +
                                " values; give one for all sheaves, or one for each of the " +
                                std::to_string(lines));
  }
  std::vector<AngularVelocity> rotations;
  for (std::size_t i = 0; i < speeds.size(); ++i) {
    const Length diameter = sheave_diameters[sheave_diameters.size() == 1 ? 0 : i];
    require(where, params::sheave_diameter, diameter);
    rotations.push_back(rotation_of_rim(speeds[i], diameter / 2.0));
  }
  return rotations;
}

}  // namespace ropewalk::reeving
