"""The damage map: identities first, then against a rope simulated by brute force."""

from __future__ import annotations

from typing import Any, NamedTuple

import numpy as np
import pytest
from hypothesis import given, settings
from line_campaigns import any_hoist, any_law, any_strokes, any_wear, seeds
from line_rigs import campaign_of, model_of, rig_of, run
from rope_simulation import Hoist, Law, Shift, Stroke, shifts_by_work
from rope_sweeps import Binned, Sweep, bin_edges, bin_means, sweeps

import ropewalk as rw

BIN = 0.25  # m; its multiples are exact


class Case(NamedTuple):
    """A hoist, what it did, and the program its line was slipped and cut by."""

    hoist: Hoist
    law: Law
    strokes: list[Stroke]
    slip: float
    cut: float
    every: float | None
    supply: float

    @property
    def shifts(self) -> list[Shift]:
        if self.every is None:
            return []
        return shifts_by_work(self.strokes, self.slip, self.cut, self.every)

    @property
    def program(self) -> Any:
        if self.every is None:
            return None
        slip, cut = rw.Q(self.slip, "m"), rw.Q(self.cut, "m")
        return rw.SlipCutProgram(slip=slip, cut=cut, every=rw.Q(self.every, "J"))

    def run(self, bin_length: float = BIN, threads: int = 1) -> Any:
        hoist, law, strokes = self.hoist, self.law, self.strokes
        how = {"program": self.program, "threads": threads}
        return run(hoist, law, strokes, self.supply, bin_length, **how)

    def sweeps(self) -> list[Sweep]:
        return sweeps(self.hoist, self.law, self.strokes, self.shifts)

    def simulate(self, bin_length: float = BIN) -> Binned:
        return bin_means(self.sweeps(), bin_edges(self.supply, bin_length))


def any_case(seed: int, size: int = 25, *, worn: bool = False) -> Case:
    """Any campaign with a program that slips its line some times."""
    random = np.random.default_rng(seed)
    hoist = any_hoist(random, any_wear(random) if worn else None)
    law = any_law(random)
    strokes = any_strokes(random, hoist, size)
    slip = float(random.uniform(2.0, 15.0))
    cut = slip * int(random.integers(1, 4))
    work = sum(s.hook_load * abs(s.height_to - s.height_from) * s.count for s in strokes)
    every = work * float(random.uniform(0.05, 0.6))
    used = slip * len(shifts_by_work(strokes, slip, cut, every))
    supply = float(hoist.anchor_at_start()) + used + float(random.uniform(0.0, 20.0))
    return Case(hoist, law, strokes, slip, cut, every, supply)


def bin_lengths(history: Any, bin_length: float, supply: float) -> np.ndarray:
    lengths = np.diff(bin_edges(supply, bin_length)).astype(float)
    assert history.damage.shape == lengths.shape
    return lengths


# Identities


@pytest.mark.parametrize("seed", range(6))
def test_each_sheave_bends_its_multiple_of_the_stroke(seed: int) -> None:
    case = any_case(seed)
    lines = case.hoist.lines
    for stroke in case.strokes[:3]:
        history = case._replace(strokes=[stroke]).run()
        lengths = bin_lengths(history, BIN, case.supply)
        way = abs(stroke.height_to - stroke.height_from) * stroke.count
        # 1 + 2 + … + N at the sheaves, N at each lead sheave, half of N on the drum.
        ways = lines * (lines + 1) / 2 + lines * len(case.hoist.lead_frictions) + lines / 2
        total = float((history.cycles.values * lengths).sum())
        assert total == pytest.approx(ways * way, rel=1e-11)


