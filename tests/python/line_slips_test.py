"""When the line is slipped: by damage taken on and by trips, row by row on a simulated rope."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from line_map_test import BIN, Case, any_case, assert_agrees
from line_rigs import campaign_of, model_of, rig_of
from rope_simulation import Shift
from rope_sweeps import bin_edges, bin_means, sweeps

import ropewalk as rw


def long_case(seed: int) -> Case:
    """A campaign of 60 rows and rope for many slips; each one is cut off."""
    case = any_case(seed, 60)
    return case._replace(every=None, cut=case.slip, supply=case.supply + 300.0)


def slipped_rows(history: Any) -> list[int]:
    return [one.row for one in history.events if one.kind == "slip"]


def run(case: Case, campaign: Any, **trigger: float) -> Any:
    slip = rw.Q(case.slip, "m")
    return rw.run_line(
        rig_of(case.hoist, case.supply),
        campaign,
        program=rw.SlipCutProgram(slip=slip, cut=slip, **trigger),
        model=model_of(case.law),
        bin_length=rw.Q(BIN, "m"),
        outside_validity="ignore",
    )


def assert_simulated(history: Any, case: Case, shifts: list[Shift]) -> None:
    assert slipped_rows(history) == [one.after for one in shifts]
    every = sweeps(case.hoist, case.law, case.strokes, shifts)
    binned = bin_means(every, bin_edges(case.supply, BIN))
    assert_agrees(history.damage.values, binned)


@pytest.mark.parametrize("seed", range(6))
def test_slips_by_the_damage_any_place_has_taken_on(seed: int) -> None:
    case = long_case(seed)
    limit = float(case.simulate().damage.max()) / 5
    edges = bin_edges(case.supply, BIN)
    shifts: list[Shift] = []
    before = np.zeros(len(edges) - 1)
    for row, stroke in enumerate(case.strokes):
        done = sweeps(case.hoist, case.law, case.strokes[: row + 1], shifts)
        damage = bin_means(done, edges).damage
        if stroke.may_stop and (damage - before).max() >= limit:
            shifts.append(Shift(row, case.slip, case.slip))
            before = damage
    assert len(shifts) > 2
    assert_simulated(run(case, campaign_of(case.strokes), damage=limit), case, shifts)


@pytest.mark.parametrize("seed", range(6))
def test_slips_by_trips(seed: int) -> None:
    case = long_case(seed)
    half_trips = np.random.default_rng(seed).integers(0, 2, len(case.strokes)) / 2
    shifts, done = [], 0.0
    for row, (stroke, trips) in enumerate(zip(case.strokes, half_trips, strict=True)):
        done += float(trips)
        if stroke.may_stop and done >= 3.0:
            shifts.append(Shift(row, case.slip, case.slip))
            done = 0.0
    assert len(shifts) > 2
    campaign = rw.Campaign.from_strokes(
        hook_load=rw.Q([one.hook_load for one in case.strokes], "N"),
        height_from=rw.Q([one.height_from for one in case.strokes], "m"),
        height_to=rw.Q([one.height_to for one in case.strokes], "m"),
        count=[one.count for one in case.strokes],
        may_stop=[one.may_stop for one in case.strokes],
        trips=np.cumsum(half_trips),
    )
    assert_simulated(run(case, campaign, trips=3.0), case, shifts)
