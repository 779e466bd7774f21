"""What a check says in each format, and that no text can break out of it."""

from __future__ import annotations

import json
import math
import os
import re
import signal
import subprocess
import sys
import time
from pathlib import Path
from xml.etree import ElementTree

import jsonschema
import pytest
from check_rigs import FEW_LINES, WRONG, report, verdict, write_rig

import ropewalk as rw
from ropewalk.check import FileReport, Place, Severity, Status, check_files
from ropewalk.check.formats import text_of, words
from ropewalk.check.formats.json import as_data, schema
from ropewalk.check.writing import write_text

NASTY = "a%b, c: d\r\n::error::x | <b>&\"' [bold]red[/] \x1b[31m\x00\ud800\ufffe]]>"


@pytest.fixture(scope="module")
def reports(tmp_path_factory: pytest.TempPathFactory) -> tuple[FileReport, ...]:
    folder = tmp_path_factory.mktemp("rigs")
    write_rig(folder / "broken.toml", FEW_LINES)
    write_rig(folder / "good.toml")
    write_rig(folder / "wrong.toml", WRONG)
    return check_files([folder, folder / "no-such.toml"])


@pytest.fixture(scope="module")
def every_status() -> FileReport:
    """One verdict of every status and severity that can be, with numbers that have no end."""
    return report(
        verdict(Status.PASS, value=math.inf, limit=2.0, subject="never stops"),
        verdict(Status.PASS, value=3.0, limit=0.0),
        verdict(Status.NOT_APPLICABLE, reason="no brake"),
        verdict(Status.WARN, Severity.SHOULD, value=1.0, limit=2.0),
        verdict(Status.NOT_COMPUTED, Severity.SHOULD, reason="no table"),
        verdict(Status.NOT_COMPUTED, reason="no speed"),
        verdict(Status.FAIL, value=1.0, limit=2.0),
    )


@pytest.fixture(scope="module")
def nasty() -> FileReport:
    return report(
        verdict(subject=NASTY, reason=NASTY, source=NASTY, value=1.0, limit=2.0),
        path=f"{NASTY}.toml",
        name=NASTY,
        notes=(NASTY,),
        lines={"line": 7},
    )


FORMATS = ("table", "json", "junit", "annotations", "markdown")


@pytest.mark.parametrize("form", FORMATS)
def test_every_format_has_every_broken_rule_and_the_caution(
    reports: tuple[FileReport, ...], form: str
) -> None:
    text = text_of(reports, form)  # type: ignore[arg-type]
    assert text.endswith("\n")
    for expected in ("casing, 2200 m", "neither inspection nor local codes", "no-such.toml"):
        assert expected in text
    assert re.search(r"line.design\\?_factor", text)


@pytest.mark.parametrize("form", FORMATS)
def test_no_text_breaks_out(nasty: FileReport, form: str) -> None:
    bad = report(error=NASTY, path=NASTY, places=(Place(NASTY, 3, NASTY, NASTY),), name="")
    text = text_of([nasty, bad], form, show_all=True)  # type: ignore[arg-type]
    assert not re.search("[\x00-\x09\x0b-\x1f\x7f]", text)
    text.encode("utf-8")


# JSON: against the published schema, by another reader.


def test_json_follows_its_schema(reports: tuple[FileReport, ...], every_status: FileReport) -> None:
    jsonschema.Draft202012Validator.check_schema(schema())
    check = jsonschema.Draft202012Validator(schema())
    for found in (reports, [every_status], []):
        text = text_of(found, "json")
        data = json.loads(text, parse_constant=lambda name: pytest.fail(f"{name} is no number"))
        check.validate(data)


@pytest.mark.parametrize(
    ("place", "wrong"),
    [
        (("outcome",), 3),
        (("layout",), 2),
        (("files", 0, "verdicts", 0, "status"), "fine"),
        (("files", 0, "verdicts", 0, "value"), "much"),
        (("summary", "fail"), -1),
    ],
)
def test_the_schema_refuses(
    reports: tuple[FileReport, ...], place: tuple[str | int, ...], wrong: object
) -> None:
    data = as_data(reports)
    inner = data
    for key in place[:-1]:
        inner = inner[key]  # type: ignore[index]
    inner[place[-1]] = wrong  # type: ignore[index]
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(data, schema())


