"""Rigs: the file that describes one, and the hoist it describes.

>>> import ropewalk as rw
>>> rig = rw.load_rig(rw.rig.example("rig7"))
>>> rig.name, rig.reeving.lines
('Rig 7', 10)
"""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

from ropewalk.rig.assembly import (
    Block,
    FittedPowerLaw,
    Life,
    Limits,
    ReferenceLife,
    Rig,
    Sheaves,
    load_rig,
)
from ropewalk.rig.brake_check import BrakeCheck
from ropewalk.rig.brake_discs import BrakeDiscs
from ropewalk.rig.brake_parts import Overtravel, RigBrake, braked_hoist
from ropewalk.rig.deadline_parts import DeadLine, LeverSensor
from ropewalk.rig.drawworks_parts import DrawworksParts, hoist, trip
from ropewalk.rig.file import RigFileError
from ropewalk.rig.line_parts import DrumShape, Practice, StringUp, Wear
from ropewalk.rig.mast_parts import HookSpring, LoadPath, RatedMast, RatedPart
from ropewalk.rig.plan import Operation
from ropewalk.rig.practice import Usual, practice
from ropewalk.rig.sea_parts import SiteSea

__all__ = [
    "Block",
    "BrakeCheck",
    "BrakeDiscs",
    "DeadLine",
    "DrawworksParts",
    "DrumShape",
    "FittedPowerLaw",
    "HookSpring",
    "LeverSensor",
    "Life",
    "Limits",
    "LoadPath",
    "Operation",
    "Overtravel",
    "Practice",
    "RatedMast",
    "RatedPart",
    "ReferenceLife",
    "Rig",
    "RigBrake",
    "RigFileError",
    "Sheaves",
    "SiteSea",
    "StringUp",
    "Usual",
    "Wear",
    "braked_hoist",
    "example",
    "hoist",
    "load_rig",
    "practice",
    "trip",
]


def example(name: str) -> Path:
    """Path of a rig file that comes with ropewalk; all of them are invented.

    Parameters
    ----------
    name
        ``"rig7"``, a land rig, or ``"osprey-sound"``, a floater.

    Raises
    ------
    RigFileError
        If there is no such example; the message lists those there are.
    """
    folder = files("ropewalk") / "data" / "rigs"
    known = sorted(Path(str(item)).stem for item in folder.iterdir())
    if name not in known:
        raise RigFileError(f"rig.example(): no example {name!r}; there are: {', '.join(known)}")
    return Path(str(folder / f"{name}.toml"))
