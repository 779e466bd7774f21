"""Compensator and sea of a rig, as objects of the subject `ropewalk.compensator`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk.rig.file import RigFileError
from ropewalk.rig.problems import named

if TYPE_CHECKING:
    from ropewalk.compensator import Compensator, Heave, HeaveOperator, SeaState
    from ropewalk.rig.sea_sections import CompensatorSection, SeaSection


@dataclass(frozen=True, slots=True)
class SiteSea:
    """The sea a floater is to work in, and how it heaves in it.

    Attributes
    ----------
    state
        Height and period.
    response
        Heave of the vessel by wave period.
    duration
        How long the sea lasts, s.
    exceedance
        Allowed probability that the stroke is exceeded.
    offset
        Stroke lost off the middle, m.
    """

    state: SeaState
    response: HeaveOperator
    duration: float
    exceedance: float
    offset: float

    def heave(self) -> Heave:
        """Heave of the vessel in this sea."""
        from ropewalk.compensator import heave

        return heave(self.state, self.response)

    def stroke_exceedance(self, compensator: Compensator) -> float:
        """Probability that a compensator's stroke is exceeded while the sea lasts.

        Compare it with `exceedance`. 1 where the offset leaves no stroke at all.
        """
        from ropewalk._units import Q

        half = compensator.stroke_si / 2.0 - self.offset
        if half <= 0.0:
            return 1.0
        return self.heave().exceedance(Q(half, "m"), Q(self.duration, "s"))


def make_compensator(section: CompensatorSection | None) -> Compensator | None:
    """Return the compensator of ``[compensator]``."""
    if section is None:
        return None
    from ropewalk._units import Q
    from ropewalk.compensator import Compensator

    rating = section.rated_load
    with named("compensator"):
        return Compensator(
            section.mounting,
            Q(section.stroke, "m"),
            Q(section.effective_area, "m**2"),
            Q(section.gas_volume, "m**3"),
            polytropic_exponent=section.polytropic_exponent,
            seal_friction=section.seal_friction,
            moving_mass=Q(section.moving_mass, "kg"),
            rated_load=None if rating is None else Q(rating, "N"),
        )


def weight_on_compensator(section: CompensatorSection | None, block_weight: float) -> float | None:
    """Return the weight the gas carries besides the string, N; None if the file does not say it.

    A crown-mounted compensator carries all that stays on the lines.
    """
    if section is None:
        return None
    if section.mounting == "crown":
        if section.weight_below is not None:
            raise RigFileError(
                "compensator.weight_below is of a block-mounted compensator; a crown-mounted one "
                "carries all of block.weight"
            )
        return block_weight
    below = section.weight_below
    if below is not None and below >= block_weight:
        raise RigFileError(
            f"compensator.weight_below = {below / 1000.0:.4g} kN must be less than block.weight = "
            f"{block_weight / 1000.0:.4g} kN, which it is a part of"
        )
    return below


def make_sea(section: SeaSection | None) -> SiteSea | None:
    """Return the sea of ``[sea]``; it has one of response and hull."""
    if section is None:
        return None
    from ropewalk._units import Q
    from ropewalk.compensator import SeaState

    with named("sea"):
        state = SeaState(
            Q(section.significant_height, "m"), Q(section.peak_period, "s"), section.peak_factor
        )
    return SiteSea(
        state=state,
        response=_response(section),
        duration=section.duration,
        exceedance=section.exceedance,
        offset=section.offset,
    )


def _response(section: SeaSection) -> HeaveOperator:
    from ropewalk._units import Q
    from ropewalk.compensator import HeaveOperator

    table, hull = section.response, section.hull
    if (table is None) == (hull is None):
        raise RigFileError(
            "sea: one of response (a table of heave over wave amplitude) and hull (a ship-shaped "
            "vessel) must be given"
        )
    if table is not None:
        with named("sea.response"):
            return HeaveOperator.table(Q(table.periods, "s"), table.ratios)
    assert hull is not None
    with named("sea.hull"):
        return HeaveOperator.box_hull(
            Q(hull.length, "m"), Q(hull.beam, "m"), Q(hull.draft, "m"), Q(hull.heading, "rad")
        )
