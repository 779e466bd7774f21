"""Wire breaks at which a rope is due for discard (Feyrer)."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from ropewalk import _core
from ropewalk._border import NumberLike, Quantity, QuantityLike, arguments, to_quantity
from ropewalk._face import Policy, face
from ropewalk._names import to_name
from ropewalk.errors import InadmissibleError

__all__ = [
    "DiscardConstants",
    "discard_constants",
    "discard_limiting_force",
    "discard_wire_breaks",
]


@face("fatigue.discard_wire_breaks")
def discard_wire_breaks(
    rope_tension: QuantityLike,
    rope_diameter: QuantityLike,
    sheave_diameter: QuantityLike,
    g0: NumberLike,
    g1: NumberLike,
    g2: NumberLike,
    g3: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Wire breaks on a length of 30 rope diameters at which the rope is due for discard (Feyrer).

    .. math:: B_{A30} = g_0 - g_1 (S/d^2)^2 - g_2 (d/D)^2 - g_3 (S/d^2)^2 (d/D)^2

    with S/d² in N/mm² and constants of the rope construction; `discard_constants` has them and the
    corrections for six strands, reverse bending and a length of 6 d. A tension at which no wire
    breaks are left to warn is refused.

    This tells how a well-watched rope announces its end in tests; discard in service follows the
    standard and the maker's manual that apply.

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), eq. 3.83 and Table 3.18.

    Examples
    --------
    >>> import ropewalk as rw
    >>> breaks = rw.fatigue.discard_wire_breaks(
    ...     "60 kN", "20 mm", "500 mm", 44.5, 0.000222, 2200, 0.0536
    ... )
    >>> round(breaks, 2)
    34.06
    """
    ...


@face("fatigue.discard_limiting_force")
def discard_limiting_force(
    least_wire_breaks: NumberLike,
    rope_diameter: QuantityLike,
    sheave_diameter: QuantityLike,
    g0: NumberLike,
    g1: NumberLike,
    g2: NumberLike,
    g3: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension up to which a wanted number of wire breaks warns before the rope fails (Feyrer).

    .. math:: S_G = d^2 \sqrt{\frac{g_0 - B_{A30,min} - g_2 (d/D)^2}{g_1 + g_3 (d/D)^2}}

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), eq. 3.94 and Table 3.18.

    Examples
    --------
    >>> import ropewalk as rw
    >>> force = rw.fatigue.discard_limiting_force(
    ...     8, "20 mm", "500 mm", 44.5, 0.000222, 2200, 0.0536
    ... )
    >>> print(f"{force.to('kN'):.1f}")
    130.9 kilonewton
    """
    ...


@dataclass(frozen=True)
class DiscardConstants:
    """Constants g0 … g3 of one rope construction (Feyrer, Table 3.18), and what to do with them."""

    construction: str
    g0: float
    g1: float
    g2: float
    g3: float
    source: str
    standing: str

    def wire_breaks(
        self,
        rope_tension: QuantityLike,
        rope_diameter: QuantityLike,
        sheave_diameter: QuantityLike,
        *,
        on_diameters: int = 30,
        six_strands: bool = False,
        reverse_bending: bool = False,
    ) -> Any:
        """Wire breaks for discard.

        Parameters
        ----------
        rope_tension : force
        rope_diameter, sheave_diameter : length
        on_diameters : {30, 6}, default 30
            Length looked at, in rope diameters; on 6 d it is half the number on 30 d.
        six_strands : bool, default False
            For a six-strand rope of the same make-up: 0.75 times the number of eight strands.
        reverse_bending : bool, default False
            Raises S/d² by 50 N/mm² first.

        Examples
        --------
        >>> import ropewalk as rw
        >>> rope = rw.fatigue.discard_constants("FC-8x19")
        >>> round(rope.wire_breaks("60 kN", "20 mm", "500 mm"), 2)
        10.67
        """
        where = "fatigue.DiscardConstants.wire_breaks"
        if on_diameters not in (6, 30):
            text = f"on_diameters must be 6 or 30, got {on_diameters!r}"
            raise InadmissibleError(f"{where}(): {text}", where, "on_diameters")
        tension, diameter = arguments(where, rope_tension=rope_tension, rope_diameter=rope_diameter)
        if reverse_bending:
            tension = tension + 50e6 * diameter**2
        breaks = discard_wire_breaks(
            to_quantity(tension, "force"),
            rope_diameter,
            sheave_diameter,
            self.g0,
            self.g1,
            self.g2,
            self.g3,
        )
        factor = (0.75 if six_strands else 1.0) * (0.5 if on_diameters == 6 else 1.0)
        return breaks * factor

    def limiting_force(
        self,
        least_wire_breaks: NumberLike,
        rope_diameter: QuantityLike,
        sheave_diameter: QuantityLike,
    ) -> Quantity:
        """Tension up to which that many wire breaks on 30 d warn before the rope fails."""
        return discard_limiting_force(
            least_wire_breaks, rope_diameter, sheave_diameter, self.g0, self.g1, self.g2, self.g3
        )


def discard_constants(construction: str) -> DiscardConstants:
    """Constants of a rope construction, ``"WRC-8x36 WS"``; the message of an error lists them all.

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.18.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.fatigue.discard_constants("WRC-8x36 WS").g0
    44.5
    """
    where = "fatigue.discard_constants"
    record = _core.fatigue.discard_constants(to_name(where, "construction", construction))
    return DiscardConstants(**record)
