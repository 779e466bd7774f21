"""What the Python tests share."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import hypothesis
import pint
import pytest

# No test is timed: the first example of a file may have to load what it uses.
hypothesis.settings.register_profile("untimed", deadline=None)
hypothesis.settings.load_profile("untimed")


@pytest.fixture(scope="session")
def foreign() -> Any:
    """A registry of another program, without the units ropewalk adds to its own."""
    return pint.UnitRegistry()


@pytest.fixture
def application_registry() -> Iterator[Any]:
    """The application registry, put back after the test."""
    untyped: Any = pint
    before = untyped.get_application_registry().get()
    yield untyped.get_application_registry()
    untyped.set_application_registry(before)
