"""Where a program puts one worn point of the rope on another: common practice, no source."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk import _core
from ropewalk.line._setup import tackle_of
from ropewalk.rig.line_parts import drum_of

if TYPE_CHECKING:
    from ropewalk.line.campaign import Campaign
    from ropewalk.line.history import LineHistory
    from ropewalk.line.program import SlipCutProgram
    from ropewalk.rig import Rig

#: Shift of the crossovers, in laps between two of them, below which they are said to meet.
LEAST_SHIFT = 0.1


def warnings_of(history: LineHistory) -> list[str]:
    """Texts for the program of a run."""
    assert history.program is not None
    return program_warnings(history.rig, history.campaign, history.program)


def program_warnings(rig: Rig, campaign: Campaign, program: SlipCutProgram) -> list[str]:
    """Say where slips or cuts put a pick-up or crossover point on another.

    With the block at the lowest place where loads are picked up, worn points lie one line and one
    arc apart on the rope, each as long as the arc of a sheave; if some number of slips makes that
    distance, every line takes over the worn point of the next. A cut that is a whole number of
    laps leaves the crossovers of the drum on the rope where they were.

    Parameters
    ----------
    rig
        The hoist.
    campaign
        Gives the height at which loads are picked up.
    program
        The program.
    """
    return [
        text
        for text in (_pick_ups(rig, campaign, program), _crossovers(rig, program))
        if text is not None
    ]


@dataclass(frozen=True, slots=True)
class PickUpSpacing:
    """How a whole number of slips lies to the distance of two pick-up points.

    Attributes
    ----------
    slips
        Slips whose sum comes nearest to `distance`.
    apart
        How far that sum is from it, m.
    distance
        From the pick-up point of a line to that of the next, along the rope, m.
    arc
        Length of a pick-up point, m: the arc of a sheave.
    """

    slips: int
    apart: float
    distance: float
    arc: float

    @property
    def least_apart(self) -> float:
        """Half an arc, m: nearer than that the two are said to meet."""
        return 0.5 * self.arc


def pick_up_spacing(rig: Rig, campaign: Campaign, program: SlipCutProgram) -> PickUpSpacing | None:
    """Return how the slips lie to the pick-up points; None if the campaign picks up nothing."""
    heights = campaign.height_from_si[campaign.pick_up]
    if heights.size == 0:
        return None
    length = rig.block.lowest - float(heights.min())
    first, second = tackle_of(rig).contacts[:2]
    distance = length + second["near"] - first["near"]
    slips = max(1, round(distance / program.slip_si))
    apart = abs(slips * program.slip_si - distance)
    return PickUpSpacing(slips, apart, distance, second["far"] - second["near"])


def _pick_ups(rig: Rig, campaign: Campaign, program: SlipCutProgram) -> str | None:
    found = pick_up_spacing(rig, campaign, program)
    if found is None or found.apart >= found.least_apart:
        return None
    return (
        f"{found.slips} slips of {program.slip_si:.1f} m put the pick-up point of each line "
        f"{found.apart:.2f} m from where that of the next line was ({found.distance:.1f} m apart, "
        f"{found.arc:.1f} m long): choose another slip length"
    )


def crossover_shift(rig: Rig, cut: float) -> float:
    """Part of the way from one crossover to the next that a cut of `cut` m moves them; 0 to 0.5."""
    assert rig.drum is not None
    per_lap = max(1, rig.drum.crossovers_per_lap)
    laps = _core.drum.crossover_shift(cut / lap_length(rig), per_lap)
    return float(laps) * per_lap


def lap_length(rig: Rig) -> float:
    """Rope in one lap of the first layer of the drum, m."""
    return float(drum_of(rig)._drum().lap_length(1))


def _crossovers(rig: Rig, program: SlipCutProgram) -> str | None:
    shift = crossover_shift(rig, program.cut_si)
    if shift >= LEAST_SHIFT:
        return None
    laps = program.cut_si / lap_length(rig)
    return (
        f"a cut of {program.cut_si:.1f} m is {laps:.2f} laps of the first layer and leaves the "
        f"crossovers within {shift:.2f} of the distance between two: change it by a quarter lap"
    )
