"""Pictures of a drawworks: load against speed, one stroke, and the choice of lines strung.

Exported by `ropewalk.plot`.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._border import to_quantity

if TYPE_CHECKING:
    import xarray as xr
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

    from ropewalk._drawworks_hoist import Hoist
    from ropewalk._drawworks_stroke import StrokeCurve

__all__ = ["lines_strung_figure", "lines_trade_off", "load_against_speed", "stroke_cycle"]

_INK = "#0b3c5d"
_OTHER = "#b23a48"
_GRID: dict[str, Any] = {"visible": True, "color": "#dddddd", "linewidth": 0.6}
_DASHES: tuple[Any, ...] = ("-", "--", "-.", ":", (0, (5, 1)), (0, (3, 1, 1, 1)))


def load_against_speed(
    ax: Axes,
    hoist: Hoist,
    *,
    layers: Sequence[int] | None = None,
    overload: bool = False,
    load_unit: str = "kip",
    speed_unit: str = "ft/min",
) -> Axes:
    """Draw the hook load each gear hoists steadily against the speed of the block.

    A line style is a gear; the lowest layer is dark, higher ones ever paler. Where the fast line
    limits the load, the curve is cut off there.

    Parameters
    ----------
    ax
        Axes to draw into.
    hoist
        The drawworks, strung up.
    layers
        Layers to draw; the first and the last if left out.
    overload
        Whether the motors may give their overload.
    load_unit, speed_unit
        Units of the axes.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    newtons = to_quantity(1.0, "force").m_as(load_unit)
    speeds = to_quantity(1.0, "speed").m_as(speed_unit)
    chosen = sorted({1, hoist.drum.layers}) if layers is None else list(layers)
    fastest, heaviest = 0.0, 0.0
    for gear in range(1, hoist.gears + 1):
        for place, layer in enumerate(chosen):
            drive = hoist.drive(gear, layer, overload=overload)
            # The knee is a point of the curve, the rest of it is smooth.
            steps = np.linspace(drive.base_speed_si, drive.top_speed_si, 120)
            at = np.array([0.0, *steps])
            loads = hoist.pull(to_quantity(at, "speed"), gear=gear, layer=layer, overload=overload)
            fastest = max(fastest, drive.top_speed_si * speeds)
            heaviest = max(heaviest, float(loads.m_as("N").max()) * newtons)
            ax.plot(
                np.append(at, at[-1]) * speeds,
                np.append(loads.m_as("N"), 0.0) * newtons,
                color=_INK,
                alpha=1.0 - 0.6 * place / max(len(chosen) - 1, 1),
                linestyle=_DASHES[(gear - 1) % len(_DASHES)],
                label=f"gear {gear}, layer {layer}",
            )
    ax.set_xlabel(f"speed of the block [{speed_unit}]")
    ax.set_ylabel(f"hook load [{load_unit}]")
    # Axes may be shared with those of another hoist: never narrower than they were.
    ax.set_xlim(0.0, max(1.05 * fastest, ax.get_xlim()[1]))
    ax.set_ylim(0.0, max(1.05 * heaviest, ax.get_ylim()[1]))
    ax.grid(**_GRID)
    return ax


def stroke_cycle(
    ax: Axes, curve: StrokeCurve, *, speed_unit: str = "ft/min", power_unit: str = "hp"
) -> Axes:
    """Draw speed of the block and power of the motors against time, along one stroke.

    Power has its own scale on the right; below zero it is braked. A thin line marks each change of
    layer. A stroke that is not possible has no curve, but its reason written instead.

    Parameters
    ----------
    ax
        Axes to draw into.
    curve
        From `ropewalk.drawworks.Hoist.curve`.
    speed_unit, power_unit
        Units of the axes.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes; the axes of power are its twin.
    """
    time = curve.time_si
    ax.plot(time, curve.speed.m_as(speed_unit), color=_INK, linewidth=1.8, label="speed")
    ax.set_xlabel("time [s]")
    ax.set_ylabel(f"speed of the block [{speed_unit}]")
    if curve.reason:
        ax.text(0.5, 0.5, curve.reason, ha="center", va="center", wrap=True, fontsize=8)
    else:
        ax.set_xlim(0.0, float(time[-1]))
    ax.set_ylim(bottom=0.0)
    power = ax.twinx()
    power.plot(time, curve.power.m_as(power_unit), color=_OTHER, linestyle="--", label="power")
    power.axhline(0.0, color=_OTHER, linewidth=0.5)
    power.set_ylabel(f"power [{power_unit}]")
    for at in time[1:][np.diff(curve.layer) != 0.0]:
        ax.axvline(float(at), color="#999999", linewidth=0.7)
    handles = [*ax.get_lines()[:1], *power.get_lines()[:1]]
    power.legend(handles=handles, fontsize=8, loc="center", framealpha=0.9)
    ax.grid(**_GRID)
    return ax


