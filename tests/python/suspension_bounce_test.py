"""The bounce of the hook: laws of the oscillator, against SciPy's integrator, refusals, picture."""

from __future__ import annotations

import copy
import math
import pickle
from typing import Any

import numpy as np
import numpy.typing as npt
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure
from scipy.integrate import solve_ivp

import ropewalk as rw
from ropewalk import plot
from ropewalk.errors import InadmissibleError, UnitError
from ropewalk.suspension import HookBounce
from ropewalk.testing import assert_close

G = 9.80665
MASS, RATE = 2500.0, 400e3
CRITICAL = 2.0 * math.sqrt(RATE * MASS)


def hook(
    ratio: float = 0.0,
    *,
    down: float | None = None,
    friction: float = 0.0,
    overpull: float = 12e3,
    speed: float = 0.0,
) -> HookBounce:
    """A hook of 2500 kg on 400 kN/m, damped by a share of critical damping."""
    return HookBounce(
        rw.Q(MASS * G, "N"),
        rw.Q(RATE, "N/m"),
        rw.Q(overpull, "N"),
        damping_up=rw.Q(ratio * CRITICAL, "N*s/m"),
        damping_down=None if down is None else rw.Q(down * CRITICAL, "N*s/m"),
        friction=rw.Q(friction, "N"),
        start_speed=rw.Q(speed, "m/s"),
    )


def integrated(
    times: npt.NDArray[np.float64],
    up: float,
    down: float,
    friction: float,
    start: float,
    speed: float,
) -> npt.NDArray[np.float64]:
    """Height by SciPy from the equation of motion, restarted where the hook turns."""
    heights = np.full(times.shape, np.nan)
    begin, state = 0.0, np.array([start, speed])

    def turn(_: float, y: Any) -> float:
        return float(y[1])

    turn.terminal = True  # type: ignore[attr-defined]
    while begin < times[-1]:
        if state[1] == 0.0 and abs(RATE * state[0]) <= friction:
            heights[times >= begin] = state[0]
            break
        way = np.sign(state[1]) if state[1] != 0.0 else -np.sign(state[0])
        damping = (up if way > 0.0 else down) * CRITICAL

        def pull(_: float, y: Any, c: float = damping, s: float = way) -> tuple[float, float]:
            return y[1], (-RATE * y[0] - c * y[1] - s * friction) / MASS

        # A first short step leaves the standstill behind, which is an event too.
        short = 1e-7
        first = solve_ivp(pull, (0.0, short), state, rtol=1e-12, atol=1e-14)
        rest = solve_ivp(
            pull,
            (short, times[-1] - begin + short),
            first.y[:, -1],
            events=turn,
            dense_output=True,
            rtol=1e-11,
            atol=1e-13,
        )
        inside = (times >= begin + short) & (times <= begin + rest.t[-1])
        heights[inside] = rest.sol(times[inside] - begin)[0]
        begin, state = begin + rest.t[-1], np.array([rest.y[0, -1], 0.0])
    heights[0] = start
    return heights


@pytest.mark.parametrize("friction", [0.0, 900.0])
@pytest.mark.parametrize("speed", [0.0, 0.3, -0.3])
@pytest.mark.parametrize(
    ("up", "down"), [(0.0, 0.0), (0.15, 0.15), (0.5, 0.05), (1.0, 1.0), (0.2, 1.6), (2.5, 2.5)]
)
def test_motion_is_that_of_scipy(up: float, down: float, friction: float, speed: float) -> None:
    times = np.linspace(0.0, 1.5, 151)
    bounce = hook(up, down=down, friction=friction, speed=speed)
    expected = integrated(times, up, down, friction, -12e3 / RATE, speed)
    np.testing.assert_allclose(bounce.height(rw.Q(times, "s")).magnitude, expected, atol=2e-8)


# Laws


