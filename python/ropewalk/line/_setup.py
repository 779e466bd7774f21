"""From a rig and a campaign to the line of the core, ready to run."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk import _core
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk.drum import Drum
    from ropewalk.fatigue import LifeModel
    from ropewalk.line.campaign import Campaign
    from ropewalk.rig import Rig


def line_model(rig: Rig) -> LifeModel:
    """Life model a rig file gives constants for: its own fit, else its reference life, else none.

    Raises
    ------
    InadmissibleError
        If the file has neither; then a model must be given.
    """
    from ropewalk.rig.models import models_of

    # The last of the list is the one fitted to the rig's own lines, if there is a fit.
    models = models_of(rig.known_life, rig.rope)
    if rig.known_life.power_law is None and rig.known_life.reference is None:
        text = (
            f"{rig.name} has neither [life.power_law] nor [life.reference]: give a model of "
            "ropewalk.fatigue as `model`"
        )
        raise InadmissibleError(f"run_line(): {text}", "run_line", "model")
    chosen = models[-1] if rig.known_life.power_law is not None else models[1]
    model: LifeModel = chosen.model
    return model


def tackle_of(rig: Rig) -> Any:
    """Return the string-up of a rig as the core has it."""
    if rig.line is None or rig.drum is None:
        missing = "[line]" if rig.line is None else "[drum]"
        text = f"{rig.name} has no {missing}: the damage map needs [line] and [drum]"
        raise InadmissibleError(f"run_line(): {text}", "run_line", "rig")
    line, wear, lines = rig.line, rig.line.wear, rig.reeving.lines
    crown, block = rig.crown.diameter, rig.block.sheaves.diameter
    names = [
        f"crown sheave {m // 2}" if m % 2 == 0 else f"traveling sheave {(m + 1) // 2}"
        for m in range(1, lines + 1)
    ]
    leads = rig.reeving.lead_sheaves
    return _core.line.Tackle(
        arrangement=rig.reeving._arrangement,
        sheave_diameters=[crown if m % 2 == 0 else block for m in range(1, lines + 1)],
        dead_line_sheave_diameter=crown,
        lead_sheave_diameters=[crown] * leads,
        rope_diameter=rig.rope.diameter_si,
        dead_line=line.dead_line,
        fast_line=line.fast_line,
        shortest=rig.block.highest,
        longest=rig.block.lowest,
        drum=_drum(rig),
        wraps_at_lowest=line.wraps_at_lowest,
        supply=line.supply,
        wear={
            "crossover": wear.crossover,
            "layer_change": wear.layer_change,
            "crossover_length": wear.crossover_length or 0.0,
            "pick_up": wear.pick_up,
            "dead_line_sheave": wear.dead_line_sheave,
            "anchor": wear.anchor,
            "reverse_bend": wear.reverse_bend or 1.0,
        },
        reverse_sheaves=[name in line.reverse_bends for name in names],
        reverse_lead_sheaves=[f"lead sheave {i + 1}" in line.reverse_bends for i in range(leads)],
        reverse_drum="drum" in line.reverse_bends,
    )


def drum_of(rig: Rig) -> Drum:
    """Return the drum of a rig with its rope."""
    assert rig.drum is not None
    return rig.drum.with_rope(rig.rope.diameter_si)


def _drum(rig: Rig) -> dict[str, Any]:
    """Arguments of the core."""
    assert rig.drum is not None
    return {
        "barrel_diameter": rig.drum.barrel_diameter,
        "laps_per_layer": rig.drum.laps_per_layer,
        "layers": rig.drum.layers,
        "layer_height": rig.drum.layer_height,
        "crossovers_per_lap": rig.drum.crossovers_per_lap,
    }


def columns_of(campaign: Campaign) -> Any:
    """Return the campaign as the core takes it: one block per operation."""
    blocks = []
    events = []
    planned = sorted(campaign.events, key=lambda event: event.row)
    for index, operation in enumerate(campaign.operations):
        first, last = operation.first_row, operation.last_row + 1
        blocks.append((first, max(first, last), 1))
        while planned and planned[0].row < max(first, last):
            event = planned.pop(0)
            events.append((index, event.kind == "cut", event.length_si))
    last = len(blocks) - 1
    events += [(last, event.kind == "cut", event.length_si) for event in planned]
    return _core.line.CampaignColumns(
        hook_load=campaign.hook_load_si,
        count=np.ascontiguousarray(campaign.count, dtype=np.float64),
        height_from=campaign.height_from_si,
        height_to=campaign.height_to_si,
        pick_up=np.ascontiguousarray(campaign.pick_up).view(np.uint8),
        may_stop=np.ascontiguousarray(campaign.may_stop).view(np.uint8),
        blocks=blocks,
        events=events,
    )


def line_of(rig: Rig, columns: Any, model: LifeModel, life_factor: float = 1.0) -> Any:
    """Return the line of a rig with the severities of a campaign."""
    from ropewalk.fatigue._model import _native

    rope = rig.rope
    # Bending length: the rope that passes the fast sheave in a full stroke.
    travel = rig.block.lowest - rig.block.highest
    return _core.line.Line(
        tackle=tackle_of(rig),
        model=_native(model),
        campaign=columns,
        rope_diameter=rope.diameter_si,
        wire_strength=np.nan if rope.wire_strength_si is None else rope.wire_strength_si,
        breaking_force=rope.breaking_force_si,
        bend_length=rig.reeving.lines * travel,
        life_factor=life_factor,
    )
