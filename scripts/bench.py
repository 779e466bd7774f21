"""Side by side with NumPy and Numba in one run: how many times faster ropewalk is.

Prints ratios and fails on nothing: times depend on the machine, ratios in one run hardly do. Each
rival computes the same mathematics on the same arrays; results are compared before times are.
"""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Callable
from typing import Any

import bench_check
import bench_fit
import bench_line
import bench_rainflow
import numba
import numpy as np
import numpy.typing as npt
from rich.console import Console
from rich.table import Table

import ropewalk as rw

Array = npt.NDArray[np.float64]
ROWS = 1_000_000
REPEATS = 7


def best(function: Callable[[], Any], repeats: int = REPEATS) -> float:
    """Shortest of several runs, s."""
    function()
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        function()
        times.append(time.perf_counter() - start)
    return min(times)


# Border


def fresh_times(ours: str, theirs: str) -> tuple[float, float]:
    """Shortest times of two programs in fresh interpreters, s."""

    def run(code: str) -> float:
        timed = f"import time; s = time.perf_counter(); {code}; print(time.perf_counter() - s)"
        out = subprocess.run(
            [sys.executable, "-c", timed], check=True, capture_output=True, text=True
        )
        return float(out.stdout)

    # Alternating, so that a busy moment of the machine meets both.
    pairs = [(run(ours), run(theirs)) for _ in range(7)]
    return min(a for a, _ in pairs), min(b for _, b in pairs)


def command_times() -> tuple[float, float]:
    """Shortest times of ``ropewalk --help`` and of importing numpy and pint, as processes, s."""

    def run(arguments: list[str]) -> float:
        start = time.perf_counter()
        subprocess.run(arguments, check=True, capture_output=True)
        return time.perf_counter() - start

    ours = [sys.executable, "-m", "ropewalk", "--help"]
    theirs = [sys.executable, "-c", "import numpy, pint"]
    pairs = [(run(ours), run(theirs)) for _ in range(7)]
    return min(a for a, _ in pairs), min(b for _, b in pairs)


def call_times() -> tuple[float, float]:
    """One public call with three quantities, and three plain pint conversions, s."""
    tension, rope, sheave = rw.Q(30.0, "kip"), rw.Q(1.25, "in"), rw.Q(50.0, "in")
    n = 5_000

    def face() -> None:
        for _ in range(n):
            rw.sheave.bearing_pressure(tension, rope, sheave)

    def plain() -> None:
        for _ in range(n):
            _ = tension.to("N").magnitude, rope.to("m").magnitude, sheave.to("m").magnitude

    return best(face, 5) / n, best(plain, 5) / n


# Kernels


@numba.njit(cache=False)
def numba_pressure(tension: Array, rope: Array, sheave: Array) -> Array:  # pragma: no cover
    out = np.empty_like(tension)
    for i in range(tension.size):
        out[i] = 2.0 * tension[i] / (rope[i] * sheave[i])
    return out


def numpy_pressure_checked(
    tension: Array, rope: Array, sheave: Array
) -> tuple[Array, npt.NDArray[np.bool_]]:
    """The ranges and the status per row that ropewalk has."""
    ok = (tension >= 0.0) & (tension <= 1e9) & (rope > 0.0) & (rope <= 1.0)
    ok &= (sheave > 0.0) & (sheave <= 100.0) & (sheave >= rope)
    with np.errstate(all="ignore"):
        return np.where(ok, 2.0 * tension / (rope * sheave), np.nan), ~ok


@numba.njit(cache=False)
def numba_pressure_checked(
    tension: Array, rope: Array, sheave: Array
) -> tuple[Array, npt.NDArray[np.uint8]]:  # pragma: no cover
    """The ranges and the status per row that ropewalk has."""
    out = np.empty_like(tension)
    status = np.empty(tension.size, np.uint8)
    for i in range(tension.size):
        f, d, big = tension[i], rope[i], sheave[i]
        ok = 0.0 <= f <= 1e9 and 0.0 < d <= 1.0 and 0.0 < big <= 100.0 and big >= d
        status[i] = 0 if ok else 1
        out[i] = 2.0 * f / (d * big) if ok else np.nan
    return out, status


@numba.njit(cache=False)
def numba_efficiency(lines: Array, k: Array, lead: Array) -> Array:  # pragma: no cover
    out = np.empty_like(k)
    for i in range(k.size):
        n = int(lines[i])
        total = 0.0
        power = 1.0
        for _ in range(n):
            total += power
            power *= k[i]
        out[i] = total / (n * k[i] ** (n + lead[i]))
    return out


def numpy_efficiency(lines: Array, k: Array, lead: Array) -> Array:
    return (k**lines - 1.0) / (k ** (lines + lead) * lines * (k - 1.0))


