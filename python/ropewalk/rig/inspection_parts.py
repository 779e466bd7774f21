"""What the last inspection found on line and grooves, in SI."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from datetime import datetime

    from ropewalk.rig.inspection_sections import InspectionSection


@dataclass(frozen=True, slots=True)
class Inspection:
    """Findings of one inspection, each at its worst place; None is what was not looked at.

    Attributes
    ----------
    date
        Day of the inspection.
    lay
        ``"regular"`` or ``"lang"``.
    rope_category
        Rope category number of ISO 4309.
    broken_in_lay, broken_in_strand
        Broken wires in one rope lay, and in one strand of it.
    broken_in_6d, broken_in_30d
        Visible broken wires on so many rope diameters.
    valley_breaks
        Wires broken between strands in one rope lay.
    diameter, baseline_diameter
        Where the line is thinnest, and when it was new, m.
    outer_wire_loss, strength_loss
        Shares, 0 to 1.
    corrosion, distortion, heat_damage
        True if there is any.
    crown_groove_radii, block_groove_radii
        Groove radii of the sheaves, m.
    """

    date: datetime | None = None
    lay: str | None = None
    rope_category: int | None = None
    broken_in_lay: int | None = None
    broken_in_strand: int | None = None
    broken_in_6d: int | None = None
    broken_in_30d: int | None = None
    valley_breaks: int | None = None
    diameter: float | None = None
    baseline_diameter: float | None = None
    outer_wire_loss: float | None = None
    strength_loss: float | None = None
    corrosion: bool | None = None
    distortion: bool | None = None
    heat_damage: bool | None = None
    crown_groove_radii: tuple[float, ...] | None = None
    block_groove_radii: tuple[float, ...] | None = None


def make_inspection(section: InspectionSection | None) -> Inspection | None:
    """Return the findings of ``[inspection]``."""
    if section is None:
        return None
    found = section.model_dump()
    for key in ("crown_groove_radii", "block_groove_radii"):
        found[key] = None if found[key] is None else tuple(found[key])
    return Inspection(**found)
