"""Arguments and signatures of the subject `fatigue`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import (
    ACCELERATION,
    ANGLE,
    COUNT,
    FORCE,
    FORCE_PER_LENGTH,
    LENGTH,
    NUMBER,
    STRESS,
)

_G = ("g0", "g1", "g2", "g3")

PARAMETERS: dict[str, Parameter] = {
    # A bend
    "bend_length": Parameter(
        LENGTH,
        "ft",
        "Length of the rope piece that passes the sheave under the highest tension.",
        8,
    ),
    "bend_length_ratio": Parameter(NUMBER, "", "Bending length over rope diameter, l/d.", 60),
    "life_factor": Parameter(
        NUMBER, "", "Product of endurance factors by which the life is multiplied.", 0.8
    ),
    "fleet_angle": Parameter(ANGLE, "deg", "Angle between rope and sheave plane.", 1.5),
    "groove_radius_ratio": Parameter(NUMBER, "", "Groove radius over rope diameter, r/d.", 0.53),
    "groove_angle": Parameter(ANGLE, "deg", "Angle of the undercut, or of the V groove.", 90),
    "bending_cycles": Parameter(NUMBER, "", "Number of bendings in the design life.", 500_000),
    "simple_bending_cycles": Parameter(NUMBER, "", "Life in simple bending, cycles.", 100_000),
    # Discard
    "g0": Parameter(NUMBER, "", "Constant g0 of the rope construction.", 44.5),
    "g1": Parameter(NUMBER, "", "Constant g1 of the rope construction, for N/mm².", 0.000222),
    "g2": Parameter(NUMBER, "", "Constant g2 of the rope construction.", 2200),
    "g3": Parameter(NUMBER, "", "Constant g3 of the rope construction, for N/mm².", 0.0536),
    "least_wire_breaks": Parameter(
        NUMBER, "", "Wire breaks on 30 rope diameters that are to warn before the rope fails.", 8
    ),
    # EN 81-50
    "equivalent_sheaves": Parameter(NUMBER, "", "Number of equivalent sheaves.", 5),
    "traction_sheave_diameter": Parameter(LENGTH, "mm", "Diameter of the traction sheave.", 600),
    "deflection_sheave_diameter": Parameter(
        LENGTH, "mm", "Mean diameter of the sheaves without the traction sheave.", 400
    ),
    "groove_equivalent": Parameter(
        NUMBER, "", "Equivalent sheaves of the traction sheave by its groove.", 5
    ),
    "same_sense_sheaves": Parameter(COUNT, "", "Deflection sheaves that bend the same way.", 2),
    "reverse_sheaves": Parameter(COUNT, "", "Deflection sheaves that bend the other way.", 0),
    "sheave_weight": Parameter(NUMBER, "", "Weight K_p of the deflection sheaves.", 5.0625),
    # EN 13001-3-2
    "force_spectrum_factor": Parameter(NUMBER, "", "Rope force spectrum factor k_r.", 0.4161),
    "further_influences": Parameter(
        NUMBER,
        "",
        "Product f_f of the factors of the fatigue proof, by the standard's tables.",
        1.0,
    ),
    "force_history": Parameter(NUMBER, "", "Force history parameter s_r.", 0.5),
    # Fitted constants
    "b1": Parameter(NUMBER, "", "Constant b1 of the life equation.", 1.887),
    "b2": Parameter(NUMBER, "", "Constant b2 of the life equation.", 8.567),
    "b3": Parameter(NUMBER, "", "Constant b3 of the life equation, first-edition form.", 0.0),
    "b4": Parameter(NUMBER, "", "Constant b4 of the life equation, first-edition form.", -2.894),
    # Hoist rope
    "ropes": Parameter(COUNT, "", "Ropes that share the load.", 1),
    "rope_weight": Parameter(FORCE_PER_LENGTH, "lbf/ft", "Weight of one rope per length.", 1.6),
    "rope_length": Parameter(LENGTH, "ft", "Length of rope hanging.", 531.5),
    "acceleration": Parameter(ACCELERATION, "ft/s**2", "Acceleration, upward positive.", 2.0),
    "wire_diameter": Parameter(LENGTH, "in", "Diameter of the outer wires.", 0.067),
    "pressure_ratio": Parameter(
        NUMBER, "", "Bearing pressure over wire strength for the wanted life, p/S_u.", 0.0014
    ),
    "bending_load": Parameter(
        FORCE, "lbf", "Tension that stresses the wires as bending does.", 4466.7
    ),
    "fatigue_tension": Parameter(FORCE, "lbf", "Tension the rope bears for its life.", 12_096),
}

SIGNATURES: dict[str, Signature] = {
    "fatigue.size_factor": Signature(("rope_diameter",), NUMBER, "Factor on bending life."),
    "fatigue.length_factor": Signature(("bend_length_ratio",), NUMBER, "Factor on bending life."),
    "fatigue.fleet_angle_factor": Signature(
        ("bend_ratio", "fleet_angle"), NUMBER, "Factor on bending life."
    ),
    "fatigue.reverse_bending_cycles": Signature(
        ("simple_bending_cycles", "bend_ratio"), NUMBER, "Life in reverse bending, cycles."
    ),
    "fatigue.discard_wire_breaks": Signature(
        ("rope_tension", "rope_diameter", "sheave_diameter", *_G),
        NUMBER,
        "Wire breaks on a length of 30 rope diameters.",
    ),
    "fatigue.discard_limiting_force": Signature(
        ("least_wire_breaks", "rope_diameter", "sheave_diameter", *_G),
        FORCE,
        "Tension up to which that many wire breaks warn.",
    ),
    "fatigue.en81_safety_factor": Signature(
        ("bend_ratio", "equivalent_sheaves"),
        NUMBER,
        "Least safety factor of the suspension ropes.",
        {"bend_ratio": 40},
    ),
    "fatigue.en81_sheave_weight": Signature(
        ("traction_sheave_diameter", "deflection_sheave_diameter"), NUMBER, "Weight K_p."
    ),
    "fatigue.en81_equivalent_sheaves": Signature(
        ("groove_equivalent", "same_sense_sheaves", "reverse_sheaves", "sheave_weight"),
        NUMBER,
        "Number of equivalent sheaves.",
    ),
    "fatigue.en13001_static_factor": Signature(
        ("bend_ratio",), NUMBER, "Rope resistance factor of the static proof."
    ),
    "fatigue.en13001_force_history": Signature(
        ("force_spectrum_factor", "bending_cycles"), NUMBER, "Force history parameter."
    ),
    "fatigue.en13001_fatigue_resistance": Signature(
        ("breaking_force", "further_influences", "force_history"),
        FORCE,
        "Limit design rope force of the fatigue proof.",
    ),
    "fatigue.en13001_utilization": Signature(
        ("rope_tension", "breaking_force", "further_influences", "force_history"),
        NUMBER,
        "Utilization of the fatigue proof; fulfilled up to 1.",
    ),
    "fatigue.optimal_rope_diameter": Signature(
        ("rope_tension", "sheave_diameter", "wire_strength", "b1", "b2", "b3", "b4"),
        LENGTH,
        "Rope diameter of the longest bending life.",
    ),
    "fatigue.hoist_rope_tension": Signature(
        ("load", "ropes", "rope_weight", "rope_length", "acceleration"),
        FORCE,
        "Tension of one rope.",
        {"load": 2000},
    ),
    "fatigue.wire_bending_stress": Signature(
        ("rope_modulus", "wire_diameter", "sheave_diameter"), STRESS, "Bending stress of the wires."
    ),
    "fatigue.bending_load": Signature(
        ("rope_modulus", "wire_diameter", "metallic_area", "sheave_diameter"),
        FORCE,
        "Tension that stresses the wires as bending does.",
    ),
    "fatigue.fatigue_tension": Signature(
        ("pressure_ratio", "wire_strength", "rope_diameter", "sheave_diameter"),
        FORCE,
        "Tension the rope bears for the life of that ratio.",
    ),
    "fatigue.static_safety_factor": Signature(
        ("breaking_force", "bending_load", "rope_tension"), NUMBER, "Static safety factor."
    ),
    "fatigue.fatigue_safety_factor": Signature(
        ("fatigue_tension", "bending_load", "rope_tension"), NUMBER, "Safety factor in fatigue."
    ),
}
