"""Rainflow counting: the standard's example, laws, and the packages `rainflow` and `fatpack`."""

from __future__ import annotations

import copy
import math
import pickle
from collections import Counter
from typing import Any

import fatpack
import numpy as np
import pytest
import rainflow as package
from hypothesis import given
from hypothesis import strategies as st
from matplotlib.figure import Figure

import ropewalk as rw
from ropewalk import plot
from ropewalk.errors import InadmissibleError, UnitError
from ropewalk.rainflow import Cycles, RainflowCounter, count

#: ASTM E1049-85, Figure 6.
FIGURE_6 = [-2.0, 1.0, -3.0, 5.0, -1.0, 3.0, -4.0, 4.0, -2.0]

# Few levels: flat places and equal ranges are what goes wrong first.
coarse = st.lists(st.integers(-4, 4).map(float), min_size=0, max_size=60)
# To the millinewton: products of smaller differences underflow in one of the packages.
millinewtons = st.floats(-1e6, 1e6).map(lambda force: round(force, 3))
fine = st.lists(millinewtons, min_size=0, max_size=60)
histories = coarse | fine


def newtons(history: Any) -> Any:
    return rw.Q(np.asarray(history, dtype=np.float64), "N")


def tally(cycles: Cycles) -> Counter[tuple[float, float]]:
    """How often each range and mean was counted."""
    found: Counter[tuple[float, float]] = Counter()
    for spread, mean, times in zip(cycles.range_si, cycles.mean_si, cycles.count, strict=True):
        found[float(spread), float(mean)] += float(times)
    return found


def by_range(cycles: Cycles) -> dict[float, float]:
    ranges, counts = cycles.by_range()
    return dict(zip(ranges.magnitude.tolist(), counts.tolist(), strict=True))


# The standard


def test_the_table_of_figure_6() -> None:
    cycles = count(newtons(FIGURE_6))
    assert by_range(cycles) == {3.0: 0.5, 4.0: 1.5, 6.0: 0.5, 8.0: 1.0, 9.0: 0.5}
    assert cycles.total == 4.0
    # The one full cycle is E-F.
    full = cycles.count == 1.0
    assert (cycles.start[full].tolist(), cycles.end[full].tolist()) == ([4], [5])


def test_the_same_history_repeated() -> None:
    # ASTM E1049-85, 5.4.5 (from memory).
    cycles = count(newtons(FIGURE_6), repeating=True)
    assert by_range(cycles) == {3.0: 1.0, 4.0: 1.0, 7.0: 1.0, 9.0: 1.0}


# Other programs


@given(histories)
def test_the_rainflow_package_counts_the_same(history: list[float]) -> None:
    # Of fewer than three samples that package drops the last one.
    if len(history) < 3:
        return
    cycles = count(newtons(history))
    theirs = [one for one in package.extract_cycles(history) if one[0] > 0.0]
    assert [one[0] for one in theirs] == cycles.range_si.tolist()
    assert [one[2] for one in theirs] == cycles.count.tolist()
    np.testing.assert_allclose([one[1] for one in theirs], cycles.mean_si, atol=1e-9)


def test_fatpack_counts_the_same_of_a_repeating_history() -> None:
    """Four points at a time, the residue counted once more behind itself."""
    for seed in range(20):
        history = np.random.default_rng(seed).normal(size=500)
        history[-1] = history[0]
        cycles = count(newtons(history), repeating=True)
        # Its own search for reversals puts the history into classes; these are the plain ones.
        turns = np.flatnonzero(np.diff(np.sign(np.diff(history)))) + 1
        reversals = history[np.r_[0, turns, len(history) - 1]]
        pairs, residue = fatpack.find_rainflow_cycles(reversals)
        rest, _ = fatpack.find_rainflow_cycles(fatpack.concatenate_reversals(residue, residue))
        theirs = np.sort(np.abs(np.diff(np.concatenate([pairs, rest]), axis=1)).ravel())
        np.testing.assert_allclose(np.sort(cycles.range_si), theirs, rtol=1e-12)
        np.testing.assert_array_equal(cycles.count, 1.0)


def test_fatpack_finds_the_whole_cycles_of_a_history() -> None:
    for seed in range(20):
        history = np.random.default_rng(seed).normal(size=400)
        cycles = count(newtons(history))
        turns = np.flatnonzero(np.diff(np.sign(np.diff(history)))) + 1
        reversals = history[np.r_[0, turns, len(history) - 1]]
        pairs, residue = fatpack.find_rainflow_cycles(reversals)
        whole = np.sort(cycles.range_si[cycles.count == 1.0])
        np.testing.assert_allclose(whole, np.sort(np.abs(np.diff(pairs, axis=1)).ravel()))
        # Its residue is what the standard counts as half cycles.
        half = np.sort(cycles.range_si[cycles.count == 0.5])
        np.testing.assert_allclose(half, np.sort(np.abs(np.diff(residue))))


