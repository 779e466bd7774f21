"""Drums: identities, laws of layers and crossovers, printed limits, refusals."""

from __future__ import annotations

import copy
import itertools
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
from ropewalk.testing import assert_close

#: A drum of the invented Rig 7: barrel and rope of usual sizes.
RIG_7: dict[str, Any] = {
    "barrel_diameter": "28 in",
    "rope_diameter": "1-3/8 in",
    "laps_per_layer": 38.5,
    "layers": 3,
    "crossovers_per_lap": 2,
}


@st.composite
def drums(draw: Any) -> rw.Drum:
    """Drums from a small winch to a large hoist."""
    rope = draw(st.floats(0.005, 0.06))
    return rw.Drum(
        rw.Q(rope * draw(st.floats(5.0, 60.0)), "m"),
        rw.Q(rope, "m"),
        laps_per_layer=draw(st.integers(2, 120)) / 2,
        layers=draw(st.integers(1, 6)),
        layer_height=draw(st.sampled_from(["nested", "stacked", 0.893])),
        crossovers_per_lap=draw(st.integers(0, 2)),
    )


shares = st.floats(0.0, 1.0)


# Identities


@given(drums())
def test_layers_make_the_drum(drum: rw.Drum) -> None:
    layers = range(1, drum.layers + 1)
    assert_close(drum.capacity, rw.Q(sum(drum.layer_length(k).m_as("m") for k in layers), "m"))
    assert drum.wraps == drum.laps_per_layer * drum.layers
    for k in layers:
        # The rope center runs half a rope outside the surface it is bent on.
        assert_close(drum.lap_length(k), math.pi * (drum.bend_diameter(k) + drum.rope_diameter))
        assert drum.bend_ratio(k) == pytest.approx(drum.bend_diameter(k) / drum.rope_diameter)


@given(drums(), shares)
def test_place_and_length_undo_each_other(drum: rw.Drum, share: float) -> None:
    length = share * drum.capacity
    place = drum.place(length)
    assert_close(drum.length_of(place.wraps), length, absolute="1e-9 m")
    assert place.wraps == pytest.approx((place.layer - 1) * drum.laps_per_layer + place.lap)
    assert 1 <= place.layer <= drum.layers


@given(drums())
def test_stacked_layers_fill_the_square_of_the_rope(drum: rw.Drum) -> None:
    # Σ π (D + (2k − 1) d) n = π (D + m d) m n, the handbook formula with A = m d and C = n d.
    stacked = rw.Drum(
        drum.barrel_diameter, drum.rope_diameter, drum.laps_per_layer, drum.layers, "stacked"
    )
    d = drum.rope_diameter
    reel = rw.drum.reel_capacity(drum.layers * d, drum.barrel_diameter, drum.laps_per_layer * d, d)
    assert_close(stacked.capacity, reel)


@given(drums(), shares, shares)
def test_crossovers_of_parts_are_those_of_the_whole(
    drum: rw.Drum, one: float, other: float
) -> None:
    cuts = rw.Q([0.0, *sorted((one, other)), 1.0], "m") * drum.capacity_si
    parts = [c for a, b in itertools.pairwise(cuts) for c in drum.crossovers(a, b)]
    assert parts == drum.crossovers()


@given(drums())
def test_crossovers_lie_at_the_same_angles_in_every_layer(drum: rw.Drum) -> None:
    crossovers = drum.crossovers()
    lengths = [one.from_drum_end_si for one in crossovers]
    assert lengths == sorted(set(lengths))
    assert sum(one.layer_change for one in crossovers) == drum.layers - 1
    assert all(one.layer >= 2 for one in crossovers)
    wraps = drum.place(rw.Q(lengths, "m")).wraps if lengths else []
    for one, turned in zip(crossovers, wraps, strict=True):
        if not one.layer_change:
            turns = turned * drum.crossovers_per_lap
            assert turns == pytest.approx(round(turns), abs=1e-8)


@given(st.floats(0.0, 50.0), st.sampled_from([1, 2]))
def test_a_cut_moves_crossovers_at_most_halfway(laps: float, per_lap: int) -> None:
    shift = rw.drum.crossover_shift(laps, per_lap)
    assert 0.0 <= shift <= 0.5 / per_lap
    again = rw.drum.crossover_shift(laps + 1.0 / per_lap, per_lap)
    assert again == pytest.approx(shift, abs=1e-12)


@given(drums(), shares, st.sampled_from([6, 8, 10, 12]))
def test_the_block_winds_up_lines_times_its_way(drum: rw.Drum, share: float, lines: int) -> None:
    lowest = min(3.0, drum.wraps)
    full = drum.height_when_full(lines=lines, wraps_at_lowest=lowest)
    # Blocks go no higher than the 200 m of the guard, whatever the drum would hold.
    height = share * min(full, rw.Q(200.0, "m"))
    place = drum.place_at_height(height, lines=lines, wraps_at_lowest=lowest)
    wound = drum.length_of(place.wraps) - drum.length_of(lowest)
    assert_close(wound, lines * height, absolute="1e-8 m")
    assert_close(
        drum.length_of(place.wraps),
        rw.drum.rope_on_drum(drum.length_of(lowest), lines, height),
        absolute="1e-8 m",
    )


