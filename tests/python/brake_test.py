"""Brakes: identities and limits, laws, cross-checks with SciPy, findings, refusals."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure
from scipy import integrate, optimize

import ropewalk as rw
from ropewalk import plot
from ropewalk.errors import (
    InadmissibleError,
    RowStatus,
    UnitError,
    ValidityError,
    ValidityWarning,
)
from ropewalk.testing import assert_close

#: Fewer calls, and no clock: the first call of a test may have to load a library.
quick = settings(max_examples=40, deadline=None)
positive = st.floats(0.05, 20.0)


def kilonewton_meters(value: float) -> Any:
    return rw.Q(value, "kN*m")


# Identities and limits


@quick
@given(st.floats(0.05, 0.6), st.floats(30.0, 340.0))
def test_a_band_turned_round_has_less_by_the_tension_ratio(friction: float, wrap: float) -> None:
    arguments = ("10 kN", friction, rw.Q(wrap, "deg"), "1.2 m", 2)
    helped, against = rw.brake.band_torque(*arguments), rw.brake.band_torque_reversed(*arguments)
    ratio = rw.brake.band_tension_ratio(friction, rw.Q(wrap, "deg"))
    assert_close(helped, against * ratio)
    lever = rw.brake.band_lever_tension(helped, friction, rw.Q(wrap, "deg"), "1.2 m", 2)
    assert_close(lever, "10 kN")


def test_without_friction_a_band_has_no_torque() -> None:
    slight = rw.brake.band_torque("10 kN", 1e-9, "280 deg", "1.2 m", 2)
    # T = n F μ θ D/2 to the first order.
    assert_close(slight, rw.Q(2 * 10e3 * 1e-9 * math.radians(280) * 0.6, "N*m"), relative=1e-6)


def test_a_band_fades_more_than_its_friction() -> None:
    hot, cold = (
        rw.brake.band_torque("10 kN", mu, "280 deg", "1.2 m", 2).m_as("N*m") for mu in (0.30, 0.35)
    )
    # (4.332 − 1)/(5.531 − 1), computed by hand.
    assert hot / cold == pytest.approx(0.735, abs=5e-4)


@quick
@given(positive, st.floats(0.1, 0.99))
def test_a_new_pad_acts_farther_out_than_a_worn_one(outer: float, share: float) -> None:
    radii = rw.Q(outer, "m"), rw.Q(share * outer, "m")
    worn = rw.brake.pad_radius_uniform_wear(*radii).magnitude
    new = rw.brake.pad_radius_uniform_pressure(*radii).magnitude
    assert worn <= new * (1 + 1e-12) <= outer * (1 + 1e-9)


@quick
@given(st.floats(0.01, 100.0))
def test_the_eddy_curve_is_symmetric(x: float) -> None:
    above, below = (
        rw.brake.eddy_torque("100 kN*m", "50 rpm", rw.Q(50.0 * y, "rpm")) for y in (x, 1.0 / x)
    )
    assert_close(above, below, relative=1e-12)


@quick
@given(st.floats(0.01, 1.0))
def test_stable_and_unstable_speeds_lie_symmetric_to_the_critical(share: float) -> None:
    load = kilonewton_meters(100.0 * share)
    slow = rw.brake.eddy_stable_speed("100 kN*m", "50 rpm", load).m_as("rpm")
    fast = rw.brake.eddy_unstable_speed("100 kN*m", "50 rpm", load).m_as("rpm")
    assert slow * fast == pytest.approx(2500.0)
    for speed in (slow, fast):
        assert_close(rw.brake.eddy_torque("100 kN*m", "50 rpm", rw.Q(speed, "rpm")), load)


def test_the_motor_is_continuous_where_its_limits_meet() -> None:
    corner = 200e3 / 60e3
    torque = rw.brake.motor_brake_torque(
        "60 kN*m", "200 kW", rw.Q(corner * np.array([0.0, 0.5, 1.0, 1.0 + 1e-12, 2.0]), "rad/s")
    )
    np.testing.assert_allclose(torque.m_as("kN*m"), [60.0, 60.0, 60.0, 60.0, 30.0])


def test_the_stop_surface_factor_is_the_integral_of_the_constant_one() -> None:
    """Duhamel's integral of a flux that falls evenly to nothing, by SciPy."""

    def rise(t: float) -> float:
        # ∫ q(τ) / √(π (t − τ)) dτ with q = 1 − τ; the substitution t − τ = s² takes the pole out.
        value, _ = integrate.quad(lambda s: 2.0 * (1.0 - t + s * s), 0.0, math.sqrt(t))
        return value / math.sqrt(math.pi)

    top = optimize.minimize_scalar(lambda t: -rise(t), bounds=(0.0, 1.0), method="bounded")
    ones = ("1 W/m**2", "1 s", "1 W/m/K", "1 kg/m**3", "1 J/kg/K", "2 m")
    assert top.x == pytest.approx(0.5, abs=1e-4)
    assert rw.brake.surface_rise_of_stop(*ones).magnitude == pytest.approx(-top.fun, rel=1e-8)


