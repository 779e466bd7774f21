"""The compensator: identities, SciPy's solvers, properties, refusals, pictures."""

from __future__ import annotations

import copy
import math
import pickle
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure
from scipy import integrate, optimize

import ropewalk as rw
from ropewalk import compensator as hc
from ropewalk import plot
from ropewalk.errors import (
    InadmissibleError,
    UnitError,
    UnknownEntryError,
)
from ropewalk.testing import assert_close

#: A block-mounted compensator of usual size.
GIVEN: dict[str, Any] = {
    "mounting": "block",
    "stroke": "25 ft",
    "effective_area": "0.1 m**2",
    "gas_volume": "6 m**3",
    "polytropic_exponent": 1.2,
    "seal_friction": 0.02,
}
RESPONSE = hc.HeaveOperator.constant(1.0)


def made(**changed: Any) -> rw.Compensator:
    return rw.Compensator(**{**GIVEN, **changed})


# The gas spring


@settings(max_examples=40, deadline=None)
@given(st.floats(0.02, 0.3), st.floats(3.0, 40.0), st.floats(1.0, 1.7), st.floats(0.1, 4.0))
def test_the_needed_gas_gives_the_rise(
    area: float, volume: float, exponent: float, half: float
) -> None:
    gas = {"effective_area": rw.Q(area, "m**2"), "polytropic_exponent": exponent}
    if area * half > 0.9 * volume:
        return
    load = hc.gas_load(
        "1 MN", gas_volume=rw.Q(volume, "m**3"), spring_travel=rw.Q(half, "m"), **gas
    )
    rise = load.m_as("MN") - 1.0
    needed = hc.needed_gas_volume(half_stroke=rw.Q(half, "m"), load_rise=rise, **gas)
    assert_close(needed, rw.Q(volume, "m**3"), relative=1e-8)


@settings(max_examples=40, deadline=None)
@given(st.floats(1.0, 1.7), st.floats(0.01, 3.8))
def test_compressing_raises_the_load_more_than_expanding_lowers_it(
    exponent: float, travel: float
) -> None:
    spring = made(polytropic_exponent=exponent)
    loads = spring.load("400 kip", rw.Q([-travel, 0.0, travel], "m")).m_as("kip")
    assert loads[0] < loads[1] < loads[2]
    assert loads[2] - loads[1] > loads[1] - loads[0]


def test_the_work_of_the_gas_is_that_of_the_polytropic_change() -> None:
    # W = (p2 V2 − p1 V1)/(n − 1) for n ≠ 1, against the load integrated over travel.
    work, _ = integrate.quad(lambda x: made().load("2 MN", rw.Q(x, "m")).m_as("N"), -3.0, 3.0)
    loads = made().load("2 MN", rw.Q([-3.0, 3.0], "m")).m_as("N")
    volumes = 6.0 - 0.1 * np.array([-3.0, 3.0])
    assert work == pytest.approx(np.diff(loads / 0.1 * volumes)[0] / 0.2, rel=1e-9)


def test_the_band_holds_a_simulated_cycle() -> None:
    spring = made(moving_mass="8 tonne")
    band = spring.load_band("2 MN", "6 m", "9 s")
    turn = np.linspace(0.0, 2.0 * math.pi, 721)
    travel = 3.0 * np.cos(turn)
    omega = 2.0 * math.pi / 9.0
    load = (
        spring.load("2 MN", rw.Q(travel, "m")).m_as("N")
        - 8000.0 * omega**2 * travel
        - 0.02 * 2e6 * np.sign(np.sin(turn))
    )
    assert load.max() <= band.highest.m_as("N")
    assert load.min() >= band.lowest.m_as("N")
    assert band.highest.m_as("N") == pytest.approx(load.max(), rel=0.02)
    assert band.share == pytest.approx((band.highest.m_as("N") - 2e6) / 2e6)


