"""Rainflow counting side by side with Numba, NumPy and two packages: part of `scripts/bench`."""

from __future__ import annotations

import itertools
from collections.abc import Callable
from typing import Any

import fatpack
import numba
import numpy as np
import numpy.typing as npt
import rainflow
from rich.console import Console
from rich.table import Table

import ropewalk as rw

Array = npt.NDArray[np.float64]
Timer = Callable[[Callable[[], Any], int], float]
SAMPLES = 1_000_000
#: The packages that count in Python get fewer.
FEW = 20_000


@numba.njit(cache=False)
def numba_count(history: Array) -> tuple[Array, Array, Array]:  # pragma: no cover
    """ASTM E1049-85, 5.4.4 as a plain loop: range, mean and count of every cycle."""
    n = history.size
    spread, mean, count = np.empty(n), np.empty(n), np.empty(n)
    stack = np.empty(n)
    found, top = 0, 1
    stack[0] = history[0]
    last = history[0]
    rising = 0
    for i in range(1, n + 1):
        if i < n:
            value = history[i]
            if value == last:
                continue
            way = 1 if value > last else -1
            turned = rising != 0 and way != rising
            rising = way
            point, last = last, value
            if not turned:
                continue
        else:
            point = last
        stack[top] = point
        top += 1
        while top >= 3:
            x = abs(stack[top - 1] - stack[top - 2])
            y = abs(stack[top - 2] - stack[top - 3])
            if x < y:
                break
            spread[found] = y
            mean[found] = 0.5 * (stack[top - 2] + stack[top - 3])
            if top == 3:
                count[found] = 0.5
                stack[0], stack[1] = stack[1], stack[2]
                top = 2
            else:
                count[found] = 1.0
                stack[top - 3] = stack[top - 1]
                top -= 2
            found += 1
    for k in range(1, top):
        spread[found] = abs(stack[k] - stack[k - 1])
        mean[found] = 0.5 * (stack[k] + stack[k - 1])
        count[found] = 0.5
        found += 1
    return spread[:found].copy(), mean[:found].copy(), count[:found].copy()


def numpy_reversals(history: Array) -> Array:
    """Peaks and valleys of a history without flat places: where NumPy helps."""
    turns = np.flatnonzero(np.diff(np.sign(np.diff(history)))) + 1
    reversals: Array = history[np.r_[0, turns, len(history) - 1]]
    return reversals


def numpy_count(history: Array) -> list[tuple[float, float, float]]:
    """Reversals by NumPy, then the standard's steps on a Python list."""
    stack: list[float] = []
    found: list[tuple[float, float, float]] = []
    for point in numpy_reversals(history).tolist():
        stack.append(point)
        while len(stack) >= 3:
            y = abs(stack[-2] - stack[-3])
            if abs(stack[-1] - stack[-2]) < y:
                break
            mean = 0.5 * (stack[-2] + stack[-3])
            if len(stack) == 3:
                found.append((y, mean, 0.5))
                del stack[0]
            else:
                found.append((y, mean, 1.0))
                del stack[-3:-1]
    rest = itertools.pairwise(stack)
    return found + [(abs(b - a), 0.5 * (a + b), 0.5) for a, b in rest]


def tables(console: Console, best: Timer) -> None:
    """Print how many times faster the counter is; results are compared first."""
    history = np.random.default_rng(7).normal(1e5, 2e4, SAMPLES)
    few = history[:FEW]
    count = rw.si.rainflow.count
    spread, mean, times, _, _ = count(history)
    for ours, theirs in zip((spread, mean, times), numba_count(history), strict=True):
        np.testing.assert_allclose(ours, theirs, rtol=1e-12)
    own_few = count(few)
    for rival in (numpy_count(few), [one[:3] for one in rainflow.extract_cycles(few)]):
        np.testing.assert_allclose(np.column_stack(own_few[:3]), np.array(rival), rtol=1e-12)
    pairs, _ = fatpack.find_rainflow_cycles(numpy_reversals(few))
    np.testing.assert_allclose(
        np.sort(own_few[0][own_few[2] == 1.0]), np.sort(np.abs(np.diff(pairs, axis=1)).ravel())
    )
    own = best(lambda: count(history), 5) / SAMPLES
    rivals: list[tuple[str, Callable[[], Any], int]] = [
        ("Numba loop", lambda: numba_count(history), SAMPLES),
        ("NumPy and a list", lambda: numpy_count(few), FEW),
        ("rainflow", lambda: list(rainflow.extract_cycles(few)), FEW),
        (
            "fatpack, whole cycles only",
            lambda: fatpack.find_rainflow_cycles(numpy_reversals(few)),
            FEW,
        ),
    ]
    table = Table(
        title=f"Rainflow counting of noise, ropewalk {own * 1e9:.1f} ns a sample: times as fast as",
        title_justify="left",
    )
    for name in ("rival", "ns a sample", "ratio"):
        table.add_column(name, justify="left" if name == "rival" else "right")
    for name, rival_call, samples in rivals:
        taken = best(rival_call, 3) / samples
        table.add_row(name, f"{taken * 1e9:.0f}", f"{taken / own:.1f} x")
    console.print(table)
