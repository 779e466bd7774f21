"""Pictures of rainflow counting. Exported by `ropewalk.plot`."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ropewalk._border import to_quantity

if TYPE_CHECKING:
    from matplotlib.axes import Axes

    from ropewalk._rainflow_cycles import Cycles
    from ropewalk._units import QuantityLike

__all__ = ["rainflow_matrix", "range_histogram"]

_INK = "#0b3c5d"
_MARK = "#b23a48"


def range_histogram(
    ax: Axes,
    cycles: Cycles,
    *,
    bins: int | QuantityLike = 32,
    exponent: float | None = None,
    unit: str = "kip",
) -> Axes:
    """Draw how many cycles there are of each range, on a logarithmic axis.

    Parameters
    ----------
    ax
        Axes to draw into.
    cycles
        Result of `ropewalk.rainflow.count`.
    bins
        As for `Cycles.histogram`.
    exponent
        Exponent for which the equivalent range is marked; none if left out.
    unit
        Unit of the ranges.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    found = cycles.histogram(bins)
    ax.stairs(found.counts, found.edges.to(unit).magnitude, fill=True, color=_INK, label="cycles")
    if exponent is not None:
        equivalent = cycles.equivalent_range(exponent).to(unit).magnitude
        ax.axvline(
            equivalent,
            color=_MARK,
            linestyle="--",
            label=f"equivalent range {equivalent:.3g} {unit}, exponent {exponent:g}",
        )
    ax.set_yscale("log")
    # Half a cycle is the least there is; above, room for the legend.
    ax.set_ylim(0.4, 8.0 * max(1.0, float(found.counts.max())))
    ax.set_xlabel(f"range of tension [{unit}]")
    ax.set_ylabel("cycles [1]")
    ax.legend(loc="upper right", framealpha=0.9, fontsize=8)
    ax.set_axisbelow(True)
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    return ax


def rainflow_matrix(
    ax: Axes,
    cycles: Cycles,
    *,
    range_bins: int | QuantityLike = 24,
    mean_bins: int | QuantityLike = 24,
    unit: str = "kip",
) -> Axes:
    """Draw how many cycles there are of each range and mean, darker where there are more.

    Parameters
    ----------
    ax
        Axes to draw into.
    cycles
        Result of `ropewalk.rainflow.count`.
    range_bins, mean_bins
        As for `Cycles.matrix`.
    unit
        Unit of both axes.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    from matplotlib.colors import LogNorm

    found = cycles.matrix(range_bins, mean_bins)
    factor = to_quantity(1.0, "force").to(unit).magnitude
    drawn = ax.pcolormesh(
        found.mean_edges_si * factor,
        found.range_edges_si * factor,
        np.ma.masked_equal(found.counts, 0.0),
        # From below half a cycle, which would else be white on white.
        norm=LogNorm(vmin=0.1, vmax=max(1.0, float(found.counts.max()))),
        cmap="Greys",
        edgecolor="#eeeeee",
        linewidth=0.2,
    )
    ax.figure.colorbar(drawn, ax=ax, label="cycles [1]")
    ax.set_xlabel(f"mean tension [{unit}]")
    ax.set_ylabel(f"range of tension [{unit}]")
    return ax
