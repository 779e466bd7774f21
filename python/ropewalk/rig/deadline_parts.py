"""Anchor, sensor and weight indicator of a rig."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk._border import to_quantity
from ropewalk.deadline import Anchor

if TYPE_CHECKING:
    from ropewalk.rig.deadline_sections import DeadLineSection


@dataclass(frozen=True, slots=True)
class LeverSensor:
    """A hydraulic cell on which the anchor drum leans, in SI.

    Attributes
    ----------
    anchor_radius
        From the pivot to the middle of the rope, m.
    cell_arm
        From the pivot to the line of the cell's force, m.
    cell_area
        Area of the diaphragm, m².
    """

    anchor_radius: float
    cell_arm: float
    cell_area: float


@dataclass(frozen=True, slots=True)
class DeadLine:
    """The dead line and the weight indicator on it.

    Attributes
    ----------
    anchor
        How it is held.
    sensor
        What its tension is read from, or None.
    lines_set
        Lines the indicator is set for, or None: those strung.
    """

    anchor: Anchor
    sensor: LeverSensor | None
    lines_set: int | None


def make_dead_line(section: DeadLineSection | None) -> DeadLine | None:
    """Return what ``[deadline]`` says."""
    if section is None:
        return None
    anchor = section.anchor
    return DeadLine(
        anchor=Anchor(
            anchor.wraps, anchor.friction, to_quantity(anchor.clamp_holding, "force"), anchor.clamps
        ),
        sensor=None if section.sensor is None else LeverSensor(**section.sensor.model_dump()),
        lines_set=section.lines_set,
    )
