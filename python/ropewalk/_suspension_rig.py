"""The load path of a rig file: its parts, its weakest part, the bounce of its hook."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ropewalk._border import QuantityLike, to_quantity
from ropewalk._suspension_bounce import HookBounce
from ropewalk._suspension_train import Margins, Part, Suspension
from ropewalk._tensions import Motion
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk.rig import Rig

__all__ = ["rig_bounce", "rig_margins", "rig_suspension"]


def rig_suspension(rig: Rig, service: str = "rotary drilling") -> Suspension:
    """Put the load path of a rig together.

    Mast where ``[mast]`` has one, at the lines strung but not above its nameplate; crown block;
    drilling line at the design factor its limits ask for; traveling block; and below it the parts
    of ``[suspension]``. Where a part has a rating of its bearing too, the lower of the two counts;
    the traveling block has that of `bearing_rating` where the file rates one of its sheaves.

    Parameters
    ----------
    rig
        The hoist.
    service
        Service whose minimum design factor the line keeps, as in `ropewalk.design_factor.minimum`.

    Raises
    ------
    InadmissibleError
        If the rig has a mast but an odd number of lines: its rating is for a dead line on it.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> [part.name for part in rw.suspension.rig_suspension(rig).hanging][:2]
    ['traveling block', 'hook']
    """
    from ropewalk import design_factor, si

    below = rig.suspension.parts if rig.suspension is not None else ()
    block_weight = rig.block.weight - sum(part.weight for part in below)
    block = ("traveling block", _block_rating(rig), block_weight)
    hanging = [block, *((part.name, part.rating, part.weight) for part in below)]
    factor = design_factor.minimum(service, rig.design_factor_standard).value
    mast = None
    if rig.mast is not None:
        at_lines = si.mast.rating_at_lines(
            rig.mast.hook_load_rating,
            rig.mast.rated_lines,
            rig.reeving.lines,
            rig.mast.mast.largest_share,
        )
        mast = to_quantity(at_lines, "force")
    return Suspension(
        [Part(n, to_quantity(r, "force"), to_quantity(w, "force")) for n, r, w in hanging],
        crown_block=to_quantity(rig.crown.rated_load, "force"),
        mast=mast,
        line=to_quantity(rig.rope.breaking_force_si / factor, "force"),
    )


def _block_rating(rig: Rig) -> float:
    """Rating of the traveling block, N: its nameplate, or its bearings where these carry less."""
    from ropewalk import si

    nameplate = rig.block.sheaves.rated_load
    one = None if rig.suspension is None else rig.suspension.sheave_bearing_rating
    # Of an odd number of lines the one most inward ends at the block and passes no sheave of it.
    sheaves = rig.reeving.lines // 2
    if one is None or sheaves == 0:
        return nameplate
    return min(nameplate, float(si.suspension.bearing_rating(sheaves, one)))


def rig_margins(
    rig: Rig,
    hook_load: QuantityLike | None = None,
    motion: Motion = "hoisting",
    service: str = "rotary drilling",
) -> Margins:
    """Load and margin of every part of a rig's load path, and the weakest of them.

    Parameters
    ----------
    rig
        The hoist.
    hook_load
        The largest of the plan and of the overpull it allows, if left out.
    motion
        ``"hoisting"``, ``"static"`` or ``"lowering"``.
    service
        Service whose minimum design factor the line keeps.

    Raises
    ------
    InadmissibleError
        If the rig has a mast but an odd number of lines: its rating is for a dead line on it.

    Examples
    --------
    >>> import ropewalk as rw
    >>> margins = rw.suspension.rig_margins(rw.load_rig(rw.rig.example("rig7")))
    >>> margins.weakest, margins.overloaded
    ('drilling line', ())
    """
    load = to_quantity(rig.largest_hook_load, "force") if hook_load is None else hook_load
    return rig_suspension(rig, service).margins(load, rig.reeving, motion)


def rig_bounce(rig: Rig, overpull: QuantityLike) -> HookBounce:
    """Bounce of a rig's hook as a stand breaks free under an overpull.

    Parameters
    ----------
    rig
        The hoist; its file has ``[suspension.hook_spring]``.
    overpull
        Pull on the hook beyond the sprung weight as the thread lets go.

    Raises
    ------
    InadmissibleError
        If the rig has no hook spring.

    Examples
    --------
    >>> import ropewalk as rw
    >>> bounce = rw.suspension.rig_bounce(rw.load_rig(rw.rig.example("rig7")), "4 kip")
    >>> bounce.goes_slack
    False
    """
    where = "suspension.rig_bounce"
    spring = rig.suspension.hook_spring if rig.suspension is not None else None
    if spring is None:
        text = f"{rig.name} has no hook spring: its file has no [suspension.hook_spring]"
        raise InadmissibleError(f"{where}(): {text}", where, "rig")
    return HookBounce(
        to_quantity(spring.sprung_weight, "force"),
        to_quantity(spring.spring_rate, "force_per_length"),
        overpull,
        damping_up=to_quantity(spring.damping_up, "damping"),
        damping_down=to_quantity(spring.damping_down, "damping"),
        friction=to_quantity(spring.friction, "force"),
    )
