"""How a hoist stops its block, and the devices that make it: `BrakedHoist`, `Device`."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING, Any, Literal

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_count, to_one, to_quantity, to_si
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk._drum import Drum
    from ropewalk._reeving import Reeving

__all__ = ["BrakedHoist", "Device"]

Direction = Literal["hoisting", "lowering"]

#: No line pulls a block down: hoisted, it slows by gravity at most. Standard gravity, m/s².
GRAVITY = 9.80665

#: What a device goes by.
_KINDS = ("drum wraps", "block height")


def check_direction(where: str, direction: object) -> None:
    """Refuse what is not a direction of the block."""
    if not isinstance(direction, str) or direction not in ("hoisting", "lowering"):
        text = f"direction must be 'hoisting' or 'lowering', got {direction!r}"
        raise InadmissibleError(f"{where}(): {text}", where, "direction")


@lru_cache(maxsize=64)
def _radii(drum: Drum) -> npt.NDArray[np.float64]:
    """Radius of the rope in every layer, m."""
    laps = [drum._drum().lap_length(one) for one in range(1, drum.layers + 1)]
    radii = np.array(laps) / (2.0 * np.pi)
    radii.flags.writeable = False
    return radii


@dataclass(frozen=True, init=False, slots=True)
class BrakedHoist:
    """Drum, line and brake, as far as they decide how the block stops.

    Parameters
    ----------
    drum : Drum
        The drum and its rope.
    reeving : Reeving
        How the line is strung.
    wraps_at_lowest
        Laps on the drum with the block at its lowest working position.
    brake_torque
        Torque of the brakes that an over-travel device puts on, at the drum.
    rotating_mass
        All that turns, as a mass at the hook with the rope in the first layer: J (N/R)² of a moment
        of inertia J at the drum shaft. In higher layers it counts less.

    Examples
    --------
    >>> import ropewalk as rw
    >>> hoist = rw.overtravel.BrakedHoist(
    ...     drum=rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=4),
    ...     reeving=rw.Reeving(10, "roller"), wraps_at_lowest=8,
    ...     brake_torque="120 kN*m", rotating_mass="1500 tonne",
    ... )
    >>> a = hoist.deceleration("hoisting", "46 kip", "31 m")
    >>> print(f"{a.magnitude:.2f} m/s2")
    2.85 m/s2
    """

    drum: Drum
    reeving: Reeving
    wraps_at_lowest: float
    brake_torque_si: float
    rotating_mass_si: float

    def __init__(
        self,
        *,
        drum: Drum,
        reeving: Reeving,
        wraps_at_lowest: float,
        brake_torque: QuantityLike,
        rotating_mass: QuantityLike,
    ) -> None:
        where = "overtravel.BrakedHoist"
        values = {
            "wraps_at_lowest": to_si(where, "wraps_at_lowest", wraps_at_lowest, "number"),
            "brake_torque_si": to_si(where, "brake_torque", brake_torque, "torque"),
            "rotating_mass_si": to_si(where, "rotating_mass", rotating_mass, "mass"),
        }
        for name, value in values.items():
            if np.ndim(value) or not 0.0 <= value < np.inf:
                field = name.removesuffix("_si")
                text = f"{field} must be one value that is not negative, got {value!r}"
                raise InadmissibleError(f"{where}(): {text}", where, field)
            object.__setattr__(self, name, float(value))
        object.__setattr__(self, "drum", drum)
        object.__setattr__(self, "reeving", reeving)

    def layer_at(self, block_height: QuantityLike) -> Any:
        """Layer the line leaves the drum from, with the block at one height or many."""
        height = to_si("overtravel.BrakedHoist.layer_at", "block_height", block_height, "length")
        return np.asarray(self._layers(height), dtype=int)[()]

    def _layers(self, height: Any) -> Any:
        wraps = _core.overtravel.wraps_at_height(
            self.drum._drum(), float(self.reeving.lines), self.wraps_at_lowest, height
        )
        return np.minimum(
            np.floor(np.asarray(wraps) / self.drum.laps_per_layer) + 1.0, self.drum.layers
        )

    def deceleration(
        self, direction: Direction, hook_load: QuantityLike, block_height: QuantityLike
    ) -> Quantity:
        """Deceleration of the block on its brake, at loads and heights; negative if it gains speed.

        Hoisting, gravity at most: where the brake slows the drum harder, the line goes slack and
        the block coasts up. What it does to the line falling back, `ropewalk.brake.Stop` has.

        Parameters
        ----------
        direction : {"hoisting", "lowering"}
            The way the block goes.
        hook_load
            Everything hung on the lines.
        block_height
            Height of the block above its lowest working position.
        """
        where = "overtravel.BrakedHoist.deceleration"
        check_direction(where, direction)
        load = to_si(where, "hook_load", hook_load, "force")
        height = to_si(where, "block_height", block_height, "length")
        try:
            np.broadcast_shapes(np.shape(load), np.shape(height))
        except ValueError:
            text = (
                f"hook_load of shape {np.shape(load)} and block_height of shape "
                f"{np.shape(height)} do not fit together"
            )
            raise InadmissibleError(f"{where}(): {text}", where, "block_height") from None
        return to_quantity(
            self._decelerations(direction, load, self._layers(height)), "acceleration"
        )

    def _radius(self, layer: Any) -> Any:
        """Radius of the rope in a layer, m."""
        return _radii(self.drum)[np.asarray(layer, dtype=int) - 1]

    def _static_torque(self, load: Any, layer: Any) -> Any:
        """Torque of a load at rest at the drum, N m."""
        return np.asarray(load) / self.reeving.lines * self._radius(layer)

    def _decelerations(self, direction: Direction, load: Any, layer: Any) -> Any:
        """Decelerations of the block for SI loads and layers, brought to one shape."""
        return self._with_brake(direction, load, layer, self.brake_torque_si)

    def _drum_alone(self, layer: Any) -> Any:
        """Deceleration of the drum under a slack line, brought to the block, by layer."""
        force = self.brake_torque_si * self.reeving.lines / self._radius(layer)
        if self.rotating_mass_si == 0.0:
            return np.where(force > 0.0, np.inf, 0.0)
        return force / self._turning(layer)

    def _turning(self, layer: Any) -> Any:
        """All that turns as a mass at the hook, by layer, kg."""
        return self.rotating_mass_si * (self._radius(1) / self._radius(layer)) ** 2

    def _with_brake(self, direction: Direction, load: Any, layer: Any, brake_torque: float) -> Any:
        load, layer = np.broadcast_arrays(np.asarray(load, float), np.asarray(layer, float))
        tension = np.asarray(self.reeving._arrangement.tensions(direction, load)["fast_line"])
        radius = self._radius(layer)
        function = getattr(_core.brake, f"{direction}_deceleration")
        return np.asarray(
            function(
                brake_torque,
                tension * radius,
                float(self.reeving.lines),
                radius,
                # The load with the mass the drum feels: see `ropewalk.brake.lowering_deceleration`.
                tension * self.reeving.lines / GRAVITY + self._turning(layer),
            )
        )

    def _before_grip(
        self, direction: Direction, load: Any, layer: Any, drive: Any, power_lost: bool
    ) -> Any:
        """Acceleration of the block until the brake grips, SI: the drive's, or that of a fall.

        Without power nothing holds a load that is lowered: all that turns gains speed with it.
        Hoisted, it would slow down, which nobody may count on: the drive may just as well pull on.
        """
        if direction == "hoisting" or not power_lost:
            return drive
        return np.maximum(drive, -self._with_brake(direction, load, layer, 0.0))


@dataclass(frozen=True, init=False, slots=True)
class Device:
    """One over-travel device: where it trips and how long the brake takes to grip.

    Parameters
    ----------
    name
        What it is called on the rig.
    kind : {"drum wraps", "block height"}
        What it goes by: rope or turns on the drum, or the block itself.
    crown, floor
        Set points: heights of the block above its lowest working position at which it trips on the
        way up and on the way down, the latter negative below that position.
    reaction_time
        From the set point until the brake grips: sensing, logic, valves, clutch, build-up. Nobody
        publishes it for your rig: measure it.
    drive_acceleration
        Acceleration of the block in that time, where the drive still pulls: a clutch that drags.
        No default: ``"0 m/s**2"`` says that the drive lets go or keeps the speed.

    Raises
    ------
    InadmissibleError
        If `crown` is not above `floor`, or a value cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> device = rw.overtravel.Device(
    ...     "toggle valve", "drum wraps", crown="31 m", floor="-0.5 m", reaction_time="0.6 s",
    ...     drive_acceleration="0 m/s**2",
    ... )
    >>> drum = rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=4)
    >>> crown, floor = device.wraps(drum, lines=10, wraps_at_lowest=8)
    >>> print(f"{crown:.1f} and {floor:.1f} wraps")
    128.5 and 5.9 wraps
    """

    name: str
    kind: Literal["drum wraps", "block height"]
    crown_si: float
    floor_si: float
    reaction_time_si: float
    drive_acceleration_si: float

    def __init__(
        self,
        name: str,
        kind: Literal["drum wraps", "block height"],
        *,
        crown: QuantityLike,
        floor: QuantityLike,
        reaction_time: QuantityLike,
        drive_acceleration: QuantityLike,
    ) -> None:
        where = "overtravel.Device"
        if not isinstance(kind, str) or kind not in _KINDS:
            text = f"kind must be 'drum wraps' or 'block height', got {kind!r}"
            raise InadmissibleError(f"{where}(): {text}", where, "kind")
        values = {
            "crown_si": to_one(where, "crown", crown, "length"),
            "floor_si": to_one(where, "floor", floor, "length"),
            "reaction_time_si": to_one(where, "reaction_time", reaction_time, "time"),
            "drive_acceleration_si": to_one(
                where, "drive_acceleration", drive_acceleration, "acceleration"
            ),
        }
        if not -200.0 <= values["floor_si"] < values["crown_si"] <= 200.0:
            text = (
                f"crown = {values['crown_si']:g} m must be above floor = {values['floor_si']:g} m, "
                "both within 200 m (ropewalk's guard)"
            )
            raise InadmissibleError(f"{where}(): {text}", where, "crown")
        # The formula says whether time and acceleration can be.
        times = values["reaction_time_si"], values["drive_acceleration_si"]
        _core.overtravel.stopping_distance(1.0, *times, 1.0)
        object.__setattr__(self, "name", str(name))
        object.__setattr__(self, "kind", kind)
        for field, value in values.items():
            object.__setattr__(self, field, float(value))

    @property
    def crown(self) -> Quantity:
        """Height of the block at which it trips on the way up."""
        return to_quantity(self.crown_si, "length")

    @property
    def floor(self) -> Quantity:
        """Height of the block at which it trips on the way down."""
        return to_quantity(self.floor_si, "length")

    def wraps(self, drum: Drum, *, lines: int, wraps_at_lowest: float) -> tuple[float, float]:
        """Both set points in wraps of the drum, crown first; see `wraps_at_height`."""
        where = "overtravel.Device.wraps"
        crown, floor = _core.overtravel.wraps_at_height(
            drum._drum(),
            float(to_count(where, "lines", lines)),
            to_one(where, "wraps_at_lowest", wraps_at_lowest, "number"),
            np.array([self.crown_si, self.floor_si]),
        )
        return float(crown), float(floor)
