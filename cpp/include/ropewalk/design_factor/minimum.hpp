/// Least design factors that standards and regulations ask for.
#pragma once

#include <string_view>
#include <vector>

#include "ropewalk/base/source.hpp"
#include "ropewalk/units/quantities.hpp"

namespace ropewalk::design_factor {

/// One row of cpp/data/design_factor_minimums.csv.
struct Minimum {
  std::string_view operation;
  std::string_view standard;
  std::string_view edition;
  Number value;
  std::string_view basis;  ///< the tension the factor is taken on
  Provenance provenance;
};

/// Every minimum there is, by standard.
[[nodiscard]] std::vector<Minimum> minimums();

/// The minimum that `standard` asks for in `operation`, both by name. Local rules, the rope maker
/// and a newer edition of the standard may ask for more; they come first.
/// Throws LookupError offering the standards, or the operations of the standard.
[[nodiscard]] Minimum minimum(std::string_view operation, std::string_view standard = "API RP 9B");

}  // namespace ropewalk::design_factor
