"""Drawworks: identities of load, speed and inertia, printed numbers, refusals."""

from __future__ import annotations

import copy
import math
import pickle
from dataclasses import replace
from typing import Any

import pytest
from hoists import ONE_LAYER, STAND, accelerations, dw, hoist, hoists, machine, speeds
from hypothesis import given, settings
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError, ValidityError
from ropewalk.testing import assert_close

# Identities


@settings(deadline=None)
@given(speeds, accelerations, accelerations)
def test_the_stand_time_is_continuous_at_the_border_of_the_triangle(
    v: float, a: float, d: float
) -> None:
    border = 0.5 * v * v * (1 / a + 1 / d)
    limits = (rw.Q(v, "m/s"), rw.Q(a, "m/s**2"), rw.Q(d, "m/s**2"))
    triangle = dw.stand_time(rw.Q(border * (1 - 1e-12), "m"), *limits).m_as("s")
    trapezoid = dw.stand_time(rw.Q(border * (1 + 1e-12), "m"), *limits).m_as("s")
    assert triangle == pytest.approx(v * (1 / a + 1 / d), rel=1e-11)
    assert trapezoid == pytest.approx(triangle, rel=1e-11)


@settings(deadline=None)
@given(hoists(), st.floats(0.0, 0.999), st.integers(1, 4))
def test_pull_and_speed_undo_each_other(on: dw.Hoist, share: float, layer: int) -> None:
    drive = on.drive(1, layer)
    speed = drive.base_speed_si + share * (drive.top_speed_si - drive.base_speed_si)
    pull = on.pull(rw.Q(speed, "m/s"), gear=1, layer=layer)
    back = on.speed(pull, gear=1, layer=layer).m_as("m/s")
    if drive.line_limit_si >= drive.motor_pull_si and share > 0.0:
        assert back == pytest.approx(speed, rel=1e-9)
        # Load times speed is the power at the hook, all along.
        assert pull.m_as("N") * speed == pytest.approx(drive.power_si, rel=1e-9)
    else:
        assert back >= speed * (1 - 1e-9)


def test_turning_parts_at_the_hook() -> None:
    on = hoist(12, friction=1.0, drum=ONE_LAYER)
    ideal = machine(gears=[dw.Gear(10.0, 1.0)], drum_efficiency=1.0)
    free = dw.Hoist(ideal, on.reeving, on.drum, 8)
    lap = ONE_LAYER.lap_length(1) / math.pi
    at_drum = dw.reflected_inertia("30 kg*m**2", 10.0) + rw.Q(1500, "kg*m**2")
    expected = dw.hook_equivalent_mass(at_drum, 12, lap)
    assert_close(free.drive(1, 1).turning_mass, expected)
    # Losses make what the motors accelerate lighter to them, never heavier: they feel less of it.
    assert on.drive(1, 1).turning_mass < expected


# Published numbers


def test_efficiencies_of_a_rig_sizing_manual() -> None:
    # Drawworks and Rig Sizing, ch. 12, Tables 12-3 to 12-5: transmission 0.85 (converter), drive of
    # the drawworks 0.87 (electric rig), hoisting 0.842 with 8 lines.
    rows = {row["kind"]: row for row in dw.table("drawworks_efficiencies")}
    transmission = rows["alternating to direct current by converter"]["efficiency_low"]
    drive = rows["electric rig"]["efficiency_low"]
    assert (transmission, drive) == (0.85, 0.87)
    eight = hoist(
        8, drawworks=machine(gears=[dw.Gear(10, transmission * drive)], drum_efficiency=1)
    )
    assert eight.drive(1, 1).efficiency == pytest.approx(0.85 * 0.87 * 0.842, abs=5e-4)


def test_common_practice() -> None:
    # 550 to 4000 hp, wells of 3,000 to 40,000 ft: common practice, no source.
    assert_close(dw.power_for_depth("40000 ft"), "4000 hp")
    with pytest.raises(ValidityError, match="depth"):
        dw.power_for_depth("2000 ft")
    rig = rw.load_rig(rw.rig.example("rig7"))
    for feet, usual in ((2990, False), (3000, True), (40_000, True), (40_100, False)):
        well = replace(rig.operations[0], depth=feet * 0.3048)
        found = {one.key: one for one in rw.rig.practice(replace(rig, operations=(well,)))}
        assert found["plan.depth"].holds is usual


@pytest.mark.parametrize("name", ["drawworks_sizes", "drawworks_efficiencies"])
def test_every_printed_value_has_a_source_and_a_standing(name: str) -> None:
    for row in dw.table(name):
        assert row["standing"] in {"published", "from memory", "derived", "common practice"}
        assert len(row["source"].split()) > 2


def test_sizes_rise_with_depth() -> None:
    for standard in ("GB/T 23505", "common practice"):
        sizes = [size for size in dw.rig_sizes() if size.standard == standard]
        depths = [size.depth_si for size in sizes]
        powers = [size.power_to_si for size in sizes]
        assert depths == sorted(depths)
        assert powers == sorted(powers)
    with pytest.raises(UnknownEntryError, match="deepest class"):
        dw.size_for_depth("50000 ft")


# The objects


