/// Geometry of the rope on a drum: layers, laps, lengths, and where the rope crosses itself.
#pragma once

#include <cmath>
#include <string_view>
#include <vector>

#include "ropewalk/units/quantities.hpp"

namespace ropewalk::drum {

/// Rise from layer to layer over rope diameter where each lap lies in the valley between two laps
/// below that touch: the three rope centers make an equilateral triangle of side d, whose height is
/// √3/2 d.
[[nodiscard]] inline Number nested_layer_height() noexcept {
  return from_si<Number>(std::sqrt(3.0) / 2.0);
}

/// The same where each lap lies on top of one below: one rope diameter.
[[nodiscard]] inline Number stacked_layer_height() noexcept { return from_si<Number>(1.0); }

/// What has to be known of a drum and the rope on it.
struct Shape {
  Length barrel_diameter;      ///< surface the first layer lies on (root of the grooves)
  Length rope_diameter;        ///< nominal
  Number laps_per_layer;       ///< the same in every layer; a whole or half number
  int layers = 1;              ///< that the flanges hold
  Number layer_height;         ///< rise from layer to layer over rope diameter, 0 < c ≤ 1
  int crossovers_per_lap = 1;  ///< 0: none counted; 1: smooth or helical; 2: parallel grooves
};

/// A drum with its rope, counted from the drum end: where the rope is fastened, lap 0 of layer 1.
///
/// Layer k = 1, 2, … lies on a cylinder of diameter D_k, its rope center on D_k + d:
///
///   D_k = D + 2 (k − 1) c d,    lap length  l_k = π (D_k + d)
///
/// D  barrel_diameter,  d  rope_diameter,  c  layer_height (see nested_layer_height)
///
/// The pitch of a lap is neglected: it makes a lap of a hoist drum longer by less than one part in
/// a thousand. A layer full at the flange goes on in the next without a gap, and every layer has
/// the same number of laps. The rope is not flattened; a real drum holds a little more.
/// Source: geometry.
class Drum {
 public:
  /// Throws InadmissibleError naming the field that cannot be.
  explicit Drum(const Shape& shape);

  [[nodiscard]] int layers() const noexcept { return shape_.layers; }
  [[nodiscard]] Length rope_diameter() const noexcept { return shape_.rope_diameter; }
  [[nodiscard]] Number laps_per_layer() const noexcept { return shape_.laps_per_layer; }
  /// Laps that the whole drum holds.
  [[nodiscard]] double wraps() const noexcept;

  // Each of these throws InadmissibleError for a layer that is not 1 … layers().

  /// D_k: diameter of the surface the rope of a layer lies on, the D of D/d.
  [[nodiscard]] Length bend_diameter(int layer) const;
  /// Rope in one lap of a layer.
  [[nodiscard]] Length lap_length(int layer) const;
  /// Rope in one full layer.
  [[nodiscard]] Length layer_length(int layer) const;
  /// Rope in all layers below a layer.
  [[nodiscard]] Length length_before(int layer) const;

  /// Rope in all layers.
  [[nodiscard]] Length capacity() const noexcept { return before_.back(); }

  /// Where a point of the rope lies on the drum.
  struct Place {
    int layer;     ///< from 1; where one layer ends the next has begun
    double lap;    ///< laps into the layer
    double wraps;  ///< all laps from the drum end
  };

  /// Place of the point of the rope at a distance from the drum end. Throws InadmissibleError if
  /// the drum does not hold so much.
  [[nodiscard]] Place place(Length from_drum_end) const;

  /// Rope in so many laps from the drum end; the inverse of place. Throws InadmissibleError if the
  /// drum does not hold so many.
  [[nodiscard]] Length length_of(double wraps) const;

  /// A place where the rope crosses the rope below it.
  struct Crossover {
    Length from_drum_end;
    int layer;          ///< the one the rope is in after it
    bool layer_change;  ///< the rope climbs at the flange into this layer
  };

  /// Every crossover at start ≤ s < end, in order of s, both measured from the drum end: ranges
  /// that follow each other share none. Throws InadmissibleError if the range is none, or the drum
  /// does not hold it.
  ///
  /// From the second layer on the rope lies in the valleys of the layer below, wound the other way
  /// round: it must step over a lap of it once in a lap (smooth drum, helical groove), by a whole
  /// pitch, or twice, by half a pitch each (parallel grooves). These places repeat in every layer
  /// at the same angles of the drum; they are counted where the drum has turned a whole number of
  /// 1/crossovers_per_lap turns since the drum end. That angle is a convention: what matters to the
  /// rope is how far the crossovers move when it is slipped and cut. The first layer lies on the
  /// barrel and crosses nothing; that it is pressed from above is not counted.
  /// Source: Wire Rope Technical Board, Wire Rope Users Manual (crossovers, points of change of
  /// layer); the counts of one and two a lap from memory.
  [[nodiscard]] std::vector<Crossover> crossovers(Length start, Length end) const;

 private:
  void require_layer(int layer) const;
  [[nodiscard]] Place place(std::string_view field, Length from_drum_end) const;
  [[nodiscard]] Length lap(int layer) const noexcept;
  [[nodiscard]] Length length_at(double wraps) const noexcept;

  Shape shape_;
  std::vector<Length> before_;  // rope in all layers below layer k + 1, k = 0 … layers
};

}  // namespace ropewalk::drum
