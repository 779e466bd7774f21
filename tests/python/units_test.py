"""The registry ropewalk joins, quantities from text, and the customary units."""

from __future__ import annotations

import math
import pickle
from decimal import Decimal
from fractions import Fraction
from typing import Any

import numpy as np
import pandas as pd
import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk._border import to_si
from ropewalk._units import read_text
from ropewalk.errors import UnitError
from ropewalk.testing import assert_close, quantities, units_of

# Ambler Thompson and Barry N. Taylor, NIST Special Publication 811 (2008), appendix B.8, as
# printed there: digits in bold are exact, the others rounded (from memory).
NIST = [
    ("force", "lbf", "4.448222"),
    ("force", "kip", "4448.222"),
    ("force", "short_ton_force", "8896.443"),
    ("force", "kgf", "9.80665"),
    ("length", "in", "0.0254"),
    ("length", "ft", "0.3048"),
    ("length", "mile", "1609.344"),
    ("mass", "lb", "0.4535924"),
    ("stress", "psi", "6894.757"),
    ("stress", "ksi", "6894757"),
    ("energy", "ft*lbf", "1.355818"),
    ("torque", "ft*lbf", "1.355818"),
    ("power", "hp", "745.6999"),
    ("density", "ppg", "119.8264"),
    ("density", "lb/ft**3", "16.01846"),
    ("mass_per_length", "lb/ft", "1.488164"),
    ("force_per_length", "lbf/ft", "14.59390"),
    ("angular_velocity", "rpm", "0.1047198"),
    ("angle", "deg", "0.01745329"),
    ("speed", "ft/min", "0.00508"),
]


@pytest.mark.parametrize(("role", "unit", "printed"), NIST)
def test_customary_units_as_printed(role: str, unit: str, printed: str) -> None:
    half_a_digit = 0.5 * 10.0 ** -len(printed.partition(".")[2])
    assert to_si("units", "one", f"1 {unit}", role) == pytest.approx(
        float(printed), abs=half_a_digit, rel=0
    )


def test_ton_mile_is_a_short_ton_force_over_a_statute_mile() -> None:
    # 2000 × 0.45359237 kg × 9.80665 m/s² × 1609.344 m, all exact by definition.
    assert to_si("units", "work", "1 ton_mile", "energy") == pytest.approx(
        2000 * 0.45359237 * 9.80665 * 1609.344, rel=4e-16
    )
    assert_close("1 ton_mile", "1 short_ton_force*mile", relative=1e-15)


def test_units_is_the_application_registry(application_registry: Any) -> None:
    assert id(rw.units) == id(application_registry)
    mine: Any = pint.UnitRegistry()
    mine.define("ton_mile = 3 * joule")
    application_registry.set(mine)
    assert type(rw.Q(1, "ppg")) is mine.Quantity, "missing units are added"
    assert rw.units.Quantity(1, "ton_mile").to("J").magnitude == 3, "none is replaced"
    result = rw.sheave.bearing_pressure("30 kip", "1.375 in", "50 in")
    assert type(result) is mine.Quantity


def test_quantities_come_back_from_pickles_in_the_registry_in_use() -> None:
    pressure = rw.sheave.bearing_pressure("30 kip", "1.375 in", "50 in")
    again = pickle.loads(pickle.dumps(pressure))
    assert again == pressure
    assert (again + pressure).magnitude == 2 * pressure.magnitude


