#include "ropewalk/reeving/arrangement.hpp"

#include "ropewalk/base/require.hpp"

namespace ropewalk::reeving {

namespace {

constexpr std::string_view where = "reeving.Reeving";

[[noreturn]] void refuse(std::string_view field, const std::string& reason) {
  throw InadmissibleError(where, field, std::string(field) + " " + reason);
}

/// The friction of each of `sheaves` sheaves, from one value for all or one for each.
std::vector<Number> one_for_each(std::string_view field, const std::vector<Number>& frictions,
                                 int sheaves) {
  const auto count = static_cast<std::size_t>(sheaves);
  const Interval& range = params::sheave_friction.admissible;
  for (std::size_t i = 0; i < frictions.size(); ++i) {
    if (range.contains(to_si(frictions[i]))) continue;
    std::string which(field);
    if (frictions.size() != 1) which += " of sheave " + std::to_string(i + 1);
    throw InadmissibleError(
        where, field, ropewalk::detail::describe_outside(which, to_si(frictions[i]), "", range));
  }
  if (frictions.size() == 1) return std::vector<Number>(count, frictions.front());
  if (frictions.size() == count) return frictions;
  refuse(field, "has " + std::to_string(frictions.size()) + " values for " +
                    std::to_string(sheaves) + " sheaves; give one for all, or one for each");
}

/// The friction of a sheave outside the blocks that the user has left open.
Number friction_of_blocks(std::string_view field, const std::vector<Number>& sheave_friction) {
  if (sheave_friction.size() == 1) return sheave_friction.front();
  refuse(field, "must be given where sheave_friction has one value for each sheave");
}

std::vector<Number> lead_frictions(const Stringing& stringing) {
  constexpr std::string_view field = "lead_sheave_friction";
  if (!stringing.lead_sheave_friction.empty()) {
    if (stringing.lead_sheaves == 0) refuse(field, "is given, but there are no lead_sheaves");
    return one_for_each(field, stringing.lead_sheave_friction, stringing.lead_sheaves);
  }
  if (stringing.lead_sheaves == 0) return {};
  return one_for_each(field, {friction_of_blocks(field, stringing.sheave_friction)},
                      stringing.lead_sheaves);
}

std::optional<Number> dead_line_friction(const Stringing& stringing) {
  constexpr std::string_view field = "dead_line_sheave_friction";
  if (!stringing.dead_line_sheave_turns) {
    if (stringing.dead_line_sheave_friction) {
      refuse(field, "is given, but dead_line_sheave_turns is not set");
    }
    return {};
  }
  if (!has_dead_line(stringing.lines)) {
    refuse("dead_line_sheave_turns", "is set for " + std::to_string(stringing.lines) +
                                         " lines, but an odd number has its dead end on the "
                                         "traveling block and no dead-line sheave");
  }
  const Number friction = stringing.dead_line_sheave_friction
                              ? *stringing.dead_line_sheave_friction
                              : friction_of_blocks(field, stringing.sheave_friction);
  return one_for_each(field, {friction}, 1).front();
}

}  // namespace

Arrangement::Arrangement(const Stringing& stringing) {
  require(where, params::lines, from_si<Number>(stringing.lines));
  require(where, params::lead_sheaves, from_si<Number>(stringing.lead_sheaves));
  sheave_friction_ = one_for_each("sheave_friction", stringing.sheave_friction, stringing.lines);
  lead_sheave_friction_ = lead_frictions(stringing);
  dead_line_sheave_friction_ = dead_line_friction(stringing);
}

}  // namespace ropewalk::reeving
