"""Rules for the drilling line: design factor, length, damage, slips and cuts."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ropewalk.check.facts import practice_table, si_of, text
from ropewalk.check.rule import CannotTell, Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity
from ropewalk.errors import UnknownEntryError

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts
    from ropewalk.line import Campaign, LineHistory, SlipCutProgram

__all__ = ["RULES", "line_history"]


def _design_factor(facts: Facts) -> Iterator[Measured]:
    from ropewalk import design_factor

    rig = facts.rig
    standard = rig.limits.design_factor_standard
    if not standard:
        raise CannotTell("the file names no limits.design_factor_standard")
    breaking_force = rig.rope.breaking_force_si
    for case in facts.by_service:
        tension = facts.fast_line(case.hook_load)
        try:
            asked = design_factor.minimum(case.service, standard)
        except UnknownEntryError:
            if case.service != "hoisting other":
                raise
            # A load without a service is held against the strictest service of the standard.
            asked = max(
                (one for one in design_factor.minimums() if one.standard == standard),
                key=lambda one: one.value,
            )
        yield Measured(
            value=breaking_force / tension,
            limit=asked.value,
            subject=case.name,
            source=f"{asked.standard}, {asked.source} ({asked.edition}, {asked.standing})",
            inputs={
                "breaking force": text(breaking_force, "force"),
                "hook load": text(case.hook_load, "force"),
                "fast line, hoisting": text(tension, "force"),
                "service": asked.operation,
                "basis of the limit": asked.basis,
            },
        )


def _length(facts: Facts) -> Iterator[Measured]:
    from ropewalk.rig.line_parts import drum_of

    rig = facts.rig
    line, _ = facts.need("line"), facts.need("drum")
    if rig.reeving.lines < 1:
        raise NotApplicable("no lines are strung")
    strung = line.dead_line + line.fast_line + rig.reeving.lines * rig.block.lowest
    drum = facts.once("drum", lambda: drum_of(rig))
    on_drum = float(drum.length_of(line.wraps_at_lowest).to("m").magnitude)
    yield Measured(
        value=line.supply,
        limit=strung + on_drum,
        inputs={
            "strung, block at its lowest": text(strung, "length"),
            "on the drum then": text(on_drum, "length"),
        },
    )


def _program(facts: Facts) -> SlipCutProgram:
    from ropewalk.line import SlipCutProgram

    practice = facts.need("program")
    return facts.once("program", lambda: SlipCutProgram.of_practice(practice))


def _campaign(facts: Facts) -> Campaign:
    from ropewalk.line import Campaign

    if all(one.string is None for one in facts.rig.operations):
        raise NotApplicable("the file has no [[operation]] that moves a string: no line is run")
    return facts.once("campaign", lambda: Campaign.from_plan(facts.rig))


def line_history(facts: Facts) -> LineHistory:
    """Return the line after the plan, slipped and cut by the program of the file."""
    from ropewalk.line import run_line

    facts.need("line")
    facts.need("drum")
    program, campaign = _program(facts), _campaign(facts)
    return facts.once(
        "line history",
        lambda: run_line(facts.rig, campaign, program, outside_validity="ignore"),
    )


def _damage(facts: Facts) -> Iterator[Measured]:
    history = line_history(facts)
    if history.end != "campaign done":
        raise CannotTell(f"the plan is not finished: {history.end}; see line.cuts_left")
    worst = next(iter(history.worst_places(1)), None)
    outside = history.share_outside_validity
    yield Measured(
        value=history.worst,
        limit=1.0,
        inputs={
            "worst place": "none" if worst is None else worst.text,
            "model": f"{history.model.name} ({history.model.source})",
            "program": _program(facts).title,
            "cuts": f"{len(history.sections)}",
        },
        reason=(
            f"{outside:.0%} of the damage lies outside the range the model is published for"
            if outside > 0.0
            else ""
        ),
        outside_validity=outside > 0.0,
    )


def _cuts_left(facts: Facts) -> Iterator[Measured]:
    history = line_history(facts)
    left = history.cuts_left
    assert left is not None  # the program is the one of the file
    done = history.end == "campaign done"
    yield Measured(
        value=float(left) if done else 0.0,
        limit=1.0,
        inputs={
            "line left on the reel": text(float(history.reel_left.to("m").magnitude), "length"),
            "cuts made": f"{len(history.sections)}",
            "program": _program(facts).title,
        },
        reason="" if done else "the reel is used up before the plan is done",
    )


def _slip_spacing(facts: Facts) -> Iterator[Measured]:
    from ropewalk.line.spacing import pick_up_spacing

    facts.need("line")
    facts.need("drum")
    program, campaign = _program(facts), _campaign(facts)
    found = pick_up_spacing(facts.rig, campaign, program)
    if found is None:
        raise NotApplicable("the plan picks up no load")
    yield Measured(
        value=found.apart,
        limit=found.least_apart,
        inputs={
            "slips": f"{found.slips} of {text(program.slip_si, 'length')}",
            "from one pick-up point to the next": text(found.distance, "length"),
            "length of a pick-up point": text(found.arc, "length"),
        },
    )


def _cut_spacing(facts: Facts) -> Iterator[Measured]:
    from ropewalk.line.spacing import LEAST_SHIFT, crossover_shift, lap_length

    facts.need("drum")
    cut = _program(facts).cut_si
    lap = lap_length(facts.rig)
    yield Measured(
        value=crossover_shift(facts.rig, cut),
        limit=LEAST_SHIFT,
        inputs={"cut": text(cut, "length"), "laps of the first layer": f"{cut / lap:.2f}"},
    )


def _work_per_slip(facts: Facts) -> Iterator[Measured]:
    program = _program(facts)
    if program.trigger != "work":
        raise NotApplicable(f"the program counts {program.trigger} between slips, not work")
    for row in practice_table("hoist_practice"):
        if row["key"] == "line.goal":
            goal = si_of(row["value"], row["unit"])
            yield Measured(
                value=program.interval_si,
                limit=goal * program.slip_si,
                source=f"{row['source']} ({row['standing']})",
                inputs={
                    "slip": text(program.slip_si, "length"),
                    "work per length cut there": f"{row['value']:g} {row['unit']}",
                },
            )


RULES = (
    Rule(
        id="line.design_factor",
        title="Design factor of the drilling line",
        compares="breaking force over fast-line tension while hoisting, with the minimum of the "
        "standard the file names, service by service",
        sense="at least",
        role="number",
        severity=Severity.MUST,
        source="the standard in limits.design_factor_standard",
        standing="published",
        how="rope.breaking_force / reeving.fast_line_tension, heaviest load of each service",
        measure=_design_factor,
    ),
    Rule(
        id="line.length",
        title="Line supplied against line strung",
        compares="length of the new line with what is strung and on the drum, block at its lowest",
        sense="at least",
        role="length",
        severity=Severity.MUST,
        source="geometry: the line must reach",
        standing="derived",
        how="dead line + fast line + lines x lowest + drum.length_of(wraps at lowest)",
        measure=_length,
    ),
    Rule(
        id="line.damage",
        title="Damage of the line over the plan",
        compares="largest damage of any place, on the line or when it was cut off, with the life "
        "to discard",
        sense="at most",
        role="number",
        severity=Severity.SHOULD,
        source="definition: damage 1 is the median life of the model, Palmgren and Miner",
        standing="derived",
        how="run_line with the plan and the [program] of the file",
        measure=_damage,
    ),
    Rule(
        id="line.cuts_left",
        title="Cuts left on the reel",
        compares="cuts that the reel still allows at the end of the plan with one",
        sense="at least",
        role="number",
        severity=Severity.SHOULD,
        source="common practice, no source",
        standing="common practice",
        how="run_line with the plan and the [program] of the file; LineHistory.cuts_left",
        measure=_cuts_left,
    ),
    Rule(
        id="line.slip_spacing",
        title="Slips against the pick-up points",
        compares="how far some number of slips brings one pick-up point from another with half "
        "the length of one",
        sense="at least",
        role="length",
        severity=Severity.NOTE,
        source="common practice, no source",
        standing="common practice",
        how="line.program_warnings",
        measure=_slip_spacing,
    ),
    Rule(
        id="line.cut_spacing",
        title="Cuts against the crossovers on the drum",
        compares="part of the way between two crossovers that a cut moves them with a tenth",
        sense="at least",
        role="number",
        severity=Severity.NOTE,
        source="common practice, no source",
        standing="common practice",
        how="drum.crossover_shift; line.program_warnings",
        measure=_cut_spacing,
    ),
    Rule(
        id="line.work_per_slip",
        title="Work between slips",
        compares="work of the line between slips with that of the program a handbook works out, "
        "for the same length slipped; the goal of a rig depends on rope, drum and derrick",
        sense="at most",
        role="energy",
        severity=Severity.NOTE,
        source="Lyons (1996), p. 614: 80 ft cut every 800 ton-miles",
        standing="published",
        how="program.every; 10 ton-miles per foot x program.slip",
        measure=_work_per_slip,
        tightens=False,  # a rig's own goal comes before the handbook's
    ),
)
