"""What a change did: verdicts matched, margins before and after."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from check_rigs import FEW_LINES, WRONG, report, verdict, write_rig

from ropewalk.check import Comparison, Severity, Status, Verdict, check_rig, compare, compare_files
from ropewalk.check.formats.comparison import comparison_text
from ropewalk.rig import example, load_rig

PASS = verdict(Status.PASS, value=3.0, limit=2.0)
FAIL = verdict(Status.FAIL, value=1.0, limit=2.0)
WARN = verdict(Status.WARN, Severity.SHOULD, value=1.0, limit=2.0)
LOST = verdict(Status.NOT_COMPUTED)
NONE = verdict(Status.NOT_APPLICABLE)


@pytest.mark.parametrize(
    ("old", "new", "what", "outcome"),
    [
        (PASS, PASS, "same", 0),
        (PASS, FAIL, "broken now", 1),
        (PASS, WARN, "broken now", 1),
        (PASS, LOST, "broken now", 1),
        (NONE, FAIL, "broken now", 1),
        (None, FAIL, "broken now", 1),
        (None, PASS, "only now", 0),
        (PASS, None, "no longer checked", 1),
        (FAIL, PASS, "inside now", 0),
        (LOST, PASS, "inside now", 0),
        (FAIL, FAIL, "same", 0),
        (FAIL, LOST, "changed", 0),
        (PASS, NONE, "no longer checked", 1),
        (FAIL, NONE, "no longer checked", 1),
        (FAIL, None, "no longer checked", 1),
        (LOST, FAIL, "broken now", 1),
        (NONE, None, "only before", 0),
        (NONE, NONE, "same", 0),
        (PASS, verdict(Status.PASS, value=2.5, limit=2.0), "less margin", 0),
        (PASS, verdict(Status.PASS, value=3.0, limit=1.0), "more margin", 0),
        (PASS, verdict(Status.PASS, value=6.0, limit=4.0), "changed", 0),
    ],
)
def test_what_a_change_is(
    old: Verdict | None, new: Verdict | None, what: str, outcome: int
) -> None:
    found = compare(*([] if one is None else [one] for one in (old, new)))
    assert [one.what for one in found] == [what]
    both = Comparison(report(), report(), found)
    assert both.outcome == outcome


def test_one_operation_less_is_not_a_rule_less() -> None:
    found = compare(named("a", "b", "c"), named("a"))
    assert [one.what for one in found] == ["same", "only before", "only before"]


def test_a_table_taken_out_of_the_file_does_not_mend_it(tmp_path: Path) -> None:
    weak = ('hook_load_rating = "650000 lbf"', 'hook_load_rating = "65000 lbf"')
    old = write_rig(tmp_path / "old.toml", weak)
    text = old.read_text(encoding="utf-8")
    mast = text[text.index("[mast]") : text.index("# What hangs below")]
    new = tmp_path / "new.toml"
    new.write_text(text.replace(mast, ""), encoding="utf-8")
    found = compare_files(old, new)
    (load,) = [one for one in found.changes if one.rule.id == "mast.load"]
    assert (load.what, load.better, found.outcome) == ("no longer checked", False, 1)
    assert "no longer checked" in comparison_text(found)


def named(*subjects: str) -> list[Verdict]:
    return [verdict(Status.PASS, subject=one, value=3.0, limit=2.0) for one in subjects]


def pairs(old: list[Verdict], new: list[Verdict]) -> list[tuple[str | None, str | None]]:
    return [
        tuple(None if side is None else side.subject for side in (one.old, one.new))  # type: ignore[misc]
        for one in compare(old, new)
    ]


def test_verdicts_are_matched_by_rule_and_subject() -> None:
    assert pairs(named("a", "b"), named("b", "a")) == [("b", "b"), ("a", "a")]
    assert pairs(named("a", "b", "c"), named("c", "d", "e")) == [
        ("c", "c"),
        (None, "d"),
        (None, "e"),
        ("a", None),
        ("b", None),
    ]
    other = [verdict(rule="brake.made_up", subject="a")]
    assert pairs(named("a"), other) == [(None, "a"), ("a", None)]


def test_the_same_subject_twice_is_matched_in_order() -> None:
    assert pairs(named("a", "a"), named("a")) == [("a", "a"), ("a", None)]


def test_a_renamed_subject_is_matched_if_it_is_the_only_one() -> None:
    (one,) = compare(named("casing, 2200 m"), named("casing, 2300 m"))
    assert one.subject == "casing, 2200 m → casing, 2300 m"
    assert one.what == "changed"


def test_fewer_lines_cost_margin_as_statics_says(tmp_path: Path) -> None:
    """Without friction the fast line of N lines has 1/N of the load: API RP 9B, efficiency 1.

    Friction takes less on fewer sheaves, so the ratio of the margins lies between those bounds:
    efficiencies of 10 and 4 lines on roller bearings are 0.811 and 0.908 (API RP 9B).
    """
    old, new = write_rig(tmp_path / "old.toml"), write_rig(tmp_path / "new.toml", FEW_LINES)
    found = compare_files(old, new)
    assert found.outcome == 1
    factors = [one for one in found.changes if one.rule.id == "line.design_factor"]
    assert factors
    for one in factors:
        assert one.old is not None
        assert one.new is not None
        assert one.new.value / one.old.value == pytest.approx(4 * 0.908 / (10 * 0.811), rel=2e-3)
        assert one.worse


def test_other_way_round_is_better(tmp_path: Path) -> None:
    old, new = write_rig(tmp_path / "old.toml", FEW_LINES), write_rig(tmp_path / "new.toml")
    found = compare_files(old, new)
    assert found.outcome == 0
    assert any(one.better for one in found.changes)


def test_a_file_that_cannot_be_used(tmp_path: Path) -> None:
    good, bad = write_rig(tmp_path / "good.toml"), write_rig(tmp_path / "bad.toml", WRONG)
    for pair in ((good, bad), (bad, good), (good, tmp_path / "no.toml")):
        found = compare_files(*pair)
        assert found.outcome == 2
        for form in ("table", "json", "markdown"):
            assert "no.toml" in comparison_text(found, form) or "lines" in comparison_text(  # type: ignore[arg-type]
                found,
                form,  # type: ignore[arg-type]
            )


def test_a_rig_does_not_differ_from_itself() -> None:
    verdicts = check_rig(load_rig(example("rig7")))
    found = compare(verdicts, verdicts)
    assert len(found) == len(verdicts)
    assert {one.what for one in found} == {"same"}


def test_every_form_has_old_and_new(tmp_path: Path) -> None:
    old, new = write_rig(tmp_path / "old.toml"), write_rig(tmp_path / "new.toml", FEW_LINES)
    found = compare_files(old, new)
    for form in ("table", "markdown"):
        text = comparison_text(found, form)  # type: ignore[arg-type]
        assert "4.621 → 2.068" in text  # as `test_fewer_lines_cost_margin…` bounds them
        assert "+54 % → -31 %" in text
        assert "neither inspection" in text
    data = json.loads(comparison_text(found, "json"))
    assert data["outcome"] == 1
    record = next(one for one in data["changes"] if one["rule"] == "line.design_factor")
    assert record["what"] == "broken now"
    assert record["old"]["value"] > record["old"]["limit"] > record["new"]["value"]


def test_what_did_not_change_is_shown_if_asked() -> None:
    found = Comparison(report(), report(), compare([PASS, FAIL], [PASS, FAIL]))
    assert "same" not in comparison_text(found)
    assert comparison_text(found, show_all=True).count("same ") == 2
