"""What the life models of a rig need, from ``[life]``."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk.rig.problems import RigFileError

if TYPE_CHECKING:
    from ropewalk.rig.sections import LifeSection


@dataclass(frozen=True, slots=True)
class ReferenceLife:
    """One known life that scales the relative models, in SI."""

    cycles: float
    rope_tension: float
    sheave_diameter: float
    tension_exponent: float | None
    note: str


@dataclass(frozen=True, slots=True)
class FittedPowerLaw:
    """A power law of the bearing-pressure ratio, with the range of ratios it was fitted over."""

    scale: float
    exponent: float
    fitted_from: float
    fitted_to: float
    note: str


@dataclass(frozen=True, slots=True)
class Life:
    """What the life models need and nobody publishes."""

    scatter_lg: float
    scatter_note: str
    reference: ReferenceLife | None
    power_law: FittedPowerLaw | None


def make_life(section: LifeSection | None) -> Life | None:
    """Return the constants of life of ``[life]``."""
    if section is None:
        return None
    reference, law = section.reference, section.power_law
    if law is not None and law.fitted_to <= law.fitted_from:
        raise RigFileError("life.power_law.fitted_to must be more than fitted_from")
    return Life(
        scatter_lg=section.scatter_lg,
        scatter_note=section.scatter_note,
        reference=ReferenceLife(**reference.model_dump()) if reference else None,
        power_law=FittedPowerLaw(**law.model_dump()) if law else None,
    )
