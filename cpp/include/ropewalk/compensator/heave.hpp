/// A sea through a response operator: moments of heave, and the highest sea a stroke allows.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "ropewalk/units/quantities.hpp"

namespace ropewalk::compensator {

/// A sea: JONSWAP, see spectrum.hpp; γ = 1 is Pierson–Moskowitz.
struct SeaState {
  Length significant_height;
  Time peak_period;
  Number peak_factor;
};

/// Heave of the vessel over wave amplitude against wave period, its phase left out.
class HeaveOperator {
 public:
  /// The same for all waves: 1 gives the sea itself.
  [[nodiscard]] static HeaveOperator constant(Number ratio);

  /// Straight between points by rising period; at shorter and longer periods the ends hold on, and
  /// what comes from there is counted in Moments::outside.
  /// Throws InadmissibleError for tables that cannot be.
  [[nodiscard]] static HeaveOperator table(const std::vector<Time>& periods,
                                           const std::vector<Number>& ratios);

  /// BoxHullHeave. Throws InadmissibleError for a hull that cannot be.
  [[nodiscard]] static HeaveOperator box_hull(Length length, Length beam, Length draft,
                                              Angle heading);

  [[nodiscard]] Number at(Time period) const { return ratio_(period); }

  /// Periods, s, between which it is smooth enough for a polynomial of high degree.
  [[nodiscard]] const std::vector<double>& joints() const noexcept { return joints_; }
  /// Whether it was given for waves of this period: a table ends, a formula does not.
  [[nodiscard]] bool covers(Time period) const noexcept;

 private:
  HeaveOperator(std::function<Number(Time)> ratio, std::vector<double> joints, bool ends)
      : ratio_(std::move(ratio)), joints_(std::move(joints)), ends_(ends) {}

  std::function<Number(Time)> ratio_;
  std::vector<double> joints_;
  bool ends_;
};

using AreaTimesRate = decltype(Area{} * AngularVelocity{});
using AreaTimesRateSquared = decltype(Area{} * AngularVelocity{} * AngularVelocity{});

/// Moments m_n = ∫ ωⁿ R² S dω of a spectrum S seen through an operator R.
struct Moments {
  Area m0;  ///< variance
  AreaTimesRate m1;
  AreaTimesRateSquared m2;
  double outside = 0.0;  ///< share of m0 from wave periods the operator was not given for

  [[nodiscard]] Length deviation() const;    ///< √m₀
  [[nodiscard]] Length significant() const;  ///< 4 √m₀, double amplitude
  [[nodiscard]] Time zero_crossing() const;  ///< 2 π √(m₀/m₂); 0 where there is no motion
  [[nodiscard]] Time mean_period() const;    ///< 2 π m₀/m₁; 0 where there is no motion
};

/// Moments of heave in a sea, by Gauss' quadrature over wave period, tail and all. Throws
/// InadmissibleError for a sea that cannot be.
[[nodiscard]] Moments heave_moments(const SeaState& sea, const HeaveOperator& response);

/// What a compensator's stroke is asked for.
struct StrokeDemand {
  Length half_stroke;  ///< left in the shorter direction
  Time duration;
  Number exceedance;  ///< allowed probability that the stroke is exceeded at least once
};

/// What stopped the search for the highest sea.
enum class LimitBound {
  stroke,         ///< the stroke is exceeded as often as allowed
  steepest_sea,   ///< even the steepest sea of that period leaves stroke, SteepestHeight
  highest_height  ///< no sea is looked at above the largest admissible height; no limit was found
};

/// The highest sea of one peak period in which a stroke suffices.
struct OperatingLimit {
  Length significant_height;
  Number peak_factor;
  LimitBound bound;
};

/// Raises the sea of a peak period until the stroke is exceeded with the allowed probability, until
/// it is as steep as seas get (SteepestHeight), or to the largest height admitted at all. The peak
/// factor is `factor`, or that of PeakFactor where it is left out. Throws InadmissibleError for
/// what cannot be.
[[nodiscard]] OperatingLimit operating_limit(const HeaveOperator& response, Time peak_period,
                                             const std::optional<Number>& factor,
                                             const StrokeDemand& demand);

}  // namespace ropewalk::compensator
