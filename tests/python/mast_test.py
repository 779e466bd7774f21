"""Masts: equilibrium of the legs, the textbook layout, ratings, refusals, the picture."""

from __future__ import annotations

import copy
import math
import pickle
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from matplotlib.figure import Figure

import ropewalk as rw
from ropewalk import plot
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError
from ropewalk.mast import Mast
from ropewalk.testing import assert_close

shares = st.floats(-1.0, 1.0)


@st.composite
def masts(draw: Any) -> Mast:
    """Masts of any base with the lines anywhere on it."""
    width, depth = draw(st.floats(2.0, 20.0)), draw(st.floats(2.0, 20.0))
    places = [
        (rw.Q(draw(shares) * width / 2, "m"), rw.Q(draw(shares) * depth / 2, "m")) for _ in range(2)
    ]
    return Mast(rw.Q(width, "m"), places[0], places[1], rw.Q(depth, "m"))


@st.composite
def reevings(draw: Any) -> rw.Reeving:
    return rw.Reeving(
        draw(st.integers(2, 16)), draw(st.floats(1.0, 1.2)), lead_sheaves=draw(st.integers(0, 2))
    )


motions = st.sampled_from(["static", "hoisting", "lowering"])


def corners(mast: Mast) -> np.ndarray[Any, Any]:
    """Places of legs A, B, C, D: front left and right, back right and left."""
    x, y = mast.base_width_si / 2, mast.base_depth_si / 2
    return np.array([(-x, -y), (x, -y), (x, y), (-x, y)])


# Identities


@given(masts(), reevings(), motions, st.floats(1e4, 5e6))
def test_the_legs_bear_the_crown_load(
    mast: Mast, reeving: rw.Reeving, motion: Any, load: float
) -> None:
    hook_load = rw.Q(load, "N")
    loads = mast.leg_loads(hook_load, reeving, motion)
    crown = reeving.tensions(hook_load, motion).crown_load
    assert_close(loads.total, crown, relative=1e-12)
    assert 0.0 < loads.efficiency_factor <= 1.0 + 1e-12
    assert_close(loads.equivalent_load, 4.0 * loads.largest)


@given(masts(), reevings(), motions)
def test_the_legs_balance_the_moments(mast: Mast, reeving: rw.Reeving, motion: Any) -> None:
    hook_load = rw.Q(1.0, "MN")
    loads = mast.leg_loads(hook_load, reeving, motion)
    tensions = reeving.tensions(hook_load, motion)
    dead = tensions.dead_line_si if reeving.lines % 2 == 0 else 0.0
    pulled = dead * np.array(mast.dead_line_si)
    pulled += tensions.fast_line_at_crown_si * np.array(mast.fast_line_si)
    np.testing.assert_allclose(loads.legs_si @ corners(mast), pulled, atol=1e-6)


@given(masts())
def test_no_leg_is_lifted_by_a_line_over_the_base(mast: Mast) -> None:
    for line in (mast.dead_line_shares, mast.fast_line_shares):
        assert min(line) >= -1e-15
        assert sum(line) == pytest.approx(1.0, abs=1e-14)


@given(masts(), st.floats(1.0, 1.3))
def test_mirrored_lines_load_mirrored_legs(mast: Mast, friction: float) -> None:
    def mirrored(place: tuple[float, float]) -> Any:
        return (rw.Q(-place[0], "m"), rw.Q(place[1], "m"))

    twin = Mast(
        rw.Q(mast.base_width_si, "m"),
        mirrored(mast.dead_line_si),
        mirrored(mast.fast_line_si),
        rw.Q(mast.base_depth_si, "m"),
    )
    reeving = rw.Reeving(10, friction)
    one = mast.leg_loads("400 kip", reeving).legs_si
    other = twin.leg_loads("400 kip", reeving).legs_si
    np.testing.assert_allclose(other, one[[1, 0, 3, 2]], rtol=1e-12)  # A ↔ B, C ↔ D


def test_lines_in_the_middle_load_all_legs_alike() -> None:
    loads = Mast("30 ft", "center", "center").leg_loads("400 kip", rw.Reeving(10, 1.04))
    assert loads.efficiency_factor == pytest.approx(1.0, abs=1e-15)