def test_they_are_plain_data() -> None:
    motors = dw.Motors(2, "750 hp", "800 rpm", "1600 rpm", overload=1.3, overload_time="40 s")
    on = hoist(line_limit="200 kN", drawworks=machine(motors=motors))
    for twin in (pickle.loads(pickle.dumps(on)), copy.deepcopy(on)):
        assert twin == on
        assert twin.drive(1, 2) == on.drive(1, 2)
    names = {name: getattr(dw, name) for name in dw.__all__}
    assert eval(repr(on.drawworks), names) == on.drawworks
    with pytest.raises(AttributeError):
        on.wraps_at_lowest = 3  # type: ignore[misc]


@pytest.mark.parametrize(
    ("field", "value", "error"),
    [
        ("count", 0, InadmissibleError),
        ("count", 1.5, InadmissibleError),
        ("power", 750, UnitError),
        ("power", "0 hp", InadmissibleError),
        ("base_speed", "800 Hz", UnitError),
        ("top_speed", "700 rpm", InadmissibleError),
        ("inertia", "15 kg*m", UnitError),
        ("inertia", "-15 kg*m**2", InadmissibleError),
        ("overload", 0.9, InadmissibleError),
        ("overload", math.nan, InadmissibleError),
        ("overload_time", "0 s", InadmissibleError),
        ("overload_time", 60, UnitError),
        ("power", rw.Q([1.0, 2.0], "W"), InadmissibleError),
    ],
)
def test_motors_that_cannot_be_are_refused(
    field: str, value: Any, error: type[rw.RopewalkError]
) -> None:
    motors = {
        "count": 2,
        "power": "750 hp",
        "base_speed": "800 rpm",
        "top_speed": "1600 rpm",
        "inertia": "15 kg*m**2",
        "overload": 1.0,
    }
    with pytest.raises(error, match=field) as refused:
        hoist(drawworks=machine(motors=dw.Motors(**{**motors, field: value})))
    assert (refused.value.where, refused.value.field) == ("drawworks.Motors", field)


@pytest.mark.parametrize("field", ["ratio", "efficiency", "inertia"])
def test_gears_that_cannot_be_are_refused_by_the_name_of_the_argument(field: str) -> None:
    gear = {"ratio": 10.0, "efficiency": 0.95, "inertia": "0 kg*m**2"}
    wrong = "-1 kg*m**2" if field == "inertia" else -1.0
    with pytest.raises(InadmissibleError) as refused:
        hoist(drawworks=machine(gears=[dw.Gear(**{**gear, field: wrong})]))
    assert (refused.value.where, refused.value.field) == ("drawworks.Gear", field)


@pytest.mark.parametrize("field", ["speed", "acceleration", "deceleration", "lowering_speed"])
@pytest.mark.parametrize("value", [-1.0, 0.0, math.nan, math.inf])
def test_limits_that_cannot_be_are_refused(field: str, value: float) -> None:
    unit = "m/s" if "speed" in field else "m/s**2"
    given = {"speed": "1 m/s", "acceleration": "0.4 m/s**2", field: rw.Q(value, unit)}
    with pytest.raises(InadmissibleError) as refused:
        dw.Limits(**given)
    assert (refused.value.where, refused.value.field) == ("drawworks.Limits", field)


def test_what_cannot_be_is_refused() -> None:
    limits = dw.Limits("1 m/s", "0.4 m/s**2")
    on = hoist()
    for call, field in (
        (lambda: hoist(drawworks=machine(gears=[])), "gears"),
        (lambda: hoist(drawworks=machine(gears=[dw.Gear(10, 0)])), "efficiency"),
        (lambda: hoist(drawworks=machine(drum_efficiency=1.1)), "drum_efficiency"),
        (lambda: machine(motors="two"), "motors"),
        (lambda: machine(gears=[10.0]), "gears"),
        (lambda: hoist(drawworks=None), "drawworks"),
        (lambda: hoist(line_limit="0 N"), "line_limit"),
        (lambda: hoist(wraps_at_lowest=-1), "wraps_at_lowest"),
        (lambda: on.drive(3, 1), "gear"),
        (lambda: on.drive(0, 1), "gear"),
        (lambda: on.drive(1, 9), "layer"),
        (lambda: on.pull("-1 m/s", gear=1, layer=1), "speed"),
        (lambda: on.speed("0 N", gear=1, layer=1), "hook_load"),
        (lambda: on.stroke("0 N", STAND, limits), "hook_load"),
        (lambda: on.stroke("1 MN", "0 m", limits), "travel"),
        (lambda: on.stroke("1 MN", "150 m", limits), "travel"),
        (lambda: on.stroke("1 MN", STAND, limits, gear=0), "gear"),
        (lambda: on.stroke("1 MN", STAND, limits, "static"), "motion"),
        (lambda: on.stroke("1 MN", STAND, "fast"), "limits"),
        (lambda: on.stroke("1 MN", STAND, dw.Limits("1 m/s", "0 m/s**2")), "acceleration"),
        (lambda: on.stroke("1 MN", STAND, dw.Limits("1 m/s", "1 m/s**2", "20 m/s**2")), "deceler"),
        (lambda: on.curve(rw.Q([1.0, 2.0], "MN"), STAND, limits), "hook_load"),
    ):
        with pytest.raises(InadmissibleError, match=field) as refused:
            call()
        assert refused.value.field.startswith(field)
