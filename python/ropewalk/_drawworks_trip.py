"""Whole trips with a drawworks, stand by stand: functions of `ropewalk.drawworks`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from ropewalk._border import NumberLike, Quantity, QuantityLike, to_one, to_quantity
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    import numpy.typing as npt

    from ropewalk._drawworks_hoist import Hoist
    from ropewalk._drawworks_stroke import Limits, Stroke
    from ropewalk.drillstring import DrillString

__all__ = ["Trip", "to_connection_time", "trip", "trip_of_loads"]


@dataclass(frozen=True, slots=True)
class Trip:
    """A round trip, stand by stand: out of the hole and back in.

    A stand takes four strokes: the string is hoisted, the empty block lowered; running in, the
    empty block is hoisted and the string lowered. After each loaded stroke comes a connection.

    Attributes
    ----------
    pulling, running
        The loaded strokes, arrays of one entry a stand, deepest first.
    block_down, block_up
        The strokes of the empty block, alike for all stands.
    connection_si
        Time of one connection, s.
    """

    pulling: Stroke
    block_down: Stroke
    running: Stroke
    block_up: Stroke
    connection_si: float

    @property
    def stands(self) -> int:
        """Number of stands."""
        return int(np.size(self.pulling.time_si))

    @property
    def possible(self) -> bool:
        """False if some stroke is not possible."""
        strokes = (self.pulling, self.block_down, self.running, self.block_up)
        return all(bool(np.all(stroke.possible)) for stroke in strokes)

    @property
    def reason(self) -> str:
        """Why the trip is not possible, of the first stroke that is not; ``""`` if it is."""
        for stroke in (self.pulling, self.block_down, self.running, self.block_up):
            for text in np.ravel(np.asarray(stroke.reason, dtype=object)):
                if text:
                    return str(text)
        return ""

    @property
    def time_out_si(self) -> float:
        """Time out of the hole, s; infinite if it is not possible."""
        return float(
            np.sum(self.pulling.time_si)
            + self.stands * (self.block_down.time_si + self.connection_si)
        )

    @property
    def time_in_si(self) -> float:
        """Time into the hole, s; infinite if it is not possible."""
        return float(
            np.sum(self.running.time_si)
            + self.stands * (self.block_up.time_si + self.connection_si)
        )

    def _sum(self, name: str) -> float:
        loaded = np.sum(getattr(self.pulling, name)) + np.sum(getattr(self.running, name))
        empty = getattr(self.block_down, name) + getattr(self.block_up, name)
        return float(loaded + self.stands * empty)

    @property
    def time_out(self) -> Quantity:
        """Time out of the hole."""
        return to_quantity(self.time_out_si, "time")

    @property
    def time_in(self) -> Quantity:
        """Time into the hole."""
        return to_quantity(self.time_in_si, "time")

    @property
    def time(self) -> Quantity:
        """Time of the round trip; infinite if it is not possible."""
        return to_quantity(self.time_out_si + self.time_in_si, "time")

    @property
    def moving_time(self) -> Quantity:
        """Time in which the block moves: without connections."""
        still = 2 * self.stands * self.connection_si
        return to_quantity(self.time_out_si + self.time_in_si - still, "time")

    @property
    def driven(self) -> Quantity:
        """Energy the motors give."""
        return to_quantity(self._sum("driven_si"), "energy")

    @property
    def braked(self) -> Quantity:
        """Energy brakes take, or motors that feed back."""
        return to_quantity(self._sum("braked_si"), "energy")

    @property
    def lifted(self) -> Quantity:
        """Load times travel, up less down."""
        return to_quantity(self._sum("lifted_si"), "energy")

    @property
    def lost(self) -> Quantity:
        """Energy lost to friction of gear, drum and reeving."""
        return to_quantity(self._sum("lost_si"), "energy")

    @property
    def peak_power(self) -> Quantity:
        """Largest power of the motors."""
        peaks = [np.max(one.peak_power_si) for one in (self.pulling, self.running)]
        peaks += [self.block_down.peak_power_si, self.block_up.peak_power_si]
        return to_quantity(float(max(peaks)), "power")


def trip(
    hoist: Hoist,
    string: DrillString,
    *,
    depth: QuantityLike,
    stand_length: QuantityLike,
    block_weight: QuantityLike,
    limits: Limits,
    connection_time: QuantityLike,
    drag_up: NumberLike = 0.0,
    drag_down: NumberLike = 0.0,
    base_height: QuantityLike = "0 m",
) -> Trip:
    """A round trip from a depth, stand by stand, each with the load that hangs then.

    A stand is charged with the string that hangs below the block when its stroke begins (pulling)
    or ends (running): the deeper, heavier end of the stroke.

    Parameters
    ----------
    hoist
        The drawworks, strung up.
    string
        What is pulled and run.
    depth
        Depth of the bit at the start.
    stand_length
        Length of one stand, which is the travel of every stroke.
    block_weight
        Block, hook, top drive: all that stays on the lines.
    limits
        Speeds and accelerations.
    connection_time
        From one loaded stroke to the next while the block is not moving, slips and tongs and all:
        yours to give, no source has it for your crew.
    drag_up, drag_down
        Drag as a share of the weight in mud.
    base_height
        Height of the block, above its lowest position, with the elevators at the slips.

    Returns
    -------
    Trip
        A load that cannot be hoisted is told in it.

    Raises
    ------
    InadmissibleError
        For what cannot be, and if the drum does not hold the rope.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> trip = rw.drawworks.trip(
    ...     rw.rig.hoist(rig),
    ...     rig.strings["drilling"],
    ...     depth="2200 m",
    ...     stand_length="28.5 m",
    ...     block_weight="46000 lbf",
    ...     limits=rw.drawworks.Limits("0.8 m/s", "0.4 m/s**2"),
    ...     connection_time="2 min",
    ... )
    >>> trip.stands
    78
    """
    where = "drawworks.trip"
    from_depth = to_one(where, "depth", depth, "length")
    stand = to_one(where, "stand_length", stand_length, "length")
    if not (stand > 0.0 and 0.0 < from_depth < 1e5 * stand):
        text = f"depth = {from_depth!r} m must be some stands of stand_length = {stand!r} m"
        raise InadmissibleError(f"{where}(): {text}", where, "depth")
    stands = int(np.ceil(from_depth / stand - 1e-9))
    weight = np.asarray(string.weight_in_mud_si(from_depth - stand * np.arange(stands)))
    block = to_one(where, "block_weight", block_weight, "force")
    up, down = (
        to_one(where, "drag_up", drag_up, "number"),
        to_one(where, "drag_down", drag_down, "number"),
    )
    return trip_of_loads(
        hoist,
        pulling=weight * (1.0 + up) + block,
        running=weight * (1.0 - down) + block,
        block=block,
        stand_length=stand,
        limits=limits,
        connection_time=to_connection_time(where, connection_time),
        base_height=to_one(where, "base_height", base_height, "length"),
    )


def to_connection_time(where: str, given: QuantityLike) -> float:
    """Return a time of connection in s, of 0 or more."""
    time = to_one(where, "connection_time", given, "time")
    if not (np.isfinite(time) and time >= 0.0):
        text = f"connection_time = {time!r} s must be a time of 0 s or more"
        raise InadmissibleError(f"{where}(): {text}", where, "connection_time")
    return time


def trip_of_loads(
    hoist: Hoist,
    *,
    pulling: npt.NDArray[np.float64],
    running: npt.NDArray[np.float64],
    block: float,
    stand_length: float,
    limits: Limits,
    connection_time: float,
    base_height: float,
) -> Trip:
    """Return the trip of loads that are known, N; lengths in m, times in s."""

    def stroke(loads: float | npt.NDArray[np.float64], motion: str) -> Stroke:
        return hoist.stroke(
            to_quantity(loads, "force"),
            to_quantity(stand_length, "length"),
            limits,
            motion,  # type: ignore[arg-type]
            base_height=to_quantity(base_height, "length"),
        )

    return Trip(
        pulling=stroke(pulling, "hoisting"),
        block_down=stroke(block, "lowering"),
        running=stroke(running, "lowering"),
        block_up=stroke(block, "hoisting"),
        connection_si=connection_time,
    )
