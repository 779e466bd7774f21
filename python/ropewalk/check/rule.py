"""Rules: what is compared with what, who asks for it, how bad it is if broken."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field, fields
from typing import TYPE_CHECKING, Any, Literal

from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts

__all__ = ["Absent", "CannotTell", "Measured", "NotApplicable", "Rule", "Sense"]

Sense = Literal["at least", "at most"]


class NotApplicable(Exception):
    """The rule has nothing to say on this rig; the text says why."""


class Absent(NotApplicable):
    """A table that the rule takes is not in the file.

    Parameters
    ----------
    section
        Name of the table, ``"brake"``; a file can demand it (``limits.demand``).
    """

    def __init__(self, section: str) -> None:
        super().__init__(f"the file has no [{section}]")
        self.section = section


class CannotTell(Exception):
    """The rule applies but its numbers cannot be had; the text says why."""


@dataclass(frozen=True, slots=True)
class Measured:
    """A value against its limit, in the SI unit of the rule's role.

    Attributes
    ----------
    value, limit
        The two numbers; a limit of None is filled in from the house limits.
    subject
        What it is about, ``"casing, 2200 m"``; empty if it is the rig.
    source
        Who asks for this limit, where the rule has several sources; else that of the rule.
    inputs
        What it rests on, name to text with unit.
    reason
        A remark that is printed beside the numbers.
    outside_validity
        True if a model behind the value was asked outside its published range.
    """

    value: float
    limit: float | None
    subject: str = ""
    source: str = ""
    inputs: Mapping[str, str] = field(default_factory=dict)
    reason: str = ""
    outside_validity: bool = False


@dataclass(frozen=True, slots=True)
class Rule:
    """One thing that is checked.

    Attributes
    ----------
    id
        Subject and name, ``"line.design_factor"``; expressions of own rules use it too.
    title
        One line for tables.
    compares
        What with what.
    sense
        ``"at least"`` or ``"at most"``: how the value must lie to the limit.
    role
        Role of both, as in the list of roles; ``"number"`` for ratios.
    severity
        How bad it is if broken.
    source, standing
        Who asks for it: publication, clause, edition; ``"published"``, ``"from memory"``,
        ``"derived"``, ``"common practice"`` or ``"house limit"``.
    how
        How the value is computed, with the functions of ropewalk that do it.
    measure
        From the facts of a rig to measured values. May raise `Absent`, `NotApplicable`,
        `CannotTell`; an error of ropewalk counts as `CannotTell`.
    tightens
        True if a house limit may only be stricter than the limit of the source.
    """

    id: str
    title: str
    compares: str
    sense: Sense
    role: str
    severity: Severity
    source: str
    standing: str
    how: str
    measure: Callable[[Facts], Iterable[Measured]] = field(repr=False)
    tightens: bool = True

    def __reduce__(self) -> tuple[Any, ...]:
        # What measures may be a closure, which no other process can be sent: looked up there.
        from ropewalk.check.rules import BY_ID

        if BY_ID.get(self.id) is self:
            return _known, (self.id,)
        said = {f.name: getattr(self, f.name) for f in fields(self) if f.name != "measure"}
        return _restored, (said,)

    @property
    def unit(self) -> str:
        """SI unit of value and limit; empty for ratios and counts."""
        from ropewalk._signature import ROLES

        return ROLES[self.role].si_unit

    @property
    def subject(self) -> str:
        """First part of the id."""
        return self.id.partition(".")[0]


def measures_nothing(_: Facts) -> Iterable[Measured]:
    """Measure of a rule that is evaluated elsewhere: own rules, and rules from other processes."""
    return ()


def _known(rule_id: str) -> Rule:
    from ropewalk.check.rules import BY_ID

    return BY_ID[rule_id]


def _restored(said: dict[str, Any]) -> Rule:
    return Rule(**said, measure=measures_nothing)