@given(st.floats(0.0, 0.99), st.floats(1e2, 1e5))
def test_the_first_swing_overshoots_by_the_damping_ratio(ratio: float, overpull: float) -> None:
    bounce = hook(ratio, overpull=overpull)
    beyond = float((bounce.highest / -bounce.start).magnitude)
    swing = rw.suspension.overshoot(ratio)
    # Without flight if it swings no farther than to the spring's free length, W/k above rest.
    assert bounce.goes_slack == (swing * overpull > MASS * G)
    if bounce.goes_slack:
        # What swings would damp and pull back; what flies is not held back.
        assert beyond > swing
    else:
        assert beyond == pytest.approx(swing, rel=1e-9)
    assert_close(bounce.jump, bounce.highest - bounce.start)
    assert bounce.damping_ratio == pytest.approx((ratio, ratio))


@given(st.floats(1.0, 20.0))
def test_from_critical_damping_on_nothing_overshoots(ratio: float) -> None:
    bounce = hook(ratio)
    assert bounce.highest.magnitude == pytest.approx(0.0, abs=1e-12)
    assert rw.suspension.overshoot(ratio) == 0.0
    heights = bounce.height(rw.Q(np.linspace(0.0, 5.0, 60), "s")).magnitude
    assert np.all(np.diff(heights) >= -1e-12)


@given(st.floats(0.02, 0.9), st.floats(-0.5, 0.5))
def test_peaks_fall_by_the_logarithmic_decrement(ratio: float, speed: float) -> None:
    times, heights = hook(ratio, speed=speed).turns
    peaks = np.abs(heights.magnitude[1:6])
    np.testing.assert_allclose(peaks[1:] / peaks[:-1], rw.suspension.overshoot(ratio), rtol=1e-6)
    damped = math.sqrt(RATE / MASS) * math.sqrt(1.0 - ratio**2)
    np.testing.assert_allclose(np.diff(times.magnitude[1:6]), math.pi / damped, rtol=1e-9)


@settings(max_examples=30)
@given(st.floats(0.0, 3.0), st.floats(0.0, 3.0), st.floats(0.0, 3e3), st.floats(-1.0, 1.0))
def test_it_never_swings_farther_than_before(
    up: float, down: float, friction: float, speed: float
) -> None:
    bounce = hook(up, down=down, friction=friction, speed=speed)
    # By energy: that of the spring about rest, and of weight alone above its free length.
    _, heights = bounce.turns
    free = MASS * G / RATE
    on_spring = np.minimum(heights.magnitude, free)
    energy = 0.5 * RATE * on_spring**2 + MASS * G * (heights.magnitude - on_spring)
    assert np.all(np.diff(energy[1:]) <= 1e-9 * energy[0] + 1e-12)
    assert bounce.goes_slack == bool(np.any(heights.magnitude > free))
    assert bounce.lowest <= bounce.start <= bounce.highest
    assert_close(
        bounce.largest_spring_force, rw.Q(MASS * G, "N") - rw.Q(RATE, "N/m") * bounce.lowest
    )


def test_energy_of_an_impulse() -> None:
    # Undamped: ½ m v² = ½ k x².
    bounce = hook(overpull=0.0, speed=-0.5)
    assert_close(bounce.lowest, rw.Q(-0.5 * math.sqrt(MASS / RATE), "m"))


def test_a_load_let_go_at_the_unstretched_spring_weighs_twice() -> None:
    # The textbook of suddenly applied loads: overpull −W is the spring without load.
    bounce = hook(overpull=-MASS * G)
    assert_close(bounce.largest_spring_force, rw.Q(2.0 * MASS * G, "N"))
    assert_close(bounce.spring_force("0 s"), "0 N", absolute="1e-6 N")


def test_an_overpull_of_more_than_the_weight_makes_the_spring_go_slack() -> None:
    assert not hook(overpull=0.99 * MASS * G).goes_slack
    assert hook(overpull=1.01 * MASS * G).goes_slack


