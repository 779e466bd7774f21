#include "ropewalk/reeving/tensions.hpp"

#include <numeric>

#include "ropewalk/base/require.hpp"

namespace ropewalk::reeving {

namespace {

constexpr std::string_view where = "reeving.Reeving.tensions";

/// Tension after a sheave over tension before it, on the way from the dead end to the drum.
double ratio_over(Number friction, Motion motion) noexcept {
  switch (motion) {
    case Motion::hoisting:
      return to_si(friction);
    case Motion::lowering:
      return 1.0 / to_si(friction);
    case Motion::at_rest:
      break;
  }
  return 1.0;
}

double efficiency_of(double sum, double drum_side, Motion motion) noexcept {
  switch (motion) {
    case Motion::hoisting:
      return sum / drum_side;
    case Motion::lowering:
      return drum_side / sum;
    case Motion::at_rest:
      break;
  }
  return 1.0;
}

}  // namespace

Motion motion_named(std::string_view name) {
  if (name == "static") return Motion::at_rest;
  if (name == "hoisting") return Motion::hoisting;
  if (name == "lowering") return Motion::lowering;
  throw InadmissibleError(
      where, "motion",
      "motion must be 'static', 'hoisting' or 'lowering', got '" + std::string(name) + "'");
}

RelativeTensions relative_tensions(const Arrangement& arrangement, Motion motion) {
  RelativeTensions relative;
  double tension = 1.0;
  for (const Number& friction : arrangement.sheave_friction()) {
    relative.lines.push_back(tension);
    tension *= ratio_over(friction, motion);
  }
  relative.fast_line_at_crown = tension;
  for (const Number& friction : arrangement.lead_sheave_friction()) {
    tension *= ratio_over(friction, motion);
  }
  relative.fast_line = tension;
  relative.dead_line = 1.0;
  if (const auto friction = arrangement.dead_line_sheave_friction()) {
    relative.dead_line /= ratio_over(*friction, motion);
  }
  relative.sum = std::accumulate(relative.lines.begin(), relative.lines.end(), 0.0);
  relative.crown_load = relative.sum + relative.fast_line_at_crown;
  if (has_dead_line(arrangement.lines())) relative.crown_load += relative.dead_line;
  relative.efficiency =
      efficiency_of(relative.sum, arrangement.lines() * relative.fast_line, motion);
  return relative;
}

Force pull_of_lines(Force hook_load, Acceleration block_acceleration) {
  require(where, params::hook_load, hook_load);
  require(where, argument::block_acceleration, block_acceleration);
  return hook_load * (1.0 + block_acceleration / standard_gravity);
}

Tensions tensions(const Arrangement& arrangement, Force hook_load, Motion motion,
                  Acceleration block_acceleration) {
  const RelativeTensions relative = relative_tensions(arrangement, motion);
  const Force pull = pull_of_lines(hook_load, block_acceleration);
  std::vector<Force> lines;
  for (const double line : relative.lines) lines.push_back(relative.under(pull, line));
  return {.lines = std::move(lines),
          .fast_line = relative.under(pull, relative.fast_line),
          .fast_line_at_crown = relative.under(pull, relative.fast_line_at_crown),
          .dead_line = relative.under(pull, relative.dead_line),
          .crown_load = relative.under(pull, relative.crown_load),
          .efficiency = from_si<Number>(relative.efficiency),
          .fast_line_factor = from_si<Number>(relative.fast_line / relative.sum)};
}

}  // namespace ropewalk::reeving
