"""The damage map side by side with NumPy and Numba: part of `scripts/bench`."""

from __future__ import annotations

import resource
import time
from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import Any

import numba
import numpy as np
import numpy.typing as npt
from rich.console import Console
from rich.table import Table

import ropewalk as rw
from ropewalk.line._cases import Judgment, run_programs
from ropewalk.line._setup import columns_of, line_of, tackle_of
from ropewalk.line.program import NO_PROGRAM, SlipCutProgram

Array = npt.NDArray[np.float64]
Timer = Callable[[Callable[[], Any], int], float]
BIN = 0.1


def twelve_lines() -> Any:
    """Rig 7 with twelve lines and 800 m of rope, drum and crossovers left out of the wear."""
    rig = rw.load_rig(rw.rig.example("rig7"))
    assert rig.line is not None
    return replace(
        rig,
        reeving=replace(rig.reeving, lines=12),
        line=replace(
            rig.line,
            supply=800.0,
            wear=replace(rig.line.wear, crossover=0.0, layer_change=0.0, pick_up=0.0),
        ),
    )


class Rivals:
    """The same map in NumPy and Numba: differences at the ends of strokes, then running sums."""

    def __init__(self, rig: Any, exponent: float, scale: float) -> None:
        tackle = tackle_of(rig)
        sheaves = [one for one in tackle.contacts if one["layer"] == 0]
        drums = [one for one in tackle.contacts if one["layer"] > 0]
        self.bins = int(np.ceil(rig.line.supply / BIN))
        self.longest = rig.block.lowest
        self.anchor = tackle.first_anchor
        self.exponent = exponent
        rope = rig.rope
        tangents = [(one, side) for one in sheaves for side in ("near", "far")]
        # The drum as one layer: the rivals are spared the layers.
        tangents.append((drums[0], "near"))
        unit = 2.0 / (rope.diameter_si * rope.wire_strength_si)
        self.multiple = np.array([float(t["multiple"]) for t, _ in tangents])
        self.offset = np.array([(self.anchor - t[side]) / BIN for t, side in tangents])
        self.up = np.array(
            [
                0.5 * (unit * t["tension_up"] / t["diameter"]) ** exponent / scale
                for t, _ in tangents
            ]
        )
        self.down = np.array(
            [
                0.5 * (unit * t["tension_down"] / t["diameter"]) ** exponent / scale
                for t, _ in tangents
            ]
        )

    def numpy_map(self, load: Array, start: Array, stop: Array) -> Array:
        """Vectorized over strokes and tangents: bincount on difference arrays."""
        weight = load[:, None] ** self.exponent * np.where(
            (stop > start)[:, None], self.up, self.down
        )
        total = np.zeros(self.bins + 2)
        low = (self.longest - np.maximum(start, stop)) / BIN
        high = (self.longest - np.minimum(start, stop)) / BIN
        for ends, sign in ((high, 1.0), (low, -1.0)):
            x = self.offset - self.multiple * ends[:, None]
            j = x.astype(np.int64)
            later = sign * weight * (x - j)
            total += np.bincount(j.ravel(), (sign * weight - later).ravel(), self.bins + 2)
            total += np.bincount((j + 1).ravel(), later.ravel(), self.bins + 2)
        return np.cumsum(total)[: self.bins]

    def exact_map(self, load: Array, start: Array, stop: Array) -> Array:
        """The same without drowning: every difference in two parts whose sums are exact."""
        weight = load[:, None] ** self.exponent * np.where(
            (stop > start)[:, None], self.up, self.down
        )
        coarse = 2.0 ** (np.floor(np.log2(weight.max() * weight.size)) - 50.0)
        fine = coarse * 2.0**-26
        low = (self.longest - np.maximum(start, stop)) / BIN
        high = (self.longest - np.minimum(start, stop)) / BIN
        totals = np.zeros((2, self.bins + 2))
        for ends, sign in ((high, 1.0), (low, -1.0)):
            x = self.offset - self.multiple * ends[:, None]
            j = x.astype(np.int64)
            later = weight * (x - j)
            for where, what in ((j, weight - later), (j + 1, later)):
                big = np.floor(what / coarse)
                small = np.floor((what - big * coarse) / fine)
                totals[0] += sign * np.bincount(where.ravel(), big.ravel(), self.bins + 2)
                totals[1] += sign * np.bincount(where.ravel(), small.ravel(), self.bins + 2)
        sums = np.cumsum(totals, axis=1)
        result: Array = (sums[0] * coarse + sums[1] * fine)[: self.bins]
        return result

    def numba_map(self, load: Array, start: Array, stop: Array) -> Array:
        """One loop over strokes and tangents."""
        result: Array = numba_loop(
            load,
            start,
            stop,
            self.exponent,
            self.up,
            self.down,
            self.multiple,
            self.offset,
            self.longest,
            self.bins,
        )
        return result


