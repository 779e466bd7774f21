/// The root of a rising function, where it has one.
#pragma once

#include <boost/math/tools/toms748_solve.hpp>
#include <cstdint>

namespace ropewalk::drawworks {

/// Argument between `low` and `high`, where `rising` is below and above zero, at which it crosses
/// zero; to the last bits.
template <class F>
[[nodiscard]] double rising_root(const F& rising, double low, double high) {
  if (rising(low) >= 0.0) return low;
  std::uintmax_t iterations = 200;
  const auto [below, above] = boost::math::tools::toms748_solve(
      rising, low, high, boost::math::tools::eps_tolerance<double>(52), iterations);
  return 0.5 * (below + above);
}

}  // namespace ropewalk::drawworks
