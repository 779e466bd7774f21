"""Rules for the drawworks: pull, line pull, speed, power, usual power."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
import pytest
from rule_cases import HP, KIP, RADIUS, RIG7, about, asked, plain, status, verdict

import ropewalk as rw

# Torque at base speed over all: 1500 hp at 800 rpm, low gear 10, gear 0.95 and drum shaft 0.97,
# ten lines without friction.
PULL = 1500.0 * HP / (800.0 * np.pi / 30.0) * 10.0 * 0.95 * 0.97 * 10.0 / RADIUS


@pytest.mark.parametrize(("share", "expected"), [(0.99, "pass"), (1.0, "pass"), (1.01, "fail")])
def test_pull_of_the_motors(share: float, expected: str) -> None:
    found = verdict("drawworks.pull", asked(plain(), share * PULL))
    assert str(found.status) == expected
    assert found.value == pytest.approx(PULL, rel=1e-12)
    if share != 1.0:
        assert (found.inputs["speed, steadily"] == "none") == (expected == "fail")
    assert found.inputs["gear"] == "1"


def test_pull_covers_what_hangs_and_what_is_stuck() -> None:
    found = about("drawworks.pull", RIG7)
    assert list(found) == ["casing, 2200 m", "pull on a stuck string"]
    assert {str(one.status) for one in found.values()} == {"pass"}
    hoist = rw.rig.hoist(RIG7)
    layer = hoist.layer_at(rw.Q(RIG7.travel, "m"))
    expected = hoist.pull("0 m/s", gear=1, layer=layer).m_as("N")
    assert found["casing, 2200 m"].value == pytest.approx(expected)
    more = replace(RIG7, limits=replace(RIG7.limits, overpull=200.0 * KIP))
    stuck = about("drawworks.pull", more)["pull on a stuck string"]
    assert str(stuck.status) == "fail"


def nameplate(line_pull: float) -> Any:
    rig = asked(plain(), 400.0 * KIP)
    return replace(rig, drawworks=replace(rig.drawworks, line_pull=line_pull))


@pytest.mark.parametrize(
    ("line_pull", "expected"), [(41.0 * KIP, "pass"), (40.0 * KIP, "pass"), (39.0 * KIP, "fail")]
)
def test_rated_line_pull(line_pull: float, expected: str) -> None:
    # A tenth of 400 kip without friction.
    assert status("drawworks.line_pull", nameplate(line_pull)) == expected


def textbook(block_speed: float, motors: rw.drawworks.Motors | None = None) -> Any:
    """Example 1.2 of Bourgoyne et al.: 300,000 lb on 8 lines, 500 hp, 0.841 to the hook."""
    one = motors or rw.drawworks.Motors(1, "500 hp", base_speed="100 rpm", top_speed="2000 rpm")
    machine = rw.drawworks.Drawworks(one, [rw.drawworks.Gear(10.0, 0.841)], 1.0)
    rig = plain()
    operation = replace(RIG7.heaviest_trip, block_speed=block_speed)
    rest = operation.heaviest_hook_load(0.0)
    return replace(
        rig,
        reeving=replace(rig.reeving, lines=8),
        drawworks=replace(rig.drawworks, machine=machine),
        drawworks_power=500.0 * HP,
        operations=(operation,),
        block=replace(rig.block, weight=300.0 * KIP - rest),
    )


FOOT_PER_MINUTE = 0.3048 / 60.0


@pytest.mark.parametrize(
    ("feet_per_minute", "expected"),
    # Printed in the book: 46.3 ft/min; 0.841 x 500 x 33,000 / 300,000 is 46.255.
    [(46.2, "pass"), (46.255, "pass"), (46.3, "warn")],
)
@pytest.mark.parametrize("rule_id", ["drawworks.speed", "drawworks.power"])
def test_speed_and_power_of_the_textbook(
    rule_id: str, feet_per_minute: float, expected: str
) -> None:
    found = verdict(rule_id, textbook(feet_per_minute * FOOT_PER_MINUTE))
    assert str(found.status) == expected
    if rule_id == "drawworks.speed":
        assert found.value == pytest.approx(46.255 * FOOT_PER_MINUTE, rel=1e-9)
    else:
        assert found.limit == pytest.approx(500.0 * HP)


@pytest.mark.parametrize("rule_id", ["drawworks.speed", "drawworks.power"])
def test_speed_and_power_need_a_speed_in_the_plan(rule_id: str) -> None:
    slow = replace(RIG7, operations=tuple(replace(o, block_speed=0.0) for o in RIG7.operations))
    assert "block_speed" in verdict(rule_id, slow).reason
    assert status(rule_id, slow) == "not applicable"


@pytest.mark.parametrize(
    ("power", "least", "most"),
    [
        (550.0, "pass", "pass"),  # 550 to 4000 hp: common practice, no source
        (4000.0, "pass", "pass"),
        (549.0, "warn", "pass"),
        (4001.0, "pass", "warn"),
    ],
)
def test_usual_power(power: float, least: str, most: str) -> None:
    rig = replace(RIG7, drawworks_power=power * HP)
    assert status("drawworks.usual_power_least", rig) == least
    assert status("drawworks.usual_power_most", rig) == most
    assert verdict("drawworks.usual_power_least", rig).rule.standing == "common practice"


@pytest.mark.parametrize(
    "rule_id", ["drawworks.pull", "drawworks.line_pull", "drawworks.speed", "drawworks.power"]
)
def test_what_cannot_be_told(rule_id: str) -> None:
    found = verdict(rule_id, replace(RIG7, drawworks=None))
    assert (str(found.status), "[drawworks.motors]" in found.reason) == ("not applicable", True)
    assert status(rule_id, asked(RIG7, None)) == "not applicable"


def test_a_drum_that_does_not_hold_the_line_is_not_computed() -> None:
    small = replace(RIG7, drum=replace(RIG7.drum, layers=2))
    for rule_id in ("drawworks.pull", "drawworks.speed", "drawworks.power"):
        assert status(rule_id, small) == "not computed"