@numba.njit(cache=False)
def numba_loop(  # pragma: no cover
    load: Array,
    start: Array,
    stop: Array,
    exponent: float,
    up: Array,
    down: Array,
    multiple: Array,
    offset: Array,
    longest: float,
    bins: int,
) -> Array:
    """Differences at the ends of strokes, then running sums."""
    total = np.zeros(bins + 2)
    for i in range(load.size):
        severity = load[i] ** exponent
        factor = up if stop[i] > start[i] else down
        low = (longest - max(start[i], stop[i])) / BIN
        high = (longest - min(start[i], stop[i])) / BIN
        for k in range(multiple.size):
            weight = severity * factor[k]
            x = offset[k] - multiple[k] * high
            j = int(x)
            total[j] += weight * (1.0 - (x - j))
            total[j + 1] += weight * (x - j)
            x = offset[k] - multiple[k] * low
            j = int(x)
            total[j] -= weight * (1.0 - (x - j))
            total[j + 1] -= weight * (x - j)
    out = np.empty(bins)
    sum_ = 0.0
    for j in range(bins):
        sum_ += total[j]
        out[j] = sum_
    return out


def random_strokes(rows: int, travel: float) -> tuple[Array, Array, Array]:
    """Loads and heights of strokes anywhere in the travel."""
    rng = np.random.default_rng(7)
    return (
        rng.uniform(2e5, 1.6e6, rows),
        rng.uniform(0.0, travel, rows),
        rng.uniform(0.0, travel, rows),
    )


def core_run(rig: Any, model: Any, load: Array, start: Array, stop: Array) -> Callable[[], Any]:
    """The whole way in the core: severities, map; the columns stand ready."""
    flags = np.zeros(load.size, dtype=np.uint8)
    columns = rw._core.line.CampaignColumns(
        hook_load=load,
        count=np.ones(load.size),
        height_from=start,
        height_to=stop,
        pick_up=flags,
        may_stop=flags,
        blocks=[(0, load.size, 1)],
        events=[],
    )
    return lambda: line_of(rig, columns, model).run(**NO_PROGRAM, bin_length=BIN).damage


def tables(console: Console, best: Timer) -> None:
    """Print what the damage map costs."""
    rig = twelve_lines()
    scale, exponent = 0.16, 2.4
    model = rw.fatigue.PowerLaw(scale, exponent, basis="discard")
    rivals = Rivals(rig, exponent, scale)
    table = Table(title="Damage map, one thread: times faster than", title_justify="left")
    for name in ("what", "ms", "NumPy", "NumPy, exact sums", "Numba loop"):
        table.add_column(name, justify="left" if name == "what" else "right")
    strokes = random_strokes(25_000, rig.travel)
    ours = core_run(rig, model, *strokes)
    own = best(ours, 15)
    table.add_row(
        "25 000 random strokes x 12 lines x 8 000 bins",
        f"{own * 1e3:.2f}",
        f"{best(lambda: rivals.numpy_map(*strokes), 5) / own:.1f} x",
        f"{best(lambda: rivals.exact_map(*strokes), 5) / own:.1f} x",
        f"{best(lambda: rivals.numba_map(*strokes), 15) / own:.2f} x",
    )
    planned(table, rig, model, rivals, best)
    console.print(table)
    stream(console, rig, model)
    sweep(console)


