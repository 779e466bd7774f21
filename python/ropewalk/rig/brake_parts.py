"""Brakes and over-travel devices of a rig, as objects of `ropewalk.brake` and `overtravel`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk.errors import RopewalkError
from ropewalk.rig.file import RigFileError

if TYPE_CHECKING:
    from ropewalk.brake import DiscBrake, LoweringBrakes, RequiredFactor
    from ropewalk.overtravel import BrakedHoist, Device, OvertravelCheck
    from ropewalk.rig.assembly import Rig
    from ropewalk.rig.brake_sections import BrakeSection, OvertravelSection


@dataclass(frozen=True, slots=True)
class RigBrake:
    """The brakes of the drawworks; numbers in SI.

    Attributes
    ----------
    disc
        The disc brake.
    auxiliary
        What else brakes a load that is lowered; None if nothing does.
    required
        Holding factor asked for.
    rotating_mass
        All that turns as a mass at the hook, rope in the first layer, kg.
    delay, build_up
        Until the brake begins, and in which its force then rises, s.
    """

    disc: DiscBrake
    auxiliary: LoweringBrakes | None
    required: RequiredFactor
    rotating_mass: float
    delay: float
    build_up: float


@dataclass(frozen=True, slots=True)
class Overtravel:
    """What keeps the block off crown and floor; heights above its lowest position, SI.

    Attributes
    ----------
    crown, floor
        Heights at which something touches, m.
    margin
        Distance to be left, m.
    hoisting_speed, lowering_speed
        Largest speeds, m/s.
    devices
        The devices.
    """

    crown: float
    floor: float
    margin: float
    hoisting_speed: float
    lowering_speed: float
    devices: tuple[Device, ...]

    def check(self, rig: Rig, *, power_lost: bool = True) -> OvertravelCheck:
        """Check the devices against the plan of a rig, on its emergency calipers alone.

        Parameters
        ----------
        rig
            The rig.
        power_lost
            As for `ropewalk.overtravel.check_campaign`.

        Raises
        ------
        RigFileError
            If the rig has no drum, line or brake.
        """
        from ropewalk._units import Q
        from ropewalk.line import Campaign
        from ropewalk.overtravel import check_campaign

        return check_campaign(
            Campaign.from_plan(rig),
            braked_hoist(rig),
            self.devices,
            crown=Q(self.crown, "m"),
            floor=Q(self.floor, "m"),
            margin=Q(self.margin, "m"),
            hoisting_speed=Q(self.hoisting_speed, "m/s"),
            lowering_speed=Q(self.lowering_speed, "m/s"),
            power_lost=power_lost,
        )


def braked_hoist(rig: Rig, *, service: bool = False) -> BrakedHoist:
    """Drum, line and brake of a rig as `ropewalk.overtravel` takes them.

    Parameters
    ----------
    rig
        A rig with drum, line and brake.
    service
        True to count the service calipers too; else those that springs press on alone.

    Raises
    ------
    RigFileError
        If the rig has no drum, line or brake.
    """
    from ropewalk._units import Q
    from ropewalk.drum import Drum
    from ropewalk.overtravel import BrakedHoist

    if rig.drum is None or rig.line is None or rig.brake is None:
        raise RigFileError(f"{rig.name}: needs [drum], [line] and [brake] to stop its block")
    return BrakedHoist(
        drum=Drum(
            Q(rig.drum.barrel_diameter, "m"),
            Q(rig.rope.diameter_si, "m"),
            rig.drum.laps_per_layer,
            rig.drum.layers,
            rig.drum.layer_height,
            rig.drum.crossovers_per_lap,
        ),
        reeving=rig.reeving,
        wraps_at_lowest=rig.line.wraps_at_lowest,
        brake_torque=rig.brake.disc.torque(service=service),
        rotating_mass=Q(rig.brake.rotating_mass, "kg"),
    )


def make_brake(section: BrakeSection | None) -> RigBrake | None:
    """Return the brakes of ``[brake]``."""
    if section is None:
        return None
    from ropewalk._units import Q
    from ropewalk.brake import DiscBrake, LoweringBrakes, required_factor

    try:
        return RigBrake(
            disc=DiscBrake(
                discs=section.discs,
                service_per_disc=section.service_per_disc,
                emergency_per_disc=section.emergency_per_disc,
                service_force=Q(section.service_force, "N"),
                emergency_force=Q(section.emergency_force, "N"),
                pad_radius=Q(section.pad_radius, "m"),
                lining_friction=section.lining_friction,
            ),
            auxiliary=None
            if section.eddy is None
            else LoweringBrakes(
                eddy_peak_torque=Q(section.eddy.peak_torque, "N*m"),
                critical_speed=Q(section.eddy.critical_speed, "rad/s"),
            ),
            required=required_factor(section.required_factor),
            rotating_mass=section.rotating_mass,
            delay=section.delay,
            build_up=section.build_up,
        )
    except RopewalkError as error:
        raise RigFileError(f"brake: {error}") from error


def make_overtravel(section: OvertravelSection | None) -> Overtravel | None:
    """Return the devices of ``[overtravel]``; refuse set points beyond what they guard."""
    if section is None:
        return None
    from ropewalk._units import Q
    from ropewalk.overtravel import Device

    devices = []
    for one in section.device:
        if not section.floor < one.floor < one.crown < section.crown:
            raise RigFileError(
                f"overtravel.device: the set points of {one.name!r} must lie between "
                "overtravel.floor and overtravel.crown, floor below crown"
            )
        devices.append(
            Device(
                one.name,
                one.kind,
                crown=Q(one.crown, "m"),
                floor=Q(one.floor, "m"),
                reaction_time=Q(one.reaction_time, "s"),
                drive_acceleration=Q(one.drive_acceleration, "m/s**2"),
            )
        )
    return Overtravel(
        crown=section.crown,
        floor=section.floor,
        margin=section.margin,
        hoisting_speed=section.hoisting_speed,
        lowering_speed=section.lowering_speed,
        devices=tuple(devices),
    )
