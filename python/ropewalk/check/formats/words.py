"""How numbers, margins and cautions read, the same in every format."""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import TYPE_CHECKING

from ropewalk._plain import plain
from ropewalk.check.cautions import CAUTIONS
from ropewalk.check.facts import text
from ropewalk.check.verdict import Status, Verdict

if TYPE_CHECKING:
    from ropewalk.check.files import FileReport
    from ropewalk.check.rule import Rule

__all__ = [
    "GENERAL_CAUTION",
    "ORDER",
    "cautions",
    "limit_text",
    "margin_of",
    "margin_text",
    "plain",
    "sentence",
    "summary",
    "value_text",
]

#: Stands under everything a check says.
GENERAL_CAUTION = (
    "These results replace neither inspection nor local codes, the maker's manual or licensed "
    "practice. They are computed from the numbers in the rig file, which nobody has checked."
)

#: Statuses in the order in which they are shown.
ORDER = (
    Status.FAIL,
    Status.WARN,
    Status.NOT_COMPUTED,
    Status.PASS,
    Status.NOT_APPLICABLE,
)


def value_text(rule: Rule, value: float | None) -> str:
    """A value with its unit; a dash where there is none."""
    if value is None:
        return "-"
    if math.isinf(value):
        return "∞" if value > 0.0 else "-∞"
    return text(value, rule.role)


def limit_text(rule: Rule, limit: float | None) -> str:
    """A limit with the side it is on, ``"at least 3"``; a dash where there is none."""
    return "-" if limit is None else f"{rule.sense} {value_text(rule, limit)}"


def margin_of(rule: Rule, margin: float | None, limit: float | None) -> str:
    """A margin as a share of its limit, ``"+54 %"``; the bare distance where the limit is 0."""
    if margin is None or limit is None:
        return "-"
    if limit == 0.0 or math.isinf(limit) or math.isinf(margin):
        return value_text(rule, margin) if margin <= 0.0 else f"+{value_text(rule, margin)}"
    percent = 100.0 * margin
    digits = 0 if abs(percent) >= 10.0 else 1
    shown = f"{percent:+.{digits}f}"
    if percent < 0.0 and float(shown) == 0.0:  # a broken limit never reads as nothing
        shown = f"{percent:+.2g}"
    return f"{shown} %"


def margin_text(verdict: Verdict) -> str:
    """The margin of a verdict, see `margin_of`."""
    return margin_of(verdict.rule, verdict.margin, verdict.limit)


def sentence(verdict: Verdict) -> str:
    """A verdict in one line: numbers, reason, source.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats.words import sentence
    >>> verdicts = rw.check.check_rig(rw.load_rig(rw.rig.example("rig7")))
    >>> text = sentence(next(one for one in verdicts if one.rule.id == "line.length"))
    >>> text.partition(";")[0]
    'Line supplied against line strung: 1500 m, at least 488.8 m, margin +207 %'
    """
    head = plain(verdict.rule.title)
    if verdict.subject:
        head += f", {plain(verdict.subject)}"
    if verdict.value is not None:
        numbers = [value_text(verdict.rule, verdict.value)]
        if verdict.limit is not None:
            numbers.append(limit_text(verdict.rule, verdict.limit))
            numbers.append(f"margin {margin_text(verdict)}")
        head += f": {', '.join(numbers)}"
    elif verdict.status is Status.NOT_COMPUTED:
        head += ": not computed"
    parts = [head]
    if verdict.reason:
        parts.append(plain(verdict.reason))
    if verdict.source:
        parts.append(f"asked for by {plain(verdict.source)}")
    return "; ".join(parts)


def summary(reports: Iterable[FileReport]) -> dict[str, int]:
    """How many files and verdicts of each status there are.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats.words import summary
    >>> summary(rw.check.check_files(["no-such.toml"]))["unusable"]
    1
    """
    known = list(reports)
    found = {"files": len(known), "unusable": sum(bool(one.error) for one in known)}
    for status in ORDER:
        found[str(status)] = sum(
            verdict.status is status for report in known for verdict in report.verdicts
        )
    return found


def cautions(verdicts: Iterable[Verdict]) -> list[str]:
    """Cautions for the subjects that some verdicts are about, each once; the general one last."""
    subjects = list(
        dict.fromkeys(
            one.rule.subject for one in verdicts if one.status is not Status.NOT_APPLICABLE
        )
    )
    return [*dict.fromkeys(CAUTIONS[one] for one in subjects if one in CAUTIONS), GENERAL_CAUTION]
