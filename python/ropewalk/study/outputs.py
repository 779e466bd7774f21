"""What a study computes for each of its rigs: results of rules, named numbers, own functions."""

from __future__ import annotations

import difflib
import functools
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, Literal

from ropewalk._border import Quantity
from ropewalk._signature import ROLES
from ropewalk._units import UnreadableTextError, read_unit
from ropewalk.check.rule import CannotTell, NotApplicable, Rule
from ropewalk.check.run import verdict_of
from ropewalk.check.verdict import Status as Verdicts
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts
    from ropewalk.check.verdict import Verdict
    from ropewalk.rig.limits_sections import OwnRuleSection
    from ropewalk.study.base import Base

__all__ = ["Found", "Output", "output", "outputs_of"]


@dataclass(frozen=True, slots=True)
class Found:
    """A number that needs a word.

    Attributes
    ----------
    value
        The number.
    reason
        The word.
    outside_range
        True if a model behind it was asked outside its published range.
    """

    value: float
    reason: str = ""
    outside_range: bool = False


@dataclass(frozen=True, slots=True)
class Output:
    """One number of a rig.

    A function of your own becomes an output with its unit:
    ``Output("travel", "m", lambda rig: rig.travel)``. To run in other processes it must be found by
    its name in a module that they can import.

    Attributes
    ----------
    name
        Name of the variable.
    unit
        Unit of the numbers the function returns, and of the variable; ``"1"`` without one. A
        quantity the function returns is converted.
    function
        From a `ropewalk.rig.Rig`, whose numbers are SI, to the number.
    long_name
        One line that says what it is.
    takes
        ``"facts"`` for outputs of ropewalk, which share what they compute.
    """

    name: str
    unit: str
    function: Callable[[Any], Any] = field(repr=False)
    long_name: str = ""
    takes: Literal["rig", "facts"] = field(default="rig", repr=False)

    def __post_init__(self) -> None:
        where = "study.Output"
        if not isinstance(self.name, str) or not self.name or "/" in self.name:
            text = f"name must be text without /, got {self.name!r}"
            raise InadmissibleError(f"{where}(): {text}", where, "name")
        if not callable(self.function):
            text = f"{self.name}: function must be a function of a rig, got {self.function!r}"
            raise InadmissibleError(f"{where}(): {text}", where, "function")
        try:
            read_unit(self.unit if self.unit != "1" else "")
        except UnreadableTextError as reason:
            raise UnitError(f"{where}(): {self.name}: {reason}", where, "unit") from None

    def of(self, facts: Facts) -> Found:
        """Return the number of a rig; raises what its function does."""
        found = self.function(facts if self.takes == "facts" else facts.rig)
        if isinstance(found, Found):
            return found
        if hasattr(found, "unit_items"):
            return Found(_in_unit(self.name, found, self.unit))
        return Found(float(found))


def _in_unit(name: str, value: Quantity, unit: str) -> float:
    if not value.is_compatible_with("" if unit == "1" else unit):
        text = f"its function returns {value:~}, which is no value in {unit}"
        raise UnitError(f"{name}: {text}", name, "function")
    return float(value.m_as("" if unit == "1" else unit))


def outputs_of(outputs: Any, where: str = "sweep", base: Base | None = None) -> tuple[Output, ...]:
    """Return the outputs of a study.

    Parameters
    ----------
    outputs
        Names, see `output`; an `Output`; or a list of both.
    where
        Function that asks.
    base
        The rig file, if it may have rules of its own.

    Raises
    ------
    UnknownEntryError
        If a name is wrong; the message offers the nearest.
    InadmissibleError
        If there is none, or two have one name.

    Examples
    --------
    >>> [one.unit for one in outputs_of(["design_factor", "margin.line.length", "line.length"])]
    ['1', '1', 'm']
    """
    each = [outputs] if isinstance(outputs, (str, Output)) else list(outputs)
    found = tuple(one if isinstance(one, Output) else output(one, where, base) for one in each)
    names = [one.name for one in found]
    if not names:
        raise InadmissibleError(f"{where}(): outputs: one at least", where, "outputs")
    if twice := sorted({name for name in names if names.count(name) > 1}):
        text = f"outputs: {twice[0]!r} is there twice"
        raise InadmissibleError(f"{where}(): {text}", where, "outputs")
    return found


#: What a rule gives besides its value.
_OF_A_RULE = {
    "limit": "limit of: ",
    "margin": "distance to the limit as a share of it, negative beyond: ",
}


