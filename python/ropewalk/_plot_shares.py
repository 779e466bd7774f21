"""Pictures of who did the damage: shares by sheave and by operation."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ropewalk._plot_common import shade_of

if TYPE_CHECKING:
    import xarray as xr
    from matplotlib.axes import Axes

    from ropewalk.line import LineHistory


def share_by_sheave(ax: Axes, history: LineHistory) -> Axes:
    """Draw the share of each sheave and drum layer in the damage by bending.

    Parameters
    ----------
    ax
        Axes to draw into.
    history
        Result of `ropewalk.run_line`.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from matplotlib.figure import Figure
    >>> history = rw.run_line(rw.load_rig(rw.rig.example("rig7")), outside_validity="ignore")
    >>> rw.plot.share_by_sheave(Figure().subplots(), history).get_xlabel()
    'share of the damage by bending [%]'
    """
    return _shares(ax, history.share_by_sheave, "share of the damage by bending [%]")


def share_by_operation(ax: Axes, history: LineHistory) -> Axes:
    """Draw the share of each operation of the campaign in all damage.

    Arguments and result as in `share_by_sheave`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from matplotlib.figure import Figure
    >>> history = rw.run_line(rw.load_rig(rw.rig.example("rig7")), outside_validity="ignore")
    >>> rw.plot.share_by_operation(Figure().subplots(), history).get_xlabel()
    'share of the damage [%]'
    """
    return _shares(ax, history.share_by_operation, "share of the damage [%]")


def _shares(ax: Axes, share: xr.DataArray, label: str) -> Axes:
    names = [str(name) for name in share[share.dims[0]].to_numpy()]
    values = 100.0 * share.to_numpy()
    bars = ax.barh(
        np.arange(len(names)),
        values,
        color=[shade_of(name) for name in names],
        edgecolor="#333333",
        linewidth=0.6,
        height=0.78,
    )
    ax.bar_label(bars, [f"{value:.1f} %" for value in values], padding=3, fontsize=7)
    ax.set_yticks(np.arange(len(names)), names, fontsize=7.5)
    ax.invert_yaxis()
    ax.set_xlim(0.0, 1.15 * max(values.max(), 1e-9))
    ax.set_xlabel(label)
    ax.grid(visible=True, axis="x", color="#dddddd", linewidth=0.6)
    ax.set_axisbelow(True)
    return ax
