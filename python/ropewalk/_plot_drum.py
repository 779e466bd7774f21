"""Pictures of a drum: its layers, and the fleet angle along it. Exported by `ropewalk.plot`."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ropewalk._border import to_quantity

if TYPE_CHECKING:
    from matplotlib.axes import Axes

    from ropewalk._drum import Drum
    from ropewalk._drum_hold import FleetAngleLimit
    from ropewalk._units import QuantityLike

__all__ = ["drum_layers", "fleet_angle_along_drum"]

_INK = "#0b3c5d"
_LIMIT = "#b23a48"


def drum_layers(
    ax: Axes, drum: Drum, *, length_unit: str = "ft", diameter_unit: str = "in"
) -> Axes:
    """Draw the diameter the rope is bent on against its distance from the drum end.

    Each step is a layer; a tick on it is a crossover, a dot the point where the layer changes.

    Parameters
    ----------
    ax
        Axes to draw into.
    drum
        The drum.
    length_unit, diameter_unit
        Units of the axes.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    meters = to_quantity(1.0, "length")
    along, across = meters.to(length_unit).magnitude, meters.to(diameter_unit).magnitude
    layers = range(1, drum.layers + 1)
    ends = [*(drum.length_before(k).magnitude for k in layers), drum.capacity_si]
    diameters = np.array([drum.bend_diameter(k).magnitude for k in layers])
    ax.stairs(diameters * across, np.array(ends) * along, baseline=None, color=_INK, linewidth=1.8)
    for changes, marker, size in ((False, "|", 5.0), (True, "o", 5.0)):
        here = [one for one in drum.crossovers() if one.layer_change is changes]
        ax.plot(
            [one.from_drum_end_si * along for one in here],
            [diameters[one.layer - 1] * across for one in here],
            linestyle="none",
            marker=marker,
            markersize=size,
            color=_INK,
            label="change of layer" if changes else "crossover",
        )
    ax.set_xlabel(f"rope from the drum end [{length_unit}]")
    ax.set_ylabel(f"diameter the rope is bent on [{diameter_unit}]")
    ax.set_xlim(0.0, drum.capacity_si * along)
    rise = drum.rope_diameter_si * across
    ax.set_ylim(diameters[0] * across - rise, diameters[-1] * across + rise)
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    return ax


def fleet_angle_along_drum(
    ax: Axes,
    drum: Drum,
    *,
    traverse: QuantityLike,
    distance: QuantityLike,
    sheave_position: QuantityLike | None = None,
    limit: FleetAngleLimit | None = None,
    length_unit: str = "ft",
) -> Axes:
    """Draw the fleet angle against the rope on the drum.

    Parameters
    ----------
    ax
        Axes to draw into.
    drum
        The drum.
    traverse, distance, sheave_position
        As for `ropewalk.drum.Drum.fleet_angle`.
    limit
        Limits to draw as lines, from `ropewalk.drum.fleet_angle_limit`; none if left out.
    length_unit
        Unit of the length axis.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    per_layer = 33
    wraps = np.linspace(0.0, drum.wraps, drum.layers * (per_layer - 1) + 1)
    from_drum_end = drum.length_of(wraps)
    angle = drum.fleet_angle(
        from_drum_end, traverse=traverse, distance=distance, sheave_position=sheave_position
    )
    ax.plot(from_drum_end.to(length_unit).magnitude, angle.to("deg").magnitude, color=_INK)
    if limit is not None:
        lines = [
            (limit.maximum_si, "--", "largest"),
            (limit.minimum_si, ":", "least at the flange"),
        ]
        for radians, style, text in lines:
            for side in (1.0, -1.0) if radians > 0.0 else ():
                ax.axhline(
                    side * np.degrees(radians),
                    color=_LIMIT,
                    linestyle=style,
                    linewidth=0.9,
                    label=f"{text}, {limit.groove}, {limit.standard}" if side > 0.0 else None,
                )
    ax.set_xlabel(f"rope on the drum [{length_unit}]")
    ax.set_ylabel("fleet angle [deg]")
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    return ax
