"""Checks of many files: what is found, what a bad file does, processes, exit codes."""

from __future__ import annotations

import os
import pickle
import signal
import subprocess
import sys
import time
import tomllib
from pathlib import Path

import pytest
from check_rigs import FEW_LINES, RIG7, WRONG, report, verdict, write_rig

import ropewalk as rw
from ropewalk.check import FileReport, Severity, Status, check_file, check_files, outcome
from ropewalk.check import files as check_files_module
from ropewalk.check.discover import find_rig_files, is_rig_file
from ropewalk.check.workers import in_processes


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Two rig files, one of them deep down, and much that is none."""
    write_rig(tmp_path / "b.toml")
    write_rig(tmp_path / "deep" / "er" / "a.toml", FEW_LINES)
    write_rig(tmp_path / ".hidden" / "c.toml")
    (tmp_path / "pyproject.toml").write_text('[project]\nname = "ropewalk"\n', encoding="utf-8")
    (tmp_path / "broken.toml").write_text("[tool\n", encoding="utf-8")
    (tmp_path / "note.txt").write_text(RIG7, encoding="utf-8")
    (tmp_path / "deep" / "plan.toml").write_text(
        'ropewalk = 1\n[[operation]]\nkind = "drilling"\n', encoding="utf-8"
    )
    return tmp_path


def names(found: list[tuple[Path, str]], below: Path) -> list[str]:
    return [path.relative_to(below).as_posix() for path, problem in found if not problem]


def test_a_folder_stands_for_its_rig_files_sorted(folder: Path) -> None:
    assert names(find_rig_files([folder]), folder) == ["b.toml", "deep/er/a.toml"]


@pytest.mark.parametrize(
    ("pattern", "expected"),
    [
        ("**/*.toml", ["b.toml", "deep/er/a.toml"]),
        ("*.toml", ["b.toml"]),
        ("d*/**/a.t?ml", ["deep/er/a.toml"]),
        ("[ab].toml", ["b.toml"]),
    ],
)
def test_patterns_are_expanded(folder: Path, pattern: str, expected: list[str]) -> None:
    assert names(find_rig_files([folder / pattern]), folder) == expected


def test_patterns_are_relative_to_the_working_folder(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(folder)
    assert [str(path) for path, _ in find_rig_files(["**/*.toml"])] == [
        "b.toml",
        str(Path("deep/er/a.toml")),
    ]


def test_a_file_under_the_name_of_a_pattern_is_a_file(tmp_path: Path) -> None:
    write_rig(tmp_path / "rig[7].toml")
    write_rig(tmp_path / "rig7.toml")
    found = find_rig_files([tmp_path / "rig[7].toml"])
    assert names(found, tmp_path) == ["rig[7].toml"]


def test_each_file_once_where_it_came_first(folder: Path) -> None:
    (folder / "link.toml").symlink_to(folder / "b.toml")
    deep = folder / "deep" / "er" / "a.toml"
    given = [deep, folder, folder / "*.toml", folder / "deep" / ".." / "b.toml"]
    assert names(find_rig_files(given), folder) == ["deep/er/a.toml", "b.toml"]


def test_one_path_is_one_path(folder: Path) -> None:
    assert find_rig_files(str(folder / "b.toml")) == find_rig_files([folder / "b.toml"])
    assert find_rig_files(folder / "b.toml") == find_rig_files([folder / "b.toml"])


def test_links_in_a_circle_end(folder: Path) -> None:
    (folder / "deep" / "up").symlink_to(folder, target_is_directory=True)
    assert names(find_rig_files([folder]), folder) == ["b.toml", "deep/er/a.toml"]


@pytest.mark.parametrize("nothing", ["empty", "empty/*.toml", "no-such.toml", "no-such-folder/**"])
def test_nothing_found_is_no_pass(folder: Path, nothing: str) -> None:
    (folder / "empty").mkdir()
    reports = check_files([folder / nothing])
    assert len(reports) == 1
    assert nothing.partition("*")[0] in reports[0].error
    assert outcome(reports) == 2
    assert outcome([*reports, *check_files([folder / "b.toml"])]) == 2


def test_no_paths_are_no_pass() -> None:
    assert check_files([]) == ()
    assert outcome([]) == 2


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("ropewalk = 1\n", True),
        ("ropewalk = 1\n[rop\n", True),
        ("[[tool\n", False),
        ('[tool]\nropewalk = "1"\n', False),
        ("", False),
        ("ropewalk = 1\n" + 'a = "b"\n' * 100_000, True),
        ('a = "b"\n' * 100_000, False),
        ("ropewalk = 1\n[mud]\n[[operation]]\n", False),
        ("ropewalk = 1\n[rig]\n[[operation]]\n", True),
    ],
    ids=lambda one: str(one)[:30],
)
def test_a_rig_file_is_told_by_its_key(tmp_path: Path, text: str, expected: bool) -> None:
    path = tmp_path / "some.toml"
    path.write_text(text, encoding="utf-8")
    assert is_rig_file(path) is expected


def test_one_bad_file_does_not_stop_the_others(folder: Path) -> None:
    write_rig(folder / "wrong.toml", WRONG)
    (folder / "bytes.toml").write_bytes(b"ropewalk = 1\n\xff\xfe")
    (folder / "nested.toml").write_text("ropewalk = 1\na = " + "[" * 100_000, encoding="utf-8")
    reports = {Path(one.path).name: one for one in check_files([folder])}
    assert set(reports) == {"a.toml", "b.toml", "bytes.toml", "nested.toml", "wrong.toml"}
    for name in ("wrong.toml", "bytes.toml", "nested.toml"):
        assert reports[name].error
        assert "\n" not in reports[name].error
        assert "Traceback" not in reports[name].error
        assert not reports[name].verdicts
    assert reports["b.toml"].verdicts


def test_places_say_what_is_wrong(tmp_path: Path) -> None:
    found = check_file(write_rig(tmp_path / "bad.toml", WRONG, ("[rope]", "[rop]")))
    wrong = {place.key: place.text for place in found.places}
    assert "did you mean 'rope'?" in wrong["rop"]
    assert wrong["rope"] == "missing"
    assert any("lines" in place.key + place.text for place in found.places)
    assert all(place.file == str(tmp_path / "bad.toml") for place in found.places)


def test_anything_that_happens_becomes_the_error(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(_: object) -> None:
        raise ZeroDivisionError("first line\nsecond line")

    monkeypatch.setattr("ropewalk.check.run.check_rig", refuse)
    found = check_file(write_rig(tmp_path / "rig.toml"))
    assert found.error == f"{tmp_path / 'rig.toml'}: ZeroDivisionError: first line"


def test_ctrl_c_is_no_error_of_a_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def interrupt(_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr("ropewalk.check.run.check_rig", interrupt)
    with pytest.raises(KeyboardInterrupt):
        check_files([write_rig(tmp_path / "rig.toml")])


def test_a_verdict_points_to_its_table(tmp_path: Path) -> None:
    found = check_file(write_rig(tmp_path / "rig.toml"))
    line = next(one for one in found.verdicts if one.rule.subject == "line")
    assert RIG7.splitlines()[found.line_of(line) - 1] == "[line]"
    assert found.line_of(verdict(rule="nowhere.made_up")) == 1


@pytest.fixture
def mixed(tmp_path: Path) -> Path:
    for number in range(9):
        change = [(), (FEW_LINES,), (WRONG,)][number % 3]
        write_rig(tmp_path / f"rig{number}.toml", *change)
    return tmp_path


def test_processes_change_nothing(mixed: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    alone = check_files([mixed, "no-such.toml"])
    monkeypatch.setattr(check_files_module, "_START", 0.0)
    told: list[tuple[int, int]] = []
    together = check_files([mixed, "no-such.toml"], jobs=3, progress=lambda *now: told.append(now))
    assert together == alone
    assert [one.rule for report in together for one in report.verdicts] == [
        one.rule for report in alone for one in report.verdicts
    ]
    assert told[-1] == (10, 10)
    assert [done for done, _ in told] == sorted(done for done, _ in told)
    assert outcome(alone) == 2


@pytest.mark.parametrize("jobs", [-1, 1.5, True, "2"])
def test_jobs_that_cannot_be(jobs: object) -> None:
    with pytest.raises(rw.errors.InadmissibleError, match="jobs"):
        check_files(["rig.toml"], jobs=jobs)  # type: ignore[arg-type]


def test_an_own_rule_under_a_known_id_stays_its_own() -> None:
    own = verdict(rule="line.length").rule
    twin = pickle.loads(pickle.dumps(own))
    assert (twin.id, twin.title, twin.severity) == (own.id, "Made up", own.severity)
    known = rw.check.rule("line.length")
    assert pickle.loads(pickle.dumps(known)) is known


def test_a_file_is_parsed_once(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path, texts = write_rig(tmp_path / "rig.toml"), []
    plain = tomllib.loads
    monkeypatch.setattr(tomllib, "loads", lambda text: texts.append(text) or plain(text))
    found = check_file(path)
    assert not found.error
    assert texts == [RIG7]
    # Lines by hand: of the header of each table, counted from 1.
    rows = RIG7.splitlines()
    for name in ("rope", "brake", "limits", "operation"):
        heads = [i for i, row in enumerate(rows, 1) if row.startswith((f"[{name}]", f"[[{name}]]"))]
        assert found.lines[name] == heads[0]


def test_reports_pickle(tmp_path: Path) -> None:
    found = report(verdict(rule="own.one"), verdict(Status.PASS, value=2.0, limit=1.0))
    twin: FileReport = pickle.loads(pickle.dumps(found))
    assert [one.as_record() for one in twin.verdicts] == [one.as_record() for one in found.verdicts]
    known = check_file(write_rig(tmp_path / "rig.toml"))
    assert pickle.loads(pickle.dumps(known)).verdicts[0].rule is known.verdicts[0].rule


def half(number: int) -> float:
    """Ends its own process at 13."""
    if number == 13:
        os.kill(os.getpid(), signal.SIGKILL)
    return number / 2.0


def test_a_process_that_dies_loses_its_own_item_only() -> None:
    items = [*range(10), 13, *range(20, 25)]
    found = dict(in_processes(half, items, 2, lambda item, how: f"{item} {how}"))
    assert found.pop(10) == "13 ended with exit code -9"
    assert found == {place: item / 2.0 for place, item in enumerate(items) if item != 13}


def sleep(seconds: float) -> float:
    time.sleep(seconds)
    return seconds


def test_processes_end_when_nobody_wants_the_rest() -> None:
    results = in_processes(sleep, [0.0, 60.0, 60.0], 2, lambda item, how: item)
    assert next(results) == (0, 0.0)
    begun = time.monotonic()
    results.close()
    assert time.monotonic() - begun < 10.0


INTERRUPTED = """
import sys
from ropewalk.check import files, check_files
import ropewalk.check.run

