"""Scalars and arrays give the same answers, whatever shape, type and memory layout they come in."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from calls import ARGUMENTS, FUNCTIONS, example, magnitude, public, rows

import ropewalk as rw
from ropewalk._signature import PARAMETERS, SIGNATURES
from ropewalk.errors import InadmissibleError, RowStatus

ROWS = 12


def one_by_one(name: str, given: dict[str, Any]) -> list[float]:
    """The answer row by row through scalar calls."""
    single = [
        {a: v[i] if np.ndim(magnitude(v)) else v for a, v in given.items()} for i in range(ROWS)
    ]
    return [magnitude(public(name)(**row)) for row in single]


def varied(name: str, change: Any) -> dict[str, Any]:
    """Rows whose arrays went through `change`, a function of the bare array."""
    return {
        a: type(v)(change(v.magnitude), v.units) if np.ndim(magnitude(v)) else v
        for a, v in rows(name, ROWS).items()
    }


@pytest.mark.parametrize("name", FUNCTIONS)
def test_arrays_equal_scalars_to_the_last_bit(name: str) -> None:
    given = rows(name, ROWS)
    if not any(np.ndim(magnitude(v)) for v in given.values()):
        given = {a: np.full(ROWS, v) for a, v in given.items()}
    result = magnitude(public(name)(**given))
    assert result.shape == (ROWS,)
    assert result.dtype == np.float64
    assert result.tolist() == one_by_one(name, given)


@pytest.mark.parametrize("name", FUNCTIONS)
def test_every_argument_as_an_array(name: str) -> None:
    full = {a: v * np.ones(ROWS) for a, v in example(name).items()}
    result = magnitude(public(name)(**full))
    assert result.tolist() == [magnitude(public(name)(**example(name)))] * ROWS


@pytest.mark.parametrize("name", FUNCTIONS)
@pytest.mark.parametrize(
    ("change", "shape"),
    [
        (lambda x: np.repeat(x, 2)[::2], (ROWS,)),
        (lambda x: x[::-1], (ROWS,)),
        (lambda x: x.reshape(3, 4), (3, 4)),
        (lambda x: np.asfortranarray(x.reshape(3, 4)), (3, 4)),
        (lambda x: x.reshape(1, ROWS), (1, ROWS)),
        (lambda x: x.reshape(2, 3, 2).transpose(2, 1, 0), (2, 3, 2)),
        (lambda x: x.tolist(), (ROWS,)),
    ],
    ids=["strided", "reversed", "2-D", "Fortran", "one row", "transposed", "list"],
)
def test_memory_layout_does_not_matter(name: str, change: Any, shape: tuple[int, ...]) -> None:
    given = varied(name, change)
    if not any(np.ndim(magnitude(v)) for v in given.values()):
        given = {a: change(np.full(ROWS, float(v))) for a, v in given.items()}
    result = magnitude(public(name)(**given))
    assert result.shape == shape
    flat = {
        a: (type(v)(np.ravel(v.magnitude), v.units) if hasattr(v, "units") else np.ravel(v))
        if np.ndim(magnitude(v))
        else v
        for a, v in given.items()
    }
    assert result.ravel().tolist() == one_by_one(name, flat)


@pytest.mark.parametrize("name", FUNCTIONS)
def test_shapes_are_broadcast(name: str) -> None:
    names = list(example(name))
    if len(names) < 2:
        return
    given = example(name)
    given[names[0]] = given[names[0]] * np.ones((3, 1))
    given[names[1]] = given[names[1]] * np.ones(4)
    assert magnitude(public(name)(**given)).shape == (3, 4)
    given[names[0]] = example(name)[names[0]] * np.ones(3)
    with pytest.raises(InadmissibleError, match="array shapes do not go together: ") as caught:
        public(name)(**given)
    assert f"{names[0]} has (3,)" in str(caught.value)
    assert f"{names[1]} has (4,)" in str(caught.value)


@pytest.mark.parametrize(("name", "argument"), ARGUMENTS)
def test_empty_arrays_give_empty_results(name: str, argument: str) -> None:
    given = example(name)
    result = public(name)(**{**given, argument: given[argument] * np.ones(0)})
    assert magnitude(result).shape == (0,)
    assert hasattr(result, "units") == SIGNATURES[name].result.has_unit


@pytest.mark.parametrize(("name", "argument"), ARGUMENTS)
def test_number_types_do_not_matter(name: str, argument: str) -> None:
    given = example(name)
    expected = magnitude(public(name)(**given))
    value = given[argument]
    kinds: list[Any] = [float, np.float64, np.array]
    if float(magnitude(value)).is_integer():
        kinds += [int, np.int32]
    for kind in kinds:
        bare = kind(magnitude(value))
        same = type(value)(bare, value.units) if hasattr(value, "units") else bare
        result = magnitude(public(name)(**{**given, argument: same}))
        assert np.ndim(result) == 0
        assert result == expected


@pytest.mark.parametrize(("name", "argument"), ARGUMENTS)
def test_nan_rows_are_marked_or_refused_never_silent(name: str, argument: str) -> None:
    given = example(name)
    good = magnitude(public(name)(**given))
    holes = np.array([1.0, np.nan, 1.0])
    given[argument] = given[argument] * holes
    value, status = public(name)(**given, return_status=True, outside_validity="ignore")
    assert status.tolist() == [RowStatus.OK, RowStatus.INADMISSIBLE, RowStatus.OK]
    assert np.isnan(magnitude(value)).tolist() == [False, True, False]
    assert magnitude(value)[[0, 2]].tolist() == [good, good]
    unit = PARAMETERS[argument].unit
    for options in ({}, {"outside_validity": "ignore"}, {"return_status": True}):
        with pytest.raises(InadmissibleError, match=r"row 1 of 3: .* = nan") as caught:
            public(name)(**given, **options)
        if unit:
            assert str(caught.value).endswith(f"; you gave nan {rw.Q(1, unit).units:~C}")


@pytest.mark.parametrize("name", FUNCTIONS)
def test_status_of_a_scalar(name: str) -> None:
    value, status = public(name)(**example(name), return_status=True)
    assert magnitude(value) == magnitude(public(name)(**example(name)))
    assert status is RowStatus.OK
