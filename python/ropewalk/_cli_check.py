"""The commands about rig files: ``check``, ``rules``, ``compare``, ``report`` and ``show``."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

import click

if TYPE_CHECKING:
    from ropewalk.check import FileReport
    from ropewalk.check.formats import Format
    from ropewalk.rig.listing import Format as ListingFormat

__all__ = ["COMMANDS"]

_OUT = click.Path(dir_okay=False, path_type=Path)
_RIG_FILE = click.Path(dir_okay=False, path_type=Path)
#: From this many files on a terminal shows how far it is.
_MANY = 10


@click.command()
@click.argument("paths", nargs=-1, required=True)
@click.option(
    "--format",
    "form",
    type=click.Choice(["table", "json", "junit", "annotations", "markdown"]),
    default="table",
    show_default=True,
    help="How the result is written.",
)
@click.option("--out", type=_OUT, help="File for the result; else it is printed.")
@click.option("--junit", type=_OUT, help="File for the result as JUnit XML, besides the other.")
@click.option(
    "--fail-on",
    type=click.Choice(["must", "should"]),
    default="must",
    show_default=True,
    help="Least severity of a broken rule that makes the exit code 1.",
)
@click.option(
    "--jobs",
    type=click.IntRange(min=0),
    default=1,
    show_default=True,
    help="Largest number of processes; 0 for one for every processor.",
)
@click.option("--rule", "rules", multiple=True, metavar="ID", help="Only this rule; repeatable.")
@click.option("-v", "--all", "show_all", is_flag=True, help="Show what is inside its limit too.")
def check(
    paths: tuple[str, ...],
    form: Format,
    out: Path | None,
    junit: Path | None,
    fail_on: str,
    jobs: int,
    rules: tuple[str, ...],
    show_all: bool,
) -> None:
    """Hold rig files against every rule: is the rig inside every limit, by what margin, says who.

    PATHS are rig files, folders (every rig file below) and quoted patterns ("rigs/**/*.toml").

    Exit code 0: every rule of the severity asked for is kept. 1: one is broken or could not be
    computed. 2: a file cannot be used.
    """
    from ropewalk.check import outcome
    from ropewalk.check.formats import text_of
    from ropewalk.check.formats.table import print_table

    with _interrupted_quietly():
        reports = _checked(paths, jobs)
    if rules:
        reports = _only(reports, rules)
        click.echo(f"only these rules are shown and counted: {', '.join(rules)}", err=True)
    with _written(out, junit):
        if out is not None:
            _write(out, text_of(reports, form, fail_on, show_all=show_all))
        elif form == "table":
            print_table(reports, fail_on, show_all=show_all)
        else:
            click.echo(text_of(reports, form, fail_on, show_all=show_all), nl=False)
        if junit is not None:
            _write(junit, text_of(reports, "junit", fail_on))
    sys.exit(outcome(reports, fail_on))


def _checked(paths: Sequence[str], jobs: int) -> tuple[FileReport, ...]:
    from ropewalk.check import check_files

    if not sys.stderr.isatty():
        return check_files(paths, jobs=jobs)
    with _progress_bar() as progress:
        return check_files(paths, jobs=jobs, progress=progress)


@contextmanager
def _progress_bar() -> Iterator[Callable[[int, int], None]]:
    from rich.console import Console
    from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn

    columns = (TextColumn("rig files"), BarColumn(), MofNCompleteColumn())
    bar = Progress(*columns, console=Console(stderr=True), transient=True)
    task = bar.add_task("check", total=None)

    def progress(done: int, total: int) -> None:
        if total >= _MANY and not bar.live.is_started:
            bar.start()
        bar.update(task, completed=done, total=total)

    try:
        yield progress
    finally:
        if bar.live.is_started:
            bar.stop()


def _only(reports: Sequence[FileReport], rules: Sequence[str]) -> tuple[FileReport, ...]:
    """Reports with the verdicts of some rules; they may be rules of a rig file's own."""
    from dataclasses import replace

    from ropewalk.check import rule
    from ropewalk.errors import UnknownEntryError

    own = {one.rule.id for report in reports for one in report.verdicts}
    for name in rules:
        if name not in own:
            try:
                rule(name)
            except UnknownEntryError as error:
                click.echo(str(error), err=True)
                sys.exit(2)
    return tuple(
        replace(report, verdicts=tuple(one for one in report.verdicts if one.rule.id in rules))
        for report in reports
    )


