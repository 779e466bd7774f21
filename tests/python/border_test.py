"""Every public row function against every kind of argument it may be given.

The suite walks the signature table: a function added there is tested here without a new line.
"""

from __future__ import annotations

import math
import re
from typing import Any

import numpy as np
import pint
import pytest
from calls import (
    ARGUMENTS,
    FUNCTIONS,
    PLAIN,
    WITH_UNIT,
    core,
    example,
    example_number,
    in_si,
    magnitude,
    public,
)

import ropewalk as rw
from ropewalk._signature import PARAMETERS, SIGNATURES
from ropewalk.errors import InadmissibleError, RopewalkError, UnitError, ValidityError
from ropewalk.testing import assert_close, units_of


def refusal(name: str, **changed: Any) -> str:
    """Text of the unit error a call raises with some arguments changed."""
    with pytest.raises(UnitError) as caught:
        public(name)(**{**example(name), **changed})
    assert caught.value.where == name
    assert caught.value.field == next(iter(changed))
    assert isinstance(caught.value, TypeError)
    assert caught.value.__context__ is None, "one error, not an error while handling another"
    return str(caught.value)


@pytest.mark.parametrize("name", FUNCTIONS)
def test_right_units_give_what_the_core_gives_on_si_numbers(name: str) -> None:
    given = example(name)
    result = public(name)(**given)
    si = [in_si(value, PARAMETERS[argument].role) for argument, value in given.items()]
    expected = core(name)(*si)
    assert math.isfinite(expected)
    role = SIGNATURES[name].result
    assert in_si(result, role) == pytest.approx(expected, rel=1e-12)
    if role.has_unit:
        assert result.units == rw.units.Unit(role.si_unit)
    else:
        assert type(result) is float


@pytest.mark.parametrize("name", FUNCTIONS)
def test_positional_and_keyword_calls_are_the_same(name: str) -> None:
    given = example(name)
    first, *rest = given.items()
    positional = magnitude(public(name)(*given.values()))
    assert positional == magnitude(public(name)(**given))
    assert positional == magnitude(public(name)(first[1], **dict(rest)))
    backwards = dict(reversed(given.items()))
    assert positional == magnitude(public(name)(**backwards))


@pytest.mark.parametrize(("name", "argument"), WITH_UNIT)
def test_every_usual_unit_gives_the_same_answer(name: str, argument: str) -> None:
    given = example(name)
    expected = public(name)(**given)
    for unit in units_of(PARAMETERS[argument].role):
        changed = {**given, argument: given[argument].to(unit)}
        assert_close(public(name)(**changed), expected, relative=1e-11)


@pytest.mark.parametrize(("name", "argument"), WITH_UNIT)
def test_text_with_a_unit_does(name: str, argument: str) -> None:
    given = example(name)
    text = f"{example_number(name, argument)!r} {PARAMETERS[argument].unit}"
    assert_close(public(name)(**{**given, argument: text}), public(name)(**given), relative=1e-14)


@pytest.mark.parametrize(("name", "argument"), WITH_UNIT)
def test_wrong_dimension_is_refused(name: str, argument: str) -> None:
    role = PARAMETERS[argument].role
    text = refusal(name, **{argument: rw.Q(30, "m**4")})
    assert text.startswith(f"{name}(): {argument} must be {role.phrase} with a unit, got 30 m**4 (")
    assert f'rw.Q({PARAMETERS[argument].example:.12g}, "{PARAMETERS[argument].unit}")' in text


@pytest.mark.parametrize(("name", "argument"), WITH_UNIT)
def test_bare_numbers_and_the_like_are_refused(name: str, argument: str) -> None:
    phrase = PARAMETERS[argument].role.phrase
    usual = PARAMETERS[argument].example_text
    for value, got in [
        (30, "30 (a bare number)"),
        (0, "0 (a bare number)"),
        (True, "True (a boolean)"),
        (None, "None"),
        (3 + 4j, "(3+4j) (a complex number)"),
        ("30", "'30' (text without a unit)"),
        (b"30 lbf", "b'30 lbf' (bytes)"),
    ]:
        text = refusal(name, **{argument: value})
        start = f"{name}(): {argument} must be {phrase} with a unit, got {got}; "
        assert text.startswith(start)
        assert f'"{usual}"' in text


@pytest.mark.parametrize(("name", "argument"), WITH_UNIT)
def test_offset_units_are_refused(name: str, argument: str) -> None:
    text = refusal(name, **{argument: rw.Q(20, "degC")})
    assert "got 20 °C (a reading on a scale with its own zero)" in text


@pytest.mark.parametrize(("name", "argument"), PLAIN)
def test_plain_numbers_take_no_unit(name: str, argument: str) -> None:
    phrase = PARAMETERS[argument].role.phrase
    for value, got in [
        (rw.Q(30, "m"), "30 m (a length)"),
        ("30 m", "'30 m' (a length)"),
        (rw.Q(30, "deg"), "30 deg (an angle)"),
        (True, "True (a boolean)"),
        (None, "None"),
        ("many", "'many'"),
    ]:
        text = refusal(name, **{argument: value})
        assert text.startswith(f"{name}(): {argument} must be {phrase}, got {got}; ")


