"""The tables of a rig file that the damage map of the line needs: drum, string-up, program."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import BeforeValidator, Field
from pydantic_core import PydanticCustomError

from ropewalk.rig._fields import Count, Energy, Force, Length, LengthOrZero, Positive, Section

_HEIGHTS = ("nested", "stacked")


def _read_layer_height(value: Any) -> Any:
    if value in _HEIGHTS:
        return value
    if isinstance(value, (int, float)) and not isinstance(value, bool) and 0.0 < value <= 2.0:
        return float(value)
    text = f'must be "nested", "stacked" or a number of rope diameters up to 2, got {value!r}'
    raise PydanticCustomError("quantity", "{text}", {"text": text})


class SpoolingSection(Section):
    """``[drum.spooling]``: the drum as the first sheave sees it."""

    groove: Literal["smooth", "grooved", "parallel"] = Field(
        description='Kind of drum: "smooth", "grooved" (helical), "parallel" (parallel grooves).'
    )
    traverse: Length = Field(description="Inside width of the drum from flange to flange.")
    distance: Length = Field(description="From the first sheave to the drum, square to its axis.")
    sheave_position: LengthOrZero | None = Field(
        default=None,
        description="Plane of that sheave from the flange of the drum end; the middle if left out.",
    )


class FasteningSection(Section):
    """``[drum.fastening]``: what holds the end of the line on the drum."""

    friction: Positive = Field(description="Friction of the line on the barrel.")
    clamp_holding: Force = Field(description="Pull at which the fastening itself gives way.")


class DrumSection(Section):
    """``[drum]``: the drum of the drawworks."""

    barrel_diameter: Length = Field(description="Diameter of the drum under the first layer.")
    laps_per_layer: Positive = Field(description="Laps that fill one layer.")
    layers: Count = Field(description="Layers the drum holds.")
    layer_height: Annotated[str | float, BeforeValidator(_read_layer_height)] = Field(
        description='Rise of a layer: "nested", "stacked", or in rope diameters.'
    )
    crossovers_per_lap: Count = Field(description="Crossovers in one lap.")
    spooling: SpoolingSection | None = None
    fastening: FasteningSection | None = None


Weight = Annotated[float, Field(ge=0.0, allow_inf_nan=False, strict=False)]


class WearSection(Section):
    """``[line.wear]``: what else wears the line; how many bending cycles one event counts as.

    Nothing is published for these weights, so all are nothing unless given.
    """

    crossover: Weight = Field(
        default=0.0, description="A crossover on the drum, in half cycles per spooling."
    )
    layer_change: Weight = Field(
        default=0.0, description="A change of layer, in half cycles per spooling."
    )
    pick_up: Weight = Field(default=0.0, description="A pick-up of the load.")
    dead_line_sheave: Weight = Field(default=0.0, description="The dead-line sheave, per pick-up.")
    anchor: Weight = Field(default=0.0, description="The dead-line anchor, per pick-up.")
    crossover_length: Length | None = Field(
        default=None, description="Length of rope one crossover or change of layer wears."
    )
    reverse_bend: Positive | None = Field(
        default=None,
        description="How many simple bends one reverse bend counts as; DIN 15020 has 2 "
        "(from memory).",
    )


class LineSection(Section):
    """``[line]``: the line as it is strung up."""

    supply: Length = Field(description="Length of the new line: on the drum, strung, on the reel.")
    dead_line: Length = Field(description="From the anchor to the dead-line sheave.")
    fast_line: Length = Field(description="From the last crown or lead sheave to the drum.")
    wraps_at_lowest: Positive = Field(
        description="Laps on the drum with the block at its lowest; 6 or more is common "
        "practice, no source."
    )
    reverse_bends: list[str] = Field(
        default_factory=list,
        description='Where the line bends against the bend before: "drum", "lead sheave 1", '
        '"crown sheave 1", "traveling sheave 1"; nowhere if left out.',
    )
    wear: WearSection = Field(default_factory=WearSection)


class ProgramSection(Section):
    """``[program]``: how the line is slipped and cut today."""

    slip: Length = Field(description="Line slipped each time.")
    cut: Length = Field(description="Line cut each time.")
    every: Energy | None = Field(default=None, description="Work of the line between slips.")
    every_trips: Positive | None = Field(
        default=None, description="Round trips between slips, where they are counted instead."
    )