def _slab_rise(fourier: float) -> float:
    """Return the face of a slab under constant flux over that of a half-space.

    By the series in eigenfunctions (Carslaw and Jaeger 3.8, from memory), which knows nothing of
    images: 1 unit each of flux, depth, conductivity and diffusivity.
    """
    n = np.arange(1, 400)
    series = np.sum(np.exp(-((n * math.pi) ** 2) * fourier) / n**2)
    slab = fourier + 1.0 / 3.0 - 2.0 / math.pi**2 * series
    return float(slab / (2.0 * math.sqrt(fourier / math.pi)))


def test_the_surface_formulas_end_where_the_far_side_is_felt() -> None:
    assert _slab_rise(0.05) == pytest.approx(1.0, abs=1e-4)
    assert 1.008 < _slab_rise(0.31) < 1.01 < _slab_rise(0.33)
    flux = rw.Q(1.0, "W/m**2")
    ones = ("1 W/m/K", "1 kg/m**3", "1 J/kg/K", "1 m")
    for function, limit in ((rw.brake.surface_rise, 0.31), (rw.brake.surface_rise_of_stop, 0.57)):
        function(flux, rw.Q(limit, "s"), *ones)
        late = rw.Q(limit * 1.01, "s")
        with pytest.raises(ValidityError, match="fourier_number"):
            function(flux, late, *ones)
        with pytest.warns(ValidityWarning, match="fourier_number"):
            function(flux, late, *ones, outside_validity="warn")
        values, status = function(
            flux,
            rw.Q([limit, 1.01 * limit], "s"),
            *ones,
            outside_validity="ignore",
            return_status=True,
        )
        assert np.isfinite(values.magnitude).all()
        assert status.tolist() == [0, int(RowStatus.OUTSIDE_VALIDITY)]


def test_the_stop_in_a_slab_is_one_percent_hotter_at_its_limit() -> None:
    """Duhamel's integral over the step response of the slab, by SciPy."""

    def step(t: float) -> float:
        return 2.0 * math.sqrt(t / math.pi) * _slab_rise(t)

    def rise(t: float, whole: float) -> float:
        # Flux 1 − τ/t_s: its first value and the steps down since.
        down, _ = integrate.quad(step, 1e-9, t, epsabs=1e-10)
        return step(t) - down / whole

    for whole, low, high in ((0.57, 1.0095, 1.01), (0.6, 1.01, 1.02)):
        top = optimize.minimize_scalar(
            lambda t, whole=whole: -rise(t, whole), bounds=(0.3 * whole, whole), method="bounded"
        )
        half_space = 2.0 * math.sqrt(2.0) / 3.0 * math.sqrt(whole / math.pi)
        assert low < -top.fun / half_space < high


def test_temperature_over_a_trip_against_an_ode_solver() -> None:
    heat, lowering, rest = np.array([20e6, 25e6, 30e6]), 40.0, 100.0
    found = rw.brake.temperature_over_trip(
        rw.Q(heat, "J"),
        rw.Q(lowering, "s"),
        rw.Q(rest, "s"),
        heated_mass="1000 kg",
        specific_heat="500 J/kg/K",
        heat_loss="1500 W/K",
        first_rise="10 K",
    )
    rise = 10.0
    for stand, energy in enumerate(heat):
        for power, time, ours in (
            (energy / lowering, lowering, found.lowered_si),
            (0.0, rest, found.rested_si),
        ):
            done = integrate.solve_ivp(
                lambda _, T, p=power: (p - 1500.0 * T) / 5e5, (0.0, time), [rise], rtol=1e-10
            )
            rise = float(done.y[0, -1])
            assert ours[stand] == pytest.approx(rise, rel=1e-7)
    assert_close(found.highest, rw.Q(float(found.lowered_si.max()), "K"))


