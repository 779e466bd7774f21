"""Arguments and signatures of the subject `drawworks`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import (
    ACCELERATION,
    ANGULAR_VELOCITY,
    LENGTH,
    MASS,
    MOMENT_OF_INERTIA,
    NUMBER,
    POWER,
    SPEED,
    TIME,
    TORQUE,
)

PARAMETERS: dict[str, Parameter] = {
    # Motors and gears
    "input_power": Parameter(POWER, "hp", "Power that goes in.", 1500.0),
    "motor_power": Parameter(POWER, "hp", "Rated power of one motor.", 1000.0),
    "base_speed": Parameter(
        ANGULAR_VELOCITY, "rpm", "Rotation at which a motor reaches its rated power.", 800.0
    ),
    "motor_speed": Parameter(ANGULAR_VELOCITY, "rpm", "Rotation of a motor.", 1200.0),
    "inertia": Parameter(
        MOMENT_OF_INERTIA, "lb*ft**2", "Moment of inertia about its own shaft.", 60_000.0
    ),
    "gear_ratio": Parameter(NUMBER, "", "Speed of the part over that of the other shaft.", 10.0),
    "total_efficiency": Parameter(
        NUMBER, "", "Power at the hook over power that goes in, all stages multiplied.", 0.77
    ),
    # The drum
    "lap_diameter": Parameter(
        LENGTH, "in", "Diameter of the circle on which the center of the rope lies.", 30.0
    ),
    # One stroke of the block
    "speed_limit": Parameter(SPEED, "ft/min", "Speed that is not exceeded.", 300.0),
    "start_acceleration": Parameter(ACCELERATION, "ft/s**2", "Acceleration after the start.", 1.5),
    "stop_deceleration": Parameter(
        ACCELERATION, "ft/s**2", "Deceleration before the stop, positive.", 1.5
    ),
}

_STROKE = ("travel", "speed_limit", "start_acceleration", "stop_deceleration")

SIGNATURES: dict[str, Signature] = {
    "drawworks.hook_power": Signature(("hook_load", "block_speed"), POWER, "Power at the hook."),
    "drawworks.hoisting_power": Signature(
        ("hook_load", "block_speed", "total_efficiency"), POWER, "Power that must go in."
    ),
    "drawworks.hoisting_speed": Signature(
        ("hook_load", "input_power", "total_efficiency"), SPEED, "Speed of the block."
    ),
    "drawworks.drum_speed": Signature(
        ("block_speed", "lines", "lap_diameter"), ANGULAR_VELOCITY, "Rotation of the drum."
    ),
    "drawworks.drum_torque": Signature(
        ("fast_line_tension", "lap_diameter"), TORQUE, "Torque on the drum."
    ),
    "drawworks.motor_torque": Signature(
        ("motor_power", "base_speed", "motor_speed"), TORQUE, "Torque of the motor."
    ),
    "drawworks.power_for_depth": Signature(("depth",), POWER, "Input power of the drawworks."),
    "drawworks.reflected_inertia": Signature(
        ("inertia", "gear_ratio"), MOMENT_OF_INERTIA, "Moment of inertia seen from the other shaft."
    ),
    "drawworks.hook_equivalent_mass": Signature(
        ("inertia", "lines", "lap_diameter"), MASS, "Mass at the hook that is as hard to move."
    ),
    "drawworks.sheave_equivalent_mass": Signature(
        ("inertia", "lines", "sheave_diameter"),
        MASS,
        "Mass at the hook that is as hard to move.",
        {"inertia": 2000.0},
    ),
    "drawworks.stand_peak_speed": Signature(_STROKE, SPEED, "Highest speed of the stroke."),
    "drawworks.stand_time": Signature(_STROKE, TIME, "Time of the stroke."),
}
