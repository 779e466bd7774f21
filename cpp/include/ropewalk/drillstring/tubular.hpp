/// Published masses of drill pipe, heavy-weight drill pipe, drill collars and casing.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "ropewalk/units/quantities.hpp"

namespace ropewalk::drillstring {

/// One row of the table of tubulars.
struct Tubular {
  std::string designation;  ///< "DP 5 in 19.50 E75 NC50", "DC 8 x 2 13/16 in" …
  std::string kind;         ///< drill pipe, heavy-weight drill pipe, drill collar, casing
  Length outer_diameter;
  std::optional<Length> inner_diameter;         ///< where the table is entered with it
  std::optional<MassPerLength> nominal_weight;  ///< the number in the name of the pipe
  std::string grade;
  std::string connection;
  MassPerLength mass_per_length;  ///< in air, tool joints or couplings included
  std::string source;             ///< key into sources.csv
  std::string standing;           ///< published, from memory, derived
};

/// The whole table, in its order.
[[nodiscard]] const std::vector<Tubular>& tubulars();

/// One row by its designation, where capitals and extra spaces do not count. Throws LookupError;
/// the message offers the designations that begin alike.
[[nodiscard]] const Tubular& tubular(std::string_view designation);

}  // namespace ropewalk::drillstring
