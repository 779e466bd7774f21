"""The rig files that come with ropewalk: each is whole, invented, and inside its limits, or not."""

from __future__ import annotations

import datetime
import json
import re
import shutil
import tomllib
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Any

import jsonschema
import pytest

import ropewalk as rw
from ropewalk.check import FileReport, Severity, Status
from ropewalk.rig.include import merge, read_files

EXAMPLES = ("five-faults", "heavy-casing", "minimal", "osprey-sound", "rig7", "workover-hoist")
SOUND = tuple(name for name in EXAMPLES if name != "five-faults")
SCHEMA = json.loads((files("ropewalk") / "data" / "rig-file.schema.json").read_text("utf-8"))

#: Faults of the rig of five faults: the table it is planted in, the rules that must see it.
FAULTS = {
    "block": {"sheave.bend_ratio", "sheave.bearing_pressure"},
    "line": {"drum.dead_wraps"},
    "brake": {"brake.emergency", "overtravel.holding"},
    "overtravel": {"overtravel.margin"},
    "deadline.anchor": {"deadline.anchor", "deadline.working_strength"},
}


@cache
def checked(name: str) -> FileReport:
    return rw.check.check_file(rw.rig.example(name))


def plain(value: Any) -> Any:
    """Data of TOML as JSON has it: dates are text."""
    if isinstance(value, dict):
        return {key: plain(inner) for key, inner in value.items()}
    if isinstance(value, list):
        return [plain(inner) for inner in value]
    return value.isoformat() if isinstance(value, datetime.date) else value


def broken(name: str) -> set[str]:
    """Rules that must hold and do not."""
    return {
        one.rule.id
        for one in checked(name).verdicts
        if one.broken and one.rule.severity is Severity.MUST
    }


def test_these_are_all_there_are() -> None:
    with pytest.raises(rw.rig.RigFileError) as caught:
        rw.rig.example("no-such-rig")
    assert str(caught.value).endswith(f"there are: {', '.join(EXAMPLES)}")
    text = rw.rig.example.__doc__ or ""
    assert all(f'``"{name}"``' in text for name in EXAMPLES)


@pytest.mark.parametrize("name", EXAMPLES)
def test_they_load_and_say_that_they_are_invented(name: str) -> None:
    reading = rw.rig.read(rw.rig.example(name))
    assert reading.notes == ()
    rig = rw.rig.rig_of(reading)
    assert rig.invented
    assert rig == rw.load_rig(rw.rig.example(name))
    comment = rw.rig.example(name).read_text("utf-8").partition("\nropewalk = ")[0]
    assert "INVENTED" in comment


def test_their_names_are_their_own() -> None:
    assert len({checked(name).name for name in EXAMPLES}) == len(EXAMPLES)


@pytest.mark.parametrize("name", EXAMPLES)
def test_they_fit_the_schema_once_what_they_include_is_laid_under_them(name: str) -> None:
    whole: dict[str, Any] = {}
    for layer in read_files(rw.rig.example(name)).layers:
        merge(whole, layer.data)
    whole.pop("include", None)
    jsonschema.validate(plain(whole), SCHEMA)
    alone = tomllib.loads(rw.rig.example(name).read_text("utf-8"))
    jsonschema.validate(plain(alone), SCHEMA)


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_rule_can_be_computed_on_them(name: str) -> None:
    found = checked(name)
    assert found.error == ""
    assert {one.rule.id for one in found.verdicts} == {one.id for one in rw.check.RULES}
    assert [one.rule.id for one in found.verdicts if one.status is Status.NOT_COMPUTED] == []
    assert sum(one.status is Status.PASS for one in found.verdicts) > 20


@pytest.mark.parametrize("name", SOUND)
def test_what_must_hold_holds_on_all_but_one(name: str) -> None:
    assert broken(name) == set()
    assert rw.check.outcome([checked(name)]) == 0


def test_the_five_faults_are_found() -> None:
    report = checked("five-faults")
    assert rw.check.outcome([report]) == 1
    was = {one.rule.id for one in checked("rig7").verdicts if one.broken}
    now = {one.rule.id for one in report.verdicts if one.broken}
    assert set().union(*FAULTS.values()) <= now - was
    assert was <= now
    sheaves = [one for one in report.verdicts if one.rule.id == "sheave.bend_ratio" and one.broken]
    assert [one.subject for one in sheaves] == ["traveling-block sheaves"]
    # 22 in on a rope of 1.375 in.
    assert sheaves[0].value == pytest.approx(16.0, rel=1e-12)


@pytest.mark.parametrize("table", FAULTS)
def test_each_fault_alone_is_found_by_the_rules_of_its_part(table: str, tmp_path: Path) -> None:
    """Rig 7 with one fault: its rules break, and none of another part but those it hurts too."""
    head, *tables = re.split(r"\n(?=\[)", rw.rig.example("five-faults").read_text("utf-8"))
    planted = {re.match(r"\[([\w.]+)\]", one)[1]: one for one in tables}  # type: ignore[index]
    assert set(planted) == {"rig", *FAULTS}
    shutil.copy(rw.rig.example("rig7"), tmp_path)
    one = tmp_path / "one.toml"
    one.write_text(f"{head}\n{planted[table]}", encoding="utf-8")
    was = {one.rule.id for one in checked("rig7").verdicts if one.broken}
    found = {one.rule.id for one in rw.check.check_file(one).verdicts if one.broken} - was
    assert FAULTS[table] <= found
    others = set().union(*(rules for name, rules in FAULTS.items() if name != table))
    # Brakes that hardly hold stop too late as well.
    assert found & others <= ({"overtravel.margin"} if table == "brake" else set())
