"""Rules for what an inspection found on the line."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from rule_rigs import INCH, load_of_fast_line, rig7, status, verdict

import ropewalk as rw


def seen(construction: str = "6x19S IWRC", **found: Any) -> Any:
    """Rig 7 with a 1-3/8 in line of a construction, and what was found on it."""
    rope = rw.Rope(construction, grade="EIPS", diameter="1.375 in")
    return replace(rig7(), rope=rope, inspection=rw.rig.Inspection(**found))


#: Rule, finding, a value inside, the last that is kept, the first that is out, what else is given.
FINDINGS: list[tuple[str, str, Any, Any, Any, dict[str, Any]]] = [
    # Wyoming drilling rules 6-6(b): six broken wires in one lay of 6x19.
    ("broken_in_lay", "broken_in_lay", 0, 5, 6, {}),
    # 29 CFR 1926.1413(a)(2)(ii)(A)(1): three in one strand of one lay.
    ("broken_in_strand", "broken_in_strand", 0, 2, 3, {}),
    # 30 CFR 56.19024(a): more than 5 % of 114 wires, 5.7; more than 15 % of 19, 2.85.
    ("broken_of_all", "broken_in_lay", 0, 5, 6, {}),
    ("broken_of_strand", "broken_in_strand", 0, 2, 3, {}),
    # ISO 4309: a Seale rope of 114 wires takes the row of 51 to 75, category 2.
    ("broken_in_6d", "broken_in_6d", 0, 2, 3, {"lay": "regular"}),
    ("broken_in_30d", "broken_in_30d", 0, 5, 6, {"lay": "regular"}),
    ("broken_in_6d", "broken_in_6d", 0, 1, 2, {"lay": "lang"}),
    ("broken_in_30d", "broken_in_30d", 0, 2, 3, {"lay": "lang"}),
    # 30 CFR 56.19024(b), (c), (h); (d), (e), (f).
    ("valley_breaks", "valley_breaks", 0, 1, 2, {}),
    ("outer_wire_loss", "outer_wire_loss", 0.2, 1.0 / 3.0, 0.34, {}),
    ("strength_loss", "strength_loss", 0.05, 0.10, 0.101, {}),
    ("corrosion", "corrosion", False, False, True, {}),
    ("distortion", "distortion", False, False, True, {}),
    ("heat_damage", "heat_damage", False, False, True, {}),
]


@pytest.mark.parametrize(("name", "key", "inside", "kept", "out", "given"), FINDINGS)
def test_findings_against_published_numbers(
    name: str, key: str, inside: Any, kept: Any, out: Any, given: dict[str, Any]
) -> None:
    rule_id = f"rope.{name}"
    assert status(seen(**{key: inside}, **given), rule_id) == "pass"
    on_limit = verdict(seen(**{key: kept}, **given), rule_id)
    assert (str(on_limit.status), on_limit.margin) == ("pass", 0.0)
    severe = rw.check.rule(rule_id).severity is rw.check.Severity.MUST
    assert status(seen(**{key: out}, **given), rule_id) == ("fail" if severe else "warn")


@pytest.mark.parametrize("rule_id", [r.id for r in rw.check.RULES if r.subject == "rope"])
def test_what_was_not_looked_at_does_not_pass(rule_id: str) -> None:
    bare = verdict(replace(rig7(), inspection=None), rule_id)
    assert (str(bare.status), bare.reason) == ("not applicable", "the file has no [inspection]")
    empty = verdict(seen(), rule_id)
    assert str(empty.status) == "not applicable"
    assert "not looked at" in empty.reason


@pytest.mark.parametrize(
    ("construction", "category", "in_6d", "in_30d"),
    [
        # The examples of ISO 4309: 6x19S, 114 wires, two rows up; 6x25F, 114 without fillers.
        ("6x19S IWRC", 2, 3, 6),
        ("6x25FW IWRC", 4, 5, 10),
    ],
)
def test_rope_categories_of_the_standard(
    construction: str, category: int, in_6d: int, in_30d: int
) -> None:
    for key, out in (("broken_in_6d", in_6d), ("broken_in_30d", in_30d)):
        found = verdict(seen(construction, lay="regular", **{key: out}), f"rope.{key}")
        assert found.inputs["rope category"] == str(category)
        assert (str(found.status), found.limit) == ("warn", out - 1)
        assert status(seen(construction, lay="regular", **{key: out - 1}), f"rope.{key}") == "pass"


def test_a_category_of_the_maker_comes_first() -> None:
    """ISO 4309, category 9 for 216 wires of 6x36WS: 9 on 6 d, 18 on 30 d."""
    found = {"lay": "regular", "broken_in_6d": 9}
    asked = verdict(seen("6x36WS IWRC", **found), "rope.broken_in_6d")
    assert str(asked.status) == "not computed"
    assert "rope_category" in asked.reason
    assert status(seen("6x36WS IWRC", rope_category=9, **found), "rope.broken_in_6d") == "warn"
    assert status(seen("6x36WS IWRC", rope_category=10, **found), "rope.broken_in_6d") == "pass"
    none = verdict(seen(rope_category=40, **found), "rope.broken_in_6d")
    assert str(none.status) == "not computed"
    assert "1 to 12" in none.reason


@pytest.mark.parametrize("key", ["broken_in_6d", "broken_in_30d"])
def test_the_lay_is_not_guessed(key: str) -> None:
    assert status(seen(**{key: 0}), f"rope.{key}") == "not computed"


@pytest.mark.parametrize(
    ("rule_id", "found"),
    [
        ("rope.broken_of_all", {"broken_in_lay": 1}),
        ("rope.broken_of_strand", {"broken_in_strand": 1}),
        ("rope.broken_in_6d", {"broken_in_6d": 1, "lay": "regular"}),
    ],
)
def test_a_class_does_not_say_how_many_wires(rule_id: str, found: dict[str, Any]) -> None:
    answer = verdict(seen("6x19 IWRC", **found), rule_id)
    assert str(answer.status) == "not computed"
    assert "how many wires" in answer.reason


def test_wires_that_may_be_broken_by_class() -> None:
    """Wyoming drilling rules 6-6(b)(iii): nine in one lay of 6x37, now called 6x36."""
    assert status(seen("6x36WS IWRC", broken_in_lay=8), "rope.broken_in_lay") == "pass"
    assert status(seen("6x36WS IWRC", broken_in_lay=9), "rope.broken_in_lay") == "fail"
    rope = rw.Rope.metric("6x7 FC", wire_grade="1770 MPa", diameter="20 mm")
    other = replace(seen(broken_in_lay=0), rope=rope)
    assert status(other, "rope.broken_in_lay") == "not applicable"


def test_servicing_rules_have_their_own_share() -> None:
    """Wyoming servicing rules 6-2(c)(i): 4 % of all wires, 4.56 of 114."""
    for broken, expected in ((4, "pass"), (5, "fail")):
        rig = seen(broken_in_lay=broken)
        limits = replace(rig.limits, design_factor_standard="Wyoming servicing")
        assert status(replace(rig, limits=limits), "rope.broken_of_all") == expected
        assert status(rig, "rope.broken_of_all") == "pass"


def in_tests(diameter: float, sheave: float, tension: float, broken: int) -> tuple[Any, Any]:
    """A 6x36WS rope with a wire core; its sheaves; a load for the tension of the fast line."""
    rig = seen(broken_in_30d=broken)
    rope = rw.Rope.metric("6x36 IWRC", wire_grade="1770 MPa", diameter=rw.Q(diameter, "m"))
    sheaves = replace(rig.block.sheaves, diameter=sheave)
    rig = replace(
        rig,
        rope=rope,
        crown=replace(rig.crown, diameter=2 * sheave),
        block=replace(rig.block, sheaves=sheaves),
    )
    return rig, load_of_fast_line(rig, tension)


def test_breaks_in_bending_tests() -> None:
    """Feyrer (2015), eq. 3.83, by hand: 34.06 for 20 mm on 500 mm at 60 kN; six strands 0.75."""
    for broken, expected in ((25, "pass"), (26, "warn")):
        rig, load = in_tests(0.020, 0.500, 60e3, broken)
        found = verdict(rig, "rope.broken_in_tests", load)
        assert found.limit == pytest.approx(0.75 * 34.06, abs=0.005)
        assert str(found.status) == expected


def test_breaks_in_bending_tests_on_the_limit() -> None:
    """Eq. 3.94 solved for the tension: six of eight breaks, 20 mm on 500 mm."""
    g0, g1, g2, g3, bend = 44.5, 0.000222, 2200.0, 0.0536, (20 / 500) ** 2
    tension = 400.0 * ((g0 - 8 - g2 * bend) / (g1 + g3 * bend)) ** 0.5
    rig, load = in_tests(0.020, 0.500, tension, 6)
    on_limit = verdict(rig, "rope.broken_in_tests", load)
    assert (str(on_limit.status), on_limit.margin) == ("pass", 0.0)


def test_breaks_in_bending_tests_cannot_always_be_told() -> None:
    rig, load = in_tests(0.020, 0.500, 200e3, 0)
    assert status(rig, "rope.broken_in_tests", load) == "not computed"
    assert status(replace(rig, operations=()), "rope.broken_in_tests") == "not applicable"
    other = rw.Rope.metric("6x7 FC", wire_grade="1770 MPa", diameter="20 mm")
    assert status(replace(rig, rope=other), "rope.broken_in_tests", load) == "not applicable"


@pytest.mark.parametrize(
    ("rule_id", "share", "before"),
    [
        # 30 CFR 56.19024(g): more than 6 % of the diameter measured when new.
        ("rope.diameter_loss", 0.06, 1.4),
        # 29 CFR 1926.1413(a)(2)(ii)(B): more than 5 % of the nominal diameter.
        ("rope.diameter_reduction", 0.05, 1.375),
    ],
)
def test_thinner_than_it_was(rule_id: str, share: float, before: float) -> None:
    def found(part: float) -> Any:
        return seen(diameter=(1.0 - part) * before * INCH, baseline_diameter=1.4 * INCH)

    assert status(found(share - 0.01), rule_id) == "pass"
    on_limit = verdict(found(share), rule_id)
    assert (str(on_limit.status), on_limit.margin) == ("pass", 0.0)
    assert status(found(share + 0.001), rule_id) == "fail"


def test_a_new_line_is_thicker_than_nominal() -> None:
    thick = seen(diameter=1.4 * INCH)
    assert verdict(thick, "rope.diameter_reduction").value < 0.0
    assert status(thick, "rope.diameter_reduction") == "pass"
    assert "baseline_diameter" in verdict(thick, "rope.diameter_loss").reason


def test_thorough_inspections_every_30_days() -> None:
    """Wyoming drilling rules 6-6(b): lines "shall be thoroughly inspected" each 30 days."""
    begins = min(one.start for one in rig7().operations)
    for days, expected in ((10, "pass"), (30, "pass"), (31, "fail")):
        rig = seen(date=begins - timedelta(days=days))
        found = verdict(rig, "rope.inspection_age")
        assert (str(found.status), found.value) == (expected, days * 86400.0)
    assert verdict(seen(date=begins - timedelta(days=30)), "rope.inspection_age").margin == 0.0


def test_inspections_that_do_not_fit_the_plan() -> None:
    rule_id = "rope.inspection_age"
    ends = max(one.start for one in rig7().operations)
    assert status(seen(date=ends + timedelta(days=1)), rule_id) == "not applicable"
    abroad = datetime(2026, 2, 20, tzinfo=UTC)
    assert status(seen(date=abroad), rule_id) == "not computed"
    undated = tuple(replace(one, start=None, end=None) for one in rig7().operations)
    rig = replace(seen(date=datetime(2026, 2, 20)), operations=undated)
    assert status(rig, rule_id) == "not applicable"


def test_later_inspections_count_to_what_comes_next() -> None:
    """The day before the second operation that is dated: one day, however long the plan runs."""
    second = sorted(one.start for one in rig7().operations)[1]
    found = verdict(seen(date=second - timedelta(days=1)), "rope.inspection_age")
    assert found.value == 86400.0


INSPECTION = """
[inspection]
date = 2026-02-20
lay = "regular"
broken_in_lay = 2
diameter = "34.5 mm"
outer_wire_loss = 0.1
corrosion = false
crown_groove_radii = ["18.2 mm", "0.72 in"]
"""


def read(tmp_path: Path, table: str) -> Any:
    text = rw.rig.example("rig7").read_text(encoding="utf-8")
    before, found, after = text.partition("[inspection]\n")
    text = before + after[after.index("\n[") + 1 :] if found else text
    file = tmp_path / "rig.toml"
    file.write_text(text + table, encoding="utf-8")
    return rw.load_rig(file)


def test_rig_files_hold_an_inspection(tmp_path: Path) -> None:
    assert read(tmp_path, "").inspection is None
    assert read(tmp_path, INSPECTION).inspection == rw.rig.Inspection(
        date=datetime(2026, 2, 20),
        lay="regular",
        broken_in_lay=2,
        diameter=pytest.approx(0.0345),
        outer_wire_loss=0.1,
        corrosion=False,
        crown_groove_radii=pytest.approx((0.0182, 0.72 * INCH)),
    )


@pytest.mark.parametrize(
    ("old", "new", "part"),
    [
        ("= 2\n", "= -1\n", "inspection.broken_in_lay"),
        ("= 2\n", "= 2.5\n", "inspection.broken_in_lay"),
        ("0.1", "10", "inspection.outer_wire_loss"),
        ('"regular"', '"left"', "inspection.lay"),
        ('"34.5 mm"', "34.5", "inspection.diameter"),
        ("false", '"light"', "inspection.corrosion"),
        ('["18.2 mm", "0.72 in"]', "[]", "inspection.crown_groove_radii"),
        ("corrosion", "rust", "inspection.rust"),
    ],
)
def test_inspections_that_cannot_be(tmp_path: Path, old: str, new: str, part: str) -> None:
    with pytest.raises(rw.rig.RigFileError, match=part.replace(".", r"\.")):
        read(tmp_path, INSPECTION.replace(old, new))


def test_every_limit_says_who_asks() -> None:
    everything = {key: 0 for _, key, *_ in FINDINGS}
    rig = seen(lay="regular", date=datetime(2026, 2, 20), diameter=1.39 * INCH, **everything)
    found = [v for v in rw.check.check_rig(rig) if v.rule.subject == "rope" and v.limit is not None]
    assert len(found) >= 15
    for one in found:
        assert "(published)" in one.source


def test_the_invented_floater_was_inspected() -> None:
    rig = rw.load_rig(rw.rig.example("osprey-sound"))
    found = [v for v in rw.check.check_rig(rig) if v.rule.subject == "rope"]
    assert {str(v.status) for v in found if v.rule.id != "rope.strength_loss"} == {"pass"}
