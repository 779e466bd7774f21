"""Strokes of the block and their limits: classes of `ropewalk.drawworks`."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_one, to_quantity

__all__ = ["Limits", "Stroke", "StrokeCurve"]


@dataclass(frozen=True, init=False, slots=True)
class Limits:
    """How the driller, or the control system, lets the block move.

    Parameters
    ----------
    speed
        Hoisting speed of the block that is not exceeded.
    acceleration
        Acceleration that is not exceeded after the start.
    deceleration
        Held before the stop, positive; as `acceleration` if left out.
    lowering_speed
        Lowering speed that is not exceeded; as `speed` if left out.
    overload
        Whether the motors may give their overload while hoisting.

    Raises
    ------
    InadmissibleError
        For limits that cannot be; a deceleration beyond g leaves the lines slack.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.drawworks.Limits("1 m/s", "0.4 m/s**2").deceleration_si
    0.4
    """

    speed_si: float
    acceleration_si: float
    deceleration_si: float
    lowering_speed_si: float
    overload: bool

    def __init__(
        self,
        speed: QuantityLike,
        acceleration: QuantityLike,
        deceleration: QuantityLike | None = None,
        lowering_speed: QuantityLike | None = None,
        *,
        overload: bool = False,
    ) -> None:
        where = "drawworks.Limits"
        up = to_one(where, "speed", speed, "speed")
        start = to_one(where, "acceleration", acceleration, "acceleration")
        values = {
            "speed_si": up,
            "acceleration_si": start,
            "deceleration_si": (
                start
                if deceleration is None
                else to_one(where, "deceleration", deceleration, "acceleration")
            ),
            "lowering_speed_si": (
                up
                if lowering_speed is None
                else to_one(where, "lowering_speed", lowering_speed, "speed")
            ),
            "overload": bool(overload),
        }
        _core.drawworks.check_limits(
            **{name.removesuffix("_si"): v for name, v in values.items() if name != "overload"}
        )
        for name, value in values.items():
            object.__setattr__(self, name, value)


@dataclass(frozen=True, slots=True)
class Stroke:
    """A stroke of the block from rest to rest; arrays if many loads were asked for. SI.

    Energies are counted where motors and brakes work, and balance:
    driven − braked = lifted + lost.

    Attributes
    ----------
    possible
        False where the load cannot be moved so; then `reason` says why.
    reason
        Why it is not possible, with numbers; ``""`` where it is.
    gear
        Gear hoisted in, from 1; 0 lowering.
    time_si
        s; infinite where the stroke is not possible.
    peak_speed_si
        Highest speed of the block, m/s.
    peak_power_si
        Largest power of the motors, W.
    peak_braking_si
        Largest power the brakes take, W.
    time_overloaded_si
        Time in which the motors give more than their rated torque or power, s.
    driven_si
        Given by the motors, J.
    braked_si
        Taken by brakes, or by motors that feed back, J.
    lifted_si
        Load times travel, negative lowering, J.
    lost_si
        Friction of gear, drum and reeving, J.
    """

    possible: Any
    reason: Any
    gear: Any
    time_si: Any
    peak_speed_si: Any
    peak_power_si: Any
    peak_braking_si: Any
    time_overloaded_si: Any
    driven_si: Any
    braked_si: Any
    lifted_si: Any
    lost_si: Any

    @classmethod
    def from_columns(cls, columns: Mapping[str, Any], shape: tuple[int, ...]) -> Stroke:
        """Strokes as the core gives them, one a load, brought to the shape of the loads."""
        kinds: dict[str, Any] = {"possible": bool, "gear": int, "reason": object}
        values = {}
        for name, column in columns.items():
            array = np.asarray(column, dtype=kinds.get(name, float)).reshape(shape)
            values[name if name in kinds else f"{name}_si"] = array if shape else array.item()
        return cls(**values)

    @property
    def time(self) -> Quantity:
        """Time of the stroke; infinite where it is not possible."""
        return to_quantity(self.time_si, "time")

    @property
    def peak_speed(self) -> Quantity:
        """Highest speed of the block."""
        return to_quantity(self.peak_speed_si, "speed")

    @property
    def peak_power(self) -> Quantity:
        """Largest power of the motors."""
        return to_quantity(self.peak_power_si, "power")

    @property
    def peak_braking(self) -> Quantity:
        """Largest power the brakes take."""
        return to_quantity(self.peak_braking_si, "power")

    @property
    def time_overloaded(self) -> Quantity:
        """Time in which the motors give more than their rated torque or power."""
        return to_quantity(self.time_overloaded_si, "time")

    @property
    def driven(self) -> Quantity:
        """Energy the motors give."""
        return to_quantity(self.driven_si, "energy")

    @property
    def braked(self) -> Quantity:
        """Energy brakes take, or motors that feed back."""
        return to_quantity(self.braked_si, "energy")

    @property
    def lifted(self) -> Quantity:
        """Load times travel; negative lowering."""
        return to_quantity(self.lifted_si, "energy")

    @property
    def lost(self) -> Quantity:
        """Energy lost to friction of gear, drum and reeving."""
        return to_quantity(self.lost_si, "energy")


@dataclass(frozen=True, slots=True)
class StrokeCurve:
    """Speed and power along one stroke, from rest to rest; arrays of one length.

    Attributes
    ----------
    time_si, travel_si, speed_si
        s, m, m/s.
    power_si
        Of the motors; lowering, at the drum. Negative where brakes take it. W.
    layer
        Layer the fast line runs onto.
    reason
        Why the stroke is not possible, with numbers, and the arrays are empty; ``""`` where it is.
    """

    time_si: npt.NDArray[np.float64]
    travel_si: npt.NDArray[np.float64]
    speed_si: npt.NDArray[np.float64]
    power_si: npt.NDArray[np.float64]
    layer: npt.NDArray[np.float64]
    reason: str

    @property
    def time(self) -> Quantity:
        """Time since the start."""
        return to_quantity(self.time_si, "time")

    @property
    def travel(self) -> Quantity:
        """Travel done."""
        return to_quantity(self.travel_si, "length")

    @property
    def speed(self) -> Quantity:
        """Speed of the block."""
        return to_quantity(self.speed_si, "speed")

    @property
    def power(self) -> Quantity:
        """Power of the motors; lowering, at the drum; negative: braked."""
        return to_quantity(self.power_si, "power")