@settings(max_examples=10, deadline=None)
@given(seeds)
def test_slip_and_cut_lose_nothing(seed: int) -> None:
    case = any_case(seed)
    history = case.run()
    lengths = bin_lengths(history, BIN, case.supply)
    way = sum(abs(s.height_to - s.height_from) * s.count for s in case.strokes)
    lines = case.hoist.lines
    ways = lines * (lines + 1) / 2 + lines * len(case.hoist.lead_frictions) + lines / 2
    assert float((history.cycles.values * lengths).sum()) == pytest.approx(ways * way, rel=1e-11)
    cut = sum(one.cut for one in case.shifts)
    assert history.drum_end_si == pytest.approx(cut, rel=1e-12)
    assert sum(one.end_si - one.start_si for one in history.sections) == pytest.approx(
        cut, rel=1e-12
    )
    slipped = sum(one.slip for one in case.shifts)
    anchor = float(case.hoist.anchor_at_start()) + slipped
    assert history.anchor_si == pytest.approx(anchor, rel=1e-12)
    # What was cut off and what is left make up the whole.
    damage = history.damage.values * lengths
    left = damage[round(cut / BIN) + 1 :].sum()
    off = sum(one.mean * (one.end_si - one.start_si) for one in history.sections)
    straddling = damage[max(round(cut / BIN) - 1, 0) : round(cut / BIN) + 1].sum()
    assert off + left - 1e-12 <= damage.sum() <= off + left + straddling + 1e-12


@settings(max_examples=10, deadline=None)
@given(seeds)
def test_equal_strokes_may_be_told_one_by_one(seed: int) -> None:
    case = any_case(seed, 10)
    # The rows of one stop in any order and any pieces are the same.
    single = [
        one._replace(count=1, may_stop=one.may_stop and i == one.count - 1)
        for one in case.strokes
        for i in range(int(one.count))
    ]
    merged, told = case.run(), case._replace(strokes=single).run()
    np.testing.assert_allclose(told.damage, merged.damage, rtol=1e-12, atol=1e-300)
    np.testing.assert_allclose(told.cycles, merged.cycles, rtol=1e-12, atol=1e-300)


@settings(max_examples=10, deadline=None)
@given(seeds)
def test_twice_the_strokes_do_twice_the_damage(seed: int) -> None:
    case = any_case(seed)
    twice = [one._replace(count=2 * one.count) for one in case.strokes]
    once = case.run()
    double = case._replace(strokes=twice, every=2 * case.every).run()
    np.testing.assert_array_equal(double.damage, 2 * once.damage)
    np.testing.assert_array_equal(double.cycles, 2 * once.cycles)


@settings(max_examples=10, deadline=None)
@given(seeds)
def test_the_sum_over_the_rope_does_not_depend_on_bins(seed: int) -> None:
    case = any_case(seed, worn=True)
    totals = []
    for bin_length in (0.05, 0.1, 0.37, 1.0, 10.0):
        history = case.run(bin_length)
        lengths = bin_lengths(history, bin_length, case.supply)
        totals.append(float((history.damage.values * lengths).sum()))
    np.testing.assert_allclose(totals, totals[0], rtol=1e-11)


@settings(max_examples=10, deadline=None)
@given(seeds)
def test_nothing_is_negative_and_nothing_where_no_sheave_passes(seed: int) -> None:
    case = any_case(seed, worn=True)
    history = case.run()
    simulated = case.simulate()
    for values in (history.damage.values, history.cycles.values, history.damage_by_cause.values):
        assert (values >= 0).all()
    assert (history.damage.values[simulated.scale == 0] == 0).all()
    assert (history.damage.values[simulated.damage > 0] > 0).all()


@settings(max_examples=10, deadline=None)
@given(seeds)
def test_any_number_of_threads_gives_the_same_bits(seed: int) -> None:
    case = any_case(seed, 60, worn=True)
    one = case.run()
    for threads in (2, 3, 5):
        other = case.run(threads=threads)
        assert one.damage.values.tobytes() == other.damage.values.tobytes()
        assert one.cycles.values.tobytes() == other.cycles.values.tobytes()


@settings(max_examples=10, deadline=None)
@given(seeds)
def test_shares_sum_to_one(seed: int) -> None:
    history = any_case(seed, worn=True).run()
    assert float(history.share_by_cause.sum()) == pytest.approx(1.0)
    assert float(history.share_by_operation.sum()) == pytest.approx(1.0)
    # What is no bend at a sheave has no part in this one.
    assert 0.0 < float(history.share_by_sheave.sum()) <= 1.0 + 1e-12
    total = history.damage_by_cause.sum("cause").values
    np.testing.assert_allclose(total, history.damage.values, rtol=1e-12, atol=1e-300)


# Against the simulation


