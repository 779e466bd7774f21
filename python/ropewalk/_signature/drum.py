"""Arguments and signatures of the subject `drum`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import ANGLE, COUNT, FORCE, LENGTH, NUMBER, STRESS

PARAMETERS: dict[str, Parameter] = {
    # The drum
    "barrel_diameter": Parameter(
        LENGTH, "in", "Diameter the first layer lies on, at the root of the grooves.", 28.0
    ),
    "traverse": Parameter(LENGTH, "in", "Inside width from flange to flange.", 56.0),
    "flange_depth": Parameter(
        LENGTH, "in", "Depth of rope from the barrel to the outside of the last layer.", 4.0
    ),
    "pitch": Parameter(LENGTH, "in", "Distance from lap to lap along the drum.", 1.4375),
    "wall_thickness": Parameter(
        LENGTH, "in", "Mean thickness of the wall of the barrel, grooves taken off.", 2.0
    ),
    "nested_share": Parameter(
        NUMBER, "", "Share of a lap that lies in the valley of the layer below.", 0.8
    ),
    "layer_factor": Parameter(
        NUMBER, "", "How much more than one layer the layers press on the barrel.", 1.75
    ),
    # The rope on it
    "laps": Parameter(NUMBER, "", "Number of laps on the drum.", 11.5),
    "crossovers_per_lap": Parameter(COUNT, "", "Crossovers of the rope in one lap, 1 or 2.", 2),
    "rope_at_lowest": Parameter(
        LENGTH, "ft", "Rope on the drum with the block at its lowest position.", 77.0
    ),
    "block_height": Parameter(
        LENGTH, "ft", "Height of the block above its lowest position.", 100.0
    ),
    "drum_friction": Parameter(NUMBER, "", "Friction between rope and drum.", 0.1),
    "dead_wraps": Parameter(NUMBER, "", "Laps on the barrel that are never unwound.", 3.0),
    "clamp_force": Parameter(FORCE, "lbf", "Force the fastening of the rope holds.", 5000.0),
    # The lead sheave
    "lead_offset": Parameter(
        LENGTH, "in", "From the plane of the lead sheave to the lap, along the drum.", 28.0
    ),
    "lead_distance": Parameter(
        LENGTH, "ft", "From the lead sheave to the drum, square to its axis.", 100.0
    ),
}

SIGNATURES: dict[str, Signature] = {
    "drum.pitched_layer_height": Signature(
        ("pitch", "rope_diameter"), NUMBER, "Rise from layer to layer over rope diameter."
    ),
    "drum.mixed_layer_height": Signature(
        ("nested_share",), NUMBER, "Mean rise from layer to layer over rope diameter."
    ),
    "drum.laps_in_traverse": Signature(
        ("traverse", "pitch"), NUMBER, "Whole laps side by side between the flanges."
    ),
    "drum.cut_length": Signature(
        ("laps", "barrel_diameter"), LENGTH, "Length of line cut, laps of the barrel."
    ),
    "drum.crossover_shift": Signature(
        ("laps", "crossovers_per_lap"), NUMBER, "Laps from a new to the nearest old crossover."
    ),
    "drum.rope_on_drum": Signature(
        ("rope_at_lowest", "lines", "block_height"), LENGTH, "Rope on the drum."
    ),
    "drum.reel_capacity": Signature(
        ("flange_depth", "barrel_diameter", "traverse", "rope_diameter"),
        LENGTH,
        "Length of rope the reel holds.",
    ),
    "drum.fleet_angle": Signature(
        ("lead_offset", "lead_distance"), ANGLE, "Fleet angle, of the sign of the offset."
    ),
    "drum.fleet_distance": Signature(
        ("lead_offset", "fleet_angle"), LENGTH, "Distance from drum to lead sheave."
    ),
    "drum.holding_ratio": Signature(
        ("drum_friction", "dead_wraps"), NUMBER, "Tension held over tension at the fastening."
    ),
    "drum.clamp_force": Signature(
        ("rope_tension", "drum_friction", "dead_wraps"),
        FORCE,
        "Tension left for the fastening to hold.",
    ),
    "drum.holding_wraps": Signature(
        ("rope_tension", "clamp_force", "drum_friction"), NUMBER, "Dead wraps needed."
    ),
    "drum.barrel_pressure": Signature(
        ("rope_tension", "barrel_diameter", "pitch", "layer_factor"),
        STRESS,
        "Pressure on the barrel, spread over the pitch.",
    ),
    "drum.barrel_hoop_stress": Signature(
        ("rope_tension", "pitch", "wall_thickness", "layer_factor"),
        STRESS,
        "Compressive hoop stress in the wall of the barrel.",
    ),
}
