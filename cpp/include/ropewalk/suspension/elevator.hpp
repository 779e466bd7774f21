/// Which elevator carries which tubular, and the bores of those for tapered drill pipe.
#pragma once

#include <string_view>
#include <vector>

#include "ropewalk/base/source.hpp"
#include "ropewalk/units/quantities.hpp"

namespace ropewalk::suspension {

/// One row of cpp/data/elevator_types.csv, in general words of the trade.
struct ElevatorType {
  std::string_view kind;
  std::string_view tubular;  ///< what it carries; several are separated by semicolons
  std::string_view holds_by;
  bool carries_string;  ///< false: one joint or stand only, never a string
  Provenance provenance;
};

/// Every type there is.
[[nodiscard]] std::vector<ElevatorType> elevator_types();

/// The types for a tubular, the first the usual one. Its capacity is on its nameplate. Throws
/// LookupError offering the tubulars there are.
[[nodiscard]] std::vector<ElevatorType> elevators_for(std::string_view tubular);

/// One row of cpp/data/elevator_bores.csv: neck of the tool joint, bore of the tapered elevator.
struct ElevatorBore {
  std::string_view drill_pipe;
  Length neck;
  Length bore;
  Provenance provenance;
};

/// Every bore there is.
[[nodiscard]] std::vector<ElevatorBore> elevator_bores();

/// The bore for a drill pipe, by size and upset: "5 IEU". Throws LookupError offering what there
/// is.
[[nodiscard]] ElevatorBore elevator_bore(std::string_view drill_pipe);

/// Class of ratings a part belongs to by the table of contact surfaces, "151-250" short tons: parts
/// that touch must be of one class to fit. Throws LookupError below 25 and above 1000 short tons.
/// Source: cpp/data/rating_classes.csv.
[[nodiscard]] std::string_view rating_class(Force load_rating);

}  // namespace ropewalk::suspension
