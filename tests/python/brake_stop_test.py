"""Stops of the block: closed forms, cross-checks with SciPy's solver, findings, refusals."""

from __future__ import annotations

import math
import pickle
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import integrate

import ropewalk as rw
from ropewalk.errors import InadmissibleError, UnitError
from ropewalk.testing import assert_close

#: No clock: the first call of a test may have to load a library.
quick = settings(max_examples=40, deadline=None)


def stop(direction: str = "lowering", **changed: Any) -> rw.brake.Stop:
    values: dict[str, Any] = {
        "reeving": rw.Reeving(10, 1.04),
        "drum_radius": "0.45 m",
        "brake_torque": "140 kN*m",
        "rotating_mass": "1200 tonne",
        "delay": "0.3 s",
        "build_up": "0.3 s",
        "delay_torque": None,
    }
    speed = changed.pop("travel_speed", "1.2 m/s")
    load = changed.pop("hook_load", "1500 kN")
    return rw.brake.Stop(direction, speed, load, **{**values, **changed})


@pytest.mark.parametrize("direction", ["hoisting", "lowering"])
@pytest.mark.parametrize("delay_torque", [None, "0 N*m", "40 kN*m"])
def test_a_rigid_stop_against_an_ode_solver(direction: str, delay_torque: Any) -> None:
    one = stop(direction, delay_torque=delay_torque)
    found = one.rigid()
    assert found.stops
    # Line force W - (W/g) a, which the drum feels as it feels the weight.
    mass = one.drum_load_si / 9.80665 + one.rotating_mass_si
    sign = 1.0 if direction == "lowering" else -1.0

    def rates(t: float, y: Any) -> list[float]:
        force = sign * one.drum_load_si
        if t < one.delay_si:
            force -= sign * one.delay_force_si
        else:
            force -= one.brake_force_si * min(1.0, (t - one.delay_si) / one.build_up_si)
        return [y[1], force / mass]

    def stands(_: float, y: Any) -> float:
        return float(y[1])

    stands.terminal = True  # type: ignore[attr-defined]
    done = integrate.solve_ivp(
        rates, (0.0, 60.0), [0.0, one.travel_speed_si], events=stands, max_step=0.005, rtol=1e-9
    )
    # The solver steps over the kinks of the force, which costs it digits.
    assert found.time_si == pytest.approx(done.t[-1], rel=2e-4)
    assert found.distance_si == pytest.approx(done.y[0, -1], rel=2e-4)
    assert found.highest_speed_si == pytest.approx(done.y[1].max(), rel=1e-4)


@pytest.mark.parametrize("direction", ["hoisting", "lowering"])
@pytest.mark.parametrize("damping", [0.0, 0.1])
def test_an_elastic_stop_against_an_ode_solver(direction: str, damping: float) -> None:
    one = stop(direction)
    stiffness = 15e6
    found = one.on_line(rw.Q(stiffness, "N/m"), damping_ratio=damping)
    sign = 1.0 if direction == "lowering" else -1.0
    weight, load_mass = one.hook_load_si, one.hook_load_si / 9.80665
    felt = one.drum_load_si / weight
    damper = 2.0 * damping * math.sqrt(stiffness * load_mass)

    def hook(y: Any) -> float:
        stretch, rate = sign * (y[1] - y[0]), sign * (y[3] - y[2])
        return max(0.0, weight + stiffness * stretch + damper * rate)

    def sliding(t: float, y: Any) -> list[float]:
        held = one.delay_force_si if t < one.delay_si else 0.0
        ramp = min(1.0, max(0.0, (t - one.delay_si) / one.build_up_si))
        drum = (sign * (felt * hook(y) - held) - one.brake_force_si * ramp) / one.rotating_mass_si
        return [y[2], y[3], drum, sign * (weight - hook(y)) / load_mass]

    def held(_: float, y: Any) -> list[float]:
        return [0.0, y[3], 0.0, sign * (weight - hook(y)) / load_mass]

    def stands(_: float, y: Any) -> float:
        return float(y[2])

    stands.terminal = True  # type: ignore[attr-defined]
    v = one.travel_speed_si
    options = {"rtol": 1e-9, "atol": 1e-9, "max_step": 0.005}
    first = integrate.solve_ivp(sliding, (0.0, 60.0), [0.0, 0.0, v, v], events=stands, **options)
    start = [first.y[0, -1], first.y[1, -1], 0.0, first.y[3, -1]]
    second = integrate.solve_ivp(held, (first.t[-1], found.times_si[-1]), start, **options)
    peak = max(hook(y) for part in (first, second) for y in part.y.T)
    assert found.time_si == pytest.approx(first.t[-1], rel=1e-4)
    assert found.drum_distance_si == pytest.approx(first.y[0, -1], rel=1e-4)
    assert found.peak_si == pytest.approx(peak, rel=1e-3)
    assert found.block_distance_si == pytest.approx(
        max(first.y[1].max(), second.y[1].max()), rel=1e-3
    )