# Laws


@given(histories)
def test_every_way_is_counted_once(history: list[float]) -> None:
    cycles = count(newtons(history))
    way = float(np.abs(np.diff(history)).sum())
    assert 2.0 * float(cycles.range_si @ cycles.count) == pytest.approx(way, rel=1e-9, abs=1e-6)
    assert np.all(cycles.range_si > 0.0)
    assert set(cycles.count.tolist()) <= {0.5, 1.0}


@given(coarse, st.sampled_from([1.0, -1.0]), st.integers(-3, 3))
def test_turned_over_moved_and_held_it_has_the_same_ranges(
    history: list[float], sign: float, by: int
) -> None:
    plain = count(newtons(history))
    other = count(newtons(np.repeat(sign * np.asarray(history) + by, 3)))
    assert plain.range_si.tolist() == other.range_si.tolist()
    assert plain.count.tolist() == other.count.tolist()
    assert (sign * plain.mean_si + by).tolist() == other.mean_si.tolist()


@given(histories)
def test_points_on_the_way_do_not_count(history: list[float]) -> None:
    values = np.asarray(history)
    between = np.empty(max(0, 2 * len(values) - 1))
    between[::2] = values
    between[1::2] = 0.5 * values[:-1] + 0.5 * values[1:]
    assert tally(count(newtons(between))) == tally(count(newtons(values)))


@given(coarse, st.integers(0, 59))
def test_where_a_repeating_history_begins_does_not_matter(history: list[float], shift: int) -> None:
    turned = np.roll(history, shift)
    assert tally(count(newtons(history), repeating=True)) == tally(
        count(newtons(turned), repeating=True)
    )


@given(coarse)
def test_a_repeating_history_is_one_repeated_many_times(history: list[float]) -> None:
    five, four = (tally(count(newtons(history * times))) for times in (5, 4))
    five.subtract(four)
    found = {key: times for key, times in five.items() if times}
    assert found == dict(tally(count(newtons(history), repeating=True)))


@given(histories, st.integers(1, 10))
def test_pieces_give_what_the_whole_gives(history: list[float], size: int) -> None:
    counter = RainflowCounter()
    parts = [counter.push(newtons(history[i : i + size])) for i in range(0, len(history), size)]
    assert counter.samples == len(history)
    found = Cycles.joined([*parts, counter.finish()])
    expected = count(newtons(history))
    for name in ("range_si", "mean_si", "count", "start", "end"):
        assert getattr(found, name).tolist() == getattr(expected, name).tolist()


@given(histories, st.data())
def test_a_counter_goes_on_after_pickling(history: Any, data: Any) -> None:
    cut = data.draw(st.integers(0, len(history)))
    counter = RainflowCounter()
    before = counter.push(rw.Q(np.asarray(history[:cut], dtype=float), "N"))
    ends = []
    for twin in (counter, pickle.loads(pickle.dumps(counter)), copy.deepcopy(counter)):
        assert twin.samples == cut
        np.testing.assert_array_equal(twin.residue.magnitude, counter.residue.magnitude)
        ends.append(twin)
    whole = count(rw.Q(np.asarray(history, dtype=float), "N"))
    for twin in ends:
        rest = twin.push(rw.Q(np.asarray(history[cut:], dtype=float), "N"))
        found = Cycles.joined([before, rest, twin.finish()])
        for name in ("range_si", "mean_si", "count", "start", "end"):
            np.testing.assert_array_equal(getattr(found, name), getattr(whole, name))


@pytest.mark.parametrize(
    "wrong",
    [
        ([1.0], [0], 1.0, 0, 1, 7),  # no such motion
        ([], [], 0.0, 0, 3, 0),  # samples, and none seen
        ([1.0, 2.0], [0], 3.0, 2, 3, 2),  # a point without a sample
        ([math.nan], [0], 3.0, 1, 2, 2),
        ([1.0], [0], 0.5, 1, 2, 2),  # rises downward
        ([1.0], [0], 2.0, 5, 2, 2),  # the latest sample is still to come
        ([0.0, 5.0, -6.0], [0, 1, 2], 1.0, 3, 4, 2),  # the last range would have closed the first
        ([0.0, 5.0, 7.0], [0, 1, 2], 1.0, 3, 4, 3),  # a peak after a peak
        ([0.0, 5.0, 1.0], [0, 2, 1], 3.0, 3, 4, 2),  # back in time
    ],
)
def test_a_state_that_no_history_leads_to_is_refused(wrong: Any) -> None:
    kind = rw._core.rainflow.Counter
    counter = kind.__new__(kind)  # as pickle makes it
    with pytest.raises(InadmissibleError, match="state"):
        counter.__setstate__(wrong)


