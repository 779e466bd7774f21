"""
Sheaves: size, groove, bearing pressure, strength.
"""

from __future__ import annotations
import numpy.typing
import typing

__all__: list[str] = [
    "bearing_pressure",
    "bearing_pressure_limit",
    "bearing_pressure_ratio",
    "bend_ratio",
    "groove_depth_max",
    "groove_depth_min",
    "groove_radius_new_max",
    "groove_radius_new_min",
    "groove_radius_table",
    "groove_radius_worn_min",
    "strength_efficiency",
    "table",
    "tread_diameter",
]

def bearing_pressure(
    rope_tension: float | numpy.typing.ArrayLike,
    rope_diameter: float | numpy.typing.ArrayLike,
    sheave_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Radial bearing pressure on the projected area.

    In SI: rope_tension [N], rope_diameter [m], sheave_diameter [m]; gives [Pa].
    """

def bearing_pressure_limit(groove_material: str, rope_class: str, lay: str) -> float:
    """
    Bearing pressure [Pa] a groove material bears.
    """

def bearing_pressure_ratio(
    rope_tension: float | numpy.typing.ArrayLike,
    rope_diameter: float | numpy.typing.ArrayLike,
    sheave_diameter: float | numpy.typing.ArrayLike,
    wire_strength: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Bearing pressure over the strength of the wire.

    In SI: rope_tension [N], rope_diameter [m], sheave_diameter [m], wire_strength [Pa]; gives [1].
    """

def bend_ratio(
    sheave_diameter: float | numpy.typing.ArrayLike,
    rope_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Sheave diameter over rope diameter.

    In SI: sheave_diameter [m], rope_diameter [m]; gives [1].
    """

def groove_depth_max(
    rope_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest groove depth for a drilling line.

    In SI: rope_diameter [m]; gives [m].
    """

def groove_depth_min(
    rope_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Smallest groove depth for a drilling line.

    In SI: rope_diameter [m]; gives [m].
    """

def groove_radius_new_max(
    rope_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest groove radius of a new sheave.

    In SI: rope_diameter [m]; gives [m].
    """

def groove_radius_new_min(
    rope_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Smallest groove radius of a new sheave.

    In SI: rope_diameter [m]; gives [m].
    """

def groove_radius_table(rope_diameter: float | numpy.typing.ArrayLike, state: str = "new") -> float:
    """
    Printed minimum groove radius [m] of a rope size [m].
    """

def groove_radius_worn_min(
    rope_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Smallest groove radius of a worn sheave.

    In SI: rope_diameter [m]; gives [m].
    """

def strength_efficiency(
    bend_ratio: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Share of its strength a rope keeps over a sheave.

    In SI: bend_ratio [1]; gives [1].
    """

def table(name: str) -> list[dict]:
    """
    Rows of one of this subject's tables with source and standing of each value.
    """

def tread_diameter(
    construction: str, condition: str, rope_diameter: float | numpy.typing.ArrayLike
) -> float:
    """
    Tread diameter [m] advised for a construction.
    """