@quick
@given(st.floats(0.1, 3.0), st.floats(0.1, 5.0))
def test_an_even_stop_never_pulls_more_than_a_sudden_one(speed: float, deceleration: float) -> None:
    v, line = rw.Q(speed, "m/s"), ("21 MN/m", "2000 kN")
    even = rw.brake.stop_tension_factor(v, rw.Q(deceleration, "m/s**2"), *line)
    assert 1.0 < even <= rw.brake.sudden_stop_factor(v, *line) + 1e-12
    assert even <= 1.0 + 2.0 * deceleration / 9.80665 + 1e-12


def test_a_brake_weaker_than_the_load_is_a_result() -> None:
    weak = stop(brake_torque="30 kN*m")
    found = weak.rigid()
    assert not found.stops
    assert math.isinf(found.distance_si)
    assert found.holding_factor < 1.0
    assert found.deceleration_si < 0.0
    assert "does not stop" in str(found)
    elastic = weak.on_line("15 MN/m", time_limit="5 s")
    assert not elastic.stops
    assert math.isinf(elastic.time_si)
    up = stop("hoisting", brake_torque="30 kN*m").rigid()
    assert up.stops
    assert up.fall_back is not None
    assert (up.fall_back.falls, up.fall_back.holds) == (True, False)
    assert "falls back and the brake does not stop it" in up.finding
    assert up.fall_back == stop("hoisting", brake_torque="30 kN*m").rigid().fall_back


def test_lost_power_costs_way() -> None:
    held, lost = stop().rigid(), stop(delay_torque="0 N*m").rigid()
    assert lost.distance_si > held.distance_si
    assert lost.highest_speed_si > held.highest_speed_si
    assert "after reaching" in lost.finding


def hard(**changed: Any) -> rw.brake.Stop:
    """Return a light block with little that turns under a brake that stops the drum at once."""
    values: dict[str, Any] = {
        "hook_load": "200 kN",
        "rotating_mass": "20 tonne",
        "delay": "0 s",
        "build_up": "0 s",
    }
    return stop("hoisting", **{**values, **changed})


@pytest.mark.parametrize("build_up", ["0 s", "0.2 s"])
def test_a_block_hoisted_fast_coasts_up_by_gravity_alone(build_up: str) -> None:
    one = hard(build_up=build_up, travel_speed="3 m/s")
    found = one.rigid()
    assert found.slack
    assert found.deceleration_si == 9.80665
    assert "goes slack" in found.finding
    elastic = one.on_line("2e10 N/m")
    assert elastic.slack
    assert found.distance_si == pytest.approx(elastic.block_distance_si, rel=2e-3)
    if build_up == "0 s":
        # Thrown up at v a body rises by v²/(2g) in v/g.
        assert found.distance_si == pytest.approx(9.0 / (2 * 9.80665))
        assert found.time_si == pytest.approx(3.0 / 9.80665)


def test_hoisting_deceleration_is_gravity_at_most() -> None:
    given = ("67.5 kN*m", 10, "0.45 m")
    soft = rw.brake.hoisting_deceleration("140 kN*m", *given, "1350 tonne")
    assert_close(soft, rw.Q(207.5e3 * 10 / 0.45 / 1.35e6, "m/s**2"))
    assert rw.brake.hoisting_deceleration("140 kN*m", *given, "173 tonne").magnitude == 9.80665


