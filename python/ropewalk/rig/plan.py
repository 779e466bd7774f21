"""The well plan: what each operation asks of the line."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
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
    "trip out": "rotary drilling",
    "trip in": "rotary drilling",
    "coring": "rotary drilling",
    "reaming": "rotary drilling",
    "circulating": "rotary drilling",
    "singles": "rotary drilling",
    "casing": "setting casing",
    "jarring": "pulling on stuck pipe",
}
#: Services a rig is checked for: those of its operations, and the pull on a stuck string.
STUCK = "pulling on stuck pipe"
SERVICES = tuple(dict.fromkeys((*_SERVICE.values(), STUCK)))
#: Operations in which no string moves.
IDLE = ("waiting", "slip", "cut")


@dataclass(frozen=True, slots=True)
class Operation:
    """One line of the well plan, in SI.

    Attributes
    ----------
    kind
        ``"drilling"``, ``"round trip"``, ``"short trip"``, ``"trip out"``, ``"trip in"``,
        ``"coring"``, ``"casing"``, ``"reaming"``, ``"circulating"``, ``"singles"``,
        ``"jarring"``, ``"waiting"``, ``"slip"`` or ``"cut"``.
    string_name, string
        Name of the string and the string itself; ``""`` and None where no string moves.
    depth
        Depth reached, or from which the trip starts, m.
    from_depth
        The shallower depth, where the operation begins or turns, m; 0 for whole trips.
    stand_length
        Length of one stand or joint, m.
    times
        How often the operation is done.
    drag_up, drag_down
        Drag as a share of the weight in mud.
    passes
        Round trips of work per depth drilled; of use for drilling only.
    start, end
        Dates, or None.
    drive
        ``"kelly"`` or ``"top drive"``; of use for drilling and coring.
    reams
        How often each stand is reamed before the connection.
    strokes, travel
        How often the string goes up and down while circulating or jarring, and how far, m.
    overpull, weight_on_bit, kelly_weight
        Forces, N.
    base_height
        Height of the block with the elevators at the slips, m.
    block_speed, block_acceleration
        m/s and m/s²; both 0 where no dynamic loads are counted.
    length
        Line slipped or cut, m.
    """

    kind: str
    string_name: str
    string: DrillString | None
    depth: float
    from_depth: float
    stand_length: float
    times: int
    drag_up: float
    drag_down: float
    passes: float
    start: datetime | None = None
    end: datetime | None = None
    drive: str = "top drive"
    reams: int = 0
    strokes: int = 0
    travel: float = 0.0
    overpull: float = 0.0
    weight_on_bit: float = 0.0
    kelly_weight: float = 0.0
    base_height: float = 0.0
    block_speed: float = 0.0
    block_acceleration: float = 0.0
    length: float = 0.0

    @property
    def title(self) -> str:
        """One line for tables, ``"5 x round trip, 3400 m"``."""
        count = f"{self.times} x " if self.times > 1 else ""
        if self.string is None:
            return f"{count}{self.kind}, {self.length:.4g} m" if self.length else self.kind
        span = f"{self.depth:.0f} m"
        if self.from_depth > 0.0:
            span = f"{self.from_depth:.0f}-{span}"
        return f"{count}{self.kind}, {span}"

    @property
    def service(self) -> str:
        """Key of the minimum design factor that holds for the operation; "" if no string moves."""
        return _SERVICE.get(self.kind, "")

    def string_weight(self, depth: npt.ArrayLike) -> npt.NDArray[np.float64]:
        """Weight in mud of the string down to `depth`, N; nothing if no string moves."""
        depths = np.atleast_1d(np.asarray(depth, dtype=np.float64))
        if self.string is None:
            return np.zeros_like(depths)
        return np.asarray(self.string.weight_in_mud_si(depths))

    def heaviest_hook_load(self, block_weight: float) -> float:
        """Hook load when the whole string is hoisted from the depth reached, with drag, N.

        The kelly is counted where there is one, and the overpull of a jar.
        """
        weight = float(self.string_weight(self.depth)[0])
        return weight * (1.0 + self.drag_up) + self.kelly_weight + self.overpull + block_weight

    def work(self, block_weight: float) -> float:
        """Work of the line, all times together, J.

        By the published closed forms, which leave drag out. A trip out or in is half a round trip;
        where there is no closed form the strokes are added up, without drag too.
        """
        return self._work_once(block_weight) * self.times

    def _work_once(self, block_weight: float) -> float:
        if self.string is None:
            return 0.0
        weight = self.string.pipe_weight_si
        excess = self.string.bha_excess_weight_si
        pipe = (self.stand_length, weight, excess, block_weight)
        new_hole = (self.from_depth, self.depth, *pipe)
        work = si.work
        if self.kind == "round trip":
            return float(work.round_trip(self.depth, *pipe))
        if self.kind in ("trip out", "trip in"):
            return 0.5 * float(work.short_trip(*new_hole))
        if self.kind == "short trip":
            return float(work.short_trip(*new_hole))
        if self.kind == "drilling":
            return float(work.drilling(*new_hole, self.passes))
        if self.kind == "coring":
            return float(work.coring(*new_hole))
        if self.kind == "casing":
            # The published form knows one weight per length; a string of several has their mean.
            mean = float(self.string_weight(self.depth)[0]) / self.depth
            return float(work.casing(self.depth, self.stand_length, mean, block_weight))
        from ropewalk.rig.strokes import HIGHEST_TRAVEL, hook_strokes

        return hook_strokes(self, block_weight, HIGHEST_TRAVEL, drag=False).work()


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
