/// What each of the four legs bears, with the lines anywhere in plan.
#pragma once

#include <array>

#include "ropewalk/base/parameters.hpp"

namespace ropewalk::mast {

/// Number of legs: A and B in front, at the V-door; C and D behind, at the drawworks. Seen from
/// above, with the drawworks at the top, they go round against the clock: A (−, −), B (+, −),
/// C (+, +), D (−, +).
inline constexpr std::size_t legs = 4;

/// A place in plan, from the middle of the base.
struct PlanPoint {
  Length across;  ///< positive toward legs B and C
  Length along;   ///< positive toward the drawworks, legs C and D
};

/// The base of the structure and where the lines pull on it.
struct Layout {
  Length base_width;    ///< from leg to leg across
  Length base_depth;    ///< from leg to leg along
  PlanPoint dead_line;  ///< the dead line: its anchor
  PlanPoint fast_line;  ///< the fast line: the drum
};

namespace argument {
inline constexpr Interval base_range = above_up_to(0.0 * meter, 100.0 * meter, params::guard);
inline constexpr Parameter<Length> base_width{"base_width", base_range};
inline constexpr Parameter<Length> base_depth{"base_depth", base_range};
}  // namespace argument

/// Share of every leg in a vertical load at one place of the base.
///
///   share = ¼ (1 ± 2 x/b) (1 ± 2 y/h)
///
/// x, y  place, from the middle      b, h  base_width, base_depth
///
/// with the signs of the leg. The load is carried by beams from side to side, and by these to the
/// legs: a load over a leg goes into that leg, one midway between two into these two alike, one in
/// the middle into all four: the table of Bourgoyne et al. (1986), ch. 1. Four legs are one more
/// than statics needs; this sharing is in equilibrium for force and both moments wherever the load
/// is, and bears no leg up for a load inside the base. A stiff crown on elastic legs shares
/// otherwise; the maker's load distribution diagram comes before it.
/// Source: equilibrium.
class LegShares {
 public:
  /// Throws InadmissibleError naming the field: a base without width, a place outside of it.
  explicit LegShares(const Layout& layout);

  [[nodiscard]] const std::array<double, legs>& dead_line() const noexcept { return dead_line_; }
  [[nodiscard]] const std::array<double, legs>& fast_line() const noexcept { return fast_line_; }

  /// Of the dead and of the fast line together, what the leg has that bears most: 1/2 … 2.
  [[nodiscard]] double largest_share() const noexcept;

  /// Load of legs A, B, C, D. `central` bears on all alike: the pull of the lines on the crown, and
  /// the weight of the crown block where it is counted.
  [[nodiscard]] std::array<Force, legs> loads(Force central, Force dead_line,
                                              Force fast_line) const noexcept;

 private:
  std::array<double, legs> dead_line_{};
  std::array<double, legs> fast_line_{};
};

}  // namespace ropewalk::mast
