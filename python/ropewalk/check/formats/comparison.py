"""A comparison of two rig files as table, JSON or Markdown."""

from __future__ import annotations

import io
import json
from collections.abc import Sequence
from typing import TYPE_CHECKING, Any, Literal

from ropewalk.check.formats import words
from ropewalk.check.formats.json import LAYOUT
from ropewalk.check.formats.markdown import escape, table_of

if TYPE_CHECKING:
    from ropewalk.check.compare import Change, Comparison
    from ropewalk.check.verdict import Verdict

__all__ = ["comparison_text"]

_HEAD = ("what", "rule", "subject", "value", "limit", "margin")
#: What a reader wants to know first.
_ORDER = (
    "broken now",
    "no longer checked",
    "inside now",
    "less margin",
    "more margin",
    "changed",
    "only now",
    "only before",
    "same",
)
_WIDTH = 120


def comparison_text(
    comparison: Comparison,
    form: Literal["table", "json", "markdown"] = "table",
    *,
    show_all: bool = False,
) -> str:
    """Return a comparison as text.

    Parameters
    ----------
    comparison
        From `ropewalk.check.compare_files`.
    form
        Which format.
    show_all
        Show what did not change too; JSON always has everything.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats.comparison import comparison_text
    >>> file = rw.rig.example("rig7")
    >>> print(comparison_text(rw.check.compare_files(file, file)).splitlines()[1])
    Nothing changed.
    """
    if form == "json":
        return json.dumps(_as_data(comparison), indent=2, allow_nan=False) + "\n"
    shown = sorted(
        (one for one in comparison.changes if show_all or one.what != "same"),
        key=lambda one: _ORDER.index(one.what),
    )
    return _markdown(comparison, shown) if form == "markdown" else _table(comparison, shown)


def _as_data(comparison: Comparison) -> dict[str, Any]:
    from ropewalk._version import __version__

    def record(one: Verdict | None) -> dict[str, Any] | None:
        return None if one is None else one.as_record()

    return {
        "ropewalk": __version__,
        "layout": LAYOUT,
        "outcome": comparison.outcome,
        "old": {"path": comparison.old.path, "error": comparison.old.error or None},
        "new": {"path": comparison.new.path, "error": comparison.new.error or None},
        "changes": [
            {
                "rule": one.rule.id,
                "subject": one.subject,
                "what": one.what,
                "old": record(one.old),
                "new": record(one.new),
            }
            for one in comparison.changes
        ],
        "cautions": _cautions(comparison),
    }


def _cautions(comparison: Comparison) -> list[str]:
    return words.cautions([*comparison.old.verdicts, *comparison.new.verdicts])


def _cells(one: Change) -> tuple[str, ...]:
    def arrow(old: str, new: str) -> str:
        return old if old == new else f"{old} → {new}"

    def of(verdict: Verdict | None) -> tuple[str, str, str]:
        if verdict is None:
            return "-", "-", "-"
        return (
            words.value_text(verdict.rule, verdict.value),
            words.value_text(verdict.rule, verdict.limit),
            words.margin_text(verdict),
        )

    value, limit, margin = (arrow(*pair) for pair in zip(of(one.old), of(one.new), strict=True))
    limit = f"{one.rule.sense} {limit}" if limit != "-" else limit
    return one.what, one.rule.id, words.plain(one.subject), value, limit, margin


def _ends(comparison: Comparison, shown: Sequence[Change]) -> str:
    """What came of it, in one sentence."""
    if comparison.outcome == 2:
        bad = [one for one in (comparison.old, comparison.new) if one.error]
        places = [f"{at.key}: {at.text}" for one in bad for at in one.places]
        return "; ".join(words.plain(text) for text in [*(one.error for one in bad), *places])
    count = sum(one.worse for one in comparison.changes)
    if count:
        return f"Broken or no longer checked now, and not before: {count}."
    changed = [one for one in shown if one.what != "same"]
    return "Nothing that was inside is broken." if changed else "Nothing changed."


def _reasons(shown: Sequence[Change]) -> list[str]:
    return [
        f"{one.rule.id}: {words.sentence(one.new)}"
        for one in shown
        if one.worse and one.new is not None
    ]


def _title(comparison: Comparison) -> tuple[str, str]:
    return words.plain(comparison.old.path), words.plain(comparison.new.path)


def _table(comparison: Comparison, shown: Sequence[Change]) -> str:
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    old, new = _title(comparison)
    lines = [f"{old} → {new}"]
    if shown:
        table = Table(box=SIMPLE_HEAD, pad_edge=False)
        for name in _HEAD:
            right = name in ("value", "limit", "margin")
            whole = name in ("what", "rule", "margin")
            table.add_column(
                name, justify="right" if right else "left", overflow="fold", no_wrap=whole
            )
        for one in shown:
            table.add_row(*(Text(cell) for cell in _cells(one)))
        sink = io.StringIO()
        Console(file=sink, width=_WIDTH, force_terminal=False, color_system=None).print(table)
        lines += [line.rstrip() for line in sink.getvalue().splitlines()]
        lines += [f"  {text}" for text in _reasons(shown)]
    lines += [_ends(comparison, shown), ""]
    lines += [f"Caution: {text}" for text in _cautions(comparison)]
    return "\n".join(lines) + "\n"


def _markdown(comparison: Comparison, shown: Sequence[Change]) -> str:
    old, new = _title(comparison)
    parts = [f"# {escape(old)} → {escape(new)}", escape(_ends(comparison, shown))]
    if shown:
        parts.append(table_of(_HEAD, (_cells(one) for one in shown)))
    if reasons := _reasons(shown):
        parts.append("\n".join(f"- {escape(text)}" for text in reasons))
    parts.append("\n".join(f"> Caution: {escape(text)}" for text in _cautions(comparison)))
    return "\n\n".join(parts) + "\n"
