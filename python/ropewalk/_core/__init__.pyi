"""
The compiled core of ropewalk: plain SI numbers and float64 arrays, no units.
"""

from __future__ import annotations
from . import rope
from . import sheave
from . import reeving
from . import drum
from . import brake
from . import overtravel
from . import drawworks
from . import compensator
from . import mast
from . import suspension
from . import fatigue
from . import design_factor
from . import drillstring
from . import work
from . import line
from . import deadline
from . import dynamics
from . import rainflow
from . import fit

__all__: list[str] = [
    "brake",
    "compensator",
    "deadline",
    "design_factor",
    "drawworks",
    "drillstring",
    "drum",
    "dynamics",
    "fatigue",
    "fit",
    "line",
    "mast",
    "overtravel",
    "rainflow",
    "reeving",
    "rope",
    "sheave",
    "signatures",
    "suspension",
    "table",
    "work",
]

def signatures() -> dict:
    """
    Every row function with the dimensions (length, mass, time, angle, temperature) of its arguments and result, as the compiler knows them.
    """

def table(name: str) -> list[dict]:
    """
    Rows of an embedded table as records.
    """

__version__: str = "0.1.0"
