"""Arguments and signatures of the subject `sheave`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import LENGTH, NUMBER, STRESS

PARAMETERS: dict[str, Parameter] = {}

SIGNATURES: dict[str, Signature] = {
    "sheave.bend_ratio": Signature(
        ("sheave_diameter", "rope_diameter"), NUMBER, "Sheave diameter over rope diameter, D/d."
    ),
    "sheave.bearing_pressure": Signature(
        ("rope_tension", "rope_diameter", "sheave_diameter"),
        STRESS,
        "Radial bearing pressure on the projected area.",
    ),
    "sheave.bearing_pressure_ratio": Signature(
        ("rope_tension", "rope_diameter", "sheave_diameter", "wire_strength"),
        NUMBER,
        "Bearing pressure over the strength of the wire.",
    ),
    "sheave.strength_efficiency": Signature(
        ("bend_ratio",), NUMBER, "Share of its breaking force the bent rope keeps, 0 to 1."
    ),
    "sheave.groove_radius_new_min": Signature(
        ("rope_diameter",), LENGTH, "Smallest groove radius of a new or remachined sheave."
    ),
    "sheave.groove_radius_new_max": Signature(
        ("rope_diameter",), LENGTH, "Largest groove radius of a new or remachined sheave."
    ),
    "sheave.groove_radius_worn_min": Signature(
        ("rope_diameter",), LENGTH, "Smallest groove radius of a worn sheave."
    ),
    "sheave.groove_depth_min": Signature(
        ("rope_diameter",), LENGTH, "Smallest groove depth for drilling and casing lines."
    ),
    "sheave.groove_depth_max": Signature(
        ("rope_diameter",), LENGTH, "Largest groove depth for drilling and casing lines."
    ),
}