@given(st.sampled_from([6, 8, 10, 12, 14]), st.floats(0.3, 1.0), st.floats(1e4, 1e7))
def test_the_textbook_formulas_are_its_layout(lines: int, efficiency: float, load: float) -> None:
    mast = Mast("30 ft", "A", "CD")
    hook_load = rw.Q(load, "N")
    loads = mast.leg_loads_at_efficiency(hook_load, lines, efficiency)
    assert_close(loads.total, rw.mast.derrick_load(hook_load, lines, efficiency))
    assert_close(loads.equivalent_load, rw.mast.equivalent_load(hook_load, lines, efficiency))
    assert loads.efficiency_factor == pytest.approx(rw.mast.efficiency_factor(lines, efficiency))


lines_strung = st.sampled_from([2, 6, 8, 10, 12, 14])


@given(masts(), lines_strung, lines_strung)
def test_a_rating_at_other_lines_overloads_nothing(mast: Mast, rated: int, lines: int) -> None:
    rating = rw.mast.rating_at_lines("1000 kip", rated, lines, mast.largest_share)
    as_rated = mast.leg_loads("1000 kip", rw.Reeving(rated, 1.0), "static")
    as_strung = mast.leg_loads(rating, rw.Reeving(lines, 1.0), "static")
    assert np.all(as_strung.legs_si <= as_rated.legs_si.max() * (1.0 + 1e-12))
    assert as_strung.total <= as_rated.total * (1.0 + 1e-12)
    if lines < rated:
        assert_close(as_strung.largest, as_rated.largest)
        assert rating < rw.Q(1000.0, "kip")
    else:
        assert_close(rating, "1000 kip")


def test_friction_spreads_the_three_states_about_rest() -> None:
    reeving = rw.Reeving(8, 1.04)
    mast = Mast("30 ft", "A", "CD")
    totals = [
        mast.leg_loads("300 kip", reeving, motion).total.m_as("kip")
        for motion in ("lowering", "static", "hoisting")
    ]
    assert totals == sorted(totals)
    assert_close(rw.reeving.lowering_crown_load("300 kip", 8, 1.04), rw.Q(totals[0], "kip"))
    assert_close(rw.reeving.crown_load("300 kip", 8, 1.04), rw.Q(totals[2], "kip"))


# Published numbers


def test_a_dead_line_between_two_legs_gives_each_half() -> None:
    # Lyons (1996), p. 506: extra load W/n at a leg, W/2n between two.
    reeving = rw.Reeving(10, 1.0)
    for place, legs in (("A", 1), ("AB", 2)):
        loads = Mast("30 ft", place, "CD").leg_loads("400 kip", reeving)
        extra = rw.mast.extra_leg_load("400 kip", 10, legs)
        assert_close(loads.legs[0], rw.Q(100.0, "kip") + extra)


# The object


def test_a_mast_is_plain_data() -> None:
    mast = Mast("25 ft", "AD", ("2 ft", "9 ft"), "21 ft")
    for twin in (
        pickle.loads(pickle.dumps(mast)),
        copy.deepcopy(mast),
        eval(repr(mast), {"Mast": Mast}),
    ):
        assert twin == mast
        assert hash(twin) == hash(mast)
    assert Mast("30 ft", "A", "CD").base_depth_si == Mast("30 ft", "A", "CD").base_width_si


def test_many_hook_loads_give_many_rows() -> None:
    mast, reeving = Mast("30 ft", "A", "CD"), rw.Reeving(10, "roller")
    loads = rw.Q([100.0, 250.0, 400.0], "kip")
    many = mast.leg_loads(loads, reeving, crown_block_weight="10 kip")
    assert many.legs.shape == (3, 4)
    assert many.total.shape == many.efficiency_factor.shape == (3,)
    assert list(many.governing_leg) == ["A", "A", "A"]
    for i, load in enumerate(loads):
        one = mast.leg_loads(load, reeving, crown_block_weight="10 kip")
        assert_close(one.legs, many.legs[i])
        assert one.governing_leg == "A"
        assert type(one.governing_leg) is str


