"""Rules for what an inspection found on the line: wear, damage, age, broken wires.

The rules named here take a rope out of service; where they differ from those in force at the rig
or from the rope maker's, those come first, and so does the inspector.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from ropewalk.check import rope_wires
from ropewalk.check.facts import text
from ropewalk.check.rope_findings import (
    CRANES,
    DRILLING,
    MINES,
    as_found,
    finding,
    rope_rule,
    rows_of,
    source_of,
)
from ropewalk.check.rule import CannotTell, Measured, NotApplicable

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts

__all__ = ["RULES"]


def _thinner(key: str, than: str) -> Callable[[Facts], Iterator[Measured]]:
    def measure(facts: Facts) -> Iterator[Measured]:
        thinnest = finding(facts, "diameter")
        if than == "baseline":
            before = finding(facts, "baseline_diameter")
        else:
            before = facts.rig.rope.diameter_si
        for row in rows_of(facts, key):
            yield Measured(
                value=(before - thinnest) / before,
                limit=row["limit"],
                source=source_of(row),
                inputs={
                    "thinnest": text(thinnest, "length"),
                    f"{than} diameter": text(before, "length"),
                },
            )

    return measure


def _age(facts: Facts) -> Iterator[Measured]:
    from ropewalk._units import Q

    date = finding(facts, "date")
    starts = [one.start for one in facts.rig.operations if one.start is not None]
    if not starts:
        raise NotApplicable("the plan has no dates")
    if any((one.tzinfo is None) is not (date.tzinfo is None) for one in starts):
        raise CannotTell("inspection.date and the dates of the plan: one has an offset from UTC")
    later = [one for one in starts if one >= date]
    if not later:
        raise NotApplicable("the line was inspected after the last operation began")
    first = min(later)
    for row in rows_of(facts, "inspection_age"):
        yield Measured(
            value=(first - date).total_seconds(),
            limit=float(Q(row["limit"], row["unit"]).to_base_units().magnitude),
            source=source_of(row),
            inputs={"inspected": f"{date:%Y-%m-%d}", "work begins": f"{first:%Y-%m-%d}"},
        )


RULES = (
    *rope_wires.RULES,
    rope_rule(
        "outer_wire_loss",
        "Wear of the outer wires",
        "worn part of the diameter of an outer wire with the part that may be",
        MINES,
        as_found("outer_wire_loss"),
    ),
    rope_rule(
        "diameter_loss",
        "Diameter lost since new",
        "loss of diameter, as a part of that measured when new, with the part that may be",
        MINES,
        _thinner("diameter_loss", "baseline"),
    ),
    rope_rule(
        "diameter_reduction",
        "Diameter below nominal",
        "diameter below nominal, as a part of nominal, with the part that may be",
        CRANES,
        _thinner("diameter_reduction", "nominal"),
    ),
    rope_rule(
        "strength_loss",
        "Strength lost by nondestructive testing",
        "loss of strength with the loss that may be",
        MINES,
        as_found("strength_loss"),
    ),
    rope_rule(
        "corrosion", "Corrosion", "1 if there is any, with none", MINES, as_found("corrosion")
    ),
    rope_rule(
        "distortion",
        "Distortion",
        "1 if kinked, crushed, birdcaged or unstranded anywhere, with none",
        f"{MINES}; {DRILLING}",
        as_found("distortion"),
    ),
    rope_rule(
        "heat_damage", "Heat damage", "1 if there is any, with none", MINES, as_found("heat_damage")
    ),
    rope_rule(
        "inspection_age",
        "Age of the last inspection",
        "days from the inspection to the operation that begins next, with the interval of thorough "
        "inspections",
        DRILLING,
        _age,
        role="time",
        how="date of [inspection] and dates of the plan",
    ),
)
