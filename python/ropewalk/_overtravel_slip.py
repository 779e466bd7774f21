"""Over-travel devices against a slip and cut."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_one, to_quantity
from ropewalk._brake_stop import CAUTION
from ropewalk._overtravel_hoist import BrakedHoist, Device

__all__ = ["SlipCutEffect", "slip_cut_effect"]


@dataclass(frozen=True, slots=True)
class SlipCutEffect:
    """What a slip and cut makes of a device that goes by the drum and is not set again.

    Attributes
    ----------
    wraps_before, wraps_after
        Laps on the drum with the block at its lowest.
    fixed_crown_si, fixed_floor_si
        Heights of the block at which a device that trips at a wrap of the drum trips now, m.
    counted_crown_si, counted_floor_si
        The same for a counter of turns that was zeroed again at the lowest position but still takes
        the layers to be where they were, m.
    """

    wraps_before: float
    wraps_after: float
    fixed_crown_si: float
    fixed_floor_si: float
    counted_crown_si: float
    counted_floor_si: float

    @property
    def fixed_crown(self) -> Quantity:
        """Height at which a device at a wrap of the drum trips now on the way up."""
        return to_quantity(self.fixed_crown_si, "length")

    @property
    def fixed_floor(self) -> Quantity:
        """Height at which a device at a wrap of the drum trips now on the way down."""
        return to_quantity(self.fixed_floor_si, "length")

    @property
    def counted_crown(self) -> Quantity:
        """Height at which a counter zeroed at the lowest position trips now on the way up."""
        return to_quantity(self.counted_crown_si, "length")

    @property
    def counted_floor(self) -> Quantity:
        """Height at which a counter zeroed at the lowest position trips now on the way down."""
        return to_quantity(self.counted_floor_si, "length")

    def __str__(self) -> str:
        return (
            f"at a wrap of the drum: crown at {self.fixed_crown_si:.2f} m, floor at "
            f"{self.fixed_floor_si:.2f} m; by a counter zeroed again: crown at "
            f"{self.counted_crown_si:.2f} m, floor at {self.counted_floor_si:.2f} m\n"
            f"Set and test every device again after a slip and cut. {CAUTION}"
        )


def slip_cut_effect(
    hoist: BrakedHoist, device: Device, *, slipped: QuantityLike, cut: QuantityLike
) -> SlipCutEffect:
    """Heights at which a device by the drum trips after line was slipped and cut.

    Parameters
    ----------
    hoist : BrakedHoist
        Drum and line before.
    device : Device
        Its set points before.
    slipped, cut
        Line let through from the reel, and cut off at the drum.

    Raises
    ------
    InadmissibleError
        If less than no rope would be left on the drum, or more than it holds.

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
    >>> effect = rw.overtravel.slip_cut_effect(hoist, device, slipped="60 ft", cut="80 ft")
    >>> print(f"{effect.fixed_crown.magnitude:.2f} m, {effect.counted_crown.magnitude:.2f} m")
    31.61 m, 30.85 m
    """
    where = "overtravel.slip_cut_effect"
    slip = to_one(where, "slipped", slipped, "length")
    off = to_one(where, "cut", cut, "length")
    drum, lines = hoist.drum._drum(), float(hoist.reeving.lines)
    before = hoist.wraps_at_lowest
    after = float(drum.place(float(drum.length_of(before)) + slip - off)[2])
    at = _core.overtravel.wraps_at_height
    height = _core.overtravel.height_at_wraps
    heights = np.array([device.crown_si, device.floor_si])
    wraps = at(drum, lines, before, heights)
    fixed = height(drum, lines, after, wraps)
    counted = height(drum, lines, after, wraps - before + after)
    return SlipCutEffect(before, after, *map(float, fixed), *map(float, counted))
