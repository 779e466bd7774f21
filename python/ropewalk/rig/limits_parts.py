"""The limits a rig file asks for."""

from __future__ import annotations

import difflib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from functools import cache
from typing import TYPE_CHECKING, Literal

from ropewalk.rig.file import RigFileError
from ropewalk.rig.parameters import shape_of

if TYPE_CHECKING:
    from pydantic import BaseModel

    from ropewalk.rig.limits_sections import LimitsSection, StuckSection


@dataclass(frozen=True, slots=True)
class OwnRule:
    """A rule that a rig file adds, ``[[limits.rule]]``.

    Attributes
    ----------
    id, title
        Its name and one line for tables.
    expression
        Over results of the rules, ``"line.design_factor / sheave.bend_ratio"``; ``min``, ``max``,
        ``abs`` and ``sqrt`` are known.
    sense
        ``"at least"`` or ``"at most"``.
    limit
        Number, or text with a unit.
    severity
        ``"must"``, ``"should"`` or ``"note"``.
    source
        Who asks for it.
    """

    id: str
    title: str
    expression: str
    sense: Literal["at least", "at most"]
    limit: str | float
    severity: str
    source: str


@dataclass(frozen=True, slots=True)
class Limits:
    """The limits asked for; forces in N, None where nothing is asked.

    Attributes
    ----------
    design_factor_standard
        Key of the table of minimum design factors.
    overpull
        Pull allowed on a stuck string, beyond its weight; ``[stuck]`` of the file.
    hook_load
        Largest hook load asked for, besides that of the plan.
    demand
        Tables without which a check counts as not computed, ``"brake"``, ``"drawworks.motors"``.
    house
        Limits of the house by rule: number, text with a unit, or False for off.
    rules
        Rules of the house.
    """

    design_factor_standard: str | None = None
    overpull: float | None = None
    hook_load: float | None = None
    demand: tuple[str, ...] = ()
    house: Mapping[str, str | float | bool] = field(default_factory=dict)
    rules: tuple[OwnRule, ...] = ()


def make_limits(section: LimitsSection, stuck: StuckSection | None) -> Limits:
    """Return the limits of ``[limits]`` and ``[stuck]``."""
    _check_demand(section.demand)
    rules = []
    for number, one in enumerate(section.rule, start=1):
        if (one.at_least is None) == (one.at_most is None):
            raise RigFileError(
                f"limits.rule[{number}]: one of at_least and at_most must be given, not both"
            )
        least = one.at_least
        rules.append(
            OwnRule(
                id=one.id,
                title=one.title,
                expression=one.expression,
                sense="at least" if least is not None else "at most",
                limit=least if least is not None else (one.at_most or 0.0),
                severity=one.severity,
                source=one.source,
            )
        )
    if len({one.id for one in rules}) != len(rules):
        raise RigFileError("limits.rule: each id may stand there once")
    return Limits(
        design_factor_standard=section.design_factor_standard,
        overpull=None if stuck is None else stuck.overpull,
        hook_load=section.hook_load,
        demand=tuple(section.demand),
        house=dict(section.house),
        rules=tuple(rules),
    )


def _check_demand(names: list[str]) -> None:
    """Refuse a table that no rig file has."""
    known = _known_tables()
    for name in names:
        if name not in known:
            close = difflib.get_close_matches(name, known, n=1, cutoff=0.5)
            hint = f"; did you mean {close[0]!r}?" if close else ""
            raise RigFileError(f"limits.demand: no rig file has a table {name!r}{hint}")


@cache
def _known_tables() -> tuple[str, ...]:
    from ropewalk.rig.sections import RigFile

    return tuple(_tables(RigFile))


def _tables(section: type[BaseModel], before: str = "") -> Iterator[str]:
    """Names of the tables in a section and in those, ``"drawworks.motors"``, ``"operation"``."""
    for name, one in section.model_fields.items():
        path = f"{before}{name}"
        shape = shape_of(one)
        nested = False
        while shape.item is not None:
            shape, nested = shape.item, True
        if shape.section is not None:
            yield path
            # Inside a list of tables there is none that a file as a whole could lack.
            if not nested:
                yield from _tables(shape.section, f"{path}.")
