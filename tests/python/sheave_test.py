"""Sheaves: identities, the printed tables and their refusals, the usual sheaves of a rig."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk.errors import (
    InadmissibleError,
    RowStatus,
    UnitError,
    UnknownEntryError,
    ValidityError,
    ValidityWarning,
)

# Facts of the trade (common practice, no source): drilling line 7/8 in to 2 in, crown sheaves 42 in
# to 72 in, traveling-block sheaves 24 in to 72 in.
DRILLING_LINE = rw.Q(np.arange(7, 17) / 8, "in")
CROWN_SHEAVES = rw.Q([42.0, 48.0, 54.0, 60.0, 66.0, 72.0], "in")
BLOCK_SHEAVES = rw.Q([24.0, 30.0, 36.0, 42.0, 48.0, 54.0, 60.0, 66.0, 72.0], "in")

forces = st.floats(1.0, 5e6)
diameters = st.floats(0.01, 0.08)
ratios = st.floats(5.0, 80.0)


@given(forces, diameters, ratios, st.floats(1e9, 3e9))
def test_pressure_ratio_is_pressure_over_strength(
    force: float, rope: float, ratio: float, strength: float
) -> None:
    pressure = rw.si.sheave.bearing_pressure(force, rope, ratio * rope)
    assert math.isclose(
        rw.si.sheave.bearing_pressure_ratio(force, rope, ratio * rope, strength),
        pressure / strength,
    )
    assert math.isclose(pressure * rope * (ratio * rope), 2 * force)
    assert math.isclose(rw.si.sheave.bend_ratio(ratio * rope, rope), ratio)


@given(forces, diameters, ratios, st.floats(0.1, 10.0))
def test_the_same_sheave_on_another_scale(
    force: float, rope: float, ratio: float, scale: float
) -> None:
    # Force over area: all lengths times s and the force times s² leave the pressure as it was.
    assert math.isclose(
        rw.si.sheave.bearing_pressure(force * scale**2, rope * scale, ratio * rope * scale),
        rw.si.sheave.bearing_pressure(force, rope, ratio * rope),
    )


@given(st.floats(1.0, 40.0), st.floats(1.0, 40.0))
def test_bigger_sheaves_lose_less_strength(one: float, other: float) -> None:
    small, large = sorted((one, other))
    shares = rw.sheave.strength_efficiency([small, large])
    assert 0.5 <= shares[0] <= shares[1] <= 0.95
    # Concave: the share at the middle is at least the mean of the shares at the ends.
    middle = rw.sheave.strength_efficiency((small + large) / 2)
    assert middle >= shares.mean() - 1e-12


def test_strength_efficiency_beyond_its_table() -> None:
    with pytest.raises(ValidityError, match=r"bend_ratio = 45 is outside \[1, 40\]"):
        rw.sheave.strength_efficiency(45)
    with pytest.warns(ValidityWarning, match="block maker"):
        share = rw.sheave.strength_efficiency(45, outside_validity="warn")
    assert share == 0.95  # the last printed share, D/d 40
    shares, status = rw.sheave.strength_efficiency(
        [30, 45], outside_validity="ignore", return_status=True
    )
    assert shares.tolist() == [0.93, 0.95]
    assert status.tolist() == [RowStatus.OK, RowStatus.OUTSIDE_VALIDITY]


@given(diameters)
def test_groove_gauges_keep_their_order(rope: float) -> None:
    gauges = [
        rope / 2,
        rw.si.sheave.groove_radius_worn_min(rope),
        1.05 * rope / 2,  # the largest new rope, API Spec 9A: 5 % over nominal from 8 mm up
        rw.si.sheave.groove_radius_new_min(rope),
        rw.si.sheave.groove_radius_new_max(rope),
        rw.si.sheave.groove_depth_min(rope),
        rw.si.sheave.groove_depth_max(rope),
    ]
    assert gauges == sorted(gauges)
    assert len(set(gauges)) == len(gauges)


def test_every_usual_sheave_is_admitted() -> None:
    for sheaves, smallest in ((CROWN_SHEAVES, 42), (BLOCK_SHEAVES, 24)):
        ratio = rw.sheave.bend_ratio(sheaves[:, None], DRILLING_LINE[None, :])
        assert ratio.shape == (len(sheaves), len(DRILLING_LINE))
        assert ratio.min() == pytest.approx(smallest / 2)
        assert ratio.max() == pytest.approx(72 / 0.875)


def test_condition_b_asks_for_sheaves_that_are_made() -> None:
    for size in DRILLING_LINE:
        assert 24 <= rw.sheave.tread_diameter("6x19S", "B", size).m_as("in") <= 72


# Printed tables


def test_tables_are_found_row_by_row() -> None:
    for row in rw.sheave.table("tread_diameters"):
        advised = rw.sheave.tread_diameter(row["construction"], row["condition"], "1 in")
        assert advised.m_as("in") == pytest.approx(row["factor"], rel=1e-12)
    for row in rw.sheave.table("groove_radii"):
        size = rw.Q(row["rope_diameter [in]"], "in")
        radius = rw.sheave.groove_radius_table(size, row["state"])
        assert radius.m_as("in") == pytest.approx(row["groove_radius [in]"], rel=1e-12)
    for row in rw.sheave.table("bearing_pressure_limits"):
        limit = rw.sheave.bearing_pressure_limit(
            row["groove_material"], row["rope_class"], row["lay"]
        )
        assert limit.m_as("psi") == pytest.approx(row["bearing_pressure_limit [psi]"], rel=1e-12)
    for row in rw.sheave.table("strength_efficiency"):
        share = rw.sheave.strength_efficiency(row["bend_ratio"])
        assert share == pytest.approx(row["strength_efficiency [%]"] / 100, rel=1e-12)


@pytest.mark.parametrize(
    "name",
    ["bearing_pressure_limits", "groove_radii", "strength_efficiency", "tread_diameters"],
)
def test_every_printed_value_has_a_source_and_a_standing(name: str) -> None:
    for row in rw.sheave.table(name):
        assert row["standing"] in {"published", "from memory"}
        assert len(row["source"].split()) > 3  # a citation, not a key


def test_a_table_of_another_subject_is_not_here() -> None:
    with pytest.raises(UnknownEntryError, match="groove_radii"):
        rw.sheave.table("ropes")


@pytest.mark.parametrize(
    ("call", "error", "part"),
    [
        (lambda: rw.sheave.tread_diameter("6x19S", "C", "1 in"), UnknownEntryError, "A, B"),
        (lambda: rw.sheave.tread_diameter("6x20", "A", "1 in"), UnknownEntryError, "6x19S"),
        (lambda: rw.sheave.tread_diameter("6x19S", "A", 1), UnitError, "rope_diameter"),
        (lambda: rw.sheave.tread_diameter("6x19S", "A", "2 m"), InadmissibleError, r"\(0, 1\] m"),
        (lambda: rw.sheave.tread_diameter(6, "A", "1 in"), UnitError, "construction"),
        (
            lambda: rw.sheave.bearing_pressure_limit("bronze", "6x19", "lang"),
            UnknownEntryError,
            "cast iron",
        ),
        (
            lambda: rw.sheave.bearing_pressure_limit("cast iron", "8x19", "lang"),
            UnknownEntryError,
            "6x7, 6x19, 6x37",
        ),
        (
            lambda: rw.sheave.bearing_pressure_limit("cast iron", "6x19", None),  # type: ignore[arg-type]
            UnitError,
            "lay must be text",
        ),
        (lambda: rw.sheave.groove_radius_table("1.3 in"), UnknownEntryError, "nearest sizes"),
        (
            lambda: rw.sheave.groove_radius_table("1 in", "used"),  # type: ignore[arg-type]
            UnknownEntryError,
            "worn, new",
        ),
        (lambda: rw.sheave.bend_ratio("1 in", "1.25 in"), InadmissibleError, "at least"),
    ],
)
def test_refusals_say_what_there_is(call: Any, error: type[Exception], part: str) -> None:
    with pytest.raises(error, match=part):
        call()


def test_a_core_behind_a_construction_is_passed_over() -> None:
    bare = rw.sheave.tread_diameter("6x25FW", "A", "1 in")
    for name in ("6x25FW IWRC", "6x25fw fc", "6x25 filler"):
        assert rw.sheave.tread_diameter(name, "A", "1 in") == bare


def test_an_example_against_the_printed_limits() -> None:
    # 2 x 30,000 lbf / (1.25 in x 50 in) = 960 psi, between the 900 and 1000 psi of the row cast
    # steel, class 6x19, regular and lang lay (Shigley, Table 17-26).
    pressure = rw.sheave.bearing_pressure("30000 lbf", "1.25 in", "50 in")
    assert pressure > rw.sheave.bearing_pressure_limit("cast steel", "6x19", "regular")
    assert pressure < rw.sheave.bearing_pressure_limit("cast steel", "6x19", "lang")
