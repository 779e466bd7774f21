"""Life regression where it is not to be trusted, and what is refused with column and row."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from fit_tables import drawn, fit_superalloy, superalloy
from matplotlib.figure import Figure

import ropewalk as rw
from ropewalk import plot
from ropewalk._plot_fit import product_limit
from ropewalk.errors import (
    InadmissibleError,
    UnitError,
    UnknownEntryError,
    ValidityError,
    ValidityWarning,
)

LIVES = [17.9, 28.9, 33.0, 41.5, 42.1, 45.6]


def test_too_few_failures_are_told() -> None:
    fit = rw.fit.fit_life({"life": [10.0, 20.0, 30.0]}, life="life")
    assert fit.converged
    assert not fit.valid
    assert "too few failures: 3 for 2 parameters" in fit.doubts[0]
    assert "1 doubts" in repr(fit)
    assert rw.fit.fit_life({"life": [10.0, 20.0, 30.0, 35.0]}, life="life").valid


def test_a_level_without_failures_is_told() -> None:
    table = rw.fit.life_table(
        life=LIVES + [50.0] * 3, out=[0] * 6 + [1] * 3, lay=["regular"] * 6 + ["lang"] * 3
    )
    fit = rw.fit.fit_life(table, life="life", censored="out", on=rw.fit.Level("lay", "lang"))
    assert not fit.valid
    assert not fit.converged
    assert any("no row where lay is lang has failed" in one for one in fit.doubts)
    assert any("the likelihood does not fall in some direction" in one for one in fit.doubts)
    for call in (
        lambda: fit.standard_errors,
        fit.intervals,
        fit.bootstrap,
        fit.residuals,
        lambda: fit.quantile(0.5, {"lay": "regular"}),
    ):
        with pytest.raises(InadmissibleError, match="found no maximum to stand on: separation"):
            call()
    assert list(fit.summary().columns) == ["estimate"]


def test_scatter_that_runs_to_zero_is_told() -> None:
    fit = rw.fit.fit_life({"life": [10.0] * 5}, life="life", distribution="lognormal")
    assert any("parameter at its bound" in one for one in fit.doubts)


def test_refits_that_find_nothing_are_counted() -> None:
    # Two failures: a refit that draws one of them only has no scatter.
    refits = rw.fit.fit_life({"life": [10.0, 20.0]}, life="life").bootstrap(refits=200)
    # Half of the refits draw one of them twice: 100, deviation 7.
    assert 65 < refits.failed < 135
    assert len(refits.parameters) == 200 - refits.failed
    assert np.isfinite(refits.parameters).all()
    with pytest.raises(InadmissibleError, match="of 200 refits found no maximum"):
        refits.percentiles()


@pytest.mark.parametrize(
    ("change", "error", "message"),
    [
        ({"life": "lives"}, UnknownEntryError, "no column 'lives'; there are 'life', 'run_out'"),
        ({"censored": "stress"}, InadmissibleError, "column 'stress', row 0: must be True"),
        ({"on": ["stress"]}, UnitError, "has the unit ksi, but its reference has none"),
        ({"on": [rw.fit.Log("stress", "30 kip")]}, UnitError, "is in ksi, its reference in kip"),
        ({"on": [rw.fit.Log("stress", "-1 ksi")]}, InadmissibleError, "must be positive"),
        ({"on": [rw.fit.Log("run", 2.0)]}, UnknownEntryError, "no column 'run'"),
        ({"on": [3]}, UnitError, "on must be names of columns or terms"),
        ({"on": [rw.fit.Log("life"), rw.fit.Log("life")]}, InadmissibleError, "is collinear"),
        ({"distribution": "gumbel"}, UnknownEntryError, "there are weibull, lognormal"),
        ({"distribution": 3}, UnitError, "distribution must be text"),
        ({"life_reference": "1 ft"}, UnitError, "column 'life' has no unit, but its reference"),
        ({"life_reference": 0.0}, InadmissibleError, "must be positive and finite"),
    ],
)
def test_nonsense_is_refused(change: dict[str, Any], error: type[Exception], message: str) -> None:
    with pytest.raises(error, match=message):
        fit_superalloy(**change)


@pytest.mark.parametrize(
    ("column", "value", "message"),
    [
        ("life", np.nan, "column 'life', row 3: nan is no finite number"),
        ("life", -2.0, "column 'life', row 3: a life must be positive"),
        ("life", "many", "column 'life', row 3: must be a plain number, got 'many'"),
        ("life", True, "column 'life', row 3: must be a plain number, got True"),
        ("stress [ksi]", np.inf, "column 'stress', row 3: inf is no finite number"),
        ("stress [ksi]", 0.0, "column 'stress', row 3: must be positive to have a logarithm"),
        ("run_out", None, "column 'run_out', row 3: must be True"),
    ],
)
def test_bad_cells_are_named(column: str, value: Any, message: str) -> None:
    table: dict[str, Any] = {name: list(values) for name, values in superalloy().items()}
    table[column][3] = value
    with pytest.raises((InadmissibleError, UnitError), match=message):
        rw.fit.fit_life(table, life="life", censored="run_out", on=rw.fit.Log("stress", "100 ksi"))


def test_more_refusals() -> None:
    with pytest.raises(InadmissibleError, match="no row has failed"):
        rw.fit.fit_life({"life": LIVES, "out": [1] * 6}, life="life", censored="out")
    with pytest.raises(InadmissibleError, match="the same number of rows"):
        rw.fit.fit_life({"life": LIVES, "out": [1]}, life="life", censored="out")
    with pytest.raises(InadmissibleError, match="same in every row"):
        rw.fit.fit_life({"life": LIVES, "x": [2.0] * 6}, life="life", on="x")
    with pytest.raises(InadmissibleError, match="life_to must name the column"):
        rw.fit.fit_life(
            {"life": LIVES, "kind": ["no"] * 5 + ["interval"]}, life="life", censored="kind"
        )
    with pytest.raises(InadmissibleError, match="row 5: the interval of a life must end after"):
        rw.fit.fit_life(
            {"life": LIVES, "kind": ["no"] * 5 + ["interval"], "to": LIVES},
            life="life",
            life_to="to",
            censored="kind",
        )
    with pytest.raises(UnitError, match="table must be a DataFrame or a mapping"):
        rw.fit.fit_life([1.0, 2.0], life="life")  # type: ignore[arg-type]
    with pytest.raises(InadmissibleError, match="table has no columns"):
        rw.fit.fit_life({}, life="life")
    with pytest.raises(InadmissibleError, match="power must be a whole number from 1"):
        rw.fit.Log("stress", "1 ksi", 0)
    fit = fit_superalloy()
    for options, message in (
        ({"confidence": 1.0}, "confidence = 1.0 is outside"),
        ({"method": "exact"}, "must be 'wald', 'profile' or 'bootstrap'"),
        ({"method": "bootstrap", "refits": 0}, "refits must be a whole number from 1"),
        ({"method": "bootstrap", "threads": 0}, "threads must be from 1"),
    ):
        with pytest.raises(InadmissibleError, match=message):
            fit.intervals(**options)  # type: ignore[arg-type]
    with pytest.raises(InadmissibleError, match="run_out is for parametric refits"):
        fit.bootstrap(run_out=300.0)
    with pytest.raises(InadmissibleError, match="lies before a failure of the table"):
        fit.bootstrap(parametric=True, run_out=100.0)


def test_the_core_refuses_units() -> None:
    ones = np.ones((2, 1))
    with pytest.raises(UnitError, match="log_life must be plain numbers"):
        rw.si.fit.Table("weibull", rw.Q([1.0, 2.0], "kip"), [1.0, 2.0], [0, 0], ones, ones)


def test_levels_that_the_table_has_not() -> None:
    table = rw.fit.life_table(life=[*LIVES, 50.0, 60.0, 75.0], lay=["regular"] * 6 + ["lang"] * 3)
    fit = rw.fit.fit_life(table, life="life", on=rw.fit.Level("lay", "lang"))
    assert fit.quantile(0.5, {"lay": "lang"}) > fit.quantile(0.5, {"lay": "regular"})
    with pytest.raises(ValidityError, match="lay = other is outside the table, which has regular"):
        fit.quantile(0.5, {"lay": "other"})
    lay = ["a", "b", None, "a", "b", "a"]
    with pytest.raises(InadmissibleError, match="column 'lay', row 2: a level is missing"):
        rw.fit.fit_life({"life": LIVES, "lay": lay}, life="life", on=rw.fit.Level("lay", "b"))


def test_outside_the_table_as_the_caller_says() -> None:
    fit = fit_superalloy()
    with pytest.raises(ValidityError, match="stress = 60 ksi is outside the table, which reaches"):
        fit.quantile(0.5, {"stress": "60 ksi"})
    with pytest.warns(ValidityWarning, match="which reaches from 0.803 to 1.459 times 100 ksi"):
        warned = fit.quantile(0.5, {"stress": "60 ksi"}, outside_validity="warn")
    assert warned == fit.quantile(0.5, {"stress": "60 ksi"}, outside_validity="ignore")
    with pytest.raises(InadmissibleError, match="at must have a value for the column 'stress'"):
        fit.quantile(0.5)
    with pytest.raises(InadmissibleError, match="probability = 0 is outside"):
        fit.quantile(0, {"stress": "100 ksi"})
    with pytest.raises(UnitError, match="has no unit, but its reference"):
        fit.quantile(0.5, {"stress": 100.0})


# Pictures


def test_product_limit_by_hand() -> None:
    # Kaplan and Meier: 5 rows, one run-out between: 4/5, then 4/5 · 2/3.
    at, share = product_limit([1.0, 2.0, 3.0, 4.0, 4.0], [True, False, True, False, False])
    np.testing.assert_allclose(at, [1.0, 3.0])
    np.testing.assert_allclose(share, [0.1, 1.0 - 0.5 * (0.8 + 0.8 * 2 / 3)])


@pytest.mark.parametrize("distribution", ["weibull", "lognormal", "birnbaum-saunders"])
def test_probability_paper_has_a_point_for_each_failure(distribution: str) -> None:
    ax = Figure().subplots()
    fit = rw.fit.fit_life(
        drawn(1, 400, distribution, (5.0, -3.0, 0.4), 700.0),
        life="life",
        censored="run_out",
        on=rw.fit.Log("tension", "30 kip"),
        distribution=distribution,
    )
    assert plot.life_probability(ax, fit) is ax
    x, y = (np.asarray(one, dtype=float) for one in ax.lines[1].get_data())
    assert len(x) == fit.failures
    # The truth was drawn from: points lie on the line but for the ends.
    middle = slice(fit.failures // 10, -fit.failures // 10)
    assert np.abs(x - y)[middle].max() < 0.35
    assert np.all(np.diff(x) > 0.0)
    assert np.all(np.diff(y) > 0.0)


def test_curves_are_the_quantiles() -> None:
    ax = Figure().subplots()
    fit, table = fit_superalloy(), superalloy()
    stress = rw.Q(np.linspace(81.0, 145.0, 9), "ksi")
    points = rw.Q(table["stress [ksi]"].to_numpy(), "ksi").to("MPa")
    assert plot.life_curve(ax, fit, "stress", stress, points=points) is ax
    lives, height = (np.asarray(one, dtype=float) for one in ax.lines[1].get_data())
    assert lives[3] == pytest.approx(fit.quantile(0.5, {"stress": stress[3]}))
    assert height.tolist() == stress.magnitude.tolist()
    assert ax.get_ylabel() == "stress [ksi]"
    drawn_lives = np.concatenate([np.asarray(line.get_xdata()) for line in ax.lines[3:]])
    np.testing.assert_allclose(np.sort(drawn_lives), np.sort(table["life"]))
    assert [len(line.get_xdata()) for line in ax.lines[3:]] == [22, 4]


def test_intervals_have_no_place_on_paper() -> None:
    table = {"life": LIVES, "kind": ["no"] * 5 + ["left"]}
    fit = rw.fit.fit_life(table, life="life", censored="kind")
    with pytest.raises(InadmissibleError, match="row 5 is known by an interval only"):
        plot.life_probability(Figure().subplots(), fit)
    assert math.isfinite(fit.residuals()[5])
