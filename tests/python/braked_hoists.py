"""A hoist, a device and a stop for the tests of over-travel."""

from __future__ import annotations

import math
from typing import Any

import ropewalk as rw

DRUM = rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=4)


def hoist(**changed: Any) -> rw.overtravel.BrakedHoist:
    values: dict[str, Any] = {
        "drum": DRUM,
        "reeving": rw.Reeving(10, 1.04),
        "wraps_at_lowest": 8,
        "brake_torque": "120 kN*m",
        "rotating_mass": "1500 tonne",
    }
    return rw.overtravel.BrakedHoist(**{**values, **changed})


def device(name: str = "toggle", kind: Any = "drum wraps", **changed: Any) -> Any:
    values: dict[str, Any] = {"crown": "30 m", "floor": "-0.3 m", "reaction_time": "0.6 s"}
    values["drive_acceleration"] = "0 m/s**2"
    return rw.overtravel.Device(name, kind, **{**values, **changed})


def stop(
    load: Any,
    layer: int,
    delay_torque: Any,
    reaction: str = "0.6 s",
    direction: Any = "lowering",
    speed: str = "1.2 m/s",
) -> rw.brake.Stop:
    """Return the stop of `hoist` by the subject `brake`, which integrates forces of its own."""
    first, radius = (DRUM.lap_length(one).m_as("m") / (2 * math.pi) for one in (1, layer))
    return rw.brake.Stop(
        direction,
        speed,
        load,
        reeving=rw.Reeving(10, 1.04),
        drum_radius=rw.Q(radius, "m"),
        brake_torque="120 kN*m",
        rotating_mass=rw.Q(1500.0 * (first / radius) ** 2, "tonne"),
        delay=reaction,
        build_up="0 s",
        delay_torque=delay_torque,
    )
