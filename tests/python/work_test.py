"""Work of the line by the closed forms: identities, limits, published examples."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from work_strings import DEPTHS, RABIA, STRING, strings

import ropewalk as rw
from ropewalk.errors import InadmissibleError
from ropewalk.testing import assert_close

si = rw.si.work


# Closed forms: identities and limits


@given(DEPTHS, strings())
def test_a_round_trip_is_the_form_api_rp_9b_prints(
    depth: float, string: tuple[float, float, float, float]
) -> None:
    foot, pound = 0.3048, 4.4482216152605
    stand, pipe, excess, block = (
        value / unit for value, unit in zip(string, (foot, pound / foot, pound, pound), strict=True)
    )
    d = depth / foot
    printed = d * (stand + d) * pipe / 10_560_000 + d * (block + excess / 2) / 2_640_000
    assert si.round_trip(depth, *string) == pytest.approx(printed * 10_560_000 * foot * pound)


@given(st.lists(DEPTHS, min_size=3, max_size=3), strings())
def test_short_trips_add_up(depths: list[float], string: tuple[float, float, float, float]) -> None:
    a, b, c = sorted(depths)
    parts = si.short_trip(a, b, *string) + si.short_trip(b, c, *string)
    assert parts == pytest.approx(si.short_trip(a, c, *string), rel=1e-12)
    difference = si.round_trip(c, *string) - si.round_trip(a, *string)
    assert difference == pytest.approx(
        si.short_trip(a, c, *string), rel=1e-9, abs=1e-9 * si.round_trip(c, *string)
    )


@given(DEPTHS, DEPTHS, strings())
def test_drilling_and_coring_are_multiples_of_the_short_trip(
    one: float, other: float, string: tuple[float, float, float, float]
) -> None:
    between = (*sorted((one, other)), *string)
    short = si.short_trip(*between)
    assert si.drilling(*between, 3) == pytest.approx(3 * short)
    assert si.coring(*between) == pytest.approx(si.drilling(*between, 2))


@given(DEPTHS, strings())
def test_casing_is_half_a_round_trip_without_bha(
    depth: float, string: tuple[float, float, float, float]
) -> None:
    joint, weight, _, block = string
    whole = si.round_trip(depth, joint, weight, 0.0, block)
    assert 2 * si.casing(depth, joint, weight, block) == pytest.approx(whole)


@given(DEPTHS, strings())
def test_without_pipe_the_block_alone_makes_the_trip(
    depth: float, string: tuple[float, float, float, float]
) -> None:
    stand, _, _, block = string
    assert si.round_trip(depth, stand, 0.0, 0.0, block) == pytest.approx(4 * depth * block)


def test_work_of_many_wells_at_once() -> None:
    depths = rw.Q([4000.0, 4600.0], "ft")
    both = rw.work.round_trip(depths, *STRING)
    assert_close(both[1], rw.work.round_trip("4600 ft", *STRING))


# Published examples


def test_a_ton_mile_in_megajoules() -> None:
    # 14.3 MJ: Shell Well Engineers Notebook, ed. 2 (2001).
    work = rw.work.lift("2000 lbf", "5280 ft")
    assert_close(work, "1 ton_mile", relative=1e-12)
    assert_close(work, "14.3 MJ", absolute="0.05 MJ")


def test_round_trip_from_the_string_itself() -> None:
    # Lapeyrouse (2002), p. 44: the whole example, from tubes and mud to 53.7 ton-miles.
    string = rw.DrillString(
        [
            rw.drillstring.Section("drill collars", "300 ft", "83 lb/ft"),
            rw.drillstring.Section("drill pipe", "3700 ft", "13.3 lb/ft"),
        ],
        mud_density="9.6 ppg",
        steel_density="65.5 ppg",
    )
    work = rw.work.round_trip(
        string.length, "60 ft", string.pipe_weight, string.bha_excess_weight, "15000 lbf"
    )
    assert_close(work, "53.7 ton_mile", absolute="0.05 ton_mile")


def test_rabias_round_trip_in_both_units() -> None:
    # From memory; 5,033 MJ is 351.6 ton-miles at a conversion rounded to 14.3 and some: 0.1 %.
    work = rw.work.round_trip("10000 ft", *RABIA)
    assert_close(work, "351.6 ton_mile", absolute="0.05 ton_mile")
    assert_close(work, "5033 MJ", relative=1e-3)


# What cannot be


def test_upside_down_is_refused() -> None:
    with pytest.raises(InadmissibleError, match="depth_to must be at least"):
        rw.work.short_trip("5000 ft", "4000 ft", *STRING)
