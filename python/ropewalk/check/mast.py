"""Rules for the mast: its load at the lines strung, its legs in the wind."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ropewalk import si
from ropewalk.check.facts import text
from ropewalk.check.rule import CannotTell, Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts

__all__ = ["RULES"]


def _load(facts: Facts) -> Iterator[Measured]:
    rated = facts.need("mast")
    case, lines = facts.largest, facts.rig.reeving.lines
    if lines % 2 != 0:
        raise CannotTell(
            f"{lines} lines are strung: with an odd number the dead line is not on the mast, and "
            "the nameplate is for one that is; the maker's load tables say"
        )
    rating = si.mast.rating_at_lines(
        rated.hook_load_rating, rated.rated_lines, lines, rated.mast.largest_share
    )
    yield Measured(
        value=case.hook_load,
        limit=float(rating),
        subject=case.name,
        inputs={
            "hook load": text(case.hook_load, "force"),
            "rating of the nameplate": text(rated.hook_load_rating, "force"),
            "stated for": f"{rated.rated_lines} lines",
            "strung": f"{lines} lines",
        },
    )


def _uplift(facts: Facts) -> Iterator[Measured]:
    from ropewalk._mast_legs import LEGS

    rated = facts.need("mast")
    if rated.on_legs is None:
        raise NotApplicable("the file has no mast.on_legs, and lines alone lift no leg")
    from ropewalk._border import to_quantity

    rig = facts.rig
    # The lighter the hook, the less holds a leg down: the block alone.
    loads = rated.mast.leg_loads(
        to_quantity(rig.block.weight, "force"),
        rig.reeving,
        "static",
        crown_block_weight=to_quantity(rated.crown_block_weight, "force"),
        on_legs=to_quantity(list(rated.on_legs), "force"),
    )
    for leg, load, brought in zip(LEGS, loads.legs_si, rated.on_legs, strict=True):
        yield Measured(
            value=float(load),
            limit=0.0,
            subject=f"leg {leg}",
            inputs={
                "hook load": text(rig.block.weight, "force"),
                "wind and racked pipe on the leg": text(brought, "force"),
            },
        )


RULES = (
    Rule(
        id="mast.load",
        title="Hook load against the rating of the mast",
        compares="largest hook load with the static hook load rating of the nameplate, brought to "
        "the lines strung; more lines do not raise it",
        sense="at most",
        role="force",
        severity=Severity.MUST,
        source="nameplate of the mast, rated static hook load (API Spec 4F, 5th ed., 2020), no leg "
        "bearing more at the lines strung",
        standing="derived",
        how="mast.rating_at_lines",
        measure=_load,
    ),
    Rule(
        id="mast.uplift",
        title="Legs of the mast pressed down",
        compares="load of each leg with nothing, block alone on the lines, wind and racked pipe as "
        "the file has them; a leg that is lifted needs an anchorage good for that pull",
        sense="at least",
        role="force",
        severity=Severity.SHOULD,
        source="equilibrium of the crown; the maker's anchoring plan comes first",
        standing="derived",
        how="mast.Mast.leg_loads(block weight, 'static', on_legs)",
        measure=_uplift,
    ),
)
