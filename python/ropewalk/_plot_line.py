"""Pictures of a line: damage along the rope with what reaches it, and the whole line on a sheet."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._plot_common import POSITION, ROPE, SHADES, curve_of, shade_of
from ropewalk._plot_shares import share_by_sheave
from ropewalk._plot_string_up import string_up
from ropewalk._plot_waterfall import slip_waterfall

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

    from ropewalk.line import LineHistory

_GONE = "#b9b9b9"
_GRID: dict[str, Any] = {"visible": True, "color": "#dddddd", "linewidth": 0.6}


def damage_strip(ax: Axes, history: LineHistory) -> Axes:
    """Draw the damage along the rope, and under it what lay in reach of every sheave.

    A bar is the rope that a sheave or the drum could reach at the end of the run; the pale bar
    behind it reaches back to where it was at the start. Ticks show where the anchor stood after
    every slip; rope that was cut off is hatched, with a tick at every cut.

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
    >>> rw.plot.damage_strip(Figure().subplots(), history).get_ylabel()
    'damage [1]'
    """
    position, damage = curve_of(history)
    top = 1.08 * max(history.worst, np.finfo(float).tiny)
    start = float(history.native.epoch_positions[0][0])
    # One row a window, one for the anchor; together a little more than the curve is high.
    row = 1.25 * top / (len(history.windows) + 1)
    ax.fill_between(position, damage, color=SHADES["traveling"], linewidth=0)
    ax.plot(position, damage, color=ROPE, linewidth=0.6, label="damage")
    ax.axhline(0.0, color="black", linewidth=0.8)
    moved = history.anchor_si - start
    for place, window in enumerate(history.windows):
        low = -(place + 1.0) * row
        shift = 0.0 if window.name == "drum" else moved
        _bar(ax, window.start_si - shift, window.end_si, low, row, face="#f3f3f3", edge="#c4c4c4")
        # The drum holds nothing if the block never comes down far enough; then it has no bar.
        _bar(
            ax, window.start_si, window.end_si, low, row, face=shade_of(window.name), edge="#333333"
        )
        _name(ax, window.name, window.start_si, window.end_si, low + 0.5 * row)
    bottom = -(len(history.windows) + 1.0) * row
    _anchor_row(ax, history, start, bottom + 0.5 * row, row)
    _cut_off(ax, history, top)
    if moved > 0.0:
        _legend(ax)
    ax.set_xlim(0.0, position[-1])
    ax.set_ylim(bottom - 0.4 * row, top)
    ticks = [tick for tick in ax.get_yticks() if 0.0 <= tick <= top]
    ax.set_yticks(ticks)
    ax.set_xlabel(POSITION)
    ax.set_ylabel("damage [1]", y=1.0 - 0.5 * top / (top - bottom))
    ax.grid(**_GRID)
    ax.set_axisbelow(True)
    return ax


def _bar(
    ax: Axes, start: float, end: float, low: float, height: float, *, face: str, edge: str
) -> None:
    if end > start:
        ax.broken_barh(
            [(start, end - start)],
            (low + 0.1 * height, 0.8 * height),
            facecolor=face,
            edgecolor=edge,
            linewidth=0.5,
        )


def _name(ax: Axes, name: str, start: float, end: float, middle: float) -> None:
    """Write a name beside its bar, where nothing else is drawn."""
    ax.annotate(
        name,
        (end, middle),
        xytext=(4, 0),
        textcoords="offset points",
        ha="left",
        va="center",
        fontsize=7,
    )


def _legend(ax: Axes) -> None:
    from matplotlib.patches import Patch

    reach: dict[str, Any] = {
        "facecolor": SHADES["traveling"],
        "edgecolor": "#333333",
        "linewidth": 0.5,
    }
    earlier: dict[str, Any] = {"facecolor": "#f3f3f3", "edgecolor": "#c4c4c4", "linewidth": 0.5}
    handles = [
        Patch(**reach, label="in reach at the end"),
        Patch(**earlier, label="in reach since the start"),
    ]
    ax.legend(handles=handles, fontsize=7, loc="upper right", frameon=False)


def _anchor_row(ax: Axes, history: LineHistory, start: float, middle: float, row: float) -> None:
    slips = [event.anchor_si for event in history.events if event.kind == "slip"]
    ax.plot(
        [start, *slips],
        np.full(len(slips) + 1, middle),
        color="black",
        linewidth=0.8,
        marker="|",
        markersize=6,
        label="anchor",
    )
    text = "anchor" if not slips else f"anchor, {len(slips)} slip{'s' * (len(slips) > 1)}"
    ax.annotate(
        text,
        (start, middle),
        xytext=(-6, 0),
        textcoords="offset points",
        ha="right",
        va="center",
        fontsize=7,
    )


def _cut_off(ax: Axes, history: LineHistory, top: float) -> None:
    if not history.sections:
        return
    ax.axvspan(
        0.0, history.drum_end_si, facecolor="none", edgecolor=_GONE, hatch="////", linewidth=0
    )
    for section in history.sections:
        ax.axvline(section.end_si, color="#777777", linewidth=0.7, linestyle=":")
    count = len(history.sections)
    ax.annotate(
        f"cut off\n{count} cut{'s' * (count > 1)}",
        (0.0, 0.97 * top),
        xytext=(5, 0),
        textcoords="offset points",
        ha="left",
        va="top",
        fontsize=7,
        bbox={"facecolor": "white", "edgecolor": "none", "pad": 1.5},
    )


def line_figure(history: LineHistory) -> Figure:
    """Draw a line on one sheet: damage strip, waterfall, shares, and the string-up.

    The string-up carries the heaviest load of the campaign, hoisted.

    Parameters
    ----------
    history
        Result of `ropewalk.run_line`.

    Returns
    -------
    matplotlib.figure.Figure
        A figure of its own, not registered with pyplot.

    Examples
    --------
    >>> import ropewalk as rw
    >>> history = rw.run_line(rw.load_rig(rw.rig.example("rig7")), outside_validity="ignore")
    >>> len(rw.plot.line_figure(history).axes)
    5
    """
    from matplotlib.figure import Figure

    from ropewalk._border import to_quantity

    figure = Figure(figsize=(11.5, 14.0), layout="constrained")
    axes: dict[Any, Axes] = figure.subplot_mosaic(
        [["strip", "strip"], ["waterfall", "waterfall"], ["share", "string-up"]],
        height_ratios=[1.1, 1.25, 1.1],
        width_ratios=[1.0, 1.25],
    )
    heaviest = to_quantity(float(history.campaign.hook_load_si.max()), "force")
    damage_strip(axes["strip"], history).set_title("Damage along the rope, and what reaches it")
    slip_waterfall(axes["waterfall"], history).set_title("Damage before each slip")
    share_by_sheave(axes["share"], history).set_title("Share in the bending damage")
    string_up(axes["string-up"], history.rig, heaviest, "hoisting")
    axes["string-up"].set_title("Heaviest load of the campaign, hoisted")
    rig, program = history.rig, history.program
    invented = " (invented)" if rig.invented else ""
    how = "no slip and cut program" if program is None else program.title
    figure.suptitle(f"{rig.name}, {rig.site}{invented}: {how}", fontsize=13)
    return figure
