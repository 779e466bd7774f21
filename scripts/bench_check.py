"""Checking rig files against parsing them alone, in one run: part of `scripts/bench`."""

from __future__ import annotations

import itertools
import re
import tempfile
import time
import tomllib
from collections.abc import Iterator
from pathlib import Path

from rich.console import Console
from rich.table import Table

import ropewalk as rw
from ropewalk.check import check_files
from ropewalk.check.workers import cores

SIZES = (10, 100, 1_000, 10_000)
AIM = 10.0


def texts() -> Iterator[str]:
    """Rig 7 without its plan, again and again with other numbers."""
    whole = rw.rig.example("rig7").read_text(encoding="utf-8")
    plan = re.compile(r"\[+(?:operation|mud|string|stuck|life)\b")
    parts = re.split(r"(?m)^(?=\[)", whole)
    kept = "".join(part for part in parts if not plan.match(part))
    # Its elevators are those of the strings of the plan.
    kept = re.sub(r"(?ms)^elevator = \[.*?\}\]\n", "", kept)
    kept = kept.replace("[limits]\n", '[limits]\nhook_load = "420000 lbf"\n')
    for number in itertools.count():
        weight = 40_000 + number % 9_000
        yield kept.replace('weight = "46000 lbf"', f'weight = "{weight} lbf"')


def parse(paths: list[Path]) -> float:
    """Time that parsing alone takes, s."""
    start = time.perf_counter()
    for path in paths:
        with path.open("rb") as file:
            tomllib.load(file)
    return time.perf_counter() - start


def check(paths: list[Path], jobs: int) -> float:
    """Time that checking takes, s."""
    start = time.perf_counter()
    reports = check_files(paths, jobs=jobs)
    taken = time.perf_counter() - start
    assert len(reports) == len(paths)
    assert not any(one.error for one in reports)
    return taken


def tables(console: Console) -> None:
    """Print the table of this part."""
    title = "Rig files without a plan: checked, against tomllib parsing them in one process"
    table = Table(title=title, title_justify="left")
    for name in ("files", "tomllib alone", "processes", "checked", "ratio", "aim", "ms/file"):
        table.add_column(name, justify="right")
    with tempfile.TemporaryDirectory() as temporary:
        folder = Path(temporary)
        paths = []
        for number, text in zip(range(SIZES[-1]), texts(), strict=False):
            path = folder / f"rig{number:05d}.toml"
            path.write_text(text, encoding="utf-8")
            paths.append(path)
        check_files(paths[:3])
        for size, jobs in [(size, 1) for size in SIZES] + [(size, 0) for size in SIZES[2:]]:
            # Before and after, so that a busy moment of the machine meets both.
            before = parse(paths[:size])
            checked = check(paths[:size], jobs)
            parsed = 0.5 * (before + parse(paths[:size]))
            table.add_row(
                f"{size:,}",
                f"{parsed:.3f} s",
                str(jobs or cores()),
                f"{checked:.3f} s",
                f"{checked / parsed:.1f}",
                f"{AIM:g}",
                f"{checked / size * 1e3:.2f}",
            )
    console.print(table)
