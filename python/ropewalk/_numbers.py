"""Plain numbers: what counts as one, and why something else does not."""

from __future__ import annotations

import numbers
from decimal import Decimal
from typing import Any

import numpy as np


class RefusedError(Exception):
    """Why a value does not do for an argument.

    Attributes
    ----------
    kind
        What the value is instead, put in brackets after the value.
    advice
        What to write; empty where the argument's example says it.
    """

    def __init__(self, kind: str, advice: str = "") -> None:
        super().__init__(kind)
        self.kind = kind
        self.advice = advice


def scaled(value: Any, factor: float) -> Any:
    """Value times factor as float or float64 array.

    Arrays of float64 are passed on as they are if the factor is 1, and never changed.

    Raises
    ------
    RefusedError
        If the value is no number and no regular container of numbers.
    """
    if type(value) is float:  # as nearly always; what follows takes several times as long
        return value * factor
    if isinstance(value, (bool, np.bool_)):
        raise RefusedError("a boolean")
    if isinstance(value, (numbers.Real, Decimal)):
        try:
            return float(value) * factor
        except OverflowError:
            raise RefusedError("a number too large for a float") from None
    if isinstance(value, np.ma.MaskedArray):
        raise RefusedError("a masked array", "fill or drop the masked values first")
    if isinstance(value, (list, tuple)):
        _refuse_items(value)
    elif not isinstance(value, range) and not hasattr(value, "__array__"):
        raise RefusedError("")
    try:
        array = np.asarray(value)
    except ValueError:
        raise RefusedError("not a regular array") from None
    if array.dtype.kind not in "iuf":
        raise RefusedError(f"of {array.dtype} values")
    if factor == 1.0:
        return np.asarray(array, dtype=np.float64)
    return np.multiply(array, factor, dtype=np.float64)


def _refuse_items(values: Any) -> None:
    """NumPy would drop the units of quantities in a list, and count booleans as 0 and 1."""
    for item in values:
        if isinstance(item, (list, tuple)):
            _refuse_items(item)
        elif hasattr(item, "unit_items"):
            raise RefusedError("of quantities")
        elif isinstance(item, (bool, np.bool_)):
            raise RefusedError("with booleans in it")
