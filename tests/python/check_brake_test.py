"""Rules for the brakes: holding, emergency calipers, lowering, stopping, heat."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import numpy as np
import pytest
from rule_cases import (
    INCH,
    LBF,
    OSPREY,
    RADIUS,
    RIG7,
    about,
    asked,
    plain,
    status,
    verdict,
    verdicts,
)

import ropewalk as rw
from ropewalk._brake_stop import CAUTION
from ropewalk.check import Facts
from ropewalk.check.cautions import CAUTIONS, cautions_of
from ropewalk.check.house import HouseLimits
from ropewalk.check.run import judge

G = 9.80665
# Calipers x 2 pads x force x friction x radius, by hand.
SERVICE = 2 * 3 * 2 * 75e3 * 0.35 * 0.70
SPRINGS = 2 * 1 * 2 * 90e3 * 0.35 * 0.70
LOAD_OF_SLIPS = 1.0e6
IDS = [rule.id for rule in rw.check.RULES if rule.subject == "brake"]


def load_of(torque: float) -> float:
    """Hook load with a torque at the drum of the plain rig, N."""
    return torque * 10.0 / RADIUS


def with_factor(key: str, load: float, rig: Any = None) -> Any:
    rig = asked(plain() if rig is None else rig, load)
    return replace(rig, brake=replace(rig.brake, required=rw.brake.required_factor(key)))


@pytest.mark.parametrize(
    ("key", "factor"),
    # 29 CFR 1910.179(f)(2) and the others of reference-cases/brake/rules_holding-factors.toml.
    [
        ("OSHA 1910.179 control braking", 1.25),
        ("Marine Order 32 winch", 1.5),
        ("AISE single brake", 1.5),
        ("ISO 18296 hydraulic", 1.25),
    ],
)
@pytest.mark.parametrize(("share", "expected"), [(0.99, "pass"), (1.0, "pass"), (1.01, "fail")])
def test_holding_factor_of_the_whole_brake(
    key: str, factor: float, share: float, expected: str
) -> None:
    found = verdict(
        "brake.holding", with_factor(key, share * load_of((SERVICE + SPRINGS) / factor))
    )
    assert (str(found.status), found.limit) == (expected, factor)
    assert found.subject == "all calipers"
    assert found.value == pytest.approx(factor / share, rel=1e-12)


@pytest.mark.parametrize(("share", "expected"), [(0.99, "pass"), (1.0, "pass"), (1.01, "fail")])
def test_each_of_two_brakes_holds_alone(share: float, expected: str) -> None:
    found = about(
        "brake.holding", with_factor("OSHA 1910.179 each of two", share * load_of(SPRINGS))
    )
    service, springs = found.values()
    assert str(service.status) == "pass"
    assert str(springs.status) == expected
    assert "emergency" in springs.subject
    assert "1910.179" in springs.source


def test_a_factor_of_hoisting_torque_counts_the_friction_of_the_sheaves() -> None:
    rig = replace(plain(), reeving=replace(RIG7.reeving, sheave_friction=1.04))
    hoisting = verdict("brake.holding", with_factor("AISE single brake", 1e6, rig))
    at_rest = verdict("brake.holding", with_factor("Marine Order 32 winch", 1e6, rig))
    # Fast-line factor of ten lines at 1.04: 0.12329 (Well Engineers Notebook, 1.233/10).
    assert at_rest.value / hoisting.value == pytest.approx(1.2329, rel=1e-4)


def test_a_factor_of_motor_torque_cannot_be_told() -> None:
    found = verdict("brake.holding", with_factor("MIL-HDBK-1038 with eddy brake", 1e6))
    assert str(found.status) == "not computed"
    assert "motor" in found.reason


@pytest.mark.parametrize(("share", "expected"), [(0.99, "pass"), (1.0, "pass"), (1.01, "fail")])
def test_springs_alone_hold_what_hangs(share: float, expected: str) -> None:
    found = verdict("brake.emergency", asked(plain(), share * load_of(SPRINGS)))
    assert (str(found.status), found.limit) == (expected, 1.0)
    assert found.value == pytest.approx(1.0 / share, rel=1e-12)


def test_springs_that_are_not_there_do_not_hold() -> None:
    disc = rw.brake.DiscBrake(
        discs=2,
        service_per_disc=3,
        emergency_per_disc=0,
        service_force="75 kN",
        emergency_force="90 kN",
        pad_radius="0.7 m",
        lining_friction=0.35,
    )
    rig = replace(RIG7, brake=replace(RIG7.brake, disc=disc))
    found = verdict("brake.emergency", rig)
    assert (found.value, str(found.status)) == (0.0, "fail")


@pytest.mark.parametrize(("beyond", "expected"), [(-1e3, "pass"), (0.0, "pass"), (1e3, "warn")])
def test_springs_alone_against_the_pull_on_a_stuck_string(beyond: float, expected: str) -> None:
    rig = plain()
    trip = rig.heaviest_trip.heaviest_hook_load(rig.block.weight)
    overpull = load_of(SPRINGS) - trip + beyond
    rig = replace(rig, limits=replace(rig.limits, overpull=overpull))
    found = verdict("brake.emergency_stuck", rig)
    assert str(found.status) == expected
    # What hangs free is less, and held.
    assert status("brake.emergency", rig) == "pass"


def test_no_stuck_string_without_a_plan() -> None:
    assert status("brake.emergency_stuck", asked(RIG7, 1e6)) == "not applicable"


def with_eddy(load: float, **changed: Any) -> Any:
    rig = asked(plain(), load)
    return replace(rig, overtravel=replace(rig.overtravel, **changed))


@pytest.mark.parametrize(("share", "expected"), [(0.99, "pass"), (1.0, "pass"), (1.01, "warn")])
def test_the_auxiliary_brake_against_runaway(share: float, expected: str) -> None:
    found = verdict("brake.lowering", with_eddy(share * load_of(75e3)))
    assert str(found.status) == expected
    assert ("runs away: the brakes reach" in found.reason) == (expected == "warn")


@pytest.mark.parametrize(("share", "expected"), [(1.01, "pass"), (1.0, "pass"), (0.99, "warn")])
def test_the_speed_at_which_the_auxiliary_brake_holds(share: float, expected: str) -> None:
    # T = 2 T_max / (s + 1/s) is 0.8 T_max at half the critical speed of 50 rpm.
    rotation = 25.0 * 2.0 * np.pi / 60.0
    rig = with_eddy(load_of(0.8 * 75e3), lowering_speed=share * rotation * RADIUS / 10.0)
    found = verdict("brake.lowering_speed", rig)
    assert str(found.status) == expected
    assert found.value == pytest.approx(rotation, rel=1e-12)


def test_a_runaway_has_no_speed_that_is_slow_enough() -> None:
    found = verdict("brake.lowering_speed", with_eddy(2.0 * load_of(75e3)))
    assert (found.value, str(found.status)) == (math.inf, "warn")


@pytest.mark.parametrize("rule_id", ["brake.lowering", "brake.lowering_speed"])
def test_no_auxiliary_brake(rule_id: str) -> None:
    rig = replace(RIG7, brake=replace(RIG7.brake, auxiliary=None))
    assert status(rule_id, rig) == "not applicable"


def stopped(load: float) -> float:
    """Way from 0.8 m/s: 0.4 s of fall with all that turns, then even braking (Newton), m."""
    rig = RIG7
    assert rig.brake is not None
    mass = load / G + rig.brake.rotating_mass
    fall = load / mass
    speed = 0.8 + fall * 0.4
    slow = (SPRINGS * 10.0 / RADIUS - load) / mass
    return 0.8 * 0.4 + 0.5 * fall * 0.4**2 + speed**2 / (2.0 * slow)


def to_stop(load: float, room: float) -> Any:
    rig = with_eddy(load, floor=-room - 0.5, margin=0.5, lowering_speed=0.8)
    return replace(rig, brake=replace(rig.brake, delay=0.4, build_up=0.0))


@pytest.mark.parametrize(("share", "expected"), [(1.01, "pass"), (1.0, "pass"), (0.99, "warn")])
def test_stopping_distance(share: float, expected: str) -> None:
    way = stopped(1.5e6)
    found = verdict("brake.stop", to_stop(1.5e6, share * way))
    assert found.value == pytest.approx(way, rel=1e-9)
    if share != 1.0:
        assert str(found.status) == expected


def test_stopping_on_the_limit() -> None:
    found = verdict("brake.stop", to_stop(1.5e6, 2.0))
    exact = replace(RIG7.overtravel, floor=-found.value, margin=0.0, lowering_speed=0.8)
    rig = replace(to_stop(1.5e6, 2.0), overtravel=exact)
    again = verdict("brake.stop", rig)
    assert (again.margin, str(again.status)) == (0.0, "pass")


def test_a_brake_weaker_than_its_load_does_not_stop() -> None:
    found = verdict("brake.stop", to_stop(1.01 * load_of(SPRINGS), 2.0))
    assert (found.value, str(found.status)) == (math.inf, "warn")
    assert "does not stop" in found.reason


def faires() -> Any:
    """Problem 881 of Faires: 4000 lb go down 200 ft, 800,000 ft lb."""
    trip = replace(RIG7.heaviest_trip, depth=60.96, stand_length=60.96, drag_down=0.0)
    rest = trip.heaviest_hook_load(0.0) / (1.0 + trip.drag_up)
    block = replace(RIG7.block, weight=4000.0 * LBF - rest)
    return replace(RIG7, operations=(trip,), block=block)


@pytest.mark.parametrize(
    ("foot_pounds", "expected"), [(800_001.0, "pass"), (800_000.0, "pass"), (799_999.0, "warn")]
)
def test_heat_of_a_trip_against_the_limit_of_the_house(foot_pounds: float, expected: str) -> None:
    joule = 0.3048 * LBF
    found = verdicts("brake.trip_heat", faires())
    assert found[0].value == pytest.approx(800_000.0 * joule, rel=1e-12)
    assert str(found[0].status) == "not applicable"
    (held,) = HouseLimits({"brake.trip_heat": foot_pounds * joule}).apply(found[0].rule, found)
    assert str(held.status) == expected


@pytest.mark.parametrize("kind", ["trip in", "casing"])
def test_a_string_run_in_heats_like_the_same_half_of_a_round_trip(kind: str) -> None:
    heat = verdict("brake.trip_heat", faires()).value
    (trip,) = faires().operations
    run_in = replace(faires(), operations=(replace(trip, kind=kind),))
    assert verdict("brake.trip_heat", run_in).value == pytest.approx(heat, rel=1e-12)


def test_a_trip_in_heats_from_where_it_begins() -> None:
    # Two stands of 100 m from 100 m on: W m g h with the load at the end of each, by hand.
    trip = replace(RIG7.heaviest_trip, kind="trip in", depth=300.0, stand_length=100.0)
    rig = replace(RIG7, operations=(replace(trip, from_depth=100.0, drag_down=0.0),))
    hung = trip.string_weight([300.0, 200.0]).sum() + 2.0 * rig.block.weight
    found = verdict("brake.trip_heat", rig)
    assert found.value == pytest.approx(100.0 * hung, rel=1e-12)
    assert found.inputs["stands"] == "2"


def test_no_trip_no_heat() -> None:
    assert status("brake.trip_heat", asked(RIG7, 1e6)) == "not applicable"


def test_a_trip_without_a_stand_makes_no_heat() -> None:
    stands = [replace(one, stand_length=1e15) for one in RIG7.operations]
    rig = replace(RIG7, operations=tuple(stands))
    (found,) = verdicts("brake.trip_heat", rig)
    assert str(found.status) == "not applicable"
    assert "no stand" in found.reason


@pytest.mark.parametrize("rule_id", IDS)
def test_what_cannot_be_told(rule_id: str) -> None:
    assert status(rule_id, OSPREY) == "not applicable"
    (demanded,) = judge(rw.check.rule(rule_id), Facts(OSPREY), frozenset({"brake"}))
    assert str(demanded.status) == "not computed"
    assert status(rule_id, asked(RIG7, None)) == "not applicable"


def test_verdicts_on_brakes_carry_their_caution() -> None:
    found = [one for rule_id in IDS for one in verdicts(rule_id, RIG7)]
    assert cautions_of(found) == {"brake": CAUTION}
    assert {"brake", "overtravel", "deadline"} <= set(CAUTIONS)
    for words in CAUTIONS.values():
        for asked_for in ("ocal codes", "manual", "licensed practice"):
            assert asked_for in words


@pytest.mark.parametrize(("cut", "layer"), [(None, 3), (24.384, 4)])
def test_slipped_line_lies_under_the_rope_the_block_takes_up(cut: Any, layer: int) -> None:
    """Just before a cut of 80 ft, slips of 20 ft have brought 60 ft onto the drum.

    Without friction and plan, nested layers: D = 29.375 in + (layer - 1) √3 1.375 in, T = W D/2N.
    The block travels so far that three layers lack 5 m of being full.
    """
    pitch = [(29.375 + n * math.sqrt(3.0) * 1.375) * INCH for n in range(3)]
    held = 40.0 * math.pi * sum(pitch)
    travel = (held - 8.0 * math.pi * pitch[0] - 5.0) / 10.0
    rig = asked(replace(RIG7, reeving=rw.Reeving(10, 1.0)), LOAD_OF_SLIPS)
    rig = replace(
        rig,
        block=replace(rig.block, lowest=rig.block.highest + travel),
        program=None if cut is None else replace(rig.program, slip=6.096, cut=cut),
    )
    diameter = (29.375 + (layer - 1) * math.sqrt(3.0) * 1.375) * INCH
    found = verdict("brake.emergency", rig)
    assert found.value == pytest.approx(SPRINGS / (LOAD_OF_SLIPS / 10.0 * diameter / 2.0), rel=1e-9)


def test_hot_pads_that_would_not_hold_are_told() -> None:
    # By hand: 0.26 of brake.fade instead of 0.35 leaves 0.26/0.35 of the torque.
    for share, told in ((0.9 * 0.26 / 0.35, False), (1.1 * 0.26 / 0.35, True)):
        rig = asked(plain(), share * load_of(SPRINGS))
        found = verdict("brake.emergency", rig)
        assert str(found.status) == "pass"
        expected = "friction 0.26, hold 0.91 of it" if told else ""
        assert found.reason.endswith(expected)
        assert bool(found.reason) is told


def test_where_each_of_two_must_hold_a_band_must_too() -> None:
    band = rw.brake.BandBrake(
        bands=2,
        wrap_angle="270 deg",
        rim_diameter="50 in",
        lining_friction=0.3,
        lever_ratio=10.0,
    )
    brake = replace(
        RIG7.brake,
        band=band,
        lever_force=100.0,
        required=rw.brake.required_factor("OSHA 1910.179 each of two"),
    )
    found = about("brake.holding", asked(replace(plain(), brake=brake), 1e6))
    # Euler and Eytelwein: slack end 10 x 100 N in each band, tight end exp(0.3 x 4.71) times it.
    tight = 1000.0 * (math.exp(0.3 * 1.5 * math.pi) - 1.0)
    held = 2.0 * tight * 25.0 * INCH / (1e6 / 10.0 * RADIUS)
    one = found["bands, the load helping"]
    assert (str(one.status), one.value) == ("fail", pytest.approx(held, rel=1e-9))
    assert len(found) == 3
