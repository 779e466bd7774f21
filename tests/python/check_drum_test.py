"""Rules for the drum: wraps left, rope it holds, size, fleet angle, holding of the end."""

from __future__ import annotations

import math
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from rule_rigs import FOOT, INCH, load, load_of_fast_line, rig7, status, verdict, verdicts

import ropewalk as rw


def with_wraps(wraps: float, standard: str = "Wyoming servicing") -> Any:
    rig = rig7()
    return replace(
        rig,
        line=replace(rig.line, wraps_at_lowest=wraps),
        limits=replace(rig.limits, design_factor_standard=standard),
    )


@pytest.mark.parametrize(
    ("rule_id", "limit", "broken"),
    [("drum.dead_wraps", 6.0, "warn"), ("drum.dead_wraps_required", 3.0, "fail")],
)
def test_wraps_left_on_the_drum(rule_id: str, limit: float, broken: str) -> None:
    """Six is common practice; Wyoming servicing rules 6-2(e) ask for three."""
    assert status(with_wraps(limit + 2.0), rule_id) == "pass"
    on_limit = verdict(with_wraps(limit), rule_id)
    assert (str(on_limit.status), on_limit.margin, on_limit.limit) == ("pass", 0.0, limit)
    assert status(with_wraps(limit - 0.5), rule_id) == broken
    for missing in ("line", "drum"):
        assert status(replace(with_wraps(limit), **{missing: None}), rule_id) == "not applicable"


def test_no_number_of_wraps_in_other_rules() -> None:
    found = verdict(with_wraps(2.0, "Wyoming drilling"), "drum.dead_wraps_required")
    assert str(found.status) == "not applicable"
    assert "Wyoming drilling" in found.reason


#: Reference case: nested layers of a 1-3/8 in rope on a 32-in barrel, radii by hand.
RADII = [0.40640 + 0.0174625 + k * math.sqrt(3.0) / 2 * 0.034925 for k in range(4)]


def full_drum(beyond: float = 0.0) -> Any:
    """39 laps in 4 layers: eight wraps left, and travel that fills the rest, and more."""
    rig = rig7()
    capacity = 39 * 2 * math.pi * sum(RADII)
    assert capacity == pytest.approx(459.93, abs=0.01)
    travel = (capacity - 8 * 2 * math.pi * RADII[0] + beyond) / rig.reeving.lines
    drum = replace(rig.drum, barrel_diameter=32 * INCH, laps_per_layer=39.0)
    return replace(
        rig,
        drum=drum,
        block=replace(rig.block, lowest=rig.block.highest + travel),
        program=None,
    )


def test_the_drum_holds_its_rope() -> None:
    on_limit = verdict(full_drum(), "drum.capacity")
    assert (str(on_limit.status), on_limit.margin) == ("pass", 0.0)
    assert status(full_drum(-1.0), "drum.capacity") == "pass"
    assert status(full_drum(0.1), "drum.capacity") == "fail"


def test_slips_fill_the_drum_until_the_cut() -> None:
    """80 ft cut in slips of 20 ft: 60 ft more lie on the drum before the last of them."""
    rig = replace(full_drum(-60 * FOOT), program=rig7().program)
    on_limit = verdict(rig, "drum.capacity")
    assert (str(on_limit.status), on_limit.margin) == ("pass", pytest.approx(0.0, abs=1e-12))
    at_once = replace(rig.program, slip=rig.program.cut)
    assert verdict(replace(rig, program=at_once), "drum.capacity").margin > 0.03
    assert status(replace(full_drum(), program=rig7().program), "drum.capacity") == "fail"


def test_capacity_of_a_drum_with_more_wraps_than_it_has_or_none() -> None:
    wraps = rig7().drum.laps_per_layer * rig7().drum.layers
    found = verdict(with_wraps(wraps + 10.0), "drum.capacity")
    assert str(found.status) == "fail"
    assert found.value > found.limit + 10 * rig7().travel
    assert status(replace(rig7(), drum=None), "drum.capacity") == "not applicable"
    assert status(replace(rig7(), line=None), "drum.capacity") == "not applicable"
    flat = replace(rig7(), drum=replace(rig7().drum, layers=0))
    assert status(flat, "drum.capacity") == "not computed"


@pytest.mark.parametrize(
    ("barrel", "expected"), [(28.0, "pass"), (27.5, "pass"), (27.4, "warn"), (1.0, "not computed")]
)
def test_barrel_of_twenty_rope_diameters(barrel: float, expected: str) -> None:
    """API RP 9B (from memory): 20 rope diameters, 27.5 in for 1-3/8 in."""
    drum = replace(rig7().drum, barrel_diameter=barrel * INCH)
    found = verdict(replace(rig7(), drum=drum), "drum.bend_ratio")
    assert str(found.status) == expected
    assert found.margin == 0.0 or barrel != 27.5


def test_no_barrel() -> None:
    assert status(replace(rig7(), drum=None), "drum.bend_ratio") == "not applicable"


def seen(groove: str, distance: float, position: float = 28 * INCH) -> Any:
    """A drum 56 in wide, seen from a sheave at a distance."""
    spooling = rw.rig.Spooling(groove, 56 * INCH, distance, position)
    return replace(rig7(), drum=replace(rig7().drum, spooling=spooling))


def test_fleet_angle_of_half_a_drum_from_100_ft() -> None:
    """atan(28 / 1200) = 1.3367 deg, within 1.5 and 2 deg of the Wire Rope Users Manual."""
    for groove, expected in (
        ("smooth", {"pass"}),
        ("grooved", {"pass"}),
        ("parallel", {"warn"}),  # 1.25 deg: Seidenather (2013)
    ):
        found = verdicts(seen(groove, 100 * FOOT), "drum.fleet_angle")
        assert {str(one.status) for one in found} == expected
        assert math.degrees(found[0].value) == pytest.approx(1.3367, abs=1e-4)
        least = verdicts(seen(groove, 100 * FOOT), "drum.fleet_angle_least")
        assert {str(one.status) for one in least} == {"pass"}


