#include "ropewalk/base/names.hpp"

#include <algorithm>
#include <cmath>

#include "ropewalk/units/customary.hpp"
#include "ropewalk/units/text.hpp"

namespace ropewalk {

namespace {

/// Lower case, single spaces, × as x.
std::string folded(std::string_view name) {
  constexpr std::string_view times = "\u00d7";
  std::string text;
  for (std::size_t i = 0; i < name.size(); ++i) {
    if (name.substr(i).starts_with(times)) {
      text += 'x';
      i += times.size() - 1;
      continue;
    }
    const char c = name[i];
    if (c == ' ' || c == '\t') {
      if (!text.empty() && text.back() != ' ') text += ' ';
    } else {
      text += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
  }
  if (!text.empty() && text.back() == ' ') text.pop_back();
  return text;
}

std::string rounded_text(double value, double step) {
  return number_text(std::round(value / step) / std::round(1.0 / step));
}

}  // namespace

bool same_name(std::string_view a, std::string_view b) { return folded(a) == folded(b); }

bool among_names(std::string_view name, std::string_view cell) {
  while (!cell.empty()) {
    const auto end = cell.find(';');
    if (same_name(name, cell.substr(0, end))) return true;
    cell = end == std::string_view::npos ? std::string_view{} : cell.substr(end + 1);
  }
  return false;
}

void add_name(std::vector<std::string>& names, std::string_view name) {
  if (std::find(names.begin(), names.end(), name) == names.end()) names.emplace_back(name);
}

std::string joined(const std::vector<std::string>& names) {
  std::string text;
  for (const auto& name : names) {
    if (!text.empty()) text += ", ";
    text += name;
  }
  return text;
}

bool same_size(Length a, Length b) noexcept {
  constexpr double one_in_a_million = 1e-6;
  return std::abs(to_si(a - b)) <= one_in_a_million * std::abs(to_si(b));
}

std::string nearest_sizes(Length size, std::span<const Length> tabulated) {
  const Length* below = nullptr;
  const Length* above = nullptr;
  for (const Length& one : tabulated) {
    if (one < size && (below == nullptr || *below < one)) below = &one;
    if (one > size && (above == nullptr || *above > one)) above = &one;
  }
  if (below != nullptr && above != nullptr) {
    return "nearest sizes " + size_text(*below) + " and " + size_text(*above);
  }
  if (below != nullptr) return "largest size " + size_text(*below);
  if (above != nullptr) return "smallest size " + size_text(*above);
  return "no sizes";
}

std::string size_text(Length size) {
  return rounded_text(size / inch, 1e-6) + " in (" + rounded_text(size / millimeter, 1e-3) + " mm)";
}

}  // namespace ropewalk
