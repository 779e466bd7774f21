"""The one list of what a rig file can have, and what is made from it."""

from __future__ import annotations

import datetime
import json
import pickle
import subprocess
import sys
import tomllib
from csv import DictReader
from importlib.resources import files
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from rig_files import PLAN, SMALL, load, refused, write

import ropewalk as rw
from ropewalk._signature import ROLES
from ropewalk.rig.file import parse_rig
from ropewalk.rig.sections import RigFile
from ropewalk.rig.upgrade import upgrade
from ropewalk.testing import assert_close

ROOT = Path(__file__).parents[2]
KNOWN = {one.path: one for one in rw.rig.parameters()}
# The schema that is shipped, held against the reader of the files.
SCHEMA = json.loads((files("ropewalk") / "data" / "rig-file.schema.json").read_text("utf-8"))
STANDINGS = {"definition", "common practice", "published"}


def plain(value: Any) -> Any:
    """Data of TOML as JSON has it: dates are text."""
    if isinstance(value, dict):
        return {key: plain(inner) for key, inner in value.items()}
    if isinstance(value, list):
        return [plain(inner) for inner in value]
    return value.isoformat() if isinstance(value, datetime.date) else value


def fits(text: str) -> bool:
    data, _, _ = upgrade(tomllib.loads(text), "rig.toml")
    return jsonschema.Draft202012Validator(SCHEMA).is_valid(plain(data))


def reads(text: str) -> bool:
    try:
        parse_rig(tomllib.loads(text))
    except rw.rig.RigFileError:
        return False
    return True


# The list


def test_every_parameter_is_said_once_with_unit_and_meaning() -> None:
    assert len(KNOWN) == len(rw.rig.parameters())
    for one in KNOWN.values():
        assert one.text.endswith((".", ")", '"', "there"))
        assert (one.kind == "quantity") == bool(one.role) == bool(one.unit)
        if one.role:
            assert one.unit == ROLES[one.role].si_unit
            assert rw.Q(1, one.display_unit).is_compatible_with(one.unit)
        assert bool(one.choices) == (one.kind == "choice")
        if one.low is not None and one.high is not None:
            assert one.low <= one.high


@pytest.mark.parametrize(
    ("path", "kind", "role", "low", "low_open", "required"),
    [
        ("rope.diameter", "quantity", "length", 0.0, True, True),
        ("stuck.overpull", "quantity", "force", 0.0, False, True),
        ("drawworks.gear[].ratio", "number", "", 0.0, True, True),
        ("string.*[].mass_per_length", "quantity", "mass_per_length", 0.0, False, True),
        ("operation[].from_depth", "quantity", "length", 0.0, False, False),
        ("operation[].kind", "choice", "", None, False, True),
        ("operation[].start", "date", "", None, False, False),
        ("overtravel.floor", "quantity", "length", None, False, True),
        ("sea.response.periods[]", "quantity", "time", 0.0, True, True),
        ("reeving.lines", "whole number", "", 1.0, False, True),
        ("mast.dead_line", "text or list", "", None, False, True),
        ("units", "text or table", "", None, False, False),
    ],
)
def test_parameters_as_the_sections_have_them(
    path: str, kind: str, role: str, low: float | None, low_open: bool, required: bool
) -> None:
    one = KNOWN[path]
    assert (one.kind, one.role, one.low, one.low_open, one.required) == (
        kind,
        role,
        low,
        low_open,
        required,
    )


def test_every_default_has_one_line_that_says_where_it_comes_from() -> None:
    text = (files("ropewalk") / "data" / "rig-defaults.csv").read_text("utf-8")
    rows = list(DictReader(text.splitlines()))
    paths = [row["path"] for row in rows]
    assert sorted(paths) == sorted(path for path, one in KNOWN.items() if one.default is not None)
    assert {row["standing"] for row in rows} <= STANDINGS
    assert all(row["source"] for row in rows)
    for row in rows:
        one = KNOWN[row["path"]]
        assert (one.default_source, one.default_standing) == (row["source"], row["standing"])


