#include "ropewalk/line/survival.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"

namespace ropewalk::line {

namespace {

constexpr std::string_view where = "line.survival";
constexpr Interval deviation_range{.low = 0.0, .high = 10.0, .source = params::guard};
constexpr Interval section_range{
    .low = 0.0, .high = 1e9, .low_open = true, .source = params::guard};

/// More would not fit in memory.
constexpr double most_sections = 1e8;
constexpr Interval limit_range{
    .low = 0.0, .high = 100.0, .low_open = true, .source = params::guard};

double normal_distribution(double z) noexcept { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

void check(const Scatter& scatter) {
  const auto look = [](std::string_view field, double value, std::string_view unit,
                       const Interval& range) {
    if (!range.contains(value)) {
      ropewalk::detail::throw_inadmissible(where, field, value, unit, range);
    }
  };
  look("scatter", scatter.ln_deviation, "", deviation_range);
  look("correlation_length", scatter.section, "m", section_range);
  look("limit", scatter.limit, "", limit_range);
}

/// Largest damage of every section that has any. A bin on a border belongs to both.
std::vector<double> worst_of_sections(std::span<const double> damage, double bin, double section) {
  const double length = static_cast<double>(damage.size()) * bin;
  if (length / section > most_sections) {
    throw InadmissibleError(where, "correlation_length",
                            "correlation_length must leave at most 1e8 sections of the line");
  }
  const auto sections = static_cast<std::size_t>(std::ceil(length / section * (1.0 - 1e-12)));
  std::vector<double> worst(std::max<std::size_t>(sections, 1));
  for (std::size_t b = 0; b < damage.size(); ++b) {
    // A border within the rounding of a bin's edge is that edge.
    const double low = (static_cast<double>(b) + 1e-9) * bin / section;
    const double high = (static_cast<double>(b + 1) - 1e-9) * bin / section;
    const auto last = std::min(worst.size() - 1, static_cast<std::size_t>(high));
    for (auto k = static_cast<std::size_t>(low); k <= last; ++k) {
      worst[k] = std::max(worst[k], damage[b]);
    }
  }
  std::erase(worst, 0.0);
  return worst;
}

/// A well-mixed number for every counter: SplitMix64 by Steele, Lea and Flood (2014).
std::uint64_t mixed(std::uint64_t x) noexcept {
  x += 0x9E3779B97F4A7C15U;
  x = (x ^ (x >> 30U)) * 0xBF58476D1CE4E5B9U;
  x = (x ^ (x >> 27U)) * 0x94D049BB133111EBU;
  return x ^ (x >> 31U);
}

/// Open interval (0, 1).
double uniform(std::uint64_t bits) noexcept {
  return (static_cast<double>(bits >> 11U) + 0.5) * 0x1p-53;
}

/// Normal deviate of section k in one sample, by Box and Muller (1958).
double normal(std::uint64_t stream, std::uint64_t k) noexcept {
  const double u = uniform(mixed(stream ^ mixed(2 * k)));
  const double v = uniform(mixed(stream ^ mixed(2 * k + 1)));
  return std::sqrt(-2.0 * std::log(u)) * std::cos(2.0 * std::numbers::pi * v);
}

}  // namespace

double survival(std::span<const double> damage, double bin_length, const Scatter& scatter) {
  check(scatter);
  double probability = 1.0;
  for (const double damage_there : worst_of_sections(damage, bin_length, scatter.section)) {
    const double used = damage_there / scatter.limit;
    if (scatter.ln_deviation == 0.0) {
      if (used > 1.0) return 0.0;
    } else {
      probability *= normal_distribution(-std::log(used) / scatter.ln_deviation);
    }
  }
  return probability;
}

double sampled_survival(std::span<const double> damage, double bin_length, const Scatter& scatter,
                        std::size_t samples, std::uint64_t seed, int threads,
                        const StopAsked& stop) {
  check(scatter);
  if (samples == 0) throw InadmissibleError(where, "samples", "samples must be at least 1");
  std::vector<double> limits = worst_of_sections(damage, bin_length, scatter.section);
  for (double& limit : limits) limit = std::log(limit / scatter.limit);
  std::vector<std::uint8_t> lives(samples);
  const BatchReport report =
      ropewalk::detail::run_pieces(samples, threads, stop, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end; ++i) {
          const std::uint64_t stream = mixed(seed ^ mixed(i));
          lives[i] = 1;
          for (std::size_t k = 0; k < limits.size() && lives[i] != 0; ++k) {
            // The place fails if its damage is more than its own life, exp(s z).
            if (limits[k] > scatter.ln_deviation * normal(stream, k)) lives[i] = 0;
          }
        }
        return BatchReport{};
      });
  if (report.stopped) throw InadmissibleError(where, "samples", "stopped before the end");
  return static_cast<double>(std::count(lives.begin(), lives.end(), 1)) /
         static_cast<double>(samples);
}

}  // namespace ropewalk::line
