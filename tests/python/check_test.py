"""Checks: verdicts, margins, house limits, own rules."""

from __future__ import annotations

from dataclasses import replace

import pytest

import ropewalk as rw
from ropewalk.check import (
    Absent,
    CannotTell,
    Facts,
    Measured,
    NotApplicable,
    Rule,
    Severity,
    Status,
)
from ropewalk.check.expression import evaluate
from ropewalk.check.house import HouseLimits, worst_results
from ropewalk.check.run import judge
from ropewalk.check.verdict import margin
from ropewalk.rig import OwnRule


@pytest.fixture(scope="module")
def rig():
    return rw.load_rig(rw.rig.example("rig7"))


def made(measure, sense="at least", severity=Severity.MUST, role="number"):
    return Rule(
        "line.made_up",
        "made up",
        "a with b",
        sense,
        role,
        severity,
        "nobody",
        "derived",
        "",
        measure,
    )


@pytest.mark.parametrize(
    ("value", "limit", "sense", "expected"),
    [
        (3.0, 2.0, "at least", 0.5),
        (1.0, 2.0, "at least", -0.5),
        (1.0, 2.0, "at most", 0.5),
        (3.0, 2.0, "at most", -0.5),
        (2.0, 2.0, "at most", 0.0),
        (0.1 + 0.2, 0.3, "at most", 0.0),
        (2.0, 0.0, "at most", -2.0),
        (-1.0, -2.0, "at least", 0.5),
    ],
)
def test_margin_is_positive_inside(value, limit, sense, expected):
    assert margin(value, limit, sense) == pytest.approx(expected)


@pytest.mark.parametrize(
    ("severity", "status"),
    [(Severity.MUST, Status.FAIL), (Severity.SHOULD, Status.WARN), (Severity.NOTE, Status.WARN)],
)
def test_a_broken_rule_is_as_bad_as_its_severity(rig, severity, status):
    rule = made(lambda facts: [Measured(1.0, 2.0)], severity=severity)
    (verdict,) = judge(rule, Facts(rig))
    assert verdict.status is status
    assert verdict.broken


def test_on_the_limit_is_inside(rig):
    (verdict,) = judge(made(lambda facts: [Measured(2.0, 2.0)]), Facts(rig))
    assert verdict.status is Status.PASS
    assert not verdict.broken


def raising(error):
    def measure(facts):
        raise error

    return measure


@pytest.mark.parametrize(
    ("error", "status"),
    [
        (NotApplicable("no"), Status.NOT_APPLICABLE),
        (CannotTell("no"), Status.NOT_COMPUTED),
        (rw.RopewalkError("no"), Status.NOT_COMPUTED),
    ],
)
def test_what_cannot_be_computed_never_passes(rig, error, status):
    (verdict,) = judge(made(raising(error)), Facts(rig))
    assert verdict.status is status
    assert verdict.reason == "no"


def test_a_value_that_is_no_number_never_passes(rig):
    (verdict,) = judge(made(lambda facts: [Measured(float("nan"), 2.0)]), Facts(rig))
    assert verdict.status is Status.NOT_COMPUTED


def test_a_missing_table_is_not_applicable_unless_demanded(rig):
    rule = made(raising(Absent("brake")))
    assert judge(rule, Facts(rig))[0].status is Status.NOT_APPLICABLE
    assert judge(rule, Facts(rig), frozenset({"brake"}))[0].status is Status.NOT_COMPUTED


def test_a_stricter_house_limit_holds_and_a_weaker_one_does_not(rig):
    rule = made(lambda facts: [Measured(3.0, 2.0)])
    found = judge(rule, Facts(rig))
    (strict,) = HouseLimits({rule.id: 4.0}).apply(rule, found)
    assert (strict.status, strict.limit) == (Status.FAIL, 4.0)
    assert "house" in strict.source
    (weak,) = HouseLimits({rule.id: 1.0}).apply(rule, found)
    assert (weak.status, weak.limit) == (Status.PASS, 2.0)
    assert "weaker" in weak.reason


def test_facts_are_computed_once_even_if_they_fail(rig):
    facts = Facts(rig)
    calls = []

    def compute():
        calls.append(1)
        raise rw.RopewalkError("no")

    for _ in range(2):
        with pytest.raises(rw.RopewalkError):
            facts.once("it", compute)
    assert len(calls) == 1


def own(expression, limit, sense="at least"):
    return OwnRule("house.made_up", "made up", expression, sense, limit, "must", "the house")


def test_an_own_rule_is_an_expression_over_results(rig):
    found = rw.check.check_rig(rig)
    results = worst_results(found)
    factor = min(v.value for v in found if v.rule.id == "line.design_factor")
    verdict = evaluate(own("line.design_factor * 2", 1.0), results)
    assert verdict.status is Status.PASS
    assert verdict.value == pytest.approx(2.0 * factor, rel=1e-12)
    assert evaluate(own("line.length", "1 km", "at most"), results).status is Status.FAIL
    assert evaluate(own("line.length", "1 kN"), results).status is Status.NOT_COMPUTED


@pytest.mark.parametrize(
    "expression",
    [
        "__import__('os').getcwd()",
        "line.__class__.__mro__",
        "(lambda: 1)()",
        "open('x')",
        "9**9**9**9",
        "'a' * 10**9",
        "line.nothing",
        "1 +",
        "[x for x in (1,)]",
        "1 / 0",
        # Gigabytes of text, and a whole number that takes minutes.
        "'%9999999999d' % 1",
        "'x' * 3",
        "3999999**3999999",
        "line.keys",
        "max(line)",
        "line.design_factor.real",
        "min(3.0, key=abs)",
    ],
)
def test_an_own_rule_cannot_do_anything_else(rig, expression):
    results = {"line": {"design_factor": (3.0, "number")}}
    assert evaluate(own(expression, 1.0), results).status is Status.NOT_COMPUTED


def test_every_rule_says_who_asks_for_it():
    ids = [rule.id for rule in rw.check.RULES]
    assert len(ids) == len(set(ids))
    for rule in rw.check.RULES:
        subject, _, name = rule.id.partition(".")
        assert subject.isidentifier()
        assert name.isidentifier()
        assert rule.title
        assert rule.compares
        assert rule.source
        assert rule.how
        assert rule.standing in (
            "published",
            "from memory",
            "derived",
            "common practice",
            "house limit",
        )
        assert rule.severity in Severity


def test_an_overloaded_line_fails(rig):
    heavy = replace(rig, rope=rw.Rope("6x19S IWRC", grade="EIPS", diameter="0.875 in"))
    verdicts = [v for v in rw.check.check_rig(heavy) if v.rule.id == "line.design_factor"]
    assert {v.status for v in verdicts} == {Status.FAIL}


@pytest.mark.parametrize(
    ("value", "expected"),
    [
        (1.375 * 0.0254, "34.92 mm"),
        (-0.2, "-200 mm"),
        (1.0, "1 m"),
        (0.0, "0 m"),
        (-2.348, "-2.348 m"),
        (45.5 * 0.0254, "1.156 m"),
    ],
)
def test_short_lengths_read_in_millimeters(rig, value, expected):
    """Inches by 25.4 mm, NIST SP 811 (2008), app. B.8."""
    assert Facts(rig).text(value, "length") == expected
