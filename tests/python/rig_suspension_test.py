"""Rig files: load path, elevators and hook spring, read and refused; the weakest part of a rig."""

from __future__ import annotations

from pathlib import Path

import pytest
from rig_line_test import RIG7, load

import ropewalk as rw
from ropewalk.errors import InadmissibleError
from ropewalk.testing import assert_close


def bare() -> str:
    """Rig 7 without mast and suspension."""
    return RIG7[: RIG7.index("[mast]\n")] + RIG7[RIG7.index("[mud]\n") :]


def test_the_load_path_of_rig7() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    assert rig.suspension is not None
    assert [part.name for part in rig.suspension.parts] == [
        "hook",
        "top drive",
        "links",
        "elevator",
    ]
    hung = sum(part.weight for part in rig.suspension.parts)
    assert 0.0 < hung < rig.block.weight


def test_the_weakest_part_of_rig7_by_hand() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    margins = rw.suspension.rig_margins(rig)
    assert margins.names == (
        "mast",
        "crown block",
        "drilling line",
        "traveling block",
        "hook",
        "top drive",
        "links",
        "elevator",
    )
    assert margins.hook_load_si == rig.largest_hook_load == rig.stuck_hook_load
    # Line: 192,000 lb at a factor of 3; fast-line factor of 10 lines at 1.04 is 0.12329.
    assert margins.weakest == "drilling line"
    assert_close(margins.largest_hook_load, rw.Q(64.0 / 0.12329, "kip"), relative=1e-4)
    # Elevator: 250 short tons, and 46,000 lb less its own 900 hang above it.
    assert_close(margins.hook_load_at_rating[-1], rw.Q(500.0 + 46.0 - 0.9, "kip"))
    assert margins.overloaded == ()
    casing = rw.suspension.rig_margins(rig, service="setting casing")
    assert casing.weakest == "elevator"  # a factor of 2 is asked for then
    assert rw.suspension.rig_margins(rig, "600 kip").overloaded == ("drilling line", "elevator")


def test_a_rig_without_them_has_its_blocks_and_line(tmp_path: Path) -> None:
    rig = load(tmp_path, bare())
    assert (rig.mast, rig.suspension) == (None, None)
    margins = rw.suspension.rig_margins(rig)
    assert margins.names == ("crown block", "drilling line", "traveling block")
    with pytest.raises(InadmissibleError, match="no hook spring"):
        rw.suspension.rig_bounce(rig, "4 kip")


def test_the_hook_of_rig7_bounces_and_settles() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    bounce = rw.suspension.rig_bounce(rig, "4 kip")
    assert_close(bounce.start, "-0.8 in")  # 4 kip on 5 kip/in
    assert bounce.start < bounce.highest < -bounce.start
    assert not bounce.goes_slack
    assert bounce.settled("0.1 in").m_as("s") < 2.0


def test_the_elevators_of_rig7_carry_the_strings_of_the_plan_by_hand() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    drilling, casing = rw.suspension.rig_elevators(rig)
    # 47 lb/ft over 2200 m in mud of 1.10 kg/liter, a buoyancy of 1 - 1.10/7.85, with 12 % of drag,
    # and 1.7 kip of elevator.
    in_mud = 47.0 * 2200.0 / 0.3048 * (1.0 - 1.10 / 7.85)
    assert_close(casing.load, rw.Q(1.12 * in_mud / 1000.0 + 1.7, "kip"), relative=1e-9)
    assert_close(casing.margin, rw.Q(500.0, "kip") - casing.load)
    # The deepest trip, and 100 kip of overpull: what the elevator at the bottom of the load path
    # carries under the largest hook load.
    margins = rw.suspension.rig_margins(rig)
    assert_close(drilling.load, rw.Q(margins.load_si[-1], "N"), relative=1e-12)
    assert rw.suspension.rig_findings(rig) == []


