"""What a hoisted block does after its highest point: the class `FallBack`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from ropewalk._border import Quantity, to_quantity

__all__ = ["FallBack", "fall_back_of"]


@dataclass(frozen=True, slots=True)
class FallBack:
    """What a hoisted block does after its highest point.

    Friction of the sheaves is not counted on to hold it, at rest or on its way down.

    Attributes
    ----------
    falls
        True if the drum gives way, or the line went slack and the block drops into it. On an
        elastic line every block swings back a little, which is no fall.
    holds
        True if the brake ends it, False if the block is not stopped any more.
    distance_si, time_si
        From the highest point to the lowest after it, m and s; infinite if nothing ends it.
    highest_speed_si
        Largest speed on the way down, m/s; infinite likewise.
    """

    falls: bool
    holds: bool
    distance_si: float
    time_si: float
    highest_speed_si: float

    @property
    def distance(self) -> Quantity:
        """Way down from the highest point."""
        return to_quantity(self.distance_si, "length")

    @property
    def time(self) -> Quantity:
        """Time from the highest point to the lowest after it."""
        return to_quantity(self.time_si, "time")

    @property
    def highest_speed(self) -> Quantity:
        """Largest speed on the way down."""
        return to_quantity(self.highest_speed_si, "speed")

    def __str__(self) -> str:
        if not self.holds:
            return "the block falls back and the brake does not stop it"
        if not self.falls:
            return "the brake holds the block where it stands"
        return (
            f"the block falls back {self.distance_si:.2f} m in {self.time_si:.2f} s, at up to "
            f"{self.highest_speed_si:.2f} m/s, until the brake holds it"
        )


def fall_back_of(record: dict[str, Any] | None) -> FallBack | None:
    """Return the fall back of a record of the core, None where there is none."""
    if record is None:
        return None
    numbers = {f"{name}_si": record[name] for name in ("distance", "time", "highest_speed")}
    return FallBack(record["falls"], record["holds"], **numbers)
