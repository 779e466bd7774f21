"""Life models and a bend that the fatigue tests share."""

from __future__ import annotations

from typing import Any

from ropewalk import fatigue

REFERENCE: dict[str, Any] = {
    "reference_life": 100_000,  # invented
    "reference_tension": "100 kN",
    "reference_rope_diameter": "28 mm",
    "reference_sheave_diameter": "700 mm",
}
BEND: dict[str, Any] = {
    "rope_tension": "100 kN",
    "rope_diameter": "28 mm",
    "sheave_diameter": "700 mm",
    "wire_strength": "1770 MPa",
    "breaking_force": "500 kN",
    "bend_length": "3 m",
}
# Constants are invented where they are the user's.
MODELS: dict[str, fatigue.LifeModel] = {
    "DruckerTachau": fatigue.DruckerTachau(),
    "FeyrerForm": fatigue.FeyrerForm(
        b0=1.0, b1=0.5, b2=6.5, b3=-0.3, b4=-1.8, b5=1.2, basis="discard"
    ),
    "FeyrerSecondEdition": fatigue.FeyrerSecondEdition(
        b0=1.0, b1=0.5, b2=6.5, b3=-1.8, basis="breakage", core_factor=0.81
    ),
    "En81": fatigue.En81(**REFERENCE),
    "HandbookRelativeLife": fatigue.HandbookRelativeLife(**REFERENCE, tension_exponent=2.3),
    "PowerLaw": fatigue.PowerLaw(0.25, 2.3, basis="discard"),
    "En13001": fatigue.En13001(1.0),
}


def cycles(model: fatigue.LifeModel, **changed: Any) -> Any:
    return model.cycles(**{**BEND, **changed}, outside_validity="ignore").cycles
