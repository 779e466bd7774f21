"""The function `fit_life`. Exported by `ropewalk.fit`."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk import _core
from ropewalk._fit_result import Core, LifeFit
from ropewalk._fit_table import column_of, known_of, ratios, rows_of
from ropewalk._fit_terms import Level, Term, matrix_of, terms_of
from ropewalk._names import to_name
from ropewalk._units import QuantityLike
from ropewalk.errors import InadmissibleError, UnitError

if TYPE_CHECKING:
    import pandas as pd

__all__ = ["fit_life"]

_WHERE = "fit.fit_life"
#: Failures more than parameters below which standard errors mean little.
_LEAST_SPARE = 2
_ENDS = {
    1: "not converged: the likelihood has no maximum within 200 steps",
    2: "separation: the likelihood does not fall in some direction, so that a parameter runs away "
    "or there are more parameters than the table can tell apart",
    3: "parameter at its bound: the scatter runs to 0 or without limit, as when a curve goes "
    "through all failures",
}


def fit_life(
    table: pd.DataFrame | Mapping[str, Any],
    *,
    life: str,
    censored: str | None = None,
    life_to: str | None = None,
    on: Sequence[str | Term] | str | Term = (),
    distribution: str = "weibull",
    scale_on: Sequence[str | Term] | str | Term = (),
    life_reference: QuantityLike | float = 1.0,
) -> LifeFit:
    r"""Fit life against covariates by maximum likelihood, run-outs and intervals included.

    .. math::
        \ln N = \mu + \sigma \varepsilon, \quad
        \mu = \beta_0 + \sum \beta_k x_k, \quad
        \ln \sigma = \gamma_0 + \sum \gamma_k v_k

    with ε of the smallest extreme value (Weibull, shape 1/σ), normal (lognormal) or logistic
    distribution. For Birnbaum–Saunders exp μ is the median and σ the shape α:
    :math:`(2/\sigma) \sinh((\ln N - \mu)/2)` is normal. A failure counts with its density, a
    run-out with the probability to live longer, an interval with its own probability. Newton's
    method with exact derivatives; standard errors from the observed information.

    Source: W. Nelson, Accelerated Testing (1990), ch. 5; W. Q. Meeker and L. A. Escobar,
    Statistical Methods for Reliability Data (1998), ch. 17 (from memory); J. R. Rieck and J. R.
    Nedelman, Technometrics 33 (1991) (from memory).

    Parameters
    ----------
    table : DataFrame or mapping
        Columns of one length. A column with a unit is a quantity, or has it in its name:
        ``stress [ksi]`` is then called ``stress``.
    life : str
        Column of lives; where an interval begins.
    censored : str, optional
        Column that says what is known: True for a run-out, False for a failure; or ``"no"``,
        ``"right"`` (run-out), ``"left"`` (had failed before `life`, unseen), ``"interval"``. All
        have failed if left out.
    life_to : str, optional
        Column where intervals end; needed if there are any.
    on : terms
        `Log`, `Ratio` or `Level` of columns; a name alone is a column of plain numbers as it
        stands. There is always an intercept.
    distribution : {"weibull", "lognormal", "loglogistic", "birnbaum-saunders"}
        Distribution of life.
    scale_on : terms
        Terms that ln σ depends on; σ is the same for all rows if left out.
    life_reference : number or quantity, default 1
        What lives are divided by; a quantity if they have a unit.

    Returns
    -------
    LifeFit
        Also where the fit is not to be trusted: `valid` and `doubts` tell.

    Raises
    ------
    InadmissibleError
        For values that cannot be, with column and row; if no row has failed; if a term is
        collinear with others.
    UnitError
        If a unit is missing or belongs to another kind of quantity.
    UnknownEntryError
        If there is no such column or distribution.

    Examples
    --------
    >>> import ropewalk as rw
    >>> table = rw.fit.life_table(
    ...     life=[900, 1100, 210, 260, 300, 58, 70, 81],
    ...     run_out=[True, False, False, False, False, False, False, False],
    ...     **{"tension [kip]": [20, 20, 30, 30, 30, 45, 45, 45]},
    ... )
    >>> fit = rw.fit.fit_life(
    ...     table, life="life", censored="run_out", on=[rw.fit.Log("tension", "30 kip")]
    ... )
    >>> fit.valid
    True
    >>> print(f"life falls with the power {-fit.parameters['ln(tension / 30 kip)']:.1f}")
    life falls with the power 3.3
    """
    columns = _columns(table)
    for field, name in (("life", life), ("distribution", distribution)):
        to_name(_WHERE, field, name)
    rows = rows_of(_WHERE, columns)
    known = known_of(_WHERE, columns, censored, rows)
    log_life = _log_life(columns, life, life_reference)
    log_life_to = log_life.copy()
    if 3 in known:
        if life_to is None:
            text = "a row is known by an interval: life_to must name the column where it ends"
            raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "life_to")
        ends = _log_life(columns, life_to, life_reference, only=np.array(known) == 3)
        log_life_to[np.array(known) == 3] = ends
    location, scale = terms_of("on", on), terms_of("scale_on", scale_on)
    x = matrix_of("on", location, columns, rows)
    v = matrix_of("scale_on", scale, columns, rows)
    core = _core.fit.Table(distribution, log_life, log_life_to, known, x, v)
    maximum = core.maximize()
    failures = sum(one != 1 for one in known)
    count = 2 + len(location) + len(scale)
    doubts = [_ENDS[maximum.end]] if maximum.end else []
    if failures < count + _LEAST_SPARE:
        doubts.append(
            f"too few failures: {failures} for {count} parameters, {count + _LEAST_SPARE} are the "
            "least from which standard errors mean something (common practice, no source)"
        )
    doubts += _levels_without_failures((*location, *scale), columns, known)
    return LifeFit(
        distribution=distribution,
        life=life,
        life_reference=life_reference,
        location=location,
        scale=scale,
        estimates=maximum.parameters,
        covariance=maximum.covariance,
        log_likelihood=float(maximum.log_likelihood - log_life[np.array(known) == 0].sum()),
        failures=failures,
        rows=rows,
        iterations=maximum.iterations,
        doubts=tuple(doubts),
        log_life=log_life,
        log_life_to=log_life_to,
        known=np.array(known),
        reach=_reach((*location, *scale), columns),
        converged=maximum.end == 0,
        mu=x @ maximum.parameters[: x.shape[1]],
        ln_sigma=v @ maximum.parameters[x.shape[1] :],
        core=Core(core, maximum),
    )


def _columns(table: Any) -> Mapping[str, Any]:
    if not hasattr(table, "keys") or not hasattr(table, "__getitem__"):
        text = f"table must be a DataFrame or a mapping of columns, got {type(table).__name__}"
        raise UnitError(f"{_WHERE}(): {text}", _WHERE, "table")
    columns = {str(name): table[name] for name in table.keys()}  # noqa: SIM118 (DataFrame)
    if not columns:
        _refuse("table", "table has no columns")
    return columns


def _log_life(columns: Mapping[str, Any], name: str, reference: Any, only: Any = None) -> Any:
    values, unit = column_of(_WHERE, columns, name)
    if only is not None:  # other rows may be empty there
        values = (values if hasattr(values, "magnitude") else np.asarray(values))[only]
        key = f"{name} [{unit}]" if unit and name not in columns else name
        columns = {key: values}
    found = ratios(_WHERE, columns, name, reference)
    bad = np.flatnonzero(found <= 0.0)
    if bad.size:
        _refuse(name, f"column {name!r}, row {bad[0]}: a life must be positive (definition)")
    return np.log(found)


def _levels_without_failures(
    terms: Sequence[Term], columns: Mapping[str, Any], known: Sequence[int]
) -> list[str]:
    failed = np.array(known) != 1
    doubts = []
    for term in dict.fromkeys(terms):
        if not isinstance(term, Level):
            continue
        there = term.values(columns) == 1.0
        for rows, text in ((there, str(term)), (~there, f"not {term}")):
            if not failed[rows].any():
                doubts.append(f"separation: no row where {text} has failed")
    return doubts


def _reach(terms: Sequence[Term], columns: Mapping[str, Any]) -> tuple[tuple[Any, ...], ...]:
    """Of each term the least and the largest spot, or all levels."""
    found: list[tuple[Any, ...]] = []
    for term in terms:
        spots = term.spots(columns)
        levels = isinstance(term, Level)
        found.append(tuple(dict.fromkeys(spots)) if levels else (min(spots), max(spots)))
    return tuple(found)


def _refuse(field: str, reason: str) -> None:
    raise InadmissibleError(f"{_WHERE}(): {reason}", _WHERE, field)
