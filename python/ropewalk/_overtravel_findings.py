"""What a check of over-travel devices can find wrong."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from ropewalk._overtravel_hoist import GRAVITY, BrakedHoist, Device
from ropewalk._overtravel_way import layers_at_rest

__all__ = ["Finding"]

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing a check found wrong.

    Attributes
    ----------
    kind
        ``"not two devices"``, ``"one principle"``, ``"never stops"``, ``"does not hold"``,
        ``"slack line"``, ``"contact"``, ``"short margin"``, ``"plan passes set point"``.
    device
        Name of the device; empty if it concerns all of them.
    rows
        Rows of the campaign it concerns.
    text
        What it is, with its numbers.
    """

    kind: str
    device: str
    rows: int
    text: str


def about_devices(devices: Sequence[Device]) -> list[Finding]:
    if len(devices) < 2:
        text = f"only one device, {devices[0].name!r}: no second one stops the block if it fails"
        return [Finding("not two devices", "", 0, text)]
    if len({device.kind for device in devices}) == 1:
        text = f"all devices go by {devices[0].kind}: what misleads one misleads the other"
        return [Finding("one principle", "", 0, text)]
    return []


def about_holding(
    hoist: BrakedHoist, device: Device, up: bool, load: Array, way: Array
) -> list[Finding]:
    """Whether the brake holds every load of the plan where it has stopped it.

    Whatever goes up comes down, so each load counts at both ends, in the outermost layer that a row
    (of those with the ways given) stands in; at rest no sheave helps.
    """
    side = "crown" if up else "floor"
    at_set_point = int(hoist._layers(device.crown_si if up else device.floor_si))
    layer = max(at_set_point, *layers_at_rest(hoist, device, up, way), 1)
    needed = hoist._static_torque(load, layer)
    slips = needed > hoist.brake_torque_si
    if not slips.any():
        return []
    text = (
        f"{device.name}, at the {side}: the brake does not hold what it has stopped, "
        f"{hoist.brake_torque_si / 1e3:.0f} kN*m against {needed.max() / 1e3:.0f} kN*m at rest "
        f"under {load.max() / 1e3:.0f} kN; {int(slips.sum())} of {load.size} rows"
    )
    return [Finding("does not hold", device.name, int(slips.sum()), text)]


def about_slack(hoist: BrakedHoist, device: Device, load: Array) -> list[Finding]:
    """Whether the brake slows the drum of a hoisted block harder than gravity slows the block."""
    layer = hoist._layers(device.crown_si)
    # Once the line is slack the load is nothing to the drum: it is slack for all rows or for none.
    slow = float(hoist._drum_alone(layer))
    if slow <= GRAVITY or not load.size:
        return []
    text = (
        f"{device.name}, hoisting: the line goes slack, the brake alone slows the drum by "
        f"{slow:.1f} m/s2 at the block; the block coasts up, slowed by gravity alone, and falls "
        f"back into its line; {load.size} rows"
    )
    return [Finding("slack line", device.name, load.size, text)]


def about_margins(
    device: Device,
    up: bool,
    rows: npt.NDArray[np.bool_],
    margin: Array,
    required: float,
    end: Array,
    load: Array,
    speed: Array,
) -> list[Finding]:
    side, way = ("crown", "hoisting") if up else ("floor", "lowering")
    set_point = device.crown_si if up else device.floor_si
    past = rows & ((end > set_point) if up else (end < set_point))
    found: list[Finding] = []
    kinds = {
        "never stops": rows & np.isneginf(margin),
        "contact": rows & (margin < 0.0) & np.isfinite(margin),
        "short margin": rows & (margin >= 0.0) & (margin < required),
    }
    for kind, wrong in kinds.items():
        if not wrong.any():
            continue
        worst = int(np.where(wrong, np.where(np.isneginf(margin), -load, margin), np.inf).argmin())
        what = {
            "never stops": "the brake is not stronger than the load",
            "contact": f"the block hits the {side}, {-margin[worst]:.2f} m too far",
            "short margin": f"{margin[worst]:.2f} m left of {required:.2f} m",
        }[kind]
        text = (
            f"{device.name}, {way}: {what}, at worst with {load[worst] / 1e3:.0f} kN at "
            f"{speed[worst]:.2f} m/s; {int(wrong.sum())} of {int(rows.sum())} rows"
        )
        found.append(Finding(kind, device.name, int(wrong.sum()), text))
    if past.any():
        furthest = float(end[past].max() if up else end[past].min())
        text = (
            f"{device.name}, {way}: planned strokes reach {furthest:.2f} m, past the set point of "
            f"{set_point:.2f} m; the device would trip in normal work"
        )
        found.append(Finding("plan passes set point", device.name, int(past.sum()), text))
    return found
