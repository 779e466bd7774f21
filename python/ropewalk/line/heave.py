"""The strokes of a drum that takes up the heave itself."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ropewalk._border import QuantityLike, arguments, to_count, to_si
from ropewalk._names import to_name
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk.compensator import Heave
    from ropewalk.line.campaign import Campaign


def active_heave_campaign(
    heave: Heave,
    *,
    duration: QuantityLike,
    hook_load: QuantityLike,
    block_height: QuantityLike,
    classes: int = 20,
    name: str = "active heave",
) -> Campaign:
    """Strokes of the block while the drum itself takes up the heave, for the map of the line.

    Heights are Rayleigh distributed; each class stands for as many cycles as the others, with its
    mean height, so that the travel of the block is that of the whole distribution. Each cycle is a
    stroke up and one down about `block_height`. With a passive compensator the drum stands and
    there are no such strokes.

    Parameters
    ----------
    heave : Heave
        The heave taken up, see `ropewalk.compensator.heave`.
    duration
        How long.
    hook_load
        Everything hung on the lines.
    block_height
        Mean height of the block above its lowest position.
    classes
        Number of classes, at most one a cycle.
    name
        Name of the operation.

    Returns
    -------
    Campaign
        Two rows a class, small heaves first; for `ropewalk.run_line`.

    Raises
    ------
    InadmissibleError
        If the largest class takes the block below its lowest position.

    Examples
    --------
    >>> import ropewalk as rw
    >>> motion = rw.compensator.heave(
    ...     rw.SeaState("4 m", "10 s"), rw.compensator.HeaveOperator.constant(0.5)
    ... )
    >>> campaign = rw.line.active_heave_campaign(
    ...     motion, duration="6 hour", hook_load="300 kip", block_height="15 m"
    ... )
    >>> print(f"{campaign.strokes:.0f} strokes, {campaign.work.to('ton_mile'):.0f}")
    6081 strokes, 710 ton_mile
    """
    from ropewalk._units import Q
    from ropewalk.line.campaign import Campaign

    where = "line.active_heave_campaign"
    time, load = arguments(where, duration=duration, hook_load=hook_load)
    middle = to_si(where, "block_height", block_height, "length")
    cycles = heave.cycles(duration)
    wanted = to_count(where, "classes", classes)
    if not 1 <= wanted <= 1000:
        text = f"classes = {wanted} is outside [1, 1000] (ropewalk's guard)"
        raise InadmissibleError(f"{where}(): {text}", where, "classes")
    count = min(wanted, int(cycles))
    heights = heave.classes(count)
    if middle - heights[-1] / 2.0 < 0.0:
        text = (
            f"block_height = {middle:.6g} m leaves no room for half a heave of "
            f"{heights[-1]:.6g} m below it"
        )
        raise InadmissibleError(f"{where}(): {text}", where, "block_height")
    low, high = middle - heights / 2.0, middle + heights / 2.0
    return Campaign.from_strokes(
        Q(load, "N"),
        Q(np.column_stack([low, high]).ravel(), "m"),
        Q(np.column_stack([high, low]).ravel(), "m"),
        count=np.full(2 * count, cycles / count),
        names=[to_name(where, "name", name)],
        time=Q(time * np.arange(1, 2 * count + 1) / (2 * count), "s"),
    )
