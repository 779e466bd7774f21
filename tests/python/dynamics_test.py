"""Rope dynamics: stiffness and frequencies, and peak loads against integrated motion."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp
from scipy.linalg import eigh

import ropewalk as rw
from ropewalk.testing import assert_close

G = 9.80665

loads = st.floats(1e5, 5e6)
stiffnesses = st.floats(1e6, 1e8)


def peak(acceleration: Any, load: float, stiffness: float, end: float, step: float) -> float:
    """Peak force over load, the upper end driven by an acceleration in m/s² over time in s.

    x is the stretch beyond that at rest: m x″ = m a(t) − k x, by SciPy.
    """
    mass = load / G

    def rates(t: float, state: Any) -> Any:
        return [state[1], acceleration(t) - stiffness / mass * state[0]]

    result = solve_ivp(rates, (0.0, end), [0.0, 0.0], rtol=1e-9, atol=1e-12, max_step=step)
    return 1.0 + float(result.y[0].max()) * stiffness / load


# Stiffness


@given(st.integers(2, 16), st.floats(1.0, 100.0), st.floats(0.0, 100.0), st.floats(0.0, 100.0))
def test_free_sheaves_give_way_more_than_locked_ones(
    n: int, height: float, fast: float, dead: float
) -> None:
    rope = ("100 GPa", "600 mm**2", n, rw.Q(height, "m"))
    free = rw.dynamics.line_stiffness(*rope, rw.Q(fast, "m"), rw.Q(dead, "m"))
    locked = rw.dynamics.locked_stiffness(*rope)
    assert free <= locked * (1 + 1e-12)
    assert_close(free * (n * height + fast + dead), locked * n * height)


@given(stiffnesses, stiffnesses, loads)
def test_springs_in_series_stretch_both(one: float, other: float, load: float) -> None:
    force, k1, k2 = rw.Q(load, "N"), rw.Q(one, "N/m"), rw.Q(other, "N/m")
    both = rw.dynamics.static_stretch(force, rw.dynamics.series_stiffness(k1, k2))
    each = [rw.dynamics.static_stretch(force, k) for k in (k1, k2)]
    assert_close(both, each[0] + each[1])


@settings(max_examples=10)
@given(loads, stiffnesses)
def test_the_natural_frequency_is_that_of_the_integrated_motion(
    load: float, stiffness: float
) -> None:
    frequency = rw.dynamics.natural_frequency(rw.Q(load, "N"), rw.Q(stiffness, "N/m"))
    quarter = 0.25 / frequency.m_as("Hz")
    rate = stiffness * G / load
    result = solve_ivp(
        lambda _, y: [y[1], -rate * y[0]], (0.0, quarter), [1.0, 0.0], rtol=1e-10, atol=1e-12
    )
    assert result.y[0, -1] == pytest.approx(0.0, abs=1e-7)


# Peak loads


@pytest.mark.parametrize(("load", "stiffness"), [(2.45e6, 21.72e6), (4e5, 8e6)])
def test_a_step_is_integrated(load: float, stiffness: float) -> None:
    period = 2.0 * math.pi * math.sqrt(load / G / stiffness)
    found = peak(lambda _: 1.5, load, stiffness, period, period / 500)
    assert found == pytest.approx(rw.dynamics.step_factor("1.5 m/s**2"), rel=1e-6)


@pytest.mark.parametrize("swings", [0.2, 0.5, 0.9, 1.0, 1.4, 2.3])
def test_a_ramp_is_integrated(swings: float) -> None:
    load, stiffness, a = 2.45e6, 21.72e6, 1.2
    frequency = rw.dynamics.natural_frequency(rw.Q(load, "N"), rw.Q(stiffness, "N/m"))
    period = 1.0 / frequency.m_as("Hz")
    ramp = swings * period
    found = peak(
        lambda t: a * min(t / ramp, 1.0), load, stiffness, ramp + 1.5 * period, period / 100
    )
    expected = rw.dynamics.ramp_factor(rw.Q(a, "m/s**2"), rw.Q(ramp, "s"), frequency)
    assert found == pytest.approx(expected, rel=1e-4)


@pytest.mark.parametrize("swings", [0.05, 0.25, 0.45, 0.6, 1.7])
def test_a_stop_is_integrated(swings: float) -> None:
    load, stiffness, v = 2.45e6, 21.72e6, 0.5
    frequency = rw.dynamics.natural_frequency(rw.Q(load, "N"), rw.Q(stiffness, "N/m"))
    period = 1.0 / frequency.m_as("Hz")
    duration = swings * period
    a = v / duration
    found = peak(
        lambda t: a if t < duration else 0.0, load, stiffness, duration + period, period / 2000
    )
    expected = rw.dynamics.stop_factor(rw.Q(v, "m/s"), rw.Q(a, "m/s**2"), frequency)
    assert found == pytest.approx(expected, rel=2e-3)


@pytest.mark.parametrize("speed", [0.0, 0.3, 1.0, 2.0])
def test_taking_up_slack_is_integrated(speed: float) -> None:
    """The block rises evenly; the load stands until the line carries it, then moves freely."""
    load, stiffness = 2.45e6, 21.72e6
    mass = load / G

    def rates(t: float, state: Any) -> Any:
        force = max(0.0, stiffness * (speed * t - state[0]))
        lift = max(0.0, force - load) if state[0] <= 0.0 and state[1] <= 0.0 else force - load
        return [state[1], lift / mass]

    period = 2.0 * math.pi * math.sqrt(mass / stiffness)
    taut = load / stiffness / speed if speed > 0.0 else 0.0
    result = solve_ivp(
        rates, (0.0, taut + period), [0.0, 0.0], rtol=1e-8, atol=1e-10, max_step=period / 400
    )
    force = stiffness * np.maximum(0.0, speed * result.t - result.y[0])
    expected = rw.dynamics.pickup_factor(
        rw.Q(speed, "m/s"), rw.Q(stiffness, "N/m"), rw.Q(load, "N")
    )
    assert max(1.0, force.max() / load) == pytest.approx(expected, rel=1e-3)


@pytest.mark.parametrize("height", [0.0, 0.05, 0.4])
def test_falling_into_the_line_is_integrated(height: float) -> None:
    load, stiffness = 2.45e6, 21.72e6
    mass = load / G
    # y is the way down from where the line is straight.
    result = solve_ivp(
        lambda _, s: [s[1], G - stiffness / mass * max(0.0, s[0])],
        (0.0, 1.0),
        [0.0, math.sqrt(2.0 * G * height)],
        rtol=1e-9,
        atol=1e-12,
        max_step=1e-3,
    )
    found = stiffness * result.y[0].max() / load
    stretch = rw.dynamics.static_stretch(rw.Q(load, "N"), rw.Q(stiffness, "N/m"))
    assert found == pytest.approx(rw.dynamics.drop_factor(rw.Q(height, "m"), stretch), rel=1e-5)


@pytest.mark.parametrize("swings", [0.05, 0.25, 0.45, 0.6, 1.7])
@pytest.mark.parametrize("speed", [0.3, 0.9, 2.5])
def test_the_trough_of_a_stop_is_integrated(swings: float, speed: float) -> None:
    """A line that only pulls, its upper end hoisted and stopped, by SciPy.

    y is the height of the load, z that of the upper end above it with the line just straight.
    """
    load, stiffness = 2.45e6, 21.72e6
    mass, stretch = load / G, load / stiffness
    frequency = rw.dynamics.natural_frequency(rw.Q(load, "N"), rw.Q(stiffness, "N/m"))
    period = 1.0 / frequency.m_as("Hz")
    duration = swings * period
    a = speed / duration

    def end(t: Any) -> Any:
        run = np.minimum(t, duration)
        return stretch + speed * run - 0.5 * a * run**2

    def force(t: Any, y: Any) -> Any:
        return stiffness * np.maximum(end(t) - y, 0.0)

    # Up to the first trough: half a swing after the stop, if it is shorter than that.
    result = solve_ivp(
        lambda t, s: [s[1], force(t, s[0]) / mass - G],
        (0.0, duration + 0.6 * period),
        [0.0, speed],
        rtol=1e-9,
        atol=1e-12,
        max_step=period / 2000,
    )
    found = float(force(result.t, result.y[0]).min()) / load
    expected = rw.dynamics.trough_factor(rw.Q(speed, "m/s"), rw.Q(a, "m/s**2"), frequency)
    assert found == pytest.approx(expected, abs=2e-3)
    # Slack is told by the simulation too: no force at all.
    assert (found == 0.0) == (expected == 0.0)


def test_a_hard_stop_leaves_the_line_just_tight_at_the_slack_speed() -> None:
    # Energy: the load comes to rest as the spring is straight, m v²/2 = W δ − k δ²/2, δ = W/k.
    load, stiffness = 2.45e6, 21.72e6
    stretch = load / stiffness
    by_energy = math.sqrt(2.0 / (load / G) * (load * stretch - 0.5 * stiffness * stretch**2))
    frequency = rw.dynamics.natural_frequency(rw.Q(load, "N"), rw.Q(stiffness, "N/m"))
    speed = rw.dynamics.slack_speed(frequency)
    assert speed.m_as("m/s") == pytest.approx(by_energy, rel=1e-12)
    assert rw.dynamics.trough_factor(0.999 * speed, "100 m/s**2", frequency) > 0.0
    assert rw.dynamics.trough_factor(1.1 * speed, "100 m/s**2", frequency) == 0.0


@given(st.floats(1e-3, 5.0), st.floats(0.01, 100.0), st.floats(0.1, 5.0))
def test_the_trough_is_the_peak_the_other_way_up(v: float, a: float, f: float) -> None:
    given_ = (rw.Q(v, "m/s"), rw.Q(a, "m/s**2"), rw.Q(f, "Hz"))
    trough, peak_ = rw.dynamics.trough_factor(*given_), rw.dynamics.stop_factor(*given_)
    assert 0.0 <= trough <= 1.0
    assert trough == pytest.approx(max(0.0, 2.0 - peak_), abs=1e-12)
    slack_speed = rw.dynamics.slack_speed(given_[2]).m_as("m/s")
    if a < 0.499 * G or v < 0.999 * slack_speed:
        assert trough > 0.0


@given(st.floats(0.0, 5.0), st.floats(0.0, 5.0), st.floats(0.1, 5.0))
def test_nothing_peaks_more_than_a_step(a: float, ramp: float, f: float) -> None:
    acceleration, frequency = rw.Q(a, "m/s**2"), rw.Q(f, "Hz")
    step = rw.dynamics.step_factor(acceleration)
    ramped = rw.dynamics.ramp_factor(acceleration, rw.Q(ramp, "s"), frequency)
    assert 1.0 + a / G - 1e-12 <= ramped <= step + 1e-12


@given(st.floats(1e-3, 2.0), st.floats(0.01, 50.0), loads, stiffnesses)
def test_no_stop_peaks_more_than_a_hard_one(
    v: float, a: float, load: float, stiffness: float
) -> None:
    force, k, speed = rw.Q(load, "N"), rw.Q(stiffness, "N/m"), rw.Q(v, "m/s")
    stop = rw.dynamics.stop_factor(
        speed, rw.Q(a, "m/s**2"), rw.dynamics.natural_frequency(force, k)
    )
    assert 1.0 <= stop <= rw.dynamics.pickup_factor(speed, k, force) * (1 + 1e-12)
    assert stop <= rw.dynamics.step_factor(rw.Q(a, "m/s**2")) * (1 + 1e-12)


# Strings


def test_frequencies_of_the_string_are_those_of_a_chain_of_masses() -> None:
    """The string cut into 400 masses and springs below block and line, by SciPy's eigenvalues."""
    k, block, area, length = 2e7, 2e5, 34.0e-4, 2500.0
    modulus, density, pieces = 206.8e9, 7850.0, 400
    spring = modulus * area / length * pieces
    mass = density * area * length / pieces
    masses = np.full(pieces + 1, mass)
    masses[0] = block / G + mass / 2.0
    masses[-1] = mass / 2.0
    stiffness = np.zeros((pieces + 1, pieces + 1))
    stiffness[0, 0] = k
    for i in range(pieces):
        stiffness[i : i + 2, i : i + 2] += spring * np.array([[1.0, -1.0], [-1.0, 1.0]])
    squares = eigh(stiffness, np.diag(masses), eigvals_only=True, subset_by_index=(0, 4))
    for mode, square in enumerate(squares, start=1):
        found = rw.dynamics.string_frequency(
            rw.Q(k, "N/m"),
            rw.Q(block, "N"),
            rw.Q(area, "m**2"),
            rw.Q(length, "m"),
            rw.Q(modulus, "Pa"),
            rw.Q(density, "kg/m**3"),
            mode,
        )
        assert found.m_as("Hz") == pytest.approx(math.sqrt(square) / (2 * math.pi), rel=2e-4)


@given(stiffnesses, st.floats(0.0, 1e6), st.floats(100.0, 6000.0), st.integers(1, 8))
def test_each_mode_has_its_place(k: float, block: float, length: float, mode: int) -> None:
    found = rw.dynamics.string_frequency(
        rw.Q(k, "N/m"),
        rw.Q(block, "N"),
        "34 cm**2",
        rw.Q(length, "m"),
        "206.8 GPa",
        "7850 kg/m**3",
        mode,
    ).m_as("Hz")
    per_half_turn = math.sqrt(206.8e9 / 7850.0) / (2.0 * length)
    assert (mode - 1.5) * per_half_turn <= found <= (mode - 0.5) * per_half_turn * (1 + 1e-12)


def test_a_wave_is_back_after_twice_the_string() -> None:
    time = rw.dynamics.wave_return_time("3000 m", "206.8 GPa", "7850 kg/m**3").m_as("s")
    assert time == pytest.approx(6000.0 / math.sqrt(206.8e9 / 7850.0))
