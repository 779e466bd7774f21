/// Looking up rows by name and size: what counts as the same, and what to offer if there is none.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "ropewalk/units/quantities.hpp"

namespace ropewalk {

/// True if both are one name: capitals, runs of spaces and spaces at the ends do not count, and the
/// multiplication sign of "6×19" is the letter of "6x19".
[[nodiscard]] bool same_name(std::string_view a, std::string_view b);

/// True if `name` is one of the names of a cell like "EIP;XIPS;XIP".
[[nodiscard]] bool among_names(std::string_view name, std::string_view cell);

/// Adds `name` to `names` unless it stands there already.
void add_name(std::vector<std::string>& names, std::string_view name);

/// "cast iron, cast steel".
[[nodiscard]] std::string joined(const std::vector<std::string>& names);

/// True if both are the same nominal size, within one part in a million: 1.375 in and 34.925 mm
/// are, 35 mm is another size.
[[nodiscard]] bool same_size(Length a, Length b) noexcept;

/// The tabulated sizes next to a size that is none of them, for messages:
/// "nearest sizes 1.25 in and 1.375 in".
[[nodiscard]] std::string nearest_sizes(Length size, std::span<const Length> tabulated);

/// A size as the trade writes it, to the thousandth of a millimeter: "1.375 in (34.925 mm)".
[[nodiscard]] std::string size_text(Length size);

}  // namespace ropewalk
