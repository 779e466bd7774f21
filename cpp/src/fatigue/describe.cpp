/// Life models in words: what they are, what they need, where they hold.
#include <algorithm>

#include "ropewalk/base/source.hpp"
#include "ropewalk/base/table.hpp"
#include "ropewalk/fatigue/model.hpp"

namespace ropewalk::fatigue {

namespace {

void add_uses(std::vector<BendArgument>& needs, BendGroup group) {
  with_group(group, [&]<BendGroup g>() {
    for (const BendArgument argument : GroupFormula<g>::uses) {
      if (std::ranges::find(needs, argument) == needs.end()) needs.push_back(argument);
    }
  });
}

/// The arguments of the equation and those of its validity ranges, in the order of BendArgument.
template <class M>
std::vector<BendArgument> needs_of(const M& model) {
  std::vector<BendArgument> needs;
  for (const BendGroup group : M::groups) add_uses(needs, group);
  for (const ValidityRange& range : model.validity) add_uses(needs, range.group);
  std::ranges::sort(needs);
  return needs;
}

std::array<double, bend_arguments> si_values(const BendPoint& p) {
  return {to_si(p.rope_tension),  to_si(p.rope_diameter),  to_si(p.sheave_diameter),
          to_si(p.wire_strength), to_si(p.breaking_force), to_si(p.bend_length),
          to_si(p.life_factor)};
}

}  // namespace

ModelDescription describe(const LifeModel& model) {
  return std::visit(
      [](const auto& m) {
        const std::string_view name = m.name;
        const Table& models = table("fatigue_models");
        std::size_t row = 0;
        while (models.text(row, "model") != name) ++row;  // past the last row: LookupError
        return ModelDescription{.name = std::string(name),
                                .title = std::string(models.text(row, "title")),
                                .equation = std::string(models.text(row, "equation")),
                                .scale = std::string(models.text(row, "scale")),
                                .source = citation(models.text(row, "source")),
                                .standing = std::string(models.text(row, "standing")),
                                .basis = m.basis,
                                .scatter = m.scatter,
                                .scatter_standing = m.scatter ? "given" : "none published",
                                .needs = needs_of(m),
                                .validity = m.validity};
      },
      model);
}

Applicability applicability(const LifeModel& model, const BendPoint& point) {
  return std::visit(
      [&](const auto& m) {
        Applicability result{.model = std::string(m.name), .missing = {}, .broken = {}};
        const auto values = si_values(point);
        for (const BendArgument argument : needs_of(m)) {
          if (!info(argument).admissible.contains(values[static_cast<std::size_t>(argument)])) {
            result.missing.push_back(argument);
          }
        }
        for (const ValidityRange& range : m.validity) {
          std::vector<BendArgument> uses;
          add_uses(uses, range.group);
          const bool given = std::ranges::none_of(uses, [&](BendArgument argument) {
            return std::ranges::find(result.missing, argument) != result.missing.end();
          });
          const double value = value_of(range.group, point);
          if (given && !range.checked().contains(value)) result.broken.push_back({range, value});
        }
        return result;
      },
      model);
}

std::vector<Applicability> models_at(const BendPoint& point, std::span<const LifeModel> models) {
  std::vector<Applicability> all;
  all.reserve(models.size());
  for (const LifeModel& model : models) all.push_back(applicability(model, point));
  return all;
}

std::optional<double> tension_exponent(const LifeModel& model, const BendPoint& point) {
  return std::visit([&](const auto& m) { return m.tension_exponent(point); }, model);
}

}  // namespace ropewalk::fatigue
