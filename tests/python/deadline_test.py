"""The weight indicator: identities, friction found on logs, anchor and sensor, refusals."""

from __future__ import annotations

import copy
import math
import pickle
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure

import ropewalk as rw
from ropewalk import plot
from ropewalk.errors import InadmissibleError, UnitError
from ropewalk.testing import assert_close

lines = st.sampled_from([4, 6, 8, 10, 12, 14])
frictions = st.floats(1.0, 1.15)
turning = st.booleans()
motions = st.sampled_from(["static", "hoisting", "lowering"])


# Identities


@given(lines, frictions, turning)
def test_the_indicator_shows_the_dead_line_of_the_reeving(
    n: int, friction: float, turns: bool
) -> None:
    reeving = rw.Reeving(n, friction, dead_line_sheave_turns=turns)
    indicator = rw.WeightIndicator(reeving)
    for motion in ("static", "hoisting", "lowering"):
        dead_line = reeving.tensions("400 kip", motion).dead_line
        assert_close(indicator.reading("400 kip", motion), n * dead_line)
    assert indicator.ratio("hoisting") == pytest.approx(
        rw.deadline.hoisting_ratio(n, friction, int(turns)), rel=1e-13
    )
    assert indicator.ratio("lowering") == pytest.approx(
        rw.deadline.lowering_ratio(n, friction, int(turns)), rel=1e-13
    )


@given(lines, frictions, turning)
def test_hoisting_shows_less_and_lowering_more(n: int, friction: float, turns: bool) -> None:
    up = rw.deadline.hoisting_ratio(n, friction, int(turns))
    down = rw.deadline.lowering_ratio(n, friction, int(turns))
    assert up <= 1.0 <= down
    # The mean of the readings is too high, their geometric mean too low.
    assert (up + down) / 2.0 >= 1.0 - 1e-12
    assert math.sqrt(up * down) <= 1.0 + 1e-12
    assert down / up == pytest.approx(friction ** (n - 1 + 2 * turns), rel=1e-12)


@given(lines, frictions, turning, motions, st.floats(1e4, 5e6))
def test_reading_and_hook_load_undo_each_other(
    n: int, friction: float, turns: bool, motion: Any, load: float
) -> None:
    indicator = rw.WeightIndicator(rw.Reeving(n, friction, dead_line_sheave_turns=turns), 8)
    force = rw.Q([load, 2.0 * load], "N")
    assert_close(indicator.hook_load(indicator.reading(force, motion), motion), force)


@given(lines, lines, frictions, frictions, motions)
def test_the_error_is_that_of_the_load_worked_out(
    n: int, set_to: int, friction: float, thought: float, motion: Any
) -> None:
    actual = rw.WeightIndicator(rw.Reeving(n, friction), set_to)
    believed = rw.WeightIndicator(rw.Reeving(n, thought))
    worked_out = believed.hook_load(actual.reading("1 MN", motion), motion).m_as("MN")
    assert actual.error_of(believed, motion) == pytest.approx(worked_out - 1.0, abs=1e-12)


def test_lines_set_wrong_are_wrong_in_proportion() -> None:
    reeving = rw.Reeving(10, "roller")
    assert rw.WeightIndicator(reeving, 8).ratio("static") == pytest.approx(0.8)
    assert_close(rw.WeightIndicator(reeving, 12).reading("100 kip", "static"), "120 kip")


def test_each_sheave_may_have_its_own_friction() -> None:
    worn = [1.03] * 7 + [1.10]
    reeving = rw.Reeving(8, worn)
    # Line by line, by hand: the dead line is line 1.
    tension, total = 1.0, 0.0
    for friction in worn:
        total += tension
        tension *= friction
    assert rw.WeightIndicator(reeving).ratio("hoisting") == pytest.approx(8.0 / total)


# Anchor and sensor


@given(st.floats(0.0, 4.0), st.floats(0.05, 0.25), st.integers(1, 4), st.floats(1e3, 1e5))
def test_the_anchor_just_holds_its_capacity(
    wraps: float, friction: float, clamps: int, held: float
) -> None:
    anchor = rw.deadline.Anchor(wraps, friction, rw.Q(held, "N"), clamps)
    assert_close(anchor.left_for_clamps(anchor.capacity), clamps * rw.Q(held, "N"))
    needed = rw.deadline.clamps_needed(anchor.capacity, rw.Q(held, "N"), friction, wraps)
    assert needed == clamps
    more = rw.deadline.clamps_needed(1.001 * anchor.capacity, rw.Q(held, "N"), friction, wraps)
    assert more == clamps + 1


