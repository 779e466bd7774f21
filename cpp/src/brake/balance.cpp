#include "ropewalk/brake/balance.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <vector>

#include "ropewalk/base/require.hpp"

namespace ropewalk::brake {

namespace {

void check(const LoweringBrakes& brakes, Torque load_torque) {
  constexpr std::string_view where = "brake.LoweringBrakes";
  require(where, argument::brake_torque.named("eddy_peak_torque"), brakes.eddy_peak);
  require(where, argument::critical_speed, brakes.eddy_critical);
  require(where, argument::motor_torque_limit, brakes.motor_torque);
  require(where, argument::motor_power_limit, brakes.motor_power);
  require(where, argument::brake_torque.named("friction_torque"), brakes.friction);
  require("brake.LoweringBrakes.balance", argument::eddy_load, load_torque);
}

/// Excess of the brakes over the load, a polynomial in the speed once it is multiplied by what is
/// positive anyway; speeds count in critical speeds of the eddy brake, torques in load torques.
/// Where the motor is at its torque limit, times (1 + x²):
///   (f + m − 1)(1 + x²) + 2 e x
/// where it is at its power limit P, times x (1 + x²):
///   (f − 1) x (1 + x²) + 2 e x² + P (1 + x²)
using Cubic = std::array<double, 4>;  // from the constant term up

double value(const Cubic& c, double x) noexcept {
  return ((c[3] * x + c[2]) * x + c[1]) * x + c[0];
}

/// Speeds at which a cubic is stationary, in order.
std::vector<double> stationary(const Cubic& c) {
  const double a = 3.0 * c[3];
  const double b = 2.0 * c[2];
  const double d = b * b - 4.0 * a * c[1];
  if (a == 0.0) return b == 0.0 ? std::vector<double>{} : std::vector<double>{-c[1] / b};
  if (d <= 0.0) return {};
  // The form that keeps its digits when one of the two is small.
  const double q = -0.5 * (b + std::copysign(std::sqrt(d), b));
  std::vector<double> found{q / a};
  if (q != 0.0) found.push_back(c[1] / q);
  std::sort(found.begin(), found.end());
  return found;
}

/// Every x in (low, high) where the polynomial changes sign, in order: between stationary points it
/// is monotone, so halving finds each.
std::vector<double> sign_changes(const Cubic& c, double low, double high) {
  std::vector<double> ends{low};
  for (const double x : stationary(c)) {
    if (x > low && x < high) ends.push_back(x);
  }
  ends.push_back(high);
  std::vector<double> found;
  for (std::size_t i = 1; i < ends.size(); ++i) {
    double a = ends[i - 1];
    double b = ends[i];
    if ((value(c, a) < 0.0) == (value(c, b) < 0.0)) continue;
    for (int halving = 0; halving < 200 && a < b; ++halving) {
      const double middle = std::midpoint(a, b);
      if (middle == a || middle == b) break;
      ((value(c, middle) < 0.0) == (value(c, a) < 0.0) ? a : b) = middle;
    }
    found.push_back(b);
  }
  return found;
}

/// Largest torque over all speeds: at rest, where the motor meets its power limit, at the critical
/// speed, or where the sum of eddy torque and motor power over speed is stationary. With x = ω/ω_c
/// and torques in units of the eddy brake's peak the last is a quadratic in y = x²:
///   2 y (1 − y) − P (1 + y)² = 0
Torque largest_torque(const LoweringBrakes& brakes) {
  std::vector<AngularVelocity> speeds{0.0 * rpm, brakes.eddy_critical};
  if (brakes.motor_torque > 0.0 * newton_meter) {
    speeds.push_back(brakes.motor_power / brakes.motor_torque);
    if (brakes.eddy_peak > 0.0 * newton_meter) {
      const double p =
          to_si(Number(brakes.motor_power / (brakes.eddy_peak * brakes.eddy_critical)));
      const double root = (1.0 - p) * (1.0 - p) - p * (2.0 + p);
      for (const double side : {-1.0, 1.0}) {
        if (root < 0.0) break;
        const double y = (1.0 - p + side * std::sqrt(root)) / (2.0 + p);
        if (y > 0.0) speeds.push_back(std::sqrt(y) * brakes.eddy_critical);
      }
    }
  }
  Torque best = 0.0 * newton_meter;
  for (const AngularVelocity& speed : speeds) {
    best = std::max(best, lowering_torque(brakes, speed));
  }
  return best;
}

}  // namespace

Torque lowering_torque(const LoweringBrakes& brakes, AngularVelocity rotation) noexcept {
  return brakes.friction + EddyTorque::formula(brakes.eddy_peak, brakes.eddy_critical, rotation) +
         MotorBrakeTorque::formula(brakes.motor_torque, brakes.motor_power, rotation);
}

LoweringBalance lowering_balance(const LoweringBrakes& brakes, Torque load_torque) {
  check(brakes, load_torque);
  LoweringBalance balance{.state = LoweringState::held,
                          .speeds = {},
                          .stable = std::nullopt,
                          .unstable = std::nullopt,
                          .largest_load = largest_torque(brakes)};
  const double e = to_si(Number(brakes.eddy_peak / load_torque));
  const double m = to_si(Number(brakes.motor_torque / load_torque));
  const double f = to_si(Number(brakes.friction / load_torque));
  const double p = to_si(Number(brakes.motor_power / (load_torque * brakes.eddy_critical)));
  // No load falls faster than this on any brake worth the name; the polynomials stay finite.
  constexpr double fastest = 1e9;
  const double limit = m > 0.0 ? std::min(p / m, fastest) : fastest;  // power limit begins here
  const Cubic slow{f + m - 1.0, 2.0 * e, f + m - 1.0, 0.0};
  const double power = m > 0.0 ? p : 0.0;
  const Cubic fast{power, f - 1.0, 2.0 * e + power, f - 1.0};
  std::vector<double> speeds = sign_changes(slow, 0.0, limit);
  for (const double x : sign_changes(fast, limit, fastest)) speeds.push_back(x);
  // The sign at rest, and then one change of it at each speed.
  const bool held = f + m >= 1.0;
  bool stable = !held;
  for (const double x : speeds) {
    balance.speeds.push_back({x * brakes.eddy_critical, stable});
    stable = !stable;
  }
  if (held) {
    // A motor holds while drive and control do; that is no brake.
    balance.state = f >= 1.0 ? LoweringState::held : LoweringState::held_by_motor;
  } else {
    balance.state = speeds.empty() ? LoweringState::runaway : LoweringState::stable;
    if (!speeds.empty()) balance.stable = balance.speeds.front().rotation;
  }
  const auto unstable = std::find_if(balance.speeds.begin(), balance.speeds.end(),
                                     [](const BalanceSpeed& one) { return !one.stable; });
  if (unstable != balance.speeds.end()) balance.unstable = unstable->rotation;
  return balance;
}

}  // namespace ropewalk::brake
