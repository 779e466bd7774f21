"""Conversion by role: what each kind of quantity takes and refuses, and how containers pass."""

from __future__ import annotations

import datetime
from decimal import Decimal
from fractions import Fraction
from typing import Any

import numpy as np
import pandas as pd
import pint
import pytest

import ropewalk as rw
from ropewalk._border import arguments, to_count, to_quantity, to_si
from ropewalk.errors import InadmissibleError, UnitError


def refused(role: str, value: Any) -> str:
    with pytest.raises(UnitError) as caught:
        to_si("rig.load", "part", value, role)
    assert str(caught.value).startswith("rig.load(): part must be a")
    return str(caught.value)


@pytest.mark.parametrize(
    ("role", "unit", "factor"),
    [
        ("torque", "N*m", 1.0),
        ("torque", "N*m/rad", 1.0),
        ("torque", "ft*lbf", 1.3558179483314004),  # 0.3048 × 4.4482216152605, exact definitions
        ("moment_of_inertia", "kg*m**2", 1.0),
        ("moment_of_inertia", "kg*m**2/rad**2", 1.0),
        ("moment_of_inertia", "lb*ft**2", 0.45359237 * 0.3048**2),
        ("energy", "J", 1.0),
        ("energy", "ft*lbf", 1.3558179483314004),
        ("energy", "lbf*mile", 4.4482216152605 * 1609.344),
        ("angular_velocity", "rad/s", 1.0),
        ("angular_velocity", "rpm", 2 * np.pi / 60),
        ("angular_velocity", "deg/s", np.pi / 180),
        ("frequency", "Hz", 1.0),
        ("frequency", "1/min", 1 / 60),
        ("angle", "deg", np.pi / 180),
        ("angle", "turn", 2 * np.pi),
        ("number", "percent", 0.01),
        ("number", "mm/m", 0.001),
        ("mass_per_length", "lb/ft", 0.45359237 / 0.3048),
        ("force_per_length", "lbf/ft", 4.4482216152605 / 0.3048),
    ],
)
def test_unit_belongs_to_role(role: str, unit: str, factor: float) -> None:
    assert to_si("rig.load", "part", rw.Q(1.0, unit), role) == pytest.approx(factor, rel=1e-15)


@pytest.mark.parametrize(
    ("role", "unit", "part"),
    [
        ("torque", "J", "write a torque as a force times a length"),
        ("torque", "kWh", "(an energy)"),
        ("torque", "kW*h", "(an energy)"),
        ("torque", "Btu", "(an energy)"),
        ("torque", "calorie", "(an energy)"),
        ("torque", "foot_pound", "(an energy)"),
        ("torque", "ton_mile", "(an energy)"),
        ("torque", "N*m*rad", "with an angle in it"),
        ("energy", "N*m/rad", "(a torque)"),
        ("moment_of_inertia", "lbf*ft**2", "of the dimension"),
        ("moment_of_inertia", "m**4", "of the dimension"),
        ("moment_of_inertia", "kg*m**2*rad", "with an angle in it"),
        ("mass", "kg*m**2", "(a moment of inertia)"),
        ("energy", "N*m*rad", "divide by the radian"),
        ("power", "N*m*rad/s", "divide by the radian"),
        ("angular_velocity", "Hz", "a rotation is written in rpm or rad/s"),
        ("angular_velocity", "1/s", "(a frequency)"),
        ("frequency", "rpm", "a frequency is written in Hz or 1/min"),
        ("frequency", "rad/s", "(an angular velocity)"),
        ("frequency", "becquerel", "of the dimension"),
        ("angle", "percent", "(a number without a unit)"),
        ("angle", "", "(a number without a unit)"),
        ("number", "rad", "an angle is not a ratio"),
        ("number", "deg", "an angle is not a ratio"),
        ("number", "bit", "of the dimension bit"),
        ("number", "dB", "a scale with its own zero"),
        ("force", "lb", "lb is a mass; write lbf"),
        ("force", "kg", "kg is a mass; write kgf"),
        ("force", "tonne", "t is a mass; write tonne_force"),
        ("mass", "lbf", "lbf is a force; write lb"),
        ("force_per_length", "lb/ft", "lb is a mass; write lbf"),
        ("mass_per_length", "lbf/ft", "lbf is a force; write lb"),
        ("length", "survey_foot", "write international ft or mile"),
        ("length", "survey_mile", "US survey"),
        ("length", "fathom", "US survey"),
        ("length", "degF", "a scale with its own zero"),
        ("density", "psi/ft", "of the dimension"),
    ],
)
def test_unit_of_another_role_is_refused(role: str, unit: str, part: str) -> None:
    assert part in refused(role, rw.Q(3.0, unit))
    assert part in refused(role, rw.Q([3.0, 4.0], unit))


