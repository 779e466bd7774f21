"""Rules for the compensator: rated load, stroke in the sea, band of loads."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest
from rule_cases import KIP, OSPREY, RIG7, asked, status, verdict

import ropewalk as rw

IDS = [rule.id for rule in rw.check.RULES if rule.subject == "compensator"]


def with_rating(load: float, rated_load: float | None) -> Any:
    """Osprey Sound with a compensator of another rating, and one load asked for."""
    compensator = rw.Compensator(
        "block",
        "25 ft",
        "0.13 m**2",
        "10 m**3",
        polytropic_exponent=1.2,
        seal_friction=0.02,
        moving_mass="9 tonne",
        rated_load=None if rated_load is None else rw.Q(rated_load, "N"),
    )
    return replace(asked(OSPREY, load), compensator=compensator)


@pytest.mark.parametrize(("load", "expected"), [(599.0, "pass"), (600.0, "pass"), (601.0, "fail")])
def test_rated_load(load: float, expected: str) -> None:
    assert status("compensator.rated_load", asked(OSPREY, load * KIP)) == expected


def test_a_stuck_string_is_no_load_of_the_compensator() -> None:
    found = verdict("compensator.rated_load", OSPREY)
    assert (found.subject, str(found.status)) == ("casing, 2600 m", "pass")
    assert OSPREY.stuck_hook_load > (found.value or 0.0)


def in_sea(exceedance: float, **changed: Any) -> Any:
    rough = rw.SeaState("9 m", "14 s", 1.0)
    sea = replace(OSPREY.sea, state=rough, exceedance=exceedance, **changed)
    return replace(OSPREY, sea=sea)


def probability() -> float:
    """Highest of independent heave crests, Rayleigh (Longuet-Higgins, 1952)."""
    heave = in_sea(0.01).sea.heave()
    half = 25.0 * 0.3048 / 2.0 - 0.8
    cycles = 3.0 * 3600.0 / (2.0 * math.pi * math.sqrt(heave.m0_si / heave.m2_si))
    return 1.0 - (1.0 - math.exp(-(half**2) / (2.0 * heave.m0_si))) ** cycles


@pytest.mark.parametrize(("share", "expected"), [(1.01, "pass"), (0.99, "fail")])
def test_stroke_in_a_rough_sea(share: float, expected: str) -> None:
    found = verdict("compensator.stroke", in_sea(share * probability()))
    assert 1e-9 < probability() < 1.0
    assert found.value == pytest.approx(probability(), rel=1e-3)
    assert str(found.status) == expected


def test_no_stroke_left_at_all_is_surely_exceeded() -> None:
    certain = verdict("compensator.stroke", in_sea(1.0, offset=4.0))
    assert (certain.value, certain.margin, str(certain.status)) == (1.0, 0.0, "pass")
    assert status("compensator.stroke", in_sea(0.01, offset=4.0)) == "fail"


def test_a_response_that_does_not_cover_the_sea_is_not_computed() -> None:
    short = rw.compensator.HeaveOperator.table(rw.Q([2.0, 4.0], "s"), [0.0, 0.3])
    found = verdict("compensator.stroke", in_sea(0.01, response=short))
    assert str(found.status) == "not computed"
    assert found.reason


def highest(load: float) -> float:
    """Gas p V^n, seals and moving mass in heave of significant height, by hand, N."""
    heave = OSPREY.sea.heave()
    amplitude = 2.0 * math.sqrt(heave.m0_si)
    gas = (1.0 - 0.13 * amplitude / 10.0) ** -1.2
    return load * (gas + 0.02) + 9000.0 * amplitude * heave.m2_si / heave.m0_si


@pytest.mark.parametrize(("share", "expected"), [(1.001, "pass"), (1.0, "pass"), (0.999, "warn")])
def test_highest_load_in_heave(share: float, expected: str) -> None:
    found = verdict("compensator.load_band", with_rating(2e6, share * highest(2e6)))
    assert found.value == pytest.approx(highest(2e6), rel=1e-12)
    assert str(found.status) == expected


@pytest.mark.parametrize("rule_id", ["compensator.rated_load", "compensator.load_band"])
def test_a_compensator_without_a_rating(rule_id: str) -> None:
    assert "rated_load" in verdict(rule_id, with_rating(2e6, None)).reason
    assert status(rule_id, with_rating(2e6, None)) == "not applicable"


@pytest.mark.parametrize("rule_id", IDS)
def test_what_is_not_there_is_not_applicable(rule_id: str) -> None:
    assert status(rule_id, RIG7) == "not applicable"


def test_what_needs_a_load_or_a_sea() -> None:
    idle = asked(OSPREY, None)
    assert status("compensator.rated_load", idle) == "not applicable"
    assert status("compensator.load_band", idle) == "not applicable"
    assert status("compensator.stroke", idle) == "pass"
    calm = replace(OSPREY, sea=None)
    assert status("compensator.stroke", calm) == "not applicable"
    assert status("compensator.load_band", calm) == "not applicable"
