"""A check as Markdown, for a merge request or a report."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from ropewalk.check.formats import words
from ropewalk.check.verdict import Severity, Status, Verdict

if TYPE_CHECKING:
    from ropewalk.check.files import FileReport

__all__ = ["escape", "markdown_text", "table_of", "verdict_table"]

_SPECIAL = re.compile(r"([\\`*_{}\[\]<>#|~!&])")
_HEAD = ("status", "rule", "subject", "value", "limit", "margin")


def markdown_text(
    reports: Sequence[FileReport],
    fail_on: Severity | str = Severity.MUST,
    *,
    show_all: bool = False,
) -> str:
    """Return a check as Markdown with tables.

    Parameters
    ----------
    reports
        From `ropewalk.check.check_files`.
    fail_on
        Least severity that makes a check fail.
    show_all
        Show what is inside its limit, and what does not apply, too.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats.markdown import markdown_text
    >>> print(markdown_text(rw.check.check_files(["no-such.toml"])).splitlines()[2])
    ## no-such.toml
    """
    from ropewalk.check.files import outcome

    ends = {0: "kept", 1: "broken or not computed", 2: "not known: a file cannot be used"}
    parts = [f"# Check: rules of severity {fail_on}: {ends[outcome(reports, fail_on)]}"]
    for report in reports:
        parts.extend(_file(report, show_all=show_all))
    found = words.summary(reports)
    counts = ", ".join(f"{found[str(status)]} {status}" for status in words.ORDER)
    parts.append(f"{found['files']} files, {found['unusable']} unusable: {counts}.")
    cautions = words.cautions(one for report in reports for one in report.verdicts)
    parts.append("\n".join(f"> Caution: {escape(text)}" for text in cautions))
    return "\n\n".join(parts) + "\n"


def _file(report: FileReport, *, show_all: bool) -> list[str]:
    head = f"## {escape(report.path)}"
    if report.error:
        lines = [
            f"- {escape(f'{one.file}:{one.line}: {one.key}: {one.text}')}" for one in report.places
        ]
        return [
            head,
            f"Cannot be used: {escape(report.error)}",
            *(["\n".join(lines)] * bool(lines)),
        ]
    parts = [f"{head}: {escape(report.name)}"]
    if report.invented:
        parts.append("Everything about this rig is invented for demonstration.")
    parts.extend(f"Note: {escape(note)}" for note in report.notes)
    shown = sorted(report.verdicts, key=lambda one: words.ORDER.index(one.status))
    if not show_all:
        shown = [one for one in shown if one.broken]
    if shown:
        parts.append(verdict_table(shown))
        reasons = [f"- {escape(words.sentence(one))}" for one in shown if one.broken]
        if reasons:
            parts.append("\n".join(reasons))
    inside = sum(one.status is Status.PASS for one in report.verdicts)
    parts.append(f"{inside} inside.")
    return parts


def verdict_table(verdicts: Iterable[Verdict]) -> str:
    """Return verdicts as a Markdown table, in their order."""
    return table_of(
        _HEAD,
        (
            (
                str(one.status),
                one.rule.id,
                one.subject,
                words.value_text(one.rule, one.value),
                words.limit_text(one.rule, one.limit),
                words.margin_text(one),
            )
            for one in verdicts
        ),
    )


def table_of(head: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    """Return rows as a Markdown table; every cell is escaped."""
    lines = ["| " + " | ".join(head) + " |", "|" + " --- |" * len(head)]
    lines += ["| " + " | ".join(escape(cell) for cell in row) + " |" for row in rows]
    return "\n".join(lines)


def escape(text: str) -> str:
    r"""Return text that Markdown shows as it stands.

    >>> escape("a|b <b>")
    'a\\|b \\<b\\>'
    """
    return _SPECIAL.sub(r"\\\1", words.plain(text))
