"""Valid calls of every row function, made from the examples of the signature table."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np

import ropewalk as rw
from ropewalk import _core
from ropewalk._signature import PARAMETERS, SIGNATURES, Role

#: Every row function.
FUNCTIONS = sorted(SIGNATURES)
#: Every (function, argument) of all row functions; those with a unit, and the plain numbers.
ARGUMENTS = [(name, argument) for name in FUNCTIONS for argument in SIGNATURES[name].arguments]
WITH_UNIT = [(f, a) for f, a in ARGUMENTS if PARAMETERS[a].role.has_unit]
PLAIN = [(f, a) for f, a in ARGUMENTS if not PARAMETERS[a].role.has_unit]


def public(name: str) -> Callable[..., Any]:
    """The public function, ``rw.sheave.bearing_pressure``."""
    subject, function = name.split(".")
    found: Callable[..., Any] = getattr(getattr(rw, subject), function)
    return found


def core(name: str) -> Callable[..., Any]:
    """The compiled function of the same name."""
    subject, function = name.split(".")
    found: Callable[..., Any] = getattr(getattr(_core, subject), function)
    return found


def example_number(name: str, argument: str) -> float:
    """Example of an argument in its customary unit."""
    return SIGNATURES[name].examples.get(argument, PARAMETERS[argument].example)


def example(name: str, quantity: Callable[[Any, str], Any] = rw.Q) -> dict[str, Any]:
    """Arguments of a valid call, as quantities made by `quantity`."""
    return {
        argument: (
            quantity(example_number(name, argument), PARAMETERS[argument].unit)
            if PARAMETERS[argument].role.has_unit
            else example_number(name, argument)
        )
        for argument in SIGNATURES[name].arguments
    }


def rows(name: str, count: int) -> dict[str, Any]:
    """Arguments of a valid call over `count` rows: those with a unit vary by one part in fifty."""
    factor = np.linspace(1.0, 1.02, count)
    return {a: v * factor if hasattr(v, "units") else v for a, v in example(name).items()}


def in_si(value: Any, role: Role) -> Any:
    """SI magnitude of a value by pint's own conversion."""
    if not role.has_unit:
        return value
    # pint's base units know no difference between N·m and J, which does not matter here.
    return value.to(role.si_unit).magnitude


def magnitude(result: Any) -> Any:
    """Magnitude of a quantity, or the plain number."""
    return getattr(result, "magnitude", result)
