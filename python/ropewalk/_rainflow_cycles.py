"""The class `Cycles`: what rainflow counting found. Exported by `ropewalk.rainflow`."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import NumberLike, Quantity, QuantityLike, to_one, to_quantity
from ropewalk._rainflow_bins import RainflowMatrix, RangeHistogram, edges_of
from ropewalk.errors import InadmissibleError, UnitError

if TYPE_CHECKING:
    import pandas as pd

__all__ = ["Cycles"]

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, eq=False, repr=False, slots=True)
class Cycles:
    """Cycles and half cycles of a history, in the order in which they closed.

    Attributes
    ----------
    range_si
        Largest less least tension of each, N.
    mean_si
        Half way between them, N.
    count
        1, or 0.5 for half a cycle.
    start, end
        Samples of the history at its two ends, counted from 0.
    """

    range_si: Array
    mean_si: Array
    count: Array
    start: npt.NDArray[np.int64]
    end: npt.NDArray[np.int64]

    @classmethod
    def joined(cls, parts: Sequence[Cycles]) -> Cycles:
        """All cycles of some parts, one after the other.

        Raises
        ------
        UnitError
            If a part is no `Cycles`, or there is none.
        """
        where = "rainflow.Cycles.joined"
        parts = list(parts)
        if not parts or not all(isinstance(part, cls) for part in parts):
            got = ", ".join(type(part).__name__ for part in parts) or "none"
            raise UnitError(
                f"{where}(): parts must be one Cycles or more, got {got}", where, "parts"
            )
        columns = [
            np.concatenate([getattr(part, one.name) for part in parts]) for one in fields(cls)
        ]
        return cls(*columns)

    @property
    def range(self) -> Quantity:
        """Range of each: largest less least tension."""
        return to_quantity(self.range_si, "force")

    @property
    def mean(self) -> Quantity:
        """Mean of each, half way between largest and least tension."""
        return to_quantity(self.mean_si, "force")

    @property
    def total(self) -> float:
        """Cycles counted, half ones as half."""
        return float(self.count.sum())

    def __len__(self) -> int:
        return len(self.count)

    def __repr__(self) -> str:
        return f"Cycles({self.total:g} cycles in {len(self)} entries)"

    def by_range(self) -> tuple[Quantity, Array]:
        """Each range that occurs, rising, and how many cycles have it: the table of the standard.

        Examples
        --------
        >>> import ropewalk as rw
        >>> history = rw.Q([-2.0, 1, -3, 5, -1, 3, -4, 4, -2], "kN")
        >>> ranges, counts = rw.rainflow.count(history).by_range()
        >>> ranges.to("kN").magnitude.tolist(), counts.tolist()
        ([3.0, 4.0, 6.0, 8.0, 9.0], [0.5, 1.5, 0.5, 1.0, 0.5])
        """
        ranges, place = np.unique(self.range_si, return_inverse=True)
        counts = np.zeros(len(ranges))
        np.add.at(counts, place, self.count)
        return to_quantity(ranges, "force"), counts

    def histogram(self, bins: int | QuantityLike = 32) -> RangeHistogram:
        """Cycles by range.

        Parameters
        ----------
        bins
            Number of equal bins from 0 to the largest range, or their edges.

        Raises
        ------
        InadmissibleError
            If the edges do not rise, or leave out a cycle.
        """
        edges = edges_of("histogram", "bins", bins, self.range_si, from_zero=True)
        counts, _ = np.histogram(self.range_si, edges, weights=self.count)
        return RangeHistogram(edges, counts)

    def matrix(
        self, range_bins: int | QuantityLike = 32, mean_bins: int | QuantityLike = 32
    ) -> RainflowMatrix:
        """Cycles by range and mean.

        Parameters
        ----------
        range_bins
            As for `histogram`.
        mean_bins
            Number of equal bins from the least to the largest mean, or their edges.

        Raises
        ------
        InadmissibleError
            If edges do not rise, or leave out a cycle.
        """
        ranges = edges_of("matrix", "range_bins", range_bins, self.range_si, from_zero=True)
        means = edges_of("matrix", "mean_bins", mean_bins, self.mean_si, from_zero=False)
        counts, _, _ = np.histogram2d(
            self.range_si, self.mean_si, (ranges, means), weights=self.count
        )
        return RainflowMatrix(ranges, means, counts)

    def equivalent_range(self, exponent: NumberLike) -> Quantity:
        r"""Range whose constant cycles, `total` of them, do the same damage.

        .. math:: r_\mathrm{eq} = \left(\frac{\sum n_i r_i^m}{\sum n_i}\right)^{1/m}

        by the sum of Palmgren and Miner with lives that fall with the power m of the range. Means
        have no part in it. Source: A. Palmgren (1924), M. A. Miner (1945).

        Parameters
        ----------
        exponent
            m, of a life curve you can vouch for; wire rope in tension is no welded steel.

        Raises
        ------
        InadmissibleError
            If there are no cycles.

        Examples
        --------
        >>> import ropewalk as rw
        >>> cycles = rw.rainflow.count(rw.Q([-2.0, 1, -3, 5, -1, 3, -4, 4, -2], "kN"))
        >>> print(f"{cycles.equivalent_range(5).to('kN'):.3f}")
        7.013 kilonewton
        """
        m = to_one("rainflow.Cycles.equivalent_range", "exponent", exponent, "number")
        value = _core.rainflow.equivalent_range(self.range_si, self.count, m)
        return to_quantity(value, "force")

    def damage(
        self,
        exponent: NumberLike,
        *,
        reference_range: QuantityLike,
        reference_cycles: NumberLike,
    ) -> float:
        r"""Damage sum of Palmgren and Miner, for a life curve through one point.

        .. math:: D = \sum n_i / N_i, \quad N_i = N_\mathrm{ref} (r_\mathrm{ref} / r_i)^m

        Parameters
        ----------
        exponent
            m of the life curve.
        reference_range, reference_cycles
            A range, and the cycles it is borne for.

        Examples
        --------
        >>> import ropewalk as rw
        >>> cycles = rw.rainflow.count(rw.Q([-2.0, 1, -3, 5, -1, 3, -4, 4, -2], "kN"))
        >>> damage = cycles.damage(3, reference_range="10 kN", reference_cycles=1e6)
        >>> print(f"{damage:.4g}")
        1.094e-06
        """
        where = "rainflow.Cycles.damage"
        reference = to_one(where, "reference_range", reference_range, "force")
        life = to_one(where, "reference_cycles", reference_cycles, "number")
        for name, value in (("reference_range", reference), ("reference_cycles", life)):
            if not 0.0 < value < np.inf:
                text = f"{name} = {value!r} must be positive and finite (definition)"
                raise InadmissibleError(f"{where}(): {text}", where, name)
        m = to_one(where, "exponent", exponent, "number")
        ratio = self.equivalent_range(m).magnitude / reference
        return float(self.total * ratio**m / life)

    def table(self) -> pd.DataFrame:
        """All cycles as a table: range and mean in N, count, first and last sample."""
        import pandas as pd

        return pd.DataFrame(
            {
                "range [N]": self.range_si,
                "mean [N]": self.mean_si,
                "count": self.count,
                "start": self.start,
                "end": self.end,
            }
        )
