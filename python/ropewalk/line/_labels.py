"""Labelled arrays of a line: every variable with unit and long name."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk.line.history import LineHistory

Array = npt.NDArray[np.float64]


def positions(history: LineHistory) -> Array:
    """Middles of the bins, m; the last bin ends with the supply."""
    assert history.rig.line is not None
    bins = history.damage_si.size
    edges = np.append(np.arange(bins) * history.bin_length_si, history.rig.line.supply)
    middles: Array = 0.5 * (edges[:-1] + edges[1:])
    return middles


def along_rope(
    history: LineHistory, values: Array, name: str, long_name: str, **first: list[Any]
) -> xr.DataArray:
    """Values along the rope, with one more labelled dimension in front if given."""
    import xarray as xr

    coords: dict[str, Any] = {
        key: (key, labels, {"long_name": key, "units": "1"}) for key, labels in first.items()
    }
    coords["position"] = (
        "position",
        positions(history),
        {"units": "m", "long_name": "position along the rope from the first drum end"},
    )
    return xr.DataArray(
        values,
        coords=coords,
        dims=(*first, "position"),
        name=name,
        attrs={"units": "1", "long_name": long_name, "model": history.model.name},
    )


def share(damage: xr.DataArray, over: str) -> xr.DataArray:
    """Share of each label in the damage summed along the rope; bins weigh by their length."""
    summed = damage.sum("position")
    result = summed / summed.sum()
    result.name = "share"
    result.attrs = {"units": "1", "long_name": f"share of the damage by {over}"}
    return result


def distinct(titles: list[str]) -> list[str]:
    """Titles, numbered where they repeat, so that a label names one operation."""
    seen: dict[str, int] = {}
    result = []
    for title in titles:
        seen[title] = seen.get(title, 0) + 1
        repeated = titles.count(title) > 1
        result.append(f"{title} ({seen[title]})" if repeated else title)
    return result


def over_time(history: LineHistory) -> xr.Dataset:
    """State of the line after every operation."""
    import xarray as xr

    steps = history.native.steps
    operations = history.campaign.operations
    columns = {
        "work": ([s["work"] for s in steps], "J", "work of the line"),
        "worst": ([s["worst"] for s in steps], "1", "largest damage on the line"),
        "worst_position": ([s["worst_at"] for s in steps], "m", "place of the largest damage"),
        "rope_cut": ([s["drum_end"] for s in steps], "m", "rope cut off"),
        "anchor": ([s["anchor"] for s in steps], "m", "position of the anchor on the rope"),
    }
    data: dict[str, Any] = {
        key: ("step", np.asarray(values), {"units": unit, "long_name": text})
        for key, (values, unit, text) in columns.items()
    }
    data["operation"] = (
        "step",
        np.array([operations[s["block"]].title for s in steps], dtype=object),
        {"units": "1", "long_name": "operation just done"},
    )
    ends = [operations[s["block"]].end for s in steps]
    if all(end is not None for end in ends):
        data["date"] = (
            "step",
            np.array([end.replace(tzinfo=None) for end in ends if end], dtype="datetime64[ns]"),
            {"long_name": "end of the operation"},
        )
    return xr.Dataset(data)
