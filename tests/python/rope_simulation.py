"""The referee of the damage map: a rope moving over sheaves, by brute force.

Nothing of the library is used here, so that nothing of it can be wrong in both. The rope is a row
of material points. Where a point lies on the way from the anchor to the drum is looked up before
and after each stroke; each tangent point it was carried over gives it half a bending cycle. What
the map needs besides, intervals summed over bins, is in rope_sweeps.py, and is held against the
points before either is held against the library.

Everything is computed in `Real`, which is more precise than float64 where the platform has such a
type.
Lengths in m, forces in N, from g = 0 at the first drum end.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cache
from math import ceil
from typing import Any, NamedTuple, TypeAlias

import numpy as np

Real = np.longdouble
Array: TypeAlias = Any
PI = Real("3.14159265358979323846264338327950288")


class Stroke(NamedTuple):
    """The block going from one height to another, `count` times, each time from the first."""

    hook_load: float
    height_from: float
    height_to: float
    count: float = 1
    pick_up: bool = False
    may_stop: bool = False


class Shift(NamedTuple):
    """Rope slipped in at the anchor, then cut off at the drum, after a row of the campaign."""

    after: int
    slip: float
    cut: float


class Law(NamedTuple):
    """Cycles to discard: scale · (2 T / (d D R0))^(−exponent)."""

    scale: float
    exponent: float


@dataclass(frozen=True)
class Drum:
    """A drum and how the rope lies on it; diameters over the tread, not over the rope."""

    barrel_diameter: float
    laps_per_layer: float
    layers: int
    layer_height: float
    crossovers_per_lap: int = 2

    def bend_diameter(self, layer: int) -> Real:
        """Diameter of what the rope of layer 0, 1, … lies on."""
        return Real(self.barrel_diameter) + 2 * layer * Real(self.layer_height)


@dataclass(frozen=True)
class Wear:
    """Weights of the wear that is not bending.

    In half cycles on the drum for what happens at each spooling on or off, in bending cycles for
    what happens at each pick-up.
    """

    crossover: float = 0.0
    layer_change: float = 0.0
    pick_up: float = 0.0
    dead_line_sheave: float = 0.0
    anchor: float = 0.0
    crossover_length: float = 0.0
    anchor_length: float = 1.0


@dataclass(frozen=True)
class Hoist:
    """Sheaves, drum and lengths of rope between them."""

    frictions: tuple[float, ...]
    crown_diameter: float
    block_diameter: float
    rope_diameter: float
    wire_strength: float
    highest: float
    lowest: float
    dead_line: float
    fast_line: float
    drum: Drum
    wraps_at_lowest: float
    lead_frictions: tuple[float, ...] = ()
    wear: Wear = field(default_factory=Wear)

    @property
    def lines(self) -> int:
        return len(self.frictions)

    @property
    def travel(self) -> float:
        return self.lowest - self.highest

    def lap_length(self, layer: int) -> Real:
        return PI * (self.drum.bend_diameter(layer) + Real(self.rope_diameter))

    def sheave_diameter(self, sheave: int) -> Real:
        """Tread of turning sheave 1 … N and the lead sheaves after it; 0 is the dead-line sheave.

        Sheave 0 is on the crown, then block and crown take turns. Lead sheaves are as the crown's.
        """
        travels = sheave <= self.lines and sheave % 2 == 1
        return Real(self.block_diameter if travels else self.crown_diameter)

    def arc(self, sheave: int) -> Real:
        """Rope on one sheave: half a turn of its own axis."""
        return PI / 2 * (self.sheave_diameter(sheave) + Real(self.rope_diameter))

    def on_drum(self, laps: Any) -> Real:
        """Length of so many laps from the drum end, in their layers."""
        length, left, layer = Real(0), Real(laps), 0
        while left > 0:
            part = min(left, Real(self.drum.laps_per_layer))
            length, left, layer = length + part * self.lap_length(layer), left - part, layer + 1
        return length

    def layer_starts(self) -> list[Real]:
        """Where each layer starts, from the drum end; one more for the end of the last."""
        return _layer_starts(self)

    def drum_offset(self, height: Any) -> Real:
        """From the anchor along the rope to the drum's tangent point."""
        turning = self.lines + len(self.lead_frictions)
        lines = self.lines * (Real(self.lowest) - Real(height))
        arcs = sum((self.arc(m) for m in range(turning + 1)), Real(0))
        return Real(self.dead_line) + arcs + lines + Real(self.fast_line)

    def anchor_at_start(self) -> Real:
        return self.on_drum(self.wraps_at_lowest) + self.drum_offset(0)


