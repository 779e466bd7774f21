"""Terms of a life regression: what of a column goes into it. Exported by `ropewalk.fit`."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, TypeAlias

import numpy as np
import numpy.typing as npt

from ropewalk._fit_table import Array, column_of, ratios
from ropewalk._units import QuantityLike
from ropewalk.errors import InadmissibleError, UnitError

__all__ = ["Level", "Log", "Ratio", "Term"]


@dataclass(frozen=True, slots=True)
class Log:
    """Logarithm of a column over a reference, or a power of it.

    A reference in the middle of the data makes the intercept the life there.

    Parameters
    ----------
    column
        Column of the table.
    reference
        What the column is divided by: a quantity if the column has a unit, else a number.
    power
        Whole power of the logarithm, from 1.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(rw.fit.Log("stress", "100 ksi", 2))
    ln(stress / 100 ksi)^2
    """

    column: str
    reference: QuantityLike | float = 1.0
    power: int = 1

    def __post_init__(self) -> None:
        _check_column("Log", self.column)
        if not isinstance(self.power, int) or isinstance(self.power, bool) or self.power < 1:
            text = f"power must be a whole number from 1, got {self.power!r}"
            raise InadmissibleError(f"fit.Log(): {text}", "fit.Log", "power")

    def __str__(self) -> str:
        power = f"^{self.power}" if self.power != 1 else ""
        return f"ln({self.column}{_over(self.reference)}){power}"

    def spots(self, table: Mapping[str, Any]) -> list[Any]:
        """Where the rows are, for the question whether the table reaches somewhere."""
        return list(ratios("fit.fit_life", table, self.column, self.reference))

    def values(self, table: Mapping[str, Any]) -> Array:
        """Values of the term, one for each row."""
        found = ratios("fit.fit_life", table, self.column, self.reference)
        bad = np.flatnonzero(found <= 0.0)
        if bad.size:
            text = (
                f"column {self.column!r}, row {bad[0]}: must be positive to have a logarithm "
                "(definition)"
            )
            raise InadmissibleError(f"fit.fit_life(): {text}", "fit.fit_life", self.column)
        return np.asarray(np.log(found) ** self.power)


@dataclass(frozen=True, slots=True)
class Ratio:
    """A column over a reference, or the column as it stands if it has no unit.

    Parameters
    ----------
    column, reference
        As for `Log`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(rw.fit.Ratio("tread_diameter", "1 m"))
    tread_diameter / 1 m
    """

    column: str
    reference: QuantityLike | float = 1.0

    def __post_init__(self) -> None:
        _check_column("Ratio", self.column)

    def __str__(self) -> str:
        return f"{self.column}{_over(self.reference)}"

    def spots(self, table: Mapping[str, Any]) -> list[Any]:
        """Where the rows are, for the question whether the table reaches somewhere."""
        return list(self.values(table))

    def values(self, table: Mapping[str, Any]) -> Array:
        """Values of the term, one for each row."""
        return ratios("fit.fit_life", table, self.column, self.reference)


@dataclass(frozen=True, slots=True)
class Level:
    """1 in rows where a column is this name, 0 elsewhere; leave one level of a column out.

    Parameters
    ----------
    column
        Column of the table.
    name
        The level.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(rw.fit.Level("lay", "lang"))
    lay is lang
    """

    column: str
    name: Any

    def __post_init__(self) -> None:
        _check_column("Level", self.column)

    def __str__(self) -> str:
        return f"{self.column} is {self.name}"

    def spots(self, table: Mapping[str, Any]) -> list[Any]:
        """Levels of the rows."""
        found, _ = column_of("fit.fit_life", table, self.column)
        levels = np.asarray(found, dtype=object).ravel().tolist()
        for row, one in enumerate(levels):
            if one is None or one != one:  # NaN differs from itself
                text = f"column {self.column!r}, row {row}: a level is missing"
                raise InadmissibleError(f"fit.fit_life(): {text}", "fit.fit_life", self.column)
        return levels

    def values(self, table: Mapping[str, Any]) -> Array:
        """Values of the term, one for each row."""
        return np.array([float(one == self.name) for one in self.spots(table)])


Term: TypeAlias = Log | Ratio | Level


def terms_of(field: str, given: Any) -> tuple[Term, ...]:
    """Terms as the user writes them; a name alone is the column as it stands."""
    if isinstance(given, (str, Log, Ratio, Level)):
        given = (given,)
    terms: list[Term] = []
    for one in given:
        if isinstance(one, str):
            terms.append(Ratio(one))
        elif isinstance(one, (Log, Ratio, Level)):
            terms.append(one)
        else:
            text = (
                f"{field} must be names of columns or terms, e.g. "
                f'rw.fit.Log("stress", "100 ksi"), got {one!r}'
            )
            raise UnitError(f"fit.fit_life(): {text}", "fit.fit_life", field)
    return tuple(terms)


def matrix_of(field: str, terms: tuple[Term, ...], table: Mapping[str, Any], rows: int) -> Array:
    """Column of ones and the values of the terms; refuses a term that the others make up."""
    columns: list[npt.NDArray[np.float64]] = [np.ones(rows)]
    basis = [np.ones(rows) / np.sqrt(rows)]
    for term in terms:
        values = term.values(table)
        rest = values.astype(float)
        for _ in range(2):
            for one in basis:
                rest = rest - one * (one @ rest)
        length = float(np.linalg.norm(rest))
        if not length > 1e-9 * float(np.linalg.norm(values)):
            before = ", ".join(("intercept", *map(str, terms[: len(columns) - 1])))
            what = "is the same in every row" if len(columns) == 1 else "is collinear"
            text = f"{field}: {term} {what}: it says nothing beside {before}"
            raise InadmissibleError(f"fit.fit_life(): {text}", "fit.fit_life", field)
        basis.append(rest / length)
        columns.append(values)
    return np.column_stack(columns)


def _over(reference: Any) -> str:
    if isinstance(reference, str):
        return f" / {reference}"
    if hasattr(reference, "magnitude"):
        return f" / {reference:~}"
    return "" if reference == 1.0 else f" / {reference:g}"


def _check_column(name: str, column: Any) -> None:
    if not isinstance(column, str):
        text = f"column must be the name of a column, got {column!r}"
        raise UnitError(f"fit.{name}(): {text}", f"fit.{name}", "column")
