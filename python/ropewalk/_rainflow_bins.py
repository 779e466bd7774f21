"""Cycles by range and mean. Exported by `ropewalk.rainflow`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt

from ropewalk._border import Quantity, QuantityLike, to_count, to_quantity, to_si
from ropewalk.errors import InadmissibleError

__all__ = ["RainflowMatrix", "RangeHistogram", "edges_of"]

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, eq=False, slots=True)
class RangeHistogram:
    """Cycles by range.

    Attributes
    ----------
    edges_si
        Edges of the bins, one more than there are, N.
    counts
        Cycles in each.
    """

    edges_si: Array
    counts: Array

    @property
    def edges(self) -> Quantity:
        """Edges of the bins."""
        return to_quantity(self.edges_si, "force")


@dataclass(frozen=True, eq=False, slots=True)
class RainflowMatrix:
    """Cycles by range and mean.

    Attributes
    ----------
    range_edges_si, mean_edges_si
        Edges of the bins, one more than there are, N.
    counts
        Cycles in each, shape (ranges, means).
    """

    range_edges_si: Array
    mean_edges_si: Array
    counts: Array

    @property
    def range_edges(self) -> Quantity:
        """Edges of the ranges."""
        return to_quantity(self.range_edges_si, "force")

    @property
    def mean_edges(self) -> Quantity:
        """Edges of the means."""
        return to_quantity(self.mean_edges_si, "force")


def edges_of(
    method: str, name: str, bins: int | QuantityLike, values: Array, *, from_zero: bool
) -> Array:
    """Edges of bins, from a number of them or as given; refuse edges that leave out a value."""
    where = f"rainflow.Cycles.{method}"
    if isinstance(bins, (int, np.integer)) and not isinstance(bins, bool):
        return _equal(where, name, to_count(where, name, bins), values, from_zero=from_zero)
    edges = np.asarray(to_si(where, name, bins, "force"), dtype=np.float64)
    if edges.ndim != 1 or len(edges) < 2 or not np.all(np.diff(edges) > 0.0):
        _refuse(where, name, "must be a number of bins or at least two edges that rise")
    outside = values[(values < edges[0]) | (values > edges[-1])]
    if len(outside):
        _refuse(
            where,
            name,
            f"leave out {len(outside)} of {len(values)} cycles, the first at {outside[0]:.6g} N; "
            f"the edges run from {edges[0]:.6g} N to {edges[-1]:.6g} N",
        )
    return edges


def _equal(where: str, name: str, bins: int, values: Array, *, from_zero: bool) -> Array:
    if not 1 <= bins <= 100_000:
        _refuse(where, name, f"must be from 1 to 100000 bins, got {bins}")
    if not len(values):
        _refuse(where, name, "must be edges where there are no cycles")
    low = 0.0 if from_zero else float(values.min())
    high = float(values.max())
    if high == low:
        # One value: bins about it, of any width.
        low, high = low - 0.5 * (abs(low) or 1.0), high + 0.5 * (abs(high) or 1.0)
    return np.linspace(low, high, bins + 1)


def _refuse(where: str, name: str, reason: str) -> Any:
    raise InadmissibleError(f"{where}(): {name} {reason}", where, name)
