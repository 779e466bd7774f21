"""Rules for the drum: wraps left, rope it holds, size, fleet angle, what holds the end."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from ropewalk import si
from ropewalk.check._hoisting import slipped
from ropewalk.check.facts import text
from ropewalk.check.rule import Absent, Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts

__all__ = ["RULES"]


def _wraps(facts: Facts, minimum: Any) -> Measured:
    facts.need("drum")
    return Measured(
        value=facts.need("line").wraps_at_lowest,
        limit=minimum["value"],
        source=f"{minimum['standard']}, {minimum['source']} ({minimum['standing']})",
        inputs={"counted with": minimum["condition"]},
    )


def _dead_wraps(facts: Facts) -> Iterator[Measured]:
    yield _wraps(facts, si.drum.dead_wraps_minimum("common practice"))


def _dead_wraps_required(facts: Facts) -> Iterator[Measured]:
    standard = facts.rig.limits.design_factor_standard
    for minimum in si.drum.dead_wraps_minimums():
        if minimum["standard"] == standard:
            yield _wraps(facts, minimum)
            return
    raise NotApplicable(f"{standard or 'no standard'}: no number of wraps known for it")


def _native(facts: Facts) -> Any:
    """Return the drum as the core has it."""
    shape, rope = facts.need("drum"), facts.rig.rope

    def make() -> Any:
        return si.drum.Drum(
            shape.barrel_diameter,
            rope.diameter_si,
            shape.laps_per_layer,
            shape.layers,
            shape.layer_height,
            shape.crossovers_per_lap,
        )

    return facts.once("native drum", make)


def _capacity(facts: Facts) -> Iterator[Measured]:
    rig = facts.rig
    drum, line = _native(facts), facts.need("line")
    spooled = rig.reeving.lines * rig.travel
    # Where the wraps alone are more than the drum holds, all of it and more is on it.
    wraps = min(line.wraps_at_lowest, float(drum.wraps))
    left = float(drum.length_of(wraps))
    beyond = (line.wraps_at_lowest - wraps) * float(drum.lap_length(facts.need("drum").layers))
    yield Measured(
        value=left + beyond + spooled + slipped(facts),
        limit=float(drum.capacity),
        inputs={
            "wraps with the block at its lowest": text(left + beyond, "length"),
            "spooled over the travel": text(spooled, "length"),
            "slipped before the next cut": text(slipped(facts), "length"),
        },
    )


def _bend_ratio(facts: Facts) -> Iterator[Measured]:
    from ropewalk import _core

    barrel, rope = facts.need("drum").barrel_diameter, facts.rig.rope.diameter_si
    for row in facts.once("hoist practice", lambda: _core.table("hoist_practice")):
        if row["key"] == "drum.bend_ratio":
            yield Measured(
                value=float(si.sheave.bend_ratio(barrel, rope)),
                limit=row["value"],
                inputs={"barrel": text(barrel, "length"), "rope": text(rope, "length")},
            )


def _fleet_angle(facts: Facts, bound: str) -> Iterator[Measured]:
    spooling = facts.need("drum").spooling
    if spooling is None:
        raise Absent("drum.spooling")
    beside = spooling.sheave_position, spooling.traverse - spooling.sheave_position
    worst = max(beside) if bound == "maximum" else min(beside)
    angle = float(si.drum.fleet_angle(worst, spooling.distance))
    for limit in si.drum.fleet_angle_limits():
        # A publication that gives no least angle has 0 there.
        if limit["groove"] == spooling.groove and limit[bound] > 0.0:
            yield Measured(
                value=angle,
                limit=limit[bound],
                subject=f"{limit['groove']} drum, {limit['standard']}",
                source=f"{limit['source']} ({limit['standing']})",
                inputs={
                    "from the plane of the sheave to the flange": text(worst, "length"),
                    "distance": text(spooling.distance, "length"),
                },
            )


def _fleet_angle_largest(facts: Facts) -> Iterator[Measured]:
    yield from _fleet_angle(facts, "maximum")


def _fleet_angle_least(facts: Facts) -> Iterator[Measured]:
    yield from _fleet_angle(facts, "minimum")


def _end_holding(facts: Facts) -> Iterator[Measured]:
    drum, line = facts.need("drum"), facts.need("line")
    if drum.fastening is None:
        raise Absent("drum.fastening")
    case = facts.largest
    tension = facts.fast_line(case.hook_load)
    ratio = float(si.drum.holding_ratio(drum.fastening.friction, line.wraps_at_lowest))
    left = float(si.drum.clamp_force(tension, drum.fastening.friction, line.wraps_at_lowest))
    yield Measured(
        value=ratio * drum.fastening.clamp_holding,
        limit=tension,
        subject=case.name,
        inputs={
            "wraps": f"{line.wraps_at_lowest:g}",
            "friction": f"{drum.fastening.friction:g}",
            "clamp holds": text(drum.fastening.clamp_holding, "force"),
            "pull left at the clamp": text(left, "force"),
        },
    )


RULES = (
    Rule(
        id="drum.dead_wraps",
        title="Wraps left on the drum",
        compares="wraps on the drum with the block at its lowest with what is common",
        sense="at least",
        role="number",
        severity=Severity.SHOULD,
        source="common practice, no source",
        standing="common practice",
        how="line.wraps_at_lowest; drum.dead_wraps_minimum",
        measure=_dead_wraps,
    ),
    Rule(
        id="drum.dead_wraps_required",
        title="Wraps left on the drum, as the rules ask",
        compares="wraps on the drum with the block at its lowest with the number in the rules that "
        "limits.design_factor_standard names",
        sense="at least",
        role="number",
        severity=Severity.MUST,
        source="the standard in limits.design_factor_standard",
        standing="published",
        how="line.wraps_at_lowest; drum.dead_wraps_minimum",
        measure=_dead_wraps_required,
    ),
    Rule(
        id="drum.capacity",
        title="Rope on the drum against what it holds",
        compares="rope on the drum with the block at its highest, just before a cut, with the rope "
        "that fills all layers",
        sense="at most",
        role="length",
        severity=Severity.MUST,
        source="geometry: the flanges hold so many layers",
        standing="derived",
        how="drum.Drum.length_of(wraps at lowest) + lines x travel + cut - slip; "
        "drum.Drum.capacity",
        measure=_capacity,
    ),
    Rule(
        id="drum.bend_ratio",
        title="Barrel over rope diameter",
        compares="barrel diameter over rope diameter with the least advised",
        sense="at least",
        role="number",
        severity=Severity.SHOULD,
        source="API RP 9B, least diameter of drums; edition not checked",
        standing="from memory",
        how="sheave.bend_ratio of the barrel",
        measure=_bend_ratio,
    ),
    Rule(
        id="drum.fleet_angle",
        title="Fleet angle, largest",
        compares="angle of the line at the farther flange with the largest at which this kind of "
        "drum winds well",
        sense="at most",
        role="angle",
        severity=Severity.SHOULD,
        source="Wire Rope Technical Board, Wire Rope Users Manual, fleet angle, and others",
        standing="published",
        how="drum.fleet_angle; drum.fleet_angle_limits",
        measure=_fleet_angle_largest,
    ),
    Rule(
        id="drum.fleet_angle_least",
        title="Fleet angle, least at a flange",
        compares="angle of the line at the nearer flange with the least that keeps the line from "
        "piling up there",
        sense="at least",
        role="angle",
        severity=Severity.SHOULD,
        source="Wire Rope Technical Board, Wire Rope Users Manual, fleet angle, and others",
        standing="published",
        how="drum.fleet_angle; drum.fleet_angle_limits",
        measure=_fleet_angle_least,
    ),
    Rule(
        id="drum.end_holding",
        title="Holding of the end of the line",
        compares="pull that wraps and fastening hold, block at its lowest, with the fast-line "
        "tension of the largest load",
        sense="at least",
        role="force",
        severity=Severity.MUST,
        source="Euler and Eytelwein, belt friction; friction and clamp as the file gives them",
        standing="derived",
        how="drum.holding_ratio x drum.fastening.clamp_holding; reeving.fast_line_tension",
        measure=_end_holding,
    ),
)
