"""Suspension and hook spring of a rig, in SI."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk.rig.file import RigFileError
from ropewalk.rig.problems import named

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from ropewalk.rig.suspension_sections import ElevatorSection, SuspensionSection

#: Parts of every load path, named in results by these words.
FIXED_PARTS = ("mast", "crown block", "drilling line", "traveling block")


@dataclass(frozen=True, slots=True)
class RatedPart:
    """One part below the traveling block: ratings and weight in N.

    The rating of its bearing is None where it has none.
    """

    name: str
    rated_load: float
    weight: float
    bearing_rating: float | None = None

    @property
    def rating(self) -> float:
        """The lower of its rating and that of its bearing, N."""
        if self.bearing_rating is None:
            return self.rated_load
        return min(self.rated_load, self.bearing_rating)


@dataclass(frozen=True, slots=True)
class StringElevator:
    """The elevator that carries one string of the plan: rating and weight in N."""

    string: str
    tubular: str
    kind: str
    rated_load: float
    weight: float


@dataclass(frozen=True, slots=True)
class HookSpring:
    """The hook spring and its snubber: forces in N, rate in N/m, damping in N·s/m."""

    sprung_weight: float
    spring_rate: float
    damping_up: float
    damping_down: float
    friction: float


@dataclass(frozen=True, slots=True)
class LoadPath:
    """What hangs below the traveling block, from the top down.

    Attributes
    ----------
    parts
        The parts that stay on the lines.
    elevators
        Elevators by string; each takes the place of the last part for its string.
    sheave_bearing_rating
        Rating of the bearing of one sheave of the traveling block, N, or None.
    hook_spring
        Hook spring and snubber, or None.
    """

    parts: tuple[RatedPart, ...]
    hook_spring: HookSpring | None
    elevators: tuple[StringElevator, ...] = ()
    sheave_bearing_rating: float | None = None


def make_load_path(
    section: SuspensionSection | None, block_weight: float, strings: Iterable[str]
) -> LoadPath | None:
    """Return the parts of ``[suspension]``; the block itself must have some weight left."""
    if section is None:
        return None
    parts = tuple(RatedPart(**part.model_dump()) for part in section.part)
    _check_names([part.name for part in parts])
    hung = sum(part.weight for part in parts)
    if hung >= block_weight:
        raise RigFileError(
            f"suspension.part: the parts weigh {hung / 1000.0:.4g} kN together, which leaves "
            f"nothing of block.weight = {block_weight / 1000.0:.4g} kN for the traveling block "
            "(block.weight is all that stays on the lines)"
        )
    spring = section.hook_spring
    return LoadPath(
        parts,
        None if spring is None else HookSpring(**spring.model_dump()),
        _elevators(section.elevator, tuple(strings)),
        section.sheave_bearing_rating,
    )


def _check_names(names: list[str]) -> None:
    """Refuse a name that results could not tell from another."""
    taken = dict.fromkeys(FIXED_PARTS, "is a part of every hoist")
    for i, name in enumerate(names, 1):
        if name in taken:
            raise RigFileError(
                f"suspension.part[{i}].name = {name!r} {taken[name]}; every name may stand there "
                "once"
            )
        taken[name] = f"is that of suspension.part[{i}] already"


def _elevators(
    sections: Sequence[ElevatorSection], strings: tuple[str, ...]
) -> tuple[StringElevator, ...]:
    from ropewalk.suspension import elevators_for

    found: list[StringElevator] = []
    for i, one in enumerate(sections, 1):
        place = f"suspension.elevator[{i}]"
        if one.string not in strings:
            known = ", ".join(strings)
            raise RigFileError(f"{place}.string = {one.string!r} is no string; there are: {known}")
        if one.string in [other.string for other in found]:
            raise RigFileError(f"{place}.string = {one.string!r} has an elevator already")
        with named(f"{place}.tubular"):
            types = elevators_for(one.tubular)
        kinds = [kind.kind for kind in types if kind.carries_string]
        if not kinds:
            raise RigFileError(
                f"{place}.tubular = {one.tubular!r}: its elevators are for single joints or "
                "stands, not for a string"
            )
        kind = kinds[0] if one.kind is None else one.kind
        if kind not in kinds:
            raise RigFileError(
                f"{place}.kind = {kind!r} carries no string of {one.tubular}; those that do: "
                f"{', '.join(kinds)}"
            )
        found.append(StringElevator(one.string, one.tubular, kind, one.rated_load, one.weight))
    return tuple(found)
