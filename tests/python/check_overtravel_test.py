"""Rules for the over-travel devices: margins, principles, holding, room."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest
from rule_cases import OSPREY, RADIUS, RIG7, about, asked, plain, status, verdict, with_device

import ropewalk as rw

G = 9.80665
SPRINGS = 2 * 1 * 2 * 90e3 * 0.35 * 0.70  # torque of the emergency calipers by hand, N m
LOAD = 1.5e6
IDS = [rule.id for rule in rw.check.RULES if rule.subject == "overtravel"]


def way(load: float, speed: float, up: bool) -> float:
    """Way from set point to standstill (Newton): half a second, then even braking, m."""
    mass = load / G + 1.6e6
    push = 0.0 if up else load / mass
    brake = SPRINGS * 10.0 / RADIUS
    slow = min((brake + load) / mass, G) if up else (brake - load) / mass
    fast = speed + push * 0.5
    return speed * 0.5 + 0.5 * push * 0.5**2 + fast**2 / (2.0 * slow)


def left(up: bool) -> float:
    """Least of block alone and load, at the speeds of Rig 7: crown at 34 m, floor at -2.5 m."""
    room, speed = (34.0 - 30.0, 1.5) if up else (-0.3 + 2.5, 0.8)
    return room - max(way(load, speed, up) for load in (RIG7.block.weight, LOAD))


def rig_with(margin: float) -> Any:
    rig = with_device(asked(plain(), LOAD), crown="30 m", floor="-0.3 m")
    return replace(rig, overtravel=replace(rig.overtravel, margin=margin))


@pytest.mark.parametrize(("end", "up"), [("crown", True), ("floor", False)])
def test_margin_by_hand(end: str, up: bool) -> None:
    for change, expected in ((-1e-3, "pass"), (1e-3, "fail")):
        found = about("overtravel.margin", rig_with(left(up) + change))[f"encoder, {end}"]
        assert found.value == pytest.approx(left(up), rel=1e-9)
        assert str(found.status) == expected


@pytest.mark.parametrize("end", ["crown", "floor"])
def test_a_margin_just_left_is_left(end: str) -> None:
    value = about("overtravel.margin", rig_with(0.5))[f"encoder, {end}"].value
    assert value is not None
    found = about("overtravel.margin", rig_with(value))[f"encoder, {end}"]
    assert (found.margin, str(found.status)) == (0.0, "pass")


def test_a_block_that_never_stops_fails_and_says_so() -> None:
    heavy = 1.01 * SPRINGS * 10.0 / RADIUS
    rig = with_device(asked(plain(), heavy), crown="30 m", floor="-0.3 m")
    found = about("overtravel.margin", rig)
    assert found["encoder, floor"].value == -math.inf
    assert str(found["encoder, floor"].status) == "fail"
    assert "does not stop" in found["encoder, floor"].reason
    assert str(found["encoder, crown"].status) == "pass"


def test_margins_of_the_plan_are_those_of_the_check() -> None:
    assert RIG7.overtravel is not None
    check = RIG7.overtravel.check(RIG7)
    found = about("overtravel.margin", RIG7)
    for name, row in zip(check.devices, check.margin_si, strict=True):
        for end, up in (("crown", True), ("floor", False)):
            value = found[f"{name}, {end}"].value
            assert value is not None
            # The block alone strokes in the plan too; the heaviest load is lowered there with drag.
            least = float(row[check.hoisting == up].min())
            assert value == pytest.approx(least, rel=1e-9) if up else value < least


def test_drag_is_not_counted_on_to_stop_the_block() -> None:
    """Casing of Rig 7 on its way down with and without the drag of the plan: the same margin."""
    even = tuple(replace(one, block_acceleration=0.0) for one in RIG7.operations)
    without = tuple(replace(one, drag_down=0.0) for one in even)
    free = about("overtravel.margin", replace(RIG7, operations=without))
    found = about("overtravel.margin", replace(RIG7, operations=even))
    for name in (one for one in found if one.endswith("floor")):
        assert found[name].value == pytest.approx(free[name].value, rel=1e-9)


def test_two_principles_are_on_the_limit_and_one_is_short_of_it() -> None:
    found = verdict("overtravel.principles", RIG7)
    assert (found.value, found.limit, found.margin, str(found.status)) == (2.0, 2.0, 0.0, "pass")
    one = with_device(RIG7, crown="30 m", floor="-0.3 m")
    assert status("overtravel.principles", one) == "warn"
    device = one.overtravel.devices[0]
    same = replace(one, overtravel=replace(one.overtravel, devices=(device, device)))
    assert status("overtravel.principles", same) == "warn"


@pytest.mark.parametrize(("share", "expected"), [(0.99, "pass"), (1.0, "pass"), (1.01, "fail")])
def test_the_brake_holds_at_the_set_points(share: float, expected: str) -> None:
    rig = with_device(asked(plain(), share * SPRINGS * 10.0 / RADIUS), crown="30 m", floor="-0.3 m")
    found = about("overtravel.holding", rig)
    assert list(found) == ["encoder, crown", "encoder, floor"]
    assert {str(one.status) for one in found.values()} == {expected}


def test_more_layers_at_the_crown_are_harder_to_hold() -> None:
    found = about("overtravel.holding", RIG7)
    crown = found["encoder of the block, crown"].value
    floor = found["encoder of the block, floor"].value
    assert crown is not None
    assert floor is not None
    assert crown < floor


@pytest.mark.parametrize(
    ("crown", "floor", "statuses"),
    [
        ("30 m", "-0.3 m", ["pass", "pass"]),
        ("29 m", "0 m", ["pass", "pass"]),  # the travel of Rig 7, 37 m less 8 m
        ("28.9 m", "0.1 m", ["warn", "warn"]),
    ],
)
def test_room_to_work(crown: str, floor: str, statuses: list[str]) -> None:
    found = about("overtravel.room", with_device(RIG7, crown=crown, floor=floor))
    assert [str(one.status) for one in found.values()] == statuses


@pytest.mark.parametrize("rule_id", IDS)
def test_what_is_not_there_is_not_applicable(rule_id: str) -> None:
    assert status(rule_id, OSPREY) == "not applicable"


@pytest.mark.parametrize("rule_id", ["overtravel.margin", "overtravel.holding"])
def test_without_a_load_or_a_brake_there_is_nothing_to_say(rule_id: str) -> None:
    assert status(rule_id, asked(RIG7, None)) == "not applicable"
    assert status(rule_id, replace(RIG7, brake=None)) == "not applicable"


@pytest.mark.parametrize("rule_id", ["overtravel.margin", "overtravel.holding"])
def test_a_drum_that_does_not_hold_the_line_is_not_computed(rule_id: str) -> None:
    rig = asked(replace(RIG7, drum=replace(RIG7.drum, layers=1, laps_per_layer=10.0)), 1e6)
    assert status(rule_id, rig) == "not computed"


def test_a_load_asked_for_beside_the_plan_counts() -> None:
    beside = replace(asked(RIG7, 2e6), operations=RIG7.operations)
    planned = about("overtravel.margin", RIG7)
    found = about("overtravel.margin", beside)
    # Heavier than all of the plan: it takes longer to stop on the way down.
    for subject, one in found.items():
        assert one.value is not None
        assert planned[subject].value is not None
        if subject.endswith("floor"):
            assert one.value < planned[subject].value
            assert one.inputs["at worst with a hook load of"] == "2000 kN"
        else:
            assert one.value == pytest.approx(planned[subject].value)
