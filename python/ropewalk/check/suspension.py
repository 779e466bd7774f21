"""Rules for what hangs on the lines, and the crown they hang from: loads against nameplates."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ropewalk.check.facts import text
from ropewalk.check.rule import Measured, Rule
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts

__all__ = ["RULES"]

#: Have rules of their own: `mast.load` and `line.design_factor`.
_ELSEWHERE = ("mast", "drilling line")


def _rating(facts: Facts) -> Iterator[Measured]:
    from dataclasses import replace

    from ropewalk._border import to_quantity
    from ropewalk.suspension import rig_margins

    case, limits = facts.largest, facts.rig.limits
    if not limits.design_factor_standard:
        # It is for the line alone, which has a rule of its own.
        limits = replace(limits, design_factor_standard="API RP 9B")
    # The mast has no rating at an odd number of lines; what hangs has one all the same.
    rig = replace(facts.rig, mast=None, limits=limits)
    margins = rig_margins(rig, to_quantity(case.hook_load, "force"))
    for i, name in enumerate(margins.names):
        if name in _ELSEWHERE:
            continue
        yield Measured(
            value=float(margins.load_si[i]),
            limit=float(margins.rating_si[i]),
            subject=name,
            inputs={
                case.name: text(case.hook_load, "force"),
                "hook load that brings it to its rating": text(
                    float(margins.hook_load_at_rating_si[i]), "force"
                ),
            },
        )


RULES = (
    Rule(
        id="suspension.rating",
        title="Load of each part of the load path against its rating",
        compares="load of crown block, traveling block and each part below, hoisting the largest "
        "hook load, with the rating of its nameplate",
        sense="at most",
        role="force",
        severity=Severity.MUST,
        source="load rating on the nameplate of the part (API Spec 8A, 8C: largest load at rest "
        "and in motion together)",
        standing="from memory",
        how="suspension.rig_margins: crown block with fast and dead line, a part with all below it",
        measure=_rating,
    ),
)
