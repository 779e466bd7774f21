"""
Stopping short of crown and floor.
"""

from __future__ import annotations
import numpy.typing
import ropewalk._core.drum
import typing

__all__: list[str] = [
    "allowed_speed",
    "counted_height",
    "height_at_wraps",
    "stopping_distance",
    "trip_height_shift",
    "wraps_at_height",
]

def allowed_speed(
    stopping_room: float | numpy.typing.ArrayLike,
    reaction_time: float | numpy.typing.ArrayLike,
    drive_acceleration: float | numpy.typing.ArrayLike,
    deceleration: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest speed from which a block stops within a room.

    In SI: stopping_room [m], reaction_time [s], drive_acceleration [m/s2], deceleration [m/s2]; gives [m/s].
    """

def counted_height(
    drum: ropewalk._core.drum.Drum,
    lines: float | numpy.typing.ArrayLike,
    wraps_at_lowest: float | numpy.typing.ArrayLike,
    wraps_known: float | numpy.typing.ArrayLike,
    block_height: float | numpy.typing.ArrayLike,
) -> typing.Any:
    """
    Height [m] a counter of turns shows that knows other laps at the lowest position.
    """

def height_at_wraps(
    drum: ropewalk._core.drum.Drum,
    lines: float | numpy.typing.ArrayLike,
    wraps_at_lowest: float | numpy.typing.ArrayLike,
    wraps: float | numpy.typing.ArrayLike,
) -> typing.Any:
    """
    Height [m] of the block with so many laps on the drum.
    """

def stopping_distance(
    travel_speed: float | numpy.typing.ArrayLike,
    reaction_time: float | numpy.typing.ArrayLike,
    drive_acceleration: float | numpy.typing.ArrayLike,
    deceleration: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Way of the block from the set point to standstill.

    In SI: travel_speed [m/s], reaction_time [s], drive_acceleration [m/s2], deceleration [m/s2]; gives [m].
    """

def trip_height_shift(
    line_slipped: float | numpy.typing.ArrayLike,
    line_cut: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rise of a set point in wraps by slip and cut.

    In SI: line_slipped [m], line_cut [m], lines [1]; gives [m].
    """

def wraps_at_height(
    drum: ropewalk._core.drum.Drum,
    lines: float | numpy.typing.ArrayLike,
    wraps_at_lowest: float | numpy.typing.ArrayLike,
    block_height: float | numpy.typing.ArrayLike,
) -> typing.Any:
    """
    Laps on the drum with the block at a height [m].
    """
