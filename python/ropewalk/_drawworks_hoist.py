"""A drawworks strung up: load against speed, acceleration, strokes of the block."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._border import (
    NumberLike,
    Quantity,
    QuantityLike,
    to_count,
    to_one,
    to_quantity,
    to_si,
)
from ropewalk._drawworks_core import core_hoist, gear_and_layer, stroke_arguments
from ropewalk._drawworks_drive import Drive
from ropewalk._drawworks_machine import Drawworks
from ropewalk._drawworks_stroke import Limits, Stroke, StrokeCurve
from ropewalk.drum import Drum
from ropewalk.errors import InadmissibleError
from ropewalk.reeving import Reeving

if TYPE_CHECKING:
    from ropewalk.reeving import Motion

__all__ = ["Hoist"]

_WHERE = "drawworks.Hoist"


@dataclass(frozen=True, init=False, slots=True)
class Hoist:
    r"""A drawworks with its drum and the line strung up.

    .. math:: F_h = \eta\, n\, M(\omega)\, i N / R, \qquad \omega = i N v / R,
              \qquad \eta = \eta_g \eta_d E

    with n motors of torque M, gear ratio i, N lines and R the radius of the layer. Efficiencies of
    gear, drum and reeving are constant; weight and stretch of the rope are left out. Gears and
    layers are counted from 1. Source: statics.

    What a hoist may lift is said by its nameplates, the maker's manual, the rules in force and
    licensed practice, which come before anything computed here.

    Parameters
    ----------
    drawworks
        Motors, gears, drum shaft.
    reeving
        How the line is strung.
    drum
        The drum and the rope on it.
    wraps_at_lowest
        Laps on the drum with the block at its lowest position.
    line_limit
        Largest tension allowed in the fast line: its breaking force over a design factor, or the
        rating of the drawworks. No limit if left out.
    sheave_mass
        Of the turning sheaves, as a mass at the hook; see `sheave_equivalent_mass`. Nothing if
        left out.

    Raises
    ------
    InadmissibleError
        If there can be no such hoist.

    Examples
    --------
    >>> import ropewalk as rw
    >>> dw = rw.drawworks
    >>> hoist = dw.Hoist(
    ...     dw.Drawworks(
    ...         dw.Motors(2, "750 hp", base_speed="800 rpm", top_speed="1600 rpm"),
    ...         gears=[dw.Gear(10.0, 0.95), dw.Gear(5.0, 0.95)],
    ...         drum_efficiency=0.97,
    ...     ),
    ...     reeving=rw.Reeving(10, "roller"),
    ...     drum=rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=4),
    ...     wraps_at_lowest=8,
    ... )
    >>> print(f"{hoist.pull('0 m/s', gear=1, layer=2).to('kip'):.0f}")
    556 kip
    >>> print(hoist.speed(rw.Q([200, 400], "kip"), gear=1, layer=2).to("m/s").round(2))
    [0.68 0.47] meter / second
    """

    drawworks: Drawworks
    reeving: Reeving
    drum: Drum
    wraps_at_lowest: float
    line_limit_si: float | None
    sheave_mass_si: float

    def __init__(
        self,
        drawworks: Drawworks,
        reeving: Reeving,
        drum: Drum,
        wraps_at_lowest: NumberLike,
        line_limit: QuantityLike | None = None,
        sheave_mass: QuantityLike = "0 kg",
    ) -> None:
        for name, given, kind in (
            ("drawworks", drawworks, Drawworks),
            ("reeving", reeving, Reeving),
            ("drum", drum, Drum),
        ):
            if not isinstance(given, kind):
                text = f"{name} must be a {kind.__name__} object, got {given!r}"
                raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, name)
        values = {
            "drawworks": drawworks,
            "reeving": reeving,
            "drum": drum,
            "wraps_at_lowest": to_one(_WHERE, "wraps_at_lowest", wraps_at_lowest, "number"),
            "line_limit_si": (
                None if line_limit is None else to_one(_WHERE, "line_limit", line_limit, "force")
            ),
            "sheave_mass_si": to_one(_WHERE, "sheave_mass", sheave_mass, "mass"),
        }
        for name, value in values.items():
            object.__setattr__(self, name, value)
        self._hoist()  # says what is wrong, if anything is

    def _hoist(self) -> Any:
        """The computing half, made anew: cheap, and the hoist stays plain data."""
        return core_hoist(self)

    @property
    def gears(self) -> int:
        """Number of gears."""
        return len(self.drawworks.gears)

    def layer_at(self, block_height: QuantityLike) -> int:
        """Layer the fast line runs onto with the block at a height above its lowest position."""
        height = to_one(f"{_WHERE}.layer_at", "block_height", block_height, "length")
        return int(self._hoist().layer_at(height))

    def drive(self, gear: int, layer: int, *, overload: bool = False) -> Drive:
        """What a gear gives at the hook on a layer.

        Parameters
        ----------
        gear, layer
            From 1.
        overload
            Whether the motors may give their overload.
        """
        found = self._hoist().drive(*gear_and_layer(f"{_WHERE}.drive", gear, layer), overload)
        return Drive(
            motor_pull_si=found["pull"],
            power_si=found["power"],
            base_speed_si=found["base_speed"],
            top_speed_si=found["top_speed"],
            line_limit_si=found["line_limit"],
            efficiency=found["efficiency"],
            turning_mass_si=found["turning_mass"],
        )

    def pull(
        self, speed: QuantityLike, *, gear: int, layer: int, overload: bool = False
    ) -> Quantity:
        """Hook load that can be hoisted steadily at one speed or many: the envelope of a gear.

        Parameters
        ----------
        speed
            Of the block. Above the top speed of the motors nothing is hoisted: 0.
        gear, layer
            From 1.
        overload
            Whether the motors may give their overload.
        """
        speed_si = to_si(f"{_WHERE}.pull", "speed", speed, "speed")
        found = self._hoist().steady_pull(
            speed_si, *gear_and_layer(f"{_WHERE}.pull", gear, layer), overload
        )
        return to_quantity(found, "force")

    def speed(
        self, hook_load: QuantityLike, *, gear: int, layer: int, overload: bool = False
    ) -> Quantity:
        """Highest speed at which one load or many can be hoisted steadily; 0 if it cannot be.

        Parameters
        ----------
        hook_load
            Everything that hangs on the lines.
        gear, layer
            From 1.
        overload
            Whether the motors may give their overload.
        """
        load = to_si(f"{_WHERE}.speed", "hook_load", hook_load, "force")
        found = self._hoist().steady_speed(
            load, *gear_and_layer(f"{_WHERE}.speed", gear, layer), overload
        )
        return to_quantity(found, "speed")

    def acceleration(
        self,
        hook_load: QuantityLike,
        speed: QuantityLike,
        *,
        gear: int,
        layer: int,
        overload: bool = False,
    ) -> Quantity:
        r"""Largest acceleration of the block with a load at a speed.

        .. math:: a = \min\left[\frac{F_m(v) - W}{W/g + m}, \frac{F_l - W}{W/g + m_s}\right]

        with the pull of the motors and m the turning parts as a mass at the hook
        (`Drive.turning_mass`); with the hook load at the limit of the fast line and the mass of the
        sheaves, since the line moves neither drum nor motors. Negative where the
        load cannot be hoisted steadily at that speed: it would slow down.

        Parameters
        ----------
        hook_load, speed
            One or many.
        gear, layer
            From 1.
        overload
            Whether the motors may give their overload.
        """
        where = f"{_WHERE}.acceleration"
        found = self._hoist().acceleration(
            to_si(where, "hook_load", hook_load, "force"),
            to_si(where, "speed", speed, "speed"),
            *gear_and_layer(f"{_WHERE}.acceleration", gear, layer),
            overload,
        )
        return to_quantity(found, "acceleration")

    def motor_torque(
        self,
        hook_load: QuantityLike,
        acceleration: QuantityLike = "0 m/s**2",
        *,
        gear: int,
        layer: int,
    ) -> Quantity:
        """Torque each motor must give for a load that moves up steadily, or ever faster.

        Parameters
        ----------
        hook_load, acceleration
            Of the block; not negative.
        gear, layer
            From 1.
        """
        where = f"{_WHERE}.motor_torque"
        found = self._hoist().motor_torque(
            to_one(where, "hook_load", hook_load, "force"),
            to_one(where, "acceleration", acceleration, "acceleration"),
            *gear_and_layer(f"{_WHERE}.motor_torque", gear, layer),
        )
        return to_quantity(found, "torque")

    def stroke(
        self,
        hook_load: QuantityLike,
        travel: QuantityLike,
        limits: Limits,
        motion: Motion = "hoisting",
        *,
        base_height: QuantityLike = "0 m",
        gear: int | None = None,
    ) -> Stroke:
        """One stroke of the block from rest to rest, with one load or many.

        Hoisting, the block speeds up with the least of what limits, motors and fast line allow,
        and stops with the deceleration asked for. Lowering, the motors are disengaged and the load
        is held by the brake; limits govern, but the block speeds up no faster than it can turn the
        drum with the brake off. A load that cannot be hoisted, that takes the overload of the
        motors for longer than their `overload_time`, or that would pull the fast line beyond its
        limit as it is stopped going down, is told in the result.

        Parameters
        ----------
        hook_load
            Everything that hangs on the lines.
        travel
            Length of the stroke.
        limits
            Speeds and accelerations.
        motion
            ``"hoisting"`` or ``"lowering"``.
        base_height
            Lower end of the stroke, above the lowest position of the block.
        gear
            From 1; for each load the one that takes least time if left out.

        Raises
        ------
        InadmissibleError
            For what cannot be, and if the drum does not hold the rope.
        """
        arguments = stroke_arguments(f"{_WHERE}.stroke", travel, limits, motion, base_height, gear)
        loads = to_si(f"{_WHERE}.stroke", "hook_load", hook_load, "force")
        columns = self._hoist().strokes(hook_loads=np.ravel(loads).tolist(), **arguments)
        return Stroke.from_columns(columns, np.shape(loads))

    def curve(
        self,
        hook_load: QuantityLike,
        travel: QuantityLike,
        limits: Limits,
        motion: Motion = "hoisting",
        *,
        base_height: QuantityLike = "0 m",
        gear: int | None = None,
        points: int = 24,
    ) -> StrokeCurve:
        """Speed and power along one stroke; arguments as for `stroke`.

        Of a stroke that is not possible there are no points; the curve has the reason.

        Parameters
        ----------
        hook_load, travel, limits, motion, base_height, gear
            As for `stroke`; one load.
        points
            Points in each part of the stroke in which one thing governs.
        """
        arguments = stroke_arguments(f"{_WHERE}.curve", travel, limits, motion, base_height, gear)
        load = to_one(f"{_WHERE}.curve", "hook_load", hook_load, "force")
        count = max(2, min(to_count(f"{_WHERE}.curve", "points", points), 10_000))
        columns = self._hoist().stroke_curve(hook_load=load, points_per_piece=count, **arguments)
        plain = ("layer", "reason")
        return StrokeCurve(**{k if k in plain else f"{k}_si": v for k, v in columns.items()})