@click.command()
@click.argument("rule_id", required=False)
def rules(rule_id: str | None) -> None:
    """List the rules with their sources, or everything about the rule RULE_ID."""
    from ropewalk.check import RULES, rule
    from ropewalk.check.formats.rules import rule_text, rules_text
    from ropewalk.errors import UnknownEntryError

    if rule_id is None:
        click.echo(rules_text(RULES), nl=False)
        return
    try:
        click.echo(rule_text(rule(rule_id)), nl=False)
    except UnknownEntryError as error:
        click.echo(str(error), err=True)
        sys.exit(2)


@click.command()
@click.argument("old", type=_RIG_FILE)
@click.argument("new", type=_RIG_FILE)
@click.option(
    "--format",
    "form",
    type=click.Choice(["table", "json", "markdown"]),
    default="table",
    show_default=True,
    help="How the result is written.",
)
@click.option("--out", type=_OUT, help="File for the result; else it is printed.")
@click.option("-v", "--all", "show_all", is_flag=True, help="Show what did not change too.")
def compare(old: Path, new: Path, form: str, out: Path | None, show_all: bool) -> None:
    """Say what the change from rig file OLD to NEW did to every margin.

    Exit code 0: nothing that was inside is broken. 1: something is, or is not computed or no
    longer checked. 2: a file cannot be used.
    """
    from ropewalk.check import compare_files
    from ropewalk.check.formats.comparison import comparison_text

    comparison = compare_files(old, new)
    text = comparison_text(comparison, form, show_all=show_all)  # type: ignore[arg-type]
    with _written(out):
        if out is None:
            click.echo(text, nl=False)
        else:
            _write(out, text)
    sys.exit(comparison.outcome)


@click.command()
@click.argument("rig_file", type=_RIG_FILE)
@click.option(
    "--out",
    type=click.Path(file_okay=False, path_type=Path),
    required=True,
    help="Folder for the report and its pictures.",
)
def report(rig_file: Path, out: Path) -> None:
    """Write RIG_FILE on paper: inputs, verdicts, pictures, sources, as HTML and Markdown."""
    from ropewalk.errors import RopewalkError
    from ropewalk.report import write_report

    with _written(out):
        try:
            for path in write_report(rig_file, out):
                click.echo(f"wrote {path}")
        except RopewalkError as error:
            click.echo(str(error), err=True)
            sys.exit(2)


@click.command()
@click.argument("rig_file", type=_RIG_FILE)
@click.option(
    "--format",
    "form",
    type=click.Choice(["table", "json", "toml"]),
    default="table",
    show_default=True,
    help="How the result is written; toml is one rig file of it all.",
)
@click.option("--out", type=_OUT, help="File for the result; else it is printed.")
def show(rig_file: Path, form: ListingFormat, out: Path | None) -> None:
    """Show every value of RIG_FILE and where it comes from: file and line, included, default.

    Includes are resolved, quantities in SI beside what is written. Exit code 2: the file cannot be
    used.
    """
    from ropewalk.rig import RigFileError, read
    from ropewalk.rig.listing import listing_text

    try:
        text = listing_text(read(rig_file), form)
    except RigFileError as error:
        click.echo(str(error), err=True)
        sys.exit(2)
    with _written(out):
        if out is None:
            click.echo(text, nl=False)
        else:
            _write(out, text)


def _write(path: Path, text: str) -> None:
    from ropewalk.check.writing import write_text

    write_text(path, text)
    click.echo(f"wrote {path}", err=True)


@contextmanager
def _written(*paths: Path | None) -> Iterator[None]:
    """Say in one line why a file cannot be written; exit code 2."""
    try:
        yield
    except BrokenPipeError:
        raise  # click ends quietly when nobody reads on
    except OSError as error:
        named = error.filename or next((one for one in paths if one is not None), "output")
        click.echo(f"{named}: {error.strerror}", err=True)
        sys.exit(2)


@contextmanager
def _interrupted_quietly() -> Iterator[None]:
    """End with the exit code shells know for Ctrl-C, without a traceback."""
    try:
        yield
    except KeyboardInterrupt:
        click.echo("interrupted", err=True)
        sys.exit(130)


#: Added to the group of `ropewalk.cli`.
COMMANDS = (check, rules, compare, report, show)
