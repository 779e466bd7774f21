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
from scipy import stats

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


# Friction from readings


@given(lines, frictions, turning, st.floats(1e5, 4e6))
def test_friction_and_load_come_back_from_two_readings(
    n: int, friction: float, turns: bool, load: float
) -> None:
    indicator = rw.WeightIndicator(rw.Reeving(n, friction, dead_line_sheave_turns=turns))
    up = indicator.reading(rw.Q(load, "N"), "hoisting")
    # At no friction rounding may change the two round.
    down = max(indicator.reading(rw.Q(load, "N"), "lowering"), up)
    found = rw.deadline.friction_from_readings(up, down, n, int(turns))
    assert found == pytest.approx(friction, abs=1e-12)
    assert_close(rw.deadline.hook_load_from_readings(up, down, n, int(turns)), rw.Q(load, "N"))


def log_of(
    seed: int, friction: float, n: int, turns: bool, loads: list[float], scatter: float
) -> tuple[Any, list[str], list[float]]:
    """Readings, motions and loads of a log whose readings scatter in proportion."""
    rng = np.random.default_rng(seed)
    indicator = rw.WeightIndicator(rw.Reeving(n, friction, dead_line_sheave_turns=turns))
    readings, moves, names = [], [], []
    for load in loads:
        for motion in ("hoisting", "lowering", "hoisting", "lowering"):
            exact = indicator.reading(rw.Q(load, "N"), motion).magnitude
            readings.append(exact * math.exp(scatter * rng.standard_normal()))
            moves.append(motion)
            names.append(load)
    return rw.Q(readings, "N"), moves, names


@settings(max_examples=30)
@given(lines, frictions, turning)
def test_an_exact_log_gives_its_friction(n: int, friction: float, turns: bool) -> None:
    readings, moves, loads = log_of(1, friction, n, turns, [6e5, 1.5e6], 0.0)
    fit = rw.deadline.fit_friction(
        readings, moves, lines=n, loads=loads, dead_line_sheave_turns=turns
    )
    assert fit.sheave_friction == pytest.approx(friction, abs=1e-11)
    assert fit.standard_error < 1e-9
    assert_close(fit.hook_loads, rw.Q([6e5, 1.5e6], "N"))


def test_one_load_is_a_straight_line_of_scipy() -> None:
    readings, moves, _ = log_of(2, 1.04, 10, False, [1.2e6], 0.01)
    readings = rw.Q(np.append(readings.magnitude, 0.99 * readings.magnitude[0]), "N")
    moves = [*moves, "hoisting"]
    fit = rw.deadline.fit_friction(readings, moves, lines=10, confidence=0.9)
    z = [1.0 if move == "lowering" else -1.0 for move in moves]
    line = stats.linregress(z, np.log(readings.magnitude))
    assert math.log(fit.sheave_friction) == pytest.approx(2.0 * line.slope / 9.0, rel=1e-12)
    assert fit.standard_error == pytest.approx(
        fit.sheave_friction * 2.0 * line.stderr / 9.0, rel=1e-9
    )
    reach = stats.t.ppf(0.95, fit.degrees_of_freedom) * 2.0 * line.stderr / 9.0
    assert math.log(fit.high / fit.sheave_friction) == pytest.approx(reach, rel=1e-9)
    assert math.log(fit.sheave_friction / fit.low) == pytest.approx(reach, rel=1e-9)


def test_many_loads_are_the_least_squares_of_numpy() -> None:
    names = [3e5, 8e5, 1.5e6]
    readings, moves, loads = log_of(3, 1.03, 8, True, names, 0.008)
    fit = rw.deadline.fit_friction(
        readings, moves, lines=8, loads=loads, dead_line_sheave_turns=True
    )
    # One column for the slope, one for each load.
    z = np.array([1.0 if move == "lowering" else -1.0 for move in moves])
    columns = np.column_stack([z, *(np.array(loads) == name for name in names)])
    y = np.log(readings.magnitude)
    solution, squares, _, _ = np.linalg.lstsq(columns, y, rcond=None)
    covariance = squares[0] / (len(y) - 4) * np.linalg.inv(columns.T @ columns)
    assert fit.degrees_of_freedom == len(y) - 4
    assert math.log(fit.sheave_friction) == pytest.approx(2.0 * solution[0] / 9.0, rel=1e-12)
    assert fit.scatter == pytest.approx(math.sqrt(squares[0] / (len(y) - 4)), rel=1e-9)

    def hook_load(parameters: Any, load: int) -> float:
        """From intercept and slope, over the ratio while hoisting."""
        slope, intercept = parameters[0], parameters[1 + load]
        ratio = rw.deadline.hoisting_ratio(8, math.exp(2.0 * slope / 9.0), 1)
        return float(math.exp(intercept - slope) / ratio)

    for load in range(3):
        assert fit.hook_loads_si[load] == pytest.approx(hook_load(solution, load), rel=1e-10)
        # Propagation with numeric slopes.
        steps = 1e-6 * np.eye(4)
        slopes = [
            (hook_load(solution + step, load) - hook_load(solution - step, load)) / 2e-6
            for step in steps
        ]
        error = math.sqrt(np.array(slopes) @ covariance @ np.array(slopes))
        assert fit.hook_load_errors_si[load] == pytest.approx(error, rel=1e-6)


