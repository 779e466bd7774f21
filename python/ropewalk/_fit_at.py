"""Terms of a life regression at one point, and whether the table reaches there."""

from __future__ import annotations

import warnings
from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._fit_table import Array
from ropewalk._fit_terms import Level, Term
from ropewalk._units import Q
from ropewalk.errors import InadmissibleError, ValidityError, ValidityWarning

if TYPE_CHECKING:
    from ropewalk._fit_result import LifeFit

_POLICIES = ("raise", "warn", "ignore")


def point(
    where: str,
    fit: LifeFit,
    terms: Sequence[Term],
    at: Mapping[str, Any] | None,
    policy: str,
) -> Array:
    """1 for the intercept and the value of each term."""
    if policy not in _POLICIES:
        text = f"outside_validity must be one of {_POLICIES}, got {policy!r}"
        raise InadmissibleError(f"{where}(): {text}", where, "outside_validity")
    given = at or {}
    found = [1.0]
    for term in terms:
        if term.column not in given:
            text = f"at must have a value for the column {term.column!r}, which {term} looks at"
            raise InadmissibleError(f"{where}(): {text}", where, "at")
        value = given[term.column]
        if isinstance(value, str) and not isinstance(term, Level):
            value = Q(value)
        row = Q([value.magnitude], str(value.units)) if hasattr(value, "magnitude") else [value]
        number = float(term.values({term.column: row})[0])
        low, high = fit.ranges[term]
        slack = 1e-12 * max(abs(low), abs(high))
        if policy != "ignore" and not low - slack <= number <= high + slack:
            text = (
                f"{term} = {number:.6g} at {term.column} = {given[term.column]} is outside "
                f"[{low:.6g}, {high:.6g}], the rows of the table"
            )
            if policy == "raise":
                raise ValidityError(f"{where}(): {text}", where, term.column)
            warnings.warn(f"{where}(): {text}", ValidityWarning, stacklevel=4)
        found.append(number)
    return np.array(found)
