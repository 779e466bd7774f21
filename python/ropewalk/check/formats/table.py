"""A check as tables for people: what is broken first, then what could not be computed."""

from __future__ import annotations

import io
import os
import shutil
from collections.abc import Sequence
from typing import TYPE_CHECKING

from ropewalk.check.formats import words
from ropewalk.check.verdict import Severity, Status, Verdict

if TYPE_CHECKING:
    from rich.console import Console

    from ropewalk.check.files import FileReport

__all__ = ["print_table", "table_text"]

_STYLE = {
    Status.FAIL: "bold red",
    Status.WARN: "yellow",
    Status.NOT_COMPUTED: "bold magenta",
    Status.PASS: "green",
    Status.NOT_APPLICABLE: "dim",
}
#: Columns of plain text: a log has no width of its own.
_PLAIN_WIDTH = 120


def table_text(
    reports: Sequence[FileReport],
    fail_on: Severity | str = Severity.MUST,
    *,
    show_all: bool = False,
) -> str:
    """Return the tables as plain text.

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
    >>> from ropewalk.check.formats.table import table_text
    >>> print(table_text(rw.check.check_files(["no-such.toml"])).splitlines()[0])
    no-such.toml: cannot be used
    """
    from rich.console import Console

    sink = io.StringIO()
    console = Console(
        file=sink,
        width=_PLAIN_WIDTH,
        force_terminal=False,
        color_system=None,
        highlight=False,
        markup=False,
        emoji=False,
    )
    _print_all(console, reports, fail_on, show_all=show_all)
    return "\n".join(line.rstrip() for line in sink.getvalue().splitlines()) + "\n"


def print_table(
    reports: Sequence[FileReport],
    fail_on: Severity | str = Severity.MUST,
    *,
    show_all: bool = False,
) -> None:
    """Print the tables, colored on a terminal, plain elsewhere; see `table_text`."""
    import sys

    from rich.console import Console

    if not sys.stdout.isatty() or "NO_COLOR" in os.environ or os.environ.get("TERM") == "dumb":
        sys.stdout.write(table_text(reports, fail_on, show_all=show_all))
        return
    width = max(60, shutil.get_terminal_size().columns)
    console = Console(width=width, highlight=False, markup=False, emoji=False)
    _print_all(console, reports, fail_on, show_all=show_all)


def _print_all(
    console: Console,
    reports: Sequence[FileReport],
    fail_on: Severity | str,
    *,
    show_all: bool,
) -> None:
    for report in reports:
        _print_file(console, report, show_all=show_all)
    _print_summary(console, reports, fail_on)
    for caution in words.cautions(one for report in reports for one in report.verdicts):
        console.print(f"Caution: {caution}", soft_wrap=True)


def _print_file(console: Console, report: FileReport, *, show_all: bool) -> None:
    path = words.plain(report.path)
    if report.error:
        console.print(f"{path}: cannot be used", style="bold red", soft_wrap=True)
        if not report.places:
            console.print(f"  {words.plain(report.error)}", soft_wrap=True)
        for place in report.places:
            at = f"{place.file}:{place.line}" if place.line else place.file
            text = ": ".join(one for one in (at, place.key, place.text) if one)
            console.print(f"  {words.plain(text)}", soft_wrap=True)
        console.print()
        return
    invented = " (invented)" if report.invented else ""
    console.print(f"{path}: {words.plain(report.name)}{invented}", style="bold", soft_wrap=True)
    for note in report.notes:
        console.print(f"  note: {words.plain(note)}", soft_wrap=True)
    shown = sorted(report.verdicts, key=lambda one: words.ORDER.index(one.status))
    if not show_all:
        shown = [one for one in shown if one.broken]
    if shown:
        _print_verdicts(console, shown)
    inside = sum(one.status is Status.PASS for one in report.verdicts)
    margins = [
        (one.margin, one)
        for one in report.verdicts
        if one.status is Status.PASS and one.margin is not None and one.limit
    ]
    if margins:
        _, least = min(margins, key=lambda pair: pair[0])
        of = f"{least.rule.id}{', ' if least.subject else ''}{words.plain(least.subject)}"
        console.print(
            f"  {inside} inside; least margin {words.margin_text(least)}: {of}", soft_wrap=True
        )
    else:
        console.print(f"  {inside} inside")
    console.print()


def _print_verdicts(console: Console, verdicts: Sequence[Verdict]) -> None:
    from rich.box import SIMPLE_HEAD
    from rich.table import Table
    from rich.text import Text

    table = Table(box=SIMPLE_HEAD, pad_edge=False)
    table.add_column("status", no_wrap=True)
    table.add_column("rule", no_wrap=True)
    table.add_column("subject", overflow="fold")
    for name in ("value", "limit", "margin"):
        table.add_column(name, justify="right", no_wrap=True)
    for one in verdicts:
        cells = (
            one.rule.id,
            words.plain(one.subject),
            words.value_text(one.rule, one.value),
            words.limit_text(one.rule, one.limit),
            words.margin_text(one),
        )
        status = Text(str(one.status), style=_STYLE[one.status])
        table.add_row(status, *(Text(cell) for cell in cells))
    console.print(table)
    for one in verdicts:
        if one.broken:
            console.print(f"  {one.rule.id}: {words.sentence(one)}", soft_wrap=True)
        elif one.status is Status.NOT_APPLICABLE:
            console.print(f"  {one.rule.id}: {words.plain(one.reason)}", soft_wrap=True)


def _print_summary(
    console: Console, reports: Sequence[FileReport], fail_on: Severity | str
) -> None:
    from ropewalk.check.files import outcome

    found = words.summary(reports)
    verdict = {
        0: f"every rule of severity {fail_on} or above is kept",
        1: f"a rule of severity {fail_on} or above is broken or was not computed",
        2: "a file cannot be used",
    }[outcome(reports, fail_on)]
    files = "1 file" if found["files"] == 1 else f"{found['files']} files"
    counts = ", ".join(f"{found[str(status)]} {status}" for status in words.ORDER)
    console.print(f"{files}, {found['unusable']} unusable: {counts}", soft_wrap=True)
    console.print(f"{verdict[0].upper()}{verdict[1:]}.", soft_wrap=True)
    console.print()
