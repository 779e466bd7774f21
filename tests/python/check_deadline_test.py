"""Rules for the dead-line anchor."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest
from rule_cases import KIP, OSPREY, RIG7, asked, plain, status, verdict

import ropewalk as rw
from ropewalk.errors import InadmissibleError

# Euler-Eytelwein: four wraps at 0.1, a clamp of 10 kip behind them.
GAIN = math.exp(0.1 * 2.0 * math.pi * 4.0)
CAPACITY = 10.0 * KIP * GAIN


@pytest.mark.parametrize(("share", "expected"), [(0.99, "pass"), (1.0, "pass"), (1.01, "fail")])
def test_the_anchor_against_the_dead_line(share: float, expected: str) -> None:
    # Without friction the dead line has a tenth of the hook load.
    found = verdict("deadline.anchor", asked(plain(), share * 10.0 * CAPACITY))
    assert str(found.status) == expected
    assert found.value == pytest.approx(CAPACITY, rel=1e-12)
    assert found.limit == pytest.approx(share * CAPACITY, rel=1e-12)


def clamped(holding: float) -> Any:
    anchor = rw.deadline.Anchor(4, 0.1, rw.Q(holding, "N"))
    return replace(RIG7, deadline=replace(RIG7.deadline, anchor=anchor))


@pytest.mark.parametrize(("share", "expected"), [(1.01, "pass"), (1.0, "pass"), (0.99, "warn")])
def test_the_anchor_as_strong_as_the_line(share: float, expected: str) -> None:
    # Wyoming servicing 6-2(b): 2 is the least factor; 1 3/8 in EIPS breaks at 192,000 lb.
    found = verdict("deadline.working_strength", clamped(share * 96.0 * KIP / GAIN))
    assert str(found.status) == expected
    assert found.limit == pytest.approx(96.0 * KIP, rel=1e-9)
    assert "6-2(a)" in found.source


@pytest.mark.parametrize(("share", "expected"), [(1.0, "pass"), (0.99, "fail")])
def test_where_the_rules_ask_for_it_an_anchor_must_be_as_strong(
    share: float, expected: str
) -> None:
    # Wyoming servicing 6-2(a): strength "shall at least equal the working strength".
    rule_id = "deadline.working_strength_required"
    rig = clamped(share * 96.0 * KIP / GAIN)
    assert status(rule_id, rig) == "not applicable"  # its standard is that of drilling rigs
    limits = replace(rig.limits, design_factor_standard="Wyoming servicing")
    assert status(rule_id, replace(rig, limits=limits)) == expected


def test_the_strength_of_the_anchor_needs_no_load() -> None:
    assert status("deadline.working_strength", asked(RIG7, None)) == "pass"
    assert status("deadline.anchor", asked(RIG7, None)) == "not applicable"


@pytest.mark.parametrize("rule_id", ["deadline.anchor", "deadline.working_strength"])
def test_what_cannot_be_told(rule_id: str) -> None:
    assert status(rule_id, OSPREY) == "not applicable"
    odd = replace(RIG7, reeving=replace(RIG7.reeving, lines=9))
    assert status(rule_id, odd) == "not computed"


def test_an_anchor_may_be_checked_for_a_load() -> None:
    check = rw.deadline.check_anchor(plain(), "1000 kip")
    assert check.pull_si == pytest.approx(100.0 * KIP, rel=1e-12)
    planned = rw.deadline.check_anchor(RIG7)
    again = rw.deadline.check_anchor(RIG7, rw.Q(RIG7.largest_hook_load, "N"))
    assert planned == again
    for load in ("0 N", "-1 kN", rw.Q([1.0, 2.0], "kN")):
        with pytest.raises(InadmissibleError, match="hook_load"):
            rw.deadline.check_anchor(RIG7, load)
