"""A rig file resolved: every value with its unit, as written, and where it comes from."""

from __future__ import annotations

import json
import tomllib
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from click.testing import CliRunner
from rig_files import PLAN, SMALL, write

import ropewalk as rw
from ropewalk._signature import ROLES
from ropewalk.cli import main
from ropewalk.rig.listing import by_table, listing_schema, listing_text

EXAMPLES = ("five-faults", "heavy-casing", "minimal", "osprey-sound", "rig7", "workover-hoist")
#: 1 lbf in N and 1 in in m, both exact: NIST SP 811 (2008), app. B.8.
LBF, INCH = 4.4482216152605, 0.0254
COMMON = """ropewalk = 1
units = { length = "in", force = "kip" }
[rope]
diameter = 1.25
[block]
weight = 46
[limits]
overpull = "100 kN"
"""
MIXED = SMALL.replace("[rig]", 'include = "parts/common.toml"\nunits = "SI"\n[rig]', 1).replace(
    'diameter = "1.375 in"\n', "", 1
)


def of(path: Path) -> dict[str, rw.rig.Resolved]:
    return {one.key: one for one in rw.rig.resolved(path)}


@pytest.fixture
def mixed(tmp_path: Path) -> Path:
    """A file of today in SI that includes one of layout 1 in other units."""
    write(tmp_path, COMMON, "parts/common.toml")
    return write(tmp_path, MIXED.replace('highest = "8 m"', "highest = 8"))


def test_values_have_their_unit_and_what_is_written(mixed: Path) -> None:
    found = of(mixed)
    weight, diameter = found["block.weight"], found["rope.diameter"]
    assert (weight.text, weight.unit) == ("46000 lbf", "N")
    assert weight.value == pytest.approx(46000 * LBF, rel=1e-15)
    # A bare number has the unit of the file it stands in, not of the one that includes it.
    assert (diameter.text, diameter.unit) == ("1.25 in", "m")
    assert diameter.value == pytest.approx(1.25 * INCH, rel=1e-15)
    assert (found["block.highest"].text, found["block.highest"].value) == ("8 m", 8.0)
    assert (found["reeving.lines"].text, found["reeving.lines"].unit) == ("10", "")
    assert found["rig.invented"].text == "true"


def test_values_say_where_they_come_from(mixed: Path) -> None:
    found = of(mixed)
    assert str(found["rope.diameter"].origin) == "parts/common.toml:4, included"
    # The key of layout 1 stands on line 8, under another name.
    assert str(found["stuck.overpull"].origin) == "parts/common.toml:8, included"
    line = mixed.read_text(encoding="utf-8").splitlines().index('weight = "46000 lbf"') + 1
    assert str(found["block.weight"].origin) == f"rig.toml:{line}"
    turns = found["reeving.dead_line_sheave_turns"]
    assert (turns.origin.kind, turns.origin.standing) == ("default", "common practice")
    assert (turns.value, turns.text) == (False, "false")


def test_lists_tables_of_tables_and_the_reading_itself() -> None:
    reading = rw.rig.read(rw.rig.example("osprey-sound"))
    found = {one.key: one for one in rw.rig.resolved(reading)}
    periods = found["sea.response.periods"]
    assert isinstance(periods.value, tuple)
    assert periods.unit == "s"
    assert periods.text.startswith("[")
    assert periods.text.count(",") + 1 == len(periods.value)
    assert set(found) == set(reading.origins)
    assert all(found[key].origin == origin for key, origin in reading.origins.items())


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_unit_is_that_of_the_list_of_parameters(name: str) -> None:
    units = {role.si_unit for role in ROLES.values()}
    known = {one.path: one for one in rw.rig.parameters()}
    for key, one in of(rw.rig.example(name)).items():
        assert one.unit in units
        if key in known:
            assert one.unit == known[key].unit
        if one.unit and not isinstance(one.value, tuple):
            assert rw.Q(one.text).to(one.unit).magnitude == pytest.approx(one.value, rel=1e-12)


def rig_of_text(folder: Path, text: str) -> Any:
    return rw.rig.read(write(folder, text, "resolved.toml")).file


def without_files(file: Any) -> dict[str, Any]:
    data: dict[str, Any] = file.model_dump(exclude={"include", "units"})
    return data


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_rig_file_of_it_all_is_the_same_rig(name: str, tmp_path: Path) -> None:
    reading = rw.rig.read(rw.rig.example(name))
    text = listing_text(reading, "toml")
    assert not {"include", "units"} & set(tomllib.loads(text))
    assert without_files(rig_of_text(tmp_path, text)) == without_files(reading.file)


