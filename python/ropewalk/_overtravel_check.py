"""Over-travel devices against a campaign."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk._border import Quantity, QuantityLike, to_one_within, to_quantity
from ropewalk._brake_stop import CAUTION
from ropewalk._overtravel_findings import (
    Finding,
    about_devices,
    about_holding,
    about_margins,
    about_slack,
)
from ropewalk._overtravel_hoist import BrakedHoist, Device, Direction
from ropewalk._overtravel_way import ways_to_rest
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    import pandas as pd

    from ropewalk.line import Campaign

__all__ = ["OvertravelCheck", "check_campaign"]

Array = npt.NDArray[np.float64]

#: Printed beside the verdict: what holds a load that is lowered until the brake grips.
_ASSUMPTION = {
    True: "taken: power lost; nothing holds a lowered load until the brake grips, and it falls",
    False: "taken: power kept; the drive holds a lowered load until the brake grips. It is not so "
    "if power is lost",
}


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
    power_lost
        True if loads that are lowered were taken to fall until the brake grips.
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
    power_lost: bool
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
        return "\n".join([*lines, _ASSUMPTION[self.power_lost], CAUTION])

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
    power_lost: bool = True,
) -> OvertravelCheck:
    """Check that each device alone stops the block short of crown and floor, whatever it carries.

    Every row of the campaign that moves the block counts with its load, at the largest speed in its
    direction, as if the block went on past its planned end to the set point. The line does not
    stretch; where a layer of the drum ends on the way, the next one's radius counts from there.
    Until the brake grips a load that is lowered falls, as when power is lost, and all that
    turns gains speed with it. Hoisting, gravity slows the block at most, and the line goes slack
    where the brake slows the drum harder. Two devices of different principle are asked for; common
    practice, no source.

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
    power_lost
        False if a drive or an auxiliary brake is sure to hold a lowered load until the brake grips;
        the result says which was taken.

    Returns
    -------
    OvertravelCheck
        Margins of every row and device, and findings. A brake weaker than the load is a finding.

    Raises
    ------
    InadmissibleError
        If there is no device, a set point lies beyond what it guards, no row moves the block, or a
        height, speed, power or the margin cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> hoist = rw.overtravel.BrakedHoist(
    ...     drum=rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=4),
    ...     reeving=rw.Reeving(10, "roller"), wraps_at_lowest=8,
    ...     brake_torque="120 kN*m", rotating_mass="1500 tonne",
    ... )
    >>> device = rw.overtravel.Device(
    ...     "toggle valve", "drum wraps", crown="31 m", floor="-0.5 m", reaction_time="0.6 s",
    ...     drive_acceleration="0 m/s**2",
    ... )
    >>> check = rw.overtravel.check_campaign(
    ...     rw.Campaign.from_plan(rw.rig.example("rig7")), hoist, [device], crown="34 m",
    ...     floor="-2.5 m", margin="0.5 m", hoisting_speed="1.5 m/s", lowering_speed="1.5 m/s",
    ... )
    >>> sorted({finding.kind for finding in check.findings})
    ['contact', 'not two devices', 'short margin']
    """
    where = "overtravel.check_campaign"
    bounds = Bounds.of(where, crown, floor, margin, hoisting_speed, lowering_speed, hook_power)
    check_devices(where, devices, (bounds.crown, bounds.floor))
    climb = campaign.height_to_si - campaign.height_from_si
    row = np.flatnonzero((climb != 0.0) & (campaign.hook_load_si > 0.0))
    if not row.size:
        raise InadmissibleError(f"{where}(): no row of campaign moves a load", where, "campaign")
    up = climb[row] > 0.0
    load = campaign.hook_load_si[row]
    speed, distance, margins = margins_left(hoist, devices, bounds, up, load, power_lost)
    end, required = campaign.height_to_si[row], bounds.margin
    return OvertravelCheck(
        devices=tuple(device.name for device in devices),
        row=row,
        hoisting=up,
        hook_load_si=load,
        speed_si=speed,
        distance_si=distance,
        margin_si=margins,
        required_margin_si=required,
        power_lost=bool(power_lost),
        findings=(
            *about_devices(devices),
            *(
                finding
                for k, device in enumerate(devices)
                for side in (True, False)
                for finding in about_holding(hoist, device, side, load, distance[k][up == side])
            ),
            *(finding for device in devices for finding in about_slack(hoist, device, load[up])),
            *(
                finding
                for k, device in enumerate(devices)
                for side in (True, False)
                for finding in about_margins(
                    device, side, up == side, margins[k], required, end, load, speed
                )
            ),
        ),
    )


@dataclass(frozen=True, slots=True)
class Bounds:
    """What `check_campaign` is given besides hoist and devices, SI."""

    crown: float
    floor: float
    margin: float
    hoisting_speed: float
    lowering_speed: float
    power: float

    @classmethod
    def of(
        cls,
        where: str,
        crown: QuantityLike,
        floor: QuantityLike,
        margin: QuantityLike,
        hoisting_speed: QuantityLike,
        lowering_speed: QuantityLike,
        hook_power: QuantityLike | None,
    ) -> Bounds:
        """Return the bounds; refuse what cannot be."""
        power = np.inf
        if hook_power is not None:
            power = to_one_within(where, "hook_power", hook_power, "power", 0.0, 1e9, above=True)
        # A block that does not move needs no room: a speed of zero would pass every check.
        return cls(
            to_one_within(where, "crown", crown, "length", -200.0, 200.0),
            to_one_within(where, "floor", floor, "length", -200.0, 200.0),
            to_one_within(where, "margin", margin, "length", 0.0, 200.0),
            to_one_within(where, "hoisting_speed", hoisting_speed, "speed", 0.0, 100.0, above=True),
            to_one_within(where, "lowering_speed", lowering_speed, "speed", 0.0, 100.0, above=True),
            power,
        )


def margins_left(
    hoist: BrakedHoist,
    devices: Sequence[Device],
    bounds: Bounds,
    up: npt.NDArray[np.bool_],
    load: Array,
    power_lost: bool,
) -> tuple[Array, Array, Array]:
    """Speed of each row, and stopping distance and margin of each device and row, SI."""
    fastest = np.minimum(bounds.hoisting_speed, bounds.power / load)
    speed = np.where(up, fastest, bounds.lowering_speed)
    distance = np.array(
        [_distances(hoist, device, up, load, speed, power_lost) for device in devices]
    )
    left = np.array(
        [
            np.where(up, bounds.crown - device.crown_si, device.floor_si - bounds.floor)
            for device in devices
        ]
    )
    return speed, distance, left - distance


def check_devices(where: str, devices: Sequence[Device], limits: tuple[float, float]) -> None:
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


def _distances(
    hoist: BrakedHoist, device: Device, up: Any, load: Array, speed: Array, power_lost: bool
) -> Array:
    """Stopping distance of each row from the set point of a device."""
    distance = np.empty_like(load)
    ways: tuple[tuple[Direction, Any], ...] = (("hoisting", up), ("lowering", ~up))
    for direction, rows in ways:
        if rows.any():
            distance[rows] = ways_to_rest(
                hoist, device, direction, load[rows], speed[rows], power_lost
            )
    return distance
