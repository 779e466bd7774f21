"""The rule by which a value agrees with a printed one, checked on numbers a reader can check."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from reference_cases import Expected, PrintedNumber, tolerance_of


@pytest.mark.parametrize(
    ("text", "value", "half_unit", "unit"),
    [
        ("0.842", "0.842", "0.0005", ""),
        ("0.8420", "0.842", "0.00005", ""),
        ("12", "12", "0.5", ""),
        ("12.", "12", "0.5", ""),
        ("49200 lbf", "49200", "0.5", "lbf"),
        ("4.92e4 lbf", "49200", "50", "lbf"),
        ("6.894757E+03 Pa", "6894.757", "0.0005", "Pa"),
        ("2.54e-02 m", "0.0254", "0.00005", "m"),
        ("-3.10 ft/min", "-3.1", "0.005", "ft/min"),
        ("+7 lbf / ft", "7", "0.5", "lbf / ft"),
        ("0", "0", "0.5", ""),
    ],
)
def test_half_a_unit_of_the_last_printed_digit(
    text: str, value: str, half_unit: str, unit: str
) -> None:
    printed = PrintedNumber.parse(text)
    assert printed.value == Decimal(value)
    assert printed.half_unit == Decimal(half_unit)
    assert printed.unit == unit


@pytest.mark.parametrize("text", ["", "lbf", "49,200 lbf", ".5", "1e", "1_000", "nan", "12lbf"])
def test_what_is_not_a_printed_number_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="does not begin with a printed number"):
        PrintedNumber.parse(text)


@pytest.mark.parametrize(
    ("stated", "tolerance"), [(None, "0.05"), ("0.5 %", "0.0615"), ("2%", "0.246"), ("0.2", "0.2")]
)
def test_a_stated_tolerance_replaces_half_a_unit(stated: str | None, tolerance: str) -> None:
    assert tolerance_of(PrintedNumber.parse("12.3"), stated) == Decimal(tolerance)


def test_a_percentage_of_a_negative_number_is_positive() -> None:
    assert tolerance_of(PrintedNumber.parse("-50"), "10 %") == Decimal(5)


def expected(text: str) -> Expected:
    printed = PrintedNumber.parse(text)
    return Expected("result", printed, printed.half_unit)


@pytest.mark.parametrize("value", [0.1225, 0.12329, 0.1235])
def test_values_that_round_to_the_printed_one_agree(value: float) -> None:
    assert expected("0.123").agrees_with(value)


@pytest.mark.parametrize("value", [0.12249, 0.12351, -0.123, 0.0, float("nan"), float("inf")])
def test_other_values_do_not_agree(value: float) -> None:
    assert not expected("0.123").agrees_with(value)


@given(st.decimals(-10_000, 10_000, places=3))
def test_a_number_agrees_with_its_own_print_and_not_with_the_next(value: Decimal) -> None:
    printed = expected(f"{value:.3f}")
    assert printed.agrees_with(float(value))
    assert not printed.agrees_with(float(value) + 0.001)