@pytest.mark.parametrize(
    ("text", "number", "unit"),
    [
        ("400 kip", 400, "kip"),
        ("  400kip ", 400, "kip"),
        ("-1.375 in", -1.375, "inch"),
        ("1.5e3 N", 1500, "newton"),
        (".5 ft", 0.5, "foot"),
        ("1_000 psi", 1000, "psi"),
        ("3/8 in", 0.375, "inch"),
        ("1-3/8 in", 1.375, "inch"),
        ("1 3/8 in", 1.375, "inch"),
        ("-1 3/8 in", -1.375, "inch"),
        ("30 1/min", 30, "1/minute"),
        ("9.5 lb/gal", 9.5, "pound/gallon"),
        ("5 ft·lbf", 5, "foot*lbf"),
        ("5 ft lbf", 5, "foot*lbf"),
        ("4 %", 4, "percent"),
    ],
)
def test_text_is_read(text: str, number: float, unit: str) -> None:
    value, one = read_text(text)
    assert value == number
    assert one.units == rw.units.Unit(unit)
    assert rw.Q(text) == rw.Q(number, unit)


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("", "does not begin with a number"),
        ("kip", "does not begin with a number"),
        ("nan lbf", "does not begin with a number"),
        ("1,375 in", "a decimal point and without commas"),
        ("30,000 lbf", "a decimal point and without commas"),
        ("3/0 in", "3/0 is not a fraction"),
        ("1-8/3 in", "1-8/3 is not a fraction"),
        ("5 ft-lbf", "write products with *, e.g. ft*lbf"),
        ("5 parsnips", "'parsnips' is not known"),
        ("5 3 in", "is not known"),
        ('5 in"', "is not a unit"),
        ("5 in; import os", "is not a unit"),
        ("5 __import__('os')", "is not a unit"),
    ],
)
def test_text_that_cannot_be_meant_is_refused(text: str, reason: str) -> None:
    with pytest.raises(UnitError, match=r"^Q\(\): ") as caught:
        rw.Q(text)
    assert reason in str(caught.value)


@given(
    st.floats(allow_nan=False, allow_infinity=False),
    st.sampled_from([u for role in ("force", "length", "density") for u in units_of(role)]),
)
def test_text_of_any_number_reads_back(number: float, unit: str) -> None:
    quantity = rw.Q(f"{number!r} {unit}")
    assert quantity.magnitude == number
    assert quantity.units == rw.units.Unit(unit)


def test_q_takes_numbers_in_any_container() -> None:
    for value in ([1, 2], (1, 2), range(1, 3), np.array([1, 2]), pd.Series([1, 2], index=[7, 9])):
        assert rw.Q(value, "kip").magnitude.tolist() == [1, 2]
    for number in (30, 30.0, np.float32(30), Fraction(30), Decimal(30)):
        assert rw.Q(number, "kip").magnitude == 30


@pytest.mark.parametrize(
    "value", [None, True, "30", b"30", rw.Q(1, "m"), [1j], ["a"], [None], [True, 2]]
)
def test_q_refuses_what_is_no_number(value: Any) -> None:
    with pytest.raises(UnitError, match=r"Q\(\): the value must be"):
        rw.Q(value, "kip")


def test_q_refuses_a_missing_or_strange_unit() -> None:
    with pytest.raises(UnitError, match="a unit is missing"):
        rw.Q(3)
    with pytest.raises(UnitError, match="three meanings"):
        rw.Q(3, "ton")
    with pytest.raises(UnitError, match="a unit is text"):
        rw.Q(3, 4)  # type: ignore[arg-type]


@given(quantities("force", "1 lbf", "500 kip"), st.sampled_from(units_of("force")))
def test_round_trip_through_any_unit(force: Any, unit: str) -> None:
    assert_close(force.to(unit), force, relative=1e-14)
    newtons = to_si("units", "force", force, "force")
    assert 4.448 < newtons < 500 * 4448.3
    assert math.isclose(to_si("units", "force", force.to(unit), "force"), newtons, rel_tol=1e-14)


def test_assert_close_tells_quantities_apart() -> None:
    assert_close(rw.Q([1.0, 2.0], "ft"), rw.Q([12.0, 24.0], "in"))
    assert_close(1.0, 1.0 + 1e-12)
    for wrong in ("1001 lbf", "1 ft", 1000.0, rw.Q([1.0, 1.0], "kip")):
        with pytest.raises(AssertionError):
            assert_close(wrong, "1 kip")
