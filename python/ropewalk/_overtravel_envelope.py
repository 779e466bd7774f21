"""Stopping distances over loads, layers and speeds."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import QuantityLike, to_count, to_one, to_si
from ropewalk._overtravel_hoist import GRAVITY, BrakedHoist, Direction, check_direction
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    import xarray as xr

__all__ = ["stopping_envelope"]

Array = npt.NDArray[np.float64]


def stopping_envelope(
    hoist: BrakedHoist,
    direction: Direction,
    hook_load: QuantityLike,
    travel_speed: QuantityLike,
    *,
    reaction_time: QuantityLike,
    drive_acceleration: QuantityLike,
    power_lost: bool = True,
    layers: Sequence[int] | None = None,
) -> xr.Dataset:
    """Stopping distances over loads, layers and speeds, each stop within its layer.

    `check_campaign` goes through the layers that end on the way.

    Parameters
    ----------
    hoist : BrakedHoist
        Drum, line and brake.
    direction : {"hoisting", "lowering"}
        The way the block goes.
    hook_load, travel_speed
        Loads and speeds.
    reaction_time, drive_acceleration
        As for `Device`.
    power_lost
        True: lowering, nothing holds the load until the brake grips, and it falls, all that turns
        with it. False: the drive or an auxiliary brake is sure to hold it. No matter in hoisting.
    layers
        Layers; all of the drum if left out.

    Returns
    -------
    xarray.Dataset
        ``distance`` (m) along ``hook_load`` (N), ``layer``, ``speed`` (m/s), infinite where the
        brake is not stronger than the load; ``deceleration`` (m/s²) along ``hook_load`` and
        ``layer``, gravity at most in hoisting; ``slack``, true where it would be more and the line
        goes slack. Units stand in the attributes.

    Raises
    ------
    InadmissibleError
        If the direction, a layer or a value cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> hoist = rw.overtravel.BrakedHoist(
    ...     drum=rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=4),
    ...     reeving=rw.Reeving(10, "roller"), wraps_at_lowest=8,
    ...     brake_torque="120 kN*m", rotating_mass="1500 tonne",
    ... )
    >>> envelope = rw.overtravel.stopping_envelope(
    ...     hoist, "lowering", rw.Q([46, 300], "kip"), rw.Q([0.5, 1.5], "m/s"),
    ...     reaction_time="0.5 s", drive_acceleration="0 m/s**2",
    ... )
    >>> dict(envelope.sizes)
    {'hook_load': 2, 'layer': 4, 'speed': 2}
    """
    import xarray as xr

    where = "overtravel.stopping_envelope"
    check_direction(where, direction)
    loads = _row(where, "hook_load", hook_load, "force")
    speeds = _row(where, "travel_speed", travel_speed, "speed")
    given = range(1, hoist.drum.layers + 1) if layers is None else np.atleast_1d(layers)
    shown = np.array([to_count(where, "layers", layer) for layer in given])
    for layer in shown:
        hoist.drum.bend_diameter(int(layer))  # refuses a layer the drum does not have
    reaction = to_one(where, "reaction_time", reaction_time, "time")
    drive = to_one(where, "drive_acceleration", drive_acceleration, "acceleration")
    # The formula says whether they can be, also where the brake stops no load.
    _core.overtravel.stopping_distance(1.0, reaction, drive, 1.0)
    grid = loads[:, None], shown[None, :]
    deceleration = hoist._decelerations(direction, *grid)
    slack = (direction == "hoisting") & (hoist._drum_alone(grid[1]) > GRAVITY)
    before = np.broadcast_to(
        hoist._before_grip(direction, *grid, drive, power_lost), deceleration.shape
    )
    distance = stopping_distances(speeds, reaction, before[:, :, None], deceleration[:, :, None])
    return xr.Dataset(
        {
            "distance": (("hook_load", "layer", "speed"), distance, {"units": "m"}),
            "deceleration": (("hook_load", "layer"), deceleration, {"units": "m/s**2"}),
            "slack": (("hook_load", "layer"), np.broadcast_to(slack, deceleration.shape)),
        },
        coords={
            "hook_load": ("hook_load", loads, {"units": "N"}),
            "layer": ("layer", shown),
            "speed": ("speed", speeds, {"units": "m/s"}),
        },
        attrs={"direction": direction, "power_lost": int(power_lost)},
    )


def _row(where: str, name: str, value: QuantityLike, role: str) -> Array:
    """SI values of one argument that is one value or a row of them."""
    values = np.atleast_1d(to_si(where, name, value, role))
    if values.ndim > 1:
        text = f"{name} must be one value or a row, got an array of shape {values.shape}"
        raise InadmissibleError(f"{where}(): {text}", where, name)
    return values


def stopping_distances(speed: Any, reaction_time: Any, drive: Any, deceleration: Any) -> Array:
    """Stopping distances in SI; infinite where the brake does not slow the block."""
    given = np.broadcast_arrays(
        *(np.asarray(x, float) for x in (speed, reaction_time, drive)),
        np.asarray(deceleration, float),
    )
    slows = given[3] > 0.0
    distance = np.full(slows.shape, np.inf)
    if slows.any():
        distance[slows] = _core.overtravel.stopping_distance(*(x[slows] for x in given))
    return distance
