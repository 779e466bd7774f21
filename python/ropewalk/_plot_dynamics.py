"""Pictures of rope dynamics. Exported by `ropewalk.plot`."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._border import to_quantity, to_si

if TYPE_CHECKING:
    from collections.abc import Sequence

    from matplotlib.axes import Axes

    from ropewalk._dynamics import HoistLine
    from ropewalk._units import QuantityLike

__all__ = ["pickup_factors"]

# Told apart without color: line style and shade of gray differ.
_STYLES: tuple[dict[str, Any], ...] = (
    {"color": "#0b3c5d", "linestyle": "-"},
    {"color": "#b23a48", "linestyle": "--"},
    {"color": "#3d8b56", "linestyle": "-."},
    {"color": "#8a6d1d", "linestyle": ":"},
)


def pickup_factors(
    ax: Axes,
    line: HoistLine,
    hook_loads: Sequence[QuantityLike],
    *,
    line_height: QuantityLike,
    fastest: QuantityLike = "1 m/s",
    speed_unit: str = "ft/min",
    load_unit: str = "kip",
) -> Axes:
    """Draw the peak of the load over the load at rest against the speed of pick-up.

    The sheaves are held by their friction, which gives the higher peak.

    Parameters
    ----------
    ax
        Axes to draw into.
    line
        The strung line.
    hook_loads
        Loads to draw a curve for each.
    line_height
        Length of one line between the blocks.
    fastest
        Speed of the block up to which it is drawn.
    speed_unit, load_unit
        Units of the axis and the legend.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    top = to_si("plot.pickup_factors", "fastest", fastest, "speed")
    speeds = to_quantity(np.linspace(0.0, top, 2), "speed")  # the factor is linear in the speed
    for index, load in enumerate(hook_loads):
        force = to_quantity(to_si("plot.pickup_factors", "hook_loads", load, "force"), "force")
        ax.plot(
            speeds.to(speed_unit).magnitude,
            line.pickup_factor(speeds, force, line_height),
            **_STYLES[index % len(_STYLES)],
            label=f"{force.to(load_unit).magnitude:.4g} {load_unit}",
        )
    ax.axhline(2.0, color="#777777", linewidth=0.9)
    ax.annotate(
        "load put\non suddenly",
        (1.0, 2.0),
        (3, 0),
        xycoords=("axes fraction", "data"),
        textcoords="offset points",
        annotation_clip=False,  # beside the axes, where no curve can cross it
        ha="left",
        va="center",
        fontsize=7,
        color="#555555",
    )
    ax.set_xlabel(f"speed of the block at pick-up [{speed_unit}]")
    ax.set_ylabel("peak over load at rest, sheaves locked [1]")
    ax.set_xlim(left=0.0)
    ax.set_ylim(1.0, 1.0 + 1.4 * (ax.dataLim.y1 - 1.0))  # room for the legend
    ax.legend(
        title="hook load",
        loc="upper left",
        frameon=False,
        fontsize=8,
        title_fontsize=8,
    )
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    return ax