def test_what_is_made_from_the_list_is_up_to_date() -> None:
    done = subprocess.run(
        [sys.executable, ROOT / "scripts" / "make_rig_schema.py", "--check"],
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")


# The schema, held against the reader


def test_the_schema_is_a_schema_and_both_examples_fit() -> None:
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    for name in ("rig7", "osprey-sound"):
        assert fits(rw.rig.example(name).read_text("utf-8"))


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("lines = 10", 'lines = "ten"'),
        ("lines = 10", "lines = 0"),
        ("lines = 10", "lines = 10\nline = 3"),
        ("lines = 10\n", ""),
        ('"46000 lbf"', "46000"),
        ('"46000 lbf"', '"lbf"'),
        ('"46000 lbf"', '"46,000 lbf"'),
        ('"46000 lbf"', '"46000"'),
        ("[drawworks]", "[drawwork]"),
        ("[rig]", 'units = "US"\n[rig]'),
        ("[rig]", 'units = { mood = "good" }\n[rig]'),
        ('[drawworks]\npower = "1500 hp"\n', '[mud]\ndensity = "1 kg/m**3"\n'),
        ("invented = true", "invented = 1"),
    ],
)
def test_what_the_schema_refuses_the_reader_refuses(old: str, new: str) -> None:
    assert old in SMALL
    assert fits(SMALL)
    assert reads(SMALL)
    text = SMALL.replace(old, new, 1)
    assert not fits(text)
    assert not reads(text)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ('"1.375 in"', '"1-3/8 in"'),
        ('"1.375 in"', '"1 3/8in"'),
        ('"1.375 in"', '".0349250e0 m"'),
        ('"1.375 in"', '"11/8 in"'),
        ("[rig]", 'units = "SI"\n[rig]'),
        ("[rig]", 'units = { length = "ft" }\n[rig]'),
        ("[drawworks]", PLAN + "[drawworks]"),
        ("[drawworks]", "[limits]\n[drawworks]"),
    ],
)
def test_what_the_schema_takes_the_reader_takes(old: str, new: str) -> None:
    assert old in SMALL
    text = SMALL.replace(old, new, 1)
    assert fits(text)
    assert reads(text)


def test_a_file_that_includes_others_need_not_be_whole() -> None:
    assert fits('ropewalk = 2\ninclude = "common.toml"\n[block]\nhighest = "8 m"')
    assert not fits('ropewalk = 2\n[block]\nhighest = "8 m"')


# Units of a file


def test_bare_numbers_in_the_units_declared(tmp_path: Path) -> None:
    si = (
        SMALL.replace("[rig]", 'units = "SI"\n[rig]', 1)
        .replace('"46000 lbf"', f"{46000 * 4.4482216152605!r}")
        .replace('"8 m"', "8")
    )
    trade = (
        SMALL.replace("[rig]", 'units = { length = "in", force = "kip" }\n[rig]', 1)
        .replace('"46000 lbf"', "46")
        .replace('"1.375 in"', "1.375")
    )
    assert fits(si)
    assert fits(trade)
    for text in (si, trade):
        rig = load(tmp_path, text)
        assert_close(rw.Q(rig.block.weight, "N"), "46000 lbf")
        # A value with its own unit keeps it.
        assert rig.block.lowest == 37.0
        assert rig.rope.diameter_si == pytest.approx(1.375 * 0.0254, rel=1e-15)


def test_si_declares_the_unit_of_every_role() -> None:
    lines = ["ropewalk = 2", 'units = "SI"']
    file = parse_rig(tomllib.loads(SMALL.replace(lines[0], "\n".join(lines))))
    assert file.units == "SI"
    drum = '[drawworks]\ndrum_inertia = 1500\npower = "1500 hp"\n'
    text = SMALL.replace('[drawworks]\npower = "1500 hp"\n', drum).replace(
        lines[0], "\n".join(lines)
    )
    assert parse_rig(tomllib.loads(text)).drawworks.drum_inertia == 1500.0


