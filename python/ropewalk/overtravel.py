"""Over-travel of the block: stopping distances, set points, devices, slip and cut.

Heights are counted from the lowest working position of the block, upward.

A device that keeps the block off crown and floor protects people. Nothing here replaces the maker's
manual, function tests on the rig at each tour and after every slip and cut, the rules in force
where it stands, and licensed practice.
"""

from __future__ import annotations

from ropewalk._overtravel_check import OvertravelCheck, check_campaign
from ropewalk._overtravel_envelope import stopping_envelope
from ropewalk._overtravel_findings import Finding
from ropewalk._overtravel_formulas import (
    allowed_speed,
    counted_height,
    height_at_wraps,
    stopping_distance,
    trip_height_shift,
    wraps_at_height,
)
from ropewalk._overtravel_hoist import BrakedHoist, Device
from ropewalk._overtravel_slip import SlipCutEffect, slip_cut_effect

__all__ = [
    "BrakedHoist",
    "Device",
    "Finding",
    "OvertravelCheck",
    "SlipCutEffect",
    "allowed_speed",
    "check_campaign",
    "counted_height",
    "height_at_wraps",
    "slip_cut_effect",
    "stopping_distance",
    "stopping_envelope",
    "trip_height_shift",
    "wraps_at_height",
]
