"""Results of a study as a labelled dataset."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._version import __version__
from ropewalk.study.base import Base
from ropewalk.study.dataset import CAUTION
from ropewalk.study.inputs import Axis
from ropewalk.study.outputs import Output
from ropewalk.study.run import Table
from ropewalk.study.status import Status

if TYPE_CHECKING:
    import xarray as xr

__all__ = ["attrs_of", "grid_dataset", "reasons_of", "variables_of"]

#: So many different reasons are told.
_MOST_REASONS = 5


def grid_dataset(
    base: Base, axes: Sequence[Axis], outputs: Sequence[Output], table: Table
) -> xr.Dataset:
    """Label the results of a sweep; one dimension for each axis."""
    import xarray as xr

    dims = tuple(axis.input.name for axis in axes)
    shape = tuple(axis.numbers.size for axis in axes)
    columns = {
        one.name: (table.values[:, j].reshape(shape), table.status[:, j].reshape(shape))
        for j, one in enumerate(outputs)
    }
    variables = variables_of(dims, outputs, columns)
    for j, one in enumerate(outputs):
        if told := reasons_of(table, j):
            variables[f"{one.name}_status"][2]["reasons"] = told
    return xr.Dataset(variables, coords=coords_of(axes), attrs=attrs_of(base))


def coords_of(axes: Sequence[Axis]) -> dict[str, Any]:
    """Coordinates of a sweep."""
    return {
        axis.input.name: (axis.input.name, axis.input.labels(axis.numbers), axis.input.attrs)
        for axis in axes
    }


def variables_of(
    dims: tuple[str, ...], outputs: Sequence[Output], columns: Mapping[str, tuple[Any, Any]]
) -> dict[str, tuple[Any, Any, dict[str, Any]]]:
    """Variables of outputs, each with its status."""
    variables: dict[str, tuple[Any, Any, dict[str, Any]]] = {}
    for one in outputs:
        values, status = columns[one.name]
        attrs = {
            "units": one.unit,
            "long_name": one.long_name or one.name,
            "ancillary_variables": f"{one.name}_status",
        }
        variables[one.name] = (dims, values, attrs)
        variables[f"{one.name}_status"] = (dims, status, status_attrs(one))
    return variables


def status_attrs(one: Output) -> dict[str, Any]:
    """Attributes of a status, as the CF conventions name them."""
    return {
        "long_name": f"status of {one.name}",
        "flag_values": np.array([int(status) for status in Status], dtype=np.uint8),
        "flag_meanings": " ".join(status.name.lower() for status in Status),
    }


def attrs_of(base: Base) -> dict[str, Any]:
    """Attributes of a study."""
    rig = base.file.rig
    invented = " (invented)" if rig.invented else ""
    return {
        "title": f"{rig.name}{', ' if rig.site else ''}{rig.site}{invented}",
        "rig_file": base.name,
        "rig_fingerprint": base.fingerprint,
        "ropewalk_version": __version__,
        "caution": CAUTION,
    }


def reasons_of(table: Table, output: int) -> str:
    """Why rows of an output are flagged: the first few different reasons, with how many have it."""
    count: dict[str, int] = {}
    for (_, j), text in table.reasons.items():
        if j == output:
            count[text] = count.get(text, 0) + 1
    lines = [f"{n} x {text}" for text, n in list(count.items())[:_MOST_REASONS]]
    if len(count) > _MOST_REASONS:
        lines.append(f"and {len(count) - _MOST_REASONS} more")
    return "\n".join(lines)
