"""Trips, casing and drilling stroke by stroke: functions of `ropewalk.work`."""

from __future__ import annotations

from ropewalk import _core
from ropewalk._border import QuantityLike, arguments, to_count, to_si
from ropewalk._strokes import Strokes


def trip_strokes(
    depth_from: QuantityLike,
    depth_to: QuantityLike,
    stand_length: QuantityLike,
    pipe_weight: QuantityLike,
    bha_excess_weight: QuantityLike,
    block_weight: QuantityLike,
    *,
    bha_length: QuantityLike = "0 m",
) -> Strokes:
    """Trip by stands: out if `depth_from` is the deeper, in if `depth_to` is.

    Each stand goes with string and block on the lines, the block comes back empty. For whole stands
    a trip out and a trip in add up to `round_trip` exactly; a last part of a stand is a stroke of
    its own, pulled last and run first.

    Parameters
    ----------
    depth_from, depth_to
        Depth of the bit before and after.
    stand_length
        Length of one stand.
    pipe_weight
        Weight of the drill pipe in mud per length.
    bha_excess_weight
        Weight of the BHA in mud less that of the same length of drill pipe.
    block_weight
        Traveling block to elevators.
    bha_length
        If given, a string shorter than the BHA carries only the excess of what it has of it; left
        out, all of it is counted until the last stand, as API RP 9B does.

    Examples
    --------
    >>> import ropewalk as rw
    >>> string = ("16.5 lbf/ft", "55000 lbf", "23500 lbf")
    >>> out = rw.work.trip_strokes("9300 ft", "0 ft", "93 ft", *string)
    >>> back = rw.work.trip_strokes("0 ft", "9300 ft", "93 ft", *string)
    >>> by_strokes = (out + back).work
    >>> by_formula = rw.work.round_trip("9300 ft", "93 ft", *string)
    >>> bool(abs(by_strokes / by_formula - 1) < 1e-12)
    True
    """
    where = "work.trip_strokes"
    known = arguments(
        where,
        depth_from=depth_from,
        depth_to=depth_to,
        stand_length=stand_length,
        pipe_weight=pipe_weight,
        bha_excess_weight=bha_excess_weight,
        block_weight=block_weight,
    )
    return Strokes(
        *_core.work.trip_strokes(
            *known,
            bha_length=to_si(where, "bha_length", bha_length, "length"),
        )
    )


def casing_strokes(
    depth: QuantityLike,
    joint_length: QuantityLike,
    casing_weight: QuantityLike,
    block_weight: QuantityLike,
) -> Strokes:
    """Running casing by joints: the block goes up empty and lowers casing and itself.

    For whole joints the strokes add up to `casing` exactly.

    Parameters
    ----------
    depth
        Depth of the shoe.
    joint_length
        Length of one joint.
    casing_weight
        Weight of the casing in mud per length.
    block_weight
        Traveling block to elevators.
    """
    where = "work.casing_strokes"
    known = arguments(
        where,
        depth=depth,
        joint_length=joint_length,
        casing_weight=casing_weight,
        block_weight=block_weight,
    )
    return Strokes(*_core.work.casing_strokes(*known))


def kelly_strokes(
    depth_from: QuantityLike,
    depth_to: QuantityLike,
    joint_length: QuantityLike,
    pipe_weight: QuantityLike,
    bha_excess_weight: QuantityLike,
    block_weight: QuantityLike,
    *,
    kelly_weight: QuantityLike,
    weight_on_bit: QuantityLike = "0 N",
    ream: bool = True,
    bha_length: QuantityLike = "0 m",
) -> Strokes:
    """Drilling with a kelly, joint by joint.

    Each joint takes four strokes: drill down and pull the kelly; ream down and pull it again; set
    back the kelly and pick up a joint; lower the string and pick up the kelly. A last part of a
    joint is drilled, and reamed, without the connection. The cycle is that of API RP 9B (from
    memory), whose factor 3 rounds the connection up to a whole round trip.

    Parameters
    ----------
    depth_from, depth_to
        Depth where drilling starts and stops.
    joint_length
        Length of a joint of drill pipe, and the travel of the kelly.
    pipe_weight, bha_excess_weight, block_weight, bha_length
        As in `trip_strokes`.
    kelly_weight
        Kelly and swivel, hung while the kelly is on.
    weight_on_bit
        Carried by the bottom while drilling.
    ream
        Ream every kelly down once.
    """
    where = "work.kelly_strokes"
    known = arguments(
        where,
        depth_from=depth_from,
        depth_to=depth_to,
        joint_length=joint_length,
        pipe_weight=pipe_weight,
        bha_excess_weight=bha_excess_weight,
        block_weight=block_weight,
    )
    return Strokes(
        *_core.work.kelly_strokes(
            *known,
            kelly_weight=to_si(where, "kelly_weight", kelly_weight, "force"),
            weight_on_bit=to_si(where, "weight_on_bit", weight_on_bit, "force"),
            ream=bool(ream),
            bha_length=to_si(where, "bha_length", bha_length, "length"),
        )
    )


def top_drive_strokes(
    depth_from: QuantityLike,
    depth_to: QuantityLike,
    stand_length: QuantityLike,
    pipe_weight: QuantityLike,
    bha_excess_weight: QuantityLike,
    block_weight: QuantityLike,
    *,
    weight_on_bit: QuantityLike = "0 N",
    reams: int = 0,
    bha_length: QuantityLike = "0 m",
) -> Strokes:
    """Drilling with a top drive, stand by stand.

    The block goes up empty and drills the stand down; the stand is reamed up and down `reams` times
    before the connection. Mechanics of the operation; no published factor stands behind it.

    Parameters
    ----------
    depth_from, depth_to
        Depth where drilling starts and stops.
    stand_length
        Length of one stand.
    pipe_weight, bha_excess_weight, block_weight, bha_length
        As in `trip_strokes`.
    weight_on_bit
        Carried by the bottom while drilling.
    reams
        How often each stand is reamed.
    """
    where = "work.top_drive_strokes"
    known = arguments(
        where,
        depth_from=depth_from,
        depth_to=depth_to,
        stand_length=stand_length,
        pipe_weight=pipe_weight,
        bha_excess_weight=bha_excess_weight,
        block_weight=block_weight,
    )
    return Strokes(
        *_core.work.top_drive_strokes(
            *known,
            weight_on_bit=to_si(where, "weight_on_bit", weight_on_bit, "force"),
            reams=to_count(where, "reams", reams),
            bha_length=to_si(where, "bha_length", bha_length, "length"),
        )
    )
