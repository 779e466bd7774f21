"""Rope on a hoist drum: layers, laps and lengths, crossovers, fleet angle, dead wraps, pressure.

Lengths along the rope are counted from the drum end, where it is fastened; layers from 1.

What a drum may carry, how many wraps must stay on it and how its rope is fastened are said by the
maker's manual, the local rules and licensed practice, which come before anything computed here.
"""

from __future__ import annotations

from ropewalk._drum import Crossover, Drum, Place
from ropewalk._drum_hold import (
    DeadWrapsMinimum,
    FleetAngleLimit,
    barrel_hoop_stress,
    barrel_pressure,
    clamp_force,
    dead_wraps_minimum,
    dead_wraps_minimums,
    fleet_angle_limit,
    fleet_angle_limits,
    holding_ratio,
    holding_wraps,
    layer_factor,
    table,
)
from ropewalk._drum_rope import (
    crossover_shift,
    cut_length,
    fleet_angle,
    fleet_distance,
    laps_in_traverse,
    mixed_layer_height,
    pitched_layer_height,
    reel_capacity,
    reel_capacity_handbook,
    rope_on_drum,
)

__all__ = [
    "Crossover",
    "DeadWrapsMinimum",
    "Drum",
    "FleetAngleLimit",
    "Place",
    "barrel_hoop_stress",
    "barrel_pressure",
    "clamp_force",
    "crossover_shift",
    "cut_length",
    "dead_wraps_minimum",
    "dead_wraps_minimums",
    "fleet_angle",
    "fleet_angle_limit",
    "fleet_angle_limits",
    "fleet_distance",
    "holding_ratio",
    "holding_wraps",
    "laps_in_traverse",
    "layer_factor",
    "mixed_layer_height",
    "pitched_layer_height",
    "reel_capacity",
    "reel_capacity_handbook",
    "rope_on_drum",
    "table",
]
