/// Endurance factors: what multiplies a bending life, by name and with its source.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "ropewalk/fatigue/parameters.hpp"
#include "ropewalk/units/angle.hpp"

namespace ropewalk::fatigue {

/// One multiplier of a bending life.
struct EnduranceFactor {
  std::string name;  ///< "groove", "lubrication" …
  double value = 1.0;
  std::string source;
  std::string standing;  ///< "published", "from memory", "derived" or "given" by the caller
};

/// Multipliers that go together; each name once.
class EnduranceFactors {
 public:
  /// Throws InadmissibleError for a name given twice or a value that is not above 0.
  void add(EnduranceFactor factor);

  [[nodiscard]] const std::vector<EnduranceFactor>& factors() const noexcept { return factors_; }
  [[nodiscard]] Number product() const noexcept;

 private:
  std::vector<EnduranceFactor> factors_;
};

/// Lubrication f_N1: "well lubricated" or "none" (Müller 1966).
///
/// Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.15; data table "endurance_lubrication".
[[nodiscard]] EnduranceFactor lubrication_factor(std::string_view lubrication);

/// Round steel groove f_N3, by groove radius over rope diameter, r/d from 0.53 to 1.00.
///
/// The source gives six points; between them the straight line is ropewalk's choice.
/// Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.15; data table "endurance_round_groove".
[[nodiscard]] EnduranceFactor round_groove_factor(Number groove_radius_ratio);

/// Undercut ("undercut", angle 75° … 105°) or V groove ("V", 35° … 45°) f_N3 (Holeschak 1987).
///
/// The source gives points; between them the power law is ropewalk's choice.
/// Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.15; data table "endurance_shaped_groove".
[[nodiscard]] EnduranceFactor shaped_groove_factor(std::string_view groove, Angle groove_angle);

/// Core and number of strands f_C (Wolf 1987): core "FC", "IWRC", "PWRC", "ESWRC" or "EFWRC",
/// 6 or 8 strands.
///
/// Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.14a; data table "endurance_core".
[[nodiscard]] EnduranceFactor core_factor(std::string_view core, int strands);

/// Bending life of a construction over that of 6x25FW: "6x19S", or with its core "6x19S IWRC",
/// which does not count here.
///
/// A comparison of ropes of one diameter and grade in the same test; not to be multiplied with
/// core_factor(), which compares other things.
/// Source: Wire Rope Users Manual, from memory; data table "endurance_construction".
[[nodiscard]] EnduranceFactor construction_factor(std::string_view construction);

/// Equivalent number of sheaves of the traction sheave by its groove, N_equiv(t) (EN 81-50):
/// "round", "undercut" (75° … 105°) or "V" (35° … 45°). The angle of a round groove does not count.
///
/// Between the printed angles the power law is ropewalk's choice, the same as in
/// shaped_groove_factor(), whose values are the reciprocals.
/// Source: EN 81-50:2014, 5.12, from memory; data table "en81_50_grooves".
[[nodiscard]] double en81_groove_equivalent(std::string_view groove, Angle groove_angle);

}  // namespace ropewalk::fatigue
