/// Unit symbols for messages and signatures.
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "ropewalk/units/quantities.hpp"

namespace ropewalk {

/// Exponents of a quantity in length, mass, time, plane angle and temperature: what Python's
/// signature table is held against.
using Dimensions = std::array<int, 5>;

template <class Q>
struct QuantityName;

#define ROPEWALK_QUANTITY(TYPE, SYMBOL, ...)                \
  template <>                                               \
  struct QuantityName<TYPE> {                               \
    static constexpr std::string_view symbol = SYMBOL;      \
    static constexpr Dimensions dimensions = {__VA_ARGS__}; \
  };
ROPEWALK_QUANTITY(Number, "", 0, 0, 0, 0)
ROPEWALK_QUANTITY(Length, "m", 1, 0, 0, 0)
ROPEWALK_QUANTITY(Area, "m2", 2, 0, 0, 0)
ROPEWALK_QUANTITY(Volume, "m3", 3, 0, 0, 0)
ROPEWALK_QUANTITY(Mass, "kg", 0, 1, 0, 0)
ROPEWALK_QUANTITY(Time, "s", 0, 0, 1, 0)
ROPEWALK_QUANTITY(Speed, "m/s", 1, 0, -1, 0)
ROPEWALK_QUANTITY(Acceleration, "m/s2", 1, 0, -2, 0)
ROPEWALK_QUANTITY(Force, "N", 1, 1, -2, 0)
ROPEWALK_QUANTITY(Stress, "Pa", -1, 1, -2, 0)
ROPEWALK_QUANTITY(Energy, "J", 2, 1, -2, 0)
ROPEWALK_QUANTITY(Power, "W", 2, 1, -3, 0)
ROPEWALK_QUANTITY(Density, "kg/m3", -3, 1, 0, 0)
ROPEWALK_QUANTITY(Angle, "rad", 0, 0, 0, 1)
ROPEWALK_QUANTITY(AngularVelocity, "rad/s", 0, 0, -1, 1)
ROPEWALK_QUANTITY(Frequency, "Hz", 0, 0, -1, 0)
ROPEWALK_QUANTITY(Torque, "N*m/rad", 2, 1, -2, -1)
ROPEWALK_QUANTITY(MomentOfInertia, "kg*m2/rad2", 2, 1, 0, -2)
ROPEWALK_QUANTITY(ForcePerLength, "N/m", 0, 1, -2, 0)
ROPEWALK_QUANTITY(MassPerLength, "kg/m", -1, 1, 0, 0)
ROPEWALK_QUANTITY(SpectralDensity, "m2*s/rad", 2, 0, 1, -1)
ROPEWALK_QUANTITY(Temperature, "K", 0, 0, 0, 0, 1)
ROPEWALK_QUANTITY(VolumeFlow, "m3/s", 3, 0, -1, 0, 0)
ROPEWALK_QUANTITY(HeatFlux, "W/m2", 0, 1, -3, 0, 0)
ROPEWALK_QUANTITY(SpecificHeat, "J/kg/K", 2, 0, -2, 0, -1)
ROPEWALK_QUANTITY(Conductivity, "W/m/K", 1, 1, -3, 0, -1)
ROPEWALK_QUANTITY(HeatLoss, "W/K", 2, 1, -3, 0, -1)
ROPEWALK_QUANTITY(Damping, "N*s/m", 0, 1, -1, 0)
#undef ROPEWALK_QUANTITY

/// Coherent SI symbol of a quantity, "" for a plain number.
template <class Q>
[[nodiscard]] constexpr std::string_view unit_text() noexcept {
  return QuantityName<Q>::symbol;
}

/// Shortest text that reads back as the same number: "0.035", "1e+09".
[[nodiscard]] std::string number_text(double value);

/// Number and unit: "0.035 m".
[[nodiscard]] std::string quantity_text(double value, std::string_view unit);

template <class Q>
[[nodiscard]] std::string quantity_text(const Q& quantity) {
  return quantity_text(to_si(quantity), unit_text<Q>());
}

}  // namespace ropewalk
