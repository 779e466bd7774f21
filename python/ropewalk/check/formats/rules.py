"""The rules there are, as text."""

from __future__ import annotations

import io
import textwrap
from collections.abc import Iterable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ropewalk.check.rule import Rule

__all__ = ["rule_text", "rules_text"]

_WIDTH = 110


def rules_text(rules: Iterable[Rule]) -> str:
    """Return a table of rules with severity and source.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats.rules import rules_text
    >>> "line.design_factor" in rules_text(rw.check.RULES)
    True
    """
    from rich.box import SIMPLE_HEAD
    from rich.console import Console
    from rich.table import Table
    from rich.text import Text

    table = Table(box=SIMPLE_HEAD, pad_edge=False)
    table.add_column("rule", no_wrap=True)
    table.add_column("severity", no_wrap=True)
    for name in ("title", "source"):
        table.add_column(name, overflow="fold")
    for one in rules:
        source = f"{one.source} ({one.standing})"
        table.add_row(one.id, str(one.severity), Text(one.title), Text(source))
    sink = io.StringIO()
    Console(file=sink, width=_WIDTH, force_terminal=False, color_system=None).print(table)
    return "\n".join(line.rstrip() for line in sink.getvalue().splitlines()) + "\n"


def rule_text(one: Rule) -> str:
    """Return everything about one rule.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats.rules import rule_text
    >>> print(rule_text(rw.check.rule("line.length")).splitlines()[0])
    line.length: Line supplied against line strung
    """
    tightens = "a house limit may only be stricter" if one.tightens else "a house limit replaces it"
    unit = one.unit.replace("**", "^") or "none, a number"
    said = {
        "compares": one.compares,
        "asks": f"the value to be {one.sense} the limit; {tightens}",
        "unit": unit,
        "severity": str(one.severity),
        "source": f"{one.source} ({one.standing})",
        "computed by": one.how,
    }
    lines = [f"{one.id}: {one.title}"]
    for name, text in said.items():
        indent = " " * 15
        lines += textwrap.wrap(
            f"  {name:<13}{text}", _WIDTH, subsequent_indent=indent, break_on_hyphens=False
        )
    return "\n".join(lines) + "\n"
