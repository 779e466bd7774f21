"""Over-travel: set points in wraps, slip and cut, devices and campaigns, rig file."""

from __future__ import annotations

import copy
import inspect
import math
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from braked_hoists import DRUM, device, hoist, stop
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import integrate

import ropewalk as rw
from ropewalk._overtravel_way import ways_to_rest
from ropewalk.errors import InadmissibleError, UnitError
from ropewalk.testing import assert_close

quick = settings(max_examples=40, deadline=None)
RIG7 = rw.rig.example("rig7")


def strokes(load: Any = "400 kN") -> rw.Campaign:
    return rw.Campaign.from_strokes(
        rw.Q([1.0, 1.0], "") * rw.Q(load), rw.Q([0.0, 28.0], "m"), rw.Q([28.0, 0.0], "m")
    )


def check(campaign: rw.Campaign, of: Any, devices: Any, **changed: Any) -> Any:
    values: dict[str, Any] = {
        "crown": "34 m",
        "floor": "-2.5 m",
        "margin": "0.5 m",
        "hoisting_speed": "1.5 m/s",
        "lowering_speed": "1.2 m/s",
    }
    return rw.overtravel.check_campaign(campaign, of, devices, **{**values, **changed})


# Set points in wraps


@quick
@given(st.floats(-1.0, 38.0), st.floats(5.0, 12.0))
def test_height_and_wraps_undo_each_other(height: float, lowest: float) -> None:
    strung = {"lines": 10, "wraps_at_lowest": lowest}
    wraps = rw.overtravel.wraps_at_height(DRUM, rw.Q(height, "m"), **strung)
    assert_close(
        rw.overtravel.height_at_wraps(DRUM, wraps, **strung),
        rw.Q(height, "m"),
        absolute="1e-9 m",
    )


@quick
@given(st.floats(0.0, 15.0), st.floats(0.0, 15.0))
def test_slip_and_cut_move_a_wrap_by_a_line_each(slipped: float, cut: float) -> None:
    effect = rw.overtravel.slip_cut_effect(
        hoist(), device(), slipped=rw.Q(slipped, "m"), cut=rw.Q(cut, "m")
    )
    shift = rw.overtravel.trip_height_shift(rw.Q(slipped, "m"), rw.Q(cut, "m"), 10)
    assert effect.fixed_crown_si - 30.0 == pytest.approx(shift.m_as("m"), abs=1e-9)
    assert effect.fixed_floor_si + 0.3 == pytest.approx(shift.m_as("m"), abs=1e-9)
    assert_close(effect.fixed_floor, rw.Q(effect.fixed_floor_si, "m"))
    assert_close(effect.counted_floor, rw.Q(effect.counted_floor_si, "m"))
    assert "local codes" in str(effect)
    # A counter zeroed again is off only by how the layers moved, at the block's lowest by nothing.
    assert abs(effect.counted_crown_si - 30.0) < abs(shift.m_as("m")) + 1e-9


def test_what_was_cut_that_was_not_slipped_makes_the_crown_device_late() -> None:
    effect = rw.overtravel.slip_cut_effect(hoist(), device(), slipped="0 ft", cut="40 ft")
    assert effect.fixed_crown_si == pytest.approx(30.0 + 40 * 0.3048 / 10)
    assert effect.wraps_after < effect.wraps_before
    with pytest.raises(InadmissibleError):
        rw.overtravel.slip_cut_effect(hoist(), device(), slipped="0 ft", cut="80 ft")


def test_a_counter_that_knows_its_wraps_shows_the_height() -> None:
    heights = rw.Q(np.linspace(0.0, 30.0, 7), "m")
    shown = rw.overtravel.counted_height(DRUM, heights, lines=10, wraps_at_lowest=6, wraps_known=6)
    assert_close(shown, heights, absolute="1e-9 m")


# Devices against a campaign