@given(histories, st.booleans())
def test_samples_name_the_ends(history: list[float], repeating: bool) -> None:
    values = np.asarray(history)
    cycles = count(newtons(history), repeating=repeating)
    np.testing.assert_array_equal(
        np.abs(values[cycles.start] - values[cycles.end]), cycles.range_si
    )


def test_little_waits_for_its_cycle() -> None:
    counter = RainflowCounter()
    counter.push(newtons(np.random.default_rng(1).normal(size=100_000)))
    assert len(counter.residue) < 60


# Ranges


@given(fine.filter(lambda h: len(set(h)) > 1), st.floats(0.5, 12.0))
def test_the_equivalent_range_lies_among_the_ranges(history: list[float], exponent: float) -> None:
    cycles = count(newtons(history))
    found = cycles.equivalent_range(exponent).magnitude
    assert cycles.range_si.min() * (1 - 1e-9) <= found <= cycles.range_si.max() * (1 + 1e-9)
    more = cycles.equivalent_range(exponent + 1.0).magnitude
    assert more >= found * (1 - 1e-9)


def test_damage_of_figure_6() -> None:
    # By hand: Σ n r³ = 1094, Σ n r⁵ = 67,838.
    cycles = count(newtons(FIGURE_6))
    damage = cycles.damage(3, reference_range="10 N", reference_cycles=1e6)
    assert damage == pytest.approx(1.094e-6, rel=1e-12)
    equivalent = cycles.equivalent_range(5).m_as("N")
    assert equivalent == pytest.approx((67_838 / 4) ** 0.2, rel=1e-12)
    assert equivalent == pytest.approx(7.0127, abs=5e-5)


@given(coarse.filter(lambda h: len(set(h)) > 1), st.integers(1, 20), st.integers(1, 20))
def test_bins_hold_all_cycles(history: list[float], ranges: int, means: int) -> None:
    cycles = count(newtons(history))
    histogram = cycles.histogram(ranges)
    matrix = cycles.matrix(ranges, means)
    assert histogram.counts.sum() == cycles.total
    assert matrix.counts.shape == (ranges, means)
    np.testing.assert_allclose(matrix.counts.sum(axis=1), histogram.counts)
    assert histogram.edges.magnitude[0] == 0.0


def test_edges_may_be_given() -> None:
    cycles = count(newtons(FIGURE_6))
    found = cycles.histogram(rw.Q([0.0, 3.5, 7.0, 10.0], "N"))
    assert found.counts.tolist() == [0.5, 2.0, 1.5]
    for edges in (rw.Q([0.0, 8.0], "N"), rw.Q([3.0, 2.0], "N"), rw.Q(10.0, "N")):
        with pytest.raises(InadmissibleError, match="rainflow.Cycles.histogram"):
            cycles.histogram(edges)
    with pytest.raises(InadmissibleError, match="leave out 1 of 7 cycles"):
        cycles.histogram(rw.Q([0.0, 8.5], "N"))
    with pytest.raises(UnitError):
        cycles.histogram([0.0, 10.0])


def test_all_cycles_stand_in_a_table() -> None:
    table = count(newtons(FIGURE_6)).table()
    assert list(table.columns) == ["range [N]", "mean [N]", "count", "start", "end"]
    assert table["count"].sum() == 4.0


# What cannot be


@pytest.mark.parametrize("history", [[], [2.0], [2.0, 2.0, 2.0]])
def test_what_does_not_change_has_no_cycles(history: list[float]) -> None:
    for repeating in (False, True):
        cycles = count(newtons(history), repeating=repeating)
        assert len(cycles) == 0
        assert cycles.total == 0.0
        with pytest.raises(InadmissibleError, match="there are no cycles"):
            cycles.equivalent_range(3)
        with pytest.raises(InadmissibleError):
            cycles.histogram(4)


