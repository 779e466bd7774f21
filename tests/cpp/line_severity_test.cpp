/// Severities: one evaluation per group must say what every place says by itself.
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <limits>

#include "fatigue_examples.hpp"
#include "line_hoists.hpp"

namespace ropewalk::line {
namespace {

/// Every sheave, layer and lead with a diameter and a friction of its own.
StringUp uneven_hoist() {
  StringUp s = round_hoist(4);
  s.arrangement = reeving::Arrangement(
      {.lines = 4,
       .sheave_friction = {number(1.02), number(1.07), number(1.04), number(1.03)},
       .lead_sheaves = 1,
       .lead_sheave_friction = {number(1.05)}});
  s.sheave_diameters = {1.0 * meter, 1.2 * meter, 0.9 * meter, 1.0 * meter};
  s.lead_sheave_diameters = {1.4 * meter};
  s.wear.reverse_bend = number(2.0);
  s.reverse_sheaves = {false, false, true, false};
  return s;
}

TEST(SeverityTest, GroupsSayWhatEveryPlaceSaysByItself) {
  const Tackle tackle(uneven_hoist());
  const RopeProperties rope = rope_properties();
  const std::vector<double> loads{40e3, 300e3, 1'000e3};
  const std::vector<double> count{1.0, 7.0, 2.5};
  for (const fatigue::LifeModel& model : fatigue::all_models()) {
    SCOPED_TRACE(fatigue::name(model));
    const Severity severity(model, rope, tackle);
    ASSERT_EQ(severity.contacts().size(), tackle.contacts().size());
    for (std::size_t c = 0; c < tackle.contacts().size(); ++c) {
      const Contact& contact = tackle.contacts()[c];
      const Severity::Share& share = severity.contacts()[c];
      const auto column = severity.of(share.group, {.hook_load = loads, .count = count});
      for (std::size_t i = 0; i < loads.size(); ++i) {
        const auto direct = [&](double tension) {
          const fatigue::BendPoint point{.rope_tension = loads[i] * tension * newton,
                                         .rope_diameter = rope.diameter,
                                         .sheave_diameter = contact.diameter,
                                         .wire_strength = rope.wire_strength,
                                         .breaking_force = rope.breaking_force,
                                         .bend_length = rope.bend_length};
          return contact.bends * 0.5 * count[i] /
                 fatigue::cycles(model, point, Policy::ignore).cycles;
        };
        const double up = direct(contact.tension_up);
        const double down = direct(contact.tension_down);
        EXPECT_NEAR(column[i] * share.up, up, 1e-12 * up) << contact.cause;
        EXPECT_NEAR(column[i] * share.down, down, 1e-12 * down) << contact.cause;
      }
    }
  }
}

TEST(SeverityTest, OneExponentIsOneGroupAndManyAreMany) {
  const Tackle tackle(uneven_hoist());
  EXPECT_EQ(Severity(square_law(), rope_properties(), tackle).groups(), 1U);
  // En81: the exponent follows D/d. Sheaves 1.0, 1.2, 0.9, lead 1.4, three layers, dead-line
  // sheave; the last has a diameter of its own too.
  const fatigue::LifeModel en81 = fatigue::En81(fatigue::reference());
  EXPECT_EQ(Severity(en81, rope_properties(), tackle).groups(), 8U);
}

TEST(SeverityTest, BendingCyclesAreHalfACycleWhateverTheLoad) {
  const Tackle tackle(uneven_hoist());
  const Severity severity = Severity::bending_cycles(tackle);
  ASSERT_EQ(severity.groups(), 1U);
  const std::vector<double> loads{1.0, 1e6};
  const std::vector<double> count{1.0, 10.0};
  EXPECT_EQ(severity.of(0, {.hook_load = loads, .count = count}), (std::vector<double>{0.5, 5.0}));
  for (const Severity::Share& share : severity.contacts()) {
    EXPECT_EQ(share.up, 1.0);
    EXPECT_EQ(share.down, 1.0);
  }
}

TEST(SeverityTest, WhatTheModelNeedsMustBeGiven) {
  const Tackle tackle(uneven_hoist());
  RopeProperties rope = rope_properties();
  rope.wire_strength = fatigue::not_given<Stress>();
  const Refusal refusal = refusal_of([&] { const Severity severity(square_law(), rope, tackle); });
  EXPECT_EQ(refusal.field, "wire_strength");
}

TEST(SeverityTest, ALoadWithoutALifeIsNamed) {
  const Tackle tackle(uneven_hoist());
  const Severity severity(square_law(), rope_properties(), tackle);
  const std::vector<double> loads{1e5, std::nan("")};
  const std::vector<double> count{1.0, 1.0};
  const Refusal refusal =
      refusal_of([&] { (void)severity.of(0, {.hook_load = loads, .count = count}); });
  EXPECT_EQ(refusal.field, "hook_load");
  EXPECT_TRUE(refusal.says("row 1")) << refusal.text;
}

// --- Outside the published range

TEST(SeverityTest, ShareOutsideValidityByHand) {
  const Tackle tackle(round_hoist(2));
  // p/R0 = 2 (W/2) / (d D R0): for 200 kN 3.03e-3 on the sheaves and 2.41e-3 on the drum.
  const fatigue::LifeModel model =
      fatigue::PowerLaw(1.0, 2.0, fatigue::Basis::discard, {},
                        fatigue::PowerLaw::PressureRange{.low = 2.8e-3, .high = 1.0});
  const std::vector<double> loads{200e3, 100e3, 400e3};
  const std::vector<double> count{1.0, 8.0, 1.0};
  const std::vector<double> from{0.0, 20.0, 0.0};
  const std::vector<double> to{10.0, 10.0, 30.0};
  // Sheaves 1 and 2 sweep 3 m a meter and bend twice; the drum 2 m and once.
  const auto sheaves = [](double load) { return 3.0 * 2.0 * half_cycle(load / 2.0, sheave_tread); };
  const auto drum = [](double load) { return 2.0 * half_cycle(load / 2.0, barrel); };
  const double outside = drum(200e3) * 10.0 + 8.0 * (sheaves(100e3) + drum(100e3)) * 10.0;
  const double all = outside + sheaves(200e3) * 10.0 + (sheaves(400e3) + drum(400e3)) * 30.0;
  const auto share = [&](std::size_t rows) {
    return share_outside_validity(model, rope_properties(), tackle,
                                  {.hook_load = std::span(loads).first(rows), .count = count}, from,
                                  to);
  };
  EXPECT_NEAR(share(3), outside / all, 1e-12);
  const double first = drum(200e3) / (drum(200e3) + sheaves(200e3));
  EXPECT_NEAR(share(1), first, 1e-12);
}

TEST(SeverityTest, NoShareOfALoadWithoutALife) {
  const Tackle tackle(round_hoist(2));
  const std::vector<double> loads{200e3, 0.0};
  const std::vector<double> ones{1.0, 1.0};
  const Refusal refusal = refusal_of([&] {
    (void)share_outside_validity(square_law(), rope_properties(), tackle,
                                 {.hook_load = loads, .count = ones}, ones, loads);
  });
  EXPECT_EQ(refusal.field, "hook_load");
  EXPECT_TRUE(refusal.says("row 1")) << refusal.text;
}

TEST(SeverityTest, AllInsideAndAllOutside) {
  const Tackle tackle(round_hoist(2));
  const std::vector<double> loads{200e3};
  const std::vector<double> one{1.0};
  const std::vector<double> from{0.0};
  const std::vector<double> to{10.0};
  const auto share = [&](double low) {
    const fatigue::LifeModel model =
        fatigue::PowerLaw(1.0, 2.0, fatigue::Basis::discard, {},
                          fatigue::PowerLaw::PressureRange{.low = low, .high = 1.0});
    return share_outside_validity(model, rope_properties(), tackle,
                                  {.hook_load = loads, .count = one}, from, to);
  };
  EXPECT_EQ(share(1e-6), 0.0);
  EXPECT_EQ(share(0.5), 1.0);
}

}  // namespace
}  // namespace ropewalk::line
