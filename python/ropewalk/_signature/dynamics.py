"""Arguments and signatures of the subject `dynamics`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import (
    ACCELERATION,
    AREA,
    COUNT,
    DENSITY,
    FORCE,
    FORCE_PER_LENGTH,
    FREQUENCY,
    LENGTH,
    NUMBER,
    SPEED,
    STRESS,
    TIME,
)

PARAMETERS: dict[str, Parameter] = {
    # The line
    "line_height": Parameter(LENGTH, "ft", "Length of one line between the blocks.", 100.0),
    "fast_line_length": Parameter(LENGTH, "ft", "Length of line from crown to drum.", 150.0),
    "dead_line_length": Parameter(LENGTH, "ft", "Length of line from crown to anchor.", 150.0),
    "stiffness": Parameter(FORCE_PER_LENGTH, "kN/m", "Stiffness of the line at the block.", 20e3),
    "other_stiffness": Parameter(
        FORCE_PER_LENGTH, "kN/m", "Stiffness of what hangs on it or carries it.", 50e3
    ),
    "static_stretch": Parameter(LENGTH, "mm", "Stretch of the line under the load at rest.", 90.0),
    # The string
    "string_modulus": Parameter(STRESS, "psi", "Modulus of elasticity of the string.", 30e6),
    "string_area": Parameter(AREA, "in**2", "Section of the steel of the string.", 5.275),
    "string_density": Parameter(
        DENSITY, "kg/m**3", "Mass of the string over the volume of its steel section.", 7850.0
    ),
    "mode": Parameter(COUNT, "", "Which of the natural frequencies, from the lowest.", 1),
    # Motion
    "pickup_speed": Parameter(
        SPEED, "ft/min", "Speed at which the slack is taken up, at the block.", 60.0
    ),
    "speed_change": Parameter(SPEED, "ft/s", "Change of the speed of the upper end.", 3.0),
    "upward_acceleration": Parameter(
        ACCELERATION, "m/s**2", "Upward acceleration, counted at the block.", 1.0
    ),
    "downward_acceleration": Parameter(
        ACCELERATION, "m/s**2", "Downward acceleration, counted at the block.", 1.0
    ),
    "ramp_time": Parameter(TIME, "s", "Time in which the acceleration rises.", 0.5),
    "natural_frequency": Parameter(
        FREQUENCY, "Hz", "Natural frequency of the load on the line.", 1.5
    ),
    "drop_height": Parameter(
        LENGTH, "mm", "Height the load falls before the line is straight.", 100.0
    ),
}

SIGNATURES: dict[str, Signature] = {
    "dynamics.line_stiffness": Signature(
        (
            "rope_modulus",
            "metallic_area",
            "lines",
            "line_height",
            "fast_line_length",
            "dead_line_length",
        ),
        FORCE_PER_LENGTH,
        "Stiffness of the line at the block.",
    ),
    "dynamics.locked_stiffness": Signature(
        ("rope_modulus", "metallic_area", "lines", "line_height"),
        FORCE_PER_LENGTH,
        "Stiffness of the lines at the block.",
    ),
    "dynamics.string_stiffness": Signature(
        ("string_modulus", "string_area", "string_length"),
        FORCE_PER_LENGTH,
        "Stiffness of the string.",
    ),
    "dynamics.series_stiffness": Signature(
        ("stiffness", "other_stiffness"), FORCE_PER_LENGTH, "Stiffness of both together."
    ),
    "dynamics.static_stretch": Signature(
        ("hook_load", "stiffness"), LENGTH, "Stretch of the line."
    ),
    "dynamics.natural_frequency": Signature(
        ("hook_load", "stiffness"), FREQUENCY, "Natural frequency, up and down."
    ),
    "dynamics.string_frequency": Signature(
        (
            "stiffness",
            "block_weight",
            "string_area",
            "string_length",
            "string_modulus",
            "string_density",
            "mode",
        ),
        FREQUENCY,
        "Natural frequency of the mode.",
    ),
    "dynamics.step_factor": Signature(("upward_acceleration",), NUMBER, "Peak over load at rest."),
    "dynamics.ramp_factor": Signature(
        ("upward_acceleration", "ramp_time", "natural_frequency"),
        NUMBER,
        "Peak over load at rest.",
    ),
    "dynamics.stop_factor": Signature(
        ("speed_change", "upward_acceleration", "natural_frequency"),
        NUMBER,
        "Peak over load at rest.",
    ),
    "dynamics.trough_factor": Signature(
        ("speed_change", "downward_acceleration", "natural_frequency"),
        NUMBER,
        "Least load over load at rest.",
    ),
    "dynamics.slack_speed": Signature(
        ("natural_frequency",), SPEED, "Speed of the block that may be stopped at once."
    ),
    "dynamics.pickup_factor": Signature(
        ("pickup_speed", "stiffness", "hook_load"), NUMBER, "Peak over load at rest."
    ),
    "dynamics.drop_factor": Signature(
        ("drop_height", "static_stretch"), NUMBER, "Peak over load at rest."
    ),
    "dynamics.wave_force": Signature(
        ("speed_change", "string_area", "string_modulus", "string_density"),
        FORCE,
        "Force on top of that at rest.",
    ),
    "dynamics.wave_return_time": Signature(
        ("string_length", "string_modulus", "string_density"), TIME, "Time until the wave is back."
    ),
}
