"""What several rules on the hoist take: loads by kind, the braked hoist, torques at the drum."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from ropewalk import si
from ropewalk.check.facts import LoadCase, NoLoad
from ropewalk.check.rule import NotApplicable
from ropewalk.rig.plan import STUCK

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts
    from ropewalk.overtravel import BrakedHoist
    from ropewalk.reeving import Motion

__all__ = [
    "asked",
    "braked",
    "drum_diameter",
    "fullest",
    "hanging",
    "heaviest",
    "load_torque",
    "lowered",
    "slipped",
]

#: Service of the load that `limits.hook_load` asks for; no operation of a plan has it.
_ASKED = "hoisting other"


def heaviest(facts: Facts) -> tuple[LoadCase, ...]:
    """Return the heaviest load that hangs free, and the heaviest pull on a stuck string.

    Raises
    ------
    NotApplicable
        If the file has neither.
    """
    groups: tuple[list[LoadCase], list[LoadCase]] = ([], [])
    for case in facts.loads:
        groups[case.service == STUCK].append(case)
    found = tuple(max(one, key=lambda case: case.hook_load) for one in groups if one)
    if not found:
        raise NoLoad
    return found


def hanging(facts: Facts) -> LoadCase:
    """Return the heaviest load that hangs free: let go, it falls.

    A stuck string hangs on the hole; let go, it only loses its pull.

    Raises
    ------
    NotApplicable
        If the file has none.
    """
    found = heaviest(facts)[0]
    if found.service == STUCK:
        raise NotApplicable("the plan has pulls on a stuck string alone: nothing hangs free")
    return found


def asked(facts: Facts) -> LoadCase | None:
    """Return the load that the file asks for beside its plan, or None."""
    return next((case for case in facts.loads if case.service == _ASKED), None)


def lowered(facts: Facts) -> LoadCase:
    """Return the heaviest load that is lowered: at rest, without drag, which nobody may count on.

    Raises
    ------
    NotApplicable
        If the file has none.
    """
    weight = facts.rig.block.weight
    cases = [
        LoadCase(one.title, one.service, replace(one, drag_up=0.0).heaviest_hook_load(weight))
        for one in facts.rig.operations
        if one.string is not None and one.service != STUCK
    ]
    beside = asked(facts)
    if beside is not None:
        cases.append(beside)
    if not cases:
        raise NoLoad
    return max(cases, key=lambda case: case.hook_load)


def braked(facts: Facts) -> BrakedHoist:
    """Return drum, line and brake of the rig on its emergency calipers alone.

    Raises
    ------
    Absent
        If the file lacks one of the tables.
    """
    from ropewalk.rig import braked_hoist

    for section in ("brake", "drum", "line"):
        facts.need(section)
    return facts.once("braked hoist", lambda: braked_hoist(facts.rig))


def slipped(facts: Facts) -> float:
    """Line that slips have brought onto the drum just before it is cut, m."""
    program = facts.rig.program
    return 0.0 if program is None else max(0.0, program.cut - program.slip)


def fullest(facts: Facts, height: float) -> float:
    """Height at which as much line is on the drum as at another just before a cut, m.

    Line that was slipped lies under the line that the block takes up: at one height the line then
    leaves from farther out, and the torque of the load is larger.
    """
    return height + slipped(facts) / facts.rig.reeving.lines


def drum_diameter(hoist: BrakedHoist, height: float) -> float:
    """Diameter of the middle of the rope in the layer that leaves the drum, m.

    Parameters
    ----------
    hoist
        Drum and line.
    height
        Of the block above its lowest working position, m.
    """
    return float(hoist.drum._drum().lap_length(int(hoist._layers(height)))) / math.pi


def load_torque(
    facts: Facts, hoist: BrakedHoist, load: float, height: float, motion: Motion
) -> float:
    """Torque of a hook load at the drum just before a cut, N·m; load in N, height in m."""
    fast_line = facts.rig.reeving._arrangement.tensions(motion, load)["fast_line"]
    diameter = drum_diameter(hoist, fullest(facts, height))
    return float(si.drawworks.drum_torque(float(fast_line), diameter))