def test_an_elevator_below_its_load_is_a_finding_with_numbers(tmp_path: Path) -> None:
    old = 'kind = "slip type", rated_load = "250 short_ton_force"'
    assert old in RIG7
    rig = load(tmp_path, RIG7.replace(old, old.replace("250", "150")))
    (finding,) = rw.suspension.rig_findings(rig)
    assert (finding.kind, finding.part) == ("elevator overloaded", "slip type")
    # 150 short tons are 1334 kN; the casing weighs 1461 kN with drag and elevator.
    for word in ("production_casing", "1461 kN", "rated 1334 kN", "126 kN too much", "2200 m"):
        assert word in finding.text


def test_without_elevators_of_their_own_strings_hang_in_the_last_part(tmp_path: Path) -> None:
    begin, end = RIG7.index("elevator = [{"), RIG7.index("[suspension.hook_spring]")
    rig = load(tmp_path, RIG7[:begin] + RIG7[end:])
    assert [one.elevator for one in rw.suspension.rig_elevators(rig)] == ["elevator", "elevator"]
    with pytest.raises(InadmissibleError, match="no suspension"):
        rw.suspension.rig_elevators(load(tmp_path, bare()))


def test_bearings_lower_the_rating_of_their_part(tmp_path: Path) -> None:
    old = 'name = "top drive", rated_load = "350 short_ton_force"'
    text = RIG7.replace(old, old + ', bearing_rating = "200 short_ton_force"')
    text = text.replace("[suspension]\n", '[suspension]\nsheave_bearing_rating = "35700 lbf"\n')
    rig = load(tmp_path, text)
    margins = rw.suspension.rig_margins(rig)
    rating = dict(zip(margins.names, margins.rating, strict=True))
    # API Spec 8C: 5 sheaves of 35,700 lbf are 5 * 35700 / 714 = 250 short tons.
    assert_close(rating["traveling block"], rw.Q(250.0, "short_ton_force"))
    assert_close(rating["top drive"], rw.Q(200.0, "short_ton_force"))
    findings = rw.suspension.rig_findings(rig)
    assert [(one.kind, one.part) for one in findings] == [
        ("part overloaded", "top drive"),
        ("bearing governs", "traveling block"),
        ("bearing governs", "top drive"),
    ]
    assert "rated 1779 kN" in findings[0].text


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ('weight = "22000 lbf"', 'weight = "38000 lbf"', ["suspension.part", "block.weight"]),
        (
            'name = "links"',
            'name = "hook"',
            ["suspension.part[3].name = 'hook'", "suspension.part[1]", "once"],
        ),
        ('name = "links"', 'name = "traveling block"', ["suspension.part[3].name", "every hoist"]),
        (
            'string = "production_casing", tub',
            'string = "liner", tub',
            ["suspension.elevator[2].string = 'liner'", "drilling, production_casing"],
        ),
        (
            'string = "production_casing", tub',
            'string = "drilling", tub',
            ["suspension.elevator[2].string", "already"],
        ),
        (
            'kind = "slip type"',
            'kind = "single joint"',
            ["suspension.elevator[2].kind", "side door"],
        ),
        (
            'tubular = "collared casing"',
            'tubular = "casings"',
            ["suspension.elevator[2].tubular", "collared casing"],
        ),
        (
            'tubular = "collared casing"',
            'tubular = "single joint of casing"',
            ["suspension.elevator[2].tubular", "not for a string"],
        ),
        ('weight = "900 lbf"', 'weight = "-900 lbf"', ["suspension.part", "weight"]),
        ('damping_up = "250 lbf*s/in"', 'damping_up = "250 lbf/in"', ["damping_up", "a damping"]),
    ],
)
def test_what_cannot_be_is_refused_by_key(
    tmp_path: Path, old: str, new: str, words: list[str]
) -> None:
    assert old in RIG7
    with pytest.raises(rw.rig.RigFileError) as caught:
        load(tmp_path, RIG7.replace(old, new, 1))
    for word in words:
        assert word in str(caught.value)
