"""Sheave friction found from readings: identities, other programs, coverage, refusals."""

from __future__ import annotations

import math
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


def test_more_than_any_friction_is_no_friction() -> None:
    # By hand, 4 lines and the dead-line sheave still: three sheaves between the readings, K³ = 8.
    moves = ["hoisting", "lowering", "hoisting", "lowering"]
    up, least, most = 100.0, 7.99, 8.01
    for apart, possible in ((least, True), (most, False)):
        readings = rw.Q([up, up * apart, up, up * apart], "kip")
        pair = (readings[0], readings[1], 4, 0)
        if possible:
            fit = rw.deadline.fit_friction(readings, moves, lines=4)
            assert fit.sheave_friction == pytest.approx(apart ** (1 / 3), rel=1e-12)
            assert fit.physical
            assert rw.deadline.friction_from_readings(*pair) == pytest.approx(apart ** (1 / 3))
            continue
        with pytest.raises(InadmissibleError, match="loads mixed up") as refused:
            rw.deadline.fit_friction(readings, moves, lines=4)
        assert refused.value.field == "readings"
        for two in (rw.deadline.friction_from_readings, rw.deadline.hook_load_from_readings):
            with pytest.raises(InadmissibleError, match="friction of 2"):
                two(*pair)


@pytest.mark.parametrize("friction", ["0", "0.0", "-0.1", "1.5"])
def test_an_anchor_without_friction_is_refused_by_its_key(tmp_path: Path, friction: str) -> None:
    text = rw.rig.example("rig7").read_text(encoding="utf-8")
    old = "wraps = 4\nfriction = 0.1\n"
    assert old in text
    path = tmp_path / "rig.toml"
    path.write_text(text.replace(old, f"wraps = 4\nfriction = {friction}\n"), encoding="utf-8")
    bound = "less than or equal to 1" if friction == "1.5" else "greater than 0"
    with pytest.raises(rw.rig.RigFileError, match=rf"deadline.anchor.friction: .*{bound}"):
        rw.load_rig(path)


@pytest.mark.parametrize(
    ("changed", "field", "error"),
    [
        ({"readings": [300.0, 400.0, 300.0]}, "readings", UnitError),
        ({"readings": rw.Q([[300.0, 400.0, 300.0]], "kip")}, "readings", InadmissibleError),
        ({"motions": ["hoisting", "static", "hoisting"]}, "motions", InadmissibleError),
        ({"motions": ["hoisting", "lowering"]}, "motions", InadmissibleError),
        ({"motions": ["hoisting"] * 3}, "readings", InadmissibleError),
        ({"loads": [1, 2, 3]}, "readings", InadmissibleError),
        ({"loads": [1, 1]}, "motions", InadmissibleError),
        ({"lines": 9}, "lines", InadmissibleError),
        ({"lines": 10.5}, "lines", InadmissibleError),
        ({"confidence": 1.0}, "confidence", InadmissibleError),
        ({"readings": rw.Q([300.0, 0.0, 300.0], "kip")}, "readings", InadmissibleError),
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


# Picture


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
