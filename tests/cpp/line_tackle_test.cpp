/// Where the rope is bent: offsets and tensions written out by hand, and what is refused.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "line_hoists.hpp"
#include "ropewalk/reeving/tensions.hpp"

namespace ropewalk::line {
namespace {

void expect_place(const Contact& contact, std::string_view cause, int multiple, double near,
                  double far) {
  EXPECT_EQ(contact.cause, cause);
  EXPECT_EQ(contact.multiple, multiple);
  EXPECT_NEAR(static_cast<double>(contact.near), near, 1e-13) << cause;
  EXPECT_NEAR(static_cast<double>(contact.far), far, 1e-13) << cause;
}

TEST(TackleTest, OffsetsOfTwoLinesByHand) {
  const Tackle tackle(round_hoist(2));
  const auto contacts = tackle.contacts();
  ASSERT_EQ(contacts.size(), 5U);
  expect_place(tackle.dead_line_sheave(), "dead-line sheave", 0, 20.0, 22.0);
  expect_place(contacts[0], "traveling sheave 1", 1, 22.0, 24.0);
  expect_place(contacts[1], "crown sheave 1", 2, 24.0, 26.0);
  for (int layer = 1; layer <= 3; ++layer) {
    const Contact& one = contacts[static_cast<std::size_t>(layer + 1)];
    expect_place(one, "drum layer " + std::to_string(layer), 2, 56.0, 56.0);
    EXPECT_EQ(one.layer, layer);
    EXPECT_NEAR(to_si(one.diameter), barrel + 2.0 * rope_diameter * (layer - 1), 1e-15);
  }
  EXPECT_NEAR(static_cast<double>(tackle.reach()), 126.0, 1e-12);
  EXPECT_NEAR(static_cast<double>(tackle.first_anchor()), 146.0, 1e-12);
  EXPECT_EQ(to_si(tackle.travel()), 30.0);
}

TEST(TackleTest, OffsetsOfFourLinesByHand) {
  const Tackle tackle(round_hoist(4));
  const auto contacts = tackle.contacts();
  ASSERT_EQ(contacts.size(), 7U);
  expect_place(contacts[0], "traveling sheave 1", 1, 22.0, 24.0);
  expect_place(contacts[1], "crown sheave 1", 2, 24.0, 26.0);
  expect_place(contacts[2], "traveling sheave 2", 3, 26.0, 28.0);
  expect_place(contacts[3], "crown sheave 2", 4, 28.0, 30.0);
  expect_place(contacts[4], "drum layer 1", 4, 60.0, 60.0);
  EXPECT_NEAR(static_cast<double>(tackle.reach()), 200.0, 1e-12);
  EXPECT_NEAR(static_cast<double>(tackle.first_anchor()), 220.0, 1e-12);
}

TEST(TackleTest, EverySheaveHasItsOwnArc) {
  StringUp s = round_hoist(2);
  // Arcs of 1, 3 and 5 m.
  s.dead_line_sheave_diameter = (2.0 / pi - rope_diameter) * meter;
  s.sheave_diameters = {(6.0 / pi - rope_diameter) * meter, (10.0 / pi - rope_diameter) * meter};
  const Tackle tackle(s);
  expect_place(tackle.dead_line_sheave(), "dead-line sheave", 0, 20.0, 21.0);
  expect_place(tackle.contacts()[0], "traveling sheave 1", 1, 21.0, 24.0);
  expect_place(tackle.contacts()[1], "crown sheave 1", 2, 24.0, 29.0);
  EXPECT_NEAR(static_cast<double>(tackle.contacts()[2].near), 59.0, 1e-13);
}

TEST(TackleTest, LeadSheavesFollowTheCrown) {
  StringUp s = round_hoist(2);
  s.arrangement = reeving::Arrangement({.lines = 2,
                                        .sheave_friction = {number(1.1)},
                                        .lead_sheaves = 2,
                                        .lead_sheave_friction = {number(1.2), number(1.3)}});
  s.lead_sheave_diameters = {sheave_tread * meter, sheave_tread * meter};
  const Tackle tackle(s);
  const auto contacts = tackle.contacts();
  expect_place(contacts[2], "lead sheave 1", 2, 26.0, 28.0);
  expect_place(contacts[3], "lead sheave 2", 2, 28.0, 30.0);
  expect_place(contacts[4], "drum layer 1", 2, 60.0, 60.0);
  // Hoisting: T1 = W/2.1, behind both sheaves 1.21 T1, behind the leads times 1.2 and 1.3.
  EXPECT_NEAR(contacts[2].tension_up, 1.21 * 1.2 / 2.1, 1e-15);
  EXPECT_NEAR(contacts[3].tension_up, 1.21 * 1.2 * 1.3 / 2.1, 1e-15);
  EXPECT_NEAR(contacts[4].tension_up, 1.21 * 1.2 * 1.3 / 2.1, 1e-15);
  // Lowering: T1 = W/(1 + 1/1.1), and the crown side is the tight one.
  const double first = 1.1 / 2.1;
  EXPECT_NEAR(contacts[2].tension_down, first / 1.21, 1e-15);
  EXPECT_NEAR(contacts[3].tension_down, first / 1.21 / 1.2, 1e-15);
  EXPECT_NEAR(contacts[4].tension_down, first / 1.21 / 1.2 / 1.3, 1e-15);
}

TEST(TackleTest, TensionsOfTwoLinesByHand) {
  const Tackle tackle(round_hoist(2, 1.1));
  const auto contacts = tackle.contacts();
  // Hoisting T2 = 1.1 T1, T1 + T2 = W; lowering T2 = T1/1.1.
  EXPECT_NEAR(contacts[0].tension_up, 1.1 / 2.1, 1e-15);
  EXPECT_NEAR(contacts[1].tension_up, 1.21 / 2.1, 1e-15);
  EXPECT_NEAR(contacts[2].tension_up, 1.21 / 2.1, 1e-15);
  EXPECT_NEAR(contacts[0].tension_down, 1.1 / 2.1, 1e-15);
  EXPECT_NEAR(contacts[1].tension_down, 1.0 / 2.1, 1e-15);
  EXPECT_NEAR(contacts[2].tension_down, 1.0 / 1.1 / 2.1, 1e-15);
}

TEST(TackleTest, TightSidesAreThoseOfTheReeving) {
  for (const int lines : {2, 4, 8, 10, 12, 14}) {
    StringUp s = round_hoist(lines, 1.04);
    s.supply = 4'000.0 * meter;
    s.drum = drum::Drum({.barrel_diameter = barrel * meter,
                         .rope_diameter = rope_diameter * meter,
                         .laps_per_layer = number(40.0),
                         .layers = 4,
                         .layer_height = drum::stacked_layer_height()});
    const Tackle tackle(s);
    constexpr double load = 1.5e6;
    const auto up = reeving::tensions(s.arrangement, load * newton, reeving::Motion::hoisting);
    const auto down = reeving::tensions(s.arrangement, load * newton, reeving::Motion::lowering);
    for (std::size_t i = 0; i < static_cast<std::size_t>(lines); ++i) {
      const bool last = i + 1 == static_cast<std::size_t>(lines);
      const Force before_up = up.lines[i];
      const Force after_up = last ? up.fast_line : up.lines[i + 1];
      const Force before_down = down.lines[i];
      const Force after_down = last ? down.fast_line : down.lines[i + 1];
      const Contact& contact = tackle.contacts()[i];
      EXPECT_NEAR(contact.tension_up * load, to_si(std::max(before_up, after_up)), 1e-9 * load);
      EXPECT_NEAR(contact.tension_down * load, to_si(std::max(before_down, after_down)),
                  1e-9 * load);
    }
  }
}

TEST(TackleTest, ReverseBendsCountAsTold) {
  StringUp s = round_hoist(2);
  s.wear.reverse_bend = number(2.5);
  s.reverse_sheaves = {false, true};
  s.reverse_drum = true;
  const Tackle tackle(s);
  EXPECT_EQ(tackle.contacts()[0].bends, 1.0);
  EXPECT_EQ(tackle.contacts()[1].bends, 2.5);
  EXPECT_EQ(tackle.contacts()[2].bends, 2.5);
}

// --- What is refused

template <class Change>
Refusal refused(const Change& change, int lines = 2) {
  return refusal_of([&] {
    StringUp s = round_hoist(lines);
    change(s);
    const Tackle tackle(s);
  });
}

TEST(TackleTest, AnOddNumberOfLinesIsRefusedWithTheReason) {
  const Refusal refusal = refused(
      [](StringUp& s) {
        s.arrangement = reeving::Arrangement({.lines = 3, .sheave_friction = {number(1.0)}});
        s.sheave_diameters.resize(3, sheave_tread * meter);
      },
      2);
  EXPECT_EQ(refusal.field, "lines");
  EXPECT_TRUE(refusal.says("lines = 3 is odd")) << refusal.text;
  EXPECT_TRUE(refusal.says("no anchor")) << refusal.text;
}

TEST(TackleTest, EveryFieldIsLookedAt) {
  const Length none = from_si<Length>(std::nan(""));
  const auto field = [](const auto& change) { return refused(change).field; };
  EXPECT_EQ(field([](StringUp& s) { s.sheave_diameters.pop_back(); }), "sheave_diameters");
  EXPECT_EQ(field([](StringUp& s) { s.lead_sheave_diameters.push_back(1.0 * meter); }),
            "lead_sheave_diameters");
  EXPECT_EQ(field([](StringUp& s) { s.sheave_diameters[1] = -1.0 * meter; }), "sheave_diameter");
  EXPECT_EQ(field([&](StringUp& s) { s.dead_line_sheave_diameter = none; }), "sheave_diameter");
  EXPECT_EQ(field([&](StringUp& s) { s.rope_diameter = none; }), "rope_diameter");
  EXPECT_EQ(field([](StringUp& s) { s.dead_line = -1.0 * meter; }), "dead_line");
  EXPECT_EQ(field([&](StringUp& s) { s.fast_line = none; }), "fast_line");
  EXPECT_EQ(field([](StringUp& s) { s.shortest = 0.0 * meter; }), "shortest");
  EXPECT_EQ(field([&](StringUp& s) { s.longest = none; }), "longest");
  EXPECT_EQ(field([](StringUp& s) { s.longest = s.shortest; }), "longest");
  EXPECT_EQ(field([](StringUp& s) { s.supply = 145.9 * meter; }), "supply");
  EXPECT_EQ(field([&](StringUp& s) { s.supply = none; }), "supply");
  EXPECT_EQ(field([](StringUp& s) { s.wraps_at_lowest = number(-0.1); }), "wraps_at_lowest");
  EXPECT_EQ(field([](StringUp& s) { s.wear.pick_up = number(-1.0); }), "wear");
  EXPECT_EQ(field([](StringUp& s) { s.wear.crossover = number(1.0); }), "crossover_length");
}

TEST(TackleTest, ADrumThatDoesNotTakeTheTravelIsRefused) {
  const Refusal refusal = refused([](StringUp& s) {
    s.drum = drum::Drum({.barrel_diameter = barrel * meter,
                         .rope_diameter = rope_diameter * meter,
                         .laps_per_layer = number(15.5),
                         .layers = 1,
                         .layer_height = drum::stacked_layer_height()});
  });
  // 15.5 laps of 5 m hold 77.5 m; 4 laps and 2 × 30 m are 80 m.
  EXPECT_EQ(refusal.field, "drum");
  EXPECT_TRUE(refusal.says("77.5")) << refusal.text;
  EXPECT_TRUE(refusal.says("80.0")) << refusal.text;
}

TEST(TackleTest, JustEnoughLineIsTaken) {
  StringUp s = round_hoist(2);
  s.supply = 146.001 * meter;
  EXPECT_NO_THROW(const Tackle tackle(s));
}

}  // namespace
}  // namespace ropewalk::line
