"""The class `Reeving`: how a rope is strung, and what its lines carry and do."""

from __future__ import annotations

from dataclasses import MISSING, dataclass, fields
from functools import lru_cache
from typing import Any, TypeAlias

import numpy as np

from ropewalk import _core
from ropewalk._border import (
    NumberLike,
    Quantity,
    QuantityLike,
    arguments,
    to_count,
    to_quantity,
    to_si,
)
from ropewalk._tensions import Motion, Tensions
from ropewalk.errors import InadmissibleError, UnitError

__all__ = ["Reeving"]

_WHERE = "reeving.Reeving"


Friction: TypeAlias = float | tuple[float, ...]


def _friction(name: str, value: Any) -> Friction:
    """One number, the name of a bearing, or one number for each sheave."""
    if isinstance(value, str):
        return float(_core.reeving.sheave_friction(value))
    numbers = to_si(_WHERE, name, value, "number")
    if np.ndim(numbers) == 0:
        return float(numbers)
    if np.ndim(numbers) > 1:
        text = f"{name} must be one number or one for each sheave, got an array of shape"
        raise InadmissibleError(f"{_WHERE}(): {text} {np.shape(numbers)}", _WHERE, name)
    return tuple(numbers.tolist())


def _optional_friction(name: str, value: Any) -> Friction | None:
    return None if value is None else _friction(name, value)


def _optional_number(name: str, value: Any) -> float | None:
    friction = _optional_friction(name, value)
    if isinstance(friction, tuple):
        text = f"{name} must be one number, got {len(friction)}; there is one dead-line sheave"
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, name)
    return friction


def _listed(friction: Friction | None) -> list[float]:
    if friction is None:
        return []
    return list(friction) if isinstance(friction, tuple) else [friction]


def _quantity(value: Any, role: str, like: Any) -> Quantity:
    quantity: Quantity = to_quantity(value, role, like=like)
    return quantity


@lru_cache(maxsize=256)
def _native(
    lines: int,
    friction: Friction,
    leads: int,
    lead_friction: Friction | None,
    turns: bool,
    dead_line_friction: float | None,
) -> Any:
    """Reeving of the core, which nothing changes."""
    return _core.reeving.Arrangement(
        lines, _listed(friction), leads, _listed(lead_friction), turns, dead_line_friction
    )