def output(name: str, where: str = "sweep", base: Base | None = None) -> Output:
    """Return the output of this name.

    Parameters
    ----------
    name
        A named number, ``"line_life"``, see `ropewalk.study.NAMED`; the id of a rule,
        ``"line.design_factor"``, for its value, ``"limit.line.design_factor"`` and
        ``"margin.line.design_factor"`` for the others. Of several verdicts of a rule it is the one
        with the least margin.
    where
        Function that asks.
    base
        The rig file, whose own rules have their id as a name.

    Raises
    ------
    UnknownEntryError
        If there is none; the message offers the nearest.

    Examples
    --------
    >>> output("margin.line.design_factor").long_name
    'distance to the limit as a share of it, negative beyond: Design factor of the drilling line'
    """
    from ropewalk.check.rules import BY_ID
    from ropewalk.study.named import NAMED

    if not isinstance(name, str):
        text = f"outputs are names or study.Output, got {name!r}"
        raise UnitError(f"{where}(): {text}", where, "outputs")
    if name in NAMED:
        return NAMED[name]
    what, _, rule_id = name.partition(".")
    if what not in _OF_A_RULE:
        what, rule_id = "value", name
    if rule_id in BY_ID:
        rule = BY_ID[rule_id]
        return _of_rule(name, what, rule.title, rule.unit, functools.partial(_result, what, rule))
    own = {one.id: one for one in base.file.limits.rule} if base is not None else {}
    if rule_id in own:
        title, unit = own[rule_id].title, _unit_of_own(own[rule_id])
        return _of_rule(name, what, title, unit, functools.partial(_own_result, what, rule_id))
    known = [*NAMED, *BY_ID, *own, *(f"margin.{one}" for one in (*BY_ID, *own))]
    close = difflib.get_close_matches(name[:80], known, n=3, cutoff=0.5)
    hint = f"; did you mean {' or '.join(map(repr, close))}?" if close else ""
    raise UnknownEntryError(f"{where}(): no output {name[:80]!r}{hint}", where, "outputs")


def _of_rule(
    name: str, what: str, title: str, unit: str, function: Callable[[Facts], Found]
) -> Output:
    unit = "1" if what == "margin" else unit or "1"
    return Output(name, unit, function, _OF_A_RULE.get(what, "") + title, "facts")


def _result(what: str, rule: Rule, facts: Facts) -> Found:
    """Value, limit or margin of a rule, of its verdict with the least margin."""
    verdict, outside = facts.once(f"worst {rule.id}", lambda: _worst(rule, facts))
    return _number_of(what, verdict, outside)


def _number_of(what: str, verdict: Verdict, outside: bool) -> Found:
    if verdict.status is Verdicts.NOT_COMPUTED:
        raise CannotTell(verdict.reason)
    number = getattr(verdict, what)
    if number is None:
        raise NotApplicable(verdict.reason)
    return Found(float(number), verdict.reason if outside else "", outside)


def _worst(rule: Rule, facts: Facts) -> tuple[Verdict, bool]:
    """The verdict with the least margin, and whether a model behind it was outside its range."""
    from ropewalk.check.house import house_limits

    measured = list(rule.measure(facts))
    if not measured:
        raise NotApplicable("nothing on this rig to hold against it")
    limits = facts.once("house limits", lambda: house_limits(facts.rig, ()))
    found = limits.apply(rule, [verdict_of(rule, one) for one in measured])
    if len(found) < len(measured):  # the file switches the rule off
        return found[0], False
    first = 1.0 if rule.sense == "at least" else -1.0

    def rank(place: int) -> tuple[int, float]:
        one = found[place]
        if one.status is Verdicts.NOT_COMPUTED:  # never counts as inside
            return 0, 0.0
        if one.margin is not None:
            return 1, one.margin
        return 2, first * (one.value or 0.0)

    place = min(range(len(found)), key=rank)
    return found[place], measured[place].outside_validity


def _own_result(what: str, rule_id: str, facts: Facts) -> Found:
    """Value, limit or margin of a rule that the file adds; it may name results of all others."""
    from ropewalk.check.run import check_rig

    verdicts = facts.once("all verdicts", lambda: check_rig(facts.rig))
    verdict = next(one for one in verdicts if one.rule.id == rule_id)
    return _number_of(what, verdict, outside=False)


def _unit_of_own(own: OwnRuleSection) -> str:
    from ropewalk._units import Q
    from ropewalk.check.expression import role_of

    limit = own.at_least if own.at_least is not None else own.at_most
    return ROLES[role_of(Q(limit) if isinstance(limit, str) else limit)].si_unit