def test_a_trip_that_begins_hot_is_hottest_then() -> None:
    brake: dict[str, Any] = {
        "heated_mass": "1000 kg",
        "specific_heat": "500 J/kg/K",
        "heat_loss": "1500 W/K",
        "first_rise": "300 K",
    }
    trip = rw.brake.temperature_over_trip(rw.Q([1.0, 1.0], "kJ"), "40 s", "100 s", **brake)
    assert trip.highest.m_as("K") == 300.0
    with pytest.raises(InadmissibleError, match="heat must be that of one stand or more"):
        rw.brake.temperature_over_trip(rw.Q([], "J"), "40 s", "100 s", **brake)


def test_energy_of_a_trip_is_what_the_load_loses() -> None:
    loads = rw.Q(np.linspace(50.0, 250.0, 9), "kip")
    shares = [rw.brake.lowering_heat(loads, "28.5 m", share) for share in (0.3, 0.7)]
    assert_close(sum(one.sum() for one in shares), (loads * rw.Q(28.5, "m")).sum())


# Lowering balance


@st.composite
def brake_sets(draw: Any) -> rw.brake.LoweringBrakes:
    given_torques = {
        "eddy_peak_torque": kilonewton_meters(draw(st.floats(1.0, 200.0))),
        "critical_speed": rw.Q(draw(st.floats(10.0, 200.0)), "rpm"),
    }
    if draw(st.booleans()):
        given_torques |= {
            "motor_torque_limit": kilonewton_meters(draw(st.floats(1.0, 100.0))),
            "motor_power_limit": rw.Q(draw(st.floats(10.0, 1000.0)), "kW"),
        }
    if draw(st.booleans()):
        given_torques["friction_torque"] = kilonewton_meters(draw(st.floats(0.1, 50.0)))
    return rw.brake.LoweringBrakes(**given_torques)


@quick
@given(brake_sets(), st.floats(20.0, 300.0))
def test_a_balance_balances(brakes: rw.brake.LoweringBrakes, load: float) -> None:
    balance = brakes.balance(kilonewton_meters(load))
    at_rest = brakes.torque("0 rpm").m_as("kN*m")
    assert balance.state.startswith("held") == (at_rest >= load)
    largest = balance.largest_load.m_as("kN*m")
    # At the very peak the load is as strong as the brakes at one speed, and stronger at all others.
    assert balance.runs_away == (largest <= load) or largest == pytest.approx(load, rel=1e-9)
    for speed in (balance.stable, balance.unstable):
        if speed is not None and speed.m_as("rpm") <= 10_000.0:  # what `torque` takes
            assert_close(brakes.torque(speed), kilonewton_meters(load), relative=1e-6)
    if balance.stable is not None:
        below, above = (brakes.torque(balance.stable * k).m_as("kN*m") for k in (0.999, 1.001))
        assert below <= load * (1 + 1e-9)
        assert above >= load * (1 - 1e-9) or balance.unstable_si is not None
    # No speed slower than the first balance brakes the load.
    if balance.state == "stable":
        slower = rw.Q(np.linspace(0.0, 0.999, 40) * balance.stable_si, "rad/s")
        assert np.all(brakes.torque(slower).m_as("kN*m") <= load * (1 + 1e-9))


