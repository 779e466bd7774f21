"""A campaign from a well plan."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Literal, cast

import numpy as np
import numpy.typing as npt

from ropewalk.errors import InadmissibleError, RopewalkError
from ropewalk.line.campaign import Campaign, LineEvent, PlannedOperation

if TYPE_CHECKING:
    from datetime import datetime

    from ropewalk.rig import Operation, Rig
    from ropewalk.rig.strokes import HookStrokes

_WHERE = "Campaign.from_plan"
#: A plan is a well, not a century of wells.
_MOST_ROWS = 20_000_000


def campaign_of_plan(rig: Rig | str | Path, plan: str | Path | None) -> Campaign:
    """Put the strokes of all operations of a plan in order."""
    from ropewalk.rig import Rig, RigFileError, load_rig

    if isinstance(rig, (str, Path)):
        rig = load_rig(rig)
    if not isinstance(rig, Rig):
        text = f"rig must be a rig or the path of a rig file, got {rig!r}"
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "rig")
    operations = rig.operations if plan is None else _operations_of(plan)
    if not operations:
        text = f"{rig.name} has no [[operation]]: give a plan of its own as `plan`"
        raise RigFileError(f"{_WHERE}(): {text}", _WHERE, "plan")
    start = next((one.start for one in operations if one.start is not None), None)

    strokes: list[HookStrokes] = []
    index: list[npt.NDArray[np.int64]] = []
    times: list[npt.NDArray[np.float64]] = []
    trips: list[npt.NDArray[np.float64]] = []
    planned: list[PlannedOperation] = []
    events: list[LineEvent] = []
    rows = 0
    for i, one in enumerate(operations):
        once = _strokes_of(one, i, rig)
        count = len(once) * one.times
        if rows + count > _MOST_ROWS:
            text = f"{_name(one, i)} makes more than {_MOST_ROWS:,} rows"
            raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "times")
        strokes += [once] * one.times
        index.append(np.full(count, i, dtype=np.int64))
        times.append(_times(one, np.tile(once.count, one.times), start))
        trips.append(np.tile(_trips(one, len(once)), one.times))
        planned.append(
            PlannedOperation(one.kind, one.title, one.start, one.end, rows, rows + count - 1)
        )
        rows += count
        if one.kind in ("slip", "cut"):
            kind = cast(Literal["slip", "cut"], one.kind)
            events += [LineEvent(rows - 1, kind, one.length)] * one.times
    if rows == 0:
        text = "an empty campaign: no operation of the plan moves a string"
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "operation")
    return Campaign(
        hook_load_si=np.concatenate([one.hook_load for one in strokes]),
        height_from_si=np.concatenate([one.height_from for one in strokes]),
        height_to_si=np.concatenate([one.height_to for one in strokes]),
        count=np.concatenate([one.count for one in strokes]),
        operation=np.concatenate(index),
        pick_up=np.concatenate([one.pick_up for one in strokes]),
        may_stop=np.concatenate([one.may_stop for one in strokes]),
        time_si=np.concatenate(times),
        trips=np.cumsum(np.concatenate(trips)),
        operations=tuple(planned),
        events=tuple(events),
        start=start,
    )


def _operations_of(plan: str | Path) -> tuple[Operation, ...]:
    from ropewalk.rig._refusals import placed
    from ropewalk.rig.file import read_plan
    from ropewalk.rig.operations import make_operations, make_strings

    reading = read_plan(plan)
    file = reading.file
    try:
        return make_operations(file.operation, make_strings(file.mud, file.string))
    except RopewalkError as error:
        raise placed(error, type(file), reading.layers) from error


def _strokes_of(one: Operation, i: int, rig: Rig) -> HookStrokes:
    from ropewalk.rig.strokes import hook_strokes

    try:
        return hook_strokes(one, rig.block.weight, rig.travel)
    except RopewalkError as error:
        text = f"{_WHERE}(): {_name(one, i)}: {error}"
        raise type(error)(text, _WHERE, error.field) from error


def _name(one: Operation, i: int) -> str:
    return f"operation[{i + 1}] ({one.title})"


def _times(
    one: Operation, count: npt.NDArray[np.float64], start: datetime | None
) -> npt.NDArray[np.float64]:
    """Time at the end of each row: the time of the operation by share of its strokes."""
    if one.start is None or one.end is None or start is None:
        return np.full(len(count), np.nan)
    begin = (one.start - start).total_seconds()
    lasts = (one.end - one.start).total_seconds()
    done = np.cumsum(count)
    return begin + lasts * done / done[-1:]


def _trips(one: Operation, rows: int) -> npt.NDArray[np.float64]:
    """Round trips each row completes: half of one where the string is all out, or all in."""
    trips = np.zeros(rows)
    if one.kind == "round trip":
        trips[[rows // 2 - 1, rows - 1]] = 0.5
    elif one.kind in ("trip out", "trip in") and one.from_depth == 0.0:
        trips[-1] = 0.5
    return trips
