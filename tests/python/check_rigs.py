"""What the tests of checks share: variants of an invented rig file, verdicts of a made-up rule."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import ropewalk as rw
from ropewalk.check import FileReport, Rule, Severity, Status, Verdict

RIG7 = rw.rig.example("rig7").read_text(encoding="utf-8")


def write_rig(path: Path, *changes: tuple[str, str]) -> Path:
    """Write Rig 7 with some text replaced; each must be there."""
    text = RIG7
    for old, new in changes:
        assert old in text, old
        text = text.replace(old, new)
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, encoding="utf-8")
    return path


FEW_LINES = ("\nlines = 10\n", "\nlines = 4\n")
WRONG = ("\nlines = 10\n", '\nlines = "ten"\n')


def measures_never(_: Any) -> list[Any]:
    raise AssertionError("a made-up rule is not measured")


def verdict(
    status: Status = Status.FAIL,
    severity: Severity = Severity.MUST,
    *,
    rule: str = "line.made_up",
    **given: Any,
) -> Verdict:
    """Verdict of a made-up rule that asks for at least something."""
    made = Rule(
        id=rule,
        title="Made up",
        compares="a with b",
        sense="at least",
        role=given.pop("role", "number"),
        severity=severity,
        source="nobody",
        standing="derived",
        how="",
        measure=measures_never,
    )
    return Verdict(made, status, **{"source": "nobody", **given})


def report(*verdicts: Verdict, **given: Any) -> FileReport:
    """Report of a file that is nowhere."""
    return FileReport(**{"path": "rig.toml", "name": "made up", "verdicts": verdicts, **given})
