"""Terms of a life regression at one point, and whether the table reaches there."""

from __future__ import annotations

import warnings
from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np

from ropewalk._fit_table import Array
from ropewalk._fit_terms import Level, Term
from ropewalk._units import Q
from ropewalk.errors import InadmissibleError, ValidityError, ValidityWarning

_POLICIES = ("raise", "warn", "ignore")


def point(
    where: str,
    terms: Sequence[Term],
    reach: Sequence[tuple[Any, ...]],
    at: Mapping[str, Any] | None,
    policy: str,
) -> Array:
    """1 for the intercept and the value of each term."""
    if policy not in _POLICIES:
        text = f"outside_validity must be one of {_POLICIES}, got {policy!r}"
        raise InadmissibleError(f"{where}(): {text}", where, "outside_validity")
    given = at or {}
    found = [1.0]
    for term, spots in zip(terms, reach, strict=True):
        if term.column not in given:
            text = f"at must have a value for the column {term.column!r}, which {term} looks at"
            raise InadmissibleError(f"{where}(): {text}", where, "at")
        value = given[term.column]
        if isinstance(value, str) and not isinstance(term, Level):
            value = Q(value)
        row = Q([value.magnitude], str(value.units)) if hasattr(value, "magnitude") else [value]
        here = {term.column: row}
        outside = _outside(term, term.spots(here)[0], spots)
        if outside and policy != "ignore":
            text = f"{term.column} = {given[term.column]} is outside the table, {outside}"
            if policy == "raise":
                raise ValidityError(f"{where}(): {text}", where, term.column)
            warnings.warn(f"{where}(): {text}", ValidityWarning, stacklevel=4)
        found.append(float(term.values(here)[0]))
    return np.array(found)


def _outside(term: Term, spot: Any, spots: tuple[Any, ...]) -> str:
    """What the table reaches, if the spot lies elsewhere."""
    if isinstance(term, Level):
        return "" if spot in spots else f"which has {', '.join(map(str, spots))}"
    low, high = spots
    # A value that went through another unit may have lost its last digit.
    slack = 1e-12 * max(abs(low), abs(high))
    if low - slack <= spot <= high + slack:
        return ""
    plain = isinstance(term.reference, (int, float)) and term.reference == 1.0
    return (
        f"which reaches from {low:.6g} to {high:.6g}{'' if plain else f' times {term.reference}'}"
    )
