"""Pictures of what hangs below the crown: load path, hook bounce. Exported by `ropewalk.plot`."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ropewalk._border import to_quantity

if TYPE_CHECKING:
    from matplotlib.axes import Axes

    from ropewalk._suspension_bounce import HookBounce
    from ropewalk._suspension_train import Margins
    from ropewalk._units import QuantityLike

__all__ = ["hook_bounce", "load_path"]

_INK = "#0b3c5d"
_HEAVY = "#b23a48"


def load_path(ax: Axes, margins: Margins, *, unit: str = "kip") -> Axes:
    """Draw the load of every part as a bar inside its rating, from the crown down.

    The weakest part is hatched; a bar that is longer than its rating is an overload.

    Parameters
    ----------
    ax
        Axes to draw into.
    margins
        From `ropewalk.suspension.Suspension.margins`.
    unit
        Unit of the forces.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    rows = np.arange(len(margins.names))
    load, rating = margins.load.m_as(unit), margins.rating.m_as(unit)
    ax.barh(
        rows, rating, height=0.72, color="white", edgecolor="#555555", linewidth=1.2, label="rating"
    )
    for row, name in zip(rows, margins.names, strict=True):
        weakest = name == margins.weakest
        ax.barh(
            row,
            load[row],
            height=0.44,
            color="#e8c3c8" if weakest else "#7d97ab",
            edgecolor=_HEAVY if weakest else _INK,
            hatch="////" if weakest else None,
            label="load, weakest part" if weakest else ("load" if row == rows[-1] else None),
        )
        ax.annotate(
            f"{100.0 * margins.utilization[row]:.0f} %",
            (max(load[row], rating[row]), row),
            xytext=(4, 0),
            textcoords="offset points",
            va="center",
            fontsize=8,
        )
    ax.set_yticks(rows, margins.names)
    ax.invert_yaxis()
    ax.set_xlim(0.0, 1.12 * float(max(load.max(), rating.max())))
    ax.set_xlabel(f"load and rating [{unit}]")
    hook_load = margins.hook_load.m_as(unit)
    ax.set_title(f"hook load {hook_load:.0f} {unit}, {margins.motion}", fontsize=10)
    ax.legend(fontsize=8, frameon=False, loc="upper center", bbox_to_anchor=(0.5, -0.16), ncols=3)
    ax.spines[["top", "right"]].set_visible(False)
    return ax


def hook_bounce(
    ax: Axes,
    bounce: HookBounce,
    *,
    until: QuantityLike,
    label: str | None = None,
    linestyle: str = "-",
    within: QuantityLike | None = None,
    length_unit: str = "in",
) -> Axes:
    """Draw the height of the hook over time as a stand breaks free; call again to compare.

    Parameters
    ----------
    ax
        Axes to draw into.
    bounce
        The motion.
    until
        Time to draw to.
    label, linestyle
        Of the curve.
    within
        Band about rest to shade, with a mark where the hook has settled in it; none if left out.
    length_unit
        Unit of the height.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    from ropewalk._border import to_si

    scale = to_quantity(1.0, "length").m_as(length_unit)
    end = float(to_si("plot.hook_bounce", "until", until, "time"))
    times = np.linspace(0.0, end, 601)
    height = bounce.height(to_quantity(times, "time")).magnitude * scale
    ax.plot(times, height, linestyle=linestyle, color=_INK, linewidth=1.6, label=label)
    if within is not None:
        band = float(to_si("plot.hook_bounce", "within", within, "length"))
        rest = bounce.rest
        settled = bounce.settled(within).magnitude
        center = 0.0 if rest is None else rest.magnitude
        ax.axhspan((center - band) * scale, (center + band) * scale, color="#dddddd", linewidth=0)
        if settled <= end:
            ax.axvline(settled, color=_HEAVY, linewidth=1.0, linestyle=":")
            ax.annotate(
                f"settled, {settled:.2f} s",
                (settled, 0.96),
                xycoords=("data", "axes fraction"),
                xytext=(4, 0),
                textcoords="offset points",
                fontsize=8,
                va="top",
                color=_HEAVY,
                bbox={"facecolor": "white", "edgecolor": "none", "pad": 1.0},
            )
    ax.axhline(0.0, color="#888888", linewidth=0.7)
    ax.set_xlim(0.0, end)
    ax.set_xlabel("time since the thread let go [s]")
    ax.set_ylabel(f"height above rest [{length_unit}]")
    ax.grid(visible=True, color="#eeeeee", linewidth=0.6)
    return ax