ODD = """
[limits.house]
"line.design_factor" = 3.5
"trade.usual_least" = false
"line.length" = "900 m"
[inspection]
"""


def test_so_is_that_of_odd_texts_units_and_old_layouts(mixed: Path, tmp_path: Path) -> None:
    plan = PLAN.replace("[[operation]]", "[[operation]]\nstart = 2026-03-01T06:00:00+01:00")
    text = mixed.read_text(encoding="utf-8").replace(
        'name = "Rig 7"', 'name = \'Rig "7" \\ n # [x]\'\nsite = """two\nlines"""'
    )
    mixed.write_text(
        text
        + plan.replace("string.drilling", 'string."dr.il \\"x"', 1).replace(
            'string = "drilling"', "string = 'dr.il \"x'"
        )
        + ODD,
        "utf-8",
    )
    reading = rw.rig.read(mixed)
    assert reading.file.rig.name == 'Rig "7" \\ n # [x]'
    made = listing_text(reading, "toml")
    assert made.startswith("# parts/common.toml: layout 1 is read as layout 2\n")
    assert without_files(rig_of_text(tmp_path, made)) == without_files(reading.file)


@pytest.mark.parametrize("name", EXAMPLES)
def test_json_fits_its_schema(name: str) -> None:
    jsonschema.Draft202012Validator.check_schema(listing_schema())
    reading = rw.rig.read(rw.rig.example(name))
    data = json.loads(listing_text(reading, "json"))
    jsonschema.validate(data, listing_schema())
    assert [one["key"] for one in data["values"]] == [one.key for one in rw.rig.resolved(reading)]


def test_the_table_has_a_line_for_every_value_and_the_notes(mixed: Path) -> None:
    reading = rw.rig.read(mixed)
    lines = listing_text(reading).splitlines()
    assert "note: parts/common.toml: limits.overpull is called stuck.overpull in layout 2" in lines
    said = [line for line in lines if line and not line.startswith(("note: ", "["))]
    rows = [row for rows in by_table(rw.rig.resolved(reading)).values() for row in rows]
    assert len(said) == len(rows)
    for line, (key, one) in zip(said, rows, strict=True):
        assert line.startswith(key)
        assert one.text in line
        assert line.endswith(str(one.origin))
    assert any("1.25 in" in line and "= 0.03175 m" in line for line in said)


def test_texts_cannot_steer_a_terminal_or_forge_a_line(tmp_path: Path) -> None:
    text = SMALL.replace('name = "Rig 7"', 'name = "Rig\\n[block]\\nweight \\u202e\u2066"')
    reading = rw.rig.read(write(tmp_path, text))
    assert reading.file.rig.name == "Rig\n[block]\nweight \u202e\u2066"
    for form in ("table", "json", "toml"):
        shown = listing_text(reading, form)  # type: ignore[arg-type]
        assert not {"\u202e", "\u2066"} & set(shown)
        assert shown.count("\n[block]\n") == (form != "json")
    made = listing_text(reading, "toml")
    assert rig_of_text(tmp_path, made).rig.name == reading.file.rig.name


# The command


def test_show_prints_or_writes(mixed: Path, tmp_path: Path) -> None:
    printed = CliRunner().invoke(main, ["show", str(mixed)])
    assert (printed.exit_code, printed.stdout) == (0, listing_text(rw.rig.read(mixed)))
    for form in ("json", "toml"):
        out = tmp_path / "new" / f"rig.{form}"
        done = CliRunner().invoke(main, ["show", str(mixed), "--format", form, "--out", str(out)])
        assert (done.exit_code, done.stdout) == (0, "")
        assert out.read_text(encoding="utf-8") == listing_text(rw.rig.read(mixed), form)  # type: ignore[arg-type]


def test_show_says_what_is_wrong_with_a_file(tmp_path: Path) -> None:
    bad = write(tmp_path, SMALL.replace("lines = 10", "line = 10"))
    done = CliRunner().invoke(main, ["show", str(bad), "--out", str(tmp_path / "out.txt")])
    assert done.exit_code == 2
    assert "rig.toml:13: reeving.line" in done.stderr
    assert not (tmp_path / "out.txt").exists()
    good = write(tmp_path, SMALL)
    done = CliRunner().invoke(main, ["show", str(good), "--out", str(good / "out.txt")])
    assert done.exit_code == 2
    assert "Traceback" not in done.output
