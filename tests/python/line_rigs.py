"""The hoists, campaigns and life laws of the referee, as the library takes them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import cache
from typing import Any

from rope_simulation import Hoist, Law, Stroke

import ropewalk as rw


@cache
def example_rig() -> Any:
    """Rig 7 of the Kestrel Flat geothermal field; invented, as its field is."""
    return rw.load_rig(rw.rig.example("rig7"))


def rig_of(hoist: Hoist, supply: float) -> Any:
    """The example rig with blocks, drum and string-up of the hoist, and so much rope."""
    rig = example_rig()
    assert rig.rope.diameter_si == hoist.rope_diameter
    assert rig.rope.wire_strength_si == hoist.wire_strength
    leads = hoist.lead_frictions
    wear = hoist.wear
    return replace(
        rig,
        reeving=rw.Reeving(
            hoist.lines,
            hoist.frictions,
            lead_sheaves=len(leads),
            lead_sheave_friction=leads or None,
        ),
        crown=replace(rig.crown, diameter=hoist.crown_diameter),
        block=replace(
            rig.block,
            sheaves=replace(rig.block.sheaves, diameter=hoist.block_diameter),
            highest=hoist.highest,
            lowest=hoist.lowest,
        ),
        drum=replace(
            rig.drum,
            barrel_diameter=hoist.drum.barrel_diameter,
            laps_per_layer=hoist.drum.laps_per_layer,
            layers=hoist.drum.layers,
            layer_height=hoist.drum.layer_height / hoist.rope_diameter,
            crossovers_per_lap=hoist.drum.crossovers_per_lap,
        ),
        line=replace(
            rig.line,
            supply=supply,
            dead_line=hoist.dead_line,
            fast_line=hoist.fast_line,
            wraps_at_lowest=hoist.wraps_at_lowest,
            reverse_bends=(),
            wear=replace(
                rig.line.wear,
                crossover=wear.crossover,
                layer_change=0.0,
                pick_up=wear.pick_up,
                dead_line_sheave=wear.dead_line_sheave,
                anchor=wear.anchor,
                crossover_length=wear.crossover_length,
            ),
        ),
    )


def campaign_of(strokes: Sequence[Stroke]) -> Any:
    return rw.Campaign.from_strokes(
        hook_load=rw.Q([one.hook_load for one in strokes], "N"),
        height_from=rw.Q([one.height_from for one in strokes], "m"),
        height_to=rw.Q([one.height_to for one in strokes], "m"),
        count=[one.count for one in strokes],
        pick_up=[one.pick_up for one in strokes],
        may_stop=[one.may_stop for one in strokes],
    )


def model_of(law: Law) -> Any:
    return rw.fatigue.PowerLaw(law.scale, law.exponent, basis="discard")


def run(
    hoist: Hoist,
    law: Law,
    strokes: Sequence[Stroke],
    supply: float,
    bin_length: float,
    *,
    program: Any = None,
    threads: int = 1,
) -> Any:
    """Run the library's map; the law is meant to be used anywhere."""
    return rw.run_line(
        rig_of(hoist, supply),
        campaign_of(strokes),
        program=program,
        model=model_of(law),
        bin_length=rw.Q(bin_length, "m"),
        outside_validity="ignore",
        threads=threads,
    )
