"""Rules for the drilling line: its design factor in every service."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ropewalk.check.facts import text
from ropewalk.check.rule import CannotTell, Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity
from ropewalk.errors import UnknownEntryError

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts

__all__ = ["RULES"]


def _design_factor(facts: Facts) -> Iterator[Measured]:
    from ropewalk import design_factor

    rig = facts.rig
    standard = rig.limits.design_factor_standard
    if not standard:
        raise CannotTell("the file names no limits.design_factor_standard")
    breaking_force = rig.rope.breaking_force_si
    for case in facts.by_service:
        tension = facts.fast_line(case.hook_load)
        try:
            asked = design_factor.minimum(case.service, standard)
        except UnknownEntryError:
            if case.service != "hoisting other":
                raise
            # A load without a service is held against the strictest service of the standard.
            asked = max(
                (one for one in design_factor.minimums() if one.standard == standard),
                key=lambda one: one.value,
            )
        yield Measured(
            value=breaking_force / tension,
            limit=asked.value,
            subject=case.name,
            source=f"{asked.standard}, {asked.source} ({asked.edition}, {asked.standing})",
            inputs={
                "breaking force": text(breaking_force, "force"),
                "hook load": text(case.hook_load, "force"),
                "fast line, hoisting": text(tension, "force"),
                "service": asked.operation,
                "basis of the limit": asked.basis,
            },
        )


def _length(facts: Facts) -> Iterator[Measured]:
    from ropewalk.line._setup import drum_of

    rig = facts.rig
    line, _ = facts.need("line"), facts.need("drum")
    if rig.reeving.lines < 1:
        raise NotApplicable("no lines are strung")
    strung = line.dead_line + line.fast_line + rig.reeving.lines * rig.block.lowest
    drum = facts.once("drum", lambda: drum_of(rig))
    on_drum = float(drum.length_of(line.wraps_at_lowest).to("m").magnitude)
    yield Measured(
        value=line.supply,
        limit=strung + on_drum,
        inputs={
            "strung, block at its lowest": text(strung, "length"),
            "on the drum then": text(on_drum, "length"),
        },
    )


RULES = (
    Rule(
        id="line.design_factor",
        title="Design factor of the drilling line",
        compares="breaking force over fast-line tension while hoisting, with the minimum of the "
        "standard the file names, service by service",
        sense="at least",
        role="number",
        severity=Severity.MUST,
        source="the standard in limits.design_factor_standard",
        standing="published",
        how="rope.breaking_force / reeving.fast_line_tension, heaviest load of each service",
        measure=_design_factor,
    ),
    Rule(
        id="line.length",
        title="Line supplied against line strung",
        compares="length of the new line with what is strung and on the drum, block at its lowest",
        sense="at least",
        role="length",
        severity=Severity.MUST,
        source="geometry: the line must reach",
        standing="derived",
        how="dead line + fast line + lines x lowest + drum.length_of(wraps at lowest)",
        measure=_length,
    ),
)
