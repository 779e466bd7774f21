"""A campaign as a labelled table."""

from __future__ import annotations

from typing import TYPE_CHECKING

import xarray as xr

if TYPE_CHECKING:
    from ropewalk.line.campaign import Campaign

#: Column, its unit and its meaning.
_COLUMNS = (
    ("hook_load", "hook_load_si", "N", "everything hung on the lines"),
    ("height_from", "height_from_si", "m", "height of the block before the stroke"),
    ("height_to", "height_to_si", "m", "height of the block after the stroke"),
    ("count", "count", "1", "equal strokes"),
    ("operation", "operation", "1", "index of the operation"),
    ("pick_up", "pick_up", "1", "load taken up from rest at the beginning"),
    ("may_stop", "may_stop", "1", "line may be slipped after the stroke"),
    ("time", "time_si", "s", "time since the start, at the end of the stroke"),
    ("trips", "trips", "1", "round trips completed at the end of the stroke"),
    ("work", "work_si", "J", "work of the line"),
)


def campaign_dataset(campaign: Campaign) -> xr.Dataset:
    """Columns along ``row``, operations along ``plan``."""
    data = xr.Dataset(
        {
            name: ("row", getattr(campaign, attribute), _attrs(unit, text))
            for name, attribute, unit, text in _COLUMNS
        }
        | {
            "title": ("plan", [one.title for one in campaign.operations]),
            "kind": ("plan", [one.kind for one in campaign.operations]),
            "work_by_operation": (
                "plan",
                campaign.work_by_operation.magnitude,
                _attrs("J", "work of the line in the operation"),
            ),
        }
    )
    if campaign.start is not None:
        data.time.attrs["start"] = campaign.start.isoformat()
    return data


def _attrs(unit: str, text: str) -> dict[str, str]:
    # "s" alone would be decoded as a span of time on the way back from a file.
    return {"units": "seconds" if unit == "s" else unit, "long_name": text}
