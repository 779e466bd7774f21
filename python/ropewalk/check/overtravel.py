"""Rules for the over-travel devices: margins, independence, holding, and room to work."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from ropewalk import si
from ropewalk._border import to_quantity
from ropewalk.check._hoisting import braked, hanging, load_torque, lowered
from ropewalk.check.facts import text
from ropewalk.check.rule import CannotTell, Measured, Rule
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts

__all__ = ["RULES"]


#: Whether rows go up, their hook loads, and the margin of each device and row.
Rows = tuple[npt.NDArray[np.bool_], npt.NDArray[np.float64], npt.NDArray[np.float64]]


def _rows(facts: Facts) -> list[Rows]:
    """The block alone, the heaviest load without drag, and every row of the plan there is."""

    def compute() -> list[Rows]:
        from ropewalk._overtravel_check import Bounds, check_devices, margins_left
        from ropewalk.line.campaign import check_range

        rig, limits = facts.rig, facts.need("overtravel")
        # Rows of the plan are lowered with drag, which helps to stop and which nobody may count on.
        loads = np.repeat([rig.block.weight, lowered(facts).hook_load], 2)
        up = np.tile([True, False], loads.size // 2)
        where = "overtravel.check_campaign"
        bounds = Bounds.of(
            where,
            to_quantity(limits.crown, "length"),
            to_quantity(limits.floor, "length"),
            to_quantity(limits.margin, "length"),
            to_quantity(limits.hoisting_speed, "speed"),
            to_quantity(limits.lowering_speed, "speed"),
            None,
        )
        check_devices(where, limits.devices, (bounds.crown, bounds.floor))
        check_range(where, "hook_load", loads)
        margins = margins_left(braked(facts), limits.devices, bounds, up, loads, True)[2]
        found: list[Rows] = [(up, loads, margins)]
        if any(one.string is not None for one in rig.operations):
            plan = limits.check(rig)
            found.append((plan.hoisting, plan.hook_load_si, plan.margin_si))
        return found

    facts.need("overtravel")
    braked(facts)
    hanging(facts)  # without any load the block alone would pass for the rig
    return facts.once("over-travel margins", compute)


def _margin(facts: Facts) -> Iterator[Measured]:
    known, limits = _rows(facts), facts.need("overtravel")
    for k, device in enumerate(limits.devices):
        for end, upward in (("crown", True), ("floor", False)):
            rows = [
                (float(margins[k, i]), float(loads[i]))
                for up, loads, margins in known
                for i in np.flatnonzero(up == upward)
            ]
            if any(math.isnan(left) for left, _ in rows):
                raise CannotTell(f"{device.name}: the way to rest is no number for some load")
            left, load = min(rows)
            never = "the brake is not stronger than the load: the block does not stop"
            yield Measured(
                value=left,
                limit=limits.margin,
                subject=f"{device.name}, {end}",
                reason=never if left == -np.inf else "",
                inputs={
                    "at worst with a hook load of": text(load, "force"),
                    "at a speed of": text(
                        limits.hoisting_speed if upward else limits.lowering_speed, "speed"
                    ),
                    "reaction time": text(device.reaction_time_si, "time"),
                },
            )


def _principles(facts: Facts) -> Iterator[Measured]:
    devices = facts.need("overtravel").devices
    yield Measured(
        value=float(len({one.kind for one in devices})),
        limit=2.0,
        inputs={one.name: f"goes by {one.kind}" for one in devices},
    )


def _holding(facts: Facts) -> Iterator[Measured]:
    limits = facts.need("overtravel")
    hoist, case = braked(facts), hanging(facts)
    for device in limits.devices:
        for end, height in (("crown", device.crown_si), ("floor", device.floor_si)):
            torque = load_torque(facts, hoist, case.hook_load, height, "static")
            yield Measured(
                value=float(si.brake.holding_factor(hoist.brake_torque_si, torque)),
                limit=1.0,
                subject=f"{device.name}, {end}",
                inputs={
                    case.name: text(case.hook_load, "force"),
                    "torque of the emergency calipers": text(hoist.brake_torque_si, "torque"),
                    "torque of the load at rest": text(torque, "torque"),
                },
            )


def _room(facts: Facts) -> Iterator[Measured]:
    travel = facts.rig.travel
    for device in facts.need("overtravel").devices:
        ends = (
            ("crown", device.crown_si, device.crown_si - travel),
            ("floor", device.floor_si, -device.floor_si),
        )
        for end, set_point, room in ends:
            yield Measured(
                value=room,
                limit=0.0,
                subject=f"{device.name}, {end}",
                inputs={
                    "set point above the lowest position": text(set_point, "length"),
                    "travel of the block": text(travel, "length"),
                },
            )


_PRACTICE = "common practice, no source; local rules and the makers' manuals come first"

RULES = (
    Rule(
        id="overtravel.margin",
        title="Block stops short of crown and floor",
        compares="smallest distance left, each device alone, emergency calipers alone, power lost, "
        "block alone, heaviest load without drag and every stroke of the plan at the largest "
        "speeds, with the margin of the file",
        sense="at least",
        role="length",
        severity=Severity.MUST,
        source="overtravel.margin of the file",
        standing="derived",
        how="overtravel.check_campaign",
        measure=_margin,
    ),
    Rule(
        id="overtravel.principles",
        title="Two devices of different principle",
        compares="number of principles that the devices go by, with two: what misleads one does "
        "not mislead the other",
        sense="at least",
        role="number",
        severity=Severity.SHOULD,
        source=_PRACTICE,
        standing="common practice",
        how="number of different overtravel.device.kind",
        measure=_principles,
    ),
    Rule(
        id="overtravel.holding",
        title="Brake holds where a device has stopped the block",
        compares="torque of the emergency calipers over that of the heaviest load that hangs free, "
        "at rest, on the layer at each set point, with 1",
        sense="at least",
        role="number",
        severity=Severity.MUST,
        source="statics: below 1 the load falls",
        standing="derived",
        how="brake.holding_factor(DiscBrake.torque(service=False), drawworks.drum_torque)",
        measure=_holding,
    ),
    Rule(
        id="overtravel.room",
        title="Devices leave room to work",
        compares="distance from the ends of the block's travel to the set points with nothing: a "
        "device that trips in normal work gets bypassed",
        sense="at least",
        role="length",
        severity=Severity.SHOULD,
        source=_PRACTICE,
        standing="common practice",
        how="set points less block.lowest - block.highest",
        measure=_room,
    ),
)
