"""Bending-over-sheave life of wire rope: models, endurance factors, load collectives.

A life model is an object with `LifeModel.cycles`; `catalog` lists the kinds, `models_at` tells
which hold at a point and why the others do not, `compare` puts them side by side. What a model
counts to (discard, breakage, the limit of a proof) stands in every result, and every result says
whether the model is inside the range it is published for.

Lives are estimates for comparing designs. When a rope is slipped, cut or taken off is decided by
inspection, the rope maker's manual, local codes and licensed practice.
"""

from __future__ import annotations

from typing import Any

from ropewalk import _core
from ropewalk._names import to_name
from ropewalk.fatigue._collective import (
    collective_life,
    equivalent_force_ratio,
    force_spectrum_factor,
    miner_sum,
)
from ropewalk.fatigue._compare import (
    CatalogEntry,
    ComparedLife,
    Comparison,
    catalog,
    compare,
    models_at,
)
from ropewalk.fatigue._discard import (
    DiscardConstants,
    discard_constants,
    discard_limiting_force,
    discard_wire_breaks,
)
from ropewalk.fatigue._factors import (
    EnduranceFactor,
    EnduranceFactors,
    construction_factor,
    core_factor,
    en81_groove_equivalent,
    lubrication_factor,
    round_groove_factor,
    shaped_groove_factor,
)
from ropewalk.fatigue._feyrer import (
    fleet_angle_factor,
    length_factor,
    reverse_bending_cycles,
    size_factor,
)
from ropewalk.fatigue._hoist_rope import (
    bending_load,
    fatigue_safety_factor,
    fatigue_tension,
    hoist_rope_tension,
    optimal_rope_diameter,
    static_safety_factor,
    wire_bending_stress,
)
from ropewalk.fatigue._life import BendPoint, Life, LifeBand
from ropewalk.fatigue._model import (
    Applicability,
    BrokenRange,
    LifeModel,
    ModelDescription,
    ValidityRange,
)
from ropewalk.fatigue._models import (
    DruckerTachau,
    En13001,
    FeyrerForm,
    FeyrerSecondEdition,
    PowerLaw,
)
from ropewalk.fatigue._relative import En81, HandbookRelativeLife
from ropewalk.fatigue._standards import (
    en81_equivalent_sheaves,
    en81_safety_factor,
    en81_sheave_weight,
    en13001_fatigue_resistance,
    en13001_force_history,
    en13001_static_factor,
    en13001_utilization,
)

__all__ = [
    "Applicability",
    "BendPoint",
    "BrokenRange",
    "CatalogEntry",
    "ComparedLife",
    "Comparison",
    "DiscardConstants",
    "DruckerTachau",
    "En81",
    "En13001",
    "EnduranceFactor",
    "EnduranceFactors",
    "FeyrerForm",
    "FeyrerSecondEdition",
    "HandbookRelativeLife",
    "Life",
    "LifeBand",
    "LifeModel",
    "ModelDescription",
    "PowerLaw",
    "ValidityRange",
    "bending_load",
    "catalog",
    "collective_life",
    "compare",
    "construction_factor",
    "core_factor",
    "discard_constants",
    "discard_limiting_force",
    "discard_wire_breaks",
    "en81_equivalent_sheaves",
    "en81_groove_equivalent",
    "en81_safety_factor",
    "en81_sheave_weight",
    "en13001_fatigue_resistance",
    "en13001_force_history",
    "en13001_static_factor",
    "en13001_utilization",
    "equivalent_force_ratio",
    "fatigue_safety_factor",
    "fatigue_tension",
    "fleet_angle_factor",
    "force_spectrum_factor",
    "hoist_rope_tension",
    "length_factor",
    "lubrication_factor",
    "miner_sum",
    "models_at",
    "optimal_rope_diameter",
    "reverse_bending_cycles",
    "round_groove_factor",
    "shaped_groove_factor",
    "size_factor",
    "static_safety_factor",
    "table",
    "wire_bending_stress",
]


def table(name: str) -> list[dict[str, Any]]:
    """Rows of a data table of this subject, each with its source and standing.

    Examples
    --------
    >>> import ropewalk as rw
    >>> [row["relative_life"] for row in rw.fatigue.table("relative_bending_life")]
    [1.1, 1.5, 2.1, 2.9, 3.8, 6.6, 10.0]
    """
    rows: list[dict[str, Any]] = _core.fatigue.table(to_name("fatigue.table", "name", name))
    return rows
