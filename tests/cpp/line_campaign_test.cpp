/// What a campaign must be: every refusal names row, value and range.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "line_hoists.hpp"

namespace ropewalk::line {
namespace {

Rows good_rows() {
  return Rows().add(200e3, 0.0, 30.0).add(300e3, 30.0, 0.0, 5.0).add(250e3, 10.0, 12.0);
}

template <class Change>
Refusal refused(const Change& change) {
  return refusal_of([&] {
    const Tackle tackle(round_hoist(2));
    Rows rows = good_rows();
    change(rows);
    check(rows.campaign(), tackle, 600.0 * kilonewton);
  });
}

TEST(CampaignCheckTest, AGoodOneIsTaken) {
  const Tackle tackle(round_hoist(2));
  const Rows rows = good_rows();
  EXPECT_NO_THROW(check(rows.campaign(), tackle, 600.0 * kilonewton));
  EXPECT_NO_THROW(check(rows.campaign(), tackle, fatigue::not_given<Force>()));
}

TEST(CampaignCheckTest, AnEmptyOneIsRefused) {
  const Refusal refusal = refused([](Rows& rows) { rows = Rows(); });
  EXPECT_EQ(refusal.field, "hook_load");
  EXPECT_TRUE(refusal.says("no strokes")) << refusal.text;
}

TEST(CampaignCheckTest, RowsThatNoBlockGoesThroughAreRefused) {
  const Tackle tackle(round_hoist(2));
  const Rows rows = good_rows();
  CampaignColumns campaign = rows.campaign();
  campaign.blocks.clear();
  const Refusal refusal = refusal_of([&] { check(campaign, tackle, fatigue::not_given<Force>()); });
  EXPECT_EQ(refusal.field, "blocks");
}

TEST(CampaignCheckTest, HeightsLieInTheTravel) {
  for (const double height : {30.001, -0.001, std::nan(""), HUGE_VAL}) {
    EXPECT_EQ(refused([&](Rows& rows) { rows.from[1] = height; }).field, "height_from");
    EXPECT_EQ(refused([&](Rows& rows) { rows.to[2] = height; }).field, "height_to");
  }
  const Refusal refusal = refused([](Rows& rows) { rows.to[2] = 30.25; });
  EXPECT_TRUE(refusal.says("row 2")) << refusal.text;
  EXPECT_TRUE(refusal.says("30.25 m")) << refusal.text;
  EXPECT_TRUE(refusal.says("30")) << refusal.text;
  EXPECT_TRUE(refusal.says("travel of the block")) << refusal.text;
}

TEST(CampaignCheckTest, RoundingOfAHeightIsNoTravel) {
  const Tackle tackle(round_hoist(2));
  Rows rows = good_rows();
  rows.to[0] = 30.0 + 1e-12;
  rows.to[1] = -1e-12;
  EXPECT_NO_THROW(check(rows.campaign(), tackle, 600.0 * kilonewton));
}

TEST(CampaignCheckTest, TheFastLineMustHold) {
  // Two lines with K = 1.1: the fast line has 1.21/2.1 of the hook load; it breaks at 600 kN, under
  // 1041.3 kN on the hook.
  const Tackle tackle(round_hoist(2, 1.1));
  Rows rows = good_rows();
  const auto at = [&](double load) {
    rows.hook_load[1] = load;
    return [&] { check(rows.campaign(), tackle, 600.0 * kilonewton); };
  };
  EXPECT_NO_THROW(at(1'041e3)());
  const Refusal refusal = refusal_of(at(1'042e3));
  EXPECT_EQ(refusal.field, "hook_load");
  EXPECT_TRUE(refusal.says("row 1")) << refusal.text;
  EXPECT_TRUE(refusal.says("fast line breaks")) << refusal.text;
  EXPECT_TRUE(refusal.says("1041322.3")) << refusal.text;
}

TEST(CampaignCheckTest, LoadsAndCountsAreNumbersThatCanBe) {
  for (const double bad : {0.0, -1.0, std::nan(""), HUGE_VAL}) {
    const Refusal load = refused([&](Rows& rows) { rows.hook_load[2] = bad; });
    EXPECT_EQ(load.field, "hook_load");
    EXPECT_TRUE(load.says("row 2")) << load.text;
    const Refusal count = refused([&](Rows& rows) { rows.count[0] = bad; });
    EXPECT_EQ(count.field, "count");
    EXPECT_TRUE(count.says("row 0")) << count.text;
  }
}

TEST(CampaignCheckTest, ColumnsAreOfOneLength) {
  EXPECT_EQ(refused([](Rows& rows) { rows.count.pop_back(); }).field, "count");
  EXPECT_EQ(refused([](Rows& rows) { rows.hook_load.pop_back(); }).field, "count");
  EXPECT_EQ(refused([](Rows& rows) { rows.to.pop_back(); }).field, "height_to");
  EXPECT_EQ(refused([](Rows& rows) { rows.pick_up.pop_back(); }).field, "pick_up");
  EXPECT_EQ(refused([](Rows& rows) { rows.may_stop.pop_back(); }).field, "may_stop");
  const Tackle tackle(round_hoist(2));
  Rows rows = good_rows();
  rows.pick_up.clear();
  rows.may_stop.clear();
  EXPECT_NO_THROW(check(rows.campaign(), tackle, 600.0 * kilonewton));
}

TEST(CampaignCheckTest, BlocksAndEventsStandInTheirOrder) {
  const Tackle tackle(round_hoist(2));
  const Rows rows = good_rows();
  const auto field = [&](std::vector<Block> blocks, std::vector<PlannedEvent> events) {
    CampaignColumns campaign = rows.campaign();
    campaign.blocks = std::move(blocks);
    campaign.events = std::move(events);
    return refusal_of([&] { check(campaign, tackle, 600.0 * kilonewton); }).field;
  };
  const std::vector<Block> two{{0, 2, 1}, {2, 3, 1}};
  const Length some = 5.0 * meter;
  EXPECT_EQ(field({{0, 4, 1}}, {}), "blocks");
  EXPECT_EQ(field({{2, 1, 1}}, {}), "blocks");
  EXPECT_EQ(field(two, {{.after_block = 2, .cut = false, .length = some}}), "events");
  EXPECT_EQ(field(two, {{.after_block = 1, .cut = false, .length = some},
                        {.after_block = 0, .cut = false, .length = some}}),
            "events");
  EXPECT_EQ(field(two, {{.after_block = 0, .cut = false, .length = -some}}), "slip");
  EXPECT_EQ(field(two, {{.after_block = 0, .cut = true, .length = 0.0 * meter}}), "cut");
  EXPECT_EQ(field(two, {{.after_block = 0, .cut = true, .length = fatigue::not_given<Length>()}}),
            "cut");
}

}  // namespace
}  // namespace ropewalk::line
