"""Life models outside their published range, and with arguments that cannot be."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from fatigue_examples import BEND, MODELS, REFERENCE

import ropewalk as rw
from ropewalk import fatigue
from ropewalk.errors import (
    InadmissibleError,
    RowStatus,
    UnitError,
    UnknownEntryError,
    ValidityError,
    ValidityWarning,
)

# Outside the published range


def test_policies() -> None:
    model = fatigue.DruckerTachau()
    with pytest.raises(ValidityError, match=r"pressure_ratio = 0\.005.* is outside \[0\.0014"):
        model.cycles(**BEND)
    with pytest.warns(ValidityWarning, match="pressure_ratio"):
        warned = model.cycles(**BEND, outside_validity="warn")
    ignored = model.cycles(**BEND, outside_validity="ignore")
    assert warned.cycles == ignored.cycles
    assert ignored.status is RowStatus.OUTSIDE_VALIDITY
    assert "outside the published range" in repr(ignored)
    tensions = rw.Q(np.array([30.0, 100.0]), "kN")
    with pytest.raises(ValidityError, match="row 1 of 2"):
        model.cycles(**{**BEND, "rope_tension": tensions})
    life = model.cycles(**{**BEND, "rope_tension": tensions}, outside_validity="ignore")
    assert life.status.tolist() == [0, RowStatus.OUTSIDE_VALIDITY]
    assert repr(life).startswith("<Life: 2 lives to breakage, 1 of them outside")


def test_a_row_that_cannot_be_has_no_life_and_says_so() -> None:
    tensions = rw.Q(np.array([30.0, -1.0, np.nan]), "kN")
    model = MODELS["PowerLaw"]
    with pytest.raises(InadmissibleError, match="row 1 of 3: rope_tension = -1000 N"):
        model.cycles(**{**BEND, "rope_tension": tensions})
    life = model.cycles(**{**BEND, "rope_tension": tensions}, outside_validity="ignore")
    assert life.status.tolist() == [0, RowStatus.INADMISSIBLE, RowStatus.INADMISSIBLE]
    assert np.isnan(life.cycles).tolist() == [False, True, True]


def test_a_fitted_range_is_held() -> None:
    model = fatigue.PowerLaw(0.25, 2.3, basis="discard", fitted_over=(0.001, 0.004))
    with pytest.raises(ValidityError, match="range of the fit, as the user gave it"):
        model.cycles(**BEND)
    assert model.describe().validity[0].standing == "given"


# Bad input


def test_scatter_is_not_published() -> None:
    life = MODELS["PowerLaw"].cycles(**BEND)
    with pytest.raises(InadmissibleError, match="scatter of life is not published"):
        life.band(0.8)
    known = fatigue.PowerLaw(0.25, 2.3, basis="discard", scatter=0.2).cycles(**BEND)
    for probability in (0.0, 1.0, -0.1, float("nan")):
        with pytest.raises(InadmissibleError, match="between 0 and 1"):
            known.band(probability)
        with pytest.raises(InadmissibleError, match="between 0 and 1"):
            known.quantile(probability)


@pytest.mark.parametrize(
    ("make", "error", "text"),
    [
        (lambda: fatigue.PowerLaw(-1.0, 2.0, basis="discard"), InadmissibleError, "scale"),
        (lambda: fatigue.PowerLaw("3 m", 2.0, basis="discard"), UnitError, "scale"),
        (lambda: fatigue.PowerLaw([1.0, 2.0], 2.0, basis="discard"), InadmissibleError, "one"),
        (lambda: fatigue.PowerLaw(1.0, 2.0, basis="wear"), UnknownEntryError, "'discard'"),
        (lambda: fatigue.PowerLaw(1.0, 2.0, basis=3), UnitError, "basis must be text"),
        (lambda: fatigue.DruckerTachau(scatter=0.0), InadmissibleError, "scatter"),
        (lambda: fatigue.En13001(0.0), InadmissibleError, "further_influences"),
        (
            lambda: fatigue.En81(**{**REFERENCE, "reference_tension": 100.0}),
            UnitError,
            "reference_tension must be a force with a unit",
        ),
        (
            lambda: fatigue.En81(**{**REFERENCE, "reference_life": -1}),
            InadmissibleError,
            "reference_life = -1",
        ),
        (
            lambda: fatigue.HandbookRelativeLife(**REFERENCE, tension_exponent=0.0),
            InadmissibleError,
            "tension_exponent",
        ),
        (
            lambda: MODELS["PowerLaw"].cycles(**{**BEND, "rope_tension": 100.0}),
            UnitError,
            "rope_tension must be a force with a unit",
        ),
        (
            lambda: MODELS["PowerLaw"].cycles(**{**BEND, "rope_diameter": "0 mm"}),
            InadmissibleError,
            r"rope_diameter = 0 m is outside \(0, 1\] m",
        ),
        (
            lambda: MODELS["PowerLaw"].cycles(**BEND, outside_validity="maybe"),
            InadmissibleError,
            "outside_validity",
        ),
        (lambda: MODELS["PowerLaw"].cycles(**BEND, threads=0), InadmissibleError, "threads"),
        (
            lambda: fatigue.BendPoint(rope_tension=rw.Q([1.0, 2.0], "kN")),
            InadmissibleError,
            "a point is one bend",
        ),
    ],
)
def test_bad_input_is_named(make: Any, error: type[Exception], text: str) -> None:
    with pytest.raises(error, match=text):
        make()
