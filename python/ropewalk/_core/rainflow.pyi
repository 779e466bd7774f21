"""
Rainflow counting of a tension history.
"""

from __future__ import annotations
import collections.abc
import numpy
import numpy.typing
import typing

__all__: list[str] = ["Counter", "count", "equivalent_range"]

class Counter:
    """
    Counts while the history comes in.
    """
    def __getstate__(self) -> tuple[list[float], list[int], float, int, int, int]: ...
    def __init__(self) -> None: ...
    def __setstate__(
        self,
        arg0: tuple[
            collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
            collections.abc.Sequence[typing.SupportsInt | typing.SupportsIndex],
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsInt | typing.SupportsIndex,
            typing.SupportsInt | typing.SupportsIndex,
            typing.SupportsInt | typing.SupportsIndex,
        ],
    ) -> None: ...
    def finish(self) -> tuple:
        """
        End the history; return the ranges left over as half cycles.
        """
    def push(self, tension: float | numpy.typing.ArrayLike) -> tuple:
        """
        Take the next tensions [N]; return the cycles they close.
        """
    @property
    def residue(self) -> numpy.typing.NDArray[numpy.float64]:
        """
        Tensions [N] that wait for their cycle.
        """
    @property
    def samples(self) -> int:
        """
        Samples taken so far.
        """

def count(tension: float | numpy.typing.ArrayLike, repeating: bool = False) -> tuple:
    """
    Range, mean, count, start and end of every cycle of a history [N].
    """

def equivalent_range(
    range: typing.Annotated[numpy.typing.ArrayLike, numpy.float64],
    count: typing.Annotated[numpy.typing.ArrayLike, numpy.float64],
    exponent: typing.SupportsFloat | typing.SupportsIndex,
) -> float:
    """
    Range [N] whose constant cycles do the same damage.
    """
