#include "ropewalk/line/tackle.hpp"

#include <cmath>
#include <numbers>

#include "ropewalk/base/require.hpp"
#include "ropewalk/reeving/tensions.hpp"

namespace ropewalk::line {

namespace {

constexpr std::string_view where = "line.Tackle";

constexpr Parameter<Length> dead_line{"dead_line", params::depth_range};
constexpr Parameter<Length> fast_line{"fast_line", params::depth_range};
constexpr Parameter<Length> shortest{"shortest", params::length_range};
constexpr Parameter<Length> longest{"longest", params::length_range};
constexpr Parameter<Length> supply{"supply", params::length_range};
constexpr Parameter<Number> wraps{
    "wraps_at_lowest", between(from_si<Number>(0.0), from_si<Number>(1000.0), params::guard)};
constexpr Parameter<Number> weight{
    "wear", between(from_si<Number>(0.0), from_si<Number>(1e6), params::guard)};

[[noreturn]] void refuse(std::string_view field, const std::string& text) {
  throw InadmissibleError(where, field, text);
}

void require_diameters(std::string_view field, const std::vector<Length>& diameters,
                       std::size_t sheaves) {
  if (diameters.size() != sheaves) {
    refuse(field, std::string(field) + " has " + std::to_string(diameters.size()) +
                      " diameters for " + std::to_string(sheaves) + " sheaves");
  }
  for (const Length& one : diameters) require(where, params::sheave_diameter, one);
}

void check(const StringUp& s) {
  const int lines = s.arrangement.lines();
  if (!reeving::has_dead_line(lines)) {
    refuse("lines", "lines = " + std::to_string(lines) +
                        " is odd: the dead end then travels with the block and there is no "
                        "anchor to slip line through; lines must be even");
  }
  require(where, params::rope_diameter, s.rope_diameter);
  require_diameters("sheave_diameters", s.sheave_diameters, static_cast<std::size_t>(lines));
  require_diameters("lead_sheave_diameters", s.lead_sheave_diameters,
                    s.arrangement.lead_sheave_friction().size());
  require(where, params::sheave_diameter, s.dead_line_sheave_diameter);
  require(where, dead_line, s.dead_line);
  require(where, fast_line, s.fast_line);
  require(where, shortest, s.shortest);
  require(where, longest, s.longest);
  require(where, supply, s.supply);
  require(where, wraps, s.wraps_at_lowest);
  for (const Number& one : {s.wear.crossover, s.wear.layer_change, s.wear.pick_up,
                            s.wear.dead_line_sheave, s.wear.anchor, s.wear.reverse_bend}) {
    require(where, weight, one);
  }
  if (s.longest <= s.shortest) {
    refuse("longest",
           "longest must be more than shortest: line between the blocks with the block "
           "at its lowest and at its highest");
  }
  const bool crossovers = to_si(s.wear.crossover) > 0.0 || to_si(s.wear.layer_change) > 0.0;
  if (crossovers && !(s.wear.crossover_length > 0.0 * meter)) {
    refuse("crossover_length", "crossover_length must be given where crossovers are to wear");
  }
}

Position arc(Length tread, Length rope) noexcept {
  return std::numbers::pi_v<Position> / 2 *
         (static_cast<Position>(to_si(tread)) + static_cast<Position>(to_si(rope)));
}

std::string sheave_name(int lines, int sheave) {
  const bool crown = reeving::on_crown(lines, sheave);
  return (crown ? "crown sheave " : "traveling sheave ") +
         std::to_string(crown ? sheave / 2 : (sheave + 1) / 2);
}

}  // namespace

Tackle::Tackle(StringUp string_up) : string_up_(std::move(string_up)) {
  check(string_up_);
  lay_out();
  const Length on_drum = string_up_.drum.length_of(to_si(string_up_.wraps_at_lowest));
  first_anchor_ = reach_ + to_si(on_drum);
  const Length all_in = on_drum + static_cast<double>(lines()) * travel();
  if (all_in > string_up_.drum.capacity()) {
    refuse("drum", "the drum holds " + std::to_string(to_si(string_up_.drum.capacity())) +
                       " m of rope and the block at its highest needs " +
                       std::to_string(to_si(all_in)) + " m on it");
  }
  // Lengths that were rounded may add up to the last digit more than there is.
  if (static_cast<double>(first_anchor_) > to_si(string_up_.supply) * (1.0 + 1e-12)) {
    refuse("supply", "supply = " + std::to_string(to_si(string_up_.supply)) +
                         " m is less than the " + std::to_string(first_anchor_) +
                         " m that stringing up takes");
  }
}

void Tackle::lay_out() {
  const StringUp& s = string_up_;
  const auto up = reeving::relative_tensions(s.arrangement, reeving::Motion::hoisting);
  const auto down = reeving::relative_tensions(s.arrangement, reeving::Motion::lowering);
  const auto reverse = [&](const std::vector<bool>& list, std::size_t i) {
    return i < list.size() && list[i] ? to_si(s.wear.reverse_bend) : 1.0;
  };
  Position along = to_si(s.dead_line);
  const Position dead_arc = arc(s.dead_line_sheave_diameter, s.rope_diameter);
  dead_line_sheave_ = {.cause = "dead-line sheave",
                       .near = along,
                       .far = along + dead_arc,
                       .diameter = s.dead_line_sheave_diameter,
                       .tension_up = up.dead_line / up.sum,
                       .tension_down = down.dead_line / down.sum};
  along += dead_arc;
  const auto n = static_cast<std::size_t>(lines());
  for (std::size_t i = 0; i < n; ++i) {
    const Position turn = arc(s.sheave_diameters[i], s.rope_diameter);
    const double after = i + 1 < n ? up.lines[i + 1] : up.fast_line_at_crown;
    const int sheave = static_cast<int>(i) + 1;
    contacts_.push_back({.cause = sheave_name(lines(), sheave),
                         .multiple = sheave,
                         .near = along,
                         .far = along + turn,
                         .diameter = s.sheave_diameters[i],
                         .tension_up = after / up.sum,
                         .tension_down = down.lines[i] / down.sum,
                         .bends = reverse(s.reverse_sheaves, i)});
    along += turn;
  }
  double tension_up = up.fast_line_at_crown;
  double tension_down = down.fast_line_at_crown;
  for (std::size_t i = 0; i < s.lead_sheave_diameters.size(); ++i) {
    const double friction = to_si(s.arrangement.lead_sheave_friction()[i]);
    const Position turn = arc(s.lead_sheave_diameters[i], s.rope_diameter);
    tension_up *= friction;
    contacts_.push_back({.cause = "lead sheave " + std::to_string(i + 1),
                         .multiple = lines(),
                         .near = along,
                         .far = along + turn,
                         .diameter = s.lead_sheave_diameters[i],
                         .tension_up = tension_up / up.sum,
                         .tension_down = tension_down / down.sum,
                         .bends = reverse(s.reverse_lead_sheaves, i)});
    along += turn;
    tension_down /= friction;
  }
  along += to_si(s.fast_line);
  for (int layer = 1; layer <= s.drum.layers(); ++layer) {
    contacts_.push_back({.cause = "drum layer " + std::to_string(layer),
                         .multiple = lines(),
                         .near = along,
                         .far = along,
                         .diameter = s.drum.bend_diameter(layer),
                         .tension_up = up.fast_line / up.sum,
                         .tension_down = down.fast_line / down.sum,
                         .bends = s.reverse_drum ? to_si(s.wear.reverse_bend) : 1.0,
                         .layer = layer});
  }
  reach_ = along + static_cast<Position>(n) * static_cast<Position>(to_si(s.longest));
}

}  // namespace ropewalk::line
