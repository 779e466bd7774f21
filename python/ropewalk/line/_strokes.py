"""A campaign from strokes that are known."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import numpy.typing as npt

from ropewalk._border import to_si
from ropewalk.errors import InadmissibleError, UnitError
from ropewalk.line.campaign import Campaign, PlannedOperation, check_range

_WHERE = "Campaign.from_strokes"


def campaign_of_strokes(
    hook_load: Any,
    height_from: Any,
    height_to: Any,
    *,
    time: Any,
    count: Any,
    operation: Any,
    names: Sequence[str] | None,
    pick_up: Any,
    may_stop: Any,
    trips: Any,
) -> Campaign:
    """Bring the columns to one length, check them, and put the operations together."""
    given = {
        "hook_load": hook_load,
        "height_from": height_from,
        "height_to": height_to,
        "time": time,
        "count": to_si(_WHERE, "count", count, "number"),
        "operation": to_si(_WHERE, "operation", operation, "number"),
        "pick_up": _flags("pick_up", pick_up),
        "may_stop": _flags("may_stop", may_stop),
        "trips": to_si(_WHERE, "trips", trips, "number"),
    }
    columns = _one_length(given)
    for name in ("hook_load", "height_from", "height_to", "count"):
        check_range(_WHERE, name, columns[name])
    _never_falls("time", columns["time"])
    _never_falls("trips", columns["trips"])
    index = columns["operation"].astype(np.int64)
    if not np.array_equal(index, columns["operation"]) or index.min() < 0:
        raise _refused("operation", "operation must be whole numbers from 0 up")
    _never_falls("operation", columns["operation"])
    return Campaign(
        hook_load_si=columns["hook_load"],
        height_from_si=columns["height_from"],
        height_to_si=columns["height_to"],
        count=columns["count"],
        operation=index,
        pick_up=columns["pick_up"].astype(bool),
        may_stop=columns["may_stop"].astype(bool),
        time_si=columns["time"],
        trips=columns["trips"],
        operations=_operations(index, names),
    )


def _flags(name: str, value: Any) -> npt.NDArray[np.bool_]:
    flags = np.asarray(value)
    if flags.dtype != np.bool_:
        raise UnitError(f"{_WHERE}(): {name} must be True or False, got {value!r}", _WHERE, name)
    return flags


def _one_length(given: dict[str, Any]) -> dict[str, npt.NDArray[np.float64]]:
    """Return a column of its own for each argument; a single value stands in every row."""
    arrays = {name: np.asarray(value, dtype=np.float64) for name, value in given.items()}
    lengths = {name: array.size for name, array in arrays.items() if array.ndim}
    for name, array in arrays.items():
        if array.ndim > 1:
            raise _refused(name, f"{name} must have one value for each row, got {array.ndim} axes")
    if len(set(lengths.values())) > 1:
        listed = ", ".join(f"{name} {length}" for name, length in lengths.items())
        raise _refused("", f"the columns must be equally long, got {listed}")
    rows = next(iter(lengths.values()), 1)
    if rows == 0:
        raise _refused("hook_load", "an empty campaign: there is not one stroke")
    return {name: np.array(np.broadcast_to(array, rows)) for name, array in arrays.items()}


def _never_falls(name: str, column: npt.NDArray[np.float64]) -> None:
    known = np.flatnonzero(~np.isnan(column))
    falls = np.flatnonzero(np.diff(column[known]) < 0.0)
    if falls.size:
        before, row = known[falls[0]], known[falls[0] + 1]
        text = f"row {row}: {name} = {column[row]:.6g} is less than {column[before]:.6g} before"
        raise _refused(name, text)


def _operations(
    index: npt.NDArray[np.int64], names: Sequence[str] | None
) -> tuple[PlannedOperation, ...]:
    most = int(index[-1]) + 1
    if names is None:
        names = [f"operation {i}" for i in range(most)]
    if len(names) < most:
        text = f"names has {len(names)} names, but operation goes up to {most - 1}"
        raise _refused("names", text)
    first = np.searchsorted(index, np.arange(len(names)), side="left")
    after = np.searchsorted(index, np.arange(len(names)), side="right")
    return tuple(
        PlannedOperation(str(name), str(name), None, None, int(a), int(b) - 1)
        for name, a, b in zip(names, first, after, strict=True)
    )


def _refused(name: str, text: str) -> InadmissibleError:
    return InadmissibleError(f"{_WHERE}(): {text}", _WHERE, name)
