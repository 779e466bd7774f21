"""Importing ropewalk is cheap, loads nothing it does not need, and changes nothing elsewhere."""

from __future__ import annotations

import copy
import pickle
import subprocess
import sys

import pytest

import ropewalk as rw
from ropewalk import errors

HEAVY = ("pint", "matplotlib", "xarray", "pandas", "pydantic", "scipy", "rich", "click")


def run(code: str) -> str:
    done = subprocess.run(
        [sys.executable, "-c", code], check=True, capture_output=True, text=True, timeout=120
    )
    return done.stdout.strip()


def test_import_loads_nothing_heavy() -> None:
    loaded = run(f"import sys, ropewalk; print([m for m in {HEAVY} if m in sys.modules])")
    assert loaded == "[]"


def test_subjects_load_neither_tables_nor_plots() -> None:
    heavy = ("matplotlib", "xarray", "pandas", "pydantic", "hypothesis")
    code = (
        "import sys, ropewalk as rw; rw.sheave.bearing_pressure('1 kN', '10 mm', '1 m');"
        f"print([m for m in {heavy} if m in sys.modules])"
    )
    assert run(code) == "[]"


def test_plain_si_numbers_do_not_load_pint() -> None:
    code = (
        "import sys, ropewalk as rw; x = rw.si.sheave.bearing_pressure(1e3, 0.01, 1.0);"
        "print(x, 'pint' in sys.modules)"
    )
    assert run(code) == "200000.0 False"


def test_import_changes_no_state_outside() -> None:
    code = """
import logging, warnings, sys, numpy, pint
before = (list(warnings.filters), pint.get_application_registry().get(), numpy.geterr(),
          logging.root.handlers[:], sys.getswitchinterval(), sys.excepthook)
import ropewalk as rw
rw.sheave, rw.si.sheave, rw.errors
after = (list(warnings.filters), pint.get_application_registry().get(), numpy.geterr(),
         logging.root.handlers[:], sys.getswitchinterval(), sys.excepthook)
print(before == after, type(after[1]).__name__)
"""
    assert run(code) == "True LazyRegistry"


@pytest.mark.parametrize("name", rw.__all__)
def test_every_public_name_is_there(name: str) -> None:
    assert getattr(rw, name) is not None
    assert name in dir(rw)


def test_names_that_are_not_there() -> None:
    with pytest.raises(AttributeError, match="module 'ropewalk' has no attribute 'rope_drive'"):
        rw.rope_drive  # noqa: B018 - the attribute is the test
    with pytest.raises(AttributeError, match=r"module 'ropewalk\.si' has no attribute 'moon'"):
        rw.si.moon  # noqa: B018 - the attribute is the test


@pytest.mark.parametrize("name", [n for n in errors.__all__ if n.endswith("Error")])
def test_errors_survive_pickling_and_copying(name: str) -> None:
    error = getattr(errors, name)("a.b(): c is wrong", "a.b", "c")
    for twin in (pickle.loads(pickle.dumps(error)), copy.copy(error), copy.deepcopy(error)):
        assert type(twin) is type(error)
        assert (str(twin), twin.where, twin.field) == ("a.b(): c is wrong", "a.b", "c")
        assert isinstance(twin, errors.RopewalkError)


def test_errors_are_the_built_in_kinds_callers_expect() -> None:
    assert issubclass(errors.UnitError, TypeError)
    assert issubclass(errors.InadmissibleError, ValueError)
    assert issubclass(errors.ValidityError, ValueError)
    assert issubclass(errors.UnknownEntryError, LookupError)
    assert issubclass(errors.ValidityWarning, UserWarning)
