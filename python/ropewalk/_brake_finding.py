"""Whether a brake holds what it must: the class `HoldingFinding`."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from ropewalk import _core
from ropewalk._border import NumberLike, Quantity, QuantityLike, to_one, to_quantity
from ropewalk._brake_required import RequiredFactor
from ropewalk._brake_stop import CAUTION
from ropewalk.errors import InadmissibleError

__all__ = ["HoldingFinding", "held"]


@dataclass(frozen=True, slots=True)
class HoldingFinding:
    """Whether a brake in one state holds its load with the factor asked for.

    Attributes
    ----------
    state
        Which part of the brake acts.
    torque_si
        Its torque, N·m.
    factor
        Torque over that of the load at rest.
    required
        Factor asked for.
    base
        Torque that the factor asked for refers to, see `RequiredFactor`.
    base_factor
        Torque of the brake over `base`; None if that was not given.
    holds
        The load at all: factor at least 1.
    enough
        Whether `base_factor` is at least as required, and the load held; None where `base` was not
        given and the brake holds.
    """

    state: str
    torque_si: float
    factor: float
    required: float
    base: str
    base_factor: float | None
    holds: bool
    enough: bool | None

    @property
    def torque(self) -> Quantity:
        """Torque of the brake in this state."""
        return to_quantity(self.torque_si, "torque")

    @property
    def text(self) -> str:
        """What was found, in words, with its numbers."""
        said = f"{self.state}: {self.torque_si / 1e3:.1f} kN*m, {self.factor:.2f} times the load"
        if self.base == "load torque":
            said += f", {self.required:.2f} asked for"
        elif self.base_factor is None:
            said += (
                f"; {self.required:.2f} times the {self.base} asked for, which could not be "
                f"computed: {self.base} not given"
            )
        else:
            said += (
                f", {self.base_factor:.2f} times the {self.base}, {self.required:.2f} of that "
                "asked for"
            )
        if not self.holds:
            return f"{said}: DOES NOT HOLD"
        if self.enough is None:
            return said
        return f"{said}: {'enough' if self.enough else 'too little'}"

    def __str__(self) -> str:
        return f"{self.text}\n{CAUTION}"


def held(
    where: str,
    state: str,
    torque: Quantity,
    load_torque: QuantityLike,
    required: RequiredFactor | NumberLike,
    others: dict[str, Any],
) -> HoldingFinding:
    """Hold one torque against its load; `others` has the torques that are no load at rest."""
    rule = required if isinstance(required, RequiredFactor) else None
    base = "load torque" if rule is None else rule.base
    asked = to_one(where, "required", required, "number") if rule is None else rule.value
    if not 0.0 < asked < math.inf:
        text = f"required = {asked:g} must be positive and finite (definition)"
        raise InadmissibleError(f"{where}(): {text}", where, "required")
    number = to_one(where, "lining_friction or lever_force", torque, "torque")
    load = to_one(where, "load_torque", load_torque, "torque")
    factor = float(_core.brake.holding_factor(number, load))
    given = load_torque if base == "load torque" else others[base]
    base_factor = None
    if given is not None:
        divisor = to_one(where, base.replace(" ", "_"), given, "torque")
        if not 0.0 < divisor < math.inf:
            field = base.replace(" ", "_")
            text = f"{field} = {divisor:g} N*m must be positive and finite (definition)"
            raise InadmissibleError(f"{where}(): {text}", where, field)
        base_factor = number / divisor
    holds = factor >= 1.0
    enough = None if base_factor is None else base_factor >= asked
    return HoldingFinding(
        state, number, factor, asked, base, base_factor, holds, enough if holds else False
    )
