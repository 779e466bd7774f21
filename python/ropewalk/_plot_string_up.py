"""Picture of a string-up: blocks, lines, drum and anchor, each line colored by its tension."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk._border import QuantityLike, to_si

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.cm import ScalarMappable

    from ropewalk._tensions import Motion, Tensions
    from ropewalk.rig import Rig

Array = npt.NDArray[np.float64]

# Drawn in units of the distance between two lines: a sheave is one of them wide.
_RADIUS = 0.5
_STEEL: dict[str, Any] = {"facecolor": "#efefef", "edgecolor": "#333333", "linewidth": 0.8}


def string_up(
    ax: Axes,
    rig: Rig,
    hook_load: QuantityLike | None = None,
    motion: Motion = "hoisting",
    *,
    unit: str = "kN",
) -> Axes:
    """Draw how the line is strung, every part of it colored by its tension.

    The blocks are drawn unfolded, their sheaves side by side from the dead line to the drum, not to
    scale. The darker a line, the higher its tension, which is also written on it. A color bar is
    added to the figure.

    Parameters
    ----------
    ax
        Axes to draw into.
    rig
        The hoist; any number of lines.
    hook_load : force, optional
        Everything hung on the lines; by default the heaviest pull of the rig's round trips.
    motion
        What the block does: ``"static"``, ``"hoisting"`` or ``"lowering"``.
    unit
        Unit of the tensions.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.

    Raises
    ------
    UnitError, InadmissibleError
        For a hook load without its unit, or one that cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from matplotlib.figure import Figure
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> ax = rw.plot.string_up(Figure().subplots(), rig, "400 kip", unit="kip")
    >>> [text.get_text() for text in ax.texts if text.get_gid() == "fast line"]
    ['49.3']
    """
    from ropewalk._border import to_quantity
    from ropewalk._units import registry

    if hook_load is None:
        heaviest = rig.heaviest_trip.heaviest_hook_load(rig.block.weight)
        hook_load = to_quantity(heaviest, "force")
    load = float(to_si("string_up", "hook_load", hook_load, "force"))
    tensions = rig.reeving.tensions(to_quantity(load, "force"), motion)
    factor = float(registry().Quantity(1.0, "N").m_as(unit))
    shades = _shades(tensions, factor)
    lines = rig.reeving.lines
    # Higher than wide for few lines, wider than high for many, so that the text keeps its size.
    height = 0.42 * lines + 2.2
    _blocks(ax, rig, height)
    _lines(ax, rig, tensions, shades, factor, height)
    _hook(ax, f"hook load {load * factor:.4g} {unit}, {motion}", lines)
    assert ax.figure is not None
    bar = ax.figure.colorbar(shades, ax=ax, orientation="horizontal", shrink=0.6, pad=0.02)
    bar.set_label(f"tension [{unit}]")
    ax.set_aspect("equal")
    ax.set_xlim(-1.0, lines + 3.4 + 1.3 * rig.reeving.lead_sheaves)
    ax.set_ylim(-2.6, height + 1.4)
    ax.set_axis_off()
    return ax


def _shades(tensions: Tensions, factor: float) -> ScalarMappable:
    """Map tension to a color that darkens without a turn, so that it reads in gray."""
    from matplotlib import colormaps
    from matplotlib.cm import ScalarMappable
    from matplotlib.colors import ListedColormap, Normalize

    every = factor * np.concatenate(
        [
            tensions.lines_si,
            [tensions.fast_line_si, tensions.fast_line_at_crown_si, tensions.dead_line_si],
        ]
    )
    low, high = float(every.min()), float(every.max())
    if high - low < 1e-9 * high:
        low, high = 0.9 * low, 1.1 * high
    # The palest quarter of the map would not be seen on white paper.
    colors = colormaps["YlGnBu"](np.linspace(0.25, 1.0, 256))
    return ScalarMappable(Normalize(low, high), ListedColormap(colors))


def _blocks(ax: Axes, rig: Rig, height: float) -> None:
    """Draw sheaves, the frames of the blocks, and the numbers of the sheaves."""
    from matplotlib.patches import Circle, FancyBboxPatch

    on_crown = rig.reeving.on_crown
    crown = [m + 0.5 for m, up in enumerate(on_crown, start=1) if up]
    traveling = [m + 0.5 for m, up in enumerate(on_crown, start=1) if not up]
    fixed = rig.reeving.lines % 2 == 0
    frames = (
        ("crown block", ([0.5] if fixed else []) + crown, height, 1.0),
        ("traveling block", traveling, 0.0, -1.0),
    )
    for title, middles, level, side in frames:
        low, high = min(middles, default=1.5) - 0.5, max(middles, default=1.5) + 0.5
        if side < 0 and not fixed:
            low = 0.7  # the dead end hangs on the block
        edge = level if side > 0 else level - 0.75
        ax.add_patch(
            FancyBboxPatch(
                (low, edge),
                high - low,
                0.75,
                boxstyle="round,pad=0,rounding_size=0.15",
                facecolor="#d9d9d9",
                edgecolor="#333333",
                linewidth=0.8,
                zorder=1,
            )
        )
        ax.text(
            0.5 * (low + high),
            level + side * 0.98,
            title,
            ha="center",
            va="bottom" if side > 0 else "top",
            fontsize=8.5,
        )
        for middle in middles:
            ax.add_patch(Circle((middle, level), 0.92 * _RADIUS, zorder=2, **_STEEL))
    if fixed:
        _number(ax, 0.5, height, "dead", "dead-line sheave")
    for number, middle in enumerate(crown, start=1):
        _number(ax, middle, height, f"C{number}", f"crown sheave {number}")
    for number, middle in enumerate(traveling, start=1):
        _number(ax, middle, 0.0, f"T{number}", f"traveling sheave {number}")


def _number(ax: Axes, x: float, y: float, text: str, gid: str) -> None:
    ax.text(x, y, text, ha="center", va="center", fontsize=6.5, zorder=5, gid=gid)


def _lines(
    ax: Axes, rig: Rig, tensions: Tensions, shades: Any, factor: float, height: float
) -> None:
    """Draw every part of the rope from the anchor to the drum."""
    on_crown, lines = rig.reeving.on_crown, rig.reeving.lines
    for m in range(1, lines + 1):
        above = 0.5 if not on_crown[m - 1] else -0.5
        # The upper sheave of a line lies toward the drum if its own sheave is on the crown.
        x, y = _strand(float(m), 0.0, height, upper=-above, lower=above)
        if m == 1 and lines % 2 == 1:
            x, y = _strand(1.0, -0.4, height, upper=-above, lower=None)
        value = float(tensions.lines_si[m - 1])
        _part(ax, f"line {m}", x, y, value, shades, factor, (m, 0.5 * height))
    if lines % 2 == 0:
        x, y = _strand(0.0, -1.6, height, upper=0.5, lower=None)
        _part(
            ax, "dead line", x, y, float(tensions.dead_line_si), shades, factor, (0.0, 0.5 * height)
        )
        _anchor(ax)
    else:
        _dead_end(ax)
    _fast_line(ax, rig, tensions, shades, factor, height)


def _strand(
    x: float, low: float, high: float, *, upper: float | None, lower: float | None
) -> tuple[Array, Array]:
    """Points of a vertical line with a quarter turn around the sheaves at its ends.

    `upper` and `lower` say on which side of the line the middle of the sheave is.
    """
    angle = np.linspace(0.0, 0.5 * np.pi, 12)
    xs, ys = [np.array([x, x])], [np.array([low, high])]
    if lower is not None:
        xs.insert(0, x + lower * (1.0 - np.cos(angle[::-1])))
        ys.insert(0, low - _RADIUS * np.sin(angle[::-1]))
    if upper is not None:
        xs.append(x + upper * (1.0 - np.cos(angle)))
        ys.append(high + _RADIUS * np.sin(angle))
    return np.concatenate(xs), np.concatenate(ys)


def _part(
    ax: Axes,
    name: str,
    x: Array,
    y: Array,
    tension: float,
    shades: Any,
    factor: float,
    label: tuple[float, float] | None,
) -> None:
    value = tension * factor
    # A dark core around each line keeps pale ones visible.
    ax.plot(x, y, color="#222222", linewidth=4.2, solid_capstyle="butt", zorder=3)
    ax.plot(
        x,
        y,
        color=shades.to_rgba(value),
        linewidth=3.0,
        solid_capstyle="butt",
        zorder=4,
        gid=name,
    )
    if label is not None:
        ax.text(
            *label,
            _digits(value),
            rotation=90,
            ha="center",
            va="center",
            fontsize=7.5,
            zorder=6,
            gid=name,
            bbox={"facecolor": "white", "edgecolor": "#999999", "linewidth": 0.4, "pad": 1.4},
        )


def _digits(value: float) -> str:
    """Three digits, zeros at the end included; all of a whole number."""
    return f"{value:#.3g}".rstrip(".") if value < 1000.0 else f"{value:.0f}"


def _fast_line(
    ax: Axes, rig: Rig, tensions: Tensions, shades: Any, factor: float, height: float
) -> None:
    """Draw the line from the crown to the drum, under the lead sheaves if there are any."""
    from matplotlib.patches import Circle

    start, leads = rig.reeving.lines + 1.0, rig.reeving.lead_sheave_frictions
    ratio = {"hoisting": 1.0, "lowering": -1.0, "static": 0.0}[tensions.motion]
    x, y = _strand(start, -1.0, height, upper=-0.5, lower=0.5 if leads else None)
    value = float(tensions.fast_line_at_crown_si)
    name = "fast line at crown" if leads else "fast line"
    _part(ax, name, x, y, value, shades, factor, (start, 0.5 * height))
    drum = start + (0.75 if not leads else 1.3 * len(leads) + 1.25)
    for lead, friction in enumerate(leads, start=1):
        middle = start + 0.5 + 1.3 * (lead - 1)
        ax.add_patch(Circle((middle, -1.0), 0.92 * _RADIUS, zorder=2, **_STEEL))
        _number(ax, middle, -1.0, f"L{lead}", f"lead sheave {lead}")
        value *= friction**ratio
        last = lead == len(leads)
        end = drum if last else middle + 1.3
        run = np.array([middle, end]), np.array([-1.5, -1.5])
        _part(ax, "fast line" if last else f"lead line {lead}", *run, value, shades, factor, None)
        if last:
            text = _digits(float(tensions.fast_line_si) * factor)
            ax.text(
                0.5 * (middle + end) - 0.2,
                -1.75,
                text,
                ha="center",
                va="top",
                fontsize=7.5,
                gid="fast line",
            )
    level = -0.75 if leads else -1.0
    ax.add_patch(Circle((drum, level), 0.75, zorder=5, facecolor="#d9d9d9", edgecolor="#333333"))
    ax.add_patch(Circle((drum, level), 0.18, zorder=6, facecolor="white", edgecolor="#333333"))
    ax.text(drum, level - 1.0, "drum", ha="center", va="top", fontsize=8.5)


def _anchor(ax: Axes) -> None:
    from matplotlib.patches import Rectangle

    ax.add_patch(Rectangle((-0.4, -1.9), 0.8, 0.5, zorder=5, hatch="////", **_STEEL))
    ax.text(0.0, -2.05, "anchor", ha="center", va="top", fontsize=8.5)


def _dead_end(ax: Axes) -> None:
    """Draw where the line is tied to the traveling block, with an odd number of lines."""
    from matplotlib.patches import Rectangle

    ax.add_patch(Rectangle((0.75, -0.65), 0.5, 0.4, zorder=5, hatch="////", **_STEEL))
    ax.text(0.6, -0.45, "dead end", ha="right", va="center", fontsize=8.5)


def _hook(ax: Axes, text: str, lines: int) -> None:
    middle = 0.5 * (lines + 1.0)
    ax.annotate(
        "",
        (middle, -2.2),
        xytext=(middle, -1.35),
        arrowprops={"arrowstyle": "-|>", "color": "black", "linewidth": 1.6},
    )
    ax.text(middle + 0.25, -1.9, text, ha="left", va="center", fontsize=8.5)
