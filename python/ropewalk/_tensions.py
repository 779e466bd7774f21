"""The class `Tensions`: what every part of the rope carries under one load, or under many."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal, TypeAlias

import numpy as np
import numpy.typing as npt

from ropewalk._border import Quantity, SiValue, to_quantity

__all__ = ["Motion", "Tensions"]

#: What the blocks do.
Motion: TypeAlias = Literal["static", "hoisting", "lowering"]


def _force_text(value: SiValue) -> str:
    if np.ndim(value):
        return f"array of shape {np.shape(value)}"
    return f"{float(value) / 1000.0:.6g} kN"


@dataclass(frozen=True, eq=False, repr=False)
class Tensions:
    """Tension in every part of the rope, as `Reeving.tensions` works it out.

    For an array of hook loads every tension is an array of its shape; `lines` then has one more
    axis at its end, one place for each line.

    Attributes
    ----------
    motion : str
        ``"static"``, ``"hoisting"`` or ``"lowering"``.
    efficiency : float
        Hoisting: the share of the drum's power that reaches the hook. Lowering: the share of the
        load's power that reaches the drum. Static: 1.
    fast_line_factor : float
        Fast-line tension at the drum over the pull of all lines together.
    lines_si, fast_line_si, fast_line_at_crown_si, dead_line_si, crown_load_si
        The tensions in newtons, as the properties give them with their unit.
    """

    motion: Motion
    lines_si: npt.NDArray[np.float64]
    fast_line_si: SiValue
    fast_line_at_crown_si: SiValue
    dead_line_si: SiValue
    crown_load_si: SiValue
    efficiency: float
    fast_line_factor: float

    @property
    def lines(self) -> Quantity:
        """Tension of line 1 … N, counted from the dead line; the last axis runs over the lines."""
        return self._force(self.lines_si)

    @property
    def fast_line(self) -> Quantity:
        """Tension of the fast line at the drum, after the lead sheaves."""
        return self._force(self.fast_line_si)

    @property
    def fast_line_at_crown(self) -> Quantity:
        """Tension of the fast line as it leaves the crown."""
        return self._force(self.fast_line_at_crown_si)

    @property
    def dead_line(self) -> Quantity:
        """Tension at the dead end: the pull of the dead line on its anchor.

        With an odd number of lines the dead end is tied to the traveling block: this is then the
        tension of line 1, and no anchor is pulled.
        """
        return self._force(self.dead_line_si)

    @property
    def crown_load(self) -> Quantity:
        """Load on the crown: all lines, fast line, and for an even number the dead line."""
        return self._force(self.crown_load_si)

    @staticmethod
    def _force(value: Any) -> Quantity:
        quantity: Quantity = to_quantity(value, "force")
        return quantity

    def __repr__(self) -> str:
        return (
            f"Tensions(motion={self.motion!r}, fast_line={_force_text(self.fast_line_si)}, "
            f"dead_line={_force_text(self.dead_line_si)}, "
            f"crown_load={_force_text(self.crown_load_si)}, "
            f"lines={self.lines_si.shape[-1]}, efficiency={self.efficiency:.4f})"
        )
