"""What a study varies: parameters of the list, with values as plain numbers."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

import numpy as np
import numpy.typing as npt

from ropewalk._border import to_si
from ropewalk._numbers import RefusedError, scaled
from ropewalk._units import UnreadableTextError, read_text
from ropewalk.errors import InadmissibleError, UnitError
from ropewalk.rig.problems import KeyPath
from ropewalk.study.base import Base
from ropewalk.study.places import find

__all__ = ["Axis", "Input", "axes_of", "input_of", "values_in_file"]

Array = npt.NDArray[np.float64]

#: Kinds whose values are numbers as they stand.
_NUMBERS = ("number", "whole number")
#: Kinds whose values are text or numbers.
_MIXED = ("text or number", "text, number or false")
_CHOSEN = ("text", "choice", "date", "flag", *_MIXED)


@dataclass(frozen=True, slots=True)
class Input:
    """One parameter that a study varies.

    In the rows of a study it is a number: SI of a quantity, a whole number, or the place in
    `choices`, counted from 0, where it is text.

    Attributes
    ----------
    name
        As it was asked for, ``"crown.sheave_diameter"``; several joined by ``+`` have one value.
    places
        Where it stands in the file.
    kind, role, unit
        As in `ropewalk.rig.RigParameter`.
    display_unit
        Unit in which its values were given, else one that people use; ``"1"`` without a unit.
    long_name
        One line that says what it is.
    choices
        What its numbers stand for; empty if they are numbers.
    low, high
        Bounds of the file, in SI; None if there are none. What lies outside is a row that is
        not possible.
    """

    name: str
    places: tuple[KeyPath, ...]
    kind: str
    role: str
    unit: str
    display_unit: str
    long_name: str
    choices: tuple[Any, ...] = ()
    low: float | None = None
    high: float | None = None

    def written(self, number: float) -> Any:
        """Value of a row as a rig file has it."""
        if self.choices:
            return self.choices[int(number)]
        value = float(number)
        if self.kind == "quantity":
            return f"{value!r} {self.unit}"
        if self.kind == "whole number" and value.is_integer():
            return int(value)
        return value

    def labels(self, numbers: Array) -> npt.NDArray[Any]:
        """Values of a coordinate: SI numbers, whole numbers, or text."""
        if self.choices:
            if all(isinstance(one, bool) for one in self.choices):
                return np.array([self.choices[int(one)] for one in numbers])
            return np.array([str(self.choices[int(one)]) for one in numbers], dtype=object)
        if self.kind == "whole number":
            return numbers.astype(np.int64)
        return numbers

    @property
    def attrs(self) -> dict[str, str]:
        """Attributes of a coordinate."""
        attrs = {"units": self.unit or "1", "long_name": self.long_name}
        if self.kind == "quantity":
            attrs["display_units"] = self.display_unit
        return attrs


@dataclass(frozen=True, slots=True)
class Axis:
    """An input and its values, as numbers."""

    input: Input
    numbers: Array


def input_of(base: Base, name: str, where: str = "sweep") -> Input:
    """Return the input of one name.

    Parameters
    ----------
    base
        The rig file.
    name
        A parameter as `ropewalk.rig.resolved` names it; entries of lists count from 1,
        ``"drawworks.gear[2].ratio"``; ``[]`` is every entry that has the key,
        ``"operation[].drag_up"``. Several joined by ``+`` always have the same value:
        ``"crown.sheave_diameter + block.sheave_diameter"``.
    where
        Function that asks.

    Raises
    ------
    UnknownEntryError
        If the file has no such parameter; the message offers the nearest.
    InadmissibleError
        If joined parameters are of different kinds, or one is a table.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.study.base import Base
    >>> one = input_of(Base.of(rw.rig.example("rig7")), "drawworks.gear[2].ratio")
    >>> one.long_name, one.kind
    ('Motor speed over drum speed.', 'number')
    """
    if not isinstance(name, str):
        raise UnitError(f"{where}(): names of parameters are text, got {name!r}", where, "name")
    names = [part.strip() for part in name.split("+")]
    places = [place for part in names for place in find(where, part, base.data)]
    first = places[0].parameter
    for place in places:
        if (place.parameter.kind, place.parameter.role) != (first.kind, first.role):
            text = f"{first.path} and {place.parameter.path} are no values of one kind"
            raise InadmissibleError(f"{where}(): {name!r}: {text}", where, name)
    if first.kind not in ("quantity", *_NUMBERS, *_CHOSEN):
        raise InadmissibleError(f"{where}(): {name!r} is {first.kind}: not varied", where, name)
    lows = [place.parameter.low for place in places if place.parameter.low is not None]
    highs = [place.parameter.high for place in places if place.parameter.high is not None]
    texts = dict.fromkeys(place.parameter.text for place in places)
    return Input(
        name=" + ".join(names),
        places=tuple(place.path for place in places),
        kind=first.kind,
        role=first.role,
        unit=first.unit,
        display_unit=first.display_unit or "1",
        long_name=" / ".join(texts),
        low=max(lows, default=None),
        high=min(highs, default=None),
    )


def axes_of(base: Base, vary: Mapping[str, Any], where: str = "sweep") -> tuple[Axis, ...]:
    """Inputs and values of a study.

    Parameters
    ----------
    base
        The rig file.
    vary
        Name of a parameter → its values: a quantity with one or more values, text with a unit, a
        list of them; numbers, text or flags where the parameter is one.
    where
        Function that asks.

    Raises
    ------
    UnknownEntryError, UnitError, InadmissibleError
        If a name or a unit is wrong, there are no values, or one is no number.
    """
    if not isinstance(vary, Mapping) or not vary:
        text = "what is varied is a mapping of names to values, with one name at least"
        raise InadmissibleError(f"{where}(): {text}", where, "vary")
    axes = tuple(_axis(input_of(base, name, where), values, where) for name, values in vary.items())
    seen: dict[KeyPath, str] = {}
    for axis in axes:
        for path in axis.input.places:
            if path in seen:
                text = f"{seen[path]!r} and {axis.input.name!r} vary the same value"
                raise InadmissibleError(f"{where}(): {text}", where, axis.input.name)
            seen[path] = axis.input.name
    return axes


def _axis(one: Input, values: Any, where: str) -> Axis:
    if one.kind == "quantity":
        numbers, unit = _quantities(one, values, where)
        one = replace(one, display_unit=unit or one.display_unit)
    elif one.kind in _NUMBERS:
        numbers = _plain(one, values, where)
    else:
        return _chosen(one, values, where)
    if one.kind == "whole number" and not all(float(x).is_integer() for x in numbers):
        text = f"{one.name} must be whole numbers, got {values!r}"
        raise InadmissibleError(f"{where}(): {text}", where, one.name)
    return Axis(one, _checked(one, numbers, where))


def _quantities(one: Input, values: Any, where: str) -> tuple[Array, str]:
    """SI numbers, and the unit of the first."""
    each = values if isinstance(values, (list, tuple)) else [values]
    numbers = [to_si(where, one.name, value, one.role) for value in each]
    unit = ""
    if each and isinstance(each[0], str):
        try:
            unit = str(read_text(each[0])[1].units)
        except UnreadableTextError:  # pragma: no cover - converted above
            unit = ""
    elif each:
        unit = str(each[0].units)
    if any(np.ndim(number) > 1 for number in numbers):
        text = f"{one.name} must be one value or a row of values"
        raise InadmissibleError(f"{where}(): {text}", where, one.name)
    return np.concatenate([np.atleast_1d(number) for number in numbers] or [np.empty(0)]), unit


def _plain(one: Input, values: Any, where: str) -> Array:
    try:
        return np.atleast_1d(np.asarray(scaled(values, 1.0), dtype=np.float64))
    except RefusedError as refusal:
        kind = f" ({refusal.kind})" if refusal.kind else ""
        text = f"{one.name} must be plain numbers, got {values!r}{kind}"
        raise UnitError(f"{where}(): {text}", where, one.name) from None


def _chosen(one: Input, values: Any, where: str) -> Axis:
    """Axis of an input whose values are text, flags or dates, or numbers among them."""
    each = [values] if isinstance(values, (str, bool, date, int, float)) else list(values)
    each = [value.item() if isinstance(value, np.generic) else value for value in each]
    if one.kind in _MIXED and each and all(type(value) in (int, float) for value in each):
        return Axis(one, _checked(one, np.array(each, dtype=np.float64), where))
    kinds: dict[str, tuple[type, ...]] = {
        "flag": (bool,),
        "date": (date,),
        "text or number": (str, int, float),
        "text, number or false": (str, int, float, bool),
    }
    for value in each:
        if not isinstance(value, kinds.get(one.kind, (str,))):
            text = f"{one.name} is a {one.kind}, got {value!r}"
            raise UnitError(f"{where}(): {text}", where, one.name)
    choices = tuple(dict.fromkeys(each))
    numbers = np.array([float(choices.index(value)) for value in each])
    return Axis(replace(one, choices=choices), _checked(one, numbers, where))


def _checked(one: Input, numbers: Array, where: str) -> Array:
    if numbers.ndim != 1 or not numbers.size:
        text = f"{one.name} must be one value or a row of values, got {numbers.shape}"
        raise InadmissibleError(f"{where}(): {text}", where, one.name)
    if not np.isfinite(numbers).all():
        text = f"{one.name} must be finite, got {numbers[~np.isfinite(numbers)][0]}"
        raise InadmissibleError(f"{where}(): {text}", where, one.name)
    return np.array(numbers, dtype=np.float64)


def values_in_file(inputs: Sequence[Input], base: Base) -> Array:
    """Numbers that the file itself, or a default, has for the inputs; NaN where there are none."""
    return np.array([_value_in_file(one, base) for one in inputs])


def _value_in_file(one: Input, base: Base) -> float:
    value: Any = base.file
    for part in one.places[0]:
        if isinstance(value, dict):
            value = value.get(part)
        elif isinstance(value, list) and isinstance(part, int):
            value = value[part]
        else:
            value = getattr(value, str(part), None)
    if one.choices:
        return float(one.choices.index(value)) if value in one.choices else np.nan
    return float(value) if isinstance(value, (int, float)) else np.nan