def test_what_cannot_be_counted_is_refused() -> None:
    with pytest.raises(UnitError):
        count(FIGURE_6)
    with pytest.raises(UnitError):
        count(rw.Q(FIGURE_6, "MPa"))
    with pytest.raises(UnitError):
        count(newtons(FIGURE_6), repeating=1)  # type: ignore[arg-type]
    with pytest.raises(InadmissibleError, match="a row of samples"):
        count(newtons([FIGURE_6, FIGURE_6]))
    for bad in (math.nan, math.inf):
        for repeating in (False, True):
            with pytest.raises(InadmissibleError, match="sample 2: tension") as caught:
                count(newtons([1.0, 2.0, bad, 3.0]), repeating=repeating)
            assert caught.value.field == "tension"
    cycles = count(newtons(FIGURE_6))
    with pytest.raises(InadmissibleError, match="exponent"):
        cycles.equivalent_range(0)
    with pytest.raises(InadmissibleError, match="reference_cycles"):
        cycles.damage(3, reference_range="1 N", reference_cycles=0)


def test_a_sample_that_is_none_leaves_the_counter_as_it_was() -> None:
    counter = RainflowCounter()
    counter.push(newtons([1.0, 5.0]))
    with pytest.raises(InadmissibleError, match="sample 4"):
        counter.push(newtons([9.0, 0.0, math.nan]))
    assert counter.samples == 2
    counter.push(newtons([2.0]))
    assert tally(counter.finish()) == tally(count(newtons([1.0, 5.0, 2.0])))


# The rig


def test_the_history_of_a_plan_is_its_strokes() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    strokes = rw.Campaign.from_strokes(
        rw.Q([100.0, 50.0], "kip"),
        rw.Q([0.0, 20.0], "m"),
        rw.Q([20.0, 0.0], "m"),
        count=[2, 1],
        pick_up=[True, False],
    )
    block = rig.block.weight
    up = rig.reeving.tensions("100 kip", "hoisting")
    down = rig.reeving.tensions("50 kip", "lowering")
    for part, name in (("dead line", "dead_line_si"), ("fast line", "fast_line_si")):
        found = rw.line.tension_history(rig, strokes, part=part)
        rest = block / 10.0
        first, last = getattr(up, name), getattr(down, name)
        np.testing.assert_allclose(found.magnitude, [rest, first, rest, first, last])
    with pytest.raises(InadmissibleError, match="part"):
        rw.line.tension_history(rig, strokes, part="line 3")


# Pictures


def test_the_picture_of_the_ranges_has_all_cycles() -> None:
    cycles = count(newtons(np.random.default_rng(3).normal(10e3, 2e3, 2000)))
    ax = Figure().subplots()
    assert plot.range_histogram(ax, cycles, bins=20, exponent=5, unit="kN") is ax
    assert ax.get_xlabel().endswith("[kN]")
    drawn = ax.patches[0].get_data()
    np.testing.assert_allclose(drawn.values, cycles.histogram(20).counts)
    mark = ax.get_lines()[0].get_xdata()[0]
    assert mark == pytest.approx(cycles.equivalent_range(5).m_as("kN"))


def test_the_picture_of_the_matrix_has_all_cycles() -> None:
    cycles = count(newtons(np.random.default_rng(3).normal(10e3, 2e3, 2000)))
    figure = Figure()
    ax = figure.subplots()
    assert plot.rainflow_matrix(ax, cycles, range_bins=10, mean_bins=12, unit="kN") is ax
    assert "[kN]" in ax.get_ylabel()
    drawn = ax.collections[0].get_array()
    assert drawn.sum() == pytest.approx(cycles.total)
    assert len(figure.axes) == 2


@pytest.mark.parametrize("repeating", [False, True])
def test_samples_leave_room_for_their_range(repeating: bool) -> None:
    assert count(rw.Q([8e307, -8e307, 8e307], "N"), repeating=repeating).range_si.max() == 1.6e308
    with pytest.raises(InadmissibleError, match=r"sample 1: tension = .* is outside \[-8e307"):
        count(rw.Q([0.0, 1e308, 0.0], "N"), repeating=repeating)


def test_what_is_no_part_is_not_joined() -> None:
    for parts in ([], [3.0]):
        with pytest.raises(UnitError, match="parts must be one Cycles or more"):
            Cycles.joined(parts)  # type: ignore[arg-type]


def test_one_exponent_is_one_number() -> None:
    cycles = count(rw.Q([0.0, 1.0, 0.0], "N"))
    with pytest.raises(InadmissibleError, match="exponent must be one value"):
        cycles.equivalent_range([3.0, 5.0])
