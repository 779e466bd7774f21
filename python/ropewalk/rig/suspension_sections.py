"""The tables of a rig file on the suspension: ratings, weights, hook spring."""

from __future__ import annotations

from pydantic import Field

from ropewalk.rig._fields import Damping, Force, ForceOrZero, ForcePerLength, Section


class SuspensionPartSection(Section):
    """``[[suspension.part]]``: one part that hangs below the traveling block."""

    name: str = Field(description="What it is called in results.")
    rated_load: Force = Field(description="Load rating, from its nameplate; links as a set.")
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
    hook_spring: HookSpringSection | None = None
