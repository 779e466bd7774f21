"""
Wire rope: strength, mass, metallic area, catalog.
"""

from __future__ import annotations
import numpy.typing
import typing

__all__: list[str] = [
    "area_from_factor",
    "breaking_force_from_factor",
    "catalog",
    "constructions",
    "factors",
    "find",
    "from_certificate",
    "from_factors",
    "grades",
    "mass_from_factor",
]

def area_from_factor(
    rope_diameter: float | numpy.typing.ArrayLike,
    area_factor: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Metallic area C d2.

    In SI: rope_diameter [m], area_factor [1]; gives [m2].
    """

def breaking_force_from_factor(
    rope_diameter: float | numpy.typing.ArrayLike,
    wire_strength: float | numpy.typing.ArrayLike,
    strength_factor: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Breaking force K d2 R.

    In SI: rope_diameter [m], wire_strength [Pa], strength_factor [1]; gives [N].
    """

def catalog(
    construction: str | None = None,
    grade: str | None = None,
    diameter: float | numpy.typing.ArrayLike | None = None,
) -> list[dict]:
    """
    The ropes of the catalog, or those of one construction, grade, diameter [m], as find() gives them.
    """

def constructions() -> list[dict]:
    """
    The constructions: make-up, metallic area, outer wire, modulus, with their sources.
    """

def factors() -> list[dict]:
    """
    The factors of every class with their sources.
    """

def find(construction: str, grade: str, diameter: float | numpy.typing.ArrayLike) -> dict:
    """
    One rope of the catalog by its diameter [m]: its properties in SI and their sources.
    """

def from_certificate(
    construction: str,
    grade: str,
    diameter: float | numpy.typing.ArrayLike,
    breaking_force: float | numpy.typing.ArrayLike,
    mass_per_length: float | numpy.typing.ArrayLike,
    metallic_area: float | numpy.typing.ArrayLike | None = None,
    outer_wire_diameter: float | numpy.typing.ArrayLike | None = None,
    modulus: float | numpy.typing.ArrayLike | None = None,
    wire_strength: float | numpy.typing.ArrayLike | None = None,
) -> dict:
    """
    A rope as its certificate states it, in SI, as find() gives it.
    """

def from_factors(
    rope_class: str,
    wire_strength: float | numpy.typing.ArrayLike,
    diameter: float | numpy.typing.ArrayLike,
) -> dict:
    """
    A rope of EN 12385-4 by class, wire strength [Pa] and diameter [m], as find() gives it.
    """

def grades() -> list[dict]:
    """
    The grades of rope and what is published on their wire.
    """

def mass_from_factor(
    rope_diameter: float | numpy.typing.ArrayLike,
    mass_factor: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Mass per length W d2.

    In SI: rope_diameter [m], mass_factor [kg/m3]; gives [kg/m].
    """