if __name__ == "__main__":
    files._START = 0.0
    def told(done, total):
        if done == 2:
            print("begun", flush=True)
    check_files([sys.argv[1]], jobs=2, progress=told)
    print("done", flush=True)
"""


@pytest.mark.skipif(os.name == "nt", reason="Ctrl-C is sent otherwise there")
def test_ctrl_c_ends_every_process(tmp_path: Path) -> None:
    """The whole group gets the signal, as from a terminal; nobody is left behind."""
    for number in range(400):
        write_rig(tmp_path / "rigs" / f"rig{number}.toml")
    script = tmp_path / "script.py"
    script.write_text(INTERRUPTED, encoding="utf-8")
    running = subprocess.Popen(
        [sys.executable, str(script), str(tmp_path / "rigs")],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        start_new_session=True,
    )
    assert running.stdout is not None
    assert running.stdout.readline() == "begun\n"
    begun = time.monotonic()
    os.killpg(running.pid, signal.SIGINT)
    # Returns when the last process that holds these pipes has ended, workers among them.
    output, errors = running.communicate(timeout=60)
    assert time.monotonic() - begun < 10.0
    assert running.returncode in (-signal.SIGINT, 1, 130)
    assert "done" not in output
    assert errors.count("Traceback") == 1  # of this script, none of a worker


@pytest.mark.parametrize(
    ("severity", "status", "must", "should"),
    [
        (Severity.MUST, Status.FAIL, 1, 1),
        (Severity.MUST, Status.NOT_COMPUTED, 1, 1),
        (Severity.MUST, Status.PASS, 0, 0),
        (Severity.MUST, Status.NOT_APPLICABLE, 0, 0),
        (Severity.SHOULD, Status.WARN, 0, 1),
        (Severity.SHOULD, Status.NOT_COMPUTED, 0, 1),
        (Severity.NOTE, Status.WARN, 0, 0),
    ],
)
def test_exit_codes(severity: Severity, status: Status, must: int, should: int) -> None:
    found = [report(verdict(Status.PASS)), report(verdict(status, severity))]
    assert outcome(found) == must
    assert outcome(found, "should") == should
    assert outcome([*found, report(error="unreadable")], "should") == 2
