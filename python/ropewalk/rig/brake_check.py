"""Whether the brake of a rig holds a load, and with what factor: the class `BrakeCheck`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk.rig.file import RigFileError

if TYPE_CHECKING:
    from ropewalk._units import QuantityLike
    from ropewalk.brake import HoldingFinding, RequiredFactor
    from ropewalk.rig.assembly import Rig
    from ropewalk.rig.brake_parts import RigBrake


@dataclass(frozen=True, slots=True)
class BrakeCheck:
    """Result of `RigBrake.check`: the brakes of a rig against one load, numbers in SI.

    Attributes
    ----------
    hook_load
        The load, N.
    layer
        Layer of the drum the rope lies in.
    load_torque, hoisting_torque
        Torque of the load at the drum at rest, and of hoisting it, N·m.
    motor_torque
        Rated torque of the motors at the drum in the gear that has most of it, losses left out,
        N·m; None if the rig file does not say.
    required
        The factor asked for.
    findings
        One for each part of the brake that may act alone.
    """

    hook_load: float
    layer: int
    load_torque: float
    hoisting_torque: float
    motor_torque: float | None
    required: RequiredFactor
    findings: tuple[HoldingFinding, ...]

    @property
    def ok(self) -> bool:
        """True if every part is enough; False also where that could not be computed."""
        return all(finding.enough is True for finding in self.findings)

    def __str__(self) -> str:
        from ropewalk._brake_stop import CAUTION

        head = (
            f"{self.hook_load / 1e3:.0f} kN in layer {self.layer}: {self.load_torque / 1e3:.1f} "
            f"kN*m at rest, {self.hoisting_torque / 1e3:.1f} kN*m hoisting; asked for by "
            f"{self.required.key}, {self.required.condition}"
        )
        return "\n".join([head, *(finding.text for finding in self.findings), CAUTION])


def check_brake(
    brake: RigBrake, rig: Rig, hook_load: QuantityLike, lining_temperature: QuantityLike | None
) -> BrakeCheck:
    """Return the check that `RigBrake.check` describes."""
    from ropewalk._border import to_one_within
    from ropewalk._units import Q
    from ropewalk.rig.brake_parts import braked_hoist

    where = "rig.RigBrake.check"
    load = to_one_within(where, "hook_load", hook_load, "force", 0.0, 1e9, above=True)
    friction = None
    if lining_temperature is not None:
        if brake.fade is None:
            raise RigFileError(f"{rig.name}: needs [brake.fade] for pads at a temperature")
        friction = brake.fade.at(lining_temperature)
    hoist = braked_hoist(rig)
    layer = int(hoist.layer_at(Q(rig.travel, "m")))
    radius = float(hoist._radius(layer))
    tension = rig.reeving.tensions(Q(load, "N"), "hoisting").fast_line.m_as("N")
    static, hoisting = load / rig.reeving.lines * radius, float(tension) * radius
    motor = None
    if rig.drawworks is not None:
        motors = rig.drawworks.machine.motors
        rated = motors.count * motors.power_si / motors.base_speed_si
        motor = rated * max(gear.ratio for gear in rig.drawworks.machine.gears)
    torques = {
        "hoisting_torque": Q(hoisting, "N*m"),
        "motor_torque": None if motor is None else Q(motor, "N*m"),
    }
    at_rest = Q(static, "N*m")
    findings = brake.disc.check(at_rest, brake.required, lining_friction=friction, **torques)
    if brake.band is not None:
        force = Q(brake.lever_force, "N")
        findings += brake.band.check(force, at_rest, brake.required, **torques)
    return BrakeCheck(load, layer, static, hoisting, motor, brake.required, tuple(findings))