def lines_trade_off(
    ax: Axes, data: xr.Dataset, *, time_unit: str = "hour", work_unit: str = "ton_mile"
) -> Axes:
    """Draw the life of the line against the time of a trip, a point for each number of lines.

    Full where drum, motors and line can do the trip, open where they cannot and yet both are known.

    Parameters
    ----------
    ax
        Axes to draw into.
    data
        Result of `ropewalk.study.lines_strung`.
    time_unit, work_unit
        Units of the axes.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    from matplotlib.ticker import MaxNLocator

    time = data.trip_time.to_numpy() * to_quantity(1.0, "time").m_as(time_unit)
    life = data.line_life.to_numpy() * to_quantity(1.0, "energy").m_as(work_unit)
    holds = data.holds.to_numpy().astype(bool)
    ax.plot(time, life, color="#aaaaaa", linewidth=0.9, zorder=1)
    for full in (True, False):
        here = holds == full
        ax.scatter(
            time[here],
            life[here],
            facecolors=_INK if full else "none",
            edgecolors=_INK,
            zorder=2,
            label="within limits" if full else "outside limits",
        )
    for x, y, n in zip(time, life, data.lines.to_numpy(), strict=True):
        if np.isfinite(x) and np.isfinite(y):
            ax.annotate(f"{n} lines", (x, y), (6, -3), textcoords="offset points", fontsize=8)
    ax.set_xlabel(f"time of a round trip [{time_unit}]")
    ax.set_ylabel(f"life of the line [{work_unit}]")
    ax.margins(0.2, 0.15)
    ax.xaxis.set_major_locator(MaxNLocator(5))
    ax.grid(**_GRID)
    return ax


def lines_strung_figure(
    data: xr.Dataset, *, load_unit: str = "kip", speed_unit: str = "ft/min"
) -> Figure:
    """Draw the whole study of lines strung: pull, speed, design factor, and life against time.

    Parameters
    ----------
    data
        Result of `ropewalk.study.lines_strung`.
    load_unit, speed_unit
        Units of load and speed.

    Returns
    -------
    matplotlib.figure.Figure
        A figure of its own, not registered with pyplot.
    """
    from matplotlib.figure import Figure

    figure = Figure(figsize=(9.6, 7.2), layout="constrained")
    ((pull, speed), (factor, life)) = figure.subplots(2, 2)
    lines = data.lines.to_numpy()
    newtons = to_quantity(1.0, "force").m_as(load_unit)
    speeds = to_quantity(1.0, "speed").m_as(speed_unit)
    pull.plot(lines, data.pull.to_numpy() * newtons, "o-", color=_INK, label="by the motors")
    pull.plot(
        lines, data.pull_by_line.to_numpy() * newtons, "s--", color=_OTHER, label="by the line"
    )
    heaviest = data.attrs["heaviest_hook_load"] * newtons
    pull.axhline(heaviest, color="#222222", linestyle=":", label="heaviest load of the job")
    pull.set_ylabel(f"largest hook load [{load_unit}]")
    speed.plot(lines, data.hook_speed.to_numpy() * speeds, "o-", color=_INK)
    speed.set_ylabel(f"speed of the heaviest load [{speed_unit}]")
    speed.set_ylim(0.0, 1.15 * speed.get_ylim()[1])
    factor.plot(lines, data.design_factor.to_numpy(), "o-", color=_INK, label="at the job")
    least = data.attrs["design_factor_minimum"]
    factor.axhline(least, color="#222222", linestyle=":", label="minimum")
    factor.set_ylabel("design factor of the line [1]")
    for ax in (pull, speed, factor):
        ax.set_xlabel("lines strung")
        ax.set_xticks(lines)
        ax.grid(**_GRID)
    for ax in (pull, factor):
        ax.legend(fontsize=8, frameon=False)
    lines_trade_off(life, data)
    figure.suptitle(data.attrs["title"], fontsize=11)
    return figure
