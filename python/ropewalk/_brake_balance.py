"""Lowering on auxiliary brakes: the classes `LoweringBrakes` and `LoweringBalance`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

import numpy as np

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_one, to_quantity, to_si
from ropewalk._brake_stop import CAUTION
from ropewalk.errors import InadmissibleError

__all__ = ["BalanceSpeed", "LoweringBalance", "LoweringBrakes"]

_WHERE = "brake.LoweringBrakes"

#: Stands for the speed or power of a brake that is not there; its torque is zero anyway.
_ABSENT = 1.0


@dataclass(frozen=True, slots=True)
class BalanceSpeed:
    """A drum speed at which brakes and load are in balance.

    Attributes
    ----------
    rotation_si
        The speed, rad/s.
    stable
        True if a load a little faster or slower comes back to it, False if it goes away from it.
    """

    rotation_si: float
    stable: bool

    @property
    def rotation(self) -> Quantity:
        """The speed of the drum."""
        return to_quantity(self.rotation_si, "angular_velocity")


@dataclass(frozen=True, slots=True)
class LoweringBalance:
    """Where a load and its auxiliary brakes are in balance.

    Attributes
    ----------
    state
        ``"held"``: friction is enough, the load does not move; ``"held by motor"``: at rest it does
        not move while drive and control pull, which is no hold by a brake; ``"stable"``: from rest
        it settles at a speed; ``"runaway"``: the brakes are stronger than the load at no speed.
    load_torque_si
        Torque of the load at the drum, N·m.
    speeds
        Every speed of balance, rising. Between two of them the load moves to the stable one; faster
        than the last, if that is unstable, it runs away.
    stable_si
        Drum speed at which the load settles from rest, rad/s, or None.
    unstable_si
        First drum speed above which it gains speed, rad/s, to the next stable one or without end;
        None if it is caught from any speed, or from none.
    largest_load_si
        Largest torque of the brakes at any speed, N·m: a heavier load runs away.
    finding
        What was found, in words, with its numbers.
    """

    state: Literal["held", "held by motor", "stable", "runaway"]
    load_torque_si: float
    speeds: tuple[BalanceSpeed, ...]
    stable_si: float | None
    unstable_si: float | None
    largest_load_si: float
    finding: str

    @property
    def runs_away(self) -> bool:
        """True if the brakes are stronger than the load at no speed."""
        return self.state == "runaway"

    @property
    def stable(self) -> Quantity | None:
        """Drum speed at which the load settles from rest."""
        return None if self.stable_si is None else to_quantity(self.stable_si, "angular_velocity")

    @property
    def unstable(self) -> Quantity | None:
        """First drum speed above which the load gains speed."""
        return (
            None if self.unstable_si is None else to_quantity(self.unstable_si, "angular_velocity")
        )

    @property
    def runs_away_above(self) -> Quantity | None:
        """Drum speed above which the load gains speed without end, None if from none or any."""
        if not self.speeds or self.speeds[-1].stable:
            return None
        return self.speeds[-1].rotation

    @property
    def largest_load(self) -> Quantity:
        """Largest torque of the brakes at any speed."""
        return to_quantity(self.largest_load_si, "torque")

    def __str__(self) -> str:
        return f"{self.finding}\n{CAUTION}"


@dataclass(frozen=True, init=False, slots=True)
class LoweringBrakes:
    """What brakes a load that is lowered at one speed, all at the drum shaft.

    Any of the three may be left out: an eddy-current brake, motors that brake, and friction held
    on by hand or by caliper.

    Parameters
    ----------
    eddy_peak_torque, critical_speed
        Of the eddy-current brake, see `eddy_torque`; the peak falls with the excitation.
    motor_torque_limit, motor_power_limit
        Limits of motors that brake, see `motor_brake_torque`.
    friction_torque
        Torque of linings at any speed, also at rest.

    Raises
    ------
    InadmissibleError
        If a peak torque has no critical speed, a motor torque no power, or one cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> brakes = rw.brake.LoweringBrakes(eddy_peak_torque="100 kN*m", critical_speed="50 rpm")
    >>> balance = brakes.balance("60 kN*m")
    >>> balance.state, f"{balance.stable.to('rpm'):.2f}", f"{balance.unstable.to('rpm'):.1f}"
    ('stable', '16.67 revolutions_per_minute', '150.0 revolutions_per_minute')
    >>> brakes.balance("101 kN*m").runs_away
    True
    """

    eddy_peak_torque_si: float
    critical_speed_si: float
    motor_torque_limit_si: float
    motor_power_limit_si: float
    friction_torque_si: float

    def __init__(
        self,
        *,
        eddy_peak_torque: QuantityLike | None = None,
        critical_speed: QuantityLike | None = None,
        motor_torque_limit: QuantityLike | None = None,
        motor_power_limit: QuantityLike | None = None,
        friction_torque: QuantityLike | None = None,
    ) -> None:
        _together("eddy_peak_torque", eddy_peak_torque, "critical_speed", critical_speed)
        _together("motor_torque_limit", motor_torque_limit, "motor_power_limit", motor_power_limit)
        values = {
            "eddy_peak_torque": _one("eddy_peak_torque", eddy_peak_torque, "torque", 0.0),
            "critical_speed": _one("critical_speed", critical_speed, "angular_velocity", _ABSENT),
            "motor_torque_limit": _one("motor_torque_limit", motor_torque_limit, "torque", 0.0),
            "motor_power_limit": _one("motor_power_limit", motor_power_limit, "power", _ABSENT),
            "friction_torque": _one("friction_torque", friction_torque, "torque", 0.0),
        }
        _core.brake.lowering_balance(**values, load_torque=1.0)  # says what is wrong, if anything
        for name, value in values.items():
            object.__setattr__(self, f"{name}_si", value)

    def torque(self, drum_rotation: QuantityLike) -> Quantity:
        """Torque of all brakes together at one drum speed or many."""
        rotation = to_si(f"{_WHERE}.torque", "drum_rotation", drum_rotation, "angular_velocity")
        motor = self.motor_torque_limit_si, self.motor_power_limit_si
        torque = (
            self.friction_torque_si
            + self._eddy(rotation)
            + _core.brake.motor_brake_torque(*motor, rotation)
        )
        return to_quantity(torque, "torque")

    def _eddy(self, rotation: Any) -> Any:
        if self.eddy_peak_torque_si == 0.0:
            return 0.0 * rotation
        return _core.brake.eddy_torque(self.eddy_peak_torque_si, self.critical_speed_si, rotation)

    def without_power(self) -> LoweringBrakes:
        """The brakes that are left when power is lost: neither eddy-current brake nor motors."""
        return _changed(self, eddy_peak_torque_si=0.0, motor_torque_limit_si=0.0)

    def balance(self, load_torque: QuantityLike) -> LoweringBalance:
        """Speeds at which the brakes balance a load; a load that runs away is a finding.

        Parameters
        ----------
        load_torque
            Torque of the load at the drum: fast-line tension of lowering times rope radius.
        """
        load = to_one(f"{_WHERE}.balance", "load_torque", load_torque, "torque")
        record = _core.brake.lowering_balance(
            self.eddy_peak_torque_si,
            self.critical_speed_si,
            self.motor_torque_limit_si,
            self.motor_power_limit_si,
            self.friction_torque_si,
            load,
        )
        return LoweringBalance(
            state=record["state"],
            load_torque_si=load,
            speeds=tuple(BalanceSpeed(*one) for one in record["speeds"]),
            stable_si=record["stable"],
            unstable_si=record["unstable"],
            largest_load_si=record["largest_load"],
            finding=_finding(record, load),
        )


def _changed(brakes: LoweringBrakes, **values: float) -> LoweringBrakes:
    """The same brakes with some numbers changed."""
    changed = object.__new__(LoweringBrakes)
    for name in LoweringBrakes.__slots__:
        object.__setattr__(changed, name, values.get(name, getattr(brakes, name)))
    return changed


def _together(first: str, one: Any, second: str, other: Any) -> None:
    if (one is None) != (other is None):
        missing = second if other is None else first
        text = f"{missing} is missing: {first} and {second} belong together"
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, missing)


def _one(name: str, value: Any, role: str, absent: float) -> float:
    return absent if value is None else to_one(_WHERE, name, value, role)


def _finding(record: dict[str, Any], load: float) -> str:
    rpm = 60.0 / (2.0 * np.pi)
    share = record["largest_load"] / load
    if record["state"] == "runaway":
        return (
            f"runs away: the brakes reach {share:.2f} of the load's {load / 1e3:.1f} kN*m at most"
        )
    if record["state"] == "held":
        text = "is held at rest"
    elif record["state"] == "held by motor":
        text = (
            "stands at rest only while the motors pull; no brake holds it, and it falls when drive "
            "or control fails"
        )
    else:
        text = f"settles at {record['stable'] * rpm:.1f} rpm of the drum"
    speeds = record["speeds"]
    for k, (rotation, stable) in enumerate(speeds):
        if stable:
            continue
        then = "it runs away"
        if k + 1 < len(speeds):
            then = f"it gains speed up to {speeds[k + 1][0] * rpm:.1f} rpm"
        text += f"; above {rotation * rpm:.1f} rpm {then}"
    return text
