"""Motors, gears and drum of a drawworks as objects: classes of `ropewalk.drawworks`."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, fields
from typing import Any

from ropewalk._border import (
    NumberLike,
    Quantity,
    QuantityLike,
    to_count,
    to_one,
    to_quantity,
)
from ropewalk.errors import InadmissibleError

__all__ = ["Drawworks", "Gear", "Motors"]


def _set(owner: Any, **values: Any) -> None:
    for name, value in values.items():
        object.__setattr__(owner, name, value)


def _text(owner: Any) -> str:
    """Arguments that make the object again."""
    shown = []
    for item in fields(owner):
        value = getattr(owner, item.name)
        unit = _UNITS.get(item.name)
        shown.append(f"'{value!r} {unit}'" if unit and value is not None else repr(value))
    return f"{type(owner).__name__}({', '.join(shown)})"


_UNITS = {
    "power_si": "W",
    "base_speed_si": "rad/s",
    "top_speed_si": "rad/s",
    "inertia_si": "kg*m**2",
    "overload_time_si": "s",
    "drum_inertia_si": "kg*m**2",
}


@dataclass(frozen=True, init=False, repr=False, slots=True)
class Motors:
    """Motors on the input shaft of a drawworks, all alike.

    Each gives constant torque up to its base speed and constant power from there to its top speed.

    Parameters
    ----------
    count
        Number of motors.
    power
        Rated power of one motor at its shaft.
    base_speed
        Rotation at which it reaches its rated power.
    top_speed
        Highest rotation.
    inertia
        Moment of inertia of one rotor with what turns with it. Nothing if left out; on electric
        drawworks it may be most of what must be accelerated.
    overload
        Torque and power the motors may give for a while, over the rated ones; 1 if left out.
    overload_time
        How long they may be overloaded in one stroke, from their maker; no limit if left out.

    Examples
    --------
    >>> import ropewalk as rw
    >>> motors = rw.drawworks.Motors(2, "750 hp", base_speed="800 rpm", top_speed="1600 rpm")
    >>> print(f"{motors.total_power.to('hp').magnitude:.0f} hp")
    1500 hp
    """

    count: int
    power_si: float
    base_speed_si: float
    top_speed_si: float
    inertia_si: float
    overload: float
    overload_time_si: float | None

    def __init__(
        self,
        count: int,
        power: QuantityLike,
        base_speed: QuantityLike,
        top_speed: QuantityLike,
        inertia: QuantityLike = "0 kg*m**2",
        overload: NumberLike = 1.0,
        overload_time: QuantityLike | None = None,
    ) -> None:
        where = "drawworks.Motors"
        _set(
            self,
            count=max(-1, min(to_count(where, "count", count), 2**31 - 1)),
            power_si=to_one(where, "power", power, "power"),
            base_speed_si=to_one(where, "base_speed", base_speed, "angular_velocity"),
            top_speed_si=to_one(where, "top_speed", top_speed, "angular_velocity"),
            inertia_si=to_one(where, "inertia", inertia, "moment_of_inertia"),
            overload=to_one(where, "overload", overload, "number"),
            overload_time_si=(
                None
                if overload_time is None
                else to_one(where, "overload_time", overload_time, "time")
            ),
        )

    def __repr__(self) -> str:
        return _text(self)

    @property
    def power(self) -> Quantity:
        """Rated power of one motor."""
        return to_quantity(self.power_si, "power")

    @property
    def total_power(self) -> Quantity:
        """Rated power of all motors."""
        return to_quantity(self.count * self.power_si, "power")


@dataclass(frozen=True, init=False, repr=False, slots=True)
class Gear:
    """One speed of the transmission between motors and drum.

    Parameters
    ----------
    ratio
        Motor speed over drum speed.
    efficiency
        Power at the drum shaft over power of the motors: every shaft, chain and gear between them.
    inertia
        Moment of inertia of what turns in this gear besides motors and drum, referred to the drum
        shaft. Nothing if left out.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.drawworks.Gear(8.0, efficiency=0.95)
    Gear(8.0, 0.95, '0.0 kg*m**2')
    """

    ratio: float
    efficiency: float
    inertia_si: float

    def __init__(
        self, ratio: NumberLike, efficiency: NumberLike, inertia: QuantityLike = "0 kg*m**2"
    ) -> None:
        where = "drawworks.Gear"
        _set(
            self,
            ratio=to_one(where, "ratio", ratio, "number"),
            efficiency=to_one(where, "efficiency", efficiency, "number"),
            inertia_si=to_one(where, "inertia", inertia, "moment_of_inertia"),
        )

    def __repr__(self) -> str:
        return _text(self)


@dataclass(frozen=True, init=False, repr=False, slots=True)
class Drawworks:
    """Motors, gears and drum of a drawworks, without the rope.

    Whether they can be is said when the line is strung up; see `Hoist`.

    Parameters
    ----------
    motors
        The motors.
    gears
        The speeds of the transmission, in the order in which they are counted, from 1.
    drum_efficiency
        Power of the fast line over power of the drum shaft: bearings and winding of the rope.
    drum_inertia
        Moment of inertia of drum, shaft, brake rims and all that turns with them. Nothing if left
        out.

    Examples
    --------
    >>> import ropewalk as rw
    >>> drawworks = rw.drawworks.Drawworks(
    ...     rw.drawworks.Motors(2, "750 hp", base_speed="800 rpm", top_speed="1600 rpm"),
    ...     gears=[rw.drawworks.Gear(16.0, 0.95), rw.drawworks.Gear(8.0, 0.95)],
    ...     drum_efficiency=0.97,
    ... )
    >>> len(drawworks.gears)
    2
    """

    motors: Motors
    gears: tuple[Gear, ...]
    drum_efficiency: float
    drum_inertia_si: float

    def __init__(
        self,
        motors: Motors,
        gears: Iterable[Gear],
        drum_efficiency: NumberLike,
        drum_inertia: QuantityLike = "0 kg*m**2",
    ) -> None:
        where = "drawworks.Drawworks"
        chosen = tuple(gears)
        if not isinstance(motors, Motors):
            text = f"motors must be a Motors object, got {motors!r}"
            raise InadmissibleError(f"{where}(): {text}", where, "motors")
        if not all(isinstance(gear, Gear) for gear in chosen):
            text = "gears must be Gear objects"
            raise InadmissibleError(f"{where}(): {text}", where, "gears")
        _set(
            self,
            motors=motors,
            gears=chosen,
            drum_efficiency=to_one(where, "drum_efficiency", drum_efficiency, "number"),
            drum_inertia_si=to_one(where, "drum_inertia", drum_inertia, "moment_of_inertia"),
        )

    def __repr__(self) -> str:
        return _text(self)
