"""A check as workflow commands, which build servers show beside the lines of a file."""

from __future__ import annotations

import os
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from ropewalk.check.formats import words
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.files import FileReport

__all__ = ["annotations_text"]


def annotations_text(reports: Sequence[FileReport], fail_on: Severity | str = Severity.MUST) -> str:
    """Return one line for everything broken, not computed or unusable, and a summary.

    What makes the check fail is an ``error``, what else is broken a ``warning``; summary and
    cautions are a ``notice``. A verdict points to the table of the file it is about.

    Parameters
    ----------
    reports
        From `ropewalk.check.check_files`.
    fail_on
        Least severity that makes a check fail.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats.annotations import annotations_text
    >>> print(annotations_text(rw.check.check_files(["no-such.toml"])).splitlines()[0])
    ::error file=no-such.toml,line=1,title=unusable::no-such.toml: cannot be read: No such file or directory
    """  # noqa: E501 - one line is what the format is about
    from ropewalk.check.files import counts

    lines: list[str] = []
    for report in reports:
        if report.error and not report.places:
            lines.append(_line("error", report.path, 1, "unusable", report.error))
        for place in report.places:
            said = f"{place.key}: {place.text}" if place.key else place.text
            lines.append(_line("error", place.file, place.line, "unusable", said))
        for one in sorted(report.verdicts, key=lambda one: words.ORDER.index(one.status)):
            if one.broken:
                level = "error" if counts(one, fail_on) else "warning"
                title = f"{one.rule.id} {one.status}"
                at = report.line_of(one)
                lines.append(_line(level, report.path, at, title, words.sentence(one)))
    found = words.summary(reports)
    numbers = ", ".join(f"{found[str(status)]} {status}" for status in words.ORDER)
    lines.append(f"::notice title=ropewalk check::{_message(numbers)}")
    cautions = words.cautions(one for report in reports for one in report.verdicts)
    lines.extend(f"::notice title=caution::{_message(text)}" for text in cautions)
    return "\n".join(lines) + "\n"


def _line(level: str, path: str, line: int, title: str, text: str) -> str:
    where = _property(_relative(path))
    return f"::{level} file={where},line={max(line, 1)},title={_property(title)}::{_message(text)}"


def _relative(path: str) -> str:
    """Path from the working folder, if it lies below, with slashes."""
    try:
        return Path(path).absolute().relative_to(os.getcwd()).as_posix()  # noqa: PTH109 - as given
    except ValueError:
        return Path(path).as_posix()


def _message(text: str) -> str:
    kept = "\n".join(words.plain(line) for line in text.splitlines())
    return kept.replace("%", "%25").replace("\n", "%0A")


def _property(text: str) -> str:
    return _message(text).replace(":", "%3A").replace(",", "%2C")
