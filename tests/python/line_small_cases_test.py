"""The damage map in cases small enough to be worked out by hand, two strokes each.

The numbers are chosen so that every tangent point lies on a whole or half meter and every tension
is a round one. The life law has exponent 1: 100 cycles at 100 kN on the crown sheaves, so that half
a cycle there costs 0.005 × T/100 kN, and crown diameter over bend diameter times that elsewhere.
"""

from __future__ import annotations

from dataclasses import replace
from math import pi
from typing import Any

import numpy as np
import pytest
from line_rigs import campaign_of, example_rig, model_of, rig_of, run
from rope_simulation import Drum, Hoist, Law, Shift, Stroke, Wear, of_points

import ropewalk as rw
from ropewalk.errors import InadmissibleError

D = 0.034925  # m, the 1 3/8 in line
STRENGTH = 1.9668209123050618e9  # Pa, its wire
CROWN = 4 / pi - D  # m, a tread with 2 m of rope on half a turn
Painted = list[tuple[float, float, float]]


def law_for(crown: float) -> Law:
    """100 cycles at 100 kN."""
    return Law(100 * 2 * 100e3 / (D * crown * STRENGTH), 1.0)


def paint(strips: Painted, length: float, step: float) -> np.ndarray:
    """Sum strips (from, to, value) whose ends are whole steps."""
    sums = np.zeros(round(length / step))
    for start, end, value in strips:
        sums[round(start / step) : round(end / step)] += value
    return sums


def check(
    hoist: Hoist, strokes: list[Stroke], by_hand: Painted, supply: float, step: float, **how: Any
) -> Any:
    """Hold the library's map against what was worked out by hand; return its history."""
    history = run(hoist, law_for(hoist.crown_diameter), strokes, supply, step, **how)
    expected = paint(by_hand, supply, step)
    np.testing.assert_allclose(history.damage.values, expected, rtol=1e-11, atol=1e-15)
    centers = (np.arange(len(expected)) + 0.5) * step
    np.testing.assert_allclose(history.damage.position.values, centers, rtol=1e-14)
    return history


def check_simulation(
    hoist: Hoist, strokes: list[Stroke], by_hand: Painted, step: float, shifts: list[Shift]
) -> None:
    """Hold the referee against the same."""
    expected = paint(by_hand, 100.0, step)
    points = (np.arange(len(expected)) + 0.5) * step
    by_cause, _ = of_points(hoist, law_for(hoist.crown_diameter), strokes, points, shifts)
    total = np.asarray(sum(by_cause.values()), dtype=float)
    np.testing.assert_allclose(total, expected, rtol=1e-12, atol=1e-15)


# Two lines. Dead line 5 m, four arcs of … 2 m, fast line 4 m; 10 m of line between the blocks with
# the block at its lowest, where 12 m lie on the drum. The anchor then holds the rope at
#   12 + 4 + 2·10 + 3·2 + 5 = 47 m,
# and with L of line between the blocks
#   traveling sheave 1   is met at 47 − (5 + 2 + L)      = 40 − L,  left at 38 − L
#   crown sheave 1       is met at 47 − (5 + 2·2 + 2 L)  = 38 − 2 L, left at 36 − 2 L
#   drum                 is met at 47 − (5 + 3·2 + 2 L + 4) = 32 − 2 L.
# K = 1.25 and a hook load of 225 kN make
#   hoisting   T1 = 225/(1 + 1.25) = 100 kN, T2 = 125, fast line 156.25
#   lowering   T1 = 225/(1 + 0.8)  = 125 kN, T2 = 100, fast line 80.
# The drum's tread is 3/4 of the crown's.

