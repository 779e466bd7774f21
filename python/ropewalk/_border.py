"""The border: what users write, turned into the SI numbers the core takes, and back.

Arguments are converted by role. Each unit is looked at once per registry and role, then its factor
is taken from a table; the caller's data is never modified, and SI arrays of float64 pass as they
are. All wrong arguments of a call are reported together.

Functions that are no row formulas use `to_si`, `to_count`, `arguments` and `to_quantity`.
"""

from __future__ import annotations

import numbers
from collections.abc import Mapping
from decimal import Decimal
from typing import Any, Literal, TypeAlias, overload

import numpy as np
import numpy.typing as npt

from ropewalk import _describe
from ropewalk._factors import Refusal, find_factor
from ropewalk._signature import PARAMETERS, ROLES, Parameter, Role
from ropewalk._units import Quantity, QuantityLike, UnreadableText, read_text, registry
from ropewalk.errors import InadmissibleError, UnitError

__all__ = [
    "NumberLike",
    "Quantity",
    "QuantityLike",
    "SiValue",
    "arguments",
    "to_count",
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
    except Refusal as refusal:
        parameter = PARAMETERS.get(name)
        if parameter is None or parameter.role is not role:
            parameter = Parameter(role, role.unit, "", 100.0)
        problem = _describe.problem(name, value, parameter, refusal)
        raise UnitError(f"{where}(): {problem}", where, name) from None


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
    owner = type(like) if hasattr(like, "unit_items") else registry().Quantity
    return owner(si_value, unit_of_result(owner, role))


def unit_of_result(owner: type[Any], role: Role) -> Any:
    """Unit object of a role in one registry, made once."""
    unit = _UNITS_OF_RESULTS.get((owner, role))
    if unit is None:
        unit = owner(1, role.si_unit).units
        _UNITS_OF_RESULTS[owner, role] = unit
    return unit


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
        except Refusal as refusal:
            problems.append(_describe.problem(name, value, parameter, refusal))
            first_wrong = first_wrong or name
    if problems:
        raise UnitError(f"{where}(): {_describe.listed(problems)}", where, first_wrong)
    return converted, owner


def convert(value: Any, role: Role) -> Any:
    """SI number or array of one value; raises Refusal if it does not belong to the role."""
    if isinstance(value, str):
        try:
            number, unit = read_text(value)
        except UnreadableText as reason:
            raise Refusal("", str(reason)) from None
        if not unit.unit_items() and role.has_unit:
            raise Refusal("text without a unit")
        return scaled(number, factor_of(unit, role))
    if hasattr(value, "unit_items") and hasattr(value, "magnitude"):
        return scaled(value.magnitude, factor_of(value, role))
    if role.has_unit:
        raise Refusal("")
    # A pandas object may have a row called "unit".
    if not hasattr(value, "iloc") and any(hasattr(value, a) for a in _SIGNS_OF_A_UNIT):
        raise Refusal("an object with a unit that is no pint quantity")
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


def scaled(magnitude: Any, factor: float) -> Any:
    """Magnitude times factor as float or float64 array; raises Refusal for what is no number."""
    if isinstance(magnitude, (bool, np.bool_)):
        raise Refusal("a boolean")
    if isinstance(magnitude, (numbers.Real, Decimal)):
        try:
            return float(magnitude) * factor
        except OverflowError:
            raise Refusal("a number too large for a float") from None
    if isinstance(magnitude, np.ma.MaskedArray):
        raise Refusal("a masked array", "fill or drop the masked values first")
    if isinstance(magnitude, (list, tuple)):
        _refuse_items(magnitude)
    elif not isinstance(magnitude, range) and not hasattr(magnitude, "__array__"):
        raise Refusal("")
    try:
        array = np.asarray(magnitude)
    except ValueError:
        raise Refusal("not a regular array") from None
    if array.dtype.kind not in "iuf":
        raise Refusal(f"of {array.dtype} values")
    if factor == 1.0:
        return np.asarray(array, dtype=np.float64)
    return np.multiply(array, factor, dtype=np.float64)


def _refuse_items(values: Any) -> None:
    """NumPy would drop the units of quantities in a list, and count booleans as 0 and 1."""
    for item in values:
        if isinstance(item, (list, tuple)):
            _refuse_items(item)
        elif hasattr(item, "unit_items"):
            raise Refusal("of quantities")
        elif isinstance(item, (bool, np.bool_)):
            raise Refusal("with booleans in it")
