#include "ropewalk/base/source.hpp"

#include "ropewalk/base/table.hpp"

namespace ropewalk {

std::string citation(std::string_view key) {
  const Table& sources = table("sources");
  for (std::size_t row = 0; row < sources.rows(); ++row) {
    if (sources.text(row, "key") != key) continue;
    std::string text(sources.text(row, "citation"));
    for (const std::string_view column : {"edition", "place"}) {
      const std::string_view part = sources.text(row, column);
      if (!part.empty()) text.append(", ").append(part);
    }
    return text;
  }
  throw LookupError("base.citation", "key",
                    "there is no source with the key '" + std::string(key) + "'");
}

std::vector<std::string> source_keys() {
  const Table& sources = table("sources");
  std::vector<std::string> keys;
  for (std::size_t row = 0; row < sources.rows(); ++row) {
    keys.emplace_back(sources.text(row, "key"));
  }
  return keys;
}

}  // namespace ropewalk
