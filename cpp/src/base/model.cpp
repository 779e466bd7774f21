#include "ropewalk/base/model.hpp"

namespace ropewalk::detail {

namespace {

std::string interval_text(const Interval& range, std::string_view unit) {
  std::string text;
  if (range.unbounded()) {
    text.append("the finite numbers");
  } else {
    text.append(range.low_open ? "(" : "[").append(number_text(range.low)).append(", ");
    text.append(number_text(range.high)).append("]");
    if (!unit.empty()) text.append(" ").append(unit);
    if (range.whole) text.append(", whole numbers only");
  }
  if (!range.source.empty()) text.append(" (").append(range.source).append(")");
  return text;
}

}  // namespace

std::string describe_outside(std::string_view field, double value, std::string_view unit,
                             const Interval& range) {
  std::string text(field);
  text.append(" = ").append(quantity_text(value, unit)).append(" is outside ");
  return text.append(interval_text(range, unit));
}

void throw_inadmissible(std::string_view where, std::string_view field, double value,
                        std::string_view unit, const Interval& range) {
  throw InadmissibleError(where, field, describe_outside(field, value, unit, range));
}

void throw_outside_validity(std::string_view where, std::string_view field, double value,
                            std::string_view unit, const Interval& range) {
  throw ValidityError(where, field,
                      describe_outside(field, value, unit, range) +
                          ", the range for which this model is published");
}

void throw_joint(std::string_view where, std::string_view rule) {
  throw InadmissibleError(where, "", rule);
}

void throw_not_finite(std::string_view where) {
  throw InadmissibleError(where, "", "the result is too large for a number");
}

}  // namespace ropewalk::detail
