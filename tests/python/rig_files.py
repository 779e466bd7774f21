"""Small rig files for tests; everything in them is invented."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

import ropewalk as rw

#: All a rig file must have, in the layout of today.
SMALL = """ropewalk = 2

[rig]
name = "Rig 7"
invented = true

[rope]
construction = "6x19S IWRC"
grade = "EIPS"
diameter = "1.375 in"

[reeving]
lines = 10
sheave_friction = "roller"

[crown]
sheave_diameter = "54 in"
groove_material = "manganese steel"
rated_load = "500 short_ton_force"

[block]
sheave_diameter = "54 in"
groove_material = "manganese steel"
rated_load = "350 short_ton_force"
weight = "46000 lbf"
highest = "8 m"
lowest = "37 m"

[drawworks]
power = "1500 hp"
"""

#: A plan that goes with it.
PLAN = """
[mud]
density = "1.10 kg/liter"
steel_density = "7850 kg/m**3"

[[string.drilling]]
name = "drill pipe"
length = "3400 m"
mass_per_length = "20.85 lb/ft"

[[operation]]
kind = "round trip"
string = "drilling"
depth = "3400 m"
stand_length = "28.5 m"
drag_up = 0.1
"""


def write(folder: Path, text: str, name: str = "rig.toml") -> Path:
    path = folder / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, encoding="utf-8")
    return path


def load(folder: Path, text: str) -> Any:
    return rw.load_rig(write(folder, text))


def refused(path: Path) -> rw.rig.RigFileError:
    with pytest.raises(rw.rig.RigFileError) as caught:
        rw.load_rig(path)
    return caught.value
