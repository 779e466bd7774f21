/// How a sensor gets the tension of the dead line: from a deflected line, a lever, a sheave pin.
///
/// All of them are statics of a thin, limp line without friction in the sensor. The stiffness of a
/// wire rope makes a sensor on a short span read high; makers calibrate for one rope diameter.
#pragma once

#include <cmath>

#include "ropewalk/base/model.hpp"
#include "ropewalk/deadline/parameters.hpp"

namespace ropewalk::deadline {

/// Transverse force that pushes a line out of its way, in the middle between two supports.
///
///   F = 2 T h / √(a² + h²)
///
/// T  rope_tension  force
/// h  deflection    length, by which the middle is pushed out of the straight line
/// a  half_span     length, from the middle to each support along the straight line
///
/// Source: statics of three forces in one point.
struct DeflectionForce {
  static constexpr std::string_view name = "deadline.deflection_force";
  static constexpr std::tuple parameters{params::rope_tension, argument::deflection,
                                         argument::half_span};

  static Force formula(Force rope_tension, Length deflection, Length half_span) noexcept {
    const double slant = std::hypot(to_si(half_span), to_si(deflection));
    return rope_tension * (2.0 * to_si(deflection) / slant);
  }
};
inline constexpr Model<DeflectionForce> deflection_force{};

/// Tension of a line from the transverse force that deflects it.
///
///   T = F √(a² + h²) / (2 h)
///
/// F  sensor_force  force. Other symbols and source as for DeflectionForce.
struct TensionFromDeflection {
  static constexpr std::string_view name = "deadline.tension_from_deflection";
  static constexpr std::tuple parameters{argument::sensor_force, argument::deflection,
                                         argument::half_span};

  static Force formula(Force sensor_force, Length deflection, Length half_span) noexcept {
    const double slant = std::hypot(to_si(half_span), to_si(deflection));
    return sensor_force * (slant / (2.0 * to_si(deflection)));
  }
};
inline constexpr Model<TensionFromDeflection> tension_from_deflection{};

/// Force on the load cell of an anchor whose drum is free to turn and leans on the cell.
///
///   F = T R / L
///
/// T  rope_tension   force, in the dead line
/// R  anchor_radius  length, from the pivot to the middle of the rope
/// L  cell_arm       length, from the pivot to the line of the cell's force
///
/// Source: moments about the pivot.
struct CellForce {
  static constexpr std::string_view name = "deadline.cell_force";
  static constexpr std::tuple parameters{params::rope_tension, argument::anchor_radius,
                                         argument::cell_arm};

  static constexpr Force formula(Force rope_tension, Length anchor_radius,
                                 Length cell_arm) noexcept {
    return rope_tension * (anchor_radius / cell_arm);
  }
};
inline constexpr Model<CellForce> cell_force{};

/// Tension of the dead line from the force on the cell of its anchor.
///
///   T = F L / R
///
/// F  sensor_force  force. Other symbols and source as for CellForce.
struct TensionFromCell {
  static constexpr std::string_view name = "deadline.tension_from_cell";
  static constexpr std::tuple parameters{argument::sensor_force, argument::anchor_radius,
                                         argument::cell_arm};

  static constexpr Force formula(Force sensor_force, Length anchor_radius,
                                 Length cell_arm) noexcept {
    return sensor_force * (cell_arm / anchor_radius);
  }
};
inline constexpr Model<TensionFromCell> tension_from_cell{};

/// Tension of the dead line from the pressure in the hydraulic cell of its anchor.
///
///   T = p A L / R
///
/// p  cell_pressure  stress, above that of the cell without a pull
/// A  cell_area      area of the diaphragm
/// Other symbols and source as for CellForce.
struct TensionFromPressure {
  static constexpr std::string_view name = "deadline.tension_from_pressure";
  static constexpr std::tuple parameters{argument::cell_pressure, argument::cell_area,
                                         argument::anchor_radius, argument::cell_arm};

  static constexpr Force formula(Stress cell_pressure, Area cell_area, Length anchor_radius,
                                 Length cell_arm) noexcept {
    return TensionFromCell::formula(cell_pressure * cell_area, anchor_radius, cell_arm);
  }
};
inline constexpr Model<TensionFromPressure> tension_from_pressure{};

/// Force on the pin of a sheave over which a line turns.
///
///   F = 2 T sin(θ/2)
///
/// T  rope_tension  force, the same on both sides
/// θ  wrap_angle    angle, by which the line turns; the parts of the line enclose 180° − θ
///
/// Source: statics.
struct PinForce {
  static constexpr std::string_view name = "deadline.pin_force";
  static constexpr std::tuple parameters{params::rope_tension, argument::wrap_angle};

  static Force formula(Force rope_tension, Angle wrap_angle) noexcept {
    return rope_tension * (2.0 * std::sin(0.5 * in_radians(wrap_angle)));
  }
};
inline constexpr Model<PinForce> pin_force{};

/// Tension of a line from the force on the pin of a sheave over which it turns.
///
///   T = F / (2 sin(θ/2))
///
/// F  sensor_force  force. Other symbols and source as for PinForce.
struct TensionFromPin {
  static constexpr std::string_view name = "deadline.tension_from_pin";
  static constexpr std::tuple parameters{argument::sensor_force, argument::wrap_angle};

  static Force formula(Force sensor_force, Angle wrap_angle) noexcept {
    return sensor_force / (2.0 * std::sin(0.5 * in_radians(wrap_angle)));
  }
};
inline constexpr Model<TensionFromPin> tension_from_pin{};

}  // namespace ropewalk::deadline
