"""Arguments and signatures of the subject `overtravel`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import ACCELERATION, LENGTH, SPEED, TIME

PARAMETERS: dict[str, Parameter] = {
    "reaction_time": Parameter(
        TIME, "s", "From the set point until the brake grips: sensing, valves, clutch.", 0.5
    ),
    "drive_acceleration": Parameter(
        ACCELERATION, "m/s**2", "Acceleration of the block in that time.", 0.2
    ),
    "stopping_room": Parameter(LENGTH, "m", "Way there is from the set point.", 2.0),
    "line_slipped": Parameter(LENGTH, "ft", "Line slipped since the device was set.", 60.0),
    "line_cut": Parameter(LENGTH, "ft", "Line cut off since the device was set.", 80.0),
}

_TIMES = ("reaction_time", "drive_acceleration", "deceleration")

SIGNATURES: dict[str, Signature] = {
    "overtravel.stopping_distance": Signature(
        ("travel_speed", *_TIMES), LENGTH, "Way of the block from the set point to standstill."
    ),
    "overtravel.allowed_speed": Signature(
        ("stopping_room", *_TIMES), SPEED, "Largest speed from which the block stops in the room."
    ),
    "overtravel.trip_height_shift": Signature(
        ("line_slipped", "line_cut", "lines"),
        LENGTH,
        "Height by which the block stands higher at a given wrap; negative if lower.",
    ),
}
