"""Pictures, axes first: each function draws into the axes it is given and returns them."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from ropewalk._plot_brake import (
    brake_torque_by_speed,
    lowering_balance,
    stopping_distance_by_speed,
    temperature_over_trip,
)
from ropewalk._plot_compensator import gas_spring_load, heave_spectrum, operating_limits
from ropewalk._plot_deadline import friction_log, weight_indicator
from ropewalk._plot_drawworks import (
    lines_strung_figure,
    lines_trade_off,
    load_against_speed,
    stroke_cycle,
)
from ropewalk._plot_drum import drum_layers, fleet_angle_along_drum
from ropewalk._plot_dynamics import pickup_factors
from ropewalk._plot_fit import life_curve, life_probability
from ropewalk._plot_front import program_front
from ropewalk._plot_line import damage_strip, line_figure
from ropewalk._plot_mast import leg_loads
from ropewalk._plot_rainflow import rainflow_matrix, range_histogram
from ropewalk._plot_shares import share_by_operation, share_by_sheave
from ropewalk._plot_string_up import string_up
from ropewalk._plot_suspension import hook_bounce, load_path
from ropewalk._plot_waterfall import slip_waterfall

if TYPE_CHECKING:
    import xarray as xr
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

__all__ = [
    "brake_torque_by_speed",
    "damage_strip",
    "drum_layers",
    "fleet_angle_along_drum",
    "friction_log",
    "gas_spring_load",
    "heave_spectrum",
    "hook_bounce",
    "leg_loads",
    "life_against_diameter",
    "life_curve",
    "life_probability",
    "line_figure",
    "lines_strung_figure",
    "lines_trade_off",
    "load_against_speed",
    "load_path",
    "lowering_balance",
    "operating_limits",
    "pickup_factors",
    "program_front",
    "rainflow_matrix",
    "range_histogram",
    "share_by_operation",
    "share_by_sheave",
    "sheave_life_figure",
    "slip_waterfall",
    "stopping_distance_by_speed",
    "string_up",
    "stroke_cycle",
    "temperature_over_trip",
    "weight_indicator",
]

# Told apart without color: line style, marker and shade of gray all differ.
_STYLES: tuple[dict[str, Any], ...] = (
    {"color": "#0b3c5d", "linestyle": "-", "marker": "o"},
    {"color": "#b23a48", "linestyle": "--", "marker": "s"},
    {"color": "#3d8b56", "linestyle": "-.", "marker": "^"},
    {"color": "#8a6d1d", "linestyle": (0, (5, 1)), "marker": "D"},
    {"color": "#5b4a8a", "linestyle": (0, (3, 1, 1, 1)), "marker": "v"},
    {"color": "#555555", "linestyle": (0, (1, 1)), "marker": "x"},
)


def life_against_diameter(
    ax: Axes, data: xr.Dataset, *, rope: str, lines: int, unit: str = "in", band: bool = True
) -> Axes:
    """Draw the life in round trips against sheave diameter, one curve a life model.

    A curve has its markers where the model holds at the heaviest bend and is drawn thin and pale
    where it is used outside its published range.

    Parameters
    ----------
    ax
        Axes to draw into.
    data
        Result of `ropewalk.study.sheave_life`.
    rope, lines
        Which rope and how many lines.
    unit
        Unit of the diameter axis.
    band
        Shade the band of scatter where the model holds.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    from ropewalk._units import registry

    here = data.sel(rope=rope, lines=lines)
    factor = registry().Quantity(1.0, "m").to(unit).magnitude
    diameter = here.sheave_diameter.to_numpy() * factor
    for style, model in zip(_STYLES, here.model.to_numpy(), strict=False):
        one = here.sel(model=model)
        trips, holds = one.trips.to_numpy(), one.holds.to_numpy()
        ax.plot(
            diameter,
            trips,
            color=style["color"],
            linestyle=style["linestyle"],
            linewidth=0.9,
            alpha=0.55,
        )
        ax.plot(
            diameter[holds],
            trips[holds],
            **style,
            linewidth=1.8,
            markersize=4,
            markevery=2,
            label=f"{model}, to {one.counts_to.item()}",
        )
        if band:
            ax.fill_between(
                diameter,
                one.trips_low.to_numpy(),
                one.trips_high.to_numpy(),
                where=holds,
                color=style["color"],
                alpha=0.12,
                linewidth=0,
            )
    ax.set_yscale("log")
    ax.set_xlabel(f"sheave diameter [{unit}]")
    ax.set_ylabel("life in round trips [1]")
    ax.set_xlim(diameter[0], diameter[-1])
    _mark_limits(ax, here, factor)
    ax.grid(visible=True, which="major", color="#dddddd", linewidth=0.6)
    return ax


def _mark_limits(ax: Axes, here: xr.Dataset, factor: float) -> None:
    """Mark recommended diameters, the pressure limit and the diameter of the rig."""
    marks = (
        (float(here.tread_condition_b), ":", "recommended, condition B"),
        (float(here.tread_condition_a), "--", "recommended, condition A"),
        (float(here.diameter_at_pressure_limit), "-", "bearing pressure at its limit"),
        (here.attrs["crown_sheave_diameter"], "-.", "as the rig has it"),
    )
    for meters, linestyle, text in marks:
        position = meters * factor
        if ax.get_xlim()[0] <= position <= ax.get_xlim()[1]:
            ax.axvline(position, color="#222222", linestyle=linestyle, linewidth=0.9)
            left, right = ax.get_xlim()
            ax.annotate(
                text,
                (position, 0.02),
                xycoords=("data", "axes fraction"),
                rotation=90,
                fontsize=6.5,
                ha="left" if position < left + 0.05 * (right - left) else "right",
                va="bottom",
                color="#222222",
            )


def sheave_life_figure(data: xr.Dataset, *, unit: str = "in") -> Figure:
    """Draw the whole study: a row a rope, a column a number of lines.

    Parameters
    ----------
    data
        Result of `ropewalk.study.sheave_life`.
    unit
        Unit of the diameter axes.

    Returns
    -------
    matplotlib.figure.Figure
        A figure of its own, not registered with pyplot.
    """
    from matplotlib.figure import Figure

    ropes, lines = data.rope.to_numpy(), data.lines.to_numpy()
    figure = Figure(figsize=(4.3 * len(lines), 3.9 * len(ropes) + 0.9), layout="constrained")
    axes = figure.subplots(len(ropes), len(lines), sharex=True, sharey=True, squeeze=False)
    for row, rope in zip(axes, ropes, strict=True):
        for ax, n in zip(row, lines, strict=True):
            life_against_diameter(ax, data, rope=str(rope), lines=int(n), unit=unit)
            factor = float(data.design_factor.sel(rope=rope, lines=n))
            ax.set_title(f"{rope}, {n} lines, design factor {factor:.1f}", fontsize=9)
            ax.label_outer()
    handles, labels = _legend_entries(axes)
    figure.legend(handles, labels, loc="outside lower center", ncols=3, fontsize=8, frameon=False)
    figure.suptitle(data.attrs["title"], fontsize=11)
    return figure


def _legend_entries(axes: Any) -> tuple[list[Any], list[str]]:
    seen: dict[str, Any] = {}
    for ax in axes.flat:
        for handle, label in zip(*ax.get_legend_handles_labels(), strict=True):
            seen.setdefault(label, handle)
    return list(seen.values()), list(seen)
