#include "ropewalk/fatigue/collective.hpp"

#include <cmath>
#include <string>

#include "ropewalk/base/model.hpp"
#include "ropewalk/fatigue/life_basis.hpp"

namespace ropewalk::fatigue {

namespace {

constexpr Interval not_negative{.low = 0.0, .source = params::definition};
constexpr Interval above_zero{.low = 0.0, .low_open = true, .source = params::definition};

std::string element(std::string_view name, std::size_t i) {
  return std::string(name) + "[" + std::to_string(i) + "]";
}

void look(std::string_view where, std::string_view field, std::span<const double> values,
          const Interval& range) {
  for (std::size_t i = 0; i < values.size(); ++i) {
    detail::require(where, element(field, i), values[i], range);
  }
}

void same_length(std::string_view where, std::string_view a, std::span<const double> as,
                 std::string_view b, std::span<const double> bs) {
  if (as.empty() || as.size() != bs.size()) {
    throw InadmissibleError(where, a,
                            std::string(a) + " and " + std::string(b) +
                                " must have the same length of at least 1, got " +
                                std::to_string(as.size()) + " and " + std::to_string(bs.size()));
  }
}

/// Σ u_i of checked shares, above 0.
double total(std::string_view where, std::span<const double> shares) {
  look(where, "shares", shares, not_negative);
  double sum = 0.0;
  for (const double share : shares) sum += share;
  return detail::require(where, "sum of shares", sum, above_zero);
}

}  // namespace

double equivalent_force_ratio(std::span<const double> shares, std::span<const double> force_ratios,
                              double exponent) {
  constexpr std::string_view where = "fatigue.equivalent_force_ratio";
  constexpr Interval range{.low = -50.0,
                           .high = -1e-3,
                           .source = "a life falls with tension, so the exponent is below 0"};
  same_length(where, "shares", shares, "force_ratios", force_ratios);
  look(where, "force_ratios", force_ratios, not_negative);
  detail::require(where, "exponent", exponent, range);
  const double sum = total(where, shares);
  double mean = 0.0;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    mean += shares[i] / sum * std::pow(force_ratios[i], -exponent);
  }
  return std::pow(mean, -1.0 / exponent);
}

double force_spectrum_factor(std::span<const double> shares, std::span<const double> force_ratios) {
  constexpr std::string_view where = "fatigue.force_spectrum_factor";
  constexpr Interval range{
      .low = 0.0, .high = 1.0, .source = "forces are taken relative to the largest"};
  same_length(where, "shares", shares, "force_ratios", force_ratios);
  look(where, "force_ratios", force_ratios, range);
  const double sum = total(where, shares);
  double factor = 0.0;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    factor += shares[i] / sum * (force_ratios[i] * force_ratios[i] * force_ratios[i]);
  }
  return factor;
}

double miner_sum(std::span<const double> counts, std::span<const double> lives) {
  constexpr std::string_view where = "fatigue.miner_sum";
  same_length(where, "counts", counts, "lives", lives);
  look(where, "counts", counts, not_negative);
  look(where, "lives", lives, above_zero);
  double sum = 0.0;
  for (std::size_t i = 0; i < counts.size(); ++i) sum += counts[i] / lives[i];
  return sum;
}

double collective_life(std::span<const double> shares, std::span<const double> lives) {
  constexpr std::string_view where = "fatigue.collective_life";
  same_length(where, "shares", shares, "lives", lives);
  look(where, "lives", lives, above_zero);
  return total(where, shares) / miner_sum(shares, lives);
}

}  // namespace ropewalk::fatigue
