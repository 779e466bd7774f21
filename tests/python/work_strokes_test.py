"""Work of the line stroke by stroke, and what ties it to the closed forms."""

from __future__ import annotations

import copy
import math
import pickle
from typing import Any

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from work_strings import DEPTHS, RABIA, STRING, strings

import ropewalk as rw
from ropewalk.errors import InadmissibleError, UnitError
from ropewalk.testing import assert_close
from ropewalk.work import Strokes

si = rw.si.work

STANDS = st.integers(1, 300)


def strokes_of_round_trip(depth: float, string: tuple[float, float, float, float]) -> float:
    total = 0.0
    for way in ((depth, 0.0), (0.0, depth)):
        _, up, down, travel = si.trip_strokes(*way, *string)
        total += math.fsum((up + down) * travel)
    return total


@given(STANDS, strings())
def test_whole_stands_give_the_closed_form(
    stands: int, string: tuple[float, float, float, float]
) -> None:
    depth = stands * string[0]
    assume(depth <= 20_000)
    expected = si.round_trip(depth, *string)
    assert strokes_of_round_trip(depth, string) == pytest.approx(expected, rel=1e-12)


@given(STANDS, st.floats(0.01, 0.99), strings())
def test_a_part_of_a_stand_gives_what_it_lacks(
    stands: int, part: float, string: tuple[float, float, float, float]
) -> None:
    # The formula exceeds the strokes by W r (L − r), r the part: from Σ x_k s_k by hand.
    stand, weight, _, _ = string
    rest = part * stand
    depth = stands * stand + rest
    assume(depth <= 20_000)
    closed = si.round_trip(depth, *string)
    lack = weight * rest * (stand - rest)
    assert strokes_of_round_trip(depth, string) + lack == pytest.approx(closed, rel=1e-9)


@given(STANDS, DEPTHS, strings())
def test_between_two_depths_whole_stands_give_the_short_trip(
    stands: int, shallow: float, string: tuple[float, float, float, float]
) -> None:
    deep = shallow + stands * string[0]
    assume(deep <= 20_000)
    depth, up, down, travel = si.trip_strokes(deep, shallow, *string)
    assert len(depth) == stands
    expected = si.short_trip(shallow, deep, *string)
    assert 2 * math.fsum((up + down) * travel) == pytest.approx(expected, rel=1e-9)


@given(STANDS, strings())
def test_whole_joints_give_the_work_of_casing(
    joints: int, string: tuple[float, float, float, float]
) -> None:
    joint, weight, _, block = string
    depth = joints * joint
    assume(depth <= 20_000)
    _, up, down, travel = si.casing_strokes(depth, joint, weight, block)
    expected = si.casing(depth, joint, weight, block)
    assert math.fsum((up + down) * travel) == pytest.approx(expected, rel=1e-12)


@given(DEPTHS, st.floats(1, 500), strings())
def test_the_block_travels_the_way_of_the_bit(
    shallow: float, way: float, string: tuple[float, float, float, float]
) -> None:
    out = si.trip_strokes(shallow + way, shallow, *string)
    back = si.trip_strokes(shallow, shallow + way, *string)
    assert math.fsum(out[3]) == pytest.approx(way)
    for one, other in zip(out, (back[0], back[2], back[1], back[3]), strict=True):
        np.testing.assert_array_equal(one, other[::-1])


@given(st.integers(1, 40), DEPTHS, strings())
def test_with_a_kelly_the_published_factors_are_on_the_safe_side(
    joints: int, start: float, string: tuple[float, float, float, float]
) -> None:
    joint, weight, excess, block = string
    end = start + joints * joint
    assume(start >= 3 * joint)
    for ream, passes in ((True, 3), (False, 2)):
        _, up, down, travel = si.kelly_strokes(
            start, end, *string, kelly_weight=weight * joint, ream=ream
        )
        work = math.fsum((up + down) * travel)
        assert work <= si.drilling(start, end, joint, weight, excess, block, passes) * (1 + 1e-12)
        assert len(travel) == (4 if ream else 3) * joints


@given(st.integers(1, 40), DEPTHS, strings())
def test_a_top_drive_drills_down_at_half_the_round_trips(
    stands: int, start: float, string: tuple[float, float, float, float]
) -> None:
    end = start + stands * string[0]
    _, up, down, travel = si.top_drive_strokes(start, end, *string)
    expected = si.short_trip(start, end, *string) / 2
    assert math.fsum((up + down) * travel) == pytest.approx(expected, rel=1e-9)


