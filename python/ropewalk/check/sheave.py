"""Rules for the sheaves: size in rope diameters, bearing pressure, grooves, usual sizes."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from functools import cache
from typing import TYPE_CHECKING, Any

from ropewalk import si
from ropewalk.check.facts import practice_table, si_of, text
from ropewalk.check.rule import Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts
    from ropewalk.rig import Sheaves

__all__ = ["RULES"]

_TREADS = "Lyons (1996), eq. 4-25 and Table 4-35, p. 600, sheave-diameter factors of API RP 9B"
_GAUGES = "API Spec 8A, API Spec 8C and API RP 9B, groove gauges"


def _blocks(facts: Facts) -> tuple[tuple[str, Sheaves], ...]:
    rig = facts.rig
    return ("crown sheaves", rig.crown), ("traveling-block sheaves", rig.block.sheaves)


def _bend_ratio(condition: str) -> Callable[[Facts], Iterator[Measured]]:
    def measure(facts: Facts) -> Iterator[Measured]:
        rope = facts.rig.rope
        # The factors hold for any core; the table knows the construction without it.
        name = rope.construction.partition(" ")[0]
        tread = si.sheave.tread_diameter(name, condition, rope.diameter_si)
        for part, sheaves in _blocks(facts):
            yield Measured(
                value=float(si.sheave.bend_ratio(sheaves.diameter, rope.diameter_si)),
                limit=float(si.sheave.bend_ratio(tread, rope.diameter_si)),
                subject=part,
                inputs={
                    "tread": text(sheaves.diameter, "length"),
                    "tread advised": text(tread, "length"),
                    "construction": name,
                },
            )

    return measure


def _tensions(facts: Facts) -> tuple[float, float]:
    """Largest tension on a crown sheave and on a sheave of the traveling block, N."""

    def compute() -> tuple[float, float]:
        found = facts.rig.reeving._arrangement.tensions("hoisting", facts.largest.hook_load)
        # The fast line runs off the crown; of the lines between the blocks the last is tightest.
        return float(found["fast_line_at_crown"]), float(found["lines"][..., -1])

    return facts.once("sheave tensions", compute)


def _bearing_pressure(facts: Facts) -> Iterator[Measured]:
    rope = facts.rig.rope
    case = facts.largest
    for (part, sheaves), tension in zip(_blocks(facts), _tensions(facts), strict=True):
        # The lay is not in the file; the limits of regular lay are the lower ones.
        material = sheaves.groove_material
        limit = si.sheave.bearing_pressure_limit(material, rope.rope_class, "regular")
        yield Measured(
            value=float(si.sheave.bearing_pressure(tension, rope.diameter_si, sheaves.diameter)),
            limit=float(limit),
            subject=part,
            source=_limit_source(material, rope.rope_class),
            inputs={
                "load": case.name,
                "tension": text(tension, "force"),
                "tread": text(sheaves.diameter, "length"),
                "groove": f"{material}, {rope.rope_class}, regular lay",
            },
        )


@cache
def _bearing_limits() -> tuple[Mapping[str, Any], ...]:
    return tuple(si.sheave.table("bearing_pressure_limits"))


def _limit_source(material: str, rope_class: str) -> str:
    """Source and standing of one limit; empty, which is that of the rule, if it is not found."""
    for row in _bearing_limits():
        names = row["groove_material"], row["groove_material_also"]
        classes = row["rope_class"], row["rope_class_also"]
        if material in names and rope_class in classes and row["lay"] == "regular":
            return f"{row['source']} ({row['standing']})"
    return ""


def _groove(limit_of: Callable[[float], Any], worst: Any) -> Callable[[Facts], Iterator[Measured]]:
    def measure(facts: Facts) -> Iterator[Measured]:
        inspection = facts.need("inspection")
        found = {
            "crown sheaves": inspection.crown_groove_radii,
            "traveling-block sheaves": inspection.block_groove_radii,
        }
        if not any(found.values()):
            raise NotApplicable(
                "the file has no inspection.crown_groove_radii and no inspection.block_groove_radii"
            )
        diameter = facts.rig.rope.diameter_si
        for part, radii in found.items():
            if radii:
                yield Measured(
                    value=worst(radii),
                    limit=float(limit_of(diameter)),
                    subject=part,
                    inputs={
                        "rope": text(diameter, "length"),
                        "grooves measured": f"{len(radii)}",
                    },
                )

    return measure


def _usual(bound: str) -> Callable[[Facts], Iterator[Measured]]:
    def measure(facts: Facts) -> Iterator[Measured]:
        diameters = {
            "crown.sheave_diameter": facts.rig.crown.diameter,
            "block.sheave_diameter": facts.rig.block.sheaves.diameter,
        }
        for row in practice_table("trade_practice"):
            if row["key"] in diameters:
                yield Measured(
                    value=diameters[row["key"]],
                    limit=si_of(row[bound], row["unit"]),
                    subject=row["title"],
                )

    return measure


RULES = (
    Rule(
        id="sheave.bend_ratio",
        title="Sheave over rope diameter, least",
        compares="tread diameter over rope diameter with the factor of the construction where some "
        "life is given up for a smaller sheave, condition B",
        sense="at least",
        role="number",
        severity=Severity.SHOULD,
        source=f"{_TREADS}, condition B",
        standing="published",
        how="sheave.bend_ratio; sheave.tread_diameter",
        measure=_bend_ratio("B"),
    ),
    Rule(
        id="sheave.bend_ratio_for_life",
        title="Sheave over rope diameter, where bending wears the line",
        compares="tread diameter over rope diameter with the factor of the construction where "
        "bending is what wears the rope, condition A; few drilling rigs reach it",
        sense="at least",
        role="number",
        severity=Severity.NOTE,
        source=f"{_TREADS}, condition A",
        standing="published",
        how="sheave.bend_ratio; sheave.tread_diameter",
        measure=_bend_ratio("A"),
    ),
    Rule(
        id="sheave.bearing_pressure",
        title="Bearing pressure in the groove",
        compares="pressure under the tightest line of the largest load, hoisting, with what the "
        "groove material bears under this class of rope in regular lay",
        sense="at most",
        role="stress",
        severity=Severity.SHOULD,
        source="AISI, Wire Rope Users Manual (1979), in Shigley, 8th ed., Table 17-26",
        standing="from memory",
        how="sheave.bearing_pressure; sheave.bearing_pressure_limit",
        measure=_bearing_pressure,
    ),
    Rule(
        id="sheave.groove_worn",
        title="Worn groove, least radius",
        compares="smallest groove radius measured with that of the worn gauge",
        sense="at least",
        role="length",
        severity=Severity.MUST,
        source=f"{_GAUGES}: 2.5 % over nominal",
        standing="published",
        how="[inspection]; sheave.groove_radius_worn_min",
        measure=_groove(lambda d: si.sheave.groove_radius_worn_min(d), min),
    ),
    Rule(
        id="sheave.groove_wide",
        title="Groove radius against the largest of a new groove",
        compares="largest groove radius measured with the largest of a new groove: a wider one "
        "supports the rope less",
        sense="at most",
        role="length",
        severity=Severity.NOTE,
        source=f"{_GAUGES}: new grooves, 10 % over nominal",
        standing="published",
        how="[inspection]; sheave.groove_radius_new_max",
        measure=_groove(lambda d: si.sheave.groove_radius_new_max(d), max),
    ),
    Rule(
        id="sheave.usual_least",
        title="Sheave diameter against the smallest that is usual",
        compares="sheave diameter with the lower end of the usual range",
        sense="at least",
        role="length",
        severity=Severity.NOTE,
        source="common practice, no source",
        standing="common practice",
        how="crown.sheave_diameter, block.sheave_diameter",
        measure=_usual("low"),
        tightens=False,
    ),
    Rule(
        id="sheave.usual_largest",
        title="Sheave diameter against the largest that is usual",
        compares="sheave diameter with the upper end of the usual range",
        sense="at most",
        role="length",
        severity=Severity.NOTE,
        source="common practice, no source",
        standing="common practice",
        how="crown.sheave_diameter, block.sheave_diameter",
        measure=_usual("high"),
        tightens=False,
    ),
)
