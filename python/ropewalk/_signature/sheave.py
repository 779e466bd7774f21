"""Arguments and signatures of the subject `sheave`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import STRESS

PARAMETERS: dict[str, Parameter] = {}

SIGNATURES: dict[str, Signature] = {
    "sheave.bearing_pressure": Signature(
        ("rope_tension", "rope_diameter", "sheave_diameter"),
        STRESS,
        "Radial bearing pressure on the projected area.",
    ),
}
