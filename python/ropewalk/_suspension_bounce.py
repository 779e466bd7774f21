"""The bounce of a hook on its spring: the class `HookBounce`."""

from __future__ import annotations

from typing import Any

import numpy as np

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, arguments, to_quantity, to_si
from ropewalk.errors import InadmissibleError

__all__ = ["HookBounce"]

_WHERE = "suspension.HookBounce"


class HookBounce:
    r"""Motion of the hook on its spring as a stand breaks free from the box.

    The hook is pulled up until the spring carries the stand and more; the thread holds the rest,
    the `overpull` P. When the pin comes free, the stand hangs P/k below its rest and springs up,

    .. math:: m \ddot x = -k x - c \dot x - F \operatorname{sign} \dot x, \quad m = W/g

    with x from the rest position, up positive, and a snubber that may damp more on the way up than
    on the way down. Between two turning points the equation is linear; the motion is pieced
    together from the closed forms of the damped oscillator, under-, critically and overdamped, and
    is exact. Where k|x| does not exceed the friction as it turns, it stays. A spring that has gone
    slack, x > W/k, does not push down: the weight then flies,

    .. math:: \ddot x = -g

    free of spring, snubber and friction, and lands at W/k as fast as it left. Nothing holds it back
    in flight, so that it flies no less than a real one. The blocks stand still; the spring is
    linear and has no stops at its ends. Source: the equation of motion; closed forms
    e.g. in S. S. Rao, Mechanical Vibrations, ch. 2.

    A stand that jumps can hurt: keep clear of it, and go by the maker's manual and local rules.

    Parameters
    ----------
    sprung_weight
        All that moves on the spring: hook, links, elevator, stand; a top drive where it hangs on
        the spring.
    spring_rate
        Rate of the hook spring.
    overpull
        Pull on the hook beyond the sprung weight as the thread lets go. Negative: the hook has been
        let down too far and the stand drops.
    damping_up, damping_down
        Damping of the snubber as the hook rises and as it goes down; none if left out, and down the
        same as up.
    friction
        Friction of seals and guides, the same both ways; none if left out.
    start_speed
        Speed at the beginning, up positive: the hook still moving up, or a stand set down hard.

    Raises
    ------
    InadmissibleError
        If a weight, rate or damping cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> bounce = rw.suspension.HookBounce("6000 lbf", "1500 lbf/in", overpull="3000 lbf")
    >>> print(f"{bounce.jump.to('in'):.2f}")  # undamped: up by twice 3000/1500
    4.00 inch
    >>> damped = rw.suspension.HookBounce(
    ...     "6000 lbf", "1500 lbf/in", overpull="3000 lbf", damping_up="90 lbf*s/in"
    ... )
    >>> print(f"{damped.jump.to('in'):.2f}, settled in {damped.settled('0.1 in').to('s'):.2f}")
    2.76 inch, settled in 1.05 second
    """

    def __init__(
        self,
        sprung_weight: QuantityLike,
        spring_rate: QuantityLike,
        overpull: QuantityLike,
        *,
        damping_up: QuantityLike | None = None,
        damping_down: QuantityLike | None = None,
        friction: QuantityLike | None = None,
        start_speed: QuantityLike | None = None,
    ) -> None:
        weight, rate, pull = arguments(
            _WHERE, sprung_weight=sprung_weight, spring_rate=spring_rate, overpull=overpull
        )

        if np.ndim(pull) or not np.isfinite(pull):
            text = f"overpull must be one finite force, got {overpull!r}"
            raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "overpull")

        def optional(field: str, value: QuantityLike | None, role: str) -> Any:
            return 0.0 if value is None else to_si(_WHERE, field, value, role)

        up = optional("damping_up", damping_up, "damping")
        down = (
            up if damping_down is None else to_si(_WHERE, "damping_down", damping_down, "damping")
        )
        values = {
            "sprung_weight": weight,
            "spring_rate": rate,
            "damping_up": up,
            "damping_down": down,
            "friction": optional("friction", friction, "force"),
            "start_speed": optional("start_speed", start_speed, "speed"),
        }
        # The core refuses what is no number or cannot be, the rate first, which divides here.
        _core.suspension.Bounce(start=0.0, **values)
        values["start"] = -pull / rate
        self._bounce = _core.suspension.Bounce(**values)
        self._values: dict[str, float] = {name: float(value) for name, value in values.items()}

    def __reduce__(self) -> Any:
        return _from_values, (self._values,)

    def __repr__(self) -> str:
        values = ", ".join(f"{name}={value:.6g}" for name, value in self._values.items())
        return f"HookBounce({values}; SI)"

    def height(self, time: QuantityLike) -> Quantity:
        """Height above rest at a time since the thread let go, one or many."""
        height, _ = self._bounce.at(to_si(f"{_WHERE}.height", "time", time, "time"))
        return to_quantity(height, "length")

    def speed(self, time: QuantityLike) -> Quantity:
        """Speed at a time, up positive, one or many."""
        _, speed = self._bounce.at(to_si(f"{_WHERE}.speed", "time", time, "time"))
        return to_quantity(speed, "speed")

    def spring_force(self, time: QuantityLike) -> Quantity:
        """Force in the spring at a time; 0 where it is slack."""
        height, _ = self._bounce.at(to_si(f"{_WHERE}.spring_force", "time", time, "time"))
        return to_quantity(self._force(height), "force")

    def _force(self, height: Any) -> Any:
        force = self._values["sprung_weight"] - self._values["spring_rate"] * height
        return np.maximum(force, 0.0)

    @property
    def damping_ratio(self) -> tuple[float, float]:
        """Damping over critical damping, on the way up and on the way down."""
        rate, weight = self._values["spring_rate"], self._values["sprung_weight"]
        up, down = (
            _core.suspension.damping_ratio(self._values[name], rate, weight)
            for name in ("damping_up", "damping_down")
        )
        return float(up), float(down)

    @property
    def start(self) -> Quantity:
        """Height at the beginning, below rest if negative."""
        return to_quantity(self._values["start"], "length")

    @property
    def highest(self) -> Quantity:
        """Highest point above rest."""
        return to_quantity(self._bounce.highest, "length")

    @property
    def lowest(self) -> Quantity:
        """Lowest point, below rest if negative."""
        return to_quantity(self._bounce.lowest, "length")

    @property
    def jump(self) -> Quantity:
        """From the beginning to the highest point: how far the pin clears the box."""
        return to_quantity(self._bounce.highest - self._values["start"], "length")

    @property
    def largest_spring_force(self) -> Quantity:
        """Largest force in the spring, at the lowest point."""
        return to_quantity(self._force(self._bounce.lowest), "force")

    @property
    def goes_slack(self) -> bool:
        """True if the spring goes slack and what hangs on it flies for a while."""
        return bool(self._bounce.goes_slack)

    @property
    def turns(self) -> tuple[Quantity, Quantity]:
        """Times and heights of the beginning and of every turning point."""
        times, heights = zip(*self._bounce.turns, strict=True)
        return to_quantity(list(times), "time"), to_quantity(list(heights), "length")

    @property
    def rest(self) -> Quantity | None:
        """Where it comes to rest, off 0 by what friction holds; None if it never does."""
        rest = self._bounce.rest
        return None if rest is None else to_quantity(rest, "length")

    def settled(self, within: QuantityLike) -> Quantity:
        """Time from which on the hook stays so near to where it comes to rest.

        Raises
        ------
        InadmissibleError
            If it never comes to rest: without damping and friction.
        """
        return to_quantity(
            self._bounce.settled(to_si(f"{_WHERE}.settled", "within", within, "length")), "time"
        )


def _from_values(values: dict[str, float]) -> HookBounce:
    """Make a bounce from its SI values, for pickle and copy."""
    bounce = HookBounce.__new__(HookBounce)
    bounce._bounce = _core.suspension.Bounce(**values)
    bounce._values = dict(values)
    return bounce
