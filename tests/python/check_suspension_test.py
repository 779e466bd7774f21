"""Rule for the load path: each part against its nameplate."""

from __future__ import annotations

from dataclasses import replace

import pytest
from rule_cases import KIP, OSPREY, RIG7, about, asked, plain, status, verdicts

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
    assert names == ["crown block", "traveling block", "hook", "top drive", "links", "elevator"]
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
