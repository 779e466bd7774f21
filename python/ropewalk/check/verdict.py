"""What a check says: a verdict on one thing, with its numbers and who asks for it."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from ropewalk.check.rule import Rule

__all__ = ["Severity", "Status", "Verdict"]

#: Values that differ from their limit by rounding alone are on it, and inside.
_ROUNDING = 1e-12


class Status(StrEnum):
    """How a check ended."""

    PASS = "pass"
    WARN = "warn"
    FAIL = "fail"
    NOT_APPLICABLE = "not applicable"
    NOT_COMPUTED = "not computed"


class Severity(StrEnum):
    """How bad it is if a limit is broken."""

    MUST = "must"
    SHOULD = "should"
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Verdict:
    """One rule on one thing of one rig.

    Attributes
    ----------
    rule
        The rule.
    status
        Inside (`pass`), a rule that must hold broken (`fail`), one that should hold broken
        (`warn`), `not applicable`, or `not computed`, which never counts as inside.
    subject
        What it is about: an operation, a part, a device; empty if it is the rig.
    value, limit
        In the SI unit of the rule's role; None where nothing was computed.
    source
        Who asks for the limit: publication with clause and edition, or the house limit.
    reason
        Why the status is not a plain pass: in words, with numbers.
    inputs
        What it rests on, name to text with unit.
    """

    rule: Rule
    status: Status
    subject: str = ""
    value: float | None = None
    limit: float | None = None
    source: str = ""
    reason: str = ""
    inputs: Mapping[str, str] = field(default_factory=dict)

    @property
    def margin(self) -> float | None:
        """Distance to the limit as a share of it, negative beyond; None without numbers.

        The bare distance, in SI, where the limit is nothing.
        """
        if self.value is None or self.limit is None:
            return None
        return margin(self.value, self.limit, self.rule.sense)

    @property
    def broken(self) -> bool:
        """True if the limit is broken, or it could not be shown that it is not."""
        return self.status in (Status.FAIL, Status.WARN, Status.NOT_COMPUTED)

    def as_record(self) -> dict[str, Any]:
        """Plain values of all fields, for tables and JSON."""
        rule = self.rule

        def plain(number: float | None) -> float | str | None:
            return str(number) if number is not None and not math.isfinite(number) else number

        return {
            "rule": rule.id,
            "title": rule.title,
            "severity": str(rule.severity),
            "status": str(self.status),
            "subject": self.subject,
            "value": plain(self.value),
            "limit": plain(self.limit),
            "sense": rule.sense,
            "unit": rule.unit,
            "margin": plain(self.margin),
            "source": self.source,
            "standing": rule.standing,
            "reason": self.reason,
            "how": rule.how,
            "inputs": dict(self.inputs),
        }


def margin(value: float, limit: float, sense: str) -> float:
    """Return the distance of `value` from `limit` on the inside, as a share of the limit."""
    if value == limit:  # two infinities too, whose distance is no number
        return 0.0
    distance = value - limit if sense == "at least" else limit - value
    if limit == 0.0 or not math.isfinite(limit):
        return distance
    share = distance / abs(limit)
    return 0.0 if abs(share) <= _ROUNDING else share