def planned(table: Table, rig: Any, model: Any, rivals: Rivals, best: Timer) -> None:
    """One hundred equal round trips: merged here, one by one there."""
    stands = 120
    loads = np.linspace(1.5e6, 3e5, stands)
    load = np.concatenate([np.ravel([loads, np.full(stands, 2e5)], "F")] * 2)
    start = np.tile([0.0, 28.5], 2 * stands)
    stop = np.tile([28.5, 0.0], 2 * stands)
    flags = np.zeros(load.size, dtype=np.uint8)
    columns = rw._core.line.CampaignColumns(
        hook_load=load,
        count=np.ones(load.size),
        height_from=start,
        height_to=stop,
        pick_up=flags,
        may_stop=flags,
        blocks=[(0, load.size, 100)],
        events=[],
    )

    def ours() -> Any:
        return line_of(rig, columns, model).run(**NO_PROGRAM, bin_length=BIN).damage

    every = tuple(np.tile(column, 100) for column in (load, start, stop))
    own = best(ours, 15)
    table.add_row(
        "100 round trips, merged; rivals one by one",
        f"{own * 1e3:.2f}",
        f"{best(lambda: rivals.numpy_map(*every), 3) / own:.1f} x",
        "",
        f"{best(lambda: rivals.numba_map(*every), 7) / own:.1f} x",
    )


def chunks(strokes: int, travel: float, size: int = 250_000) -> Iterator[tuple[Any, Any, Any]]:
    """Strokes from an iterator: the same quarter of a million over and over."""
    load, start, stop = random_strokes(size, travel)
    one = rw.Q(load, "N"), rw.Q(start, "m"), rw.Q(stop, "m")
    for _ in range(strokes // size):
        yield one


def stream(console: Console, rig: Any, model: Any) -> None:
    """Strokes streamed: time per stroke and memory must not grow with their number."""
    table = Table(title="Strokes streamed from an iterator", title_justify="left")
    for name in ("strokes", "s", "ns per stroke", "largest memory [MB]"):
        table.add_column(name, justify="right")
    for strokes in (1_000_000, 10_000_000, 100_000_000):
        begin = time.perf_counter()
        rw.line.stream_line(rig, chunks(strokes, rig.travel), model=model)
        taken = time.perf_counter() - begin
        memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024.0
        table.add_row(
            f"{strokes:,}", f"{taken:.2f}", f"{taken / strokes * 1e9:.0f}", f"{memory:.0f}"
        )
    console.print(table)


def sweep(console: Console) -> None:
    """500 rigs on the campaign of Rig 7, one thread against two."""
    rig = rw.load_rig(rw.rig.example("rig7"))
    campaign = rw.Campaign.from_plan(rig)
    columns = columns_of(campaign)
    program = SlipCutProgram.of_practice(rig.program)  # type: ignore[arg-type]
    model = rw.fatigue.PowerLaw(0.16, 2.4, basis="discard")
    lines = [
        line_of(
            replace(
                rig,
                crown=replace(rig.crown, diameter=d),
                block=replace(rig.block, sheaves=replace(rig.block.sheaves, diameter=d)),
            ),
            columns,
            model,
        )
        for d in np.linspace(1.0, 1.8, 500)
    ]
    judge = Judgment(1.0, 0.2, 10.0, BIN, 1)
    times, results = [], []
    for threads in (1, 2):
        begin = time.perf_counter()
        results.append(
            run_programs(lines, campaign, [program] * len(lines), judge, threads=threads)
        )
        times.append(time.perf_counter() - begin)
    same = all(
        np.array_equal(results[0][name], results[1][name])
        for name in ("worst", "survival", "waste")
    )
    console.print(
        f"500 rigs on the campaign of Rig 7: {times[0]:.2f} s on one thread, {times[1]:.2f} s on "
        f"two, {times[0] / times[1]:.2f} x; identical bits: {same}"
    )
