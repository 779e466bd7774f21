"""The arguments that more than one subject takes, as in the core's base/parameters.hpp."""

from __future__ import annotations

from ropewalk._signature.records import Parameter
from ropewalk._signature.roles import (
    ANGLE,
    AREA,
    COUNT,
    DENSITY,
    FORCE,
    FORCE_PER_LENGTH,
    LENGTH,
    NUMBER,
    STRESS,
)

PARAMETERS = {
    # Rope and sheave
    "rope_diameter": Parameter(LENGTH, "in", "Nominal diameter of the rope.", 1.375),
    "sheave_diameter": Parameter(LENGTH, "in", "Tread diameter of the sheave.", 50.0),
    "rope_tension": Parameter(FORCE, "lbf", "Tension in the rope.", 30_000.0),
    "breaking_force": Parameter(FORCE, "lbf", "Minimum breaking force of the rope.", 192_000.0),
    "wire_strength": Parameter(STRESS, "MPa", "Tensile strength grade of the wires.", 1770.0),
    "rope_modulus": Parameter(STRESS, "psi", "Modulus of elasticity of the rope.", 12e6),
    "metallic_area": Parameter(AREA, "in**2", "Metal of the rope's cross section.", 0.40),
    "bend_ratio": Parameter(NUMBER, "", "Sheave diameter over rope diameter, D/d.", 36.0),
    # Reeving
    "hook_load": Parameter(FORCE, "lbf", "Everything that hangs on the lines.", 400_000.0),
    "lines": Parameter(COUNT, "", "Number of lines strung.", 10),
    "sheave_friction": Parameter(
        NUMBER, "", "Tension ratio of the tight to the slack side of one turning sheave.", 1.04
    ),
    "lead_sheaves": Parameter(
        COUNT, "", "Turning sheaves between the crown block and the drum.", 0
    ),
    "reeving_efficiency": Parameter(
        NUMBER, "", "Efficiency of the reeving, measured or prescribed.", 0.81
    ),
    # Belts around wheels
    "wrap_angle": Parameter(ANGLE, "deg", "Angle that band or line lies around the wheel.", 90.0),
    # Springs and swings
    "damping_ratio": Parameter(NUMBER, "", "Viscous damping over critical; 0 undamped.", 0.1),
    "spring_rate": Parameter(FORCE_PER_LENGTH, "lbf/in", "Stiffness of the spring.", 1_500.0),
    # Strings
    "string_length": Parameter(LENGTH, "ft", "Length of the string.", 9_800.0),
    "depth": Parameter(LENGTH, "ft", "Depth of the hole along the string.", 10_000.0),
    "stand_length": Parameter(LENGTH, "ft", "Length of one stand of pipe.", 93.0),
    "block_weight": Parameter(
        FORCE, "lbf", "Weight of traveling block, hook and all that stays on them.", 40_000.0
    ),
    "pipe_weight": Parameter(
        FORCE_PER_LENGTH, "lbf/ft", "Buoyed weight of the pipe per length.", 14.0
    ),
    "mud_density": Parameter(DENSITY, "ppg", "Density of the mud.", 10.0),
}
