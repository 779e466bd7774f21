"""Arguments and signatures of the subject `rope`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import AREA, DENSITY, FORCE, MASS_PER_LENGTH, NUMBER

PARAMETERS: dict[str, Parameter] = {
    "strength_factor": Parameter(
        NUMBER, "", "Minimum breaking force factor K of the class and core.", 0.356
    ),
    "area_factor": Parameter(NUMBER, "", "Metallic area factor C of the class and core.", 0.460),
    "mass_factor": Parameter(
        DENSITY,
        "kg/hm/mm**2",
        "Mass factor W of the class and core, printed in kg per 100 m and square millimeter.",
        0.409,
    ),
}

SIGNATURES: dict[str, Signature] = {
    "rope.breaking_force_from_factor": Signature(
        ("rope_diameter", "wire_strength", "strength_factor"),
        FORCE,
        "Minimum breaking force of the rope.",
    ),
    "rope.mass_from_factor": Signature(
        ("rope_diameter", "mass_factor"), MASS_PER_LENGTH, "Mass per length of the rope."
    ),
    "rope.area_from_factor": Signature(
        ("rope_diameter", "area_factor"), AREA, "Metallic cross section of the rope."
    ),
}
