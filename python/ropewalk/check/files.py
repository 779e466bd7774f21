"""Checks of many rig files: one bad file never stops the others."""

from __future__ import annotations

import os
import re
import time
from collections import deque
from collections.abc import Callable, Iterable, Mapping
from contextlib import closing
from dataclasses import dataclass, field
from pathlib import Path
from typing import NamedTuple

from ropewalk.check.discover import Paths, find_rig_files
from ropewalk.check.verdict import Severity, Verdict
from ropewalk.check.workers import cores, in_processes
from ropewalk.errors import InadmissibleError

__all__ = ["FileReport", "Place", "check_file", "check_files", "outcome"]

#: Severities, worst last.
_RANK = {Severity.NOTE: 0, Severity.SHOULD: 1, Severity.MUST: 2}
#: What a process takes to start and load ropewalk before its first file, s.
_START = 1.1
_TABLE = re.compile(r"^[ \t]*\[\[?[ \t]*([A-Za-z0-9_-]+)", re.MULTILINE)


class Place(NamedTuple):
    """One wrong place of a rig file: file, line (0 if not known), key, and what is wrong."""

    file: str
    line: int
    key: str
    text: str


@dataclass(frozen=True, slots=True)
class FileReport:
    """What was found about one file.

    Attributes
    ----------
    path
        The file, as it was given or found; a folder or pattern in which there is none.
    name
        The rig's own name; empty if the file cannot be used.
    verdicts
        Of every rule; empty if the file cannot be used.
    error
        Why the file cannot be used, in one line; empty if it can.
    places
        Every wrong place, as far as they are known.
    notes
        What the reader of the file remarked.
    invented
        True if the file says that its rig is invented.
    lines
        Line of each table of the file, by name.
    """

    path: str
    name: str = ""
    verdicts: tuple[Verdict, ...] = ()
    error: str = ""
    places: tuple[Place, ...] = ()
    notes: tuple[str, ...] = ()
    invented: bool = False
    lines: Mapping[str, int] = field(default_factory=dict)

    def line_of(self, verdict: Verdict) -> int:
        """Line of the table a rule is about, as far as there is one of its name; else 1."""
        return self.lines.get(verdict.rule.subject, 1)


def check_files(
    paths: Paths,
    *,
    jobs: int = 1,
    progress: Callable[[int, int], None] | None = None,
) -> tuple[FileReport, ...]:
    """Hold every rig file against the rules.

    Verdicts replace neither inspection nor the maker's manual, local rules and the judgment of
    qualified people.

    Parameters
    ----------
    paths
        Files, folders and patterns, as for `find_rig_files`.
    jobs
        Largest number of processes, 0 for as many as there are processors. Few or small files
        are done in this process all the same. Results do not depend on it. A script of its own
        that asks for more than one must keep what it does under ``if __name__ == "__main__":``.
    progress
        Called with files done and files there are.

    Returns
    -------
    tuple of FileReport
        In the order of the paths; one with an error for each path that leads to no rig file.

    Raises
    ------
    InadmissibleError
        If `jobs` is negative or not whole.

    Examples
    --------
    >>> import ropewalk as rw
    >>> reports = rw.check.check_files([rw.rig.example("rig7"), "no-such.toml"])
    >>> [report.name for report in reports], reports[1].error
    (['Rig 7', ''], 'no-such.toml: cannot be read: No such file or directory')
    """
    if isinstance(jobs, bool) or not isinstance(jobs, int) or jobs < 0:
        text = f"jobs must be a whole number from 0 up, got {jobs!r}"
        raise InadmissibleError(f"check.check_files(): {text}", "check.check_files", "jobs")
    found = find_rig_files(paths)
    reports: dict[int, FileReport] = {
        place: FileReport(str(path), error=f"{path}: {problem}")
        for place, (path, problem) in enumerate(found)
        if problem
    }
    left = deque((place, str(path)) for place, (path, problem) in enumerate(found) if not problem)
    tell = progress or (lambda done, total: None)
    tell(len(reports), len(found))
    begun = time.monotonic()
    at_most = jobs or cores()
    here = 0
    while left and not (
        at_most > 1 and _worth_it(time.monotonic() - begun, here, len(left), at_most)
    ):
        place, path = left.popleft()
        reports[place] = check_file(path)
        here += 1
        tell(len(reports), len(found))
    if left:
        places = [place for place, _ in left]
        with closing(in_processes(check_file, [p for _, p in left], at_most, _lost)) as results:
            for number, report in results:
                reports[places[number]] = report
                tell(len(reports), len(found))
    return tuple(reports[place] for place in range(len(found)))


