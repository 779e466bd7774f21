#include "ropewalk/units/text.hpp"

#include <charconv>

namespace ropewalk {

std::string number_text(double value) {
  std::array<char, 32> buffer{};
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
  return {buffer.data(), end};
}

std::string quantity_text(double value, std::string_view unit) {
  std::string text = number_text(value);
  if (!unit.empty()) {
    text += ' ';
    text += unit;
  }
  return text;
}

}  // namespace ropewalk
