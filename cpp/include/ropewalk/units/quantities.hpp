/// The quantities ropewalk computes with: one alias per role, all in coherent SI.
///
/// Units are checked by the compiler (Boost.Units) and cost nothing at run time. Two roles with
/// the same SI unit but a different meaning stay different types wherever Boost.Units lets them:
/// a torque carries 1/rad and is not an energy, an angular velocity is not a frequency. The only
/// way between them is units/angle.hpp.
#pragma once

#include <boost/units/quantity.hpp>
#include <boost/units/systems/si.hpp>

namespace ropewalk {

namespace detail {
namespace bu = boost::units;
namespace si = boost::units::si;

using force_per_length_dimension =
    bu::derived_dimension<bu::mass_base_dimension, 1, bu::time_base_dimension, -2>::type;
using mass_per_length_dimension =
    bu::derived_dimension<bu::mass_base_dimension, 1, bu::length_base_dimension, -1>::type;
using volume_flow_dimension =
    bu::derived_dimension<bu::length_base_dimension, 3, bu::time_base_dimension, -1>::type;
using heat_flux_dimension =
    bu::derived_dimension<bu::mass_base_dimension, 1, bu::time_base_dimension, -3>::type;
using specific_heat_dimension =
    bu::derived_dimension<bu::length_base_dimension, 2, bu::time_base_dimension, -2,
                          bu::temperature_base_dimension, -1>::type;
using conductivity_dimension =
    bu::derived_dimension<bu::length_base_dimension, 1, bu::mass_base_dimension, 1,
                          bu::time_base_dimension, -3, bu::temperature_base_dimension, -1>::type;
using heat_loss_dimension =
    bu::derived_dimension<bu::length_base_dimension, 2, bu::mass_base_dimension, 1,
                          bu::time_base_dimension, -3, bu::temperature_base_dimension, -1>::type;
using spectral_density_dimension =
    bu::derived_dimension<bu::length_base_dimension, 2, bu::time_base_dimension, 1,
                          bu::plane_angle_base_dimension, -1>::type;
using damping_dimension =
    bu::derived_dimension<bu::mass_base_dimension, 1, bu::time_base_dimension, -1>::type;
}  // namespace detail

using Number = detail::bu::quantity<detail::si::dimensionless>;
using Length = detail::bu::quantity<detail::si::length>;
using Area = detail::bu::quantity<detail::si::area>;
using Volume = detail::bu::quantity<detail::si::volume>;
using Mass = detail::bu::quantity<detail::si::mass>;
using Time = detail::bu::quantity<detail::si::time>;
using Speed = detail::bu::quantity<detail::si::velocity>;
using Acceleration = detail::bu::quantity<detail::si::acceleration>;
using Force = detail::bu::quantity<detail::si::force>;
using Stress = detail::bu::quantity<detail::si::pressure>;
using Energy = detail::bu::quantity<detail::si::energy>;
using Power = detail::bu::quantity<detail::si::power>;
using Density = detail::bu::quantity<detail::si::mass_density>;
using Angle = detail::bu::quantity<detail::si::plane_angle>;
using AngularVelocity = detail::bu::quantity<detail::si::angular_velocity>;
using Frequency = detail::bu::quantity<detail::si::frequency>;
using Torque = detail::bu::quantity<detail::si::torque>;
using MomentOfInertia = detail::bu::quantity<detail::si::moment_of_inertia>;

/// Weight of a pipe or rope per length, N/m: already multiplied by standard gravity.
using ForcePerLength =
    detail::bu::quantity<detail::bu::unit<detail::force_per_length_dimension, detail::si::system>>;
/// Stiffness of a spring, N/m. Boost.Units cannot tell it from a weight per length.
using Stiffness = ForcePerLength;
/// Density of a wave spectrum over angular frequency, m² s/rad.
using SpectralDensity =
    detail::bu::quantity<detail::bu::unit<detail::spectral_density_dimension, detail::si::system>>;
/// Mass of a pipe or rope per length, kg/m.
using MassPerLength =
    detail::bu::quantity<detail::bu::unit<detail::mass_per_length_dimension, detail::si::system>>;

// Heat. A temperature is a difference or counted from absolute zero, never a reading in °C or °F.
using Temperature = detail::bu::quantity<detail::si::temperature>;
using VolumeFlow =
    detail::bu::quantity<detail::bu::unit<detail::volume_flow_dimension, detail::si::system>>;
using HeatFlux =
    detail::bu::quantity<detail::bu::unit<detail::heat_flux_dimension, detail::si::system>>;
using SpecificHeat =
    detail::bu::quantity<detail::bu::unit<detail::specific_heat_dimension, detail::si::system>>;
using Conductivity =
    detail::bu::quantity<detail::bu::unit<detail::conductivity_dimension, detail::si::system>>;
/// Heat a body gives off per time and difference in temperature, W/K.
using HeatLoss =
    detail::bu::quantity<detail::bu::unit<detail::heat_loss_dimension, detail::si::system>>;
/// Force of a viscous damper per speed, N·s/m.
using Damping =
    detail::bu::quantity<detail::bu::unit<detail::damping_dimension, detail::si::system>>;

/// Builds a quantity from a number that is already in the coherent SI unit.
/// The name says what it does at the one place where a bare number becomes a quantity.
template <class Q>
[[nodiscard]] constexpr Q from_si(double value) noexcept {
  return Q::from_value(value);
}

/// The number of a quantity in its coherent SI unit.
template <class Q>
[[nodiscard]] constexpr double to_si(const Q& quantity) noexcept {
  return quantity.value();
}

template <>
[[nodiscard]] constexpr Number from_si<Number>(double value) noexcept {
  return Number(value);
}

static_assert(sizeof(Force) == sizeof(double), "a quantity is as large as its number");

}  // namespace ropewalk
