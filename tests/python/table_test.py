"""The signature table against the compiled core, and the faces against the table."""

from __future__ import annotations

import inspect
import pickle

import pytest
from calls import ARGUMENTS, FUNCTIONS, core, example, public

import ropewalk as rw
from ropewalk import _core
from ropewalk._border import to_si
from ropewalk._signature import PARAMETERS, ROLES, SIGNATURES

CORE = _core.signatures()


def test_the_table_and_the_core_have_the_same_functions() -> None:
    assert sorted(CORE) == FUNCTIONS


@pytest.mark.parametrize("name", FUNCTIONS)
def test_arguments_have_the_names_and_dimensions_of_the_core(name: str) -> None:
    ours = [(a, PARAMETERS[a].role.exponents) for a in SIGNATURES[name].arguments]
    assert ours == CORE[name]["parameters"]
    assert SIGNATURES[name].result.exponents == CORE[name]["result"]


@pytest.mark.parametrize("name", FUNCTIONS)
def test_public_function_has_the_signature_of_the_table(name: str) -> None:
    parameters = inspect.signature(public(name)).parameters
    assert list(parameters) == [
        *SIGNATURES[name].arguments,
        "outside_validity",
        "return_status",
        "threads",
    ]
    assert public(name).__name__ == name.split(".")[1]


@pytest.mark.parametrize("name", FUNCTIONS)
def test_documentation_says_what_the_table_says(name: str) -> None:
    doc = public(name).__doc__ or ""
    positions = [doc.index(f"\n{title}\n---") for title in ("Parameters", "Returns", "Raises")]
    assert positions == sorted(positions)
    for argument in SIGNATURES[name].arguments:
        assert f"\n{argument} : {PARAMETERS[argument].role.name}\n" in doc
        assert PARAMETERS[argument].text in doc
    assert SIGNATURES[name].text in doc
    assert "\nExamples\n--------\n" in doc


@pytest.mark.parametrize(("name", "argument"), ARGUMENTS)
def test_core_names_its_arguments_alike(name: str, argument: str) -> None:
    assert argument in (core(name).__doc__ or "")


@pytest.mark.parametrize("name", FUNCTIONS)
def test_si_is_the_core(name: str) -> None:
    subject, function = name.split(".")
    assert getattr(getattr(rw.si, subject), function) is core(name)


@pytest.mark.parametrize("name", FUNCTIONS)
def test_public_functions_pickle_by_name(name: str) -> None:
    assert pickle.loads(pickle.dumps(public(name))) is public(name)
    assert pickle.loads(pickle.dumps(core(name))) == core(name)


@pytest.mark.parametrize("argument", sorted(PARAMETERS))
def test_example_has_the_unit_of_its_role(argument: str) -> None:
    parameter = PARAMETERS[argument]
    assert parameter.role.has_unit == bool(parameter.unit)
    value = parameter.example_text if parameter.unit else parameter.example
    assert isinstance(to_si("table", argument, value, parameter.role), float)
    assert parameter.text.endswith(".")


@pytest.mark.parametrize("name", FUNCTIONS)
def test_examples_make_a_valid_call(name: str) -> None:
    assert set(SIGNATURES[name].examples) <= set(SIGNATURES[name].arguments)
    _, status = public(name)(**example(name), return_status=True)
    assert status is rw.errors.RowStatus.OK


def test_roles_are_told_apart() -> None:
    with_unit = [role for role in ROLES.values() if role.has_unit]
    assert len({role.exponents for role in with_unit}) == len(with_unit)
    assert all(to_si("roles", "x", f"1 {role.si_unit}", role) == 1.0 for role in with_unit)
