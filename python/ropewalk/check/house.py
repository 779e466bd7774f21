"""House limits and own rules of a rig file."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Any

from ropewalk._border import to_one
from ropewalk.check.facts import text as text_of
from ropewalk.check.rule import Absent, Rule, measures_nothing
from ropewalk.check.run import status_of
from ropewalk.check.verdict import Severity, Status, Verdict, margin
from ropewalk.errors import RopewalkError
from ropewalk.rig.file import RigFileError

if TYPE_CHECKING:
    from ropewalk.rig import Rig

__all__ = ["HouseLimits", "house_limits", "missing_tables", "own_rules"]


#: Of tables without which no rule of ropewalk misses anything.
DEMANDED = Rule(
    id="limits.demand",
    title="Tables that the file demands",
    compares="tables of the file with those in limits.demand",
    sense="at least",
    role="number",
    severity=Severity.MUST,
    source="limits.demand of the file",
    standing="house limit",
    how="limits.demand",
    measure=measures_nothing,
)


@dataclass(frozen=True, slots=True)
class HouseLimits:
    """What ``[limits]`` of a rig file changes about the rules.

    Attributes
    ----------
    values
        Limits of the house by rule, in SI.
    off
        Rules switched off.
    demanded
        Tables of the file without which a check counts as not computed.
    """

    values: Mapping[str, float] = field(default_factory=dict)
    off: frozenset[str] = frozenset()
    demanded: frozenset[str] = frozenset()

    def apply(self, rule: Rule, verdicts: Sequence[Verdict]) -> list[Verdict]:
        """Return the verdicts with the house limit of the rule, the stricter one where two hold."""
        if rule.id in self.off:
            text = "switched off by the file: limits.house"
            return [Verdict(rule, Status.NOT_APPLICABLE, source=rule.source, reason=text)]
        limit = self.values.get(rule.id)
        if limit is None:
            return list(verdicts)
        return [self._with(rule, one, limit) for one in verdicts]

    def _with(self, rule: Rule, verdict: Verdict, limit: float) -> Verdict:
        if verdict.value is None or math.isnan(verdict.value):
            return verdict
        if verdict.limit is not None and rule.tightens:
            # The stricter limit is the one that leaves the smaller distance.
            kept = margin(limit, verdict.limit, rule.sense)
            if kept < 0.0:
                shown = text_of(limit, rule.role)
                text = f"the house limit {shown} is weaker than that of the source: not used"
                return replace(verdict, reason=f"{verdict.reason}; {text}".lstrip("; "))
        return replace(
            verdict,
            status=status_of(rule, verdict.value, limit),
            limit=limit,
            source="house limit of the file",
            reason="" if verdict.status is Status.NOT_APPLICABLE else verdict.reason,
        )


def house_limits(rig: Rig, rules: Sequence[Rule]) -> HouseLimits:
    """Read the house limits of a rig against the rules there are, and those given.

    Raises
    ------
    RigFileError
        For a rule that does not exist, a limit of another kind of quantity, a rule that must hold
        and is switched off, or an own rule under the name of one of ropewalk.
    """
    import difflib

    from ropewalk.check.rules import RULES

    known = {rule.id: rule for rule in (*RULES, *rules)}
    for own in rig.limits.rules:
        if own.id in known or own.id == DEMANDED.id:
            raise RigFileError(
                f"limits.rule: {own.id!r} is a rule of ropewalk already; give yours another id, or "
                f"set limits.house for a stricter limit"
            )
    values: dict[str, float] = {}
    off: set[str] = set()
    for name, given in rig.limits.house.items():
        rule = known.get(name)
        if rule is None:
            close = difflib.get_close_matches(name, known, n=1, cutoff=0.5)
            hint = f"; did you mean {close[0]!r}?" if close else ""
            raise RigFileError(f"limits.house: there is no rule {name!r}{hint}")
        if given is False:
            if rule.severity is Severity.MUST:
                raise RigFileError(f"limits.house.{name}: a rule that must hold stays on")
            off.add(name)
            continue
        try:
            values[name] = to_one("limits.house", name, given, rule.role)
        except RopewalkError as error:
            raise RigFileError(f"limits.house.{name}: {error}") from error
    return HouseLimits(values, frozenset(off), frozenset(rig.limits.demand))


def own_rules(rig: Rig, verdicts: Sequence[Verdict]) -> list[Verdict]:
    """Apply the rules that the file adds, ``[[limits.rule]]``, to what was computed."""
    if not rig.limits.rules:
        return []
    from ropewalk.check.expression import evaluate

    results = worst_results(verdicts)
    return [evaluate(one, results) for one in rig.limits.rules]


def missing_tables(rig: Rig, verdicts: Sequence[Verdict]) -> list[Verdict]:
    """One verdict for each table that the file demands, lacks, and that no rule has missed."""
    said = {one.reason for one in verdicts if one.status is Status.NOT_COMPUTED}
    plan = bool(rig.operations)
    there = {
        "stuck": rig.limits.overpull is not None,
        **dict.fromkeys(("mud", "string", "operation"), plan),
    }
    found = []
    for name in rig.limits.demand:
        missing = str(Absent(name))
        # Some tables every file has; drawworks are None where only their power is known.
        known = there.get(name, name == "drawworks" or getattr(rig, name, True) is not None)
        if not known and missing not in said:
            found.append(
                Verdict(DEMANDED, Status.NOT_COMPUTED, source=DEMANDED.source, reason=missing)
            )
    return found


def worst_results(verdicts: Sequence[Verdict]) -> dict[str, dict[str, Any]]:
    """Worst value of each rule, as subject → name → (SI number, role).

    The least where a rule asks for at least something, the largest where for at most.
    """
    named: dict[str, dict[str, Any]] = {}
    for one in verdicts:
        if one.value is None or math.isnan(one.value):
            continue
        subject, _, name = one.rule.id.partition(".")
        group = named.setdefault(subject, {})
        worst = min if one.rule.sense == "at least" else max
        value = one.value if name not in group else worst(one.value, group[name][0])
        group[name] = (value, one.rule.role)
    return named
