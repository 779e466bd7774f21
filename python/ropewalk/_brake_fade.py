"""Fading of a lining: its friction over its temperature."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np

from ropewalk import _core
from ropewalk._border import NumberLike, QuantityLike, to_si
from ropewalk._units import read_text, registry
from ropewalk.errors import InadmissibleError, UnitError

__all__ = ["FrictionTable"]


@dataclass(frozen=True, slots=True)
class FrictionTable:
    """Friction of a lining over its temperature, from the maker's table or your own test.

    Linings fade as they get hot; how much is a matter of the lining, so the table is yours.
    Between its points friction runs straight; outside them there is none.

    Parameters
    ----------
    temperatures
        Temperatures of the lining, rising, on any scale: ``rw.Q([50, 200, 350], "degC")``, or a
        list of single ones, ``["50 degC", "200 degC"]``.
    frictions
        Friction at each.

    Attributes
    ----------
    temperatures_si
        Temperatures, K.
    frictions
        Friction at each.

    Raises
    ------
    UnitError
        If the temperatures are none.
    InadmissibleError
        If the table is no curve, or a friction none.

    Examples
    --------
    >>> import ropewalk as rw
    >>> table = rw.brake.FrictionTable(rw.Q([20, 100, 350], "degC"), [0.38, 0.36, 0.28])
    >>> print(f"{table.at('225 degC'):.2f}")
    0.32
    """

    temperatures_si: tuple[float, ...]
    frictions: tuple[float, ...]

    def __init__(
        self, temperatures: QuantityLike | Sequence[QuantityLike], frictions: NumberLike
    ) -> None:
        where = "brake.FrictionTable"
        kelvin = np.atleast_1d(_absolute(where, "temperatures", temperatures))
        numbers = np.atleast_1d(to_si(where, "frictions", frictions, "number"))
        rising = kelvin.ndim == 1 and kelvin.size >= 2 and bool(np.all(np.diff(kelvin) > 0.0))
        if not rising or kelvin.shape != numbers.shape:
            text = "temperatures must rise, two at least, with one of frictions for each"
            raise InadmissibleError(f"{where}(): {text}", where, "temperatures")
        if not bool(np.all((numbers > 0.0) & (numbers <= 1.0))):
            text = f"frictions must lie in (0, 1], got {numbers.tolist()}"
            raise InadmissibleError(f"{where}(): {text}", where, "frictions")
        object.__setattr__(self, "temperatures_si", tuple(map(float, kelvin)))
        object.__setattr__(self, "frictions", tuple(map(float, numbers)))

    def at(self, temperature: QuantityLike) -> float:
        """Friction at a temperature of the lining.

        Raises
        ------
        ValidityError
            Outside the table.
        """
        where = "brake.FrictionTable.at"
        kelvin = _absolute(where, "temperature", temperature)
        if kelvin.ndim:
            text = f"temperature must be one value, got an array of shape {kelvin.shape}"
            raise InadmissibleError(f"{where}(): {text}", where, "temperature")
        return float(
            _core.brake.friction_at(list(self.temperatures_si), list(self.frictions), float(kelvin))
        )


@lru_cache(maxsize=1024)
def _kelvin(text: str, _: type[Any]) -> float:
    """Kelvin of a temperature in text, by registry: a scale with a zero elsewhere takes a while."""
    number, unit = read_text(text)
    return float(type(unit)(number, unit.units).to("kelvin").magnitude)


def _absolute(where: str, name: str, value: Any) -> Any:
    """Kelvin of a temperature on any scale: the one place that takes a reading in °C or °F."""
    if isinstance(value, (list, tuple)):
        return np.array([float(_absolute(where, name, one)) for one in value])
    try:
        if isinstance(value, str):
            kelvin = _kelvin(value, registry().Quantity)
        else:
            kelvin = value.to("kelvin").magnitude
    except Exception as reason:  # pint's errors have no class in common with ours
        text = f"{name} must be a temperature such as rw.Q(200, 'degC'), got {value!r}"
        raise UnitError(f"{where}(): {text}", where, name) from reason
    if not bool(np.all(np.asarray(kelvin) > 0.0)):
        text = f"{name} must be above absolute zero, got {value!r}"
        raise InadmissibleError(f"{where}(): {text}", where, name)
    return np.asarray(kelvin, dtype=np.float64)
