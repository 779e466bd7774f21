"""What the rules for an inspected line share: findings, the table of limits, sources."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING, Any

from ropewalk.check.rule import Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts

__all__ = [
    "CRANES",
    "DRILLING",
    "ISO",
    "MINES",
    "SERVICING",
    "as_found",
    "finding",
    "rope_rule",
    "rows_of",
    "source_of",
]

DRILLING = "Wyoming OSHA oil and gas well drilling, ch. 6, 6-6(b), current through September 2024"
SERVICING = "Wyoming OSHA oil and gas well servicing, ch. 6, 6-2(c), current through April 2019"
CRANES = "29 CFR 1926.1413(a)(2), cranes in construction"
MINES = "30 CFR 56.19024, hoist ropes of mines"
ISO = "ISO 4309, cranes, as reprinted by a rope supplier; edition not stated"


def finding(facts: Facts, key: str) -> Any:
    """Return a finding; what was not looked at has no verdict."""
    value = getattr(facts.need("inspection"), key)
    if value is None:
        raise NotApplicable(f"the file has no inspection.{key}: not looked at")
    return value


def rows_of(facts: Facts, rule: str) -> list[dict[str, Any]]:
    """Limits of a rule, from the table of what takes a rope out of service."""
    from ropewalk import _core

    table = facts.once("rope retirement", lambda: _core.table("rope_retirement"))
    return [row for row in table if row["rule"] == rule]


def source_of(row: dict[str, Any]) -> str:
    """Source of a limit with its standing."""
    return f"{row['source']} ({row['standing']})"


def as_found(key: str) -> Callable[[Facts], Iterator[Measured]]:
    """Measure that holds a finding as it stands against its limits."""

    def measure(facts: Facts) -> Iterator[Measured]:
        seen = finding(facts, key)
        for row in rows_of(facts, key):
            yield Measured(value=float(seen), limit=row["limit"], source=source_of(row))

    return measure


def rope_rule(
    name: str,
    title: str,
    compares: str,
    source: str,
    measure: Callable[[Facts], Iterator[Measured]],
    *,
    role: str = "number",
    severity: Severity = Severity.MUST,
    how: str = "counted or measured on the line: [inspection]",
) -> Rule:
    """Return a rule that asks for at most something, from a published text."""
    return Rule(
        id=f"rope.{name}",
        title=title,
        compares=compares,
        sense="at most",
        role=role,
        severity=severity,
        source=source,
        standing="published",
        how=how,
        measure=measure,
    )
