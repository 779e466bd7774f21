"""Arguments and signatures of the subject `mast`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import COUNT, FORCE, LENGTH, NUMBER

PARAMETERS: dict[str, Parameter] = {
    "hook_load_rating": Parameter(
        FORCE, "lbf", "Static hook load rating of the mast, from its nameplate.", 1_000_000.0
    ),
    "rated_lines": Parameter(COUNT, "", "Number of lines the nameplate states it for.", 12),
    "crown_block_weight": Parameter(FORCE, "lbf", "Weight of the crown block.", 10_000.0),
    "tools_weight": Parameter(FORCE, "lbf", "Weight of tools suspended in the derrick.", 0.0),
    "extra_leg_load": Parameter(
        FORCE, "lbf", "Extra load of one leg by the placement of the dead line.", 40_000.0
    ),
    "leg_share": Parameter(
        NUMBER,
        "",
        "Share of dead line plus share of fast line on the leg that bears most, 0.5 to 2.",
        1.0,
    ),
    "legs_sharing": Parameter(
        COUNT, "", "Legs that share the dead line: 1 at a leg, 2 between two.", 1
    ),
    # Of the class Mast
    "base_width": Parameter(LENGTH, "ft", "From leg to leg, across the drawworks.", 30.0),
    "base_depth": Parameter(LENGTH, "ft", "From leg to leg, toward the drawworks.", 30.0),
}

_LINES_AT_EFFICIENCY = ("hook_load", "lines", "reeving_efficiency")

SIGNATURES: dict[str, Signature] = {
    "mast.derrick_load": Signature(
        _LINES_AT_EFFICIENCY, FORCE, "Load of the lines on the derrick."
    ),
    "mast.static_derrick_load": Signature(
        ("hook_load", "lines"), FORCE, "Load of the lines on the derrick."
    ),
    "mast.equivalent_load": Signature(
        _LINES_AT_EFFICIENCY, FORCE, "Four times the load of the leg that bears most."
    ),
    "mast.efficiency_factor": Signature(
        ("lines", "reeving_efficiency"), NUMBER, "Derrick load over maximum equivalent load."
    ),
    "mast.rating_at_lines": Signature(
        ("hook_load_rating", "rated_lines", "lines", "leg_share"),
        FORCE,
        "Static hook load that loads neither crown nor legs more than the rated one does.",
    ),
    "mast.extra_leg_load": Signature(
        ("hook_load", "lines", "legs_sharing"), FORCE, "Extra load of one leg."
    ),
    "mast.std_4a_capacity": Signature(
        ("hook_load", "crown_block_weight", "tools_weight", "extra_leg_load"),
        FORCE,
        "Capacity the derrick should have.",
    ),
}