@pytest.mark.parametrize("direction", ["hoisting", "lowering"])
def test_a_stiff_line_with_sheave_friction_stops_as_a_rigid_one(direction: str) -> None:
    """The elastic stop has load and drum as two masses: nothing there says what mass is felt.

    With W/g as its mass the hoisting stop would be a tenth shorter.
    """
    one = stop(direction, hook_load="3000 kN", rotating_mass="450 tonne", brake_torque="170 kN*m")
    rigid, elastic = one.rigid(), one.on_line("3 GN/m", damping_ratio=0.5)
    # The load that swings on its line pulls the drum back a little afterwards.
    top = int(elastic.drum_travel_si.argmax())
    assert elastic.drum_travel_si[top] == pytest.approx(rigid.distance_si, rel=5e-3)
    assert elastic.times_si[top] == pytest.approx(rigid.time_si, rel=5e-3)


def test_a_block_that_stands_too_soon_falls_back_until_the_brake_holds() -> None:
    """Power lost while hoisting slowly: the block stands in the delay; then by SciPy's solver."""
    one = stop("hoisting", travel_speed="0.1 m/s", delay_torque="0 N*m")
    found = one.rigid()
    assert found.time_si < one.delay_si
    assert found.fall_back is not None
    weight, turning = one.hook_load_si, one.rotating_mass_si

    def falls(t: float, y: Any) -> list[float]:
        ramp = min(1.0, max(0.0, (t - one.delay_si) / one.build_up_si))
        return [y[1], (weight - one.brake_force_si * ramp) / (weight / 9.80665 + turning)]

    def stands(t: float, y: Any) -> float:
        return float(y[1]) if t > found.time_si + 1e-3 else 1.0

    stands.terminal = True  # type: ignore[attr-defined]
    done = integrate.solve_ivp(
        falls, (found.time_si, 9.0), [0.0, 0.0], events=stands, max_step=0.002, rtol=1e-9
    )
    back = found.fall_back
    assert (back.falls, back.holds) == (True, True)
    assert back.distance_si == pytest.approx(done.y[0, -1], rel=1e-3)
    assert back.time_si == pytest.approx(done.t[-1] - found.time_si, rel=1e-3)
    assert back.highest_speed_si == pytest.approx(done.y[1].max(), rel=1e-3)
    elastic = one.on_line("500 MN/m", damping_ratio=0.5).fall_back
    assert elastic is not None
    assert (elastic.falls, elastic.holds) == (True, True)
    assert elastic.distance_si == pytest.approx(back.distance_si, rel=0.01)
    assert stop("lowering").rigid().fall_back is None


def test_a_block_that_drops_into_its_line_takes_the_drum_along() -> None:
    found = hard(travel_speed="3 m/s").rigid()
    back = found.fall_back
    assert back is not None
    # By hand: the drum stops within v²/2a, a = 140 kN m · 10 / 0.45 m / 20 t = 155.6 m/s².
    drop = 9.0 / (2 * 9.80665) - 9.0 / (2 * 155.5556)
    blow = math.sqrt(2 * 9.80665 * drop)
    load = 200e3 / 9.80665
    both = blow * load / (load + 20e3)
    slow = (140e3 * 10 / 0.45 - 200e3) / (load + 20e3)
    assert back.distance_si == pytest.approx(drop + both**2 / (2 * slow), rel=1e-5)
    assert back.highest_speed_si == pytest.approx(blow, rel=1e-5)
    assert back.time_si == pytest.approx(blow / 9.80665 + both / slow, rel=1e-5)
    weak = hard(travel_speed="3 m/s", brake_torque="8.9 kN*m").rigid()
    assert weak.fall_back is not None
    assert not weak.fall_back.holds
    assert math.isinf(weak.fall_back.distance_si)


def test_what_the_brake_holds_does_not_fall_back() -> None:
    back = stop("hoisting").rigid().fall_back
    assert back is not None
    assert (back.falls, back.holds, back.distance_si) == (False, True, 0.0)
    elastic = stop("hoisting").on_line("15 MN/m").fall_back
    assert elastic is not None
    assert (elastic.falls, elastic.holds) == (False, True)


