"""Which models hold at a point, side by side; endurance factors, wire breaks, collectives."""

from __future__ import annotations

import pickle

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk import fatigue
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError

POINT = fatigue.BendPoint(
    rope_tension="12096 lbf",
    rope_diameter="1 in",
    sheave_diameter="72 in",
    wire_strength="240 ksi",
)


# Points and comparisons


def test_a_point_holds_si_and_pickles() -> None:
    assert POINT.rope_diameter_si == pytest.approx(0.0254)
    assert POINT.bend_ratio == pytest.approx(72.0)
    assert POINT.rope_tension.to("lbf").magnitude == pytest.approx(12096.0)
    assert pickle.loads(pickle.dumps(POINT)) == POINT
    assert fatigue.BendPoint(rope_tension="1 kN").bend_ratio is None


def test_a_point_takes_its_rope() -> None:
    rope = rw.Rope.metric("6x36 IWRC", wire_grade="1770 MPa", diameter="28 mm")
    point = fatigue.BendPoint(rope_tension="100 kN", rope=rope, sheave_diameter="1 m")
    assert point.breaking_force_si == rope.breaking_force_si
    assert point.wire_strength_si == pytest.approx(1770e6)


def test_the_lister_says_what_is_missing_and_which_range_is_left() -> None:
    models = [
        fatigue.DruckerTachau(),
        fatigue.En13001(1.0),
        fatigue.PowerLaw(0.25, 2.3, basis="discard", fitted_over=(0.002, 0.004)),
    ]
    first, second, third = fatigue.models_at(POINT, models)
    assert first.holds
    assert first.reason == ""
    assert second.missing == ("breaking_force",)
    assert second.reason == "breaking_force is not given"
    assert not third.missing
    (broken,) = third.broken
    assert broken.value == pytest.approx(0.0014)
    assert (broken.range.low, broken.range.high) == (0.002, 0.004)
    assert "as the user gave it" in third.reason
    assert [found.model for found in (first, second, third)] == models


def test_a_comparison_gives_lives_and_their_meaning() -> None:
    models = [
        fatigue.DruckerTachau(),
        fatigue.En13001(1.0),
        fatigue.PowerLaw(0.25, 2.3, basis="discard", fitted_over=(0.002, 0.004)),
    ]
    found = fatigue.compare(POINT, models)
    assert len(found) == 3
    lives = [row.life for row in found]
    assert lives[0] is not None
    assert lives[0].cycles == pytest.approx(1e6, rel=1e-9)
    assert lives[1] is None
    assert lives[2] is not None
    assert lives[2].cycles == pytest.approx(0.25 * 0.0014**-2.3, rel=1e-12)
    text = str(found)
    assert "breakage" in text
    assert "breaking_force is not given" in text
    assert "licensed practice" in text


def test_a_life_that_overflows_is_none_in_a_comparison() -> None:
    model = fatigue.FeyrerForm(b0=400, b1=0.5, b2=6.5, b3=-0.3, b4=-1.8, b5=1.2, basis="discard")
    point = fatigue.BendPoint(
        rope_tension="100 kN",
        rope_diameter="28 mm",
        sheave_diameter="1 m",
        wire_strength="1770 MPa",
        bend_length="3 m",
    )
    (row,) = fatigue.compare(point, [model])
    assert row.life is None
    assert row.model is model


# Endurance factors


def test_factors_keep_name_value_and_source() -> None:
    factors = fatigue.EnduranceFactors(
        fatigue.shaped_groove_factor("V", "40 deg"),
        fatigue.core_factor("PWRC", strands=8),
        zinc=0.95,
    )
    assert [factor.name for factor in factors] == ["groove", "core", "zinc"]
    assert factors.product == pytest.approx(0.14 * 1.86 * 0.95, rel=1e-12)
    assert factors["groove"].source.startswith("K. Feyrer")
    assert factors["zinc"].standing == "given"
    assert len(factors) == 3
    assert pickle.loads(pickle.dumps(factors)) == factors
    assert fatigue.EnduranceFactors().product == 1.0
    with pytest.raises(UnknownEntryError, match="groove, core, zinc"):
        factors["core of lead"]


