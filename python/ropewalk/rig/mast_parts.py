"""Mast, suspension and hook spring of a rig, in SI."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk.rig.file import RigFileError

if TYPE_CHECKING:
    from ropewalk.mast import Mast
    from ropewalk.rig.mast_sections import MastSection, SuspensionSection


@dataclass(frozen=True, slots=True)
class RatedMast:
    """The mast with its nameplate.

    Attributes
    ----------
    mast
        Base, and places of the lines.
    hook_load_rating
        Maximum rated static hook load, N.
    rated_lines
        Number of lines it is stated for.
    crown_block_weight
        N.
    on_legs
        What else bears on legs A, B, C, D, wind or racked pipe, N; negative lifts. None if the
        file does not say.
    """

    mast: Mast
    hook_load_rating: float
    rated_lines: int
    crown_block_weight: float
    on_legs: tuple[float, ...] | None = None


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


def make_mast(section: MastSection | None) -> RatedMast | None:
    """Return the mast of ``[mast]``; refuse places outside its base."""
    if section is None:
        return None
    from ropewalk._units import Q
    from ropewalk.errors import RopewalkError
    from ropewalk.mast import Mast

    depth = section.base_width if section.base_depth is None else section.base_depth
    try:
        mast = Mast(Q(section.base_width, "m"), section.dead_line, section.fast_line, Q(depth, "m"))
    except RopewalkError as error:
        raise RigFileError(f"mast.{error.field}: {error}") from error
    return RatedMast(
        mast,
        section.hook_load_rating,
        section.rated_lines,
        section.crown_block_weight,
        None if section.on_legs is None else tuple(section.on_legs),
    )


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
