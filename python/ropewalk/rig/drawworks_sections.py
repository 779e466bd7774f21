"""The tables of a rig file that describe the drawworks: motors, gears, inertia."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ropewalk.rig._fields import (
    AngularVelocity,
    Count,
    Force,
    MomentOfInertia,
    Positive,
    Power,
    Section,
    Time,
)

Efficiency = Annotated[float, Field(gt=0.0, le=1.0, strict=False)]


class MotorsSection(Section):
    """``[drawworks.motors]``: all alike; together they give the rated input power."""

    count: Count = Field(description="Number of motors.")
    base_speed: AngularVelocity = Field(description="Rotation at which rated power is reached.")
    top_speed: AngularVelocity = Field(description="Highest rotation.")
    inertia: MomentOfInertia = Field(
        default=0.0, description="Moment of inertia of one rotor; nothing unless given."
    )
    overload: Annotated[float, Field(ge=1.0, le=10.0, strict=False)] = Field(
        default=1.0, description="Torque and power for a while, over the rated ones."
    )
    overload_time: Time | None = Field(
        default=None,
        description="How long they may be overloaded in one stroke; no limit unless given.",
    )


class GearSection(Section):
    """``[[drawworks.gear]]``: one speed of the transmission."""

    ratio: Positive = Field(description="Motor speed over drum speed.")
    efficiency: Efficiency = Field(description="Power at the drum shaft over power of the motors.")
    inertia: MomentOfInertia = Field(
        default=0.0,
        description="Moment of inertia of what else turns in this gear, at the drum shaft.",
    )


class DrawworksSection(Section):
    """``[drawworks]``; motors, gears and drum_efficiency are given together or not at all."""

    power: Power = Field(description="Rated input power.")
    drum_efficiency: Efficiency | None = Field(
        default=None, description="Power of the fast line over power of the drum shaft."
    )
    drum_inertia: MomentOfInertia = Field(
        default=0.0, description="Moment of inertia of drum, shaft and rims; nothing unless given."
    )
    sheave_inertia: MomentOfInertia = Field(
        default=0.0, description="Moment of inertia of one sheave; nothing unless given."
    )
    line_pull: Force | None = Field(
        default=None, description="Rated pull of the fast line, from the nameplate."
    )
    motors: MotorsSection | None = None
    gear: list[GearSection] = Field(default=[])
