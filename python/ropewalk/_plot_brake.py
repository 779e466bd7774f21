"""Pictures of brakes: torque by speed, lowering balance, temperature, stopping envelope.

Exported by `ropewalk.plot`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ropewalk._border import to_one, to_quantity

if TYPE_CHECKING:
    import xarray as xr
    from matplotlib.axes import Axes

    from ropewalk._brake_balance import LoweringBrakes
    from ropewalk._brake_heat import TripTemperature
    from ropewalk._units import QuantityLike

__all__ = [
    "brake_torque_by_speed",
    "lowering_balance",
    "stopping_distance_by_speed",
    "temperature_over_trip",
]

_INK = "#0b3c5d"
_LIMIT = "#b23a48"
_GRAYS = ("#0b3c5d", "#6f97b3", "#8a8a8a", "#c0a36e")
_DASHES = ("-", "--", "-.", ":")


def brake_torque_by_speed(
    ax: Axes,
    brakes: LoweringBrakes,
    highest_speed: QuantityLike,
    *,
    load_torque: QuantityLike | None = None,
    torque_unit: str = "kN*m",
    speed_unit: str = "rpm",
) -> Axes:
    """Draw the torque of the auxiliary brakes against the speed of the drum.

    Parameters
    ----------
    ax
        Axes to draw into.
    brakes
        The brakes.
    highest_speed
        Right end of the axis.
    load_torque
        A load to draw as a line, with every speed at which it is in balance: a full dot where it
        settles, an open one beyond which it gains speed.
    torque_unit, speed_unit
        Units of the axes.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    where = "plot.brake_torque_by_speed"
    top = to_one(where, "highest_speed", highest_speed, "angular_velocity")
    highest = to_quantity(top, "angular_velocity")
    speed = to_quantity(np.linspace(0.0, top, 601), "angular_velocity")
    torque = brakes.torque(speed).to(torque_unit).magnitude
    ax.plot(speed.to(speed_unit).magnitude, torque, color=_INK, label="brakes")
    if load_torque is not None:
        load = to_quantity(to_one(where, "load_torque", load_torque, "torque"), "torque")
        balance = brakes.balance(load)
        height = load.to(torque_unit).magnitude
        ax.axhline(height, color=_LIMIT, linestyle="--", linewidth=1.0, label="load")
        for stable, face, text in (
            (True, _INK, "settles"),
            (False, "white", "gains speed above"),
        ):
            at = [
                one.rotation.to(speed_unit).magnitude
                for one in balance.speeds
                if one.stable is stable and one.rotation <= highest
            ]
            if at:
                heights = [height] * len(at)
                ax.plot(at, heights, "o", color=_INK, markerfacecolor=face, label=text)
        ax.legend(frameon=False)
    ax.set_xlabel(f"drum speed [{speed_unit}]")
    ax.set_ylabel(f"torque at the drum [{torque_unit}]")
    ax.set_xlim(left=0.0)
    ax.set_ylim(bottom=0.0)
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    return ax


