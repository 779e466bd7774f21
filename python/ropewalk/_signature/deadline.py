"""Arguments and signatures of the subject `deadline`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import AREA, COUNT, FORCE, LENGTH, NUMBER, STRESS

PARAMETERS: dict[str, Parameter] = {
    # The weight indicator
    "indicated_load": Parameter(
        FORCE, "lbf", "What the indicator shows: dead-line tension times lines.", 333_000.0
    ),
    "turning_dead_line_sheaves": Parameter(
        COUNT, "", "1 where the dead-line sheave turns with the line, 0 where it is fixed.", 0
    ),
    "reading_hoisting": Parameter(
        FORCE, "lbf", "What the indicator shows while the load is hoisted slowly.", 333_000.0
    ),
    "reading_lowering": Parameter(
        FORCE, "lbf", "What the indicator shows while the same load is lowered slowly.", 474_000.0
    ),
    "reading_uncertainty": Parameter(
        NUMBER, "", "Standard uncertainty of one reading over the reading.", 0.01
    ),
    # The anchor
    "anchor_friction": Parameter(NUMBER, "", "Friction between rope and anchor drum.", 0.1),
    "anchor_wraps": Parameter(NUMBER, "", "Laps of the line on the anchor drum.", 4.0),
    "clamps": Parameter(COUNT, "", "Equal clamps behind the wraps.", 1),
    "clamp_holding": Parameter(FORCE, "lbf", "Pull that one clamp holds.", 10_000.0),
    # The sensor
    "sensor_force": Parameter(FORCE, "lbf", "Force on the sensor.", 4_000.0),
    "deflection": Parameter(
        LENGTH, "mm", "How far the middle of the line is pushed out of the straight line.", 25.0
    ),
    "half_span": Parameter(
        LENGTH, "mm", "From the middle to each support, along the straight line.", 250.0
    ),
    "anchor_radius": Parameter(
        LENGTH, "in", "From the pivot of the anchor to the middle of the rope.", 14.0
    ),
    "cell_arm": Parameter(
        LENGTH, "in", "From the pivot of the anchor to the line of the cell's force.", 42.0
    ),
    "cell_area": Parameter(AREA, "in**2", "Area of the diaphragm of the cell.", 20.0),
    "cell_pressure": Parameter(
        STRESS, "psi", "Pressure in the cell, above that without a pull.", 500.0
    ),
}

_RATIO = ("lines", "sheave_friction", "turning_dead_line_sheaves")
_READINGS = ("reading_hoisting", "reading_lowering", "lines", "turning_dead_line_sheaves")

SIGNATURES: dict[str, Signature] = {
    "deadline.hoisting_ratio": Signature(_RATIO, NUMBER, "Indicated over true hook load."),
    "deadline.lowering_ratio": Signature(_RATIO, NUMBER, "Indicated over true hook load."),
    "deadline.hook_load_hoisting": Signature(("indicated_load", *_RATIO), FORCE, "True hook load."),
    "deadline.hook_load_lowering": Signature(("indicated_load", *_RATIO), FORCE, "True hook load."),
    "deadline.friction_from_readings": Signature(
        _READINGS, NUMBER, "Tension ratio K of one turning sheave."
    ),
    "deadline.hook_load_from_readings": Signature(_READINGS, FORCE, "True hook load."),
    "deadline.friction_uncertainty": Signature(
        ("sheave_friction", "lines", "turning_dead_line_sheaves", "reading_uncertainty"),
        NUMBER,
        "Standard uncertainty of K.",
    ),
    "deadline.anchor_capacity": Signature(
        ("clamps", "clamp_holding", "anchor_friction", "anchor_wraps"),
        FORCE,
        "Pull on the dead line at which it slips.",
    ),
    "deadline.clamps_needed": Signature(
        ("rope_tension", "clamp_holding", "anchor_friction", "anchor_wraps"),
        NUMBER,
        "Least number of clamps, a whole number.",
    ),
    "deadline.deflection_force": Signature(
        ("rope_tension", "deflection", "half_span"), FORCE, "Force across the line."
    ),
    "deadline.tension_from_deflection": Signature(
        ("sensor_force", "deflection", "half_span"), FORCE, "Tension of the line."
    ),
    "deadline.cell_force": Signature(
        ("rope_tension", "anchor_radius", "cell_arm"), FORCE, "Force on the cell."
    ),
    "deadline.tension_from_cell": Signature(
        ("sensor_force", "anchor_radius", "cell_arm"), FORCE, "Tension of the dead line."
    ),
    "deadline.tension_from_pressure": Signature(
        ("cell_pressure", "cell_area", "anchor_radius", "cell_arm"),
        FORCE,
        "Tension of the dead line.",
    ),
    "deadline.pin_force": Signature(
        ("rope_tension", "wrap_angle"), FORCE, "Force on the pin of the sheave."
    ),
    "deadline.tension_from_pin": Signature(
        ("sensor_force", "wrap_angle"), FORCE, "Tension of the line."
    ),
}
