#include "ropewalk/fatigue/life_basis.hpp"

#include "ropewalk/base/source.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::fatigue {

namespace {

constexpr std::array<std::string_view, 4> basis_texts{"discard", "breakage", "design",
                                                      "as reference"};

constexpr std::size_t groups = static_cast<std::size_t>(BendGroup::length_effect) + 1;

BendGroup group_named(std::string_view name) {
  for (std::size_t g = 0; g < groups; ++g) {
    const auto group = static_cast<BendGroup>(g);
    if (name_of(group) == name) return group;
  }
  throw LookupError("fatigue.published_validity", "group",
                    "no group of a bend is called '" + std::string(name) + "'");
}

}  // namespace

std::string_view basis_text(Basis basis) noexcept {
  return basis_texts[static_cast<std::size_t>(basis)];
}

Basis parse_basis(std::string_view where, std::string_view text) {
  for (std::size_t b = 0; b < basis_texts.size(); ++b) {
    if (basis_texts[b] == text) return static_cast<Basis>(b);
  }
  throw LookupError(where, "basis",
                    "basis must be 'discard', 'breakage', 'design' or 'as reference', got '" +
                        std::string(text) + "'");
}

std::vector<ValidityRange> published_validity(std::string_view model) {
  const Table& ranges = table("fatigue_validity");
  std::vector<ValidityRange> found;
  for (std::size_t row = 0; row < ranges.rows(); ++row) {
    if (ranges.text(row, "model") != model) continue;
    found.push_back({.group = group_named(ranges.text(row, "group")),
                     .low = ranges.number(row, "low"),
                     .high = ranges.number(row, "high"),
                     .source = citation(ranges.text(row, "source")),
                     .standing = std::string(ranges.text(row, "standing"))});
  }
  return found;
}

namespace detail {

double require(std::string_view where, std::string_view field, double value, const Interval& range,
               std::string_view unit) {
  if (!range.contains(value)) {
    ropewalk::detail::throw_inadmissible(where, field, value, unit, range);
  }
  return value;
}

std::optional<double> require_scatter(std::string_view where, std::optional<double> scatter) {
  constexpr Interval range{.low = 0.0, .high = 2.0, .low_open = true, .source = params::guard};
  if (scatter) require(where, "scatter", *scatter, range);
  return scatter;
}

ReferenceLife require_reference(std::string_view where, const ReferenceLife& reference) {
  const auto look = [&](std::string_view field, BendArgument argument, double value) {
    require(where, field, value, info(argument).admissible, info(argument).unit);
  };
  require(where, "reference_life", reference.cycles, params::bending_cycles.admissible);
  look("reference_tension", BendArgument::rope_tension, to_si(reference.rope_tension));
  look("reference_rope_diameter", BendArgument::rope_diameter, to_si(reference.rope_diameter));
  look("reference_sheave_diameter", BendArgument::sheave_diameter,
       to_si(reference.sheave_diameter));
  return reference;
}

}  // namespace detail
}  // namespace ropewalk::fatigue
