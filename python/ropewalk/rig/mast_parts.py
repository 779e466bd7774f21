"""The mast of a rig, in SI."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk.rig.file import RigFileError

if TYPE_CHECKING:
    from ropewalk.mast import Mast
    from ropewalk.rig.mast_sections import MastSection


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