TWO = Hoist(
    frictions=(1.25, 1.25),
    crown_diameter=CROWN,
    block_diameter=CROWN,
    rope_diameter=D,
    wire_strength=STRENGTH,
    highest=2.0,
    lowest=10.0,
    dead_line=5.0,
    fast_line=4.0,
    drum=Drum(0.75 * CROWN, laps_per_layer=20, layers=3, layer_height=0.03),
    wraps_at_lowest=12 / (pi * (0.75 * CROWN + D)),
)
TWO_STROKES = [Stroke(225e3, 0.0, 4.0), Stroke(225e3, 4.0, 2.0)]
TWO_BY_HAND: Painted = [
    # Hoisting from L = 10 m to 6 m; the tight side is the one toward the drum.
    (30, 34, 0.00625),  # traveling sheave 1, 125 kN: 40 − 10 … 40 − 6
    (28, 32, 0.00625),
    (18, 26, 0.0078125),  # crown sheave 1, 156.25 kN: 38 − 20 … 38 − 12
    (16, 24, 0.0078125),
    (12, 20, 0.0078125 / 0.75),  # drum, 156.25 kN: 32 − 20 … 32 − 12
    # Lowering from L = 6 m to 8 m; the tight side is the one toward the anchor.
    (32, 34, 0.00625),  # traveling sheave 1, 125 kN: 40 − 8 … 40 − 6
    (30, 32, 0.00625),
    (22, 26, 0.005),  # crown sheave 1, 100 kN: 38 − 16 … 38 − 12
    (20, 24, 0.005),
    (16, 20, 0.004 / 0.75),  # drum, 80 kN: 32 − 16 … 32 − 12
]


def test_two_lines_in_the_simulation() -> None:
    check_simulation(TWO, TWO_STROKES, TWO_BY_HAND, 1.0, [])


def test_two_lines() -> None:
    history = check(TWO, TWO_STROKES, TWO_BY_HAND, 100.0, 1.0)
    damage, cycles = history.damage.values, history.cycles.values
    assert damage[30] == pytest.approx(3 * 0.00625)
    assert damage[22] == pytest.approx(2 * 0.0078125 + 2 * 0.005)
    assert damage[16] == pytest.approx(0.0235625)  # 0.0078125 + 0.0104166… + 0.0053333…
    assert damage[14] == pytest.approx(1 / 96)
    assert cycles[[11, 14, 16, 22, 26, 28, 30, 34]] == pytest.approx(
        [0, 0.5, 1.5, 2, 0, 0.5, 1.5, 0]
    )
    assert cycles.sum() == pytest.approx((1 + 2 + 1) * 4 + (1 + 2 + 1) * 2)
    assert history.anchor_si == pytest.approx(47.0)
    assert history.drum_end_si == 0.0


def test_two_lines_by_cause() -> None:
    by_cause = run(TWO, law_for(CROWN), TWO_STROKES, 100.0, 1.0).damage_by_cause
    for cause, strips in {
        "traveling sheave 1": [0, 1, 5, 6],
        "crown sheave 1": [2, 3, 7, 8],
        "drum layer 1": [4, 9],
    }.items():
        expected = paint([TWO_BY_HAND[i] for i in strips], 100.0, 1.0)
        np.testing.assert_allclose(
            by_cause.sel(cause=cause).values, expected, rtol=1e-11, atol=1e-15
        )


# The same, the load taken up from rest at the start of the first stroke, L = 10 m. Weights: pick-up
# 0.5, dead-line sheave 2, anchor 3 bending cycles. The rope then lies on
#   traveling sheave 1   28 … 30, 125 kN        crown sheave 1   16 … 18, 156.25 kN
#   dead-line sheave     47 − 5 − 2 … 47 − 5, 100 kN, and the anchor holds 46 … 47.

WORN = replace(TWO, wear=Wear(pick_up=0.5, dead_line_sheave=2.0, anchor=3.0))
WORN_STROKES = [Stroke(225e3, 0.0, 4.0, pick_up=True), TWO_STROKES[1]]
WORN_BY_HAND = [
    *TWO_BY_HAND,
    (28, 30, 0.5 * 2 * 0.00625),
    (16, 18, 0.5 * 2 * 0.0078125),
    (40, 42, 2 * 2 * 0.005),
    (46, 47, 3 * 2 * 0.005),
]


