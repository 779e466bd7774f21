"""The one list of what a rig file can have, and what is made from it."""

from __future__ import annotations

import datetime
import json
import subprocess
import sys
import tomllib
from csv import DictReader
from importlib.resources import files
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from rig_files import PLAN, SMALL

import ropewalk as rw
from ropewalk._signature import ROLES
from ropewalk.rig.file import parse_rig
from ropewalk.rig.sections import RigFile
from ropewalk.rig.upgrade import upgrade

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
        ("limits.house.*", "text, number or false", "", None, False, False),
        ("limits.rule[].at_least", "text or number", "", None, False, False),
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
        ("[drawworks]", '[limits.house]\n"trade.usual_least" = true\n[drawworks]'),
        ("[drawworks]", '[limits.house]\n"trade.usual_least" = []\n[drawworks]'),
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
        ("[drawworks]", '[limits.house]\n"trade.usual_least" = false\n[drawworks]'),
        ("[drawworks]", '[limits.house]\n"line.design_factor" = 4\n[drawworks]'),
        ("[drawworks]", '[limits.house]\n"line.length" = "900 m"\n[drawworks]'),
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
    no_mud = PLAN[PLAN.index("[[string") :]
    assert fits(f'ropewalk = 2\ninclude = "rig.toml"\n{no_mud}')
    assert not fits(SMALL + no_mud)


def test_sections_are_the_list() -> None:
    """No section has a key the list does not have, at the top."""
    tops = {path.partition(".")[0].partition("[")[0] for path in KNOWN}
    assert tops == set(RigFile.model_fields)
