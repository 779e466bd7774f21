"""Hostile rig files end in verdicts or in an error that says what is wrong."""

from __future__ import annotations

import importlib.util
import sys
import time
from pathlib import Path

import pytest

SCRIPT = Path(__file__).parents[2] / "scripts" / "fuzz.py"


@pytest.fixture(scope="module")
def fuzz():
    spec = importlib.util.spec_from_file_location("ropewalk_fuzz", SCRIPT)
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    sys.path.insert(0, str(SCRIPT.parent))  # for the module beside it
    try:
        spec.loader.exec_module(module)
    finally:
        sys.path.remove(str(SCRIPT.parent))
    yield module
    del sys.modules[spec.name]


@pytest.mark.parametrize("first", range(10_000_000, 10_003_000, 500))
def test_hostile_files_never_break_the_reader(fuzz, first):
    endings = fuzz.run(first, 500)
    assert [one for one in endings if one.broke] == []
    # A mutator that spoils everything would test the TOML reader alone.
    assert sum(one.checked for one in endings) > 50


def test_the_watch_hears_a_file_opened_outside(fuzz, tmp_path):
    watch = fuzz.Watch()
    (tmp_path / "tree").mkdir()
    outside = tmp_path / "outside"
    outside.write_text("x")
    watch.on = True
    outside.read_text()
    watch.on = False
    assert watch.strangers((tmp_path / "tree").resolve()) == [str(outside)]


def test_what_takes_too_long_is_stopped(fuzz, monkeypatch):
    monkeypatch.setattr(fuzz, "LONGEST", 0.05)
    with pytest.raises(fuzz.TooLongError), fuzz.time_limit():
        time.sleep(10.0)
