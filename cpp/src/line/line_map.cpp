#include "ropewalk/line/line_map.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

namespace ropewalk::line {

namespace {

constexpr std::string_view where = "line.LineMap";

// Rows of a map by cause, after the contacts.
enum class Extra : std::uint8_t { crossovers, pick_up, dead_line_sheave, anchor };
constexpr std::size_t extras = 4;

std::size_t place(const Tackle& tackle, Extra extra) {
  return tackle.contacts().size() + static_cast<std::size_t>(extra);
}

/// Rope that a load of this many bins would not fit in memory as a map.
constexpr double most_bins = 1e8;

}  // namespace

std::vector<std::string> cause_names(const Tackle& tackle) {
  std::vector<std::string> names;
  for (const Contact& contact : tackle.contacts()) names.push_back(contact.cause);
  for (const char* name : {"crossovers", "pick-up", "dead-line sheave", "anchor"}) {
    names.emplace_back(name);
  }
  return names;
}

LineMap::LineMap(const Tackle& tackle, const Severity& severity, Length bin, MapRows rows)
    : tackle_(tackle),
      severity_(severity),
      ruler_(to_si(bin)),
      supply_(to_si(tackle.string_up().supply)),
      kind_(rows) {
  if (!(to_si(bin) > 0.0 && to_si(bin) <= supply_) || supply_ / to_si(bin) > most_bins) {
    throw InadmissibleError(where, "bin_length",
                            "bin_length = " + std::to_string(to_si(bin)) +
                                " m must be more than 0, at most the " + std::to_string(supply_) +
                                " m of line, and leave at most 1e8 bins");
  }
  bins_ = static_cast<std::size_t>(std::ceil(supply_ / ruler_.length() - 1e-9));
  last_bin_share_ = supply_ / ruler_.length() - static_cast<double>(bins_ - 1);
  const std::size_t count = rows == MapRows::total ? 1 : tackle.contacts().size() + extras;
  // One more than there are: rope positions may lie on the very end of the supply.
  values_.assign(count, std::vector<double>(bins_ + 1));
}

void LineMap::clear() {
  for (std::vector<double>& row : values_) std::fill(row.begin(), row.end(), 0.0);
}

std::vector<double>& LineMap::row_of(std::size_t cause) {
  return values_[kind_ == MapRows::total ? 0 : cause];
}

void LineMap::check(const RopePosition& position) const {
  const StringUp& s = tackle_.string_up();
  if (position.anchor > supply_ * (1.0 + 1e-12)) {
    throw InadmissibleError(where, "anchor",
                            "the anchor would hold the rope at " + std::to_string(position.anchor) +
                                " m, and it is " + std::to_string(supply_) + " m long");
  }
  const auto at_lowest = static_cast<double>(position.anchor - tackle_.reach() - position.drum_end);
  if (at_lowest < 0.0) {
    throw InadmissibleError(where, "drum_end",
                            "with the block at its lowest the rope comes off the drum: " +
                                std::to_string(-at_lowest) + " m too little");
  }
  const double at_highest = at_lowest + tackle_.lines() * to_si(tackle_.travel());
  if (at_highest > to_si(s.drum.capacity()) * (1.0 + 1e-12)) {
    throw InadmissibleError(where, "drum",
                            "the drum holds " + std::to_string(to_si(s.drum.capacity())) +
                                " m of rope and would get " + std::to_string(at_highest) +
                                " m after slipping: cut before");
  }
}

Sweep LineMap::sweep_of(const Contact& contact, const Severity::Share& share, Position offset,
                        const RopePosition& position) const {
  const StringUp& s = tackle_.string_up();
  return {.at_lowest =
              static_cast<Position>(position.anchor) - offset -
              static_cast<Position>(contact.multiple) * static_cast<Position>(to_si(s.longest)),
          .multiple = static_cast<double>(contact.multiple),
          .up = share.up,
          .down = share.down,
          .from = position.drum_end,
          .to = position.anchor};
}

void LineMap::add(const CampaignStrokes& strokes, std::span<const RowRange> ranges,
                  const RopePosition& position) {
  if (ranges.empty()) return;
  check(position);
  profile_.build(strokes.columns, ranges);
  add_contacts(position);
  add_crossovers(position);
  add_pick_ups(strokes, ranges, position);
}

void LineMap::add_contacts(const RopePosition& position) {
  const drum::Drum& drum = tackle_.string_up().drum;
  for (std::size_t c = 0; c < tackle_.contacts().size(); ++c) {
    const Contact& contact = tackle_.contacts()[c];
    const Severity::Share& share = severity_.contacts()[c];
    Sweep sweep = sweep_of(contact, share, contact.near, position);
    if (contact.layer == 0) {
      ruler_.unroll(profile_, share.group, sweep, row_of(c));
      sweep = sweep_of(contact, share, contact.far, position);
    } else {
      const Position before = to_si(drum.length_before(contact.layer));
      sweep.from = position.drum_end + before;
      sweep.to = sweep.from + static_cast<Position>(to_si(drum.layer_length(contact.layer)));
    }
    ruler_.unroll(profile_, share.group, sweep, row_of(c));
  }
}

void LineMap::add_crossovers(const RopePosition& position) {
  const ExtraWear& wear = tackle_.string_up().wear;
  const double at_lap = to_si(wear.crossover);
  const double at_layer = to_si(wear.layer_change);
  if (at_lap == 0.0 && at_layer == 0.0) return;
  if (profile_.empty()) return;
  const drum::Drum& drum = tackle_.string_up().drum;
  const double half = to_si(wear.crossover_length) / 2.0;
  std::size_t first_layer = 0;
  while (tackle_.contacts()[first_layer].layer == 0) ++first_layer;
  const Sweep whole = sweep_of(tackle_.contacts()[first_layer], severity_.contacts()[first_layer],
                               tackle_.contacts()[first_layer].near, position);
  const auto on_drum = [&](double height) {
    return static_cast<double>(whole.at_lowest - position.drum_end) + whole.multiple * height;
  };
  const double from = std::max(0.0, on_drum(profile_.lowest()) - half);
  const double to = std::min(on_drum(profile_.highest()) + half, to_si(drum.capacity()));
  for (const auto& one : drum.crossovers(from * meter, to * meter)) {
    const double weight = one.layer_change ? at_layer : at_lap;
    if (weight == 0.0) continue;
    const Severity::Share& share =
        severity_.contacts()[first_layer + static_cast<std::size_t>(one.layer) - 1];
    Sweep sweep = whole;
    sweep.up = weight * share.up;
    sweep.down = weight * share.down;
    const Position center =
        static_cast<Position>(position.drum_end) + static_cast<Position>(to_si(one.from_drum_end));
    sweep.from = std::max<Position>(position.drum_end, center - half);
    sweep.to = center + half;
    ruler_.unroll(profile_, share.group, sweep, row_of(place(tackle_, Extra::crossovers)));
  }
}

void LineMap::add_pick_ups(const CampaignStrokes& strokes, std::span<const RowRange> ranges,
                           const RopePosition& position) {
  const ExtraWear& wear = tackle_.string_up().wear;
  const bool fixed = to_si(wear.dead_line_sheave) > 0.0 || to_si(wear.anchor) > 0.0;
  if (strokes.pick_up.empty() || (to_si(wear.pick_up) == 0.0 && !fixed)) return;
  const std::size_t groups = strokes.columns.severities.size();
  std::map<double, std::vector<double>> by_height;
  for (const RowRange& range : ranges) {
    for (std::size_t row = range.first; row < range.last; ++row) {
      if (strokes.pick_up[row] == 0) continue;
      auto& sums = by_height[strokes.columns.height_from[row]];
      sums.resize(groups);
      for (std::size_t g = 0; g < groups; ++g) {
        sums[g] += strokes.columns.severities[g][row] * range.times;
      }
    }
  }
  std::vector<double> all(groups);
  for (const auto& [height, sums] : by_height) {
    if (to_si(wear.pick_up) > 0.0) add_pick_up(height, sums, position);
    std::transform(all.begin(), all.end(), sums.begin(), all.begin(), std::plus<>());
  }
  if (fixed) add_fixed(all, position);
}

/// The rope that lies on the sheaves when a load is taken up at this height: the arc between the
/// two tangent points. A bending cycle has two halves.
void LineMap::add_pick_up(double height, std::span<const double> severities,
                          const RopePosition& position) {
  const double weight = 2.0 * to_si(tackle_.string_up().wear.pick_up);
  std::vector<double>& row = row_of(place(tackle_, Extra::pick_up));
  for (std::size_t c = 0; tackle_.contacts()[c].layer == 0; ++c) {
    const Contact& contact = tackle_.contacts()[c];
    const Severity::Share& share = severity_.contacts()[c];
    const Position near = static_cast<Position>(position.anchor) - contact.near -
                          static_cast<Position>(contact.multiple) *
                              (static_cast<Position>(to_si(tackle_.string_up().longest)) -
                               static_cast<Position>(height));
    ruler_.cover(near - (contact.far - contact.near), near,
                 weight * share.up * severities[share.group], row);
  }
}

void LineMap::add_fixed(std::span<const double> severities, const RopePosition& position) {
  const ExtraWear& wear = tackle_.string_up().wear;
  const Contact& contact = tackle_.dead_line_sheave();
  const Severity::Share& share = severity_.dead_line_sheave();
  const double cycle = 2.0 * share.up * severities[share.group];
  ruler_.cover(position.anchor - contact.far, position.anchor - contact.near,
               to_si(wear.dead_line_sheave) * cycle,
               row_of(place(tackle_, Extra::dead_line_sheave)));
  ruler_.cover(position.anchor - Tackle::anchor_reach, position.anchor, to_si(wear.anchor) * cycle,
               row_of(place(tackle_, Extra::anchor)));
}

std::vector<double> LineMap::means(std::size_t row) const {
  std::vector<double> means(values_[row].begin(), values_[row].end() - 1);
  means.back() /= last_bin_share_;
  return means;
}

LineMap::Worst LineMap::worst(Position start, Position stop) const {
  const auto from = static_cast<double>(start);
  const auto to = static_cast<double>(stop);
  const std::vector<double>& values = values_.front();
  const auto first = static_cast<std::size_t>(std::max(0.0, from / ruler_.length()));
  const auto last = std::min(bins_, static_cast<std::size_t>(std::ceil(to / ruler_.length())));
  Worst worst{0.0, first};
  for (std::size_t b = first; b < last; ++b) {
    const double mean = b + 1 < bins_ ? values[b] : values[b] / last_bin_share_;
    if (mean > worst.value) worst = {mean, b};
  }
  return worst;
}

}  // namespace ropewalk::line
