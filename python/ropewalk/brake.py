"""Brakes of a hoist: bands, discs, eddy-current and motor brakes, lowering, heat, stops.

All torques are at the drum shaft. Friction of linings, fading, delays and inertia are published
for no drawworks in general: they are arguments without default.

Brakes hold loads over people. Nothing here replaces the maker's manual, brake tests on the rig, the
rules in force where it stands, and licensed practice.
"""

from __future__ import annotations

from ropewalk._brake_auxiliary import (
    braking_power,
    eddy_stable_speed,
    eddy_torque,
    eddy_unstable_speed,
    motor_brake_torque,
)
from ropewalk._brake_balance import BalanceSpeed, LoweringBalance, LoweringBrakes
from ropewalk._brake_deceleration import (
    hoisting_deceleration,
    lowering_deceleration,
    stop_tension_factor,
    sudden_stop_factor,
)
from ropewalk._brake_fade import FrictionTable
from ropewalk._brake_fall_back import FallBack
from ropewalk._brake_finding import HoldingFinding
from ropewalk._brake_friction import (
    band_lever_tension,
    band_mean_pressure,
    band_pressure,
    band_tension_ratio,
    band_torque,
    band_torque_reversed,
    caliper_torque,
    pad_radius_uniform_pressure,
    pad_radius_uniform_wear,
    spring_pad_force,
)
from ropewalk._brake_heat import (
    TripTemperature,
    cooling_water_flow,
    friction_heat_flux,
    heat_rise,
    lowering_heat,
    surface_rise,
    surface_rise_of_stop,
    temperature_over_trip,
)
from ropewalk._brake_holding import BandBrake, DiscBrake
from ropewalk._brake_required import (
    RequiredFactor,
    holding_factor,
    required_factor,
    required_factors,
)
from ropewalk._brake_stop import ElasticStop, RigidStop, Stop

__all__ = [
    "BalanceSpeed",
    "BandBrake",
    "DiscBrake",
    "ElasticStop",
    "FallBack",
    "FrictionTable",
    "HoldingFinding",
    "LoweringBalance",
    "LoweringBrakes",
    "RequiredFactor",
    "RigidStop",
    "Stop",
    "TripTemperature",
    "band_lever_tension",
    "band_mean_pressure",
    "band_pressure",
    "band_tension_ratio",
    "band_torque",
    "band_torque_reversed",
    "braking_power",
    "caliper_torque",
    "cooling_water_flow",
    "eddy_stable_speed",
    "eddy_torque",
    "eddy_unstable_speed",
    "friction_heat_flux",
    "heat_rise",
    "hoisting_deceleration",
    "holding_factor",
    "lowering_deceleration",
    "lowering_heat",
    "motor_brake_torque",
    "pad_radius_uniform_pressure",
    "pad_radius_uniform_wear",
    "required_factor",
    "required_factors",
    "spring_pad_force",
    "stop_tension_factor",
    "sudden_stop_factor",
    "surface_rise",
    "surface_rise_of_stop",
    "temperature_over_trip",
]
