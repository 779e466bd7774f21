"""Rules for the sheaves: size, bearing pressure, grooves, usual sizes."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from rule_rigs import INCH, LBF, load, load_of_fast_line, rig7, verdicts

import ropewalk as rw

PSI = LBF / INCH**2


def with_sheaves(crown: float, block: float | None = None, **changes: Any) -> Any:
    """Rig 7 with sheaves of so many inches, and other changes of the sheaves."""
    rig = rig7()
    sheaves = rig.block.sheaves
    block = crown if block is None else block
    return replace(
        rig,
        crown=replace(rig.crown, diameter=crown * INCH, **changes),
        block=replace(rig.block, sheaves=replace(sheaves, diameter=block * INCH, **changes)),
    )


def statuses(rig: Any, rule_id: str, *loads: Any) -> list[str]:
    return [str(one.status) for one in verdicts(rig, rule_id, *loads)]


@pytest.mark.parametrize(
    ("rule_id", "tread"),
    [("sheave.bend_ratio", 41.25), ("sheave.bend_ratio_for_life", 70.125)],
)
def test_treads_of_a_6x19_seale_line(rule_id: str, tread: float) -> None:
    """Lyons (1996), Table 4-35: 30 and 51 times 1-3/8 in, conditions B and A."""
    found = verdicts(with_sheaves(tread), rule_id)
    assert [(str(v.status), v.margin) for v in found] == [("pass", 0.0)] * 2
    assert {v.subject for v in found} == {"crown sheaves", "traveling-block sheaves"}
    assert statuses(with_sheaves(tread + 1.0, tread - 1.0), rule_id) == ["pass", "warn"]


def test_bend_ratio_of_the_bridle() -> None:
    """API RP 9B, 14th ed., Addendum 1, 2.3.3.5: 1-1/4 in on 33.75 in, 27; 6x25FW asks for 24."""
    rope = rw.Rope("6x25FW IWRC", grade="EIPS", diameter="1.25 in")
    found = verdicts(replace(with_sheaves(33.75), rope=rope), "sheave.bend_ratio")
    assert [(v.value, v.limit) for v in found] == [pytest.approx((27.0, 24.0))] * 2
    assert {str(v.status) for v in found} == {"pass"}
    seale = rw.Rope("6x19S IWRC", grade="EIPS", diameter="1.25 in")
    bridle = replace(with_sheaves(33.75), rope=seale)
    assert statuses(bridle, "sheave.bend_ratio") == ["warn", "warn"]


@pytest.mark.parametrize("rule_id", ["sheave.bend_ratio", "sheave.bend_ratio_for_life"])
def test_no_factor_for_a_class(rule_id: str) -> None:
    rope = rw.Rope("6x19 IWRC", grade="EIPS", diameter="1.375 in")
    assert statuses(replace(rig7(), rope=rope), rule_id) == ["not computed"]


def cast_steel() -> Any:
    rope = rw.Rope("6x19 IWRC", grade="EIPS", diameter="1.25 in")
    return replace(with_sheaves(50.0, groove_material="cast steel"), rope=rope)


def test_bearing_pressure_of_the_manual() -> None:
    """2 x 30,000 / (1.25 x 50) = 960 psi, above 900 for cast steel, 6x19, regular lay.

    AISI, Wire Rope Users Manual (1979), as Table 17-26 of Shigley, 8th ed., prints it.
    """
    rig = cast_steel()
    crown, block = verdicts(rig, "sheave.bearing_pressure", load_of_fast_line(rig, 30_000 * LBF))
    assert crown.value == pytest.approx(960 * PSI, rel=1e-9)
    assert crown.limit == pytest.approx(900 * PSI, rel=1e-9)
    assert str(crown.status) == "warn"
    assert "published" in crown.source
    # The tightest line below the crown has one sheave less behind it: 960 / 1.04 = 923.
    assert block.value == pytest.approx(960 / 1.04 * PSI, rel=1e-9)
    assert str(block.status) == "warn"


def test_bearing_pressure_on_the_limit_and_without_what_it_needs() -> None:
    rig = cast_steel()
    on_limit = load_of_fast_line(rig, 900 * PSI * 1.25 * 50 * INCH**2 / 2)
    crown, block = verdicts(rig, "sheave.bearing_pressure", on_limit)
    assert (str(crown.status), crown.margin) == ("pass", 0.0)
    assert str(block.status) == "pass"
    above = load(on_limit.hook_load * 1.001)
    assert statuses(rig, "sheave.bearing_pressure", above) == ["warn", "pass"]
    bronze = with_sheaves(50.0, groove_material="bronze")
    assert statuses(bronze, "sheave.bearing_pressure") == ["not computed"]
    assert statuses(replace(rig, operations=()), "sheave.bearing_pressure") == ["not applicable"]


def with_grooves(crown: tuple[float, ...] | None, block: tuple[float, ...] | None) -> Any:
    def si(radii: tuple[float, ...] | None) -> Any:
        return None if radii is None else tuple(one * INCH for one in radii)

    found = rw.rig.Inspection(crown_groove_radii=si(crown), block_groove_radii=si(block))
    return replace(rig7(), inspection=found)


def test_gauge_of_worn_grooves() -> None:
    """API RP 9B and Spec 8C, groove gauge: 2.5 % over nominal, 0.7046875 in for 1-3/8 in."""
    rule_id = "sheave.groove_worn"
    found = verdicts(with_grooves((0.75, 0.7046875), (0.72,)), rule_id)
    assert [str(v.status) for v in found] == ["pass", "pass"]
    assert found[0].margin == 0.0
    assert statuses(with_grooves((0.73, 0.704, 0.72), (0.72,)), rule_id) == ["fail", "pass"]
    assert statuses(with_grooves(None, (0.70,)), rule_id) == ["fail"]


def test_gauge_of_wide_grooves() -> None:
    """The same gauges: at most 10 % over nominal when new, 0.75625 in for 1-3/8 in."""
    rule_id = "sheave.groove_wide"
    found = verdicts(with_grooves((0.73, 0.75625), (0.72,)), rule_id)
    assert [str(v.status) for v in found] == ["pass", "pass"]
    assert found[0].margin == 0.0
    assert statuses(with_grooves((0.73, 0.757), None), rule_id) == ["warn"]


@pytest.mark.parametrize("rule_id", ["sheave.groove_worn", "sheave.groove_wide"])
def test_grooves_that_were_not_measured(rule_id: str) -> None:
    assert statuses(replace(rig7(), inspection=None), rule_id) == ["not applicable"]
    assert statuses(with_grooves(None, None), rule_id) == ["not applicable"]


@pytest.mark.parametrize(
    ("rule_id", "crown", "block", "expected"),
    [
        ("sheave.usual_least", 54.0, 54.0, ["pass", "pass"]),
        ("sheave.usual_least", 42.0, 24.0, ["pass", "pass"]),
        ("sheave.usual_least", 41.9, 23.9, ["warn", "warn"]),
        ("sheave.usual_largest", 72.0, 72.0, ["pass", "pass"]),
        ("sheave.usual_largest", 72.1, 54.0, ["warn", "pass"]),
        ("sheave.usual_largest", float("nan"), 54.0, ["not computed", "pass"]),
        ("sheave.usual_least", 54.0, float("nan"), ["pass", "not computed"]),
    ],
)
def test_usual_sizes(rule_id: str, crown: float, block: float, expected: list[str]) -> None:
    """Crown sheaves of 42 to 72 in, block sheaves of 24 to 72 in: common practice, no source."""
    assert statuses(with_sheaves(crown, block), rule_id) == expected
