"""Rules for the heave compensator: its load, its stroke in the sea of the file, its band."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ropewalk._border import to_quantity
from ropewalk.check._hoisting import hanging
from ropewalk.check.facts import text
from ropewalk.check.rule import Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts

__all__ = ["RULES"]


def _rated_load(facts: Facts) -> Iterator[Measured]:
    rated = facts.need("compensator").rated_load_si
    if rated is None:
        raise NotApplicable("the file has no compensator.rated_load, from the nameplate")
    case = hanging(facts)
    yield Measured(
        value=case.hook_load,
        limit=rated,
        subject=case.name,
        inputs={"block and what stays on it": text(facts.rig.block.weight, "force")},
    )


def _stroke(facts: Facts) -> Iterator[Measured]:
    compensator, sea = facts.need("compensator"), facts.need("sea")
    yield Measured(
        value=sea.stroke_exceedance(compensator),
        limit=sea.exceedance,
        inputs={
            "stroke": text(compensator.stroke_si, "length"),
            "lost off the middle": text(sea.offset, "length"),
            "significant wave height": text(sea.state.significant_height_si, "length"),
            "peak period": text(sea.state.peak_period_si, "time"),
            "lasting": text(sea.duration, "time"),
        },
    )


def _band(facts: Facts) -> Iterator[Measured]:
    compensator, sea = facts.need("compensator"), facts.need("sea")
    if compensator.rated_load_si is None:
        raise NotApplicable("the file has no compensator.rated_load, from the nameplate")
    case, heave = hanging(facts), facts.once("heave", sea.heave)
    height, period = heave.significant_height, heave.zero_crossing_period
    band = compensator.load_band(to_quantity(case.hook_load, "force"), height, period)
    yield Measured(
        value=float(band.highest.magnitude),
        limit=compensator.rated_load_si,
        subject=case.name,
        inputs={
            "hook load": text(case.hook_load, "force"),
            "significant height of heave": text(float(height.magnitude), "length"),
            "period of heave": text(float(period.magnitude), "time"),
            "largest change over the mean load": f"{band.share:.3g}",
        },
    )


RULES = (
    Rule(
        id="compensator.rated_load",
        title="Hook load against the rated load of the compensator",
        compares="heaviest load that hangs free, all of it counted, with the load it is rated to "
        "compensate; a stuck string is pulled with the compensator locked",
        sense="at most",
        role="force",
        severity=Severity.MUST,
        source="nameplate of the compensator, load rated to compensate",
        standing="derived",
        how="heaviest hook load of the plan and of the load asked for",
        measure=_rated_load,
    ),
    Rule(
        id="compensator.stroke",
        title="Stroke of the compensator in the sea of the file",
        compares="probability that the stroke is exceeded while the sea lasts with the one allowed",
        sense="at most",
        role="number",
        severity=Severity.MUST,
        source="sea.exceedance of the file",
        standing="derived",
        how="rig.SiteSea.stroke_exceedance: narrow-banded Gaussian heave (Rayleigh)",
        measure=_stroke,
    ),
    Rule(
        id="compensator.load_band",
        title="Highest load in heave against the rated load",
        compares="heaviest load with gas, seals and moving mass in heave of significant height, "
        "largest value of each at once, with the load it is rated to compensate",
        sense="at most",
        role="force",
        severity=Severity.NOTE,
        source="nameplate of the compensator; its maker says whether the rating has the band in it",
        standing="derived",
        how="compensator.Compensator.load_band",
        measure=_band,
    ),
)
