"""Suspension and hook spring of a rig, in SI."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk.rig.file import RigFileError

if TYPE_CHECKING:
    from ropewalk.rig.suspension_sections import SuspensionSection


@dataclass(frozen=True, slots=True)
class RatedPart:
    """One part below the traveling block: rating and weight in N."""

    name: str
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
    """What hangs below the traveling block, from the top down."""

    parts: tuple[RatedPart, ...]
    hook_spring: HookSpring | None


def make_load_path(section: SuspensionSection | None, block_weight: float) -> LoadPath | None:
    """Return the parts of ``[suspension]``; the block itself must have some weight left."""
    if section is None:
        return None
    parts = tuple(RatedPart(**part.model_dump()) for part in section.part)
    names = [part.name for part in parts]
    if len(set(names)) != len(names):
        raise RigFileError("suspension.part: every name may stand there once")
    hung = sum(part.weight for part in parts)
    if hung >= block_weight:
        raise RigFileError(
            f"suspension.part: the parts weigh {hung / 1000.0:.4g} kN together, which leaves "
            f"nothing of block.weight = {block_weight / 1000.0:.4g} kN for the traveling block "
            "(block.weight is all that stays on the lines)"
        )
    spring = section.hook_spring
    return LoadPath(parts, None if spring is None else HookSpring(**spring.model_dump()))
