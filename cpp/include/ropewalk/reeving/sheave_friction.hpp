/// Tabulated friction of turning sheaves, by kind of bearing.
#pragma once

#include "ropewalk/base/source.hpp"
#include "ropewalk/units/quantities.hpp"

namespace ropewalk::reeving {

/// Tension ratio K of one turning sheave by its bearing, "roller" or "plain", as API RP 9B and the
/// Wire Rope Users Manual take it: 1.04 and 1.09. Well-kept sheaves turn more easily.
/// Throws LookupError offering the bearings there are. Table: cpp/data/sheave_frictions.csv.
[[nodiscard]] Sourced<Number> sheave_friction(std::string_view bearing);

}  // namespace ropewalk::reeving