def test_what_else_bears_on_the_legs_is_added() -> None:
    mast, reeving = Mast("30 ft", "A", "CD"), rw.Reeving(10, "roller")
    bare = mast.leg_loads("400 kip", reeving)
    wind = rw.Q([-20.0, 20.0, 20.0, -20.0], "kip")
    blown = mast.leg_loads("400 kip", reeving, crown_block_weight="8 kip", on_legs=wind)
    assert_close(blown.legs, bare.legs + rw.Q(2.0, "kip") + wind)
    assert_close(blown.total, bare.total + rw.Q(8.0, "kip"))


def test_uplift_is_a_finding() -> None:
    mast, reeving = Mast("30 ft", "A", "CD"), rw.Reeving(10, 1.0)
    wind = rw.Q([-30.0, 30.0, 30.0, -30.0], "kip")
    loads = rw.Q([0.0, 50.0, 400.0], "kip")
    many = mast.leg_loads(loads, reeving, "static", on_legs=wind)
    # Under 50 kip, legs A and D press with 12.5 + 5 and 12.5 + 2.5 kip, less than the wind lifts.
    lifted = [[True, False, False, True], [True, False, False, True], [False] * 4]
    assert many.uplifted.tolist() == lifted
    # Total 60 kip; most on leg C, 12.5 + 2.5 + 30 kip.
    assert many.efficiency_factor[1] == pytest.approx(60.0 / (4.0 * 45.0))
    assert not mast.leg_loads(loads, reeving, "static").uplifted.any()
    # Wind on a mast without load: what one side is pressed, the other is lifted.
    assert many.efficiency_factor[0] == pytest.approx(0.0, abs=1e-15)


def test_legs_that_bear_nothing_have_no_efficiency_factor() -> None:
    mast, reeving = Mast("30 ft", "A", "CD"), rw.Reeving(10, 1.0)
    idle = mast.leg_loads("0 kip", reeving)
    assert idle.bears_most.all()
    assert not idle.uplifted.any()
    lifted = mast.leg_loads("0 kip", reeving, on_legs=rw.Q([-4.0, -3.0, -2.0, -1.0], "kip"))
    assert lifted.uplifted.all()
    assert lifted.governing_leg == "D"
    assert lifted.bears_most.tolist() == [False, False, False, True]
    for loads in (idle, lifted):
        with pytest.raises(InadmissibleError, match="no leg bears anything") as caught:
            _ = loads.efficiency_factor
        assert caught.value.field == "legs"
    some = mast.leg_loads(rw.Q([100.0, 0.0], "kip"), reeving)
    with pytest.raises(InadmissibleError, match="row 1 of 2"):
        _ = some.efficiency_factor


def test_an_odd_number_of_lines_pulls_no_anchor() -> None:
    loads = Mast("30 ft", "A", "CD").leg_loads("300 kip", rw.Reeving(9, 1.04))
    assert loads.dead_line_si == 0.0
    assert_close(loads.legs[0], "75 kip")


@pytest.mark.parametrize(
    "call",
    [
        lambda n: rw.mast.derrick_load("300 kip", n, 0.8),
        lambda n: rw.mast.static_derrick_load("300 kip", n),
        lambda n: rw.mast.equivalent_load("300 kip", n, 0.8),
        lambda n: rw.mast.efficiency_factor(n, 0.8),
        lambda n: rw.mast.extra_leg_load("300 kip", n, 1),
        lambda n: rw.mast.rating_at_lines("300 kip", n, 10, 1.0),
        lambda n: rw.mast.rating_at_lines("300 kip", 10, n, 1.0),
        lambda n: Mast("30 ft", "A", "CD").leg_loads_at_efficiency("300 kip", n, 0.8),
    ],
)
@pytest.mark.parametrize("lines", [3, 9, [10, 9]])
def test_an_odd_number_of_lines_is_refused_where_the_dead_line_counts(
    call: Any, lines: Any
) -> None:
    with pytest.raises(InadmissibleError, match="lines must be even"):
        call(lines)


