"""The hoist a rig file describes, as objects of the subjects it is made of."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from ropewalk.errors import RopewalkError
from ropewalk.rig._refusals import placed
from ropewalk.rig._remembered import Remembered
from ropewalk.rig.brake_parts import Overtravel, RigBrake, make_brake, make_overtravel
from ropewalk.rig.deadline_parts import DeadLine, make_dead_line
from ropewalk.rig.drawworks_parts import DrawworksParts, make_drawworks
from ropewalk.rig.file import Reading, RigFileError, read
from ropewalk.rig.inspection_parts import Inspection, make_inspection
from ropewalk.rig.life_parts import Life, make_life
from ropewalk.rig.limits_parts import Limits, make_limits
from ropewalk.rig.line_parts import (
    DrumShape,
    Practice,
    StringUp,
    make_drum,
    make_practice,
    make_string_up,
)
from ropewalk.rig.mast_parts import RatedMast, make_mast
from ropewalk.rig.operations import make_operations, make_strings
from ropewalk.rig.plan import SERVICES, Operation
from ropewalk.rig.problems import named
from ropewalk.rig.sea_parts import SiteSea, make_compensator, make_sea, weight_on_compensator
from ropewalk.rig.suspension_parts import LoadPath, make_load_path

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from pathlib import Path

    from ropewalk.compensator import Compensator
    from ropewalk.drillstring import DrillString
    from ropewalk.reeving import Reeving
    from ropewalk.rig.file import Reading
    from ropewalk.rig.limits_sections import LimitsSection
    from ropewalk.rig.plan_sections import MudSection, TubularSection
    from ropewalk.rig.sections import (
        ReevingSection,
        RigFile,
        RopeSection,
        SheavesSection,
    )
    from ropewalk.rope import Rope


@dataclass(frozen=True, slots=True)
class Sheaves:
    """Sheaves of one block: diameter in m, rating of the block in N."""

    diameter: float
    groove_material: str
    rated_load: float


@dataclass(frozen=True, slots=True)
class Block:
    """The traveling block: weight in N, length of line between the blocks in m."""

    sheaves: Sheaves
    weight: float
    highest: float
    lowest: float


@dataclass(frozen=True, slots=True)
class Rig:
    """A hoist: rope, reeving, blocks, strings, well plan. Made by `load_rig`.

    What a file may leave out is None where it does, and operations are none. What needs it raises
    `RigFileError` and names the section. `weight_on_compensator` is what the
    gas carries besides the string, N. `reading` is the file it was made from, which studies change.
    """

    name: str
    site: str
    invented: bool
    rope: Rope
    reeving: Reeving
    crown: Sheaves
    block: Block
    drawworks_power: float
    strings: Mapping[str, DrillString]
    operations: tuple[Operation, ...]
    life: Life | None
    limits: Limits
    drum: DrumShape | None = None
    line: StringUp | None = None
    program: Practice | None = None
    brake: RigBrake | None = None
    overtravel: Overtravel | None = None
    deadline: DeadLine | None = None
    drawworks: DrawworksParts | None = None
    compensator: Compensator | None = None
    sea: SiteSea | None = None
    mast: RatedMast | None = None
    suspension: LoadPath | None = None
    inspection: Inspection | None = None
    weight_on_compensator: float | None = None
    reading: Reading[RigFile] | None = field(default=None, repr=False, compare=False)

    @property
    def travel(self) -> float:
        """Travel of the block from its lowest to its highest position, m."""
        return self.block.lowest - self.block.highest

    @property
    def known_life(self) -> Life:
        """What ``[life]`` has; RigFileError without it."""
        if self.life is None:
            raise RigFileError(f"{self.name} has no [life]: no scatter and no constants of life")
        return self.life

    @property
    def design_factor_standard(self) -> str:
        """Key of the table of minimum design factors to hold; RigFileError without one."""
        if self.limits.design_factor_standard is None:
            raise RigFileError(f"{self.name} has no [limits] design_factor_standard to hold")
        return self.limits.design_factor_standard

    @property
    def heaviest_trip(self) -> Operation:
        """The round trip of the plan with the largest hook load."""
        self._need_operations()
        trips = [one for one in self.operations if one.kind == "round trip"]
        if not trips:
            raise RigFileError(f"{self.name}: the plan has no round trip to count life in")
        return max(trips, key=lambda one: one.heaviest_hook_load(self.block.weight))

    @property
    def stuck_hook_load(self) -> float:
        """Hook load of the allowed pull on a string stuck at the end of the heaviest trip, N."""
        if self.limits.overpull is None:
            raise RigFileError(f"{self.name} has no [stuck]: no pull allowed on a stuck string")
        return self.heaviest_trip.heaviest_hook_load(self.block.weight) + self.limits.overpull

    @property
    def largest_hook_load(self) -> float:
        """Largest hook load of the plan, a pull on a stuck string and ``limits.hook_load``, N.

        What the file does not have is not counted; RigFileError if it has none of them.
        """
        loads = [one.heaviest_hook_load(self.block.weight) for one in self.operations]
        if self.limits.overpull is not None and self.operations:
            loads.append(self.stuck_hook_load)
        if self.limits.hook_load is not None:
            loads.append(self.limits.hook_load)
        if not loads:
            raise RigFileError(
                f"{self.name} has no [[operation]] and no [limits] hook_load: no hook load is known"
            )
        return max(loads)

    def _need_operations(self) -> None:
        if not self.operations:
            raise RigFileError(f"{self.name} has no [[operation]]: no plan of the well")


def load_rig(path: str | Path) -> Rig:
    """Read a rig file and put the hoist together.

    What was read otherwise than it is written, keys of an older layout, is noted by the reader:
    ``rw.rig.read(path).notes``; where every value comes from, by `rw.rig.resolved`.

    Parameters
    ----------
    path
        A rig file (TOML).

    Returns
    -------
    Rig
        Frozen; numbers in SI.

    Raises
    ------
    RigFileError
        If the file cannot be used; the message names every wrong place.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> len(rig.operations)
    17
    """
    return rig_of(read(path))


def rig_of(reading: Reading[RigFile]) -> Rig:
    """Put the hoist of a rig file together that has been read.

    Parameters
    ----------
    reading
        From `read`.

    Raises
    ------
    RigFileError
        If its parts do not go together; the message names the place.

    Examples
    --------
    >>> import ropewalk as rw
    >>> reading = rw.rig.read(rw.rig.example("minimal"))
    >>> rw.rig.rig_of(reading) == rw.load_rig(rw.rig.example("minimal"))
    True
    """
    try:
        return replace(assemble(reading.file), reading=reading)
    except RopewalkError as error:
        raise placed(error, type(reading.file), reading.layers) from error


def assemble(file: RigFile, made: Remembered | None = None) -> Rig:
    """Put the hoist together from the sections of a file; `made` has parts of those before it.

    Raises
    ------
    RigFileError
        If its parts do not go together; the message begins with the key.
    """
    make = made or Remembered()
    if file.block.lowest <= file.block.highest:
        raise RigFileError("block.lowest must be more than block.highest: line between the blocks")
    strings, operations = _plan(file, make)
    rope = make("rope", _rope, file.rope)
    reeving = make("reeving", _reeving, file.reeving)
    for key, section in (("crown", file.crown), ("block", file.block)):
        make(f"{key} checked", _check_sheaves, key, section, rope)
    make("standard checked", _check_standard, file.limits)
    drum = make("drum", make_drum, file.drum)
    drawworks = make("drawworks", make_drawworks, file.drawworks)
    sheave_diameter = 0.5 * (file.crown.sheave_diameter + file.block.sheave_diameter)
    block = Block(
        make("block sheaves", _sheaves, file.block),
        file.block.weight,
        file.block.highest,
        file.block.lowest,
    )
    return Rig(
        name=file.rig.name,
        site=file.rig.site,
        invented=file.rig.invented,
        rope=rope,
        reeving=reeving,
        crown=make("crown", _sheaves, file.crown),
        block=block,
        drawworks_power=file.drawworks.power,
        strings=strings,
        operations=operations,
        life=make("life", make_life, file.life),
        limits=make("limits", make_limits, file.limits, file.stuck),
        drum=drum,
        line=make("line", make_string_up, file.line, file.reeving.lines, file.reeving.lead_sheaves),
        program=make("program", make_practice, file.program),
        brake=make(
            "brake",
            make_brake,
            file.brake,
            reeving,
            drum,
            drawworks,
            rope.diameter_si,
            sheave_diameter,
        ),
        overtravel=make("overtravel", make_overtravel, file.overtravel),
        deadline=make("deadline", make_dead_line, file.deadline),
        drawworks=drawworks,
        compensator=make("compensator", make_compensator, file.compensator),
        weight_on_compensator=weight_on_compensator(file.compensator, file.block.weight),
        sea=make("sea", make_sea, file.sea),
        mast=make("mast", make_mast, file.mast),
        suspension=make("suspension", make_load_path, file.suspension, file.block.weight, strings),
        inspection=make("inspection", make_inspection, file.inspection),
    )


def _rope(section: RopeSection) -> Rope:
    from ropewalk._units import Q
    from ropewalk.rope import Rope

    with named("rope", of=section):
        return Rope(section.construction, grade=section.grade, diameter=Q(section.diameter, "m"))


def _reeving(section: ReevingSection) -> Reeving:
    from ropewalk.reeving import Reeving

    with named("reeving", of=section):
        return Reeving(
            lines=section.lines,
            sheave_friction=section.sheave_friction,
            lead_sheaves=section.lead_sheaves,
            dead_line_sheave_turns=section.dead_line_sheave_turns,
        )


def _plan(
    file: RigFile, make: Remembered
) -> tuple[Mapping[str, DrillString], tuple[Operation, ...]]:
    """Strings and operations, if the file has a plan; it has all three tables or none."""
    tables = {"mud": file.mud, "string": file.string, "operation": file.operation}
    missing = [name for name, table in tables.items() if table is None]
    if len(missing) == len(tables):
        return {}, ()
    if missing:
        given = next(name for name in tables if name not in missing)
        raise RigFileError(
            f"{given}: mud, string and operation are given together or not at all; "
            f"missing: {', '.join(missing)}"
        )
    strings = make("strings", _strings, file.mud, file.string)
    return strings, make("operations", make_operations, file.operation, strings)


def _strings(
    mud: MudSection, string: Mapping[str, Sequence[TubularSection]]
) -> dict[str, DrillString]:
    try:
        return make_strings(mud, string)
    except RopewalkError as error:
        key = {"mud_density": "mud.density", "steel_density": "mud.steel_density"}.get(error.field)
        raise RigFileError(f"{key or 'string'}: {error}") from error


def _sheaves(section: SheavesSection) -> Sheaves:
    return Sheaves(section.sheave_diameter, section.groove_material, section.rated_load)


def _check_sheaves(key: str, section: SheavesSection, rope: Rope) -> None:
    """Refuse a groove that the table does not have, or sheaves smaller than the rope."""
    from ropewalk import sheave, si

    with named(f"{key}.sheave_diameter"):
        si.sheave.bend_ratio(section.sheave_diameter, rope.diameter_si)
    with named(f"{key}.groove_material"):
        sheave.bearing_pressure_limit(section.groove_material, rope.rope_class, "regular")


def _check_standard(section: LimitsSection) -> None:
    """Refuse a standard that the table does not have."""
    from ropewalk import design_factor

    if section.design_factor_standard is not None:
        with named("limits.design_factor_standard"):
            for service in SERVICES:
                design_factor.minimum(service, section.design_factor_standard)
