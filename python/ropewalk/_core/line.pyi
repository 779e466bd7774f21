"""
The drilling line over a campaign.
"""

from __future__ import annotations
import numpy.typing
import ropewalk._core.drillstring
import typing

__all__: list[str] = [
    "Hoisting",
    "casing",
    "circulating",
    "jarring",
    "kelly_coring",
    "kelly_drilling",
    "reaming",
    "round_trip",
    "short_trip",
    "singles",
    "top_drive_coring",
    "top_drive_drilling",
    "trip",
]

class Hoisting:
    """
    A string on the hook and the hoist above it, SI.
    """
    def __init__(
        self,
        string: ropewalk._core.drillstring.DrillString,
        *,
        block_weight: float | numpy.typing.ArrayLike,
        travel: float | numpy.typing.ArrayLike,
        drag_up: float | numpy.typing.ArrayLike = 0.0,
        drag_down: float | numpy.typing.ArrayLike = 0.0,
        base_height: float | numpy.typing.ArrayLike = 0.0,
        block_speed: float | numpy.typing.ArrayLike = 0.0,
        block_acceleration: float | numpy.typing.ArrayLike = 0.0,
    ) -> None: ...

def casing(
    hoisting: Hoisting,
    depth: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of running casing by joints.
    """

def circulating(
    hoisting: Hoisting,
    depth: float | numpy.typing.ArrayLike,
    height: float | numpy.typing.ArrayLike,
    strokes: typing.SupportsInt | typing.SupportsIndex,
) -> tuple:
    """
    Strokes of circulating with the string moved up and down.
    """

def jarring(
    hoisting: Hoisting,
    depth: float | numpy.typing.ArrayLike,
    overpull: float | numpy.typing.ArrayLike,
    height: float | numpy.typing.ArrayLike,
    overpulls: typing.SupportsInt | typing.SupportsIndex,
) -> tuple:
    """
    Strokes of jarring, as a count of overpulls.
    """

def kelly_coring(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
    *,
    kelly_weight: float | numpy.typing.ArrayLike,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    ream: bool = True,
) -> tuple:
    """
    Strokes of coring with a kelly; nothing is reamed.
    """

def kelly_drilling(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
    *,
    kelly_weight: float | numpy.typing.ArrayLike,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    ream: bool = True,
) -> tuple:
    """
    Strokes of drilling with a kelly.
    """

def reaming(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    *,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    reams: typing.SupportsInt | typing.SupportsIndex = 0,
) -> tuple:
    """
    Strokes of reaming hole that is there, with a top drive.
    """

def round_trip(
    hoisting: Hoisting,
    depth: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of a trip out and in again.
    """

def short_trip(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of a trip out from depth_to up to depth_from and in again.
    """

def singles(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of picking up singles and running them.
    """

def top_drive_coring(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    *,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    reams: typing.SupportsInt | typing.SupportsIndex = 0,
) -> tuple:
    """
    Strokes of coring with a top drive; nothing is reamed.
    """

def top_drive_drilling(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    *,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    reams: typing.SupportsInt | typing.SupportsIndex = 0,
) -> tuple:
    """
    Strokes of drilling with a top drive.
    """

def trip(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of a trip by stands, out or in.
    """