def test_what_flies_rises_by_its_energy_and_for_as_long_as_a_stone() -> None:
    # Undamped, let go P/k below rest: P²/2k in the spring about rest, W²/2k of it left there at the
    # free length, the rest lifts W. A stone thrown up at v is back after 2v/g.
    weight, pull = MASS * G, 60e3
    bounce = hook(overpull=pull)
    left = (pull**2 - weight**2) / (2.0 * RATE)
    top = weight / RATE + left / weight
    assert_close(bounce.highest, rw.Q(top, "m"), relative=1e-12)
    assert_close(bounce.jump, rw.Q(top + pull / RATE, "m"), relative=1e-12)
    speed = math.sqrt(2.0 * left / MASS)
    times, heights = bounce.turns
    natural = math.sqrt(RATE / MASS)
    to_slack = (math.pi - math.acos(weight / pull)) / natural
    assert times.magnitude[1] == pytest.approx(to_slack + speed / G, rel=1e-9)
    # Down again, it turns where it began, and so on without end.
    assert times.magnitude[2] == pytest.approx(2.0 * times.magnitude[1], rel=1e-9)
    np.testing.assert_allclose(heights.magnitude[2:9:2], -pull / RATE, rtol=1e-9)
    assert_close(bounce.spring_force(rw.Q(times.magnitude[1], "s")), "0 N", absolute="1e-9 N")
    assert_close(bounce.largest_spring_force, rw.Q(weight + pull, "N"), relative=1e-9)


@pytest.mark.parametrize("friction", [0.0, 900.0])
@pytest.mark.parametrize(("up", "down"), [(0.0, 0.0), (0.1, 0.1), (0.15, 0.02), (0.02, 1.6)])
@pytest.mark.parametrize(("overpull", "speed"), [(60e3, 0.0), (40e3, 0.8), (-40e3, 0.5)])
def test_a_flight_is_that_of_scipy(
    up: float, down: float, friction: float, overpull: float, speed: float
) -> None:
    free = MASS * G / RATE

    def motion(_: float, y: Any) -> tuple[float, float]:
        """One law for all of it; no event, no piece: the step is short instead."""
        if y[0] > free:
            return y[1], -G
        damping = (up if y[1] > 0.0 else down) * CRITICAL
        return y[1], (-RATE * y[0] - damping * y[1] - np.sign(y[1]) * friction) / MASS

    bounce = hook(up, down=down, friction=friction, overpull=overpull, speed=speed)
    assert bounce.goes_slack
    times = np.linspace(0.0, 0.6, 61)
    expected = solve_ivp(
        motion, (0.0, 0.6), (-overpull / RATE, speed), t_eval=times, max_step=1e-4, rtol=1e-9
    )
    heights = bounce.height(rw.Q(times, "s")).magnitude
    np.testing.assert_allclose(heights, expected.y[0], atol=5e-5)
    speeds = bounce.speed(rw.Q(times, "s")).magnitude
    np.testing.assert_allclose(speeds, expected.y[1], atol=2e-3)
    assert expected.y[0].max() <= bounce.highest.magnitude + 5e-5


@given(st.floats(0.05, 2.0), st.floats(0.05, 2.0), st.floats(3e4, 2e5), st.floats(1e-3, 0.2))
def test_what_has_flown_settles_for_good_too(
    up: float, down: float, overpull: float, band: float
) -> None:
    bounce = hook(up, down=down, overpull=overpull, speed=0.5)
    settled = bounce.settled(rw.Q(band, "m")).m_as("s")
    later = settled + np.linspace(0.0, 20.0, 800)
    assert np.all(np.abs(bounce.height(rw.Q(later, "s")).magnitude) <= band * (1.0 + 1e-9))
    if settled > 0.0:
        before = bounce.height(rw.Q(settled * (1.0 - 1e-6), "s")).magnitude
        assert abs(before) >= band * (1.0 - 1e-3)


def test_friction_holds_off_rest() -> None:
    bounce = hook(friction=700.0)
    rest = bounce.rest
    assert rest is not None
    assert abs(rest.magnitude) <= 700.0 / RATE
    assert_close(bounce.height("100 s"), rest)
    assert_close(bounce.speed("100 s"), "0 m/s")
    assert hook().rest is None


