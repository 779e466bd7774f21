"""The referee of the damage map, second form: what each tangent point sweeps, summed over bins.

In each stroke every tangent point sweeps one interval of rope, whose ends follow from the offset of
the tangent point from the anchor. The mean over a bin is the covered share of the bin times the
damage of the sweep, summed in the order of the strokes in `Real`: no prefix sums, no differences.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

import numpy as np
from rope_simulation import (
    Array,
    Hoist,
    Law,
    Real,
    Shift,
    State,
    Stroke,
    cause_of,
    crossovers,
    half_cycle,
    states,
    tensions,
)


class Sweep(NamedTuple):
    """Rope from start to end, what each of its points suffers, and its bending cycles."""

    row: int
    cause: str
    start: Real
    end: Real
    damage: Real
    cycles: Real


def offset(hoist: Hoist, sheave: int, height: float) -> Real:
    """From the anchor along the rope to where sheave 0 … N and the lead sheaves are met."""
    lines = min(sheave, hoist.lines) * (Real(hoist.lowest) - Real(height))
    arcs = sum((hoist.arc(m) for m in range(sheave)), Real(0))
    return Real(hoist.dead_line) + arcs + lines  # lead sheaves follow the crown at once


def sweeps(
    hoist: Hoist, law: Law, strokes: Sequence[Stroke], shifts: Iterable[Shift] = ()
) -> list[Sweep]:
    """Every interval of every stroke, in the order of time."""
    return [
        sweep
        for state in states(hoist, strokes, shifts)
        for part in (_at_sheaves, _on_drum, _held)
        for sweep in part(hoist, law, state)
    ]


def _sheaves(hoist: Hoist) -> int:
    return hoist.lines + len(hoist.lead_frictions)


def _pulls(hoist: Hoist, stroke: Stroke) -> list[Real]:
    return tensions(hoist, stroke.hook_load, stroke.height_to > stroke.height_from)


def _at_sheaves(hoist: Hoist, law: Law, state: State) -> Iterator[Sweep]:
    row, stroke, anchor, _ = state
    pulls, count = _pulls(hoist, stroke), Real(stroke.count)
    for m in range(1, _sheaves(hoist) + 1):
        cost = half_cycle(hoist, law, max(pulls[m - 1 : m + 1]), hoist.sheave_diameter(m))
        ends = sorted(anchor - offset(hoist, m, h) for h in (stroke.height_from, stroke.height_to))
        for arc in (Real(0), hoist.arc(m)):
            start, end = ends[0] - arc, ends[1] - arc
            yield Sweep(row, cause_of(hoist, m), start, end, count * cost, count / 2)


def _on_drum(hoist: Hoist, law: Law, state: State) -> Iterator[Sweep]:
    row, stroke, anchor, drum_end = state
    pull, count = _pulls(hoist, stroke)[-1], Real(stroke.count)
    heights = (stroke.height_from, stroke.height_to)
    low, high = sorted(anchor - drum_end - hoist.drum_offset(h) for h in heights)
    starts = hoist.layer_starts()
    if low < 0 or high > starts[-1]:
        raise ValueError("the drum is empty, or too full")
    for layer in range(hoist.drum.layers):
        start, end = max(low, starts[layer]), min(high, starts[layer + 1])
        if start >= end:
            continue
        cost = count * half_cycle(hoist, law, pull, hoist.drum.bend_diameter(layer))
        name = f"drum layer {layer + 1}"
        yield Sweep(row, name, drum_end + start, drum_end + end, cost, count / 2)
    reach = Real(hoist.wear.crossover_length) / 2
    for middle, layer, climbs in crossovers(hoist):
        if middle - reach > high:
            break
        a, b = max(low, middle - reach), min(high, middle + reach)
        if a < b:
            cost = count * half_cycle(hoist, law, pull, hoist.drum.bend_diameter(layer))
            extra = Real(hoist.wear.layer_change if climbs else hoist.wear.crossover) * cost
            yield Sweep(row, "crossovers", drum_end + a, drum_end + b, extra, Real(0))


def _held(hoist: Hoist, law: Law, state: State) -> Iterator[Sweep]:
    """Wear of a pick-up on what lies on the sheaves and in the anchor."""
    row, stroke, anchor, _ = state
    if not stroke.pick_up:
        return
    wear, count = hoist.wear, Real(stroke.count)
    pulls = tensions(hoist, stroke.hook_load, hoisting=True)
    for m in range(_sheaves(hoist) + 1):
        weight = wear.pick_up if m else wear.dead_line_sheave
        cost = half_cycle(hoist, law, pulls[m], hoist.sheave_diameter(m))
        start = anchor - offset(hoist, m, stroke.height_from) - hoist.arc(m)
        name = "pick-up" if m else "dead-line sheave"
        yield Sweep(
            row, name, start, start + hoist.arc(m), 2 * count * Real(weight) * cost, Real(0)
        )
    cost = half_cycle(hoist, law, pulls[0], hoist.sheave_diameter(0))
    extra = 2 * count * Real(wear.anchor) * cost
    yield Sweep(row, "anchor", anchor - Real(wear.anchor_length), anchor, extra, Real(0))


def bin_edges(length: float, bin_length: float) -> Array:
    """Edges from 0 in whole bins; the last bin ends with the rope."""
    whole = int(np.ceil(length / bin_length - 1e-9))
    return np.append(np.arange(whole) * Real(bin_length), Real(length))


class Binned(NamedTuple):
    """Means over bins, what a bin would have if every sweep that touches it covered it, lengths."""

    damage: Array
    cycles: Array
    scale: Array
    lengths: Array


def bin_means(all_sweeps: Iterable[Sweep], edges: Array) -> Binned:
    """Sum the covered shares of all bins."""
    edges = np.asarray(edges, dtype=Real)
    damage, cycles, scale = (np.zeros(len(edges) - 1, dtype=Real) for _ in range(3))
    for one in all_sweeps:
        if not edges[0] <= one.start <= one.end <= edges[-1]:
            raise ValueError(f"{one.cause} is off the rope")
        first = int(np.searchsorted(edges, one.start, side="right")) - 1
        last = int(np.searchsorted(edges, one.end, side="left"))
        at = slice(first, last)
        low, high = edges[first:last], edges[first + 1 : last + 1]
        covered = np.minimum(high, one.end) - np.maximum(low, one.start)
        share = np.maximum(covered, 0) / (high - low)
        damage[at] += share * one.damage
        cycles[at] += share * one.cycles
        scale[at] += one.damage
    return Binned(damage, cycles, scale, np.diff(edges))
