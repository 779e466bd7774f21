"""The rows of a study, block by block, in this process or in others: always the same numbers."""

from __future__ import annotations

import time
from collections.abc import Callable, Generator, Sequence
from contextlib import closing
from dataclasses import dataclass, field
from typing import Any

import numpy as np
import numpy.typing as npt

from ropewalk.check.workers import cores, in_processes
from ropewalk.errors import InadmissibleError
from ropewalk.study.base import Base
from ropewalk.study.evaluate import Evaluator
from ropewalk.study.inputs import Input
from ropewalk.study.outputs import Output
from ropewalk.study.rows import Blocks, Listed, Rows
from ropewalk.study.status import Status

__all__ = ["Progress", "Table", "run_rows"]

Array = npt.NDArray[np.float64]
#: Called with rows finished and rows there are.
Progress = Callable[[int, int], None]

#: What a process takes to start and load ropewalk before its first row, s.
_START = 1.1
#: A block whose process dies so often is given up.
_MOST_TRIES = 3


@dataclass(frozen=True, eq=False)
class Table:
    """Results of the rows of a study.

    Attributes
    ----------
    outputs
        Names of the outputs.
    values
        Shape (rows, outputs), in the unit of each output; NaN where there is none.
    status
        Shape (rows, outputs), a `Status` each.
    reasons
        Why, for entries that are not `Status.OK`: (row, output) → text.
    """

    outputs: tuple[str, ...]
    values: Array
    status: npt.NDArray[np.uint8]
    reasons: dict[tuple[int, int], str] = field(repr=False)


@dataclass(frozen=True, slots=True)
class Result:
    """Results of one block; rows count from its first."""

    number: int
    values: Array
    status: npt.NDArray[np.uint8]
    reasons: dict[tuple[int, int], str]


class BlockTask:
    """Computes blocks of a study; is sent to other processes once."""

    def __init__(
        self, base: Base, inputs: Sequence[Input], rows: Rows, outputs: Sequence[Output]
    ) -> None:
        self.base = base
        self.inputs = tuple(inputs)
        self.rows = rows
        self.outputs = tuple(outputs)
        self._evaluator: Evaluator | None = None

    def __getstate__(self) -> dict[str, Any]:
        return {**self.__dict__, "_evaluator": None}

    @property
    def blocks(self) -> Blocks:
        """The blocks of the study."""
        return Blocks(self.rows.shape)

    def __call__(self, number: int) -> Result:
        """Compute one block."""
        if self._evaluator is None:
            self._evaluator = Evaluator(self.base, self.inputs, self.outputs)
        block = self.blocks[number]
        values = np.empty((block.stop - block.start, len(self.outputs)))
        status = np.empty(values.shape, dtype=np.uint8)
        reasons: dict[tuple[int, int], str] = {}
        for i, numbers in enumerate(self.rows.take(block.start, block.stop)):
            row = self._evaluator(numbers)
            values[i], status[i] = row.values, row.status
            reasons.update({(i, j): text for j, text in enumerate(row.reasons) if text})
        return Result(number, values, status, reasons)

    def given_up(self, number: int, how: str) -> Result:
        """Result of a block whose process ended whenever it was tried."""
        block = self.blocks[number]
        shape = (block.stop - block.start, len(self.outputs))
        text = f"the process that computed it {how}"
        reasons = {(i, j): text for i in range(shape[0]) for j in range(shape[1])}
        status = np.full(shape, Status.NOT_COMPUTED, dtype=np.uint8)
        return Result(number, np.full(shape, np.nan), status, reasons)


def run_rows(
    base: Base,
    inputs: Sequence[Input],
    rows: Rows | npt.ArrayLike,
    outputs: Sequence[Output],
    *,
    workers: int = 1,
    progress: Progress | None = None,
    where: str = "study.run_rows",
) -> Table:
    """Compute the outputs of every row; bad rows are flagged and stop nothing.

    Parameters
    ----------
    base
        The rig file.
    inputs
        What the columns of the rows are.
    rows
        Shape (rows, inputs): SI of quantities, whole numbers, places of choices; or a `Grid`.
    outputs
        What is computed.
    workers
        Largest number of processes, 0 for as many as there are processors. Short studies are done
        in this process all the same. Results do not depend on it. A script of its own that asks
        for more than one must keep what it does under ``if __name__ == "__main__":``.
    progress
        Called with rows finished and rows there are.
    where
        Function that asks, for messages.

    Returns
    -------
    Table

    Raises
    ------
    InadmissibleError
        If `workers` is negative or not whole, or `rows` have other columns than `inputs`.
    """
    if isinstance(workers, bool) or not isinstance(workers, int) or workers < 0:
        text = f"workers must be a whole number from 0 up, got {workers!r}"
        raise InadmissibleError(f"{where}(): {text}", where, "workers")
    if not hasattr(rows, "take") or isinstance(rows, np.ndarray):
        numbers = np.asarray(rows, dtype=np.float64)
        if numbers.ndim != 2 or numbers.shape[1] != len(inputs):
            text = f"rows must be of shape (rows, {len(inputs)}), got {numbers.shape}"
            raise InadmissibleError(f"{where}(): {text}", where, "rows")
        rows = Listed(numbers)
    task = BlockTask(base, inputs, rows, outputs)  # type: ignore[arg-type]
    blocks = task.blocks
    values = np.full((blocks.rows, len(task.outputs)), np.nan)
    status = np.zeros(values.shape, dtype=np.uint8)
    reasons: dict[tuple[int, int], str] = {}
    tell = progress or (lambda done, total: None)
    done = 0
    tell(0, blocks.rows)
    with closing(results_of(task, range(len(blocks)), workers or cores())) as results:
        for result in results:
            block = blocks[result.number]
            values[block.start : block.stop] = result.values
            status[block.start : block.stop] = result.status
            for (i, j), text in result.reasons.items():
                reasons[block.start + i, j] = text
            done += block.stop - block.start
            tell(done, blocks.rows)
    names = tuple(one.name for one in task.outputs)
    return Table(names, values, status, dict(sorted(reasons.items())))


def results_of(task: BlockTask, numbers: Sequence[int], at_most: int) -> Generator[Result]:
    """Results of some blocks, as they come; from other processes where that saves time."""
    begun = time.monotonic()
    here = 0
    for here, number in enumerate(numbers):
        left = len(numbers) - here
        if at_most > 1 and _worth_it(time.monotonic() - begun, here, left, at_most):
            break
        yield task(number)
    else:
        return
    waiting, how = list(numbers[here:]), ""
    for _ in range(_MOST_TRIES):
        lost: list[int] = []
        with closing(in_processes(task, waiting, at_most, _Lost)) as found:
            for place, result in found:
                if isinstance(result, _Lost):
                    lost.append(waiting[place])
                    how = result.how
                else:
                    yield result
        waiting = lost
        if not waiting:
            return
    for number in waiting:
        yield task.given_up(number, how)


@dataclass(frozen=True, slots=True)
class _Lost:
    """A block whose process ended before it was done, and how."""

    number: int
    how: str


def _worth_it(taken: float, done: int, left: int, at_most: int) -> bool:
    """True if processes save more of the time the blocks left take than they need to start."""
    processes = min(at_most, left)
    if done == 0 or processes < 2:
        return False
    return taken / done * left * (1.0 - 1.0 / processes) > _START