def test_every_row_and_device_has_its_margin() -> None:
    devices = [device(), device("encoder", "block height", crown="30.5 m", reaction_time="0.4 s")]
    found = check(strokes(), hoist(), devices, power_lost=False)
    assert found.ok
    assert found.margin_si.shape == (2, 2)
    # By the subject `brake`, which integrates forces of its own; up at 30 m layer 4 (123.7 laps).
    up = stop("400 kN", 4, None, direction="hoisting", speed="1.5 m/s").rigid().distance_si
    assert found.margin_si[0, 0] == pytest.approx(4.0 - up)
    down = stop("400 kN", 1, None).rigid().distance_si
    assert found.margin_si[0, 1] == pytest.approx(2.2 - down)
    table = found.table()
    assert len(table) == 4
    assert table["enough"].all()
    assert "every margin is left\ntaken: power kept" in str(found)
    assert "local codes" in str(found)


def test_the_check_lets_lowered_loads_fall_unless_told_otherwise() -> None:
    devices = [device(), device("encoder", "block height")]
    found, kept = (check(strokes(), hoist(), devices, **x) for x in ({}, {"power_lost": False}))
    assert found.power_lost
    assert "taken: power lost" in str(found)
    expected = stop("400 kN", 1, "0 N*m").rigid().distance_si
    assert found.distance_si[0, 1] == pytest.approx(expected)
    assert found.distance_si[0, 1] > kept.distance_si[0, 1]
    assert found.distance_si[0, 0] == kept.distance_si[0, 0]