@pytest.mark.parametrize("role", ["force", "mass", "energy", "length", "number", "torque"])
def test_bare_ton_is_refused_in_every_role(role: str) -> None:
    words = ("short_ton_force (2000 lbf)", "long_ton_force (2240 lbf)", "tonne_force (1000 kgf)")
    ureg = rw.units
    for value in ["3 ton", "3 tons", "3 short ton", "3 ton*mile", "3 tonf", 3 * ureg.short_ton]:
        text = refused(role, value)
        assert all(word in text for word in (*words, "2000 lb, 2240 lb or tonne"))
    assert words[0] in refused(role, ureg.Quantity(3, "kiloton"))


def test_the_three_tons_by_their_names() -> None:
    # Exact: pound and standard gravity as defined, 2000 and 2240 pounds (NIST SP 811, app. B).
    for unit, newtons in [
        ("short_ton_force", 2000 * 4.4482216152605),
        ("long_ton_force", 2240 * 4.4482216152605),
        ("tonne_force", 9806.65),
    ]:
        assert to_si("rig.load", "part", f"1 {unit}", "force") == pytest.approx(newtons, rel=4e-16)


def test_foreign_registry_converts_by_its_own_definitions() -> None:
    other: Any = pint.UnitRegistry()
    other.define("kip = 4000 * newton")
    for _ in range(2):
        assert to_si("rig.load", "part", other.Quantity(2, "kip"), "force") == 8000.0
        assert to_si("rig.load", "part", rw.Q(2, "kip"), "force") == 8896.443230521
    back = to_quantity(8000.0, "force", like=other.Quantity(2, "kip"))
    assert back.to("kip").magnitude == pytest.approx(2.0, rel=1e-15)


def test_small_registry_of_someones_own_is_served(tmp_path: Any) -> None:
    definitions = tmp_path / "units.txt"
    definitions.write_text(
        "meter = [length] = m\nkilogram = [mass] = kg\nsecond = [time] = s\n"
        "newton = kilogram * meter / second ** 2 = N\n"
    )
    small: Any = pint.UnitRegistry(str(definitions), cache_folder=None)
    result = rw.sheave.bearing_pressure(
        small.Quantity(1000.0, "N"), small.Quantity(0.01, "m"), small.Quantity(1.0, "m")
    )
    assert result == rw.Q(200_000, "Pa"), "a stress it cannot name comes in ropewalk's registry"


def test_scalars_of_any_number_type() -> None:
    for value in (3, 3.0, np.float32(3), np.int16(3), Fraction(3), Decimal(3), np.array(3)):
        assert to_si("rig.load", "part", rw.units.Quantity(value, "kN"), "force") == 3000.0
        assert to_si("rig.load", "part", value, "number") == 3.0


@pytest.mark.parametrize(
    "value",
    [
        datetime.date(2024, 1, 1),
        datetime.timedelta(hours=1),
        np.datetime64("2024-01-01"),
        np.array(["2024-01-01"], dtype="datetime64[D]"),
        np.array(["a"]),
        np.array([1j]),
        np.array([True]),
        [1, [2, 3]],
        [True, 2],
        ["1", "2"],
        {"a": 1},
        object(),
        10**400,
        np.ma.masked_array([1.0, 2.0], [True, False]),
        [rw.Q(1, "m"), rw.Q(2, "m")],
        rw.units.meter,
    ],
    ids=lambda value: type(value).__name__,
)
def test_what_is_no_number_is_refused(value: Any) -> None:
    assert "must be a number, got" in refused("number", value)
    assert "must be a force with a unit, got" in refused("force", value)


