"""Rigs that are checked by hand: no plan but one load, no friction, a drum of one layer."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

import ropewalk as rw
from ropewalk.check import Facts, Verdict
from ropewalk.check.run import judge

RIG7 = rw.load_rig(rw.rig.example("rig7"))
OSPREY = rw.load_rig(rw.rig.example("osprey-sound"))

LBF = 4.4482216152605
KIP = 1000.0 * LBF
HP = 550.0 * 0.3048 * LBF
INCH = 0.0254

#: Middle of the rope, 1 3/8 in, on the barrel of Rig 7, 28 in.
RADIUS = 0.5 * (28.0 + 1.375) * INCH


@dataclass(frozen=True)
class Limits:
    """Limits of a rig that asks for a hook load, N."""

    design_factor_standard: str
    overpull: float
    hook_load: float | None


def verdicts(rule_id: str, rig: Any) -> list[Verdict]:
    return judge(rw.check.rule(rule_id), Facts(rig))


def verdict(rule_id: str, rig: Any) -> Verdict:
    """The one verdict a rule gives."""
    (found,) = verdicts(rule_id, rig)
    return found


def status(rule_id: str, rig: Any) -> str:
    return str(verdict(rule_id, rig).status)


def about(rule_id: str, rig: Any) -> dict[str, Verdict]:
    """Verdicts by what they are about."""
    return {one.subject: one for one in verdicts(rule_id, rig)}


def asked(rig: Any, hook_load: float | None) -> Any:
    """The rig without a plan; the load asked for in N, or none."""
    limits = Limits(rig.limits.design_factor_standard, 0.0, hook_load)
    return replace(rig, operations=(), limits=limits)


def plain(rig: Any = RIG7) -> Any:
    """The rig without sheave friction, all rope in the first layer: torque = W R / N."""
    return replace(
        rig,
        reeving=replace(rig.reeving, sheave_friction=1.0),
        drum=replace(rig.drum, laps_per_layer=200.0, layers=1),
    )


def with_device(rig: Any, *, crown: str, floor: str, kind: Any = "block height") -> Any:
    """The rig with one over-travel device that takes half a second."""
    device = rw.overtravel.Device(
        "encoder",
        kind,
        crown=crown,
        floor=floor,
        reaction_time="0.5 s",
        drive_acceleration="0 m/s**2",
    )
    return replace(rig, overtravel=replace(rig.overtravel, devices=(device,)))
