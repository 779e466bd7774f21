"""The two forms of the referee against each other and against sums that must come out."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from line_campaigns import any_hoist, any_law, any_strokes, any_wear, seeds
from rope_simulation import Hoist, Law, Real, Shift, Stroke, of_points, shifts_by_work, tensions
from rope_sweeps import Sweep, bin_edges, bin_means, sweeps

EVERY = 2e7  # J


def pieces(all_sweeps: list[Sweep]) -> tuple[np.ndarray, np.ndarray]:
    """Edges between which nothing changes, and the middle of each piece."""
    edges = np.unique(np.array([end for one in all_sweeps for end in (one.start, one.end)]))
    # What is shorter than this is the same end reached by two ways of rounding.
    edges = edges[np.append(True, np.diff(edges) > 1e-12)]
    return edges, (edges[1:] + edges[:-1]) / 2


def any_case(seed: int, size: int = 12) -> tuple[Hoist, Law, list[Stroke], list[Shift]]:
    random = np.random.default_rng(seed)
    hoist = any_hoist(random, any_wear(random))
    strokes = any_strokes(random, hoist, size)
    return hoist, any_law(random), strokes, shifts_by_work(strokes, 7.3, 14.6, EVERY)


@settings(max_examples=60, deadline=None)
@given(seeds)
def test_points_suffer_what_the_intervals_say(seed: int) -> None:
    hoist, law, strokes, shifts = any_case(seed)
    every = sweeps(hoist, law, strokes, shifts)
    edges, middles = pieces(every)
    by_cause, cycles = of_points(hoist, law, strokes, middles, shifts)
    total = bin_means(every, edges)
    # Two ends nearer than 1e-12 m are one; then a sweep covers so much of the piece beside it.
    slack = 2e-12 * total.scale
    lengths = np.diff(edges)
    assert (np.abs(cycles - total.cycles) * lengths <= 1e-9).all()
    assert (np.abs(sum(by_cause.values()) - total.damage) * lengths <= slack).all()
    for cause, damage in by_cause.items():
        ours = bin_means([one for one in every if one.cause == cause], edges).damage
        assert (np.abs(damage - ours) * lengths <= slack).all(), cause
    assert set(by_cause) >= {one.cause for one in every}


def test_a_rope_that_stays_is_not_bent() -> None:
    hoist, law, _, _ = any_case(1)
    points = np.linspace(0.01, float(hoist.anchor_at_start()) - 0.01, 500)
    by_cause, cycles = of_points(hoist, law, [Stroke(1e5, 3.0, 3.0)], points)
    assert (cycles == 0).all()
    assert all((damage == 0).all() for damage in by_cause.values())


@pytest.mark.parametrize("seed", range(5))
def test_every_sheave_sweeps_its_multiple_of_the_stroke(seed: int) -> None:
    hoist, law, strokes, shifts = any_case(seed)
    for row, stroke in enumerate(strokes):
        way = abs(stroke.height_to - stroke.height_from) * stroke.count
        every = [one for one in sweeps(hoist, law, strokes, shifts) if one.row == row]
        for m in range(1, hoist.lines + 1):
            name = f"crown sheave {m // 2}" if m % 2 == 0 else f"traveling sheave {m // 2 + 1}"
            cycles = sum((s.end - s.start) * s.cycles for s in every if s.cause == name)
            assert float(cycles) == pytest.approx(m * way, rel=1e-12)
        drum = sum((s.end - s.start) * s.cycles for s in every if "drum layer" in s.cause)
        assert float(drum) == pytest.approx(hoist.lines * way / 2, rel=1e-12)


def test_points_keep_what_the_identity_says() -> None:
    # Sheave m bends m times the stroke, 1 + 2 + … + N in all; the drum half of N times.
    random = np.random.default_rng(7)
    hoist = any_hoist(random, leads=False)
    length = float(hoist.anchor_at_start())
    points = (np.arange(60_000) + 0.5) * length / 60_000
    _, cycles = of_points(hoist, Law(1.0, 2.0), [Stroke(1e5, 0.0, 5.0)], points)
    ways = hoist.lines * (hoist.lines + 1) / 2 + hoist.lines / 2
    assert float(cycles.sum()) * length / 60_000 == pytest.approx(5.0 * ways, rel=1e-3)


def test_tensions_add_up_to_the_hook_load() -> None:
    hoist, _, _, _ = any_case(3)
    for hoisting in (True, False):
        pulls = tensions(hoist, 1e6, hoisting)
        assert float(sum(pulls[: hoist.lines])) == pytest.approx(1e6, rel=1e-15)
        assert (np.diff(pulls) >= 0).all() == hoisting


def test_bins_share_a_sweep_by_what_it_covers() -> None:
    sweep = Sweep(0, "x", Real(0.25), Real(2.5), Real(8), Real(1))
    binned = bin_means([sweep], bin_edges(3.5, 1.0))
    assert binned.damage.tolist() == [6, 8, 4, 0]
    assert binned.scale.tolist() == [8, 8, 8, 0]
    assert bin_edges(3.5, 1.0).tolist() == [0, 1, 2, 3, 3.5]


def test_work_decides_when_rope_is_slipped() -> None:
    # 1 MJ a row; slips after 2 MJ where the load hangs elsewhere; every second slip is cut.
    stops = [False, False, True, True, True, True]
    strokes = [Stroke(1e5, 0.0, 10.0, 1, False, stop) for stop in stops]
    assert shifts_by_work(strokes, 5.0, 10.0, 2e6) == [Shift(2, 5.0, 0.0), Shift(4, 5.0, 10.0)]