def test_arrays_without_a_unit_are_told_how() -> None:
    for value in ([1.0, 2.0], (1, 2), range(3), np.arange(3), pd.Series([1.0, 2.0])):
        assert refused("force", value).endswith('(without a unit); write e.g. rw.Q(numbers, "lbf")')
    mixed = [rw.Q(1, "lbf"), rw.Q(2, "lbf")]
    assert "got a list (of quantities); " in refused("force", mixed)


def test_si_arrays_pass_without_a_copy() -> None:
    data = np.arange(4.0)
    assert to_si("rig.load", "part", rw.Q(data, "N"), "force") is data
    assert to_si("rig.load", "part", rw.Q(data, "kg*m/s**2"), "force") is data
    assert to_si("rig.load", "part", data, "number") is data


def test_data_of_the_caller_is_never_changed() -> None:
    for data in (np.arange(4.0), np.arange(4), np.arange(4, dtype=np.float32)):
        data.flags.writeable = False
        before = data.copy()
        converted = to_si("rig.load", "part", rw.Q(data, "kip"), "force")
        assert converted.dtype == np.float64
        assert np.array_equal(converted, before.astype(float) * 4448.2216152605)
        assert np.array_equal(data, before)


def test_single_precision_is_widened_before_it_is_scaled() -> None:
    data = np.array([0.1], dtype=np.float32)
    assert to_si("rig.load", "part", rw.Q(data, "in"), "length")[0] == float(data[0]) * 0.0254


def test_containers_with_a_stated_unit() -> None:
    for value in ([1, 2], (1, 2), range(1, 3), np.array([1, 2]), pd.Series([1, 2])):
        converted = to_si("rig.load", "part", rw.Q(value, "kN"), "force")
        assert converted.tolist() == [1000.0, 2000.0]
        assert to_si("rig.load", "part", value, "number").tolist() == [1.0, 2.0]


def test_counts() -> None:
    for value in (10, 10.0, np.int64(10), "10"):
        assert to_count("rig.load", "lines", value) == 10
    for wrong in (9.5, float("nan"), float("inf"), [10, 12], 1e300):
        with pytest.raises(InadmissibleError, match="lines must be one whole number, got"):
            to_count("rig.load", "lines", wrong)
    with pytest.raises(UnitError, match=r"lines must be a whole number, got '10 m' \(a length\)"):
        to_count("rig.load", "lines", "10 m")


def test_several_arguments_at_once() -> None:
    assert arguments("rig.load", lines=10, rope_diameter="1 in") == (10, 0.0254)
    with pytest.raises(UnitError, match=r"2 arguments are wrong:\n  lines must .*\n  rope_diam"):
        arguments("rig.load", lines="10 m", hook_load="1 kip", rope_diameter=1)


def test_message_is_the_one_promised() -> None:
    with pytest.raises(UnitError) as caught:
        rw.sheave.bearing_pressure(30, "1.25 in", "50 in")  # type: ignore[arg-type]
    assert str(caught.value) == (
        "sheave.bearing_pressure(): rope_tension must be a force with a unit, got 30 (a bare "
        'number); write e.g. "30000 lbf" or rw.Q(30000, "lbf")'
    )


def test_errors_of_the_core_say_what_was_given() -> None:
    tension, wheel = rw.Q([30, 31, 32], "kip"), "50 in"
    with pytest.raises(InadmissibleError, match=r"\(0, 1\] m .*; you gave -1\.375 in$"):
        rw.sheave.bearing_pressure("30 kip", rw.Q(-1.375, "in"), wheel)
    with pytest.raises(InadmissibleError, match=r"row 1 of 3: rope_diameter .*; you gave -2 in$"):
        rw.sheave.bearing_pressure(tension, rw.Q([1, -2, 3], "in"), wheel)
    joint = r"you gave rope_tension = 31 kip, rope_diameter = 38 in, sheave_diameter = '37 in'$"
    with pytest.raises(InadmissibleError, match=joint):
        rw.sheave.bearing_pressure(tension, rw.Q([1, 38, 3], "in"), "37 in")
