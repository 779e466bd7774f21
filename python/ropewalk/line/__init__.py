"""The drilling line over a campaign: what the hoist did, and what it did to the line.

The map tells where along the rope the bends of a campaign fall. It replaces neither inspection of
the rope nor the maker's manual, the rules in force where the rig stands, and the judgment of
qualified people.

>>> import ropewalk as rw
>>> rw.Campaign.from_plan(rw.rig.example("rig7")).operations[0].kind
'drilling'
"""

from __future__ import annotations

import importlib
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from ropewalk.line.campaign import Campaign, LineEvent, PlannedOperation

__all__ = ["Campaign", "LineEvent", "PlannedOperation"]

_HOMES = {
    "Campaign": "campaign",
    "LineEvent": "campaign",
    "PlannedOperation": "campaign",
}


def __getattr__(name: str) -> Any:
    if name in _HOMES:
        value = getattr(importlib.import_module(f"{__name__}.{_HOMES[name]}"), name)
        globals()[name] = value
        return value
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


def __dir__() -> list[str]:
    return sorted({*globals(), *__all__})
