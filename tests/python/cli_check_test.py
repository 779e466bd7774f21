"""The commands about checks: what they print and write, and how they end."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest
from check_rigs import FEW_LINES, WRONG, write_rig
from click.testing import CliRunner, Result

import ropewalk as rw
from ropewalk.cli import main


def run(*arguments: object) -> Result:
    return CliRunner().invoke(main, [str(one) for one in arguments])


@pytest.fixture
def good(tmp_path: Path) -> Path:
    return write_rig(tmp_path / "good.toml")


@pytest.fixture
def broken(tmp_path: Path) -> Path:
    return write_rig(tmp_path / "broken.toml", FEW_LINES)


@pytest.fixture
def wrong(tmp_path: Path) -> Path:
    return write_rig(tmp_path / "wrong.toml", WRONG)


def only(*paths: object) -> tuple[object, ...]:
    """The checks of the drilling line alone, whatever other rules there are."""
    return ("check", *paths, "--rule", "line.design_factor")


def test_exit_codes(good: Path, broken: Path, wrong: Path) -> None:
    assert run(*only(good)).exit_code == 0
    assert run(*only(good, broken)).exit_code == 1
    assert run(*only(broken, wrong)).exit_code == 2
    assert run(*only(good, "no-such/*.toml")).exit_code == 2
    assert run("check").exit_code == 2


def test_all_shows_what_is_inside(good: Path) -> None:
    assert "pull on a stuck string" not in run(*only(good)).stdout.partition("inside")[0]
    for flag in ("--all", "-v"):
        assert "pull on a stuck string" in run(*only(good), flag).stdout


def test_json_alone_stands_on_stdout(broken: Path) -> None:
    result = run(*only(broken), "--format", "json", "--fail-on", "should")
    data = json.loads(result.stdout)
    assert data["fail_on"] == "should"
    assert data["outcome"] == result.exit_code == 1


def test_files_are_written_beside_each_other(broken: Path, tmp_path: Path) -> None:
    out, junit = tmp_path / "new" / "check.md", tmp_path / "check.xml"
    result = run(*only(broken), "--format", "markdown", "--out", out, "--junit", junit)
    assert result.exit_code == 1
    assert result.stdout == ""
    assert "wrote" in result.stderr
    assert out.read_text(encoding="utf-8").startswith("# Check")
    assert ElementTree.parse(junit).getroot().get("failures") == "3"


def test_what_cannot_be_written_ends_with_2(good: Path, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    result = run(*only(good), "--out", tmp_path / "file" / "below" / "check.txt")
    assert result.exit_code == 2
    assert "Traceback" not in result.output
    assert result.stderr.splitlines()[-1].count("file") >= 1


def test_a_rule_that_is_not_there(good: Path) -> None:
    result = run("check", good, "--rule", "line.design_facto")
    assert result.exit_code == 2
    assert "did you mean 'line.design_factor'?" in result.stderr


def test_processes_print_the_same(good: Path, broken: Path, wrong: Path) -> None:
    alone = run("check", good.parent, "--format", "json")
    together = run("check", good.parent, "--format", "json", "--jobs", "2")
    assert together.stdout == alone.stdout


def test_rules_lists_every_rule_with_its_source() -> None:
    result = run("rules")
    assert result.exit_code == 0
    for one in rw.check.RULES:
        assert one.id in result.stdout
        said = " ".join(run("rules", one.id).stdout.split())
        assert one.title in said
        assert one.severity in said
        assert one.source.split()[0] in said
    assert run("rules", "no.such").exit_code == 2


def test_compare_ends_by_what_got_worse(good: Path, broken: Path, wrong: Path) -> None:
    assert run("compare", good, good).exit_code == 0
    assert run("compare", broken, good).exit_code == 0
    result = run("compare", good, broken)
    assert result.exit_code == 1
    assert "broken now" in result.stdout
    assert run("compare", good, wrong).exit_code == 2


def test_compare_writes(good: Path, broken: Path, tmp_path: Path) -> None:
    out = tmp_path / "change.json"
    assert run("compare", good, broken, "--format", "json", "--out", out).exit_code == 1
    assert json.loads(out.read_text(encoding="utf-8"))["outcome"] == 1


def test_report_writes(good: Path, wrong: Path, tmp_path: Path) -> None:
    result = run("report", good, "--out", tmp_path / "paper")
    assert result.exit_code == 0, result.output
    assert (tmp_path / "paper" / "report.html").is_file()
    result = run("report", wrong, "--out", tmp_path / "none")
    assert result.exit_code == 2
    assert "lines" in result.stderr
    assert not (tmp_path / "none").exists()


def through_the_entry_point(*arguments: object) -> subprocess.CompletedProcess[str]:
    """In a process of its own, as a user calls it, with warnings as errors."""
    command = [sys.executable, "-m", "ropewalk", *(str(one) for one in arguments)]
    environment = {**os.environ, "PYTHONWARNINGS": "error"}
    return subprocess.run(command, capture_output=True, text=True, env=environment, check=False)


def test_without_a_terminal_no_bar_and_no_color(tmp_path: Path) -> None:
    for number in range(12):
        write_rig(tmp_path / f"{number}.toml", FEW_LINES)
    done = through_the_entry_point("check", tmp_path, "--jobs", "2")
    assert done.returncode == 1
    assert done.stderr == ""
    assert "\x1b" not in done.stdout


@pytest.mark.skipif(os.name == "nt", reason="Ctrl-C is sent otherwise there")
def test_ctrl_c_ends_with_130_and_no_traceback(tmp_path: Path) -> None:
    """128 and the number of the signal, as shells have it (POSIX, exit status of a command)."""
    rigs = [write_rig(tmp_path / "rigs" / f"{number}.toml") for number in range(1500)]
    code = (
        "import sys\n"
        "from ropewalk.check import files\n"
        "from ropewalk.cli import main\n"
        "check = files.check_file\n"
        "def told(path):\n"
        "    print('begun', file=sys.stderr, flush=True)\n"
        "    return check(path)\n"
        "files.check_file = told\n"
        f"main(['check', {str(rigs[0].parent)!r}])\n"
    )
    with subprocess.Popen(
        [sys.executable, "-c", code], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    ) as running:
        assert running.stderr is not None
        assert running.stderr.readline() == "begun\n"
        running.send_signal(signal.SIGINT)
        output, errors = running.communicate(timeout=60)
    assert running.returncode == 130
    assert output == ""
    assert errors.splitlines()[-1] == "interrupted"
    assert "Traceback" not in errors


def test_a_reader_that_goes_away_is_no_traceback(tmp_path: Path) -> None:
    write_rig(tmp_path / "rig.toml", FEW_LINES)
    command = f'"{sys.executable}" -m ropewalk check "{tmp_path}" | true'
    done = subprocess.run(command, shell=True, capture_output=True, text=True, check=False)
    assert "Traceback" not in done.stderr


def test_help_loads_click_only() -> None:
    """Help must answer at once: what computes is loaded by the commands that compute."""
    code = (
        "import sys, runpy; sys.argv = ['ropewalk', 'check', '--help']\n"
        "try: runpy.run_module('ropewalk', run_name='__main__')\n"
        "except SystemExit: pass\n"
        "heavy = ('numpy', 'pint', 'pydantic', 'rich', 'matplotlib', 'xarray', 'tomllib', 'json')\n"
        "print([one for one in heavy if one in sys.modules])\n"
        "print([one for one in sys.modules if one.startswith('ropewalk.')])"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=True, timeout=60
    )
    heavy, own = done.stdout.splitlines()[-2:]
    assert heavy == "[]"
    assert not {"ropewalk.check", "ropewalk.rig", "ropewalk._units"} & set(eval(own))
