"""Columns of a table of lives as ratios: where units are checked, for the core takes none."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk._units import Q, registry
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError

if TYPE_CHECKING:
    import pandas as pd

__all__ = ["life_table"]

Array = npt.NDArray[np.float64]

_WITH_UNIT = re.compile(r"\s*(?P<name>[^\[\]]*[^\[\]\s])\s*\[(?P<unit>[^\[\]]+)\]\s*")
#: Kinds of rows as the core numbers them.
KNOWN = {"no": 0, "right": 1, "left": 2, "interval": 3}


def life_table(**columns: Any) -> pd.DataFrame:
    """Table of lives from columns of one length; a unit stands in the name, ``stress [ksi]``.

    Examples
    --------
    >>> import ropewalk as rw
    >>> table = rw.fit.life_table(life=[120, 80, 45], **{"stress [ksi]": [80.0, 100, 120]})
    >>> list(table)
    ['life', 'stress [ksi]']
    """
    import pandas as pd

    lengths = {name: len(values) for name, values in columns.items()}
    if len(set(lengths.values())) > 1:
        text = f"columns must have the same number of rows, got {lengths}"
        raise InadmissibleError(f"fit.life_table(): {text}", "fit.life_table")
    return pd.DataFrame(columns)


def column_of(where: str, table: Mapping[str, Any], name: str) -> tuple[Any, str]:
    """Values of a column and the unit that its name gives; the name comes without its unit."""
    if name in table:
        match = _WITH_UNIT.fullmatch(name)
        return table[name], match["unit"] if match else ""
    for key in table:
        match = _WITH_UNIT.fullmatch(str(key))
        if match and match["name"] == name:
            return table[key], match["unit"]
    have = ", ".join(repr(str(key)) for key in table)
    raise UnknownEntryError(
        f"{where}(): there is no column {name!r}; there are {have}", where, name
    )


def rows_of(where: str, table: Mapping[str, Any]) -> int:
    """Number of rows, the same for all columns."""
    lengths = {
        str(name): int(np.size(getattr(table[name], "magnitude", table[name]))) for name in table
    }
    if len(set(lengths.values())) != 1:
        text = f"columns must have the same number of rows, got {lengths}"
        raise InadmissibleError(f"{where}(): {text}", where, "table")
    return next(iter(lengths.values()))


def ratios(where: str, table: Mapping[str, Any], name: str, reference: Any) -> Array:
    """A column over its reference, each number finite."""
    values, unit = column_of(where, table, name)
    if unit and not hasattr(values, "magnitude"):
        values = Q(numbers_of(where, name, values), unit)
    if isinstance(values, str):
        values = Q(values)
    found = over(where, name, values, reference)
    bad = np.flatnonzero(~np.isfinite(found))
    if bad.size:
        text = f"column {name!r}, row {bad[0]}: {found[bad[0]]} is no finite number"
        raise InadmissibleError(f"{where}(): {text}", where, name)
    return found


def over(where: str, name: str, values: Any, reference: Any) -> Array:
    """Quantities over a quantity, or numbers over a number."""
    whole = Q(reference) if isinstance(reference, str) else reference
    if hasattr(values, "magnitude") != hasattr(whole, "magnitude"):
        if hasattr(values, "magnitude"):
            text = f"column {name!r} has the unit {values.units:~}, but its reference has none"
            example = f'"1 {values.units:~}"'
        else:
            text = f"column {name!r} has no unit, but its reference {reference} has one"
            example = f'"{name} [{whole.units:~}]" as the name of the column'
        raise UnitError(f"{where}(): {text}; write e.g. {example}", where, name)
    if hasattr(values, "magnitude"):
        Quantity = registry().Quantity
        part = Quantity(numbers_of(where, name, values.magnitude), str(values.units))
        base = Quantity(float(whole.magnitude), str(whole.units)).to_base_units()
        if part.dimensionality != base.dimensionality:
            text = f"column {name!r} is in {values.units:~}, its reference in {whole.units:~}"
            raise UnitError(f"{where}(): {text}", where, name)
        numbers, size = part.to_base_units().magnitude, float(base.magnitude)
    else:
        if isinstance(whole, bool) or not isinstance(whole, (int, float, np.number)):
            text = f"reference of column {name!r} must be a number or a quantity, got {reference!r}"
            raise UnitError(f"{where}(): {text}", where, name)
        numbers, size = numbers_of(where, name, values), float(whole)
    if not (np.isfinite(size) and size > 0.0):
        text = f"reference of column {name!r} = {reference} must be positive and finite"
        raise InadmissibleError(f"{where}(): {text}", where, name)
    return np.asarray(np.ravel(numbers) / size, dtype=np.float64)


def numbers_of(where: str, name: str, values: Any) -> Array:
    """Numbers of a column; text, booleans and quantities in a list are refused, with their row."""
    array = np.asarray(values) if not isinstance(values, (list, tuple)) else None
    if array is not None and array.dtype.kind in "iuf":
        return array.astype(np.float64)
    found = np.empty(np.size(values) if array is not None else len(values))
    for row, value in enumerate(values if array is None else array.ravel()):
        plain = isinstance(value, (int, float, np.number)) and not isinstance(value, bool)
        if not plain:
            text = (
                f"column {name!r}, row {row}: must be a plain number, got {value!r}; a unit "
                f'belongs to the column, e.g. "{name} [ksi]" or rw.Q([...], "ksi")'
            )
            raise UnitError(f"{where}(): {text}", where, name)
        found[row] = float(value)
    return found


def known_of(where: str, table: Mapping[str, Any], name: str | None, rows: int) -> list[int]:
    """What is known of each row, as the core numbers it."""
    if name is None:
        return [0] * rows
    values, _ = column_of(where, table, name)
    known: list[int] = []
    for row, value in enumerate(np.asarray(values, dtype=object).ravel()):
        if isinstance(value, str) and value in KNOWN:
            known.append(KNOWN[value])
        elif isinstance(value, (bool, int, float, np.generic)) and value in (0, 1):
            known.append(int(value))
        else:
            text = (
                f"column {name!r}, row {row}: must be True (a run-out) or False, or one of "
                f"{', '.join(map(repr, KNOWN))}, got {value!r}"
            )
            raise InadmissibleError(f"{where}(): {text}", where, "censored")
    return known
