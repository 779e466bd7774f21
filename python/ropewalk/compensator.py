"""Heave compensation: gas spring, string on it, sea, stroke, and the drum that works as one.

What a compensator may carry, in which sea to stop and how it is locked, charged and released are
said by the maker's manual, the local rules and licensed practice, which come before anything
computed here. Its load hangs overhead on gas under high pressure.
"""

from __future__ import annotations

from ropewalk._compensator import Compensator
from ropewalk._compensator_bands import BitWeightBand, LoadBand, RopeMotion
from ropewalk._compensator_heave import Heave, SeaState, heave
from ropewalk._compensator_limit import (
    OperatingLimit,
    operating_limit,
    table,
)
from ropewalk._compensator_response import HeaveOperator
from ropewalk._compensator_rig import CompensatorFinding, rig_findings
from ropewalk._compensator_sea import (
    box_hull_heave,
    jonswap,
    jonswap_normalizer,
    mean_period_ratio,
    peak_factor,
    pierson_moskowitz,
    steepest_height,
    zero_crossing_ratio,
)
from ropewalk._compensator_spring import (
    effective_area,
    gas_load,
    gas_stiffness,
    hanging_ratio,
    hanging_stroke,
    natural_period,
    needed_gas_volume,
    swing_arm_roll,
)
from ropewalk._compensator_stroke import (
    active_line_speed,
    active_power,
    active_power_with_inertia,
    active_work,
    allowed_heave_deviation,
    cycle_exceedance,
    expected_maximum,
    heave_acceleration,
    heave_cycles,
    heave_speed,
    mean_of_highest,
    most_probable_maximum,
    stroke_exceedance,
)

__all__ = [
    "BitWeightBand",
    "Compensator",
    "CompensatorFinding",
    "Heave",
    "HeaveOperator",
    "LoadBand",
    "OperatingLimit",
    "RopeMotion",
    "SeaState",
    "active_line_speed",
    "active_power",
    "active_power_with_inertia",
    "active_work",
    "allowed_heave_deviation",
    "box_hull_heave",
    "cycle_exceedance",
    "effective_area",
    "expected_maximum",
    "gas_load",
    "gas_stiffness",
    "hanging_ratio",
    "hanging_stroke",
    "heave",
    "heave_acceleration",
    "heave_cycles",
    "heave_speed",
    "jonswap",
    "jonswap_normalizer",
    "mean_of_highest",
    "mean_period_ratio",
    "most_probable_maximum",
    "natural_period",
    "needed_gas_volume",
    "operating_limit",
    "peak_factor",
    "pierson_moskowitz",
    "rig_findings",
    "steepest_height",
    "stroke_exceedance",
    "swing_arm_roll",
    "table",
    "zero_crossing_ratio",
]
