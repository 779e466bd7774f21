"""The drawworks: power, load and speed, inertia, time and energy of strokes and whole trips.

Motors, gears, drum shaft, drum and reeving make a `Hoist`: what each gear hoists at which speed,
how fast it accelerates, and how long a stand or a trip takes.

What a drawworks may lift and how fast, and how it is held, is said by its nameplate, the maker's
manual, the rules in force where the rig stands, and licensed practice, which come before anything
computed here. Braking is another subject: lowering is taken as held by a brake that can.
"""

from __future__ import annotations

from ropewalk._drawworks_drive import Drive
from ropewalk._drawworks_hoist import Hoist
from ropewalk._drawworks_machine import Drawworks, Gear, Motors
from ropewalk._drawworks_motion import (
    hook_equivalent_mass,
    reflected_inertia,
    sheave_equivalent_mass,
    stand_peak_speed,
    stand_time,
)
from ropewalk._drawworks_power import (
    drum_speed,
    drum_torque,
    hoisting_power,
    hoisting_speed,
    hook_power,
    motor_torque,
    power_for_depth,
)
from ropewalk._drawworks_sizes import RigSize, rig_sizes, size_for_depth, table
from ropewalk._drawworks_stroke import Limits, Stroke, StrokeCurve
from ropewalk._drawworks_trip import Trip, trip

__all__ = [
    "Drawworks",
    "Drive",
    "Gear",
    "Hoist",
    "Limits",
    "Motors",
    "RigSize",
    "Stroke",
    "StrokeCurve",
    "Trip",
    "drum_speed",
    "drum_torque",
    "hoisting_power",
    "hoisting_speed",
    "hook_equivalent_mass",
    "hook_power",
    "motor_torque",
    "power_for_depth",
    "reflected_inertia",
    "rig_sizes",
    "sheave_equivalent_mass",
    "size_for_depth",
    "stand_peak_speed",
    "stand_time",
    "table",
    "trip",
]
