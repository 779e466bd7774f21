"""The result of a study as a labelled dataset, and its table."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk import sheave as sheave_face
from ropewalk import si
from ropewalk._units import Q
from ropewalk._version import __version__
from ropewalk.errors import UnknownEntryError

if TYPE_CHECKING:
    import pandas as pd
    import xarray as xr

    from ropewalk.rig import Rig
    from ropewalk.rig.models import LifeModel
    from ropewalk.rope import Rope

Array = npt.NDArray[np.float64]

_LIFE = ("model", "rope", "lines", "sheave_diameter")
_DESIGN = ("rope", "lines", "sheave_diameter")


def to_dataset(
    *,
    rig: Rig,
    models: Sequence[LifeModel],
    ropes: Sequence[Rope],
    lines: Sequence[int],
    diameters: Array,
    fast_sheave_tension: Array,
    results: Mapping[str, Array],
    holds: npt.NDArray[np.bool_],
    line_life: Array,
    line_life_end: npt.NDArray[np.object_],
    band: float,
) -> xr.Dataset:
    """Label the arrays of a sheave-life study; see `ropewalk.study.sheave_life`."""
    import xarray as xr

    rope_diameters = np.array([rope.diameter_si for rope in ropes])
    breaking = np.array([rope.breaking_force_si for rope in ropes])
    pressure = si.sheave.bearing_pressure(
        fast_sheave_tension[None, :, None],
        rope_diameters[:, None, None],
        diameters[None, None, :],
    )
    fast_line = _fast_line_tensions(rig, lines)
    limit = _pressure_limits(rig, ropes)
    trips = results["trips"]
    variables: dict[str, tuple[Any, ...]] = {
        "bending_cycles": (
            _LIFE,
            results["cycles"],
            _attrs("1", "bending cycles of life on the fast sheave at the heaviest pull"),
        ),
        "trips": (_LIFE, trips, _attrs("1", "round trips until the worst section is worn out")),
        "trips_low": (_LIFE, trips / band, _attrs("1", "round trips, 10th percentile of scatter")),
        "trips_high": (_LIFE, trips * band, _attrs("1", "round trips, 90th percentile of scatter")),
        "line_life": (
            _LIFE,
            line_life,
            _attrs("J", "work of the line until its worst place reaches discard, by the map"),
        ),
        "line_life_end": (_LIFE, line_life_end, _attrs("1", "what ended the life by the map")),
        "holds": (_LIFE, holds, _attrs("1", "model inside its published range at heaviest bend")),
        "share_in_range": (
            _LIFE,
            results["share_in_range"],
            _attrs("1", "share of the damage from bends inside the published range"),
        ),
        "bend_ratio": (
            ("rope", "sheave_diameter"),
            si.sheave.bend_ratio(diameters[None, :], rope_diameters[:, None]),
            _attrs("1", "sheave diameter over rope diameter"),
        ),
        "bearing_pressure": (
            _DESIGN,
            pressure,
            _attrs("Pa", "bearing pressure on the fast sheave at the heaviest pull"),
        ),
        "bearing_pressure_limit": (("rope",), limit, _attrs("Pa", "limit for the groove material")),
        "diameter_at_pressure_limit": (
            ("rope", "lines"),
            2.0 * fast_sheave_tension[None, :] / (rope_diameters * limit)[:, None],
            _attrs("m", "sheave diameter at which the bearing pressure reaches its limit"),
        ),
        "tread_condition_a": (
            ("rope",),
            _tread(ropes, "A"),
            _attrs("m", "recommended tread diameter, condition A (bending governs)"),
        ),
        "tread_condition_b": (
            ("rope",),
            _tread(ropes, "B"),
            _attrs("m", "recommended tread diameter, condition B (compromise)"),
        ),
        "fast_line_tension": (
            ("lines",),
            fast_line,
            _attrs("N", "fast-line tension at the heaviest pull"),
        ),
        "design_factor": (
            ("rope", "lines"),
            si.design_factor.design_factor(breaking[:, None], fast_line[None, :]),
            _attrs("1", "breaking force over fast-line tension at the heaviest pull"),
        ),
    }
    trip = rig.heaviest_trip
    invented = " (invented)" if rig.invented else ""
    return xr.Dataset(
        variables,
        coords={
            "model": ("model", [model.name for model in models], {"long_name": "life model"}),
            "counts_to": (
                "model",
                [model.counts_to for model in models],
                {"long_name": "what the life of the model ends with"},
            ),
            "rope": ("rope", [str(rope) for rope in ropes], {"long_name": "rope"}),
            "lines": ("lines", list(lines), _attrs("1", "lines strung")),
            "sheave_diameter": ("sheave_diameter", diameters, _attrs("m", "sheave diameter")),
        },
        attrs={
            "title": f"{rig.name}, {rig.site}{invented}: life of the line in {trip.kind}s from "
            f"{trip.depth:.0f} m",
            "crown_sheave_diameter": rig.crown.diameter,
            "ropewalk_version": __version__,
            "sources": "; ".join(f"{model.name}: {model.source}" for model in models),
            "scatter": f"band of 10 to 90 percent, {rig.known_life.scatter_note}",
            "caution": CAUTION,
        },
    )


#: Stands under everything that is printed or written.
CAUTION = (
    "An estimate for study and comparison, not a permission to lift. Local codes, the maker's "
    "manual and the judgment of licensed people come first; inspect the line and discard it on "
    "what you see, whatever a number says."
)


def _attrs(units: str, long_name: str) -> dict[str, str]:
    return {"units": units, "long_name": long_name}


def _fast_line_tensions(rig: Rig, lines: Sequence[int]) -> Array:
    load = Q(rig.heaviest_trip.heaviest_hook_load(rig.block.weight), "N")
    return np.array(
        [
            replace(rig.reeving, lines=n).tensions(load, motion="hoisting").fast_line_si
            for n in lines
        ]
    )


def _pressure_limits(rig: Rig, ropes: Sequence[Rope]) -> Array:
    return np.array(
        [
            sheave_face.bearing_pressure_limit(
                rig.crown.groove_material, rope.rope_class, "regular"
            ).m_as("Pa")
            for rope in ropes
        ]
    )


def _tread(ropes: Sequence[Rope], condition: str) -> Array:
    """Recommended tread diameters; NaN where the table has no such construction."""
    diameters = []
    for rope in ropes:
        try:
            tread = sheave_face.tread_diameter(
                rope.construction, condition, Q(rope.diameter_si, "m")
            )
            diameters.append(tread.m_as("m"))
        except UnknownEntryError:
            diameters.append(np.nan)
    return np.array(diameters)


def to_table(data: xr.Dataset) -> pd.DataFrame:
    """Return the study as a plain table, one row a design and model, the unit in each column name.

    Parameters
    ----------
    data
        Result of `ropewalk.study.sheave_life`.

    Returns
    -------
    pandas.DataFrame
        Columns such as ``"bearing_pressure [Pa]"``.
    """
    table = data.to_dataframe().reset_index()
    names = {}
    for column in table.columns:
        unit = data[column].attrs.get("units", "") if column in data.variables else ""
        names[column] = f"{column} [{unit}]" if unit not in ("", "1") else column
    return table.rename(columns=names)
