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
    from ropewalk.line.compare import compare_programs
    from ropewalk.line.heave import active_heave_campaign
    from ropewalk.line.history import CutSection, LineHistory, SlipOrCut
    from ropewalk.line.optimize import ProgramChoice, ProgramFront, optimize_program
    from ropewalk.line.places import Window, WorstPlace
    from ropewalk.line.program import SlipCutProgram
    from ropewalk.line.run import run_line, stream_line
    from ropewalk.line.spacing import program_warnings
    from ropewalk.line.tension import tension_history

__all__ = [
    "Campaign",
    "CutSection",
    "LineEvent",
    "LineHistory",
    "PlannedOperation",
    "ProgramChoice",
    "ProgramFront",
    "SlipCutProgram",
    "SlipOrCut",
    "Window",
    "WorstPlace",
    "active_heave_campaign",
    "compare_programs",
    "optimize_program",
    "program_warnings",
    "run_line",
    "stream_line",
    "tension_history",
]

_HOMES = {
    "Campaign": "campaign",
    "CutSection": "history",
    "LineHistory": "history",
    "ProgramChoice": "optimize",
    "ProgramFront": "optimize",
    "SlipCutProgram": "program",
    "SlipOrCut": "history",
    "Window": "places",
    "WorstPlace": "places",
    "compare_programs": "compare",
    "optimize_program": "optimize",
    "program_warnings": "spacing",
    "run_line": "run",
    "stream_line": "run",
    "active_heave_campaign": "heave",
    "tension_history": "tension",
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
