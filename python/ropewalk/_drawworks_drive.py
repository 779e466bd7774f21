"""One gear on one layer of the drum: a class of `ropewalk.drawworks`."""

from __future__ import annotations

from dataclasses import dataclass

from ropewalk._border import Quantity, to_quantity

__all__ = ["Drive"]


@dataclass(frozen=True, slots=True)
class Drive:
    """One gear on one layer of the drum, seen from the hook while hoisting; SI.

    Attributes
    ----------
    motor_pull_si
        Hook load the motors hoist up to their base speed, N.
    power_si
        Power at the hook from base to top speed, W.
    base_speed_si, top_speed_si
        Speed of the block with the motors at their base and top speed, m/s.
    line_limit_si
        Hook load at the largest tension allowed in the fast line, N; infinite if none is set.
    efficiency
        Power at the hook over power of the motors.
    turning_mass_si
        Mass at the hook, kg, that is as hard for the motors to accelerate as all that turns.
    """

    motor_pull_si: float
    power_si: float
    base_speed_si: float
    top_speed_si: float
    line_limit_si: float
    efficiency: float
    turning_mass_si: float

    @property
    def pull_si(self) -> float:
        """Hook load hoisted at low speed, N: what the motors pull, or what the line may carry."""
        return min(self.motor_pull_si, self.line_limit_si)

    @property
    def pull(self) -> Quantity:
        """Hook load hoisted at low speed: what the motors pull, or what the line may carry."""
        return to_quantity(self.pull_si, "force")

    @property
    def power(self) -> Quantity:
        """Power at the hook."""
        return to_quantity(self.power_si, "power")

    @property
    def top_speed(self) -> Quantity:
        """Speed of the block with the motors at their top speed."""
        return to_quantity(self.top_speed_si, "speed")

    @property
    def turning_mass(self) -> Quantity:
        """Mass at the hook that is as hard to accelerate as all that turns."""
        return to_quantity(self.turning_mass_si, "mass")
