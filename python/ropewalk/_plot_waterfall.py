"""Picture of a line before every slip."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from ropewalk._plot_common import POSITION, ROPE, curve_of

if TYPE_CHECKING:
    from matplotlib.axes import Axes

    from ropewalk.line import LineHistory


def slip_waterfall(ax: Axes, history: LineHistory, *, most: int = 12) -> Axes:
    """Draw the damage along the rope before every slip, one curve under the other.

    Each curve stands on its own base line, drawn from drum end to anchor as they were; rope that
    had been cut off by then is dotted. The scale of damage is the bar at the upper right.

    Parameters
    ----------
    ax
        Axes to draw into.
    history
        Result of `ropewalk.run_line`.
    most
        Most curves to draw, 2 or more; of more slips, evenly spaced ones are shown, the first and
        the end among them.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.

    Raises
    ------
    ValueError
        If `most` is less than 2.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from matplotlib.figure import Figure
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> program = rw.SlipCutProgram(slip="10 m", cut="30 m", every="500 ton_mile")
    >>> history = rw.run_line(rig, program=program, outside_validity="ignore")
    >>> ax = rw.plot.slip_waterfall(Figure().subplots(), history)
    >>> ax.get_ylabel()
    'work of the line before each slip [GJ]'
    """
    if most < 2:
        raise ValueError(f"slip_waterfall(): most = {most} must be 2 or more")
    rows, works = _before_slips(history)
    if len(rows) > most:
        chosen = np.unique(np.linspace(0, len(rows) - 1, most).round().astype(int))
        rows, works = [rows[i] for i in chosen], [works[i] for i in chosen]
    position, _ = curve_of(history)
    values = history.damage_by_epoch.to_numpy()
    step = 0.3 * max(history.worst, np.finfo(float).tiny)
    for place, row in enumerate(rows):
        _one_state(ax, history, position, values[row], row, -place * step)
    ax.set_yticks([-step * place for place in range(len(rows))])
    ax.set_yticklabels([f"{work * 1e-9:.0f}" for work in works], fontsize=7)
    ax.set_ylabel("work of the line before each slip [GJ]")
    ax.set_xlabel(POSITION)
    ax.set_xlim(0.0, position[-1])
    ax.set_ylim(-step * (len(rows) - 0.4), max(step * 2.4, 1.08 * float(values[rows[0]].max())))
    _scale_bar(ax, step)
    ax.grid(visible=True, axis="x", color="#dddddd", linewidth=0.6)
    ax.set_axisbelow(True)
    return ax


def _before_slips(history: LineHistory) -> tuple[list[int], list[float]]:
    """Epochs after which the rope moved, the last one too, and the work done until then."""
    positions = np.asarray(history.native.epoch_positions)
    moved = np.any(np.diff(positions, axis=0) != 0.0, axis=1)
    rows = [*np.flatnonzero(moved).tolist(), len(positions) - 1]
    # A slip and the cut that follows it are one move: they happen at the same work.
    works = sorted({event.work_si for event in history.events})
    works = [*works, float(history.native.work)]
    return rows, works[-len(rows) :]


def _one_state(
    ax: Axes,
    history: LineHistory,
    position: npt.NDArray[np.float64],
    damage: npt.NDArray[np.float64],
    row: int,
    base: float,
) -> None:
    anchor, drum_end = history.native.epoch_positions[row]
    heights = base + damage[: position.size]
    on_line = (position >= drum_end) & (position <= anchor)
    # Later curves stand in front of earlier ones.
    order = 2.0 + 0.01 * row
    ax.fill_between(
        position[on_line], base, heights[on_line], color="#dfe7ed", linewidth=0, zorder=order
    )
    gone = position < drum_end
    ax.plot(position[gone], heights[gone], color="#a8a8a8", lw=0.5, ls=":", zorder=order + 0.001)
    ax.plot(position[on_line], heights[on_line], color=ROPE, lw=0.4, zorder=order + 0.002)
    ax.plot(
        [drum_end, anchor],
        [base, base],
        color="black",
        linewidth=0.5,
        marker="|",
        markersize=5,
        zorder=order + 0.003,
    )


def _scale_bar(ax: Axes, step: float) -> None:
    """Draw a bar of a round damage, about as high as two steps, at the upper right."""
    rough = 1.7 * step
    power = 10.0 ** np.floor(np.log10(rough))
    value = float(power * max(n for n in (1.0, 2.0, 5.0) if n * power <= rough))
    left, right = ax.get_xlim()
    # Beyond the anchor nothing is drawn.
    place, high = right - 0.02 * (right - left), ax.get_ylim()[1] - 0.3 * step
    ax.plot([place, place], [high - value, high], color="black", linewidth=2.2, label="scale")
    ax.annotate(
        f"damage {value:g} [1]",
        (place, high - 0.5 * value),
        xytext=(-5, 0),
        textcoords="offset points",
        ha="right",
        va="center",
        fontsize=8,
    )