def test_fleet_angle_on_the_limits() -> None:
    half = 28 * INCH
    nearest = half / math.tan(math.radians(1.5))
    found = verdicts(seen("smooth", nearest), "drum.fleet_angle")
    assert [(str(one.status), one.margin) for one in found] == [("pass", 0.0)] * 2
    close = verdicts(seen("smooth", nearest * 0.99), "drum.fleet_angle")
    assert [str(one.status) for one in close] == ["warn", "warn"]
    farthest = half / math.tan(math.radians(0.5))
    least = verdict(seen("smooth", farthest), "drum.fleet_angle_least")
    assert (str(least.status), least.margin) == ("pass", 0.0)
    assert status(seen("smooth", farthest * 1.01), "drum.fleet_angle_least") == "warn"


def test_a_sheave_beside_the_middle() -> None:
    """The farther flange counts for the largest angle, the nearer for the least."""
    rig = seen("grooved", 100 * FOOT, 6 * INCH)
    assert verdicts(rig, "drum.fleet_angle")[0].value == pytest.approx(math.atan(50 / 1200))
    assert verdicts(rig, "drum.fleet_angle_least")[0].value == pytest.approx(math.atan(6 / 1200))
    assert status(seen("smooth", 30.0, 0.0), "drum.fleet_angle_least") == "warn"


@pytest.mark.parametrize("rule_id", ["drum.fleet_angle", "drum.fleet_angle_least"])
def test_fleet_angle_needs_its_table(rule_id: str) -> None:
    bare = replace(rig7(), drum=replace(rig7().drum, spooling=None))
    assert status(bare, rule_id) == "not applicable"
    assert "[drum.spooling]" in verdict(bare, rule_id).reason
    assert status(replace(rig7(), drum=None), rule_id) == "not applicable"
    assert status(seen("smooth", float("nan")), rule_id) == "not computed"


def fastened(clamp: float, friction: float = 0.1, wraps: float = 3.0) -> Any:
    rig = with_wraps(wraps)
    fastening = rw.rig.DrumFastening(friction, clamp)
    return replace(rig, drum=replace(rig.drum, fastening=fastening))


def test_three_wraps_leave_a_sixth_of_the_pull() -> None:
    """Euler and Eytelwein: e^(0.6 pi) = 6.586; of 100 kN the clamp must hold 15.18 kN."""
    pull = load_of_fast_line(rig7(), 100e3)
    assert status(fastened(15.19e3), "drum.end_holding", pull) == "pass"
    assert status(fastened(15.18e3), "drum.end_holding", pull) == "fail"
    on_limit = verdict(fastened(100e3 / math.exp(0.6 * math.pi)), "drum.end_holding", pull)
    assert on_limit.value == pytest.approx(100e3, rel=1e-12)
    assert (str(on_limit.status), on_limit.margin) == ("pass", 0.0)


def test_holding_needs_its_table_and_a_load() -> None:
    bare = replace(rig7(), drum=replace(rig7().drum, fastening=None))
    assert "[drum.fastening]" in verdict(bare, "drum.end_holding").reason
    assert status(bare, "drum.end_holding") == "not applicable"
    no_plan = replace(fastened(15e3), operations=())
    assert status(no_plan, "drum.end_holding") == "not applicable"
    negative = fastened(15e3, friction=-0.1)
    assert status(negative, "drum.end_holding", load(1e6)) == "not computed"


SPOOLING = """
[drum.spooling]
groove = "parallel"
traverse = "56 in"
distance = "30 m"
"""
FASTENING = """
[drum.fastening]
friction = 0.1
clamp_holding = "5000 lbf"
"""


def read(tmp_path: Path, *tables: str) -> Any:
    text = rw.rig.example("rig7").read_text(encoding="utf-8")
    for name in ("spooling", "fastening"):
        before, found, after = text.partition(f"[drum.{name}]\n")
        text = before + after[after.index("\n[") + 1 :] if found else text
    file = tmp_path / "rig.toml"
    file.write_text(text + "".join(tables), encoding="utf-8")
    return rw.load_rig(file)


def test_rig_files_say_how_the_line_runs_on_and_is_held(tmp_path: Path) -> None:
    drum = read(tmp_path, SPOOLING, FASTENING).drum
    # The sheave stands before the middle if the file does not say where.
    assert drum.spooling == rw.rig.Spooling("parallel", 56 * INCH, 30.0, 28 * INCH)
    assert drum.fastening == rw.rig.DrumFastening(0.1, pytest.approx(5000 * 4.4482216152605))
    assert (read(tmp_path).drum.spooling, read(tmp_path).drum.fastening) == (None, None)


@pytest.mark.parametrize(
    ("table", "part"),
    [
        (SPOOLING + 'sheave_position = "60 in"\n', "drum.spooling.sheave_position"),
        (SPOOLING.replace("parallel", "round"), "drum.spooling.groove"),
        (SPOOLING.replace('"30 m"', "30"), "drum.spooling.distance"),
        (FASTENING.replace("0.1", "0"), "drum.fastening.friction"),
        (FASTENING.replace("lbf", "m"), "drum.fastening.clamp_holding"),
    ],
)
def test_rig_files_that_cannot_be(tmp_path: Path, table: str, part: str) -> None:
    with pytest.raises(rw.rig.RigFileError, match=part.replace(".", r"\.")):
        read(tmp_path, table)
