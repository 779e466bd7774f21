"""Arguments and signatures of the subject `drillstring`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import (
    ANGLE,
    COUNT,
    DENSITY,
    FORCE,
    FORCE_PER_LENGTH,
    LENGTH,
    MASS,
    MASS_PER_LENGTH,
    NUMBER,
)

PARAMETERS: dict[str, Parameter] = {
    # Weight
    "steel_density": Parameter(DENSITY, "ppg", "Density of the steel of the string.", 65.5),
    "density": Parameter(DENSITY, "lb/ft**3", "Density of the material.", 489.5),
    "outer_diameter": Parameter(LENGTH, "in", "Outer diameter of the tube.", 8.0),
    "inner_diameter": Parameter(LENGTH, "in", "Inner diameter of the tube; 0 for a bar.", 2.8125),
    "mass_per_length": Parameter(
        MASS_PER_LENGTH, "lb/ft", "Mass per length in air, joints or couplings included.", 19.5
    ),
    "buoyancy_factor": Parameter(NUMBER, "", "Weight in mud over weight in air.", 0.847),
    "length": Parameter(LENGTH, "ft", "Length along the hole.", 5000.0),
    # Tool joints
    "plain_mass_per_length": Parameter(
        MASS_PER_LENGTH, "lb/ft", "Mass per length of the plain-end tube.", 17.93
    ),
    "upset_mass": Parameter(MASS, "lb", "Mass added by the upsets of one pipe.", 8.6),
    "tool_joint_length": Parameter(
        LENGTH, "in", "Length of pin and box together, between the tapers.", 17.0
    ),
    "tool_joint_outer_diameter": Parameter(
        LENGTH, "in", "Outer diameter of the tool joint.", 6.375
    ),
    "tool_joint_inner_diameter": Parameter(
        LENGTH, "in", "Bore of the pin of the tool joint.", 3.75
    ),
    "elevator_diameter": Parameter(
        LENGTH, "in", "Diameter of the box at the elevator upset.", 5.125
    ),
    # Drag
    "tension": Parameter(
        FORCE, "lbf", "Tension at the lower end; negative where the string is pushed.", 50_000.0
    ),
    "inclination": Parameter(ANGLE, "deg", "Angle of the hole from the vertical.", 60.0),
    "inclination_change": Parameter(
        ANGLE, "deg", "Inclination at the upper end less that at the lower end.", -2.0
    ),
    "azimuth_change": Parameter(
        ANGLE, "deg", "Azimuth at the upper end less that at the lower end.", 1.0
    ),
    "friction_coefficient": Parameter(
        NUMBER, "", "Friction between string and wall; 0.25 to 0.40 in water-base mud.", 0.3
    ),
    "direction": Parameter(COUNT, "", "+1 pulled up, -1 lowered, 0 rotated off bottom.", 1),
}

_TOOL_JOINT = (
    "tool_joint_length",
    "tool_joint_outer_diameter",
    "tool_joint_inner_diameter",
    "elevator_diameter",
)
_ELEMENT = (
    "tension",
    "pipe_weight",
    "length",
    "inclination",
    "inclination_change",
    "azimuth_change",
)
#: A short element: its angles are small.
_SHORT = {"length": 90.0}

SIGNATURES: dict[str, Signature] = {
    "drillstring.buoyancy_factor": Signature(
        ("mud_density", "steel_density"), NUMBER, "Weight in mud over weight in air."
    ),
    "drillstring.tube_mass_per_length": Signature(
        ("outer_diameter", "inner_diameter", "density"), MASS_PER_LENGTH, "Mass per length."
    ),
    "drillstring.buoyed_weight_per_length": Signature(
        ("mass_per_length", "buoyancy_factor"), FORCE_PER_LENGTH, "Weight per length in mud."
    ),
    "drillstring.tool_joint_mass": Signature(_TOOL_JOINT, MASS, "Mass of box and pin."),
    "drillstring.jointed_mass_per_length": Signature(
        ("plain_mass_per_length", "upset_mass", *_TOOL_JOINT),
        MASS_PER_LENGTH,
        "Mass per length, averaged over pipe and joint.",
    ),
    "drillstring.slant_pull": Signature(
        ("pipe_weight", "length", "inclination", "friction_coefficient", "direction"),
        FORCE,
        "Tension at the top of the section less tension at its bottom.",
    ),
    "drillstring.drag_normal_force": Signature(
        _ELEMENT, FORCE, "Force between element and wall.", _SHORT
    ),
    "drillstring.drag_tension_change": Signature(
        (*_ELEMENT, "friction_coefficient", "direction"),
        FORCE,
        "Tension at the upper end less tension at the lower end.",
        _SHORT,
    ),
}
