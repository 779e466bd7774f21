"""Many programs, or many rigs, in one call of the core."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk import _core
from ropewalk.line.program import NO_PROGRAM, SlipCutProgram

if TYPE_CHECKING:
    from ropewalk.line.campaign import Campaign


@dataclass(frozen=True, slots=True)
class Judgment:
    """How a run is judged, in SI: limit, scatter, section, bins, and how often it is repeated."""

    limit: float
    scatter_lg: float
    section: float
    bin_length: float
    repeats: int
    damage_limit: float | None = None


def run_programs(
    lines: Sequence[Any],
    campaign: Campaign,
    programs: Sequence[SlipCutProgram | None],
    judge: Judgment,
    *,
    threads: int = 1,
) -> dict[str, Any]:
    """Run line i under program i; every result is a column, one entry per case.

    Columns: work [J], rope_cut, anchor, waste, least_wraps_rope [m], worst, survival, slips, cuts,
    end (text), status (0: well) and reason.
    """
    distinct: list[Any] = []
    places: dict[int, int] = {}
    for line in lines:
        if id(line) not in places:
            places[id(line)] = len(distinct)
            distinct.append(line)
    # One clock serves all programs that count the same.
    clocks: dict[str, dict[str, Any]] = {}
    arguments = []
    for program in programs:
        if program is None:
            arguments.append(NO_PROGRAM)
            continue
        known = clocks.setdefault(program.trigger, program._core(campaign))
        arguments.append({**program._core_numbers(), "clock": known["clock"]})
    return _core.line.run_cases(
        lines=distinct,
        line_of_case=[places[id(line)] for line in lines],
        triggers=[one["trigger"] for one in arguments],
        clocks=[one["clock"] for one in arguments],
        intervals=[one["interval"] for one in arguments],
        slips=[one["slip"] for one in arguments],
        slips_per_cut=[one["slips_per_cut"] for one in arguments],
        cuts=[one["cut"] for one in arguments],
        bin_length=judge.bin_length,
        ln_deviation=judge.scatter_lg * float(np.log(10.0)),
        section=judge.section,
        limit=judge.limit,
        repeats=judge.repeats,
        damage_limit=judge.damage_limit,
        threads=threads,
    )
