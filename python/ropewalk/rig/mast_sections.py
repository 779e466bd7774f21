"""The table of a rig file on the mast: rating, base, places of the lines."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import AfterValidator, BeforeValidator, Field
from pydantic_core import PydanticCustomError

from ropewalk.rig._fields import (
    Count,
    Force,
    ForceEitherWay,
    ForceOrZero,
    Length,
    Section,
)


def _read_place(value: Any) -> Any:
    """A named place, or two distances; what they can be is said by the mast itself."""
    if isinstance(value, str) or (
        isinstance(value, list) and len(value) == 2 and all(isinstance(v, str) for v in value)
    ):
        return value if isinstance(value, str) else tuple(value)
    text = f'must be a place, "A" or "CD", or two distances, ["2 ft", "15 ft"], got {value!r}'
    raise PydanticCustomError("quantity", "{text}", {"text": text})


Place = Annotated[str | tuple[str, str], BeforeValidator(_read_place)]


def _must_be_even(lines: int) -> int:
    if lines % 2 != 0:
        text = f"must be even, the dead line being on the mast, got {lines}"
        raise PydanticCustomError("even", "{text}", {"text": text})
    return lines


class MastSection(Section):
    """``[mast]``: the mast or derrick, from its nameplate."""

    hook_load_rating: Force = Field(description="Maximum rated static hook load.")
    rated_lines: Annotated[Count, AfterValidator(_must_be_even)] = Field(
        description="Number of lines the rating is stated for; even, with a dead line."
    )
    base_width: Length = Field(description="From leg to leg, across.")
    base_depth: Length | None = Field(
        default=None, description="From leg to leg, toward the drawworks; square if left out."
    )
    dead_line: Place = Field(
        description='Where the dead line pulls: "A", between legs "AB", or two distances from '
        "the middle, across and toward the drawworks."
    )
    fast_line: Place = Field(description="Where the fast line pulls, in the same way.")
    crown_block_weight: ForceOrZero = Field(description="Weight of the crown block.")
    on_legs: list[ForceEitherWay] | None = Field(
        default=None,
        min_length=4,
        max_length=4,
        description="What else bears on legs A, B, C, D, wind or racked pipe, from the maker's or "
        "a structural engineer's calculation; negative lifts.",
    )