@dataclass(frozen=True, repr=False)
class Reeving:
    """A rope strung between crown block, traveling block and drum.

    An even number of lines has its dead end over the crown to the anchor, with N/2 traveling and
    N/2 + 1 crown sheaves, the dead-line sheave among them. An odd number has it tied to the
    traveling block, with (N - 1)/2 traveling and (N + 1)/2 crown sheaves, all of which turn.

    Parameters
    ----------
    lines : int
        Number of lines N, 2 to 64.
    sheave_friction : number, str or sequence of numbers
        Tension ratio K of the tight to the slack side of one turning sheave: one number for all,
        ``"roller"`` (1.04) or ``"plain"`` (1.09), or one number for each turning sheave 1 … N,
        counted from the dead line.
    lead_sheaves : int, default 0
        Turning sheaves between the crown block and the drum: cases A, B, C of API RP 9B are 0, 1
        and 2.
    lead_sheave_friction : number, str or sequence of numbers, optional
        Tension ratio of the lead sheaves, in order from the crown to the drum; that of the other
        sheaves if left out.
    dead_line_sheave_turns : bool, default False
        Whether the dead-line sheave gives way as the dead line stretches, so that its friction
        stands between line 1 and the dead line; else both have one tension.
    dead_line_sheave_friction : number or str, optional
        Tension ratio of a turning dead-line sheave; that of the other sheaves if left out.

    Raises
    ------
    InadmissibleError
        For a reeving that cannot be; the message names the argument.
    UnknownEntryError
        For a bearing that is not in the table.

    Examples
    --------
    >>> import ropewalk as rw
    >>> reeving = rw.Reeving(lines=10, sheave_friction="roller")
    >>> reeving
    Reeving(lines=10, sheave_friction=1.04)
    >>> hoisting = reeving.tensions("400 kip", motion="hoisting")
    >>> print(f"{hoisting.fast_line.to('kip'):.1f}, {hoisting.dead_line.to('kip'):.1f}")
    49.3 kip, 33.3 kip
    """

    lines: int
    sheave_friction: Friction
    lead_sheaves: int = 0
    lead_sheave_friction: Friction | None = None
    dead_line_sheave_turns: bool = False
    dead_line_sheave_friction: float | None = None

    def __init__(
        self,
        lines: int,
        sheave_friction: NumberLike | str,
        lead_sheaves: int = 0,
        lead_sheave_friction: NumberLike | str | None = None,
        dead_line_sheave_turns: bool = False,
        dead_line_sheave_friction: NumberLike | str | None = None,
    ) -> None:
        if not isinstance(dead_line_sheave_turns, (bool, np.bool_)):
            text = f"dead_line_sheave_turns must be True or False, got {dead_line_sheave_turns!r}"
            raise UnitError(f"{_WHERE}(): {text}", _WHERE, "dead_line_sheave_turns")
        values = {
            "lines": to_count(_WHERE, "lines", lines),
            "sheave_friction": _friction("sheave_friction", sheave_friction),
            "lead_sheaves": to_count(_WHERE, "lead_sheaves", lead_sheaves),
            "lead_sheave_friction": _optional_friction(
                "lead_sheave_friction", lead_sheave_friction
            ),
            "dead_line_sheave_turns": bool(dead_line_sheave_turns),
            "dead_line_sheave_friction": _optional_number(
                "dead_line_sheave_friction", dead_line_sheave_friction
            ),
        }
        for name, value in values.items():
            object.__setattr__(self, name, value)
        _ = self._arrangement  # the core refuses a reeving that cannot be

    @property
    def _arrangement(self) -> Any:
        """The reeving as the core has it; beside this one, since it does not pickle."""
        return _native(
            self.lines,
            self.sheave_friction,
            self.lead_sheaves,
            self.lead_sheave_friction,
            self.dead_line_sheave_turns,
            self.dead_line_sheave_friction,
        )

    @property
    def sheave_frictions(self) -> tuple[float, ...]:
        """Tension ratio of turning sheave 1 … N, in that order."""
        return tuple(self._arrangement.sheave_friction)

    @property
    def lead_sheave_frictions(self) -> tuple[float, ...]:
        """Tension ratio of the lead sheaves, from the crown to the drum."""
        return tuple(self._arrangement.lead_sheave_friction)

    @property
    def on_crown(self) -> tuple[bool, ...]:
        """For turning sheave 1 … N whether it is on the crown; the others travel."""
        return tuple(self._arrangement.on_crown)

    @property
    def crown_sheaves(self) -> int:
        """Number of sheaves of the crown block, dead-line sheave included."""
        return int(self._arrangement.crown_sheaves)

    @property
    def traveling_sheaves(self) -> int:
        """Number of sheaves of the traveling block."""
        return int(self._arrangement.traveling_sheaves)

    def tensions(
        self,
        hook_load: QuantityLike,
        motion: Motion = "static",
        block_acceleration: QuantityLike | None = None,
    ) -> Tensions:
        r"""Tension in every line.

        .. math:: \sum T_m = W (1 + a/g)

        with the tension rising by K from line to line toward the drum while hoisting and falling
        by the same ratio while lowering. At rest friction leaves the tensions open between these
        two states; ``"static"`` takes all lines alike, as the trade does.

        Weight, stretch and inertia of the rope and the sheaves and the angle of the lines are left
        out.

        Parameters
        ----------
        hook_load : force
            Everything hung on the lines, traveling block and hook included; may be an array.
        motion : {"static", "hoisting", "lowering"}
            What the blocks do.
        block_acceleration : acceleration, optional
            Acceleration of the load in space, up positive; may be an array; zero if left
            out. On a floater with the blocks at rest it is that of the vessel.

        Returns
        -------
        Tensions
            Of the fast line, the dead line, every line, and the load on the crown.

        Examples
        --------
        >>> import ropewalk as rw
        >>> static = rw.Reeving(10, "roller").tensions("400000 lbf", "static")
        >>> print(f"{static.lines[0].to('lbf'):.0f}, {static.crown_load.to('lbf'):.0f}")
        40000 force_pound, 480000 force_pound
        """
        given: dict[str, Any] = {"hook_load": hook_load}
        if block_acceleration is not None:
            given["block_acceleration"] = block_acceleration
        si = arguments(f"{_WHERE}.tensions", **given)
        record = self._arrangement.tensions(str(motion), *si)
        return Tensions(
            motion=motion,
            lines_si=record["lines"],
            fast_line_si=record["fast_line"],
            fast_line_at_crown_si=record["fast_line_at_crown"],
            dead_line_si=record["dead_line"],
            crown_load_si=record["crown_load"],
            efficiency=record["efficiency"],
            fast_line_factor=record["fast_line_factor"],
        )

    def efficiency(self, motion: Motion = "hoisting") -> float:
        """Share of the power that passes the reeving.

        Hoisting: from the drum to the hook; lowering: from the load to the drum; static: 1.

        Examples
        --------
        >>> import ropewalk as rw
        >>> print(f"{rw.Reeving(10, 'roller').efficiency():.3f}")
        0.811
        """
        return float(self._arrangement.tensions(str(motion), 1.0)["efficiency"])

    def line_speeds(self, block_speed: QuantityLike) -> Quantity:
        """Speed of the rope over turning sheave 1 … N: sheave m passes m times the block speed.

        The last one is the speed of the fast line at the drum. Toward the drum is positive; an
        array of block speeds gives one more axis at the end.

        Parameters
        ----------
        block_speed : speed
            Speed of the traveling block, up positive.

        Examples
        --------
        >>> import ropewalk as rw
        >>> speeds = rw.Reeving(10, "roller").line_speeds("2 ft/s")
        >>> print(f"{speeds[-1].to('ft/min'):.0f}")
        1200 foot / minute
        """
        speed = to_si(f"{_WHERE}.line_speeds", "block_speed", block_speed, "speed")
        return _quantity(self._arrangement.line_speeds(speed), "speed", block_speed)

    def line_travel(self, block_travel: QuantityLike) -> Quantity:
        """Rope that passes turning sheave 1 … N: m times the travel of the block.

        The last one is what the drum takes. Toward the drum is positive; an array of block travels
        gives one more axis at the end.

        Parameters
        ----------
        block_travel : length
            Travel of the traveling block, up positive.

        Examples
        --------
        >>> import ropewalk as rw
        >>> travel = rw.Reeving(10, "roller").line_travel("93 ft")
        >>> print(f"{travel[-1].to('ft'):.0f}")
        930 foot
        """
        travel = to_si(f"{_WHERE}.line_travel", "block_travel", block_travel, "length")
        return _quantity(self._arrangement.line_travel(travel), "length", block_travel)

    def sheave_rotations(
        self, block_speed: QuantityLike, sheave_diameter: QuantityLike
    ) -> Quantity:
        r"""Rotation of turning sheave 1 … N.

        .. math:: \omega_m = 2 m v / D

        Parameters
        ----------
        block_speed : speed
            Speed of the traveling block, up positive.
        sheave_diameter : length
            Diameter on which the rope runs, one for all sheaves or one for each: tread diameter
            plus rope diameter for the middle of the rope.

        Examples
        --------
        >>> import ropewalk as rw
        >>> turns = rw.Reeving(10, "roller").sheave_rotations("2 ft/s", "60 in")
        >>> print(f"{turns[-1].to('rpm'):.1f}")
        76.4 revolutions_per_minute
        """
        where = f"{_WHERE}.sheave_rotations"
        speed = to_si(where, "block_speed", block_speed, "speed")
        diameter = to_si(where, "sheave_diameter", sheave_diameter, "length")
        rotations = self._arrangement.sheave_rotations(speed, diameter)
        return _quantity(rotations, "angular_velocity", block_speed)

    def __repr__(self) -> str:
        shown = [
            f"{item.name}={getattr(self, item.name)!r}"
            for item in fields(self)
            if item.default is MISSING or getattr(self, item.name) != item.default
        ]
        return f"Reeving({', '.join(shown)})"
