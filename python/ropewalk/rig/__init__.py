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
    Rig,
    Sheaves,
    load_rig,
    rig_of,
)
from ropewalk.rig.brake_check import BrakeCheck
from ropewalk.rig.brake_discs import BrakeDiscs
from ropewalk.rig.brake_parts import Overtravel, RigBrake, braked_hoist
from ropewalk.rig.deadline_parts import DeadLine, LeverSensor
from ropewalk.rig.drawworks_parts import DrawworksParts, hoist, trip
from ropewalk.rig.file import Reading, RigFileError, read
from ropewalk.rig.inspection_parts import Inspection
from ropewalk.rig.life_parts import FittedPowerLaw, Life, ReferenceLife
from ropewalk.rig.limits_parts import Limits, OwnRule
from ropewalk.rig.line_parts import (
    DrumFastening,
    DrumShape,
    Practice,
    Spooling,
    StringUp,
    Wear,
)
from ropewalk.rig.mast_parts import RatedMast
from ropewalk.rig.origins import Origin
from ropewalk.rig.parameters import RigParameter, parameters
from ropewalk.rig.plan import Operation
from ropewalk.rig.practice import Usual, practice
from ropewalk.rig.problems import Place
from ropewalk.rig.resolved import Resolved, resolved
from ropewalk.rig.schema import schema
from ropewalk.rig.sea_parts import SiteSea
from ropewalk.rig.suspension_parts import HookSpring, LoadPath, RatedPart, StringElevator

__all__ = [
    "Block",
    "BrakeCheck",
    "BrakeDiscs",
    "DeadLine",
    "DrawworksParts",
    "DrumFastening",
    "DrumShape",
    "FittedPowerLaw",
    "HookSpring",
    "Inspection",
    "LeverSensor",
    "Life",
    "Limits",
    "LoadPath",
    "Operation",
    "Origin",
    "Overtravel",
    "OwnRule",
    "Place",
    "Practice",
    "RatedMast",
    "RatedPart",
    "Reading",
    "ReferenceLife",
    "Resolved",
    "Rig",
    "RigBrake",
    "RigFileError",
    "RigParameter",
    "Sheaves",
    "SiteSea",
    "Spooling",
    "StringElevator",
    "StringUp",
    "Usual",
    "Wear",
    "braked_hoist",
    "example",
    "hoist",
    "load_rig",
    "parameters",
    "practice",
    "read",
    "resolved",
    "rig_of",
    "schema",
    "trip",
]


def example(name: str) -> Path:
    """Path of a rig file that comes with ropewalk; all of them are invented.

    Parameters
    ----------
    name
        ``"rig7"``, a land rig; ``"heavy-casing"``, the same on twelve lines with another job;
        ``"five-faults"``, the same with five faults put in on purpose; ``"osprey-sound"``, a
        floater; ``"workover-hoist"``, a small hoist on a trailer; ``"minimal"``, the least a file
        can have.

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
