#include "ropewalk/compensator/hanging.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "ropewalk/base/require.hpp"
#include "ropewalk/compensator/gas_spring.hpp"

namespace ropewalk::compensator {

namespace {

constexpr std::string_view where = "compensator.bit_weight_change";

void check(const GasSpring& spring, Stiffness string, Length heave) {
  require(where, argument::mean_load, spring.mean_load);
  require(where, argument::effective_area, spring.effective_area);
  require(where, argument::gas_volume, spring.gas_volume);
  require(where, argument::polytropic_exponent, spring.polytropic_exponent);
  require(where, argument::seal_friction, spring.seal_friction);
  require(where, argument::string_stiffness, string);
  require(where, argument::spring_travel.named("heave"), heave);
  if (spring.effective_area * heave >= spring.gas_volume) {
    throw InadmissibleError(where, "gas_volume",
                            "gas_volume = " + quantity_text(spring.gas_volume) +
                                " is less than a heave of " + quantity_text(heave) + " takes up");
  }
}

}  // namespace

Force bit_weight_change(const GasSpring& spring, Stiffness string, Length heave) {
  check(spring, string, heave);
  const double h = to_si(heave);
  const double k = to_si(string);
  const double friction = std::copysign(to_si(spring.seal_friction), h);
  // What is missing to the balance after a travel x: falls from the stretched string to the spring
  // that has taken all of the heave.
  const auto missing = [&](double x) {
    const Force load = GasLoad::formula(spring.mean_load, spring.effective_area, spring.gas_volume,
                                        spring.polytropic_exponent, from_si<Length>(x));
    return k * (h - x) - friction - to_si(load - spring.mean_load);
  };
  if (std::abs(k * h) <= std::abs(friction)) return from_si<Force>(k * h);
  const double low = std::min(0.0, h);
  const double high = std::max(0.0, h);
  std::uintmax_t steps = 100;
  const auto [a, b] = boost::math::tools::toms748_solve(
      missing, low, high, boost::math::tools::eps_tolerance<double>(50), steps);
  return from_si<Force>(k * (h - 0.5 * (a + b)));
}

}  // namespace ropewalk::compensator