@pytest.mark.parametrize(
    ("units", "words"),
    [
        ('"US"', ["units: must be", '"SI"']),
        ("3", ["units: must be"]),
        ('{ lenght = "ft" }', ["units.lenght", "did you mean 'length'?"]),
        ('{ number = "ft" }', ["units.number", "no kind of quantity"]),
        ('{ length = "lbf" }', ["units.length", "a unit of a length", "a force"]),
        ('{ length = "furlongs per" }', ["units.length"]),
        ('{ force = "ton" }', ["units.force", "three meanings"]),
        ("{ length = 3 }", ["units.length", "must be a unit"]),
    ],
)
def test_wrong_units_are_refused(tmp_path: Path, units: str, words: list[str]) -> None:
    error = refused(write(tmp_path, SMALL.replace("[rig]", f"units = {units}\n[rig]", 1)))
    assert "rig.toml:3: units" in str(error)
    for word in words:
        assert word in str(error)


def test_units_of_another_role_do_not_help_and_true_is_no_number(tmp_path: Path) -> None:
    lengths = SMALL.replace("[rig]", 'units = { length = "ft" }\n[rig]', 1)
    error = refused(write(tmp_path, lengths.replace('"46000 lbf"', "46000")))
    assert "block.weight: must be a force with a unit, got 46000" in str(error)
    error = refused(write(tmp_path, lengths.replace('"8 m"', "true")))
    assert "block.highest: must be a length" in str(error)


# What a file may leave out


def test_a_small_rig_has_what_it_has(tmp_path: Path) -> None:
    rig = load(tmp_path, SMALL)
    assert (rig.operations, rig.strings, rig.life) == ((), {}, None)
    assert rig.limits == rw.rig.Limits()
    assert len(rw.rig.practice(rig)) == 6
    for ask, section in (
        (lambda: rig.known_life, r"\[life\]"),
        (lambda: rig.heaviest_trip, r"\[\[operation\]\]"),
        (lambda: rig.stuck_hook_load, r"\[stuck\]"),
        (lambda: rig.design_factor_standard, r"\[limits\] design_factor_standard"),
        (lambda: rig.largest_hook_load, r"no \[\[operation\]\] and no \[limits\] hook_load"),
        (lambda: rw.Campaign.from_plan(rig), r"\[\[operation\]\]"),
        (lambda: rw.suspension.rig_margins(rig, "300 kip"), r"\[limits\]"),
    ):
        with pytest.raises(rw.rig.RigFileError, match=section):
            ask()


def test_the_largest_hook_load_takes_what_there_is(tmp_path: Path) -> None:
    asked = '[limits]\nhook_load = "{} kip"\n'
    alone = load(tmp_path, SMALL + asked.format(300))
    assert_close(rw.Q(alone.largest_hook_load, "N"), "300 kip")
    planned = load(tmp_path, SMALL + PLAN)
    trip = planned.heaviest_trip.heaviest_hook_load(planned.block.weight)
    assert planned.largest_hook_load == trip
    stuck = load(tmp_path, f'{SMALL}{PLAN}[stuck]\noverpull = "100 kN"\n')
    assert stuck.largest_hook_load == pytest.approx(trip + 100e3, rel=1e-14)
    small, large = (load(tmp_path, SMALL + PLAN + asked.format(one)) for one in (1, 900))
    assert small.largest_hook_load == trip
    assert_close(rw.Q(large.largest_hook_load, "N"), "900 kip")


def test_a_plan_has_mud_strings_and_operations_or_none_of_them(tmp_path: Path) -> None:
    text = SMALL + PLAN[: PLAN.index("[[operation]]")]
    error = refused(write(tmp_path, text))
    assert "given together or not at all; missing: operation" in str(error)
    line = text[: text.index("[mud]")].count("\n") + 1
    assert error.places == (rw.rig.Place("rig.toml", line, "mud"),)


# Origins and places


def test_every_value_knows_where_it_comes_from(tmp_path: Path) -> None:
    text = SMALL + PLAN
    reading = rw.rig.read(write(tmp_path, text))
    lines = text.splitlines()
    for key, origin in reading.origins.items():
        assert not any(part in key for part in ("include", "units"))
        if origin.kind == "file":
            name = key.rpartition(".")[2].partition("[")[0]
            assert lines[origin.line - 1].startswith(f"{name} = ")
            assert origin.file == "rig.toml"
        else:
            assert origin.kind == "default"
            assert origin.source
            assert origin.standing in STANDINGS
    assert reading.origins["operation[1].times"].kind == "default"
    line = lines.index('weight = "46000 lbf"') + 1
    assert str(reading.origins["block.weight"]) == f"rig.toml:{line}"


