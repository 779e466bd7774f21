"""Arguments and signatures of the subject `suspension`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import (
    ANGLE,
    COUNT,
    DAMPING,
    FORCE,
    FREQUENCY,
    LENGTH,
    NUMBER,
    SPEED,
    STRESS,
    TIME,
)

PARAMETERS: dict[str, Parameter] = {
    # Ratings
    "load_rating": Parameter(
        FORCE, "short_ton_force", "Maximum load rating of the part, from its nameplate.", 350.0
    ),
    "yield_strength": Parameter(STRESS, "ksi", "Minimum specified yield strength.", 100.0),
    "block_sheaves": Parameter(COUNT, "", "Number of sheaves in the block.", 6),
    "sheave_bearing_rating": Parameter(
        FORCE,
        "lbf",
        "Rating of the bearing of one sheave: 100 rpm, 3000 hours, 90 % surviving.",
        40_000.0,
    ),
    # Links and elevators
    "link_set_load": Parameter(FORCE, "lbf", "Load on both links together.", 400_000.0),
    "link_angle": Parameter(ANGLE, "deg", "Angle of a link from the vertical.", 10.0),
    "thickness_ratio": Parameter(
        NUMBER, "", "Least thickness measured over thickness as new.", 0.95
    ),
    "shoulder_diameter": Parameter(
        LENGTH, "in", "Outside of the collar or shoulder that the elevator carries.", 7.656
    ),
    "new_bore": Parameter(LENGTH, "in", "Bore of the elevator as new.", 7.125),
    "worn_bore": Parameter(LENGTH, "in", "Bore of the elevator as measured.", 7.2),
    # The hook on its spring
    "sprung_weight": Parameter(
        FORCE, "lbf", "All that moves on the hook spring: hook, links, elevator, stand.", 6_000.0
    ),
    "damping": Parameter(DAMPING, "lbf*s/in", "Damping of the snubber.", 50.0),
    "damping_up": Parameter(DAMPING, "lbf*s/in", "Damping while the hook rises.", 50.0),
    "damping_down": Parameter(DAMPING, "lbf*s/in", "Damping while the hook goes down.", 10.0),
    "friction": Parameter(FORCE, "lbf", "Friction of seals and guides, the same both ways.", 200.0),
    "overpull": Parameter(
        FORCE, "lbf", "Pull on the hook beyond what hangs on it, as the thread lets go.", 3_000.0
    ),
    "start_speed": Parameter(
        SPEED, "ft/s", "Speed of the hook at the beginning, up positive.", 1.0
    ),
    "time": Parameter(TIME, "s", "Time since the beginning.", 1.0),
    "within": Parameter(LENGTH, "in", "Distance from rest that counts as settled.", 0.25),
}

_WORN = ("load_rating", "thickness_ratio")

SIGNATURES: dict[str, Signature] = {
    "suspension.design_safety_factor": Signature(
        ("load_rating",), NUMBER, "Design safety factor on minimum yield."
    ),
    "suspension.allowable_stress": Signature(
        ("yield_strength", "load_rating"), STRESS, "Stress in tension under the load rating."
    ),
    "suspension.allowable_shear": Signature(
        ("yield_strength", "load_rating"), STRESS, "Shear stress under the load rating."
    ),
    "suspension.verification_load": Signature(
        ("load_rating",), FORCE, "Load of the design verification test."
    ),
    "suspension.proof_load": Signature(("load_rating",), FORCE, "Load of the proof test."),
    "suspension.bearing_rating": Signature(
        ("block_sheaves", "sheave_bearing_rating"), FORCE, "Bearing rating of the block."
    ),
    "suspension.link_load": Signature(
        ("link_set_load", "link_angle"), FORCE, "Load along one link."
    ),
    "suspension.worn_capacity_by_area": Signature(
        _WORN, FORCE, "Upper bound of what the worn part can carry."
    ),
    "suspension.worn_capacity_by_bending": Signature(
        _WORN, FORCE, "Bound of what the worn part can carry where bending governs."
    ),
    "suspension.worn_bore_capacity": Signature(
        ("load_rating", "shoulder_diameter", "new_bore", "worn_bore"),
        FORCE,
        "Upper bound of what the worn elevator can carry.",
    ),
    "suspension.damping_ratio": Signature(
        ("damping", "spring_rate", "sprung_weight"), NUMBER, "Damping over critical damping."
    ),
    "suspension.bounce_frequency": Signature(
        ("spring_rate", "sprung_weight"), FREQUENCY, "Frequency of the undamped bounce."
    ),
    "suspension.overshoot": Signature(
        ("damping_ratio",), NUMBER, "Swing beyond rest over distance from rest."
    ),
}
