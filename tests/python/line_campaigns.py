"""Hoists and campaigns at random, for the tests of the damage map."""

from __future__ import annotations

import numpy as np
from hypothesis import strategies as st
from rope_simulation import Drum, Hoist, Law, Stroke, Wear

Random = np.random.Generator


def any_wear(random: Random) -> Wear:
    """Any weights, some of them none."""
    weights = random.uniform(0.0, 3.0, 4) * random.integers(0, 2, 4)
    return Wear(*(float(w) for w in weights), crossover_length=float(random.uniform(0.1, 0.8)))


def any_hoist(random: Random, wear: Wear | None = None, *, leads: bool = True) -> Hoist:
    """Any string-up of a 1 3/8 in line that can be, on a drum that all of the rope fits on."""
    lines = 2 * int(random.integers(1, 7))
    highest = float(random.uniform(2, 10))
    lowest = highest + float(random.uniform(5, 35))
    return Hoist(
        frictions=tuple(random.uniform(1.0, 1.1, lines).tolist()),
        lead_frictions=tuple(random.uniform(1.0, 1.1, int(random.integers(3))).tolist())
        if leads
        else (),
        crown_diameter=float(random.uniform(0.8, 1.8)),
        block_diameter=float(random.uniform(0.8, 1.8)),
        rope_diameter=0.034925,
        wire_strength=1.9668209123050618e9,
        highest=highest,
        lowest=lowest,
        dead_line=float(random.uniform(10, 60)),
        fast_line=float(random.uniform(10, 60)),
        drum=Drum(
            barrel_diameter=float(random.uniform(0.6, 1.0)),
            laps_per_layer=int(random.integers(16, 40)),
            layers=40,
            layer_height=float(random.uniform(0.028, 0.0349)),
            crossovers_per_lap=int(random.integers(1, 3)),
        ),
        wraps_at_lowest=float(random.uniform(4, 30)),
        wear=Wear() if wear is None else wear,
    )


def any_law(random: Random) -> Law:
    return Law(scale=float(random.uniform(0.05, 1.0)), exponent=float(random.uniform(1.0, 4.0)))


def any_strokes(random: Random, hoist: Hoist, size: int) -> list[Stroke]:
    """Strokes anywhere in the travel, one in three taking up from rest, one in three a stop."""
    strokes = []
    for _ in range(size):
        one, other = random.uniform(0.0, hoist.travel, 2).tolist()
        strokes.append(
            Stroke(
                hook_load=float(random.uniform(5e4, 5e5)) * hoist.lines / 12,
                height_from=one,
                height_to=other,
                count=int(random.integers(1, 5)),
                pick_up=bool(random.integers(3) == 0),
                may_stop=bool(random.integers(3) == 0),
            )
        )
    return strokes


seeds = st.integers(0, 2**32 - 1)
