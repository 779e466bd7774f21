/// A strung hoist as the rope sees it: every place where it is bent, and how far along it lies.
///
/// A point of rope is named by its length g from the first drum end. The rope is held at the
/// dead-line anchor, at g_a. From there toward the drum come the dead line, the arc of the
/// dead-line sheave, and then in turn line m and the arc of turning sheave m, for m = 1 … N; after
/// the last one the fast line, with the lead sheaves, and the drum. With L of line between the
/// blocks the tangent points of turning sheave m lie at
///
///   g_a − (dead line + arcs before it + m L)   and one arc further.
///
/// A stroke of the blocks by ΔL moves them by m |ΔL| over the rope; those of the lead sheaves and
/// of the drum by N |ΔL|. Each tangent point that passes bends or straightens the rope once: half a
/// bending cycle. All lines are taken as vertical, the rope as inextensible, every arc as half a
/// turn. Lead sheaves follow the last crown sheave at once: what line there is between them is to
/// be counted in the fast line, which runs from the last of them to the drum.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "ropewalk/drum/drum.hpp"
#include "ropewalk/line/position.hpp"
#include "ropewalk/reeving/arrangement.hpp"

namespace ropewalk::line {

/// Wear that no bending formula knows, in bending cycles that one event counts as; a crossover,
/// like the bend on the drum, in half cycles. Nothing is published; 0 leaves it out.
struct ExtraWear {
  Number crossover = from_si<Number>(0.0);     ///< rope spooled on or off at a crossover of laps
  Number layer_change = from_si<Number>(0.0);  ///< the same where the rope climbs to the next layer
  Length crossover_length = 0.0 * meter;  ///< rope on one crossover, worn as its upper layer is
  Number pick_up = from_si<Number>(0.0);  ///< rope on a sheave while a load is taken up from rest
  Number dead_line_sheave = from_si<Number>(0.0);  ///< rope on it, each time a load is taken up
  Number anchor = from_si<Number>(0.0);            ///< rope next to it, the same
  /// How many simple bends a bend against the sense of the one before counts as.
  Number reverse_bend = from_si<Number>(1.0);
};

/// A string-up as people describe it.
struct StringUp {
  reeving::Arrangement arrangement;
  std::vector<Length> sheave_diameters;  ///< tread, turning sheave 1 … N
  Length dead_line_sheave_diameter;
  std::vector<Length> lead_sheave_diameters;  ///< from the crown to the drum
  Length rope_diameter;
  Length dead_line;  ///< anchor to dead-line sheave
  Length fast_line;  ///< last crown or lead sheave to drum
  Length shortest;   ///< line between the blocks, block at its highest
  Length longest;    ///< and at its lowest
  drum::Drum drum;
  Number wraps_at_lowest;  ///< on the drum with the block at its lowest, new line
  Length supply;           ///< new line, from the drum end to the end of the reel
  ExtraWear wear{};
  std::vector<bool> reverse_sheaves{};  ///< turning sheaves bent against the sense before; or none
  std::vector<bool> reverse_lead_sheaves{};
  bool reverse_drum = false;
};

/// One place where the rope is bent as it runs.
struct Contact {
  std::string cause;        ///< "crown sheave 2", "drum layer 1"
  int multiple = 0;         ///< rope per travel of the block, m; 0: it does not turn
  Position near = 0.0;      ///< tangent point from the anchor along the rope less m L, m
  Position far = 0.0;       ///< the other one; the same on the drum, which has one
  Length diameter;          ///< D of D/d
  double tension_up = 0.0;  ///< tight side over hook load, hoisting
  double tension_down = 0.0;
  double bends = 1.0;  ///< simple bends it counts as
  int layer = 0;       ///< of the drum; 0 elsewhere
};

class Tackle {
 public:
  /// Throws InadmissibleError: an odd number of lines, whose dead end travels with the block; not
  /// one diameter for every sheave; lengths that cannot be; a drum that does not take the travel.
  explicit Tackle(StringUp string_up);

  [[nodiscard]] const StringUp& string_up() const noexcept { return string_up_; }
  [[nodiscard]] int lines() const noexcept { return string_up_.arrangement.lines(); }
  /// Turning sheaves 1 … N, lead sheaves, drum layers.
  [[nodiscard]] std::span<const Contact> contacts() const noexcept { return contacts_; }
  [[nodiscard]] const Contact& dead_line_sheave() const noexcept { return dead_line_sheave_; }
  /// Highest position of the block above its lowest.
  [[nodiscard]] Length travel() const noexcept { return string_up_.longest - string_up_.shortest; }
  /// Rope from the anchor to the drum with the block at its lowest.
  [[nodiscard]] Position reach() const noexcept { return reach_; }
  /// Position of the anchor on a new line.
  [[nodiscard]] Position first_anchor() const noexcept { return first_anchor_; }
  /// Rope next to the anchor that wear there is laid on.
  static constexpr double anchor_reach = 1.0;

 private:
  void lay_out();

  StringUp string_up_;
  std::vector<Contact> contacts_;
  Contact dead_line_sheave_;
  Position reach_ = 0.0;
  Position first_anchor_ = 0.0;
};

}  // namespace ropewalk::line
