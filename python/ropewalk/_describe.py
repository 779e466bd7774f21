"""Texts of the border: what was wrong with an argument, and what to write instead."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from typing import Any

import numpy as np

from ropewalk._factors import unit_text
from ropewalk._numbers import RefusedError
from ropewalk._signature import Parameter

_LONGEST = 60


def problem(name: str, value: Any, parameter: Parameter, refusal: RefusedError) -> str:
    """One wrong argument: ``rope_tension must be a force with a unit, got 30 (a bare …; write …``.

    The refusal's own words come first; without them the value speaks for itself.
    """
    role = parameter.role
    must = f"{role.phrase} with a unit" if role.has_unit else role.phrase
    given, kind = given_text(value), refusal.kind or _kind_of(value)
    got = f"{given} ({kind})" if kind else given
    advice = f"{refusal.advice}; e.g." if refusal.advice else "write e.g."
    return f"{name} must be {must}, got {got}; {advice} {_example(value, parameter)}"


def listed(problems: Sequence[str]) -> str:
    """One problem as it is, several as a list."""
    if len(problems) == 1:
        return problems[0]
    return f"{len(problems)} arguments are wrong:" + "".join(f"\n  {text}" for text in problems)


def given_text(value: Any) -> str:
    """What the user gave, short and in the user's own unit."""
    if hasattr(value, "unit_items") and hasattr(value, "magnitude"):
        magnitude = value.magnitude
        if np.ndim(magnitude):
            return f"an array in {unit_text(value)}" if value.unit_items() else "a ratio array"
        return f"{_number(magnitude)} {unit_text(value)}".rstrip()
    if _is_container(value):
        return "an array" if isinstance(value, np.ndarray) else f"a {type(value).__name__}"
    text = repr(value)
    return text if len(text) <= _LONGEST else f"a {type(value).__name__}"


def row_text(value: Any, row: int, shape: tuple[int, ...]) -> str:
    """What the user gave for one row of arrays broadcast to `shape`."""
    if isinstance(value, str):
        return given_text(value)
    magnitude = value.magnitude if hasattr(value, "unit_items") else value
    number = _number(np.broadcast_to(np.asarray(magnitude), shape).flat[row])
    return f"{number} {unit_text(value)}".rstrip() if hasattr(value, "unit_items") else number


def _number(value: Any) -> str:
    try:
        return repr(float(value)).removesuffix(".0")
    except (TypeError, ValueError, OverflowError):
        return str(value)


def _kind_of(value: Any) -> str:
    """Words for what is neither quantity nor readable text."""
    if value is None or isinstance(value, str):
        return ""
    if isinstance(value, (bool, np.bool_)):
        return "a boolean"
    if isinstance(value, (complex, np.complexfloating)):
        return "a complex number"
    if isinstance(value, (bytes, bytearray)):
        return "bytes"
    if isinstance(value, (datetime.date, datetime.time, datetime.timedelta, np.datetime64)):
        return "a date or clock time"
    if isinstance(value, (int, float, np.number)):
        return "a bare number"
    if isinstance(value, (list, tuple)) and any(hasattr(item, "unit_items") for item in value):
        return "of quantities"
    if hasattr(value, "iloc") or _is_container(value):
        return "without a unit"
    if hasattr(value, "unit") or hasattr(value, "units"):
        return "an object with a unit that is no pint quantity"
    if hasattr(value, "dimensionality"):
        return "a unit without a number"
    return f"of type {type(value).__name__}"


def _is_container(value: Any) -> bool:
    if isinstance(value, (list, tuple, range)):
        return True
    return not hasattr(value, "unit_items") and hasattr(value, "__array__") and np.ndim(value) > 0


def _example(value: Any, parameter: Parameter) -> str:
    text = f"{parameter.example:.12g}"
    if not parameter.unit:
        return text
    if _is_container(value):
        return f'rw.Q(numbers, "{parameter.unit}")'
    return f'"{text} {parameter.unit}" or rw.Q({text}, "{parameter.unit}")'
