"""Temperatures on any scale, in kelvin."""

from __future__ import annotations

from functools import lru_cache
from typing import Any

import numpy as np

from ropewalk._units import read_text, registry
from ropewalk.errors import InadmissibleError, UnitError

__all__ = ["absolute"]


@lru_cache(maxsize=1024)
def _kelvin(text: str, _: type[Any]) -> float:
    """Kelvin of a temperature in text, by registry: a scale with a zero elsewhere takes a while."""
    number, unit = read_text(text)
    return float(type(unit)(number, unit.units).to("kelvin").magnitude)


def absolute(where: str, name: str, value: Any) -> Any:
    """Kelvin of a temperature on any scale: the one place that takes a reading in °C or °F."""
    if isinstance(value, (list, tuple)):
        return np.array([float(absolute(where, name, one)) for one in value])
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
