"""The rows of a study, and the blocks they are computed in."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Protocol

import numpy as np
import numpy.typing as npt

__all__ = ["Block", "Blocks", "Grid", "Listed", "Rows"]

Array = npt.NDArray[np.float64]

#: A study has about as many blocks, but none of more rows than `_MOST_ROWS`.
_BLOCKS = 64
_MOST_ROWS = 1024


class Rows(Protocol):
    """Rows of a study: `shape` of its results, and the numbers of rows `start` to `stop`."""

    @property
    def shape(self) -> tuple[int, ...]:
        """Shape of one output; its entries in C order are the rows."""
        ...

    def take(self, start: int, stop: int) -> Array:
        """Numbers of some rows, shape (rows, inputs)."""
        ...


@dataclass(frozen=True, eq=False)
class Grid:
    """Every value of every axis with every other; the last axis runs fastest."""

    axes: tuple[Array, ...]

    @property
    def shape(self) -> tuple[int, ...]:
        """Length of every axis."""
        return tuple(axis.size for axis in self.axes)

    def take(self, start: int, stop: int) -> Array:
        """Numbers of some rows; no others are ever made."""
        places = np.unravel_index(np.arange(start, stop), self.shape)
        return np.stack([axis[i] for axis, i in zip(self.axes, places, strict=True)], axis=-1)


@dataclass(frozen=True, eq=False)
class Listed:
    """Rows one by one, shape (rows, inputs)."""

    numbers: Array

    @property
    def shape(self) -> tuple[int, ...]:
        """Number of rows."""
        return (self.numbers.shape[0],)

    def take(self, start: int, stop: int) -> Array:
        """Numbers of some rows."""
        return self.numbers[start:stop]


@dataclass(frozen=True, slots=True)
class Block:
    """Rows that are computed together: `start` to `stop`, which is a box of the results."""

    number: int
    start: int
    stop: int
    box: tuple[slice, ...]


class Blocks(Sequence[Block]):
    """The blocks of a study.

    Each is a box of the results and a run of rows. Their size depends on the shape alone, so that
    any number of workers computes the same blocks.

    Parameters
    ----------
    shape
        Shape of one output.

    Examples
    --------
    >>> blocks = Blocks((3, 2000))
    >>> blocks.shape, len(blocks), blocks[1].start, blocks[1].box
    ((1, 94), 66, 94, (slice(0, 1, None), slice(94, 188, None)))
    """

    def __init__(self, shape: Sequence[int]) -> None:
        self.of = tuple(shape)
        self.rows = math.prod(self.of)
        left = min(_MOST_ROWS, max(1, math.ceil(self.rows / _BLOCKS)))
        size = [1] * len(self.of)
        for axis in range(len(self.of) - 1, -1, -1):
            size[axis] = max(1, min(self.of[axis], left))
            if size[axis] < self.of[axis]:
                break
            left //= size[axis]
        #: Shape of a block.
        self.shape = tuple(size)
        self._counts = tuple(math.ceil(n / s) for n, s in zip(self.of, size, strict=True))

    def __len__(self) -> int:
        return math.prod(self._counts)

    def __getitem__(self, number: int) -> Block:  # type: ignore[override]
        if not 0 <= number < len(self):
            raise IndexError(number)
        places = np.unravel_index(number, self._counts) if self._counts else ()
        box = tuple(
            slice(int(i) * s, min((int(i) + 1) * s, n))
            for i, s, n in zip(places, self.shape, self.of, strict=True)
        )
        start, rows = 0, 1
        for one, n in zip(box, self.of, strict=True):
            start = start * n + one.start
            rows *= one.stop - one.start
        return Block(number, start, start + rows, box)
