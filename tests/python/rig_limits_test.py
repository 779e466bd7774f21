"""Limits of the house and rules of the house, from the file to the verdict."""

from __future__ import annotations

import pickle

import pytest

import ropewalk as rw
from ropewalk.check import Status

MINIMAL = rw.rig.example("minimal").read_text(encoding="utf-8")


@pytest.fixture
def checked(tmp_path):
    def check(limits):
        path = tmp_path / "rig.toml"
        path.write_text(MINIMAL + limits, encoding="utf-8")
        return {v.rule.id: v for v in rw.check.check_rig(rw.load_rig(path))}

    return check


def test_the_house_may_ask_for_more_than_the_standard(checked):
    plain = checked("")["line.design_factor"]
    assert plain.limit == 3.0
    strict = checked('[limits.house]\n"line.design_factor" = 4\n')["line.design_factor"]
    assert (strict.status, strict.limit, strict.value) == (Status.FAIL, 4.0, plain.value)


def test_the_house_may_not_ask_for_less(checked):
    weak = checked('[limits.house]\n"line.design_factor" = 2\n')["line.design_factor"]
    assert (weak.status, weak.limit) == (Status.PASS, 3.0)


@pytest.mark.parametrize(
    ("limits", "text"),
    [
        ('[limits.house]\n"line.design_facto" = 4\n', "did you mean 'line.design_factor'"),
        ('[limits.house]\n"line.design_factor" = "4 m"\n', "line.design_factor"),
        ('[limits.house]\n"line.length" = 4\n', "line.length"),
        ('[limits.house]\n"line.design_factor" = false\n', "must hold stays on"),
        ('[limits.house]\n"line.design_factor" = true\n', "must be a number"),
        ('[limits.house]\n"line.design_factor" = []\n', "must be a number"),
        ('[limits.house]\n"line.design_factor" = nan\n', "must be a number"),
        ('[limits.house]\n"line.design_factor" = -inf\n', "must be a number"),
        ('[limits.house]\n"line.design_factor" = "nan"\n', "must be a number"),
    ],
)
def test_a_wrong_house_limit_is_an_error(checked, limits, text):
    with pytest.raises(rw.rig.RigFileError, match=text):
        checked(limits)


RULE = """
[[limits.rule]]
id = "house.reserve"
title = "Reserve of the line"
expression = "line.design_factor - 3"
{bound}
severity = "should"
source = "house rule of this example"
"""


@pytest.mark.parametrize(
    ("bound", "status"),
    [
        ("at_least = 0.5", Status.PASS),
        ("at_least = 1.5", Status.WARN),
        ("at_most = 0.5", Status.WARN),
        ('at_least = "1 m"', Status.NOT_COMPUTED),
    ],
)
def test_a_rule_of_the_house_has_a_verdict_like_any_other(checked, bound, status):
    found = checked(RULE.format(bound=bound))
    verdict = found["house.reserve"]
    assert verdict.status is status
    assert verdict.source == "house rule of this example"
    if status is not Status.NOT_COMPUTED:
        assert verdict.value == pytest.approx(found["line.design_factor"].value - 3.0, rel=1e-12)


@pytest.mark.parametrize("bound", ["", "at_least = 1\nat_most = 2"])
def test_a_rule_of_the_house_has_one_bound(checked, bound):
    with pytest.raises(rw.rig.RigFileError, match="one of at_least and at_most"):
        checked(RULE.format(bound=bound))


def test_two_rules_of_the_house_have_two_names(checked):
    with pytest.raises(rw.rig.RigFileError, match="once"):
        checked(RULE.format(bound="at_least = 1") * 2)


def test_a_table_that_is_demanded_must_be_there(checked):
    assert checked("")["line.length"].status is Status.NOT_APPLICABLE
    assert checked('demand = ["line"]\n')["line.length"].status is Status.NOT_COMPUTED