@cache
def _layer_starts(hoist: Hoist) -> list[Real]:
    return [hoist.on_drum(k * hoist.drum.laps_per_layer) for k in range(hoist.drum.layers + 1)]


def tensions(hoist: Hoist, hook_load: float, hoisting: bool) -> list[Real]:
    """Lines 1 … N, the fast line at the crown, and what leaves each lead sheave."""
    relative = [Real(1)]
    for friction in (*hoist.frictions, *hoist.lead_frictions):
        step = Real(friction) if hoisting else 1 / Real(friction)
        relative.append(relative[-1] * step)
    pull = sum(relative[: hoist.lines], Real(0))
    return [Real(hook_load) * one / pull for one in relative]


def half_cycle(hoist: Hoist, law: Law, tension: Real, diameter: Real) -> Real:
    """Damage of half a bending cycle."""
    pressure = 2 * tension / (Real(hoist.rope_diameter) * diameter)
    return pow(pressure / Real(hoist.wire_strength), Real(law.exponent)) / (2 * Real(law.scale))


def cause_of(hoist: Hoist, sheave: int) -> str:
    if sheave > hoist.lines:
        return f"lead sheave {sheave - hoist.lines}"
    return (
        f"crown sheave {sheave // 2}" if sheave % 2 == 0 else f"traveling sheave {sheave // 2 + 1}"
    )


class State(NamedTuple):
    """What a row of the campaign finds: the stroke, and where the rope is held."""

    row: int
    stroke: Stroke
    anchor: Real
    drum_end: Real


def states(hoist: Hoist, strokes: Sequence[Stroke], shifts: Iterable[Shift]) -> Iterator[State]:
    """The rows in their order, the rope slipped and cut between them."""
    anchor, drum_end = hoist.anchor_at_start(), Real(0)
    by_row: dict[int, list[Shift]] = {}
    for shift in shifts:
        by_row.setdefault(shift.after, []).append(shift)
    for row, stroke in enumerate(strokes):
        yield State(row, stroke, anchor, drum_end)
        for shift in by_row.get(row, []):
            anchor, drum_end = anchor + Real(shift.slip), drum_end + Real(shift.cut)


def shifts_by_work(strokes: Sequence[Stroke], slip: float, cut: float, every: float) -> list[Shift]:
    """Slip at the first row that may stop after so much work, in J; cut what was slipped."""
    done, slipped, shifts = 0.0, 0.0, []
    for row, stroke in enumerate(strokes):
        done += stroke.hook_load * abs(stroke.height_to - stroke.height_from) * stroke.count
        if stroke.may_stop and done >= every:
            done, slipped = 0.0, slipped + slip
            cuts = slipped >= cut * (1 - 1e-9)
            shifts.append(Shift(row, slip, cut if cuts else 0.0))
            slipped = 0.0 if cuts else slipped
    return shifts


# Material points


def _path(hoist: Hoist, height: float) -> Array:
    """Where dead line, sheaves and lines end, from the anchor: the places rope bends at.

    Sheave m is left at place 2m and met at place 2m + 1, counted from the dead-line sheave, m = 0;
    the drum is met at the last place.
    """
    lengths = [Real(hoist.dead_line), hoist.arc(0)]
    for m in range(1, hoist.lines + 1):
        lengths += [Real(hoist.lowest) - Real(height), hoist.arc(m)]
    for m in range(hoist.lines + 1, hoist.lines + len(hoist.lead_frictions) + 1):
        lengths += [Real(0), hoist.arc(m)]  # lead sheaves follow the crown at once
    lengths.append(Real(hoist.fast_line))
    return np.cumsum(np.array(lengths, dtype=Real))


def _layers(hoist: Hoist, on_drum: Array) -> Array:
    """Layer of each point on the drum."""
    starts = np.array(hoist.layer_starts())
    if (on_drum < 0).any() or (on_drum >= starts[-1]).any():
        raise ValueError("the drum is empty, or too full")
    return np.searchsorted(starts, on_drum, side="right") - 1


