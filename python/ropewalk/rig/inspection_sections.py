"""The table of a rig file on what the last inspection of line and sheaves found."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field

from ropewalk.rig._fields import Count, Date, Length, Section, Share

Found = Annotated[int, Field(ge=0)]
Radii = Annotated[list[Length], Field(min_length=1)]


class InspectionSection(Section):
    """``[inspection]``: what was counted and measured on line and grooves, each worst place.

    A key that is left out was not looked at; the rule that takes it says so.
    """

    date: Date | None = Field(default=None, description="Day of the inspection.")
    lay: Literal["regular", "lang"] | None = Field(
        default=None, description='Lay of the line, "regular" or "lang".'
    )
    rope_category: Count | None = Field(
        default=None, description="Rope category number of ISO 4309, from the maker."
    )
    broken_in_lay: Found | None = Field(default=None, description="Broken wires in one rope lay.")
    broken_in_strand: Found | None = Field(
        default=None, description="Broken wires in one strand of one rope lay."
    )
    broken_in_6d: Found | None = Field(
        default=None, description="Visible broken wires on 6 rope diameters."
    )
    broken_in_30d: Found | None = Field(
        default=None, description="Visible broken wires on 30 rope diameters."
    )
    valley_breaks: Found | None = Field(
        default=None, description="Wires broken in the valleys between strands in one rope lay."
    )
    diameter: Length | None = Field(
        default=None, description="Diameter of the line where it is thinnest."
    )
    baseline_diameter: Length | None = Field(
        default=None, description="Diameter measured on the line when it was new and stretched."
    )
    outer_wire_loss: Share | None = Field(
        default=None, description="Worn part of the diameter of an outer wire."
    )
    strength_loss: Share | None = Field(
        default=None, description="Loss of strength by nondestructive testing."
    )
    corrosion: bool | None = Field(default=None, description="True if there is corrosion.")
    distortion: bool | None = Field(
        default=None, description="True if kinked, crushed, birdcaged or unstranded anywhere."
    )
    heat_damage: bool | None = Field(default=None, description="True if heated or struck by arcs.")
    crown_groove_radii: Radii | None = Field(
        default=None, description="Groove radii of the crown sheaves."
    )
    block_groove_radii: Radii | None = Field(
        default=None, description="Groove radii of the traveling-block sheaves."
    )
