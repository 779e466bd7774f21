/// A drill string as it hangs in mud: weights and hook load.
#pragma once

#include <vector>

#include "ropewalk/drillstring/weight.hpp"

namespace ropewalk::drillstring {

/// Length of one kind of pipe.
struct Section {
  Length length;
  MassPerLength mass_per_length;  ///< in air, tool joints included
};

/// Throws InadmissibleError in the name of Section if it cannot be.
void check(const Section& section);

/// What the string does while its load is read.
enum class Operation : std::uint8_t {
  hoisting,  ///< drag adds to the weight
  lowering,  ///< drag carries part of the weight
  rotating,  ///< off bottom; no drag along the pipe
};

/// A drill string, sections counted from the bit upwards; the last one is the drill pipe, all below
/// it is the bottom-hole assembly (BHA).
///
/// While it is tripped the BHA is in the hole first: at a depth less than its length the string
/// consists of the lowest sections, down to that depth.
class DrillString {
 public:
  /// Throws InadmissibleError: no section, a section that cannot be, mud heavier than steel.
  DrillString(std::vector<Section> sections, Density mud_density, Density steel_density);

  [[nodiscard]] Length length() const noexcept { return length_; }
  [[nodiscard]] Mass mass() const noexcept { return mass_; }
  [[nodiscard]] Number buoyancy_factor() const noexcept { return buoyancy_factor_; }
  [[nodiscard]] Force weight_in_air() const noexcept { return mass_ * standard_gravity; }

  /// Weight in mud of the lowest `depth` of the string. Throws InadmissibleError if the string is
  /// not that long.
  [[nodiscard]] Force weight_in_mud(Length depth) const;

  /// W_m: weight of the drill pipe in mud.
  [[nodiscard]] ForcePerLength pipe_weight() const noexcept;

  [[nodiscard]] Length bha_length() const noexcept;

  /// C: weight of the BHA in mud less that of the same length of drill pipe, as in API RP 9B.
  /// Negative if the BHA is lighter than the pipe.
  [[nodiscard]] Force bha_excess_weight() const noexcept;

  /// Everything hung on the lines: string in mud, drag, and block assembly.
  ///
  ///   hoisting W(depth) + drag_up + M,  lowering W(depth) − drag_down + M,  rotating W(depth) + M
  ///
  /// block_weight M takes in the traveling block, hook or top drive, and elevators.
  /// Source for counting M in: Shell Well Engineers Notebook, ed. 2 (2001), p. B-1.
  /// Throws InadmissibleError if drag_down is more than the string weighs: it would not go down.
  [[nodiscard]] Force hook_load(Operation operation, Length depth, Force drag_up, Force drag_down,
                                Force block_weight) const;

 private:
  std::vector<Section> sections_;
  Number buoyancy_factor_;
  Length length_;
  Mass mass_;
};

}  // namespace ropewalk::drillstring
