"""Campaigns of strokes that are known, and what a campaign is as an object."""

from __future__ import annotations

import pickle
from pathlib import Path
from typing import Any

import numpy as np
import pytest

import ropewalk as rw
from ropewalk.errors import InadmissibleError, UnitError

RIG7 = rw.rig.example("rig7")


@pytest.fixture(scope="module")
def campaign() -> rw.Campaign:
    return rw.Campaign.from_plan(rw.load_rig(RIG7))


def test_strokes_that_are_known() -> None:
    made = rw.Campaign.from_strokes(
        rw.Q([100.0, 20.0, 50.0], "kN"),
        rw.Q([0.0, 25.0, 0.0], "m"),
        rw.Q([25.0, 0.0, 10.0], "m"),
        count=[1, 1, 4],
        operation=[0, 0, 2],
        names=("trip", "nothing", "jars"),
        pick_up=[True, False, True],
        may_stop=[False, True, True],
        time=rw.Q([1.0, 2.0, 5.0], "min"),
        trips=[0.0, 0.5, 0.5],
    )
    assert made.work_si.tolist() == [2.5e6, 0.5e6, 2.0e6]
    assert made.work_by_operation.m_as("kJ").tolist() == [3000.0, 0.0, 2000.0]
    rows = [(one.title, one.first_row, one.last_row) for one in made.operations]
    assert rows == [("trip", 0, 1), ("nothing", 2, 1), ("jars", 2, 2)]
    assert made.time_si.tolist() == [60.0, 120.0, 300.0]
    assert made.strokes == 6.0
    assert (made.hook_load.m_as("kN") == [100.0, 20.0, 50.0]).all()


def test_one_value_stands_in_every_row() -> None:
    made = rw.Campaign.from_strokes("100 kN", rw.Q([0.0, 25.0], "m"), rw.Q([25.0, 0.0], "m"))
    assert made.hook_load_si.tolist() == [1e5, 1e5]
    assert not made.pick_up.any()
    assert not made.may_stop.any()
    assert np.isnan(made.time_si).all()


UP: dict[str, Any] = {
    "hook_load": rw.Q([1.0, 1.0], "kN"),
    "height_from": rw.Q([0.0, 1.0], "m"),
    "height_to": rw.Q([1.0, 0.0], "m"),
}


@pytest.mark.parametrize(
    ("wrong", "error", "words"),
    [
        ({"hook_load": [1.0, 1.0]}, UnitError, "hook_load must be a force"),
        ({"height_to": "1 kN"}, UnitError, "height_to must be a length"),
        ({"hook_load": rw.Q([1.0, -1.0], "kN")}, InadmissibleError, "row 1: hook_load = -1000 N"),
        ({"hook_load": rw.Q([1.0, np.nan], "kN")}, InadmissibleError, "row 1: hook_load = nan"),
        ({"height_to": rw.Q([-1.0, 0.0], "m")}, InadmissibleError, r"row 0: height_to.*\[0, 200\]"),
        ({"count": [1.0, 0.0]}, InadmissibleError, "row 1: count = 0"),
        ({"height_to": rw.Q([1.0, 0.0, 1.0], "m")}, InadmissibleError, "height_to 3"),
        ({"hook_load": rw.Q([[1.0, 1.0]], "kN")}, InadmissibleError, "2 axes"),
        ({"operation": [1, 0]}, InadmissibleError, "row 1: operation = 0 is less than 1"),
        ({"operation": [0, 1.5]}, InadmissibleError, "whole numbers"),
        ({"operation": [0, 2], "names": ("a", "b")}, InadmissibleError, "goes up to 2"),
        ({"time": rw.Q([2.0, 1.0], "h")}, InadmissibleError, "row 1: time = 3600"),
        ({"pick_up": [1.0, 0.0]}, UnitError, "pick_up must be True or False"),
        (
            {
                name: rw.Q(np.array([]), unit)
                for name, unit in zip(UP, ("N", "m", "m"), strict=True)
            },
            InadmissibleError,
            "an empty campaign",
        ),
    ],
)
def test_wrong_strokes(wrong: dict[str, Any], error: type[Exception], words: str) -> None:
    with pytest.raises(error, match=words) as caught:
        rw.Campaign.from_strokes(**{**UP, **wrong})
    assert str(caught.value).startswith("Campaign.from_strokes(): ")


# The object


def test_path_and_rig_give_the_same_campaign(campaign: rw.Campaign) -> None:
    assert rw.Campaign.from_plan(RIG7) == campaign
    assert rw.Campaign.from_plan(str(RIG7)) == campaign


def test_campaign_is_frozen_and_pickles(campaign: rw.Campaign) -> None:
    with pytest.raises(ValueError, match="read-only"):
        campaign.hook_load_si[0] = 1.0
    with pytest.raises(AttributeError):
        campaign.events = ()  # type: ignore[misc]
    assert pickle.loads(pickle.dumps(campaign)) == campaign
    assert campaign != rw.Campaign.from_strokes("1 kN", "0 m", "1 m")
    assert (campaign == 5) is False
    assert repr(campaign).startswith("<Campaign: ")


def test_table_of_a_campaign(campaign: rw.Campaign, tmp_path: Path) -> None:
    data = campaign.dataset()
    assert data.sizes == {"row": len(campaign), "plan": len(campaign.operations)}
    assert data.hook_load.attrs["units"] == "N"
    assert data.time.attrs["start"] == "2026-03-02T06:00:00"
    assert float(data.work.sum()) == pytest.approx(campaign.work.m_as("J"), rel=1e-12)
    frame = data[["hook_load", "count"]].to_dataframe()
    assert frame["hook_load"].to_numpy().tolist() == campaign.hook_load_si.tolist()