@given(drums(), st.floats(0.3, 3.0), st.floats(5.0, 60.0))
def test_the_fleet_angle_is_largest_at_the_flanges(
    drum: rw.Drum, width: float, distance: float
) -> None:
    wraps = np.linspace(0.0, drum.wraps, 41)
    lead = {"traverse": rw.Q(width, "m"), "distance": rw.Q(distance, "m")}
    angles = drum.fleet_angle(drum.length_of(wraps), **lead).m_as("rad")
    largest = rw.drum.fleet_angle(rw.Q(width / 2, "m"), lead["distance"]).m_as("rad")
    assert np.all(np.abs(angles) <= largest * (1 + 1e-9))
    assert angles[0] == pytest.approx(-largest)
    ends = drum.fleet_angle(drum.length_of(drum.laps_per_layer), **lead).m_as("rad")
    assert ends == pytest.approx(largest, rel=1e-9)
    moved = drum.fleet_angle("0 m", sheave_position="0 m", **lead)
    assert moved.magnitude == pytest.approx(0.0, abs=1e-15)


@given(st.floats(1e3, 1e6), st.floats(0.02, 0.5), st.floats(0.0, 8.0))
def test_wraps_and_clamp_share_the_tension(tension: float, friction: float, wraps: float) -> None:
    force = rw.Q(tension, "N")
    clamp = rw.drum.clamp_force(force, friction, wraps)
    ratio = rw.drum.holding_ratio(friction, wraps)
    assert_close(clamp * ratio, force)
    assert rw.drum.holding_wraps(force, clamp, friction) == pytest.approx(wraps, abs=1e-9)


def test_the_hoop_stress_is_that_of_a_thin_shell() -> None:
    pressure = rw.drum.barrel_pressure("220 kN", "812.8 mm", "36.5 mm", 1.75)
    stress = rw.drum.barrel_hoop_stress("220 kN", "36.5 mm", "50 mm", 1.75)
    assert_close(stress, pressure * rw.Q(812.8, "mm") / rw.Q(100, "mm"))


# Published numbers


def test_cut_lengths_of_a_28_inch_drum() -> None:
    # API RP 9B, cutoff lengths in terms of drum laps, 138-ft derrick (from memory): 11 1/2 laps.
    assert_close(rw.drum.cut_length(11.5, "28 in"), "84.3 ft", absolute="0.05 ft")


def test_the_published_limits() -> None:
    # Wire Rope Users Manual, fleet angle: 1 1/2 degrees smooth, 2 degrees grooved, not less than
    # 1/2 degree. The Wyoming rule: three wraps with the line fully extended.
    smooth = rw.drum.fleet_angle_limit("smooth")
    grooved = rw.drum.fleet_angle_limit("grooved")
    assert_close(smooth.maximum, "1.5 deg")
    assert_close(grooved.maximum, "2 deg")
    assert_close(smooth.minimum, "0.5 deg")
    assert rw.drum.dead_wraps_minimum("wyoming SERVICING").value == 3.0
    practice = rw.drum.dead_wraps_minimum("common practice")
    assert (practice.value, practice.standing) == (6.0, "common practice")


@pytest.mark.parametrize(
    "name", ["dead_wraps", "drum_layer_factors", "fleet_angles", "reel_factors"]
)
def test_every_printed_value_has_a_source_and_a_standing(name: str) -> None:
    for row in rw.drum.table(name):
        assert row["standing"] in {"published", "from memory", "derived", "common practice"}
        assert len(row["source"].split()) > 2  # a citation, not a key


def test_handbook_factors_fall_with_the_square_of_the_rope() -> None:
    # π/(12 d²) with a rope 4 % to 6.5 % over size, from 1/2 in up.
    for row in rw.drum.table("reel_factors"):
        size = row["rope_diameter [in]"]
        oversize = math.sqrt(math.pi / 12.0 / row["factor [ft/in^3]"]) / size
        if size >= 0.5:
            assert 1.04 <= oversize <= 1.065


# The object


def test_a_drum_is_plain_data() -> None:
    drum = rw.Drum(**RIG_7)
    for twin in (pickle.loads(pickle.dumps(drum)), copy.deepcopy(drum), eval(repr(drum), vars(rw))):
        assert twin == drum
        assert hash(twin) == hash(drum)
        assert twin.capacity == drum.capacity
    assert drum.layer_height == math.sqrt(3.0) / 2.0
    assert rw.Drum(**RIG_7, layer_height="stacked").layer_height == 1.0
    with pytest.raises(AttributeError):
        drum.layers = 4  # type: ignore[misc]