def test_json_has_the_numbers(reports: tuple[FileReport, ...]) -> None:
    data = json.loads(text_of(reports, "json"))
    assert data["ropewalk"] == rw.__version__
    assert data["outcome"] == 2
    broken, good, wrong, nowhere = data["files"]
    assert [one["error"] is None for one in (broken, good, wrong, nowhere)] == [
        True,
        True,
        False,
        False,
    ]
    for record in broken["verdicts"]:
        if record["rule"] == "line.design_factor":
            share = record["value"] / record["limit"] - 1.0
            assert record["margin"] == pytest.approx(share)
    every = [one for file in data["files"] for one in file["verdicts"]]
    assert data["summary"]["fail"] == sum(one["status"] == "fail" for one in every)
    assert data["summary"]["unusable"] == 2


def test_json_says_no_end_in_words(every_status: FileReport) -> None:
    (file,) = as_data([every_status])["files"]
    assert file["verdicts"][0]["value"] == "inf"


# JUnit: https://github.com/testmoapp/junitxml, "JUnit XML file format: common structure", read as
# elements and attributes; counts of a suite are those of its cases.


def test_junit_is_xml_with_right_counts(
    reports: tuple[FileReport, ...], every_status: FileReport
) -> None:
    root = ElementTree.fromstring(text_of([*reports, every_status], "junit").encode())
    assert root.tag == "testsuites"
    assert [suite.tag for suite in root] == ["testsuite"] * 5
    for suite in [*root, root]:
        for name, tag in (("failures", "failure"), ("errors", "error"), ("skipped", "skipped")):
            assert int(suite.get(name, "")) == len(suite.findall(f".//testcase/{tag}"))
        assert int(suite.get("tests", "")) == len(suite.findall(".//testcase"))


@pytest.mark.parametrize(
    ("fail_on", "expected"),
    [
        ("must", ["ok", "ok", "skipped", "ok", "skipped", "error", "failure"]),
        ("should", ["ok", "ok", "skipped", "failure", "error", "error", "failure"]),
    ],
)
def test_junit_fails_what_the_exit_code_counts(
    every_status: FileReport, fail_on: str, expected: list[str]
) -> None:
    root = ElementTree.fromstring(text_of([every_status], "junit", fail_on).encode())
    kinds = [
        next((one.tag for one in case if one.tag != "system-out"), "ok")
        for case in root.iter("testcase")
    ]
    assert kinds == expected


# Annotations: "Workflow commands for GitHub Actions", docs.github.com: ::error
# file={name},line={line},title={title}::{message}; % CR LF are escaped in messages, : and , in
# properties too (toolkit, packages/core/src/command.ts, from memory).

_ANNOTATION = re.compile(
    r"::(?P<level>error|warning|notice) (?P<where>[^:\r\n]*)::(?P<text>[^\r\n]*)"
)


def unescape(text: str) -> str:
    for code, sign in (("%0D", "\r"), ("%0A", "\n"), ("%3A", ":"), ("%2C", ","), ("%25", "%")):
        text = text.replace(code, sign)
    return text


def annotations(text: str) -> list[dict[str, str]]:
    found = []
    for line in text.splitlines():
        match = _ANNOTATION.fullmatch(line)
        assert match, line
        where = dict(one.split("=", 1) for one in match["where"].split(","))
        found.append(
            {"level": match["level"], "text": unescape(match["text"])}
            | {name: unescape(value) for name, value in where.items()}
        )
    return found


def test_annotations_can_be_read_back(nasty: FileReport) -> None:
    first, *_ = annotations(text_of([nasty], "annotations"))
    assert first["level"] == "error"
    assert first["line"] == "7"
    assert first["title"] == "line.made_up fail"
    assert words.plain(NASTY) in first["text"]
    assert "\n" not in first["text"]


def test_annotations_have_a_level_each(every_status: FileReport) -> None:
    levels = [one["level"] for one in annotations(text_of([every_status], "annotations"))]
    assert levels == ["error", "warning", "warning", "error", "notice", "notice"]


def test_annotations_of_wrong_places(reports: tuple[FileReport, ...]) -> None:
    found = annotations(text_of(reports, "annotations"))
    wrong = [one for one in found if one["title"] == "unusable"]
    assert any("lines" in one["text"] for one in wrong)
    assert any("no-such.toml" in one["file"] for one in wrong)


