"""Over-travel devices against a campaign."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk._border import Quantity, QuantityLike, to_quantity, to_si
from ropewalk._brake_stop import CAUTION
from ropewalk._overtravel_hoist import BrakedHoist, Device, Direction, stopping_distances
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    import pandas as pd

    from ropewalk.line import Campaign

__all__ = ["Finding", "OvertravelCheck", "check_campaign"]

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing a check found wrong.

    Attributes
    ----------
    kind
        ``"not two devices"``, ``"one principle"``, ``"never stops"``, ``"does not hold"``,
        ``"contact"``, ``"short margin"``, ``"plan passes set point"``.
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


@dataclass(frozen=True, eq=False, slots=True)
class OvertravelCheck:
    """Result of `check_campaign`: every moving row of the campaign against every device.

    Attributes
    ----------
    devices
        Names of the devices.
    row
        Rows of the campaign, those that move the block.
    hoisting
        True where the row goes up, toward the crown.
    hook_load_si, speed_si
        Load, N, and largest speed, m/s, of each row.
    distance_si, margin_si
        Stopping distance from the set point, and what is left to crown or floor, m, one line a
        device; infinite and minus infinite where the brake is not stronger than the load.
    required_margin_si
        Margin asked for, m.
    findings
        What is wrong.
    """

    devices: tuple[str, ...]
    row: npt.NDArray[np.int64]
    hoisting: npt.NDArray[np.bool_]
    hook_load_si: Array
    speed_si: Array
    distance_si: Array
    margin_si: Array
    required_margin_si: float
    findings: tuple[Finding, ...]

    @property
    def ok(self) -> bool:
        """True if nothing was found wrong."""
        return not self.findings

    @property
    def smallest_margin(self) -> Quantity:
        """Smallest margin of each device."""
        return to_quantity(self.margin_si.min(axis=1), "length")

    def table(self) -> pd.DataFrame:
        """Every row and device as a table, in SI, units in the names."""
        import pandas as pd

        count = len(self.devices)
        return pd.DataFrame(
            {
                "row": np.tile(self.row, count),
                "device": np.repeat(self.devices, len(self.row)),
                "direction": np.tile(np.where(self.hoisting, "hoisting", "lowering"), count),
                "hook_load [N]": np.tile(self.hook_load_si, count),
                "speed [m/s]": np.tile(self.speed_si, count),
                "distance [m]": self.distance_si.ravel(),
                "margin [m]": self.margin_si.ravel(),
                "enough": (self.margin_si >= self.required_margin_si).ravel(),
            }
        )

    def __str__(self) -> str:
        lines = [finding.text for finding in self.findings] or ["every margin is left"]
        return "\n".join([*lines, CAUTION])

    def __repr__(self) -> str:
        return (
            f"<OvertravelCheck: {len(self.row)} rows, {len(self.devices)} devices, "
            f"{len(self.findings)} findings>"
        )


def check_campaign(
    campaign: Campaign,
    hoist: BrakedHoist,
    devices: Sequence[Device],
    *,
    crown: QuantityLike,
    floor: QuantityLike,
    margin: QuantityLike,
    hoisting_speed: QuantityLike,
    lowering_speed: QuantityLike,
    hook_power: QuantityLike | None = None,
) -> OvertravelCheck:
    """Check that each device alone stops the block short of crown and floor, whatever it carries.

    Every row of the campaign that moves the block counts with its load, at the largest speed in its
    direction, as if the block went on past its planned end to the set point. The line does not
    stretch. Two devices of different principle are asked for; common practice, no source.

    Parameters
    ----------
    campaign : Campaign
        What the hoist does.
    hoist : BrakedHoist
        Drum, line and the brake that the devices put on.
    devices
        The devices, each of which must do alone.
    crown, floor
        Heights of the block above its lowest working position at which something touches.
    margin
        Distance to be left to either.
    hoisting_speed, lowering_speed
        Largest speed of the block in each direction.
    hook_power
        Power at the hook, which limits the speed of hoisting a load further; no limit if left out.

    Returns
    -------
    OvertravelCheck
        Margins of every row and device, and findings. A brake weaker than the load is a finding.

    Raises
    ------
    InadmissibleError
        If there is no device, a set point lies beyond what it guards, or no row moves the block.

    Examples
    --------
    >>> import ropewalk as rw
    >>> hoist = rw.overtravel.BrakedHoist(
    ...     drum=rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=4),
    ...     reeving=rw.Reeving(10, "roller"), wraps_at_lowest=8,
    ...     brake_torque="120 kN*m", rotating_mass="1500 tonne",
    ... )
    >>> device = rw.overtravel.Device(
    ...     "toggle valve", "drum wraps", crown="31 m", floor="-0.5 m", reaction_time="0.6 s"
    ... )
    >>> check = rw.overtravel.check_campaign(
    ...     rw.Campaign.from_plan(rw.rig.example("rig7")), hoist, [device], crown="34 m",
    ...     floor="-2.5 m", margin="0.5 m", hoisting_speed="1.5 m/s", lowering_speed="1.5 m/s",
    ... )
    >>> sorted({finding.kind for finding in check.findings})
    ['not two devices', 'short margin']
    """
    where = "overtravel.check_campaign"
    limits = (
        float(to_si(where, "crown", crown, "length")),
        float(to_si(where, "floor", floor, "length")),
    )
    required = float(to_si(where, "margin", margin, "length"))
    speeds = (
        float(to_si(where, "hoisting_speed", hoisting_speed, "speed")),
        float(to_si(where, "lowering_speed", lowering_speed, "speed")),
    )
    power = np.inf if hook_power is None else float(to_si(where, "hook_power", hook_power, "power"))
    _check_devices(where, devices, limits)
    climb = campaign.height_to_si - campaign.height_from_si
    row = np.flatnonzero((climb != 0.0) & (campaign.hook_load_si > 0.0))
    if not row.size:
        raise InadmissibleError(f"{where}(): no row of campaign moves a load", where, "campaign")
    up = climb[row] > 0.0
    load = campaign.hook_load_si[row]
    speed = np.where(up, np.minimum(speeds[0], power / load), speeds[1])
    distance = np.array([_distances(hoist, device, up, load, speed) for device in devices])
    left = np.array(
        [
            np.where(up, limits[0] - device.crown_si, device.floor_si - limits[1])
            for device in devices
        ]
    )
    end = campaign.height_to_si[row]
    margins = left - distance
    return OvertravelCheck(
        devices=tuple(device.name for device in devices),
        row=row,
        hoisting=up,
        hook_load_si=load,
        speed_si=speed,
        distance_si=distance,
        margin_si=margins,
        required_margin_si=required,
        findings=(
            *_about_devices(devices),
            *(
                finding
                for device in devices
                for side in (True, False)
                for finding in _about_holding(hoist, device, side, load)
            ),
            *(
                finding
                for k, device in enumerate(devices)
                for side in (True, False)
                for finding in _about_margins(
                    device, side, up == side, margins[k], required, end, load, speed
                )
            ),
        ),
    )


def _check_devices(where: str, devices: Sequence[Device], limits: tuple[float, float]) -> None:
    if not devices:
        raise InadmissibleError(f"{where}(): devices is empty", where, "devices")
    for device in devices:
        if not limits[1] <= device.floor_si < device.crown_si <= limits[0]:
            text = (
                f"the set points of {device.name!r}, {device.floor_si:g} m and "
                f"{device.crown_si:g} m, must lie between floor = {limits[1]:g} m and "
                f"crown = {limits[0]:g} m"
            )
            raise InadmissibleError(f"{where}(): {text}", where, "devices")


def _distances(hoist: BrakedHoist, device: Device, up: Any, load: Array, speed: Array) -> Array:
    """Stopping distance of each row from the set point of a device."""
    distance = np.empty_like(load)
    ways: tuple[tuple[Direction, Any, float], ...] = (
        ("hoisting", up, device.crown_si),
        ("lowering", ~up, device.floor_si),
    )
    for direction, rows, height in ways:
        if rows.any():
            slow = hoist._decelerations(direction, load[rows], hoist._layers(height))
            times = device.reaction_time_si, device.drive_acceleration_si
            distance[rows] = stopping_distances(speed[rows], *times, slow)
    return distance


def _about_devices(devices: Sequence[Device]) -> list[Finding]:
    if len(devices) < 2:
        text = f"only one device, {devices[0].name!r}: no second one stops the block if it fails"
        return [Finding("not two devices", "", 0, text)]
    if len({device.kind for device in devices}) == 1:
        text = f"all devices go by {devices[0].kind}: what misleads one misleads the other"
        return [Finding("one principle", "", 0, text)]
    return []


def _about_holding(hoist: BrakedHoist, device: Device, up: bool, load: Array) -> list[Finding]:
    """Whether the brake holds every load of the plan where it has stopped it.

    Whatever goes up comes down, so each load counts at both ends; at rest no sheave helps.
    """
    side, height = ("crown", device.crown_si) if up else ("floor", device.floor_si)
    needed = hoist._static_torque(load, hoist._layers(height))
    slips = needed > hoist.brake_torque_si
    if not slips.any():
        return []
    text = (
        f"{device.name}, at the {side}: the brake does not hold what it has stopped, "
        f"{hoist.brake_torque_si / 1e3:.0f} kN*m against {needed.max() / 1e3:.0f} kN*m at rest "
        f"under {load.max() / 1e3:.0f} kN; {int(slips.sum())} of {load.size} rows"
    )
    return [Finding("does not hold", device.name, int(slips.sum()), text)]


def _about_margins(
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