def _worth_it(taken: float, done: int, left: int, at_most: int) -> bool:
    """True if processes save more of the time the files that are left take than they need to start.

    Of n processes each does the n-th part: they save all but that part.
    """
    processes = min(at_most, left)
    if done == 0 or processes < 2:
        return False
    return taken / done * left * (1.0 - 1.0 / processes) > _START


def check_file(path: str | os.PathLike[str]) -> FileReport:
    """Hold one rig file against the rules; whatever goes wrong becomes its error.

    Parameters
    ----------
    path
        A rig file.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.check.check_file(rw.rig.example("rig7")).invented
    True
    """
    from ropewalk.check.run import check_rig
    from ropewalk.rig import read, rig_of
    from ropewalk.rig.file import RigFileError

    shown = os.fspath(path)
    try:
        reading = read(shown)
        rig = rig_of(reading)
        return FileReport(
            shown,
            name=rig.name,
            verdicts=check_rig(rig),
            notes=reading.notes,
            invented=rig.invented,
            lines=_lines_of_tables(reading.layers[-1].text),
        )
    except RigFileError as error:
        head = str(error).splitlines()[0]
        return FileReport(shown, error=head, places=_places(shown, error))
    except Exception as error:  # a file must not stop the others, whatever is in it
        text = (str(error).splitlines() or [""])[0]
        return FileReport(shown, error=f"{shown}: {type(error).__name__}: {text}")


def _lost(path: str, how: str) -> FileReport:
    return FileReport(path, error=f"{path}: the process that checked it {how}")


def _places(path: str, error: Exception) -> tuple[Place, ...]:
    """Wrong places of a file; one line each of what the error says where it knows no places."""
    problems = [str(one).strip() for one in getattr(error, "problems", ())]
    known = tuple(getattr(error, "places", ()))
    found = []
    for place, text in zip(known, problems, strict=False):
        file = path if place.file in ("", Path(path).name) else str(Path(path).parent / place.file)
        said = text.removeprefix(str(place)).removeprefix(f"{place.key}").lstrip(": ")
        found.append(Place(file, int(place.line or 0), place.key, said))
    if not known and len(str(error).splitlines()) > 1:
        for text in problems:
            key, _, said = text.partition(": ")
            found.append(Place(path, 0, key if said else "", said or text))
    return tuple(found)


def _lines_of_tables(text: str) -> dict[str, int]:
    lines: dict[str, int] = {}
    line, counted = 1, 0
    for match in _TABLE.finditer(text):
        line += text.count("\n", counted, match.start(1))
        counted = match.start(1)
        lines.setdefault(match[1], line)
    return lines


def counts(verdict: Verdict, fail_on: Severity | str = Severity.MUST) -> bool:
    """True for a rule at least as severe as `fail_on` that is broken or was not computed."""
    return verdict.broken and _RANK[verdict.rule.severity] >= _RANK[Severity(fail_on)]


def outcome(reports: Iterable[FileReport], fail_on: Severity | str = Severity.MUST) -> int:
    """Exit code of a check.

    Parameters
    ----------
    reports
        From `check_files`.
    fail_on
        Least severity that counts.

    Returns
    -------
    int
        2 if a file could not be used, or there was none; else 1 if a rule of that severity is
        broken, or could not be computed; else 0.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.check.outcome(rw.check.check_files(["no-such.toml"]))
    2
    """
    known = list(reports)
    if not known or any(report.error for report in known):
        return 2
    return int(any(counts(one, fail_on) for report in known for one in report.verdicts))