@pytest.mark.parametrize(
    ("change", "field", "error"),
    [
        ({"base_width": 30}, "base_width", UnitError),
        ({"base_width": "0 ft"}, "base_width", InadmissibleError),
        ({"base_width": rw.Q([20.0, 30.0], "ft")}, "base_width", UnitError),
        ({"base_depth": "-1 ft"}, "base_depth", InadmissibleError),
        ({"dead_line": "E"}, "dead_line", UnknownEntryError),
        ({"dead_line": 3}, "dead_line", UnitError),
        ({"dead_line": ("1 ft",)}, "dead_line", UnitError),
        ({"dead_line": ("16 ft", "0 ft")}, "dead_line", InadmissibleError),
        ({"fast_line": ("0 ft", 15)}, "fast_line", UnitError),
        ({"fast_line": ("0 ft", "-15.1 ft")}, "fast_line", InadmissibleError),
        ({"fast_line": (rw.Q(math.nan, "ft"), "1 ft")}, "fast_line", InadmissibleError),
    ],
)
def test_what_cannot_be_is_refused_by_field(
    change: dict[str, Any], field: str, error: type[rw.RopewalkError]
) -> None:
    with pytest.raises(error) as caught:
        Mast(**{"base_width": "30 ft", "dead_line": "A", "fast_line": "CD", **change})
    assert caught.value.field == field


def test_wrong_loads_are_refused() -> None:
    mast, reeving = Mast("30 ft", "A", "CD"), rw.Reeving(10, "roller")
    for change in (
        {"on_legs": rw.Q([1.0, 2.0], "kip")},
        {"on_legs": rw.Q([1.0, 2.0, math.nan, 3.0], "kip")},
        {"crown_block_weight": "-1 lbf"},
        {"hook_load": "-1 kip"},
    ):
        with pytest.raises(InadmissibleError):
            mast.leg_loads(**{"hook_load": "400 kip", "reeving": reeving, **change})
    with pytest.raises(UnitError):
        mast.leg_loads("400 kip", reeving, crown_block_weight=8)
    with pytest.raises(InadmissibleError):
        mast.leg_loads_at_efficiency("400 kip", 10, 1.1)


# The picture


def test_the_picture_has_every_leg_and_the_line_places() -> None:
    mast = Mast("30 ft", "A", ("3 ft", "15 ft"))
    loads = mast.leg_loads("400 kip", rw.Reeving(10, "roller"))
    ax = Figure().subplots()
    assert plot.leg_loads(ax, mast, loads) is ax
    texts = [text.get_text() for text in ax.texts]
    for name, load in zip("ABCD", loads.legs.m_as("kip"), strict=True):
        assert f"{name}: {load:.1f} kip" in texts
    marks = {line.get_label().split(",")[0]: line.get_xydata()[0] for line in ax.get_lines()}
    np.testing.assert_allclose(marks["dead line"], [-15.0, -15.0])
    np.testing.assert_allclose(marks["fast line"], [3.0, 15.0])
    # Disks have areas as the loads are.
    radii = np.array([patch.radius for patch in ax.patches if hasattr(patch, "radius")])
    np.testing.assert_allclose((radii / radii.max()) ** 2, loads.legs_si / loads.legs_si.max())
    many = mast.leg_loads(rw.Q([1.0, 2.0], "kip"), rw.Reeving(10, "roller"))
    with pytest.raises(InadmissibleError):
        plot.leg_loads(ax, mast, many)


def test_the_picture_shows_uplift() -> None:
    mast = Mast("30 ft", "A", "CD")
    wind = rw.Q([-60.0, 30.0, 30.0, -30.0], "kip")
    loads = mast.leg_loads("50 kip", rw.Reeving(10, "roller"), on_legs=wind)
    ax = plot.leg_loads(Figure().subplots(), mast, loads)
    assert [text.get_text().endswith(", uplift") for text in ax.texts[:4]] == [
        True,
        False,
        False,
        True,
    ]
    disks = [patch for patch in ax.patches if hasattr(patch, "radius")]
    sizes = np.array([disk.radius**2 for disk in disks])
    np.testing.assert_allclose(sizes / sizes[2], np.abs(loads.legs_si) / loads.legs_si[2])
    assert [disk.get_linestyle() for disk in disks] == ["--", "-", "-", "--"]
