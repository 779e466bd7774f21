"""Rope dynamics: stiffness of the strung line, frequencies, peak loads of start, stop and pick-up.

The block is a rigid mass on a line without mass, a long string a thin rod; nothing is damped. Peak
factors say what a load does to the line, not what a hoist may be loaded with: ratings are those of
the makers' manuals, the local rules and licensed practice.
"""

from __future__ import annotations

from ropewalk._dynamics import (
    HoistLine,
)
from ropewalk._dynamics_factors import (
    drop_factor,
    pickup_factor,
    ramp_factor,
    slack_speed,
    step_factor,
    stop_factor,
    trough_factor,
    wave_force,
    wave_return_time,
)
from ropewalk._dynamics_line import (
    line_stiffness,
    locked_stiffness,
    natural_frequency,
    series_stiffness,
    static_stretch,
    string_frequency,
    string_stiffness,
)
from ropewalk._dynamics_stop import (
    HoistStop,
)

__all__ = [
    "HoistLine",
    "HoistStop",
    "drop_factor",
    "line_stiffness",
    "locked_stiffness",
    "natural_frequency",
    "pickup_factor",
    "ramp_factor",
    "series_stiffness",
    "slack_speed",
    "static_stretch",
    "step_factor",
    "stop_factor",
    "string_frequency",
    "string_stiffness",
    "trough_factor",
    "wave_force",
    "wave_return_time",
]
