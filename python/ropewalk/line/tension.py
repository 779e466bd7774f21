"""The tension history of a campaign."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

import numpy as np

from ropewalk._border import Quantity, to_quantity
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk.line.campaign import Campaign
    from ropewalk.rig import Rig

__all__ = ["tension_history"]

#: More samples than this are no history of a plan.
_MOST_SAMPLES = 50_000_000


def tension_history(
    rig: Rig,
    campaign: Campaign | None = None,
    *,
    part: Literal["dead line", "fast line"] = "dead line",
) -> Quantity:
    """Tension of one end of the line, stroke after stroke: a history to count.

    Each stroke gives the tension while hoisting or lowering its hook load. Before a load is taken
    up the line carries the block alone, at rest.

    Parameters
    ----------
    rig
        A rig.
    campaign
        What the hoist did; the plan of the rig if left out.
    part
        Which end: ``"dead line"``, which never runs, or ``"fast line"`` at the drum.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> cycles = rw.rainflow.count(rw.line.tension_history(rig))
    >>> cycles.total > 1000
    True
    """
    where = "line.tension_history"
    if part not in ("dead line", "fast line"):
        text = f"part must be 'dead line' or 'fast line', got {part!r}"
        raise InadmissibleError(f"{where}(): {text}", where, "part")
    if campaign is None:
        from ropewalk.line.campaign import Campaign

        campaign = Campaign.from_plan(rig)

    def share(motion: Literal["static", "hoisting", "lowering"]) -> float:
        tensions = rig.reeving.tensions("1 N", motion)
        return float(tensions.dead_line_si if part == "dead line" else tensions.fast_line_si)

    strokes = campaign.count.astype(np.int64)
    if 2 * int(strokes.sum()) > _MOST_SAMPLES:
        text = f"the campaign has {int(strokes.sum())} strokes, too many for one history"
        raise InadmissibleError(f"{where}(): {text}", where, "campaign")
    up = campaign.height_to_si > campaign.height_from_si
    moving = campaign.hook_load_si * np.where(up, share("hoisting"), share("lowering"))
    at_rest = np.full_like(moving, rig.block.weight * share("static"))
    both = np.stack([at_rest, moving], axis=1)
    there = np.stack([campaign.pick_up, np.ones_like(up)], axis=1)
    return to_quantity(np.repeat(both, strokes, axis=0)[np.repeat(there, strokes, axis=0)], "force")
