#include "ropewalk/dynamics/string.hpp"

#include <algorithm>
#include <boost/math/policies/policy.hpp>
#include <boost/math/tools/toms748_solve.hpp>

namespace ropewalk::dynamics {

Frequency StringFrequency::formula(Stiffness stiffness, Force block_weight, Area string_area,
                                   Length string_length, Stress string_modulus,
                                   Density string_density, Number mode) noexcept {
  // In θ = ω L/c and over E A/L: (κ − μ θ²) cos θ = θ sin θ, multiplied by cos θ, so that it has no
  // poles. Between two poles of the tangent the two sides meet once.
  const double string_spring = to_si(string_modulus) * to_si(string_area) / to_si(string_length);
  const double string_mass = to_si(string_density) * to_si(string_area) * to_si(string_length);
  const double kappa = to_si(stiffness) / string_spring;
  const double mu = to_si(block_weight) / to_si(standard_gravity) / string_mass;
  const auto difference = [&](double theta) {
    return (kappa - mu * theta * theta) * std::cos(theta) - theta * std::sin(theta);
  };
  const double pole = (to_si(mode) - 0.5) * pi;
  double theta = pole;
  const double start = std::max(0.0, pole - pi);
  const double at_start = difference(start);
  const double at_pole = difference(pole);
  // A root so near to a pole that rounding hides the change of sign is the pole.
  if (at_start == 0.0) {
    theta = start;
  } else if ((at_start > 0.0) != (at_pole > 0.0)) {
    namespace policies = boost::math::policies;
    using Quiet = policies::policy<policies::evaluation_error<policies::ignore_error>,
                                   policies::domain_error<policies::ignore_error>>;
    std::uintmax_t steps = 200;
    const auto [low, high] = boost::math::tools::toms748_solve(
        difference, start, pole, at_start, at_pole, boost::math::tools::eps_tolerance<double>(52),
        steps, Quiet());
    theta = 0.5 * (low + high);
  }
  const double speed = detail::wave_speed(string_modulus, string_density);
  return from_si<Frequency>(theta * speed / to_si(string_length) / (2.0 * pi));
}

}  // namespace ropewalk::dynamics
