"""Brakes and over-travel devices of a rig, as objects of `ropewalk.brake` and `overtravel`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk.errors import RopewalkError
from ropewalk.rig.brake_check import BrakeCheck, check_brake
from ropewalk.rig.brake_discs import BrakeDiscs, make_discs
from ropewalk.rig.file import RigFileError

if TYPE_CHECKING:
    from ropewalk._reeving import Reeving
    from ropewalk._units import QuantityLike
    from ropewalk.brake import (
        BandBrake,
        DiscBrake,
        FrictionTable,
        LoweringBrakes,
        RequiredFactor,
    )
    from ropewalk.overtravel import BrakedHoist, Device, OvertravelCheck
    from ropewalk.rig.assembly import Rig
    from ropewalk.rig.brake_sections import BrakeSection, OvertravelSection
    from ropewalk.rig.drawworks_parts import DrawworksParts
    from ropewalk.rig.line_parts import DrumShape


@dataclass(frozen=True, slots=True)
class RigBrake:
    """The brakes of the drawworks; numbers in SI.

    Attributes
    ----------
    disc
        The disc brake.
    auxiliary
        What else brakes a load that is lowered, eddy-current brake and motors; None if nothing.
    band, lever_force
        A band brake beside the discs, and the force on its lever that is counted on, N; None if
        there is none.
    fade
        Friction of the pads over their temperature; None if the file has no table.
    discs
        The discs as bodies that are heated; None if the file does not say.
    required
        Holding factor asked for.
    rotating_mass
        All that turns as a mass at the hook, rope in the first layer, kg; where the file leaves it
        out, sheaves, drum, and gear and motors in the gear it gives.
    delay, build_up
        Until the brake begins, and in which its force then rises, s.
    """

    disc: DiscBrake
    auxiliary: LoweringBrakes | None
    required: RequiredFactor
    rotating_mass: float
    delay: float
    build_up: float
    band: BandBrake | None = None
    lever_force: float | None = None
    fade: FrictionTable | None = None
    discs: BrakeDiscs | None = None

    def check(
        self, rig: Rig, hook_load: QuantityLike, *, lining_temperature: QuantityLike | None = None
    ) -> BrakeCheck:
        """Hold the brake against a load at rest, against the factor asked for.

        The block is at its highest, where the rope lies in the outermost layer it works in. All
        calipers, the service calipers alone, the emergency calipers alone as when hydraulic
        pressure is lost, and a band brake both ways.

        Parameters
        ----------
        rig
            The rig the brake is on.
        hook_load
            Everything hung on the lines.
        lining_temperature
            Of the pads, for their friction by the table of the file, `fade`.

        Raises
        ------
        RigFileError
            If the rig has no drum or line, or a temperature is given and the file has no table.
        ValidityError
            If the temperature is outside the table.

        Examples
        --------
        >>> import ropewalk as rw
        >>> rig = rw.load_rig(rw.rig.example("rig7"))
        >>> check = rig.brake.check(rig, "900 kN")
        >>> [finding.enough for finding in check.findings]
        [True, True, True]
        >>> rig.brake.check(rig, "1500 kN").findings[-1].enough
        False
        """
        return check_brake(self, rig, hook_load, lining_temperature)


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
    from ropewalk.overtravel import BrakedHoist

    if rig.drum is None or rig.line is None or rig.brake is None:
        raise RigFileError(f"{rig.name}: needs [drum], [line] and [brake] to stop its block")
    return BrakedHoist(
        drum=rig.drum.with_rope(rig.rope.diameter_si),
        reeving=rig.reeving,
        wraps_at_lowest=rig.line.wraps_at_lowest,
        brake_torque=rig.brake.disc.torque(service=service),
        rotating_mass=Q(rig.brake.rotating_mass, "kg"),
    )


def _rotating_mass(
    section: BrakeSection,
    reeving: Reeving,
    drum: DrumShape | None,
    drawworks: DrawworksParts | None,
    rope_diameter: float,
    sheave_diameter: float,
) -> float:
    """All that turns as a mass at the hook, from the file or from drawworks, drum and sheaves."""
    if section.rotating_mass is not None:
        return section.rotating_mass
    if drawworks is None or drum is None or section.gear is None:
        raise RigFileError(
            "brake.rotating_mass: missing; it is computed where the file has [drawworks.motors], "
            "[drum] and brake.gear"
        )
    machine = drawworks.machine
    if section.gear > len(machine.gears):
        raise RigFileError(
            f"brake.gear = {section.gear}: drawworks.gear has {len(machine.gears)} of them"
        )
    from ropewalk import si

    inertia = machine.drum_inertia_si
    if section.gear:
        gear = machine.gears[section.gear - 1]
        motors = machine.motors.count * machine.motors.inertia_si
        inertia += gear.inertia_si + si.drawworks.reflected_inertia(motors, gear.ratio)
    lines = reeving.lines
    pitch = drum.barrel_diameter + rope_diameter
    sheaves = si.drawworks.sheave_equivalent_mass(
        drawworks.sheave_inertia, lines, sheave_diameter + rope_diameter
    )
    return float(si.drawworks.hook_equivalent_mass(inertia, lines, pitch) + sheaves)


def _auxiliary(section: BrakeSection) -> LoweringBrakes | None:
    from ropewalk._units import Q
    from ropewalk.brake import LoweringBrakes

    given = {}
    if section.eddy is not None:
        given["eddy_peak_torque"] = Q(section.eddy.peak_torque, "N*m")
        given["critical_speed"] = Q(section.eddy.critical_speed, "rad/s")
    if section.motors is not None:
        given["motor_torque_limit"] = Q(section.motors.torque_limit, "N*m")
        given["motor_power_limit"] = Q(section.motors.power_limit, "W")
    return LoweringBrakes(**given) if given else None


def make_brake(
    section: BrakeSection | None,
    reeving: Reeving,
    drum: DrumShape | None,
    drawworks: DrawworksParts | None,
    rope_diameter: float,
    sheave_diameter: float,
) -> RigBrake | None:
    """Return the brakes of ``[brake]``."""
    if section is None:
        return None
    from ropewalk._units import Q
    from ropewalk.brake import BandBrake, DiscBrake, FrictionTable, required_factor

    band, fade = section.band, section.fade
    turning = _rotating_mass(section, reeving, drum, drawworks, rope_diameter, sheave_diameter)
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
            auxiliary=_auxiliary(section),
            required=required_factor(section.required_factor),
            rotating_mass=turning,
            delay=section.delay,
            build_up=section.build_up,
            band=None
            if band is None
            else BandBrake(
                bands=band.bands,
                wrap_angle=Q(band.wrap_angle, "rad"),
                rim_diameter=Q(band.rim_diameter, "m"),
                lining_friction=band.lining_friction,
                lever_ratio=band.lever_ratio,
            ),
            lever_force=None if band is None else band.lever_force,
            fade=None if fade is None else FrictionTable(fade.temperatures, fade.frictions),
            discs=make_discs(section.heat),
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
