"""Strokes and trips: energy balances, referees by SciPy, limits, findings."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hoists import ONE_LAYER, STAND, dw, hoist, hoists, loads, machine, speeds
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

import ropewalk as rw
from ropewalk.errors import InadmissibleError
from ropewalk.testing import assert_close

GRAVITY = 9.80665

# Identities


@settings(max_examples=60, deadline=None)
@given(hoists(), loads, speeds, st.floats(0.02, 1.0), st.sampled_from(["hoisting", "lowering"]))
def test_energy_of_a_stroke_balances(
    on: dw.Hoist, load: float, speed: float, acceleration: float, motion: Any
) -> None:
    limits = dw.Limits(rw.Q(speed, "m/s"), rw.Q(acceleration, "m/s**2"))
    stroke = on.stroke(rw.Q(load, "N"), STAND, limits, motion)
    assert stroke.possible != bool(stroke.reason)
    if not stroke.possible:
        assert stroke.time_si == math.inf
        return
    given_ = stroke.driven_si - stroke.braked_si
    assert given_ == pytest.approx(
        stroke.lifted_si + stroke.lost_si, rel=1e-9, abs=1e-9 * abs(stroke.lifted_si)
    )
    assert stroke.driven_si >= 0.0
    assert stroke.braked_si >= 0.0
    assert stroke.lost_si >= -1e-6 * abs(stroke.lifted_si)
    assert stroke.peak_speed_si <= speed * (1 + 1e-12)
    motors = on.drawworks.motors
    # Lowering, the motors are disengaged.
    most = motors.count * motors.power_si if motion == "hoisting" else 0.0
    assert stroke.peak_power_si <= most * (1 + 1e-9)
    assert motion == "hoisting" or stroke.driven_si == 0.0
    # No stroke beats the limits, whatever the motors can.
    least = dw.stand_time(STAND, rw.Q(speed, "m/s"), *2 * [rw.Q(acceleration, "m/s**2")])
    assert stroke.time_si >= least.m_as("s") * (1 - 1e-12)


@settings(max_examples=60, deadline=None)
@given(hoists(), loads, speeds, st.floats(0.02, 1.0))
def test_a_curve_is_the_stroke(on: dw.Hoist, load: float, speed: float, a: float) -> None:
    limits = dw.Limits(rw.Q(speed, "m/s"), rw.Q(a, "m/s**2"))
    stroke = on.stroke(rw.Q(load, "N"), STAND, limits)
    if not stroke.possible:
        return
    curve = on.curve(rw.Q(load, "N"), STAND, limits, points=200)
    assert curve.time_si[-1] == pytest.approx(stroke.time_si, rel=1e-9)
    assert curve.travel_si[-1] == pytest.approx(28.5, rel=1e-9)
    assert curve.speed_si.max() == pytest.approx(stroke.peak_speed_si)
    assert np.all(np.diff(curve.time_si) >= -1e-12)
    travel = np.sum(np.diff(curve.time_si) * 0.5 * (curve.speed_si[1:] + curve.speed_si[:-1]))
    assert travel == pytest.approx(28.5, rel=2e-3)
    positive = np.maximum(curve.power_si, 0.0)
    driven = np.sum(np.diff(curve.time_si) * 0.5 * (positive[1:] + positive[:-1]))
    assert driven == pytest.approx(stroke.driven_si, rel=2e-2)


@settings(deadline=None)
@given(st.floats(0.05, 0.4), st.floats(0.02, 0.2), st.floats(0.02, 0.2))
def test_a_stroke_the_motors_hardly_feel_takes_the_stand_time(v: float, a: float, d: float) -> None:
    limits = dw.Limits(rw.Q(v, "m/s"), rw.Q(a, "m/s**2"), rw.Q(d, "m/s**2"))
    expected = dw.stand_time(STAND, rw.Q(v, "m/s"), rw.Q(a, "m/s**2"), rw.Q(d, "m/s**2"))
    for motion in ("hoisting", "lowering"):
        assert_close(hoist().stroke("400 kN", STAND, limits, motion).time, expected)


@settings(deadline=None)
@given(loads, speeds, st.floats(0.02, 1.0), st.floats(1.0, 1.09))
def test_without_inertia_motors_and_brakes_see_the_load_through_the_efficiencies(
    load: float, speed: float, a: float, friction: float
) -> None:
    light = machine(motors=dw.Motors(2, "750 hp", "800 rpm", "1600 rpm"), drum_inertia="0 kg*m**2")
    on = hoist(friction=friction, drawworks=light)
    limits = dw.Limits(rw.Q(speed, "m/s"), rw.Q(a, "m/s**2"))
    up = on.stroke(rw.Q(load, "N"), STAND, limits, gear=1)
    if up.possible:
        efficiency = 0.95 * 0.97 * on.reeving.efficiency("hoisting")
        assert up.driven_si == pytest.approx(load * 28.5 / efficiency, rel=1e-9)
        assert up.braked_si == pytest.approx(0.0, abs=1e-6)
    down = on.stroke(rw.Q(load, "N"), STAND, limits, "lowering")
    efficiency = 0.97 * on.reeving.efficiency("lowering")
    assert down.braked_si == pytest.approx(load * 28.5 * efficiency, rel=1e-9)
    assert down.driven_si == 0.0


def test_power_and_energy_balance_over_a_trip() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    limits = dw.Limits("1.2 m/s", "0.4 m/s**2", lowering_speed="0.9 m/s")
    trip = rw.rig.trip(rig, rig.heaviest_trip, limits=limits, connection_time="2 min")
    assert trip.possible
    assert_close(trip.driven - trip.braked, trip.lifted + trip.lost, relative=1e-12)
    # Pulled with drag and run against it: what is lifted over the round trip is the drag, twice.
    job = rig.heaviest_trip
    weight = job.string_weight(job.depth - job.stand_length * np.arange(trip.stands))
    drag = (job.drag_up + job.drag_down) * float(weight.sum()) * job.stand_length
    assert trip.lifted.m_as("J") == pytest.approx(drag, rel=1e-9)
    moving = trip.time.m_as("s") - 2 * trip.stands * 120.0
    assert trip.moving_time.m_as("s") == pytest.approx(moving)
    assert_close(trip.time, trip.time_out + trip.time_in)


def test_a_trip_of_a_string_is_that_of_the_plan() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    job = rig.heaviest_trip
    limits = dw.Limits("0.8 m/s", "0.4 m/s**2")
    one = rw.rig.trip(rig, job, limits=limits, connection_time="90 s")
    other = dw.trip(
        rw.rig.hoist(rig),
        rig.strings["drilling"],
        depth="3400 m",
        stand_length=STAND,
        block_weight=rw.Q(rig.block.weight, "N"),
        limits=limits,
        connection_time="90 s",
        drag_up=job.drag_up,
        drag_down=job.drag_down,
    )
    assert_close(one.time, other.time)
    assert_close(one.driven, other.driven)


def test_the_load_of_a_trip_is_hoisted_as_its_stands() -> None:
    on, limits = hoist(), dw.Limits("1 m/s", "0.3 m/s**2")
    many = on.stroke(rw.Q([300.0, 900.0, 1500.0, 4000.0], "kN"), STAND, limits)
    for i, load in enumerate((300, 900, 1500, 4000)):
        one = on.stroke(rw.Q(load, "kN"), STAND, limits)
        assert (one.time_si, one.gear, one.possible, one.reason) == (
            many.time_si[i],
            many.gear[i],
            many.possible[i],
            many.reason[i],
        )
    assert list(many.possible) == [True, True, True, False]


# Referees: SciPy integrates the equation of motion with none of the closed forms


def referee(on: dw.Hoist, load: float, limits: dw.Limits, gear: int) -> float:
    """Time of a stroke: motor torque, losses and inertia put together anew, step by step."""
    motors, gear_ = on.drawworks.motors, on.drawworks.gears[gear - 1]
    lines = on.reeving.lines
    efficiency = on.reeving.efficiency("hoisting")
    travel, dead = 28.5, on.drum.length_of(on.wraps_at_lowest).m_as("m")
    ends = [on.drum.length_before(k).m_as("m") for k in range(2, on.drum.layers + 1)]

    def radius(x: float) -> float:
        layer = 1 + sum(dead + lines * x >= end for end in ends)
        return on.drum.lap_length(layer).m_as("m") / (2 * math.pi)

    def acceleration(x: float, v: float) -> float:
        r = radius(x)
        turn = lines / r  # drum, rad per m of the block
        rotation = v * turn * gear_.ratio
        torque = motors.count * motors.power_si / max(rotation, motors.base_speed_si)
        # Torque balance at the drum shaft, solved for the acceleration of the block.
        rope = load / (lines * efficiency) * r / on.drawworks.drum_efficiency
        geared = gear_.ratio * gear_.efficiency
        free = torque * geared - rope
        inertia = (
            on.drawworks.drum_inertia_si + geared * gear_.ratio * motors.count * motors.inertia_si
        ) * turn + rope / GRAVITY
        top = min(limits.speed_si, motors.top_speed_si / (turn * gear_.ratio))
        return min(limits.acceleration_si, free / inertia) if v < top else 0.0

    def braking(_: float, y: Any) -> float:
        return float(travel - y[0] - 0.5 * y[1] ** 2 / limits.deceleration_si)

    braking.terminal = True  # type: ignore[attr-defined]
    run = solve_ivp(
        lambda _, y: [y[1], acceleration(y[0], y[1])],
        (0.0, 1000.0),
        [0.0, 0.0],
        events=braking,
        rtol=1e-9,
        atol=1e-9,
        max_step=0.02,
    )
    return float(run.t[-1] + run.y[1][-1] / limits.deceleration_si)


@pytest.mark.parametrize(
    ("load", "speed", "acceleration", "gear", "drum"),
    [
        (1500e3, 2.0, 0.4, 1, None),  # power governs, over three layers
        (1500e3, 2.0, 0.05, 1, None),  # the limit, then power
        (1000e3, 2.0, 1.0, 2, None),  # torque, then power, then the top speed never reached
        (400e3, 0.9, 0.4, 2, None),  # the speed limit
        (250e3, 3.0, 0.8, 2, ONE_LAYER),  # the top speed of the motors
        (1900e3, 1.0, 2.0, 1, ONE_LAYER),  # hardly any torque left to speed up
    ],
)
def test_a_stroke_is_that_of_the_equation_of_motion(
    load: float, speed: float, acceleration: float, gear: int, drum: rw.Drum | None
) -> None:
    on = hoist() if drum is None else hoist(drum=drum)
    limits = dw.Limits(rw.Q(speed, "m/s"), rw.Q(acceleration, "m/s**2"))
    stroke = on.stroke(rw.Q(load, "N"), STAND, limits, gear=gear)
    assert stroke.time_si == pytest.approx(referee(on, load, limits, gear), rel=2e-4)


def test_constant_power_without_a_load_to_speak_of() -> None:
    # R. J. Stephenson, Constant power equations of motion, Am. J. Phys. 50 (1982) 1152: from rest
    # x = (2/3) √(2P/m) t^(3/2). Here m turns, and the load is a breath.
    heavy = machine(
        motors=dw.Motors(1, "100 kW", "0.001 rpm", "3000 rpm"), drum_inertia="1e5 kg*m**2"
    )
    on = hoist(friction=1.0, drum=ONE_LAYER, drawworks=heavy)
    drive = on.drive(1, 1)
    limits = dw.Limits("100 m/s", "100 m/s**2", "9.8 m/s**2")
    curve = on.curve("1 N", "28 m", limits, gear=1, points=50)
    speeding = curve.power_si > 0.99e5
    t, x, v = curve.time_si[speeding], curve.travel_si[speeding], curve.speed_si[speeding]
    far = x > 1.0
    expected = 2 / 3 * np.sqrt(2 * drive.power_si / drive.turning_mass_si) * t[far] ** 1.5
    assert x[far] == pytest.approx(expected, rel=1e-3)
    assert v[far] == pytest.approx(
        np.sqrt(2 * drive.power_si * t[far] / drive.turning_mass_si), rel=1e-3
    )


def test_the_heaviest_load_is_where_pull_and_load_meet() -> None:
    on = hoist()
    limits = dw.Limits("1 m/s", "0.4 m/s**2")
    # On the highest layer of the stroke, found without the library's own comparison.
    layer = on.layer_at(STAND)
    heaviest = brentq(
        lambda load: on.acceleration(rw.Q(load, "N"), "0 m/s", gear=1, layer=layer).m_as("m/s**2"),
        1e5,
        1e7,
    )
    assert on.stroke(rw.Q(heaviest * 0.999, "N"), STAND, limits, gear=1).possible
    assert not on.stroke(rw.Q(heaviest * 1.001, "N"), STAND, limits, gear=1).possible


def test_an_empty_block_is_lowered_as_the_equation_of_motion_has_it() -> None:
    # The brake is off until it is time to stop: weight, friction and the drum, nothing else.
    on = hoist(drum=ONE_LAYER, sheave_mass="3 t")
    load, top, stop = 150e3, 0.8, 0.5
    radius = ONE_LAYER.lap_length(1).m_as("m") / (2 * math.pi)
    lines = sum(1.04**k for k in range(1, 11))  # hook load over fast line, going down

    def fall(_: float, y: Any) -> list[float]:
        # Force of the load on the lines W - (W/g + m) a; at the drum 0.97 of it times R turns J.
        arm = 0.97 * radius / lines
        a = arm * load / (1500.0 * 10 / radius + arm * (load / GRAVITY + 3000.0))
        return [y[1], a if y[1] < top else 0.0]

    def braking(_: float, y: Any) -> float:
        return float(28.5 - y[0] - 0.5 * y[1] ** 2 / stop)

    braking.terminal = True  # type: ignore[attr-defined]
    run = solve_ivp(fall, (0.0, 1000.0), [0.0, 0.0], events=braking, max_step=0.02)
    limits = dw.Limits(rw.Q(top, "m/s"), "5 m/s**2", rw.Q(stop, "m/s**2"))
    down = on.stroke(rw.Q(load, "N"), STAND, limits, "lowering")
    assert down.time_si == pytest.approx(run.t[-1] + run.y[1][-1] / stop, rel=1e-3)
    assert down.driven_si == 0.0


# Findings


def test_lowering_keeps_the_fast_line_within_its_limit() -> None:
    on = hoist(line_limit="100 kN")
    limits = dw.Limits("1 m/s", "0.2 m/s**2", "0.6 m/s**2")
    lines = sum(1.04**k for k in range(1, 11))
    most = 100e3 * lines / (1.0 + 0.6 / GRAVITY)
    found = on.stroke(rw.Q([0.999 * most, 1.001 * most], "N"), STAND, limits, "lowering")
    assert list(found.possible) == [True, False]
    assert "its limit is 1e+05 N" in found.reason[1]


def test_a_curve_of_no_stroke_says_why() -> None:
    limits = dw.Limits("1 m/s", "0.4 m/s**2")
    curve = hoist().curve("4 MN", STAND, limits)
    assert curve.time_si.size == 0
    assert curve.reason == hoist().stroke("4 MN", STAND, limits).reason
    assert "pull of gear" in curve.reason
    assert hoist().curve("1 MN", STAND, limits).reason == ""
    ax = Figure().subplots()
    rw.plot.stroke_cycle(ax, curve)
    assert [text.get_text() for text in ax.texts] == [curve.reason]


def test_a_trip_that_cannot_be_says_why() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    job = {
        "depth": "3400 m",
        "stand_length": STAND,
        "limits": dw.Limits("1 m/s", "0.4 m/s**2"),
        "connection_time": "2 min",
    }
    string = rig.strings["drilling"]
    trip = dw.trip(rw.rig.hoist(rig), string, block_weight="2 MN", **job)
    assert not trip.possible
    assert "pull of gear" in trip.reason
    assert trip.time.m_as("s") == math.inf
    with pytest.raises(InadmissibleError, match="connection_time"):
        dw.trip(
            rw.rig.hoist(rig), string, block_weight="200 kN", **{**job, "connection_time": "-1 s"}
        )
    with pytest.raises(InadmissibleError, match="depth"):
        dw.trip(rw.rig.hoist(rig), string, block_weight="200 kN", **{**job, "depth": "0 m"})


# Overload


@given(loads, speeds, st.floats(0.02, 2.0))
def test_the_time_overloaded_is_that_of_the_curve(load: float, speed: float, a: float) -> None:
    on = hoist()
    limits = dw.Limits(rw.Q(speed, "m/s"), rw.Q(a, "m/s**2"), overload=True)
    stroke = on.stroke(rw.Q(load, "N"), STAND, limits)
    curve = on.curve(rw.Q(load, "N"), STAND, limits, points=400)
    motors, gear = on.drawworks.motors, on.drawworks.gears[stroke.gear - 1]
    rated = motors.count * motors.power_si
    radius = [on.drum.lap_length(int(layer)).m_as("m") / (2.0 * np.pi) for layer in curve.layer]
    turning = 10 * curve.speed_si / np.asarray(radius) * gear.ratio  # of the motors, rad/s
    # Rated power, or what rated torque gives at that rotation, whichever is less.
    most = rated * np.minimum(turning / motors.base_speed_si, 1.0)
    beyond = curve.power_si > most * (1.0 + 1e-6)
    steps = np.diff(curve.time_si)
    counted = float(np.sum(steps * (beyond[:-1] & beyond[1:])))
    # Each piece begins and ends its overload within a step of the curve.
    assert counted <= stroke.time_overloaded_si + 1e-9
    assert stroke.time_overloaded_si - counted <= 4 * 2 * steps.max() + 1e-9


def test_an_overload_that_lasts_too_long_is_a_finding() -> None:
    limits = dw.Limits("1.2 m/s", "0.4 m/s**2", overload=True)
    used = hoist().stroke("1500 kN", STAND, limits).time_overloaded.m_as("s")
    assert used > 10.0

    def strung(seconds: float) -> Any:
        motors = dw.Motors(
            2, "750 hp", "800 rpm", "1600 rpm", "15 kg*m**2", 1.3, rw.Q(seconds, "s")
        )
        return hoist(drawworks=machine(motors=motors))

    assert strung(used * 1.001).stroke("1500 kN", STAND, limits, gear=2).possible
    short = strung(used * 0.5)
    loads_ = rw.Q([300.0, 1500.0], "kN")
    strokes = short.stroke(loads_, STAND, limits)
    assert strokes.possible.tolist() == [True, False]
    assert "overload_time allows" in strokes.reason[1]
    assert strokes.time_si[1] == math.inf
    assert strokes.time_overloaded_si[1] == 0.0
    # At the rating the same load goes up, only slower.
    assert short.stroke("1500 kN", STAND, dw.Limits("1.2 m/s", "0.4 m/s**2")).possible
