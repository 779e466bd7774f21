"""Holding a rig against rules."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from ropewalk.check.facts import Facts
from ropewalk.check.rule import Absent, CannotTell, Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity, Status, Verdict, margin
from ropewalk.errors import RopewalkError

if TYPE_CHECKING:
    from ropewalk.rig import Rig

__all__ = ["check_rig", "judge", "status_of", "verdict_of"]


def check_rig(rig: Rig, rules: Sequence[Rule] | None = None) -> tuple[Verdict, ...]:
    """Hold a rig against rules.

    A verdict says what was compared, by what margin it holds and who asks for it. It replaces
    neither inspection nor the maker's manual, local rules and the judgment of qualified people.

    Parameters
    ----------
    rig
        The rig.
    rules
        All rules of ropewalk and the file's own, if left out.

    Returns
    -------
    tuple of Verdict
        In the order of the rules; a rule may give several, one for each operation or part.

    Examples
    --------
    >>> import ropewalk as rw
    >>> verdicts = rw.check.check_rig(rw.load_rig(rw.rig.example("rig7")))
    >>> {str(one.status) for one in verdicts if one.rule.id == "line.design_factor"}
    {'pass'}
    """
    from ropewalk.check.house import house_limits, missing_tables, own_rules
    from ropewalk.check.rules import RULES

    facts = Facts(rig)
    found: list[Verdict] = []
    limits = house_limits(rig, RULES if rules is None else rules)
    for rule in RULES if rules is None else rules:
        found.extend(limits.apply(rule, judge(rule, facts, limits.demanded)))
    if rules is None:
        found.extend(own_rules(rig, found))
        found.extend(missing_tables(rig, found))
    return tuple(found)


def judge(rule: Rule, facts: Facts, demanded: frozenset[str] = frozenset()) -> list[Verdict]:
    """Apply one rule; whatever goes wrong becomes a verdict with its reason."""
    try:
        measured: Iterable[Measured] = list(rule.measure(facts))
    except Absent as absent:
        # Where a table is missing, so are those inside it.
        inside = f"{absent.section}."
        asked = any(one == absent.section or one.startswith(inside) for one in demanded)
        status = Status.NOT_COMPUTED if asked else Status.NOT_APPLICABLE
        return [Verdict(rule, status, source=rule.source, reason=str(absent))]
    except NotApplicable as reason:
        return [Verdict(rule, Status.NOT_APPLICABLE, source=rule.source, reason=str(reason))]
    except CannotTell as reason:
        return [Verdict(rule, Status.NOT_COMPUTED, source=rule.source, reason=str(reason))]
    except RopewalkError as error:
        return [Verdict(rule, Status.NOT_COMPUTED, source=rule.source, reason=str(error))]
    found = [verdict_of(rule, one) for one in measured]
    if not found:
        text = "nothing on this rig to hold against it"
        return [Verdict(rule, Status.NOT_APPLICABLE, source=rule.source, reason=text)]
    return found


def verdict_of(rule: Rule, one: Measured) -> Verdict:
    """Verdict of a rule on what was measured."""
    status, reason = Status.NOT_COMPUTED, one.reason
    value: float | None = None
    limit: float | None = None
    if one.limit is None:
        status, value = Status.NOT_APPLICABLE, one.value
        reason = reason or f"no limit given: set limits.house for {rule.id}"
    elif math.isnan(one.value) or math.isnan(one.limit):
        reason = reason or "the value is no number"
    else:
        status, value, limit = status_of(rule, one.value, one.limit), one.value, one.limit
    source = one.source or rule.source
    return Verdict(rule, status, one.subject, value, limit, source, reason, one.inputs)


def status_of(rule: Rule, value: float, limit: float) -> Status:
    """Status of a value against a limit; on the limit is inside."""
    if margin(value, limit, rule.sense) >= 0.0:
        return Status.PASS
    return Status.FAIL if rule.severity is Severity.MUST else Status.WARN
