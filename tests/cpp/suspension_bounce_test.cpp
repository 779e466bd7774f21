#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "ropewalk/base/error.hpp"
#include "ropewalk/suspension/bounce.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::suspension {
namespace {

constexpr double rate = 800e3;  // N/m
constexpr double mass = 3000.0;

constexpr double free_length = mass * 9.80665 / rate;  // 37 mm above rest, the spring is slack

double critical() { return 2.0 * std::sqrt(rate * mass); }

SprungHook hook(double up, double down, double friction = 0.0) {
  return {.sprung_weight = from_si<Force>(mass * 9.80665),
          .spring_rate = from_si<ForcePerLength>(rate),
          .damping_up = from_si<Damping>(up * critical()),
          .damping_down = from_si<Damping>(down * critical()),
          .friction = from_si<Force>(friction)};
}

Bounce bounce(double up, double down, double friction = 0.0, double start = -0.03,
              double speed = 0.0) {
  return Bounce(hook(up, down, friction), from_si<Length>(start), from_si<Speed>(speed));
}

/// Classical Runge-Kutta in small steps, knowing nothing of the closed forms.
std::vector<double> stepped(double up, double down, double start, double speed, double until,
                            int steps) {
  const auto pull = [&](double x, double v) {
    const double damping = (v > 0.0 ? up : down) * critical();
    return x > free_length ? -9.80665 : (-rate * x - damping * v) / mass;
  };
  double x = start, v = speed;
  const double h = until / steps;
  for (int i = 0; i < steps; ++i) {
    const double k1 = v, l1 = pull(x, v);
    const double k2 = v + 0.5 * h * l1, l2 = pull(x + 0.5 * h * k1, k2);
    const double k3 = v + 0.5 * h * l2, l3 = pull(x + 0.5 * h * k2, k3);
    const double k4 = v + h * l3, l4 = pull(x + h * k3, k4);
    x += h / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
    v += h / 6.0 * (l1 + 2.0 * l2 + 2.0 * l3 + l4);
  }
  return {x, v};
}

TEST(BounceTest, MotionIsThatOfAStepByStepIntegration) {
  for (const double up : {0.0, 0.2, 0.999999, 1.0, 1.000001, 3.0}) {
    for (const double speed : {0.0, 0.4, -0.4}) {
      const Bounce exact = bounce(up, up, 0.0, -0.03, speed);
      for (const double time : {0.05, 0.2, 0.7}) {
        const auto found = stepped(up, up, -0.03, speed, time, 20'000);
        const Bounce::State state = exact.at(from_si<Time>(time));
        EXPECT_NEAR(to_si(state.height), found[0], 1e-9) << up << " " << speed;
        EXPECT_NEAR(to_si(state.speed), found[1], 1e-8) << up << " " << speed;
      }
    }
  }
}

TEST(BounceTest, AFlightIsThatOfAStepByStepIntegration) {
  for (const double up : {0.0, 0.1}) {
    const Bounce exact = bounce(up, 0.5 * up, 0.0, -0.1, 0.2);
    EXPECT_TRUE(exact.goes_slack());
    for (const double time : {0.15, 0.2, 0.3, 0.5}) {
      const auto found = stepped(up, 0.5 * up, -0.1, 0.2, time, 200'000);
      const Bounce::State state = exact.at(from_si<Time>(time));
      EXPECT_NEAR(to_si(state.height), found[0], 1e-5) << up << " " << time;
      EXPECT_NEAR(to_si(state.speed), found[1], 1e-4) << up << " " << time;
    }
  }
}

TEST(BounceTest, AStandLetGoAboveTheFreeLengthFallsOntoTheSpring) {
  // Energy: m g h lifted above the free length and the spring's own, W²/2k, at the lowest point.
  const double weight = mass * 9.80665, above = 0.2;
  const Bounce dropped = bounce(0.0, 0.0, 0.0, free_length + above);
  EXPECT_TRUE(dropped.goes_slack());
  EXPECT_NEAR(to_si(dropped.highest()), free_length + above, 1e-12);
  const double lowest = std::sqrt(free_length * free_length + 2.0 * weight * above / rate);
  EXPECT_NEAR(to_si(dropped.lowest()), -lowest, 1e-12);
  EXPECT_EQ(to_si(dropped.spring_force(dropped.highest())), 0.0);
  EXPECT_FALSE(bounce(0.0, 0.0, 0.0, 0.999 * free_length).goes_slack());
}

TEST(BounceTest, ASnubberMayDampOneWayOnly) {
  const Bounce one_way = bounce(0.4, 0.05);
  const auto found = stepped(0.4, 0.05, -0.03, 0.0, 0.6, 200'000);
  EXPECT_NEAR(to_si(one_way.at(from_si<Time>(0.6)).height), found[0], 1e-7);
  EXPECT_LT(one_way.highest(), bounce(0.05, 0.05).highest());
}

TEST(BounceTest, UndampedItGoesAsFarUpAsItWasDown) {
  const Bounce free = bounce(0.0, 0.0);
  EXPECT_NEAR(to_si(free.highest()), 0.03, 1e-13);
  EXPECT_FALSE(free.rest());
  EXPECT_THROW((void)free.settled(0.01 * meter), InadmissibleError);
  EXPECT_THROW((void)free.at(from_si<Time>(1e5)), InadmissibleError);
}

TEST(BounceTest, FrictionTakesTheSameOffEverySwing) {
  // Coulomb damping: the swing loses 2 F/k each half cycle, and stays where k |x| ≤ F.
  const double friction = 1500.0;
  const Bounce rubbed = bounce(0.0, 0.0, friction);
  const auto& turns = rubbed.turns();
  ASSERT_GT(turns.size(), 5U);
  for (std::size_t i = 1; i < turns.size(); ++i) {
    EXPECT_NEAR(std::abs(to_si(turns[i].height)),
                std::abs(to_si(turns[i - 1].height)) - 2.0 * friction / rate, 1e-12);
    EXPECT_NEAR(to_si(turns[i].time - turns[i - 1].time), pi * std::sqrt(mass / rate), 1e-12);
  }
  ASSERT_TRUE(rubbed.rest());
  EXPECT_LE(std::abs(to_si(*rubbed.rest())), friction / rate);
  EXPECT_EQ(to_si(*rubbed.rest()), to_si(turns.back().height));
}

TEST(BounceTest, FrictionThatHoldsFromTheBeginningHolds) {
  const Bounce stuck = bounce(0.0, 0.0, 50e3);
  EXPECT_EQ(to_si(*stuck.rest()), -0.03);
  EXPECT_EQ(to_si(stuck.at(from_si<Time>(3.0)).height), -0.03);
  EXPECT_EQ(to_si(stuck.settled(1.0 * millimeter)), 0.0);
}

TEST(BounceTest, EnergyLostIsTheWorkOfDamperAndFriction) {
  const double friction = 400.0, damping = 0.1 * critical();
  const Bounce swing = bounce(0.1, 0.1, friction);
  const double end = to_si(swing.turns()[3].time);
  const auto power = [&](double t) {
    const double v = to_si(swing.at(from_si<Time>(t)).speed);
    return damping * v * v + friction * std::abs(v);
  };
  double work = 0.0;
  const int steps = 60'000;
  for (int i = 0; i < steps; ++i) work += power((i + 0.5) * end / steps) * end / steps;
  const double first = to_si(swing.turns()[0].height), last = to_si(swing.turns()[3].height);
  EXPECT_NEAR(work / (0.5 * rate * (first * first - last * last)), 1.0, 1e-7);
}

TEST(BounceTest, AfterSettlingItStaysInTheBandAndBeforeItDoesNot) {
  for (const double ratio : {0.05, 0.3, 0.9, 1.0, 2.5}) {
    const Bounce damped = bounce(ratio, ratio);
    const double settled = to_si(damped.settled(2.0 * millimeter));
    for (int i = 0; i < 700; ++i) {
      const double t = settled + 0.003 * i;
      EXPECT_LE(std::abs(to_si(damped.at(from_si<Time>(t)).height)), 0.002 * (1.0 + 1e-9));
    }
    EXPECT_GT(std::abs(to_si(damped.at(from_si<Time>(settled - 1e-6)).height)), 0.002);
  }
}

TEST(BounceTest, TheSpringCarriesTheWeightAtRest) {
  const Bounce damped = bounce(0.3, 0.3);
  EXPECT_NEAR(to_si(damped.spring_force(0.0 * meter)), mass * 9.80665, 1e-9);
  EXPECT_NEAR(to_si(damped.spring_force(damped.lowest())), mass * 9.80665 + 0.03 * rate, 1e-6);
}

TEST(BounceTest, DampingThatNearsCriticalNeedsNoOtherFormula) {
  for (const double time : {0.01, 0.1, 0.5}) {
    const double critical_height = to_si(bounce(1.0, 1.0).at(from_si<Time>(time)).height);
    for (const double near : {1.0 - 1e-8, 1.0 - 1e-10, 1.0 + 1e-10, 1.0 + 1e-8}) {
      EXPECT_NEAR(to_si(bounce(near, near).at(from_si<Time>(time)).height), critical_height, 1e-9);
    }
  }
}

template <class Change>
std::string refused_field(const Change& change) {
  SprungHook wrong = hook(0.1, 0.1);
  change(wrong);
  try {
    const Bounce none(wrong, 0.0 * meter, from_si<Speed>(0.0));
  } catch (const InadmissibleError& error) {
    return error.field();
  }
  return "";
}

TEST(BounceTest, WhatCannotBeIsRefusedByField) {
  const auto negative = from_si<Damping>(-1.0);
  EXPECT_EQ(refused_field([](SprungHook& h) { h.sprung_weight = 0.0 * kip; }), "sprung_weight");
  EXPECT_EQ(refused_field([](SprungHook& h) { h.spring_rate = from_si<ForcePerLength>(0.0); }),
            "spring_rate");
  EXPECT_EQ(refused_field([&](SprungHook& h) { h.damping_up = negative; }), "damping_up");
  EXPECT_EQ(refused_field([&](SprungHook& h) { h.damping_down = negative; }), "damping_down");
  EXPECT_EQ(refused_field([](SprungHook& h) { h.friction = -1.0 * kip; }), "friction");
  EXPECT_THROW((void)bounce(0.1, 0.1, 0.0, std::nan("")), InadmissibleError);
}

}  // namespace
}  // namespace ropewalk::suspension