def test_a_pick_up_in_the_simulation() -> None:
    check_simulation(WORN, WORN_STROKES, WORN_BY_HAND, 1.0, [])


def test_a_pick_up_wears_what_lies_on_the_sheaves() -> None:
    check(WORN, WORN_STROKES, WORN_BY_HAND, 100.0, 1.0)


def test_a_reverse_bend_counts_as_often_as_told() -> None:
    # The crown sheave and the drum bend the rope against the sense before; one bend counts as 3.
    rig = rig_of(TWO, 100.0)
    wear = replace(rig.line.wear, reverse_bend=3.0)
    turned = replace(rig.line, wear=wear, reverse_bends=("crown sheave 1", "drum"))
    history = rw.run_line(
        replace(rig, line=turned),
        campaign_of(TWO_STROKES),
        model=model_of(law_for(CROWN)),
        bin_length="1 m",
        outside_validity="ignore",
    )
    traveling = (0, 1, 5, 6)
    by_hand = [(*s[:2], s[2] * (1 if i in traveling else 3)) for i, s in enumerate(TWO_BY_HAND)]
    expected = paint(by_hand, 100.0, 1.0)
    np.testing.assert_allclose(history.damage.values, expected, rtol=1e-11, atol=1e-15)
    assert history.cycles.values.sum() == pytest.approx(24.0)  # what is counted are bends


# Four lines, the block's sheaves smaller: 1.5 m of rope on half a turn. Dead line 6 m, fast line
# 5 m, 7 m between the blocks at the lowest with 10 m on the drum: the anchor is at 58 m, and the
# rope meets and leaves
#   traveling sheave 1   58 − (6 + 2 + L)         = 50 − L,     48.5 − L
#   crown sheave 1       58 − (6 + 3.5 + 2 L)     = 48.5 − 2 L, 46.5 − 2 L
#   traveling sheave 2   58 − (6 + 5.5 + 3 L)     = 46.5 − 3 L, 45 − 3 L
#   crown sheave 2       58 − (6 + 7 + 4 L)       = 45 − 4 L,   43 − 4 L
#   drum                 58 − (6 + 9 + 4 L + 5)   = 38 − 4 L.
# K = 1.5 and a hook load of 812.5 kN make
#   hoisting   100, 150, 225, 337.5 kN, fast line 506.25
#   lowering   337.5, 225, 150, 100 kN, fast line 66.666….

SMALL = 3 / pi - D
FOUR = Hoist(
    frictions=(1.5,) * 4,
    crown_diameter=CROWN,
    block_diameter=SMALL,
    rope_diameter=D,
    wire_strength=STRENGTH,
    highest=1.0,
    lowest=7.0,
    dead_line=6.0,
    fast_line=5.0,
    drum=Drum(0.75 * CROWN, laps_per_layer=20, layers=3, layer_height=0.03),
    wraps_at_lowest=10 / (pi * (0.75 * CROWN + D)),
)
FOUR_STROKES = [Stroke(812.5e3, 1.0, 3.0), Stroke(812.5e3, 3.0, 0.0)]
BLOCK = CROWN / SMALL
FOUR_BY_HAND: Painted = [
    # Hoisting from L = 6 m to 4 m.
    (44, 46, 0.0075 * BLOCK),  # traveling sheave 1, 150 kN
    (42.5, 44.5, 0.0075 * BLOCK),
    (36.5, 40.5, 0.01125),  # crown sheave 1, 225 kN
    (34.5, 38.5, 0.01125),
    (28.5, 34.5, 0.016875 * BLOCK),  # traveling sheave 2, 337.5 kN
    (27, 33, 0.016875 * BLOCK),
    (21, 29, 0.0253125),  # crown sheave 2, 506.25 kN
    (19, 27, 0.0253125),
    (14, 22, 0.0253125 / 0.75),  # drum
    # Lowering from L = 4 m to 7 m.
    (43, 46, 0.016875 * BLOCK),  # traveling sheave 1, 337.5 kN
    (41.5, 44.5, 0.016875 * BLOCK),
    (34.5, 40.5, 0.01125),  # crown sheave 1, 225 kN
    (32.5, 38.5, 0.01125),
    (25.5, 34.5, 0.0075 * BLOCK),  # traveling sheave 2, 150 kN
    (24, 33, 0.0075 * BLOCK),
    (17, 29, 0.005),  # crown sheave 2, 100 kN
    (15, 27, 0.005),
    (10, 22, 0.005 * (2 / 3) / 0.75),  # drum, 66.666… kN
]


