"""The tables of a rig file of a floater: its heave compensator, and the sea it works in."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from ropewalk.rig._fields import (
    Angle,
    Area,
    Force,
    ForceOrZero,
    Length,
    LengthOrZero,
    MassOrZero,
    Positive,
    Section,
    Share,
    Time,
    Volume,
)


class CompensatorSection(Section):
    """``[compensator]``: the passive heave compensator."""

    mounting: Literal["block", "crown"] = Field(
        description='"block", between traveling block and hook, or "crown", under the crown block.'
    )
    stroke: Length = Field(description="Whole travel of the load against the vessel.")
    effective_area: Area = Field(
        description="Gas volume taken up per travel of the load: pistons over travel ratio."
    )
    gas_volume: Volume = Field(description="Gas at mid-stroke: cylinders, bottles, pipes.")
    polytropic_exponent: Positive = Field(
        description="1 slow, 1.4 fast for an ideal gas; waves lie between."
    )
    seal_friction: Share = Field(description="Friction each way as a share of the load.")
    moving_mass: MassOrZero = Field(
        default=0.0, description="Mass accelerated with the stroke, referred to the load."
    )
    rated_load: Force | None = Field(
        default=None, description="Load it is rated to compensate, from its nameplate."
    )
    weight_below: ForceOrZero | None = Field(
        default=None,
        description="Hook, top drive and all else that hangs below a block-mounted compensator, "
        "without the string; a part of block.weight.",
    )


class HullSection(Section):
    """``[sea.hull]``: a ship-shaped vessel whose heave is estimated in closed form."""

    length: Length = Field(description="Length of the hull.")
    beam: Length = Field(description="Beam of the hull.")
    draft: Length = Field(description="Draft of a box of that length and beam.")
    heading: Angle = Field(description="Waves against the bow: 180 deg head, 90 deg beam seas.")


class ResponseSection(Section):
    """``[sea.response]``: heave of the vessel over wave amplitude, from tests or computation."""

    periods: list[Time] = Field(description="Wave periods, rising.")
    ratios: list[float] = Field(description="Heave over wave amplitude at each.")


class SeaSection(Section):
    """``[sea]``: the sea to work in, and how the vessel heaves in it."""

    significant_height: Length = Field(description="Significant wave height.")
    peak_period: Time = Field(description="Period at the peak of the wave spectrum.")
    peak_factor: Positive | None = Field(
        default=None, description="Peak factor of the spectrum; by the steepness if left out."
    )
    duration: Time = Field(description="How long the sea lasts.")
    exceedance: Share = Field(
        description="Allowed probability that the stroke is exceeded at least once."
    )
    offset: LengthOrZero = Field(
        default=0.0, description="Stroke lost off the middle: tide, set-down, spacing."
    )
    response: ResponseSection | None = None
    hull: HullSection | None = None
