"""Rules for the drilling line: design factor, length, damage, slips and cuts."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest
from rule_rigs import FOOT, INCH, LBF, load, load_of_fast_line, rig7, status, verdict, verdicts

import ropewalk as rw
from ropewalk.check.house import HouseLimits

TON_MILE = 2000 * LBF * 5280 * FOOT


def by_standard(standard: str, **changes: Any) -> Any:
    rig = rig7()
    return replace(rig, limits=replace(rig.limits, design_factor_standard=standard), **changes)


def test_design_factor_of_the_api_example() -> None:
    """API RP 9B, 14th ed., Addendum 1, 2.3.3.4: 400,000 lb on 10 lines, 192,000/49,200 = 3.9."""
    found = verdict(by_standard("API RP 9B"), "line.design_factor", load(400_000 * LBF))
    assert found.value == pytest.approx(3.9, abs=0.05)
    assert (str(found.status), found.limit) == ("pass", 3.0)


def test_design_factor_of_a_drill_string_and_a_casing() -> None:
    """Rabia, hoisting example: 1-1/2 in, 228,000 lb; factors 7.6 and 6.9, both ample."""
    rope = rw.Rope("6x19 IWRC", grade="EIPS", diameter="1.5 in")
    found = verdicts(
        by_standard("API RP 9B", rope=rope),
        "line.design_factor",
        load(243_932 * LBF),
        load(269_130 * LBF, "setting casing"),
    )
    assert [v.value for v in found] == pytest.approx([7.6, 6.9], abs=0.05)
    assert [(str(v.status), v.limit) for v in found] == [("pass", 3.0), ("pass", 2.0)]


def test_a_factor_of_two_and_a_half_is_for_casing_only() -> None:
    """Wyoming drilling rules 6-6(a): three while drilling, two while setting casing."""
    rig = rig7()
    heavy = load_of_fast_line(rig, rig.rope.breaking_force_si / 2.5).hook_load
    found = verdicts(rig, "line.design_factor", load(heavy), load(heavy, "setting casing"))
    assert [v.value for v in found] == pytest.approx([2.5, 2.5])
    assert [str(v.status) for v in found] == ["fail", "pass"]


def test_design_factor_on_the_limit_and_without_what_it_needs() -> None:
    rig = rig7()
    on_limit = load_of_fast_line(rig, rig.rope.breaking_force_si / 3.0)
    found = verdict(rig, "line.design_factor", on_limit)
    assert (str(found.status), found.margin) == ("pass", 0.0)
    assert status(rig, "line.design_factor", load(on_limit.hook_load * 1.001)) == "fail"
    assert status(by_standard(""), "line.design_factor") == "not computed"
    assert status(by_standard("nobody's rules"), "line.design_factor", load(1e6)) == "not computed"
    assert status(replace(rig, operations=()), "line.design_factor") == "not applicable"


def with_supply(supply: float) -> Any:
    rig = rig7()
    return replace(rig, line=replace(rig.line, supply=supply))


def test_line_must_reach() -> None:
    """By hand: dead line, fast line, ten lines of 37 m, eight laps of a 28-in drum."""
    needed = 45.0 + 55.0 + 10 * 37.0 + 8 * math.pi * (28 + 1.375) * INCH
    assert status(rig7(), "line.length") == "pass"
    on_limit = verdict(with_supply(needed), "line.length")
    assert (str(on_limit.status), on_limit.margin) == ("pass", 0.0)
    assert status(with_supply(needed - 0.01), "line.length") == "fail"
    assert status(replace(rig7(), drum=None), "line.length") == "not applicable"
    assert status(replace(rig7(), line=None), "line.length") == "not applicable"


def with_law(scale: float) -> Any:
    rig = rig7()
    law = replace(rig.life.power_law, scale=scale)
    return replace(rig, life=replace(rig.life, power_law=law))


def test_damage_of_the_plan() -> None:
    """Life is the scale of the power law times a ratio: there is a scale for any damage."""
    rig = rig7()
    found = verdict(rig, "line.damage")
    assert str(found.status) == "pass"
    assert found.source.startswith("definition")
    assert found.rule.standing == "derived"
    law = rig.life.power_law
    due = law.scale * found.value
    on_limit = verdict(with_law(due), "line.damage")
    assert on_limit.value == pytest.approx(1.0, rel=1e-12)
    assert str(on_limit.status) == "pass"
    assert status(with_law(due * 0.999), "line.damage") == "warn"


def test_damage_says_what_it_does_not_know() -> None:
    rig = rig7()
    no_life = replace(rig.life, power_law=None, reference=None)
    for changed, expected, part in (
        (replace(rig, program=None), "not applicable", "[program]"),
        (replace(rig, drum=None), "not applicable", "[drum]"),
        (replace(rig, operations=()), "not applicable", "[[operation]]"),
        (replace(rig, life=no_life), "not computed", "life.power_law"),
        (with_supply(550.0), "not computed", "reel used up"),
    ):
        found = verdict(changed, "line.damage")
        assert str(found.status) == expected
        assert part in found.reason


def test_cuts_left_on_the_reel() -> None:
    """A reel shorter by so many cuts of 80 ft allows so many fewer."""
    cut = 80 * FOOT
    left = verdict(rig7(), "line.cuts_left").value
    assert left > 2.0
    assert status(rig7(), "line.cuts_left") == "pass"
    on_limit = verdict(with_supply(1500.0 - (left - 1.0) * cut), "line.cuts_left")
    assert (on_limit.value, str(on_limit.status)) == (1.0, "pass")
    none = verdict(with_supply(1500.0 - left * cut), "line.cuts_left")
    assert (none.value, str(none.status), none.reason) == (0.0, "warn", "")
    short = verdict(with_supply(550.0), "line.cuts_left")
    assert (short.value, str(short.status)) == (0.0, "warn")
    assert "before the plan is done" in short.reason
    assert status(replace(rig7(), operations=()), "line.cuts_left") == "not applicable"


def with_slip(slip: float, slips: int = 4) -> Any:
    rig = rig7()
    return replace(rig, program=replace(rig.program, slip=slip, cut=slips * slip))


def test_slips_do_not_put_a_pick_up_point_on_another() -> None:
    """By hand: the next pick-up point is one line and the arc of one sheave away."""
    arc = math.pi / 2 * (54 + 1.375) * INCH
    distance = 37.0 + arc
    assert status(with_slip(distance / 4.5), "line.slip_spacing") == "pass"
    assert status(with_slip(distance / 4.0), "line.slip_spacing") == "warn"
    on_limit = verdict(with_slip((distance + arc / 2) / 4.0), "line.slip_spacing")
    assert (str(on_limit.status), on_limit.margin) == ("pass", 0.0)
    assert status(with_slip((distance + 0.49 * arc) / 4.0), "line.slip_spacing") == "warn"


def test_slip_spacing_needs_loads_that_are_picked_up() -> None:
    rig = rig7()
    waiting = tuple(one for one in rig.operations if one.kind == "waiting")
    assert waiting
    assert status(replace(rig, operations=waiting), "line.slip_spacing") == "not applicable"
    assert status(replace(rig, operations=()), "line.slip_spacing") == "not applicable"
    assert status(replace(rig, program=None), "line.slip_spacing") == "not applicable"


def with_laps(laps: float) -> Any:
    rig = with_slip(laps * math.pi * (28 + 1.375) * INCH, 1)
    return replace(rig, drum=replace(rig.drum, crossovers_per_lap=1))


def test_cuts_move_the_crossovers() -> None:
    """API RP 9B, cutoff in laps (from memory): 11-1/2 on a 28-in drum, never whole laps."""
    found = verdict(with_laps(11.5), "line.cut_spacing")
    assert str(found.status) == "pass"
    assert found.value == pytest.approx(0.5)
    assert status(with_laps(12.0), "line.cut_spacing") == "warn"
    on_limit = verdict(with_laps(11.1), "line.cut_spacing")
    assert (str(on_limit.status), on_limit.margin) == ("pass", 0.0)
    assert status(replace(rig7(), drum=None), "line.cut_spacing") == "not applicable"


def test_work_between_slips_of_the_handbook() -> None:
    """Lyons (1996), p. 614: 80 ft every 800 ton-miles, slipped 20 ft every 200: on the limit."""
    on_limit = verdict(rig7(), "line.work_per_slip")
    assert on_limit.limit == pytest.approx(200 * TON_MILE, rel=1e-9)
    assert (str(on_limit.status), on_limit.margin) == ("pass", 0.0)
    for ton_miles, expected in ((190.0, "pass"), (210.0, "warn")):
        program = replace(rig7().program, every=ton_miles * TON_MILE)
        assert status(replace(rig7(), program=program), "line.work_per_slip") == expected


def test_work_between_slips_of_other_programs() -> None:
    rig = rig7()
    by_trips = replace(rig.program, every=None, every_trips=3.0)
    assert status(replace(rig, program=by_trips), "line.work_per_slip") == "not applicable"
    uneven = replace(rig.program, cut=3.5 * rig.program.slip)
    assert status(replace(rig, program=uneven), "line.work_per_slip") == "not computed"
    assert status(replace(rig, program=None), "line.work_per_slip") == "not applicable"


def test_the_goal_of_a_rig_comes_before_the_handbook() -> None:
    """A thicker line may do more work per length cut; its house limit replaces the printed one."""
    rule = rw.check.rule("line.work_per_slip")
    program = replace(rig7().program, every=210.0 * TON_MILE)
    found = verdicts(replace(rig7(), program=program), rule.id)
    (own,) = HouseLimits({rule.id: 250.0 * TON_MILE}).apply(rule, found)
    assert (str(own.status), own.limit) == ("pass", 250.0 * TON_MILE)
