"""Arguments and signatures of the subject `reeving`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import ACCELERATION, FORCE, LENGTH, NUMBER, SPEED

PARAMETERS: dict[str, Parameter] = {
    "fast_line_tension": Parameter(FORCE, "lbf", "Tension of the fast line at the drum.", 49_200.0),
    # Of the class Reeving
    "block_acceleration": Parameter(
        ACCELERATION,
        "ft/s**2",
        "Acceleration of the traveling block, up positive.",
        2.0,
    ),
    "block_speed": Parameter(SPEED, "ft/min", "Speed of the traveling block, up positive.", 120.0),
    "block_travel": Parameter(LENGTH, "ft", "Travel of the traveling block, up positive.", 93.0),
}

_REEVED = ("lines", "sheave_friction", "lead_sheaves")
_BLOCKS = ("hook_load", "lines", "sheave_friction")

SIGNATURES: dict[str, Signature] = {
    "reeving.efficiency": Signature(_REEVED, NUMBER, "Efficiency while hoisting."),
    "reeving.fast_line_factor": Signature(
        _REEVED, NUMBER, "Fast-line tension over hook load while hoisting."
    ),
    "reeving.lowering_efficiency": Signature(_REEVED, NUMBER, "Efficiency while lowering."),
    "reeving.two_drum_efficiency": Signature(_REEVED, NUMBER, "Efficiency while hoisting."),
    "reeving.fast_line_tension": Signature(
        ("hook_load", *_REEVED), FORCE, "Tension of the fast line at the drum."
    ),
    "reeving.hoisted_hook_load": Signature(
        ("fast_line_tension", *_REEVED), FORCE, "Everything that hangs on the lines."
    ),
    "reeving.fast_line_tension_at_efficiency": Signature(
        ("hook_load", "lines", "reeving_efficiency"),
        FORCE,
        "Tension of the fast line at the drum.",
    ),
    "reeving.dead_line_tension": Signature(_BLOCKS, FORCE, "Tension at the dead end."),
    "reeving.lowering_fast_line_tension": Signature(
        ("hook_load", *_REEVED), FORCE, "Tension of the fast line at the drum."
    ),
    "reeving.lowering_dead_line_tension": Signature(_BLOCKS, FORCE, "Tension at the dead end."),
    "reeving.crown_load": Signature(_BLOCKS, FORCE, "Load on the crown block."),
    "reeving.lowering_crown_load": Signature(_BLOCKS, FORCE, "Load on the crown block."),
}
