"""Blocks, hook, links, elevators: ratings, margins of the load path, wear, tables, the picture."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from matplotlib.figure import Figure

import ropewalk as rw
from ropewalk import plot
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError
from ropewalk.suspension import Part, Suspension
from ropewalk.testing import assert_close

TEN_LINES = rw.Reeving(10, "roller")


def usual() -> list[Part]:
    """Parts of usual sizes; invented."""
    return [
        Part("traveling block", "350 short_ton_force", "14 kip"),
        Part("hook", "350 short_ton_force", "6 kip"),
        Part("links", "350 short_ton_force", "1.2 kip"),
        Part("elevator", "250 short_ton_force", "0.8 kip"),
    ]


@st.composite
def suspensions(draw: Any) -> Suspension:
    parts = [
        Part(
            f"part {i}",
            rw.Q(draw(st.floats(1e5, 1e7)), "N"),
            rw.Q(draw(st.floats(0.0, 1e5)), "N"),
        )
        for i in range(draw(st.integers(1, 6)))
    ]
    rating = st.none() | st.floats(1e5, 1e7).map(lambda newton: rw.Q(newton, "N"))
    return Suspension(
        parts, crown_block=draw(rating), mast=draw(rating), line=draw(rating.map(_tenth))
    )


def _tenth(force: Any) -> Any:
    return None if force is None else 0.1 * force


motions = st.sampled_from(["static", "hoisting", "lowering"])


# Identities


@given(suspensions(), motions, st.floats(1.0, 50.0))
def test_margins_add_up_and_the_weakest_comes_first(
    suspension: Suspension, motion: Any, share: float
) -> None:
    hook_load = share * suspension.weight + rw.Q(1.0, "kN")
    margins = suspension.margins(hook_load, TEN_LINES, motion)
    np.testing.assert_allclose(margins.load_si + margins.margin_si, margins.rating_si, rtol=1e-12)
    np.testing.assert_allclose(margins.utilization, margins.load_si / margins.rating_si)
    weakest = margins.names.index(margins.weakest)
    assert margins.hook_load_at_rating_si[weakest] == margins.hook_load_at_rating_si.min()
    beyond = hook_load > margins.largest_hook_load
    assert bool(margins.overloaded) == bool(beyond)


@given(suspensions(), motions)
def test_at_the_largest_hook_load_only_the_weakest_has_no_margin(
    suspension: Suspension, motion: Any
) -> None:
    largest = suspension.margins("10 MN", TEN_LINES, motion).largest_hook_load
    if largest < suspension.weight:
        return
    margins = suspension.margins(largest, TEN_LINES, motion)
    index = margins.names.index(margins.weakest)
    assert margins.margin_si[index] == pytest.approx(0.0, abs=1e-6 * margins.rating_si[index])
    assert np.all(margins.margin_si >= -1e-6 * margins.rating_si)


@given(suspensions())
def test_the_pipe_carries_what_is_left_below_the_last_part(suspension: Suspension) -> None:
    margins = suspension.margins("20 MN", TEN_LINES)
    last = suspension.hanging[-1]
    below = margins.load_si[-1] - last.weight_si
    assert below == pytest.approx(20e6 - suspension.weight.m_as("N"), rel=1e-12)
    first = len(margins.names) - len(suspension.hanging)
    assert margins.load_si[first] == 20e6  # the traveling block carries the hook load


def test_crown_and_line_see_the_reeving() -> None:
    suspension = Suspension(
        usual(), crown_block="500 short_ton_force", mast="1000 kip", line="60 kip"
    )
    for motion in ("static", "hoisting", "lowering"):
        margins = suspension.margins("400 kip", TEN_LINES, motion)  # type: ignore[arg-type]
        tensions = TEN_LINES.tensions("400 kip", motion)  # type: ignore[arg-type]
        assert margins.names[:3] == ("mast", "crown block", "drilling line")
        assert_close(margins.load[0], "400 kip")
        assert_close(margins.load[1], tensions.crown_load)
        ends = (tensions.fast_line_si, tensions.dead_line_si)
        assert margins.load_si[2] == pytest.approx(max(*ends, tensions.lines_si.max()))
    static = suspension.margins("400 kip", TEN_LINES, "static")
    assert_close(static.load[1], "480 kip")
    assert_close(static.load[2], "40 kip")
    # Lowering, the dead end has W K^9 (K - 1)/(K^10 - 1).
    lowering = suspension.margins("400 kip", TEN_LINES, "lowering")
    k = 1.04
    assert_close(lowering.load[2], rw.Q(400 * k**9 * (k - 1) / (k**10 - 1), "kip"))


@given(st.floats(1.0, 3000.0))
def test_the_safety_factor_stays_between_its_bounds(tons: float) -> None:
    rating = rw.Q(tons, "short_ton_force")
    factor = rw.suspension.design_safety_factor(rating)
    assert 2.25 <= factor <= 3.0
    assert rw.suspension.design_safety_factor(1.01 * rating) <= factor
    yield_strength = rw.Q(90.0, "ksi")
    stress = rw.suspension.allowable_stress(yield_strength, rating)
    assert_close(stress * factor, yield_strength)
    assert_close(rw.suspension.allowable_shear(yield_strength, rating), 0.58 * stress)


@given(st.floats(0.1, 1.0))
def test_bending_bounds_wear_from_below(ratio: float) -> None:
    upper = rw.suspension.worn_capacity_by_area("350 kip", ratio)
    lower = rw.suspension.worn_capacity_by_bending("350 kip", ratio)
    assert lower <= upper <= rw.Q(350.0, "kip") * (1 + 1e-12)
    assert_close(lower, ratio * upper)


@given(st.floats(0.0, 70.0))
def test_two_links_hold_the_load_up(angle: float) -> None:
    load = rw.suspension.link_load("100 kip", rw.Q(angle, "deg"))
    assert_close(2.0 * load * math.cos(math.radians(angle)), "100 kip")


# By hand


def test_loads_of_usual_parts_by_hand() -> None:
    margins = Suspension(usual(), crown_block="500 short_ton_force").margins("400 kip", TEN_LINES)
    assert margins.names == ("crown block", "traveling block", "hook", "links", "elevator")
    np.testing.assert_allclose(margins.load.m_as("kip")[1:], [400.0, 386.0, 380.0, 378.8])
    # 500 kip of the elevator and 21.2 kip that hang above it.
    assert margins.weakest == "elevator"
    assert_close(margins.largest_hook_load, "521.2 kip")


def test_an_overload_is_a_result_with_its_number() -> None:
    margins = Suspension(usual()).margins("600 kip", TEN_LINES)
    assert margins.overloaded == ("elevator",)
    assert_close(margins.margin[-1], "-78.8 kip")


def test_the_table_has_a_row_for_every_part() -> None:
    margins = Suspension(usual()).margins("400 kip", TEN_LINES)
    table = margins.to_dataframe("short_ton_force")
    assert list(table.index) == list(margins.names)
    assert table.loc["elevator", "rating [short_ton_force]"] == pytest.approx(250.0)
    assert table.loc["hook", "load [short_ton_force]"] == pytest.approx(193.0)
    assert "weakest='elevator'" in repr(margins)


# Tables


def test_rating_classes_as_printed() -> None:
    # Lyons (1996), Table 4-5, p. 532: classes 25-40 … 751-1000 short tons.
    for row in rw.suspension.table("rating_classes"):
        low, high = row["class"].split("-")
        assert rw.suspension.rating_class(f"{low} short_ton_force") == row["class"]
        assert rw.suspension.rating_class(rw.Q(float(high), "short_ton_force")) == row["class"]
    with pytest.raises(UnknownEntryError, match="25 to 1000"):
        rw.suspension.rating_class("1100 short_ton_force")


@pytest.mark.parametrize("name", ["elevator_bores", "elevator_types", "rating_classes"])
def test_every_printed_value_has_a_source_and_a_standing(name: str) -> None:
    for row in rw.suspension.table(name):
        assert row["standing"] in {"published", "from memory", "derived", "common practice"}
        assert len(row["source"].split()) > 2


def test_elevators_by_tubular() -> None:
    types = rw.suspension.elevator_types()
    for one in types:
        for tubular in one.tubulars:
            assert one in rw.suspension.elevators_for(tubular)
    assert [one.kind for one in types if not one.carries_string] == ["single joint"]
    slip_type = rw.suspension.elevators_for("flush-joint casing")[0].part("350 kip", "2 kip")
    assert_close(slip_type.rating, "350 kip")
    with pytest.raises(InadmissibleError, match="single joints"):
        rw.suspension.elevators_for("single joint of casing")[0].part("2 kip", "0.1 kip")
    bore = rw.suspension.elevator_bore("4 EU")
    assert rw.suspension.elevator_bore("4-1/2 IEU") == bore
    assert_close(bore.bore, "4.78125 in")
    assert_close(bore.neck, "4.6875 in")


def test_unknown_names_are_answered_with_what_there_is() -> None:
    for call, offer in (
        (lambda: rw.suspension.elevators_for("whale"), "collared casing"),
        (lambda: rw.suspension.elevator_bore("7 EU"), "5-1/2 IEU"),
        (lambda: rw.suspension.table("hooks"), "elevator_types"),
    ):
        with pytest.raises(UnknownEntryError, match=offer):
            call()
    with pytest.raises(UnitError):
        rw.suspension.elevators_for(7)  # type: ignore[arg-type]


# Wear by a maker's table; the table is invented

INVENTED = [("2.75 in", "350 kip"), ("2.25 in", "225 kip"), ("2.5 in", "300 kip")]


@pytest.mark.parametrize(
    ("thinnest", "capacity"),
    [
        ("2.80 in", "350 kip"),
        ("2.75 in", "350 kip"),
        ("69.85 mm", "350 kip"),
        ("2.74 in", "300 kip"),
        ("2.25 in", "225 kip"),
        ("2.24 in", "0 kip"),
    ],
)
def test_a_worn_set_has_the_capacity_of_its_thinnest_eye(thinnest: str, capacity: str) -> None:
    eyes = ["2.9 in", thinnest, "2.9 in", "2.85 in"]
    assert_close(rw.suspension.link_set_capacity(eyes, INVENTED), capacity, absolute="1e-6 N")
    table = dict(INVENTED)
    assert_close(rw.suspension.link_set_capacity(eyes, table), capacity, absolute="1e-6 N")


@pytest.mark.parametrize(
    ("eyes", "table", "field"),
    [
        ([], INVENTED, "thicknesses"),
        (["0 in"], INVENTED, "thicknesses"),
        ([rw.Q(math.nan, "in")], INVENTED, "thicknesses"),
        (["2 in"], [], "maker_table"),
        (["2 in"], [("2 in", "300 kip"), ("3 in", "200 kip")], "maker_table"),
        # One thickness with two capacities: the larger must not be taken silently.
        (["2 in"], [("2 in", "300 kip"), ("2 in", "200 kip")], "maker_table"),
        (["2 in"], [("2 in", "300 kip"), ("50.8 mm", "200 kip")], "maker_table"),
    ],
)
def test_what_no_maker_prints_is_refused(eyes: Any, table: Any, field: str) -> None:
    with pytest.raises(InadmissibleError) as caught:
        rw.suspension.link_set_capacity(eyes, table)
    assert caught.value.field == field


# Refusals


@pytest.mark.parametrize(
    ("field", "value", "error"),
    [
        ("name", 3, UnitError),
        ("rating", 350, UnitError),
        ("rating", "0 kip", InadmissibleError),
        ("rating", rw.Q(math.inf, "kip"), InadmissibleError),
        ("rating", rw.Q([1.0, 2.0], "kip"), InadmissibleError),
        ("weight", "-1 kip", InadmissibleError),
        ("weight", rw.Q(math.nan, "kip"), InadmissibleError),
        ("weight", "1 kg", UnitError),
    ],
)
def test_parts_that_cannot_be_are_refused_by_field(
    field: str, value: Any, error: type[rw.RopewalkError]
) -> None:
    with pytest.raises(error) as caught:
        Part(**{"name": "hook", "rating": "350 kip", "weight": "6 kip", field: value})
    assert caught.value.field == field


def test_load_paths_that_cannot_be_are_refused() -> None:
    with pytest.raises(InadmissibleError, match="hanging is empty"):
        Suspension([])
    with pytest.raises(UnitError, match="Part"):
        Suspension(["hook"])  # type: ignore[list-item]
    with pytest.raises(InadmissibleError, match="crown_block"):
        Suspension(usual(), crown_block="0 kip")
    suspension = Suspension(usual())
    with pytest.raises(InadmissibleError, match="hang above elevator") as caught:
        suspension.margins("21 kip", TEN_LINES)
    assert caught.value.field == "hook_load"
    with pytest.raises(UnitError):
        suspension.margins(rw.Q([100.0, 200.0], "kip"), TEN_LINES)


def test_parts_are_plain_data() -> None:
    part = Part("hook", "350 kip", "6 kip")
    assert eval(repr(part), {"Part": Part}) == part
    suspension = Suspension(usual(), mast="650 kip")
    twin = eval(repr(suspension), {"Part": Part, "Suspension": Suspension})
    assert (twin.hanging, twin.mast_si) == (suspension.hanging, suspension.mast_si)
    assert_close(part.rating, "350 kip")
    assert_close(part.weight, "6 kip")


# The picture


def test_the_picture_has_a_bar_in_a_rating_for_every_part() -> None:
    margins = Suspension(usual()).margins("400 kip", TEN_LINES)
    ax = Figure().subplots()
    assert plot.load_path(ax, margins, unit="short_ton_force") is ax
    widths = sorted(patch.get_width() for patch in ax.patches)
    expected = [*margins.load.m_as("short_ton_force"), *margins.rating.m_as("short_ton_force")]
    np.testing.assert_allclose(widths, sorted(expected))
    assert [text.get_text() for text in ax.get_yticklabels()] == list(margins.names)
    hatched = [patch for patch in ax.patches if patch.get_hatch()]
    assert len(hatched) == 1  # the weakest part is told apart without color
    assert "[short_ton_force]" in ax.get_xlabel()


@pytest.mark.parametrize("name", ["hook", "crown block"])
def test_parts_go_by_name_so_that_no_name_stands_twice(name: str) -> None:
    parts = [Part("hook", "350 kip", "6 kip"), Part(name, "350 kip", "1 kip")]
    with pytest.raises(InadmissibleError, match=f"hanging has '{name}' twice"):
        Suspension(parts)
