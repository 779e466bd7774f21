"""Life of the line by the damage map: work until the worst place reaches discard."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk.errors import InadmissibleError
from ropewalk.line._cases import Judgment, run_programs
from ropewalk.line._setup import columns_of, line_of

if TYPE_CHECKING:
    from ropewalk.fatigue import LifeModel as FatigueModel
    from ropewalk.line import Campaign, SlipCutProgram
    from ropewalk.rig import Rig
    from ropewalk.rig.models import LifeModel
    from ropewalk.rope import Rope

Array = npt.NDArray[np.float64]

#: Bins are as long as a sheave wraps rope, or shorter.
_BIN = 0.5
#: What may be wrong with a design of rope, lines and sheaves; all else is wrong with the arguments.
_OF_THE_DESIGN = (
    "lines",
    "drum",
    "supply",
    "barrel_diameter",
    "sheave_diameter",
    "wire_strength",
    "hook_load",
)
#: A line that outlasts so many campaigns is not followed any further.
_MOST_CAMPAIGNS = 200
#: Why the life of such a line ended.
OUTLASTED = f"outlasted {_MOST_CAMPAIGNS} campaigns"


def design(rig: Rig, rope: Rope, lines: int, diameter: float) -> Rig:
    """Return the rig with another rope, number of lines and sheave diameter."""
    return replace(
        rig,
        rope=rope,
        reeving=replace(rig.reeving, lines=lines),
        crown=replace(rig.crown, diameter=diameter),
        block=replace(rig.block, sheaves=replace(rig.block.sheaves, diameter=diameter)),
    )


def line_life(
    rig: Rig,
    campaign: Campaign,
    *,
    models: Sequence[LifeModel],
    ropes: Sequence[Rope],
    factors: Sequence[float],
    lines: Sequence[int],
    diameters: Array,
    program: SlipCutProgram | None = None,
    threads: int = 1,
) -> tuple[Array, npt.NDArray[np.object_]]:
    """Work of the line until its worst place reaches discard, for every design.

    Without a program damage grows by the same amount in every campaign, and the life is the work
    of one over the damage of its worst place. With one, campaigns are run one after the other until
    a place reaches discard or the reel is used up.

    Parameters
    ----------
    rig
        The hoist; its file has ``[line]`` and ``[drum]``.
    campaign
        What the line goes through, again and again.
    models, ropes, factors, lines, diameters
        The designs: life models, ropes, factor of life of each rope, lines strung, diameters [m].
    program
        When the line is slipped and cut.
    threads
        Any number gives the same answer.

    Returns
    -------
    life : numpy.ndarray
        Work, J, of shape (models, ropes, lines, diameters); NaN where the design cannot be.
    end : numpy.ndarray of str
        Why it ended: ``"worst place at discard"``, ``"reel used up"``, ``"outlasted 200
        campaigns"``, or what cannot be.
    """
    shape = (len(models), len(ropes), len(lines), diameters.size)
    designs = [
        (design(rig, ropes[r], lines[n], float(diameters[d])), models[m].model, factors[r])
        for m, r, n, d in np.ndindex(shape)
    ]
    life, end = life_of_designs(designs, campaign, program=program, threads=threads)
    return life.reshape(shape), end.reshape(shape)


def life_of_designs(
    designs: Sequence[tuple[Rig, FatigueModel, float]],
    campaign: Campaign,
    *,
    program: SlipCutProgram | None,
    threads: int,
) -> tuple[Array, npt.NDArray[np.object_]]:
    """Work of the line of every design; each is a rig, a model and a factor of life.

    The work is that of `line_life`, and so is why it ended. A line that cannot be is told in the
    reason: rope that the drum or the reel does not hold, an odd number of lines, rope without the
    strength the model takes, a load under which it has no finite life. All else is raised.
    """
    life = np.full(len(designs), np.nan)
    end = np.full(len(designs), "", dtype=object)
    columns = columns_of(campaign)
    places: list[int] = []
    ready: list[Any] = []
    for place, (one, model, factor) in enumerate(designs):
        try:
            ready.append(line_of(one, columns, model, factor))
            places.append(place)
        except InadmissibleError as error:
            if error.field not in _OF_THE_DESIGN:
                raise
            end[place] = str(error)
    repeats = 1 if program is None else _MOST_CAMPAIGNS
    limit = None if program is None else 1.0
    judge = Judgment(1.0, 0.0, 1.0, _BIN, repeats, limit)
    found = run_programs(ready, campaign, [program] * len(ready), judge, threads=threads)
    for i, place in enumerate(places):
        if found["status"][i]:
            end[place] = found["reason"][i]
        elif program is None:
            life[place] = found["work"][i] / found["worst"][i]
            end[place] = "worst place at discard"
        else:
            life[place] = found["work"][i]
            end[place] = {
                "limit reached": "worst place at discard",
                "reel used up": "reel used up",
                "campaign done": OUTLASTED,
            }[found["end"][i]]
    return life, end
