"""Sweeps: any parameters of a rig file against any numbers of the rig."""

from __future__ import annotations

import warnings
from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._face import Policy
from ropewalk.errors import InadmissibleError, ValidityError, ValidityWarning
from ropewalk.study.base import Base, RigLike
from ropewalk.study.inputs import axes_of
from ropewalk.study.labelled import grid_dataset
from ropewalk.study.outputs import Output, outputs_of
from ropewalk.study.rows import Grid
from ropewalk.study.run import Progress, Table, run_rows
from ropewalk.study.status import Status

if TYPE_CHECKING:
    import xarray as xr

__all__ = ["sweep"]


def sweep(
    rig: RigLike,
    vary: Mapping[str, Any],
    outputs: str | Output | Sequence[str | Output] = "design_factor",
    *,
    outside_validity: Policy = "ignore",
    workers: int = 1,
    progress: Progress | None = None,
) -> xr.Dataset:
    """Compute numbers of a rig for every combination of values of its parameters.

    A row is the rig file with some values changed: what the file refuses, a row cannot have either,
    and what the file includes or leaves out stays as it is. Constants of life models stay those of
    the file. A row that is outside a model's range, or of a rig that cannot be, is flagged and
    never dropped.

    Results are estimates for study and comparison. They replace neither inspection nor the maker's
    manual, the rules in force where the rig stands, and the judgment of qualified people.

    Parameters
    ----------
    rig
        A rig file, or its rig as `load_rig` gives it.
    vary
        Name of a parameter → its values: ``{"crown.sheave_diameter": Q([48, 54, 60], "in")}``. Any
        value of a rig file has a name, see `ropewalk.rig.resolved`; entries of lists count from 1,
        ``"drawworks.gear[2].ratio"``, and ``[]`` is every entry that has the key,
        ``"operation[].drag_up"``. Names joined by ``+`` always have the same value.
    outputs
        What is computed: a named number (`ropewalk.study.NAMED`); a rule, ``"line.length"``, or its
        ``"limit.line.length"`` or ``"margin.line.length"``; an own `ropewalk.study.Output`.
    outside_validity : {"ignore", "warn", "raise"}
        What to do about rows outside a model's range, besides flagging them.
    workers
        Largest number of processes, 0 for as many as there are processors. Results do not depend
        on it.
    progress
        Called with rows finished and rows there are.

    Returns
    -------
    xarray.Dataset
        One dimension for each name, in the order given, of shape (len(values), ...); unit and long
        name on every variable and coordinate, quantities in SI. ``<output>_status`` says of every
        row whether it is ok, outside range, not possible, not applicable or not computed
        (`ropewalk.study.Status`), with the first reasons in its attributes; the output is NaN
        where there is no number.

    Raises
    ------
    RigFileError
        If the file cannot be used.
    UnknownEntryError, UnitError, InadmissibleError
        If a name, a unit or an option is wrong.
    ValidityError, ValidityWarning
        As `outside_validity` says.

    Examples
    --------
    >>> import ropewalk as rw
    >>> study = rw.sweep(
    ...     rw.rig.example("rig7"),
    ...     {"reeving.lines": [8, 10, 11, 12], "rope.diameter": rw.Q([1.25, 1.375], "in")},
    ...     outputs=["design_factor", "margin.line.design_factor"],
    ... )
    >>> study["design_factor"].sel({"reeving.lines": 10}).round(2).values.tolist()
    [2.97, 3.56]
    >>> study["design_factor"].dims, study["rope.diameter"].attrs["units"]
    (('reeving.lines', 'rope.diameter'), 'm')
    """
    where = "sweep"
    if outside_validity not in ("ignore", "warn", "raise"):
        text = f'outside_validity must be "ignore", "warn" or "raise", got {outside_validity!r}'
        raise InadmissibleError(f"{where}(): {text}", where, "outside_validity")
    base = Base.of(rig, where)
    axes = axes_of(base, vary, where)
    chosen = outputs_of(outputs, where, base)
    table = run_rows(
        base,
        [axis.input for axis in axes],
        Grid(tuple(axis.numbers for axis in axes)),
        chosen,
        workers=workers,
        progress=progress,
        where=where,
    )
    _tell(table, outside_validity, where)
    return grid_dataset(base, axes, chosen, table)


def _tell(table: Table, policy: Policy, where: str) -> None:
    """Warn or raise if rows are outside a model's range."""
    if policy == "ignore":
        return
    rows, columns = np.nonzero(table.status == Status.OUTSIDE_RANGE)
    if not rows.size:
        return
    first = int(rows[0]), int(columns[0])
    count = np.unique(rows).size
    text = (
        f"{where}(): {count} of {table.values.shape[0]} rows outside a model's range; row "
        f"{first[0]}, {table.outputs[first[1]]}: {table.reasons.get(first, '')}"
    )
    if policy == "raise":
        raise ValidityError(text, where, table.outputs[first[1]])
    warnings.warn(text, ValidityWarning, stacklevel=3)
