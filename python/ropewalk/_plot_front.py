"""Picture of the choices of slip-and-cut program: rope used against risk."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from matplotlib.axes import Axes

    from ropewalk.line import ProgramChoice, ProgramFront

#: Below this risk the axis is linear, so that a risk of 0 has its place.
_LEAST_RISK = 1e-6


def program_front(ax: Axes, front: ProgramFront, *, unit: str = "m/GJ") -> Axes:
    """Draw rope used per work against the risk that some place passes the limit.

    Every choice is a pale point, those that break a bound a cross; the efficient ones are joined.
    The risk is on a logarithmic scale down to one in a million and linear below.

    Parameters
    ----------
    ax
        Axes to draw into.
    front
        Result of `ropewalk.optimize_program`.
    unit
        Unit of the rope use, a length per work: ``"m/GJ"``, ``"ft/ton_mile"``.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from matplotlib.figure import Figure
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> goals = rw.Q([10.0, 40.0], "ton_mile/ft")
    >>> front = rw.optimize_program(rig, laps=[11.5], slips_per_cut=[4], goals=goals, repeats=1)
    >>> ax = rw.plot.program_front(Figure().subplots(), front, unit="ft/ton_mile")
    >>> ax.get_xlabel()
    'rope used per work [ft/ton_mile]'
    """
    from ropewalk._units import registry

    factor = float(registry().Quantity(1.0, "m/J").m_as(unit))
    for feasible, marker, text in ((True, "o", "choice"), (False, "x", "breaks a bound")):
        some = [one for one in front.choices if bool(one.feasible) is feasible]
        if some:
            ax.plot(
                [one.rope_use_si * factor for one in some],
                [one.risk for one in some],
                color="#9a9a9a",
                linestyle="none",
                marker=marker,
                markersize=3.5,
                alpha=0.7,
                label=text,
            )
    efficient = sorted(
        (one for one in front.choices if one.efficient), key=lambda one: one.rope_use_si
    )
    ax.plot(
        [one.rope_use_si * factor for one in efficient],
        [one.risk for one in efficient],
        color="#0b3c5d",
        linewidth=1.6,
        marker="o",
        markersize=4.5,
        label="efficient",
    )
    _mark(ax, front.current, factor, "s", "current practice")
    _mark(ax, front.recommended, factor, "*", "recommended")
    allowed = 1.0 - float(front.confidence)
    ax.axhline(
        allowed, color="black", linewidth=0.9, linestyle="--", label=f"risk allowed, {allowed:.2g}"
    )
    ax.set_yscale("symlog", linthresh=_LEAST_RISK, linscale=0.5)
    ax.set_ylim(-0.15 * _LEAST_RISK, 2.0)
    ax.set_yticks([0.0, *(10.0**power for power in range(-6, 1))])
    ax.set_xlim(left=0.0)
    ax.set_xlabel(f"rope used per work [{unit}]")
    ax.set_ylabel("risk: 1 − survival [1]")
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    ax.set_axisbelow(True)
    ax.legend(fontsize=7.5, frameon=True, framealpha=0.95, loc="best")
    return ax


def _mark(ax: Axes, record: ProgramChoice | None, factor: float, marker: str, name: str) -> None:
    if record is None:
        return
    ax.plot(
        [record.rope_use_si * factor],
        [record.risk],
        color="white",
        markeredgecolor="black",
        markeredgewidth=1.3,
        linestyle="none",
        marker=marker,
        markersize=13 if marker == "*" else 8,
        zorder=5,
        # Short lines: the legend stands in the empty corner below the front.
        label=f"{name}:\n" + record.text.replace(" (", "\n("),
    )