def test_findings_are_numbers_not_errors() -> None:
    band = made(rated_load="450 kip").load_band("448 kip", "9 m")
    assert band.stroke_left_si == pytest.approx(25 * 0.3048 / 2 - 4.5)
    assert band.over_rating_si == pytest.approx(band.highest.m_as("N") - 450e3 * 4.4482216152605)
    assert made().load_band("448 kip", "9 m").over_rating_si is None


# Weight on bit


@settings(max_examples=40, deadline=None)
@given(st.floats(1e4, 5e6), st.floats(0.0, 0.05), st.floats(0.05, 7.0))
def test_a_compensator_softens_what_the_bit_feels(
    stiffness: float, friction: float, height: float
) -> None:
    band = made(seal_friction=friction).bit_weight_band(
        "2 MN", rw.Q(height, "m"), rw.Q(stiffness, "N/m")
    )
    assert 0.0 < band.less_si <= band.uncompensated_si * (1 + 1e-9)
    assert 0.0 < band.more_si <= band.uncompensated_si * (1 + 1e-9)
    assert band.more_si <= band.less_si * (1 + 1e-9)


def test_a_stiff_string_feels_the_load_band() -> None:
    band = made().bit_weight_band("2 MN", "6 m", "1e9 N/m")
    load = made().load_band("2 MN", "6 m")
    assert band.less_si == pytest.approx(load.gas_rise_si + load.friction_si, rel=1e-3)
    assert band.more_si == pytest.approx(load.gas_fall_si + load.friction_si, rel=1e-3)


def test_weight_on_bit_against_a_solved_motion() -> None:
    # Hook (10 t) between gas spring and string, without friction, moved slowly by the vessel:
    # SciPy's solver of the motion against the balance of forces.
    mass, stiffness, omega = 10e3, 234_595.0, 2.0 * math.pi / 60.0
    heave = 3.0

    def motion(t: float, state: Any) -> list[float]:
        position, speed = state  # of the hook, up
        travel = heave * math.sin(omega * t) - position
        gas = 2e6 * (6.0 / (6.0 - 0.1 * travel)) ** 1.2 - 2e6
        return [speed, (gas - stiffness * position - 2e4 * speed) / mass]

    end = 15.0 + 60.0  # a quarter past one period: vessel at its highest
    solved = integrate.solve_ivp(motion, (0.0, end), [0.0, 0.0], rtol=1e-9, atol=1e-9)
    band = made(seal_friction=0.0).bit_weight_band("2 MN", "6 m", rw.Q(stiffness, "N/m"))
    assert band.less_si == pytest.approx(stiffness * solved.y[0, -1], rel=5e-3)


def test_a_compensator_at_its_end_leaves_the_rest_to_the_string() -> None:
    # 25 ft of stroke, and a string that hardly gives way: past the end it takes all of the heave.
    stiffness, half = 1e6, 25 * 0.3048 / 2
    at_end = made().bit_weight_band("2 MN", "9 m", rw.Q(stiffness, "N/m"))
    assert at_end.strokes_out
    assert at_end.less_si == at_end.more_si == pytest.approx(stiffness * (4.5 - half))
    inside = made().bit_weight_band("2 MN", "7 m", rw.Q(stiffness, "N/m"))
    assert not inside.strokes_out
    motion = made().rope_motion("2 MN", "9 m", lines=12)
    assert motion.stroke_left_si == pytest.approx(half - 4.5)


@pytest.mark.parametrize("meters", [-1.0, math.nan, math.inf])
def test_a_heave_is_a_height(meters: float) -> None:
    height = rw.Q(meters, "m")
    refused = r"\(\): heave_height = .* m is outside \[0, 100\] m"
    with pytest.raises(InadmissibleError, match="load_band" + refused):
        made().load_band("2 MN", height)
    with pytest.raises(InadmissibleError, match="bit_weight_band" + refused):
        made().bit_weight_band("2 MN", height, "1 MN/m")
    with pytest.raises(InadmissibleError, match="rope_motion" + refused):
        made().rope_motion("2 MN", height, lines=12)