def test_four_lines_in_the_simulation() -> None:
    check_simulation(FOUR, FOUR_STROKES, FOUR_BY_HAND, 0.5, [])


def test_four_lines_on_two_sizes_of_sheaves() -> None:
    history = check(FOUR, FOUR_STROKES, FOUR_BY_HAND, 100.0, 0.5)
    cycles = history.cycles.values
    assert (cycles * 0.5).sum() == pytest.approx((1 + 2 + 3 + 4 + 2) * (2 + 3))
    assert cycles[2 * 28] == pytest.approx(2.5)  # 28 … 28.5: five of the strips above
    assert cycles[2 * 30] == pytest.approx(2.0)


# Six lines without friction, 100 kN in each. All arcs 2 m, dead line 4 m, fast line 6 m, 5 m
# between the blocks at the lowest with 10 m on the drum: the anchor is at 64 m, and the rope meets
# sheave m at 64 − (4 + 2 m + m L) = 60 − 2 m − m L, leaves it 2 m on, and meets the drum at
# 64 − (4 + 7·2 + 6 L + 6) = 40 − 6 L. The drum's first layer is 8 laps of 2.75 m = 22 m.
# After the first stroke 12 m are slipped and cut off at the drum; all places are 12 m on then.

BARREL = 2.75 / pi - D
SIX = Hoist(
    frictions=(1.0,) * 6,
    crown_diameter=CROWN,
    block_diameter=CROWN,
    rope_diameter=D,
    wire_strength=STRENGTH,
    highest=1.0,
    lowest=5.0,
    dead_line=4.0,
    fast_line=6.0,
    drum=Drum(BARREL, laps_per_layer=8, layers=3, layer_height=0.03),
    wraps_at_lowest=10 / 2.75,
)
SIX_STROKES = [Stroke(600e3, 0.0, 4.0, may_stop=True), Stroke(600e3, 4.0, 0.0)]
FIRST, SECOND = 0.005 * CROWN / BARREL, 0.005 * CROWN / (BARREL + 0.06)
SIX_BY_HAND: Painted = [
    # Hoisting from L = 5 m to 1 m.
    *((53, 57, 0.005), (51, 55, 0.005)),  # traveling sheave 1: 58 − L
    *((46, 54, 0.005), (44, 52, 0.005)),  # crown sheave 1: 56 − 2 L
    *((39, 51, 0.005), (37, 49, 0.005)),  # traveling sheave 2: 54 − 3 L
    *((32, 48, 0.005), (30, 46, 0.005)),  # crown sheave 2: 52 − 4 L
    *((25, 45, 0.005), (23, 43, 0.005)),  # traveling sheave 3: 50 − 5 L
    *((18, 42, 0.005), (16, 40, 0.005)),  # crown sheave 3: 48 − 6 L
    *((10, 22, FIRST), (22, 34, SECOND)),  # drum
    # Lowering from L = 1 m to 5 m, 12 m on.
    *((65, 69, 0.005), (63, 67, 0.005)),
    *((58, 66, 0.005), (56, 64, 0.005)),
    *((51, 63, 0.005), (49, 61, 0.005)),
    *((44, 60, 0.005), (42, 58, 0.005)),
    *((37, 57, 0.005), (35, 55, 0.005)),
    *((30, 54, 0.005), (28, 52, 0.005)),
    *((22, 34, FIRST), (34, 46, SECOND)),
]


