"""Rules for the dead-line anchor: it holds the pull, and as much as the line."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ropewalk._border import to_quantity
from ropewalk.check.facts import text
from ropewalk.check.rule import Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts
    from ropewalk.deadline import AnchorCheck

__all__ = ["RULES"]


def _check(facts: Facts, hook_load: float) -> AnchorCheck:
    from ropewalk.deadline import check_anchor

    return check_anchor(facts.rig, to_quantity(hook_load, "force"))


def _anchor(facts: Facts) -> Iterator[Measured]:
    facts.need("deadline")
    case = facts.largest
    check = _check(facts, case.hook_load)
    yield Measured(
        value=check.capacity_si,
        limit=check.pull_si,
        subject=case.name,
        inputs={
            "hook load": text(case.hook_load, "force"),
            "capacity over pull": f"{check.margin:.3g}",
        },
    )


def _working_strength(facts: Facts) -> Iterator[Measured]:
    facts.need("deadline")
    # Neither capacity nor working strength depends on the load; the block is always there.
    check = _check(facts, facts.rig.block.weight)
    yield Measured(
        value=check.capacity_si,
        limit=check.working_strength_si,
        inputs={"breaking force of the line": text(check.breaking_force_si, "force")},
    )


def _working_strength_required(facts: Facts) -> Iterator[Measured]:
    facts.need("deadline")
    standard = facts.rig.limits.design_factor_standard
    if standard != _SERVICING:
        raise NotApplicable(f"{standard or 'no standard'}: nothing on the anchor known from it")
    yield from _working_strength(facts)


#: Rules that ask for it, as limits.design_factor_standard names them.
_SERVICING = "Wyoming servicing"

RULES = (
    Rule(
        id="deadline.anchor",
        title="Dead-line anchor against its largest pull",
        compares="pull at which the line slips through the anchor with the tension of the dead "
        "line while the largest hook load is lowered",
        sense="at least",
        role="force",
        severity=Severity.MUST,
        source="statics: the anchor must hold the dead line",
        standing="derived",
        how="deadline.check_anchor: capacity against largest pull",
        measure=_anchor,
    ),
    Rule(
        id="deadline.working_strength",
        title="Dead-line anchor as strong as the line",
        compares="pull at which the line slips through the anchor with the working strength of the "
        "line: breaking force over the least design factor of the same rules",
        sense="at least",
        role="force",
        severity=Severity.SHOULD,
        source="Wyoming Administrative Code, OSHA oil and gas well servicing, ch. 6, 6-2(a) and "
        "(b), current through April 2019; what the working strength is, it leaves to the reader",
        standing="published",
        how="deadline.check_anchor: capacity against working strength",
        measure=_working_strength,
    ),
    Rule(
        id="deadline.working_strength_required",
        title="Dead-line anchor as strong as the line, as the rules ask",
        compares="as deadline.working_strength, where limits.design_factor_standard names the "
        "rules that ask for it",
        sense="at least",
        role="force",
        severity=Severity.MUST,
        source="Wyoming Administrative Code, OSHA oil and gas well servicing, ch. 6, 6-2(a): "
        '"shall"; current through April 2019',
        standing="published",
        how="deadline.check_anchor: capacity against working strength",
        measure=_working_strength_required,
    ),
)