def test_no_load_has_no_pressure() -> None:
    with pytest.raises(InadmissibleError, match="mean_load"):
        made().pressure("-1 kN")


# The hanging string


@pytest.mark.parametrize("period", [6.0, 8.0, 12.0, 20.0])
@pytest.mark.parametrize("damping", [0.05, 0.3])
def test_isolation_against_a_solved_motion(period: float, damping: float) -> None:
    k, m = 40e3, 204e3
    omega, c = 2.0 * math.pi / period, 2.0 * damping * math.sqrt(k * m)

    def motion(t: float, state: Any) -> list[float]:
        y, dy = math.sin(omega * t), omega * math.cos(omega * t)
        return [state[1], (k * (y - state[0]) + c * (dy - state[1])) / m]

    settled = 40.0 / (damping * math.sqrt(k / m)) / 4.0
    times = np.linspace(settled, settled + period, 400)
    solved = integrate.solve_ivp(
        motion, (0.0, times[-1]), [0.0, 0.0], t_eval=times, rtol=1e-8, atol=1e-10
    )
    natural = hc.natural_period(rw.Q(m, "kg"), rw.Q(k, "N/m"))
    ratio = hc.hanging_ratio(rw.Q(period, "s"), natural, damping)
    assert np.ptp(solved.y[0]) / 2.0 == pytest.approx(ratio, rel=2e-3)


def test_dry_friction_against_a_solved_motion() -> None:
    k, m, friction, period, heave = 40e3, 204e3, 30e3, 8.0, 1.5
    omega = 2.0 * math.pi / period

    def motion(t: float, state: Any) -> list[float]:
        z, dz = state  # stroke: load against vessel; the sign of the speed a little rounded off
        drive = m * omega**2 * heave * math.sin(omega * t)
        return [dz, (drive - k * z - friction * math.tanh(dz / 0.01)) / m]

    times = np.linspace(40 * period, 44 * period, 2000)
    solved = integrate.solve_ivp(
        motion, (0.0, times[-1]), [0.0, 0.0], t_eval=times, rtol=1e-7, atol=1e-9, method="LSODA"
    )
    stroke = hc.hanging_stroke(
        rw.Q(heave, "m"), rw.Q(k, "N/m"), rw.Q(m, "kg"), rw.Q(period, "s"), rw.Q(friction, "N")
    )
    assert np.ptp(solved.y[0]) / 2.0 == pytest.approx(stroke.m_as("m"), rel=0.02)


@settings(max_examples=40, deadline=None)
@given(st.floats(0.01, 5.0), st.floats(5.0, 30.0))
def test_without_friction_the_stroke_is_what_isolation_leaves(heave: float, period: float) -> None:
    hanging = {"gas_stiffness": "40 kN/m", "hanging_mass": "300 tonne"}
    natural = hc.natural_period("300 tonne", "40 kN/m")
    if abs(period / natural.m_as("s") - 1.0) < 0.01:
        return
    wave = rw.Q(period, "s")
    stroke = hc.hanging_stroke(rw.Q(heave, "m"), wave_period=wave, seal_friction="0 N", **hanging)
    r2 = (natural.m_as("s") / period) ** 2
    # x = y/(1 − r⁻²) … the stroke z = x − y has 1/|r² − 1| of it, r = T_n/T.
    assert stroke.m_as("m") == pytest.approx(heave * r2 / abs(1.0 - r2))
    ratio = hc.hanging_ratio(wave, natural, 0.0)
    assert ratio == pytest.approx(1.0 / abs(1.0 - r2))


