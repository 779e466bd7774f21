"""Masts and derricks: load of the lines, loads of the legs, efficiency factor, rating.

A mast stands as its maker rated it, with the lines, dead line, setback and wind of its nameplate
and on foundations fit for it. Nameplate, maker's manual, local codes and licensed practice come
before anything computed here; people work under what it carries.
"""

from __future__ import annotations

from ropewalk._mast import Mast
from ropewalk._mast_legs import LegLoads
from ropewalk._mast_load import (
    derrick_load,
    efficiency_factor,
    equivalent_load,
    extra_leg_load,
    rating_at_lines,
    static_derrick_load,
    std_4a_capacity,
)

__all__ = [
    "LegLoads",
    "Mast",
    "derrick_load",
    "efficiency_factor",
    "equivalent_load",
    "extra_leg_load",
    "rating_at_lines",
    "static_derrick_load",
    "std_4a_capacity",
]