def assert_agrees(actual: np.ndarray, simulated: Binned) -> None:
    """Agree to 1e-12 of what the strokes that touch a bin would do if they covered it."""
    allowed = 1e-12 * simulated.scale
    error = np.abs(actual - simulated.damage)
    worst = int(np.argmax(error - allowed))
    assert (error <= allowed).all(), (
        f"bin {worst}: {actual[worst]:.17g}, simulated {simulated.damage[worst]:.17g}, "
        f"scale {simulated.scale[worst]:.6g}, allowed {allowed[worst]:.6g}"
    )


@settings(max_examples=60, deadline=None)
@given(seeds)
def test_damage_is_that_of_the_simulated_rope(seed: int) -> None:
    case = any_case(seed)
    history, simulated = case.run(), case.simulate()
    assert_agrees(history.damage.values, simulated)
    np.testing.assert_allclose(
        history.cycles.values, simulated.cycles.astype(float), rtol=1e-11, atol=1e-11
    )


@settings(max_examples=40, deadline=None)
@given(seeds)
def test_damage_of_long_bins_is_that_of_the_simulated_rope_to_1e_12(seed: int) -> None:
    # In bins of 8 m what a position is off counts for nothing, and every rounding of sums shows.
    case = any_case(seed, worn=True)
    simulated = case.simulate(8.0)
    error = np.abs(case.run(8.0).damage.values - simulated.damage)
    assert (error <= 1e-12 * simulated.scale)[:-1].all()  # the last bin may be a short one


@settings(max_examples=30, deadline=None)
@given(seeds)
def test_wear_besides_bending_is_that_of_the_simulated_rope(seed: int) -> None:
    case = any_case(seed, worn=True)
    history = case.run()
    every, edges = case.sweeps(), bin_edges(case.supply, BIN)
    assert_agrees(history.damage.values, bin_means(every, edges))
    causes = history.damage_by_cause.cause.values.tolist()
    assert {one.cause for one in every} <= set(causes)
    for cause in causes:
        ours = history.damage_by_cause.sel(cause=cause).values
        assert_agrees(ours, bin_means([one for one in every if one.cause == cause], edges))


@pytest.mark.parametrize("bin_length", [0.1, 0.03, 0.37, 7.0])
def test_bins_of_any_length_agree_with_the_simulated_rope(bin_length: float) -> None:
    case = any_case(11, worn=True)
    assert_agrees(case.run(bin_length).damage.values, case.simulate(bin_length))


@settings(max_examples=10, deadline=None)
@given(seeds)
def test_small_damage_does_not_drown_in_large(seed: int) -> None:
    # One short stroke in the middle does 1e9 times the damage of each of the others.
    case = any_case(seed)
    law = Law(case.law.scale, 9.0)
    low, high = case.hoist.travel / 2, case.hoist.travel / 2 + 0.05
    load = case.strokes[0].hook_load
    light = [one._replace(hook_load=load / 10, count=1) for one in case.strokes]
    heavy = Stroke(load, low, high)
    drowning = case._replace(law=law, strokes=[*light[:12], heavy, *light[12:]], every=None)
    simulated = drowning.simulate()
    light_only = drowning._replace(strokes=light).simulate()
    history = drowning.run()
    assert (simulated.scale >= 1e7 * light_only.scale)[light_only.scale > 0].any()
    assert_agrees(history.damage.values, simulated)
    # Where the heavy stroke does not reach, its damage is not to be felt at all.
    alone = drowning._replace(strokes=light).run()
    away = simulated.scale == light_only.scale
    assert away.any()
    error = np.abs(history.damage.values - alone.damage.values)
    assert (error[away] <= 1e-12 * light_only.scale[away]).all()


def test_the_program_slips_where_the_simulation_does() -> None:
    case = any_case(5, 200)
    case = case._replace(every=case.every / 10, supply=case.supply + 200.0)
    assert len(case.shifts) > 4
    assert_agrees(case.run().damage.values, case.simulate())


def test_no_program_no_slip() -> None:
    case = any_case(5, 200)
    history = rw.run_line(
        rig_of(case.hoist, case.supply),
        campaign_of(case.strokes),
        model=model_of(case.law),
        bin_length=rw.Q(BIN, "m"),
        outside_validity="ignore",
    )
    case = case._replace(every=None)
    assert_agrees(history.damage.values, case.simulate())
    assert history.drum_end_si == 0.0
    assert len(history.sections) == 0
