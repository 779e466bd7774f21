"""What the legs of a mast bear: the class `LegLoads` of `ropewalk.mast`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt

from ropewalk._border import Quantity, to_quantity
from ropewalk.errors import InadmissibleError

__all__ = ["LEGS", "LegLoads"]

#: Legs in the order of all results: A and B at the V-door, C and D at the drawworks.
LEGS = ("A", "B", "C", "D")


@dataclass(frozen=True, eq=False)
class LegLoads:
    """What the four legs of a mast bear; the last axis runs over legs A, B, C, D.

    Attributes
    ----------
    legs_si
        Load of every leg, N; negative is uplift, see `uplifted`.
    lines_si, dead_line_si, fast_line_si
        What bears on the crown: pull of all lines with the crown block where it is counted, and
        what pulls at the places of dead and fast line, N.
    """

    legs_si: npt.NDArray[np.float64]
    lines_si: Any
    dead_line_si: Any
    fast_line_si: Any

    @property
    def legs(self) -> Quantity:
        """Load of legs A, B, C, D."""
        return to_quantity(self.legs_si, "force")

    @property
    def total(self) -> Quantity:
        """Load of all legs together."""
        return to_quantity(self.legs_si.sum(axis=-1)[()], "force")

    @property
    def largest(self) -> Quantity:
        """Load of the leg that bears most."""
        return to_quantity(self.legs_si.max(axis=-1)[()], "force")

    @property
    def governing_leg(self) -> Any:
        """Name of the leg that bears most; of several the first. An array for many loads."""
        which = self.bears_most.argmax(axis=-1)
        return LEGS[which] if np.ndim(which) == 0 else np.array(LEGS)[which]

    @property
    def bears_most(self) -> npt.NDArray[np.bool_]:
        """True for the leg that bears most, and for those that bear the same but for rounding."""
        most = self.legs_si.max(axis=-1, keepdims=True)
        return np.asarray(self.legs_si >= most - self._rounding())

    @property
    def uplifted(self) -> npt.NDArray[np.bool_]:
        """True for every leg that is pulled up: it needs an anchorage good for that pull.

        Lines over the base press on every leg; only what `on_legs` brings lifts one.

        Examples
        --------
        >>> import ropewalk as rw
        >>> mast = rw.Mast("30 ft", dead_line="A", fast_line="CD")
        >>> wind = rw.Q([-30, 30, 30, -30], "kip")
        >>> mast.leg_loads("50 kip", rw.Reeving(10, "roller"), on_legs=wind).uplifted.tolist()
        [True, False, False, True]
        """
        return np.asarray(self.legs_si < -self._rounding())

    def _rounding(self) -> npt.NDArray[np.float64]:
        """What rounding may change in a load of a leg, N."""
        return np.asarray(1e-12 * np.abs(self.legs_si).max(axis=-1, keepdims=True))

    @property
    def equivalent_load(self) -> Quantity:
        """Maximum equivalent derrick load: four times the load of the leg that bears most."""
        return to_quantity(4.0 * self.legs_si.max(axis=-1)[()], "force")

    @property
    def efficiency_factor(self) -> Any:
        """Derrick efficiency factor: total over maximum equivalent load; 1 if all bear alike.

        Uplifted legs count as they are, negative in the total.

        Raises
        ------
        InadmissibleError
            If no leg bears anything, so that there is no factor: nothing on the lines, or all legs
            uplifted. Of many loads it names the first such row.
        """
        most = self.legs_si.max(axis=-1)
        none = np.flatnonzero(most <= 0.0)
        if none.size > 0:
            row = f"row {none[0]} of {most.size}: " if most.ndim > 0 else ""
            text = f"{row}no leg bears anything, so the loads have no efficiency factor: largest "
            text += f"load of a leg {most.flat[none[0]]:g} N, must be above 0 (definition)"
            where = "mast.LegLoads.efficiency_factor"
            raise InadmissibleError(f"{where}: {text}", where, "legs")
        return self.legs_si.sum(axis=-1)[()] / (4.0 * most[()])