@pytest.mark.parametrize("way", ["hoisting", "lowering"])
def test_the_layer_changes_on_the_way(way: Any) -> None:
    """Against SciPy's solver, with the radius of the rope taken anew at every moment."""
    of = hoist(rotating_mass="2500 tonne", brake_torque="130 kN*m")
    # Layer 2 runs from 40 to 80 laps; both stops begin shortly before it ends.
    up = way == "hoisting"
    ends = rw.overtravel.height_at_wraps(DRUM, 80 if up else 40, lines=10, wraps_at_lowest=8)
    start = ends.m_as("m") - 0.4 if up else ends.m_as("m") + 0.4
    one = device(crown=rw.Q(start, "m"), floor="-2 m") if up else device(floor=rw.Q(start, "m"))
    load, speed = 3000e3, 1.5 if up else 0.5
    found = ways_to_rest(of, one, way, np.array([load]), np.array([speed]), True)[0]
    ratio = rw.Reeving(10, 1.04).tensions("3000 kN", way).fast_line.m_as("N") * 10 / load
    first = DRUM.lap_length(1).m_as("m") / (2 * math.pi)

    def rates(t: float, y: Any) -> list[float]:
        height = start + y[0] if up else start - y[0]
        wraps = rw.si.overtravel.wraps_at_height(DRUM._drum(), 10.0, 8.0, height)
        radius = DRUM.lap_length(int(wraps // 40) + 1).m_as("m") / (2 * math.pi)
        mass = ratio * load / 9.80665 + 2.5e6 * (first / radius) ** 2
        brake = 130e3 * 10 / radius if t >= 0.6 else 0.0
        if up:
            return [y[1], 0.0 if t < 0.6 else -(brake + ratio * load) / mass]
        return [y[1], (ratio * load - brake) / mass]

    def stands(_: float, y: Any) -> float:
        return float(y[1])

    stands.terminal = True  # type: ignore[attr-defined]
    done = integrate.solve_ivp(
        rates, (0.0, 60.0), [0.0, speed], events=stands, max_step=0.002, rtol=1e-6
    )
    assert done.y[0, -1] > 0.4
    assert found == pytest.approx(done.y[0, -1], rel=2e-3)
    # Not the same as if the layer at the set point were that of the whole way.
    layer = of._layers(start)
    before = of._before_grip(way, load, layer, 0.0, True)
    slow = of._decelerations(way, load, layer)
    at_once = rw.si.overtravel.stopping_distance(speed, 0.6, float(before), float(slow))
    assert abs(found - at_once) > 0.003 * at_once


def test_power_limits_the_speed_of_heavy_loads() -> None:
    devices = [device(), device("encoder", "block height")]
    limited = check(strokes("1500 kN"), hoist(), devices, hook_power="750 kW")
    assert limited.speed_si[0] == pytest.approx(0.5)
    assert limited.margin_si[0, 0] > check(strokes("1500 kN"), hoist(), devices).margin_si[0, 0]


@pytest.mark.parametrize(
    ("devices", "of", "options", "kind"),
    [
        ([device()], {}, {}, "not two devices"),
        ([device(), device("other")], {}, {}, "one principle"),
        ([device(), device("b", "block height")], {"brake_torque": "10 kN*m"}, {}, "never stops"),
        ([device(), device("b", "block height", crown="33.5 m")], {}, {}, "contact"),
        ([device(), device("b", "block height")], {}, {"margin": "3 m"}, "short margin"),
        ([device(), device("b", "block height", crown="27 m")], {}, {}, "plan passes set point"),
        (
            [device(), device("b", "block height")],
            {"rotating_mass": "10 tonne", "brake_torque": "400 kN*m"},
            {},
            "slack line",
        ),
    ],
)
def test_what_is_wrong_is_a_finding(devices: Any, of: Any, options: Any, kind: str) -> None:
    found = check(strokes(), hoist(**of), devices, **options)
    assert not found.ok
    assert kind in {finding.kind for finding in found.findings}
    assert all(finding.text for finding in found.findings)


def test_a_brake_must_hold_what_it_has_stopped() -> None:
    # Up, gravity stops the block without any brake; then the string falls back.
    found = check(strokes("3000 kN"), hoist(brake_torque="0 N*m"), [device()])
    holding = [one for one in found.findings if one.kind == "does not hold"]
    assert holding
    assert "kN*m at rest" in holding[0].text


def test_wrong_devices_are_refused() -> None:
    with pytest.raises(InadmissibleError, match="devices is empty"):
        check(strokes(), hoist(), [])
    with pytest.raises(InadmissibleError, match="must lie between"):
        check(strokes(), hoist(), [device(crown="35 m")])
    with pytest.raises(InadmissibleError, match="above floor"):
        device(crown="-1 m")
    with pytest.raises(InadmissibleError, match="kind"):
        device(kind="sound")
    with pytest.raises(UnitError, match="reaction_time"):
        device(reaction_time=0.6)
    with pytest.raises(InadmissibleError, match="reaction_time"):
        device(reaction_time="-1 s")
    with pytest.raises(InadmissibleError, match="brake_torque"):
        hoist(brake_torque="-1 kN*m")
    assert copy.deepcopy(device()) == device()


@pytest.mark.parametrize(
    ("argument", "value"),
    [
        ("margin", "-1 m"),
        ("margin", rw.Q(math.nan, "m")),
        ("margin", rw.Q([0.5, 1.0], "m")),
        ("crown", rw.Q(math.inf, "m")),
        ("floor", rw.Q(-math.inf, "m")),
        ("hoisting_speed", "0 m/s"),
        ("lowering_speed", "0 m/s"),
        ("hook_power", "0 W"),
    ],
)
def test_a_check_refuses_what_would_pass_everything(argument: str, value: Any) -> None:
    with pytest.raises(InadmissibleError, match=argument):
        check(strokes(), hoist(), [device()], **{argument: value})


def test_a_hoist_and_a_device_say_what_is_wrong() -> None:
    with pytest.raises(InadmissibleError, match="direction"):
        hoist().deceleration("static", "200 kN", "0 m")  # type: ignore[arg-type]
    with pytest.raises(InadmissibleError, match="do not fit"):
        hoist().deceleration("lowering", rw.Q([1.0, 2.0], "kN"), rw.Q([1.0, 2.0, 3.0], "m"))
    for argument in ("crown", "floor", "reaction_time", "drive_acceleration"):
        unit = {"reaction_time": "s", "drive_acceleration": "m/s**2"}.get(argument, "m")
        with pytest.raises(InadmissibleError, match=argument):
            device(**{argument: rw.Q([0.5, 0.6], unit)})
    with pytest.raises(InadmissibleError, match="lines"):
        device().wraps(DRUM, lines=[8, 10], wraps_at_lowest=8)
    with pytest.raises(InadmissibleError, match="cut"):
        rw.overtravel.slip_cut_effect(
            hoist(), device(), slipped="60 ft", cut=rw.Q([60.0, 80.0], "ft")
        )


@pytest.mark.parametrize(
    ("made", "left_out"),
    [
        (rw.overtravel.Device, "drive_acceleration"),
        (rw.overtravel.stopping_envelope, "drive_acceleration"),
        (rw.brake.Stop, "build_up"),
        (rw.brake.Stop, "delay_torque"),
    ],
)
def test_nothing_that_lengthens_a_stop_is_left_to_a_default(made: Any, left_out: str) -> None:
    assert inspect.signature(made).parameters[left_out].default is inspect.Parameter.empty


# Rig file


def test_rig7_stops_short_of_crown_and_floor_on_springs_alone() -> None:
    rig = rw.load_rig(RIG7)
    assert rig.brake is not None
    assert rig.overtravel is not None
    assert (rig.brake.disc.discs, rig.brake.disc.emergency_per_disc) == (2, 1)
    assert rig.brake.auxiliary is not None
    assert rig.brake.delay == 0.3
    found = rig.overtravel.check(rig)
    assert found.ok
    assert len(found.devices) == 2
    with_service = rw.rig.braked_hoist(rig, service=True)
    assert with_service.brake_torque_si > rw.rig.braked_hoist(rig).brake_torque_si


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("lining_friction = 0.35", "lining_friction = 1.35", "lining_friction"),
        ('required_factor = "AISE single brake"', 'required_factor = "mine"', "OSHA"),
        ('crown = "30 m"', 'crown = "35 m"', "toggle valve over the drum"),
        ('kind = "drum wraps"', 'kind = "laser"', "kind"),
        ('delay = "0.3 s"', "delay = 0.3", "delay"),
    ],
)
def test_a_wrong_rig_file_is_refused(tmp_path: Path, old: str, new: str, said: str) -> None:
    text = RIG7.read_text(encoding="utf-8")
    assert old in text
    path = tmp_path / "rig.toml"
    path.write_text(text.replace(old, new), encoding="utf-8")
    with pytest.raises(rw.rig.RigFileError, match=said):
        rw.load_rig(path)