def test_six_lines_in_the_simulation() -> None:
    check_simulation(SIX, SIX_STROKES, SIX_BY_HAND, 1.0, [Shift(0, 12.0, 12.0)])


def test_six_lines_with_a_slip_and_a_cut() -> None:
    program = rw.SlipCutProgram(slip="12 m", cut="12 m", every="2 MJ")  # a stroke is 2.4 MJ
    history = check(SIX, SIX_STROKES, SIX_BY_HAND, 100.0, 1.0, program=program)
    assert history.anchor_si == pytest.approx(76.0)
    assert history.drum_end_si == pytest.approx(12.0)
    (section,) = history.sections
    assert (section.start_si, section.end_si) == pytest.approx((0.0, 12.0))
    assert section.worst == pytest.approx(FIRST)
    assert section.mean == pytest.approx(FIRST * 2 / 12)


# What cannot be


def test_three_lines_are_refused_with_the_reason() -> None:
    odd = replace(example_rig(), reeving=rw.Reeving(3, 1.04))
    campaign = rw.Campaign.from_strokes(
        hook_load=rw.Q([1e5, 1e5], "N"),
        height_from=rw.Q([0.0, 4.0], "m"),
        height_to=rw.Q([4.0, 2.0], "m"),
    )
    with pytest.raises(InadmissibleError, match="lines.*3.*even"):
        rw.run_line(odd, campaign, model=model_of(law_for(CROWN)), outside_validity="ignore")


@pytest.mark.parametrize(
    ("stroke", "text"),
    [
        (Stroke(225e3, 0.0, 8.1), "height_to.*8.1"),
        (Stroke(225e3, -0.1, 4.0), "height_from.*-0.1"),
        (Stroke(2e6, 0.0, 4.0), "hook_load"),
    ],
    ids=["above the highest", "below the lowest", "stronger than the line"],
)
def test_strokes_that_cannot_be_are_refused(stroke: Stroke, text: str) -> None:
    with pytest.raises(InadmissibleError, match=text):
        run(TWO, law_for(CROWN), [stroke], 100.0, 1.0)


def test_a_slip_longer_than_the_reel_is_refused() -> None:
    program = rw.SlipCutProgram(slip="60 m", cut="60 m", every="0.1 MJ")  # 53 m are on the reel
    stroke = TWO_STROKES[0]._replace(may_stop=True)
    with pytest.raises(InadmissibleError, match="slip = 60 m.*53 m"):
        run(TWO, law_for(CROWN), [stroke, stroke], 100.0, 1.0, program=program)


def test_a_slip_longer_than_what_is_left_ends_the_run() -> None:
    # The second of three strokes asks for 30 m where 23 m are left; the third is not made.
    program = rw.SlipCutProgram(slip="30 m", cut="30 m", every="0.1 MJ")
    stroke = TWO_STROKES[0]._replace(may_stop=True)
    first = TWO_BY_HAND[:5]
    second = [(start + 30, end + 30, damage) for start, end, damage in first]
    history = check(TWO, [stroke] * 3, [*first, *second], 100.0, 1.0, program=program)
    assert history.end == "reel used up"
    assert [one.kind for one in history.events] == ["slip", "cut"]
    assert history.anchor_si == pytest.approx(77.0)


def test_a_reel_too_short_for_the_string_up_is_refused() -> None:
    with pytest.raises(InadmissibleError, match="supply"):
        run(TWO, law_for(CROWN), TWO_STROKES, 46.0, 1.0)