def test_many_points_give_many_places() -> None:
    drum = rw.Drum(**RIG_7)
    lengths = rw.Q([0.0, 50.0, 100.0, 250.0], "m")
    places = drum.place(lengths)
    assert places.layer.dtype.kind == "i"
    for i, length in enumerate(lengths):
        one = drum.place(length)
        assert type(one.layer) is int
        assert (one.layer, one.lap, one.wraps) == (
            places.layer[i],
            places.lap[i],
            places.wraps[i],
        )
    heights = drum.place_at_height(rw.Q([0.0, 20.0], "m"), lines=10, wraps_at_lowest=[[6.0], [9.0]])
    assert heights.wraps.shape == (2, 2)


@pytest.mark.parametrize(
    ("field", "value", "error"),
    [
        ("barrel_diameter", 28, UnitError),
        ("barrel_diameter", "1 in", InadmissibleError),
        ("barrel_diameter", rw.Q([28.0, 30.0], "in"), UnitError),
        ("rope_diameter", "0 in", InadmissibleError),
        ("laps_per_layer", 38.3, InadmissibleError),
        ("laps_per_layer", 0, InadmissibleError),
        ("laps_per_layer", "38 in", UnitError),
        ("layers", 2.5, InadmissibleError),
        ("layers", 0, InadmissibleError),
        ("layers", 2**40, InadmissibleError),
        ("layer_height", "leaning", UnknownEntryError),
        ("layer_height", 1.2, InadmissibleError),
        ("layer_height", math.nan, InadmissibleError),
        ("crossovers_per_lap", 3, InadmissibleError),
    ],
)
def test_what_cannot_be_is_refused_by_field(
    field: str, value: Any, error: type[rw.RopewalkError]
) -> None:
    with pytest.raises(error) as caught:
        rw.Drum(**{**RIG_7, field: value})
    assert (caught.value.where, caught.value.field) == ("drum.Drum", field)


def test_what_the_drum_does_not_hold_is_refused() -> None:
    drum = rw.Drum(**RIG_7)
    over = drum.capacity * 1.001
    for call in (
        lambda: drum.place(over),
        lambda: drum.place("-1 mm"),
        lambda: drum.place(rw.Q([1.0, math.nan], "m")),
        lambda: drum.length_of(drum.wraps + 0.1),
        lambda: drum.crossovers("0 m", over),
        lambda: drum.crossovers("2 m", "1 m"),
        lambda: drum.lap_length(4),
        lambda: drum.bend_diameter(0),
        lambda: drum.place_at_height("200 m", lines=10, wraps_at_lowest=9),
        lambda: drum.place_at_height("1 m", lines=1, wraps_at_lowest=9),
        lambda: drum.fleet_angle("1 m", traverse="0 m", distance="30 m"),
    ):
        with pytest.raises(InadmissibleError):
            call()


def test_unknown_names_are_answered_with_what_there_is() -> None:
    for call, offer in (
        (lambda: rw.drum.fleet_angle_limit("square"), "smooth, grooved"),
        (lambda: rw.drum.fleet_angle_limit("smooth", "nobody"), "Wire Rope Users Manual"),
        (lambda: rw.drum.dead_wraps_minimum("nobody"), "Wyoming servicing"),
        (lambda: rw.drum.layer_factor(3), "between 1 and 3"),
        (lambda: rw.drum.table("ropes"), "reel_factors"),
        (
            lambda: rw.drum.reel_capacity_handbook("4 in", "32 in", "56 in", "1.3 in"),
            "nearest sizes",
        ),
    ):
        with pytest.raises(UnknownEntryError, match=offer):
            call()


# Pictures


def test_the_picture_of_the_layers_has_them_and_their_crossovers() -> None:
    drum = rw.Drum(**RIG_7)
    ax = Figure().subplots()
    assert plot.drum_layers(ax, drum) is ax
    assert "[ft]" in ax.get_xlabel()
    assert "[in]" in ax.get_ylabel()
    steps = ax.patches[0].get_data()
    np.testing.assert_allclose(steps.values, [drum.bend_diameter(k).m_as("in") for k in (1, 2, 3)])
    marked = {line.get_label(): line.get_xdata() for line in ax.get_lines()}
    changes = [c.from_drum_end.m_as("ft") for c in drum.crossovers() if c.layer_change]
    np.testing.assert_allclose(marked["change of layer"], changes)


def test_the_picture_of_the_fleet_angle_has_its_limits() -> None:
    ax = Figure().subplots()
    limit = rw.drum.fleet_angle_limit("grooved")
    drum = rw.Drum(**RIG_7)
    plot.fleet_angle_along_drum(ax, drum, traverse="56 in", distance="100 ft", limit=limit)
    curve, *lines = ax.get_lines()
    assert np.max(curve.get_ydata()) == pytest.approx(math.degrees(math.atan(28 / 1200)))
    levels = sorted(line.get_ydata()[0] for line in lines)
    np.testing.assert_allclose(levels, [-2.0, -0.5, 0.5, 2.0])
    assert ax.get_ylabel() == "fleet angle [deg]"
