"""Any number of threads, in the core and in Python, gives the same bits."""

from __future__ import annotations

import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from typing import Any

import numpy as np
import pint
import pytest
from calls import FUNCTIONS, example, magnitude, public, rows

ROWS = 150_000  # several pieces of work per thread


def bits(value: Any) -> bytes:
    return np.ascontiguousarray(magnitude(value)).tobytes()


@pytest.mark.parametrize("name", FUNCTIONS)
def test_threads_of_the_core_give_the_same_bits(name: str) -> None:
    given = rows(name, ROWS)
    if not any(np.ndim(magnitude(v)) for v in given.values()):
        given = {a: np.full(ROWS, float(v)) for a, v in given.items()}
    first, *others = (public(name)(**given, threads=threads) for threads in (1, 2, 7))
    assert magnitude(first).shape == (ROWS,)
    assert all(bits(other) == bits(first) for other in others)


@pytest.mark.parametrize("name", FUNCTIONS)
def test_calls_from_several_python_threads_give_the_same_bits(name: str) -> None:
    arrays = rows(name, 1000)

    def call(turn: int) -> tuple[bytes, bytes]:
        threads = 1 + turn % 3
        return bits(public(name)(**example(name))), bits(public(name)(**arrays, threads=threads))

    with ThreadPoolExecutor(8) as pool:
        answers = set(pool.map(call, range(40)))
    assert answers == {call(0)}


def test_registries_of_several_threads_do_not_mix() -> None:
    name = "sheave.bearing_pressure"

    def call(turn: int) -> bool:
        registry: Any = pint.UnitRegistry()
        registry.define(f"tug = {1 + turn} * newton")
        result = public(name)(
            registry.Quantity(1000, "tug"), registry.Quantity(10, "mm"), registry.Quantity(1, "m")
        )
        assert type(result) is registry.Quantity
        same = public(name)(f"{1000 * (1 + turn)} N", "10 mm", "1 m")
        return bool(result.magnitude == same.magnitude)

    with ThreadPoolExecutor(4) as pool:
        assert all(pool.map(call, range(8)))


COLD_START = """
from concurrent.futures import ThreadPoolExecutor
from threading import Barrier
import ropewalk as rw

barrier = Barrier(8)

def call(_):
    barrier.wait()
    return rw.sheave.bearing_pressure("30 kip", "1-3/8 in", "50 in").magnitude

with ThreadPoolExecutor(8) as pool:
    answers = set(pool.map(call, range(8)))
assert len(answers) == 1, answers
"""


def test_first_use_from_several_threads_at_once() -> None:
    subprocess.run([sys.executable, "-W", "error", "-c", COLD_START], check=True, timeout=120)