@given(st.floats(1e3, 1e6), st.floats(0.001, 0.2), st.floats(0.1, 1.0))
def test_a_deflected_line_turns_as_on_a_small_sheave(t: float, h: float, a: float) -> None:
    force = rw.deadline.deflection_force(rw.Q(t, "N"), rw.Q(h, "m"), rw.Q(a, "m"))
    turned = rw.Q(2.0 * math.atan(h / a), "rad")
    assert_close(rw.deadline.pin_force(rw.Q(t, "N"), turned), force)
    assert_close(
        rw.deadline.tension_from_deflection(force, rw.Q(h, "m"), rw.Q(a, "m")), rw.Q(t, "N")
    )


def test_another_rope_moves_the_pull_on_the_lever() -> None:
    """A rope 1/8 in thicker runs 1/16 in farther out, and the cell feels it."""
    thin = rw.deadline.cell_force("30 kip", "14 in", "42 in")
    thick = rw.deadline.cell_force("30 kip", "14.0625 in", "42 in")
    assert (thick / thin).m_as("") == pytest.approx(14.0625 / 14.0)


# The objects


def test_they_are_plain_data() -> None:
    indicator = rw.WeightIndicator(rw.Reeving(10, 1.04), 8)
    anchor = rw.deadline.Anchor(4, 0.1, "10 kip", clamps=2)
    for one in (indicator, anchor):
        for twin in (pickle.loads(pickle.dumps(one)), copy.deepcopy(one)):
            assert twin == one
            assert hash(twin) == hash(one)
    with pytest.raises(AttributeError):
        anchor.clamps = 3  # type: ignore[misc]


@pytest.mark.parametrize(
    ("call", "error"),
    [
        (lambda: rw.WeightIndicator(rw.Reeving(9, 1.04)), InadmissibleError),
        (lambda: rw.WeightIndicator(rw.Reeving(10, 1.04), 1), InadmissibleError),
        (lambda: rw.WeightIndicator(rw.Reeving(10, 1.04), 2**40), InadmissibleError),
        (lambda: rw.WeightIndicator(10), UnitError),  # type: ignore[arg-type]
        (lambda: rw.WeightIndicator(rw.Reeving(10, 1.04)).reading(400, "static"), UnitError),
        (
            lambda: rw.WeightIndicator(rw.Reeving(10, 1.04)).reading("-1 kip", "static"),
            InadmissibleError,
        ),
        (
            lambda: rw.WeightIndicator(rw.Reeving(10, 1.04)).ratio("up"),  # type: ignore[arg-type]
            InadmissibleError,
        ),
        (lambda: rw.deadline.Anchor(-1, 0.1, "10 kip"), InadmissibleError),
        (lambda: rw.deadline.Anchor(4, 0.0, "10 kip"), InadmissibleError),
        (lambda: rw.deadline.Anchor(4, 0.1, "10 kg"), UnitError),
        (lambda: rw.deadline.Anchor(4, 0.1, "10 kip", clamps=0), InadmissibleError),
        (
            lambda: rw.deadline.friction_from_readings("474 kip", "333 kip", 10, 0),
            InadmissibleError,
        ),
    ],
)
def test_what_cannot_be_is_refused(call: Any, error: type[rw.RopewalkError]) -> None:
    with pytest.raises(error):
        call()


# The rig


def test_the_anchor_of_rig_7_holds_its_plan() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    check = rw.deadline.check_anchor(rig)
    # By hand: the dead line while lowering, under the heaviest load, and e^(0.8 pi) clamps.
    share = 1.04**9 * 0.04 / (1.04**10 - 1.0)
    assert check.pull_si == pytest.approx(share * rig.stuck_hook_load, rel=1e-12)
    assert check.capacity_si == pytest.approx(
        10_000 * 4.4482216152605 * math.exp(0.8 * math.pi), rel=1e-12
    )
    assert check.holds
    assert check.margin > 1.0
    assert "holds the largest dead-line pull" in check.text
    # Wyoming servicing rules, 6-2(b): 2 setting casing or pulling on stuck pipe, 3 otherwise.
    assert check.working_strength_si == pytest.approx(rig.rope.breaking_force.m_as("N") / 2.0)
    assert check.as_strong_as_the_line == (check.capacity_si >= check.working_strength_si)