def lowering_balance(
    ax: Axes,
    brakes: LoweringBrakes,
    largest_load: QuantityLike,
    *,
    highest_speed: QuantityLike | None = None,
    torque_unit: str = "kN*m",
    speed_unit: str = "rpm",
) -> Axes:
    """Draw the speeds at which loads and brakes are in balance; the unstable branch dashed.

    A load settles on the full branch as long as it is slower than the dashed one above it; beyond
    that it gains speed to the next full branch, or without end. Right of the curve every load runs
    away.

    Parameters
    ----------
    ax
        Axes to draw into.
    brakes
        The brakes.
    largest_load
        Right end of the axis: a torque at the drum.
    highest_speed
        Top of the axis; chosen from the curve if left out.
    torque_unit, speed_unit
        Units of the axes.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    where = "plot.lowering_balance"
    top = to_one(where, "largest_load", largest_load, "torque")
    peak = brakes.balance(to_quantity(top, "torque")).largest_load_si
    if highest_speed is not None:
        limit = to_one(where, "highest_speed", highest_speed, "angular_velocity")
    else:
        limit = _speeds_worth_seeing(brakes, min(top, peak * (1.0 - 1e-9)))
    factor = to_quantity(1.0, "torque").to(torque_unit).magnitude
    turn = to_quantity(1.0, "angular_velocity").to(speed_unit).magnitude
    # Every speed is in balance with one load: the curve of torque over speed, turned on its side.
    corner = brakes.motor_power_limit_si / max(brakes.motor_torque_limit_si, 1e-9)
    marks = [x for x in (brakes.critical_speed_si, corner) if x < limit]
    speed = np.unique([*np.linspace(0.0, limit, 1201), *marks])
    load = brakes.torque(to_quantity(speed, "angular_velocity")).magnitude
    rises = np.diff(load) > 0.0
    for shown, style, text in ((rises, "-", "settles"), (~rises, "--", "gains speed above")):
        # A piece between two speeds is drawn with both ends, so that the branches meet.
        drawn = np.append(shown, False) | np.insert(shown, 0, False)
        ax.plot(
            np.where(drawn, load * factor, np.nan),
            np.where(drawn, speed * turn, np.nan),
            color=_INK,
            linestyle=style,
            label=text,
        )
    if peak < top:
        ax.axvspan(peak * factor, top * factor, color="#eeeeee", label="runs away at once")
    ax.set_ylim(0.0, limit * turn)
    ax.set_xlim(0.0, top * factor)
    ax.set_xlabel(f"torque of the load at the drum [{torque_unit}]")
    ax.set_ylabel(f"drum speed [{speed_unit}]")
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    ax.legend(frameon=False, loc="upper right")
    return ax


def _speeds_worth_seeing(brakes: LoweringBrakes, heaviest: float) -> float:
    """Top of the axis: well above the speeds at which loads settle, rad/s."""
    loads = heaviest * np.array([0.1, 0.5, 1.0])
    found = [one for load in loads for one in brakes.balance(to_quantity(load, "torque")).speeds]
    settled = [one.rotation_si for one in found if one.stable]
    return 4.0 * max(settled or [one.rotation_si for one in found], default=1.0)


def temperature_over_trip(
    ax: Axes, trip: TripTemperature, *, limit: QuantityLike | None = None, unit: str = "delta_degC"
) -> Axes:
    """Draw the rise of temperature of discs or rims over a trip, stand by stand.

    Parameters
    ----------
    ax
        Axes to draw into.
    trip
        From `ropewalk.brake.temperature_over_trip`.
    limit
        A rise to draw as a line.
    unit
        Unit of the axis, a temperature difference.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    stand = np.arange(1, len(trip.lowered_si) + 1)
    lowered, rested = (one.to(unit).magnitude for one in (trip.lowered, trip.rested))
    ax.fill_between(stand, rested, lowered, color="#c9d8e2", linewidth=0.0)
    ax.plot(stand, lowered, color=_INK, label="stand is down")
    ax.plot(stand, rested, color=_INK, linestyle=":", label="rest is over")
    if limit is not None:
        rise = to_one("plot.temperature_over_trip", "limit", limit, "temperature")
        height = to_quantity(rise, "temperature").to(unit).magnitude
        ax.axhline(height, color=_LIMIT, linestyle="--", linewidth=1.0, label="limit")
    ax.set_xlabel("stand [1]")
    ax.set_ylabel(f"above the surroundings [{'K' if unit == 'delta_degC' else unit}]")
    ax.set_ylim(bottom=0.0)
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    ax.legend(frameon=False)
    return ax


def stopping_distance_by_speed(
    ax: Axes,
    envelope: xr.Dataset,
    *,
    layer: int,
    room: QuantityLike | None = None,
    load_unit: str = "kip",
    speed_unit: str = "m/s",
    length_unit: str = "m",
) -> Axes:
    """Draw stopping distance against speed, one curve a load, in one layer.

    Parameters
    ----------
    ax
        Axes to draw into.
    envelope
        From `ropewalk.overtravel.stopping_envelope`.
    layer
        Layer of rope on the drum.
    room
        Way there is from the set point, to draw as a line.
    load_unit, speed_unit, length_unit
        Units.

    Returns
    -------
    matplotlib.axes.Axes
        The same axes.
    """
    speed = to_quantity(envelope.speed.to_numpy(), "speed").to(speed_unit).magnitude
    meters = to_quantity(1.0, "length").to(length_unit).magnitude
    shown = envelope.distance.sel(layer=layer)
    for k, load in enumerate(envelope.hook_load.to_numpy()):
        distance = shown.sel(hook_load=load).to_numpy()
        text = f"{to_quantity(float(load), 'force').to(load_unit).magnitude:.0f} {load_unit}"
        if np.isinf(distance).all():
            text += ": does not stop"
        ax.plot(
            speed,
            np.where(np.isinf(distance), np.nan, distance * meters),
            color=_GRAYS[k % len(_GRAYS)],
            linestyle=_DASHES[k % len(_DASHES)],
            label=text,
        )
    if room is not None:
        way = to_one("plot.stopping_distance_by_speed", "room", room, "length") * meters
        ax.axhline(way, color=_LIMIT, linewidth=1.0, label="way there is")
    ax.set_xlabel(f"speed of the block, {envelope.attrs['direction']} [{speed_unit}]")
    ax.set_ylabel(f"stopping distance [{length_unit}]")
    ax.set_xlim(left=0.0)
    ax.set_ylim(bottom=0.0)
    ax.grid(visible=True, color="#dddddd", linewidth=0.6)
    ax.legend(frameon=False, title=f"hook load, layer {layer}")
    return ax
