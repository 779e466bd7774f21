"""Work in other processes, one item each at a time, so that one that dies takes nothing along."""

from __future__ import annotations

import contextlib
import multiprocessing
import os
import signal
from collections.abc import Callable, Generator, Sequence
from multiprocessing.connection import Connection, wait
from typing import Any, Generic, TypeVar

__all__ = ["cores", "in_processes"]

Item = TypeVar("Item")
Result = TypeVar("Result")
Lost = TypeVar("Lost")

#: Until a process that was told to end is killed, s.
_PATIENCE = 2.0


def cores() -> int:
    """Processors this process may use."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1


def in_processes(
    function: Callable[[Item], Result],
    items: Sequence[Item],
    jobs: int,
    lost: Callable[[Item, str], Lost],
) -> Generator[tuple[int, Result | Lost], None, None]:
    """Yield the place of an item and the result of the function, as they come.

    The processes start fresh, by spawn, so that threads and locks of this one stay here. They end
    with the iterator, at once, also when it is left through an exception.

    Parameters
    ----------
    function
        Found by its module and name; must not raise.
    items
        What it is called with.
    jobs
        Largest number of processes.
    lost
        Gives the result of an item whose process ended before it was done, from the item and
        how the process ended.
    """
    waiting = list(enumerate(items))[::-1]
    workers: list[_Worker[Item, Result]] = []
    try:
        for _ in range(min(jobs, len(waiting))):
            workers.append(_Worker(function))
            workers[-1].give(waiting.pop())
        while workers:
            ready = wait([one.connection for one in workers])
            for worker in [one for one in workers if one.connection in ready]:
                place, item = worker.holds
                try:
                    yield place, worker.connection.recv()
                except (EOFError, ConnectionError):
                    yield place, lost(item, worker.ended())
                    workers.remove(worker)
                    if waiting:
                        worker = _Worker(function)
                        workers.append(worker)
                if waiting:
                    worker.give(waiting.pop())
                elif worker in workers:
                    workers.remove(worker)
                    worker.stop()
    finally:
        for worker in workers:
            worker.process.terminate()
        for worker in workers:
            worker.stop()


class _Worker(Generic[Item, Result]):
    """One process and this end of its line."""

    def __init__(self, function: Callable[[Item], Result]) -> None:
        context = multiprocessing.get_context("spawn")
        self.connection, theirs = context.Pipe()
        self.process = context.Process(target=_serve, args=(function, theirs), daemon=True)
        self.process.start()
        theirs.close()
        self.holds: tuple[int, Item]

    def give(self, numbered: tuple[int, Item]) -> None:
        self.holds = numbered
        # A process that has ended is found out when its result is waited for.
        with contextlib.suppress(ConnectionError):
            self.connection.send(numbered[1])

    def ended(self) -> str:
        """How the process ended."""
        self.stop()
        code = self.process.exitcode
        return "was killed" if code is None else f"ended with exit code {code}"

    def stop(self) -> None:
        self.connection.close()
        self.process.join(_PATIENCE)
        if self.process.is_alive():
            self.process.kill()
            self.process.join()


def _serve(function: Callable[[Any], Any], connection: Connection[Any, Any]) -> None:
    # Ctrl-C goes to every process of a terminal; the parent answers it for all.
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    with contextlib.suppress(EOFError, ConnectionError):
        while True:
            connection.send(function(connection.recv()))