@given(st.floats(0.03, 4.0), st.floats(1e-4, 0.02))
def test_settled_means_inside_the_band_for_good(ratio: float, band: float) -> None:
    bounce = hook(ratio)
    settled = bounce.settled(rw.Q(band, "m")).m_as("s")
    later = settled + np.linspace(0.0, 20.0, 400)
    inside = np.abs(bounce.height(rw.Q(later, "s")).magnitude)
    assert np.all(inside <= band * (1.0 + 1e-9))
    if settled > 0.0:
        before = bounce.height(rw.Q(settled * (1.0 - 1e-6), "s")).magnitude
        assert abs(before) >= band * (1.0 - 1e-3)


# The object


def test_a_bounce_pickles_and_answers_many_times_at_once() -> None:
    bounce = hook(0.2, down=0.05, friction=100.0)
    times = rw.Q([[0.0, 0.1], [0.5, 2.0]], "s")
    for twin in (pickle.loads(pickle.dumps(bounce)), copy.deepcopy(bounce)):
        np.testing.assert_array_equal(twin.height(times).magnitude, bounce.height(times).magnitude)
        assert repr(twin) == repr(bounce)
    assert bounce.height(times).shape == (2, 2)
    one = bounce.height("0.1 s").magnitude
    assert one == bounce.height(times).magnitude[0, 1]
    frequency = rw.suspension.bounce_frequency(rw.Q(RATE, "N/m"), rw.Q(MASS * G, "N"))
    assert_close(frequency, rw.Q(math.sqrt(RATE / MASS) / (2 * math.pi), "Hz"))


@pytest.mark.parametrize(
    ("change", "field", "error"),
    [
        ({"sprung_weight": "0 kip"}, "sprung_weight", InadmissibleError),
        ({"sprung_weight": "6000 lb"}, "sprung_weight", UnitError),
        ({"spring_rate": "0 lbf/in"}, "spring_rate", InadmissibleError),
        ({"spring_rate": "1500 lbf"}, "spring_rate", UnitError),
        ({"overpull": 3000}, "overpull", UnitError),
        ({"overpull": rw.Q(math.nan, "lbf")}, "overpull", InadmissibleError),
        ({"damping_up": "-1 lbf*s/in"}, "damping_up", InadmissibleError),
        ({"damping_down": "-1 lbf*s/in"}, "damping_down", InadmissibleError),
        ({"damping_up": "1 lbf/in"}, "damping_up", UnitError),
        ({"friction": "-1 lbf"}, "friction", InadmissibleError),
        ({"start_speed": "100 m/s"}, "start_speed", InadmissibleError),
        ({"friction": rw.Q([1.0, 2.0], "lbf")}, "friction", UnitError),
    ],
)
def test_what_cannot_be_is_refused_by_field(
    change: dict[str, Any], field: str, error: type[rw.RopewalkError]
) -> None:
    given = {"sprung_weight": "6 kip", "spring_rate": "1500 lbf/in", "overpull": "3 kip"}
    with pytest.raises(error) as caught:
        HookBounce(**{**given, **change})
    assert caught.value.field == field


def test_times_and_bands_that_cannot_be_are_refused() -> None:
    with pytest.raises(InadmissibleError):
        hook(0.1).height("-1 s")
    with pytest.raises(InadmissibleError, match="does not come to rest"):
        hook().height("1e5 s")
    with pytest.raises(InadmissibleError, match="never kept"):
        hook().settled("1 in")
    with pytest.raises(InadmissibleError, match="followed"):
        hook(0.1).settled("1e-12 m")


# The picture


def test_the_picture_has_the_motion_and_where_it_settles() -> None:
    bounce = hook(0.2)
    ax = Figure().subplots()
    assert plot.hook_bounce(ax, bounce, until="2 s", label="damped", within="0.2 in") is ax
    curve = next(line for line in ax.get_lines() if line.get_label() == "damped")
    assert curve.get_ydata()[0] == pytest.approx(bounce.start.m_as("in"))
    assert np.max(curve.get_ydata()) == pytest.approx(bounce.highest.m_as("in"), rel=1e-3)
    settled = bounce.settled("0.2 in").m_as("s")
    assert f"settled, {settled:.2f} s" in [text.get_text() for text in ax.texts]
    assert "[in]" in ax.get_ylabel()