def test_dry_friction_does_not_bound_the_resonance() -> None:
    # Den Hartog: the amplitude of resonance is infinite below F/(m w^2 Y) = pi/4.
    hanging = {"gas_stiffness": "40 kN/m", "hanging_mass": "204 tonne"}
    natural = hc.natural_period("204 tonne", "40 kN/m")
    for wave in (natural, natural * (1.0 + 1e-11)):
        with pytest.raises(InadmissibleError, match="in resonance the stroke has no bound"):
            hc.hanging_stroke("1.5 m", wave_period=wave, seal_friction="30 kN", **hanging)
        # Below it the seals hold: m w^2 Y = 40 kN/m of 1.5 m is 60 kN, pi/4 of that 47.1 kN.
        held = hc.hanging_stroke("1.5 m", wave_period=wave, seal_friction="47.2 kN", **hanging)
        assert held.magnitude == 0.0
    near = hc.hanging_stroke("1.5 m", wave_period=natural * 1.001, seal_friction="30 kN", **hanging)
    assert 100.0 < near.m_as("m") < math.inf
    with pytest.raises(InadmissibleError, match="must differ from natural_period"):
        hc.hanging_ratio(natural * (1.0 + 1e-11), natural, 0.0)


@settings(max_examples=40, deadline=None)
@given(st.floats(0.1, 8.0), st.floats(4.0, 20.0), st.floats(0.5, 1.0), st.floats(0.0, 5e6))
def test_power_with_inertia_against_a_search(
    height: float, period: float, efficiency: float, mass: float
) -> None:
    load, omega = 1.8e6, 2.0 * math.pi / period
    speed = math.pi * height / period

    def given_back(angle: float) -> float:
        force = load / efficiency + mass * speed * omega * math.cos(angle)
        return -force * speed * math.sin(angle)

    best = optimize.minimize_scalar(given_back, bounds=(0.0, math.pi / 2), method="bounded")
    heave = (rw.Q(height, "m"), rw.Q(period, "s"), efficiency)
    power = hc.active_power_with_inertia(rw.Q(load, "N"), *heave, rw.Q(mass, "kg"))
    assert power.m_as("W") == pytest.approx(-best.fun, rel=1e-6)
    assert power >= hc.active_power(rw.Q(load, "N"), *heave) * (1.0 - 1e-12)


# What the rope sees


def test_a_block_mounted_compensator_moves_no_rope() -> None:
    seen = made().rope_motion("2 MN", "6 m", lines=12)
    band = made().load_band("2 MN", "6 m")
    swing = band.gas_rise_si + band.gas_fall_si + 2 * band.friction_si
    assert seen.tension_change.m_as("N") == pytest.approx(swing / 12)
    assert (seen.drum_travel_si, seen.sheave_roll_si) == (0.0, 0.0)


def test_a_crown_mounted_compensator_rolls_rope_on_its_arms() -> None:
    crown = made(mounting="crown")
    seen = crown.rope_motion("2 MN", "6 m", 12, arm_length="5 m", sheave_diameter="1.5 m")
    # An arm of 5 m that rises 3 m to either side of the level turns twice asin(0.6).
    assert seen.sheave_roll.m_as("m") == pytest.approx(1.5 / 2 * 2 * math.asin(0.6))
    with pytest.raises(InadmissibleError, match="needs arm_length"):
        crown.rope_motion("2 MN", "6 m", 12)
    with pytest.raises(InadmissibleError, match="lines = 1"):
        made().rope_motion("2 MN", "6 m", 1)


# The objects


def test_objects_are_plain_data() -> None:
    spring = made(rated_load="600 kip", moving_mass="5 tonne")
    operators = [
        RESPONSE,
        hc.HeaveOperator.table(rw.Q([5.0, 10.0], "s"), [0.2, 0.4]),
        hc.HeaveOperator.box_hull("200 m", "36 m", "10 m", "135 deg"),
    ]
    for one in [spring, rw.SeaState("4 m", "11 s"), *operators]:
        assert pickle.loads(pickle.dumps(one)) == one
        assert copy.deepcopy(one) == one
    for one in operators:
        again = pickle.loads(pickle.dumps(one))
        assert again.ratio("9 s") == one.ratio("9 s")
    assert eval(repr(spring), {"Compensator": rw.Compensator}) == spring


