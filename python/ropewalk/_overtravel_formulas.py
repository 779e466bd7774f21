"""The functions of the subject `overtravel`: stopping, and set points counted in wraps."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ropewalk import _core
from ropewalk._border import to_quantity, to_si
from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

if TYPE_CHECKING:
    from ropewalk._drum import Drum

__all__ = [
    "allowed_speed",
    "counted_height",
    "height_at_wraps",
    "stopping_distance",
    "trip_height_shift",
    "wraps_at_height",
]


@face("overtravel.stopping_distance")
def stopping_distance(
    travel_speed: QuantityLike,
    reaction_time: QuantityLike,
    drive_acceleration: QuantityLike,
    deceleration: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Way of the block from the set point of a device to standstill.

    .. math:: s = v t + \frac{a_d t^2}{2} + \frac{(v + a_d t)^2}{2 a}

    Until the brake grips the drive may still pull: a clutch that drags, a valve that vents slowly.
    Or power is lost and a lowered load falls: then the acceleration is that of load and all that
    turns, which `stopping_envelope` and `check_campaign` work out.
    The line does not stretch and the brake comes on all at once; `ropewalk.brake.Stop` has both.

    Source: Newton's laws of uniform motion.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(rw.overtravel.stopping_distance("1.5 m/s", "0.5 s", "0 m/s**2", "1 m/s**2"))
    1.875 meter
    """
    ...


@face("overtravel.allowed_speed")
def allowed_speed(
    stopping_room: QuantityLike,
    reaction_time: QuantityLike,
    drive_acceleration: QuantityLike,
    deceleration: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest speed from which a block stops within a room; 0 where the drive takes it through.

    .. math:: v = -(a + a_d) t + \sqrt{a (a + a_d) t^2 + 2 a s}

    Source as for `stopping_distance`, solved for the speed.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(rw.overtravel.allowed_speed("1.875 m", "0.5 s", "0 m/s**2", "1 m/s**2"))
    1.5 meter / second
    """
    ...


@face("overtravel.trip_height_shift")
def trip_height_shift(
    line_slipped: QuantityLike,
    line_cut: QuantityLike,
    lines: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Height by which the block stands higher at a given wrap once line was slipped and cut.

    .. math:: \Delta h = (l_{cut} - l_{slip}) / N

    Positive: a device that trips at a wrap counted on the drum now trips too late below the crown.
    The layer does not matter. Set and test such a device again after every slip and cut.

    Source: the rope on the drum at a height of the block changes by what was slipped less what was
    cut; the block rises 1/N of what is wound up.

    Examples
    --------
    >>> import ropewalk as rw
    >>> shift = rw.overtravel.trip_height_shift("60 ft", "80 ft", 10)
    >>> print(f"{shift.to('ft').magnitude:.1f} ft higher")
    2.0 ft higher
    """
    ...


def wraps_at_height(
    drum: Drum,
    block_height: QuantityLike,
    *,
    lines: NumberLike,
    wraps_at_lowest: NumberLike,
) -> float:
    """Laps on the drum with the block at one height or many: a set point in wraps.

    Source: geometry, see `ropewalk.drum.Drum`.

    Parameters
    ----------
    drum : Drum
        The drum and its rope.
    block_height
        Height of the block above its lowest working position; negative below it.
    lines
        Number of lines strung.
    wraps_at_lowest
        Laps on the drum with the block at its lowest working position.

    Raises
    ------
    InadmissibleError
        If the drum has no such rope.

    Examples
    --------
    >>> import ropewalk as rw
    >>> drum = rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=4)
    >>> wraps = rw.overtravel.wraps_at_height(drum, "31 m", lines=10, wraps_at_lowest=8)
    >>> print(f"{wraps:.2f} wraps")
    128.46 wraps
    """
    where = "overtravel.wraps_at_height"
    wraps: float = _core.overtravel.wraps_at_height(
        drum._drum(),
        to_si(where, "lines", lines, "count"),
        to_si(where, "wraps_at_lowest", wraps_at_lowest, "number"),
        to_si(where, "block_height", block_height, "length"),
    )
    return wraps


def height_at_wraps(
    drum: Drum, wraps: NumberLike, *, lines: NumberLike, wraps_at_lowest: NumberLike
) -> Quantity:
    """Height of the block with so many laps on the drum, one number or many.

    The inverse of `wraps_at_height`; its other arguments and errors are as there.

    Parameters
    ----------
    wraps
        Laps on the drum.

    Examples
    --------
    >>> import ropewalk as rw
    >>> drum = rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=4)
    >>> height = rw.overtravel.height_at_wraps(drum, 8, lines=10, wraps_at_lowest=8)
    >>> print(height)
    0.0 meter
    """
    where = "overtravel.height_at_wraps"
    height = _core.overtravel.height_at_wraps(
        drum._drum(),
        to_si(where, "lines", lines, "count"),
        to_si(where, "wraps_at_lowest", wraps_at_lowest, "number"),
        to_si(where, "wraps", wraps, "number"),
    )
    return to_quantity(height, "length")


def counted_height(
    drum: Drum,
    block_height: QuantityLike,
    *,
    lines: NumberLike,
    wraps_at_lowest: NumberLike,
    wraps_known: NumberLike,
) -> Quantity:
    """Height that a counter of drum turns shows when the block is at a height.

    It was zeroed with the block at its lowest, but turns its count into height by the laps it was
    set up for. After a slip and cut others lie there, and the layers change at other heights.

    Parameters
    ----------
    drum, block_height, lines
        As for `wraps_at_height`.
    wraps_at_lowest
        Laps on the drum with the block at its lowest now.
    wraps_known
        Laps there that the counter was set up for.

    Examples
    --------
    >>> import ropewalk as rw
    >>> drum = rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=4)
    >>> shown = rw.overtravel.counted_height(
    ...     drum, "31 m", lines=10, wraps_at_lowest=4, wraps_known=8
    ... )
    >>> print(f"{shown.magnitude:.2f} m")
    31.23 m
    """
    where = "overtravel.counted_height"
    height = _core.overtravel.counted_height(
        drum._drum(),
        to_si(where, "lines", lines, "count"),
        to_si(where, "wraps_at_lowest", wraps_at_lowest, "number"),
        to_si(where, "wraps_known", wraps_known, "number"),
        to_si(where, "block_height", block_height, "length"),
    )
    return to_quantity(height, "length")
