"""Arguments and signatures of the subject `design_factor`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import FORCE, NUMBER

PARAMETERS: dict[str, Parameter] = {
    "strength_efficiency": Parameter(
        NUMBER, "", "Share of its strength the bent rope keeps.", 0.96
    ),
    "minimum_design_factor": Parameter(NUMBER, "", "Least design factor that is allowed.", 3.0),
}

SIGNATURES: dict[str, Signature] = {
    "design_factor.design_factor": Signature(
        ("breaking_force", "rope_tension"), NUMBER, "Breaking force over rope tension."
    ),
    "design_factor.derated": Signature(
        ("breaking_force", "strength_efficiency", "rope_tension"),
        NUMBER,
        "Breaking force left in the bend over rope tension.",
    ),
    "design_factor.allowed_rope_tension": Signature(
        ("breaking_force", "minimum_design_factor"),
        FORCE,
        "Largest tension of the rope.",
    ),
}
