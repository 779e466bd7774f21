"""Notes on parts of unusual size: common practice, nothing that is asked for."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ropewalk.check.rule import Measured, Rule
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts
    from ropewalk.rig import Usual

__all__ = ["RULES"]

#: Has rules of its own, `drawworks.usual_power_least` and `drawworks.usual_power_most`.
_ELSEWHERE = ("drawworks.power",)


def _usual(facts: Facts) -> list[Usual]:
    from ropewalk.rig import practice

    found = facts.once("practice", lambda: practice(facts.rig))
    return [one for one in found if one.key not in _ELSEWHERE]


def _measured(one: Usual, bound: float) -> Measured:
    value = one.magnitude
    return Measured(
        value=value / bound,
        limit=1.0,
        subject=one.title,
        inputs={
            one.key: f"{value:.4g} {one.unit}",
            "usual": f"{one.low:g} to {one.high:g} {one.unit}",
        },
    )


def _least(facts: Facts) -> Iterator[Measured]:
    return (_measured(one, one.low) for one in _usual(facts))


def _most(facts: Facts) -> Iterator[Measured]:
    return (_measured(one, one.high) for one in _usual(facts))


_PRACTICE = "common practice, no source; outside lies nothing forbidden, but nothing usual either"

RULES = (
    Rule(
        id="trade.usual_least",
        title="As large as usual",
        compares="size, rating or depth over the least that is usual on drilling rigs, with 1",
        sense="at least",
        role="number",
        severity=Severity.NOTE,
        source=_PRACTICE,
        standing="common practice",
        how="rig.practice",
        measure=_least,
    ),
    Rule(
        id="trade.usual_most",
        title="No larger than usual",
        compares="size, rating or depth over the most that is usual on drilling rigs, with 1",
        sense="at most",
        role="number",
        severity=Severity.NOTE,
        source=_PRACTICE,
        standing="common practice",
        how="rig.practice",
        measure=_most,
    ),
)
