"""Every rule of ropewalk, subject by subject."""

from __future__ import annotations

import difflib

from ropewalk.check import (
    brake,
    compensator,
    deadline,
    drawworks,
    drum,
    line,
    mast,
    overtravel,
    rope,
    sheave,
    suspension,
    trade,
)
from ropewalk.check.rule import Rule
from ropewalk.errors import UnknownEntryError

__all__ = ["RULES", "rule"]

#: Every rule, in the order in which reports have them.
RULES: tuple[Rule, ...] = (
    *line.RULES,
    *rope.RULES,
    *sheave.RULES,
    *drum.RULES,
    *deadline.RULES,
    *mast.RULES,
    *suspension.RULES,
    *drawworks.RULES,
    *brake.RULES,
    *overtravel.RULES,
    *compensator.RULES,
    *trade.RULES,
)

#: The same by id.
BY_ID: dict[str, Rule] = {one.id: one for one in RULES}


def rule(rule_id: str) -> Rule:
    """Return the rule of this id.

    Raises
    ------
    UnknownEntryError
        If there is none; the message offers the nearest.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.check.rule("line.design_factor").sense
    'at least'
    """
    if rule_id in BY_ID:
        return BY_ID[rule_id]
    close = difflib.get_close_matches(rule_id, BY_ID, n=1, cutoff=0.3)
    hint = f"; did you mean {close[0]!r}?" if close else ""
    raise UnknownEntryError(f"check.rule(): no rule {rule_id!r}{hint}", "check.rule", "rule_id")
