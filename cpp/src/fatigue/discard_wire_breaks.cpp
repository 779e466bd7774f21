#include "ropewalk/fatigue/discard_wire_breaks.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::fatigue {

const std::vector<DiscardConstants>& discard_constructions() {
  static const std::vector<DiscardConstants> all = [] {
    const Table& rows = table("discard_wire_breaks");
    std::vector<DiscardConstants> read;
    for (std::size_t row = 0; row < rows.rows(); ++row) {
      read.push_back({.construction = std::string(rows.text(row, "construction")),
                      .g0 = rows.number(row, "g0"),
                      .g1 = rows.number(row, "g1 [mm4/N2]"),
                      .g2 = rows.number(row, "g2"),
                      .g3 = rows.number(row, "g3 [mm4/N2]"),
                      .source = citation(rows.text(row, "source")),
                      .standing = std::string(rows.text(row, "standing"))});
    }
    return read;
  }();
  return all;
}

const DiscardConstants& discard_constants(std::string_view construction) {
  std::vector<std::string> known;
  for (const DiscardConstants& row : discard_constructions()) {
    if (same_name(row.construction, construction)) return row;
    add_name(known, row.construction);
  }
  throw LookupError(
      "fatigue.discard_constants", "construction",
      "no construction '" + std::string(construction) + "'; there are " + joined(known));
}

}  // namespace ropewalk::fatigue