@pytest.mark.parametrize(
    ("table", "rule"),
    [
        ("drawworks.motors", "drawworks.pull"),
        ("drum.spooling", "drum.fleet_angle"),
        ("drum.fastening", "drum.end_holding"),
    ],
)
def test_a_table_inside_another_can_be_demanded(checked, table, rule):
    assert checked("")[rule].status is Status.NOT_APPLICABLE
    found = checked(f'demand = ["{table}"]\n')
    assert found[rule].status is Status.NOT_COMPUTED
    assert found["brake.emergency"].status is Status.NOT_APPLICABLE


@pytest.mark.parametrize(
    ("table", "close"),
    [
        ("brakes", "brake"),
        ("drawworks.motor", "drawworks.motors"),
        ("drum.spool", "drum.spooling"),
        ("operation[1]", "operation"),
    ],
)
def test_only_tables_of_rig_files_can_be_demanded(checked, table, close):
    with pytest.raises(rw.rig.RigFileError, match=f"did you mean {close!r}"):
        checked(f'demand = ["{table}"]\n')


def test_limits_travel_to_workers(tmp_path):
    path = tmp_path / "rig.toml"
    path.write_text(MINIMAL + RULE.format(bound="at_least = 1"), encoding="utf-8")
    rig = rw.load_rig(path)
    assert pickle.loads(pickle.dumps(rig)).limits == rig.limits


def test_a_rule_of_the_house_takes_no_name_of_ropewalk(checked):
    shadow = RULE.format(bound="at_least = 0").replace("house.reserve", "line.design_factor")
    with pytest.raises(rw.rig.RigFileError, match="is a rule of ropewalk already"):
        checked(shadow)


def test_text_is_no_number(checked):
    said = RULE.format(bound="at_least = 1").replace("line.design_factor - 3", "'5'")
    assert checked(said)["house.reserve"].status is Status.NOT_COMPUTED


def test_one_rule_can_be_checked_beside_a_house_limit_of_another(tmp_path):
    path = tmp_path / "rig.toml"
    path.write_text(MINIMAL + '[limits.house]\n"line.length" = "500 m"\n', encoding="utf-8")
    rig = rw.load_rig(path)
    (verdict,) = rw.check.check_rig(rig, [rw.check.rule("line.design_factor")])
    assert verdict.rule.id == "line.design_factor"


def test_a_weaker_house_limit_is_told_with_its_unit(checked):
    path = '[limits.house]\n"suspension.rating" = "9000 kN"\n'
    assert "9000 kN is weaker" in checked(path)["suspension.rating"].reason


@pytest.mark.parametrize(
    ("value", "limit", "sense", "inside"),
    [
        (float("-inf"), float("inf"), "at least", False),
        (float("inf"), float("-inf"), "at most", False),
        (float("inf"), float("inf"), "at most", True),
    ],
)
def test_two_infinities_are_not_the_same_number(value, limit, sense, inside):
    from ropewalk.check.verdict import margin

    assert (margin(value, limit, sense) >= 0.0) is inside


@pytest.mark.parametrize(
    ("table", "rule"),
    [
        ("stuck", "limits.demand"),
        ("life", "limits.demand"),
        ("operation", "limits.demand"),
        ("mud", "limits.demand"),
        ("inspection", "rope.corrosion"),
    ],
)
def test_a_table_that_is_demanded_never_passes_unseen(checked, table, rule):
    assert "limits.demand" not in checked("")
    verdict = checked(f'demand = ["{table}"]\n')[rule]
    assert (verdict.status, verdict.broken) == (Status.NOT_COMPUTED, True)
    assert f"has no [{table}]" in verdict.reason


def test_a_plan_that_is_demanded_is_missed_where_no_load_is_known(checked, tmp_path):
    path = tmp_path / "rig.toml"
    lines = [one for one in MINIMAL.splitlines() if not one.startswith("hook_load")]
    path.write_text("\n".join([*lines, 'demand = ["operation"]', ""]), encoding="utf-8")
    verdicts = rw.check.check_rig(rw.load_rig(path))
    found = {one.rule.id: one for one in verdicts}
    assert found["line.design_factor"].status is Status.NOT_COMPUTED
    assert found["suspension.rating"].status is Status.NOT_COMPUTED
