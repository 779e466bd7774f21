"""Rule for the load path: each part against its nameplate."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from rule_cases import KIP, LBF, OSPREY, RIG7, about, asked, plain, status, verdicts

import ropewalk as rw

# Elevator of Rig 7: 250 short tons, and 46 kip less its own 0.9 kip hang above it.
ELEVATOR = (500.0 + 46.0 - 0.9) * KIP


@pytest.mark.parametrize(
    ("load", "expected"),
    [(ELEVATOR - KIP, "pass"), (ELEVATOR, "pass"), (ELEVATOR + KIP, "fail")],
)
def test_the_elevator_against_its_rating(load: float, expected: str) -> None:
    found = about("suspension.rating", asked(RIG7, load))
    assert str(found["elevator"].status) == expected
    assert found["elevator"].limit == pytest.approx(500.0 * KIP)
    assert {str(one.status) for name, one in found.items() if name != "elevator"} == {"pass"}


@pytest.mark.parametrize(("share", "expected"), [(0.99, "pass"), (1.0, "pass"), (1.01, "fail")])
def test_the_crown_block_carries_two_lines_more(share: float, expected: str) -> None:
    # Without friction W (10 + 2)/10 on 500 short tons, whatever the parts below bear.
    rig = asked(plain(), share * 1000.0 * KIP / 1.2)
    found = about("suspension.rating", rig)
    assert str(found["crown block"].status) == expected


def test_every_part_has_one_verdict_from_the_crown_down() -> None:
    names = [one.subject for one in verdicts("suspension.rating", RIG7)]
    # Both strings of the plan have elevators of their own; a load asked for hangs in the last part.
    assert names == ["crown block", "traveling block", "hook", "top drive", "links"]
    beside = replace(RIG7, limits=replace(RIG7.limits, hook_load=300.0 * KIP))
    assert [one.subject for one in verdicts("suspension.rating", beside)] == [*names, "elevator"]
    assert [one.subject for one in verdicts("suspension.rating", OSPREY)] == names[:2]
    assert all("API Spec 8A, 8C" in one.source for one in verdicts("suspension.rating", RIG7))


def test_a_worn_set_of_links_fails_under_the_plan() -> None:
    # Stuck pull 437.0 kip, less 43.6 kip that hang above the links.
    parts = RIG7.suspension.parts
    worn = tuple(replace(p, rated_load=393.0 * KIP) if p.name == "links" else p for p in parts)
    rig = replace(RIG7, suspension=replace(RIG7.suspension, parts=worn))
    assert str(about("suspension.rating", rig)["links"].status) == "fail"


def test_an_odd_number_of_lines_does_not_stop_the_parts_from_being_checked() -> None:
    rig = replace(RIG7, reeving=replace(RIG7.reeving, lines=9))
    assert {str(one.status) for one in verdicts("suspension.rating", rig)} == {"pass"}


def test_a_load_less_than_the_block_cannot_be() -> None:
    assert status("suspension.rating", asked(RIG7, 10.0 * KIP)) == "not computed"


def test_without_a_load_there_is_nothing_to_say() -> None:
    assert status("suspension.rating", asked(RIG7, None)) == "not applicable"


def test_the_parts_need_no_design_factor_of_the_line() -> None:
    rig = asked(RIG7, ELEVATOR)
    without = replace(rig, limits=replace(rig.limits, design_factor_standard=""))
    assert about("suspension.rating", without).keys() == about("suspension.rating", rig).keys()
    assert {str(one.status) for one in verdicts("suspension.rating", without)} == {"pass"}


def elevators(rig: Any = RIG7) -> list[Any]:
    return verdicts("suspension.elevator", rig)


def rated(string: str, load: float) -> Any:
    path = RIG7.suspension
    own = tuple(
        replace(one, rated_load=load) if one.string == string else one for one in path.elevators
    )
    return replace(RIG7, suspension=replace(path, elevators=own))


#: Casing of Rig 7, 2200 m at 47 lb/ft in mud of 1.10 kg/l, drag 12 %; the block at 0.4 m/s².
CASING = 2200.0 / 0.3048 * 47.0 * LBF * (1.0 - 1.10 / 7.85) * 1.12
HUNG = (CASING + 1.7 * KIP) * (1.0 + 0.4 / 9.80665)


@pytest.mark.parametrize(("share", "expected"), [(0.999, "fail"), (1.001, "pass")])
def test_casing_hangs_in_its_own_elevator(share: float, expected: str) -> None:
    # The pull on a stuck string, which is heavier, does not hang there.
    _, casing = elevators(rated("production_casing", share * HUNG))
    assert (casing.subject, str(casing.status)) == (
        "slip type elevator of production_casing",
        expected,
    )
    assert casing.value == pytest.approx(HUNG, rel=1e-6)


def test_an_elevator_carries_what_its_string_is_worked_out_to_weigh() -> None:
    # Another way to the same load: `rig_elevators`, which leaves the block at constant speed.
    drilling, casing = elevators()
    found = {one.string: one.load_si for one in rw.suspension.rig_elevators(RIG7)}
    assert drilling.value == pytest.approx(found["drilling"])
    assert casing.value == pytest.approx(found["production_casing"] * (1.0 + 0.4 / 9.80665))


def test_a_load_that_speeds_up_is_heavier_than_at_rest() -> None:
    # API Spec 8C rates for static and dynamic load together.
    casing = tuple(one for one in RIG7.operations if one.kind == "casing")
    rig = replace(RIG7, operations=casing, limits=replace(RIG7.limits, overpull=0.0))
    block = about("suspension.rating", rig)["traveling block"]
    assert block.value == pytest.approx((CASING + 46.0 * KIP) * (1.0 + 0.4 / 9.80665), rel=1e-6)
    slow = replace(rig, operations=(replace(casing[0], block_acceleration=0.0),))
    still = about("suspension.rating", slow)["traveling block"]
    assert still.value == pytest.approx(CASING + 46.0 * KIP, rel=1e-6)


def test_a_file_without_elevators_has_the_last_part() -> None:
    rig = replace(RIG7, suspension=replace(RIG7.suspension, elevators=()))
    assert status("suspension.elevator", rig) == "not applicable"
    assert "elevator" in about("suspension.rating", rig)
