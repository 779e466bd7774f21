"""Rig files: where every value comes from, and where every problem stands."""

from __future__ import annotations

import pickle
import tomllib
from pathlib import Path
from typing import Any

import pytest
from rig_files import PLAN, SMALL, refused, write

import ropewalk as rw


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
            assert origin.standing in {"definition", "common practice", "published"}
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
    assert "rope.grade: missing; Grade as in the catalog" in str(error)
    again = pickle.loads(pickle.dumps(error))
    assert (str(again), again.places, again.problems) == (str(error), error.places, error.problems)


@pytest.mark.parametrize(
    ("old", "new", "key"),
    [
        ('"54 in"', '"1 in"', "crown.sheave_diameter"),
        ("lines = 10", "lines = 1", "reeving.lines"),
        ('"1.10 kg/liter"', '"11 kg/liter"', "mud.density"),
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
