"""Picture of the legs of a mast in plan. Exported by `ropewalk.plot`."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ropewalk._border import to_quantity
from ropewalk._mast_legs import LEGS
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from matplotlib.axes import Axes

    from ropewalk._mast import Mast
    from ropewalk._mast_legs import LegLoads

__all__ = ["leg_loads"]

_INK = "#0b3c5d"
_HEAVY = "#b23a48"


def leg_loads(
    ax: Axes,
    mast: Mast,
    loads: LegLoads,
    *,
    force_unit: str = "kip",
    length_unit: str = "ft",
) -> Axes:
    """Draw the base from above with the load of every leg; the drawworks is at the top.

    The area of a disk is the load of the leg; legs that bear most are hatched. A leg that is
    pulled up has a dashed, empty disk and says so. Fast and dead line stand where they pull.

    Parameters
    ----------
    ax
        Axes to draw into.
    mast
        Base and places of the lines.
    loads
        Loads of its legs under one hook load, from `ropewalk.mast.Mast.leg_loads`.
    force_unit, length_unit
        Units of the labels and the axes.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.

    Raises
    ------
    InadmissibleError
        If the loads are those of many hook loads.
    """
    from matplotlib.patches import Circle, Rectangle

    if loads.legs_si.ndim != 1:
        text = f"loads must be those of one hook load, got shape {loads.legs_si.shape}"
        raise InadmissibleError(f"plot.leg_loads(): {text}", "plot.leg_loads", "loads")
    scale = to_quantity(1.0, "length").m_as(length_unit)
    half = np.array([mast.base_width_si, mast.base_depth_si]) * scale / 2.0
    corners = np.array([(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)]) * half
    ax.add_patch(Rectangle(-half, *(2.0 * half), fill=False, edgecolor="#888888", linewidth=1.0))
    sizes = np.abs(loads.legs_si)
    heaviest = float(sizes.max())
    for name, corner, load, size, governs, uplifted in zip(
        LEGS, corners, loads.legs_si, sizes, loads.bears_most, loads.uplifted, strict=True
    ):
        shown = to_quantity(load, "force").m_as(force_unit)
        radius = 0.34 * half.min() * np.sqrt(size / heaviest) if heaviest > 0.0 else 0.0
        ax.add_patch(
            Circle(
                tuple(corner),
                radius,
                facecolor="none" if uplifted else "#f2d9dc" if governs else "#d9e2ea",
                edgecolor=_HEAVY if governs else _INK,
                hatch="////" if governs else None,
                linestyle="--" if uplifted else "-",
                linewidth=1.4,
            )
        )
        beyond = np.sign(corner[1])
        ax.annotate(
            f"{name}: {shown:.1f} {force_unit}" + (", uplift" if uplifted else ""),
            (corner[0], corner[1] + beyond * radius),
            xytext=(0, 4 * beyond),
            textcoords="offset points",
            ha="center",
            va="bottom" if beyond > 0.0 else "top",
            fontsize=9,
            fontweight="bold" if governs else "normal",
        )
    marks = (
        ("fast line", mast.fast_line_si, loads.fast_line_si, "s"),
        ("dead line", mast.dead_line_si, loads.dead_line_si, "^"),
        ("lines and crown block", (0.0, 0.0), loads.lines_si, "o"),
    )
    for label, place, force, marker in marks:
        pull = to_quantity(float(force), "force").m_as(force_unit)
        text = f"{label}, {pull:.1f} {force_unit}"
        ax.plot(
            *(np.array(place) * scale), marker, color="#222222", markersize=8, label=text, zorder=3
        )
    ax.annotate("drawworks", (0.0, 1.18 * half[1]), ha="center", fontsize=8, color="#555555")
    ax.annotate("V-door", (0.0, -1.24 * half[1]), ha="center", fontsize=8, color="#555555")
    ax.set_xlim(-1.55 * half[0], 1.55 * half[0])
    ax.set_ylim(-1.65 * half[1], 1.65 * half[1])
    ax.set_aspect("equal")
    ax.set_xlabel(f"across [{length_unit}]")
    ax.set_ylabel(f"toward the drawworks [{length_unit}]")
    ax.legend(loc="upper center", bbox_to_anchor=(0.5, -0.14), fontsize=8, frameon=False, ncols=1)
    return ax
