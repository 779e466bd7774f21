"""What the README says of commands, checks and rig files is what there is."""

from __future__ import annotations

import json
import re
import shutil
import tomllib
from importlib.resources import files
from pathlib import Path

import jsonschema
import pytest

import ropewalk as rw
from ropewalk.check import FileReport, Status
from ropewalk.cli import main

ROOT = Path(__file__).parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")


def section(title: str) -> str:
    return README.partition(f"\n## {title}\n")[2].partition("\n## ")[0]


def first_column(title: str) -> list[str]:
    return re.findall(r"^\| `([^`]+)` \|", section(title), re.MULTILINE)


def test_every_command_is_in_the_table() -> None:
    named = [one.removeprefix("ropewalk ").partition(" ")[0] for one in first_column("Commands")]
    assert sorted(named) == sorted(main.commands)


def test_every_subject_of_a_rule_is_in_the_table() -> None:
    assert first_column("Checks") == list(dict.fromkeys(rule.subject for rule in rw.check.RULES))


@pytest.fixture
def written(tmp_path: Path) -> Path:
    """The rig file of the README, beside the one it includes."""
    (text,) = re.findall(r"```toml\n(.*?)```", section("Rig files"), re.DOTALL)
    shutil.copy(rw.rig.example("rig7"), tmp_path)
    path = tmp_path / "twelve.toml"
    path.write_text(text, encoding="utf-8")
    return path


def test_the_rig_file_is_read_as_the_text_says(written: Path) -> None:
    found = {one.key: one for one in rw.rig.resolved(written)}
    # 5900 ft and 400 kip by 0.3048 m and 4448.2216152605 N: NIST SP 811 (2008), app. B.8.
    assert found["line.supply"].value == pytest.approx(5900 * 0.3048, rel=1e-14)
    assert found["limits.hook_load"].value == pytest.approx(400 * 4448.2216152605, rel=1e-14)
    assert found["reeving.lines"].value == 12
    assert found["rope.diameter"].origin.kind == "include"
    schema = json.loads((files("ropewalk") / "data" / "rig-file.schema.json").read_text("utf-8"))
    jsonschema.validate(tomllib.loads(written.read_text(encoding="utf-8")), schema)


def test_the_rig_file_is_checked_with_its_limits(written: Path) -> None:
    report: FileReport = rw.check.check_file(written)
    assert report.error == ""
    found = {one.rule.id: one for one in report.verdicts}
    assert found["house.reserve"].value is not None
    assert found["trade.usual_least"].status is Status.NOT_APPLICABLE
    strict = [one for one in report.verdicts if one.rule.id == "line.design_factor"]
    assert max(one.limit or 0.0 for one in strict) == 3.25
    assert all(one.status is not Status.NOT_COMPUTED for one in report.verdicts)


def test_the_examples_are_those_there_are() -> None:
    said = section("Rig files").partition("`rw.rig.example(name)`")[2]
    named = re.findall(r"`([a-z0-9-]+)`", said)
    folder = files("ropewalk") / "data" / "rigs"
    assert sorted(named) == sorted(Path(str(one)).stem for one in folder.iterdir())
