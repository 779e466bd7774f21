/// How the rope is strung between crown block, traveling block and drum.
///
/// Lines are numbered from the dead end: line 1 is the first one, line N runs to the sheave from
/// which the fast line leaves the crown. Turning sheave m (1 … N) follows line m; the last one, N,
/// is always on the crown, and crown and traveling block take turns from there.
///
///   N even  The dead end goes over the crown to the anchor. N/2 traveling sheaves and N/2 + 1
///           crown sheaves; one of these, the dead-line sheave, follows no line and does not turn
///           while the blocks travel.
///   N odd   The dead end is tied to the traveling block. (N − 1)/2 traveling and (N + 1)/2 crown
///           sheaves, all of which turn; there is no dead line and no pull on an anchor.
///
/// Lead sheaves stand between the crown and the drum and turn with the fast line.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::reeving {

/// A reeving as people describe it. Frictions are the ratio K of the tight to the slack side.
struct Stringing {
  int lines = 0;
  /// One value for all turning sheaves, or one for each of 1 … N, counted from the dead end.
  std::vector<Number> sheave_friction;
  int lead_sheaves = 0;
  /// One value for all lead sheaves, or one for each, from the crown to the drum. None: that of the
  /// turning sheaves, if they have one value.
  std::vector<Number> lead_sheave_friction{};
  /// True if the dead-line sheave gives way as the dead line stretches: then its friction stands
  /// between line 1 and the dead line. False: it is fixed, and both have one tension.
  bool dead_line_sheave_turns = false;
  /// None: that of the turning sheaves, if they have one value.
  std::optional<Number> dead_line_sheave_friction{};
};

/// A reeving that can be, with the friction of every sheave.
class Arrangement {
 public:
  /// Throws InadmissibleError naming the field that cannot be: a number of lines or lead sheaves
  /// or a friction out of range, not one friction for each sheave, a friction left open, a
  /// dead-line sheave at an odd number of lines.
  explicit Arrangement(const Stringing& stringing);

  [[nodiscard]] int lines() const noexcept { return static_cast<int>(sheave_friction_.size()); }
  /// K of turning sheave 1 … N.
  [[nodiscard]] std::span<const Number> sheave_friction() const noexcept {
    return sheave_friction_;
  }
  /// K of the lead sheaves, from the crown to the drum.
  [[nodiscard]] std::span<const Number> lead_sheave_friction() const noexcept {
    return lead_sheave_friction_;
  }
  /// K of the dead-line sheave if it turns.
  [[nodiscard]] std::optional<Number> dead_line_sheave_friction() const noexcept {
    return dead_line_sheave_friction_;
  }

 private:
  std::vector<Number> sheave_friction_;
  std::vector<Number> lead_sheave_friction_;
  std::optional<Number> dead_line_sheave_friction_;
};

/// True if the dead end goes over the crown to an anchor: N even.
[[nodiscard]] constexpr bool has_dead_line(int lines) noexcept { return lines % 2 == 0; }

/// Sheaves of the traveling block: N/2, or (N − 1)/2 for an odd number of lines.
[[nodiscard]] constexpr int traveling_sheaves(int lines) noexcept { return lines / 2; }

/// Sheaves of the crown block, dead-line sheave included: N/2 + 1, or (N + 1)/2.
[[nodiscard]] constexpr int crown_sheaves(int lines) noexcept { return lines / 2 + 1; }

/// True if turning sheave m (1 … N) is on the crown, false if on the traveling block.
[[nodiscard]] constexpr bool on_crown(int lines, int sheave) noexcept {
  return (lines - sheave) % 2 == 0;
}

}  // namespace ropewalk::reeving
