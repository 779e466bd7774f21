"""The well plan: what each operation asks of the line."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from ropewalk import si

if TYPE_CHECKING:
    from ropewalk.drillstring import DrillString

#: Service of each kind of operation in the table of minimum design factors.
_SERVICE = {
    "drilling": "rotary drilling",
    "round trip": "rotary drilling",
    "short trip": "rotary drilling",
    "coring": "rotary drilling",
    "casing": "setting casing",
}
#: Services a rig is checked for: those of its operations, and the pull on a stuck string.
STUCK = "pulling on stuck pipe"
SERVICES = (*dict.fromkeys(_SERVICE.values()), STUCK)


@dataclass(frozen=True, slots=True)
class Operation:
    """One line of the well plan, in SI.

    Attributes
    ----------
    kind
        ``"drilling"``, ``"round trip"``, ``"short trip"``, ``"coring"`` or ``"casing"``.
    string_name, string
        Name of the string and the string itself.
    depth
        Depth reached, or from which the trip starts, m.
    from_depth
        Depth where drilling, coring or the short trip begins, m; 0 for whole trips.
    stand_length
        Length of one stand or casing joint, m.
    times
        How often the operation is done.
    drag_up, drag_down
        Drag as a share of the weight in mud.
    passes
        Round trips of work per depth drilled; of use for drilling only.
    """

    kind: str
    string_name: str
    string: DrillString
    depth: float
    from_depth: float
    stand_length: float
    times: int
    drag_up: float
    drag_down: float
    passes: float

    @property
    def title(self) -> str:
        """One line for tables, ``"5 x round trip, 3400 m"``."""
        span = f"{self.depth:.0f} m"
        if self.from_depth > 0.0:
            span = f"{self.from_depth:.0f}-{span}"
        count = f"{self.times} x " if self.times > 1 else ""
        return f"{count}{self.kind}, {span}"

    @property
    def service(self) -> str:
        """Key of the minimum design factor that holds for the operation."""
        return _SERVICE[self.kind]

    def string_weight(self, depth: npt.ArrayLike) -> npt.NDArray[np.float64]:
        """Weight in mud of the string down to `depth`, N."""
        depths = np.atleast_1d(np.asarray(depth, dtype=np.float64))
        return np.asarray(self.string.weight_in_mud_si(depths))

    def heaviest_hook_load(self, block_weight: float) -> float:
        """Hook load when the whole string is hoisted from the depth reached, with drag, N."""
        return float(self.string_weight(self.depth)[0]) * (1.0 + self.drag_up) + block_weight

    def work(self, block_weight: float) -> float:
        """Work of the line by the published closed forms, all times together, J."""
        weight = self.string.pipe_weight_si
        excess = self.string.bha_excess_weight_si
        work = si.work
        if self.kind == "round trip":
            once = work.round_trip(self.depth, self.stand_length, weight, excess, block_weight)
        elif self.kind == "drilling":
            once = work.drilling(
                self.from_depth,
                self.depth,
                self.stand_length,
                weight,
                excess,
                block_weight,
                self.passes,
            )
        elif self.kind == "coring":
            once = work.coring(
                self.from_depth, self.depth, self.stand_length, weight, excess, block_weight
            )
        elif self.kind == "short trip":
            once = work.short_trip(
                self.from_depth, self.depth, self.stand_length, weight, excess, block_weight
            )
        else:
            # The published form knows one weight per length; a string of several has their mean.
            mean = float(self.string_weight(self.depth)[0]) / self.depth
            once = work.casing(self.depth, self.stand_length, mean, block_weight)
        return float(once) * self.times


@dataclass(frozen=True, slots=True)
class TripStrokes:
    """Hook loads of one round trip, stand by stand, N; every array has one entry a stand.

    Attributes
    ----------
    pulling, running
        Hook load while a stand is hoisted out of the hole and lowered into it.
    block
        Load of the empty block, which makes the same number of strokes.
    """

    pulling: npt.NDArray[np.float64]
    running: npt.NDArray[np.float64]
    block: float


def trip_strokes(operation: Operation, block_weight: float) -> TripStrokes:
    """Return the hook loads of one round trip from the depth of `operation`.

    A stand is charged with the string that hangs below the block when its stroke begins (pulling)
    or ends (running): the deeper, heavier end of the stroke.
    """
    stands = int(np.ceil(operation.depth / operation.stand_length - 1e-9))
    depths = operation.depth - operation.stand_length * np.arange(stands)
    weight = operation.string_weight(depths)
    return TripStrokes(
        pulling=weight * (1.0 + operation.drag_up) + block_weight,
        running=weight * (1.0 - operation.drag_down) + block_weight,
        block=block_weight,
    )