@given(st.floats(1, 500), strings())
def test_a_bha_of_known_length_never_adds_work(
    bha_length: float, string: tuple[float, float, float, float]
) -> None:
    published = si.trip_strokes(1000.0, 0.0, *string)
    real = si.trip_strokes(1000.0, 0.0, *string, bha_length=bha_length)
    assert (real[1] <= published[1]).all()
    full = published[0] >= bha_length
    np.testing.assert_array_equal(real[1][full], published[1][full])


def test_strokes_carry_the_loads_of_the_string() -> None:
    string = rw.DrillString(
        [
            rw.drillstring.Section("drill collars", "150 m", "220 kg/m"),
            rw.drillstring.Section("drill pipe", "2850 m", "31 kg/m"),
        ],
        mud_density="1200 kg/m**3",
    )
    out = rw.work.trip_strokes(
        string.length,
        "0 m",
        "28 m",
        string.pipe_weight,
        string.bha_excess_weight,
        "200 kN",
        bha_length=string.bha_length,
    )
    assert_close(out.load_up, string.hook_load("rotating", out.depth, block_weight="200 kN"))
    assert_close(out.load_down, rw.Q(np.full(len(out), 200.0), "kN"))


def test_strokes_as_quantities() -> None:
    out = rw.work.trip_strokes("9300 ft", "0 ft", *RABIA)
    back = rw.work.trip_strokes("0 ft", "9300 ft", *RABIA)
    trip = out + back
    assert len(trip) == 200
    assert_close(trip.work, rw.work.round_trip("9300 ft", *RABIA), relative=1e-12)
    assert_close(trip.work_by_stroke.sum(), trip.work)
    assert_close(trip.work_by_stroke, (trip.load_up + trip.load_down) * trip.travel)
    assert_close(trip.depth[0], "9300 ft")
    assert repr(out).startswith("<Strokes: 100 strokes, ")


def test_strokes_are_values() -> None:
    one = rw.work.casing_strokes("500 m", "12 m", "500 N/m", "200 kN")
    assert one == rw.work.casing_strokes("500 m", "12 m", "500 N/m", "200 kN")
    assert one != rw.work.casing_strokes("500 m", "12 m", "501 N/m", "200 kN")
    assert one != "strokes"
    assert pickle.loads(pickle.dumps(one)) == one == copy.deepcopy(one)
    assert isinstance(one + one, Strokes)
    with pytest.raises(TypeError):
        one + 1  # type: ignore[operator]
    with pytest.raises(ValueError, match="read-only"):
        one.travel_si[0] = 0.0


def test_no_way_no_strokes() -> None:
    none = rw.work.trip_strokes("500 m", "500 m", *STRING)
    assert len(none) == 0
    assert_close(none.work, "0 J", absolute="1e-9 J")


# What cannot be


@pytest.mark.parametrize(
    ("call", "text"),
    [
        (
            lambda: rw.work.kelly_strokes("200 m", "100 m", *STRING, kelly_weight="20 kN"),
            "depth_to must be at least",
        ),
        (
            lambda: rw.work.trip_strokes("500 m", "0 m", "1e-3 mm", *STRING[1:]),
            "more than 100,000 strokes",
        ),
        (
            lambda: rw.work.trip_strokes("50 m", "0 m", "28 m", "1 N/m", "-1 MN", "0 N"),
            "less than nothing on the lines",
        ),
        (
            lambda: rw.work.kelly_strokes(
                "100 m", "200 m", *STRING, kelly_weight="20 kN", weight_on_bit="10 MN"
            ),
            "weight_on_bit = 1e\\+07 N leaves less than nothing",
        ),
        (lambda: rw.work.top_drive_strokes("1 m", "9 m", *STRING, reams=-1), "reams = -1"),
        (lambda: rw.work.top_drive_strokes("1 m", "9 m", *STRING, reams=1.5), "whole number"),
    ],
    ids=["upside down", "too many", "slack", "weight on bit", "reams", "half a ream"],
)
def test_what_cannot_be_is_refused(call: Any, text: str) -> None:
    with pytest.raises(InadmissibleError, match=text):
        call()


def test_pipe_in_pounds_per_foot_is_a_mass() -> None:
    with pytest.raises(UnitError, match="pipe_weight must be a force per length"):
        rw.work.trip_strokes("500 m", "0 m", "28 m", "16.5 lb/ft", "0 N", "0 N")


def test_the_core_refuses_units_by_name() -> None:
    with pytest.raises(UnitError, match="stand_length must be a plain number"):
        si.trip_strokes(500.0, 0.0, rw.Q(28, "m"), 1.0, 1.0, 1.0)