@settings(max_examples=30, deadline=None)
@given(st.floats(1.0, 1.08), st.integers(2, 7), st.floats(0.0, 1.0))
def test_at_rest_the_load_lies_between_the_bounds(k: float, pairs: int, share: float) -> None:
    # Tensions at rest between those of lowering and hoisting, mixed at will, bear one load.
    reeving = rw.Reeving(2 * pairs, k)
    indicator = rw.WeightIndicator(reeving)
    load = rw.Q(1000.0, "kN")
    shown = (1.0 - share) * indicator.reading(load, "lowering") + share * indicator.reading(
        load, "hoisting"
    )
    least, largest = indicator.hook_load_at_rest(shown)
    assert least * (1.0 - 1e-12) <= load <= largest * (1.0 + 1e-12)


def test_an_anchor_that_does_not_hold_is_a_finding() -> None:
    check = rw.deadline.AnchorCheck(300e3, 200e3, 850e3, 425e3)
    assert not check.holds
    assert "does not hold" in check.text
    assert "200 kN" in check.text


RIG_7 = rw.rig.example("rig7").read_text(encoding="utf-8")


def load(tmp_path: Path, text: str) -> rw.Rig:
    path = tmp_path / "rig.toml"
    path.write_text(text, encoding="utf-8")
    return rw.load_rig(path)


def test_the_dead_line_of_a_rig_is_read(tmp_path: Path) -> None:
    rig = load(
        tmp_path,
        RIG_7.replace("[deadline.anchor]", "[deadline]\nlines_set = 8\n\n[deadline.anchor]"),
    )
    assert rig.deadline is not None
    assert rig.deadline.anchor == rw.deadline.Anchor(4, 0.1, "10 kip")
    assert rig.deadline.sensor is not None
    assert rig.deadline.sensor.cell_arm == pytest.approx(42 * 0.0254)
    assert rw.WeightIndicator.of_rig(rig).ratio("static") == pytest.approx(0.8)
    assert rw.WeightIndicator.of_rig(rw.load_rig(rw.rig.example("rig7"))).lines_set == 10


def test_a_rig_may_leave_it_out_or_have_it_wrong(tmp_path: Path) -> None:
    before, _, after = RIG_7.partition("[deadline.anchor]")
    without = load(tmp_path, before + after[after.index("\n[mast]") :])
    assert without.deadline is None
    assert rw.WeightIndicator.of_rig(without).lines_set == 10
    with pytest.raises(InadmissibleError, match=r"has no \[deadline\]"):
        rw.deadline.check_anchor(without)
    for wrong, place in (
        ('clamp_holding = "10000 lb"', "deadline.anchor.clamp_holding"),
        ("clamp_holding = 10000", "deadline.anchor.clamp_holding"),
    ):
        with pytest.raises(rw.rig.RigFileError, match=place):
            load(tmp_path, RIG_7.replace('clamp_holding = "10000 lbf"', wrong))
    with pytest.raises(rw.rig.RigFileError, match=r"deadline.anchor.friction: .*than 0"):
        load(tmp_path, RIG_7.replace("friction = 0.1\nclamps", "friction = 0.0\nclamps"))


# Pictures


def test_the_picture_of_the_indicator_has_three_lines() -> None:
    ax = Figure().subplots()
    indicator = rw.WeightIndicator(rw.Reeving(10, "roller"))
    assert plot.weight_indicator(ax, indicator, largest="500 kip") is ax
    assert ax.get_xlabel() == "true hook load [kip]"
    tops = [line.get_ydata()[-1] for line in ax.get_lines()]
    np.testing.assert_allclose(
        tops, [500 * indicator.ratio(m) for m in ("lowering", "static", "hoisting")]
    )
    assert len({line.get_linestyle() for line in ax.get_lines()}) == 3
