"""Rainflow counting of a tension history, ASTM E1049-85, and what is made of the cycles.

The history is a row of tensions, one after the other; times do not matter. Only its peaks and
valleys count, the first and the last sample among them.
"""

from __future__ import annotations

from typing import Any

import numpy as np

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_quantity, to_si
from ropewalk._rainflow_bins import RainflowMatrix, RangeHistogram
from ropewalk._rainflow_cycles import Cycles
from ropewalk.errors import InadmissibleError, UnitError

__all__ = [
    "Cycles",
    "RainflowCounter",
    "RainflowMatrix",
    "RangeHistogram",
    "count",
]


def count(tension: QuantityLike, *, repeating: bool = False) -> Cycles:
    """Cycles and half cycles of a history by ASTM E1049-85, 5.4.4.

    X is the range just read, Y the one before. Y counts as soon as X ≥ Y: as half a cycle if it
    holds the starting point, which then moves on, else as a cycle, whose two points go. What is
    left at the end counts as half cycles.

    Source: ASTM E1049-85 (2017), Standard Practices for Cycle Counting in Fatigue Analysis, 5.4.4,
    and 5.4.5 for a history that repeats.

    Parameters
    ----------
    tension : force, shape (samples,)
        The history; a single number is a history of one sample.
    repeating : bool, default False
        The history repeats itself over and over: it is begun at its largest peak, and all cycles
        are whole.

    Returns
    -------
    Cycles
        In the order in which they closed; none for a history that does not change.

    Raises
    ------
    InadmissibleError
        If a sample is not finite or above 8e307 N; the message names it.

    Examples
    --------
    The example of the standard, Figure 6:

    >>> import ropewalk as rw
    >>> cycles = rw.rainflow.count(rw.Q([-2.0, 1, -3, 5, -1, 3, -4, 4, -2], "kN"))
    >>> cycles
    Cycles(4 cycles in 7 entries)
    >>> cycles.count.tolist()
    [0.5, 0.5, 1.0, 0.5, 0.5, 0.5, 0.5]
    """
    if not isinstance(repeating, (bool, np.bool_)):
        text = f"repeating must be True or False, got {repeating!r}"
        raise UnitError(f"rainflow.count(): {text}", "rainflow.count", "repeating")
    return Cycles(*_core.rainflow.count(_history(tension), bool(repeating)))


class RainflowCounter:
    """Counts while the history comes in, piece by piece; keeps only what waits for its cycle.

    A counter may be pickled or copied in the middle of a history: the other one goes on from there,
    so that a count survives the process that began it.

    Examples
    --------
    >>> import ropewalk as rw
    >>> counter = rw.rainflow.RainflowCounter()
    >>> parts = [counter.push(rw.Q(piece, "kN")) for piece in ([-2.0, 1, -3, 5], [-1, 3, -4, 4])]
    >>> parts += [counter.push("-2 kN"), counter.finish()]
    >>> rw.rainflow.Cycles.joined(parts)
    Cycles(4 cycles in 7 entries)
    """

    def __init__(self) -> None:
        self._counter = _core.rainflow.Counter()

    def push(self, tension: QuantityLike) -> Cycles:
        """Take the next sample or samples; return the cycles that they close."""
        return Cycles(*self._counter.push(_history(tension)))

    def finish(self) -> Cycles:
        """End the history: what is left over, as half cycles. The counter then begins anew."""
        return Cycles(*self._counter.finish())

    @property
    def residue(self) -> Quantity:
        """Tensions that wait for their cycle, the latest sample included."""
        return to_quantity(self._counter.residue, "force")

    @property
    def samples(self) -> int:
        """Samples taken since the beginning."""
        return int(self._counter.samples)


def _history(tension: QuantityLike) -> Any:
    values = to_si("rainflow.count", "tension", tension, "force")
    if np.ndim(values) > 1:
        text = f"tension must be a row of samples, got an array of shape {np.shape(values)}"
        raise InadmissibleError(f"rainflow.count(): {text}", "rainflow.count", "tension")
    return values
