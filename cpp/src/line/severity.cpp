#include "ropewalk/line/severity.hpp"

#include <cmath>
#include <string>

namespace ropewalk::line {

namespace {

constexpr std::string_view where = "line.Severity";
/// Any load will do where only ratios of lives are asked for; this one is of a size that occurs.
constexpr double ratio_load = 1e6;

using fatigue::BendArgument;
using fatigue::BendPoint;

BendPoint point_at(const RopeProperties& rope, const Contact& contact) {
  BendPoint point;
  point.rope_diameter = rope.diameter;
  point.sheave_diameter = contact.diameter;
  point.wire_strength = rope.wire_strength;
  point.breaking_force = rope.breaking_force;
  point.bend_length = rope.bend_length;
  point.life_factor = rope.life_factor;
  return point;
}

/// Lives under many tensions at one place.
fatigue::BendColumns columns_of(const std::array<double, fatigue::bend_arguments>& x,
                                const std::vector<double>& tensions) {
  fatigue::BendColumns columns;
  for (std::size_t a = 0; a < x.size(); ++a) columns[a] = {&x[a], true};
  columns[static_cast<std::size_t>(BendArgument::rope_tension)] = {tensions.data(), false};
  return columns;
}

std::array<double, fatigue::bend_arguments> numbers_of(const BendPoint& point) {
  return {to_si(point.rope_tension),  to_si(point.rope_diameter),  to_si(point.sheave_diameter),
          to_si(point.wire_strength), to_si(point.breaking_force), to_si(point.bend_length),
          to_si(point.life_factor)};
}

constexpr RowStatus no_life = RowStatus::inadmissible | RowStatus::not_finite;

[[noreturn]] void throw_no_life(std::size_t row, double hook_load) {
  throw InadmissibleError(where, "hook_load",
                          "row " + std::to_string(row) + ": hook_load = " +
                              std::to_string(hook_load) + " N leaves the rope no finite life");
}

}  // namespace

Severity::Severity(const fatigue::LifeModel& model, const RopeProperties& rope,
                   const Tackle& tackle)
    : model_(model), rope_(rope) {
  for (const Contact& contact : tackle.contacts()) contacts_.push_back(share_of(contact));
  dead_line_sheave_ = share_of(tackle.dead_line_sheave());
}

Severity Severity::bending_cycles(const Tackle& tackle) {
  Severity cycles;
  cycles.references_.resize(1);
  cycles.contacts_.resize(tackle.contacts().size());
  return cycles;
}

fatigue::BendPoint Severity::point_of(const Contact& contact) const {
  return point_at(rope_, contact);
}

double Severity::life(BendPoint point, double tension) const {
  point.rope_tension = tension * newton;
  return fatigue::cycles(*model_, point, Policy::ignore).cycles;
}

Severity::Share Severity::share_of(const Contact& contact) {
  const BendPoint point = point_of(contact);
  const double exponent = fatigue::tension_exponent(*model_, point).value_or(0.0);
  std::size_t group = 0;
  while (group < references_.size() && references_[group].exponent != exponent) ++group;
  if (group == references_.size()) references_.push_back({point, contact.tension_up, exponent});
  const Reference& reference = references_[group];
  const double known = life(reference.point, ratio_load * reference.tension);
  return {.group = group,
          .up = contact.bends * known / life(point, ratio_load * contact.tension_up),
          .down = contact.bends * known / life(point, ratio_load * contact.tension_down)};
}

std::vector<double> Severity::of(std::size_t group, const LoadColumns& loads) const {
  const std::size_t rows = loads.hook_load.size();
  std::vector<double> severity(rows);
  if (!model_) {
    for (std::size_t i = 0; i < rows; ++i) severity[i] = 0.5 * loads.count[i];
    return severity;
  }
  const Reference& reference = references_[group];
  std::vector<double> tensions(rows);
  for (std::size_t i = 0; i < rows; ++i) tensions[i] = loads.hook_load[i] * reference.tension;
  const auto numbers = numbers_of(reference.point);
  std::vector<RowStatus> status(rows);
  const BatchReport report =
      fatigue::cycles(*model_, columns_of(numbers, tensions), rows, severity.data(), status.data());
  if (has(report.all, no_life)) {
    std::size_t row = 0;
    while (!has(status[row], no_life)) ++row;
    throw_no_life(row, loads.hook_load[row]);
  }
  for (std::size_t i = 0; i < rows; ++i) severity[i] = 0.5 * loads.count[i] / severity[i];
  return severity;
}

double share_outside_validity(const fatigue::LifeModel& model, const RopeProperties& rope,
                              const Tackle& tackle, const LoadColumns& loads,
                              std::span<const double> height_from,
                              std::span<const double> height_to) {
  const std::size_t rows = loads.hook_load.size();
  std::vector<double> tensions(rows);
  std::vector<double> lives(rows);
  std::vector<RowStatus> status(rows);
  double all = 0.0;
  double outside = 0.0;
  for (const Contact& contact : tackle.contacts()) {
    if (contact.layer > 1) continue;  // rope comes to lie in one layer only
    // Half cycles a pass: rope bends and straightens on a sheave; on the drum it stays bent.
    const double halves = contact.layer == 0 ? 2.0 : 1.0;
    const auto numbers = numbers_of(point_at(rope, contact));
    for (std::size_t i = 0; i < rows; ++i) {
      const bool up = height_to[i] > height_from[i];
      tensions[i] = loads.hook_load[i] * (up ? contact.tension_up : contact.tension_down);
    }
    (void)fatigue::cycles(model, columns_of(numbers, tensions), rows, lives.data(), status.data());
    for (std::size_t i = 0; i < rows; ++i) {
      if (has(status[i], no_life)) throw_no_life(i, loads.hook_load[i]);
      const double swept = contact.multiple * std::abs(height_to[i] - height_from[i]);
      const double damage = halves * contact.bends * loads.count[i] * swept / lives[i];
      all += damage;
      if (has(status[i], RowStatus::outside_validity)) outside += damage;
    }
  }
  return all > 0.0 ? outside / all : 0.0;
}

}  // namespace ropewalk::line
