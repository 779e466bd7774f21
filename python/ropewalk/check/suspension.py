"""Rules for what hangs on the lines, and the crown they hang from: loads against nameplates."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from ropewalk.check.facts import LoadCase, text
from ropewalk.check.rule import Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity
from ropewalk.rig.plan import STUCK

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts
    from ropewalk.rig import Rig

__all__ = ["RULES"]

#: Have rules of their own: `mast.load` and `line.design_factor`.
_ELSEWHERE = ("mast", "drilling line")


def _rating(facts: Facts) -> Iterator[Measured]:
    limits = facts.rig.limits
    if not limits.design_factor_standard:
        # It is for the line alone, which has a rule of its own.
        limits = replace(limits, design_factor_standard="API RP 9B")
    # The mast has no rating at an odd number of lines; what hangs has one all the same.
    rig = replace(facts.rig, mast=None, limits=limits)
    _ = facts.largest  # says what is missing where there is no load
    path = rig.suspension
    own = () if path is None else tuple(one.string for one in path.elevators)
    last = path.parts[-1].name if path is not None and own else ""
    # The last part gives way to the elevators of the strings that have one.
    left = [case for case in facts.loads if case.string not in own]
    for among, of_last in ((list(facts.loads), False), (left, True)):
        if among:
            case = max(among, key=lambda one: one.in_motion)
            yield from (one for one in _of_parts(rig, case) if (one.subject == last) is of_last)


def _of_parts(rig: Rig, case: LoadCase) -> Iterator[Measured]:
    from ropewalk._border import to_quantity
    from ropewalk.suspension import rig_margins

    margins = rig_margins(rig, to_quantity(case.in_motion, "force"))
    inputs = {case.name: text(case.hook_load, "force")}
    if case.acceleration > 0.0:
        inputs["while the block speeds up"] = text(case.in_motion, "force")
    for i, name in enumerate(margins.names):
        if name in _ELSEWHERE:
            continue
        at_rating = float(margins.hook_load_at_rating_si[i])
        yield Measured(
            value=float(margins.load_si[i]),
            limit=float(margins.rating_si[i]),
            subject=name,
            inputs={**inputs, "hook load that brings it to its rating": text(at_rating, "force")},
        )


def _elevator(facts: Facts) -> Iterator[Measured]:
    rig = facts.rig
    elevators = facts.need("suspension").elevators
    if not elevators:
        raise NotApplicable("the file has no suspension.elevator: see the last part of the path")
    overpull = rig.limits.overpull or 0.0
    drilling = any(one.service == "rotary drilling" for one in facts.loads)
    for elevator in elevators:
        found: list[tuple[float, str]] = []
        for one in rig.operations:
            if one.string_name != elevator.string:
                continue
            # The kelly hangs above the elevator, and nothing hangs in it then.
            hung = one.heaviest_hook_load(0.0) - one.kelly_weight + elevator.weight
            case = LoadCase(one.title, one.service, hung, acceleration=one.block_acceleration)
            found.append((case.in_motion, one.title))
            if one.service == "rotary drilling" or (not drilling and one.service != STUCK):
                found.append((hung + overpull, f"{one.title}, pull on a stuck string"))
        if found:
            load, name = max(found)
            yield Measured(
                value=load,
                limit=elevator.rated_load,
                subject=f"{elevator.kind} elevator of {elevator.string}",
                inputs={"at worst": name, "its own weight": text(elevator.weight, "force")},
            )


RULES = (
    Rule(
        id="suspension.rating",
        title="Load of each part of the load path against its rating",
        compares="load of crown block, traveling block and each part below, hoisting the largest "
        "hook load at the block_acceleration of the plan, with the rating of its nameplate; the "
        "last part only where a string has no elevator of its own",
        sense="at most",
        role="force",
        severity=Severity.MUST,
        source="load rating on the nameplate of the part (API Spec 8A, 8C: largest load at rest "
        "and in motion together)",
        standing="from memory",
        how="suspension.rig_margins: crown block with fast and dead line, a part with all below it",
        measure=_rating,
    ),
    Rule(
        id="suspension.elevator",
        title="Load of each string's elevator against its rating",
        compares="heaviest load of the string, with drag, speeding up, or with the pull allowed on "
        "a stuck string, and the elevator itself, with the rating of the elevator",
        sense="at most",
        role="force",
        severity=Severity.MUST,
        source="load rating on the nameplate of the elevator (API Spec 8A, 8C: largest load at "
        "rest and in motion together)",
        standing="from memory",
        how="suspension.elevator of the file; Operation.heaviest_hook_load",
        measure=_elevator,
    ),
)
