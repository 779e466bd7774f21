"""
Work of the drilling line, counted at the hook.
"""

from __future__ import annotations
import numpy.typing
import typing

__all__: list[str] = [
    "casing",
    "casing_strokes",
    "coring",
    "drilling",
    "kelly_strokes",
    "lift",
    "round_trip",
    "short_trip",
    "top_drive_strokes",
    "trip_strokes",
]

def casing(
    depth: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
    casing_weight: float | numpy.typing.ArrayLike,
    block_weight: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Work of setting casing, API RP 9B.

    In SI: depth [m], joint_length [m], casing_weight [N/m], block_weight [N]; gives [J].
    """

def casing_strokes(
    depth: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
    casing_weight: float | numpy.typing.ArrayLike,
    block_weight: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of running casing by joints: depth, load up, load down, travel.
    """

def coring(
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    pipe_weight: float | numpy.typing.ArrayLike,
    bha_excess_weight: float | numpy.typing.ArrayLike,
    block_weight: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Work of coring, API RP 9B.

    In SI: depth_from [m], depth_to [m], stand_length [m], pipe_weight [N/m], bha_excess_weight [N], block_weight [N]; gives [J].
    """

def drilling(
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    pipe_weight: float | numpy.typing.ArrayLike,
    bha_excess_weight: float | numpy.typing.ArrayLike,
    block_weight: float | numpy.typing.ArrayLike,
    passes: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Work of drilling, API RP 9B.

    In SI: depth_from [m], depth_to [m], stand_length [m], pipe_weight [N/m], bha_excess_weight [N], block_weight [N], passes [1]; gives [J].
    """

def kelly_strokes(
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
    pipe_weight: float | numpy.typing.ArrayLike,
    bha_excess_weight: float | numpy.typing.ArrayLike,
    block_weight: float | numpy.typing.ArrayLike,
    *,
    kelly_weight: float | numpy.typing.ArrayLike,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    ream: bool = True,
    bha_length: float | numpy.typing.ArrayLike = 0.0,
) -> tuple:
    """
    Strokes of drilling with a kelly: depth, load up, load down, travel.
    """

def lift(
    load: float | numpy.typing.ArrayLike,
    travel: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Work of one stroke of the block.

    In SI: load [N], travel [m]; gives [J].
    """

def round_trip(
    depth: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    pipe_weight: float | numpy.typing.ArrayLike,
    bha_excess_weight: float | numpy.typing.ArrayLike,
    block_weight: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Work of one round trip, API RP 9B.

    In SI: depth [m], stand_length [m], pipe_weight [N/m], bha_excess_weight [N], block_weight [N]; gives [J].
    """

def short_trip(
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    pipe_weight: float | numpy.typing.ArrayLike,
    bha_excess_weight: float | numpy.typing.ArrayLike,
    block_weight: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Work of a short trip, API RP 9B.

    In SI: depth_from [m], depth_to [m], stand_length [m], pipe_weight [N/m], bha_excess_weight [N], block_weight [N]; gives [J].
    """

def top_drive_strokes(
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    pipe_weight: float | numpy.typing.ArrayLike,
    bha_excess_weight: float | numpy.typing.ArrayLike,
    block_weight: float | numpy.typing.ArrayLike,
    *,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    reams: typing.SupportsInt | typing.SupportsIndex = 0,
    bha_length: float | numpy.typing.ArrayLike = 0.0,
) -> tuple:
    """
    Strokes of drilling with a top drive: depth, load up, load down, travel.
    """

def trip_strokes(
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    pipe_weight: float | numpy.typing.ArrayLike,
    bha_excess_weight: float | numpy.typing.ArrayLike,
    block_weight: float | numpy.typing.ArrayLike,
    *,
    bha_length: float | numpy.typing.ArrayLike = 0.0,
) -> tuple:
    """
    Strokes of a trip by stands: depth, load up, load down, travel.
    """