@pytest.mark.parametrize(
    ("changed", "error", "text"),
    [
        ({"mounting": "derrick"}, UnknownEntryError, "'block' or 'crown'"),
        ({"stroke": 25}, UnitError, "stroke must be a length"),
        ({"stroke": "-1 m"}, InadmissibleError, "stroke"),
        ({"stroke": "60 m"}, InadmissibleError, "stroke"),
        ({"effective_area": "0 m**2"}, InadmissibleError, "effective_area"),
        ({"gas_volume": "0.3 m**3"}, InadmissibleError, "gas_volume"),
        ({"polytropic_exponent": 0.9}, InadmissibleError, "polytropic_exponent"),
        ({"polytropic_exponent": [1.1, 1.2]}, InadmissibleError, "polytropic_exponent"),
        ({"seal_friction": 1.5}, InadmissibleError, "seal_friction"),
        ({"moving_mass": "-1 kg"}, InadmissibleError, "moving_mass"),
        ({"rated_load": "0 N"}, InadmissibleError, "rated_load"),
    ],
)
def test_compensators_that_cannot_be(
    changed: dict[str, Any], error: type[Exception], text: str
) -> None:
    with pytest.raises(error, match=text):
        made(**changed)


def test_seas_and_responses_that_cannot_be() -> None:
    with pytest.raises(InadmissibleError, match="significant_height"):
        rw.SeaState("0 m", "11 s")
    with pytest.raises(InadmissibleError, match="peak_factor"):
        rw.SeaState("4 m", "11 s", 0.5)
    with pytest.raises(InadmissibleError, match="peak_period"):
        rw.SeaState("4 m", rw.Q([9.0, 11.0], "s"))
    with pytest.raises(InadmissibleError, match="periods must rise"):
        hc.HeaveOperator.table(rw.Q([5.0, 5.0], "s"), [0.1, 0.2])
    with pytest.raises(InadmissibleError, match="a ratio for each period"):
        hc.HeaveOperator.table(rw.Q([5.0, 6.0], "s"), [0.1])
    with pytest.raises(InadmissibleError, match="no heave at all"):
        hc.heave(rw.SeaState("4 m", "11 s"), hc.HeaveOperator.constant(0.0))
    with pytest.raises(InadmissibleError, match="no gas is left"):
        hc.gas_load("1 MN", "1 m**2", "3 m**3", 1.2, "3 m")
    with pytest.raises(InadmissibleError, match="must differ from natural_period"):
        hc.hanging_ratio("9 s", "9 s", 0.0)
    with pytest.raises(UnknownEntryError, match="compensator_practice"):
        hc.table("winds")


def test_practice_has_a_standing() -> None:
    (row,) = hc.table("compensator_practice")
    # Common practice: strokes of 15 to 25 ft, loads to 400,000 or 600,000 lb.
    assert (row["stroke_min [ft]"], row["stroke_max [ft]"]) == (15, 25)
    assert (row["rated_load_usual [lbf]"], row["rated_load_large [lbf]"]) == (400e3, 600e3)
    assert row["standing"] == "common practice"


# Pictures


@pytest.mark.parametrize("rating", [None, "450 kip", "900 kip"])
def test_the_picture_of_the_gas_spring_has_its_load(rating: str | None) -> None:
    ax = Figure().subplots()
    spring = made(rated_load=rating)
    assert plot.gas_spring_load(ax, spring, "400 kip", length_unit="m", force_unit="kN") is ax
    curve, *others = ax.get_lines()
    loads = spring.load("400 kip", rw.Q(curve.get_xdata(), "m")).m_as("kN")
    np.testing.assert_allclose(curve.get_ydata(), loads)
    assert len(others) == (rating == "450 kip")
    assert "[m]" in ax.get_xlabel()
    assert ax.get_ylabel() == "load [kN]"
