"""Pictures of a life regression. Exported by `ropewalk.plot`."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from matplotlib.axes import Axes

    from ropewalk._fit_result import LifeFit

__all__ = ["life_curve", "life_probability"]

_INK = "#0b3c5d"
_MARK = "#b23a48"
_SHARES = (0.005, 0.02, 0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 0.8, 0.9, 0.95, 0.99)


def product_limit(
    residuals: npt.ArrayLike, failed: npt.ArrayLike
) -> tuple[npt.NDArray[np.float64], npt.NDArray[np.float64]]:
    """Residuals at which rows failed, and the share failed there, half way up each step.

    Source: E. L. Kaplan and P. Meier, J. Amer. Statist. Assoc. 53 (1958).

    >>> at, share = product_limit([0.3, 0.1, 0.2, 0.4], [True, True, False, True])
    >>> share.round(4).tolist()
    [0.125, 0.4375, 0.8125]
    """
    order = np.argsort(residuals, kind="stable")
    r, f = np.asarray(residuals)[order], np.asarray(failed)[order]
    at, share, alive = [], [], 1.0
    for value in np.unique(r[f]):
        left = alive * (1.0 - np.sum(f & (r == value)) / np.sum(r >= value))
        at.append(value)
        share.append(1.0 - 0.5 * (alive + left))
        alive = left
    return np.array(at), np.array(share)


def life_probability(ax: Axes, fit: LifeFit) -> Axes:
    """Draw the residuals of a fit on the probability paper of its distribution.

    If the model holds, points scatter about the line. A point is a failure, at the product-limit
    estimate of the share failed; run-outs have their part in it and no point.

    Parameters
    ----------
    ax
        Axes to draw into.
    fit
        Result of `ropewalk.fit.fit_life`, of failures and run-outs.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.

    Raises
    ------
    InadmissibleError
        If a row is known by an interval: it has no place on the paper.
    """
    where = "plot.life_probability"
    if np.any(fit.known > 1):
        row = int(np.flatnonzero(fit.known > 1)[0])
        text = f"row {row} is known by an interval only and has no place on probability paper"
        raise InadmissibleError(f"{where}(): {text}", where, "fit")
    # Birnbaum and Saunders have the normal distribution under their own ruler.
    paper = "lognormal" if fit.distribution == "birnbaum-saunders" else fit.distribution

    def ruler(share: float) -> float:
        return float(_core.fit.log_quantile(paper, share, 0.0, 0.0)[0])

    residuals, share = product_limit(fit.residuals(), fit.known == 0)
    # Beyond these a double knows no share.
    expected = -np.expm1(-np.clip(residuals, 1e-300, 36.0))
    across = np.array([ruler(min(one, 1.0 - 1e-16)) for one in expected])
    up = np.array([ruler(one) for one in share])
    low, high = min(across.min(), up.min()) - 0.3, max(across.max(), up.max()) + 0.3
    ax.plot([low, high], [low, high], color=_INK, linewidth=1.2, label="the model")
    outs = int(np.sum(fit.known == 1))
    label = f"failures ({len(fit.known) - outs}), {outs} run-outs not drawn"
    ax.plot(across, up, "o", color=_MARK, markersize=4, label=label)
    ticks = [one for one in _SHARES if low <= ruler(one) <= high]
    ax.set_yticks([ruler(one) for one in ticks], [f"{100 * one:g} %" for one in ticks])
    ax.set_xlim(low, high)
    ax.set_ylim(low, high)
    ax.set_xlabel("standardized ln life [1]")
    ax.set_ylabel("share failed")
    ax.set_title(f"{fit.distribution}, {fit.failures} failures in {fit.rows} rows", fontsize=9)
    ax.legend(loc="upper left", framealpha=0.9, fontsize=8)
    ax.set_axisbelow(True)
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    return ax


def life_curve(
    ax: Axes,
    fit: LifeFit,
    column: str,
    values: Any,
    *,
    at: Mapping[str, Any] | None = None,
    shares: Sequence[float] = (0.1, 0.5, 0.9),
    points: Any = None,
) -> Axes:
    """Draw life against one column: a curve for each share failed, and the rows of the table.

    Parameters
    ----------
    ax
        Axes to draw into.
    fit
        Result of `ropewalk.fit.fit_life`.
    column
        Column to go through.
    values
        Its values, as numbers or a quantity; the table must reach there.
    at
        Values of the other columns.
    shares
        Shares failed.
    points
        Values of the column in the rows of the table, in the unit of `values`; none are drawn if
        left out. Run-outs are hollow.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    unit = getattr(values, "units", None)
    numbers = np.ravel(np.asarray(getattr(values, "magnitude", values), dtype=float))
    each = [one if unit is None else type(values)(float(one), unit) for one in numbers]
    styles = ("--", "-", "-.", ":")
    for k, share in enumerate(shares):
        lives = [fit.quantile(share, {**(at or {}), column: one}) for one in each]
        ax.plot(
            [float(getattr(one, "magnitude", one)) for one in lives],
            numbers,
            color=_INK,
            linestyle=styles[k % len(styles)],
            label=f"{100 * share:g} % failed",
        )
    if points is not None:
        there = points.to(unit).magnitude if unit is not None else np.asarray(points, dtype=float)
        drawn = np.asarray(getattr(fit.lives, "magnitude", fit.lives), dtype=float)
        for known, face, text in ((0, _MARK, "failed"), (1, "none", "run-out")):
            rows = fit.known == known
            if rows.any():
                ax.plot(
                    drawn[rows],
                    there[rows],
                    "o",
                    color=_MARK,
                    markerfacecolor=face,
                    markersize=4,
                    label=text,
                )
    ax.set_xscale("log")
    ax.set_xlabel(f"{fit.life} [{_unit_of(fit.lives)}]")
    ax.set_ylabel(f"{column} [{f'{unit:~}' if unit is not None else 1}]")
    ax.legend(loc="upper right", framealpha=0.9, fontsize=8)
    ax.set_axisbelow(True)
    ax.grid(visible=True, which="both", color="#dddddd", linewidth=0.6)
    return ax


def _unit_of(life: Any) -> str:
    return f"{life.units:~}" if hasattr(life, "units") else "1"