def test_an_auxiliary_brake_that_brings_the_load_to_rest_has_not_stopped_it() -> None:
    # Twice the torque of the load stops 1.2 m/s in well under the two seconds of delay.
    one = stop(delay_torque="150 kN*m", delay="2 s", build_up="0.5 s")
    found = one.rigid()
    assert found.stands_early
    assert "no stop" in found.finding
    # After the delay it is gone and the brake has only begun: the load moves until the brake holds.
    assert found.time_si > 2.0
    assert found.stops
    weak = stop(delay_torque="150 kN*m", delay="2 s", brake_torque="30 kN*m").rigid()
    assert not weak.stops
    assert math.isinf(weak.distance_si)
    elastic = one.on_line("500 MN/m", damping_ratio=0.5)
    assert elastic.time_si == pytest.approx(found.time_si, rel=5e-3)
    assert elastic.drum_distance_si == pytest.approx(found.distance_si, rel=5e-3)
    assert float(elastic.drum_speed_si.min()) > -1e-9  # what brakes a load does not lift it
    assert not one.on_line("15 MN/m", time_limit="1.9 s").stops


@pytest.mark.parametrize("speed", [1.5, 3.0])
def test_a_block_thrown_up_falls_back_into_the_line(speed: float) -> None:
    one = hard(travel_speed=rw.Q(speed, "m/s"))
    found = one.on_line("15 MN/m")
    assert found.slack
    # From where the drum stands it is a free flight and a mass on a spring.
    start = int(np.argmax(found.drum_speed_si == 0.0))
    state = [found.block_travel_si[start], found.block_speed_si[start]]

    def force(block: Any) -> Any:
        return np.maximum(0.0, 2e5 - 15e6 * (block - found.drum_travel_si[start]))

    done = integrate.solve_ivp(
        lambda _, y: [y[1], -(2e5 - force(y[0])) / (2e5 / 9.80665)],
        (0.0, 2.0),
        state,
        max_step=1e-3,
        rtol=1e-9,
    )
    assert found.peak_factor == pytest.approx(float(force(done.y[0]).max()) / 2e5, rel=1e-3)
    assert found.peak_factor > 3.0


def test_a_load_at_rest_falls_when_nothing_holds_it() -> None:
    rest = {"delay": "0.6 s", "delay_torque": "0 N*m"}
    still = stop(travel_speed="0 m/s", **rest).rigid()
    creeping = stop(travel_speed="1e-6 m/s", **rest).rigid()
    assert still.distance_si > 0.1
    assert still.distance_si == pytest.approx(creeping.distance_si, rel=1e-4)
    assert not stop(travel_speed="0 m/s", brake_torque="0 N*m", **rest).rigid().stops


def test_the_friction_of_the_sheaves_does_not_hold_at_rest() -> None:
    # 1500 kN on ten lines at 0.45 m: 67.5 kN m at rest, less while lowering.
    found = stop(brake_torque="60 kN*m").rigid()
    assert found.stops
    assert found.holding_factor == pytest.approx(60.0 / 67.5)
    assert "does not hold it" in str(found)


def test_a_stop_says_what_is_wrong() -> None:
    with pytest.raises(InadmissibleError, match="direction"):
        stop("sideways")
    with pytest.raises(UnitError, match="brake_torque"):
        stop(brake_torque="140 kJ")
    with pytest.raises(InadmissibleError, match="one value"):
        stop(delay=rw.Q([0.1, 0.2], "s"))
    with pytest.raises(InadmissibleError, match=r"brake\.Stop\(\): delay = 200"):
        stop(delay="200 s")
    with pytest.raises(InadmissibleError, match=r"brake\.Stop\(\): hook_load must be one value"):
        stop(hook_load=rw.Q([1500.0, 1600.0], "kN"))
    with pytest.raises(InadmissibleError, match=r"brake\.Stop\.on_line\(\): line_stiffness"):
        stop().on_line(rw.Q([10.0, 15.0], "MN/m"))
    with pytest.raises(InadmissibleError, match=r"brake\.Stop\.on_line\(\): damping_ratio = 2"):
        stop().on_line("15 MN/m", damping_ratio=2.0)
    assert pickle.loads(pickle.dumps(stop())) == stop()
