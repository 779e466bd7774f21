"""The command: what it prints and writes, and how it ends."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner

import ropewalk as rw
from ropewalk.cli import main


@pytest.fixture(scope="module")
def demo(tmp_path_factory: pytest.TempPathFactory) -> tuple[str, Path]:
    """Output and folder of one run of the demo."""
    out = tmp_path_factory.mktemp("demo") / "results"
    result = CliRunner().invoke(main, ["demo", "--out", str(out)])
    assert result.exit_code == 0, result.output
    return result.output, out


def test_demo_says_what_it_is(demo: tuple[str, Path]) -> None:
    output, _ = demo
    assert "Rig 7, Kestrel Flat geothermal field" in output
    assert "invented" in output
    assert "Caution" in output
    assert "maker's manual" in output.replace("\n", " ")


def test_demo_prints_tensions_factors_and_work(demo: tuple[str, Path]) -> None:
    output, _ = demo
    for word in ("hoisting", "efficiency", "0.811", "design factor", "margin", "work"):
        assert word in output


def test_demo_writes_picture_and_tables(demo: tuple[str, Path]) -> None:
    _, out = demo
    assert sorted(p.name for p in out.iterdir()) == [
        "line-damage.csv",
        "line-damage.png",
        "sheave-life.csv",
        "sheave-life.nc",
        "sheave-life.png",
        "slip-and-cut.csv",
        "slip-and-cut.png",
    ]


def test_demo_ends_with_the_map_and_a_program(demo: tuple[str, Path]) -> None:
    output, _ = demo
    for text in ("Worst places of the line", "recommended: slip", "Side by side"):
        assert text in output


def test_demo_ends_in_three_plain_lines(demo: tuple[str, Path]) -> None:
    output, _ = demo
    for start in ("1. On 10 lines", "2. 12 lines instead of 8", "3. It rests on"):
        assert start in output.replace("\n", " ")


def test_demo_prints_no_color_codes_into_a_pipe(demo: tuple[str, Path]) -> None:
    assert "\x1b" not in demo[0]


def test_life_of_an_own_rig(tmp_path: Path) -> None:
    rig = tmp_path / "own.toml"
    text = rw.rig.example("rig7").read_text(encoding="utf-8")
    rig.write_text(text.replace('name = "Rig 7"', 'name = "Rig 9"'), encoding="utf-8")
    result = CliRunner().invoke(main, ["life", str(rig), "--out", str(tmp_path / "out")])
    assert result.exit_code == 0, result.output
    assert "Rig 9" in result.output


def test_a_bad_rig_ends_with_2_and_one_clear_message(tmp_path: Path) -> None:
    rig = tmp_path / "bad.toml"
    rig.write_text("ropewalk = 1\n[rop]\n", encoding="utf-8")
    result = CliRunner().invoke(main, ["life", str(rig), "--out", str(tmp_path / "out")])
    assert result.exit_code == 2
    assert "bad.toml" in result.output
    assert "did you mean 'rope'?" in result.output
    assert "Traceback" not in result.output
    assert not (tmp_path / "out").exists()


def test_a_missing_rig_ends_with_2(tmp_path: Path) -> None:
    result = CliRunner().invoke(main, ["life", str(tmp_path / "no.toml"), "--out", str(tmp_path)])
    assert result.exit_code == 2
    assert "cannot be read" in result.output


def test_a_folder_that_cannot_be_made_ends_with_2(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    result = CliRunner().invoke(main, ["demo", "--out", str(tmp_path / "file" / "sub")])
    assert result.exit_code == 2
    assert "Traceback" not in result.output


def test_models_lists_sources() -> None:
    result = CliRunner().invoke(main, ["models"])
    assert result.exit_code == 0, result.output
    for word in ("DruckerTachau", "PowerLaw", "source"):
        assert word in result.output


def test_the_installed_command_runs() -> None:
    """Through the entry point, in a process of its own, as a user calls it."""
    command = [sys.executable, "-m", "ropewalk", "--version"]
    environment = {**os.environ, "PYTHONWARNINGS": "error"}
    done = subprocess.run(command, capture_output=True, text=True, env=environment, check=True)
    assert rw.__version__ in done.stdout
