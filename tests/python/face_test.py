"""The faces: policies, statuses and warnings, where messages point, and what a call costs."""

from __future__ import annotations

import copy
import dataclasses
import pickle
import warnings
from itertools import pairwise
from typing import Any

import numpy as np
import pytest

import ropewalk as rw
from ropewalk._face import Policy, Quantity, QuantityLike, face
from ropewalk.errors import (
    InadmissibleError,
    RowStatus,
    ValidityError,
    ValidityWarning,
)

# A model with a published range: sheave.strength_efficiency is tabulated for D/d of 1 to 40.
INSIDE, OUTSIDE = 30.0, 400.0


def test_outside_its_range_a_model_raises_by_default() -> None:
    with pytest.raises(ValidityError) as caught:
        rw.sheave.strength_efficiency(OUTSIDE)
    text = str(caught.value)
    assert text.startswith("sheave.strength_efficiency(): bend_ratio = 400 is outside [1, 40] (")
    assert text.endswith(", the range for which this model is published")
    assert (caught.value.where, caught.value.field) == (
        "sheave.strength_efficiency",
        "bend_ratio",
    )
    with pytest.raises(ValidityError, match=r"row 1 of 2: bend_ratio = 400 is outside"):
        rw.sheave.strength_efficiency([INSIDE, OUTSIDE])


def test_ratios_given_in_percent_are_quoted_in_percent() -> None:
    with pytest.raises(ValidityError, match=r"published; you gave 40000 %$"):
        rw.sheave.strength_efficiency(rw.Q(40_000, "percent"))
    with pytest.raises(ValidityError, match=r"published; you gave '40000 %'$"):
        rw.sheave.strength_efficiency("40000 %")


def test_warn_points_at_the_line_of_the_caller() -> None:
    cases: list[tuple[Any, str]] = [
        (OUTSIDE, "bend_ratio = 400"),
        ([INSIDE, OUTSIDE], "1 of 2 rows marked"),
    ]
    for given, words in cases:
        with pytest.warns(ValidityWarning, match=words) as caught:
            value = rw.sheave.strength_efficiency(given, outside_validity="warn")
        assert [warning.filename for warning in caught] == [__file__]
        assert np.all(np.isfinite(value))


def test_ignore_is_silent_and_gives_the_same_value_as_warn() -> None:
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        silent = rw.sheave.strength_efficiency(OUTSIDE, outside_validity="ignore")
        rw.sheave.strength_efficiency(INSIDE, outside_validity="warn")
    with pytest.warns(ValidityWarning):
        assert rw.sheave.strength_efficiency(OUTSIDE, outside_validity="warn") == silent


def test_a_warning_turned_into_an_error_is_that_warning() -> None:
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        with pytest.raises(ValidityWarning):
            rw.sheave.strength_efficiency(OUTSIDE, outside_validity="warn")


def test_no_policy_lets_the_inadmissible_through() -> None:
    policies: tuple[Policy, ...] = ("raise", "warn", "ignore")
    for policy in policies:
        with pytest.raises(InadmissibleError, match=r"bend_ratio = -1 is outside \[1, 10000\]"):
            rw.sheave.strength_efficiency(-1.0, outside_validity=policy)


def test_status_of_rows() -> None:
    given: Any = [INSIDE, OUTSIDE, -1.0]
    value, status = rw.sheave.strength_efficiency(
        given, outside_validity="ignore", return_status=True
    )
    assert status.dtype == np.uint8
    assert [RowStatus(bits) for bits in status.tolist()] == [
        RowStatus.OK,
        RowStatus.OUTSIDE_VALIDITY,
        RowStatus.INADMISSIBLE,
    ]
    assert np.isnan(value).tolist() == [False, False, True]
    _, one = rw.sheave.strength_efficiency(OUTSIDE, outside_validity="ignore", return_status=True)
    assert one is RowStatus.OUTSIDE_VALIDITY


def test_a_stub_that_differs_from_the_table_is_found_at_import() -> None:
    def bearing_pressure(
        rope_diameter: QuantityLike,
        rope_tension: QuantityLike,
        sheave_diameter: QuantityLike,
        *,
        outside_validity: Policy = "raise",
        return_status: bool = False,
        threads: int = 1,
    ) -> Quantity:
        """Arguments in the wrong order."""
        raise NotImplementedError

    with pytest.raises(TypeError, match="its signature has"):
        face("sheave.bearing_pressure")(bearing_pressure)


def test_sections_are_put_between_the_summary_and_the_notes() -> None:
    doc = rw.sheave.bearing_pressure.__doc__ or ""
    lines = doc.splitlines()
    assert lines[0].startswith("Radial bearing pressure of a rope on its sheave")
    titles = [above for above, below in pairwise(lines) if set(below) == {"-"}]
    assert titles[:3] == ["Parameters", "Returns", "Raises"]
    assert titles[-1] == "Examples"
    assert 'E.g. ``"30000 lbf"``.' in doc


OBJECTS = [
    lambda: rw.Rope("6x19 IWRC", grade="EIPS", diameter="1.375 in"),
    lambda: rw.Reeving(lines=10, sheave_friction=1.04),
    lambda: rw.Reeving(lines=10, sheave_friction=1.04).tensions("400 kip", motion="hoisting"),
    lambda: rw.drillstring.Section("drill collars", "500 ft", "150 lb/ft"),
    lambda: rw.load_rig(rw.rig.example("rig7")),
]


@pytest.mark.parametrize("make", OBJECTS, ids=["rope", "reeving", "tensions", "section", "rig"])
def test_objects_survive_pickling_and_copying_and_are_frozen(make: Any) -> None:
    made = make()
    for twin in (pickle.loads(pickle.dumps(made)), copy.copy(made), copy.deepcopy(made)):
        assert type(twin) is type(made)
        assert repr(twin) == repr(made)
    field = dataclasses.fields(made)[0].name
    with pytest.raises(dataclasses.FrozenInstanceError):
        setattr(made, field, None)