def test_the_interval_covers_the_friction_as_often_as_it_says() -> None:
    covered = 0
    logs = 200
    for seed in range(logs):
        readings, moves, loads = log_of(seed, 1.04, 10, False, [5e5, 1.2e6], 0.01)
        fit = rw.deadline.fit_friction(readings, moves, lines=10, loads=loads, confidence=0.8)
        covered += fit.low <= 1.04 <= fit.high
    # Binomial: 0.8 with a standard deviation of 0.028.
    assert 0.71 < covered / logs < 0.89


def test_the_uncertainty_is_that_of_sampled_readings() -> None:
    rng = np.random.default_rng(5)
    exact = rw.WeightIndicator(rw.Reeving(10, 1.04))
    up = exact.reading("400 kip", "hoisting") * (1 + 0.005 * rng.standard_normal(20_000))
    down = exact.reading("400 kip", "lowering") * (1 + 0.005 * rng.standard_normal(20_000))
    sampled = rw.deadline.friction_from_readings(up, down, 10, 0)
    # A standard deviation of 20,000 samples is known to half a percent; take four times that.
    assert np.std(sampled) == pytest.approx(
        rw.deadline.friction_uncertainty(1.04, 10, 0, 0.005), rel=0.02
    )


def test_a_log_that_contradicts_the_model_is_a_finding() -> None:
    readings = rw.Q([420.0, 380.0, 421.0, 379.0], "kip")
    fit = rw.deadline.fit_friction(
        readings, ["hoisting", "lowering", "hoisting", "lowering"], lines=10
    )
    assert fit.sheave_friction < 1.0
    assert not fit.physical


@pytest.mark.parametrize(
    ("changed", "field", "error"),
    [
        ({"readings": [300.0, 400.0, 300.0]}, "readings", UnitError),
        ({"readings": rw.Q([[300.0, 400.0, 300.0]], "kip")}, "readings", InadmissibleError),
        ({"motions": ["hoisting", "static", "hoisting"]}, "motions", InadmissibleError),
        ({"motions": ["hoisting", "lowering"]}, "motions", InadmissibleError),
        ({"motions": ["hoisting"] * 3}, "reading", InadmissibleError),
        ({"loads": [1, 2, 3]}, "reading", InadmissibleError),
        ({"loads": [1, 1]}, "motions", InadmissibleError),
        ({"lines": 9}, "lines", InadmissibleError),
        ({"lines": 10.5}, "lines", InadmissibleError),
        ({"confidence": 1.0}, "confidence", InadmissibleError),
        ({"readings": rw.Q([300.0, 0.0, 300.0], "kip")}, "reading", InadmissibleError),
        ({"dead_line_sheave_turns": 1}, "dead_line_sheave_turns", UnitError),
    ],
)
def test_what_cannot_be_fitted_is_refused(
    changed: dict[str, Any], field: str, error: type[rw.RopewalkError]
) -> None:
    call: dict[str, Any] = {
        "readings": rw.Q([300.0, 400.0, 302.0], "kip"),
        "motions": ["hoisting", "lowering", "hoisting"],
        "lines": 10,
    }
    with pytest.raises(error) as caught:
        rw.deadline.fit_friction(**{**call, **changed})
    assert (caught.value.where, caught.value.field) == ("deadline.fit_friction", field)


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


def test_an_anchor_that_does_not_hold_is_a_finding() -> None:
    check = rw.deadline.AnchorCheck(300e3, 200e3, 850e3)
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
    with pytest.raises(rw.rig.RigFileError, match="anchor_friction"):
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


@pytest.mark.parametrize("turns", [False, True])
def test_the_picture_of_a_log_has_its_moves_and_the_band(turns: bool) -> None:
    readings, moves, loads = log_of(4, 1.04, 10, turns, [5e5, 1.2e6], 0.01)
    fit = rw.deadline.fit_friction(
        readings, moves, lines=10, loads=loads, dead_line_sheave_turns=turns
    )
    ax = Figure().subplots()
    assert plot.friction_log(ax, fit) is ax
    down, line_down, up, line_up, _ = ax.get_lines()
    assert len(down.get_xdata()) + len(up.get_xdata()) == len(moves)
    expected = rw.deadline.lowering_ratio(10, fit.sheave_friction, int(turns))
    assert line_down.get_ydata()[0] == pytest.approx(expected)
    expected = rw.deadline.hoisting_ratio(10, fit.sheave_friction, int(turns))
    assert line_up.get_ydata()[0] == pytest.approx(expected)
    assert "95 %" in ax.get_title()
