/// Tables of lives for the tests of `fit`.
#pragma once

#include <array>
#include <cmath>
#include <vector>

#include "ropewalk/fit/regression.hpp"

namespace ropewalk::fit {

/// A specimen: pseudo-stress in ksi, life in thousands of cycles, whether it ran out.
struct Specimen {
  double stress;
  double life;
  bool ran_out = false;
};

/// Nickel-base superalloy: W. Nelson, Accelerated Testing (1990), p. 272.
inline constexpr std::array superalloy{
    Specimen{80.3, 211.629}, Specimen{80.6, 200.027}, Specimen{80.8, 57.923, true},
    Specimen{84.3, 155.000}, Specimen{85.2, 13.949},  Specimen{85.6, 112.968, true},
    Specimen{85.8, 152.680}, Specimen{86.4, 156.725}, Specimen{86.7, 138.114, true},
    Specimen{87.2, 56.723},  Specimen{87.3, 121.075}, Specimen{89.7, 122.372, true},
    Specimen{91.3, 112.002}, Specimen{99.8, 43.331},  Specimen{100.1, 12.076},
    Specimen{100.5, 13.181}, Specimen{113.0, 18.067}, Specimen{114.8, 21.300},
    Specimen{116.4, 15.616}, Specimen{118.0, 13.030}, Specimen{118.4, 8.489},
    Specimen{118.6, 12.434}, Specimen{120.4, 9.750},  Specimen{142.5, 11.865},
    Specimen{144.5, 6.705},  Specimen{145.9, 5.733}};

/// Quadratic in ln(stress over `reference`), ln σ constant or linear in it.
inline Table superalloy_table(double reference, bool scale_linear = false,
                              Distribution distribution = Distribution::weibull) {
  Table table{.distribution = distribution,
              .y = {},
              .y_to = {},
              .known = {},
              .location = {},
              .location_columns = 3,
              .scale = {},
              .scale_columns = scale_linear ? 2U : 1U};
  for (const Specimen& one : superalloy) {
    const double x = std::log(one.stress / reference);
    table.y.push_back(std::log(one.life));
    table.known.push_back(one.ran_out ? Known::above : Known::exactly);
    table.location.insert(table.location.end(), {1.0, x, x * x});
    table.scale.push_back(1.0);
    if (scale_linear) table.scale.push_back(x);
  }
  table.y_to = table.y;
  return table;
}

/// Lives of one population.
inline Table sample(Distribution distribution, const std::vector<double>& y) {
  return {.distribution = distribution,
          .y = y,
          .y_to = y,
          .known = std::vector<Known>(y.size(), Known::exactly),
          .location = std::vector<double>(y.size(), 1.0),
          .location_columns = 1,
          .scale = std::vector<double>(y.size(), 1.0),
          .scale_columns = 1};
}

}  // namespace ropewalk::fit
