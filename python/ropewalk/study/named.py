"""Named numbers of a rig that a study can ask for besides the results of rules."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

import numpy as np

from ropewalk import si
from ropewalk.check.rule import NotApplicable
from ropewalk.study.outputs import Found, Output
from ropewalk.study.section import sheave_windows, worst_section_damage

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts
    from ropewalk.line import Campaign, LineHistory, SlipCutProgram
    from ropewalk.rig.models import LifeModel

__all__ = ["NAMED"]


def _hook_load(facts: Facts) -> float:
    return facts.largest.hook_load


def _fast_line(facts: Facts) -> float:
    return facts.once("fast line", lambda: facts.fast_line(facts.largest.hook_load))


def _dead_line(facts: Facts) -> float:
    tensions = facts.rig.reeving._arrangement.tensions("hoisting", facts.largest.hook_load)
    return float(tensions["dead_line"])


def _breaking_force(facts: Facts) -> float:
    return facts.rig.rope.breaking_force_si


def _design_factor(facts: Facts) -> float:
    return facts.rig.rope.breaking_force_si / _fast_line(facts)


def _efficiency(facts: Facts) -> float:
    return facts.rig.reeving.efficiency()


def _bend_ratio(facts: Facts) -> float:
    rig = facts.rig
    return min(rig.crown.diameter, rig.block.sheaves.diameter) / rig.rope.diameter_si


def _bearing_pressure(facts: Facts) -> float:
    """Bearing pressure on the crown sheave next to the fast line, under its tight side."""
    rig = facts.rig
    tensions = rig.reeving._arrangement.tensions("hoisting", facts.largest.hook_load)
    tension = float(tensions["fast_line_at_crown"])
    return float(si.sheave.bearing_pressure(tension, rig.rope.diameter_si, rig.crown.diameter))


def _work(facts: Facts) -> float:
    rig = facts.rig
    if not rig.operations:
        raise NotApplicable("the file has no [[operation]]: no plan of the well")
    return sum(one.work(rig.block.weight) for one in rig.operations)


def _campaign(facts: Facts) -> Campaign:
    from ropewalk.line import Campaign

    facts.need("line")
    facts.need("drum")
    if all(one.string is None for one in facts.rig.operations):
        raise NotApplicable("the file has no [[operation]] that moves a string: no line is run")
    return facts.once("campaign", lambda: Campaign.from_plan(facts.rig))


def _model(facts: Facts) -> LifeModel:
    """The life model of the file: its own fit, else its reference life."""
    from ropewalk.rig.models import models_of

    life = facts.rig.known_life
    if life.power_law is None and life.reference is None:
        text = "the file has neither [life.power_law] nor [life.reference]"
        raise NotApplicable(text)
    models = facts.once("life models", lambda: models_of(life, facts.rig.rope))
    return models[-1] if life.power_law is not None else models[1]


def _line_life(facts: Facts) -> Found:
    return _life_by_map(facts, None)


def _line_life_slipped(facts: Facts) -> Found:
    from ropewalk.line import SlipCutProgram

    practice = facts.need("program")
    return _life_by_map(facts, facts.once("program", lambda: SlipCutProgram.of_practice(practice)))


def _life_by_map(facts: Facts, program: SlipCutProgram | None) -> Found:
    from ropewalk.line._setup import columns_of, line_of
    from ropewalk.study.line_life import OUTLASTED, life_of_designs

    campaign, model = _campaign(facts), _model(facts).model
    life, end = life_of_designs([(facts.rig, model, 1.0)], campaign, program=program, threads=1)
    value, reason = float(life[0]), str(end[0])
    if np.isnan(value):
        return Found(value, reason)
    share = line_of(facts.rig, columns_of(campaign), model).share_outside_validity
    if share > 0.0:
        return Found(value, _outside(share), outside_range=True)
    if reason == OUTLASTED:
        return Found(value, f"{reason}: it lasts longer than this", outside_range=True)
    return Found(value)


def _outside(share: float) -> str:
    return f"{share:.0%} of the damage lies outside the range the model is published for"


def _trips(facts: Facts) -> Found:
    """Round trips of the heaviest trip until the section that passes most sheaves is worn out."""
    from ropewalk.rig.plan import trip_strokes
    from ropewalk.study.sheave_life import passes_of

    rig = facts.rig
    if not any(one.kind == "round trip" for one in rig.operations):
        raise NotApplicable("the plan has no round trip to count life in")
    strokes = trip_strokes(rig.heaviest_trip, rig.block.weight)
    passes = passes_of(rig, rig.reeving.lines, strokes)
    diameters = np.where(rig.reeving.on_crown, rig.crown.diameter, rig.block.sheaves.diameter)
    lives, outside = _model(facts).cycles_si(passes.tension, rig.rope, diameters)
    damage = passes.count[:, None] / lives
    windows = sheave_windows(rig.reeving.lines, rig.block.highest, rig.block.lowest)
    trips = 1.0 / float(worst_section_damage(damage.sum(axis=0), windows))
    share = float(np.where(outside, damage, 0.0).sum() / damage.sum())
    if share > 0.0:
        return Found(trips, _outside(share), outside_range=True)
    return Found(trips)


def _history(facts: Facts) -> LineHistory:
    """Return the line after the plan, slipped and cut by the program of the file."""
    from ropewalk.check.line import line_history

    return line_history(facts)


def _rope_cut(facts: Facts) -> float:
    return float(_history(facts).rope_cut.m_as("m"))


def _rope_use(facts: Facts) -> float:
    return float(_history(facts).rope_use.m_as("m/J"))


def _margin(facts: Facts) -> Found:
    """Least margin of all rules that must hold; not computed if one of them is not."""
    from ropewalk.check.rule import CannotTell
    from ropewalk.check.run import check_rig
    from ropewalk.check.verdict import Severity, Status

    verdicts = facts.once("all verdicts", lambda: check_rig(facts.rig))
    must = [one for one in verdicts if one.rule.severity is Severity.MUST]
    for one in must:
        if one.status is Status.NOT_COMPUTED:
            raise CannotTell(f"{one.rule.id}: {one.reason}")
    known = [one for one in must if one.margin is not None]
    if not known:
        raise NotApplicable("no rule that must hold has a number here")
    least = min(known, key=lambda one: one.margin or 0.0)
    return Found(float(least.margin or 0.0), f"{least.rule.id}, {least.subject}".rstrip(", "))


def _named(
    name: str, unit: str, long_name: str, function: Callable[[Facts], float | Found]
) -> Output:
    return Output(name, unit, function, long_name, "facts")


#: Every named number by its name.
NAMED: dict[str, Output] = {
    one.name: one
    for one in (
        _named("hook_load", "N", "largest hook load the hoist must carry", _hook_load),
        _named("fast_line_tension", "N", "fast-line tension at that load, hoisting", _fast_line),
        _named("dead_line_tension", "N", "dead-line tension at that load, hoisting", _dead_line),
        _named(
            "breaking_force", "N", "breaking force of the line, from its catalog", _breaking_force
        ),
        _named(
            "design_factor",
            "1",
            "breaking force over fast-line tension at the largest hook load",
            _design_factor,
        ),
        _named("efficiency", "1", "efficiency of the reeving, hoisting", _efficiency),
        _named("bend_ratio", "1", "smallest sheave diameter over rope diameter", _bend_ratio),
        _named(
            "bearing_pressure",
            "Pa",
            "bearing pressure on the fast sheave at the largest hook load",
            _bearing_pressure,
        ),
        _named("work", "J", "work of the line over the plan, by the closed forms", _work),
        _named(
            "line_life",
            "J",
            "work of the line until its worst place reaches discard, by the map, never slipped",
            _line_life,
        ),
        _named(
            "line_life_slipped",
            "J",
            "work of the line until its worst place reaches discard or the reel is used up, by the "
            "map, slipped and cut by the program of the file",
            _line_life_slipped,
        ),
        _named(
            "trips",
            "1",
            "round trips of the heaviest trip until the section that passes most sheaves is worn",
            _trips,
        ),
        _named("rope_cut", "m", "rope cut off over the plan", _rope_cut),
        _named("rope_use", "m/J", "rope cut off per work of the line", _rope_use),
        _named("least_margin", "1", "least margin of all rules that must hold", _margin),
    )
}
