"""Pictures of heave compensation: sea and heave, gas spring, limit of the sea.

Exported by `ropewalk.plot`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ropewalk._border import arguments, to_quantity

if TYPE_CHECKING:
    from collections.abc import Mapping

    from matplotlib.axes import Axes

    from ropewalk._compensator import Compensator
    from ropewalk._compensator_heave import SeaState
    from ropewalk._compensator_limit import OperatingLimit
    from ropewalk._compensator_response import HeaveOperator
    from ropewalk._units import QuantityLike

__all__ = ["gas_spring_load", "heave_spectrum", "operating_limits"]

_INK = "#0b3c5d"
_PALE = "#6f97b3"
_LIMIT = "#b23a48"
#: A rating further above the load is not drawn: it would flatten the curve.
_NEAR = 1.2
# Told apart without color.
_STYLES = ("-", "--", "-.", (0, (1, 1)), (0, (5, 1, 1, 1, 1, 1)))


def heave_spectrum(ax: Axes, sea: SeaState, response: HeaveOperator) -> Axes:
    """Draw the spectrum of the waves, that of heave, and the response between them.

    Parameters
    ----------
    ax
        Axes to draw into; the response gets an axis of its own on the right.
    sea
        The sea.
    response
        Heave of the vessel over wave amplitude.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from matplotlib.figure import Figure
    >>> drillship = rw.compensator.HeaveOperator.box_hull("200 m", "36 m", "10 m")
    >>> ax = rw.plot.heave_spectrum(Figure().subplots(), rw.SeaState("5 m", "12 s"), drillship)
    >>> ax.get_xlabel()
    'wave frequency [rad/s]'
    """
    omega = np.linspace(0.4, 3.5, 400) * 2.0 * np.pi / sea.peak_period_si
    waves = sea.spectrum(to_quantity(omega, "angular_velocity")).magnitude
    ratio = response.ratio(to_quantity(2.0 * np.pi / omega, "time"))
    heave = ratio**2 * waves
    ax.plot(omega, waves, color=_PALE, linewidth=1.8, label="waves")
    ax.plot(omega, heave, color=_INK, linewidth=1.8, linestyle="--", label="heave")
    ax.fill_between(omega, heave, color=_INK, alpha=0.15, linewidth=0)
    ax.set_xlabel("wave frequency [rad/s]")
    ax.set_ylabel("spectral density [m² s/rad]")
    ax.set_xlim(omega[0], omega[-1])
    ax.set_ylim(bottom=0.0)
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    right = ax.twinx()
    right.plot(omega, ratio, color="#555555", linewidth=1.0, linestyle=":")
    right.set_ylim(bottom=0.0)
    right.set_ylabel("heave over wave amplitude, dotted [1]")
    ax.legend(frameon=False, fontsize=8)
    return ax


def gas_spring_load(
    ax: Axes,
    compensator: Compensator,
    mean_load: QuantityLike,
    *,
    length_unit: str = "ft",
    force_unit: str = "kip",
) -> Axes:
    """Draw the load of a compensator against its stroke, between compressing and expanding.

    The line is the gas alone; the band is as wide as seal friction makes it, its upper edge being
    the way into the gas. The rated load is drawn where it is at most a fifth above the band.

    Parameters
    ----------
    ax
        Axes to draw into.
    compensator
        The compensator.
    mean_load
        Load at mid-stroke.
    length_unit, force_unit
        Units of the axes.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    (mean,) = arguments("plot.gas_spring_load", mean_load=mean_load)
    half = compensator.stroke_si / 2.0
    travel = to_quantity(np.linspace(-half, half, 121), "length")
    load = compensator.load(to_quantity(mean, "force"), travel).to(force_unit).magnitude
    friction = to_quantity(compensator.seal_friction * mean, "force").to(force_unit).magnitude
    along = travel.to(length_unit).magnitude
    exponent = f"gas, n = {compensator.polytropic_exponent:g}"
    ax.fill_between(
        along,
        load - friction,
        load + friction,
        color=_PALE,
        alpha=0.35,
        linewidth=0,
        label=f"with seal friction, {compensator.seal_friction:.1%} each way",
    )
    ax.plot(along, load, color=_INK, linewidth=1.8, label=exponent)
    if compensator.rated_load is not None:
        rating = compensator.rated_load.to(force_unit).magnitude
        if rating <= _NEAR * load.max():
            ax.axhline(rating, color=_LIMIT, linestyle="--", linewidth=0.9, label="rated load")
    ax.set_xlabel(f"travel from mid-stroke, gas compressed to the right [{length_unit}]")
    ax.set_ylabel(f"load [{force_unit}]")
    ax.set_xlim(along[0], along[-1])
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    ax.legend(frameon=False, fontsize=8)
    return ax


def operating_limits(
    ax: Axes, limits: Mapping[str, OperatingLimit], *, length_unit: str = "m"
) -> Axes:
    """Draw the highest sea against peak period, one curve a stroke, vessel or chance.

    Curves are thin where no sea of that period is steep enough to use up the stroke.

    Parameters
    ----------
    ax
        Axes to draw into.
    limits
        Limits from `ropewalk.compensator.operating_limit` by the name they get.
    length_unit
        Unit of the height.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    from ropewalk.compensator import steepest_height

    ends, highest = [], 0.0
    for (name, limit), style in zip(limits.items(), _STYLES * len(limits), strict=False):
        height = limit.significant_height.to(length_unit).magnitude
        ax.plot(limit.peak_period_si, height, color=_INK, linestyle=style, linewidth=0.7)
        governed = np.where(limit.stroke_governs, height, np.nan)
        ax.plot(
            limit.peak_period_si, governed, color=_INK, linestyle=style, linewidth=1.8, label=name
        )
        highest = max(highest, float(height.max()))
        ends += [limit.peak_period_si.min(), limit.peak_period_si.max()]
    periods = np.linspace(min(ends), max(ends), 200)
    steepest = steepest_height(to_quantity(periods, "time")).to(length_unit).magnitude
    ax.fill_between(
        periods,
        steepest,
        np.maximum(steepest, 1.6 * highest),
        color=_LIMIT,
        alpha=0.12,
        linewidth=0,
        hatch="//",
        label="steeper than seas get",
    )
    ax.set_ylim(0.0, 1.6 * highest)
    ax.set_xlim(periods[0], periods[-1])
    ax.set_xlabel("peak period of the sea [s]")
    ax.set_ylabel(f"largest significant wave height [{length_unit}]")
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    ax.legend(frameon=False, fontsize=8)
    return ax
