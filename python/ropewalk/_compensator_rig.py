"""What the compensator of a rig file has wrong: its rating, its stroke, the chance to exceed it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk._border import to_quantity
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk._compensator import Compensator
    from ropewalk.rig import Rig
    from ropewalk.rig.sea_parts import SiteSea

__all__ = ["CompensatorFinding", "rig_findings"]

_WHERE = "compensator.rig_findings"
#: Operations in which the string works on the gas.
_COMPENSATED = ("drilling", "coring", "reaming", "circulating")


@dataclass(frozen=True, slots=True)
class CompensatorFinding:
    """One thing wrong with the compensator of a rig.

    Attributes
    ----------
    kind
        ``"rating"``: it carries more than it is rated for; ``"offset"``: tide, set-down and spacing
        leave no stroke; ``"exceedance"``: the stroke is exceeded more often than allowed.
    text
        What it is, with its numbers.
    """

    kind: str
    text: str


def rig_findings(rig: Rig) -> list[CompensatorFinding]:
    """What the compensator of a rig has wrong for its plan and its sea.

    The rating is held against the heaviest string that drills, cores, reams or circulates, off
    bottom and without drag, with all that hangs below the compensator; where the file has a sea
    with the band of the heave that is exceeded with the probability allowed. An empty list is no
    permission to work.

    Parameters
    ----------
    rig
        The hoist; its file has ``[compensator]``.

    Raises
    ------
    InadmissibleError
        If the rig has no compensator, or a rated one of which it is not known what hangs below it.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.compensator.rig_findings(rw.load_rig(rw.rig.example("osprey-sound")))
    []
    """
    compensator = rig.compensator
    if compensator is None:
        text = f"{rig.name} has no compensator: its file has no [compensator]"
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "rig")
    found = _about_rating(rig, compensator)
    if rig.sea is not None:
        found += _about_stroke(rig.sea, compensator)
    return found


def _about_rating(rig: Rig, compensator: Compensator) -> list[CompensatorFinding]:
    rating = compensator.rated_load_si
    if rating is None:
        return []
    if rig.weight_on_compensator is None:
        text = (
            f"what hangs below the compensator of {rig.name} is not known: its file has no "
            "compensator.weight_below"
        )
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "rig")
    hung = [
        (float(one.string_weight(one.depth)[0]), one.title)
        for one in rig.operations
        if one.string is not None and one.kind in _COMPENSATED
    ]
    if not hung:
        return []
    string, title = max(hung)
    load = string + rig.weight_on_compensator
    heave, period = 0.0, None
    if rig.sea is not None:
        motion = rig.sea.heave()
        heave = 2.0 * _largest(rig.sea)
        period = motion.zero_crossing_period
    band = compensator.load_band(to_quantity(load, "force"), to_quantity(heave, "length"), period)
    highest = float(band.highest.magnitude)
    if highest <= rating:
        return []
    text = (
        f"{title}, off bottom: {load / 1e3:.0f} kN on the gas, up to {highest / 1e3:.0f} kN in "
        f"{heave:.2f} m of heave, rated {rating / 1e3:.0f} kN, "
        f"{(highest - rating) / 1e3:.0f} kN too much"
    )
    return [CompensatorFinding("rating", text)]


def _about_stroke(sea: SiteSea, compensator: Compensator) -> list[CompensatorFinding]:
    half = compensator.stroke_si / 2.0
    if sea.offset >= half:
        text = (
            f"an offset of {sea.offset:.2f} m leaves nothing of the half stroke of {half:.2f} m "
            "for heave"
        )
        return [CompensatorFinding("offset", text)]
    chance = sea.stroke_exceedance(compensator)
    if chance <= sea.exceedance:
        return []
    text = (
        f"half a stroke of {half - sea.offset:.2f} m, offset taken off, is exceeded with a "
        f"probability of {chance:.2g} in {sea.duration / 3600.0:.3g} h, allowed is "
        f"{sea.exceedance:.2g}; heave of {_largest(sea):.2f} m each way is exceeded with that"
    )
    return [CompensatorFinding("exceedance", text)]


def _largest(sea: SiteSea) -> float:
    """Amplitude of heave that is exceeded with the probability allowed, m."""
    duration = to_quantity(sea.duration, "time")
    return float(sea.heave().amplitude_exceeded(duration, sea.exceedance).magnitude)
