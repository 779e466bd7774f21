/// Sizes of drawworks by depth of well.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "ropewalk/base/source.hpp"
#include "ropewalk/units/quantities.hpp"

namespace ropewalk::drawworks {

/// One row of cpp/data/drawworks_sizes.csv.
struct RigSize {
  std::string_view standard;
  std::string_view name;           ///< of the class
  Length depth;                    ///< deepest well of the class
  std::optional<Force> hook_load;  ///< largest static hook load
  Power power_from;                ///< input power of the drawworks
  Power power_to;
  std::optional<Length> rope_diameter;
  Provenance provenance;
};

/// Every size there is, by standard and depth.
[[nodiscard]] std::vector<RigSize> rig_sizes();

/// The smallest size of a standard, by name, whose depth reaches a well. Throws LookupError
/// offering the standards, or if the well is deeper than all its classes.
[[nodiscard]] RigSize size_for_depth(Length depth, std::string_view standard);

}  // namespace ropewalk::drawworks
