"""Arguments and signatures of the subject `work`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import ENERGY, FORCE, FORCE_PER_LENGTH, LENGTH, NUMBER

PARAMETERS: dict[str, Parameter] = {
    "bha_excess_weight": Parameter(
        FORCE, "lbf", "Weight of the BHA in mud less that of the same length of pipe.", 55_000.0
    ),
    "depth_from": Parameter(
        LENGTH, "ft", "Depth where the hole begins to be drilled, or the bit turns.", 8_000.0
    ),
    "depth_to": Parameter(LENGTH, "ft", "Deepest depth of the bit.", 10_000.0),
    "joint_length": Parameter(LENGTH, "ft", "Length of one joint.", 40.0),
    "casing_weight": Parameter(
        FORCE_PER_LENGTH, "lbf/ft", "Buoyed weight of the casing per length.", 24.6
    ),
    "load": Parameter(FORCE, "lbf", "Everything that hangs on the lines.", 240_000.0),
    "travel": Parameter(LENGTH, "ft", "Travel of the block, up or down.", 93.0),
    "passes": Parameter(
        NUMBER, "", "Round trips of work per new hole; 3 with a kelly and reaming, 2 without.", 3
    ),
}

_STRING = ("stand_length", "pipe_weight", "bha_excess_weight", "block_weight")
_NEW_HOLE = ("depth_from", "depth_to", *_STRING)

SIGNATURES: dict[str, Signature] = {
    "work.lift": Signature(("load", "travel"), ENERGY, "Work of the stroke."),
    "work.round_trip": Signature(("depth", *_STRING), ENERGY, "Work of the line."),
    "work.short_trip": Signature(_NEW_HOLE, ENERGY, "Work of the line."),
    "work.drilling": Signature((*_NEW_HOLE, "passes"), ENERGY, "Work of the line."),
    "work.coring": Signature(_NEW_HOLE, ENERGY, "Work of the line."),
    "work.casing": Signature(
        ("depth", "joint_length", "casing_weight", "block_weight"), ENERGY, "Work of the line."
    ),
}
