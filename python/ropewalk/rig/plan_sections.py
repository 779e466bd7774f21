"""The tables of a well plan: mud, strings and operations.

They stand in a rig file, or in a file of their own.
"""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field

from ropewalk.rig._fields import (
    Acceleration,
    Count,
    Date,
    Density,
    FileSection,
    Force,
    ForceOrZero,
    Length,
    LengthOrZero,
    MassPerLength,
    Positive,
    Section,
    Share,
    Speed,
)


class MudSection(Section):
    """``[mud]``."""

    density: Density = Field(description="Density of the mud in the hole.")
    steel_density: Density = Field(description="Density of the steel of the strings.")


class TubularSection(Section):
    """One part of a string, counted from the bit upwards."""

    name: str = Field(description="What it is.")
    length: Length = Field(description="Length of this part; the topmost part fills the hole.")
    mass_per_length: MassPerLength = Field(description="Mass per length in air, joints included.")


class OperationSection(Section):
    """``[[operation]]``: one line of the well plan.

    Which keys a kind of operation needs, and which it can have, is said in
    `ropewalk.rig.operations.KEYS`.
    """

    kind: Literal[
        "drilling",
        "round trip",
        "short trip",
        "trip out",
        "trip in",
        "coring",
        "casing",
        "reaming",
        "circulating",
        "singles",
        "jarring",
        "waiting",
        "slip",
        "cut",
    ] = Field(description="What is done.")
    start: Date | None = Field(default=None, description="When the operation starts.")
    end: Date | None = Field(default=None, description="When it ends.")
    times: Count = Field(default=1, description="How often.")

    string: str | None = Field(default=None, description="Name of the string in [string].")
    depth: Length | None = Field(
        default=None, description="Depth reached, or from which the trip starts."
    )
    from_depth: LengthOrZero | None = Field(
        default=None, description="The shallower depth, where the operation begins or turns."
    )
    stand_length: Length | None = Field(
        default=None, description="Length of one stand, joint of drill pipe, or casing joint."
    )
    drag_up: Share = Field(
        default=0.0, description="Drag when hoisting, as a share of the weight in mud."
    )
    drag_down: Share = Field(
        default=0.0, description="Drag when lowering, as a share of the weight in mud."
    )
    passes: Positive | None = Field(
        default=None,
        description="Drilling: trips of work per depth drilled; 3 with a kelly and reaming.",
    )
    drive: Literal["kelly", "top drive"] | None = Field(
        default=None, description='What turns the string; "top drive" if left out.'
    )
    reams: Annotated[int, Field(ge=0)] | None = Field(
        default=None,
        description="How often each stand is reamed before the connection; with a kelly once if "
        "passes is 3 or more; else none.",
    )
    weight_on_bit: ForceOrZero | None = Field(
        default=None, description="Weight the bottom carries while drilling or reaming; none."
    )
    kelly_weight: Force | None = Field(default=None, description="Kelly and swivel.")
    strokes: Count | None = Field(
        default=None, description="How often the string goes up and down, or is overpulled."
    )
    travel: Length | None = Field(
        default=None, description="How far the block goes in each of these strokes."
    )
    overpull: ForceOrZero | None = Field(
        default=None, description="Pull of each blow of the jar beyond the string weight."
    )

    base_height: LengthOrZero = Field(
        default=0.0, description="Height of the block with the elevators at the slips."
    )
    block_speed: Speed | None = Field(
        default=None, description="Speed of the block, for dynamic loads; none if left out."
    )
    block_acceleration: Acceleration | None = Field(
        default=None, description="Acceleration of the block, likewise."
    )
    length: Length | None = Field(default=None, description="Line slipped or cut.")


Strings = dict[str, Annotated[list[TubularSection], Field(min_length=1)]]
Operations = Annotated[list[OperationSection], Field(min_length=1)]


class PlanFile(FileSection):
    """A well plan in a file of its own."""

    mud: MudSection
    string: Strings
    operation: Operations
