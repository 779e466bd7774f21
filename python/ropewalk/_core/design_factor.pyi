"""
Design factors of ropes and their minimums.
"""

from __future__ import annotations
import numpy.typing
import typing

__all__: list[str] = ["allowed_rope_tension", "derated", "design_factor", "minimum", "minimums"]

def allowed_rope_tension(
    breaking_force: float | numpy.typing.ArrayLike,
    minimum_design_factor: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest tension for a minimum design factor.

    In SI: breaking_force [N], minimum_design_factor [1]; gives [N].
    """

def derated(
    breaking_force: float | numpy.typing.ArrayLike,
    strength_efficiency: float | numpy.typing.ArrayLike,
    rope_tension: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Design factor of a rope bent over a sheave.

    In SI: breaking_force [N], strength_efficiency [1], rope_tension [N]; gives [1].
    """

def design_factor(
    breaking_force: float | numpy.typing.ArrayLike,
    rope_tension: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Breaking force over rope tension.

    In SI: breaking_force [N], rope_tension [N]; gives [1].
    """

def minimum(operation: str, standard: str = "API RP 9B") -> dict:
    """
    The minimum design factor a standard asks for in an operation, with its source.
    """

def minimums() -> list[dict]:
    """
    Every minimum design factor, as minimum() gives it.
    """
