"""Notes on unusual sizes."""

from __future__ import annotations

from dataclasses import replace

import pytest
from rule_cases import INCH, OSPREY, RIG7, about, asked, verdicts

import ropewalk as rw


@pytest.mark.parametrize(
    ("inches", "least", "most"),
    [
        (54.0, "pass", "pass"),
        (42.0, "pass", "pass"),  # 42 to 72 in: common practice, no source
        (72.0, "pass", "pass"),
        (41.0, "warn", "pass"),
        (73.0, "pass", "warn"),
    ],
)
def test_an_unusual_sheave_is_noted(inches: float, least: str, most: str) -> None:
    rig = replace(RIG7, crown=replace(RIG7.crown, diameter=inches * INCH))
    subject = "crown-block sheave diameter"
    assert str(about("trade.usual_least", rig)[subject].status) == least
    assert str(about("trade.usual_most", rig)[subject].status) == most


@pytest.mark.parametrize("rule_id", ["trade.usual_least", "trade.usual_most"])
def test_the_examples_are_of_usual_size(rule_id: str) -> None:
    for rig in (RIG7, OSPREY):
        found = verdicts(rule_id, rig)
        assert {str(one.status) for one in found} == {"pass"}
        assert {one.rule.standing for one in found} == {"common practice"}


def test_without_a_plan_there_is_no_depth() -> None:
    assert "depth of the well" in about("trade.usual_least", RIG7)
    assert "depth of the well" not in about("trade.usual_least", asked(RIG7, None))
    keys = [one.key for one in rw.rig.practice(asked(RIG7, None))]
    assert "plan.depth" not in keys
    assert len(keys) == len(rw.rig.practice(RIG7)) - 1