@numba.njit(cache=False)
def numba_power_law(
    tension: Array, rope: Array, sheave: Array, strength: float, scale: float, m: float
) -> Array:  # pragma: no cover
    out = np.empty_like(tension)
    for i in range(tension.size):
        out[i] = scale * (2.0 * tension[i] / (rope[i] * sheave[i] * strength)) ** (-m)
    return out


def kernels() -> list[tuple[str, Callable[[], Any], Callable[[], Any], Callable[[], Any]]]:
    """Return name, ropewalk, NumPy and Numba of every kernel."""
    rng = np.random.default_rng(7)
    tension = rng.uniform(5e4, 2.5e5, ROWS)
    rope = rng.uniform(0.022, 0.051, ROWS)
    sheave = rng.uniform(0.76, 1.83, ROWS)
    lines = rng.integers(4, 17, ROWS).astype(np.float64)
    k = rng.uniform(1.01, 1.10, ROWS)
    lead = rng.integers(0, 3, ROWS).astype(np.float64)
    strength, scale, m = 1.9e9, 0.055, 2.4
    law = rw.fatigue.PowerLaw(scale, m, basis="discard")
    core = rw.si

    return [
        (
            "sheave.bearing_pressure",
            lambda: core.sheave.bearing_pressure(tension, rope, sheave),
            lambda: 2.0 * tension / (rope * sheave),
            lambda: numba_pressure(tension, rope, sheave),
        ),
        (
            "the same, rivals with checks",
            lambda: core.sheave.bearing_pressure(tension, rope, sheave),
            lambda: numpy_pressure_checked(tension, rope, sheave)[0],
            lambda: numba_pressure_checked(tension, rope, sheave)[0],
        ),
        (
            "reeving.efficiency",
            lambda: core.reeving.efficiency(lines, k, lead),
            lambda: numpy_efficiency(lines, k, lead),
            lambda: numba_efficiency(lines, k, lead),
        ),
        (
            "fatigue.PowerLaw",
            lambda: law.cycles_si(
                rope_tension=tension,
                rope_diameter=rope,
                sheave_diameter=sheave,
                wire_strength=strength,
            )[0],
            lambda: scale * (2.0 * tension / (rope * sheave * strength)) ** (-m),
            lambda: numba_power_law(tension, rope, sheave, strength, scale, m),
        ),
    ]


def main() -> None:
    """Print all tables."""
    console = Console(highlight=False, width=100)
    table = Table(title="Border: cost against plain pint (smaller is better)", title_justify="left")
    for name in ("what", "ropewalk", "plain pint", "ratio", "aim"):
        table.add_column(name, justify="left" if name == "what" else "right")
    face, plain = call_times()
    table.add_row(
        "scalar call, three quantities",
        f"{face * 1e6:.1f} us",
        f"{plain * 1e6:.1f} us",
        f"{face / plain:.2f}",
        "0.33",
    )
    mine, theirs = fresh_times("import ropewalk", "import numpy, pint")
    table.add_row(
        "import ropewalk / import numpy, pint",
        f"{mine * 1e3:.0f} ms",
        f"{theirs * 1e3:.0f} ms",
        f"{mine / theirs:.2f}",
        "1.3",
    )
    mine, theirs = command_times()
    table.add_row(
        "ropewalk --help / import numpy, pint",
        f"{mine * 1e3:.0f} ms",
        f"{theirs * 1e3:.0f} ms",
        f"{mine / theirs:.2f}",
        "1.3",
    )
    mine, theirs = fresh_times(
        "import ropewalk as rw; rw.sheave.bearing_pressure('30 kip', '1.25 in', '50 in')",
        "import numpy, pint; pint.UnitRegistry().Quantity('30 kip').to('N')",
    )
    table.add_row(
        "import and first call on text",
        f"{mine * 1e3:.0f} ms",
        f"{theirs * 1e3:.0f} ms",
        f"{mine / theirs:.2f}",
        "",
    )
    console.print(table)

    table = Table(
        title=f"Kernels, {ROWS:,} rows, one thread: times faster than", title_justify="left"
    )
    for name in ("kernel", "ns/row", "NumPy", "Numba loop"):
        table.add_column(name, justify="left" if name == "kernel" else "right")
    for name, ours, numpy_form, numba_form in kernels():
        np.testing.assert_allclose(ours(), numpy_form(), rtol=1e-9)
        np.testing.assert_allclose(ours(), numba_form(), rtol=1e-9)
        own = best(ours)
        table.add_row(
            name,
            f"{own / ROWS * 1e9:.1f}",
            f"{best(numpy_form) / own:.2f} x",
            f"{best(numba_form) / own:.2f} x",
        )
    console.print(table)
    console.print(
        "ropewalk checks every row against its ranges and gives each a status; NumPy and Numba do "
        "so where it says checks. It is built for any x86-64, Numba for this one."
    )
    bench_check.tables(console)
    bench_line.tables(console, best)
    bench_rainflow.tables(console, best)
    bench_fit.tables(console, best)


if __name__ == "__main__":
    main()
