/// Where a tabulated value comes from.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ropewalk {

/// The source of one value: its key in the table of sources, and how the value stands.
struct Provenance {
  std::string_view source;
  std::string_view standing;  ///< "published", "from memory" or "derived"
};

/// A tabulated value together with where it comes from.
template <class Q>
struct Sourced {
  Q value;
  Provenance provenance;
};

/// A source by its key, as people cite it: "API Spec 9A; Specification for Wire Rope, 26th ed.
/// (2011), annex C; Table C.1; class 6x7 fiber core". Throws LookupError if there is none.
[[nodiscard]] std::string citation(std::string_view key);

/// Keys of all sources, in the order of the table.
[[nodiscard]] std::vector<std::string> source_keys();

}  // namespace ropewalk
