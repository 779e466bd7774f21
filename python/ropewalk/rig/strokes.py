"""The operations of a well plan as strokes of the block."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk.rig.file import RigFileError

if TYPE_CHECKING:
    from ropewalk.rig.plan import Operation

#: The largest travel the core takes, m: no mast limits the strokes.
HIGHEST_TRAVEL = 200.0


@dataclass(frozen=True, eq=False, slots=True)
class HookStrokes:
    """Strokes of the block in time order, a column each, in SI.

    Attributes
    ----------
    hook_load
        Everything on the lines, N.
    height_from, height_to
        Height of the block above its lowest position, m.
    count
        How many such strokes.
    pick_up
        The load is taken up from the slips at `height_from`.
    may_stop
        After it the string hangs in the slips with the block free.
    """

    hook_load: npt.NDArray[np.float64]
    height_from: npt.NDArray[np.float64]
    height_to: npt.NDArray[np.float64]
    count: npt.NDArray[np.float64]
    pick_up: npt.NDArray[np.bool_]
    may_stop: npt.NDArray[np.bool_]

    def __len__(self) -> int:
        return len(self.hook_load)

    def work(self) -> float:
        """Load times travel, J."""
        travel = np.abs(self.height_to - self.height_from)
        return float((self.hook_load * travel * self.count).sum())


def _none() -> HookStrokes:
    nothing, never = np.zeros(0), np.zeros(0, dtype=np.bool_)
    return HookStrokes(nothing, nothing, nothing, nothing, never, never)


def hook_strokes(
    operation: Operation, block_weight: float, travel: float, *, drag: bool = True
) -> HookStrokes:
    """Strokes of one operation done once; none where no string moves.

    Parameters
    ----------
    operation
        One line of the well plan.
    block_weight
        All that stays on the lines, N.
    travel
        Highest height of the block, m.
    drag
        False leaves drag out, as the closed forms of the work do.

    Raises
    ------
    InadmissibleError
        If the block would leave its travel, or an argument cannot be.
    """
    if operation.string is None:
        return _none()
    line = _core.line
    one = operation
    hoisting = line.Hoisting(
        _core.drillstring.DrillString(
            [part.length_si for part in operation.string.sections],
            [part.mass_per_length_si for part in operation.string.sections],
            operation.string.mud_density_si,
            operation.string.steel_density_si,
        ),
        block_weight=block_weight,
        travel=travel,
        drag_up=one.drag_up if drag else 0.0,
        drag_down=one.drag_down if drag else 0.0,
        base_height=one.base_height,
        block_speed=one.block_speed,
        block_acceleration=one.block_acceleration,
    )
    hole = (hoisting, one.from_depth, one.depth, one.stand_length)
    bit: dict[str, Any] = {"weight_on_bit": one.weight_on_bit}
    match one.kind, one.drive:
        case "round trip", _:
            columns = line.round_trip(hoisting, one.depth, one.stand_length)
        case "short trip", _:
            columns = line.short_trip(*hole)
        case "trip out", _:
            columns = line.trip(hoisting, one.depth, one.from_depth, one.stand_length)
        case "trip in", _:
            columns = line.trip(*hole)
        case "casing", _:
            columns = line.casing(hoisting, one.depth, one.stand_length)
        case "singles", _:
            columns = line.singles(*hole)
        case "drilling", "kelly":
            columns = line.kelly_drilling(
                *hole, kelly_weight=one.kelly_weight, ream=one.reams > 0, **bit
            )
        case "drilling", _:
            columns = line.top_drive_drilling(*hole, reams=one.reams, **bit)
        case "coring", "kelly":
            columns = line.kelly_coring(*hole, kelly_weight=one.kelly_weight, **bit)
        case "coring", _:
            columns = line.top_drive_coring(*hole, **bit)
        case "reaming", _:
            columns = line.reaming(*hole, reams=one.reams, **bit)
        case "circulating", _:
            columns = line.circulating(hoisting, one.depth, one.travel, one.strokes)
        case "jarring", _:
            columns = line.jarring(hoisting, one.depth, one.overpull, one.travel, one.strokes)
        case _:
            raise RigFileError(f"no strokes are known for the kind of operation {one.kind!r}")
    return HookStrokes(*columns)
