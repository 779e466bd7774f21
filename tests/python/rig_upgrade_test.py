"""Layouts of rig files: version 1 read as version 2, others refused."""

from __future__ import annotations

import json
import tomllib
import warnings
from pathlib import Path
from typing import Any

import pytest
from rig_files import PLAN, SMALL, load, refused, write

import ropewalk as rw
from ropewalk.check.formats import text_of
from ropewalk.rig.file import parse_rig
from ropewalk.rig.upgrade import LAYOUTS, upgrade

OLD = SMALL.replace("ropewalk = 2", "ropewalk = 1") + PLAN + '[limits]\noverpull = "100 kip"\n'
NEW = SMALL + PLAN + '[stuck]\noverpull = "100 kip"\n'


def test_an_old_file_is_the_new_one_and_says_so(tmp_path: Path, capsys: Any) -> None:
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        old = rw.rig.read(write(tmp_path, OLD))
        new = rw.rig.read(write(tmp_path, NEW))
    assert old.file == new.file
    assert new.notes == ()
    assert old.notes == (
        "rig.toml: layout 1 is read as layout 2",
        "rig.toml: limits.overpull is called stuck.overpull in layout 2",
    )
    assert capsys.readouterr() == ("", "")
    assert load(tmp_path, OLD) == load(tmp_path, NEW)
    assert load(tmp_path, OLD).limits.overpull == pytest.approx(100_000 * 4.4482216152605)


def test_the_origin_of_what_was_renamed_is_its_old_place(tmp_path: Path) -> None:
    origin = rw.rig.read(write(tmp_path, OLD)).origins["stuck.overpull"]
    assert OLD.splitlines()[origin.line - 1] == 'overpull = "100 kip"'


def test_problems_of_an_old_file_are_told_in_its_own_keys(tmp_path: Path) -> None:
    error = refused(write(tmp_path, OLD.replace('"100 kip"', "100")))
    assert error.places[0].key == "limits.overpull"
    assert OLD.splitlines()[error.places[0].line - 1].startswith("overpull")


def test_an_old_file_without_an_overpull_has_no_pull(tmp_path: Path) -> None:
    reading = rw.rig.read(write(tmp_path, SMALL.replace("ropewalk = 2", "ropewalk = 1")))
    assert reading.file.stuck is None
    assert len(reading.notes) == 1


def test_data_are_not_changed() -> None:
    data = tomllib.loads(OLD)
    before = tomllib.loads(OLD)
    today, _, renamed = upgrade(data, "rig.toml")
    assert data == before
    assert today["ropewalk"] == LAYOUTS[-1]
    assert renamed == {("stuck", "overpull"): ("limits", "overpull")}
    assert parse_rig(data).stuck is not None


@pytest.mark.parametrize("layout", ["3", "0", "-1", "1.0", "true", '"1"', "[1]", "{}"])
def test_unknown_layouts_say_which_are_read(tmp_path: Path, layout: str) -> None:
    error = refused(write(tmp_path, SMALL.replace("ropewalk = 2", f"\n\nropewalk = {layout}")))
    assert "layouts 1 and 2 are read" in str(error)
    assert error.places == (rw.rig.Place("rig.toml", 3, "ropewalk"),)


def test_a_file_without_layout_is_refused(tmp_path: Path) -> None:
    error = refused(write(tmp_path, SMALL.replace("ropewalk = 2\n", "")))
    assert "ropewalk: missing; the layout of the file, layouts 1 and 2 are read" in str(error)


def test_keys_of_one_layout_are_none_of_the_other(tmp_path: Path) -> None:
    early = OLD + '[stuck]\noverpull = "100 kip"\n'
    error = refused(write(tmp_path, early))
    assert "stuck: unknown key in layout 1; write ropewalk = 2" in str(error)
    assert early.splitlines()[error.places[0].line - 1] == "[stuck]"
    error = refused(write(tmp_path, OLD.replace("ropewalk = 1", "ropewalk = 2")))
    assert "limits.overpull: unknown key; overpull stands in [stuck]" in str(error)


def test_limits_that_are_no_table_are_refused_in_words(tmp_path: Path) -> None:
    error = refused(write(tmp_path, OLD.replace('[limits]\noverpull = "100 kip"\n', "[[limits]]")))
    assert error.places[0].key == "limits"


def test_a_plan_of_its_own_has_layouts_too(tmp_path: Path) -> None:
    rig = load(tmp_path, SMALL)
    loads = []
    for layout in LAYOUTS:
        plan = write(tmp_path, f"ropewalk = {layout}\n{PLAN}", "plan.toml")
        loads.append(rw.Campaign.from_plan(rig, plan).hook_load_si.tolist())
    assert loads[0] == loads[1]
    bad = write(tmp_path, f"ropewalk = 2\n{PLAN}".replace('"3400 m"', '"3401 m"', 2), "plan.toml")
    bad.write_text(bad.read_text().replace('"3401 m"', '"3400 m"', 1))
    with pytest.raises(rw.rig.RigFileError, match=r"^plan.toml:\d+: operation\[1\].depth"):
        rw.Campaign.from_plan(rig, bad)


def test_checks_say_what_was_read_otherwise(tmp_path: Path) -> None:
    reports = rw.check.check_files([write(tmp_path, OLD)])
    notes = rw.rig.read(tmp_path / "rig.toml").notes
    assert len(notes) == 2
    assert reports[0].notes == notes
    table, markdown = text_of(reports), text_of(reports, "markdown").replace("\\", "")
    for note in notes:
        assert f"  note: {note}\n" in table
        assert f"\nNote: {note}\n" in markdown
    assert json.loads(text_of(reports, "json"))["files"][0]["notes"] == list(notes)
    today = rw.check.check_files([write(tmp_path, SMALL)])
    assert "note: " not in text_of(today)
    assert "Note: " not in text_of(today, "markdown")