def test_factors_refuse_what_cannot_go_together() -> None:
    groove = fatigue.round_groove_factor(0.55)
    with pytest.raises(InadmissibleError, match="already a factor named 'groove'"):
        fatigue.EnduranceFactors(groove, fatigue.shaped_groove_factor("V", "40 deg"))
    with pytest.raises(InadmissibleError, match="wear = 0"):
        fatigue.EnduranceFactors(wear=0.0)
    with pytest.raises(UnitError, match="name a plain number"):
        fatigue.EnduranceFactors(0.8)
    with pytest.raises(UnknownEntryError, match="well lubricated"):
        fatigue.lubrication_factor("a little")
    with pytest.raises(UnitError, match="groove_angle must be an angle"):
        fatigue.shaped_groove_factor("V", "40 mm")


@given(st.floats(0.53, 1.0), st.floats(0.53, 1.0))
def test_a_wider_groove_never_lives_longer(a: float, b: float) -> None:
    low, high = sorted((a, b))
    assert fatigue.round_groove_factor(high).value <= fatigue.round_groove_factor(low).value


@given(st.floats(75.0, 105.0))
def test_groove_factor_and_equivalent_sheaves_are_reciprocal(angle: float) -> None:
    # Exactly so before rounding; the factor is printed to two digits.
    factor = fatigue.shaped_groove_factor("undercut", rw.Q(angle, "deg")).value
    sheaves = fatigue.en81_groove_equivalent("undercut", rw.Q(angle, "deg"))
    assert factor * sheaves == pytest.approx(1.0, abs=0.02)


# Wire breaks


def test_wire_breaks_and_their_corrections() -> None:
    rope = fatigue.discard_constants("WRC-8x36 WS")
    bend = ("60 kN", "20 mm", "500 mm")
    breaks = rope.wire_breaks(*bend)
    assert breaks == pytest.approx(34.06, abs=0.005)  # by hand from Feyrer, Table 3.18
    assert rope.wire_breaks(*bend, on_diameters=6) == pytest.approx(0.5 * breaks)
    assert rope.wire_breaks(*bend, six_strands=True) == pytest.approx(0.75 * breaks)
    # Reverse bending counts as S/d2 raised by 50 N/mm2: 20 kN on 20 mm.
    assert rope.wire_breaks(*bend, reverse_bending=True) == pytest.approx(
        rope.wire_breaks("80 kN", "20 mm", "500 mm"), rel=1e-12
    )
    with pytest.raises(InadmissibleError, match="must be 6 or 30"):
        rope.wire_breaks(*bend, on_diameters=12)
    with pytest.raises(UnknownEntryError, match="WRC-8x36 WS"):
        fatigue.discard_constants("6x7")


@given(least=st.floats(0.0, 15.0), ratio=st.floats(15.0, 60.0))
def test_the_limiting_force_leaves_just_the_wanted_breaks(least: float, ratio: float) -> None:
    rope = fatigue.discard_constants("WRC-8x36 WS")
    sheave = rw.Q(20.0 * ratio, "mm")
    force = rope.limiting_force(least, "20 mm", sheave)
    assert rope.wire_breaks(0.999999 * force, "20 mm", sheave) == pytest.approx(least, abs=1e-3)


# Collectives


@given(
    shares=st.lists(st.floats(0.01, 1e6), min_size=1, max_size=6),
    exponent=st.floats(-6.0, -0.5),
    data=st.data(),
)
def test_the_equivalent_force_lies_between_least_and_largest(
    shares: list[float], exponent: float, data: st.DataObject
) -> None:
    force = st.floats(0.05, 1.0)
    ratios = data.draw(st.lists(force, min_size=len(shares), max_size=len(shares)))
    k = fatigue.equivalent_force_ratio(shares, ratios, exponent)
    assert min(ratios) * (1 - 1e-12) <= k <= max(ratios) * (1 + 1e-12)
    steeper = fatigue.equivalent_force_ratio(shares, ratios, 1.5 * exponent)
    assert steeper >= k * (1 - 1e-12)


def test_collectives_take_arrays_and_refuse_units() -> None:
    counts = np.array([2000, 9000, 25_000])
    lives = np.array([10_000, 30_000, 50_000])
    assert fatigue.miner_sum(counts, lives) == pytest.approx(1.0, rel=1e-15)
    with pytest.raises(UnitError, match="force_ratios"):
        fatigue.force_spectrum_factor([1.0], "3 kN")
    with pytest.raises(InadmissibleError, match="same length"):
        fatigue.miner_sum([1.0, 2.0], [1.0])