# Brake of a rig against a load


def rig_with(tmp_path: Path, *changes: tuple[str, str]) -> Any:
    text = RIG7.read_text(encoding="utf-8")
    for old, new in changes:
        assert old in text
        text = text.replace(old, new)
    path = tmp_path / "rig.toml"
    path.write_text(text, encoding="utf-8")
    return rw.load_rig(path)


_MASS = 'rotating_mass = "1600 tonne" # drum, and motors in high gear'


def test_the_brake_of_a_rig_is_held_against_the_torque_its_rule_means(tmp_path: Path) -> None:
    rig = rw.load_rig(RIG7)
    found = rig.brake.check(rig, "900 kN")
    assert found.ok
    whole, service, springs = found.findings
    assert whole.torque_si == pytest.approx(service.torque_si + springs.torque_si)
    # By hand: two pads · 0.35 · 90 kN · 0.7 m · two calipers.
    assert springs.torque_si == pytest.approx(88.2e3)
    assert springs.base == "hoisting torque"
    assert springs.base_factor == pytest.approx(88.2e3 / found.hoisting_torque)
    assert found.hoisting_torque > found.load_torque
    assert not rig.brake.check(rig, "1500 kN").ok
    hot = rig.brake.check(rig, "900 kN", lining_temperature="300 degC").findings[-1]
    assert hot.torque_si == pytest.approx(88.2e3 * 0.26 / 0.35)
    motor = rig_with(tmp_path, ("AISE single brake", "MIL-HDBK-1038 with eddy brake"))
    # Two motors, 1500 hp at 800 rpm, ten to one: 133.5 kN m; 88.2 kN m is 0.66 of that.
    last = motor.brake.check(motor, "900 kN").findings[-1]
    assert last.base_factor == pytest.approx(88.2 / 133.5, rel=1e-3)
    assert "kN*m at rest" in str(found)
    assert "local codes" in str(found)


