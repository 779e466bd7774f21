"""The tables of a rig file on the dead line: anchor, sensor, weight indicator."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ropewalk.rig._fields import Area, Count, Force, Length, Positive, Section


class AnchorSection(Section):
    """``[deadline.anchor]``: how the dead line is held; nothing is published for any anchor."""

    wraps: Positive = Field(description="Laps of the line on the anchor drum.")
    friction: Annotated[float, Field(gt=0.0, le=1.0, strict=False)] = Field(
        description="Friction between rope and anchor drum; without any the wraps hold nothing."
    )
    clamps: Count = Field(default=1, description="Equal clamps behind the wraps.")
    clamp_holding: Force = Field(description="Pull that one clamp holds, by its maker or a test.")


class SensorSection(Section):
    """``[deadline.sensor]``: a hydraulic cell on which the anchor drum leans."""

    anchor_radius: Length = Field(description="From the pivot to the middle of the rope.")
    cell_arm: Length = Field(description="From the pivot to the line of the cell's force.")
    cell_area: Area = Field(description="Area of the diaphragm of the cell.")


class DeadLineSection(Section):
    """``[deadline]``: the dead line and the weight indicator on it."""

    lines_set: Count | None = Field(
        default=None, description="Lines the indicator is set for; those strung if left out."
    )
    anchor: AnchorSection
    sensor: SensorSection | None = None
