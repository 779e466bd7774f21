"""The border: what users write, turned into the SI numbers the core takes, and back.

Arguments are converted by role. Each unit is looked at once per registry and role, then its factor
is taken from a table; the caller's data is never modified, and SI arrays of float64 pass as they
are. All wrong arguments of a call are reported together.

Functions that are no row formulas use `to_si`, `to_one`, `to_count`, `arguments` and `to_quantity`.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, TypeAlias, overload

import numpy as np
import numpy.typing as npt

from ropewalk import _describe
from ropewalk._factors import find_factor
from ropewalk._numbers import RefusedError, scaled
from ropewalk._signature import PARAMETERS, ROLES, Parameter, Role
from ropewalk._units import Quantity, QuantityLike, UnreadableTextError, read_text, registry
from ropewalk.errors import InadmissibleError, UnitError

__all__ = [
    "NumberLike",
    "Quantity",
    "QuantityLike",
    "SiValue",
    "arguments",
    "to_count",
    "to_one",
    "to_one_within",
    "to_quantity",
    "to_si",
]

#: What an argument without a unit takes: a number, numbers in a container, a pure ratio.
NumberLike: TypeAlias = float | npt.ArrayLike | QuantityLike
SiValue: TypeAlias = float | npt.NDArray[np.float64]

#: Role → (quantity class, unit items …) → factor. The class stands for the registry and keeps it.
FACTORS: dict[Role, dict[tuple[Any, ...], float]] = {role: {} for role in ROLES.values()}
_MOST_FACTORS = 4096

_SIGNS_OF_A_UNIT = ("units", "unit", "dimensionality")

_UNITS_OF_RESULTS: dict[tuple[type[Any], Role], Any] = {}


def to_si(where: str, name: str, value: Any, role: Role | str) -> Any:
    """SI number or float64 array of one argument.

    Parameters
    ----------
    where
        Function that asks, ``"rig.load"``; begins the message of an error.
    name
        Argument, as the user writes it.
    value
        What the user gave.
    role
        Role the argument has, or its name in `ROLES`.

    Raises
    ------
    UnitError
        If the value has no unit, or one that does not belong to the role.
    """
    role = ROLES[role] if isinstance(role, str) else role
    try:
        return convert(value, role)
    except RefusedError as refusal:
        parameter = PARAMETERS.get(name)
        if parameter is None or parameter.role is not role:
            parameter = Parameter(role, role.unit, "", 100.0)
        problem = _describe.problem(name, value, parameter, refusal)
        raise UnitError(f"{where}(): {problem}", where, name) from None


def to_one(where: str, name: str, value: Any, role: Role | str) -> float:
    """SI number of one argument that is one value; an array is refused."""
    number = to_si(where, name, value, role)
    if type(number) is float:
        return number
    if np.ndim(number):
        text = f"{name} must be one value, got an array of shape {np.shape(number)}"
        raise InadmissibleError(f"{where}(): {text}", where, name)
    return float(number)


def to_one_within(
    where: str,
    name: str,
    value: Any,
    role: str,
    low: float,
    high: float,
    *,
    above: bool = False,
) -> float:
    """SI number of one argument that a guard keeps in [low, high], or in (low, high] if `above`.

    >>> to_one_within("rig.check", "stroke", "250 cm", "length", 0.0, 40.0, above=True)
    2.5
    """
    number = to_one(where, name, value, role)
    if not low <= number <= high or (above and number == low):
        unit = f" {to_quantity(1.0, role).units:~}" if ROLES[role].has_unit else ""
        allowed = f"{'(' if above else '['}{low:g}, {high:g}]{unit}"
        text = f"{name} = {number:g}{unit} is outside {allowed}"
        guard = "ropewalk's guard against slips of the pen"
        raise InadmissibleError(f"{where}(): {text} ({guard})", where, name)
    return number


def to_count(where: str, name: str, value: Any) -> int:
    """Whole number of one argument, refused if it is not whole."""
    number = to_si(where, name, value, "count")
    if np.ndim(number) or not abs(number) <= 2**53 or number != int(number):
        text = f"{name} must be one whole number, got {value!r}"
        raise InadmissibleError(f"{where}(): {text}", where, name)
    return int(number)


def arguments(where: str, /, **values: Any) -> tuple[Any, ...]:
    """SI values of several arguments known to the parameter table, in the order given.

    >>> arguments("rig.check", rope_diameter="1 in", lines=10)
    (0.0254, 10.0)
    """
    converted, _ = convert_all(where, values)
    return tuple(converted)


@overload
def to_quantity(si_value: Any, role: Literal["number", "count"], like: Any = None) -> Any: ...
@overload
def to_quantity(si_value: Any, role: Role | str, like: Any = None) -> Quantity: ...
def to_quantity(si_value: Any, role: Role | str, like: Any = None) -> Any:
    """Quantity in coherent SI of a number or array; plain numbers stay what they are.

    Parameters
    ----------
    si_value
        Number or array in the SI unit of `role`.
    role
        Role, or its name in `ROLES`.
    like
        Quantity whose registry the result joins; without it, that of `ropewalk.units`.
    """
    role = ROLES[role] if isinstance(role, str) else role
    if not role.has_unit:
        return si_value
    return make_quantity(si_value, role, type(like) if hasattr(like, "unit_items") else None)


def make_quantity(si_value: Any, role: Role, owner: type[Any] | None) -> Any:
    """Quantity of a role that has a unit, as one of the class `owner` if given."""
    if owner is None:
        owner = registry().Quantity
    unit = _UNITS_OF_RESULTS.get((owner, role))
    if unit is None:
        try:
            unit = owner(1, role.si_unit).units
        except AttributeError:  # pint's UndefinedUnitError: a small registry of someone's own
            return make_quantity(si_value, role, None)
        _UNITS_OF_RESULTS[owner, role] = unit
    return owner(si_value, unit)


def convert_all(where: str, values: Mapping[str, Any]) -> tuple[list[Any], type[Any] | None]:
    """SI values in order, and the class of the first quantity among them.

    Raises
    ------
    UnitError
        With every argument that is wrong.
    """
    converted: list[Any] = []
    problems: list[str] = []
    owner: type[Any] | None = None
    first_wrong = ""
    for name, value in values.items():
        parameter = PARAMETERS[name]
        if owner is None and hasattr(value, "unit_items"):
            owner = type(value)
        try:
            converted.append(convert(value, parameter.role))
        except RefusedError as refusal:
            problems.append(_describe.problem(name, value, parameter, refusal))
            first_wrong = first_wrong or name
    if problems:
        raise UnitError(f"{where}(): {_describe.listed(problems)}", where, first_wrong)
    return converted, owner


def convert(value: Any, role: Role) -> Any:
    """SI number or array of one value; raises RefusedError if it does not belong to the role."""
    if isinstance(value, str):
        try:
            number, unit = read_text(value)
        except UnreadableTextError as reason:
            raise RefusedError("", str(reason)) from None
        if not unit.unit_items() and role.has_unit:
            raise RefusedError("text without a unit")
        return scaled(number, factor_of(unit, role))
    if hasattr(value, "unit_items") and hasattr(value, "magnitude"):
        return scaled(value.magnitude, factor_of(value, role))
    if role.has_unit:
        raise RefusedError("")
    # A pandas object may have a row called "unit".
    if not hasattr(value, "iloc") and any(hasattr(value, a) for a in _SIGNS_OF_A_UNIT):
        raise RefusedError("an object with a unit that is no pint quantity")
    return scaled(value, 1.0)


def factor_of(quantity: Any, role: Role) -> float:
    """Factor to SI from the table, or found and put there."""
    table = FACTORS[role]
    key = (type(quantity), *quantity.unit_items())
    factor = table.get(key)
    if factor is None:
        factor = find_factor(quantity, role)
        if len(table) >= _MOST_FACTORS:
            table.clear()
        table[key] = factor
    return factor
