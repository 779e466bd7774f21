"""The tables of a rig file on brakes and over-travel."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field

from ropewalk.rig._fields import (
    AccelerationOrZero,
    Angle,
    AngularVelocity,
    Area,
    Conductivity,
    Count,
    Density,
    Force,
    HeatLoss,
    Height,
    Length,
    Mass,
    Positive,
    Power,
    Section,
    SpecificHeat,
    Speed,
    Time,
    TimeOrZero,
    Torque,
)

_Friction = Annotated[float, Field(gt=0.0, le=1.0, strict=False)]


class EddySection(Section):
    """``[brake.eddy]``: the eddy-current brake."""

    peak_torque: Torque = Field(description="Largest torque at the drum shaft.")
    critical_speed: AngularVelocity = Field(description="Drum speed at which it has it.")


class BrakingMotorsSection(Section):
    """``[brake.motors]``: motors that brake a load that is lowered, brought to the drum shaft."""

    torque_limit: Torque = Field(description="Largest braking torque, of motors and drive.")
    power_limit: Power = Field(description="Power the supply takes back or the resistors burn.")


class BandSection(Section):
    """``[brake.band]``: a band brake beside the discs."""

    bands: Count = Field(description="Bands on the drum.")
    wrap_angle: Angle = Field(gt=0.0, description="Angle of the rim the lining covers.")
    rim_diameter: Length = Field(description="Diameter of the rim.")
    lining_friction: _Friction = Field(description="Friction of the lining, from its maker.")
    lever_ratio: Positive = Field(description="Tension in each band over the force on the lever.")
    lever_force: Force = Field(description="Force on the lever that is counted on.")


class FadeSection(Section):
    """``[brake.fade]``: friction of the pads over their temperature, from their maker."""

    temperatures: list[str] = Field(min_length=2, description='Rising: ["20 degC", "300 degC"].')
    frictions: list[_Friction] = Field(min_length=2, description="Friction at each.")


class HeatSection(Section):
    """``[brake.heat]``: the discs as bodies that are heated and cool."""

    disc_mass: Mass = Field(description="Mass of all discs together.")
    specific_heat: SpecificHeat = Field(description="Specific heat of their material.")
    heat_loss: HeatLoss = Field(description="Heat they give off per time and kelvin, measured.")
    disc_thickness: Length = Field(description="Thickness of a disc between its rubbed faces.")
    rubbed_area: Area = Field(description="Area that pads rub, all faces of all discs.")
    conductivity: Conductivity = Field(description="Conductivity of the discs.")
    density: Density = Field(gt=0.0, description="Density of the discs.")


class BrakeSection(Section):
    """``[brake]``: the disc brake of the drawworks, and how fast it comes on."""

    discs: Count = Field(description="Discs on the drum.")
    service_per_disc: Annotated[int, Field(ge=0)] = Field(
        description="Calipers on each disc that oil presses on."
    )
    emergency_per_disc: Annotated[int, Field(ge=0)] = Field(
        description="Calipers on each disc that springs press on."
    )
    service_force: Force = Field(description="Force of one service pad at full pressure.")
    emergency_force: Force = Field(description="Force of one emergency pad, oil let off.")
    pad_radius: Length = Field(description="Radius at which the friction of the pads acts.")
    lining_friction: _Friction = Field(description="Friction of the pads, from their maker.")
    required_factor: str = Field(description="Key of the holding factor asked for.")
    rotating_mass: Mass | None = Field(
        default=None,
        description="All that turns as a mass at the hook, rope in the first layer: J (N/R)^2; "
        "left out, it is computed from [drawworks] in the gear given.",
    )
    gear: Annotated[int, Field(ge=0)] | None = Field(
        default=None,
        description="Gear in which it brakes, as [drawworks] lists them from 1; 0: the drum alone.",
    )
    delay: TimeOrZero = Field(description="From a stop being asked for until the brake begins.")
    build_up: TimeOrZero = Field(description="Time in which its force then rises.")
    eddy: EddySection | None = None
    motors: BrakingMotorsSection | None = None
    band: BandSection | None = None
    fade: FadeSection | None = None
    heat: HeatSection | None = None


class DeviceSection(Section):
    """``[[overtravel.device]]``: one device that keeps the block off crown and floor."""

    name: str = Field(description="What it is called on the rig.")
    kind: Literal["drum wraps", "block height"] = Field(description="What it goes by.")
    crown: Height = Field(description="Height of the block at which it trips on the way up.")
    floor: Height = Field(description="The same on the way down; negative below the lowest.")
    reaction_time: Time = Field(description="From there until the brake grips.")
    drive_acceleration: AccelerationOrZero = Field(
        description="Acceleration of the block in that time, the drive pulling on, or 0."
    )


class OvertravelSection(Section):
    """``[overtravel]``: heights above the lowest working position of the block."""

    crown: Height = Field(description="Height of the block at which something touches above.")
    floor: Height = Field(description="The same below; negative below the lowest position.")
    margin: Length = Field(description="Distance to be left to either.")
    hoisting_speed: Speed = Field(description="Largest speed of the block on the way up.")
    lowering_speed: Speed = Field(description="Largest speed of the block on the way down.")
    device: list[DeviceSection] = Field(min_length=1, description="The devices.")