@pytest.mark.parametrize(("name", "argument"), PLAIN)
def test_pure_ratios_are_scaled(name: str, argument: str) -> None:
    given = example(name)
    percent = rw.Q(100 * given[argument], "percent")
    assert_close(
        public(name)(**{**given, argument: percent}), public(name)(**given), relative=1e-12
    )


@pytest.mark.parametrize("name", FUNCTIONS)
def test_all_wrong_arguments_are_listed(name: str) -> None:
    names = SIGNATURES[name].arguments
    text = refusal(name, **dict.fromkeys(names))
    for argument in names:
        assert re.search(rf"(^|\s){argument} must be .* got None", text)
    if len(names) > 1:
        assert text.startswith(f"{name}(): {len(names)} arguments are wrong:\n")


@pytest.mark.parametrize("name", FUNCTIONS)
def test_foreign_registry_is_joined(name: str, foreign: Any) -> None:
    given = example(name, foreign_quantity(foreign))
    result = public(name)(**given)
    expected = public(name)(**example(name))
    if SIGNATURES[name].result.has_unit and any(hasattr(v, "units") for v in given.values()):
        assert type(result) is foreign.Quantity
        assert (result + result).magnitude == 2 * result.magnitude
    assert magnitude(result) == pytest.approx(magnitude(expected), rel=1e-12)


def foreign_quantity(registry: Any) -> Any:
    """Quantities of another registry, which does not know the units ropewalk adds to its own."""

    def quantity(value: Any, unit: str) -> Any:
        ours = rw.Q(value, unit)
        try:
            return registry.Quantity(value, unit)
        except pint.UndefinedUnitError:
            base = ours.to_base_units()
            return registry.Quantity(base.magnitude, str(base.units))

    return quantity


@pytest.mark.parametrize(("name", "argument"), ARGUMENTS)
def test_numbers_that_are_not_finite_are_refused(name: str, argument: str) -> None:
    unit = PARAMETERS[argument].unit
    for value in (math.nan, math.inf, -math.inf):
        given = rw.Q(value, unit) if unit else value
        with pytest.raises(InadmissibleError) as caught:
            public(name)(**{**example(name), argument: given})
        assert (caught.value.where, caught.value.field) == (name, argument)
        assert str(caught.value).startswith(f"{name}(): {argument} = {value}")
        if unit:
            assert str(caught.value).endswith(f"; you gave {value} {rw.Q(1, unit).units:~C}")


@pytest.mark.parametrize(("name", "argument"), ARGUMENTS)
@pytest.mark.parametrize("value", [-1.0, -1e300, 0.0, 1e300])
def test_odd_numbers_give_a_number_or_one_clear_error(
    name: str, argument: str, value: float
) -> None:
    unit = PARAMETERS[argument].unit
    given = {**example(name), argument: rw.Q(value, unit) if unit else value}
    refused: InadmissibleError | ValidityError | None = None
    try:
        result = public(name)(**given)
    except (InadmissibleError, ValidityError) as error:
        refused = error
    if refused is None:
        assert math.isfinite(magnitude(result))
        return
    assert refused.where == name
    assert refused.field in ("", argument)
    assert str(refused).startswith(f"{name}(): ")
    assert "nan" not in str(refused)


@pytest.mark.parametrize(("name", "argument"), ARGUMENTS)
def test_core_refuses_what_carries_a_unit(name: str, argument: str) -> None:
    si = [in_si(v, PARAMETERS[a].role) for a, v in example(name).items()]
    place = SIGNATURES[name].arguments.index(argument)
    for value, got in [
        (rw.Q([1.0, 2.0], "kN"), "an object with a unit (Quantity)"),
        (rw.Q(1.0, "kN"), "an object with a unit (Quantity)"),
        (rw.Q(1.0, ""), "an object with a unit (Quantity)"),
        (np.array([1.0, None], dtype=object), "an array of dtype object"),
        (np.array([True]), "an array of dtype bool"),
        (True, "bool"),
        ("1", "str"),
        (None, "NoneType"),
    ]:
        with pytest.raises(UnitError) as caught:
            core(name)(*si[:place], value, *si[place + 1 :])
        assert (caught.value.where, caught.value.field) == (name, argument)
        assert re.search(rf"{argument} must be a plain number .*, got ", str(caught.value))
        assert got in str(caught.value)


@pytest.mark.parametrize("name", FUNCTIONS)
def test_calls_python_would_refuse_read_like_python(name: str) -> None:
    function = name.split(".")[1]
    with pytest.raises(TypeError, match=rf"{function}\(\) missing \d+ required positional arg"):
        public(name)()
    with pytest.raises(TypeError, match=rf"{function}\(\) takes .* positional arguments? but"):
        public(name)(*example(name).values(), 1)
    with pytest.raises(TypeError, match="unexpected keyword argument 'radius_of_moon'"):
        public(name)(**example(name), radius_of_moon=1)
    for wrong in ({"threads": 0}, {"threads": "2"}, {"outside_validity": "hope"}):
        with pytest.raises(RopewalkError, match=rf"^{name}\(\): {next(iter(wrong))} must be"):
            public(name)(**example(name), **wrong)
