"""What hangs between crown and pipe: ratings and margins, links and elevators, wear, hook spring.

People work under every part named here. A part is used within its nameplate rating, inspected as
its maker and API RP 8B say, and taken out of service when worn or cracked; local codes, the maker's
manual and licensed practice come before anything computed here. Ratings are static.
"""

from __future__ import annotations

from ropewalk._suspension_bounce import HookBounce
from ropewalk._suspension_elevator import (
    ElevatorBore,
    ElevatorType,
    elevator_bore,
    elevator_types,
    elevators_for,
    link_set_capacity,
    rating_class,
    table,
)
from ropewalk._suspension_findings import (
    ElevatorLoad,
    LoadPathFinding,
    rig_elevators,
    rig_findings,
)
from ropewalk._suspension_oscillator import bounce_frequency, damping_ratio, overshoot
from ropewalk._suspension_rating import (
    allowable_shear,
    allowable_stress,
    bearing_rating,
    design_safety_factor,
    proof_load,
    verification_load,
)
from ropewalk._suspension_rig import rig_bounce, rig_margins, rig_suspension
from ropewalk._suspension_train import Margins, Part, Suspension
from ropewalk._suspension_wear import (
    link_load,
    worn_bore_capacity,
    worn_capacity_by_area,
    worn_capacity_by_bending,
)

__all__ = [
    "ElevatorBore",
    "ElevatorLoad",
    "ElevatorType",
    "HookBounce",
    "LoadPathFinding",
    "Margins",
    "Part",
    "Suspension",
    "allowable_shear",
    "allowable_stress",
    "bearing_rating",
    "bounce_frequency",
    "damping_ratio",
    "design_safety_factor",
    "elevator_bore",
    "elevator_types",
    "elevators_for",
    "link_load",
    "link_set_capacity",
    "overshoot",
    "proof_load",
    "rating_class",
    "rig_bounce",
    "rig_elevators",
    "rig_findings",
    "rig_margins",
    "rig_suspension",
    "table",
    "verification_load",
    "worn_bore_capacity",
    "worn_capacity_by_area",
    "worn_capacity_by_bending",
]
