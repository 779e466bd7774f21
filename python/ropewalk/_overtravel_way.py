"""The way of a block from a set point to standstill, layer by layer of the drum."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk import _core

if TYPE_CHECKING:
    from ropewalk._overtravel_hoist import BrakedHoist, Device, Direction

__all__ = ["layers_at_rest", "ways_to_rest"]

Array = npt.NDArray[np.float64]


def ways_to_rest(
    hoist: BrakedHoist,
    device: Device,
    direction: Direction,
    load: Array,
    speed: Array,
    power_lost: bool,
) -> Array:
    """Way of each row from the set point of a device, SI; infinite where nothing stops the block.

    Each layer has its own radius, so its own deceleration: within a layer the motion is uniform,
    before the brake grips and after, and where a layer ends the block keeps its speed.
    """
    way, velocity = np.zeros_like(load), np.array(speed, dtype=np.float64)
    left = np.full_like(load, device.reaction_time_si)
    stands = np.zeros(load.shape, dtype=bool)
    for layer, end in _layers_ahead(hoist, device, direction):
        slow = hoist._decelerations(direction, load, layer)
        drive = device.drive_acceleration_si
        before = hoist._before_grip(direction, load, layer, drive, power_lost)
        # Until the brake grips
        through = _time_through(end - way, velocity, before)
        gripped = ~stands & (left <= through)
        time = np.where(stands, 0.0, np.minimum(left, through))
        way = np.where(stands | gripped, way + velocity * time + 0.5 * before * time**2, end)
        velocity = velocity + before * time
        left = left - time
        # On the brake
        slows = slow > 0.0
        rest = np.where(slows, velocity**2 / (2.0 * np.where(slows, slow, 1.0)), np.inf)
        halts = gripped & (way + rest <= end)
        goes_on = gripped & ~halts
        if np.isfinite(end):
            squared = velocity**2 - 2.0 * slow * (end - way)
            velocity = np.where(goes_on, np.sqrt(np.maximum(squared, 0.0)), velocity)
        way = np.where(halts, way + rest, np.where(goes_on, end, way))
        stands = stands | halts
    return way


def layers_at_rest(hoist: BrakedHoist, device: Device, up: bool, way: Array) -> Any:
    """Layer where each row stands, at most the last and at least the first of the drum."""
    layers = _layers_ahead(hoist, device, "hoisting" if up else "lowering")
    last = layers[-1][0]
    at = np.full(way.shape, last)
    for layer, end in reversed(layers):
        at = np.where(way <= end, layer, at)
    return at


def _layers_ahead(
    hoist: BrakedHoist, device: Device, direction: Direction
) -> list[tuple[int, float]]:
    """Layers the line leaves the drum from on the way, and the way to the end of each, m."""
    up = direction == "hoisting"
    start = device.crown_si if up else device.floor_si
    first = int(hoist._layers(start))
    layers = range(first, hoist.drum.layers + 1) if up else range(first, 0, -1)
    ahead = []
    for layer in layers:
        wraps = float(hoist.drum.laps_per_layer) * (layer if up else layer - 1)
        height = _core.overtravel.height_at_wraps(
            hoist.drum._drum(), float(hoist.reeving.lines), hoist.wraps_at_lowest, wraps
        )
        ahead.append((layer, abs(float(height) - start)))
    # Past the last the drum is full or bare: the layer stays.
    ahead[-1] = (ahead[-1][0], np.inf)
    return ahead


def _time_through(room: Any, speed: Array, acceleration: Any) -> Any:
    """Time for a way at a speed and an acceleration that is not negative; infinite if it rests."""
    if not np.all(np.isfinite(room)):
        return np.full_like(speed, np.inf)
    twice = speed + np.sqrt(speed**2 + 2.0 * acceleration * room)
    return np.where(twice > 0.0, 2.0 * room / np.where(twice > 0.0, twice, 1.0), np.inf)