def test_every_balance_speed_comes_with_its_stability() -> None:
    """Eddy and motor brakes together can be in balance at five speeds; SciPy finds them too."""
    brakes = rw.brake.LoweringBrakes(
        eddy_peak_torque="100 kN*m",
        critical_speed="400 rpm",
        motor_torque_limit="110 kN*m",
        motor_power_limit="220 kW",
    )
    balance = brakes.balance("100 kN*m")

    def excess(rpm: float) -> float:
        return float(brakes.torque(rw.Q(rpm, "rpm")).m_as("kN*m")) - 100.0

    grid = np.linspace(0.0, 5000.0, 20001)
    values = brakes.torque(rw.Q(grid, "rpm")).m_as("kN*m") - 100.0
    turns = np.flatnonzero(np.diff(np.sign(values)))
    assert [one.rotation.m_as("rpm") for one in balance.speeds] == pytest.approx(
        [optimize.brentq(excess, grid[k], grid[k + 1]) for k in turns], rel=1e-9
    )
    assert [one.stable for one in balance.speeds] == [bool(values[k] < 0.0) for k in turns]
    assert len(balance.speeds) == 3
    assert balance.unstable_si == balance.speeds[0].rotation_si
    assert balance.runs_away_above == balance.speeds[-1].rotation
    assert "gains speed up to" in balance.finding
    ax = plot.lowering_balance(Figure().subplots(), brakes, "150 kN*m", highest_speed="900 rpm")
    unstable = ax.get_lines()[1].get_xdata()
    # Two dashed branches, with a full one between them.
    pieces = np.flatnonzero(np.diff(np.isfinite(unstable).astype(int)) == 1)
    assert len(pieces) == 2


def test_a_motor_that_pulls_is_no_brake_that_holds() -> None:
    motor = {"motor_torque_limit": "80 kN*m", "motor_power_limit": "300 kW"}
    alone = rw.brake.LoweringBrakes(**motor).balance("60 kN*m")
    assert alone.state == "held by motor"
    assert "no brake holds it" in alone.finding
    held = rw.brake.LoweringBrakes(**motor, friction_torque="61 kN*m").balance("60 kN*m")
    assert held.state == "held"


def test_runaway_is_a_finding_with_numbers_and_a_caution() -> None:
    brakes = rw.brake.LoweringBrakes(eddy_peak_torque="75 kN*m", critical_speed="50 rpm")
    balance = brakes.balance("100 kN*m")
    assert balance.runs_away
    assert balance.stable is None
    assert "runs away" in balance.finding
    assert "0.75" in balance.finding
    assert "local codes" in str(balance)
    # Power lost: nothing is left, whatever the load.
    assert brakes.without_power().balance("1 kN*m").runs_away
    assert brakes.without_power().torque("50 rpm").magnitude == 0.0


def test_loads_brakes_that_belong_together_are_asked_for() -> None:
    with pytest.raises(InadmissibleError, match="critical_speed is missing"):
        rw.brake.LoweringBrakes(eddy_peak_torque="75 kN*m")
    with pytest.raises(UnitError):
        rw.brake.LoweringBrakes(friction_torque="75 J")


# Pictures


def test_pictures_of_brakes_carry_units_and_the_unstable_branch_is_dashed() -> None:
    brakes = rw.brake.LoweringBrakes(eddy_peak_torque="75 kN*m", critical_speed="50 rpm")
    ax = Figure().subplots()
    assert plot.lowering_balance(ax, brakes, "100 kN*m") is ax
    stable, unstable = ax.get_lines()
    assert (stable.get_linestyle(), unstable.get_linestyle()) == ("-", "--")
    for line in (stable, unstable):
        at = int(np.flatnonzero(np.isfinite(line.get_xdata()))[10])
        load, speed = line.get_xdata()[at], line.get_ydata()[at]
        torque = rw.brake.eddy_torque("75 kN*m", "50 rpm", rw.Q(speed, "rpm"))
        assert torque.m_as("kN*m") == pytest.approx(load, rel=1e-6)
    assert "[kN*m]" in ax.get_xlabel()
    ax = plot.brake_torque_by_speed(Figure().subplots(), brakes, "200 rpm", load_torque="50 kN*m")
    assert "[rpm]" in ax.get_xlabel()
    assert [line.get_label() for line in ax.get_lines()][2:] == ["settles", "gains speed above"]
    trip = rw.brake.temperature_over_trip(
        rw.Q([20.0] * 5, "MJ"),
        "40 s",
        "100 s",
        heated_mass="1000 kg",
        specific_heat="500 J/kg/K",
        heat_loss="500 W/K",
    )
    ax = plot.temperature_over_trip(Figure().subplots(), trip, limit="200 K")
    np.testing.assert_allclose(ax.get_lines()[0].get_ydata(), trip.lowered_si)
    assert "[K]" in ax.get_ylabel()