def test_annotated_paths_are_relative(
    reports: tuple[FileReport, ...], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(Path(reports[0].path).parent)
    found = annotations(text_of(reports, "annotations"))
    assert found[0]["file"] == "broken.toml"


# Markdown.


def cells(line: str) -> list[str]:
    return re.split(r"(?<!\\)\|", line)[1:-1]


def test_markdown_tables_keep_their_columns(nasty: FileReport, every_status: FileReport) -> None:
    text = text_of([nasty, every_status], "markdown", show_all=True)
    rows = [line for line in text.splitlines() if line.startswith("|")]
    assert len(rows) == 2 * 2 + 1 + 7
    assert {len(cells(row)) for row in rows} == {6}
    assert not re.search(r"(?<!\\)<b", text)


# Tables.


def test_broken_goes_first_and_passes_only_if_asked(every_status: FileReport) -> None:
    some = text_of([every_status], "table")
    every = text_of([every_status], "table", show_all=True)
    rows = [line.split()[0] for line in every.splitlines() if "line.made_up  " in line]
    assert rows == ["fail", "warn", "not", "not", "pass", "pass", "not"]
    assert "never stops" in every
    assert "never stops" not in some.partition("inside")[0]
    assert "no speed" in some


def test_a_pipe_gets_no_color(every_status: FileReport) -> None:
    assert "\x1b" not in text_of([every_status], "table")


@pytest.mark.parametrize(
    ("value", "limit", "expected"),
    [
        (1.5, 2.0, "-25 %"),
        (2.0, 2.0, "+0.0 %"),
        (1.99999, 2.0, "-0.0005 %"),
        (2.1, 2.0, "+5.0 %"),
        (3.0, 0.0, "+3"),
        (-3.0, 0.0, "-3"),
        (math.inf, 2.0, "+∞"),
        (None, None, "-"),
    ],
)
def test_margins_read_as_shares(value: float | None, limit: float | None, expected: str) -> None:
    assert words.margin_text(verdict(value=value, limit=limit)) == expected


def test_cautions_stand_once_and_the_general_one_last() -> None:
    found = words.cautions([verdict(), verdict(), verdict(rule="brake.made_up")])
    assert found.count(words.GENERAL_CAUTION) == 1
    assert found[-1] == words.GENERAL_CAUTION
    assert len(found) == len(set(found))


# Files.


def test_a_file_is_replaced_whole(tmp_path: Path) -> None:
    target = tmp_path / "new" / "check.json"
    write_text(target, "old")
    before = target.stat().st_ino
    write_text(target, "new \ud800")
    assert target.read_text(encoding="utf-8") == "new \\ud800"
    assert target.stat().st_ino != before
    assert [one.name for one in target.parent.iterdir()] == ["check.json"]


def test_a_link_stays_a_link(tmp_path: Path) -> None:
    write_text(tmp_path / "real.txt", "old")
    (tmp_path / "link.txt").symlink_to("real.txt")
    write_text(tmp_path / "link.txt", "new")
    assert (tmp_path / "link.txt").is_symlink()
    assert (tmp_path / "real.txt").read_text(encoding="utf-8") == "new"


def test_a_device_is_written_into() -> None:
    write_text(Path(os.devnull), "nothing")
    assert not Path(os.devnull).is_file()


WRITER = """
import sys
from pathlib import Path
from ropewalk.check.writing import write_text
target, size = Path(sys.argv[1]), int(sys.argv[2])
print("begun", flush=True)
while True:
    for letter in "abcdefgh":
        write_text(target, letter * size)
"""


@pytest.mark.parametrize("seconds", [0.0, 0.011, 0.023, 0.04, 0.07])
def test_a_killed_writer_leaves_the_old_file_or_the_new_one(tmp_path: Path, seconds: float) -> None:
    target, size = tmp_path / "check.xml", 2_000_000
    target.write_text("z" * size, encoding="utf-8")
    command = [sys.executable, "-c", WRITER, str(target), str(size)]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as writer:
        assert writer.stdout is not None
        assert writer.stdout.readline() == "begun\n"
        time.sleep(seconds)
        writer.kill()
    assert writer.returncode == -signal.SIGKILL
    text = target.read_text(encoding="utf-8")
    assert len(text) == size
    assert len(set(text)) == 1
