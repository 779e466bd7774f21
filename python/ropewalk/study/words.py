"""What a study shows, in three plain lines."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ropewalk._units import Q

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk.rig import Rig


def plain_lines(rig: Rig, data: xr.Dataset) -> list[str]:
    """Say what the study shows, what the choice of lines does, and what it all rests on.

    Parameters
    ----------
    rig
        The hoist that was swept.
    data
        Result of `ropewalk.study.sheave_life`.

    Returns
    -------
    list of str
        Three sentences, every number taken from `data`.
    """
    return [_diameter_line(rig, data), _lines_line(rig, data), _basis_line(data)]


def _inches(meters: float) -> str:
    return f"{Q(meters, 'm').m_as('in'):.0f} in"


def _diameter_line(rig: Rig, data: xr.Dataset) -> str:
    here = data.sel(rope=str(rig.rope), lines=rig.reeving.lines)
    small, large = here.sheave_diameter.to_numpy()[[0, -1]]
    gain = here.trips.isel(sheave_diameter=-1) / here.trips.isel(sheave_diameter=0)
    limit = float(here.diameter_at_pressure_limit)
    return (
        f"1. On {rig.reeving.lines} lines, sheaves of {_inches(large)} instead of {_inches(small)} "
        f"give {float(gain.min()):.1f} to {float(gain.max()):.1f} times the life, depending on the "
        f"model; below {_inches(limit)} the bearing pressure is over its limit for "
        f"{rig.crown.groove_material} grooves."
    )


def _lines_line(rig: Rig, data: xr.Dataset) -> str:
    at = data.sel(rope=str(rig.rope)).sel(sheave_diameter=rig.crown.diameter, method="nearest")
    fewest, most = int(at.lines.min()), int(at.lines.max())
    gain = (at.trips.sel(lines=most) / at.trips.sel(lines=fewest)).to_numpy()
    factors = at.design_factor.sel(lines=[fewest, most]).to_numpy()
    return (
        f"2. {most} lines instead of {fewest} raise the design factor from {factors[0]:.1f} to "
        f"{factors[1]:.1f} and the life of the line {float(gain.min()):.1f} to "
        f"{float(gain.max()):.1f} times, although the worst section runs over more sheaves."
    )


def _basis_line(data: xr.Dataset) -> str:
    holding = [str(m) for m in data.model.to_numpy() if bool(data.holds.sel(model=m).any())]
    share = float(np.mean(data.holds.to_numpy()))
    return (
        f"3. It rests on {len(data.model)} life models, of which {', '.join(holding) or 'none'} "
        f"hold somewhere in the sweep ({100 * share:.0f} % of its points); elsewhere the curves "
        "are extrapolated. The shape with diameter and tension is published; of the scales of "
        "life only that of the bearing-pressure ratio, the others are constants of the rig file."
    )
