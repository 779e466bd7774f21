#include "ropewalk/drillstring/string.hpp"

#include <algorithm>
#include <utility>

namespace ropewalk::drillstring {

namespace {

struct SectionArguments {
  static constexpr std::string_view name = "drillstring.Section";
  static constexpr std::tuple parameters{argument::length, argument::mass_per_length};
};

/// Same arguments and rule as buoyancy_factor, in the name of the class.
struct StringArguments : BuoyancyFactor {
  static constexpr std::string_view name = "drillstring.DrillString";
};

struct HookLoadArguments {
  static constexpr std::string_view name = "drillstring.DrillString.hook_load";
  static constexpr Parameter<Force> drag_up{"drag_up", params::force_range};
  static constexpr std::tuple parameters{params::depth, drag_up, drag_up.named("drag_down"),
                                         params::block_weight};
};

/// A depth read off the tally may differ from the sum of its lengths by rounding.
constexpr double rounding = 1e-9;

}  // namespace

void check(const Section& section) {
  admit<SectionArguments>(Policy::raise, section.length, section.mass_per_length);
}

DrillString::DrillString(std::vector<Section> sections, Density mud_density, Density steel_density)
    : sections_(std::move(sections)) {
  admit<StringArguments>(Policy::raise, mud_density, steel_density);
  if (sections_.empty()) {
    throw InadmissibleError(StringArguments::name, "sections",
                            "sections must hold at least one section");
  }
  buoyancy_factor_ = BuoyancyFactor::formula(mud_density, steel_density);
  for (const Section& section : sections_) {
    check(section);
    length_ += section.length;
    mass_ += section.length * section.mass_per_length;
  }
}

Force DrillString::weight_in_mud(Length depth) const {
  if (!(depth >= 0.0 * meter && depth <= length_ * (1.0 + rounding))) {
    throw InadmissibleError(StringArguments::name, "depth",
                            "depth = " + quantity_text(depth) + " is outside [0, " +
                                quantity_text(length_) + "], the length of the string");
  }
  Length left = depth;
  Mass hung = 0.0 * kilogram;
  for (const Section& section : sections_) {
    const Length part = std::min(left, section.length);
    hung += part * section.mass_per_length;
    left -= part;
  }
  return hung * standard_gravity * buoyancy_factor_;
}

ForcePerLength DrillString::pipe_weight() const noexcept {
  return BuoyedWeightPerLength::formula(sections_.back().mass_per_length, buoyancy_factor_);
}

Length DrillString::bha_length() const noexcept {
  Length bha = 0.0 * meter;
  for (std::size_t i = 0; i + 1 < sections_.size(); ++i) bha += sections_[i].length;
  return bha;
}

Force DrillString::bha_excess_weight() const noexcept {
  const MassPerLength pipe = sections_.back().mass_per_length;
  Mass excess = 0.0 * kilogram;
  for (const Section& section : sections_) {
    excess += section.length * (section.mass_per_length - pipe);
  }
  return excess * standard_gravity * buoyancy_factor_;
}

Force DrillString::hook_load(Operation operation, Length depth, Force drag_up, Force drag_down,
                             Force block_weight) const {
  admit<HookLoadArguments>(Policy::raise, depth, drag_up, drag_down, block_weight);
  const Force string = weight_in_mud(depth);
  switch (operation) {
    case Operation::hoisting:
      return string + drag_up + block_weight;
    case Operation::rotating:
      return string + block_weight;
    case Operation::lowering:
      break;
  }
  if (drag_down > string) {
    throw InadmissibleError(HookLoadArguments::name, "drag_down",
                            "drag_down = " + quantity_text(drag_down) +
                                " is more than the string weighs in mud, " + quantity_text(string) +
                                ": it would not go down by its weight");
  }
  return string - drag_down + block_weight;
}

}  // namespace ropewalk::drillstring