LAYOUTS = '''# comment = "no"
a.b = 1 # [not.a.header]
"quoted.key" = """
c = 2
\\""" still
"""
list = [ # comment ]
  { x = 1, y = [1,
    2] },
  { "x" = 'a]}#', z.w = 2026-01-01T00:00:00Z },
]
[t]
d = """one\'\'\'"""
[[t.e]]
f = \'\'\'
[x]\'\'\'
[[t.e]]
[[t.e.g]]
h = 1
[t.e.i]
j = 1
'''


@pytest.mark.parametrize("ends", ["\n", "\r\n"])
def test_lines_of_keys_in_every_notation(ends: str) -> None:
    from ropewalk.rig.origins import locate

    text = LAYOUTS.replace("\n", ends)
    tomllib.loads(text)
    lines = locate(text)
    expected = {
        ("a", "b"): 2,
        ("quoted.key",): 3,
        ("list",): 7,
        ("list", 0, "x"): 8,
        ("list", 0, "y", 1): 9,
        ("list", 1, "x"): 10,
        ("list", 1, "z", "w"): 10,
        ("t", "d"): 13,
        ("t", "e", 0, "f"): 15,
        ("t", "e", 1): 17,
        ("t", "e", 1, "g", 0, "h"): 19,
        ("t", "e", 1, "i", "j"): 21,
    }
    assert {path: lines.get(path) for path in expected} == expected
    assert ("c",) not in lines
    assert ("x",) not in lines


def test_the_locator_finds_every_key_of_the_examples() -> None:
    from ropewalk.rig.origins import locate

    def paths(value: Any, path: tuple[Any, ...] = ()) -> Any:
        pairs = value.items() if isinstance(value, dict) else enumerate(value)
        for key, inner in pairs:
            yield (*path, key)
            if isinstance(inner, (dict, list)):
                yield from paths(inner, (*path, key))

    for name in ("rig7", "osprey-sound"):
        text = rw.rig.example(name).read_text("utf-8")
        lines, rows = locate(text), text.splitlines()
        for path in paths(tomllib.loads(text)):
            assert path in lines
            if isinstance(path[-1], str):
                assert path[-1] in rows[lines[path] - 1]


def test_problems_have_places_and_travel(tmp_path: Path) -> None:
    text = SMALL.replace('"46000 lbf"', "46000").replace('grade = "EIPS"\n', "")
    error = refused(write(tmp_path, text))
    rows = text.splitlines()
    weight, rope = rows.index("weight = 46000") + 1, rows.index("[rope]") + 1
    assert set(error.places) == {
        rw.rig.Place("rig.toml", weight, "block.weight"),
        rw.rig.Place("rig.toml", rope, "rope.grade"),
    }
    assert str(error).startswith("rig.toml: 2 problems\n")
    for place, problem in zip(error.places, error.problems, strict=True):
        assert problem.startswith(f"rig.toml:{place.line}: {place.key}: ")
    # What is missing is said in the words of the list.
    assert KNOWN["rope.grade"].text in str(error)
    again = pickle.loads(pickle.dumps(error))
    assert (str(again), again.places, again.problems) == (str(error), error.places, error.problems)


@pytest.mark.parametrize(
    ("old", "new", "key"),
    [
        ('"54 in"', '"1 in"', "crown.sheave_diameter"),
        ("lines = 10", "lines = 1", "reeving.lines"),
        ('"1.375 in"', '"1.4 in"', "rope.diameter"),
        ('depth = "3400 m"', 'depth = "3500 m"', "operation[1].depth"),
    ],
)
def test_what_does_not_agree_has_a_place_too(tmp_path: Path, old: str, new: str, key: str) -> None:
    text = (SMALL + PLAN).replace(old, new, 1)
    error = refused(write(tmp_path, text))
    (place,) = error.places
    assert place.key == key
    assert new in text.splitlines()[place.line - 1]
    assert str(error).startswith(f"rig.toml:{place.line}: {key}")


def test_sections_are_the_list() -> None:
    """No section has a key the list does not have, at the top."""
    tops = {path.partition(".")[0].partition("[")[0] for path in KNOWN}
    assert tops == set(RigFile.model_fields)