def test_what_turns_is_computed_from_the_drawworks_by_gear(tmp_path: Path) -> None:
    # By hand: (1500 + 2 · 15 · 5²) kg m² · (10 / 0.373075 m)², and the sheaves.
    of_drum = (1500.0 + 2 * 15.0 * 25.0) * (10 / (0.5 * (28 + 1.375) * 0.0254)) ** 2
    sheaves = rw.drawworks.sheave_equivalent_mass("80 kg*m**2", 10, "55.375 in").m_as("kg")
    high = rig_with(tmp_path, (_MASS, "gear = 2"))
    assert high.brake.rotating_mass == pytest.approx(of_drum + sheaves)
    drum = rig_with(tmp_path, (_MASS, "gear = 0")).brake.rotating_mass
    low = rig_with(tmp_path, (_MASS, "gear = 1")).brake.rotating_mass
    assert drum < high.brake.rotating_mass < low
    for wrong, said in (("gear = 3", "has 2 of them"), ("", "rotating_mass: missing")):
        with pytest.raises(rw.rig.RigFileError, match=said):
            rig_with(tmp_path, (_MASS, wrong))


def test_a_rig_file_may_have_motors_that_brake_a_band_and_warm_discs(tmp_path: Path) -> None:
    eddy = 'eddy = { peak_torque = "75 kN*m", critical_speed = "50 rpm" }'
    more = (
        'motors = { torque_limit = "60 kN*m", power_limit = "200 kW" }\n'
        'band = { bands = 2, wrap_angle = "280 deg", rim_diameter = "1.18 m", '
        'lining_friction = 0.35, lever_ratio = 40.0, lever_force = "631 N" }\n'
    )
    rig = rig_with(tmp_path, (eddy, eddy + "\n" + more))
    assert rig.brake.auxiliary.motor_power_limit_si == 200e3
    assert len(rig.brake.check(rig, "900 kN").findings) == 5
    alone = rig_with(tmp_path, (eddy, more)).brake.auxiliary
    assert alone.eddy_peak_torque_si == 0.0
    discs = rig.brake.discs
    # 5 MJ in 5 s: 2 · 5 MJ / (4.5 m² · 5 s) into steel, 0.5319 q √(t/(k ρ c)) by hand.
    rise = discs.of_stop("5 MJ", "5 s").m_as("K")
    assert rise == pytest.approx(0.531923 * 444444.4 * math.sqrt(5 / (45 * 7850 * 500)), rel=1e-5)
    with pytest.raises(InadmissibleError, match="braking_time"):
        discs.of_stop("5 MJ", "0 s")
    trip = discs.over_trip(rw.Q([10.0], "MJ"), "40 s", "0 s")
    assert trip.highest.m_as("K") < 10e6 / (2400 * 500)
    with pytest.raises(rw.rig.RigFileError, match="FrictionTable"):
        rig_with(tmp_path, ('"20 degC", "150 degC"', '"150 degC", "20 degC"'))
    bare = rig_with(tmp_path, ("fade = {", "# fade = {"))
    with pytest.raises(rw.rig.RigFileError, match=r"needs \[brake.fade\]"):
        bare.brake.check(bare, "900 kN", lining_temperature="300 degC")
