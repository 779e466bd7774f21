"""Pictures of the weight indicator: readings, and friction found from them.

Exported by `ropewalk.plot`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

import numpy as np

from ropewalk._border import to_quantity, to_si

if TYPE_CHECKING:
    from matplotlib.axes import Axes

    from ropewalk._deadline import WeightIndicator
    from ropewalk._deadline_fit import FrictionFit
    from ropewalk._units import QuantityLike

__all__ = ["friction_log", "weight_indicator"]

# Told apart without color: line style, marker and shade of gray all differ.
_UP = "#b23a48"
_DOWN = "#0b3c5d"
_REST = "#777777"

_MOTIONS: tuple[tuple[Literal["static", "hoisting", "lowering"], str, str], ...] = (
    ("lowering", "--", _DOWN),
    ("static", "-", _REST),
    ("hoisting", "-.", _UP),
)


def weight_indicator(
    ax: Axes,
    indicator: WeightIndicator,
    *,
    largest: QuantityLike,
    smallest: QuantityLike = "0 N",
    unit: str = "kip",
) -> Axes:
    """Draw what the indicator shows against the true hook load: lowering, at rest, hoisting.

    Parameters
    ----------
    ax
        Axes to draw into.
    indicator
        The weight indicator.
    largest, smallest
        Hook loads between which it is drawn.
    unit
        Unit of both axes.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    where = "plot.weight_indicator"
    ends = [to_si(where, "hook_load", end, "force") for end in (smallest, largest)]
    loads = to_quantity(np.array(ends), "force")
    for motion, style, color in _MOTIONS:
        ratio = indicator.ratio(motion)
        ax.plot(
            loads.to(unit).magnitude,
            indicator.reading(loads, motion).to(unit).magnitude,
            linestyle=style,
            color=color,
            label=f"{'at rest' if motion == 'static' else motion}, {ratio:.3f}",
        )
    ax.set_xlabel(f"true hook load [{unit}]")
    ax.set_ylabel(f"indicated load [{unit}]")
    ax.legend(title="indicated over true", frameon=False, fontsize=8, title_fontsize=8)
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    return ax


def friction_log(ax: Axes, fit: FrictionFit) -> Axes:
    """Draw a log of slow moves, each reading over its hook load, and what the fit makes of them.

    Lines are the ratios at the friction identified, bands those at the ends of its interval.

    Parameters
    ----------
    ax
        Axes to draw into.
    fit
        Result of `ropewalk.deadline.fit_friction`.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    from matplotlib.ticker import MaxNLocator

    ratio = fit.readings_si / fit.hook_loads_si[fit.load_of_move]
    move = np.arange(1, len(ratio) + 1)
    for down, marker, color, word in (
        (True, "v", _DOWN, "lowering"),
        (False, "^", _UP, "hoisting"),
    ):
        here = fit.lowered == down
        ax.plot(move[here], ratio[here], linestyle="none", marker=marker, color=color, label=word)
        middle, *ends = (
            _ratio(fit, friction, down=down)
            for friction in (fit.sheave_friction, fit.low, fit.high)
        )
        ax.axhline(middle, color=color, linestyle="--" if down else "-.", linewidth=1.2)
        ax.axhspan(min(ends), max(ends), color=color, alpha=0.18, linewidth=0)
    ax.axhline(1.0, color=_REST, linewidth=0.9)
    ax.xaxis.set_major_locator(MaxNLocator(integer=True))
    ax.set_xlabel("move [1]")
    ax.set_ylabel("indicated over true hook load [1]")
    ax.set_title(str(fit), fontsize=9)
    ax.legend(frameon=False, fontsize=8)
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    return ax


def _ratio(fit: FrictionFit, friction: float, *, down: bool) -> float:
    """The ratio at a friction; below 1 too, where the log contradicts the model."""
    total = float(np.sum(friction ** np.arange(fit.lines)))
    turning = 1 if fit.dead_line_sheave_turns else 0
    power = fit.lines - 1 + turning if down else -turning
    return float(fit.lines * friction**power / total)
