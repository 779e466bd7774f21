/// From the travel of the blocks to places on the rope.
///
/// The tangent point of a sheave that passes m times the travel lies on the rope at
///
///   x(h) = x(0) + m h
///
/// for block height h. A stroke sweeps the rope between its two ends and leaves its severity there,
/// the same on every foot; so a function of block height becomes one of rope position, stretched m
/// times. A bin of rope gets the mean over its length; one that a stroke ends in gets its share of
/// it, no more.
#pragma once

#include <span>

#include "ropewalk/line/position.hpp"
#include "ropewalk/line/travel_profile.hpp"

namespace ropewalk::line {

/// One tangent point in SI numbers.
struct Sweep {
  Position at_lowest = 0.0;  ///< x(0): rope position with the block at its lowest
  double multiple = 1.0;     ///< m
  double up = 1.0;           ///< damage per severity while hoisting
  double down = 1.0;         ///< and while lowering
  // Rope outside does not count: it is another layer of the drum, or no crossover.
  Position from = 0.0;
  Position to = 0.0;
};

/// Bins of rope, from position 0 on.
class RopeBins {
 public:
  explicit RopeBins(double bin_length) noexcept : length_(bin_length) {}
  [[nodiscard]] double length() const noexcept { return length_; }

  /// Adds a profile, unrolled by one tangent point, to `values`: mean over each bin. Whatever lies
  /// beyond the bins is an error of the caller, who has checked that rope is there.
  void unroll(const TravelProfile& profile, std::size_t group, const Sweep& sweep,
              std::span<double> values) const;

  /// Adds `severity` to the rope between two positions.
  void cover(Position from, Position to, double severity, std::span<double> values) const;

 private:
  void by_pieces(const TravelProfile& profile, std::size_t group, const Sweep& sweep,
                 std::span<double> values) const;
  void by_bins(const TravelProfile& profile, std::size_t group, const Sweep& sweep,
               std::span<double> values) const;

  double length_;
};

}  // namespace ropewalk::line
