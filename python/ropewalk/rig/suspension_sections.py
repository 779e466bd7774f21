"""The tables of a rig file on the suspension: ratings, weights, hook spring."""

from __future__ import annotations

from pydantic import Field

from ropewalk.rig._fields import Damping, Force, ForceOrZero, ForcePerLength, Section


class SuspensionPartSection(Section):
    """``[[suspension.part]]``: one part that hangs below the traveling block."""

    name: str = Field(description="What it is called in results.")
    rated_load: Force = Field(description="Load rating, from its nameplate; links as a set.")
    weight: ForceOrZero = Field(description="Own weight.")
    bearing_rating: Force | None = Field(
        default=None,
        description="Load rating of its bearing, of a swivel or top drive, where it has one; the "
        "lower of the two ratings counts.",
    )


class ElevatorSection(Section):
    """``[[suspension.elevator]]``: the elevator that carries one string of the plan."""

    string: str = Field(description="Name of the string it carries.")
    tubular: str = Field(
        description='What it carries, as in suspension.elevators_for(), "collared casing".'
    )
    kind: str | None = Field(
        default=None, description="Type of elevator; the usual one for the tubular if left out."
    )
    rated_load: Force = Field(description="Load rating, from its nameplate.")
    weight: ForceOrZero = Field(description="Own weight.")


class HookSpringSection(Section):
    """``[suspension.hook_spring]``: the spring of the hook and its snubber."""

    sprung_weight: Force = Field(description="All that moves on the spring, with one stand.")
    spring_rate: ForcePerLength = Field(description="Rate of the spring.")
    damping_up: Damping = Field(description="Damping of the snubber as the hook rises.")
    damping_down: Damping = Field(description="Damping as the hook goes down.")
    friction: ForceOrZero = Field(description="Friction of seals and guides.")


class SuspensionSection(Section):
    """``[suspension]``: what hangs below the traveling block, from the top down."""

    part: list[SuspensionPartSection] = Field(min_length=1, description="The parts, top down.")
    elevator: list[ElevatorSection] = Field(
        default_factory=list,
        description="Elevators by string; each takes the place of the last part for its string.",
    )
    sheave_bearing_rating: Force | None = Field(
        default=None,
        description="Rating of the bearing of one sheave of the traveling block, at 100 rpm for "
        "3000 hours; lowers the rating of the block where the bearings carry less.",
    )
    hook_spring: HookSpringSection | None = None
