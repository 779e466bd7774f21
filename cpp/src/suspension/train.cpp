#include "ropewalk/suspension/train.hpp"

#include <algorithm>

#include "ropewalk/base/require.hpp"

namespace ropewalk::suspension {

namespace {

constexpr std::string_view where = "suspension.Suspension";

/// Weights summed in another order than the hook load may miss it by rounding.
constexpr double rounding = 1e-9;

void check(std::span<const Part> parts) {
  if (parts.empty()) throw InadmissibleError(where, "parts", "parts is empty: nothing is hung");
  for (const Part& part : parts) {
    const std::string at = std::string(where) + " [" + part.name + "]";
    require(at, argument::rating, part.rating);
    require(at, argument::multiple, part.multiple);
    require(at, argument::weight_above, part.weight_above);
  }
}

Force hook_load_at_rating(const Part& part) {
  return (part.rating + part.weight_above) / part.multiple;
}

}  // namespace

std::vector<Margin> margins(std::span<const Part> parts, Force hook_load) {
  check(parts);
  require(where, params::hook_load, hook_load);
  std::vector<Margin> found;
  for (const Part& part : parts) {
    const Force load = part.multiple * hook_load - part.weight_above;
    if (load < -rounding * part.weight_above) {
      throw InadmissibleError(where, "hook_load",
                              "hook_load = " + quantity_text(hook_load) + " is less than the " +
                                  quantity_text(part.weight_above) + " that hang above " +
                                  part.name + " (definition: the hook load has them all)");
    }
    found.push_back({.load = load,
                     .margin = part.rating - load,
                     .utilization = load / part.rating,
                     .hook_load_at_rating = hook_load_at_rating(part)});
  }
  return found;
}

std::size_t weakest(std::span<const Part> parts) {
  check(parts);
  const auto first = std::min_element(parts.begin(), parts.end(), [](const Part& a, const Part& b) {
    return hook_load_at_rating(a) < hook_load_at_rating(b);
  });
  return static_cast<std::size_t>(first - parts.begin());
}

}  // namespace ropewalk::suspension
