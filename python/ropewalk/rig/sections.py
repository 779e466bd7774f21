"""The tables of a rig file: every parameter of a rig once, with its kind, default and meaning.

Quantities are written with their unit ("1.375 in"); bare numbers stand for counts and shares, and
for quantities only where the file declares ``units``.
A default is given only where a source or the definition of the thing names one.
"""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from ropewalk.rig._fields import (
    Count,
    FileSection,
    Force,
    Friction,
    Length,
    Positive,
    Section,
    Share,
)
from ropewalk.rig.brake_sections import BrakeSection, OvertravelSection
from ropewalk.rig.deadline_sections import DeadLineSection
from ropewalk.rig.drawworks_sections import DrawworksSection
from ropewalk.rig.inspection_sections import InspectionSection
from ropewalk.rig.limits_sections import LimitsSection, StuckSection
from ropewalk.rig.line_sections import DrumSection, LineSection, ProgramSection
from ropewalk.rig.mast_sections import MastSection
from ropewalk.rig.plan_sections import MudSection, Operations, Strings
from ropewalk.rig.sea_sections import CompensatorSection, SeaSection
from ropewalk.rig.suspension_sections import SuspensionSection


class RigSection(Section):
    """``[rig]``: what the file describes."""

    name: str = Field(description="Name of the rig.")
    site: str = Field(default="", description="Field or location.")
    invented: bool = Field(default=False, description="True: no such rig exists; an example.")


class RopeSection(Section):
    """``[rope]``: the drilling line, from the catalog."""

    construction: str = Field(description='Construction as in the catalog, "6x19 IWRC".')
    grade: str = Field(description='Grade as in the catalog, "EIPS".')
    diameter: Length = Field(description="Nominal diameter.")


class ReevingSection(Section):
    """``[reeving]``: how the line is strung."""

    lines: Count = Field(description="Lines strung between the blocks.")
    sheave_friction: Friction = Field(
        description='"roller", "plain", or the tension ratio of one turning sheave.'
    )
    lead_sheaves: Annotated[int, Field(ge=0)] = Field(
        default=0, description="Turning sheaves between crown and drum; 0 where there are none."
    )
    dead_line_sheave_turns: bool = Field(
        default=False, description="True if the dead-line sheave is free to turn."
    )


class SheavesSection(Section):
    """``[crown]``: the sheaves of the crown block."""

    sheave_diameter: Length = Field(description="Tread diameter of the sheaves.")
    groove_material: str = Field(description='Groove material, "manganese steel".')
    rated_load: Force = Field(description="Rating of the block, from its nameplate.")


class BlockSection(SheavesSection):
    """``[block]``: the traveling block and its travel."""

    weight: Force = Field(description="Block, hook, top drive: all that stays on the lines.")
    highest: Length = Field(
        description="Length of line between crown and block, block at its highest."
    )
    lowest: Length = Field(description="The same with the block at its lowest.")


class ReferenceLifeSection(Section):
    """``[life.reference]``: one known life, which scales the relative models."""

    cycles: Positive = Field(description="Bending cycles to discard at the reference point.")
    rope_tension: Force = Field(description="Rope tension there.")
    sheave_diameter: Length = Field(description="Sheave diameter there.")
    tension_exponent: Positive | None = Field(
        default=None,
        description="Fall of life with tension, for the table that knows D/d only; else none.",
    )
    note: str = Field(description="Where the life comes from.")


class PowerLawSection(Section):
    """``[life.power_law]``: two parameters fitted elsewhere."""

    scale: Positive = Field(description="Cycles at bearing pressure equal to wire strength.")
    exponent: Positive = Field(description="Exponent of the bearing-pressure ratio.")
    fitted_from: Positive = Field(description="Least bearing-pressure ratio of the data.")
    fitted_to: Positive = Field(description="Largest bearing-pressure ratio of the data.")
    note: str = Field(description="Where the parameters come from.")


class LifeSection(Section):
    """``[life]``: what the life models need and nobody publishes."""

    scatter_lg: Share = Field(description="Standard deviation of the decimal logarithm of life.")
    scatter_note: str = Field(description="Where the scatter comes from.")
    reference: ReferenceLifeSection | None = None
    power_law: PowerLawSection | None = None


class RigFile(FileSection):
    """A whole rig file; mud, string and operation are given together or not at all."""

    rig: RigSection
    rope: RopeSection
    reeving: ReevingSection
    crown: SheavesSection
    block: BlockSection
    drawworks: DrawworksSection
    mud: MudSection | None = None
    string: Strings | None = None
    operation: Operations | None = None
    life: LifeSection | None = None
    limits: LimitsSection = Field(default_factory=LimitsSection)
    stuck: StuckSection | None = None
    drum: DrumSection | None = None
    line: LineSection | None = None
    program: ProgramSection | None = None
    brake: BrakeSection | None = None
    overtravel: OvertravelSection | None = None
    deadline: DeadLineSection | None = None
    compensator: CompensatorSection | None = None
    sea: SeaSection | None = None
    mast: MastSection | None = None
    suspension: SuspensionSection | None = None
    inspection: InspectionSection | None = None