class Crossover(NamedTuple):
    """Middle of a crossover from the drum end, its layer, and whether the rope climbs there."""

    middle: Real
    layer: int
    climbs: bool


@cache
def crossovers(hoist: Hoist) -> list[Crossover]:
    """Each climb to a layer, and each 1/crossovers_per_lap turn since the drum end within one.

    The layer on the barrel crosses nothing. Laps to a layer are whole or half, turns are exact.
    """
    found: list[Crossover] = []
    per_lap, laps = hoist.drum.crossovers_per_lap, hoist.drum.laps_per_layer
    for layer in range(1, hoist.drum.layers):
        begin, end = layer * laps, (layer + 1) * laps
        found.append(Crossover(hoist.on_drum(begin), layer, True))
        turns = [i / per_lap for i in range(int(begin * per_lap) + 1, ceil(end * per_lap))]
        found += [Crossover(hoist.on_drum(turn), layer, False) for turn in turns]
    return found


def of_points(
    hoist: Hoist,
    law: Law,
    strokes: Sequence[Stroke],
    points: Array,
    shifts: Iterable[Shift] = (),
) -> tuple[dict[str, Array], Array]:
    """Damage of every point by cause, and its bending cycles.

    `points` are positions g; none may lie exactly where a stroke begins or ends to sweep.
    """
    points = np.asarray(points, dtype=Real)
    cycles = np.zeros_like(points)
    damage: dict[str, Array] = {}

    def add(cause: str, where: Array, amount: Any) -> None:
        damage.setdefault(cause, np.zeros_like(points))[where] += amount

    sheaves = hoist.lines + len(hoist.lead_frictions)
    for _, stroke, anchor, drum_end in states(hoist, strokes, shifts):
        hoisting = stroke.height_to > stroke.height_from
        pulls = tensions(hoist, stroke.hook_load, hoisting)
        before = np.searchsorted(_path(hoist, stroke.height_from), anchor - points)
        after = np.searchsorted(_path(hoist, stroke.height_to), anchor - points)
        on_rope = (points > drum_end) & (points < anchor)
        low, high = np.minimum(before, after), np.maximum(before, after)
        count = Real(stroke.count)
        for m in range(1, sheaves + 1):
            cost = half_cycle(hoist, law, max(pulls[m - 1], pulls[m]), hoist.sheave_diameter(m))
            for place in (2 * m, 2 * m + 1):
                passed = on_rope & (low <= place) & (place < high)
                cycles[passed] += count / 2
                add(cause_of(hoist, m), passed, count * cost)
        drum = 2 * sheaves + 2
        passed = on_rope & (low <= drum) & (drum < high)
        cycles[passed] += count / 2
        on_drum = points[passed] - drum_end
        layers = _layers(hoist, on_drum)
        for layer in range(hoist.drum.layers):
            cost = half_cycle(hoist, law, pulls[-1], hoist.drum.bend_diameter(layer))
            where = np.flatnonzero(passed)[layers == layer]
            add(f"drum layer {layer + 1}", where, count * cost)
        reached = on_drum.max(initial=0.0) + Real(hoist.wear.crossover_length)
        for middle, layer, climbs in crossovers(hoist):
            if middle > reached:
                break
            near = np.abs(on_drum - middle) < Real(hoist.wear.crossover_length) / 2
            cost = half_cycle(hoist, law, pulls[-1], hoist.drum.bend_diameter(layer))
            weight = hoist.wear.layer_change if climbs else hoist.wear.crossover
            add("crossovers", np.flatnonzero(passed)[near], count * Real(weight) * cost)
        if stroke.pick_up:
            pulls = tensions(hoist, stroke.hook_load, hoisting=True)
            for m in range(sheaves + 1):
                at = on_rope & (before == 2 * m + 1)
                tight = max(pulls[max(m - 1, 0)], pulls[m])
                cost = 2 * half_cycle(hoist, law, tight, hoist.sheave_diameter(m))
                name = "pick-up" if m else "dead-line sheave"
                weight = hoist.wear.pick_up if m else hoist.wear.dead_line_sheave
                add(name, at, count * Real(weight) * cost)
            held = on_rope & (anchor - points < Real(hoist.wear.anchor_length))
            cost = 2 * half_cycle(hoist, law, pulls[0], hoist.sheave_diameter(0))
            add("anchor", held, count * Real(hoist.wear.anchor) * cost)
    return damage, cycles
