"""The weight indicator at the dead line, friction found from its readings, anchor and sensor.

The indicator takes the tension of the dead line for that of every line. At rest that is how the
trade weighs; in motion sheave friction makes it show less while hoisting and more while lowering.

A weight indicator is a safety device on many rigs. How it, its sensor and the anchor are fitted,
calibrated and inspected is said by the makers' manuals, the local rules and licensed practice,
which come before anything computed here.
"""

from __future__ import annotations

from ropewalk._deadline import (
    Anchor,
    AnchorCheck,
    WeightIndicator,
    check_anchor,
)
from ropewalk._deadline_fit import (
    FrictionFit,
    fit_friction,
)
from ropewalk._deadline_readings import (
    friction_from_readings,
    friction_uncertainty,
    hoisting_ratio,
    hook_load_from_readings,
    hook_load_hoisting,
    hook_load_lowering,
    lowering_ratio,
)
from ropewalk._deadline_sensor import (
    anchor_capacity,
    cell_force,
    clamps_needed,
    deflection_force,
    pin_force,
    tension_from_cell,
    tension_from_deflection,
    tension_from_pin,
    tension_from_pressure,
)

__all__ = [
    "Anchor",
    "AnchorCheck",
    "FrictionFit",
    "WeightIndicator",
    "anchor_capacity",
    "cell_force",
    "check_anchor",
    "clamps_needed",
    "deflection_force",
    "fit_friction",
    "friction_from_readings",
    "friction_uncertainty",
    "hoisting_ratio",
    "hook_load_from_readings",
    "hook_load_hoisting",
    "hook_load_lowering",
    "lowering_ratio",
    "pin_force",
    "tension_from_cell",
    "tension_from_deflection",
    "tension_from_pin",
    "tension_from_pressure",
]
