/// What a campaign must be for a given hoist.
#include <string>

#include "ropewalk/base/model.hpp"
#include "ropewalk/line/run.hpp"
#include "ropewalk/reeving/tensions.hpp"

namespace ropewalk::line {

namespace {

constexpr std::string_view where = "line.Campaign";
constexpr Interval count_range{.low = 0.0, .high = 1e12, .low_open = true, .source = params::guard};
/// Heights are sums of stands and offsets; their rounding is no travel.
constexpr double slack = 1e-9;

[[noreturn]] void throw_row(std::size_t row, std::string_view field, double value,
                            std::string_view unit, const Interval& range) {
  throw InadmissibleError(where, field,
                          "row " + std::to_string(row) + ": " +
                              ropewalk::detail::describe_outside(field, value, unit, range));
}

void check_lengths(const CampaignColumns& c) {
  const std::size_t rows = c.loads.hook_load.size();
  if (rows == 0) throw InadmissibleError(where, "hook_load", "the campaign has no strokes");
  const auto same = [&](std::string_view field, std::size_t size, bool optional) {
    if (size == rows || (optional && size == 0)) return;
    throw InadmissibleError(where, field,
                            std::string(field) + " has " + std::to_string(size) +
                                " rows and "
                                "hook_load " +
                                std::to_string(rows));
  };
  same("count", c.loads.count.size(), false);
  same("height_from", c.height_from.size(), false);
  same("height_to", c.height_to.size(), false);
  same("pick_up", c.pick_up.size(), true);
  same("may_stop", c.may_stop.size(), true);
}

}  // namespace

namespace {

void check_events(const CampaignColumns& campaign) {
  std::size_t block = 0;
  for (const PlannedEvent& event : campaign.events) {
    if (event.after_block < block || event.after_block >= campaign.blocks.size()) {
      throw InadmissibleError(where, "events",
                              "slips and cuts must stand in the order of the blocks they follow");
    }
    block = event.after_block;
    const double length = to_si(event.length);
    if (!params::length_range.contains(length)) {
      ropewalk::detail::throw_inadmissible(where, event.cut ? "cut" : "slip", length, "m",
                                           params::length_range);
    }
  }
}

}  // namespace

void check(const CampaignColumns& campaign, const Tackle& tackle, Force breaking_force) {
  check_lengths(campaign);
  const double travel = to_si(tackle.travel());
  const Interval heights{.low = -slack,
                         .high = travel + slack,
                         .source =
                             "travel of the block: line between the blocks at its lowest "
                             "less that at its highest"};
  const auto up =
      reeving::relative_tensions(tackle.string_up().arrangement, reeving::Motion::hoisting);
  const double fast_line = up.fast_line / up.sum;
  // NaN: the breaking force is not known, and no tension is above it.
  const double strongest = to_si(breaking_force) / fast_line;
  for (std::size_t row = 0; row < campaign.loads.hook_load.size(); ++row) {
    const double load = campaign.loads.hook_load[row];
    if (!params::force_range.contains(load) || load == 0.0) {
      throw_row(row, "hook_load", load, "N", params::positive_force_range);
    }
    if (load >= strongest) {
      throw_row(row, "hook_load", load, "N",
                {.low = 0.0,
                 .high = strongest,
                 .low_open = true,
                 .source = "load at which the fast line breaks, by the nominal strength of the "
                           "rope"});
    }
    for (const auto& [field, height] : {std::pair{"height_from", campaign.height_from[row]},
                                        std::pair{"height_to", campaign.height_to[row]}}) {
      if (!heights.contains(height)) throw_row(row, field, height, "m", heights);
    }
    if (!count_range.contains(campaign.loads.count[row])) {
      throw_row(row, "count", campaign.loads.count[row], "", count_range);
    }
  }
  if (campaign.blocks.empty()) {
    throw InadmissibleError(where, "blocks", "there are rows and no block that goes through them");
  }
  for (const Block& block : campaign.blocks) {
    if (block.first > block.last || block.last > campaign.loads.hook_load.size()) {
      throw InadmissibleError(where, "blocks", "a block lies outside the rows");
    }
  }
  check_events(campaign);
}

}  // namespace ropewalk::line
